// Bias strips: against a table and worked examples from print; roots rounded up against whole numbers of any length;
// strips that are counted against strips that are laid out one by one; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/bias.hpp>

#include <doctest/doctest.h>
#include <gmpxx.h>

#include <array>
#include <cmath>

using namespace turncloth;
using reference::exact;
using reference::message;
using reference::real;

namespace {

static_assert(square_for_bias(150_in, 2_in, "1/8"_in) == "17 3/8"_in); // the synopsis: sqrt(300) = 17.32...
static_assert(square_for_bias(72_in, 2_in, "1/8"_in) == 12_in);        // exactly
static_assert(bias_from_square(12_in, 2_in) == 72_in);

// NIMI (Government of India), Dress Making, Trade Practical, vol. 2, p. 220 (published): 5 m of 2.5 cm strip, none
// shorter than 10 cm, from cloth 86 cm wide: 1250 + 50.41 square centimetres, 15.12 cm, taken as 15.5 cm, the next
// half.
static_assert(cloth_for_bias(500_cm, "2.5"_cm, 10_cm, 86_cm, "0.5"_cm) == "15.5"_cm);
static_assert(cloth_for_bias(500_cm, "2.5"_cm, 10_cm, 86_cm, "0.01"_cm) == "15.12"_cm);
// The same page: 96 x 20 cm gives (1920 - 50.41) / 2 = 934.79 cm of 2 cm strip, with 1.4 for the root of 2 (it
// misprints "10 x 1.4 = 7.14" for 10 / 1.4). With the root itself the corners are 50 square centimetres: 935.
static_assert(bias_from_cloth(96_cm, 20_cm, 2_cm, 10_cm) == 935_cm);
static_assert(abs(bias_from_cloth(96_cm, 20_cm, 2_cm, 10_cm) - "934.79"_cm) < "0.25"_cm);
// The same page, a single strip on the diagonal of 65 cm: (65 - 2.14) x 1.4 = 88 cm. The width, 3 cm, is inferred from
// 2.14 = 3 / 1.4. With the root itself, 65 sqrt(2) - 3 = 88.92 cm.
static_assert(longest_bias(65_cm, 3_cm, "0.01"_cm) == "88.92"_cm);
static_assert(longest_bias(65_cm, 3_cm, 1_cm) == 88_cm);

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
        const length<inch> nearest = along_selvedge(row.width, "1/8"_in, side::nearest);
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
            1 - fraction(4, 3) * n / along_selvedge(length_of<inch>(n), "1/1000"_in, side::above).value();
        CHECK(short_by > fraction(55, 1000));
        CHECK(short_by < fraction(60, 1000));
    }
}

TEST_CASE("the side of a square for a length is rounded up, and by less than a graduation") {
    reference::sampler random(1893);
    for (int i = 0; i < 10'000; ++i) {
        const length<inch> strip = random.inches(1'000), width = random.inches(4);
        // On and beside the border too: lengths whose square is just made by a graduation.
        const length<inch> edge = random.inches(60);
        for (const length<inch>& l :
             {strip, edge * ratio(edge, width), edge * ratio(edge, width) + length_of<inch>({1, 1 << 20})}) {
            const length<inch> side = square_for_bias(l, width, "1/64"_in);
            const mpq_class s(numerator(side.value()), denominator(side.value())), step(1, 64);
            const mpq_class area = mpq_class(numerator(l.value()), denominator(l.value())) *
                                   mpq_class(numerator(width.value()), denominator(width.value()));
            CHECK(s * s >= area);
            CHECK((s - step) * (s - step) < area);
            CHECK(bias_from_square(side, width) >= l);
        }
    }
}

TEST_CASE("cloth for bias gives back at least the strip it was worked out for, and little more") {
    reference::sampler random(1895);
    for (int i = 0; i < 5'000; ++i) {
        const length<centimetre> strip = random.centimetres(2'000), width = random.centimetres(6);
        const length<centimetre> shortest = random.centimetres(20), across = random.centimetres(120) + 30_cm;
        const length<centimetre> piece = cloth_for_bias(strip, width, shortest, across, "0.5"_cm);
        CHECK(bias_from_cloth(across, piece, width, shortest) >= strip);
        CHECK((bias_from_cloth(across, piece, width, shortest) - strip) * width < across * "0.5"_cm);
    }
}

TEST_CASE("strips counted on a piece are as many, and as long, as strips marked along its selvedge one by one") {
    reference::sampler random(1897);
    int met = 0;
    for (int i = 0; i < 3'000; ++i) {
        const length<inch> across = random.inches(30) + 2_in, longer = across + random.inches(40);
        const length<inch> width = random.inches(4) + "1/2"_in, seam = "1/4"_in;
        const double w = to_double(width.value()), base = to_double((longer - seam * 2).value());
        std::int64_t marked = 0;
        for (double at = w * std::sqrt(2.0); at <= base; at += w * std::sqrt(2.0))
            ++marked;
        if (marked == 0) {
            CHECK_THROWS_AS(counted_bias(across, longer, width, seam, "1/8"_in), binding_error);
            continue;
        }
        ++met;
        const bias_strips<inch> s = counted_bias(across, longer, width, seam, "1/8"_in);
        CHECK(s.count == marked);
        CHECK(s.joins == marked - 1);
        const real one = sqrt(real(2)) * exact(across), lost = sqrt(real(2)) * 2 * exact(seam);
        CHECK(exact(s.joined) * 8 == floor((one * marked - lost * (marked - 1)) * 8));
        // No more than area over width, from which each of the seams takes its share.
        CHECK(exact(s.joined) <= exact(across) * exact(longer - seam * 2) / exact(width) + lost);
    }
    CHECK(met > 2'000);
}

TEST_CASE("cloth for counted strips is enough, and a graduation less would not be") {
    reference::sampler random(1899);
    int tight = 0;
    for (int i = 0; i < 3'000; ++i) {
        const length<inch> strip = random.inches(400), across = random.inches(40) + 4_in;
        const length<inch> width = random.inches(3) + "1/2"_in, seam = "1/4"_in;
        const length<inch> piece = cloth_for_counted_bias(strip, across, width, seam, "1/8"_in);
        // The root of the strip's length is itself rounded: ask with a fine graduation.
        CHECK(counted_bias(across, piece, width, seam, "1/100000"_in).joined >= strip - "1/100000"_in);
        const length<inch> shorter = piece - "1/8"_in;
        if (shorter >= across && shorter - seam * 2 > width * fraction(3, 2)) { // so that it gives one strip at least
            ++tight;
            CHECK(counted_bias(across, shorter, width, seam, "1/100000"_in).joined < strip);
        }
    }
    CHECK(tight > 1'000);
}

TEST_CASE("the longest strip of a square is its diagonal less the strip's width, rounded down rightly") {
    reference::sampler random(1901);
    for (int i = 0; i < 5'000; ++i) {
        const length<inch> square = random.inches(60) + 4_in, width = random.inches(4);
        CHECK(exact(longest_bias(square, width, "1/8"_in)) * 8 ==
              floor((sqrt(real(2)) * exact(square) - exact(width)) * 8));
    }
}

TEST_CASE("what gives no bias says why") {
    CHECK(message<binding_error>([] { return bias_from_cloth(10_cm, 4_cm, 2_cm, 10_cm); }) ==
          "strips of 10 cm and more cannot be cut from a piece 10 cm by 4 cm");
    CHECK(message<binding_error>([] { return longest_bias(2_in, 3_in, "1/8"_in); }) ==
          "a square of 2 in gives no strip 3 in wide on its diagonal");
    CHECK(
        message<binding_error>([] { return counted_bias(20_in, 18_in, 2_in, "1/4"_in, "1/8"_in); }) ==
        "a piece for bias strips must be at least as long as wide, and wider than two seams of 1/4 in: it was 20 in by "
        "18 in");
    CHECK(message<binding_error>([] { return counted_bias(2_in, 3_in, 2_in, "1/4"_in, "1/8"_in); }) ==
          "a piece 2 in by 3 in gives no bias strip 2 in wide");
    CHECK(message<binding_error>([] { return cloth_for_counted_bias(20_in, "1/2"_in, 2_in, "1/4"_in, "1/8"_in); }) ==
          "a cloth for bias strips must be wider than two seams of 1/4 in: it was 1/2 in");
    CHECK_THROWS_AS(bias_from_square(0_in, 1_in), binding_error);
    CHECK_THROWS_AS(bias_from_square(1_in, 0_in), binding_error);
    CHECK_THROWS_AS(square_for_bias(0_in, 1_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(square_for_bias(1_in, 0_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(square_for_bias(1_in, 1_in, 0_in), range_error);
    CHECK_THROWS_AS(cloth_for_bias(0_cm, 1_cm, 1_cm, 1_cm, 1_cm), binding_error);
    CHECK_THROWS_AS(cloth_for_bias(1_cm, 0_cm, 1_cm, 1_cm, 1_cm), binding_error);
    CHECK_THROWS_AS(cloth_for_bias(1_cm, 1_cm, "-1"_cm, 1_cm, 1_cm), binding_error);
    CHECK_THROWS_AS(cloth_for_bias(1_cm, 1_cm, 1_cm, 0_cm, 1_cm), binding_error);
    CHECK_THROWS_AS(bias_from_cloth(0_cm, 1_cm, 1_cm, 0_cm), binding_error);
    CHECK_THROWS_AS(bias_from_cloth(1_cm, 0_cm, 1_cm, 0_cm), binding_error);
    CHECK_THROWS_AS(bias_from_cloth(1_cm, 1_cm, 0_cm, 0_cm), binding_error);
    CHECK_THROWS_AS(bias_from_cloth(1_cm, 1_cm, 1_cm, "-1"_cm), binding_error);
    CHECK_THROWS_AS(along_selvedge(0_in, "1/8"_in, side::above), binding_error);
    CHECK_THROWS_AS(longest_bias(0_in, 1_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(longest_bias(1_in, 0_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(counted_bias(0_in, 1_in, 1_in, "1/4"_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(counted_bias(9_in, 9_in, 0_in, "1/4"_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(counted_bias(9_in, 9_in, 1_in, 0_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(cloth_for_counted_bias(0_in, 9_in, 1_in, "1/4"_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(cloth_for_counted_bias(9_in, 9_in, 0_in, "1/4"_in, "1/8"_in), binding_error);
    CHECK_THROWS_AS(cloth_for_counted_bias(9_in, 9_in, 1_in, 0_in, "1/8"_in), binding_error);
}
