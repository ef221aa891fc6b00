// Patchwork: what is published, at compile time; cut and finished as inverses at random; strips counted one by one; squares of
// triangles against roots in many digits, and sewn on paper by coordinates; borders added up round; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/border.hpp>
#include <turncloth/notions/triangles.hpp>

#include <doctest/doctest.h>

#include <cstdint>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;
using reference::real;

namespace {

constexpr sewn_patch<inch> three_inches{"2 1/2"_in, "2 1/2"_in, "1/4"_in};
// A page for charity quilts (published): 400 squares cut 3 in, 20 x 20, give about 50 x 50 in; a strip of 42 in gives 14.
static_assert(patch_field(20, 20, three_inches) == finished_size(50_in, 50_in));
static_assert(patch_cut_width(three_inches).value() == 3_in);
static_assert(finished_of_patch(3_in, "1/4"_in) == "2 1/2"_in);
static_assert(strips_for(400, three_inches, 42_in).each == 14);
static_assert(strips_for(400, three_inches, 42_in).strips == 29); // by hand: 28 strips give 392
static_assert(strips_for(400, three_inches, 42_in).spare == 6);
// Cloth just as wide as a patch is cut gives one a strip.
static_assert(strips_for(5, three_inches, 3_in) == patch_strips{1, 5, 0});
static_assert(cloth_for_strips(strips_for(400, three_inches, 42_in), three_inches) == 87_in);
// A guild's page (published): 25 squares cut 6 in, 5 x 5, with a border cut 5 in, "36 x 36". The print is loose: 36 1/2.
static_assert(bordered(patch_field(5, 5, patch_of_field(finished_size("27 1/2"_in, "27 1/2"_in), 5, 5, "1/4"_in)),
                       border<inch>{.width = finished_of_patch(5_in, "1/4"_in), .seam = "1/4"_in}) ==
              finished_size("36 1/2"_in, "36 1/2"_in));
static_assert(patch_of_field(finished_size("27 1/2"_in, "27 1/2"_in), 5, 5, "1/4"_in).width ==
              finished_of_patch(6_in, "1/4"_in));

// A guild's page on squares of triangles (published): for 3 in, squares of 3 7/8 in give two triangles each, and of 4 1/4 in
// four; an eighth and a quarter of an inch are what roots of 2 come to, rounded up, for seams of 1/4 in.
static_assert(cut_for_triangles<inch>(3_in, {.seam = "1/4"_in}, "1/8"_in).value() == "3 7/8"_in);
static_assert(cut_for_triangles<inch>(3_in, {pieced_of::four, "1/4"_in}, "1/8"_in).value() == "4 1/4"_in);
static_assert(trimmed_triangles(3_in, "1/4"_in).value() == "3 1/2"_in);
// Common practice: 7/8 in for two and 1 1/4 in for four are added to any size.
static_assert(cut_for_triangles<inch>(4_in, {.seam = "1/4"_in}, "1/8"_in).value() == "4 7/8"_in);
static_assert(cut_for_triangles<inch>(4_in, {pieced_of::four, "1/4"_in}, "1/8"_in).value() == "5 1/4"_in);
static_assert(squares_to_cut(4) == 2 && squares_to_cut(5) == 3);

// By hand: three blocks of 6 in with strips of 1 in between them; and beside them, too.
static_assert(sashed<inch>(3, {.block = 6_in, .sash = 1_in}).value() == 20_in);
static_assert(sashed<inch>(3, {.block = 6_in, .sash = 1_in, .around = true}).value() == 22_in);
static_assert(sashed<inch>(1, {.block = 6_in, .sash = 1_in}).value() == 6_in);
static_assert(sash_pieces(3, 2, false) == sash_counts{4, 3, 2});
static_assert(sash_pieces(3, 2, true) == sash_counts{8, 9, 12});

// By hand: a border of 3 in round 20 x 14 in, seams of 1/4 in.
constexpr finished_size<inch> centre(20_in, 14_in);
constexpr auto butted = border_strips<inch>(centre, {3_in, "1/4"_in, border_corners::butted});
static_assert(butted.side.value() == "14 1/2"_in && butted.across.value() == "26 1/2"_in && butted.squares == 0);
static_assert(butted.width.value() == "3 1/2"_in);
constexpr auto squared = border_strips<inch>(centre, {3_in, "1/4"_in, border_corners::squares});
static_assert(squared.side.value() == "14 1/2"_in && squared.across.value() == "20 1/2"_in && squared.squares == 4);
constexpr auto mitred = border_strips<inch>(centre, {3_in, "1/4"_in, border_corners::mitred});
static_assert(mitred.side.value() == "20 1/2"_in && mitred.across.value() == "26 1/2"_in && mitred.squares == 0);

// Common practice: the seams of the first row to the right, of the next to the left, and so on.
static_assert(nests_toward(0) == pressed_toward::right && nests_toward(1) == pressed_toward::left);
static_assert(nests_toward(2) == nests_toward(0));

} // namespace

TEST_CASE("patches: cut and finished are inverse, and a field is as many as fill it") {
    reference::sampler random(1301);
    while (random.another_of(3'000)) {
        const sewn_patch<inch> p{random.inches(9), random.inches(9), random.inches(1)};
        const std::int64_t across = random.between(1, 40), down = random.between(1, 40);
        CHECK(finished_of_patch(patch_cut_width(p).value(), p.seam) == p.width);
        CHECK(finished_of_patch(patch_cut_height(p).value(), p.seam) == p.height);
        CHECK(patch_of_field(patch_field(across, down, p), across, down, p.seam) == p);
        // Patch by patch: each joins on with two allowances in the seam.
        length<inch> row = patch_cut_width(p).value();
        for (std::int64_t i = 1; i < across; ++i)
            row += patch_cut_width(p).value() - p.seam * 2;
        CHECK(row_of_patches(across, p).value() == row);
        CHECK(column_of_patches(down, p).value() - p.seam * 2 == patch_field(across, down, p).height());
    }
}

TEST_CASE("strips across the cloth are cut as often as a patch goes into them") {
    reference::sampler random(1302);
    while (random.another_of(2'000)) {
        const sewn_patch<inch> p{random.inches(9), random.inches(9), random.inches(1)};
        const length<inch> cut = patch_cut_width(p).value(), usable = cut + random.inches(60);
        const std::int64_t count = random.between(1, 200);
        std::int64_t each = 0, strips = 0, had = 0;
        for (length<inch> used = cut; used <= usable; used += cut)
            ++each;
        for (; had < count; had += each)
            ++strips;
        CHECK(strips_for(count, p, usable) == patch_strips{each, strips, had - count});
        CHECK(cloth_for_strips(strips_for(count, p, usable), p) == patch_cut_height(p).value() * strips);
    }
    CHECK(strips_for(7, three_inches, 1000000000_in) == patch_strips{most_patches, 1, most_patches - 7});
}

TEST_CASE("squares of triangles are as large as they must be, and no larger than a step") {
    reference::sampler random(1303);
    while (random.another_of(2'000)) {
        const length<inch> finished = random.inches(9), seam = random.inches(1), step = "1/16"_in;
        for (const pieced_of of : {pieced_of::two, pieced_of::four}) {
            const triangle_seams<inch> s{of, seam};
            const length<inch> cut = cut_for_triangles(finished, s, step).value();
            // Sewn on paper. The diagonal of a square of side c, less a seam at either side of each slant, as a square's.
            real corner_to_corner = exact(cut) * sqrt(real(2));
            for (int slant = 0; slant < (of == pieced_of::two ? 1 : 2); ++slant)
                corner_to_corner -= 2 * exact(seam);
            const real side = corner_to_corner / sqrt(real(2)), wanted = exact(finished + seam * 2);
            CHECK(side >= wanted);
            CHECK(side < wanted + exact(step));
            CHECK(finished_of_triangles(cut, s, step) == finished);
        }
        CHECK(trimmed_triangles(finished, seam).value() == finished + seam + seam);
    }
}

TEST_CASE("borders close round their centre, and a mitre reaches the corner of its strip") {
    reference::sampler random(1304);
    while (random.another_of(2'000)) {
        const finished_size<inch> inner(random.inches(40), random.inches(40));
        const length<inch> width = random.inches(6), seam = random.inches(1);
        for (const border_corners c : {border_corners::butted, border_corners::squares, border_corners::mitred}) {
            const border<inch> b{width, seam, c};
            const auto cut = border_strips(inner, b);
            const finished_size<inch> outer = bordered(inner, b);
            CHECK(centre_of(outer, b) == inner);
            const length<inch> strip = finished_of_patch(cut.width.value(), seam);
            CHECK(strip == width);
            const length<inch> side = finished_of_patch(cut.side.value(), seam),
                               across = finished_of_patch(cut.across.value(), seam);
            // The areas of what shows add up; a mitred strip loses a triangle at either end.
            const auto area = [](length<inch> a, length<inch> d) { return a.value() * d.value(); };
            fraction sewn = 2 * area(side, width) + 2 * area(across, width) + cut.squares * area(width, width);
            if (c == border_corners::mitred)
                sewn = sewn - 4 * area(width, width);
            CHECK(sewn == area(outer.width(), outer.height()) - area(inner.width(), inner.height()));
        }
        const std::int64_t blocks = random.between(1, 12);
        for (const bool around : {false, true}) {
            const sashing<inch> s{random.inches(9), random.inches(3), around};
            CHECK(block_of_sashed(sashed(blocks, s).value(), blocks, s.sash, around) == s.block);
        }
    }
}

TEST_CASE("what cannot be pieced is refused") {
    CHECK(message<patchwork_error>([] { finished_of_patch("1/2"_in, "1/4"_in); }) ==
          "a patch cut 1/2 in is used up by its seams, which take 1/4 in of either edge");
    CHECK(facts<patchwork_error>([] { finished_of_patch("1/2"_in, "1/4"_in); }) ==
          "too small: the cut size of a patch, given 1/2 in, least 1/2 in");
    CHECK(message<patchwork_error>([] { strips_for(4, three_inches, "2 7/8"_in); }) ==
          "cloth with a usable width of 2 7/8 in is too narrow for a patch cut 3 in wide");
    CHECK(facts<patchwork_error>([] { strips_for(4, three_inches, "2 7/8"_in); }) ==
          "does not fit: the width of the cloth, given 23/8 in, least 3 in");
    CHECK(message<patchwork_error>([] { strips_for(0, three_inches, 42_in); }) ==
          "the number of patches must be from 1 to 100000: it was 0");
    CHECK(message<patchwork_error>([] {
              patch_cut_width<inch>({2_in, 2_in, 0_in});
          }) == "the seam of a patch must be more than zero: it was 0 in");
    CHECK(message<patchwork_error>([] { nests_toward(-1); }) == "the number of a row must be zero or more: it was -1");
    CHECK(message<patchwork_error>([] { finished_of_triangles<inch>("7/8"_in, {.seam = "1/4"_in}, "1/8"_in); }) ==
          "a square cut 7/8 in is used up by the seams of its triangles, which take 7/8 in");
    CHECK(facts<patchwork_error>([] { finished_of_triangles<inch>("7/8"_in, {.seam = "1/4"_in}, "1/8"_in); }) ==
          "too small: the cut size of a square, given 7/8 in, least 7/8 in");
    CHECK(message<patchwork_error>([] { block_of_sashed(2_in, 3, 1_in, false); }) ==
          "strips between blocks take 2 in of 2 in, and leave nothing for the blocks");
    CHECK(message<patchwork_error>([] {
              centre_of<inch>({9_in, 6_in}, {.width = 3_in, .seam = "1/4"_in});
          }) == "a border 3 in wide leaves nothing within 9 x 6 in");
    CHECK(facts<patchwork_error>([] {
              centre_of<inch>({9_in, 6_in}, {.width = 3_in, .seam = "1/4"_in});
          }) == "too large: the width of a border, given 3 in, most 3 in");
}
