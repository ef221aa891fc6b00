// A hanging organiser for seed packets: rows of clear pockets on a canvas backing, which hangs by eyelets in its
// heading.
//
//   organiser::make(finished, graduation)     the sheet for any finished size that holds at least one packet, worked out
//                                             on a ruler of that graduation; exact where none is given
//
// As many columns and rows as there is room for. The columns divide the width exactly; the rows are stepped from the
// heading's stitching by a round distance, and what is over stays at the foot. Each film strip is longer than the
// backing is wide, so that every pocket stands open enough for a full packet.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_ORGANISER_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_ORGANISER_HPP

#include "edition.hpp"
#include <turncloth/making/fastenings.hpp>
#include <turncloth/making/strip_pockets.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <algorithm>
#include <vector>

namespace allotment {

template <length_unit Unit>
struct organiser_measures {
    length<Unit> packet_width = by_edition<Unit>("3 1/4"_in, "8.5"_cm);
    length<Unit> packet_height = by_edition<Unit>("4 3/4"_in, 12_cm);
    length<Unit> beside_packet = by_edition<Unit>("3/4"_in, "1.5"_cm); ///< of flat backing, in each column
    length<Unit> above_packet = by_edition<Unit>("3/4"_in, 2_cm);      ///< clear of the row or the heading above
    length<Unit> row_step = by_edition<Unit>("1/4"_in, "0.5"_cm);      ///< rows are a multiple of this apart

    length<Unit> heading_depth = by_edition<Unit>("2 1/2"_in, 6_cm);
    length<Unit> heading_under = by_edition<Unit>("1/2"_in, "1.5"_cm);
    length<Unit> hem_first = by_edition<Unit>("3/8"_in, 1_cm);
    length<Unit> hem_depth = by_edition<Unit>("3/4"_in, 2_cm);
    length<Unit> inset = by_edition<Unit>("1/8"_in, "0.3"_cm); ///< stitching keeps this far from a fold
    length<Unit> above_hem = by_edition<Unit>("1/4"_in, "0.5"_cm);

    length<Unit> eyelet_hole = by_edition<Unit>("3/8"_in, 1_cm), eyelet_rim = by_edition<Unit>("3/4"_in, "1.8"_cm);
    length<Unit> eyelet_margin = by_edition<Unit>(1_in, 3_cm), eyelets_apart = by_edition<Unit>(8_in, 20_cm);
    length<Unit> eyelet_clear = by_edition<Unit>("1/4"_in, "0.6"_cm); ///< of folds, stitching and the side hems

    length<Unit> film_over = by_edition<Unit>("7/8"_in, 2_cm);      ///< in each pocket, beyond the backing's width
    length<Unit> film_below_top = by_edition<Unit>(1_in, "2.5"_cm); ///< of the packet, for fingers to take hold
    length<Unit> film_hem = by_edition<Unit>("1/2"_in, "1.2"_cm);
    length<Unit> film_seam = by_edition<Unit>("3/8"_in, 1_cm);
    length<Unit> bow_step = by_edition<Unit>("1/16"_in, "0.1"_cm); ///< how far pockets stand open is rounded to this

    organiser_measures on(const ruled<Unit>& by) const {
        organiser_measures m = *this;
        by.give(m.packet_width, m.packet_height, m.beside_packet, m.above_packet, m.heading_depth, m.heading_under)
            .give(m.hem_first, m.hem_depth, m.inset, m.above_hem, m.eyelet_hole, m.eyelet_margin, m.eyelets_apart)
            .give(m.eyelet_clear, m.film_over, m.film_below_top, m.film_hem, m.film_seam);
        m.eyelet_rim = by.given(m.eyelet_rim, 2); // its centre is marked
        m.row_step = by.step(m.row_step);
        m.bow_step = by.step(m.bow_step);
        return m;
    }
};

struct organiser {
    static constexpr std::int64_t most_each_way = 100;

    template <length_unit Unit>
    static sheet<Unit> make(const finished_size<Unit>& finished, length<Unit> graduation = {}) {
        return sheet_on_ruler(finished, graduation, design<Unit>);
    }

    template <length_unit Unit>
    static project<Unit> design(const finished_size<Unit>& asked, const ruled<Unit>& by = {}) {
        constexpr organiser_measures<Unit> usual;
        const organiser_measures<Unit> m = usual.on(by);
        const finished_size<Unit> finished = by.given(asked);
        const length<Unit> column = m.packet_width + m.beside_packet, row = m.packet_height + m.above_packet;
        // From the top and from the bottom, what no pocket may use: down to the heading's stitching, up past the hem.
        const length<Unit> at_top = m.heading_depth - m.inset, at_foot = m.hem_depth + m.above_hem;
        require_at_least(finished, column, at_top + row + at_foot, "one pocket for a seed packet");
        const length<Unit> for_rows = finished.height() - at_top - at_foot;
        require_at_most(ratio_of(finished.width(), column), most_each_way, "columns of pockets");
        require_at_most(ratio_of(for_rows, row), most_each_way, "rows of pockets");
        const std::int64_t columns = floor(ratio_of(finished.width(), column)), rows = floor(ratio_of(for_rows, row));

        project<Unit> p("Seed-packet organiser, " + std::to_string(rows) + " x " + std::to_string(columns) + " pockets",
                        finished);
        const auto hem = double_turned_hem(m.hem_first, m.hem_depth, m.inset);
        auto& backing = p.add(
            piece<Unit>("backing", "canvas",
                        panel<Unit>(finished, {heading(m.heading_depth, m.heading_under, m.inset), hem, hem, hem})));
        // No less than `row`, even where that is no multiple of row_step, so exactly `rows` marks fit.
        backing.mark("foot of a film strip", edge::top,
                     every<stitched_line>(std::max(row, down_to(for_rows / rows, m.row_step)), for_rows).marks);

        const length<Unit> film_width = finished.width() + m.film_over * columns;
        const auto turned = single_turned_hem(m.film_hem, m.inset);
        p.add(piece<Unit>("film strip", "clear film",
                          panel<Unit>(finished_size<Unit>(film_width, m.packet_height - m.film_below_top),
                                      {turned, turned, seam(m.film_seam), turned})))
            .count(rows)
            .of_film();
        p.add(
            meeting<Unit>{"film strip", "backing", edge::left, film_width, finished.width(), columns, by.graduation()});

        const std::int64_t n =
            fewest_eyelets(finished.width(), {.rim = m.eyelet_rim, .margin = m.eyelet_margin, .most = m.eyelets_apart});
        eyelet_row<Unit> holes = eyelets(backing.shape(), n, {m.eyelet_hole, m.eyelet_rim},
                                         {.margin = m.eyelet_margin, .clear = m.eyelet_clear});
        holes.along = holes.along.on_ruler(by.graduation());
        holes.down = at<finished_edge>(by.middle(m.heading_depth - m.inset));
        backing.eyelets(holes);
        p.add(listed("eyelets", holes)).add(sewn_throughout(by));
        const pocket_row<Unit> pockets(finished.width(), film_width, columns);
        p.add(notion<Unit>("pockets").figure("each stands open, in its middle, by",
                                             pockets.bow(m.bow_step, rounding::nearest)));

        p.made_as(making_of(p, m, holes));
        p.caution("Draw on film with a wax pencil, and within its allowances alone: ink does not come off.",
                  caution::work::cutting);
        p.caution("Seed may be dressed with poison: hang the packets out of children's reach.",
                  caution::work::using_it);
        return p;
    }

private:
    /// The hems, the strips in their tucks, and what each pocket must hold.
    template <length_unit Unit>
    static making<Unit> making_of(const project<Unit>& p, const organiser_measures<Unit>& m,
                                  const eyelet_row<Unit>& holes) {
        const meeting<Unit>& meets = p.meetings()[0];
        const piece<Unit>&from = p.pieces()[0], &strip = p.pieces()[1];
        making<Unit> d(p.name());
        d.lips(m.inset * 2);
        const auto backing = cut_for(d, from.name(), from.shape(), {.cloth = {.name = from.material()}});
        const auto film =
            cut_for(d, strip.name(), strip.shape(),
                    {.cloth = {.name = strip.material(), .frays = false, .film = true}, .count = strip.count()});
        finish_edges(d, backing);
        const length<Unit> width = meets.on_shorter;
        strip_pockets<Unit> pockets{
            .strip = film, .on = backing, .span = width, .columns = meets.spans, .graduation = meets.graduation};
        for (const mark_line<Unit>& mark : from.marks())
            pockets.feet.push_back(
                from.shape().from_finished_edge(edge::top, at<cut_edge>(mark.from_cut_edge.value())));
        pockets.sides = {row<finished_edge, Unit>(at<finished_edge>(m.inset), width - m.inset * 2, 2),
                         divided<finished_edge>(width, meets.spans).on_ruler(meets.graduation)};
        const std::vector<mouth_handle> tops = sew_strips(d, pockets);
        for (std::size_t k = 0; k < tops.size(); ++k)
            d.add(pocket(m, backing, film[static_cast<std::int64_t>(k)], pockets, tops[k]));
        set_eyelets(d, backing, holes);
        return d.sewn_by_machine(p.sewings()[0].stitch, p.sewings()[0].overrun);
    }

    /// The first of the k-th strip; it takes the packet's whole width, and its height up to where fingers take hold.
    template <length_unit Unit>
    static compartment<Unit> pocket(const organiser_measures<Unit>& m, const panel_part<Unit>& backing,
                                    const panel_part<Unit>& strip, const strip_pockets<Unit>& pockets,
                                    mouth_handle top) {
        const length<Unit> column = pockets.span / pockets.columns, high = strip.shape.finished().height();
        const auto foot = pockets.feet[static_cast<std::size_t>(strip.part.copy)];
        return {.name = "pockets of row " + std::to_string(strip.part.copy + 1),
                .between = {backing, strip},
                .from_left = backing.shape.finish_of(edge::left).allowance() + column / 2,
                .from_top = backing.shape.from_cut_edge(edge::top, foot).from_datum() - high / 2,
                .mouths = {top},
                .least_width = m.packet_width,
                .least_height = high,
                .count = pockets.columns,
                .step = column};
    }
};

} // namespace allotment

#endif
