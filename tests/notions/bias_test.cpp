// Bias strips: against a table and worked examples from print; roots rounded up against whole numbers of any length;
// strips that are counted against strips that are laid and joined one by one; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/bias.hpp>

#include <doctest/doctest.h>
#include <gmpxx.h>

#include <array>
#include <cmath>
#include <cstdint>
#include <limits>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;
using reference::real;

namespace {

// The synopsis. Counted by hand: strips 2 1/2 in wide lie 3.5355 in apart along the thread; of 18 1/8 in the first seam
// leaves 17 5/8, that is 4 strips, and 4 x 18 1/8 less 3 joins of 1/2 in is 71 in, along the strip 100.41. The fifth
// strip needs 17.678 + 1/2 in; and 130 in along the strip are 91.924 along the thread, 93.924 with 4 joins, 18.785 each.
constexpr bias_wanted<inch> piping{.joined = 130_in, .width = "2 1/2"_in, .seam = "1/4"_in};
static_assert(least_square_before_seams(piping, "1/8"_in) == "18 1/8"_in); // sqrt(325) = 18.03
static_assert(bias_from<inch>({"18 1/8"_in, "18 1/8"_in}, {"2 1/2"_in, "1/4"_in}, "1/8"_in).joined == "100 3/8"_in);
static_assert(bias_from<inch>({"18 1/8"_in, "18 1/8"_in}, {"2 1/2"_in, "1/4"_in}, "1/8"_in).count == 4);
static_assert(square_for_bias(piping, "1/8"_in) == "18 7/8"_in);
static_assert(bias_from<inch>({"18 7/8"_in, "18 7/8"_in}, {"2 1/2"_in, "1/4"_in}, "1/8"_in).count == 5);
// A strip 6 in wide lies 8.485 in along the thread: one of 4 in from cloth 7 in wide takes 8.485 + 1/2 in of it.
static_assert(cloth_for_bias<inch>({.joined = 4_in, .width = 6_in, .seam = "1/4"_in}, 7_in, "1/8"_in) == 9_in);
// The rule of areas (derived): a square of side s gives at most s^2 / w, so a length L needs at least sqrt(L w).
static_assert(least_square_before_seams<inch>({.joined = 150_in, .width = 2_in}, "1/8"_in) == "17 3/8"_in); // 17.32
static_assert(least_square_before_seams<inch>({.joined = 72_in, .width = 2_in}, "1/8"_in) == 12_in);        // exactly
static_assert(most_bias_before_seams<inch>({12_in, 12_in}, 2_in) == 72_in);

// NIMI (Government of India), Dress Making, Trade Practical, vol. 2, p. 220 (published): 5 m of 2.5 cm strip, none
// shorter than 10 cm, from cloth 86 cm wide: 1250 + 50.41 square centimetres, 15.12 cm, taken as 15.5 cm, the next
// half.
constexpr bias_wanted<centimetre> five_metres{.joined = 500_cm, .width = "2.5"_cm};
static_assert(least_cloth_before_seams(five_metres, 86_cm, 10_cm, "0.5"_cm) == "15.5"_cm);
static_assert(least_cloth_before_seams(five_metres, 86_cm, 10_cm, "0.01"_cm) == "15.12"_cm);
// The same page: 96 x 20 cm gives (1920 - 50.41) / 2 = 934.79 cm of 2 cm strip, with 1.4 for the root of 2 (it
// misprints "10 x 1.4 = 7.14" for 10 / 1.4). With the root itself the corners are 50 square centimetres: 935.
static_assert(most_bias_before_seams<centimetre>({96_cm, 20_cm}, 2_cm, 10_cm) == 935_cm);
static_assert(abs(most_bias_before_seams<centimetre>({96_cm, 20_cm}, 2_cm, 10_cm) - "934.79"_cm) < "0.25"_cm);
// The same page, a single strip on the diagonal of 65 cm: (65 - 2.14) x 1.4 = 88 cm. The width, 3 cm, is inferred from
// 2.14 = 3 / 1.4. With the root itself, 65 sqrt(2) - 3 = 88.92 cm.
static_assert(longest_bias<centimetre>({.square = 65_cm, .width = 3_cm}, "0.01"_cm) == "88.92"_cm);
static_assert(longest_bias<centimetre>({.square = 65_cm, .width = 3_cm}, 1_cm) == 88_cm);

struct along {
    length<inch> width, printed;
};

// Baldt, Clothing for Women (Lippincott, 1916), ch. XXII (published): length along the selvedge for a bias strip.
constexpr std::array<along, 22> baldt = {{
    {"1/2"_in, "6/8"_in},       {1_in, "1 3/8"_in},   {"1 1/2"_in, "2 1/8"_in},  {2_in, "2 6/8"_in},
    {"2 1/2"_in, "3 4/8"_in},   {3_in, "4 2/8"_in},   {"3 1/2"_in, "5"_in},      {4_in, "5 5/8"_in},
    {"4 1/2"_in, "6 3/8"_in},   {5_in, "7 1/8"_in},   {"5 1/2"_in, "7 6/8"_in},  {6_in, "8 4/8"_in},
    {"6 1/2"_in, "9 1/8"_in},   {7_in, "9 7/8"_in},   {"7 1/2"_in, "10 5/8"_in}, {8_in, "11 2/8"_in},
    {"8 1/2"_in, "12"_in},      {9_in, "12 6/8"_in},  {"9 1/2"_in, "13 3/8"_in}, {10_in, "14 1/8"_in},
    {"10 1/2"_in, "14 7/8"_in}, {11_in, "15 4/8"_in},
}};

} // namespace

TEST_CASE("lengths along the selvedge are those of a table of 1916, which is an eighth low in three rows") {
    int low = 0;
    for (const along& row : baldt) {
        const length<inch> nearest = along_selvedge(row.width, "1/8"_in, rounding::nearest);
        const bool printed_low = row.width == 2_in || row.width == "6 1/2"_in || row.width == 8_in;
        CHECK(nearest == row.printed + (printed_low ? "1/8"_in : 0_in));
        low += printed_low;
    }
    CHECK(low == 3);
}

TEST_CASE("the rule of a third more along the selvedge falls short of the root by less than six in a hundred") {
    // Woolman, A Sewing Course for Teachers (published): "allow one-third more along the selvage".
    for (int n = 1; n <= 40; ++n) {
        const fraction short_by =
            1 - fraction(4, 3) * n / along_selvedge(length_of<inch>(n), "1/1000"_in, rounding::up).value();
        CHECK(short_by > fraction(55, 1000));
        CHECK(short_by < fraction(60, 1000));
    }
}

TEST_CASE("the side of a square by the rule of areas is rounded up, and by less than a graduation") {
    reference::sampler random(1893);
    while (random.another_of(10'000)) {
        const length<inch> strip = random.inches(1'000), width = random.inches(4);
        // On and beside the border too: lengths whose square is just made by a graduation.
        const length<inch> edge = random.inches(60);
        for (const length<inch>& l :
             {strip, edge * ratio_of(edge, width), edge * ratio_of(edge, width) + length_of<inch>({1, 1 << 20})}) {
            const length<inch> side = least_square_before_seams<inch>({.joined = l, .width = width}, "1/64"_in);
            const mpq_class s(numerator(side.value()), denominator(side.value())), step(1, 64);
            const mpq_class area = mpq_class(numerator(l.value()), denominator(l.value())) *
                                   mpq_class(numerator(width.value()), denominator(width.value()));
            CHECK(s * s >= area);
            CHECK((s - step) * (s - step) < area);
            CHECK(most_bias_before_seams<inch>({side, side}, width) >= l);
        }
    }
}

TEST_CASE("cloth by the rule of areas gives back at least the strip it was worked out for, and little more") {
    reference::sampler random(1895);
    while (random.another_of(5'000)) {
        const length<centimetre> strip = random.centimetres(2'000), width = random.centimetres(6);
        const length<centimetre> shortest = random.centimetres(20), across = random.centimetres(120) + 30_cm;
        const length<centimetre> along =
            least_cloth_before_seams<centimetre>({.joined = strip, .width = width}, across, shortest, "0.5"_cm);
        const length<centimetre> gives = most_bias_before_seams<centimetre>({across, along}, width, shortest);
        CHECK(gives >= strip);
        CHECK((gives - strip) * width < across * "0.5"_cm);
    }
}

namespace {

/// Strips laid on a piece one by one, each as far along the selvedge as it is wide there, then joined one by one.
struct laid_strips {
    std::int64_t count = 0;
    real joined = 0;
};
laid_strips laid(length<inch> across, length<inch> along, length<inch> width, length<inch> seam) {
    const real root = sqrt(real(2)), apart = exact(width) * root;
    laid_strips all;
    for (real end = apart; end <= exact(along) - 2 * exact(seam); end += apart) {
        ++all.count;
        all.joined += exact(across) * root - (all.count > 1 ? exact(seam) * 2 * root : real(0));
    }
    return all;
}

} // namespace

TEST_CASE("strips counted on a piece are as many, and as long, as strips laid on it one by one") {
    reference::sampler random(1897);
    int met = 0;
    while (random.another_of(3'000)) {
        const length<inch> seam = random.inches(2); // above 1 in as well as below
        const length<inch> across = random.inches(30) + seam * 2, along = across + random.inches(40);
        const length<inch> width = random.inches(4) + "1/2"_in;
        const laid_strips one_by_one = laid(across, along, width, seam);
        if (one_by_one.count == 0) {
            CHECK_THROWS_AS(bias_from<inch>({across, along}, {width, seam}, "1/8"_in), binding_error);
            continue;
        }
        ++met;
        const bias_strips<inch> s = bias_from<inch>({across, along}, {width, seam}, "1/8"_in);
        CHECK(s.count == one_by_one.count);
        CHECK(s.joins == one_by_one.count - 1);
        CHECK(exact(s.joined) * 8 == floor(one_by_one.joined * 8));
        CHECK(s.joined <= most_bias_before_seams<inch>({across, along}, width));
    }
    CHECK(met > 2'000);
}

TEST_CASE("the cloth or the square for a length gives it when its strips are laid, and a graduation less does not") {
    reference::sampler random(1899);
    int tight = 0;
    while (random.another_of(1'500)) {
        const length<inch> width = random.inches(3) + "1/2"_in, seam = random.inches(3),
                           across = random.inches(40) + 7_in;
        const bias_wanted<inch> wanted{.joined = random.inches(400), .width = width, .seam = seam};
        const length<inch> piece = cloth_for_bias(wanted, across, "1/8"_in);
        CHECK(laid(across, piece, width, seam).joined >= exact(wanted.joined));
        if (piece > across) {
            ++tight;
            CHECK(laid(across, piece - "1/8"_in, width, seam).joined < exact(wanted.joined));
        }
        const length<inch> square = square_for_bias(wanted, "1/8"_in), less = square - "1/8"_in;
        CHECK(laid(square, square, width, seam).joined >= exact(wanted.joined));
        CHECK((less <= seam * 2 || laid(less, less, width, seam).joined < exact(wanted.joined)));
        CHECK(square >= least_square_before_seams(wanted, "1/8"_in));
    }
    CHECK(tight > 500);
}

namespace {

mpq_class rational(const length<inch>& l) { return {numerator(l.value()), denominator(l.value())}; }

/// By whole numbers of any length: floor of (along - 2 seam) / (sqrt(2) width) strips, joined along a thread.
bool gives(const mpq_class& across, const mpq_class& along, const bias_wanted<inch>& w) {
    const mpq_class seam = rational(w.seam), wanted = rational(w.joined), base = along - 2 * seam;
    if (base <= 0)
        return false;
    const mpq_class square = base * base / (2 * rational(w.width) * rational(w.width));
    const mpz_class n = sqrt(mpz_class(square.get_num() / square.get_den()));
    const mpq_class straight = (across - 2 * seam) * n + 2 * seam;
    return n > 0 && 2 * straight * straight >= wanted * wanted;
}

} // namespace

TEST_CASE("what fits is found at any scale, of lengths and of graduations up to the largest") {
    const auto whole = [](std::int64_t n) { return length_of<inch>(fraction(n)); };
    constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();
    for (const std::int64_t step : {std::int64_t{1}, std::int64_t{1} << 40, std::int64_t{1} << 62, largest})
        for (const std::int64_t joined : {std::int64_t{130}, std::int64_t{1} << 40, std::int64_t{1} << 60})
            for (const length<inch>& seam : {"3/8"_in, "1 1/4"_in}) {
                const bias_wanted<inch> w{.joined = whole(joined), .width = "2 1/2"_in, .seam = seam};
                const length<inch> side = square_for_bias(w, whole(step)),
                                   along = cloth_for_bias(w, 45_in, whole(step));
                const mpq_class less = rational(side) - rational(whole(step)),
                                shorter = rational(along) - rational(whole(step));
                CHECK(gives(rational(side), rational(side), w));
                CHECK_FALSE(gives(less, less, w));
                CHECK(gives(45, rational(along), w));
                CHECK((shorter < 45 || !gives(45, shorter, w)));
            }
}

TEST_CASE("the longest strip of a square is its diagonal less the strip's width, rounded down rightly") {
    reference::sampler random(1901);
    while (random.another_of(5'000)) {
        const length<inch> square = random.inches(60) + 4_in, width = random.inches(4);
        CHECK(exact(longest_bias<inch>({.square = square, .width = width}, "1/8"_in)) * 8 ==
              floor((sqrt(real(2)) * exact(square) - exact(width)) * 8));
    }
}

TEST_CASE("what gives no bias says why") {
    const auto areas = [] { return most_bias_before_seams<centimetre>({10_cm, 4_cm}, 2_cm, 10_cm); };
    CHECK(message<binding_error>(areas) == "strips of 10 cm and more cannot be cut from a piece 10 cm by 4 cm");
    CHECK(facts<binding_error>(areas) == "no room: the shortest strip, given 10 cm");
    const auto diagonal = [] { return longest_bias<inch>({.square = 2_in, .width = 3_in}, "1/8"_in); };
    CHECK(message<binding_error>(diagonal) == "a square of 2 in gives no strip 3 in wide on its diagonal");
    CHECK(facts<binding_error>(diagonal) == "no room: the width of a strip, given 3 in");
    const auto counted = [](length<inch> across, length<inch> along, length<inch> width, length<inch> seam) {
        return [=] { return bias_from<inch>({across, along}, {width, seam}, "1/8"_in); };
    };
    CHECK(message<binding_error>(counted(20_in, 18_in, 2_in, "1/4"_in)) ==
          "the length of a piece for bias strips must be at least 20 in: it was 18 in");
    CHECK(facts<binding_error>(counted(20_in, 18_in, 2_in, "1/4"_in)) ==
          "too small: the length of a piece for bias strips, given 18 in, least 20 in");
    CHECK(message<binding_error>(counted(2_in, 3_in, 2_in, "1/4"_in)) ==
          "a piece 2 in by 3 in gives no bias strip 2 in wide");
    CHECK(facts<binding_error>(counted(2_in, 3_in, 2_in, "1/4"_in)) == "no room: the width of a strip, given 2 in");
    CHECK(facts<binding_error>(counted("1/2"_in, 1_in, 2_in, "1/4"_in)) ==
          "too small: the width of the cloth, given 1/2 in, least 1/2 in");
    CHECK(facts<binding_error>(counted(0_in, 1_in, 1_in, "1/4"_in)) ==
          "too small: the width of the cloth, given 0 in, least 0 in");
    CHECK(facts<binding_error>(counted(9_in, 9_in, 0_in, "1/4"_in)) ==
          "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(counted(9_in, 9_in, 1_in, 0_in)) ==
          "too small: the seam of a join, given 0 in, least 0 in");
    const auto cloth = [](length<inch> joined, length<inch> across, length<inch> width, length<inch> seam) {
        return [=] { return cloth_for_bias<inch>({joined, width, seam}, across, "1/8"_in); };
    };
    CHECK(message<binding_error>(cloth(20_in, "1/2"_in, 2_in, "1/4"_in)) ==
          "a cloth for bias strips must be wider than two seams of 1/4 in: it was 1/2 in");
    CHECK(facts<binding_error>(cloth(0_in, 9_in, 1_in, "1/4"_in)) ==
          "too small: the length of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(cloth(9_in, 9_in, 0_in, "1/4"_in)) ==
          "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(cloth(9_in, 9_in, 1_in, 0_in)) ==
          "too small: the seam of a join, given 0 in, least 0 in");
    const auto square = [](length<inch> joined, length<inch> width, length<inch> seam, length<inch> step) {
        return [=] { return square_for_bias<inch>({joined, width, seam}, step); };
    };
    CHECK(facts<binding_error>(square(0_in, 1_in, 1_in, 1_in)) ==
          "too small: the length of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(square(1_in, 0_in, 1_in, 1_in)) ==
          "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(square(1_in, 1_in, 0_in, 1_in)) ==
          "too small: the seam of a join, given 0 in, least 0 in");
    CHECK(facts<range_error>(square(1_in, 1_in, 1_in, 0_in)) == "too small: a graduation, given 0, least 0");
    // A length that no square of 64 bits gives ends in a refusal.
    CHECK_THROWS_AS(square(1_in, length_of<inch>(std::numeric_limits<std::int64_t>::max()), 1_in, 1_in)(),
                    overflow_error);
    const auto root = [](length<inch> joined, length<inch> width, length<inch> step) {
        return [=] { return least_square_before_seams<inch>({joined, width}, step); };
    };
    CHECK(facts<binding_error>(root(0_in, 1_in, 1_in)) == "too small: the length of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(root(1_in, 0_in, 1_in)) == "too small: the width of a strip, given 0 in, least 0 in");
    CHECK_THROWS_AS(root(1_in, 1_in, 0_in)(), range_error);
    // A cloth as long as it is wide would do here, and lies on any graduation; nothing is none.
    CHECK_THROWS_AS(cloth_for_bias<inch>({.joined = 1_in, .width = 1_in, .seam = "1/4"_in}, 40_in, 0_in), range_error);
    const auto by_area = [](length<inch> joined, length<inch> width, length<inch> across, length<inch> shortest) {
        return [=] { return least_cloth_before_seams<inch>({joined, width}, across, shortest, 1_in); };
    };
    CHECK(facts<binding_error>(by_area(0_in, 1_in, 1_in, 1_in)) ==
          "too small: the length of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(by_area(1_in, 0_in, 1_in, 1_in)) ==
          "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(by_area(1_in, 1_in, 0_in, 1_in)) ==
          "too small: the width of the cloth, given 0 in, least 0 in");
    CHECK(facts<binding_error>(by_area(1_in, 1_in, 1_in, "-1"_in)) ==
          "too small: the shortest strip, given -1 in, least 0 in");
    const auto most = [](length<inch> across, length<inch> along, length<inch> width, length<inch> shortest) {
        return [=] { return most_bias_before_seams<inch>({across, along}, width, shortest); };
    };
    CHECK(facts<binding_error>(most(0_in, 1_in, 1_in, 0_in)) ==
          "too small: the width of the cloth, given 0 in, least 0 in");
    CHECK(facts<binding_error>(most(1_in, 0_in, 1_in, 0_in)) ==
          "too small: the length of the cloth, given 0 in, least 0 in");
    CHECK(facts<binding_error>(most(1_in, 1_in, 0_in, 0_in)) ==
          "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>(most(1_in, 1_in, 1_in, "-1"_in)) ==
          "too small: the shortest strip, given -1 in, least 0 in");
    CHECK(facts<binding_error>([] { return along_selvedge(0_in, "1/8"_in, rounding::up); }) ==
          "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<binding_error>([] { return longest_bias<inch>({.square = 0_in, .width = 1_in}, "1/8"_in); }) ==
          "too small: the side of a square, given 0 in, least 0 in");
    CHECK(facts<binding_error>([] { return longest_bias<inch>({.square = 1_in, .width = 0_in}, "1/8"_in); }) ==
          "too small: the width of a strip, given 0 in, least 0 in");
}
