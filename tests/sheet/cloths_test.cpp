// sheet/project_cloth.hpp: what a project says of its cloths decides their lays, what is bought, the cut table and the steps.
#include "at_random.hpp"
#include <turncloth.hpp>
#include <turncloth/design/design_of.hpp>
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/sheet/on_hand.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace turncloth;

namespace {

constexpr purchase_rules<inch> by_the_eighth{.straightening = 1_in, .sold = eighths_of_a_yard<inch>};

/// A kneeling pad's cover: two sides 20 x 12 in and a pocket 18 x 6 in, cut.
project<inch> cover(project_cloth<inch> drill = {.material = "drill"}) {
    project<inch> p("Kneeling pad", finished_size(19_in, 11_in));
    p.add({"side", "drill", panel(p.finished(), all_round(seam("1/2"_in)))}).count(2);
    p.add({"pocket", "drill", panel(finished_size(17_in, 5_in), all_round(seam("1/2"_in)))});
    p.add(std::move(drill));
    return p;
}
sheet_cloth<inch> laid(const project<inch>& p, const bolt<inch>& on = {}, const cloth_options& options = {}) {
    return cloth_for<inch>(sheet_of(p), "drill", on, by_the_eighth, options);
}
/// Every sentence of the steps, in order.
std::string steps(const project<inch>& p) {
    const std::string all = to_text(sheet_of(p));
    const std::size_t from = all.find("In this order"), to = all.find("Safety");
    return all.substr(from, to - from);
}
std::string refused(const project<inch>& p) {
    const auto made = try_sheet_of(p);
    return made ? "nothing" : made.refused().what();
}

} // namespace

TEST_CASE("each cloth has its own width and nap, and each piece of it lies as it says") {
    project<inch> p = cover({.material = "drill", .width = 45_in, .selvedge = "1/2"_in});
    p.find("pocket")->lies(cloth_lie::either_way);
    const sheet_cloth<inch> c = laid(p);
    CHECK(c.bolt.width == 45_in);
    CHECK(c.bolt.selvedge == "1/2"_in);
    CHECK(c.pieces[0].grain == grain::fixed);
    CHECK(c.pieces[1].grain == grain::may_turn);
    // By hand: 44 in hold both sides next to each other, 40 in, on 12 in; turned, the pocket 18 high does not go beside
    // them on 4 in, so it lies beyond, 6 in more.
    CHECK(c.lay.length == 18_in);

    // What is given where it is laid goes before, with its selvedges: 60 in hold the pocket on end only beside three.
    CHECK(laid(p, {.width = 60_in}).bolt.selvedge == 0_in);
    CHECK(laid(p, {.width = 60_in}).bolt.width == 60_in);

    // What the project says of a piece goes before what holds for the others.
    p.find("side")->lies(cloth_lie::one_way);
    const sheet_cloth<inch> turning = laid(p, {}, {.lies = grain::may_turn});
    CHECK(turning.pieces[0].grain == grain::fixed);
    CHECK(laid(cover({.material = "drill", .width = 45_in}), {}, {.lies = grain::may_turn}).pieces[0].grain ==
          grain::may_turn);
    CHECK_FALSE(turning.bolt.one_way);
    CHECK(laid(cover({.material = "drill", .width = 45_in, .one_way = true})).bolt.one_way);
}

TEST_CASE("pieces that are turned alike lie one way, and say so") {
    // On 30 in the sides, 20 x 12 in, and the pocket, 18 x 6 in, lie one beyond the other, 30 in; all turned side by side.
    project<inch> p = cover({.material = "drill", .width = 30_in});
    for (const char* name : {"side", "pocket"})
        p.find(name)->lies(cloth_lie::turned_alike);
    const sheet_cloth<inch> c = laid(p);
    CHECK(c.lay.length == 20_in);
    for (const auto& place : c.lay.places)
        CHECK(place.turned);
    CHECK(lay_faults(c.lay, c.pieces, c.bolt).empty());
    CHECK(to_text(sheet_of(p)).find("turned as the others that are turned alike") != std::string::npos);
    CHECK(to_json(sheet_of(p))["pieces"][0]["lies"] == "turned alike");
    CHECK(project_of(read_design(to_json(design_of(p)).dump()), p.finished()) == p);
    // Of one-way cloth none is turned.
    CHECK(laid(cover({.material = "drill", .width = 30_in, .one_way = true})).lay.length == 30_in);
}

TEST_CASE("a piece on the fold lies at half its width against the fold, and comes out once") {
    project<inch> p = cover({.material = "drill", .width = 45_in, .selvedge = "1/2"_in, .folded = true});
    p.find("pocket")->lies(cloth_lie::on_fold);
    const sheet_cloth<inch> c = laid(p);
    REQUIRE(c.lay.places.size() == 2); // both sides at once, through both layers
    for (const cloth_place<inch>& at : c.lay.places) {
        if (at.piece == 0) {
            CHECK(at.comes_out == 2);
            continue;
        }
        CHECK(at.comes_out == 1);
        CHECK(at.where.from_left == 0_in);
        CHECK(at.where.across == 9_in); // half of 18
    }
    CHECK(lay_faults(c.lay, c.pieces, c.bolt).empty());
    // 22 in from the fold to the selvedge hold 9 and 20 only one beyond the other.
    CHECK(c.lay.length == 18_in);

    // Cloth on hand is not folded, so that all is cut whole, and off the roll too.
    for (const sheet_cloth<inch>& each :
         cloths_for<inch>(sheet_of(p), {"drill", {}, by_the_eighth}, {{"the end of a roll", "drill", 18_in, 6_in}})) {
        CHECK_FALSE(each.bolt.folded);
        CHECK_FALSE(each.pieces[1].on_fold);
    }
    CHECK(refused(cover()).find("on the fold") == std::string::npos);
    p.remove("pocket");
    p.add({"flap", "felt", panel(finished_size(9_in, 6_in))}).lies(cloth_lie::on_fold);
    CHECK(refused(p).find("the flap is cut on the fold, and the felt is not said to lie folded") != std::string::npos);
}

TEST_CASE("cloth that is washed first is bought longer, and lies narrower") {
    // Laid 12 + 6 in on end; with an inch at either end 20 in, which 20 % of shrinkage asks 25 in for, and of 8 in on
    // what remains of 10 in: L / (1 - s), after ISO 5077 (value from memory).
    const project<inch> p = cover({.material = "drill",
                                   .width = 50_in,
                                   .washed = washed_when::before_cutting,
                                   .change = {shrinks_by(percent(20)), shrinks_by(percent(10))}});
    const sheet_cloth<inch> c = laid(p);
    CHECK(c.width_sold() == 50_in);
    CHECK(c.bolt.width == 45_in);
    CHECK(c.lay.length == 18_in);
    CHECK(c.bought.needed == 25_in);
    CHECK(c.bought.bought == 27_in);
    CHECK(to_text(c.bought.working) ==
          "27 in = 18 in laid + 2 x 1 in straightened ends + 5 in lost in washing + 2 in up to what is sold");
    const std::string said = steps(p);
    CHECK(said.find("1. Wash, dry and press the drill before you measure and cut it: the length to buy allows for what "
                    "the wash takes.") != std::string::npos);
    CHECK(said.find("Wash") < said.find("Cut")); // before all else
    CHECK(to_text(sheet_of(p))
              .find("drill: 50 in (127 cm) wide, washed before it is cut, shrinks by 20 % along, shrinks "
                    "by 10 % across") != std::string::npos);
    // A change that the maker measured on her own cloth goes before what the project says.
    purchase_rules<inch> own = by_the_eighth;
    own.change = shrinks_by(percent(50));
    CHECK(cloth_for<inch>(sheet_of(p), "drill", {}, own).bought.needed == 40_in);
}

TEST_CASE("pieces that are washed are cut larger, and keep their grain where the wash takes more of one way") {
    const washing takes{shrinks_by(percent(20)), shrinks_by(percent(10))};
    project<inch> p = cover({.material = "drill", .width = 50_in, .washed = washed_when::as_pieces, .change = takes});
    p.find("pocket")->lies(cloth_lie::either_way);
    const sheet_cloth<inch> c = laid(p);
    // 20 / 0.9 = 22 2/9 across, 12 / 0.8 = 15 along; 18 / 0.9 = 20, 6 / 0.8 = 7 1/2.
    CHECK(c.pieces[0].size.width() == length_of<inch>({200, 9}));
    CHECK(c.pieces[0].size.height() == 15_in);
    CHECK(c.pieces[1].size == cut_size<inch>(20_in, "7 1/2"_in));
    CHECK(c.pieces[1].grain == grain::fixed);
    CHECK(c.bolt.width == 50_in);
    CHECK(sheet_of(p).pieces[0].cut == cut_size<inch>(20_in, 12_in)); // as it is marked
    CHECK(to_text(sheet_of(p)).find("cut 22 1/4 x 15 in (56.4 x 38.1 cm) before it is washed") != std::string::npos);
    const std::string said = steps(p);
    CHECK(said.find("Cut") < said.find("2. Wash, dry and press the pieces of drill before you mark them"));
    CHECK(said.find("2. Wash, dry and press the pieces of drill before you mark them") != std::string::npos);

    // On a ruler never smaller than what the wash takes.
    sheet<inch> ruled = sheet_of(p);
    ruled.pieces[0].graduation = "1/8"_in;
    CHECK(cloth_for<inch>(ruled, "drill", {}, by_the_eighth).pieces[0].size.width() == "22 1/4"_in);

    // Where both ways change alike a piece may turn as ever.
    project<inch> alike = cover({.material = "drill",
                                 .width = 50_in,
                                 .washed = washed_when::as_pieces,
                                 .change = {shrinks_by(percent(5)), shrinks_by(percent(5))}});
    alike.find("pocket")->lies(cloth_lie::either_way);
    CHECK(laid(alike).pieces[1].grain == grain::may_turn);
}

TEST_CASE("whatever a project says of its cloth, its lay can be cut and its pieces come out of the wash as listed") {
    at_random::sampler random(2026);
    while (random.another_of(60)) {
        const auto percents = [&] { return shrinks_by(percent(random.between(0, 15))); };
        const bool folded = random.between(0, 1) == 1;
        project_cloth<inch> said{.material = "drill",
                                 .width = length_of<inch>(random.between(44, 70)),
                                 .selvedge = "1/2"_in,
                                 .one_way = random.between(0, 1) == 1,
                                 .folded = folded,
                                 .washed =
                                     random.between(0, 1) == 1 ? washed_when::before_cutting : washed_when::as_pieces,
                                 .change = {percents(), percents()}};
        project<inch> p("Bag", finished_size(10_in, 10_in));
        for (int k = 0; k < 3; ++k)
            p.add(
                 {"piece " + std::to_string(k), "drill",
                  panel(finished_size(length_of<inch>(random.between(3, 14)), length_of<inch>(random.between(3, 30))))})
                .count(random.between(1, 4))
                .lies(k == 0 ? cloth_lie::turned_alike : static_cast<cloth_lie>(random.between(0, folded ? 5 : 3)));
        p.add(said);
        const sheet<inch> s = sheet_of(p);
        const sheet_cloth<inch> c = cloth_for<inch>(s, "drill", {.gap = "1/4"_in}, by_the_eighth);
        CHECK(lay_faults(c.lay, c.pieces, c.bolt).empty());
        for (std::size_t k = 0; k < 3; ++k)
            if (said.washed == washed_when::as_pieces)
                CHECK(after_washing(c.pieces[k].size, said.change) == s.pieces[k].cut);
        if (said.washed == washed_when::before_cutting) {
            CHECK(after_washing(c.bought.needed, said.change.along) == c.lay.length + 2_in);
            CHECK(after_washing(c.width_sold(), said.change.across) == c.bolt.width);
        }
    }
}

TEST_CASE("what cannot be done to a cloth is refused") {
    project<inch> p = cover();
    p.add(project_cloth<inch>{.material = "drill"});
    CHECK(refused(p).find("the drill is told of twice") != std::string::npos);
    p = cover();
    p.add(project_cloth<inch>{.material = "canvas"});
    CHECK(refused(p).find("no piece is cut from the canvas that the project tells of") != std::string::npos);
    CHECK(refused(cover({.material = "drill", .width = 2_in, .selvedge = 1_in}))
              .find("selvedges of 1 in leave nothing of the drill, 2 in wide") != std::string::npos);
    CHECK(refused(cover({.material = "drill", .width = -1_in})).find("not below zero") != std::string::npos);
    CHECK(refused(cover({.material = "drill", .change = {shrinks_by(percent(5)), {}}}))
              .find("it is not said when the drill, which changes its size, is washed") != std::string::npos);
    p = cover({.material = "drill", .washed = washed_when::before_cutting});
    p.find("pocket")->of_film();
    CHECK(refused(p).find("the drill is plastic film, which is neither washed nor pressed") != std::string::npos);
    CHECK(refused(cover({.material = "drill", .on_hand = {{"end", 0_in, 9_in}}}))
              .find("a piece of drill on hand is 0 in x 9 in: it is more than nothing either way") !=
          std::string::npos);
    CHECK(refused(cover({.material = "drill", .on_hand = {{"end", 9_in, -1_in}}})).find("9 in x -1 in") !=
          std::string::npos);
    CHECK(refused(cover({.material = "drill", .on_hand = {{"end", 9_in, 9_in}, {"end", 8_in, 9_in}}}))
              .find("two pieces of drill on hand are named end") != std::string::npos);
    CHECK(steps(cover({.material = "drill", .washed = washed_when::before_cutting}))
              .find("Wash, dry and press the drill before you measure and cut it.\n") != std::string::npos);
}

TEST_CASE("a sheet's JSON and a project as a file say it too") {
    project<inch> p = cover({.material = "drill",
                             .width = 50_in,
                             .selvedge = "1/2"_in,
                             .one_way = true,
                             .folded = true,
                             .washed = washed_when::before_cutting,
                             .change = {shrinks_by({1, 30}), grows_by(percent(2))},
                             .on_hand = {{"grey end", 20_in, "30 1/2"_in}}});
    p.find("pocket")->lies(cloth_lie::on_fold);
    CHECK(to_text(sheet_of(p)).find("on hand grey end, 20 in (50.8 cm) x 30 1/2 in (77.5 cm)") != std::string::npos);
    const auto json = to_json(sheet_of(p));
    CHECK(json["pieces"][1]["lies"] == "on the fold");
    CHECK_FALSE(json["pieces"][0].contains("lies"));
    CHECK(
        json["cloths"].dump() ==
        R"([{"material":"drill","width":{"exact":"50","unit":"in"},"selvedge":{"exact":"1/2","unit":"in"},)"
        R"("one_way":true,"folded":true,"washed":"before cutting","change":{"along":"-1/30","across":"1/50"},)"
        R"("on_hand":[{"name":"grey end","width":{"exact":"20","unit":"in"},"length":{"exact":"30 1/2","unit":"in"}}]}])");
    CHECK_FALSE(to_json(sheet_of(cover({.material = "drill"})))["cloths"][0].contains("width"));

    const project_design d = design_of(p);
    CHECK(d.cloths[0].shrinks_along.text() == "3 1/3");
    CHECK(d.cloths[0].shrinks_across.text() == "- (2)");
    const project_design read = read_design(to_json(d).dump());
    CHECK(read == d);
    CHECK(project_of(read, p.finished()) == p);
}

TEST_CASE("of a cloth whose pieces are not there at a size a file says nothing") {
    const project_design d = read_design(R"({"turncloth_design": 1, "name": "Mat", "units": "inches",
        "pieces": [{"name": "top", "material": "drill", "width": "finished width", "height": "finished height"},
                   {"name": "pad", "material": "wadding", "width": "9 in", "height": "9 in",
                    "where": "finished width is more than 10 in"}],
        "cloths": [{"material": "wadding", "width": "96 in"}]})");
    CHECK(project_of(d, finished_size(9_in, 9_in)).cloths().empty());
    CHECK(project_of(d, finished_size(12_in, 9_in)).cloths()[0].width == 96_in);
    const auto mistaken = try_read_design(R"({"turncloth_design": 1, "name": "Mat",
        "pieces": [{"name": "top", "material": "drill", "width": "finished width", "height": "finished height"}],
        "cloths": [{"material": "dril", "width": "9 in"}]})");
    REQUIRE_FALSE(mistaken);
    CHECK(to_text(mistaken.refused().faults()[0]) == "/cloths/0/material: no piece is cut from \"dril\"");
}
