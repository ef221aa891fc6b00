// Binding strips: widths and lengths at compile time, against published figures, and by folding a strip round a
// corner; enough strip, and no piece too many, for any size; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/binding.hpp>

#include <doctest/doctest.h>

#include <array>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// The New Dressmaker (1921), p. 131 (published): twice the finished width and 3/8 in on each edge; 1/4 in finished from
// 1 1/4 in, 1/2 in from 1 3/4 in.
static_assert(single_fold("1/4"_in, {.seam = "3/8"_in}).value() == "1 1/4"_in);
static_assert(single_fold("1/2"_in, {.seam = "3/8"_in}).value() == "1 3/4"_in);
// Common practice: 4 times the finished width for one layer and 6 times for two, with the seam as wide as the binding.
static_assert(single_fold("1/2"_in, {.seam = "1/2"_in}).value() == 2_in);
static_assert(double_fold("1/2"_in, {.seam = "1/2"_in}).value() == 3_in);
static_assert(single_fold(1_cm, {.seam = 1_cm}).value() == 4_cm);
static_assert(double_fold(1_cm, {.seam = 1_cm}).value() == 6_cm);
// Derived, 2 (2 W + s): 1/4 in finished with a seam of 1/4 in from 1 1/2 in, 1/2 from 2 1/2, 3/4 from 3 1/2.
static_assert(double_fold("1/4"_in, {.seam = "1/4"_in}).value() == "1 1/2"_in);
static_assert(double_fold("1/2"_in, {.seam = "1/4"_in}).value() == "2 1/2"_in);
static_assert(double_fold("3/4"_in, {.seam = "1/4"_in}).value() == "3 1/2"_in);
// A trade book on light packs (published): a loop strip cut 3 1/2 in, its edges to the middle and folded again, is 7/8 in.
static_assert(finished_width_of_single("3 1/2"_in, {.seam = "7/8"_in}) == "7/8"_in);
// Round a thickness each layer goes once.
static_assert(double_fold("3/8"_in, {.seam = "3/8"_in, .turn = "1/8"_in}).value() == "2 1/2"_in); // the synopsis
static_assert(single_fold("3/8"_in, {.seam = "3/8"_in, .turn = "1/8"_in}).value() == "1 5/8"_in);
static_assert(finished_width_of_double("2 1/2"_in, {.seam = "1/4"_in}) == "1/2"_in);
static_assert(finished_width_of_single(4_cm, {.seam = 1_cm}) == 1_cm);

// Round a mat 15 x 24 in with 1/8 in for each corner's fold and 6 in to join the ends.
static_assert(binding_length(finished_size(15_in, 24_in), {.fold = "1/8"_in, .overlap = 6_in}).value() == "84 1/2"_in);
static_assert(binding_length(78_in, 0, {.fold = {}, .overlap = {}}).value() == 78_in);
// 84 1/2 in of a 2 in strip from cloth 42 in wide, joined on the diagonal: 42 + 40 is short of it, so three.
static_assert(strips_across("84 1/2"_in, {.width = 2_in, .usable = 42_in, .join = 2_in}).count == 3);
static_assert(strips_across("84 1/2"_in, {.width = 2_in, .usable = 42_in, .join = 2_in}).cloth == 6_in);
static_assert(strips_across("84 1/2"_in, {.width = 2_in, .usable = 42_in, .join = 2_in}).left_over == "37 1/2"_in);
static_assert(strips_across(82_in, {.width = 2_in, .usable = 42_in, .join = 2_in}).count == 2);
static_assert(strips_across(82_in, {.width = 2_in, .usable = 42_in, .join = 2_in}).left_over == 0_in);
static_assert(strips_across(42_in, {.width = 2_in, .usable = 42_in, .join = 2_in}).joins == 0);
// Even where each join takes nearly all of a piece, one piece is not called two.
static_assert(strips_across("1/2"_in, {.width = 2_in, .usable = 4_in, .join = 3_in}).count == 1);

/// A place on a strip that lies along the x axis with its cut edge up, as the strip is folded round a corner at the
/// origin: reflected in the diagonal y = x, so that it turns up along the y axis; then in the edge y = 0, so that it
/// comes down.
struct spot {
    fraction x, y;
};
constexpr spot in_the_diagonal(spot p) { return {p.y, p.x}; }
constexpr spot in_the_edge(spot p) { return {p.x, -p.y}; }

} // namespace

TEST_CASE("a strip folded to a mitre uses the edge's own length at every corner") {
    // The cut edge comes along y = 0 from the left and passes the corner at 0; what lies u beyond the corner must end
    // up u down the other edge, x = 0, with nothing lost and nothing over. The strip's other edge, b below, ends up b
    // inward.
    for (int u = 0; u <= 40; ++u)
        for (int b = 0; b <= 10; ++b) {
            const spot laid = in_the_edge(in_the_diagonal({fraction(u, 4), fraction(-b, 4)}));
            CHECK(laid.x == fraction(-b, 4));
            CHECK(laid.y == fraction(-u, 4));
        }
}

TEST_CASE("the width that is cut gives back the width that shows, with any seam and thickness") {
    reference::sampler random(1881);
    while (random.another_of(2'000)) {
        const length<inch> width = random.inches(2), seam = random.inches(1), turn = random.inches(1) - "1/64"_in;
        CHECK(finished_width_of_single(single_fold(width, {.seam = seam, .turn = turn}).value(),
                                       {.seam = seam, .turn = turn}) == width);
        CHECK(finished_width_of_double(double_fold(width, {.seam = seam, .turn = turn}).value(),
                                       {.seam = seam, .turn = turn}) == width);
        // Laid out, from the first cut edge: seam, face, edge, face; one layer has its other seam turned under there,
        // two layers come back the same way.
        CHECK(single_fold(width, {.seam = seam, .turn = turn}).value() == seam + width + turn + width + seam);
        CHECK(double_fold(width, {.seam = seam, .turn = turn}).value() == (seam + width + turn + width) * 2);
    }
    CHECK(to_text(double_fold("3/8"_in, {.seam = "1/4"_in, .turn = "1/8"_in})) ==
          "2 1/4 in = 4 x 3/8 in finished + 2 x 1/4 in seam + 2 x 1/8 in turn of cloth");
}

TEST_CASE("a binding's working names what there is and leaves out what there is not") {
    CHECK(to_text(binding_length(finished_size(15_in, 24_in), {.fold = "1/8"_in, .overlap = 6_in})) ==
          "84 1/2 in = 78 in edge + 4 x 1/8 in corner folds + 6 in overlap of the ends");
    CHECK(to_text(binding_length(78_in, 4, {.fold = {}, .overlap = {}})) == "78 in = 78 in edge");
    CHECK(to_text(binding_length(78_in, 0, {.fold = "1/8"_in, .overlap = 6_in})) ==
          "84 in = 78 in edge + 6 in overlap of the ends");
    CHECK(to_text(single_fold("1/2"_in, {.seam = "3/8"_in})) == "1 3/4 in = 2 x 1/2 in finished + 2 x 3/8 in seam");
    CHECK(to_text(double_fold("1/2"_in, {.seam = "3/8"_in})) == "2 3/4 in = 4 x 1/2 in finished + 2 x 3/8 in seam");
}

TEST_CASE("strips across the cloth are enough, and one less would not be, for any join") {
    reference::sampler random(1889);
    for (const int i : random.cases(5'000)) {
        const length<inch> needed = random.inches(400), usable = random.inches(50) + 4_in, width = random.inches(3);
        const length<inch> loss = i % 3 == 0 ? length<inch>() : random.inches(3);
        const strips<inch> s = strips_across(needed, {.width = width, .usable = usable, .join = loss});
        CHECK(s.count >= 1);
        CHECK(s.joins == s.count - 1);
        length<inch> joined = usable; // sewn on one by one
        for (std::int64_t k = 1; k < s.count; ++k)
            joined += usable - loss;
        CHECK(joined == s.joined.value());
        CHECK(joined >= needed);
        CHECK(s.left_over == joined - needed);
        if (s.count > 1)
            CHECK(joined - (usable - loss) < needed);
        CHECK(s.cloth == width * s.count);
    }
}

TEST_CASE("what cannot be bound says why") {
    CHECK(message<binding_error>([] { return single_fold(0_in, {.seam = "1/4"_in}); }) ==
          "the finished width of a binding must be more than zero: it was 0 in");
    CHECK(facts<binding_error>([&] { return single_fold(1_in, {.seam = 0_in}); }) ==
          "too small: the seam of a binding, given 0 in, least 0 in");
    CHECK(facts<binding_error>([&] { return double_fold(1_in, {.seam = "1/4"_in, .turn = "-1/8"_in}); }) ==
          "too small: the turn of cloth of a binding, given -1/8 in, least 0 in");
    CHECK(message<binding_error>([] { return finished_width_of_double(1_in, {.seam = "1/2"_in}); }) ==
          "a strip cut 1 in wide is taken up by its seams and turn, 1 in");
    CHECK(facts<binding_error>([&] { return finished_width_of_single(1_in, {.seam = "1/2"_in}); }) ==
          "too small: the cut width of a strip, given 1 in, least 1 in");
    CHECK(message<binding_error>([] { return binding_length(78_in, -1, {.fold = {}, .overlap = {}}); }) ==
          "the number of corners must be zero or more: it was -1");
    CHECK(facts<binding_error>([&] { return binding_length(0_in, 4, {.fold = {}, .overlap = {}}); }) ==
          "too small: the edge to bind, given 0 in, least 0 in");
    CHECK(facts<binding_error>([&] { return binding_length(78_in, 4, {.fold = "-1/8"_in, .overlap = {}}); }) ==
          "too small: the fold at a corner, given -1/8 in, least 0 in");
    CHECK(facts<binding_error>([&] { return binding_length(78_in, 4, {.fold = {}, .overlap = "-1"_in}); }) ==
          "too small: the overlap of a binding's ends, given -1 in, least 0 in");
    const auto across = [](length<inch> needed, length<inch> width, length<inch> usable, length<inch> join) {
        return [=] { return strips_across(needed, {.width = width, .usable = usable, .join = join}); };
    };
    CHECK(facts<joining_error>(across(90_in, 2_in, 4_in, 4_in)) == "no room: what a join takes, given 4 in, most 4 in");
    CHECK(facts<joining_error>(across(0_in, 2_in, 42_in, 2_in)) ==
          "too small: the length to make up, given 0 in, least 0 in");
    CHECK(facts<binding_error>(across(90_in, 0_in, 42_in, 2_in)) ==
          "too small: the width of a strip, given 0 in, least 0 in");
    CHECK(facts<joining_error>(across(90_in, 2_in, 0_in, 2_in)) ==
          "too small: a width of cloth, given 0 in, least 0 in");
    CHECK(facts<joining_error>(across(90_in, 2_in, 42_in, "-1"_in)) ==
          "too small: what a join takes, given -1 in, least 0 in");
}
