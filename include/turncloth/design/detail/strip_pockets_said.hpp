// Rows of pockets from strips, as a design names them: their lengths are those of a meeting, their feet those of marks.
#ifndef TURNCLOTH_DESIGN_DETAIL_STRIP_POCKETS_SAID_HPP
#define TURNCLOTH_DESIGN_DETAIL_STRIP_POCKETS_SAID_HPP

#include <turncloth/making/strip_pockets.hpp>
#include <turncloth/sheet/making_of.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
struct strip_pockets_said {
    std::string strip, on, feet, name;
    length<Unit> inset, holds;
};

/// Throws making_error where no meeting is of these two pieces, or the marks are not as many as the strips.
template <length_unit Unit>
void add_strip_pockets(const project<Unit>& p, project_making<Unit>& made, const strip_pockets_said<Unit>& said) {
    const auto& all = p.meetings();
    const auto meets = std::find_if(
        all.begin(), all.end(), [&](const meeting<Unit>& m) { return m.longer == said.strip && m.shorter == said.on; });
    if (meets == all.end())
        refuse<making_error>(in_quotes(said.strip) + " and " + in_quotes(said.on) + " do not meet",
                             refusal{.kind = fault::missing, .what = "a meeting", .where = said.strip});
    const panel_part<Unit>&strip = made.part(said.strip), &on = made.part(said.on);
    strip_pockets<Unit> pockets{
        .strip = strip, .on = on, .span = meets->on_shorter, .columns = meets->spans, .graduation = meets->graduation};
    for (const mark_line<Unit>& mark : p.pieces()[on.part.index].marks())
        if (mark.what == said.feet)
            pockets.feet.push_back(on.shape.from_finished_edge(edge::top, at<cut_edge>(mark.from_cut_edge.value())));
    const length<Unit> width = pockets.span;
    pockets.sides = {row<finished_edge, Unit>(at<finished_edge>(said.inset), width - said.inset * 2, 2),
                     divided<finished_edge>(width, pockets.columns).on_ruler(pockets.graduation)};
    const std::vector<mouth_handle> tops = sew_strips(made.design, pockets);
    const length<Unit> column = width / pockets.columns, high = strip.shape.finished().height();
    for (std::size_t k = 0; k < tops.size(); ++k)
        made.design.add(
            compartment<Unit>{.name = said.name + " " + std::to_string(k + 1),
                              .between = {on, strip[static_cast<std::int64_t>(k)]},
                              .from_left = on.shape.finish_of(edge::left).allowance() + column / 2,
                              .from_top = on.shape.from_cut_edge(edge::top, pockets.feet[k]).from_datum() - high / 2,
                              .mouths = {tops[k]},
                              .least_width = said.holds,
                              .least_height = high,
                              .count = pockets.columns,
                              .step = column});
}

} // namespace turncloth::detail

#endif
