// The projects that this program knows.
//
//   known_projects                        key, what it is, a size to start from, and how its sheet is made
//   find_project(name)                    by its key, however it is spelled: "Tool roll" is "tool-roll"
//   sheet_for(project, finished, thickness, cloth, graduation)   the sheet for a finished size in inches or in centimetres,
//                                         worked out on a ruler; exact for a graduation of zero
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PROJECTS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PROJECTS_HPP

#include "kneeling_pad.hpp"
#include "names.hpp"
#include "organiser.hpp"
#include "tool_roll.hpp"

#include <array>
#include <string>
#include <string_view>

namespace allotment {

enum class which_project { organiser, tool_roll, kneeling_pad };

struct known_project {
    which_project which;
    std::string_view key, about, usual_inches, usual_centimetres;
    bool hangs;
};

inline constexpr std::array<known_project, 3> known_projects = {{
    {which_project::organiser, "organiser", "hanging seed-packet organiser with clear pockets", "27 x 28 in",
     "70 x 72 cm", true},
    {which_project::tool_roll, "tool-roll", "roll for hand tools, with upright and zipped pockets and a tie",
     "29 x 21 in", "75 x 54 cm", false},
    {which_project::kneeling_pad, "kneeling-pad",
     "cover and filling of a boxed kneeling pad, with a zipper in its base", "17 1/2 x 10 1/2 in", "44 x 27 cm", false},
}};

inline const known_project* find_project(std::string_view name) {
    const std::string key = slug(name);
    for (const known_project& p : known_projects)
        if (p.key == key)
            return &p;
    return nullptr;
}

inline std::string project_keys() {
    std::string keys;
    for (const known_project& p : known_projects)
        keys += (keys.empty() ? "" : ", ") + std::string(p.key);
    return keys;
}

/// `thickness` is of a kneeling pad only; empty for the usual one. Without a unit it is in that of the size.
template <length_unit Unit>
sheet<Unit> sheet_for(which_project which, const finished_size<Unit>& finished, const std::string& thickness,
                      const cloth_sold<Unit>& cloth, length<Unit> graduation = {}) {
    switch (which) {
    case which_project::organiser:
        return organiser::make(finished, graduation);
    case which_project::tool_roll:
        return tool_roll::make(finished, graduation);
    case which_project::kneeling_pad:
        break;
    }
    const auto usual = kneeling_pad_measures<Unit>().thickness;
    return kneeling_pad::make(finished, thickness.empty() ? usual : read_length<Unit>(thickness), cloth, graduation);
}

} // namespace allotment

#endif
