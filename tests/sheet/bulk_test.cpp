// sheet/bulk.hpp: layers under the stitching, counted by hand as they lie one on another when the cloth is folded.
#include <turncloth.hpp>
#include <turncloth/sheet/bulk.hpp>
#include <turncloth/testing/doctest.hpp>

#include <map>
#include <string>

using namespace turncloth;

namespace {

using counted = std::map<std::string, std::int64_t>; ///< by place, the layers there

counted found(const std::vector<bulk_warning>& all) {
    counted places;
    for (const bulk_warning& w : all)
        places[w.where] = w.layers;
    return places;
}

/// Every place that is stitched, as every one of them goes through more than one layer.
template <length_unit Unit>
counted everywhere(const project<Unit>& p, const corners<Unit>& ways = all_corners(stacked<Unit>())) {
    return found(bulk_warnings(sheet_of(p), 1, ways));
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

counted with(std::int64_t edges, std::int64_t corners) {
    return {{"the top edge", edges},
            {"the right edge", edges},
            {"the bottom edge", edges},
            {"the left edge", edges},
            {"the top left corner", corners},
            {"the top right corner", corners},
            {"the bottom left corner", corners},
            {"the bottom right corner", corners}};
}

} // namespace

TEST_CASE("a self-bound mat: three layers along an edge, nine at a stacked corner, and what lies inside") {
    // Along an edge: the outer, its binding, and the half inch turned under that. At a corner each of those three lies
    // threefold.
    CHECK(everywhere(mat(0)) == with(3, 9));
    CHECK(everywhere(mat(2)) == with(5, 11));
}

TEST_CASE("only what is over the limit is warned of, edges before corners, with the numbers") {
    CHECK(bulk_warnings(sheet_of(mat()), 11).empty());
    const auto corners_only = bulk_warnings(sheet_of(mat()), 10);
    REQUIRE(corners_only.size() == 4);
    CHECK(corners_only[0].piece == "outer");
    CHECK(corners_only[0].limit == 10);
    CHECK(corners_only[0].what() ==
          "stitching at the top left corner of outer goes through 11 layers, more than the 10 that are allowed");
    CHECK(bulk_warnings(sheet_of(mat()), 5).size() == 4);
    const auto edges_too = bulk_warnings(sheet_of(mat()), 4);
    REQUIRE(edges_too.size() == 8);
    CHECK(edges_too[0].what() ==
          "stitching at the top edge of outer goes through 5 layers, more than the 4 that are allowed");
    CHECK(edges_too[4].where == "the top left corner");
}

TEST_CASE("a mitred corner has fewer layers than a stacked one") {
    // By hand, with folds at 1 and 2 and the crease of an untrimmed mitre from 4 to 4: just within 3 of the cut edge,
    // where the binding ends, there lie beyond the mitre's line the outer, the corner folded across it, and of the
    // binding the turned cloth, what is turned under it, and the corner with both: six. Away from the corner three.
    CHECK(everywhere(mat(0), all_corners(mitred<inch>())) == with(3, 6));
    CHECK(everywhere(mat(2), all_corners(mitred<inch>())) == with(5, 8));
    // One corner alone.
    corners<inch> one = all_corners(stacked<inch>());
    one.top_right = mitred<inch>();
    auto expected = with(3, 9);
    expected["the top right corner"] = 6;
    CHECK(everywhere(mat(0), one) == expected);
}

TEST_CASE("inner layers are shared out among the pieces that they lie in") {
    CHECK(everywhere(mat(4, 2)) == with(5, 11)); // two in each
    CHECK(everywhere(mat(3, 2)) == with(5, 11)); // two in one of them
    CHECK(everywhere(mat(2, 2)) == with(4, 10));
}

TEST_CASE("hems of several kinds: each edge by its own turns, each corner by both") {
    // A heading turned under lies threefold, single hems lie double; the foot is left raw.
    project<inch> p("Hanging", finished_size(20_in, 30_in));
    const auto side = single_turned_hem(1_in, "1/8"_in);
    p.add({"backing", "canvas", panel(p.finished(), {heading(3_in, "1/2"_in, "1/8"_in), side, finish<inch>(), side})});
    const counted expected = {{"the top edge", 3},           {"the right edge", 2},       {"the left edge", 2},
                              {"the top left corner", 6},    {"the top right corner", 6}, {"the bottom left corner", 2},
                              {"the bottom right corner", 2}};
    CHECK(everywhere(p) == expected);
    // Where mitring is asked for, a corner with a raw edge cannot be, and is left as it is.
    const auto mitres = everywhere(p, all_corners(mitred<inch>()));
    CHECK(mitres.at("the bottom left corner") == 2);
    CHECK(mitres.at("the top left corner") < 6);
}

TEST_CASE("stitching on the very edge of a hem goes through it") {
    project<inch> p("Napkin", finished_size(12_in, 12_in));
    p.add({"napkin", "linen", panel(p.finished(), all_round(double_turned_hem("1/4"_in, 1_in)))});
    CHECK(everywhere(p) == with(3, 9));
}

TEST_CASE("a seam goes through both its pieces before they are pressed, with their other edges turned") {
    // Left, a seam: two layers, and six where the double-turned hems above and below are caught in it. The hems, turned
    // once the seam is pressed open, go through three layers and, over the seam's allowance, six. On the right, raw.
    project<inch> p("Banner", finished_size(10_in, 12_in));
    const auto hem = double_turned_hem("1/4"_in, "1/2"_in, "1/16"_in);
    p.add({"half", "canvas", panel(p.finished(), {hem, finish<inch>(), hem, seam("1/2"_in)})}).count(2);
    const counted expected = {{"the top edge", 3},           {"the bottom edge", 3},        {"the left edge", 2},
                              {"the top left corner", 6},    {"the bottom left corner", 6}, {"the top right corner", 3},
                              {"the bottom right corner", 3}};
    CHECK(everywhere(p) == expected);
}

TEST_CASE("what lies inside is not under a seam, which is sewn before it is put in") {
    project<inch> p("Pad", finished_size(10_in, 12_in));
    auto& cover = p.add({"cover", "canvas", panel(p.finished(), all_round(seam("1/2"_in)))});
    p.add({"wadding", "wadding", panel(p.finished())}).count(5).lies_inside(cover);
    CHECK(everywhere(p) == with(2, 2));
}

TEST_CASE("pieces without stitching bring no warning, and the metric edition counts the same") {
    project<centimetre> p("Mat", finished_size(46_cm, 28_cm));
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding(1.2_cm, 0.2_cm, 0.3_cm)))});
    p.add({"felt", "felt", panel(p.finished())}).lies_inside(outer);
    const auto all = bulk_warnings(sheet_of(p), 1);
    CHECK(found(all) == with(4, 10));
    for (const bulk_warning& w : all)
        CHECK(w.piece == "outer");
}

TEST_CASE("a limit of no layers is refused") {
    CHECK_THROWS_WITH_AS(bulk_warnings(sheet_of(mat()), 0),
                         "the number of layers that a machine sews through must be at least 1: it was 0", range_error);
    CHECK_THROWS_AS(bulk_warnings(sheet_of(mat()), -1), range_error);
}

TEST_CASE("sizes that fractions would run out at are counted all the same") {
    project<inch> p("Mat", finished_size(length_of<inch>({30011, 1009}), length_of<inch>({20011, 1013})));
    const auto hem = [](fraction depth) { return single_turned_hem(length_of<inch>(depth), length_of<inch>({1, 8})); };
    p.add({"mat", "linen",
           panel(p.finished(), {hem({1009, 1013}), hem({2003, 1999}), hem({1543, 1531}), hem({877, 883})})});
    CHECK(everywhere(p) == with(2, 4));
    CHECK(everywhere(p, all_corners(mitred("1/4"_in, "1/16"_in))).at("the top edge") == 2);
}
