// sheet/bulk.hpp: layers counted by folding, against layers counted by hand on a folded napkin.
#include <turncloth.hpp>
#include <turncloth/sheet/bulk.hpp>

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace turncloth;

namespace {

sheet<inch> napkin(const edges<inch>& finishes, std::int64_t inside) {
    project<inch> p("napkin", finished_size(16_in, 12_in));
    auto& outer = p.add({"napkin", "linen", panel(p.finished(), finishes)});
    if (inside > 0)
        p.add({"wadding", "wadding", panel(p.finished())}).how_many(inside).lies_inside(outer);
    return sheet_of(p);
}

} // namespace

TEST_CASE("A double-turned hem's row meets three layers, and nine at a stacked corner") {
    // By hand, with a strip of paper: along the hem's inner fold, 1/4 in from it, lie the cloth, the hem and its turn: 3.
    // Where the next edge's hem crosses, each of these is three: 9.
    const auto s = napkin(all_round(double_turned_hem("1/2"_in, 1_in, "1/4"_in)), 0);
    CHECK(bulk_warnings(s, 9).empty());
    const auto said = bulk_warnings(s, 8);
    REQUIRE(said.size() == 4);
    CHECK(said[0] == "the stitching of the top edge of napkin goes through up to 9 layers, 0 of them inside it: the "
                     "machine sews 8");
}

TEST_CASE("A mitre halves the bulk at the corner") {
    // By hand: a mitre folds the corner in first, so at the corner the row meets fewer layers than 9.
    const auto s = napkin(all_round(double_turned_hem("1/2"_in, 1_in, "1/4"_in)), 0);
    CHECK(bulk_warnings(s, 8, all_corners(mitred("1/4"_in, "1/8"_in))).empty());
}

TEST_CASE("One single-turned hem meets two layers and no corner") {
    edges<inch> one;
    one.top = single_turned_hem(1_in, "1/4"_in);
    CHECK(bulk_warnings(napkin(one, 0), 2).empty());
    CHECK(bulk_warnings(napkin(one, 0), 1).size() == 1);
}

TEST_CASE("What lies inside is sewn through too") {
    edges<inch> one;
    one.top = single_turned_hem(1_in, "1/4"_in);
    CHECK(bulk_warnings(napkin(one, 3), 5).empty());
    CHECK(bulk_warnings(napkin(one, 3), 4) ==
          std::vector<std::string>{"the stitching of the top edge of napkin goes through up to 5 layers, 3 of them "
                                   "inside it: the machine sews 4"});
}

TEST_CASE("Raw pieces and seams to other pieces are left out; a limit below one is refused") {
    CHECK(bulk_warnings(napkin({}, 0), 1).empty());
    edges<inch> sewn;
    sewn.left = seam("1/2"_in);
    sewn.top = single_turned_hem(1_in, "1/4"_in);
    for (const std::string& said : bulk_warnings(napkin(sewn, 0), 1))
        CHECK(said.find("top edge") != std::string::npos);
    CHECK_THROWS_WITH_AS(bulk_warnings(napkin({}, 0), 0), "a machine sews through at least one layer: the limit was 0",
                         range_error);
}
