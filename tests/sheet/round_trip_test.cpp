// Any size: over thousands of random finished sizes, folding each cut piece along the sheet's own lines, as a person with
// the sheet in her hand would, gives back the finished size. The projects are those of the example program.
#include "../../examples/sheets/kneeling_pad.hpp"
#include "../../examples/sheets/organiser.hpp"
#include "../../examples/sheets/tool_roll.hpp"
#include <turncloth.hpp>
#include <turncloth/panel/folding.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <string>

using namespace turncloth;

namespace {

/// What a piece measures from left to right and from top to bottom.
template <class Unit>
struct extent {
    length<Unit> left, right, bottom, top;
};

template <class Unit>
point<Unit> spot(length<Unit> x, length<Unit> y) {
    return {x, y};
}

/// The crease of one line of the sheet on a piece cut so, with the edge's side on its left.
template <class Unit>
line<Unit> crease(const sheet_line<Unit>& l, const cut_size<Unit>& cut) {
    const length<Unit> in = l.from_cut_edge.value(), w = cut.width(), h = cut.height(), none;
    switch (l.parallel_to) {
    case edge::top:
        return {spot(none, h - in), spot(w, h - in)};
    case edge::bottom:
        return {spot(w, in), spot(none, in)};
    case edge::left:
        return {spot(in, none), spot(in, h)};
    case edge::right:
        break;
    }
    return {spot(w - in, h), spot(w - in, none)};
}

/// The outline of the cut piece after every fold that the sheet lists, in its order.
template <class Unit>
extent<Unit> folded(const sheet_piece<Unit>& p) {
    const length<Unit> w = p.cut.width(), h = p.cut.height(), none;
    folding<Unit> cloth({spot(none, none), spot(w, none), spot(w, h), spot(none, h)});
    for (const sheet_line<Unit>& l : p.lines)
        if (l.kind == line_kind::fold)
            cloth.fold(crease(l, p.cut));
    extent<Unit> all{w, none, h, none};
    for (std::size_t i = 0; i < cloth.layer_count(); ++i)
        for (const point<Unit>& c : cloth.layer(i).corners) {
            all.left = std::min(all.left, c.x);
            all.right = std::max(all.right, c.x);
            all.bottom = std::min(all.bottom, c.y);
            all.top = std::max(all.top, c.y);
        }
    return all;
}

/// What an edge keeps outside the finished size after folding: a seam's allowance, which goes into the seam, or half of
/// the turn of cloth, which stands round the layers within. The sheet's lines alone say how much: a seam is stitched on the
/// finished edge, and a turn of cloth has its crease in its middle.
template <class Unit>
length<Unit> outside(const sheet_piece<Unit>& p, edge e, length<Unit> turn) {
    length<Unit> seam;
    bool turned = false;
    for (const sheet_line<Unit>& l : p.lines) {
        if (!l.of_finish || l.parallel_to != e)
            continue;
        turned |= l.kind == line_kind::fold;
        seam = l.kind == line_kind::stitching ? l.from_cut_edge.value() : seam;
    }
    return turned ? turn / 2 : seam;
}

template <class Unit>
void comes_back(const sheet<Unit>& s, const std::string& of_turn, length<Unit> turn) {
    for (const sheet_piece<Unit>& p : s.pieces) {
        const finished_size<Unit>& wanted = p.made_from.shape().finished();
        const extent<Unit> all = folded(p);
        const length<Unit> round = p.made_from.name() == of_turn ? turn : length<Unit>();
        const length<Unit> width =
            all.right - all.left - outside(p, edge::left, round) - outside(p, edge::right, round);
        const length<Unit> height =
            all.top - all.bottom - outside(p, edge::top, round) - outside(p, edge::bottom, round);
        CAPTURE(s.name);
        CAPTURE(p.made_from.name());
        CHECK(width == wanted.width());
        CHECK(height == wanted.height());
    }
}

template <class Unit>
void sizes_come_back(length<Unit> step, int count) {
    using namespace allotment;
    std::mt19937_64 random(20261125);
    const auto up_to = [&](int steps) {
        return step * static_cast<std::int64_t>(random() % static_cast<unsigned>(steps));
    };
    for (int i = 0; i < count; ++i) {
        const finished_size<Unit> size(step * 200 + up_to(600), step * 200 + up_to(600));
        const auto organised = organiser::make(size);
        CHECK(organised.pieces[0].made_from.shape().finished() == size);
        comes_back(organised, "", length<Unit>());
        const auto rolled = tool_roll::make(size);
        CHECK(rolled.pieces[0].made_from.shape().finished() == size);
        comes_back(rolled, "outer",
                   by_edition<Unit>("1/4"_in, "0.6"_cm)); // pi (1/8 + 1/32) / 2, up to 1/16; pi (0.3 + 0.08) / 2
        const auto pad = kneeling_pad::make(size);
        CHECK(pad.pieces[0].made_from.shape().finished() == size);
        comes_back(pad, "", length<Unit>());
    }
}

} // namespace

TEST_CASE("A thousand finished sizes in sixteenths of an inch come back") { sizes_come_back("1/16"_in, 1000); }

TEST_CASE("A thousand finished sizes in millimetres come back in the metric edition") { sizes_come_back(0.2_cm, 1000); }
