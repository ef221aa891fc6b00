// A project file for a month: at three sizes in inches and three in centimetres its sheet is worked out on a ruler, with nothing to
// be warned of, and its handout is written in English and in German; cut sizes by hand; the sizes beside them are refused.
#include "../../examples/sheets/german_words.hpp"
#include "making/left_out.hpp"
#include "refused.hpp"
#include "vectors.hpp"
#include <turncloth.hpp>
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/handout/german.hpp>
#include <turncloth/handout/handout.hpp>
#include <turncloth/making/boxed.hpp>
#include <turncloth/making/executed.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/on_hand.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

using namespace turncloth;

namespace {

project_design month(const std::string& name) {
    std::ifstream in("examples/designs/" + name + ".json", std::ios::binary);
    return read_design(std::string(std::istreambuf_iterator<char>(in), {}));
}

template <length_unit Unit>
sheet<Unit> sheet_at(const project_design& d, const finished_size<Unit>& size) {
    const length<Unit> graduation = by_edition<Unit>(length_of<inch>({1, 16}), length_of<centimetre>({1, 10}));
    return sheet_on_ruler(size, graduation, [&](const auto& s, const auto& by) { return project_of(d, s, by); });
}

/// What it warns of, and no more than the page's own words in a handout that is not in English.
void check_sizes(const project_design& d, const std::vector<std::string>& sizes) {
    for (const std::string& typed : sizes)
        std::visit(
            [&](const auto& size) {
                CAPTURE(typed);
                const auto s = sheet_at(d, size);
                for (const std::string& w : s.warnings)
                    CHECK_MESSAGE(w.empty(), w);
                CHECK(s.bulk.empty());
                const std::string english = to_html(handout_of(s, {}, {}));
                const std::string german_text =
                    to_html(handout_of(s, {}, {.words = german(allotment::own_words_in_german())}));
                CHECK(english.find("Make it") != std::string::npos);
                CHECK(german_text.find("Make it") == std::string::npos);
                for (const sheet_caution& c : s.cautions)
                    CHECK_MESSAGE(german_text.find(c.sentence.substr(0, 40)) == std::string::npos, c.sentence);
            },
            read_size(typed));
}

/// All pieces of each cloth that the file says is on hand go on it, at each of these sizes.
void check_nothing_bought(const project_design& d, const std::vector<std::string>& sizes) {
    for (const std::string& typed : sizes)
        std::visit(
            [&](const auto& size) {
                CAPTURE(typed);
                const auto s = sheet_at(d, size);
                using unit = typename std::decay_t<decltype(size.width())>::unit_type;
                for (const project_cloth<unit>& c : s.cloths)
                    for (const sheet_cloth<unit>& laid : cloths_for<unit>(s,
                                                                          {c.material,
                                                                           {.width = by_edition<unit>(54_in, 140_cm)},
                                                                           {.sold = by_edition<unit>(1_in, 1_cm)}},
                                                                          said_on_hand(s)))
                        CHECK_MESSAGE(laid.on_hand, c.material);
            },
            read_size(typed));
}

std::string refused_at(const project_design& d, const std::string& typed) {
    return std::visit([&](const auto& size) { return refused::message<error>([&] { sheet_at(d, size); }); },
                      read_size(typed));
}

} // namespace

TEST_CASE("a seed-tray tote is made at any size, and what does not go together is refused") {
    const project_design tote = month("seed_tray_tote");
    check_sizes(tote, {"15 x 9 in", "20 3/16 x 12 in", "13 x 6 in", "38 x 23 cm", "50,3 x 30 cm", "33 x 15 cm"});
    // By hand: 15 in and 9 in deep, seams of 1/2 in; the lining 1/16 in smaller at either side. Straps 4 x 1 1/2 in wide; they
    // rise 8 + 1 in over a hand of 4 in, from 9 in apart: 4 + 2 x sqrt(9 x 9 + 2.5 x 2.5) = 22.68, up to a 1/4 in; 2 x (2 3/4 +
    // 1/4) in more at their ends.
    const sheet<inch> s = sheet_at(tote, finished_size<inch>(15_in, 9_in));
    REQUIRE(s.pieces.size() == 3);
    CHECK(s.pieces[0].cut == cut_size<inch>(25_in, "14 1/2"_in));
    CHECK(s.pieces[1].cut == cut_size<inch>("24 3/4"_in, "14 3/8"_in));
    CHECK(s.pieces[2].cut == cut_size<inch>(6_in, "28 3/4"_in));
    CHECK(refused_at(tote, "7 x 9 in") == "The straps need at least 7 1/2 in of width.");
    CHECK(refused_at(tote, "9 x 9 in") ==
          "The stiffener goes in through a gap of 9 in in the base of the lining, which takes at least 10 in of width "
          "inside.");
    CHECK(refused_at(tote, "15 x 3 in") ==
          "The ends of the straps reach 3 3/4 in down from the rim: the tote needs more height than that.");
}

TEST_CASE("a tablecloth and its napkins have folded mitres at any size, and a cloth that covers no table is refused") {
    const project_design linen = month("table_linen");
    check_sizes(linen, {"60 x 44 in", "30 3/16 x 20 in", "52 x 52 in", "150 x 110 cm", "76,3 x 50 cm", "130 x 130 cm"});
    // By hand: hems of 2 in with 1/2 in turned in, all round, and of 3/8 with 1/4.
    const sheet<inch> s = sheet_at(linen, finished_size<inch>(60_in, 44_in));
    REQUIRE(s.pieces.size() == 2);
    CHECK(s.pieces[0].cut == cut_size<inch>(65_in, 49_in));
    CHECK(s.pieces[1].cut == cut_size<inch>("17 1/4"_in, "17 1/4"_in));
    CHECK(s.pieces[1].made_from.count() == 4);
    CHECK(
        refused_at(linen, "60 x 14 in") ==
        "A cloth that hangs over by 7 in on every side covers a table only where it is more than 14 in wide and high.");
}

TEST_CASE(
    "a picnic roll is piped all round at any size, and one that cannot be turned out or holds no pebbles is refused") {
    const project_design roll = month("picnic_roll");
    check_sizes(roll,
                {"48 x 30 in", "60 1/2 x 44 in", "26 x 9 3/16 in", "120 x 75 cm", "150,3 x 110 cm", "70 x 24 cm"});
    // By hand: seams of 1/2 in all round. Round a cord of 1/4 in in cloth of 1/64: 17/64 x pi = 0.834, and twice 1/2: up to
    // 1 7/8 in. 156 in round, 1 in of lap and 1/2 turned in: in strips of at most 42 in, each join of which takes 1 7/8, four:
    // (157 1/2 + 3 x 1 7/8) / 4 = 40.78, up to 40 7/8.
    const sheet<inch> s = sheet_at(roll, finished_size<inch>(48_in, 30_in));
    REQUIRE(s.pieces.size() == 4);
    CHECK(s.pieces[0].cut == cut_size<inch>(49_in, 31_in));
    CHECK(s.pieces[1].cut == cut_size<inch>(49_in, 31_in));
    CHECK(s.pieces[2].cut == cut_size<inch>("6 1/2"_in, 31_in)); // 5, a seam, and a hem of 3/8 and 5/8
    CHECK(s.pieces[3].cut == cut_size<inch>("40 7/8"_in, "1 7/8"_in));
    CHECK(s.pieces[3].made_from.count() == 4);
    CHECK(s.notions.front().details()[1].amount.value() == 157_in); // 156, and pi x (1/4 + 2/64) = 0.88
    CHECK(refused_at(roll, "19 x 30 in") ==
          "Between its end pockets a roll needs room to be turned out: at least 20 in of width.");
    CHECK(refused_at(roll, "48 x 7 in") == "A roll for two pebbles at either end needs at least 8 in of height.");
}

TEST_CASE("a tool apron is made at any size, and pockets, flaps and ties that do not go together are refused") {
    project_design apron = month("tool_apron");
    check_sizes(apron, {"24 x 18 in", "27 3/16 x 20 1/2 in", "18 x 17 in", "60 x 46 cm", "70,3 x 50 cm", "44 x 43 cm"});
    // By hand: 24 in and hems of 3/8 and 3/4 in at either side; 18 in, such a hem, and a casing of 1/4, 1 1/4 and 1/8 in with 3/8 in
    // under. Sides of 1 1/4 in leave 21 1/2 in: slots of at least 2 1/2 in are 8; pockets 1 in apart are 10 1/4 in wide.
    // Folds of 1 in: 14 1/4 in between seams of 3/8 in. From the top 1 5/8 + 1/2, 5 in of slots, 1/2 and 3/4 in: 8 3/8 in; to 1 1/4 in
    // from the foot: 8 3/8 in high, with a hem of 3/8 and 1 in. Flaps 1/4 in wider at either side, 3/4 + 2 + 1 1/2 in long.
    const sheet<inch> s = sheet_at(apron, finished_size<inch>(24_in, 18_in));
    REQUIRE(s.pieces.size() == 5);
    CHECK(s.pieces[0].cut == cut_size<inch>("26 1/4"_in, "21 1/8"_in));
    CHECK(s.pieces[1].cut == cut_size<inch>("22 1/4"_in, "6 3/4"_in));
    CHECK(s.pieces[2].cut == cut_size<inch>(15_in, "10 1/8"_in));
    CHECK(s.pieces[3].cut == cut_size<inch>(15_in, "10 1/8"_in));
    CHECK(s.pieces[4].cut == cut_size<inch>(12_in, "5 1/4"_in));
    CHECK(s.pieces[4].made_from.count() == 2);
    CHECK(s.notions[0].details()[1].amount.value() == 64_in); // 40, 4 x 2 1/2, 2 x 6, 1 and 2 x 1/2
    CHECK(s.notions[0].details()[2].amount.value() == "19 1/2"_in);
    CHECK(s.notions[1].details()[1].places ==
          std::vector<length<inch>>{"1 3/4"_in, "2 3/4"_in, "11 1/2"_in, "12 1/2"_in});
    // Eight slots, a pocket of either kind and the casing, as they are sewn; with one row fewer that holds a pocket they are not.
    const making<inch>& d = *s.design;
    CHECK(execute(d).spaces.size() == 11);
    for (std::size_t i = 0; i < d.rows().size(); ++i)
        if (d.rows()[i].through.size() == 2 && !name_of(d, d.rows()[i].through[0]).starts_with("flap")) {
            CAPTURE(described(d, operation{operation_kind::stitching, i}));
            CHECK_FALSE(execute(things::without_row(d, i, 0)).faults.empty());
        }
    CHECK(refused_at(apron, "15 x 18 in") ==
          "Two pockets side by side, 6 in wide each, need at least 15 1/2 in of width.");
    CHECK(refused_at(apron, "35 x 18 in") ==
          "An apron for a waist of 40 in leaves 6 in of it open at the back: it is at most 34 in wide.");
    CHECK(refused_at(apron, "24 x 13 in") == "Below its slots the apron needs room for pockets that are longer than "
                                             "their flaps: at least 13 5/8 in of height.");
    const auto with = [&](const std::string& name, const std::string& is) {
        project_design other = apron;
        for (design_measure& m : other.measures)
            if (m.name == name)
                m.is = measure_expression(is), m.inches = {}, m.centimetres = {};
        return refused_at(other, "24 x 18 in");
    };
    CHECK(with("fold", "1 1/4 in")
              .find("a pocket 10 1/4 in wide has no room for two folds of 1 1/4 in, 4 in clear of its sides") !=
          std::string::npos);
    CHECK(with("flap width", "10 in").find("a flap 10 in wide is narrower than its pocket, which is 10 1/4 in") !=
          std::string::npos);
    CHECK(with("hold", "20 in").find("a tie of 63 in is too short for a casing of 24 in") != std::string::npos);
}

TEST_CASE("a produce bag in five sizes is drawn up both ways, and a cord that hangs out too far is refused") {
    const project_design bag = month("produce_bag");
    check_sizes(bag, bag.sizes);
    CHECK(bag.sizes.size() == 10); // five in either unit
    // By hand: French seams of 1/4 and 3/8 in at either side; 10 in there and back, and hems of 3/8 and 3/4 in. The strips end 3/4
    // in from the sides, hold a cord of 1/4 in with 1/4 in of ease between rows 1/8 in inside them, and turn 3/8 in.
    const sheet<inch> s = sheet_at(bag, finished_size<inch>(8_in, 10_in));
    REQUIRE(s.pieces.size() == 2);
    CHECK(s.pieces[0].cut == cut_size<inch>("9 1/4"_in, "22 1/4"_in));
    CHECK(s.pieces[1].cut == cut_size<inch>("7 1/4"_in, "1 1/2"_in));
    const auto& cord = s.notions.front();
    CHECK(cord.details()[1].amount.value() == 20_in); // twice 8, two ends of 1 1/2 in, a knot of 1 in
    CHECK(cord.details()[3].amount.value() == 16_in); // 16 less 3, and both ends
    CHECK(refused_at(bag, "16 x 20 in") ==
          "Drawn up, each cord would hang out in a loop of 32 in, more than the 30 in that this bag allows: the local "
          "standard on cords may allow less still.");
    CHECK(refused_at(bag, "2 x 20 in") ==
          "A bag 2 in wide leaves no room for its casings, which end 3/4 in from either side.");
    CHECK(refused_at(bag, "8 x 3 in") ==
          "The casings lie 1 1/2 in below the top: a bag needs at least 3 3/4 in of height.");
}

TEST_CASE("a patchwork cushion cover is pieced at any size, and what is too small or too long for it is refused") {
    const project_design cushion = month("patchwork_cushion");
    check_sizes(cushion,
                {"16 x 16 in", "20 3/16 x 18 in", "10 x 12 1/2 in", "40 x 40 cm", "50,3 x 45 cm", "25 x 30 cm"});
    // By hand: 16 in less two borders of 2 in are three patches of 4 in, seams of 1/4 in. Squares to halve are 7/8 in larger than
    // what they finish at (common practice). The outer seam is 1/2 in; the backs lap by 2 in, hems of 1/4 and 2 in.
    const sheet<inch> s = sheet_at(cushion, finished_size<inch>(16_in, 16_in));
    const auto cut = [&](const std::string& name) {
        for (const auto& p : s.pieces)
            if (p.made_from.name() == name)
                return p.cut;
        return cut_size<inch>(1_in, 1_in);
    };
    CHECK(cut("light patch") == cut_size<inch>("4 1/2"_in, "4 1/2"_in));
    CHECK(cut("dark square to halve") == cut_size<inch>("4 7/8"_in, "4 7/8"_in));
    CHECK(cut("left strip") == cut_size<inch>("2 3/4"_in, "12 1/2"_in));
    CHECK(cut("upper left corner") == cut_size<inch>("2 3/4"_in, "2 3/4"_in));
    CHECK(cut("upper back") == cut_size<inch>(17_in, "11 3/4"_in));
    CHECK(cut("lower back") == cut_size<inch>(17_in, "11 3/4"_in));
    CHECK(s.notions[2].details()[2].amount.value() == "7/8"_in); // a buttonhole: 3/4 across the button, 1/8 thick
    // Oblong: the sides keep their border, the others take what is left.
    const sheet<inch> oblong = sheet_at(cushion, finished_size<inch>(16_in, 20_in));
    CHECK(oblong.pieces[6].cut == cut_size<inch>("12 1/2"_in, "4 3/4"_in));
    CHECK(refused_at(cushion, "8 x 16 in") ==
          "Patches of less than 1 1/2 in are lost in their seams: the cushion needs at least 8 1/2 in each way.");
    CHECK(refused_at(cushion, "16 x 30 in") ==
          "Its border would be 9 in wide, more than two patches of 4 in: make the cushion more nearly square.");
}

TEST_CASE("seams of a patchwork nest: those of a row are pressed one way, and those of the next the other") {
    const project_design cushion = month("patchwork_cushion");
    REQUIRE(cushion.making);
    for (const design_seam& s : cushion.making->seams)
        if (s.called.starts_with("row ")) {
            const std::int64_t row = s.called[4] - '1';
            CHECK_MESSAGE(s.pressed ==
                              (nests_toward(row) == pressed_toward::right ? pressed::to_other : pressed::to_one),
                          s.called);
        }
}

TEST_CASE("a draught stopper holds what is weighed for it, and what is too heavy, too short or too thin is refused") {
    const project_design stopper = month("draught_stopper");
    check_sizes(stopper, {"32 x 4 in", "36 3/16 x 3 in", "24 x 2 in", "80 x 10 cm", "90,3 x 8 cm", "60 x 5 cm"});
    // By hand: half of 4 pi is 6.28, up to 6 1/2 in, and seams of 1/2 in. 13 in round it holds 13 x 13 x 32 / (4 pi) = 430.35 cubic
    // inches, of 3/20 oz each 64.6 oz.
    const sheet<inch> s = sheet_at(stopper, finished_size<inch>(32_in, 4_in));
    REQUIRE(s.pieces.size() == 1);
    CHECK(s.pieces[0].cut == cut_size<inch>(33_in, "7 1/2"_in));
    CHECK(s.notions[0].details()[3].count == 431);
    CHECK(s.notions[0].details()[4].count == 65);
    CHECK(refused_at(stopper, "4 x 1 in") ==
          "The gap of 4 in that it is turned and filled through takes at least 6 in of length.");
    CHECK(refused_at(stopper, "12 x 4 in") ==
          "A tube 4 in thick is 13 in round: shorter than that it is a cushion, and fills out otherwise.");
    CHECK(refused_at(stopper, "32 x 1 in") ==
          "The filling goes in by a scoop 2 1/2 in wide, and the tube lies only 1 3/4 in wide: it must be thicker.");
    CHECK(
        refused_at(stopper, "60 x 6 in") ==
        "It would hold a filling of 259 by the scales, more than the 160 that is lifted without harm: make it thinner "
        "or shorter.");
}

/// Whether seams and creases close it to one box of that size, which its filling goes into.
template <length_unit Unit>
void check_box(const project_design& d, const finished_size<Unit>& size, std::type_identity_t<length<Unit>> depth) {
    const project<Unit> made = project_of(d, size);
    REQUIRE(made.design() != nullptr);
    const boxed<Unit> found = boxed_of(*made.design());
    CHECK(found.faults.empty());
    REQUIRE(found.boxes.size() == 1);
    const box_found<Unit>& box = found.boxes[0];
    CHECK_FALSE(box.open);
    CHECK(box.width == size.width());
    CHECK(box.height == size.height());
    CHECK(box.depth == depth);
    REQUIRE(found.passages.size() == 1);
    CHECK(found.passages[0].passes());
}

TEST_CASE(
    "a bench cushion is piped and boxed at any size, and what does not close or would be cut through is refused") {
    const project_design cushion = month("bench_cushion");
    check_sizes(cushion, {"36 x 16 in", "54 5/8 x 18 in", "20 x 14 in", "90 x 40 cm", "140,3 x 45 cm", "50 x 35 cm"});
    // Its strip in three pieces and the zipped halves, and in one that is folded round two corners.
    check_box(cushion, finished_size<inch>(36_in, 16_in), 3_in);
    check_box(cushion, finished_size<inch>(20_in, 14_in), 3_in);
    check_box(cushion, finished_size<centimetre>(90_cm, 40_cm), 8_cm);
    check_box(cushion, finished_size<centimetre>(50_cm, 35_cm), 8_cm);
    // By hand: seams of 1/2 in. Half of 3 in, a seam, and 3/4 in turned under beside the zipper. Round a cord of 1/4 in in canvas of
    // 1/32: 9/32 x pi = 0.884, and twice 1/2: up to 2 in. 104 in round, 1 in of lap and 1/2 turned in: of 53 in three strips, each join
    // takes 2 in: (105 1/2 + 2 x 2) / 3 = 36 1/2. The tab: 1 1/2 sewn down, and again 1 1/2, 1/2 and 1 1/4 past the corner, 3/4 to
    // its end, 1/4 to spare, less twice 1/4: 5 1/4 in, and 3/8 in at either end.
    const sheet<inch> s = sheet_at(cushion, finished_size<inch>(36_in, 16_in));
    REQUIRE(s.pieces.size() == 7);
    CHECK(s.pieces[0].cut == cut_size<inch>(37_in, 17_in));
    CHECK(s.pieces[2].cut == cut_size<inch>(37_in, "2 3/4"_in));
    CHECK(s.pieces[3].cut == cut_size<inch>(37_in, 4_in));
    CHECK(s.pieces[4].cut == cut_size<inch>(17_in, 4_in));
    CHECK(s.pieces[5].cut == cut_size<inch>(6_in, 6_in));
    CHECK(s.pieces[6].cut == cut_size<inch>("36 1/2"_in, 2_in));
    CHECK(s.pieces[6].made_from.count() == 3);
    // Twice 14 in, 20 in and two seams are 49 in.
    CHECK(sheet_at(cushion, finished_size<inch>(20_in, 14_in)).pieces[3].cut == cut_size<inch>(49_in, 4_in));
    // Corners are turned along either panel, in one strip too, and nowhere on the straight ends of the strips.
    for (const finished_size<inch>& size : {finished_size<inch>(36_in, 16_in), finished_size<inch>(20_in, 14_in)})
        for (const work_group<inch>& g : sheet_at(cushion, size).steps.groups)
            for (const work_step<inch>& step : g.steps)
                if (step.verb == work_verb::seam && step.places.size() > 1)
                    CHECK(step.straight == (step.places.size() == 2));
    // A button of 3/4 in, 1/8 thick; its line 3/8 and 3/8 in from the end of the tab, and half a shank of 1/8 beyond that.
    const auto& button = s.notions[2].details();
    CHECK(button[2].amount.value() == "7/8"_in);
    CHECK(button[5].amount.value() == "11/16"_in);
    CHECK(button[6].amount.value() == "1 9/16"_in);
    CHECK(button[13].amount.value() == "11/16"_in); // the end turned in, and to 3/8 in before the hole
    CHECK(button[14].amount.value() == "3 3/8"_in); // the third quarter of 6 in, its middle, less 3/8
    CHECK(refused_at(cushion, "9 x 16 in") == "The shortest zipper sold, 7 in, and its ends are longer than the strip "
                                              "along a back of 9 in: the cushion needs at "
                                              "least 10 in of width.");
    CHECK(refused_at(cushion, "36 x 5 in") ==
          "A cushion 3 in thick and less than 6 in deep from front to back tips over.");
    CHECK(refused_at(cushion, "12 x 40 in") == "Cushion for the potting bench, 3 in thick cannot be made as designed: "
                                               "filling cannot pass \"zipper\": it needs an "
                                               "opening of 11 5/8 in, and that one is 10 in");
    const auto with = [&](const std::string& name, const char* is, const char* inches) {
        project_design other = cushion;
        for (design_measure& m : other.measures)
            if (m.name == name && *is != 0)
                m.is = measure_expression(is);
            else if (m.name == name)
                m.inches = measure_expression(inches);
        return refused_at(other, "36 x 16 in");
    };
    CHECK(with("hole", "button", "") ==
          "/notions/2: a buttonhole of 3/4 in is too short for its button, which is 3/4 in "
          "across and 1/8 in thick");
    CHECK(with("stand", "shank / 2", "") ==
          "/notions/2: a buttonhole would begin 0 in from its folded edge, and cut that fold");
    CHECK(with("stand", "hole clear", "") ==
          "/notions/2: a buttonhole 5/16 in from its folded edge tears out: 3/8 in is to stay clear");
    CHECK(with("tab width", "", "2 3/4 in") == "A tab 2 3/4 in wide does not lie on a strip that finishes 3 in high.");
    CHECK(with("zipper ends", "", "1 3/4 in") == "/notions/0: the top end of the tape reaches 1 3/4 in beyond the "
                                                 "opening, into the seam: the margin there is 1 1/2 in");
}

TEST_CASE("a practice panel of repairs is made at any size, and one without room for them is refused") {
    const project_design panel = month("mended_panel");
    check_sizes(panel, {"18 x 16 in", "24 5/8 x 20 in", "10 x 12 in", "45 x 40 cm", "60,3 x 50 cm", "25 x 30 cm"});
    // By hand: 18 in and hems of 3/8 and 3/4 in at either side; 16 less a band of 1 1/2 in, a hem at the top and a seam of 1/2 in.
    // A hole of 3 x 2 in, 1 in beyond it and 3/8 in under; its facing 1/2 in beyond. The band twice 1 1/2, 1/2 and 3/8 in.
    const sheet<inch> s = sheet_at(panel, finished_size<inch>(18_in, 16_in));
    REQUIRE(s.pieces.size() == 4);
    CHECK(s.pieces[0].cut == cut_size<inch>("20 1/4"_in, "16 1/8"_in));
    CHECK(s.pieces[1].cut == cut_size<inch>("5 3/4"_in, "4 3/4"_in));
    CHECK(s.pieces[2].cut == cut_size<inch>("4 3/4"_in, "3 3/4"_in));
    CHECK(s.pieces[3].cut == cut_size<inch>("18 3/4"_in, "3 7/8"_in));
    // A worn place of 1 in, 1/2 in beyond it: 17 rows of 2 in each way, 1/8 in apart. Loops out 1 1/2, down 1 1/4, under 1/2 in.
    CHECK(s.notions[0].details()[0].count == 17);
    CHECK(s.notions[0].details()[5].amount.value() == 37_in); // 17 x 2, 16 x (1/8 + 1/16)
    CHECK(s.notions[1].details()[1].amount.value() == "6 1/2"_in);
    CHECK(refused_at(panel, "7 x 16 in") == "The patch and the loops need at least 7 1/2 in of width.");
    CHECK(refused_at(panel, "18 x 10 in") ==
          "The loops, the patch, the darn and the band, one below the other, need at least 10 1/4 in of height.");
}

TEST_CASE("a shade curtain is pleated onto its tape at any size, and a repeat that no width matches is refused") {
    project_design curtain = month("shade_curtain");
    check_sizes(curtain,
                {"48 x 60 in", "45 3/8 x 30 in", "110 x 96 in", "120 x 150 cm", "133,7 x 80 cm", "300 x 250 cm"});
    // By hand: 12 pleats on 48 in, 4 in of cloth in each; side hems of 1 in. A fall of 60 in has a hem of 3 in, and 1 in at the top.
    const sheet<inch> s = sheet_at(curtain, finished_size<inch>(48_in, 60_in));
    REQUIRE(s.pieces.size() == 1);
    CHECK(s.pieces[0].cut == cut_size<inch>(98_in, 64_in));
    const auto& heading = s.notions[0].details();
    CHECK(heading[0].count == 12);
    CHECK(heading[1].amount.value() == 4_in);
    CHECK(heading[2].amount.value() == 4_in);
    CHECK(heading[5].count == 14); // hooks
    // Of 58 in, joins of 1/2 in leave 57, which hold 7 repeats of 8 in: 57 and 56 in. 64 in are 11 repeats of 6 in.
    const auto& drops = s.notions[1].details();
    CHECK(drops[0].count == 2);
    CHECK(drops[1].amount.value() == 113_in);
    CHECK(drops[4].amount.value() == 66_in);
    CHECK(drops[6].amount.value() == 132_in);
    // And so they lie: two of 57 in, the second a whole number of repeats further down.
    const sheet_cloth<inch> laid = cloth_for<inch>(s, "shade cloth", {}, {.sold = {1_in}}, {.may_join = true});
    REQUIRE(laid.joined.size() == 1);
    CHECK(laid.joined[0].parts.in_order() == std::vector<length<inch>>(2, 57_in));
    CHECK(laid.lay.length == 130_in);
    // The longer it falls, the deeper its hem: 36 in and less 2 in, more than 60 in 4 in.
    CHECK(sheet_at(curtain, finished_size<inch>(48_in, 36_in)).pieces[0].cut.height() == 39_in);
    CHECK(sheet_at(curtain, finished_size<inch>(48_in, 61_in)).pieces[0].cut.height() == 66_in);
    CHECK(refused_at(curtain, "7 x 60 in") == "A curtain with two pleats needs at least 8 in of width.");
    CHECK(refused_at(curtain, "48 x 109 in") == "This curtain is made for a fall of 8 in to 108 in.");
    for (design_measure& m : curtain.measures)
        if (m.name == "across")
            m.inches = measure_expression("64 in");
    CHECK(refused_at(curtain, "48 x 60 in") ==
          "/notions/1: a pattern that repeats every 64 in across does not go on over a join: the cloth is 57 in wide");
}

TEST_CASE(
    "wall pockets are made of remnants at any size, and a row that does not fit and a remnant too small are refused") {
    const project_design pockets = month("wall_pockets");
    const std::vector<std::string> sizes = {"22 x 26 in", "11 3/8 x 20 in", "30 x 36 3/16 in",
                                            "56 x 66 cm", "29,3 x 51 cm",   "75 x 90 cm"};
    check_sizes(pockets, sizes);
    check_nothing_bought(pockets, sizes);
    // By hand: two turns of 5/8 in and 1/4 in of turn round 22 x 26 in. A cane of 1/2 in is 1.57 in round, up to 1 5/8: a channel of
    // 13/16 and 1/4 in between rows 1/8 in inside its strip, 1 1/8 in down. So pockets begin 4 15/16 in down; two, 2 1/2 in for a
    // hand and the binding fill the rest: 8 31/32 in each, 9 on the ruler. The upper backing goes on 1/2 and 3/4 in.
    const sheet<inch> s = sheet_at(pockets, finished_size<inch>(22_in, 26_in));
    REQUIRE(s.pieces.size() == 6);
    CHECK(s.pieces[0].cut == cut_size<inch>(25_in, 29_in));
    CHECK(s.pieces[1].cut == cut_size<inch>(22_in, "15 3/16"_in));
    CHECK(s.pieces[2].cut == cut_size<inch>(22_in, "12 1/16"_in));
    CHECK(s.pieces[3].cut == cut_size<inch>(22_in, "10 1/2"_in));
    CHECK(s.pieces[4].cut == cut_size<inch>(22_in, "10 9/16"_in));
    CHECK(s.pieces[5].cut == cut_size<inch>("20 3/4"_in, "2 5/16"_in));
    CHECK(refused_at(pockets, "11 x 26 in") == "A row of two pockets needs at least 11 1/4 in of width.");
    CHECK(refused_at(pockets, "22 x 15 in") ==
          "Two rows of pockets, their casing and room for a hand need at least 16 1/16 in of height.");
    CHECK(refused_at(pockets, "31 x 30 in") ==
          "The backing is 31 in wide, and the widest piece of canvas on hand is 30 in: it is too small.");
    CHECK(refused_at(pockets, "22 x 38 in") ==
          "The back is cut 25 in x 41 in, and the piece of sheeting on hand is 36 in x 40 in: it is too small.");
    // Where a remnant is as short as that, what does not go on it is bought.
    project_design shorter = pockets;
    for (design_measure& m : shorter.measures)
        if (m.name == "second length")
            m.inches = measure_expression("6 in");
    const sheet<inch> less = sheet_at(shorter, finished_size<inch>(22_in, 26_in));
    const auto laid = cloths_for<inch>(less, {"canvas", {.width = 54_in}, {.sold = 1_in}}, said_on_hand(less));
    REQUIRE(laid.size() >= 2);
    CHECK(laid.front().on_hand);
    CHECK_FALSE(laid.back().on_hand);
}

TEST_CASE(
    "an advent hanging has its twenty-four pockets at any size, and a row that its width does not hold is refused") {
    const project_design hanging = month("advent_hanging");
    const std::vector<std::string> sizes = {"22 x 30 in", "12 1/2 x 40 in", "48 3/16 x 20 in",
                                            "56 x 76 cm", "31,3 x 100 cm",  "120 x 50 cm"};
    check_sizes(hanging, sizes);
    for (const std::string& typed : sizes)
        std::visit([&](const auto& size) { CHECK(sheet_at(hanging, size).notions[0].details()[0].count == 24); },
                   read_size(typed));
    // By hand: 20 3/4 in between bindings of 5/8, 20 without 3/8 in at either end of a row: 6 pockets of at least 3 1/4 in, in 4 rows.
    // (28 3/4 - 1/2) / 4 = 7 1/16, down to 7 in; strips 3/4 in lower, hems of 3/4 and 3/8 in. 3/4 in more in each pocket: 24 1/2 in.
    const sheet<inch> s = sheet_at(hanging, finished_size<inch>(22_in, 30_in));
    REQUIRE(s.pieces.size() == 3);
    CHECK(s.pieces[0].cut == cut_size<inch>("24 3/4"_in, "32 3/4"_in));
    CHECK(s.pieces[1].cut == cut_size<inch>(22_in, 30_in));
    CHECK(s.pieces[2].cut == cut_size<inch>("25 1/4"_in, "7 3/8"_in));
    CHECK(s.pieces[2].made_from.count() == 4);
    REQUIRE(s.meetings.size() == 1);
    CHECK(s.meetings[0].made_from.on_longer == "24 1/2"_in);
    CHECK(s.notions[1].details()[0].count == 3); // ties, at most 10 in apart
    // 1 in under the rail, half of 3 1/4 in round it, 4 1/2 in of loop, 3 of tail and half an inch of knot, each way: 10 5/8 in.
    CHECK(s.notions[1].details()[1].amount.value() == "21 3/4"_in);
    CHECK(refused_at(hanging, "11 x 40 in") == "A row of three pockets needs at least 11 3/4 in of width.");
    CHECK(refused_at(hanging, "12 x 30 in") ==
          "Twenty-four pockets, 3 in a row, need at least 33 3/4 in of height at this width.");
}

TEST_CASE("a gift sack is tied at any size, and a tie that does not reach round its gathered neck is refused") {
    const project_design sack = month("gift_sack");
    check_sizes(sack, sack.sizes);
    CHECK(sack.sizes.size() == 6); // three in either unit
    // By hand: French seams of 1/4 and 3/8 in; 13 in there and back, and hems of 3/8 and 3/4 in. 16 in of cotton 1/64 in thick and as
    // much air: 2 x sqrt(pi / 2) = 2.507 in round, up to 2 3/4; a bow of 9 + 8 + 1 in, 1/4 of ease, twice 1/4 turned under.
    const sheet<inch> s = sheet_at(sack, finished_size<inch>(8_in, 13_in));
    REQUIRE(s.pieces.size() == 1);
    CHECK(s.pieces[0].cut == cut_size<inch>("9 1/4"_in, "28 1/4"_in));
    const auto& tie = s.notions.front().details();
    CHECK(tie[0].amount.value() == "2 3/4"_in);
    CHECK(tie[1].amount.value() == "21 1/2"_in);
    CHECK(tie[3].amount.value() == "4 1/4"_in);
    CHECK(
        refused_at(sack, "24 x 30 in") ==
        "Gathered, the neck of this sack is 4 1/2 in round: with its bow a tie takes 23 1/4 in, and one of 23 in does "
        "not reach.");
    CHECK(refused_at(sack, "8 x 6 in") ==
          "Its neck is tied 3 in below the top, and a gift takes 4 in under it: the sack "
          "needs at least 7 in of height.");
    CHECK(refused_at(sack, "3 x 13 in") == "A gift takes at least 4 in of width.");
}

TEST_CASE(
    "a step in a design's own words stands in its handouts as it was given, and in a language that has these words") {
    const sheet<inch> s = sheet_at(month("seed_tray_tote"), finished_size<inch>(15_in, 9_in));
    const std::string said = "Fold the straps down onto the outers and pin them there, clear of every edge, until the "
                             "tote is turned out: no seam is to catch them.";
    // By hand: it follows the boxes that hold the straps, and goes before the first seam of the outers.
    std::size_t own = 0, sewn_on = 0, seam = 0;
    for (std::size_t g = 0; g < s.steps.groups.size(); ++g)
        for (const work_step<inch>& step : s.steps.groups[g].steps) {
            own = step.verb == work_verb::handwork ? g : own;
            sewn_on = step.verb == work_verb::set ? g : sewn_on;
            if (step.verb == work_verb::seam && seam == 0 && s.steps.parts[step.places[0].piece.index].name == "outer")
                seam = g;
        }
    CHECK(own > sewn_on);
    CHECK(own < seam);
    CHECK(s.steps.groups[own].steps[0].what == said);
    CHECK(to_html(handout_of(s, {}, {})).find(said) != std::string::npos);
    CHECK(to_html(handout_of(s, {}, {.words = german()})).find(said) != std::string::npos);
    const std::string own_german = to_html(handout_of(s, {}, {.words = german(allotment::own_words_in_german())}));
    CHECK(own_german.find(said) == std::string::npos);
    CHECK(own_german.find("Die Gurte auf die Außenteile herunterlegen") != std::string::npos);
}
