// sheet/bulk.hpp: layers under the stitching, counted by hand as they lie one on another when each row is sewn.
#include "../vectors.hpp"
#include <turncloth.hpp>
#include <turncloth/sheet/bulk.hpp>

#include <doctest/doctest.h>

#include <map>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

struct layers {
    std::int64_t least, most;
    friend bool operator==(const layers&, const layers&) = default;
};
using counted = std::map<std::string, layers>; ///< by edge

/// Every row, as every one of them goes through more than one layer.
template <length_unit Unit>
counted everywhere(const project<Unit>& p) {
    counted rows;
    for (const bulk_warning<Unit>& w : bulk_warnings(sheet_of(p), 1))
        for (const edge e : w.edges)
            rows[std::string(name_of(e))] = {w.least, w.layers};
    return rows;
}

/// A mat brought round two layers of felt as a 1/2 in binding, stitched 1/16 in within its edge.
project<inch> mat(std::int64_t layers = 2, std::int64_t mats = 1) {
    project<inch> p("Mat", finished_size(18_in, 11_in));
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("1/2"_in, "1/16"_in)))});
    outer.count(mats);
    if (layers > 0)
        p.add({"felt", "felt", panel(p.finished())}).count(layers).lies_inside(outer);
    return p;
}

counted with(layers sides, layers others) {
    return {{"left", sides}, {"right", sides}, {"top", others}, {"bottom", others}};
}

} // namespace

TEST_CASE("a self-bound mat: three layers along an edge, nine at a stacked corner, and what lies inside") {
    // Along an edge: the outer, its binding, and the half inch turned under that. The sides are sewn when the other edges are
    // pressed once: there their three lie twofold, six, and no felt. At the ends of the top and the bottom, sewn last,
    // each of the three lies threefold, nine, and the felt.
    CHECK(everywhere(mat(1)) == with({4, 6}, {4, 10}));
    CHECK(everywhere(mat(2)) == with({5, 6}, {5, 11}));
    CHECK(everywhere(mat(4)) == with({6, 7}, {7, 13})); // with four of felt the ends of the sides are the thinner
}

TEST_CASE("only what is over the limit is warned of, with the numbers and what to do") {
    CHECK(bulk_warnings(sheet_of(mat()), 11).empty());
    const auto corners = bulk_warnings(sheet_of(mat()), 10);
    REQUIRE(corners.size() == 1);
    CHECK(corners[0].piece == "outer");
    CHECK(corners[0].edges == std::vector<edge>{edge::top, edge::bottom});
    CHECK(corners[0].limit == 10);
    // Folds at 1/2 and 1: the mitre's crease goes through the corner that finishes, 1 in from both edges: legs of 2 in.
    CHECK(corners[0].mitre_leg == 2_in);
    CHECK(
        corners[0].what() ==
        "stitching along the top and bottom edges of the outer goes through 5 to 11 layers, more than the 10 that a "
        "machine "
        "is taken to sew: mitre the corners, each creased first across a line that meets both cut edges 2 in from the "
        "corner, and cut off what lies more than 1/4 in outside it");
    // 2 in are 5.08 cm and 1/4 in is 0.635 cm, rounded to 0.1 cm.
    const std::string metric = corners[0].what({.shows = units_shown::centimetres});
    CHECK(metric.find("both cut edges 5.1 cm from the corner, and cut off what lies more than 0.6 cm outside it") !=
          std::string::npos);
    CHECK(metric.find(" in from") == std::string::npos);
    CHECK(bulk_warnings(sheet_of(mat()), 5).size() == 2);
}

TEST_CASE("edges of a piece that ask for the same are one sentence, with the layers of each") {
    // As counted above: the sides 5 to 6, top and bottom 5 to 11, each with the same mitre.
    const auto said = sentences_of(bulk_warnings(sheet_of(mat()), 5), {.shows = units_shown::inches});
    REQUIRE(said.size() == 1);
    CHECK(said[0] ==
          "rows of stitching on the outer go through more than the 5 layers that a machine is taken to sew, along the "
          "left and right edges (5 to 6 layers) and the top and bottom edges (5 to 11 layers): mitre the corners, "
          "each creased first across a line that meets both cut edges 2 in from the corner, and cut off what lies "
          "more than 1/4 in outside it");
    // Of another piece, or without a corner to mitre, it is another sentence.
    project<inch> two = mat();
    two.add({"cover", "canvas", panel(two.finished(), all_round(self_binding("1/2"_in, "1/16"_in)))});
    CHECK(sentences_of(bulk_warnings(sheet_of(two), 5), {}).size() == 2);
    std::vector<bulk_warning<inch>> apart = bulk_warnings(sheet_of(mat()), 5);
    apart[1].least = apart[1].layers;
    CHECK(sentences_of(apart, {}).size() == 2);
    CHECK(sentences_of(std::vector<bulk_warning<inch>>(), {}).empty());
}

TEST_CASE("a limit stands unless another is asked for, and its warnings are on the sheet") {
    CHECK(sheet_of(mat()).bulk.size() == 1); // 11 layers against 8
    CHECK(sheet_of(mat().most_layers(11)).bulk.empty());
    CHECK(sheet_of(mat().most_layers(5)).bulk.size() == 2);
    CHECK(to_text(sheet_of(mat()))
              .find("\nCheck\n  - stitching along the top and bottom edges of the outer goes through ") !=
          std::string::npos);
    CHECK_THROWS_WITH_AS(mat().most_layers(0),
                         "the number of layers that a machine sews through must be at least 1: it was 0", range_error);
}

TEST_CASE("hems of several kinds: each edge by its own turns, the ends of each by its neighbours'") {
    // A heading turned under lies threefold, single hems lie double; the foot is left raw. The sides are sewn while the
    // heading is flat; over them the heading lies sixfold.
    project<inch> p("Hanging", finished_size(20_in, 30_in));
    const auto side = single_turned_hem(1_in, "1/8"_in);
    p.add({"backing", "canvas", panel(p.finished(), {heading(3_in, "1/2"_in, "1/8"_in), side, finish<inch>(), side})});
    CHECK(everywhere(p) == counted{{"left", {2, 2}}, {"right", {2, 2}}, {"top", {3, 6}}});
    const auto thick = bulk_warnings(sheet_of(p), 5);
    REQUIRE(thick.size() == 1);
    CHECK_FALSE(thick[0].mitre_leg); // unequal allowances have a mitre of their own
    CHECK(thick[0].what().find("sew: trim what is turned under at the corners, or mitre them") != std::string::npos);
}

TEST_CASE("a mitre is offered only for the corners whose edges are turned alike") {
    // Three hems folded at 3/8 and 1 1/8 in, and a heading: the foot's corners have legs of 2 x 1 1/8 in, the heading's none.
    project<inch> p("Hanging", finished_size(20_in, 30_in));
    const auto hem = double_turned_hem("3/8"_in, "3/4"_in, "1/8"_in);
    p.add({"backing", "canvas", panel(p.finished(), {heading("2 1/2"_in, "1/2"_in, "1/8"_in), hem, hem, hem})});
    const auto thick = sheet_of(p).bulk;
    REQUIRE(thick.size() == 2);
    for (const auto& w : thick) {
        CHECK(w.edges.size() == 1);
        CHECK(w.mitre_leg.has_value() == (w.edges[0] == edge::bottom));
        CHECK(w.mitre_leg.value_or("2 1/4"_in) == "2 1/4"_in);
    }
}

TEST_CASE("stitching on the very edge of a hem goes through it") {
    project<inch> p("Napkin", finished_size(12_in, 12_in));
    p.add({"napkin", "linen", panel(p.finished(), all_round(double_turned_hem("1/4"_in, 1_in)))});
    CHECK(everywhere(p) == with({3, 3}, {3, 9}));
}

TEST_CASE("a seam goes through both its pieces before they are pressed, with their other edges turned") {
    // Left, a seam: two layers, and six where the double-turned hems above and below are caught in it.
    project<inch> p("Banner", finished_size(10_in, 12_in));
    const auto hem = double_turned_hem("1/4"_in, "1/2"_in, "1/16"_in);
    p.add({"half", "canvas", panel(p.finished(), {hem, finish<inch>(), hem, seam("1/2"_in)})}).count(2);
    CHECK(everywhere(p) == counted{{"left", {2, 6}}, {"top", {3, 3}}, {"bottom", {3, 3}}});
}

TEST_CASE("what lies inside is not under a seam, which is sewn before it is put in") {
    project<inch> p("Pad", finished_size(10_in, 12_in));
    auto& cover = p.add({"cover", "canvas", panel(p.finished(), all_round(seam("1/2"_in)))});
    p.add({"wadding", "wadding", panel(p.finished())}).count(5).lies_inside(cover);
    CHECK(everywhere(p) == with({2, 2}, {2, 2}));
}

TEST_CASE("inner layers are shared out among the pieces that they lie in, and the metric edition counts the same") {
    CHECK(everywhere(mat(4, 2)) == everywhere(mat(2)));
    CHECK(everywhere(mat(3, 2)) == everywhere(mat(2))); // two in one of them
    project<centimetre> p("Mat", finished_size(46_cm, 28_cm));
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding(1.2_cm, 0.2_cm)))});
    p.add({"felt", "felt", panel(p.finished())}).lies_inside(outer);
    CHECK(everywhere(p) == with({4, 6}, {4, 10}));
    CHECK(bulk_warnings(sheet_of(p), 6)[0].what().find(
              " 4.8 cm from the corner, and cut off what lies more than 0.5 cm") != std::string::npos);
}

TEST_CASE("a limit of no layers is refused") {
    CHECK_THROWS_WITH_AS(bulk_warnings(sheet_of(mat()), 0),
                         "the number of layers that a machine sews through must be at least 1: it was 0", range_error);
    CHECK_THROWS_AS(bulk_warnings(sheet_of(mat()), -1), range_error);
}
