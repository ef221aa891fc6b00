// A boxed kneeling pad: a cover of a top, a base in two halves with a zipper between them, and an edging round the
// sides; and what fills it.
//
//   kneeling_pad::make(finished, thickness, cloth, graduation)   the sheet for any finished size whose filling passes the
//                                  zipper, worked out on a ruler of that graduation; exact where none is given
//
// The zipper runs along the longer side. Where the filling would not pass it end on, the zipper is longer and the filling
// is folded in half, and what is too thick for that is refused. The edging starts and ends at a corner, and is marked
// where it turns the others. It is cut in one where the cloth is wide enough, else in four, with a seam at every corner.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_KNEELING_PAD_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_KNEELING_PAD_HPP

#include "pad_shape.hpp"
#include <turncloth/making/finishing.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <algorithm>
#include <array>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace allotment {

/// How the pad is made: the base and its zipper, the edging, and the seams that join both to the top.
template <length_unit Unit>
class pad_making {
public:
    pad_making(const project<Unit>& p, const pad_shape<Unit>& shape)
        : shape_(shape),
          d_(p.name()),
          top_(cut(p.pieces()[0])),
          half_(cut(p.pieces()[1])),
          along_{shape.box.width(), shape.box.height(), shape.box.width(), shape.box.height()} {
        find_walls(p);
    }

    making<Unit> make() {
        join_halves();
        set_zipper_in();
        if (walls_[0].of == walls_[1].of)
            turn_corners();
        for (const std::size_t k : {0U, 1U, 2U, 3U})
            if (walls_[k].of != walls_[(k + 1) % 4].of || k == 3)
                join_walls(k);
        sew_to_edging(edge::top, round_top());
        sew_to_edging(edge::bottom, round_base());
        fill();
        d_.sewn_by_machine(sewn_throughout<Unit>().stitch, sewn_throughout(shape_.by).overrun);
        return std::move(d_);
    }

private:
    /// A side of the edging: its piece, and where on that it begins.
    struct wall {
        cut_part of{};
        length<Unit> begins{};
    };
    /// What is sewn to a side of the edging, from where on that.
    struct joined {
        chalk_line<Unit> line;
        std::size_t wall = 0;
        length<Unit> begins{};
    };

    panel_part<Unit> cut(const piece<Unit>& p) {
        return cut_for(d_, p.name(), p.shape(), {.cloth = {.name = p.material()}, .count = p.count()});
    }
    length<Unit> seam_in() const { return shape_.m.seam_allowance; }
    place<cut_edge, Unit> seam_line() const { return at<cut_edge>(seam_in()); }

    /// Seen from outside with the top uppermost they follow one another along its top, left, bottom and right edges.
    void find_walls(const project<Unit>& p) {
        std::vector<panel_part<Unit>> sides;
        for (std::size_t i = 2; i < p.pieces().size(); ++i)
            sides.push_back(cut(p.pieces()[i]));
        length<Unit> begins = seam_in();
        for (std::size_t k = 0; k < 4; ++k) {
            const auto copy = static_cast<std::int64_t>(sides.size() == 1 ? k : k / 2);
            if (p.pieces()[2].count() == 1)
                walls_[k] = {sides[0], begins};
            else
                walls_[k] = {sides[sides.size() == 1 || (k % 2 == 0) == shape_.runs_across() ? 0 : 1][copy], seam_in()};
            begins += along_[k];
        }
    }
    chalk_line<Unit> on_wall(std::size_t k, edge e, length<Unit> from, length<Unit> to) const {
        const wall& w = walls_[k % 4];
        return {.on = w.of, .from = e, .in = seam_line(), .begins = w.begins + from, .ends = w.begins + to};
    }

    chalk_line<Unit> beside_zipper(std::int64_t k) const {
        return half_[k].line(edge::top, at<cut_edge>(shape_.m.zipper_turn));
    }
    void join_halves() {
        d_.add(seam_of<Unit>{.one = {beside_zipper(0)}, .other = {beside_zipper(1)}});
        d_.add(laying<Unit>{.piece = half_[1],
                            .on = half_[0],
                            .top = shape_.m.zipper_turn * 2 - half_.shape.cut().height(),
                            .upside_down = true});
    }
    /// Its tape lies centred under the folds; across each end of it both halves are sewn to it, just past the stop.
    void set_zipper_in() {
        const kneeling_pad_measures<Unit>& m = shape_.m;
        const length<Unit> opens = opening(shape_.zipper), taped = opens + m.zipper_ends * 2,
                           wide = m.zipper_stitching * 4;
        const length<Unit> begins = seam_in() + shape_.zipper.margin;
        const cut_part tape = d_.cut(
            {.name = "zipper", .cloth = {.name = "zipper tape", .frays = false}, .width = taped, .height = wide});
        d_.add(laying<Unit>{.piece = tape,
                            .on = half_[0],
                            .left = begins - m.zipper_ends,
                            .top = m.zipper_turn - wide / 2,
                            .beneath = true,
                            .set_into_one = true});
        for (const std::int64_t k : {0, 1})
            finish_edge(d_, half_[k], edge::top, {tape});
        for (const edge e : {edge::left, edge::right})
            d_.add(stitching<Unit>{.along = {.on = tape,
                                             .from = e,
                                             .in = at<cut_edge>(shape_.by.middle(m.zipper_ends)),
                                             .begins = m.zipper_stitching,
                                             .ends = wide - m.zipper_stitching},
                                   .through = {tape, half_[0], half_[1]}});
        chalk_line<Unit> chain = beside_zipper(0);
        chain.begins = begins;
        chain.ends = begins + opens;
        zipper_ = d_.add(mouth<Unit>{.name = "zipper", .at = {chain}, .by = closed_by::zipper});
    }

    /// An edging in one turns three corners; its allowances are stayed and clipped there, so that they spread.
    void turn_corners() {
        const kneeling_pad_measures<Unit>& m = shape_.m;
        const cut_part edging = walls_[0].of;
        const length<Unit> high = d_.parts()[edging.index].height;
        for (const std::size_t k : {1U, 2U, 3U}) {
            const length<Unit> corner = walls_[k].begins;
            const auto across = [&](length<Unit> begins, length<Unit> ends) {
                return chalk_line<Unit>{
                    .on = edging, .from = edge::left, .in = at<cut_edge>(corner), .begins = begins, .ends = ends};
            };
            d_.add(crease<Unit>{.at = {.on = edging, .from = edge::left, .in = at<cut_edge>(corner)},
                                .turn = turning::quarter});
            d_.add(snip<Unit>{.at = across({}, m.clip()), .kind = snip_kind::clip});
            d_.add(snip<Unit>{.at = across(high - m.clip(), high), .kind = snip_kind::clip});
            for (const edge e : {edge::top, edge::bottom})
                d_.add(stitching<Unit>{.along = {.on = edging,
                                                 .from = e,
                                                 .in = at<cut_edge>(m.stayed()),
                                                 .begins = corner - m.stay,
                                                 .ends = corner + m.stay}});
        }
    }
    void join_walls(std::size_t k) {
        const auto end = [&](std::size_t i, edge e) {
            return chalk_line<Unit>{.on = walls_[i % 4].of,
                                    .from = e,
                                    .in = seam_line(),
                                    .begins = seam_in(),
                                    .ends = seam_in() + shape_.box.depth()};
        };
        d_.add(seam_of<Unit>{
            .one = {end(k, edge::right)}, .other = {end(k + 1, edge::left)}, .beyond = beyond_seam::quarter});
    }

    chalk_line<Unit> on_seam(const panel_part<Unit>& p, edge e) const {
        const edge start = e == edge::top || e == edge::bottom ? edge::left : edge::top;
        const length<Unit> begins = p.shape.finish_of(start).allowance();
        const finished_size<Unit>& size = p.shape.finished();
        return {.on = p,
                .from = e,
                .in = seam_line(),
                .begins = begins,
                .ends = begins + (start == edge::left ? size.width() : size.height())};
    }
    std::vector<joined> round_top() const {
        return {{on_seam(top_, edge::top), 0},
                {on_seam(top_, edge::left), 1},
                {on_seam(top_, edge::bottom), 2},
                {on_seam(top_, edge::right), 3}};
    }
    /// From below, so that its edges follow one another the other way. The second half is turned round.
    std::vector<joined> round_base() const {
        const std::size_t first = shape_.runs_across() ? 0 : 1;
        const length<Unit> middle = shape_.half().height();
        return {{on_seam(half_[0], edge::bottom), first},
                {on_seam(half_[0], edge::left), first + 1},
                {on_seam(half_[1], edge::right), first + 1, middle},
                {on_seam(half_[1], edge::bottom), first + 2},
                {on_seam(half_[1], edge::left), first + 3},
                {on_seam(half_[0], edge::right), first + 3, middle}};
    }
    void sew_to_edging(edge e, const std::vector<joined>& all) {
        seam_of<Unit> s{.beyond = beyond_seam::quarter};
        for (const joined& j : all) {
            s.one.push_back(j.line);
            s.other.push_back(on_wall(j.wall, e, j.begins, j.begins + (*j.line.ends - *j.line.begins)));
        }
        d_.add(std::move(s));
    }

    void fill() {
        const compartment_handle inside = d_.add(compartment<Unit>{.name = "inside of the cover",
                                                                   .between = {top_, half_[0]},
                                                                   .from_left = seam_in() * 2,
                                                                   .from_top = seam_in() * 2,
                                                                   .mouths = {zipper_}});
        d_.add(contents<Unit>{.what = "filling",
                              .width = shape_.foam.width(),
                              .height = shape_.foam.height(),
                              .depth = shape_.foam.depth(),
                              .into = inside,
                              .by = zipper_,
                              .squeezed = shape_.m.squeeze,
                              .folds = shape_.folds});
        d_.add(moment{moment_kind::turn_out, zipper_.index});
        d_.add(moment{moment_kind::put_in, 0});
        d_.add(moment{moment_kind::close, zipper_.index});
    }

    const pad_shape<Unit>& shape_;
    making<Unit> d_;
    panel_part<Unit> top_, half_;
    std::array<length<Unit>, 4> along_;
    std::array<wall, 4> walls_{};
    mouth_handle zipper_{};
};

struct kneeling_pad {
    template <length_unit Unit>
    static sheet<Unit> make(const finished_size<Unit>& finished,
                            length<Unit> thickness = usual_kneeling_pad<Unit>.thickness,
                            const cloth_sold<Unit>& cloth = {}, length<Unit> graduation = {}) {
        return sheet_on_ruler(finished, graduation, [&](const finished_size<Unit>& asked, const ruled<Unit>& by) {
            return design(asked, thickness, cloth, by);
        });
    }

    template <length_unit Unit>
    static project<Unit> design(const finished_size<Unit>& asked,
                                length<Unit> thickness_asked = usual_kneeling_pad<Unit>.thickness,
                                const cloth_sold<Unit>& cloth = {}, const ruled<Unit>& by = {}) {
        const kneeling_pad_measures<Unit> m = usual_kneeling_pad<Unit>.on(by);
        const finished_size<Unit> finished = on_ruler(asked, by);
        const length<Unit> thickness = by.given(thickness_asked);
        const pad_shape<Unit> shape(m, by, {finished.width(), finished.height(), thickness});
        const zipped_opening<Unit>& z = shape.zipper;
        project<Unit> p(title(thickness, thickness_asked), finished);
        const auto sewn = seam(m.seam_allowance);
        p.add(piece<Unit>("top panel", "canvas",
                          panel<Unit>::from_cut(plate(shape.box, m.seam_allowance), all_round(sewn))));
        p.add(piece<Unit>("base half", "canvas", panel<Unit>(shape.half(), {beside_zipper(m), sewn, sewn, sewn})))
            .count(2)
            .mark("end of the zipper's opening", edge::left, at<finished_edge>(z.margin), {{edge::top, m.zipper_turn}})
            .mark("end of the zipper's opening", edge::right, at<finished_edge>(z.margin),
                  {{edge::top, m.zipper_turn}});
        add_edging(p, m, shape.box, cloth);
        p.caution("A cover that is loose on its pad slides: kneel on it only where it fills out every corner.",
                  caution::work::using_it);
        p.prepare(
            "Overcast every cut edge of the cover, or zigzag along it, so that the allowances, which stay raw inside "
            "it, do not fray in the wash. The figures for thread leave this out.");
        if (trimmed<Unit>(z, pad_shape<Unit>::lengths_sold(), {m.zipper_ends, m.zipper_ends}).needs_a_stop)
            p.prepare("Sew the new stop to the zipper, and cut its tape, where the zipper's figures say.");
        p.add(listed("zipper between the base halves", 1, z,
                     zipper_supply<Unit>::made_up(pad_shape<Unit>::lengths_sold(), m.zipper_ends, m.zipper_ends)));
        p.add(filling(shape)).add(sewn_throughout(by));
        p.made_as(pad_making<Unit>(p, shape).make());
        return p;
    }

private:
    template <length_unit Unit>
    static std::string title(length<Unit> thickness, length<Unit> asked) {
        return "Kneeling pad cover, " + to_text(thickness) + " thick" +
               (thickness == asked ? "" : ", for " + to_text(asked) + " asked");
    }

    /// The shorter side is parted into two base halves alike, and stays the shorter.
    template <length_unit Unit>
    static finished_size<Unit> on_ruler(const finished_size<Unit>& asked, const ruled<Unit>& by) {
        const length<Unit> shorter = by.given(std::min(asked.width(), asked.height()), 2);
        const length<Unit> longer = std::max(by.given(std::max(asked.width(), asked.height())), shorter);
        return asked.width() >= asked.height() ? finished_size<Unit>(longer, shorter)
                                               : finished_size<Unit>(shorter, longer);
    }

    /// The edges of both halves are turned under and meet over the chain.
    template <length_unit Unit>
    static finish<Unit> beside_zipper(const kneeling_pad_measures<Unit>& m) {
        return finish<Unit>("turned under beside the zipper")
            .allows(m.zipper_turn)
            .folds_at(m.zipper_turn)
            .stitched_at(m.zipper_turn + m.zipper_stitching)
            .reaches(m.zipper_turn);
    }

    template <length_unit Unit>
    static void add_edging(project<Unit>& p, const kneeling_pad_measures<Unit>& m, const boxed_size<Unit>& box,
                           const cloth_sold<Unit>& cloth) {
        const auto add = [&](const char* name, length<Unit> long_, length<Unit> width) -> piece<Unit>& {
            return p.add(
                piece<Unit>(name, "canvas",
                            panel<Unit>::from_cut(cut_size<Unit>(long_, width), all_round(seam(m.seam_allowance)))));
        };
        const box_edging<Unit> whole = edging(box, m.seam_allowance, 1);
        if (whole.total <= cloth.usable()) {
            auto& strip = add("edging", whole.total, whole.width);
            for (const length<Unit>& turns : {box.width(), box.width() + box.height(), box.width() * 2 + box.height()})
                strip.mark("corner", edge::left, at<finished_edge>(turns),
                           {{edge::top, m.seam_allowance}, {edge::bottom, m.seam_allowance}});
            return;
        }
        const box_edging<Unit> four = edging(box, m.seam_allowance, 4);
        if (box.width() == box.height()) {
            add("side of the edging", four.pieces[0], four.width).count(4);
            return;
        }
        const bool wide = box.width() > box.height();
        add("long side of the edging", four.pieces[wide ? 0 : 1], four.width).count(2);
        add("short side of the edging", four.pieces[wide ? 1 : 0], four.width).count(2);
    }

    template <length_unit Unit>
    static notion<Unit> filling(const pad_shape<Unit>& shape) {
        const kneeling_pad_measures<Unit>& m = shape.m;
        return notion<Unit>("filling")
            .figure("foam, width", shape.foam.width())
            .sold(sold_as::as_told)
            .figure("foam, height", shape.foam.height())
            .sold(sold_as::as_told)
            .figure("foam, thickness", shape.foam.depth())
            .sold(sold_as::as_told)
            .number("or instead, layers of wadding of that size", wadding_layers(shape.box.depth(), m.loft, m.kept))
            .figure("thickness of each layer before it is knelt on", m.loft)
            .caution(caution::filling)
            .caution(caution::infants_and_animals);
    }
};

} // namespace allotment

#endif
