// Curtains: what is published, at compile time; a heading pleated on a strip of whole parts, and widths and drops cut one by one, at
// random; backwards; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/curtain.hpp>

#include <doctest/doctest.h>

#include <array>
#include <span>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;

namespace {

// General how-to pages (published): a track of 65 in at 2 1/4 is 146 1/4 in, of 54 in cloth 3 widths; a fall of 80 and 16 in for
// heading and hem is 96 in, so 8 yd of cloth. 84 in at 2 1/2 is 210, and 15 in for returns and hems 225: 5 widths of 88 in, 440 in.
// Joins of 1/2 in leave both as they are (by hand: 3 x 54 - 2, 5 x 54 - 4).
constexpr curtain_cloth<inch> joined_cloth{.usable = 54_in, .join = "1/2"_in};
static_assert(curtain_widths<inch>(65_in, {9, 4}, {.usable = 54_in}).count == 3);
static_assert(curtain_widths<inch>(65_in, {9, 4}, joined_cloth).count == 3);
static_assert(drop_cut<inch>(80_in, {.heading = 8_in, .hem = 4_in, .hem_turns = 2}).value() == 96_in);
static_assert(drops_on_repeat(96_in, 3, 0_in).cloth == 288_in); // 8 yd
static_assert(curtain_widths<inch>(84_in, {5, 2}, {.usable = 54_in, .side = "7 1/2"_in}).count == 5);
static_assert(curtain_widths<inch>(84_in, {5, 2}, {.usable = 54_in, .join = "1/2"_in, .side = "7 1/2"_in}).count == 5);
static_assert(drops_on_repeat(88_in, 5, 0_in).cloth == 440_in);
// School mathematics (published): a window of 72 in at three times is 216; of a pair each is 108, hemmed 111: of 54 in cloth 3 widths
// where none is shared.
static_assert(curtain_widths<inch>(36_in, 3, {.usable = 54_in, .side = "1 1/2"_in}).count == 3);
// M. T. Stephenson, Cutting and Draping, 1905 (published): a curtain of 50 in drawn up to 20: a fullness of 2 1/2.
static_assert(pleat_groups<inch>(20_in, 50_in, {}, 6).fullness() == fraction(5, 2));

// By hand. A pair on 96 in, each round the corner by 3 and over the other by 2 in: 48 + 5. A single one has two corners.
static_assert(heading_of<inch>({.track = 96_in, .count = 2, .ret = 3_in, .overlap = 2_in}).value() == 53_in);
static_assert(heading_of<inch>({.track = 96_in, .ret = 3_in, .overlap = 2_in}).value() == 102_in);
// 27 in hold four repeats of 6 in; 100 in of drop take 17 of them, 2 in off.
static_assert(matched_width(27_in, 6_in) == 24_in && matched_width(24_in, 6_in) == 24_in);
static_assert(drops_on_repeat(100_in, 3, 6_in).drop == 102_in && drops_on_repeat(100_in, 3, 6_in).off == 2_in);
static_assert(drops_on_repeat(100_in, 3, 6_in).repeats == 17 && drops_on_repeat(100_in, 3, 6_in).cloth == 306_in);
static_assert(drops_on_repeat(102_in, 3, 6_in).drop == 102_in);
// 53 less 5 in of ends: 12 gaps of 4 in, so 13 pleats; 118 less 53: 5 in each.
constexpr auto groups = pleat_groups_near<inch>(53_in, 118_in, {.ret = 3_in, .overlap = 2_in}, 4_in);
static_assert(groups.count() == 13 && groups.gap() == 4_in && groups.taken() == 5_in && hooks_on(groups) == 15);
static_assert(groups.begins()[1] == at<finished_edge>(12_in) && groups.ends()[0] == at<finished_edge>(8_in));
static_assert(groups.on_heading()[12] == at<finished_edge>(51_in));

// Common practice: the longer the fall, the deeper the hem (values from memory).
constexpr std::array<fall_hem<inch>, 3> hems{{{36_in, 2_in}, {60_in, 3_in}, {108_in, 4_in}}};
constexpr std::span<const fall_hem<inch>> rules(hems);
static_assert(hem_for_fall(36_in, rules) == 2_in && hem_for_fall("36 1/16"_in, rules) == 3_in);
static_assert(hem_for_fall(108_in, rules) == 4_in);

} // namespace

TEST_CASE("a heading is pleated from its cloth: flats and pleats one after another are all of either") {
    reference::sampler random(441);
    while (random.another_of(2'000)) {
        const flat_ends<inch> flat{random.inches(5), random.inches(5)};
        const length<inch> heading = flat.ret + flat.overlap + random.inches(60), cloth = heading + random.inches(90);
        const pleat_groups<inch> g =
            pleat_groups_near(heading, cloth, flat, random.inches(8)); // few or many, as it comes
        length<inch> along = flat.ret, hung = flat.ret;
        for (std::int64_t k = 0; k < g.count(); ++k) {
            if (k < 40) {
                CHECK(g.begins()[k].from_datum() == along);
                CHECK(g.ends()[k].from_datum() == along + g.taken());
                CHECK(g.on_heading()[k].from_datum() == hung);
            }
            const bool last = k + 1 == g.count();
            along += g.taken() + (last ? flat.overlap : g.gap());
            hung += last ? flat.overlap : g.gap();
            if (k > 500)
                break;
        }
        if (g.count() <= 500) {
            CHECK(along == cloth);
            CHECK(hung == heading);
        }
        CHECK(g.working().value() == cloth);
    }
}

TEST_CASE("as many gaps come as near to the one that is asked for as they can") {
    reference::sampler random(442);
    while (random.another_of(1'000)) {
        const length<inch> heading = random.inches(60) + 20_in, wanted = random.inches(6) + 1_in;
        const auto g = pleat_groups_near<inch>(heading, heading * 2, {}, wanted);
        const fraction asked = ratio_of(heading, wanted), gaps = fraction(g.count()) - 1;
        CHECK(abs(gaps - asked) * 2 <= 1);
    }
    CHECK(pleat_groups_near<inch>(3_in, 9_in, {}, 40_in).count() == 2);
}

TEST_CASE("a track, a fall and widths are found again") {
    reference::sampler random(443);
    while (random.another_of(2'000)) {
        const hung_curtains<inch> h{.track = random.inches(120) + 1_in,
                                    .count = 1 + random.between(0, 1),
                                    .ret = random.inches(6),
                                    .overlap = random.inches(6)};
        CHECK(track_of(heading_of(h).value(), h) == h.track);
        const drop_ends<inch> ends{random.inches(9), random.inches(9), 1 + random.between(0, 1)};
        const length<inch> fall = random.inches(99) + 1_in, cut = drop_cut(fall, ends).value();
        CHECK(fall_of(cut, ends) == fall);
        CHECK(exact(cut) == exact(fall) + exact(ends.heading) + ends.hem_turns * exact(ends.hem));
        // Repeat by repeat, until a drop is long enough.
        const length<inch> repeat = random.inches(20) + 1_in;
        length<inch> drop = repeat;
        while (drop < cut)
            drop += repeat;
        const auto drops = drops_on_repeat(cut, 4, repeat);
        CHECK(drops.drop == drop);
        CHECK(drops.cloth == drop + drop + drop + drop);
        CHECK(drops.off + cut == drop);
        // Width by width, until they are wide enough.
        const length<inch> join = random.inches(1), across = random.inches(9) + 1_in;
        const curtain_drops<inch> d{.width = random.inches(200) + 1_in,
                                    .drop = cut,
                                    .usable = across + join * 2 + random.inches(40),
                                    .join = join,
                                    .across = across};
        length<inch> matched = across;
        while (matched + across + join * 2 <= d.usable)
            matched += across;
        std::int64_t widths = 1;
        length<inch> made_up = matched + join * 2;
        while (made_up < d.width) {
            made_up += matched;
            ++widths;
        }
        CHECK(widths_of(d).count == widths);
        CHECK(widths_of(d).made_up.value() == made_up);
    }
}

TEST_CASE("a curtain that does not hang, match or fold is refused with its figures") {
    CHECK(message<curtain_error>([] { matched_width(27_in, 30_in); }) ==
          "a pattern that repeats every 30 in across does not go on over a join: the cloth is 27 in wide");
    CHECK(facts<curtain_error>([] {
              widths_of<inch>({90_in, 60_in, 31_in, 1_in, 0_in, 30_in});
          }) == "too large: the repeat of a pattern across the cloth, given 30 in, most 29 in");
    CHECK(widths_of<inch>({90_in, 60_in, 32_in, 1_in, 0_in, 30_in}).count == 3);
    CHECK(widths_of<inch>({90_in, 60_in, 31_in, 1_in}).count == 4); // plain cloth
    CHECK(message<curtain_error>([] {
              track_of<inch>(5_in, {.track = 9_in, .count = 2, .ret = 3_in, .overlap = 2_in});
          }) == "a heading of 5 in is used up by its return and its overlap, 5 in");
    CHECK(facts<curtain_error>([] { heading_of<inch>({.track = 9_in, .count = 3}); }) ==
          "too large: the number of curtains on a track, given 3, least 1, most 2");
    CHECK(message<curtain_error>([] {
              curtain_widths<inch>(20_in, {3, 4}, {.usable = 54_in});
          }) == "the fullness of a curtain must be at least 1: it was 3/4");
    CHECK(message<curtain_error>([] { hem_for_fall(109_in, rules); }) ==
          "no hem is given for a fall of 109 in: the last is for 108 in");
    CHECK(facts<curtain_error>([] { hem_for_fall(109_in, rules); }) ==
          "too large: the fall of a curtain, given 109 in, most 108 in");
    CHECK(message<curtain_error>([] { fall_of<inch>(9_in, {.heading = 3_in, .hem = 3_in, .hem_turns = 2}); }) ==
          "a drop cut 9 in is used up by its heading and its hem, which take 9 in");
    CHECK(message<curtain_error>([] { pleat_groups<inch>(5_in, 9_in, {.ret = 3_in, .overlap = 2_in}, 4); }) ==
          "a heading of 5 in has no room between its return of 3 in and its overlap of 2 in");
    CHECK(message<curtain_error>([] { pleat_groups<inch>(20_in, 20_in, {}, 4); }) ==
          "cloth of 20 in has nothing to pleat: its heading is 20 in");
    CHECK(facts<curtain_error>([] { pleat_groups<inch>(20_in, 40_in, {}, 1); }) ==
          "too small: the number of pleats, given 1, least 2");
}
