// A roll for hand tools: a canvas outer that binds itself over wadding and lining, upright pockets along the lower
// half, zipped pockets across the upper half, and a ribbon that ties it up.
//
//   tool_roll::make(finished, graduation)     the sheet for any finished size, opened flat, that holds at least two tools,
//                                             worked out on a ruler of that graduation; exact where none is given
//
// The lining is folded in half and in half again, top to bottom. One zipper lies over the upper quarter fold, and a
// second near the top where that leaves a pocket worth having between them. Filled, the upper half is folded down over
// the tools, and the whole is rolled up from the right: the ribbon, sewn by its middle to the left edge, goes round.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_TOOL_ROLL_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_TOOL_ROLL_HPP

#include "edition.hpp"
#include <turncloth/making/fastenings.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/making_of.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace allotment {

template <length_unit Unit>
struct tool_roll_measures {
    length<Unit> tool_pocket = by_edition<Unit>("2 3/4"_in, 7_cm); ///< at least this wide
    length<Unit> least_height = by_edition<Unit>(11_in, 28_cm);

    length<Unit> binding = by_edition<Unit>("5/8"_in, "1.5"_cm);
    length<Unit> inset = by_edition<Unit>("1/8"_in, "0.3"_cm);
    length<Unit> layers = by_edition<Unit>("1/8"_in, "0.3"_cm); ///< wadding and linings, pressed together
    length<Unit> canvas = by_edition<Unit>("1/32"_in, "0.08"_cm);
    length<Unit> turn_step = by_edition<Unit>("1/16"_in, "0.1"_cm); ///< the turn of cloth is rounded up to this

    length<Unit> hem_first = by_edition<Unit>("3/8"_in, 1_cm);
    length<Unit> hem_depth = by_edition<Unit>("5/8"_in, "1.5"_cm);

    length<Unit> top_zipper = by_edition<Unit>("1 3/4"_in, "4.5"_cm); ///< from the finished top edge
    length<Unit> zipped_pocket = by_edition<Unit>("2 1/2"_in, 6_cm);  ///< at least this high, zipper to zipper
    length<Unit> zipper_margin = by_edition<Unit>("7/8"_in, 2_cm);
    length<Unit> zipper_beyond = by_edition<Unit>("5/8"_in, "1.5"_cm);
    length<Unit> zipper_rows = by_edition<Unit>("1/2"_in, "1.2"_cm);
    length<Unit> zipper_slit = by_edition<Unit>("1/4"_in, "0.6"_cm);
    length<Unit> zipper_roll = by_edition<Unit>(180_in, 500_cm);

    length<Unit> tools = by_edition<Unit>("1/2"_in, "1.2"_cm);      ///< the thickness they add, evened out
    length<Unit> girth_step = by_edition<Unit>("1/8"_in, "0.5"_cm); ///< once round the roll is rounded up to this
    length<Unit> tie_loop = by_edition<Unit>("2 1/4"_in, 6_cm), tie_tail = by_edition<Unit>(4_in, 10_cm);
    length<Unit> tie_knot = by_edition<Unit>(1_in, "2.5"_cm), tie_ease = by_edition<Unit>("1/2"_in, 1_cm);
    length<Unit> tie_turned = by_edition<Unit>("1/4"_in, "0.6"_cm);
    length<Unit> tie_width = by_edition<Unit>(1_in, "2.5"_cm);
    length<Unit> tie_mark = by_edition<Unit>("1/2"_in, "1.2"_cm); ///< runs so far in from the finished edge

    /// What lies on both sides of a line is parted by it; thicknesses stay as they are.
    tool_roll_measures on(const ruled<Unit>& by) const {
        tool_roll_measures m = *this;
        by.give(m.tool_pocket, m.least_height, m.binding, m.inset, m.hem_first, m.hem_depth, m.top_zipper)
            .give(m.zipped_pocket, m.zipper_margin, m.zipper_beyond, m.tie_loop, m.tie_tail, m.tie_knot)
            .give(m.tie_ease, m.tie_turned, m.tie_width, m.tie_mark);
        m.zipper_rows = by.given(m.zipper_rows, 2);
        m.zipper_slit = by.given(m.zipper_slit, 2);
        m.turn_step = by.step(m.turn_step, 2);
        m.girth_step = by.step(m.girth_step);
        return m;
    }
};

/// How the roll is made: its layers, zippers, pockets and binding, and what each pocket must hold.
template <length_unit Unit>
class roll_making {
public:
    roll_making(const project<Unit>& p, const tool_roll_measures<Unit>& m, std::int64_t pockets, const ruled<Unit>& by)
        : project_(p),
          m_(m),
          pockets_(pockets),
          by_(by),
          roll_(making_of(p)),
          back_(roll_.part("back of the zipped pockets")),
          lining_(roll_.part("lining")),
          tools_(roll_.part("tool pockets")) {}

    /// The project says how the layers lie, are zipped and are bound; the pockets and the tie are added here.
    making<Unit> make() {
        d_.lips(m_.inset * 2);
        add_tool_pockets();
        add_zipped_pockets();
        sew_tie<Unit>(d_, roll_.part("outer"),
                      {.from = edge::left,
                       .in = at<finished_edge>(by_.middle(m_.binding)),
                       .along = quarters()[2],
                       .by_middle = true},
                      {roll_.part("outer"), roll_.part("wadding"), back_, lining_, tools_});
        d_.sewn_by_machine(sewn_throughout<Unit>().stitch, sewn_throughout(by_).overrun);
        return std::move(d_);
    }

private:
    length<Unit> width() const { return project_.finished().width(); }
    length<Unit> height() const { return project_.finished().height(); }
    row<finished_edge, Unit> quarters() const { return by_.parts(halved<finished_edge>(height(), 2)); }
    place<finished_edge, Unit> middle() const { return quarters()[1]; }
    /// Of the binding, from the finished edge; pockets end there.
    length<Unit> bound() const { return m_.binding - m_.inset; }

    void add_tool_pockets() {
        const length<Unit> between = width() - m_.binding * 2, each = between / pockets_;
        const row<finished_edge, Unit> divisions(at<finished_edge>(m_.binding + each), each, pockets_ - 1);
        sew_divisions<Unit>(d_, tools_, lining_, edge::left, by_.parts(divisions));
        length<Unit> narrowest = between, from = m_.binding;
        for (std::int64_t k = 0; k < pockets_; ++k) {
            const length<Unit> to = k + 1 < pockets_ ? by_.parts(divisions)[k].from_datum() : width() - m_.binding;
            narrowest = std::min(narrowest, to - from);
            from = to;
        }
        const mouth_handle top = d_.add(mouth<Unit>{.name = "top of the tool pockets",
                                                    .at = {tools_.line(edge::top, place<finished_edge, Unit>())}});
        d_.add(compartment<Unit>{.name = "tool pocket",
                                 .between = {lining_, tools_},
                                 .from_left = m_.binding + each / 2,
                                 .from_top = height() - height() / 4,
                                 .mouths = {top},
                                 .least_width = narrowest,
                                 .least_height = height() - middle().from_datum() - bound(),
                                 .count = pockets_,
                                 .step = each});
    }

    /// The lining and its back are sewn together above the tool pockets, and above the tape of a second zipper: each
    /// zipper opens a pocket of its own, which hangs below it.
    void add_zipped_pockets() {
        const zipper<Unit>& z = project_.zippers()[0];
        length<Unit> from = bound();
        for (std::size_t k = 0; k < z.centres.size(); ++k) {
            const bool last = k + 1 == z.centres.size();
            const length<Unit> to =
                (last ? middle() : z.centres[k + 1]).from_datum() - (last ? length<Unit>() : z.rows) - m_.inset * 2;
            d_.add(
                stitching<Unit>{.along = lining_.line(edge::top, at<finished_edge>(to)), .through = {lining_, back_}});
            d_.add(compartment<Unit>{.name = last ? "zipped pocket" : "zipped pocket near the top",
                                     .between = {back_, lining_},
                                     .from_left = width() / 2,
                                     .from_top = to - m_.inset,
                                     .mouths = {roll_.zippers[0].mouths[k]},
                                     .least_width = width() - bound() * 2,
                                     .least_height = to - from});
            from = to;
        }
        // What is put into a zipped pocket must not slip down behind the tools: nothing opens into what lies there.
        d_.add(compartment<Unit>{.name = "space behind the tool pockets",
                                 .between = {back_, lining_},
                                 .from_left = width() / 2,
                                 .from_top = height() - height() / 4});
    }

    const project<Unit>& project_;
    const tool_roll_measures<Unit>& m_;
    std::int64_t pockets_;
    ruled<Unit> by_;
    project_making<Unit> roll_;
    making<Unit>& d_ = roll_.design;
    panel_part<Unit> back_, lining_, tools_;
};

struct tool_roll {
    static constexpr std::int64_t most_pockets = 100;

    template <length_unit Unit>
    static sheet<Unit> make(const finished_size<Unit>& finished, length<Unit> graduation = {}) {
        return sheet_on_ruler(finished, graduation, design<Unit>);
    }

    template <length_unit Unit>
    static project<Unit> design(const finished_size<Unit>& asked, const ruled<Unit>& by = {}) {
        constexpr tool_roll_measures<Unit> usual;
        const tool_roll_measures<Unit> m = usual.on(by);
        const finished_size<Unit> finished = by.given(asked);
        require_at_least(finished, m.tool_pocket * 2 + m.binding * 2, m.least_height, "a roll for two tools");
        const length<Unit> between_bindings = finished.width() - m.binding * 2;
        require_at_most(ratio_of(between_bindings, m.tool_pocket), most_pockets, "tool pockets");
        const std::int64_t pockets = floor(ratio_of(between_bindings, m.tool_pocket));

        project<Unit> p("Hand-tool roll, " + std::to_string(pockets) + " tool pockets", finished);
        const auto layers = self_bound(finished, m.binding, m.inset, turn_of_cloth(m.layers, m.canvas, m.turn_step));
        auto& outer = p.add(piece<Unit>("outer", "canvas", layers.outer));
        const auto folds = by.parts(halved<finished_edge>(finished.height(), 2));
        outer.mark("middle of the tie", edge::bottom, at<finished_edge>(finished.height() - folds[2].from_datum()),
                   {{edge::left, layers.outer.finish_of(edge::left).allowance() + m.tie_mark}});
        const panel<Unit> inner(finished, {});
        p.add(piece<Unit>("wadding", "thin wadding", inner)).lies_inside(outer);
        p.add(piece<Unit>("back of the zipped pockets", "lining cloth", inner)).lies_inside(outer);
        auto& lining = p.add(piece<Unit>("lining", "lining cloth", inner)).lies_inside(outer);
        lining.mark("quarter fold", edge::top, folds);

        // Its sides and its foot are caught under the binding, and its hem lies along the middle fold.
        auto& tools = p.add(
            piece<Unit>("tool pockets", "canvas",
                        panel<Unit>(finished_size<Unit>(finished.width(), finished.height() - folds[1].from_datum()),
                                    {double_turned_hem(m.hem_first, m.hem_depth, m.inset), {}, {}, {}})));
        for (const auto& division : by.parts(divided<finished_edge>(between_bindings, pockets)))
            tools.mark("between two tools", edge::left, division + m.binding);
        p.add(placing<Unit>{"tool pockets", "lining", at<finished_edge>(length<Unit>()), folds[1]});

        p.add(zippers(m, finished, by));
        add_tie(p, m);
        p.made_as(roll_making<Unit>(p, m, pockets, by).make());
        add_pockets(p);
        p.add(sewn_throughout(by));
        p.caution("Put each blade into its sheath before it goes into the roll: a point works its way through cloth.",
                  caution::work::using_it);
        return p;
    }

private:
    /// Rolled up, the outer and all that it binds lie double, with the tools and their pockets between.
    template <length_unit Unit>
    static void add_tie(project<Unit>& p, const tool_roll_measures<Unit>& m) {
        const length<Unit> stack = (m.layers + m.canvas) * 2 + m.canvas + m.tools;
        const length<Unit> girth =
            roll_girth(rolled<Unit>{p.finished().width(), stack, {}}, m.girth_step, rounding::up);
        const figure<Unit> ribbon = tie_round<Unit>(girth, 1, {m.tie_loop, m.tie_tail, m.tie_knot},
                                                    {.ease = m.tie_ease, .turned = m.tie_turned});
        p.add(listed_round("tie", ribbon, girth)
                  .figure("width of the ribbon", m.tie_width)
                  .sold(sold_as::as_told)
                  .figure("ribbon to buy, cut off the reel", up_to(ribbon.value(), usual_steps<Unit>().step)));
    }

    /// What the pockets hold is what they are proved to hold.
    template <length_unit Unit>
    static void add_pockets(project<Unit>& p) {
        const auto& inside = p.design()->compartments();
        notion<Unit> n("pockets");
        n.number("tool pockets", inside[0].count)
            .figure("each tool pocket, between its rows", inside[0].least_width)
            .figure("longest tool, when the upper half is folded over it", inside[0].least_height);
        const std::size_t zipped = p.zippers()[0].centres.size();
        for (std::size_t k = 1; k <= zipped; ++k)
            n.figure(k < zipped ? "zipped pocket near the top, width of the largest flat packet"
                                : "zipped pocket, width of the largest flat packet",
                     opening(p.zippers()[0].opening))
                .figure("its height", inside[k].least_height);
        p.add(n);
    }

    template <length_unit Unit>
    static zipper<Unit> zippers(const tool_roll_measures<Unit>& m, const finished_size<Unit>& finished,
                                const ruled<Unit>& by) {
        const auto folds = halved<finished_edge>(finished.height(), 2);
        std::vector<place<finished_edge, Unit>> centres;
        if (folds[0].from_datum() - m.top_zipper >= m.zipped_pocket) // so many on every ruler
            centres.push_back(at<finished_edge>(m.top_zipper));
        centres.push_back(by.parts(folds)[0]);
        return {"lining",
                edge::top,
                centres,
                {finished.width() - m.binding * 2, m.zipper_margin, m.zipper_beyond},
                m.zipper_rows,
                m.zipper_slit,
                {m.zipper_roll, {}, {}, {}},
                by.graduation()};
    }
};

} // namespace allotment

#endif
