// The round trip: pieces cut to a sheet's sizes and folded by its lines alone come out at the finished size. Shared
// by the fast test and the slow one.
//
//   check_round_trips<U>(sizes, seed)     the three example projects at so many random sizes
//
// The folding engine is told the lines that the sheet prints, from the cut edges that it names; what should come out
// is the size that was asked for, or follows from it by the plainest arithmetic.
#ifndef TURNCLOTH_TESTS_SHEET_ROUND_TRIP_HPP
#define TURNCLOTH_TESTS_SHEET_ROUND_TRIP_HPP

#include "../../examples/sheets/kneeling_pad.hpp"
#include "../../examples/sheets/organiser.hpp"
#include "../../examples/sheets/tool_roll.hpp"
#include "at_random.hpp"
#include <turncloth/panel/folding.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth::round_trip {

/// What lies between the outermost creases of a folded piece, from its cut left and top edge.
template <length_unit Unit>
struct outline {
    fraction left, top, right, bottom;
    length<Unit> width() const { return length_of<Unit>(right - left); }
    length<Unit> height() const { return length_of<Unit>(bottom - top); }
};

/// Lines of the sheet along one edge, as far from it as the sheet says. A hem is folded at its folds; an edge that is
/// only sewn to another piece is pressed back along that row.
template <length_unit Unit>
std::vector<length<Unit>> creases(const sheet_piece<Unit>& p, edge e) {
    std::vector<length<Unit>> folds, rows;
    for (const auto& l : p.lines)
        if (l.parallel_to == e && l.of_finish)
            (l.kind == line_kind::fold ? folds : rows).push_back(l.from_cut_edge.value());
    return folds.empty() ? rows : folds;
}

/// With the piece's top left corner as the origin, down as plus: what lies between line and edge is left of the line.
template <length_unit Unit>
line<Unit> crease(const cut_size<Unit>& cut, edge e, length<Unit> in) {
    const length<Unit> none, one = length_of<Unit>(1);
    switch (e) {
    case edge::left:
        return {{in, none}, {in, one}};
    case edge::right:
        return {{cut.width() - in, one}, {cut.width() - in, none}};
    case edge::top:
        return {{one, in}, {none, in}};
    case edge::bottom:
        break;
    }
    return {{none, cut.height() - in}, {one, cut.height() - in}};
}

/// Folds the piece by the sheet's lines. No cloth may lie outside the body of the piece, its one layer that was never
/// turned.
template <length_unit Unit>
outline<Unit> folded(const sheet_piece<Unit>& p) {
    const length<Unit> none, w = p.cut.width(), h = p.cut.height();
    folding<Unit> cloth({point<Unit>{none, none}, {w, none}, {w, h}, {none, h}});
    for (const auto& l : p.lines) // the order of work, each edge when its first line comes up
        if (l.of_finish && &l == &*std::find_if(p.lines.begin(), p.lines.end(), [&](const auto& other) {
                return other.of_finish && other.parallel_to == l.parallel_to;
            }))
            for (const auto& in : creases(p, l.parallel_to))
                cloth.fold(crease(p.cut, l.parallel_to, in));
    outline<Unit> all{w.value(), h.value(), 0, 0}, body = all;
    const auto widen = [](outline<Unit>& o, const point<Unit>& at) {
        o.left = std::min(o.left, at.x.value());
        o.right = std::max(o.right, at.x.value());
        o.top = std::min(o.top, at.y.value());
        o.bottom = std::max(o.bottom, at.y.value());
    };
    for (std::size_t i = 0; i < cloth.layer_count(); ++i)
        for (const auto& at : cloth.layer(i).corners) {
            widen(all, at);
            if (i + 1 == cloth.layer_count())
                widen(body, at);
        }
    REQUIRE(cloth.layer(cloth.layer_count() - 1).face_up); // all turned cloth went under it
    REQUIRE(all.left == body.left);
    REQUIRE(all.right == body.right);
    REQUIRE(all.top == body.top);
    REQUIRE(all.bottom == body.bottom);
    REQUIRE(cloth.area() == w * h); // none was lost
    return all;
}

template <length_unit Unit>
const sheet_piece<Unit>& named(const sheet<Unit>& s, std::string_view name) {
    for (const auto& p : s.pieces)
        if (p.made_from.name() == name)
            return p;
    throw std::out_of_range(std::string(name));
}

template <length_unit Unit>
void check_size(const outline<Unit>& o, length<Unit> width, length<Unit> height) {
    REQUIRE(o.width() == width);
    REQUIRE(o.height() == height);
}

/// On the folded piece, from its left edge, of the marks of one name.
template <length_unit Unit>
std::vector<length<Unit>> marks_from_left(const sheet_piece<Unit>& p, std::string_view what) {
    std::vector<length<Unit>> all;
    for (const auto& l : p.lines)
        if (l.kind == line_kind::mark && l.what == what && l.parallel_to == edge::left)
            all.push_back(l.from_cut_edge.value() - length_of<Unit>(folded(p).left));
    return all;
}

template <length_unit Unit>
void check_organiser(length<Unit> w, length<Unit> h) {
    const auto s = allotment::organiser::make(finished_size<Unit>(w, h));
    const auto &backing = named(s, "backing"), &strip = named(s, "film strip");
    check_size(folded(backing), w, h);
    REQUIRE(folded(backing).top == allotment::by_edition<Unit>(3_in, 7.5_cm).value()); // the heading is at the top
    // The strip and the backing meet in as many equal spans, each 7/8 in (2 cm) longer on the strip.
    const auto on_backing = marks_from_left(backing, "where the film strip meets it"),
               on_strip = marks_from_left(strip, "where the backing meets it");
    const auto n = static_cast<std::int64_t>(on_backing.size()) + 1;
    const length<Unit> over = allotment::by_edition<Unit>("7/8"_in, 2_cm);
    REQUIRE(on_strip.size() == on_backing.size());
    REQUIRE(folded(strip).width() == w + over * n);
    for (std::size_t k = 0; k < on_strip.size(); ++k) {
        const auto which = static_cast<std::int64_t>(k) + 1;
        REQUIRE(on_backing[k] * n == w * which);
        REQUIRE(on_strip[k] == on_backing[k] + over * which);
    }
    // A packet is 4 3/4 in (12 cm) high and stands 1 in (2.5 cm) above the film.
    REQUIRE(folded(strip).height() == allotment::by_edition<Unit>("3 3/4"_in, 9.5_cm));
}

/// A fold here has no thickness: half of the turn of cloth, 1/4 in or 0.6 cm, lies beyond each finished edge.
template <length_unit Unit>
void check_tool_roll(length<Unit> w, length<Unit> h) {
    const auto s = allotment::tool_roll::make(finished_size<Unit>(w, h));
    const length<Unit> turn = allotment::by_edition<Unit>("1/4"_in, 0.6_cm);
    check_size(folded(named(s, "outer")), w + turn, h + turn);
    for (const char* inner : {"wadding", "back of the zipped pockets", "lining"})
        check_size(folded(named(s, inner)), w, h); // as it is cut, it lies within the binding
    check_size(folded(named(s, "tool pockets")), w, h / 2);
}

template <length_unit Unit>
void check_kneeling_pad(length<Unit> w, length<Unit> h, length<Unit> thickness) {
    const auto s = allotment::kneeling_pad::make(finished_size<Unit>(w, h), thickness);
    check_size(folded(named(s, "top panel")), w, h);
    check_size(folded(named(s, "base half")), std::max(w, h), std::min(w, h) / 2);
    REQUIRE(named(s, "base half").made_from.count() == 2);
    length<Unit> round; // of the edging, sewn into a ring
    for (const auto& p : s.pieces)
        if (p.made_from.name().find("edging") != std::string::npos) {
            const auto o = folded(p);
            REQUIRE(o.height() == thickness);
            round += o.width() * p.made_from.count();
        }
    REQUIRE(round == (w + h) * 2);
}

/// Sizes in any part of the unit from whole ones to 32nds, thirds and sevenths among them.
template <length_unit Unit>
void check_round_trips(int sizes, std::uint64_t seed) {
    at_random::seeded<std::mt19937_64> random(seed);
    const auto any = [&](std::int64_t low, std::int64_t high) {
        const std::int64_t parts = std::uniform_int_distribution<std::int64_t>(1, 32)(random);
        return length_of<Unit>({std::uniform_int_distribution<std::int64_t>(low * parts, high * parts)(random), parts});
    };
    const std::int64_t hand = metric_unit<Unit> ? 5 : 2; // two inches, or five centimetres
    // Thinner than a seam allowance, a pad's edging cannot be pressed: the allowance stands out on its far side. Thicker
    // than an eighth of its sides, not every pad's filling passes its opening.
    const std::int64_t thin = metric_unit<Unit> ? 2 : 1;
    while (random.another_of(sizes)) {
        const length<Unit> w = any(4 * hand, 30 * hand), h = any(6 * hand, 24 * hand), thickness = any(thin, 2 * hand);
        CAPTURE(to_text(finished_size<Unit>(w, h)));
        check_organiser(w, h);
        check_tool_roll(w, h);
        check_kneeling_pad(w, h, std::min(thickness, std::min(w, h) / 8));
    }
}

} // namespace turncloth::round_trip

#endif
