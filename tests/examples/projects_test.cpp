// The projects at every size of a grid: each sheet is made without an error or a warning, and its figures are those of
// plain integer arithmetic in sixteenths of an inch or in millimetres, with the measures written out again.
#include "../../examples/sheets/projects.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <string>

namespace {

using namespace turncloth;

struct inch_grid {
    using unit = inch;
    static length<inch> at(std::int64_t n) { return length_of<inch>({n, 16}); }
    // The organiser: column, row, top, foot, step of rows, to the heading's stitching from the cut edge, film over.
    static constexpr std::int64_t column = 64, row = 88, top = 38, foot = 16, step = 4, stitched = 86, over = 14;
    // The roll: binding, tool pocket, what binding and turn of cloth take together on one side.
    static constexpr std::int64_t binding = 10, tool = 44, bound = 24, least = 176;
    // The pad: seam, what the zipper's edge takes, the cloth's usable width, the thickness.
    static constexpr std::int64_t seam = 8, zipper = 12, cloth = 848, thick = 28;
    // Eyelets: rim, margin, at most so far apart. The roll's girth is rounded up to this.
    static constexpr std::int64_t rim = 12, margin = 16, apart = 128, girth = 2;
    static constexpr double stack = 13.5; // of the roll, rolled up double: 27/32 in
};

struct millimetre_grid {
    using unit = centimetre;
    static length<centimetre> at(std::int64_t n) { return length_of<centimetre>({n, 10}); }
    static constexpr std::int64_t column = 100, row = 140, top = 57, foot = 25, step = 5, stitched = 132, over = 20;
    static constexpr std::int64_t binding = 15, tool = 70, bound = 36, least = 280;
    static constexpr std::int64_t seam = 15, zipper = 20, cloth = 1380, thick = 45;
    static constexpr std::int64_t rim = 18, margin = 30, apart = 200, girth = 5;
    static constexpr double stack = 20.4;
};

template <length_unit Unit>
const sheet_piece<Unit>& piece_named(const sheet<Unit>& s, std::string_view name) {
    for (const auto& p : s.pieces)
        if (p.made_from.name() == name)
            return p;
    throw std::out_of_range(std::string(name));
}

/// Distances from the cut edge of the marks of one name, in order.
template <length_unit Unit>
std::vector<length<Unit>> marks_named(const sheet_piece<Unit>& p, std::string_view what) {
    std::vector<length<Unit>> places;
    for (const auto& l : p.lines)
        if (l.kind == line_kind::mark && l.what == what)
            places.push_back(l.from_cut_edge.value());
    return places;
}

/// The figure of a notion by what it says.
template <length_unit Unit>
notion_detail<Unit> detail_of(const sheet<Unit>& s, std::string_view notion, std::string_view what) {
    for (const auto& n : s.notions)
        for (const auto& d : n.details())
            if (n.name() == notion && d.what == what)
                return d;
    throw std::out_of_range(std::string(what));
}

template <class Grid>
void check_organiser(std::int64_t w, std::int64_t h) {
    using unit = typename Grid::unit;
    const auto s = allotment::organiser::make(finished_size<unit>(Grid::at(w), Grid::at(h)));
    REQUIRE(s.warnings.empty());
    const std::int64_t room = h - Grid::top - Grid::foot, columns = w / Grid::column, rows = room / Grid::row;
    const std::int64_t apart = room / rows / Grid::step * Grid::step;
    const auto feet = marks_named(piece_named(s, "backing"), "foot of a film strip");
    REQUIRE(static_cast<std::int64_t>(feet.size()) == rows);
    for (std::int64_t k = 0; k < rows; ++k)
        REQUIRE(feet[static_cast<std::size_t>(k)] == Grid::at(Grid::stitched + apart * (k + 1)));
    REQUIRE(s.meetings.size() == 1);
    REQUIRE(s.meetings[0].marks.spans() == columns);
    REQUIRE(s.meetings[0].marks.surplus(0) == Grid::at(Grid::over));
    REQUIRE(piece_named(s, "film strip").made_from.count() == rows);
    REQUIRE(piece_named(s, "film strip").made_from.shape().finished().width() == Grid::at(w + columns * Grid::over));
    const std::int64_t between = w - 2 * Grid::margin - Grid::rim, steps = (between + Grid::apart - 1) / Grid::apart;
    REQUIRE(detail_of(s, "eyelets", "eyelets").count == steps + 1);
    const auto centres = detail_of(s, "eyelets", "centres, from the finished left edge").places;
    REQUIRE(static_cast<std::int64_t>(centres.size()) == steps + 1);
    for (std::int64_t k = 0; k <= steps; ++k) // 2 steps times each, so that no division is needed
        REQUIRE(centres[static_cast<std::size_t>(k)] * (2 * steps) ==
                Grid::at((2 * Grid::margin + Grid::rim) * steps + 2 * between * k));
}

template <class Grid>
void check_tool_roll(std::int64_t w, std::int64_t h) {
    using unit = typename Grid::unit;
    const auto s = allotment::tool_roll::make(finished_size<unit>(Grid::at(w), Grid::at(h)));
    REQUIRE(s.warnings.empty());
    REQUIRE(piece_named(s, "outer").cut ==
            cut_size<unit>(Grid::at(w + 2 * Grid::bound), Grid::at(h + 2 * Grid::bound)));
    const auto marks = marks_named(piece_named(s, "tool pockets"), "between two tools");
    const std::int64_t pockets = (w - 2 * Grid::binding) / Grid::tool;
    REQUIRE(static_cast<std::int64_t>(marks.size()) == pockets - 1);
    for (std::int64_t k = 1; k < pockets; ++k) // n times the mark, so that no division is needed
        REQUIRE(marks[static_cast<std::size_t>(k - 1)] * pockets ==
                Grid::at(Grid::binding * pockets + (w - 2 * Grid::binding) * k));
    // Of a roll that keeps its area, pi r^2 = width x thickness.
    const double round = 2 * std::sqrt(std::numbers::pi * static_cast<double>(w) * Grid::stack);
    const auto girth = detail_of(s, "tie", "once round the roll").amount.value();
    REQUIRE(girth == Grid::at(static_cast<std::int64_t>(std::ceil(round / Grid::girth)) * Grid::girth));
}

template <class Grid>
void check_kneeling_pad(std::int64_t w, std::int64_t h) {
    using unit = typename Grid::unit;
    const auto s = allotment::kneeling_pad::make(finished_size<unit>(Grid::at(w), Grid::at(h)));
    REQUIRE(s.warnings.empty());
    const auto cut = [&](std::string_view name) { return piece_named(s, name).cut; };
    REQUIRE(cut("top panel") == cut_size<unit>(Grid::at(w + 2 * Grid::seam), Grid::at(h + 2 * Grid::seam)));
    REQUIRE(cut("base half").width() == Grid::at(std::max(w, h) + 2 * Grid::seam));
    REQUIRE(cut("base half").height() * 2 == Grid::at(std::min(w, h) + 2 * (Grid::seam + Grid::zipper)));
    const bool in_one = 2 * (w + h) + 2 * Grid::seam <= Grid::cloth;
    const auto strip = [](std::int64_t along) {
        return cut_size<unit>(Grid::at(along + 2 * Grid::seam), Grid::at(Grid::thick + 2 * Grid::seam));
    };
    if (in_one) {
        REQUIRE(cut("edging") == strip(2 * (w + h)));
    } else {
        const bool square = w == h;
        REQUIRE(cut(square ? "side of the edging" : "long side of the edging") == strip(std::max(w, h)));
        REQUIRE(cut(square ? "side of the edging" : "short side of the edging") == strip(std::min(w, h)));
        for (const auto& p : s.pieces)
            if (p.made_from.name().find("side of the edging") != std::string::npos)
                REQUIRE(p.made_from.count() == (square ? 4 : 2));
    }
}

template <class Grid>
void check_every_size() {
    // Prime to every measure, so that many remainders come up; each size is carried out, row by row.
    for (std::int64_t w = 2 * Grid::tool + 2 * Grid::binding; w < 16 * Grid::column; w += 151)
        for (std::int64_t h = Grid::least; h < 12 * Grid::row; h += 211) {
            CAPTURE(w);
            CAPTURE(h);
            check_organiser<Grid>(w, h);
            check_tool_roll<Grid>(w, h);
            check_kneeling_pad<Grid>(w, h);
        }
}

} // namespace

TEST_CASE("at sizes in sixteenths of an inch the sheets agree with integer arithmetic") {
    check_every_size<inch_grid>();
}

TEST_CASE("at sizes in millimetres the metric sheets agree with integer arithmetic") {
    check_every_size<millimetre_grid>();
}
