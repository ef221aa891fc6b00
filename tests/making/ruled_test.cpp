// Numbers on a ruler by their kind: worked examples by hand; rounding, mirrored marks and the marks of a longer piece
// against GMP; what is too coarse.
#include "../measure/against_gmp.hpp"
#include "../refused.hpp"
#include <turncloth/making/ruled.hpp>
#include <turncloth/marks/mapping.hpp>
#include <turncloth/marks/spacing.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/finish.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using against_gmp::exact;
using against_gmp::sampler;

namespace {

// By hand, in eighths: 7/16 is 3.5, which goes up; 5/16 is 2.5; 1/4 is 2, and in two alike 1 each; 3/8 in two alike is
// 1.5 pairs, which goes up to 2.
constexpr ruled<inch> eighths("1/8"_in);
static_assert(eighths.given("7/16"_in) == "1/2"_in && eighths.given("5/16"_in) == "3/8"_in);
static_assert(eighths.given("1/4"_in, 2) == "1/4"_in && eighths.given("3/8"_in, 2) == "1/2"_in);
static_assert(eighths.given(0_in) == 0_in && eighths.middle("5/8"_in) == "3/8"_in);
static_assert(eighths.given(finished_size("14 1/16"_in, "11 1/3"_in)) == finished_size("14 1/8"_in, "11 3/8"_in));
// Common multiples: of 1/16 and 1/8, of 3/16 and 1/8, of 0.25 and 0.1, of 1/8 and two of 1/8.
static_assert(eighths.step("1/16"_in) == "1/8"_in && eighths.step("3/16"_in) == "3/8"_in);
static_assert(ruled<centimetre>("0.1"_cm).step("0.25"_cm) == "0.5"_cm && eighths.step("1/8"_in, 2) == "1/4"_in);
static_assert(ruled<inch>().given("1/7"_in) == "1/7"_in && ruled<inch>().step("1/7"_in) == "1/7"_in);
static_assert(ruled<inch>().middle("1/7"_in) == "1/14"_in && ruled<inch>().graduation() == 0_in);

// 5 in by four on a ruler of 1/2: 1 1/4 and 3 3/4 lie half way and go toward the middle, 2 1/2 is on it.
constexpr auto quarters = ruled<inch>("1/2"_in).parts(divided<finished_edge>(5_in, 4));
static_assert(quarters[0] == at<finished_edge>("1 1/2"_in) && quarters[2] == at<finished_edge>("3 1/2"_in));
static_assert(quarters[1] == at<finished_edge>("2 1/2"_in) && quarters.step() == "1 1/4"_in);
static_assert(quarters.exact()[0] == at<finished_edge>("1 1/4"_in));

// Three eyelets on a ruler of 1/4, rims 1/2, margins 1, in 9 1/8: centres at 1 1/4, 4 9/16 (18.25 quarters), 7 7/8.
constexpr auto holes = spaced_from_margins<finished_edge>(3, "1/2"_in, "9 1/8"_in, 1_in).on_ruler("1/4"_in);
static_assert(holes.centres()[0] == at<finished_edge>("1 1/4"_in));
static_assert(holes.centres()[1] == at<finished_edge>("4 1/2"_in));
static_assert(holes.centres()[2] == at<finished_edge>("7 3/4"_in)); // 7 7/8 is half way

// Film of 12 1/4 on a backing of 10, in three: 3 1/3 and 6 2/3 in eighths 26.67 and 53.33; 3/4 more each time.
constexpr even_mapping<inch> film("12 1/4"_in, 10_in, 3, "1/8"_in);
static_assert(film.mark_on_short(1) == at<short_piece>("3 3/8"_in) &&
              film.mark_on_long(1) == at<long_piece>("4 1/8"_in));
static_assert(film.mark_on_short(2) == at<short_piece>("6 5/8"_in) &&
              film.mark_on_long(2) == at<long_piece>("8 1/8"_in));
static_assert(film.mark_on_long(3) == at<long_piece>("12 1/4"_in) && film.surplus(1) == "3/4"_in);

/// The greatest whole number that is not above x.
mpz_class floor_of(const mpq_class& x) {
    mpz_class below;
    mpz_fdiv_q(below.get_mpz_t(), x.get_num_mpz_t(), x.get_den_mpz_t());
    return below;
}

} // namespace

TEST_CASE("what is given goes to the nearest graduation, a half up, and a half at most is changed") {
    sampler random(7301);
    int halves = 0;
    while (random.another_of(20000)) {
        const length<inch> l = length_of<inch>({random.between(1, 4000), random.between(1, 64)});
        const fraction graduation(1, random.between(1, 64));
        const std::int64_t alike = random.between(1, 3);
        const mpq_class unit = exact(graduation) * alike, doubled = exact(l.value()) / unit * 2;
        halves += floor_of(doubled) == doubled && floor_of(doubled) % 2 != 0;
        const mpq_class expected = unit * mpq_class(floor_of((doubled + 1) / 2));
        if (expected == 0)
            CHECK_THROWS_AS(ruled<inch>(length_of<inch>(graduation)).given(l, alike), ruler_error);
        else
            REQUIRE(exact(ruled<inch>(length_of<inch>(graduation)).given(l, alike).value()) == expected);
    }
    CHECK(halves > 200);
}

TEST_CASE("marks on a ruler are the nearest ones, keep their order and mirror one another") {
    sampler random(7302);
    int halves = 0;
    while (random.another_of(3000)) {
        const length<inch> graduation = length_of<inch>({1, random.between(1, 32)});
        const length<inch> span = graduation * fraction(random.between(40, 2000));
        const std::int64_t n = random.between(2, 40);
        const auto marks = divided<finished_edge>(span, n).on_ruler(graduation);
        for (std::int64_t k = 0; k < marks.size(); ++k) {
            const length<inch> place = marks[k].from_datum(),
                               mirrored = span - marks[marks.size() - 1 - k].from_datum();
            const mpq_class off =
                (exact(place.value()) - exact(span.value()) * (k + 1) / n) / exact(graduation.value());
            REQUIRE(is_whole(ratio_of(place, graduation)));
            REQUIRE(abs(off) <= mpq_class(1, 2));
            halves += abs(off) == mpq_class(1, 2);
            if (2 * (k + 1) != n)
                REQUIRE(place == mirrored);
            REQUIRE((k == 0 || marks[k - 1] <= marks[k]));
        }
    }
    CHECK(halves > 200);
}

TEST_CASE("what a ruler cannot show is refused with one that can") {
    const ruled<inch> quarters_of_an_inch("1/4"_in);
    CHECK(refused::message<ruler_error>([&] { quarters_of_an_inch.given("1/16"_in); }) ==
          "a ruler of 1/4 in cannot show 1/16 in: use 1/8 in or finer");
    CHECK(refused::facts<ruler_error>([&] { quarters_of_an_inch.given("1/16"_in); }) ==
          "too large: the graduation of a ruler, given 1/4 in, most 1/8 in");
    CHECK(refused::message<ruler_error>([&] { quarters_of_an_inch.given("1/8"_in, 2); }) ==
          "a ruler of 1/4 in cannot show 1/8 in: use 1/8 in or finer");
    CHECK_THROWS_AS(ruled<inch>(0_in), range_error);
    CHECK_THROWS_AS(static_cast<void>(divided<finished_edge>(10_in, 2).on_ruler(-1_in)), range_error);
}
