// Bounding rectangles along the grain, and the cloth they need.
#include "cloth.hpp"
#include "drafting_file.hpp"

#include <doctest/doctest.h>

#include <string>
#include <variant>
#include <vector>

using namespace drafting;

namespace {

made_piece<centimetre> piece_of(const std::string& grain, const std::string& rest = "cut: 2\n") {
    return std::get<made_drafting<centimetre>>(
               read_drafting("title: T\nunit: cm\npiece: p\nmaterial: m\ngrain: " + grain + "\n" + rest +
                             "all edges: raw\ncorner: 0; 0\ncorner: 30; 0\ncorner: 30; 10\ncorner: 0; 10\n"))
        .pieces[0];
}

} // namespace

TEST_CASE("the bounding rectangle lies along the grain") {
    CHECK(bounding_size(piece_of("5; 2; 5; 8")) == cut_size(30_cm, 10_cm));
    CHECK(bounding_size(piece_of("2; 5; 8; 5")) == cut_size(10_cm, 30_cm));
    // On the bias 30 x 10 lies within (30 + 10) / sqrt 2 each way, 282.842... mm, up to the next tenth (geometry).
    CHECK(bounding_size(piece_of("2; 2; 8; 8")) == cut_size("28.29"_cm, "28.29"_cm));
}

TEST_CASE("the cloth is the least for its rectangles, each material by itself, and turned only where allowed") {
    const auto length_for = [](const std::string& turn) {
        const made_drafting<centimetre> d{"T", {piece_of("5; 2; 5; 8", "cut: 2\n" + turn)}};
        const auto cloths = laid_out(d, {.width = 210_mm});
        REQUIRE(cloths.size() == 1);
        return cloths[0].lay.length;
    };
    // 30 cm across does not go on 21 cm; turned, two lie side by side on 20.
    CHECK_THROWS_WITH(length_for(""), "piece \"p\" is 11 13/16 in (30 cm) across its grain, 3 9/16 in (9 cm) more than "
                                      "the usable width of 8 1/4 in (21 cm): with \"turn: allowed\" it would fit");
    CHECK(length_for("turn: allowed\n") == 30_cm);
    made_drafting<centimetre> two{"T", {piece_of("5; 2; 5; 8"), piece_of("5; 2; 5; 8")}};
    two.pieces[1].says.material = "other";
    const auto cloths = laid_out(two, {.width = 620_mm, .selvedge = 5_mm, .gap = 10_mm});
    REQUIRE(cloths.size() == 2);
    CHECK(cloths[0].material == "m");
    CHECK(cloths[1].material == "other");
    CHECK(cloths[1].pieces.size() == 1);
    CHECK(cloths[0].lay.length == 10_cm); // 300 + 10 + 300 on 610
    CHECK(cloths[0].bought.bought == 10_cm);
    CHECK(laid_out(two, {.width = 619_mm, .selvedge = 5_mm, .gap = 10_mm})[0].lay.length == 21_cm);
}
