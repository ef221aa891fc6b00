// sheet/widths_joined.hpp: pieces wider than their cloth, made up of parts; and their lays, lists and steps.
#include "../vectors.hpp"
#include "at_random.hpp"
#include "refused.hpp"
#include <turncloth.hpp>
#include <turncloth/sheet/on_hand.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

/// A shed's curtain, so wide and so high as it is cut, with raw edges.
project<inch> curtain(length<inch> width, length<inch> height) {
    project<inch> p("Curtain", finished_size(width, height));
    p.add({"curtain", "ticking", panel(p.finished())});
    return p;
}
sheet_cloth<inch> laid(const project<inch>& p, const bolt<inch>& on) {
    return cloth_for<inch>(sheet_of(p), "ticking", on, {.sold = eighths_of_a_yard<inch>}, {.may_join = true});
}
width_parts<inch> parts(length<inch> width, length<inch> usable, length<inch> join) {
    return parts_of_widths(width, cloth_in_widths<inch>{.usable = usable, .join = join});
}

} // namespace

TEST_CASE("published widths: so many are sewn together, with a whole one in the middle") {
    // A. R. Bond, The Scientific American Boy, "The canvas tent" (published): widths of 30 in lapped 1 in make 9 ft 9 in
    // with four, all of them whole.
    const width_parts<inch> tent = parts(117_in, 30_in, "1/2"_in);
    CHECK(tent.in_order() == std::vector<length<inch>>(4, 30_in));
    CHECK(tent.joins() == 3);
    CHECK(to_text(tent.working()) == "117 in = 30 in left + 2 x 30 in middle + 30 in right - 3 x 1 in joins");
    // General how-to pages (published): 146 1/4 in from cloth of 54 in take 3 widths; 225 in take 5.
    CHECK(parts("146 1/4"_in, 54_in, "1/2"_in).count() == 3);
    CHECK(parts(225_in, 54_in, "1/2"_in).count() == 5);
    // A textbook problem (published): a back of 120 in from cloth of 44 in takes 3 widths.
    const width_parts<inch> back = parts(120_in, 44_in, "1/2"_in);
    CHECK(back.in_order() == std::vector<length<inch>>{39_in, 44_in, 39_in});
    // A school mathematics page (published): 112 in from cloth of 54 in take 3 widths.
    CHECK(parts(112_in, 54_in, "1/2"_in).count() == 3);
}

TEST_CASE("the cloth for them is what those pages reckon") {
    // 3 widths of 96 in are 288 in, 8 yd; 5 of 88 in are 440 in; 3 of 106 in are 318 in.
    CHECK(laid(curtain("146 1/4"_in, 96_in), {.width = 54_in}).bought.bought == as<inch>(8_yd));
    CHECK(laid(curtain(225_in, 88_in), {.width = 54_in}).lay.length == 440_in);
    const sheet_cloth<inch> back = laid(curtain(120_in, 106_in), {.width = 44_in});
    CHECK(back.lay.length == 318_in);
    REQUIRE(back.pieces.size() == 3);
    CHECK(back.pieces[0].name == "curtain (1)");
    CHECK(back.pieces[1].size == cut_size<inch>(44_in, 106_in));
    CHECK(back.on_sheet == std::vector<std::size_t>{0, 0, 0});
}

TEST_CASE(
    "on a pattern whole widths are joined, each cut at the same place of it, and what they make up more is cut off") {
    // By hand: of 58 in, joins of 1/2 in leave 57, which hold 7 repeats of 8 in: widths of 57 in, 2 x 57 - 1 = 113 joined.
    const cloth_in_widths<inch> usable{.usable = 58_in, .join = "1/2"_in};
    const width_parts<inch> two = matched_widths(98_in, usable, 8_in);
    CHECK(two.in_order() == std::vector<length<inch>>(2, 57_in));
    CHECK(two.joins() == 1);
    CHECK(to_text(two.working()) == "98 in = 2 x 57 in widths - 1 in join - 15 in cut off");
    CHECK(matched_widths(113_in, usable, 8_in).trimmed == 0_in);
    CHECK(matched_widths("113 1/16"_in, usable, 8_in).count() == 3);
    CHECK(matched_widths(98_in, usable, 0_in).in_order() == std::vector<length<inch>>(2, 58_in)); // along it alone
    CHECK_THROWS_AS(matched_widths(98_in, usable, 58_in), curtain_error);

    project<inch> p = curtain(98_in, 64_in);
    p.add(project_cloth<inch>{.material = "ticking",
                              .width = 60_in,
                              .selvedge = 1_in,
                              .join = "1/2"_in,
                              .repeat_along = 6_in,
                              .repeat_across = 8_in});
    const sheet_cloth<inch> c = laid(p, {});
    REQUIRE(c.lay.places.size() == 2);
    // The second begins 11 repeats down: 66 + 64.
    CHECK(c.lay.length == 130_in);
    for (const cloth_place<inch>& place : c.lay.places) {
        CHECK(place.where.from_left == 1_in);
        CHECK((place.where.from_end == 0_in || place.where.from_end == 66_in));
    }
    sheet<inch> s = sheet_of(p);
    say_joins(s, c);
    const std::string text = to_text(s);
    CHECK(text.find("its pattern again every 6 in (15.2 cm) along it") != std::string::npos);
    CHECK(text.find("Make up each curtain of 2 widths") != std::string::npos);
    CHECK(text.find("Then cut off either side what is listed.") != std::string::npos);
    const notion<inch> told = listed(c);
    CHECK(std::any_of(told.details().begin(), told.details().end(), [](const notion_detail<inch>& d) {
        return d.what == "curtain, cut off either side once it is joined" && d.amount.value() == "7 1/2"_in;
    }));
}

TEST_CASE("cloth of a pattern that is washed first has its repeat as it is then") {
    project<inch> p = curtain(40_in, 20_in);
    p.add(project_cloth<inch>{.material = "ticking",
                              .width = 60_in,
                              .washed = washed_when::before_cutting,
                              .change = {.along = shrinks_by(percent(10)), .across = {}},
                              .repeat_along = 10_in});
    CHECK(laid(p, {}).bolt.repeat_along == 9_in);
}

TEST_CASE("what no second width is asked for stays whole, and two widths make three parts") {
    CHECK(parts(44_in, 44_in, "1/2"_in).count() == 1);
    CHECK(parts(44_in, 44_in, "1/2"_in).joins() == 0);
    // 60 in of 44: the sides 60 + 2 - 44 = 18, 9 in each.
    CHECK(parts(60_in, 44_in, "1/2"_in).in_order() == std::vector<length<inch>>{9_in, 44_in, 9_in});
    // 44 1/2 in of 44 would leave 1 1/4 in at either side, of which a hem of 1 in takes all but the join: 46 1/2 in three.
    CHECK(parts_of_widths("44 1/2"_in, cloth_in_widths<inch>{44_in, "1/2"_in, {}, 1_in}).in_order() ==
          std::vector<length<inch>>(3, "15 1/2"_in));
    // On a ruler of 1/8 in: (61 1/8 + 2 - 44) / 2 = 9 9/16, cut 9 1/2 and 9 5/8.
    CHECK(parts_of_widths("61 1/8"_in, cloth_in_widths<inch>{44_in, "1/2"_in, "1/8"_in}).in_order() ==
          std::vector<length<inch>>{"9 1/2"_in, 44_in, "9 5/8"_in});
    CHECK(
        refused::facts<joining_error>([] { static_cast<void>(parts(60_in, 1_in, "1/2"_in)); }).starts_with("no room"));
    CHECK_THROWS_AS(parts(60_in, 44_in, -1_in), joining_error);
    // Edge to edge nothing is taken: (60 - 44) / 2.
    CHECK(parts(60_in, 44_in, 0_in).left == 8_in);
    CHECK(to_text(parts(60_in, 44_in, 0_in).working()) == "60 in = 8 in left + 44 in middle + 8 in right");
    CHECK_THROWS_AS(parts(100000_in, 2_in, "1/4"_in), joining_error);
}

TEST_CASE("whatever the widths, parts fit the cloth and make up the piece, and no join lies in the middle or an edge") {
    at_random::sampler random(2027);
    while (random.another_of(3000)) {
        const length<inch> graduation = random.between(0, 1) == 0 ? length<inch>() : "1/16"_in,
                           width = length_of<inch>({random.between(16, 16 * 400), 16}),
                           join = length_of<inch>({random.between(2, 16), 16}),
                           usable = length_of<inch>({random.between(16 * 20, 16 * 70), 16}),
                           beside = length_of<inch>({random.between(0, 40), 16});
        const width_parts<inch> made = parts_of_widths(width, cloth_in_widths<inch>{usable, join, graduation, beside});
        length<inch> sum;
        for (const length<inch>& l : made.in_order()) {
            CHECK(l <= usable);
            sum += l;
            if (graduation.value() != 0)
                CHECK(is_whole(ratio_of(l, graduation)));
        }
        CHECK(sum - join * 2 * made.joins() == width);
        CHECK(made.working().value() == width);
        CHECK((made.count() == 1) == (width <= usable));
        // No fewer widths make it up, as tried one by one, and no more parts are made than one more.
        std::int64_t least = 1;
        while (usable * least - join * 2 * (least - 1) < width)
            ++least;
        CHECK(made.count() >= least);
        CHECK(made.count() <= std::max<std::int64_t>(least, least == 2 ? 3 : least));
        if (made.count() == 1)
            continue;
        CHECK(abs(made.left - made.right) <= "1/8"_in);
        CHECK(made.left - join > beside);
        length<inch> at = made.left - join; // of the first seam, from the cut edge
        for (std::int64_t k = 0; k < made.joins(); ++k, at += made.middle - join * 2)
            if (made.joins() == 2)
                CHECK(abs(at - width / 2) > usable / 8);
    }
}

TEST_CASE("a lay with joins can be cut, and says how they are sewn") {
    project<inch> p("Bench cover", finished_size(122_in, 40_in));
    p.add({"cover", "ticking", panel(p.finished(), all_round(seam("1/2"_in)))}).count(2);
    p.add({"band", "ticking", panel(finished_size(30_in, 3_in))});
    sheet<inch> s = sheet_of(p);
    const bolt<inch> cloth{.width = 54_in, .selvedge = "1/2"_in, .cutting = cutting::edge_to_edge};
    CHECK_THROWS_AS(cloth_for<inch>(s, "ticking", cloth, {.sold = eighths_of_a_yard<inch>}), piece_too_wide_error);
    const sheet_cloth<inch> c = laid(p, cloth);
    CHECK(lay_faults(c.lay, c.pieces, c.bolt).empty());
    REQUIRE(c.joined.size() == 1);
    CHECK(c.joined[0].count == 2);
    // 123 in cut: (123 + 2 - 53) / 2 = 36.
    CHECK(c.joined[0].parts.in_order() == std::vector<length<inch>>{36_in, 53_in, 36_in});
    CHECK(c.pieces.size() == 4);
    CHECK(c.pieces[0].quantity == 2);
    CHECK(c.pieces[3].name == "band");

    say_joins(s, c);
    say_joins(s, c); // on a second lay of the same cloth it is said once
    s.notions.push_back(listed(c));
    const std::string text = to_text(s, {.shows = units_shown::inches});
    CHECK(text.find("  1. Cut every piece") != std::string::npos);
    CHECK(text.find(
              "  2. Make up each cover of 3 parts, from the left as they are numbered, before you mark it: sew them "
              "right sides together along their long edges, each by the allowance listed, and press the seams "
              "open.") != std::string::npos);
    CHECK(text.find("Make up", text.find("Make up") + 1) == std::string::npos);
    CHECK(text.find("  parts that make up the cover: 3\n  cover (1), cut width: 36 in\n  cover (2), cut width: 53 in\n"
                    "  cover (3), cut width: 36 in\n  cover, allowance of each join: 1/2 in\n") != std::string::npos);
}

TEST_CASE("wadding is laid edge to edge") {
    project<inch> p("Quilt", finished_size(100_in, 40_in));
    p.add({"middle layer", "thin wadding", panel(p.finished())});
    sheet<inch> s = sheet_of(p);
    const auto c =
        cloth_for<inch>(s, "thin wadding", {.width = 90_in}, {.sold = eighths_of_a_yard<inch>}, {.may_join = true});
    CHECK(c.joined[0].parts.in_order() == std::vector<length<inch>>{5_in, 90_in, 5_in});
    say_joins(s, c);
    CHECK(s.steps.groups[1].steps[0].what.find(
              "Make up each middle layer of 3 parts, from the left as they are numbered: "
              "lay them edge to edge") == 0);
    CHECK(s.steps.groups[1].care == std::vector<caution::work>{caution::work::stitching});
}

TEST_CASE("the project's own allowance is used, folded cloth is opened out, and what may not be joined is refused") {
    project<inch> p = curtain(60_in, 20_in);
    p.add(project_cloth<inch>{.material = "ticking", .width = 44_in, .folded = true, .join = 1_in});
    const sheet_cloth<inch> c = laid(p, {});
    CHECK(c.joined[0].parts.join == 1_in);
    CHECK(c.joined[0].parts.left == 10_in); // (60 + 4 - 44) / 2
    CHECK_FALSE(c.bolt.folded);
    project<inch> film = curtain(60_in, 50_in);
    film.find("curtain")->of_film();
    CHECK_THROWS_AS(laid(film, {.width = 44_in}), piece_too_wide_error);
    project<inch> washed = curtain(60_in, 50_in);
    washed.add(project_cloth<inch>{.material = "ticking", .washed = washed_when::as_pieces});
    CHECK_THROWS_AS(laid(washed, {.width = 44_in}), piece_too_wide_error);
    // Parts of a piece that might be turned lie all one way, as they are sewn to each other.
    const auto either = cloth_for<inch>(sheet_of(curtain(60_in, 50_in)), "ticking", {.width = 44_in},
                                        {.sold = eighths_of_a_yard<inch>}, {.lies = grain::may_turn, .may_join = true});
    CHECK(either.pieces.size() == 3);
    for (const cloth_piece<inch>& part : either.pieces)
        CHECK(part.grain == grain::fixed);
    // A piece that may turn and then fits is turned.
    project<inch> turned = curtain(60_in, 20_in);
    turned.find("curtain")->lies(cloth_lie::either_way);
    CHECK(laid(turned, {.width = 44_in}).joined.empty());
    // What is on hand is used for parts too: 44 x 20 in of it.
    const auto both = cloths_for<inch>(sheet_of(curtain(60_in, 20_in)),
                                       {"ticking", {.width = 44_in}, {.sold = eighths_of_a_yard<inch>}},
                                       {{"an end", "ticking", 44_in, 20_in}}, {.may_join = true});
    REQUIRE(both.size() == 2);
    CHECK(both[0].on_hand->name == "an end");
    CHECK(both[1].lay.length == 20_in);
}
