// Pieces as the walk has them, and the lines that part each into cells.
//
//   box_part           a piece: its size, the creases that turn a quarter, and the lines that end it
//   stops_of(part)     where its cells begin and end, and how many they are, before they are made
#ifndef TURNCLOTH_MAKING_DETAIL_BOX_PARTS_HPP
#define TURNCLOTH_MAKING_DETAIL_BOX_PARTS_HPP

#include <turncloth/making/detail/boxes.hpp>

#include <algorithm>
#include <cstddef>
#include <vector>

namespace turncloth::detail::boxed_work {

/// A crease that turns a quarter; it begins and ends as a seam does.
struct quarter_crease {
    seam_line at{};
    bool outward = false;
};

struct box_part {
    whole width = 0, height = 0;
    std::vector<quarter_crease> creases{};
    std::vector<seam_line> ends{}; ///< seams, and creases that turn back
};

struct part_stops {
    std::vector<whole> xs{}, ys{};

    std::size_t columns() const { return xs.empty() ? 0 : xs.size() - 1; }
    std::size_t cells() const { return xs.empty() ? 0 : columns() * (ys.size() - 1); }
};

/// At every line, and where a line begins or ends within the piece. Of a piece that is in no seam nothing is to be placed.
inline part_stops stops_of(const box_part& part) {
    if (part.ends.empty())
        return {};
    part_stops all{{0, part.width}, {0, part.height}};
    const auto note = [&](const seam_line& l) {
        (l.level ? all.ys : all.xs).push_back(l.at);
        (l.level ? all.xs : all.ys).insert((l.level ? all.xs : all.ys).end(), {l.begins, l.ends});
    };
    for (const seam_line& l : part.ends)
        note(l);
    for (const quarter_crease& c : part.creases)
        note(c.at);
    for (std::vector<whole>* stops : {&all.xs, &all.ys}) {
        std::sort(stops->begin(), stops->end());
        stops->erase(std::unique(stops->begin(), stops->end()), stops->end());
    }
    return all;
}

} // namespace turncloth::detail::boxed_work

#endif
