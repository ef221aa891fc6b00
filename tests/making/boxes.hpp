// Boxes that tests sew, from the public operations alone: six pieces; plates with an edging in one strip; a base in two
// halves with a zipper between them; a tray folded from one panel; a bag with boxed corners.
#ifndef TURNCLOTH_TESTS_MAKING_BOXES_HPP
#define TURNCLOTH_TESTS_MAKING_BOXES_HPP

#include "making/things.hpp"
#include <turncloth/making/boxed.hpp>

#include <array>
#include <initializer_list>
#include <utility>

namespace things {

/// So long, high and deep between the stitched lines, with seams `s` from the cut edges.
struct box_asked {
    length<inch> w, h, d, s;
};

inline chalk_line<inch> span(cut_part on, edge from, length<inch> in, length<inch> begins, length<inch> ends) {
    return {.on = on, .from = from, .in = at<cut_edge>(in), .begins = begins, .ends = ends};
}
inline crease<inch> quarter(const chalk_line<inch>& at) { return {.at = at, .turn = turning::quarter}; }

/// Seen from outside with the top plate uppermost, the walls follow one another to the right along the plate's top, left,
/// bottom and right edges: the plate's right side being up, whoever walks round it looking at it has it turn so. The base
/// is seen from below, so that its right edge meets the wall at the plate's left.
inline constexpr std::array<edge, 4> round_top = {edge::top, edge::left, edge::bottom, edge::right};
inline constexpr std::array<edge, 4> round_base = {edge::top, edge::right, edge::bottom, edge::left};

/// Every wall is a piece of its own.
struct six_pieces {
    making<inch> design{"box of six"};
    cut_part top, base, wall[4];
    mouth_handle gap;

    explicit six_pieces(const box_asked& b) {
        const length<inch> along[] = {b.w, b.h, b.w, b.h};
        top = design.cut({.name = "top", .width = b.w + b.s * 2, .height = b.h + b.s * 2});
        base = design.cut({.name = "base", .width = b.w + b.s * 2, .height = b.h + b.s * 2});
        const char* names[] = {"back wall", "left wall", "front wall", "right wall"};
        for (std::size_t k = 0; k < 4; ++k)
            wall[k] = design.cut({.name = names[k], .width = along[k] + b.s * 2, .height = b.d + b.s * 2});
        for (std::size_t k = 0; k < 4; ++k) {
            const length<inch> end = b.s + along[k];
            join(span(top, round_top[k], b.s, b.s, end), span(wall[k], edge::top, b.s, b.s, end));
            join(span(base, round_base[k], b.s, b.s, end), span(wall[k], edge::bottom, b.s, b.s, end));
            join(span(wall[k], edge::right, b.s, b.s, b.s + b.d),
                 span(wall[(k + 1) % 4], edge::left, b.s, b.s, b.s + b.d));
        }
        gap = design.add(mouth<inch>{
            .name = "gap", .at = {span(base, edge::top, b.s, b.s + b.w / 4, b.s + b.w / 2)}, .by = closed_by::hand});
    }

private:
    void join(const chalk_line<inch>& one, const chalk_line<inch>& other) {
        design.add(seam_of<inch>{.one = {one}, .other = {other}, .beyond = beyond_seam::quarter});
    }
};

/// Where a pad is not made right.
struct pad_fault {
    length<inch> more_margin{}; ///< beside the zipper
    length<inch> half_short{};  ///< the second half of the base
    bool no_mouth = false, no_clips = false;
};

/// A pad: a plate, an edging in one strip, and a base in two halves with a zipper between their turned edges, open along
/// all of its width but `margin` at each end.
struct zipped_pad {
    making<inch> design{"pad"};
    cut_part top, half, edging, tape;
    mouth_handle zip{};
    operation join_of_halves, ring, top_seam, base_seam;
    box_asked b;
    length<inch> turn = "3/4"_in, margin = 1_in;

    explicit zipped_pad(const box_asked& asked, const pad_fault& wrong = {}) : b(asked) {
        margin += wrong.more_margin;
        top = design.cut({.name = "top", .width = b.w + b.s * 2, .height = b.h + b.s * 2});
        half = design.cut({.name = "base half",
                           .width = b.w + b.s * 2,
                           .height = turn + b.h / 2 + b.s - wrong.half_short,
                           .count = 2});
        edging = design.cut({.name = "edging", .width = (b.w + b.h) * 2 + b.s * 2, .height = b.d + b.s * 2});
        sew_halves();
        if (!wrong.no_mouth)
            add_zipper();
        ring = design.add(seam_of<inch>{.one = {span(edging, edge::left, b.s, b.s, b.s + b.d)},
                                        .other = {span(edging, edge::right, b.s, b.s, b.s + b.d)},
                                        .beyond = beyond_seam::quarter});
        fold_edging(wrong.no_clips);
        sew_plate();
        sew_base();
    }

private:
    length<inch> corner(std::size_t k) const {
        const auto n = static_cast<std::int64_t>(k);
        return b.s + b.w * ((n + 1) / 2) + b.h * (n / 2);
    }

    void sew_halves() {
        join_of_halves = design.add(seam_of<inch>{.one = {span(half[0], edge::top, turn, b.s, b.s + b.w)},
                                                  .other = {span(half[1], edge::top, turn, b.s, b.s + b.w)}});
    }
    /// Both turned edges meet over the chain; the tape's rows are theirs, 1/4 in from the folds, and one across each end.
    void add_zipper() {
        const length<inch> open = b.w - margin * 2, ends = "1/2"_in;
        tape = design.cut({.name = "zipper", .width = open + ends * 2, .height = 1_in});
        design.add(laying<inch>{.piece = tape,
                                .on = half[0],
                                .up = face::right,
                                .left = b.s + margin - ends,
                                .top = turn - "1/2"_in,
                                .beneath = true,
                                .set_into_one = true});
        design.add(laying<inch>{
            .piece = half[1], .on = half[0], .top = turn * 2 - (turn + b.h / 2 + b.s), .upside_down = true});
        for (const int k : {0, 1}) {
            design.add(crease<inch>{.at = line(half[k], edge::top, turn)});
            auto row = sewn(half[k], edge::top, turn + "1/4"_in, {half[k], tape});
            row.along.begins = b.s + margin - ends;
            row.along.ends = b.s + margin + open + ends;
            design.add(row);
        }
        for (const edge e : {edge::left, edge::right})
            design.add(stitching<inch>{.along = span(tape, e, ends / 2, "1/4"_in, "3/4"_in),
                                       .through = {tape, half[0], half[1]}});
        zip = design.add(mouth<inch>{.name = "zipper",
                                     .at = {span(half[0], edge::top, turn, b.s + margin, b.s + margin + open)},
                                     .by = closed_by::zipper});
    }
    void fold_edging(bool no_clips) {
        const length<inch> high = b.d + b.s * 2;
        for (const std::size_t k : {1U, 2U, 3U}) {
            design.add(quarter(line(edging, edge::left, corner(k))));
            if (no_clips)
                continue;
            design.add(snip<inch>{.at = span(edging, edge::left, corner(k), {}, b.s * fraction(3, 4)),
                                  .kind = snip_kind::clip});
            design.add(snip<inch>{.at = span(edging, edge::left, corner(k), high - b.s * fraction(3, 4), high),
                                  .kind = snip_kind::clip});
        }
    }
    void sew_plate() {
        seam_of<inch> s{.beyond = beyond_seam::quarter};
        for (const std::size_t k : {0U, 1U, 2U, 3U}) {
            const length<inch> along = k % 2 == 0 ? b.w : b.h;
            s.one.push_back(span(top, round_top[k], b.s, b.s, b.s + along));
            s.other.push_back(span(edging, edge::top, b.s, corner(k), corner(k) + along));
        }
        top_seam = design.add(s);
    }
    /// The first half lies at the edging's first wall, its own left at the second; the other half is turned round.
    void sew_base() {
        seam_of<inch> s{.beyond = beyond_seam::quarter};
        const auto join = [&](const chalk_line<inch>& one, length<inch> begins, length<inch> ends) {
            s.one.push_back(one);
            s.other.push_back(span(edging, edge::bottom, b.s, begins, ends));
        };
        const length<inch> middle[] = {corner(1) + b.h / 2, corner(3) + b.h / 2};
        const auto side = [&](int k, edge e) { return span(half[k], e, b.s, turn, turn + b.h / 2); };
        join(span(half[0], edge::bottom, b.s, b.s, b.s + b.w), corner(0), corner(1));
        join(side(0, edge::left), corner(1), middle[0]);
        join(side(1, edge::right), middle[0], corner(2));
        join(span(half[1], edge::bottom, b.s, b.s, b.s + b.w), corner(2), corner(3));
        join(side(1, edge::left), corner(3), middle[1]);
        join(side(0, edge::right), middle[1], corner(4));
        base_seam = design.add(s);
    }
};

/// One panel, its corners cut out to `s` from the seams: the walls stand up, and their rim is raw.
struct folded_tray {
    making<inch> design{"tray"};
    cut_part panel;

    explicit folded_tray(const box_asked& b) {
        const length<inch> across = b.w + b.d * 2, down = b.h + b.d * 2, nothing;
        panel = design.cut({.name = "panel", .width = across, .height = down});
        for (const edge e : {edge::left, edge::right})
            design.add(quarter(span(panel, e, b.d, b.d, b.d + b.h)));
        for (const edge e : {edge::top, edge::bottom})
            design.add(quarter(span(panel, e, b.d, b.d, b.d + b.w)));
        for (const edge upright : {edge::left, edge::right})
            for (const edge level : {edge::top, edge::bottom}) {
                const bool left = upright == edge::left, top = level == edge::top;
                const length<inch> x = left ? nothing : across - b.d, y = top ? nothing : down - b.d;
                design.add(seam_of<inch>{.one = {span(panel, upright, b.d, y, y + b.d)},
                                         .other = {span(panel, level, b.d, x, x + b.d)},
                                         .beyond = beyond_seam::quarter});
            }
    }
};

/// Two panels with squares cut out of their lower corners. Sides from `b.s` from the top, where a rim's seam is to run, or
/// from the raw top; base; then across the corners.
struct boxed_bag_shell {
    cut_part panel;
    operation sides[2], base, corners[2];

    boxed_bag_shell(making<inch>& design, const box_asked& b, const char* name, bool to_rim) {
        const length<inch> half = b.d / 2, across = b.w + b.d + b.s * 2, foot = b.s + half, down = b.s + b.h + foot;
        const length<inch> rim = to_rim ? b.s : length<inch>();
        panel = design.cut({.name = name, .width = across, .height = down, .count = 2});
        for (const int k : {0, 1}) {
            for (const edge e : {edge::left, edge::right})
                design.add(quarter(span(panel[k], e, b.s + half, rim, down - foot)));
            design.add(quarter(span(panel[k], edge::bottom, foot, b.s + half, across - b.s - half)));
            for (const length<inch>& x : {0_in, across - half})
                design.add(snip<inch>{.at = span(panel[k], edge::bottom, half / 2, x, x + half), .width = half});
        }
        const auto side = [&](int k, edge e) { return span(panel[k], e, b.s, rim, down - foot); };
        sides[0] = design.add(seam_of<inch>{.one = {side(0, edge::left)}, .other = {side(1, edge::right)}});
        sides[1] = design.add(seam_of<inch>{.one = {side(0, edge::right)}, .other = {side(1, edge::left)}});
        const auto bottom = [&](int k) { return span(panel[k], edge::bottom, b.s, b.s + half, across - b.s - half); };
        base = design.add(seam_of<inch>{.one = {bottom(0)}, .other = {bottom(1)}});
        for (const int c : {0, 1}) {
            seam_of<inch> s{.beyond = beyond_seam::quarter};
            for (const int k : {0, 1}) {
                const bool left = (c == 0) == (k == 0);
                const length<inch> x = left ? b.s : across - b.s - half;
                s.one.push_back(span(panel[k], edge::bottom, foot, x, x + half));
                s.other.push_back(span(panel[k], left ? edge::left : edge::right, b.s + half, down - foot, down - b.s));
            }
            corners[c] = design.add(s);
        }
    }
};

/// A bag with a boxed base and its lining, turned out through a gap in the lining's base. The rim is sewn last, and after
/// turning out the gap is closed and a row sewn round the rim.
struct lined_bag {
    making<inch> design{"lined bag"};
    boxed_bag_shell outer, lining;
    operation rim, turned, closed, round[2];
    mouth_handle gap{};

    explicit lined_bag(const box_asked& b, bool with_gap = true)
        : outer(design, b, "outer", true), lining(design, b, "lining", true) {
        const length<inch> half = b.d / 2, across = b.w + b.d + b.s * 2;
        seam_of<inch> s{.beyond = beyond_seam::back};
        for (const int k : {0, 1}) {
            s.one.push_back(span(outer.panel[k], edge::top, b.s, b.s, across - b.s));
            s.other.push_back(span(lining.panel[k], edge::top, b.s, b.s, across - b.s));
        }
        rim = design.add(s);
        for (const boxed_bag_shell* shell : {&outer, &lining})
            for (const operation& corner : shell->corners)
                design.add(before{corner, rim, "published: the bag and its lining are sewn before they are joined"});
        if (!with_gap)
            return;
        const length<inch> from = b.s + half + b.w / 4;
        gap = design.add(mouth<inch>{.name = "gap",
                                     .at = {span(lining.panel[0], edge::bottom, b.s, from, from + b.w / 2)},
                                     .by = closed_by::hand});
        turned = design.add(moment{moment_kind::turn_out, gap.index});
        closed = design.add(moment{moment_kind::close, gap.index});
        for (const std::size_t k : {0U, 1U}) {
            const cut_part p = outer.panel[static_cast<std::int64_t>(k)];
            auto row = sewn(p, edge::top, b.s + "1/4"_in, {p});
            row.along.begins = b.s;
            row.along.ends = across - b.s;
            round[k] = design.add(row);
            design.add(before{closed, round[k], "the rim is pressed first"});
        }
    }
};

/// A cushion of 16 x 16 in with a back of two pieces that lap by 3 in: flat work, four rows through what lies there.
struct lapped_cushion {
    making<inch> design{"cushion"};
    cut_part front, upper, lower;
    operation turned;

    lapped_cushion() {
        front = design.cut({.name = "front", .width = 17_in, .height = 17_in});
        upper = design.cut({.name = "upper back", .width = 17_in, .height = 11_in});
        lower = design.cut({.name = "lower back", .width = 17_in, .height = 11_in});
        hem(upper, edge::bottom);
        hem(lower, edge::top);
        design.add(laying<inch>{.piece = upper, .on = front, .up = face::wrong});
        design.add(laying<inch>{.piece = lower, .on = upper, .up = face::wrong, .top = 6_in});
        design.add(sewn(front, edge::top, "1/2"_in, {front, upper}));
        design.add(sewn(front, edge::bottom, "1/2"_in, {front, lower}));
        for (const edge e : {edge::left, edge::right})
            design.add(sewn(front, e, "1/2"_in, {front, upper, lower}));
        const auto lap =
            design.add(mouth<inch>{.name = "lap", .at = {line(upper, edge::bottom, 1_in)}, .by = closed_by::lap});
        turned = design.add(moment{moment_kind::turn_out, lap.index});
    }

private:
    /// Turned to the wrong side, which lies up.
    void hem(cut_part p, edge e) {
        for (const auto& in : {"1/2"_in, 1_in})
            design.add(crease<inch>{.at = line(p, e, in), .over = true});
        design.add(sewn(p, e, "1 3/8"_in, {p}));
    }
};

} // namespace things

#endif
