// A project that its maker wrote as a file (design/json.hpp), made at any size like those that the program knows.
//
//   read_project_file(path)            the design; every fault is told, each on a line of its own
//   size_to_make(design, asked)        the size in a unit that the design is made in; its own first where none is asked
//   sheet_for(design, finished, graduation)
//   hangs(design)                      whether it hangs by eyelets, so that its cloth lies along the grain
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PROJECT_FILE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PROJECT_FILE_HPP

#include "../command/console.hpp"
#include "../command/files.hpp"
#include "../command/plain_text.hpp"
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

namespace allotment {

using namespace turncloth;

/// Throws file_error where it is not read, and once every fault is told.
inline project_design read_project_file(const std::string& path) {
    const std::string text = require_text(path, read_file(path));
    const auto read = try_read_design(text);
    if (read)
        return *read;
    const auto& faults = read.refused().faults();
    for (const design_fault& f : faults)
        complain(path + ": " + to_text(f));
    throw file_error("use", path,
                     "it has " + std::to_string(faults.size()) + (faults.size() == 1 ? " fault" : " faults"));
}

/// Exactly the same size.
template <length_unit Unit>
typed_size in_unit(const typed_size& size) {
    return std::visit(
        [](const auto& s) { return typed_size(finished_size<Unit>(as<Unit>(s.width()), as<Unit>(s.height()))); }, size);
}

/// Exactly the size asked for, whichever unit it is in. Throws range_error where none is asked for, and its file names
/// none.
inline typed_size size_to_make(const project_design& d, const std::string& asked, bool in_centimetres) {
    std::vector<typed_size> usual;
    for (const std::string& own : d.sizes)
        usual.push_back(read_size(own));
    if (asked.empty() && usual.empty())
        throw range_error("no size is given: its file names none to begin with, so say --size",
                          {.kind = fault::missing, .what = "a size"});
    const auto fits = [&](const typed_size& s) {
        return std::holds_alternative<finished_size<centimetre>>(s) == in_centimetres;
    };
    const auto found = std::find_if(usual.begin(), usual.end(), fits);
    const typed_size size = !asked.empty() ? read_size(asked) : found == usual.end() ? usual[0] : *found;
    if (d.units == design_units::inches)
        return in_unit<inch>(size);
    return d.units == design_units::centimetres ? in_unit<centimetre>(size) : size;
}

template <length_unit Unit>
sheet<Unit> sheet_for(const project_design& d, const finished_size<Unit>& finished, length<Unit> graduation) {
    return sheet_on_ruler(finished, graduation, [&](const finished_size<Unit>& asked, const ruled<Unit>& by) {
        return project_of(d, asked, by);
    });
}

inline bool hangs(const project_design& d) {
    return std::any_of(d.pieces.begin(), d.pieces.end(), [](const design_piece& p) { return p.eyelets.has_value(); });
}

} // namespace allotment

#endif
