// A long piece mapped onto a short one: worked examples of the trade, a strip eased by hand, GMP over random spans and
// places, and every refusal.
#include "../measure/against_gmp.hpp"
#include <turncloth/marks/mapping.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <vector>

using namespace turncloth;
using against_gmp::exact;
using against_gmp::sampler;

namespace {

template <class T>
constexpr auto on_long(T l) {
    return at<long_piece>(l);
}
template <class T>
constexpr auto on_short(T l) {
    return at<short_piece>(l);
}

// Common practice: film of 50 in marked every 10 in meets a backing of 35 in marked every 7 in. Fullness 10/7, 3 in
// over in each span.
constexpr even_mapping<inch> film(50_in, 35_in, 5);
static_assert(film.spans() == 5);
static_assert(film.fullness() == fraction(10, 7));
static_assert(film.surplus() == 15_in);
static_assert(film.fullness(0) == fraction(10, 7));
static_assert(film.fullness(4) == fraction(10, 7));
static_assert(film.surplus(0) == 3_in);
static_assert(film.surplus(4) == 3_in);
static_assert(film.mark_on_long(0) == on_long(0_in));
static_assert(film.mark_on_short(0) == on_short(0_in));
static_assert(film.mark_on_long(1) == on_long(10_in));
static_assert(film.mark_on_short(1) == on_short(7_in));
static_assert(film.mark_on_long(2) == on_long(20_in));
static_assert(film.mark_on_short(2) == on_short(14_in));
static_assert(film.mark_on_long(3) == on_long(30_in));
static_assert(film.mark_on_short(3) == on_short(21_in));
static_assert(film.mark_on_long(4) == on_long(40_in));
static_assert(film.mark_on_short(4) == on_short(28_in));
static_assert(film.mark_on_long(5) == on_long(50_in));
static_assert(film.mark_on_short(5) == on_short(35_in));
static_assert(film.onto_short(on_long(15_in)) == on_short("10 1/2"_in));
static_assert(film.onto_long(on_short("10 1/2"_in)) == on_long(15_in));

// Common practice: gathers are twice the width, mostly; halves, quarters and eighths of both edges are matched first.
constexpr even_mapping<centimetre> gathers(120_cm, 60_cm, 8);
static_assert(gathers.fullness() == 2);
static_assert(gathers.mark_on_long(3) == on_long(45_cm));
static_assert(gathers.mark_on_short(3) == on_short(22.5_cm));
static_assert(gathers.surplus(3) == 7.5_cm);

// Uneven spans, by hand. Long 6, 4, 10 on short 3, 4, 8: fullness 2, 1, 5/4; marks at 6, 10, 20 meet 3, 7, 15.
constexpr std::array uneven_long = {on_long(6_in), on_long(10_in), on_long(20_in)};
constexpr std::array uneven_short = {on_short(3_in), on_short(7_in), on_short(15_in)};
constexpr listed_mapping<inch> uneven(uneven_long, uneven_short);
static_assert(uneven.spans() == 3);
static_assert(uneven.fullness() == fraction(4, 3));
static_assert(uneven.surplus() == 5_in);
static_assert(uneven.fullness(0) == 2);
static_assert(uneven.fullness(1) == 1);
static_assert(uneven.fullness(2) == fraction(5, 4));
static_assert(uneven.surplus(0) == 3_in);
static_assert(uneven.surplus(1) == 0_in);
static_assert(uneven.surplus(2) == 2_in);
static_assert(uneven.mark_on_long(0) == on_long(0_in));
static_assert(uneven.mark_on_long(3) == on_long(20_in));
static_assert(uneven.mark_on_long(2) == on_long(10_in));
static_assert(uneven.mark_on_short(2) == on_short(7_in));
static_assert(uneven.onto_short(on_long(5_in)) == on_short("2 1/2"_in));
static_assert(uneven.onto_short(on_long(8_in)) == on_short(5_in));
static_assert(uneven.onto_short(on_long(15_in)) == on_short(11_in));
static_assert(uneven.onto_long(on_short(11_in)) == on_long(15_in));
static_assert(uneven.onto_long(on_short(5_in)) == on_long(8_in));

// A place on one piece is not a place on the other.
template <class Place>
concept lies_on_the_long_piece = requires(Place p) {
    film.onto_short(p);
};
static_assert(lies_on_the_long_piece<place<long_piece, inch>> && !lies_on_the_long_piece<place<short_piece, inch>>);
static_assert(!lies_on_the_long_piece<place<long_piece, centimetre>> && !lies_on_the_long_piece<length<inch>>);
template <class Place>
concept lies_on_the_short_piece = requires(Place p) {
    film.onto_long(p);
};
static_assert(lies_on_the_short_piece<place<short_piece, inch>> && !lies_on_the_short_piece<place<long_piece, inch>>);

struct sewn_spans {
    std::vector<length<inch>> longer, shorter;
};

sewn_spans random_spans(sampler& random) {
    sewn_spans spans;
    for (std::int64_t n = random.between(1, 12); n > 0; --n) {
        const fraction span = abs(random.on_a_ruler()) / 4 + fraction(1, random.between(1, 9));
        spans.shorter.push_back(length_of<inch>(span));
        spans.longer.push_back(
            length_of<inch>(random.bits() % 4 == 0 ? span : span + fraction(random.between(1, 90), 7)));
    }
    return spans;
}

/// The mark at the end of each span.
template <class Datum>
std::vector<place<Datum, inch>> marks_of(const std::vector<length<inch>>& spans) {
    std::vector<place<Datum, inch>> marks;
    marks.reserve(spans.size());
    length<inch> reached;
    for (const length<inch>& span : spans)
        marks.push_back(at<Datum>(reached += span));
    return marks;
}

/// The image of `place` where the spans of `from` are eased to those of `to`, span by span.
mpq_class image(const std::vector<length<inch>>& from, const std::vector<length<inch>>& to, mpq_class place) {
    mpq_class before = 0;
    for (std::size_t k = 0; k < from.size(); ++k) {
        const mpq_class span = exact(from[k].value()), onto = exact(to[k].value());
        if (place <= span)
            return before + onto * (place / span);
        place -= span;
        before += onto;
    }
    FAIL("the place is off the piece");
    return before;
}

length<inch> sum(const std::vector<length<inch>>& spans) {
    length<inch> total;
    for (const auto& span : spans)
        total += span;
    return total;
}

} // namespace

TEST_CASE("a place is carried over within its span, exactly, and back to where it was") {
    sampler random(4401);
    while (random.another_of(1000)) {
        const auto [longer, shorter] = random_spans(random);
        const auto long_marks = marks_of<long_piece>(longer);
        const auto short_marks = marks_of<short_piece>(shorter);
        const listed_mapping<inch> sewn(long_marks, short_marks);
        for (int j = 0; j < 10; ++j) {
            const fraction part(random.between(0, 64), 64);
            const auto a = on_long(sum(longer) * part);
            const auto b = on_short(sum(shorter) * part);
            REQUIRE(exact(sewn.onto_short(a).from_datum().value()) ==
                    image(longer, shorter, exact(a.from_datum().value())));
            REQUIRE(exact(sewn.onto_long(b).from_datum().value()) ==
                    image(shorter, longer, exact(b.from_datum().value())));
            REQUIRE(sewn.onto_long(sewn.onto_short(a)) == a);
            REQUIRE(sewn.onto_short(sewn.onto_long(b)) == b);
        }
    }
}

TEST_CASE("marks meet marks, and the spans' surplus and fullness are those of the lists") {
    sampler random(4402);
    while (random.another_of(1000)) {
        const auto [longer, shorter] = random_spans(random);
        const auto long_marks = marks_of<long_piece>(longer);
        const auto short_marks = marks_of<short_piece>(shorter);
        const listed_mapping<inch> sewn(long_marks, short_marks);
        REQUIRE(sewn.spans() == static_cast<std::int64_t>(longer.size()));
        mpq_class on_the_long = 0, on_the_short = 0;
        for (std::int64_t k = 0; k <= sewn.spans(); ++k) {
            REQUIRE(exact(sewn.mark_on_long(k).from_datum().value()) == on_the_long);
            REQUIRE(exact(sewn.mark_on_short(k).from_datum().value()) == on_the_short);
            REQUIRE(sewn.onto_short(sewn.mark_on_long(k)) == sewn.mark_on_short(k));
            REQUIRE(sewn.onto_long(sewn.mark_on_short(k)) == sewn.mark_on_long(k));
            if (k == sewn.spans())
                break;
            const mpq_class a = exact(longer[static_cast<std::size_t>(k)].value());
            const mpq_class b = exact(shorter[static_cast<std::size_t>(k)].value());
            REQUIRE(exact(sewn.fullness(k)) == a / b);
            REQUIRE(exact(sewn.surplus(k).value()) == a - b);
            on_the_long += a;
            on_the_short += b;
        }
        REQUIRE(exact(sewn.fullness()) == on_the_long / on_the_short);
        REQUIRE(exact(sewn.surplus().value()) == on_the_long - on_the_short);
    }
}

TEST_CASE("of two places on one piece, the farther is carried over farther") {
    sampler random(4403);
    while (random.another_of(300)) {
        const auto [longer, shorter] = random_spans(random);
        const auto long_marks = marks_of<long_piece>(longer);
        const auto short_marks = marks_of<short_piece>(shorter);
        const listed_mapping<inch> sewn(long_marks, short_marks);
        auto before_short = on_short(-1_in);
        auto before_long = on_long(-1_in);
        for (std::int64_t part = 0; part <= 50; ++part) {
            const auto onto_short = sewn.onto_short(on_long(sum(longer) * fraction(part, 50)));
            const auto onto_long = sewn.onto_long(on_short(sum(shorter) * fraction(part, 50)));
            REQUIRE(onto_short > before_short);
            REQUIRE(onto_long > before_long);
            before_short = onto_short;
            before_long = onto_long;
        }
        REQUIRE(before_short.from_datum() == sum(shorter));
        REQUIRE(before_long.from_datum() == sum(longer));
    }
}

TEST_CASE("an even mapping divides both pieces into equal spans") {
    sampler random(4404);
    while (random.another_of(1000)) {
        const fraction shorter = abs(random.on_a_ruler()) + fraction(1, 8);
        const fraction longer = shorter + fraction(random.between(0, 900), 8);
        const std::int64_t n = random.between(1, 24);
        const even_mapping<inch> sewn(length_of<inch>(longer), length_of<inch>(shorter), n);
        REQUIRE(sewn.spans() == n);
        for (std::int64_t k = 0; k <= n; ++k) {
            REQUIRE(exact(sewn.mark_on_long(k).from_datum().value()) == exact(longer) * k / n);
            REQUIRE(exact(sewn.mark_on_short(k).from_datum().value()) == exact(shorter) * k / n);
        }
        for (std::int64_t k = 0; k < n; ++k) {
            REQUIRE(exact(sewn.fullness(k)) == exact(longer) / exact(shorter));
            REQUIRE(exact(sewn.surplus(k).value()) == (exact(longer) - exact(shorter)) / n);
        }
        // Eased evenly all along, every place goes in proportion.
        const fraction part(random.between(0, 1000), 1000);
        REQUIRE(exact(sewn.onto_short(on_long(length_of<inch>(longer * part))).from_datum().value()) ==
                exact(shorter) * exact(part));
        REQUIRE(exact(sewn.onto_long(on_short(length_of<inch>(shorter * part))).from_datum().value()) ==
                exact(longer) * exact(part));
    }
}

TEST_CASE("a place off the piece is refused") {
    CHECK_THROWS_WITH_AS(film.onto_short(on_long("50 1/8"_in)),
                         "a place 50 1/8 in along is off the long piece, which is 50 in long", marks_error);
    CHECK_THROWS_WITH_AS(film.onto_short(on_long(-1_in)),
                         "a place -1 in along is off the long piece, which is 50 in long", marks_error);
    CHECK_THROWS_WITH_AS(film.onto_long(on_short(36_in)),
                         "a place 36 in along is off the short piece, which is 35 in long", marks_error);
    CHECK_THROWS_WITH_AS(uneven.onto_long(on_short(-"1/2"_in)),
                         "a place -1/2 in along is off the short piece, which is 15 in long", marks_error);
    CHECK(film.onto_short(on_long(50_in)) == on_short(35_in));
    CHECK(film.onto_long(on_short(0_in)) == on_long(0_in));
}

TEST_CASE("a mark or a span that does not exist is refused") {
    const std::string marks = "a mark of a mapping must be numbered from 0 to ";
    const std::string spans = "a span of a mapping must be numbered from 0 to ";
    CHECK_THROWS_WITH_AS(film.mark_on_long(6), "a mark of a row must be numbered from 0 to 5: it was 6", marks_error);
    CHECK_THROWS_WITH_AS(film.mark_on_short(-1), "a mark of a row must be numbered from 0 to 5: it was -1",
                         marks_error);
    CHECK_THROWS_WITH_AS(uneven.mark_on_long(4), (marks + "3: it was 4").c_str(), marks_error);
    CHECK_THROWS_WITH_AS(uneven.mark_on_short(-1), (marks + "3: it was -1").c_str(), marks_error);
    CHECK_THROWS_WITH_AS(film.fullness(5), (spans + "4: it was 5").c_str(), marks_error);
    CHECK_THROWS_WITH_AS(film.surplus(-1), (spans + "4: it was -1").c_str(), marks_error);
    CHECK_THROWS_WITH_AS(uneven.surplus(3), (spans + "2: it was 3").c_str(), marks_error);
    CHECK_THROWS_WITH_AS(uneven.fullness(-1), (spans + "2: it was -1").c_str(), marks_error);
}

TEST_CASE("pieces that cannot be sewn mark to mark are refused") {
    CHECK_THROWS_WITH_AS(even_mapping<inch>(34_in, 35_in, 5),
                         "the long piece must not be shorter than the short one: they were 34 in and 35 in",
                         marks_error);
    CHECK_THROWS_WITH_AS(even_mapping<inch>(34_in, 30_in, 0),
                         "the number of parts must be from 1 to 4611686018427387904: it was 0", marks_error);
    CHECK_THROWS_WITH_AS(even_mapping<inch>(34_in, 0_in, 2), "a span to divide must be more than zero: it was 0 in",
                         marks_error);
    CHECK(even_mapping<inch>(35_in, 35_in, 5).fullness() == 1);
}

TEST_CASE("lists of marks that do not match are refused") {
    using spans = std::vector<length<inch>>;
    const spans two = {4_in, 5_in}, three = {1_in, 2_in, 3_in}, none, with_nothing = {4_in, 0_in},
                longer = {4_in, 6_in}, wider = {"4 1/2"_in, 5_in};
    const auto sewn = [](const spans& on_the_long, const spans& on_the_short) {
        const auto long_marks = marks_of<long_piece>(on_the_long);
        const auto short_marks = marks_of<short_piece>(on_the_short);
        return listed_mapping<inch>(long_marks, short_marks).surplus();
    };
    CHECK_THROWS_WITH_AS(sewn(two, three), "both pieces need the same number of marks, at least one: they had 2 and 3",
                         marks_error);
    CHECK_THROWS_WITH_AS(sewn(none, none), "both pieces need the same number of marks, at least one: they had 0 and 0",
                         marks_error);
    CHECK_THROWS_WITH_AS(sewn(two, with_nothing), "a span of the short piece must be more than zero: it was 0 in",
                         marks_error);
    CHECK_THROWS_WITH_AS(sewn(two, longer), "span 2 of the long piece is 5 in, less than the 6 in it is sewn to",
                         marks_error);
    CHECK_THROWS_WITH_AS(sewn(two, wider), "span 1 of the long piece is 4 in, less than the 4 1/2 in it is sewn to",
                         marks_error);
    CHECK_THROWS_WITH_AS(sewn(with_nothing, two), "span 2 of the long piece is 0 in, less than the 5 in it is sewn to",
                         marks_error);
    CHECK(sewn(two, two) == 0_in);
}

// Added up anew for each mark, the lists would take a hundred thousand times a hundred thousand additions.
TEST_CASE("a hundred thousand marks are there at once") {
    const std::vector<length<inch>> alike(100'000, 1_in);
    const auto long_marks = marks_of<long_piece>(alike);
    const auto short_marks = marks_of<short_piece>(alike);
    const listed_mapping<inch> sewn(long_marks, short_marks);
    for (std::int64_t k = 0; k <= sewn.spans(); ++k)
        REQUIRE(sewn.onto_short(sewn.mark_on_long(k)).from_datum() == length_of<inch>(k));
}
