// Many pieces printed and joined again, and the test squares measured in dots by another renderer.
#include "at_random.hpp"
#include "drafting/measured.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstddef>
#include <numbers>
#include <random>
#include <string>
#include <vector>

namespace {

/// A grey picture of one page, by poppler's own renderer (the measuring of lines goes through cairo).
struct picture {
    std::size_t width = 0, height = 0;
    std::string dots;

    picture(const workshop& w, const std::string& pdf, int dots_in_inch) {
        const std::string told = w.of_tool("pdftoppm -gray -f 1 -l 1 -r " + std::to_string(dots_in_inch) + " " + pdf);
        std::istringstream in(told);
        std::string kind;
        int most = 0;
        in >> kind >> width >> height >> most;
        in.get();
        REQUIRE(kind == "P5");
        REQUIRE(most == 255);
        dots.resize(width * height);
        in.read(dots.data(), static_cast<std::streamsize>(dots.size()));
        REQUIRE(in);
    }
    double dark(std::size_t x, std::size_t y) const { return 255 - static_cast<unsigned char>(dots[y * width + x]); }
};

/// The middles of the dark strips that a row or a column of dots crosses, in dots.
template <class Dark>
std::vector<double> dark_strips(std::size_t from, std::size_t to, const Dark& dark) {
    std::vector<double> middles;
    double weight = 0, moment = 0;
    for (std::size_t i = from; i <= to; ++i) {
        const double d = i == to ? 0 : dark(i);
        if (d > 0) {
            weight += d;
            moment += d * (static_cast<double>(i) + 0.5);
        } else if (weight > 0) {
            middles.push_back(moment / weight);
            weight = moment = 0;
        }
    }
    return middles;
}

/// Corners on a circle squeezed any way, which makes a convex piece.
expected_piece any_piece(std::mt19937& any) {
    std::uniform_real_distribution<double> size(30, 450), angle(0.35, 1.3), allowance(3, 40);
    expected_piece piece{{}, allowance(any)};
    const double width = size(any), height = size(any);
    for (double at = angle(any); at < 2 * std::numbers::pi - 0.3; at += angle(any))
        piece.seam.push_back({width * std::cos(at), height * std::sin(at)});
    return piece;
}

} // namespace

TEST_CASE("the test squares are 50 mm and 2 in in the dots of another renderer") {
    const workshop w;
    constexpr int dots = 600; // in an inch
    const double millimetre = dots / 25.4;
    const auto at = [&](double mm) { return static_cast<std::size_t>(std::lround(mm * millimetre)); };
    for (const known_paper& on : papers) {
        REQUIRE(w.run("'" TURNCLOTH_DRAFTING_FILES "/kneeling_pad.json' --replace --out pad.pdf --paper " +
                      std::string(on.option))
                    .status == 0);
        const picture page(w, "pad.pdf", dots);
        CHECK(page.width == doctest::Approx(on.width * millimetre).epsilon(1e-3));
        CHECK(page.height == doctest::Approx(on.height * millimetre).epsilon(1e-3));
        // Where the squares are is read from the lines; how large they are is measured here.
        const auto squares = w.pages("pad.pdf")[0].of(test_square_pen);
        REQUIRE(squares.size() == 2);
        const double sides[] = {50, 50.8};
        for (std::size_t k = 0; k < 2; ++k) {
            const auto corners = extremes(squares[k].points);
            const page_point least = corners.first, most = corners.second;
            const auto row = dark_strips(at(least.x - 3), at(most.x + 3),
                                         [&](std::size_t x) { return page.dark(x, at(least.y + 8)); });
            const auto column = dark_strips(at(least.y - 3), at(most.y + 3),
                                            [&](std::size_t y) { return page.dark(at(least.x + 5), y); });
            REQUIRE(row.size() == 2);
            REQUIRE(column.size() == 2);
            CHECK(std::abs((row[1] - row[0]) / millimetre - sides[k]) < 0.05);
            CHECK(std::abs((column[1] - column[0]) / millimetre - sides[k]) < 0.05);
        }
    }
}

TEST_CASE("pieces of any size and shape are joined again as they were drafted, on either paper and in either unit") {
    const struct {
        const char* name;
        double millimetres;
    } units[] = {{"cm", 10}, {"in", 25.4}};
    const workshop w;
    at_random::seeded<std::mt19937> any(11);
    std::size_t many = 0, printed = 0;
    for (const int i : any.cases(24)) {
        const auto round = static_cast<std::size_t>(i);
        const expected_piece piece = any_piece(any);
        const known_paper& on = papers[round % 2];
        const auto& unit = units[round / 2 % 2];
        w.write("piece.json", drafting_of(piece, unit.name, unit.millimetres));
        const run_result o = w.run("piece.json --quiet --replace --out piece.pdf --paper " + std::string(on.option));
        REQUIRE(o.err.empty());
        REQUIRE(o.status == 0);
        const auto pages = w.pages("piece.pdf");
        check_piece(pages, piece, on);
        many += pages.size() > 5;
        ++printed;
    }
    CHECK(printed == 24);
    CHECK(many > 8);
}

TEST_CASE("every piece of the examples is joined again without misfit") {
    const workshop w;
    for (const known_paper& on : papers)
        for (const auto& [file, names] :
             {std::pair("kneeling_pad", std::vector{"pad top", "pad underside", "tool pocket", "carrying strap"}),
              std::pair("trug_liner", std::vector{"trug liner, side", "trug liner, end", "apron pocket"})}) {
            REQUIRE(w.run("'" TURNCLOTH_DRAFTING_FILES "/" + std::string(file) +
                          ".json' --replace --out e.pdf --paper " + on.option)
                        .status == 0);
            const auto pages = w.pages("e.pdf");
            for (const std::string name : names) {
                const pasted_piece j = ::joined(pages, name, on.width, on.height);
                CHECK(!j.pages.empty());
                CHECK(j.misfit < 0.02);
                // Of the cut line, each end on one page goes on on another, or is a corner: no end lies free.
                const auto cut = j.lines(cut_pen);
                for (const drawn_line& l : cut)
                    for (const page_point& end : {l.points.front(), l.points.back()}) {
                        std::size_t others = 0;
                        for (const drawn_line& m : cut)
                            others += &m != &l && from_lines(end, {m}) < 0.05;
                        const bool returns = apart(l.points.front(), l.points.back()) < 0.05;
                        CHECK((others > 0 || returns));
                    }
            }
        }
}
