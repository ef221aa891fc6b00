// sheet/order.hpp: many sheets laid as one order. As many pieces come out as are wanted, every spread can be cut and goes on
// the table, and what is spread is worked out by hand.
#include "at_random.hpp"
#include "refused.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/sheet/order.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

constexpr purchase_rules<inch> by_the_inch{.straightening = 1_in, .sold = {1_in}};

/// A pad of one piece, and so many loops of 2 x 5 in.
sheet<inch> pad(length<inch> width, length<inch> height, std::int64_t loops = 0,
                cloth_lie lies = cloth_lie::along_grain) {
    project<inch> p("Pad", finished_size(width, height));
    p.add({"top", "canvas", panel(p.finished())}).lies(lies);
    if (loops > 0)
        p.add({"loop", "canvas", panel(finished_size(2_in, 5_in))}).count(loops).lies(lies);
    return sheet_of(p);
}

/// As many of each piece on a ply as the places say.
std::vector<cloth_piece<inch>> on_a_ply(const ordered_cloth<inch>& order, std::size_t spread) {
    std::vector<cloth_piece<inch>> all = order.pieces;
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i].quantity = order.places_of(i, spread);
    return all;
}

template <class Add>
std::string why_not(Add add) {
    try {
        add();
    } catch (const error& refused) {
        return refused.what();
    }
    return "";
}

} // namespace

TEST_CASE("two sizes of a pad on 20 in, cut through four plies at most, are the spreads worked out by hand") {
    cloth_order<inch> order("canvas", {.width = 20_in}, by_the_inch, {.most_plies = 4, .ends = 2_in});
    const std::size_t small = order.add(pad(10_in, 10_in), 4, "small"),
                      large = order.add(pad(20_in, 10_in), 6, "large");
    const ordered_cloth<inch> all = order.laid();
    // Four plies with one of each, 20 in; two more of the large, 10 in. 80 in are covered; with 2 in at the ends of six plies,
    // and 1 in to straighten at either end, 4 x 22 + 2 x 12 + 2.
    REQUIRE(all.spreads.size() == 2);
    CHECK(all.spreads[0].plies == 4);
    CHECK(all.spreads[0].lay.length == 20_in);
    CHECK(all.spreads[1].plies == 2);
    CHECK(all.spreads[1].lay.length == 10_in);
    CHECK(all.length == 100_in);
    CHECK(all.bound == 80_in);
    CHECK(all.bought.bought == 114_in);
    CHECK(all.places_of(0, 1) == 0);
    CHECK(all.places_of(1, 1) == 1);
    const notion<inch> mine = listed_on(all, large);
    CHECK(mine.name() == "canvas, cut in one order");
    REQUIRE(mine.details().size() == 3);
    CHECK(mine.details()[0].count == 6);
    CHECK(mine.details()[1].what == "top, pieces off spread 1");
    CHECK(mine.details()[1].count == 4);
    CHECK(mine.details()[2].what == "top, pieces off spread 2");
    CHECK(mine.details()[2].count == 2);
    CHECK(listed_on(all, small).details().size() == 2);
    const notion<inch> bought = listed(all);
    CHECK(bought.details()[1].what == "copies of large");
    CHECK(bought.details()[1].count == 6);
    CHECK(bought.details()[4].what == "plies of spread 1");
    CHECK(bought.details()[4].count == 4);
}

TEST_CASE("a spread is drawn as its plies lie, with half of what they have at their ends before the first piece") {
    cloth_order<inch> order("canvas", {.width = 20_in}, by_the_inch, {.most_plies = 4, .ends = 3_in});
    order.add(pad(10_in, 10_in), 4, "small");
    order.add(pad(20_in, 10_in), 5, "large");
    const ordered_cloth<inch> all = order.laid();
    REQUIRE(all.spreads.size() == 2); // as worked out by hand above: 20 in four times, and 10 in once
    const std::string whole = to_svg(page_of(spread_of(all, 0), {.shows = units_shown::inches}));
    for (const std::string said :
         {"lay of canvas, spread 1 of 2", "spread 4 times over itself, each ply 23 in long",
          "each place gives 4 pieces", "trim 1 1/2 in off to straighten this end", "each ply 23 in"})
        CHECK_MESSAGE(whole.find(said) != std::string::npos, said);
    CHECK(whole.find("buy") == std::string::npos); // that is said of the order
    CHECK(whole.find("bought") == std::string::npos);
    CHECK(whole.find("no lay can be shorter") == std::string::npos);
    const std::string once = to_svg(page_of(spread_of(all, 1), {.shows = units_shown::inches}));
    CHECK(once.find("spread once, 13 in long") != std::string::npos);
    CHECK(once.find("each place gives") == std::string::npos);
}

TEST_CASE("an order is told in text as a sheet tells of its notions") {
    cloth_order<inch> order("canvas", {.width = 20_in}, by_the_inch, {.most_plies = 4});
    order.add(pad(20_in, 10_in), 6, "large");
    // 10 in through four plies and through two, 60 in, and 1 in at either end.
    CHECK(to_text(listed(order.laid()), {.shows = units_shown::inches}) ==
          "\nFor the canvas\n  copies of large: 6\n  width of the cloth: 20 in\n  usable width: 20 in\n"
          "  plies of spread 1: 4\n  length laid on spread 1: 10 in\n  plies of spread 2: 2\n"
          "  length laid on spread 2: 10 in\n  length laid on all plies together: 60 in\n"
          "  no order can take less than: 60 in\n  length to buy: 62 in\n"
          "      62 in = 60 in laid + 2 x 1 in straightened ends\n");
}

TEST_CASE("a sheet that is refused leaves an order as it was") {
    cloth_order<inch> order("canvas", {.width = 40_in}, by_the_inch, {.table = 20_in});
    CHECK(order.empty());
    // Its top goes on the table, and its strap, which comes after it, does not.
    project<inch> p("Bag", finished_size(10_in, 10_in));
    p.add({"top", "canvas", panel(p.finished())});
    p.add({"strap", "canvas", panel(finished_size(2_in, 30_in))});
    CHECK(why_not([&] { order.add(sheet_of(p), 1); }) == "Bag: strap, 30 in long, does not go on a spread of 20 in");
    CHECK(order.empty());
    order.add(pad(10_in, 10_in), 1, "pad");
    CHECK(order.laid().pieces.size() == 1);
}

TEST_CASE("a piece that is wider than the cloth is ordered in parts, which its maker joins") {
    project<inch> p("Cover", finished_size(30_in, 10_in));
    p.add({"top", "canvas", panel(p.finished())});
    p.add(project_cloth<inch>{.material = "canvas", .width = 20_in, .join = "1/2"_in});
    sheet<inch> s = sheet_of(p);
    cloth_order<inch> order("canvas", {}, by_the_inch, {}, {.may_join = true});
    const ordered_cloth<inch> all = (order.add(s, 3), order.laid());
    REQUIRE(all.lines[0].joined.size() == 1);
    const std::size_t before = s.steps.groups.size();
    say_joins(s, all.lines[0].joined);
    CHECK(s.steps.groups.size() == before + 1);
}

TEST_CASE("a lay that is longer than the table is parted into spreads that it takes") {
    cloth_order<inch> order("canvas", {.width = 20_in}, by_the_inch, {.table = 26_in, .ends = 1_in});
    order.add(pad(20_in, 12_in), 5);
    const ordered_cloth<inch> all = order.laid();
    REQUIRE(all.spreads.size() == 3); // two of 12 in go on 25 in
    CHECK(all.spreads[0].lay.length == 24_in);
    CHECK(all.spreads[1].lay.length == 24_in);
    CHECK(all.spreads[2].lay.length == 12_in);
    CHECK(all.length == all.bound);
}

TEST_CASE("whatever is ordered comes out as often as it is wanted, off spreads that can be cut and go on the table") {
    at_random::sampler random(77);
    while (random.another_of(60)) {
        const length<inch> table = random.between(0, 2) == 0 ? 0_in : length_of<inch>(random.between(31, 90));
        const spreading<inch> on{
            .table = table, .most_plies = random.between(1, 12), .ends = length_of<inch>(random.between(0, 1))};
        const cutting way = random.between(0, 1) == 0 ? cutting::free : cutting::edge_to_edge;
        cloth_order<inch> order("canvas", {.width = 45_in, .selvedge = "1/2"_in, .cutting = way}, by_the_inch, on,
                                {.lies = grain::may_turn, .effort = {.steps = 2'000}});
        std::vector<std::int64_t> wanted;
        for (auto n = random.between(1, 4); n > 0; --n) {
            const auto copies = random.between(1, 30), loops = random.between(0, 3);
            order.add(pad(length_of<inch>(random.between(4, 40)), length_of<inch>(random.between(4, 30)), loops,
                          cloth_lie::as_asked),
                      copies);
            wanted.push_back(copies);
            if (loops > 0)
                wanted.push_back(copies * loops);
        }
        const ordered_cloth<inch> all = order.laid();
        std::vector<std::int64_t> out(wanted.size());
        length<inch> laid{};
        for (std::size_t i = 0; i < all.spreads.size(); ++i) {
            const cloth_spread<inch>& s = all.spreads[i];
            CHECK(s.plies >= 1);
            CHECK(s.plies <= on.most_plies);
            CHECK((table.value() == 0 || s.lay.length + on.ends <= table));
            for (std::size_t k = 0; k < out.size(); ++k)
                out[k] += all.places_of(k, i) * s.plies;
            std::vector<cloth_piece<inch>> there = on_a_ply(all, i);
            lay<inch> whole = s.lay;
            CHECK(lay_faults(whole, there, all.bolt).empty());
            laid += s.lay.length * s.plies;
        }
        CHECK(out == wanted);
        CHECK(all.length == laid);
        CHECK(all.length >= all.bound);
    }
}

TEST_CASE("of one copy each, single and on no table, an order is the lay of all pieces together") {
    cloth_order<inch> order("canvas", {.width = 44_in}, by_the_inch);
    order.add(pad(20_in, 15_in, 4), 1, "a");
    order.add(pad(22_in, 13_in, 2), 1, "b");
    const ordered_cloth<inch> all = order.laid();
    REQUIRE(all.spreads.size() == 1);
    CHECK(all.length == lay_out<inch>(all.pieces, all.bolt).length);
    // The tops lie side by side, 42 in; the loops, 5 in long, go beyond the one of 13 in.
    CHECK(all.length == 18_in);
}

TEST_CASE("what is turned alike is turned so on every spread") {
    // 12 in wide and 20 long go on 20 in turned alone, one beyond the other; upright they leave 8 in.
    cloth_order<inch> order("canvas", {.width = 20_in}, by_the_inch, {.table = 30_in});
    order.add(pad(12_in, 20_in, 0, cloth_lie::turned_alike), 4, "large");
    order.add(pad(6_in, 10_in, 0, cloth_lie::turned_alike), 5, "small");
    const ordered_cloth<inch> all = order.laid();
    REQUIRE(all.spreads.size() > 1);
    const bool turned = all.spreads[0].lay.places[0].turned;
    for (const cloth_spread<inch>& s : all.spreads)
        for (const auto& p : s.lay.places)
            CHECK(p.turned == turned);
}

TEST_CASE("an order of nothing, of other cloth, or of what no spread takes is refused") {
    cloth_order<inch> order("canvas", {}, by_the_inch, {.table = 40_in});
    CHECK(why_not([&] { static_cast<void>(order.laid()); }) == "an order has at least 1 sheet");
    project<inch> wide("Mat", finished_size(20_in, 30_in));
    wide.add({"top", "canvas", panel(wide.finished())});
    wide.add(project_cloth<inch>{.material = "canvas", .width = 54_in});
    order.add(sheet_of(wide), 2);
    CHECK(why_not([&] { order.add(sheet_of(wide), 0); }) == "the number of copies must be at least 1: it was 0");
    CHECK(why_not([&] { order.add(sheet_of(wide), 100'001); }) ==
          "the number of copies must be at most 100000: it was 100001");
    CHECK(why_not([&] { order.add(pad(20_in, 20_in), 1, "pad"); }) ==
          "the canvas of pad is not the same as that of Mat: order it by itself");
    CHECK(why_not([] { cloth_order<inch>("canvas", {.width = 40_in}, by_the_inch, {.most_plies = 0}); }) ==
          "the number of plies cut at once must be at least 1: it was 0");
    CHECK(why_not([] { cloth_order<inch>("canvas", {.width = 40_in}, by_the_inch, {.table = 1_in, .ends = 2_in}); }) ==
          "what a ply has at its ends must be at most 1 in: it was 2 in");
    cloth_order<inch> short_table("canvas", {.width = 40_in}, by_the_inch, {.table = 20_in, .ends = 1_in});
    CHECK(why_not([&] { short_table.add(pad(10_in, 20_in), 1, "pad"); }) ==
          "pad: top, 20 in long, does not go on a spread of 19 in");
}
