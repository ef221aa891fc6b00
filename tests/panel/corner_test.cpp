// Mitred and stacked corners against published needlework instructions, geometry and GMP.
// That folding along these lines makes the corner is shown in made_up_test.cpp.
#include "measure/against_gmp.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/corner.hpp>

#include <doctest/doctest.h>

#include <cmath>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

using legs = corner_legs<inch>;

constexpr auto handkerchief = double_turned_hem("1/4"_in, 1_in);
constexpr mitre<inch> handkerchief_mitre(handkerchief, handkerchief);

// Hapgood, School Needlework (1893), "To mitre the corners": a 1 in hem with a 1/4 in turn is creased 1/4 and 1 1/4 in
// from the raw edge; where the hem creases meet is the corner, and the diagonal crease is 1/4 in outside it, which is
// the line to cut on. (Patton, Home and School Sewing XV, has the same.)
static_assert(handkerchief.folds()[0].from_datum() == "1/4"_in);
static_assert(handkerchief.folds()[1].from_datum() == "1 1/4"_in);
static_assert(handkerchief_mitre.finished_corner() == point_of<inch>({5, 4}, {5, 4}));
// Geometry: a leg along each raw edge of 2 (t + h) - sqrt(2) s = 2.5 - 0.35355.
static_assert(handkerchief_mitre.crease_legs() == legs{"2 1/2"_in, "2 1/2"_in});
static_assert(handkerchief_mitre.trim("1/4"_in, "0.0001"_in, rounding::nearest) == legs{2.1464_in, 2.1464_in});
// Woolman, A Sewing Course for Teachers, No. 5: the cut 1/8 in outside the meeting of the hem creases.
static_assert(handkerchief_mitre.trim("1/8"_in, "0.0001"_in, rounding::nearest) == legs{2.3232_in, 2.3232_in});
static_assert(handkerchief_mitre.trim(0_in, "0.0001"_in) == legs{2.5_in, 2.5_in});
// To be marked with a ruler: down to the next 1/16, so that no less than the allowance is left.
static_assert(handkerchief_mitre.trim("1/4"_in, "1/16"_in) == legs{"2 1/8"_in, "2 1/8"_in});
static_assert(handkerchief_mitre.trim("1/4"_in, "1/16"_in, rounding::up) == legs{"2 3/16"_in, "2 3/16"_in});

// Cut on the crease itself, a triangle of two sides of 2 1/2 in falls off.
static_assert(bulk_removed(handkerchief_mitre.crease_legs()) == "3 1/8"_in * 1_in);

// Self-bound: two turns of w leave the edges 4 w from the corner (geometry), whatever the size.
constexpr mitre<inch> bound(self_binding("1/2"_in), self_binding("1/2"_in));
static_assert(bound.crease_legs() == legs{2_in, 2_in});
static_assert(bound.finished_corner() == point_of<inch>(1, 1));
static_assert(bound.hem_corner() == point_of<inch>({3, 2}, {3, 2}));

// Unequal hems, 1 and 2 in deep, turned once: the folded hems meet from (1, 2) to (2, 4), so the crease runs through
// (0, 4), (1, 2) and (2, 0).
constexpr mitre<inch> unequal(single_turned_hem(1_in), single_turned_hem(2_in));
static_assert(unequal.finished_corner() == point_of<inch>(1, 2));
static_assert(unequal.hem_corner() == point_of<inch>(2, 4));
static_assert(unequal.crease_legs() == legs{2_in, 4_in});
// Parallel to it at distance s: shorter by s sqrt(1 + 1/4) and s sqrt(1 + 4). For s = 1/2: 0.559017, 1.118034.
static_assert(unequal.trim("1/2"_in, "0.000001"_in, rounding::nearest) == legs{1.440983_in, 2.881966_in});

// A single-turned hem's seam lies on the crease all the way.
static_assert(unequal.seam_on_upright()[0] == point_of<inch>(1, 2));
static_assert(unequal.seam_on_upright()[1] == point_of<inch>(0, 4));
static_assert(unequal.seam_on_level()[1] == point_of<inch>(2, 0));

// NIMI, Dress Making: Trade Practical vol. 2: equal hems overlap in a square, unequal hems in a rectangle.
constexpr stacked_corner<inch> stack(double_turned_hem("1/4"_in, 1_in), single_turned_hem("3/4"_in));
static_assert(stack.overlap() == std::pair(1_in, "3/4"_in));
static_assert(stack.layers() == 6);
static_assert(stack.underlay("1/4"_in) == std::pair(1_in, "1/2"_in));

// Home and School Sewing XV: mitred strips, both ends cut at 45 degrees, 1/4 in seams. Geometry: a long raw edge of
// X + 2 a (1 + sqrt 2), a short one of X - 2 w + 2 a (sqrt 2 - 1).
constexpr mitred_border<inch> frame(20_in, 2_in, "1/4"_in);
static_assert(frame.cut_width() == "2 1/2"_in);
static_assert(frame.squared_length() == "20 1/2"_in);
static_assert(frame.long_edge("0.0001"_in, rounding::nearest) == 21.2071_in);
static_assert(frame.short_edge("0.0001"_in, rounding::nearest) == 16.2071_in);
// At 45 degrees the two raw edges differ by twice the cut width.
static_assert(frame.long_edge("0.0001"_in, rounding::nearest) - frame.short_edge("0.0001"_in, rounding::nearest) ==
              5_in);
static_assert(mitred_border(20_in, 2_in, 0_in).long_edge("1/8"_in) == 20_in);

mpf_class exact_float(fraction x) { return mpf_class(mpq_class(numerator(x), denominator(x)), 512); }

} // namespace

TEST_CASE("published mitres: the perpendicular distance from the corner to the cut is 1.5178 in for a 1 in hem") {
    // Geometry of Hapgood's corner: sqrt(2) (t + h) - s.
    const legs cut = handkerchief_mitre.trim("1/4"_in, "0.000001"_in, rounding::nearest);
    CHECK(to_double(cut.along_level.value()) / std::sqrt(2.0) == doctest::Approx(1.5178).epsilon(1e-4));
}

TEST_CASE("the legs of a trim are rounded correctly: GMP decides which multiple lies below, above and nearest") {
    against_gmp::sampler any(5);

    int checked = 0;
    while (any.another_of(3000)) {
        const auto hem = [&] {
            const fraction depth = {any.between(1, 64), any.between(1, 4) * 4};
            return double_turned_hem(length_of<inch>(depth * fraction(any.between(1, 8), 8)), length_of<inch>(depth));
        };
        const auto upright = hem(), level = hem();
        const mitre<inch> m(upright, level);
        const fraction s = {any.between(0, 16), 64}, step = {1, any.between(1, 100)};
        const fraction d1 = upright.reach().value(), d2 = level.reach().value();
        mpf_class leg = exact_float(m.crease_legs().along_level.value());
        mpf_class root(0, 512);
        mpf_class square = exact_float(s) * exact_float(s) *
                           (1 + exact_float(d1) * exact_float(d1) / (exact_float(d2) * exact_float(d2)));
        mpf_sqrt(root.get_mpf_t(), square.get_mpf_t());
        leg -= root;
        const auto check = [&](rounding wanted, const char* name) {
            fraction found;
            try {
                found = m.trim(length_of<inch>(s), length_of<inch>(step), wanted).along_level.value();
            } catch (const corner_error&) {
                return;
            }
            CAPTURE(name);
            const mpf_class slack("1e-100", 512), f = exact_float(found), one = exact_float(step);
            // How far the leg lies above what was found: at least, at most.
            const mpf_class above = leg - f, half = one / 2, none = 0;
            REQUIRE(above >= (wanted == rounding::down ? none : wanted == rounding::up ? -one : -half) - slack);
            REQUIRE(above <= (wanted == rounding::down ? one : wanted == rounding::up ? none : half) + slack);
            REQUIRE(is_whole(found / step));
            ++checked;
        };
        check(rounding::down, "below");
        check(rounding::up, "above");
        check(rounding::nearest, "nearest");
    }
    CHECK(checked > 5000);
}

TEST_CASE("the crease passes through the finished corner and is where both hems end when unfolded") {
    against_gmp::sampler any(6);
    while (any.another_of(3000)) {
        const auto some = [&] { return length_of<centimetre>({any.between(1, 80), 10}); };
        const auto d1 = some(), d2 = some();
        const auto upright = any.bits() % 2 != 0 ? single_turned_hem(d1) : self_binding(d1, 0_cm, 0.2_cm);
        const auto level = any.bits() % 2 != 0 ? single_turned_hem(d2) : double_turned_hem(d2 / 3, d2);
        const mitre<centimetre> m(upright, level);
        const auto f = m.finished_corner(), inner = m.hem_corner();
        REQUIRE(side_of(m.crease(), f) == line_side::on);
        REQUIRE(side_of(m.crease(), point_of<centimetre>(0, 0)) == line_side::left);
        // The line at which the hems meet, turned back across either edge's last crease, lies on the crease.
        const line<centimetre> upright_fold{f, {f.x, f.y + 1_cm}}, level_fold{f, {f.x + 1_cm, f.y}};
        REQUIRE(side_of(m.crease(), reflected(inner, upright_fold)) == line_side::on);
        REQUIRE(side_of(m.crease(), reflected(inner, level_fold)) == line_side::on);
        // A sewn mitre's two seams lie on each other when the crease brings them together, so they are equally long.
        REQUIRE(m.seam_on_upright()[1] == reflected(inner, upright_fold));
        REQUIRE(m.seam_on_level()[1] == reflected(inner, level_fold));
        // The stretch in the first turn, folded under, goes on along the crease.
        const auto turn_crease = m.seam_on_upright()[1].x;
        if (turn_crease.value() > 0) {
            const line<centimetre> first{{turn_crease, 0_cm}, {turn_crease, 1_cm}};
            REQUIRE(side_of(m.crease(), reflected(m.seam_on_upright()[2], first)) == line_side::on);
        }
    }
}

TEST_CASE("corners that cannot be made are refused with their numbers") {
    const auto hem = single_turned_hem(1_in);
    CHECK_THROWS_WITH_AS(mitre<inch>(hem, seam("1/2"_in)),
                         "this corner needs turned cloth on both edges: the level edge has a seam allowance",
                         corner_error);
    CHECK_THROWS_WITH_AS(mitre<inch>(finish<inch>(), hem),
                         "this corner needs turned cloth on both edges: the upright edge has a raw edge", corner_error);
    CHECK_THROWS_AS(stacked_corner<inch>(separate_binding("1/2"_in), hem), corner_error);
    CHECK_THROWS_AS(mitre<inch>(felled_over("1/2"_in, "1/4"_in), hem), corner_error);
    CHECK_THROWS_WITH_AS(mitre<inch>(hem, hem).trim(-("1/4"_in), "1/8"_in),
                         "the allowance of a mitre must be zero or more: it was -1/4 in", corner_error);
    CHECK_THROWS_WITH_AS(
        mitre<inch>(hem, hem).trim("1 1/2"_in, "1/8"_in),
        "an allowance of 1 1/2 in leaves nothing to trim from a mitre whose crease meets the edges 2 and "
        "2 in from the corner",
        corner_error);
    CHECK_THROWS_AS(static_cast<void>(mitre<inch>(hem, hem).trim("1/4"_in, 0_in)), range_error);
    CHECK_THROWS_WITH_AS(stacked_corner<inch>(hem, hem).underlay(1_in),
                         "the margin of an underlay must be from 0 to less than 1 in, which is turned: it was 1 in",
                         corner_error);
    CHECK_THROWS_WITH_AS(mitred_border(3_in, 2_in, "1/4"_in),
                         "the outer side of a mitred border 2 in wide must be at least twice that: it was 3 in",
                         corner_error);
    CHECK_THROWS_WITH_AS(mitred_border(3_in, 0_in, "1/4"_in),
                         "the width of a border must be more than zero: it was 0 in", corner_error);
}
