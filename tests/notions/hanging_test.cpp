// Hangings: eyelets clear of every hem, folded ribbons, pockets of fuller film and dividers; at compile time, for
// thousands of sizes, and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/hanging.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <limits>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;

namespace {

// A backing 15 x 42 in with a heading of 4 in turned and stitched and 1 in pressed under elsewhere (common practice).
constexpr edges<inch> hanging_edges{heading(4_in), single_turned_hem(1_in), single_turned_hem(1_in),
                                    single_turned_hem(1_in)};
constexpr panel<inch> backing(finished_size(15_in, 42_in), hanging_edges);
constexpr eyelet<inch> brass{"3/8"_in, "3/4"_in};
constexpr auto three = eyelets(backing, 3, brass, {.margin = "1 1/2"_in, .clear = "1/8"_in});
static_assert(three.down == at<finished_edge>(2_in)); // midway between the fold and the stitching 4 in below it
static_assert(three.along.centres()[0] == at<finished_edge>("1 7/8"_in));
static_assert(three.along.centres()[1] == at<finished_edge>("7 1/2"_in));
static_assert(three.along.gap() == "4 7/8"_in);

// Centres 1 7/8 in from both sides leave 11 1/4 in between; no more than 4 in apart takes 3 gaps.
static_assert(fewest_eyelets(15_in, {.rim = "3/4"_in, .margin = "1 1/2"_in, .most = 4_in}) == 4);
static_assert(fewest_eyelets(15_in, {.rim = "3/4"_in, .margin = "1 1/2"_in, .most = "5 5/8"_in}) ==
              3); // 11 1/4 / 2, exactly
static_assert(fewest_eyelets(15_in, {.rim = "3/4"_in, .margin = "1 1/2"_in, .most = "5 5/8"_in, .even_count = true}) ==
              4);
static_assert(fewest_eyelets(15_in, {.rim = "3/4"_in, .margin = "1 1/2"_in, .most = 20_in}) == 2);

// A magazine's ground sheet (published): 140 cm wide, 11 rivets 11 cm apart, 10 gaps, 15 cm from each end to the first.
constexpr eyelet_limits<centimetre> rivets{.rim = 1_cm, .margin = 14.5_cm, .most = 11_cm};
static_assert(fewest_eyelets(140_cm, rivets) == 11);
// US Army TM 10-1670-281-23&P, par. 2-33 (published): webbing of 8 3/4 in, doubled and stitched 1/4 in back from its
// ends, is 8 1/4 in round inside the row.
static_assert(folded_ribbons(1, "8 1/4"_in / 2, "1/4"_in).value() == "8 3/4"_in);

// Three hanging ribbons of 10 in, folded in half (common practice): 5 in each way, of which 1/2 in in the seam.
static_assert(folded_ribbons(3, "4 1/2"_in, "1/2"_in).value() == 30_in);

// Pockets every 7 in, 35 in of backing, film of 50 in marked every 10 in (common practice).
constexpr pocket_row<inch> film(35_in, 50_in, 5);
static_assert(film.fullness() == fraction(10, 7));
static_assert(film.mapping().surplus(0) == 3_in);
static_assert(film.dividers()[0] == at<short_piece>(7_in));
static_assert(film.dividers()[3] == at<short_piece>(28_in));
static_assert(film.dividers().size() == 4);
static_assert(film.mapping().mark_on_long(2) == at<long_piece>(20_in));
// "Half as long again less a little", in whole inches to each pocket: 10 1/2 becomes 10.
static_assert(film_for_fullness(35_in, 5, {3, 2}, 1_in) == 50_in);
static_assert(film.film_cut(1_in).value() == 52_in); // 1 in pressed under at each end

// The synopsis: 40 in of backing, 55 in of film, 8 pockets.
static_assert(pocket_row<inch>(40_in, 55_in, 8).mapping().surplus(0) == "1 7/8"_in);
static_assert(pocket_row<inch>(40_in, 55_in, 8).fullness() == fraction(11, 8));

static_assert(strip_dividers<finished_edge>(20_in, 3, 1_in).clear == 6_in);
static_assert(strip_dividers<finished_edge>(20_in, 3, 1_in).starts[1] == at<finished_edge>(13_in));
static_assert(strip_dividers<finished_edge>(20_cm, 4, 0_cm).starts[2] == at<finished_edge>(15_cm));

} // namespace

TEST_CASE("every rim lies clear of the fold, the stitching and the side hems, for any panel that is accepted") {
    reference::sampler random(1911);
    int set = 0, refused = 0;
    for (const int i : random.cases(5'000)) {
        const length<inch> depth = random.inches(4) + "1/2"_in, inset = depth / 8, side = random.inches(2);
        const panel<inch> p(finished_size(random.inches(40) + 20_in, 30_in),
                            edges<inch>{heading(depth, depth / 8, inset), single_turned_hem(side),
                                        single_turned_hem(1_in), single_turned_hem(side / 2)});
        const eyelet<inch> e{"1/4"_in, "1/4"_in + random.inches(1)};
        const length<inch> margin = random.inches(3), clear = random.inches(1);
        try {
            const eyelet_row<inch> row = eyelets(p, 2 + i % 6, e, {.margin = margin, .clear = clear});
            ++set;
            const length<inch> down = row.down.from_datum();
            CHECK(down - e.rim / 2 >= clear);
            CHECK(down + e.rim / 2 + clear <= depth - inset); // the stitching, below the fold
            for (const auto& start : row.along.starts()) {
                CHECK(start.from_datum() >= side + clear);
                CHECK(start.from_datum() + e.rim + clear + side / 2 <= p.finished().width());
            }
        } catch (const hanging_error&) {
            ++refused;
            CHECK((e.rim + clear * 2 > depth - inset || margin < side + clear));
        }
    }
    CHECK(set > 500);
    CHECK(refused > 500);
}

TEST_CASE("the fewest eyelets are near enough to each other, and one less would not be") {
    reference::sampler random(1913);
    while (random.another_of(5'000)) {
        const length<inch> along = random.inches(60) + 10_in, rim = random.inches(1), margin = random.inches(3);
        const length<inch> most = rim * 2 + random.inches(10);
        const std::int64_t n = fewest_eyelets(along, {.rim = rim, .margin = margin, .most = most});
        const auto row = spaced_from_margins<finished_edge>(n, rim, along, margin);
        CHECK(row.centres().step() <= most);
        if (n > 2)
            CHECK((along - margin * 2 - rim) / (n - 2) > most);
        const std::int64_t even =
            fewest_eyelets(along, {.rim = rim, .margin = margin, .most = most, .even_count = true});
        CHECK(even % 2 == 0);
        CHECK(even - n == n % 2);
    }
}

TEST_CASE("eyelets marked from the edge, each rounded by itself, stay at their places; a rounded step runs off") {
    // 200 in with rims of 3/4 in 2 in from the ends: 195 1/4 in between the outer centres, 24 gaps of 8.135 in. Rounded to
    // 8 1/8 in and laid off 24 times, the last would be 1/4 in short.
    const panel<inch> wide(finished_size(200_in, 30_in), hanging_edges);
    const eyelet_row<inch> row = eyelets(wide, 25, brass, {.margin = 2_in, .clear = "1/8"_in});
    const length<inch> first = nearest_to(row.along.centres()[0].from_datum(), "1/8"_in);
    REQUIRE(row.along.size() == 25);
    for (std::int64_t k = 0; k < 25; ++k) {
        CAPTURE(k);
        const length<inch> exact_place = "2 3/8"_in + "195 1/4"_in * k / 24; // counted from the first by hand
        CHECK(abs(nearest_to(row.along.centres()[k].from_datum(), "1/8"_in) - exact_place) <= "1/16"_in);
    }
    CHECK(nearest_to(row.along.centres()[24].from_datum(), "1/8"_in) == "197 5/8"_in);
    CHECK(first + nearest_to(row.along.centres().step(), "1/8"_in) * 24 == "197 3/8"_in);
    CHECK(row.each.hole == "3/8"_in);
    CHECK(row.each.rim == "3/4"_in);
}

TEST_CASE("film taken for a fullness never exceeds it, keeps every pocket on the ruler, and falls short by under a "
          "step each") {
    reference::sampler random(1915);
    while (random.another_of(3'000)) {
        const length<inch> span = random.inches(60) + 10_in;
        const std::int64_t n = random.between(1, 9);
        const fraction fullness = {random.between(110, 200), 100};
        const length<inch> long_film = film_for_fullness(span, n, fullness, "1/8"_in);
        CHECK(is_whole((long_film / n).value() * 8));
        CHECK(long_film <= span * fullness);
        CHECK(span * fullness - long_film < "1/8"_in * n);
        const pocket_row<inch> row(span, long_film, n);
        CHECK(row.film_cut("1/2"_in).value() == long_film + 1_in);
        for (std::int64_t k = 0; k < n; ++k)
            CHECK(row.mapping().surplus(k) * n == long_film - span);
    }
}

TEST_CASE("film taken for a depth stands off at least so far, and marked a graduation shorter it would not") {
    reference::sampler random(1917);
    while (random.another_of(2'000)) {
        const length<inch> span = random.inches(60) + 10_in, depth = random.inches(3);
        const std::int64_t n = random.between(1, 9);
        const length<inch> long_film = film_for_depth(span, n, depth, "1/8"_in);
        CHECK(pocket_row<inch>(span, long_film, n).bow("1/100000"_in, rounding::up) >= depth);
        if (long_film / n - "1/8"_in > span / n)
            CHECK(pocket_row<inch>(span, long_film - "1/8"_in * n, n).bow("1/100000"_in, rounding::down) < depth);
    }
}

TEST_CASE("pockets and dividers fill their span exactly") {
    reference::sampler random(1919);
    while (random.another_of(3'000)) {
        const length<inch> span = random.inches(60) + 20_in, width = random.inches(2);
        const std::int64_t n = random.between(1, 9);
        const auto d = strip_dividers<finished_edge>(span, n, width);
        CHECK(d.starts.size() == n - 1);
        CHECK(d.clear * n + width * (n - 1) == span);
        for (std::int64_t k = 0; k < d.starts.size(); ++k) // each pocket begins where the strip before it ends
            CHECK(d.starts[k] - (k == 0 ? at<finished_edge>(0_in) : d.starts[k - 1] + width) == d.clear);
    }
}

TEST_CASE("a film's working counts its pockets, and ribbons are counted there and back") {
    CHECK(to_text(film.film_cut(1_in)) == "52 in = 5 x 10 in pockets + 2 x 1 in turned at the ends");
    CHECK(to_text(folded_ribbons(3, "4 1/2"_in, "1/2"_in)) == "30 in = 6 x (4 1/2 + 1/2) in of ribbon, there and back");
}

TEST_CASE("what would not hang says why") {
    CHECK(message<hanging_error>([] {
              return eyelets(backing, 3, eyelet<inch>{"1/2"_in, "1/2"_in}, {.margin = 2_in, .clear = 0_in});
          }) == "the rim of an eyelet must be wider than its hole, 1/2 in: it was 1/2 in");
    CHECK(message<hanging_error>([] {
              return eyelets(backing, 3, eyelet<inch>{2_in, "3 7/8"_in}, {.margin = 2_in, .clear = "1/8"_in});
          }) == "a rim of 3 7/8 in kept 1/8 in clear does not fit the heading, which is stitched 4 in below its fold");
    CHECK(message<hanging_error>([] { return eyelets(backing, 3, brass, {.margin = 1_in, .clear = "1/8"_in}); }) ==
          "an eyelet 1 in from the left edge is not clear of the single-turned hem there, which lies 1 in deep and "
          "needs 1/8 "
          "in more");
    CHECK(message<hanging_error>([] {
              const edges<inch> wide_right{heading(4_in), single_turned_hem(2_in), finish<inch>(), finish<inch>()};
              return eyelets(panel<inch>(finished_size(15_in, 42_in), wide_right), 3, brass,
                             {.margin = 1_in, .clear = "1/8"_in});
          }) ==
          "an eyelet 1 in from the right edge is not clear of the single-turned hem there, which lies 2 in deep and "
          "needs 1/8 in more");
    CHECK(message<hanging_error>([] {
              return eyelets(panel<inch>(finished_size(15_in, 42_in), all_round(seam("1/2"_in))), 3, brass,
                             {.margin = 2_in, .clear = 0_in});
          }) == "eyelets need a turned and stitched heading: a seam allowance has no cloth between two layers");
    CHECK(facts<hanging_error>([&] {
              return eyelets(backing, 3, eyelet<inch>{0_in, 1_in}, {.margin = 2_in, .clear = 0_in});
          }) == "too small: the hole of an eyelet, given 0 in, least 0 in");
    CHECK(facts<hanging_error>([&] { return eyelets(backing, 3, brass, {.margin = 2_in, .clear = "-1/8"_in}); }) ==
          "too small: the distance that a rim keeps clear, given -1/8 in, least 0 in");
    CHECK_THROWS_AS(eyelets(backing, 40, brass, {.margin = 2_in, .clear = "1/8"_in}), marks_error);
    CHECK(message<hanging_error>([] {
              return fewest_eyelets(4_in, {.rim = 1_in, .margin = "1 1/2"_in, .most = 2_in});
          }) == "two eyelets with rims of 1 in and margins of 1 1/2 in have no room in 4 in");
    CHECK(facts<hanging_error>([&] { return fewest_eyelets(15_in, {.rim = 1_in, .margin = 1_in, .most = 0_in}); }) ==
          "too small: the distance between eyelets, given 0 in, least 0 in");
    CHECK(message<hanging_error>([] {
              return fewest_eyelets(15_in, {.rim = 1_in, .margin = 1_in, .most = "3/4"_in, .even_count = true});
          }) == "18 eyelets, for no more than 3/4 in between centres, would overlap: their rims are 1 in");
    CHECK(message<hanging_error>([] { return folded_ribbons(0, 4_in, "1/2"_in); }) ==
          "the number of ribbons must be at least 1: it was 0");
    CHECK(facts<hanging_error>([&] { return folded_ribbons(3, 0_in, "1/2"_in); }) ==
          "too small: the hang of a ribbon, given 0 in, least 0 in");
    CHECK(facts<hanging_error>([&] { return folded_ribbons(3, 4_in, "-1/2"_in); }) ==
          "too small: what a seam catches of a ribbon, given -1/2 in, least 0 in");
    CHECK_THROWS_AS(pocket_row<inch>(35_in, 34_in, 5), marks_error);
    CHECK(facts<hanging_error>([&] { return film.film_cut("-1"_in); }) ==
          "too small: the allowance at an end of the film, given -1 in, least 0 in");
    CHECK(message<hanging_error>([] {
              return film_for_fullness(35_in, 4, {101, 100}, 1_in);
          }) == "a fullness of 1 1/100 on pockets of 8 3/4 in, brought down to 8 in, is less than the backing");
    CHECK(facts<hanging_error>([&] { return film_for_fullness(0_in, 4, 2, 1_in); }) ==
          "too small: the backing of pockets, given 0 in, least 0 in");
    CHECK(facts<hanging_error>([&] { return film_for_fullness(35_in, 0, 2, 1_in); }) ==
          "too small: the number of pockets, given 0, least 1");
    CHECK(facts<hanging_error>([&] { return film_for_depth(0_in, 4, 1_in, 1_in); }) ==
          "too small: the backing of pockets, given 0 in, least 0 in");
    CHECK(facts<hanging_error>([&] { return film_for_depth(35_in, 0, 1_in, 1_in); }) ==
          "too small: the number of pockets, given 0, least 1");
    CHECK(facts<bow_error>([&] { return film_for_depth(35_in, 5, 0_in, 1_in); }) ==
          "too small: the height of a bow, given 0 in, least 0 in");
    CHECK(message<hanging_error>([] { return strip_dividers<finished_edge>(6_in, 4, 2_in); }) ==
          "3 dividers 2 in wide leave no pocket in 6 in");
    CHECK(facts<hanging_error>([&] { return strip_dividers<finished_edge>(6_in, 0, 2_in); }) ==
          "too small: the number of pockets, given 0, least 1");
    CHECK(facts<hanging_error>([&] { return strip_dividers<finished_edge>(6_in, 2, "-1"_in); }) ==
          "too small: the width of a divider, given -1 in, least 0 in");
}

TEST_CASE("counts of eyelets and ribbons beyond what 64 bits hold are refused") {
    constexpr std::int64_t all = std::numeric_limits<std::int64_t>::max();
    const length<inch> rail = length_of<inch>(all);
    const fraction smallest = {1, all};
    // 2^63 - 1 gaps and more have one eyelet too many to count.
    CHECK_THROWS_AS(fewest_eyelets(rail, {.rim = length_of<inch>(smallest), .margin = {}, .most = 1_in}),
                    overflow_error);
    CHECK_THROWS_AS(fewest_eyelets(length_of<inch>(all / 2), {.rim = 1_in, .margin = {}, .most = "1/4"_in}),
                    overflow_error);
    CHECK_THROWS_AS(folded_ribbons(all, 4_in, "1/2"_in), overflow_error);
    CHECK(folded_ribbons(all / 4, "1/2"_in, "1/2"_in).value() == length_of<inch>(all / 4 * 2));
}
