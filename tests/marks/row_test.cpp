// Marks from division, folding and stepping: worked examples of the trade, a folded strip, GMP at every mark over
// random spans, and every refusal.
#include "../measure/against_gmp.hpp"
#include "../vectors.hpp"
#include <turncloth/marks/row.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/panel.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <vector>

using namespace turncloth;
using against_gmp::exact;
using against_gmp::sampler;

namespace {

struct strip_end {};

// Common practice: a 16 in panel is folded in half and in half again, and a zipper goes over each crease; one more goes
// 1 1/2 in below the top edge.
constexpr auto creases = halved<finished_edge>(16_in, foldings(4));
static_assert(foldings(4) == 2);
static_assert(creases.size() == 3);
static_assert(creases.step() == 4_in);
static_assert(creases[0] == at<finished_edge>(4_in));
static_assert(creases[1] == at<finished_edge>(8_in));
static_assert(creases[2] == at<finished_edge>(12_in));
static_assert(creases[0] - at<finished_edge>("1 1/2"_in) == "2 1/2"_in);

// Common practice: a backing cut 15 x 45 in with a heading of 4 in and 1 in hems on its three other sides finishes 13 x
// 40 in. From the heading's stitching to the bottom edge, marks every 7 in fall at 7, 14, 21, 28 and 35 in, with 1 in
// to spare.
constexpr auto hem = single_turned_hem(1_in);
constexpr auto backing = panel<inch>::from_cut(cut_size(15_in, 45_in), {heading(4_in), hem, hem, hem});
static_assert(backing.finished() == finished_size(13_in, 40_in));
constexpr auto bottom =
    backing.from_stitching(edge::top, backing.from_cut_edge(edge::top, at<finished_edge>(backing.finished().height())));
static_assert(bottom == at<stitched_line>(36_in));
constexpr auto pocket_lines = every<stitched_line>(7_in, bottom.from_datum());
static_assert(pocket_lines.marks.size() == 5);
static_assert(pocket_lines.to_spare == 1_in);
static_assert(pocket_lines.marks[0] == at<stitched_line>(7_in));
static_assert(pocket_lines.marks[1] == at<stitched_line>(14_in));
static_assert(pocket_lines.marks[2] == at<stitched_line>(21_in));
static_assert(pocket_lines.marks[3] == at<stitched_line>(28_in));
static_assert(pocket_lines.marks[4] == at<stitched_line>(35_in));

// Gathering dots every 1 1/2 in, the second row half of that further on (Home and School Sewing): 12 in take 8 and 7.
constexpr auto dots = every<strip_end>("1 1/2"_in, 12_in);
constexpr row<strip_end, inch> between(at<strip_end>("3/4"_in), "1 1/2"_in, 7);
static_assert(dots.marks.size() == 8);
static_assert(dots.to_spare == 0_in);
static_assert(dots.marks.back() == at<strip_end>(12_in));
static_assert(between[0] - at<strip_end>(0_in) == "3/4"_in);
static_assert(between[6] == at<strip_end>("9 3/4"_in));

static_assert(every<strip_end>(7_in, 6_in).marks.empty());
static_assert(every<strip_end>(7_in, 6_in).to_spare == 6_in);
static_assert(every<strip_end>("3 1/3"_in, 10_in).marks.size() == 3);

// By hand: a metre in seven, and in three with both ends.
static_assert(divided<strip_end>(1_m, 7)[4] == at<strip_end>(length_of<metre>({5, 7})));
constexpr auto thirds = divided_with_ends<strip_end>(10_cm, 3);
static_assert(thirds.size() == 4);
static_assert(thirds.front() == at<strip_end>(0_cm));
static_assert(thirds.back() == at<strip_end>(10_cm));
static_assert(thirds[1] == at<strip_end>(length_of<centimetre>({10, 3})));
static_assert(thirds.step() == "3 1/3"_cm);

// A row may run toward its datum, and may be empty.
constexpr row<strip_end, inch> backward(at<strip_end>(9_in), -2_in, 4);
static_assert(backward.back() == at<strip_end>(3_in));
static_assert(backward.step() == -2_in);
static_assert(row<strip_end, inch>(at<strip_end>(9_in), 2_in, 0).empty() && row<strip_end, inch>().size() == 0);

static_assert(foldings(1) == 0);
static_assert(foldings(2) == 1);
static_assert(foldings(64) == 6);
static_assert(foldings(std::int64_t{1} << 62) == 62);
static_assert(halved<strip_end>(16_in, 0).empty());
static_assert(halved<strip_end>(16_in, 1).size() == 1);
static_assert(halved<strip_end>(1_in, 62).step() == length_of<inch>({1, std::int64_t{1} << 62}));

/// The creases of a strip that is folded in half again and again: unfolded, each folding creases every part in its
/// middle.
std::vector<mpq_class> folded(const mpq_class& span, int times) {
    std::vector<mpq_class> at = {0, span};
    for (int fold = 0; fold < times; ++fold) {
        std::vector<mpq_class> finer;
        for (std::size_t k = 0; k + 1 < at.size(); ++k) {
            finer.push_back(at[k]);
            finer.emplace_back((at[k] + at[k + 1]) / 2);
        }
        finer.push_back(at.back());
        at = finer;
    }
    return {at.begin() + 1, at.end() - 1};
}

template <class Marks>
std::vector<mpq_class> exact_places(const Marks& marks) {
    std::vector<mpq_class> places;
    for (const auto& mark : marks)
        places.push_back(exact(mark.from_datum().value()));
    return places;
}

} // namespace

TEST_CASE("every mark of a division is exact") {
    sampler random(4101);
    while (random.another_of(2000)) {
        const fraction span = abs(random.awkward()) + fraction(1, random.between(1, 64));
        const std::int64_t parts = random.between(1, 200);
        const auto inner = divided<strip_end>(length_of<inch>(span), parts);
        const auto all = divided_with_ends<strip_end>(length_of<inch>(span), parts);
        std::vector<mpq_class> reference;
        for (std::int64_t k = 0; k <= parts; ++k)
            reference.emplace_back(exact(span) * k / parts);
        REQUIRE(exact_places(all) == reference);
        REQUIRE(exact_places(inner) == std::vector<mpq_class>(reference.begin() + 1, reference.end() - 1));
    }
}

TEST_CASE("folding in half makes the creases of a folded strip") {
    sampler random(4102);
    while (random.another_of(200)) {
        const fraction span = abs(random.on_a_ruler()) + 1;
        const int times = static_cast<int>(random.between(0, 8));
        const auto marks = halved<strip_end>(length_of<centimetre>(span), times);
        REQUIRE(exact_places(marks) == folded(exact(span), times));
        REQUIRE(foldings(marks.size() + 1) == times);
    }
}

TEST_CASE("marks at every step reach as far as the span and no farther") {
    sampler random(4103);
    int with_nothing_to_spare = 0;
    for (const int i : random.cases(3000)) {
        const fraction step = abs(random.on_a_ruler()) + fraction(1, 8);
        const fraction span = i % 5 == 0 ? step * random.between(1, 30) : abs(random.awkward()) + fraction(1, 7);
        const auto [marks, to_spare] = every<strip_end>(length_of<inch>(step), length_of<inch>(span));
        std::vector<mpq_class> reference;
        for (mpq_class at = exact(step); at <= exact(span); at += exact(step))
            reference.push_back(at);
        REQUIRE(exact_places(marks) == reference);
        REQUIRE(exact(to_spare.value()) == exact(span) - (reference.empty() ? mpq_class(0) : reference.back()));
        with_nothing_to_spare += to_spare.value() == 0;
    }
    CHECK(with_nothing_to_spare >= 600);
}

TEST_CASE("a mark that 64 bits do not hold is refused, and is never wrong") {
    sampler random(4104);
    int refused = 0, told = 0;
    while (random.another_of(20000)) {
        const fraction first = random.near_overflow(), step = random.mixed();
        const std::int64_t k = random.between(0, 1000000);
        const row<strip_end, inch> marks(at<strip_end>(length_of<inch>(first)), length_of<inch>(step), 1000001);
        const mpq_class reference = exact(first) + exact(step) * k;
        try {
            const fraction mark = marks[k].from_datum().value();
            REQUIRE(exact(mark) == reference);
            ++told;
        } catch (const overflow_error&) {
            REQUIRE((!against_gmp::fits(reference) || !against_gmp::fits(exact(step) * k)));
            ++refused;
        }
    }
    CHECK(refused > 1000);
    CHECK(told > 1000);
}

TEST_CASE("a division is as fine as 2^62 parts, and its marks can still be counted with both ends") {
    constexpr std::int64_t most = std::int64_t{1} << 62;
    CHECK(divided_with_ends<strip_end>(1_in, most).size() == most + 1);
    CHECK(divided_with_ends<strip_end>(1_in, most).back() == at<strip_end>(1_in));
    CHECK_THROWS_WITH_AS(divided_with_ends<strip_end>(1_in, std::numeric_limits<std::int64_t>::max()),
                         "the number of parts must be from 1 to 4611686018427387904: it was 9223372036854775807",
                         marks_error);
}

TEST_CASE("a span of nothing and a count that makes no sense are refused") {
    CHECK_THROWS_WITH_AS(divided<strip_end>(0_in, 4), "a span to divide must be more than zero: it was 0 in",
                         marks_error);
    CHECK_THROWS_WITH_AS(divided_with_ends<strip_end>(-"2 1/2"_cm, 4),
                         "a span to divide must be more than zero: it was -2.5 cm", marks_error);
    CHECK_THROWS_WITH_AS(divided<strip_end>(10_in, 0),
                         "the number of parts must be from 1 to 4611686018427387904: it was 0", marks_error);
    CHECK_THROWS_WITH_AS(divided<strip_end>(10_in, -3),
                         "the number of parts must be from 1 to 4611686018427387904: it was -3", marks_error);
    CHECK_THROWS_WITH_AS((row<strip_end, inch>(at<strip_end>(1_in), 1_in, -1)),
                         "the number of marks must be zero or more: it was -1", marks_error);
    CHECK_THROWS_WITH_AS(every<strip_end>(0_in, 10_in),
                         "the distance between marks must be more than zero: it was 0 in", marks_error);
    CHECK_THROWS_WITH_AS(every<strip_end>(-1_in, 10_in),
                         "the distance between marks must be more than zero: it was -1 in", marks_error);
    CHECK_THROWS_WITH_AS(every<strip_end>(1_in, 0_in), "a span to mark must be more than zero: it was 0 in",
                         marks_error);
}

TEST_CASE("what folding in half cannot make is refused") {
    for (const std::int64_t parts : {3, 5, 6, 7, 9, 12, 100})
        CHECK_THROWS_WITH_AS(
            foldings(parts),
            ("folding in half makes 2, 4, 8, ... parts, not " + std::to_string(parts) + ": measure these").c_str(),
            marks_error);
    CHECK_THROWS_WITH_AS(foldings(0), "the number of parts must be from 1 to 4611686018427387904: it was 0",
                         marks_error);
    CHECK_THROWS_WITH_AS(foldings(std::numeric_limits<std::int64_t>::min()),
                         "the number of parts must be from 1 to 4611686018427387904: it was -9223372036854775808",
                         marks_error);
    CHECK_THROWS_WITH_AS(halved<strip_end>(10_in, -1), "the number of foldings in half must be from 0 to 62: it was -1",
                         marks_error);
    CHECK_THROWS_WITH_AS(halved<strip_end>(10_in, 63), "the number of foldings in half must be from 0 to 62: it was 63",
                         marks_error);
    CHECK_THROWS_WITH_AS(halved<strip_end>(0_in, 2), "a span to divide must be more than zero: it was 0 in",
                         marks_error);
}

TEST_CASE("a refusal of marks is an error of the library") { CHECK_THROWS_AS(foldings(3), error); }

TEST_CASE("a mark past either end of a row is refused, with the marks that there are") {
    const auto quarters = divided<strip_end>(10_in, 4);
    CHECK(quarters[2] == at<strip_end>("7 1/2"_in));
    CHECK_THROWS_WITH_AS(quarters[3], "a mark of a row must be numbered from 0 to 2: it was 3", marks_error);
    CHECK_THROWS_WITH_AS(quarters[-1], "a mark of a row must be numbered from 0 to 2: it was -1", marks_error);
    CHECK_THROWS_WITH_AS(divided<strip_end>(10_in, 1)[0], "a mark of a row must be one of none: it was 0", marks_error);
    try {
        static_cast<void>(quarters[7]);
    } catch (const marks_error& refused) {
        CHECK(refused.facts().kind == fault::too_large);
        CHECK(refused.facts().given->numerator == 7);
        CHECK(refused.facts().most->numerator == 2);
    }
}
