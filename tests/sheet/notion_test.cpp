// sheet/notion.hpp: what the notions compute is listed label by label, each figure worked out by hand.
#include "../vectors.hpp"
#include <turncloth.hpp>
#include <turncloth/sheet/fastened.hpp>
#include <turncloth/sheet/filled_and_pieced.hpp>
#include <turncloth/sheet/standing_pockets.hpp>

#include <doctest/doctest.h>

#include <string>
#include <variant>
#include <vector>

using namespace turncloth;

namespace {

/// One detail as it is listed: a length, a number of things, or places one by one.
struct entry {
    std::string what;
    std::variant<length<inch>, std::int64_t, std::vector<length<inch>>> amount;
};

std::vector<entry> entries(const notion<inch>& n) {
    std::vector<entry> all;
    for (const auto& d : n.details()) {
        if (d.count > 0)
            all.push_back({d.what, d.count});
        else if (!d.places.empty())
            all.push_back({d.what, d.places});
        else
            all.push_back({d.what, d.amount.value()});
    }
    return all;
}

void check(const notion<inch>& n, const std::vector<entry>& expected) {
    const auto found = entries(n);
    REQUIRE(found.size() == expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        INFO(n.name(), ": ", found[i].what);
        CHECK(found[i].what == expected[i].what);
        CHECK(found[i].amount == expected[i].amount);
    }
}

std::int64_t n(std::int64_t count) { return count; }

bool warns(const notion<inch>& of, std::string_view sentence) {
    for (const sheet_caution& c : of.cautions())
        if (c.sentence == sentence)
            return true;
    return false;
}

} // namespace

TEST_CASE("zippers from rolls: a tape each, and no tape is pieced from two rolls") {
    // 12 in less 2 x 1/2 opens 11 in; the tape is 2 x 1/4 longer, 11 1/2. A roll of 30 in gives 2, so 5 take 3 rolls,
    // and the last, of which 1 is cut, has 18 1/2 in left.
    const auto listing = listed("zipper on the front", 5, zipped_opening<inch>{12_in, "1/2"_in, "1/4"_in},
                                zipper_supply<inch>::from_roll(30_in));
    CHECK(listing.name() == "zipper on the front");
    CHECK(listing.goes_in_before_seams());
    CHECK(warns(listing, caution::needles_and_metal));
    check(listing, {{"openings", n(5)},
                    {"each opening", 11_in},
                    {"tape to cut from the roll, each, bar-tacked at both ends first", "11 1/2"_in},
                    {"sliders", n(5)},
                    {"rolls", n(3)},
                    {"length of a roll", 30_in},
                    {"left on the last roll", "18 1/2"_in}});
}

TEST_CASE("made-up zippers: the next length sold, with a new stop and a cut where it is longer than the opening") {
    const zipped_opening<inch> opens{12_in, "1/2"_in, "1/4"_in};
    check(listed("zipper", 2, opens, zipper_supply<inch>::made_up({14_in, 9_in, 12_in}, "3/8"_in, "1/4"_in)),
          {{"zippers", n(2)},
           {"each opening", 11_in},
           {"made-up length to buy, each", 12_in},
           {"new stop, from the top stop", 11_in},
           {"cut through the tape, from the top stop", "11 1/4"_in}});
    check(listed("zipper", 1, opens, zipper_supply<inch>::made_up({14_in, 11_in}, "3/8"_in, "1/4"_in)),
          {{"zippers", n(1)}, {"each opening", 11_in}, {"made-up length to buy, each", 11_in}});
    CHECK_THROWS_AS(listed("zipper", 1, opens, zipper_supply<inch>::made_up({9_in}, "3/8"_in, "1/4"_in)), zipper_error);
    try {
        static_cast<void>(listed("zipper", 1, opens, zipper_supply<inch>()));
        FAIL_CHECK("a zipper from nowhere is refused");
    } catch (const zipper_error& refused) {
        CHECK(refused.facts().kind == fault::missing);
        CHECK(refused.facts().what == "a supply of zippers");
    }
}

TEST_CASE("a ribbon sewn on at one line, with a free end on either side") {
    // 9 + 9 in free and 2 x 1/2 in turned: 19 in; at a third of 24 in.
    const auto tie = listed("tie", 3,
                            ribbon_tie<inch>{.across = 24_in,
                                             .from = {1, 3},
                                             .to = {1, 3},
                                             .loop = {},
                                             .free_at_start = 9_in,
                                             .free_at_end = 9_in,
                                             .turned = "1/2"_in});
    check(tie, {{"ribbons", n(3)},
                {"each, cut", 19_in},
                {"sewn on, from the finished edge where it starts", 8_in},
                {"ribbon in all", 57_in}});
    CHECK(warns(tie, caution::infants_and_animals));
    CHECK_FALSE(tie.goes_in_before_seams());
}

TEST_CASE("straps folded in four, with the boxes that hold their ends") {
    // 4 x 1 in wide. 13 + 2 x 5 + 2 x 1/2 in long. Boxes of 1 - 2 x 1/8 in by 5 - 2 x 1/8 in: 11 in round, two diagonals of
    // 4.8087 in (sqrt(0.75^2 + 4.75^2), by hand) and 3/4 in once more: 21.367 in.
    const auto straps =
        listed("handles", 2,
               boxed_straps<inch>{
                   .finished = 1_in, .free = 13_in, .ends = {5_in, "1/2"_in}, .inset = "1/8"_in, .step = "1/4"_in});
    check(straps, {{"straps", n(2)},
                   {"each, cut width, to be folded in four", 4_in},
                   {"each, cut length", 24_in},
                   {"free between its sewn ends", 13_in},
                   {"box with a cross at each end, across the strap", "3/4"_in},
                   {"box with a cross at each end, along the strap", "4 3/4"_in},
                   {"such a box sewn in one go, one short side twice", "21 1/2"_in}});
    CHECK(warns(straps, caution::loads));
    CHECK(warns(straps, caution::infants_and_animals));
}

TEST_CASE("pockets that stand out, and a tie round the waist") {
    // By hand: folds of 1 in, 3/4 in clear, in a pocket 9 in wide and 8 high; its flap 9 1/2 in wide, 3/4 + 2 + 1 1/2 in long.
    const pleated_pocket<inch> pocket{9_in, 1_in, "3/4"_in};
    const auto with =
        listed("pocket", pocket_with_flap<inch>{pocket, 8_in, pocket_flap<inch>{"1/4"_in, "3/4"_in, "1 1/2"_in}});
    REQUIRE(with.details().size() == 6);
    CHECK(with.details()[0].amount.value() == 13_in);
    CHECK(with.details()[1].places == std::vector<length<inch>>{"1 3/4"_in, "2 3/4"_in, "10 1/4"_in, "11 1/4"_in});
    CHECK(with.details()[2].amount.value() == "7 1/2"_in);
    CHECK(with.details()[3].amount.value() == 2_in);
    CHECK(with.details()[4].amount.value() == "9 1/2"_in);
    CHECK(with.details()[5].amount.value() == "4 1/4"_in);
    CHECK(listed("pocket", pocket_with_flap<inch>{pocket, 8_in}).details().size() == 4);
    const auto tie = listed("tie", waist_tie<inch>{40_in, 24_in, {"2 1/2"_in, 6_in, 1_in}, "1/2"_in, 4_in});
    REQUIRE(tie.details().size() == 3);
    CHECK((tie.details()[1].amount.value() == 64_in && tie.details()[1].sold == sold_as::off_a_roll));
    CHECK(tie.details()[2].amount.value() == "19 1/2"_in);
    CHECK(warns(tie, caution::worn_at_machines));
    CHECK(warns(tie, caution::infants_and_animals));
}

TEST_CASE("patches from strips, and squares pieced of triangles") {
    // Cut 4 1/2 x 3 1/2 in (by hand): nine strips of 42 in would hold 9 each; 20 need three.
    check(listed("patches", 20, sewn_patch<inch>{4_in, 3_in, "1/4"_in}, 42_in),
          {{"patches", n(20)},
           {"strip, cut width", "3 1/2"_in},
           {"cut across into patches, each", "4 1/2"_in},
           {"patches from a strip", n(9)},
           {"strips across the cloth", n(3)},
           {"cloth for them", "10 1/2"_in}});
    // Common practice, for seams of 1/4 in: 7/8 in and 1 1/4 in more.
    check(listed("squares", 5, triangles<inch>{3_in, {pieced_of::two, "1/4"_in}, "1/8"_in}),
          {{"squares pieced of two triangles", n(5)},
           {"squares to cut of each of two cloths", n(3)},
           {"each, cut", "3 7/8"_in},
           {"trimmed, once pieced, to", "3 1/2"_in}});
    check(listed("squares", 4, triangles<inch>{3_in, {pieced_of::four, "1/4"_in}, "1/8"_in}),
          {{"squares pieced of four triangles", n(4)},
           {"squares to cut of each of two cloths", n(2)},
           {"each, cut", "4 1/4"_in},
           {"trimmed, once pieced, to", "3 1/2"_in}});
}

TEST_CASE("loose filling of a tube") {
    // 12 x 12 x 32 / (4 pi) = 366.69 cubic inches, of 3/20 oz each 55.004; 12 / pi = 3.8197 (pi to many digits, by hand).
    const auto filling = listed("filling", loose_filling<inch>{{12_in, 32_in}, {3, 20}, "1/8"_in});
    check(filling, {{"once round the tube", 12_in},
                    {"across it, sewn up flat and empty", 6_in},
                    {"across it, filled until it is round", "3 7/8"_in},
                    {"cubic inches of filling, pressed in, at the most", n(367)},
                    {"ounces of filling, by weight, at the most", n(56)}});
    CHECK(warns(filling, caution::filling));
    CHECK(warns(filling, caution::loose_filling));
}

TEST_CASE("buttons with their holes and interfacing, snaps, and straps that close on themselves") {
    // A hole of 7/8 in either side of 2 in and of 6 in, 3/4 in from the edge; 3/8 in beyond: from 1 9/16 - 3/8 on, 4 7/8 + 3/4 long.
    buttoned_lap<inch> lap{.button = {"3/4"_in, "1/8"_in},
                           .places = {at<finished_edge>(2_in), 4_in, 2},
                           .edge = 8_in,
                           .stand = "3/4"_in,
                           .deep = 2_in,
                           .hole = "7/8"_in,
                           .clear = "1/4"_in};
    const auto buttons = listed("buttons", lap, "3/8"_in);
    check(buttons, {{"buttons", n(2)},
                    {"button, across", "3/4"_in},
                    {"buttonhole, its length", "7/8"_in},
                    {"buttons, from the finished end of the edge", std::vector<length<inch>>{2_in, 6_in}},
                    {"buttons, from the finished edge that is fastened", "3/4"_in},
                    {"buttonholes along the edge, where they begin, from its finished end",
                     std::vector<length<inch>>{"1 9/16"_in, "5 9/16"_in}},
                    {"interfacing, cut across the edge", "3/4"_in},
                    {"interfacing, cut along the edge", "5 5/8"_in},
                    {"interfacing, from the finished end of the edge", "1 3/16"_in},
                    {"interfacing, from the finished edge inward", "3/8"_in}});
    CHECK(warns(buttons, caution::small_parts));
    // Square to it, a shank of 1/8 in: from 11/16 to 1 9/16.
    lap.runs = hole_runs::square_to_edge;
    lap.shank = "1/8"_in;
    check(listed("buttons", lap, "3/8"_in),
          {{"buttons", n(2)},
           {"button, across", "3/4"_in},
           {"buttonhole, its length", "7/8"_in},
           {"buttons, from the finished end of the edge", std::vector<length<inch>>{2_in, 6_in}},
           {"buttons, from the finished edge that is fastened", "3/4"_in},
           {"buttonholes square to the edge, where they begin, from it", "11/16"_in},
           {"buttonholes square to the edge, where they end, from it", "1 9/16"_in},
           {"interfacing, cut across the edge", "1 5/8"_in},
           {"interfacing, cut along the edge", "4 3/4"_in},
           {"interfacing, from the finished end of the edge", "1 5/8"_in},
           {"interfacing, from the finished edge inward", "5/16"_in}});
    const auto snaps = listed("snaps", snapped_lap<inch>{.across = "1/2"_in,
                                                         .places = {at<finished_edge>(1_in), 3_in, 3},
                                                         .edge = 8_in,
                                                         .stand = "1/2"_in,
                                                         .deep = 1_in,
                                                         .clear = "1/4"_in});
    check(snaps, {{"snaps", n(3)},
                  {"snap, across", "1/2"_in},
                  {"snaps, from the finished end of either edge", std::vector<length<inch>>{1_in, 4_in, 7_in}},
                  {"snaps, from either finished edge", "1/2"_in}});
    CHECK(warns(snaps, caution::setting_eyelets));
    CHECK(warns(snaps, caution::small_parts));
    // Round 10 to 12 in, 2 in held, a tab of 1/2 in.
    const auto straps = listed("straps", 2, touch_strap<inch>{10_in, 12_in, 2_in, "1/2"_in});
    check(straps, {{"straps", n(2)},
                   {"each, finished, from end to end", "14 1/2"_in},
                   {"hook tape, each", 2_in},
                   {"loop tape, each", 4_in},
                   {"hook tape in all", 4_in},
                   {"loop tape in all", 8_in}});
    CHECK(straps.details()[5].sold == sold_as::off_a_roll);
    CHECK(warns(straps, caution::infants_and_animals));
}

TEST_CASE("pleats with gaps on a heading, and the drops of a curtain") {
    // 53 less 5 in of ends in 3 gaps of 16 in; 118 less 53 in four pleats: 16 1/4 in each. Tape 53 in, and 1/2 in under twice.
    const auto heading =
        listed("heading", pleat_groups<inch>(53_in, 118_in, {.ret = 3_in, .overlap = 2_in}, 4), "1/2"_in);
    check(heading, {{"pleats", n(4)},
                    {"flat between two pleats", 16_in},
                    {"each pleat takes up", "16 1/4"_in},
                    {"curtain before it is pleated, hemmed", 118_in},
                    {"pleats and their hooks, from the finished left edge",
                     std::vector<length<inch>>{3_in, 19_in, 35_in, 51_in}},
                    {"hooks", n(6)},
                    {"heading tape, cut", 54_in}});
    CHECK(warns(heading, caution::hanging_up));
    // 57 in between joins hold seven repeats of 8 in: 57 and 56 in; 64 in are eleven repeats of 6 in, 2 in off.
    check(listed("drops", curtain_drops<inch>{98_in, 64_in, 58_in, "1/2"_in, 6_in, 8_in}),
          {{"widths of cloth", n(2)},
           {"widths joined", 113_in},
           {"joins", n(1)},
           {"each drop, as long as it must be", 64_in},
           {"each drop, up to a whole repeat", 66_in},
           {"cut off each drop beyond that", 2_in},
           {"cloth for them, each to a whole repeat", 132_in}});
    check(listed("drops", curtain_drops<inch>{50_in, 64_in, 58_in, "1/2"_in}),
          {{"widths of cloth", n(1)},
           {"widths joined", 58_in},
           {"each drop, as long as it must be", 64_in},
           {"cloth for them", 64_in}});
}

TEST_CASE("a darn both ways, and loops of webbing") {
    // 3 in hold 24 spaces of 1/8 in, 2 in hold 16. 25 x 2 + 24 x (1/8 + 1/16) in, and 17 x 3 + 16 x 3/16 in. Needlefuls of 24 in with
    // ends of 1 in make ten rows of 2 in, or six of 3 in (18, and five turns of 3/16; a seventh would take 22 1/8): three, and three.
    check(listed<inch>("darn", darn<inch>{{2_in, 1_in}, "1/2"_in, "1/8"_in, "1/16"_in}, {24_in, 1_in}),
          {{"rows of thread down", n(25)},
           {"from one to the next, at most", "1/8"_in},
           {"each row down, long", 2_in},
           {"rows of thread across", n(17)},
           {"each row across, long", 3_in},
           {"thread that the rows down take", "54 1/2"_in},
           {"thread that the rows across take", 54_in},
           {"needlefuls", n(6)},
           {"each needleful, cut", 24_in},
           {"darning thread in all", 144_in}});
    const auto loops = listed("loops", 3, webbing_loops<inch>{.stands = 2_in, .sewn = 1_in, .under = "1/2"_in});
    check(loops,
          {{"loops", n(3)}, {"each, cut", 7_in}, {"each stands out beyond its edge", 2_in}, {"webbing in all", 21_in}});
    CHECK(warns(loops, caution::loads));
    CHECK(warns(loops, caution::infants_and_animals));
}

TEST_CASE("cords and elastic in a casing") {
    // Twice 8 in, two ends of 1 1/2 in and 1 in in the knot: 20 in; drawn up to 3 in, 13 and 2 x 1 1/2 in hang out.
    const auto cords = listed("cord", 2, drawstrings<inch>{.round = 16_in, .ends = {"1 1/2"_in, 1_in}, .closed = 3_in});
    check(cords, {{"cords", n(2)},
                  {"each, cut", 20_in},
                  {"cord in all", 40_in},
                  {"loop that hangs out when the mouth is drawn up", 16_in}});
    CHECK(warns(cords, caution::cords));
    CHECK(warns(cords, caution::infants_and_animals));
    // 16 in at 9/5 is 8 8/9 in at rest, and 1/2 and 3/4 in: 10 5/36, up to a 1/4 in; so (10 1/4 - 3/4) x 9/5 in open.
    const auto elastics = listed("elastic", 1, 16_in, elastic<inch>{{9, 5}, "1/2"_in, "3/4"_in}, "1/4"_in);
    check(elastics, {{"elastics", n(1)},
                     {"each, cut", "10 5/36"_in},
                     {"each, cut, no shorter", "10 1/4"_in},
                     {"elastic in all", "10 1/4"_in},
                     {"opens out to", "17 1/10"_in}});
    CHECK(warns(elastics, caution::infants_and_animals));
}

TEST_CASE("piping all round a piece") {
    // 20 x 14 in: 68 in, and pi x 1/4 for the cord, 3/4 and a little, up to 7/8; pi x 1/4 + 2 x 3/8 = 1.54, up to 1 5/8.
    const auto piping = listed("piping", piped_edge<inch>{.piece = {20_in, 14_in},
                                                          .cord = {.across = "1/4"_in, .seam = "3/8"_in},
                                                          .ends = {.lap = 1_in, .turned = "1/2"_in},
                                                          .first = 10_in,
                                                          .step = "1/8"_in});
    const auto& details = piping.details();
    REQUIRE(details.size() == 5);
    CHECK((details[0].amount.value() == "1/4"_in && details[0].sold == sold_as::as_told));
    CHECK((details[1].amount.value() == "68 7/8"_in && details[1].sold == sold_as::off_a_roll));
    CHECK(details[2].amount.value() == "1 5/8"_in);
    CHECK(details[3].amount.value() == "69 1/2"_in);
    CHECK(details[4].places == std::vector<length<inch>>{10_in, 24_in, 44_in, 58_in});
}

TEST_CASE("a ribbon sewn on along a run is listed as far as it is sewn") {
    // From 3 to 21 of 24 in: 18 in, and a loop of 2 in there and back, and 5 in free.
    check(listed("tie", 1,
                 ribbon_tie<inch>{.across = 24_in,
                                  .from = {1, 8},
                                  .to = {7, 8},
                                  .loop = 2_in,
                                  .free_at_start = {},
                                  .free_at_end = 5_in,
                                  .turned = {}}),
          {{"ribbons", n(1)},
           {"each, cut", 27_in},
           {"sewn on, from the finished edge where it starts", 3_in},
           {"sewn on, as far as", 21_in},
           {"ribbon in all", 27_in}});
}

TEST_CASE("a tie that goes round") {
    // Twice round 11 in, loops 4 x 3 in, tails 2 x 6 in, a knot of 1 in, 1/2 in of ease and 2 x 1/4 in turned: 48 in.
    const auto tie = listed_round(
        "tie", tie_round<inch>(11_in, 2, {3_in, 6_in, 1_in}, {.ease = "1/2"_in, .turned = "1/4"_in}), 11_in);
    check(tie, {{"once round the roll", 11_in}, {"ribbon, cut", 48_in}});
    CHECK(warns(tie, caution::infants_and_animals));
}

TEST_CASE("eyelets in a heading, from their centres") {
    // Stitched 3 - 1/8 in below the fold: centres at 1 7/16 in. Rims of 3/4 in, 2 in from both edges of 30 in: centres
    // from 2 3/8 to 27 5/8 in, 25 1/4 in in four steps of 6 5/16 in.
    const auto hem = single_turned_hem(1_in);
    const panel<inch> hanging(finished_size(30_in, 20_in), {heading(3_in, "1/2"_in, "1/8"_in), hem, hem, hem});
    const auto row = listed("eyelets", eyelets(hanging, 5, {"3/8"_in, "3/4"_in}, {.margin = 2_in, .clear = "1/4"_in}));
    check(row, {{"eyelets", n(5)},
                {"centres, from the finished left edge",
                 std::vector<length<inch>>{"2 3/8"_in, "8 11/16"_in, 15_in, "21 5/16"_in, "27 5/8"_in}},
                {"centres below the finished top edge", "1 7/16"_in},
                {"hole, across", "3/8"_in},
                {"rim, across", "3/4"_in}});
    CHECK(warns(row, caution::setting_eyelets));
    CHECK(warns(row, caution::hanging_up));
}

TEST_CASE("a binding and the strips it is joined from") {
    // 4 x 1/2 + 2 x 1/2 + 2 x 1/8 = 3 1/4 in wide; 2 x (30 + 20) + 4 x 1/8 + 3 = 103 1/2 in long. From 42 in each, less
    // 1 in for each join, three make 124 in and leave 20 1/2 in; 3 x 3 1/4 = 9 3/4 in of cloth.
    const auto width = double_fold("1/2"_in, {.seam = "1/2"_in, .turn = "1/8"_in});
    const auto round = binding_length(finished_size(30_in, 20_in), {.fold = "1/8"_in, .overlap = 3_in});
    check(listed("binding", width, round,
                 strips_across(round.value(), {.width = width.value(), .usable = 42_in, .join = 1_in})),
          {{"strip, cut width", "3 1/4"_in},
           {"strip, length joined", "103 1/2"_in},
           {"strips across the cloth", n(3)},
           {"joins", n(2)},
           {"cloth for them", "9 3/4"_in},
           {"left over of the strip", "20 1/2"_in}});
    // One strip of 42 in for 40 in has no join to list.
    const auto short_one = binding_length(37_in, 0, {.overlap = 3_in});
    check(
        listed("binding", width, short_one, strips_across(40_in, {.width = "3 1/4"_in, .usable = 42_in, .join = 1_in})),
        {{"strip, cut width", "3 1/4"_in},
         {"strip, length joined", 40_in},
         {"strips across the cloth", n(1)},
         {"cloth for them", "3 1/4"_in},
         {"left over of the strip", 2_in}});
}

TEST_CASE("pleats and the cloth for them") {
    // Box pleats have two folds, each of twice 1 in: 24 + 6 x 4 = 48 in.
    check(listed("flounce", pleating<inch>(pleat::box, 24_in, 6, 1_in)),
          {{"pleats", n(6)}, {"each shows", 4_in}, {"each is folded back by", 1_in}, {"cloth to pleat", 48_in}});
}

TEST_CASE("a notion of one's own: figures with their working, numbers of one and more, cautions, when it goes in") {
    notion<inch> rod("rod");
    CHECK_FALSE(rod.goes_in_before_seams());
    rod.figure("length", figure<inch>().plus(20_in, "width").plus_times(2, {1_in}, "beyond"))
        .figure("diameter", "3/8"_in)
        .number("knobs", 2)
        .caution("Sand its ends.", caution::work::cutting)
        .before_seams();
    check(rod, {{"length", 22_in}, {"diameter", "3/8"_in}, {"knobs", n(2)}});
    CHECK(to_text(rod.details()[0].amount) == "22 in = 20 in width + 2 x 1 in beyond");
    CHECK(rod.cautions() == std::vector<sheet_caution>{{caution::work::cutting, "Sand its ends."}});
    CHECK(rod.goes_in_before_seams());
    CHECK_THROWS_WITH_AS(rod.number("knobs", 0), "the number of \"knobs\" must be at least 1: it was 0", range_error);
}
