// The pad and the cushion with a lapped back, by what a designer names: panels with their finishes, edges that are folded or
// finished, pieces laid by their finished edges, lines from a finished edge or a seam. They come out as from operations alone,
// which boxes.hpp adds with every length worked out by hand. The roll, the organiser and the bound mat are in
// shorthands_test.cpp, the lined bag in boxed_corners_test.cpp.
#include "making/boxes.hpp"
#include "making/outcome.hpp"
#include <turncloth/making/laying_on.hpp>

#include <doctest/doctest.h>

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

using namespace things;

namespace {

/// Along the row that the finish of an edge has.
chalk_line<inch> sewn_edge(const panel_part<inch>& p, edge e) { return p.line(e, p.shape.finish_of(e).stitching()[0]); }
/// From `begins` to `ends` along the finished piece.
chalk_line<inch> stretch(const panel_part<inch>& p, chalk_line<inch> l, length<inch> begins, length<inch> ends) {
    const length<inch> from = p.shape.finish_of(l.is_level() ? edge::left : edge::top).allowance();
    l.begins = from + begins;
    l.ends = from + ends;
    return l;
}

making<inch> cushion_by_shorthands() {
    making<inch> d("cushion");
    const auto join = seam("1/2"_in), hem = double_turned_hem("1/2"_in, "1/2"_in, "1/8"_in);
    const auto front = cut_for(d, "front", panel<inch>({16_in, 16_in}, all_round(join)));
    const cut_from<inch> wrong_side{.up = face::wrong};
    const auto upper = cut_for(d, "upper back", panel<inch>({16_in, "9 1/2"_in}, {join, join, hem, join}), wrong_side),
               lower = cut_for(d, "lower back", panel<inch>({16_in, "9 1/2"_in}, {hem, join, join, join}), wrong_side);
    finish_edges(d, upper);
    finish_edges(d, lower);
    lay_on(d, upper, front);
    lay_on(d, lower, upper, {}, at<finished_edge>("6 1/2"_in)); // laps by 9 1/2 - 6 1/2
    const auto sew_all = [&](edge e, std::vector<cut_part> through) {
        d.add(stitching<inch>{.along = sewn_edge(front, e), .through = std::move(through)});
    };
    sew_all(edge::top, {front, upper});
    sew_all(edge::bottom, {front, lower});
    for (const edge e : {edge::left, edge::right})
        sew_all(e, {front, upper, lower});
    const auto lap = d.add(
        mouth<inch>{.name = "lap", .at = {upper.line(edge::bottom, at<finished_edge>(0_in))}, .by = closed_by::lap});
    d.add(moment{moment_kind::turn_out, lap.index});
    return d;
}

/// 16 x 9 x 2 in, with a zipper that opens 14 in of its base, its tape 1/2 in longer at each end and 1 in wide.
class pad_by_shorthands {
public:
    making<inch> make() {
        for (const std::int64_t k : {0, 1})
            half_.push_back(halves_[k]);
        sew_halves();
        set_zipper_in();
        sew_edging();
        return std::move(d_);
    }

private:
    static finish<inch> beside_zipper() {
        finish<inch> f("beside a zipper");
        return f.allows("3/4"_in).folds_at("3/4"_in).stitched_at(1_in);
    }
    chalk_line<inch> fold_of(std::size_t k, length<inch> begins, length<inch> ends) const {
        return stretch(half_[k], half_[k].line(edge::top, at<finished_edge>(0_in)), begins, ends);
    }

    void sew_halves() {
        d_.add(seam_of<inch>{.one = {fold_of(0, 0_in, 16_in)}, .other = {fold_of(1, 0_in, 16_in)}});
        for (const panel_part<inch>& half : half_)
            fold_edge(d_, half, edge::top);
        // The other half, turned round, comes to lie fold to fold.
        const panel<inch>& shape = halves_.shape;
        d_.add(laying<inch>{.piece = half_[1],
                            .on = half_[0],
                            .top = shape.finish_of(edge::top).allowance() * 2 - shape.cut().height(),
                            .upside_down = true});
    }
    void set_zipper_in() {
        const cut_part tape = d_.cut({.name = "zipper", .width = 15_in, .height = 1_in});
        const auto from_cut = [&](edge e, length<inch> l) {
            return halves_.shape.from_cut_edge(e, at<finished_edge>(l)).from_datum();
        };
        d_.add(laying<inch>{.piece = tape,
                            .on = half_[0],
                            .left = from_cut(edge::left, "1/2"_in),
                            .top = from_cut(edge::top, "-1/2"_in),
                            .beneath = true,
                            .set_into_one = true});
        for (const panel_part<inch>& half : half_)
            d_.add(stitching<inch>{.along = stretch(half, sewn_edge(half, edge::top), "1/2"_in, "15 1/2"_in),
                                   .through = {half, tape}});
        for (const edge e : {edge::left, edge::right})
            d_.add(stitching<inch>{.along = span(tape, e, "1/4"_in, "1/4"_in, "3/4"_in),
                                   .through = {tape, half_[0], half_[1]}});
        d_.add(mouth<inch>{.name = "zipper", .at = {fold_of(0, 1_in, 15_in)}, .by = closed_by::zipper});
    }
    /// Corners are 16, 25 and 41 in along it, clipped to 1/8 in from its rows.
    void sew_edging() {
        const auto end = [&](edge e) { return stretch(edging_, sewn_edge(edging_, e), 0_in, 2_in); };
        d_.add(seam_of<inch>{.one = {end(edge::left)}, .other = {end(edge::right)}, .beyond = beyond_seam::quarter});
        for (const length<inch>& corner : {16_in, 25_in, 41_in}) {
            const chalk_line<inch> l = edging_.line(edge::left, at<finished_edge>(corner));
            d_.add(quarter(l));
            for (const auto& [begins, ends] : {std::pair("-1/2"_in, "-1/8"_in), std::pair("2 1/8"_in, "2 1/2"_in)})
                d_.add(snip<inch>{.at = stretch(edging_, l, begins, ends), .kind = snip_kind::clip});
        }
        seam_of<inch> plate{.beyond = beyond_seam::quarter}, base = plate;
        const auto join = [&](seam_of<inch>& s, const panel_part<inch>& p, edge e, length<inch> from,
                              length<inch> until) {
            s.one.push_back(whole(p, e));
            s.other.push_back(
                stretch(edging_, sewn_edge(edging_, &s == &plate ? edge::top : edge::bottom), from, until));
        };
        join(plate, top_, edge::top, 0_in, 16_in);
        join(plate, top_, edge::left, 16_in, 25_in);
        join(plate, top_, edge::bottom, 25_in, 41_in);
        join(plate, top_, edge::right, 41_in, 50_in);
        join(base, half_[0], edge::bottom, 0_in, 16_in);
        join(base, half_[0], edge::left, 16_in, "20 1/2"_in);
        join(base, half_[1], edge::right, "20 1/2"_in, 25_in);
        join(base, half_[1], edge::bottom, 25_in, 41_in);
        join(base, half_[1], edge::left, 41_in, "45 1/2"_in);
        join(base, half_[0], edge::right, "45 1/2"_in, 50_in);
        d_.add(plate);
        d_.add(base);
    }
    static chalk_line<inch> whole(const panel_part<inch>& p, edge e) {
        const finished_size<inch>& size = p.shape.finished();
        return stretch(p, sewn_edge(p, e), 0_in, is_level(e) ? size.width() : size.height());
    }

    making<inch> d_{"pad"};
    const edges<inch> joined_ = all_round(seam("1/2"_in));
    panel_part<inch> top_ = cut_for(d_, "top", panel<inch>({16_in, 9_in}, joined_)),
                     halves_ = cut_for(d_, "base half",
                                       panel<inch>({16_in, "4 1/2"_in},
                                                   {beside_zipper(), joined_.right, joined_.bottom, joined_.left}),
                                       {.count = 2}),
                     edging_ = cut_for(d_, "edging", panel<inch>({50_in, 2_in}, joined_));
    std::vector<panel_part<inch>> half_{};
};

} // namespace

TEST_CASE("a cushion built by shorthands is the cushion built from the operations alone") {
    CHECK(outcome_of(cushion_by_shorthands()) == outcome_of(lapped_cushion().design));
}

TEST_CASE("a pad built by shorthands is the pad built from the operations alone") {
    const making<inch> d = pad_by_shorthands().make();
    CHECK(execute(d).faults.empty());
    CHECK(outcome_of(d) == outcome_of(zipped_pad({.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in}).design));
}
