// A table as one order: every copy is cut, what was asked of the table and the plies is kept, and what cannot be is refused.
#include "program.hpp"

#include <doctest/doctest.h>

#include <cstddef>
#include <string>

namespace {

constexpr const char* two_sizes = "project,width,height,name,copies\n"
                                  "kneeling-pad,16,9,Small,12\n"
                                  "kneeling-pad,20,12,Large,7\n"
                                  "kneeling-pad,18,10,One,\n";

/// Of what a sheet lists: the sum of the figures that stand after a colon in the lines with these words.
long sum_of(const std::string& text, const std::string& words) {
    long sum = 0;
    for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1))
        sum += std::stol(text.substr(text.find(": ", at) + 2));
    return sum;
}

} // namespace

TEST_CASE("the rows of a table are one order: each sheet names the spreads that its pieces come off") {
    const scratch dir;
    dir.write("t.csv", two_sizes);
    const run_result o =
        dir.run("--table t.csv --one-order --plies 5 --cutting-table 60in --units inches --quiet --out here");
    INFO(o.err);
    REQUIRE(o.status == 0);
    const std::string small = dir.read("here/small.txt"), large = dir.read("here/large.txt"),
                      one = dir.read("here/one.txt"), all = dir.read("here/order.txt");
    CHECK(small.find("copies of this sheet: 12") != std::string::npos);
    CHECK(one.find("copies of this sheet: 1\n") != std::string::npos);
    // A pad has one top panel.
    CHECK(sum_of(small, "top panel, pieces off spread") == 12);
    CHECK(sum_of(large, "top panel, pieces off spread") == 7);
    CHECK(sum_of(one, "top panel, pieces off spread") == 1);
    CHECK(small.find("For the canvas\n") == std::string::npos); // it is bought once, for the order
    CHECK(all.find("For the canvas") != std::string::npos);
    CHECK(all.find("copies of small: 12") != std::string::npos);
    CHECK(all.find("plies of spread 1: 5") != std::string::npos);
    CHECK(all.find("length to buy") != std::string::npos);
    CHECK(dir.read("here/order.canvas-spread-1.svg").find("spread 5 times over itself") != std::string::npos);
}

TEST_CASE("a table without the table of copies, or an order without a table, is refused in a sentence") {
    const scratch dir;
    dir.write("t.csv", two_sizes);
    const run_result apart = dir.run("--table t.csv");
    CHECK(apart.status == 3);
    CHECK(apart.complains("its column \"copies\" is for --one-order, which lays all of them together"));
    CHECK(dir.run("--project kneeling-pad --one-order").status == 2);
    CHECK(dir.run("--table t.csv --plies 3").status == 2);
    CHECK(dir.run("--table t.csv --one-order --part 1/2").status == 2);
    CHECK(dir.run("--table t.csv --one-order --on-hand \"canvas: 40 x 30 in\"").status == 2);
    const run_result flat = dir.run("--table t.csv --one-order --cutting-table 0in");
    CHECK(flat.status == 2);
    CHECK_MESSAGE(flat.complains("the length of a cutting table must be more than zero: it was 0 in"), flat.err);
}

TEST_CASE("copies that are no whole number from 1 are named by their row, and the other rows are ordered") {
    const scratch dir;
    dir.write("t.csv", "project,width,height,copies\n"
                       "kneeling-pad,16,9,0\n"
                       "kneeling-pad,16,9,2 1/2\n"
                       "kneeling-pad,16,9,100001\n"
                       "kneeling-pad,16,9,3\n");
    const run_result o = dir.run("--table t.csv --one-order --units inches");
    CHECK(o.status == 1);
    for (const char* why : {"row 2, column 4 (copies): a whole number from 1 to 100000 is wanted: it was \"0\"",
                            "row 3, column 4 (copies): a whole number from 1 to 100000 is wanted: it was \"2 1/2\"",
                            "row 4, column 4 (copies): a whole number from 1 to 100000 is wanted: it was \"100001\""})
        CHECK_MESSAGE(o.complains(why), o.err);
    CHECK(o.says("copies of this sheet: 3"));
    CHECK(o.says("The whole order"));
}

TEST_CASE("rows in inches and in centimetres are an order each, as each is sold in steps of its own") {
    const scratch dir;
    dir.write("t.csv", "project,width,height,name,copies\n"
                       "kneeling-pad,16 in,9 in,order,2\n"
                       "kneeling-pad,40 cm,24 cm,Metric,2\n");
    const run_result o = dir.run("--table t.csv --one-order --quiet --out here --language de --handout html");
    INFO(o.err);
    REQUIRE(o.status == 0);
    // A row has the name already.
    CHECK(dir.read("here/order-2.txt").find("order") != std::string::npos);
    const std::string metric = dir.read("here/order-3.txt"), drawn = dir.read("here/order-3.canvas-spread-1.svg");
    CHECK(metric.find("Der ganze Auftrag") == 0);
    CHECK(metric.find("Anzahl von metric: 2") != std::string::npos);
    CHECK(drawn.find("canvas, Auslage 1 von 1") != std::string::npos);
    CHECK(drawn.find("spread") == std::string::npos);
    // What comes cut is not bought.
    CHECK(dir.read("here/metric.html").find("wie viel canvas") == std::string::npos);
}
