// Finishes: the allowances, folds and stitching of the trade against published instructions and a folded strip of paper.
#include "measure/against_gmp.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/finish.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string_view>
#include <vector>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

using place_in = place<cut_edge, inch>;

constexpr bool lines_are(std::span<const place_in> lines, std::initializer_list<length<inch>> expected) {
    return std::equal(lines.begin(), lines.end(), expected.begin(), expected.end(),
                      [](const place_in& p, const length<inch>& l) { return p.from_datum() == l; });
}

constexpr bool makes(const finish<inch>& f, length<inch> allowance, std::initializer_list<length<inch>> folds,
                     std::initializer_list<length<inch>> stitching) {
    return f.allowance() == allowance && lines_are(f.folds(), folds) && lines_are(f.stitching(), stitching);
}

// Every finish, with lengths of our own; what is expected is geometry: fold a strip, prick it, unfold it.
static_assert(makes(finish<inch>(), 0_in, {}, {}));
constexpr finish<inch> raw;
static_assert(raw.name() == "raw edge");
static_assert(raw.allowance_parts().empty());
static_assert(makes(seam("5/8"_in), "5/8"_in, {}, {"5/8"_in}));
static_assert(makes(single_turned_hem("3/4"_in, "1/8"_in), "3/4"_in, {"3/4"_in}, {"1 3/8"_in}));
static_assert(makes(single_turned_hem("3/4"_in), "3/4"_in, {"3/4"_in}, {"1 1/2"_in}));
static_assert(makes(double_turned_hem("3/8"_in, "3/4"_in, "1/16"_in), "1 1/8"_in, {"3/8"_in, "1 1/8"_in},
                    {"1 13/16"_in}));
static_assert(makes(heading(3_in), 3_in, {3_in}, {6_in}));
static_assert(makes(heading(3_in, "1/2"_in, "1/8"_in), "3 1/2"_in, {"1/2"_in, "3 1/2"_in}, {"6 3/8"_in}));
static_assert(makes(casing(2_in, "1 1/4"_in, "1/2"_in, "1/8"_in), "2 1/2"_in, {"1/2"_in, "2 1/2"_in},
                    {"4 3/8"_in, "3 1/8"_in}));
static_assert(makes(self_binding("5/8"_in, "1/8"_in), "1 1/4"_in, {"5/8"_in, "1 1/4"_in}, {"1 3/4"_in}));
static_assert(makes(separate_binding("3/8"_in), 0_in, {}, {"3/8"_in}));
static_assert(makes(french_seam("1/4"_in, "3/8"_in), "5/8"_in, {"1/4"_in}, {"1/4"_in, "5/8"_in}));
static_assert(makes(felled_over("3/8"_in, "1/4"_in, "1/16"_in), "5/8"_in, {"1/4"_in}, {"5/8"_in, "5/16"_in}));
static_assert(makes(felled_under("1/4"_in), "1/4"_in, {}, {"1/4"_in}));
static_assert(makes(lapped_over("1/2"_in, "1/8"_in), "1/2"_in, {"1/2"_in}, {"5/8"_in}));
static_assert(makes(lapped_over(0_in, "1/8"_in), 0_in, {}, {"1/8"_in}));
static_assert(makes(lapped_under("3/4"_in, "1/8"_in), "3/4"_in, {}, {"5/8"_in}));

// How far turned cloth lies inward of the finished edge.
static_assert(single_turned_hem("3/4"_in).reach() == "3/4"_in);
static_assert(double_turned_hem("3/8"_in, "3/4"_in).reach() == "3/4"_in);
static_assert(heading(3_in).reach() == 3_in);
static_assert(self_binding("5/8"_in).reach() == "5/8"_in);
static_assert(separate_binding("3/8"_in).reach() == "3/8"_in);
static_assert(lapped_over("1/2"_in).reach() == "1/2"_in);
static_assert(seam("5/8"_in).reach() == 0_in);
static_assert(french_seam("1/4"_in, "3/8"_in).reach() == 0_in);

// A lap that is not turned under may be sewn on its very edge.
static_assert(makes(lapped_over(0_in), 0_in, {}, {0_in}));

// Which rows join two pieces, and which hold one piece's own edge.
static_assert(seam("5/8"_in).joins());
static_assert(french_seam("1/4"_in, "3/8"_in).joins());
static_assert(felled_over("3/8"_in, "1/4"_in).joins());
static_assert(felled_under("1/4"_in).joins());
static_assert(lapped_over("1/2"_in).joins());
static_assert(lapped_over(0_in).joins());
static_assert(lapped_under("3/4"_in).joins());
static_assert(!double_turned_hem("3/8"_in, "3/4"_in).joins());
static_assert(!self_binding("5/8"_in).joins());
static_assert(!separate_binding("3/8"_in).joins());
static_assert(!finish<inch>().joins());

// The parts of an allowance, for the working: none of nothing.
constexpr auto flat_binding = self_binding("1/2"_in), thick_binding = self_binding("1/2"_in, 0_in, "1/8"_in);
static_assert(flat_binding.allowance_parts().size() == 2);
static_assert(thick_binding.allowance_parts().size() == 3);
constexpr auto turned_once = single_turned_hem(1_in), turned_twice = double_turned_hem("3/8"_in, "3/4"_in);
static_assert(turned_once.allowance_parts().size() == 1);
static_assert(turned_twice.allowance_parts()[0] == "3/8"_in);
static_assert(turned_twice.allowance_parts()[1] == "3/4"_in);

// US Army FM 10-16 (24 May 2000), General Fabric Repair, figures 8-2 and 8-3: a canvas hem of 1 in with 1/2 in turned
// first takes 1 1/2 in; it is stitched 1/8 in from the fold, which comes to lie 2 in from the first crease.
static_assert(makes(double_turned_hem("1/2"_in, 1_in, "1/8"_in), "1 1/2"_in, {"1/2"_in, "1 1/2"_in}, {"2 3/8"_in}));
// Univ. of Wisconsin, Construction of Clothing: a skirt takes its hem and 1/4 in for the turn. Texas A&M L-359: 2 1/2
// in for a straight skirt.
static_assert(double_turned_hem("1/4"_in, "2 1/2"_in).allowance() == "2 3/4"_in);
// Conover, A Complete Course in Dressmaking vol. 2 (1922): a narrow hem is turned 1/16 in, then 1/8 in.
static_assert(double_turned_hem("1/16"_in, "1/8"_in).allowance() == "3/16"_in);
// US Navy, Aviation Survival Equipmentman 2: folded edges of duck stitched 1/8 in from the fold, a second row 1/4 in
// on.
static_assert(makes(casing("3/4"_in, "1/4"_in, "1/2"_in, "1/8"_in), "1 1/4"_in, {"1/2"_in, "1 1/4"_in},
                    {"1 7/8"_in, "1 5/8"_in}));

// French seams. Conover vol. 1 (1922) p. 98: 1/8 in, then 1/4 in from the creased edge.
static_assert(french_seam("1/8"_in, "1/4"_in).allowance() == "3/8"_in);
// Oklahoma Cooperative Extension, 4-H Construction card 810: 3/8 in, trimmed close, then 1/4 in from the fold.
static_assert(french_seam("3/8"_in, "1/4"_in, "1/8"_in).allowance() == "5/8"_in);
// Swanson and Macbeth, Educational Needlecraft (1911): 1/6 in, then about 1/4 in.
static_assert(french_seam(length_of<inch>({1, 6}), "1/4"_in).allowance() == length_of<inch>({5, 12}));

// Felled seams. Burton and Burton, School Sewing Based on Home Problems, par. 138: both edges 3/8 in for tailored
// skirts, then one trimmed to 1/8 in and the wider turned over it.
static_assert(felled_over("1/4"_in, "1/8"_in).allowance() == "3/8"_in);
static_assert(felled_under("1/8"_in).allowance() == "1/8"_in);
// Hapgood, School Needlework (1893): for a straight fell one edge is set 1/8 in below the other before sewing: that is
// what turns under.
static_assert(felled_over("1/4"_in, "1/8"_in).allowance() - felled_under("1/4"_in).allowance() == "1/8"_in);

// Common practice: an outer layer 1 in beyond its inner layers, turned as two folds of 1/2 in.
static_assert(self_binding("1/2"_in).allowance() == 1_in);
// Common practice: garment seams of 5/8 in, craft seams of 1/2 in.
constexpr auto narrow_seam = seam("1/2"_in);
static_assert(seam("5/8"_in).allowance() == "5/8"_in);
static_assert(narrow_seam.stitching()[0] == at<cut_edge>("1/2"_in));

// Turn of cloth: nothing for nothing; at most half a circle on the middle of the cloth, no less than the square fold.
static_assert(turn_of_cloth(0_mm, 0_mm, 0.1_mm) == 0_mm);
static_assert(turn_of_cloth(6_mm, 1_mm, 0.01_mm) == 11_mm); // pi 7 / 2 = 10.9956 (geometry), rounded up
static_assert(turn_of_cloth(6_mm, 1_mm, 0.01_mm) >= 7_mm);
// It is taken between the hem's depth and the piece: half of it each side of the crease.
static_assert(makes(self_binding("1/2"_in, "1/16"_in, "1/8"_in), "1 1/8"_in, {"1/2"_in, "1 1/16"_in}, {"1 9/16"_in}));
static_assert(self_binding("1/2"_in, "1/16"_in, "1/8"_in).reach() == "1/2"_in);

// A finish of one's own.
constexpr auto own = finish<centimetre>("rolled edge")
                         .allows(0.5_cm)
                         .allows(0.25_cm)
                         .folds_at(0.5_cm)
                         .stitched_at(1_cm)
                         .reaches(0.25_cm);
static_assert(own.allowance() == 0.75_cm);
static_assert(own.folds().size() == 1);
static_assert(own.name() == "rolled edge");
static_assert(own.reach() == 0.25_cm);

/// A strip of paper, folded: where the marks of the flat strip come to lie.
fraction folded(fraction mark, std::span<const place_in> folds) {
    for (const place_in& fold : folds)
        if (mark < fold.from_datum().value())
            mark = 2 * fold.from_datum().value() - mark;
    return mark;
}

} // namespace

TEST_CASE("fold a strip: the finished edge lies at the allowance, and what was turned lies inward of it by the reach") {
    against_gmp::sampler any(11);
    while (any.another_of(3000)) {
        const fraction d = {any.between(1, 64), 16}, t = d * fraction(any.between(1, 8), 8),
                       inset = d * fraction(any.between(0, 8), 8);
        const auto l = [](fraction x) { return length_of<inch>(x); };
        for (const finish<inch>& f : {single_turned_hem(l(d), l(inset)), double_turned_hem(l(t), l(d), l(inset)),
                                      heading(l(d), l(t), l(inset)), self_binding(l(d), l(inset))}) {
            // The last crease is the finished edge: nothing of the strip lies outside it.
            const fraction allowance = f.allowance().value();
            REQUIRE(f.folds().back().from_datum().value() == allowance);
            fraction innermost = allowance;
            for (int mark = 0; mark <= 64; ++mark) {
                const fraction lies = folded(allowance * fraction(mark, 64), f.folds());
                REQUIRE(lies >= allowance);
                innermost = std::max(innermost, lies);
            }
            innermost = std::max(innermost, folded(f.folds()[0].from_datum().value(), f.folds()));
            REQUIRE(innermost == allowance + f.reach().value());
            // The stitching holds the hem `inset` from its inner edge: it goes through the piece and what is turned.
            REQUIRE(innermost - f.stitching()[0].from_datum().value() == inset);
        }
    }
}

TEST_CASE("fold a strip: rows of a fell and of a lap go through what is turned under") {
    against_gmp::sampler any(12);
    while (any.another_of(2000)) {
        const fraction under = {any.between(1, 32), 32}, inset = under * fraction(any.between(0, 8), 8);
        const auto l = [](fraction x) { return length_of<inch>(x); };
        for (const finish<inch>& f : {felled_over(l(under * 2), l(under), l(inset)), lapped_over(l(under), l(inset))}) {
            const fraction row = f.stitching().back().from_datum().value(), fold = f.folds()[0].from_datum().value();
            REQUIRE(row - fold == inset);
            // The cut edge, turned under, lies no nearer to the fold than the row.
            REQUIRE(folded(0, f.folds()) >= row);
        }
    }
}

TEST_CASE("turn of cloth grows with the stack, and lies between a square fold and a round one") {
    against_gmp::sampler any(13);
    const auto step = "0.01"_mm;
    auto last = 0_mm;
    for (const int i : any.cases(400)) {
        const auto stack = length_of<millimetre>({i, 10}), cloth = length_of<millimetre>({any.between(1, 20), 10});
        const auto turn = turn_of_cloth(stack, cloth, step);
        REQUIRE(turn > stack + cloth);
        REQUIRE(to_double(turn.value()) ==
                doctest::Approx(3.14159265358979 / 2 * to_double((stack + cloth).value())).epsilon(0.02));
        const auto same_cloth = turn_of_cloth(stack, 1_mm, step);
        REQUIRE(same_cloth >= last);
        last = same_cloth;
    }
}

TEST_CASE("finishes that cannot be made are refused with their numbers") {
    CHECK_THROWS_WITH_AS(seam(0_in), "a seam allowance must be more than zero: it was 0 in", finish_error);
    CHECK_THROWS_WITH_AS(seam(-("1/2"_in)), "a seam allowance must be more than zero: it was -1/2 in", finish_error);
    CHECK_THROWS_WITH_AS(single_turned_hem(0_cm), "the depth of a hem must be more than zero: it was 0 cm",
                         finish_error);
    CHECK_THROWS_WITH_AS(single_turned_hem(1_in, "1 1/8"_in),
                         "the inset of stitching must be from 0 to 1 in, so that it holds the hem: it was 1 1/8 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(single_turned_hem(1_in, -("1/8"_in)),
                         "the inset of stitching must be from 0 to 1 in, so that it holds the hem: it was -1/8 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(double_turned_hem(0_in, 1_in),
                         "the first turn of a double-turned hem must be more than zero: it was 0 in", finish_error);
    CHECK_THROWS_WITH_AS(double_turned_hem(2_in, 1_in),
                         "the first turn of a hem must be from 0 to 1 in, so that it lies inside the hem: it was 2 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(double_turned_hem("1/4"_in, 1_in, 0_in, -("1/8"_in)),
                         "the turn of cloth must be zero or more: it was -1/8 in", finish_error);
    CHECK_THROWS_AS(heading(-(1_in)), finish_error);
    CHECK_THROWS_AS(heading(1_in, 2_in), finish_error);
    CHECK_THROWS_WITH_AS(casing(2_in, 0_in), "the channel of a casing must be more than zero: it was 0 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(
        casing(2_in, "2 1/8"_in, "1/2"_in),
        "the channel of a casing must be from 0 to 2 in, the depth within its stitching: it was 2 1/8 in",
        finish_error);
    CHECK_THROWS_AS(casing(2_in, 2_in, "1/2"_in, "1/8"_in), finish_error);
    CHECK_THROWS_AS(self_binding(0_in), finish_error);
    CHECK_THROWS_WITH_AS(separate_binding(0_in), "the width of a binding must be more than zero: it was 0 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(french_seam(0_in, 1_in), "the first seam of a French seam must be more than zero: it was 0 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(french_seam("1/4"_in, 0_in),
                         "the second seam of a French seam must be more than zero: it was 0 in", finish_error);
    // The raw edge would show (geometry of the instructions above: 1/8 is less than 1/4).
    CHECK_THROWS_WITH_AS(
        french_seam("3/8"_in, "1/4"_in),
        "the second seam of a French seam must be wider than the edge it encloses, 3/8 in: it was 1/4 in",
        finish_error);
    CHECK_THROWS_AS(french_seam("1/4"_in, "1/4"_in), finish_error);
    CHECK_THROWS_WITH_AS(
        french_seam("1/4"_in, "1/2"_in, "3/8"_in),
        "the trimmed edge of a French seam must be from 0 to 1/4 in, the first seam's allowance: it was 3/8 in",
        finish_error);
    CHECK_THROWS_WITH_AS(felled_over(0_in, "1/8"_in), "the width of a fell must be more than zero: it was 0 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(felled_over("1/4"_in, 0_in), "the turn under a fell must be more than zero: it was 0 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(
        felled_over("1/4"_in, "3/8"_in),
        "the turn under a fell must be from 0 to 1/4 in, so that it lies inside the fell: it was 3/8 in", finish_error);
    CHECK_THROWS_AS(felled_over("1/4"_in, "1/8"_in, "3/16"_in), finish_error);
    CHECK_THROWS_WITH_AS(felled_under(0_in), "the allowance inside a fell must be more than zero: it was 0 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(lapped_over(-("1/2"_in)),
                         "the turn under a lapped seam must be more than zero: it was -1/2 in", finish_error);
    CHECK_THROWS_AS(lapped_over("1/2"_in, "5/8"_in), finish_error);
    CHECK_THROWS_WITH_AS(lapped_over(0_in, -("1/8"_in)), "the inset of stitching must be zero or more: it was -1/8 in",
                         finish_error);
    CHECK_THROWS_WITH_AS(lapped_under(0_in), "the lap of a seam must be more than zero: it was 0 in", finish_error);
    CHECK_THROWS_AS(lapped_under("1/2"_in, "5/8"_in), finish_error);
    CHECK_THROWS_WITH_AS(turn_of_cloth(-(1_mm), 1_mm, 1_mm),
                         "the thickness of a stack must be zero or more: it was -1 mm", finish_error);
    CHECK_THROWS_AS(turn_of_cloth(1_mm, 1_mm, 0_mm), range_error);
    finish<inch> full("four of each");
    for (int i = 1; i <= 4; ++i)
        full.allows(length_of<inch>(i)).folds_at(length_of<inch>(i)).stitched_at(length_of<inch>(i));
    CHECK(full.folds().size() == 4);
    CHECK_THROWS_WITH_AS(full.folds_at(5_in), "a finish has at most 4 parts, 4 folds and 4 rows of stitching",
                         finish_error);
    CHECK_THROWS_AS(full.allows(5_in), finish_error);
    CHECK_THROWS_AS(full.stitched_at(5_in), finish_error);
}

TEST_CASE("a fifth part is counted in the refusal") {
    try {
        finish<inch>("crowded").allows(1_in).allows(1_in).allows(1_in).allows(1_in).allows(1_in);
        FAIL_CHECK("five parts do not fit");
    } catch (const finish_error& refused) {
        REQUIRE(refused.facts().given);
        CHECK(refused.facts().given->numerator == 5);
        CHECK(refused.facts().most->numerator == 4);
    }
}
