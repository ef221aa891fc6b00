// examples/sheets/price_file.hpp: a shop's prices as a table, and what the handout says of them. Sums are worked by hand.
#include "../../examples/sheets/price_file.hpp"
#include "program.hpp"

#include <doctest/doctest.h>

#include <string>
#include <string_view>

using namespace allotment;

namespace {

price_list list_of(std::string_view text) { return prices_of(read_table(text)); }

} // namespace

TEST_CASE("a price list is read with the decimal mark that its maker writes, and one currency and coin for all") {
    const price_list all = list_of("What;Price;Per;Currency;Coin\n"
                                   "canvas;12,50;Yard;CHF;0,05\n"
                                   "\"lining, thin\";8.95;metre;;\n"
                                   "eyelets;0,15;each\n");
    CHECK(all == price_list{"CHF",
                            {{"canvas", {25, 2}, sold_per::a_yard},
                             {"lining, thin", {895, 100}, sold_per::a_metre},
                             {"eyelets", {15, 100}, sold_per::one}},
                            {1, 20}});
    CHECK(list_of("price,what,per\n3,cord,m\n") == price_list{"", {{"cord", 3, sold_per::a_metre}}});
}

TEST_CASE("what is wrong with a price list is named by its row and column") {
    struct {
        std::string_view text, why;
    } const all[] = {
        {"", "it is empty: the first row must name the columns what, price and per"},
        {"what,price\ncord,3\n", "its first row names no column \"per\": it must name what, price and per"},
        {"what,price,per\ncord,,m\n", "row 2, column 2 (price): it is missing"},
        {"what,price,per\ncord,-1,m\n", "row 2, column 2 (price): it is -1: it must not be below zero"},
        {"what,price,per\ncord,3,ell\n", "row 2, column 3 (per): a thing is sold by the piece, the yard or the metre"},
        {"what,price,per\ncord,3,m\ncord,4,m\n", "row 3, column 1 (what): \"cord\" has a price already"},
        {"what,price,per,currency\ncord,3,m,EUR\ntape,4,m,CHF\n",
         "row 3, column 4 (currency): a list has one currency, and this one has EUR"},
    };
    for (const auto& wrong : all)
        CHECK_THROWS_WITH_AS(list_of(wrong.text), std::string(wrong.why).c_str(), error);
    CHECK_THROWS_AS(list_of("what,price,per\ncord,three,m\n"), row_error);
}

TEST_CASE("the program writes prices and their sum into handouts, and names the row of a file that is wrong") {
    const scratch dir;
    dir.write("shop.csv", "what,price,per,currency\ncanvas,12.50,yard,EUR\nthread,3,piece,\n");
    const run_result o =
        dir.run("--project tool-roll --units inches --out here --handout html --prices shop.csv --quiet");
    INFO(o.err);
    CHECK(o.status == 0);
    const std::string handout = dir.read("here/tool-roll.html");
    CHECK(handout.find("Price, EUR") != std::string::npos);
    CHECK(handout.find("In all ") != std::string::npos);
    dir.write("shop.csv", "what,price,per\ncanvas,dear,yard\n");
    const run_result wrong = dir.run("--project tool-roll --out there --handout html --prices shop.csv");
    CHECK(wrong.status == 3);
    CHECK(wrong.complains("shop.csv"));
    CHECK(wrong.complains("row 2, column 2 (price)"));
    CHECK(dir.run("--project tool-roll --prices shop.csv").status == 2); // no handout to write them in
}
