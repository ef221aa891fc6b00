// Zippers: pockets of the trade worked by hand, the choice and the trimming of a made-up zipper branch by branch and
// against a search with GMP, cutting from rolls against cutting piece by piece, and every refusal.
#include "../measure/against_gmp.hpp"
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/zipper.hpp>
#include <turncloth/panel/panel.hpp>

#include <doctest/doctest.h>

#include <array>
#include <optional>
#include <vector>

using namespace turncloth;
using against_gmp::exact;
using against_gmp::sampler;

namespace {

using inches = std::vector<length<inch>>;

// Common practice: 9 in zippers on a panel that finishes 10 in wide; a 1/2 in margin at each end, and 1/4 in of tape
// beyond the opening for the bar-tack. Opening 10 - 2 x 1/2, tape 9 + 2 x 1/4.
constexpr zipped_opening<inch> pocket{10_in, "1/2"_in, "1/4"_in};
static_assert(opening(pocket) == 9_in);
static_assert(tape(pocket) == "9 1/2"_in);
static_assert(clearance(pocket) == "1/4"_in);
static_assert(opening_working(pocket).value() == 9_in);
static_assert(tape_working(pocket).value() == "9 1/2"_in);

// By hand in centimetres: 25 - 2 x 1.5 = 22; tape 22 + 2 x 2 = 26, half a centimetre into each seam.
constexpr zipped_opening<centimetre> caught{25_cm, 1.5_cm, 2_cm};
static_assert(opening(caught) == 22_cm);
static_assert(tape(caught) == 26_cm);
static_assert(clearance(caught) == -0.5_cm);

// Length of a zipper: from the top stop to the bottom stop, closed, tape ends not included (ASTM D2050, and the trade;
// value from memory). So a 9 in zipper fits a 9 in opening as sold, whatever its tape ends, while they clear the seams.
constexpr std::array<length<inch>, 3> sold_in_inches = {7_in, 12_in, 9_in};
constexpr auto as_sold = trimmed<inch>(pocket, sold_in_inches, {.ends = "1/2"_in, .tail = "1/2"_in});
static_assert(as_sold.sold == 9_in);
static_assert(!as_sold.needs_a_stop);
static_assert(as_sold.stop_at == 9_in);
static_assert(as_sold.cut_at == "9 1/2"_in);
static_assert(as_sold.cut_off == 0_in);
static_assert(trimmed<inch>(pocket, sold_in_inches, {.ends = 0_in, .tail = "1/2"_in}).sold == 9_in);

// By hand: an opening of 10 in takes the 12 in zipper, with a new stop at 10 in and a tail of 1/2 in below it. Its tape
// ended at 12 3/4 in; 2 1/4 in fall away.
constexpr zipped_opening<inch> longer{"11 1/2"_in, "3/4"_in, "1/2"_in};
constexpr auto cut = trimmed<inch>(longer, sold_in_inches, {.ends = "3/4"_in, .tail = "1/2"_in});
static_assert(cut.sold == 12_in);
static_assert(cut.needs_a_stop);
static_assert(cut.stop_at == 10_in);
static_assert(cut.cut_at == "10 1/2"_in);
static_assert(cut.cut_off == "2 1/4"_in);

// The zipper is longer, but not by so much that a tail could be cut: a stop, and nothing falls away.
constexpr std::array<length<inch>, 1> a_little_longer = {"10 1/4"_in};
constexpr auto uncut = trimmed<inch>(longer, a_little_longer, {.ends = "1/4"_in, .tail = "1/2"_in});
static_assert(uncut.sold == "10 1/4"_in);
static_assert(uncut.needs_a_stop);
static_assert(uncut.stop_at == 10_in);
static_assert(uncut.cut_at == "10 1/2"_in);
static_assert(uncut.cut_off == 0_in);
static_assert(trimmed<inch>(longer, a_little_longer, {.ends = 0_in, .tail = "1/2"_in}).cut_at == "10 1/4"_in);

// University of Hawaii, Extension Circular 352, Zippers: take the next longer zipper and leave the extra: for 23 in a
// 24 in one, 1 in extra. Nothing is cut where a tail of that inch is asked for.
constexpr zipped_opening<inch> back{25_in, 1_in, 1_in};
constexpr std::array<length<inch>, 3> dress_zippers = {22_in, 24_in, 26_in};
constexpr auto next_longer = trimmed<inch>(back, dress_zippers, {.ends = 0_in, .tail = 1_in});
static_assert(next_longer.sold == 24_in);
static_assert(next_longer.sold - next_longer.stop_at == 1_in);
static_assert(next_longer.cut_at == 24_in);
static_assert(next_longer.cut_off == 0_in);

// Four pockets of common practice from a roll of 5 yd, by hand: 180 / 9 1/2 = 18.9, so 18 to a roll; 180 - 4 x 9 1/2.
constexpr auto four = from_roll(pocket, 4, as<inch>(5_yd));
static_assert(four.each == "9 1/2"_in);
static_assert(four.sliders == 4);
static_assert(four.from_one_roll == 18);
static_assert(four.rolls == 1);
static_assert(four.left == 142_in);
// Eighteen use a roll up to its last 9 in; a nineteenth is cut from a second. A roll of just two pieces leaves nothing.
static_assert(from_roll(pocket, 18, 180_in).rolls == 1);
static_assert(from_roll(pocket, 18, 180_in).left == 9_in);
static_assert(from_roll(pocket, 19, 180_in).rolls == 2);
static_assert(from_roll(pocket, 19, 180_in).left == "170 1/2"_in);
static_assert(from_roll(pocket, 2, 19_in).left == 0_in);
static_assert(from_roll(pocket, 2, 19_in).from_one_roll == 2);
static_assert(from_roll(pocket, 1, "9 1/2"_in).rolls == 1);

// Common practice: a zipper over the quarter fold of a 16 in panel, the cloth behind it slit and opened to 1/2 in.
constexpr auto lines = zipper_lines(at<finished_edge>(4_in), 1_in, "1/2"_in);
static_assert(lines.above == at<finished_edge>("3 1/2"_in));
static_assert(lines.below == at<finished_edge>("4 1/2"_in));
static_assert(lines.slit_from == at<finished_edge>("3 3/4"_in));
static_assert(lines.slit_to == at<finished_edge>("4 1/4"_in));
constexpr auto plain_slit = zipper_lines(at<cut_edge>(10_cm), 1.5_cm, 0_cm);
static_assert(plain_slit.slit_from == at<cut_edge>(10_cm));
static_assert(plain_slit.slit_to == at<cut_edge>(10_cm));
static_assert(plain_slit.above == at<cut_edge>(9.25_cm));
static_assert(plain_slit.below == at<cut_edge>(10.75_cm));

// Common practice: squares of 2 1/2 in wrapped round the tape ends keep the tape out of the seams. Folded in half, one
// is 1 1/4 in deep: it reaches over a 3/4 in margin and a 1/2 in seam allowance.
static_assert(end_tab(longer, "1/2"_in, "2 1/2"_in) == cut_size("2 1/2"_in, "2 1/2"_in));
static_assert(clearance(longer) == "1/4"_in);
static_assert(end_tab(pocket, 0_in, 1_in) == cut_size(1_in, 1_in));
static_assert(end_tab(caught, 1_cm, 4_cm) == cut_size(5_cm, 4_cm));

/// What a search over all lengths finds, or nothing where no zipper can be used.
struct found {
    mpq_class sold, cut_at, cut_off;
};
std::optional<found> searched(const zipped_opening<inch>& z, const inches& lengths, fraction ends, fraction tail) {
    const mpq_class wanted = exact(z.across.value()) - 2 * exact(z.margin.value());
    std::optional<found> best;
    for (const auto& l : lengths)
        if (const mpq_class sold = exact(l.value()); sold >= wanted && (!best || sold < best->sold))
            best = found{sold, 0, 0};
    if (!best)
        return best;
    const mpq_class tape_end = best->sold + exact(ends), tail_end = wanted + exact(tail);
    best->cut_at = best->sold == wanted || tape_end < tail_end ? tape_end : tail_end;
    best->cut_off = tape_end - best->cut_at;
    const mpq_class seam = wanted + exact(z.margin.value());
    return exact(ends) > exact(z.margin.value()) || best->cut_at > seam ? std::nullopt : best;
}

fraction length_up_to(sampler& random, std::int64_t most) { return {random.between(0, most * 16), 16}; }

} // namespace

TEST_CASE("what a zipper's opening and tape come from can be read") {
    CHECK(to_text(opening_working(pocket)) == "9 in = 10 in across - 2 x 1/2 in margin");
    CHECK(to_text(tape_working(pocket)) == "9 1/2 in = 9 in opening + 2 x 1/4 in beyond it");
}

TEST_CASE("the opening, its margins and the tape fill the width between the seams") {
    sampler random(5101);
    while (random.another_of(2000)) {
        const fraction margin = length_up_to(random, 3), beyond = length_up_to(random, 3);
        const fraction across = margin * 2 + abs(random.awkward()) + fraction(1, 8);
        const zipped_opening<inch> z{length_of<inch>(across), length_of<inch>(margin), length_of<inch>(beyond)};
        const mpq_class wanted = exact(across) - 2 * exact(margin);
        REQUIRE(exact(opening(z).value()) == wanted);
        REQUIRE(exact(tape(z).value()) == wanted + 2 * exact(beyond));
        // Laid on the piece, tape and clearances reach from seam to seam.
        REQUIRE(exact(tape(z).value()) + 2 * exact(clearance(z).value()) == exact(across));
        REQUIRE(opening_working(z).value() == opening(z));
        REQUIRE(tape_working(z).value() == tape(z));
    }
}

TEST_CASE("a made-up zipper is the shortest that is long enough, and is cut where its tail ends") {
    sampler random(5102);
    int usable = 0, stops = 0, cuts = 0, refused = 0;
    while (random.another_of(20000)) {
        const fraction margin = length_up_to(random, 2), ends = length_up_to(random, 1);
        const fraction tail = length_up_to(random, 1) + fraction(1, 16);
        const fraction across = margin * 2 + fraction(random.between(1, 80), 4);
        inches lengths;
        for (std::int64_t n = random.between(1, 6); n > 0; --n)
            lengths.push_back(length_of<inch>({random.between(1, 88), 4}));
        const zipped_opening<inch> z{length_of<inch>(across), length_of<inch>(margin), 0_in};
        const auto reference = searched(z, lengths, ends, tail);
        try {
            const auto t = trimmed<inch>(z, lengths, {.ends = length_of<inch>(ends), .tail = length_of<inch>(tail)});
            REQUIRE(reference);
            REQUIRE(exact(t.sold.value()) == reference->sold);
            REQUIRE(t.stop_at == opening(z));
            REQUIRE(exact(t.cut_at.value()) == reference->cut_at);
            REQUIRE(exact(t.cut_off.value()) == reference->cut_off);
            REQUIRE(t.needs_a_stop == (t.sold > t.stop_at));
            ++usable;
            stops += t.needs_a_stop;
            cuts += t.cut_off > 0_in;
        } catch (const zipper_error&) {
            REQUIRE_FALSE(reference);
            ++refused;
        }
    }
    CHECK(usable > 1000);
    CHECK(usable > stops);
    CHECK(stops > cuts);
    CHECK(cuts > 100);
    CHECK(refused > 1000);
}

TEST_CASE("rolls give what cutting piece by piece gives") {
    sampler random(5103);
    int many_rolls = 0;
    for (const int i : random.cases(3000)) {
        const fraction margin = length_up_to(random, 2) + fraction(1, 16),
                       beyond = margin * fraction(random.between(0, 4), 4);
        const fraction across = margin * 2 + length_up_to(random, 20) + fraction(1, 16);
        const zipped_opening<inch> z{length_of<inch>(across), length_of<inch>(margin), length_of<inch>(beyond)};
        const mpq_class each = exact(across) - 2 * exact(margin) + 2 * exact(beyond);
        const fraction whole = tape(z).value() * random.between(1, 12);
        const fraction roll = i % 3 == 0 ? whole : whole + length_up_to(random, 20);
        const std::int64_t pieces = random.between(1, 60);

        std::int64_t rolls = 1, on_the_first = 0;
        mpq_class left = exact(roll);
        for (std::int64_t piece = 0; piece < pieces; ++piece) {
            if (left < each) {
                ++rolls;
                left = exact(roll);
            }
            left -= each;
        }
        for (mpq_class first = exact(roll); first >= each; first -= each)
            ++on_the_first;

        const auto r = from_roll(z, pieces, length_of<inch>(roll));
        REQUIRE(exact(r.each.value()) == each);
        REQUIRE(r.sliders == pieces);
        REQUIRE(r.from_one_roll == on_the_first);
        REQUIRE(r.rolls == rolls);
        REQUIRE(exact(r.left.value()) == left);
        many_rolls += rolls > 2;
    }
    CHECK(many_rolls > 500);
}

TEST_CASE("a zipper's lines lie on both sides of its centre") {
    sampler random(5104);
    while (random.another_of(500)) {
        const fraction centre = random.awkward(), slit = abs(random.on_a_ruler());
        const fraction rows = slit + fraction(random.between(1, 40), 8);
        const auto l =
            zipper_lines(at<finished_edge>(length_of<inch>(centre)), length_of<inch>(rows), length_of<inch>(slit));
        REQUIRE(exact(l.above.from_datum().value()) == exact(centre) - exact(rows) / 2);
        REQUIRE(exact(l.below.from_datum().value()) == exact(centre) + exact(rows) / 2);
        REQUIRE(exact(l.slit_from.from_datum().value()) == exact(centre) - exact(slit) / 2);
        REQUIRE(exact(l.slit_to.from_datum().value()) == exact(centre) + exact(slit) / 2);
        REQUIRE(l.above < l.slit_from);
        REQUIRE(l.slit_to < l.below);
    }
}

TEST_CASE("an opening that cannot be is refused by all that ask for it") {
    constexpr zipped_opening<inch> none{2_in, 1_in, 0_in}, negative_margin{9_in, -1_in, 0_in},
        negative_tape{9_in, 1_in, -"1/4"_in};
    const auto refused = [](const zipped_opening<inch>& z, const char* why) {
        CHECK_THROWS_WITH_AS(opening(z), why, zipper_error);
        CHECK_THROWS_WITH_AS(opening_working(z), why, zipper_error);
        CHECK_THROWS_WITH_AS(tape(z), why, zipper_error);
        CHECK_THROWS_WITH_AS(tape_working(z), why, zipper_error);
        CHECK_THROWS_WITH_AS(clearance(z), why, zipper_error);
        CHECK_THROWS_WITH_AS(trimmed<inch>(z, sold_in_inches, {.ends = 0_in, .tail = 1_in}), why, zipper_error);
        CHECK_THROWS_WITH_AS(from_roll(z, 1, 90_in), why, zipper_error);
        CHECK_THROWS_WITH_AS(end_tab(z, 1_in, 2_in), why, zipper_error);
    };
    refused(none, "margins of 1 in leave no opening in a width of 2 in");
    refused(negative_margin, "the margin beside an opening must be zero or more: it was -1 in");
    refused(negative_tape, "the tape beyond an opening must be zero or more: it was -1/4 in");
    refused({-9_in, 0_in, 0_in}, "margins of 0 in leave no opening in a width of -9 in");
}

TEST_CASE("where no made-up zipper will do, the refusal says why") {
    CHECK_THROWS_WITH_AS(trimmed<inch>({14_in, "3/4"_in, 0_in}, sold_in_inches, {.ends = "1/2"_in, .tail = "1/2"_in}),
                         "no zipper sold is long enough for an opening of 12 1/2 in: the longest is 12 in",
                         zipper_error);
    CHECK_THROWS_WITH_AS(trimmed<inch>(pocket, inches(), {.ends = "1/2"_in, .tail = "1/2"_in}),
                         "at least one length in which zippers are sold must be given: there was none", zipper_error);
    CHECK_THROWS_WITH_AS(trimmed<inch>(pocket, inches{9_in, 0_in}, {.ends = "1/2"_in, .tail = "1/2"_in}),
                         "a length in which zippers are sold must be more than zero: it was 0 in", zipper_error);
    CHECK_THROWS_WITH_AS(
        trimmed<inch>(pocket, sold_in_inches, {.ends = "3/4"_in, .tail = "1/2"_in}),
        "the top end of the tape reaches 3/4 in beyond the opening, into the seam: the margin there is "
        "1/2 in",
        zipper_error);
    CHECK_THROWS_WITH_AS(
        trimmed<inch>(pocket, inches{12_in}, {.ends = "1/4"_in, .tail = "5/8"_in}),
        "the bottom end of the tape reaches 5/8 in beyond the opening, into the seam: the margin there "
        "is 1/2 in",
        zipper_error);
    // Too short to be given its tail, and still in the seam.
    CHECK_THROWS_WITH_AS(
        trimmed<inch>(pocket, inches{"9 1/2"_in}, {.ends = "1/4"_in, .tail = 1_in}),
        "the bottom end of the tape reaches 3/4 in beyond the opening, into the seam: the margin there "
        "is 1/2 in",
        zipper_error);
    CHECK_THROWS_WITH_AS(trimmed<inch>(pocket, sold_in_inches, {.ends = -"1/8"_in, .tail = "1/2"_in}),
                         "the tape beyond the stops of a zipper as sold must be zero or more: it was -1/8 in",
                         zipper_error);
    CHECK_THROWS_WITH_AS(trimmed<inch>(pocket, sold_in_inches, {.ends = 0_in, .tail = 0_in}),
                         "the tail below a new stop must be more than zero: it was 0 in", zipper_error);
}

TEST_CASE("tape that just reaches the seam is not in it") {
    CHECK(trimmed<inch>(pocket, sold_in_inches, {.ends = "1/2"_in, .tail = "1/2"_in}).cut_at == "9 1/2"_in);
    CHECK(trimmed<inch>(pocket, inches{12_in}, {.ends = "1/2"_in, .tail = "1/2"_in}).cut_at == "9 1/2"_in);
    CHECK(from_roll<inch>({10_in, "1/2"_in, "1/2"_in}, 1, 90_in).each == 10_in);
}

TEST_CASE("what a roll cannot give is refused") {
    CHECK_THROWS_WITH_AS(from_roll(pocket, 1, 9_in), "a roll of 9 in is too short for a piece of 9 1/2 in",
                         zipper_error);
    CHECK_THROWS_WITH_AS(from_roll(pocket, 0, 90_in), "the number of zippers must be at least 1: it was 0",
                         zipper_error);
    CHECK_THROWS_WITH_AS(from_roll(pocket, -4, 90_in), "the number of zippers must be at least 1: it was -4",
                         zipper_error);
    CHECK_THROWS_WITH_AS(from_roll(caught, 1, 90_cm),
                         "the cut end of the tape reaches 2 cm beyond the opening, into the seam: the margin there is "
                         "1.5 cm",
                         zipper_error);
}

TEST_CASE("a slit that would cut the stitching is refused") {
    const std::string why = "the slit behind a zipper must be narrower than its stitching, ";
    CHECK_THROWS_WITH_AS(zipper_lines(at<cut_edge>(4_in), "1/2"_in, "1/2"_in), (why + "1/2 in: it was 1/2 in").c_str(),
                         zipper_error);
    CHECK_THROWS_WITH_AS(zipper_lines(at<cut_edge>(4_in), 0_in, 0_in), (why + "0 in: it was 0 in").c_str(),
                         zipper_error);
    CHECK_THROWS_WITH_AS(zipper_lines(at<cut_edge>(4_in), "1/2"_in, -"1/8"_in),
                         "the slit behind a zipper must be zero or more: it was -1/8 in", zipper_error);
}

TEST_CASE("a tab that would cover nothing is refused") {
    CHECK_THROWS_WITH_AS(end_tab<inch>({9_in, 0_in, 0_in}, "1/2"_in, 2_in),
                         "the margin that a tab covers must be more than zero: it was 0 in", zipper_error);
    CHECK_THROWS_WITH_AS(end_tab(pocket, -"1/8"_in, 2_in),
                         "the allowance of a tab must be zero or more: it was -1/8 in", zipper_error);
    CHECK_THROWS_WITH_AS(end_tab(pocket, "1/2"_in, 0_in),
                         "a cut size must be more than zero each way: it was 2 in wide and 0 in high", size_error);
}

TEST_CASE("a refusal of a zipper is an error of the library") { CHECK_THROWS_AS(from_roll(pocket, 0, 90_in), error); }

TEST_CASE("a refusal of a zipper knows what was given and what is allowed") {
    using reference::facts;
    CHECK(facts<zipper_error>([] {
              return opening<inch>({2_in, 1_in, 0_in});
          }) == "no room: the margin beside an opening, given 1 in, most 1 in");
    CHECK(facts<zipper_error>([] {
              return opening<inch>({9_in, -1_in, 0_in});
          }) == "too small: the margin beside an opening, given -1 in, least 0 in");
    CHECK(facts<zipper_error>([] {
              return tape<inch>({9_in, 1_in, -"1/4"_in});
          }) == "too small: the tape beyond an opening, given -1/4 in, least 0 in");
    const auto trim = [](inches sold, length<inch> ends, length<inch> tail) {
        return [=] { return trimmed<inch>(pocket, sold, {.ends = ends, .tail = tail}); };
    };
    CHECK(facts<zipper_error>(trim({7_in, 8_in}, "1/2"_in, "1/2"_in)) ==
          "too large: the opening of a zipper, given 9 in, most 8 in");
    CHECK(facts<zipper_error>(trim({}, "1/2"_in, "1/2"_in)) == "missing: a length in which zippers are sold");
    CHECK(facts<zipper_error>(trim({0_in}, "1/2"_in, "1/2"_in)) ==
          "too small: a length in which zippers are sold, given 0 in, least 0 in");
    CHECK(facts<zipper_error>(trim({9_in}, "3/4"_in, "1/2"_in)) ==
          "no room: the tape beyond an opening, given 3/4 in, most 1/2 in, where top");
    CHECK(facts<zipper_error>(trim({12_in}, "1/4"_in, "5/8"_in)) ==
          "no room: the tape beyond an opening, given 5/8 in, most 1/2 in, where bottom");
    CHECK(facts<zipper_error>(trim({9_in}, -"1/8"_in, "1/2"_in)) ==
          "too small: the tape beyond the stops of a zipper as sold, given -1/8 in, least 0 in");
    CHECK(facts<zipper_error>(trim({9_in}, 0_in, 0_in)) ==
          "too small: the tail below a new stop, given 0 in, least 0 in");
    CHECK(facts<zipper_error>([] { return from_roll(pocket, 1, 9_in); }) ==
          "too small: the length of a roll of zipper, given 9 in, least 19/2 in");
    CHECK(facts<zipper_error>([] { return from_roll(pocket, -4, 90_in); }) ==
          "too small: the number of zippers, given -4, least 1");
    CHECK(facts<zipper_error>([] { return zipper_lines(at<cut_edge>(4_in), "1/2"_in, "1/2"_in); }) ==
          "no room: the slit behind a zipper, given 1/2 in, most 1/2 in");
    CHECK(facts<zipper_error>([] {
              return end_tab<inch>({9_in, 0_in, 0_in}, "1/2"_in, 2_in);
          }) == "too small: the margin that a tab covers, given 0 in, least 0 in");
}
