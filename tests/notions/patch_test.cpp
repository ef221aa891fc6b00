// Patches and bands: what is published, at compile time; cut and hole as inverses at random, and rows walked round; what is cut off
// and the band make up the old height; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/patch.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using reference::exact;
using reference::facts;
using reference::message;

namespace {

// US Army TM 10-1670-292-23&P p. 0029 00-5 (published): damage cut out square, 1/2 in folded back at each raw edge; the patch is cut
// 2 1/2 in wider and longer than the prepared hole, and 1/2 in is folded at each of its edges.
constexpr patch_edges<inch> sateen{.reach = "3/4"_in, .turned = "1/2"_in};
constexpr finished_size<inch> hole = prepared_hole<inch>({3_in, 2_in}, "1/2"_in); // 4 x 3 in, by hand
static_assert(hole == finished_size<inch>(4_in, 3_in));
static_assert(patch_over(hole, sateen).cut() == cut_size<inch>("6 1/2"_in, "5 1/2"_in));
static_assert(hole_under(cut_size<inch>("6 1/2"_in, "5 1/2"_in), sateen) == hole);
// US Army TM 10-8400-201-23 (published): a patch goes 3/4 in beyond the damage all round, so 1 1/2 in more each way.
static_assert(patch_over<inch>({5_in, 2_in}, {.reach = "3/4"_in}).cut() == cut_size<inch>("6 1/2"_in, "3 1/2"_in));

// By hand: 1/8 in inside an edge 3/4 in beyond is 5/8 in outside the hole: 5 1/4 and 4 1/4 in, twice. And 4 1/2 and 3 1/2, twice.
constexpr auto rows = patch_rows<inch>(hole, sateen, {.inset = "1/8"_in, .beyond = "1/4"_in});
static_assert(rows.size() == 2);
static_assert(rows[0].value() == 19_in && rows[1].value() == 16_in);
// By hand: a hole from 3 to 5 of 9 in, and 1 in round it: from 2 in.
static_assert(patch_begins<inch>(9_in, {.begins = 3_in, .wide = 2_in}, {.reach = 1_in}, "1/2"_in) ==
              at<finished_edge>(2_in));

// National Instructional Media Institute, Dress Making Trade Practical 2, p. 214 (published): the new line lies as far up as the
// band is wide when finished, and all but 6 mm below it is trimmed. So of 5 cm, 4.4 cm (by hand).
constexpr hem_band<centimetre> band{.depth = 5_cm, .seam = "0.6"_cm, .turned = "0.6"_cm};
static_assert(cut_off(band, 4_cm).value() == "4.4"_cm);
static_assert(band_height(band).value() == "11.2"_cm);
static_assert(band_of("11.2"_cm, "0.6"_cm, "0.6"_cm).depth == 5_cm);

/// Along the four sides of a rectangle, as a needle goes.
length<inch> walked(length<inch> left, length<inch> top, length<inch> right, length<inch> bottom) {
    return (right - left) + (bottom - top) + (right - left) + (bottom - top);
}

} // namespace

TEST_CASE("a patch covers its hole and as much beyond on every side, and its hole is found again") {
    reference::sampler random(411);
    while (random.another_of(3'000)) {
        const finished_size<inch> hole(random.inches(20), random.inches(20));
        const length<inch> turned = random.inches(2);
        const patch_edges<inch> edges{.reach = turned + random.inches(2), .turned = turned};
        const cut_size<inch> cut = patch_over(hole, edges).cut();
        CHECK(hole_under(cut, edges) == hole);
        CHECK(cut.width() - hole.width() == cut.height() - hole.height());
        CHECK(exact(cut.width()) == exact(hole.width()) + 2 * exact(edges.reach) + 2 * exact(turned));
        const patch_held<inch> held{.inset = edges.reach / 5, .beyond = edges.reach / 3};
        const auto both = patch_rows(hole, edges, held);
        // On the patch as it lies, its folded edges at nothing.
        const length<inch> wide = hole.width() + edges.reach * 2, high = hole.height() + edges.reach * 2,
                           inner = edges.reach - held.beyond;
        CHECK(both[0].value() == walked(held.inset, held.inset, wide - held.inset, high - held.inset));
        CHECK(both[1].value() == walked(inner, inner, wide - inner, high - inner));
        const length<inch> begins = edges.reach + random.inches(5);
        const auto near = patch_begins<inch>(begins + hole.width() + begins, {begins, hole.width()}, edges, 0_in);
        CHECK(near.from_datum() + edges.reach == begins);
    }
}

TEST_CASE("a band and what is left above it are as high as before") {
    reference::sampler random(412);
    while (random.another_of(3'000)) {
        const length<inch> seam = random.inches(1), turned = random.inches(1);
        const hem_band<inch> b{.depth = seam + turned + random.inches(4), .seam = seam, .turned = turned};
        const length<inch> old = b.depth + random.inches(30), worn = b.depth - seam;
        const length<inch> left = old - cut_off(b, worn).value();
        CHECK(left - seam + b.depth == old); // as far as the row, and the band from there
        CHECK(band_of(band_height(b).value(), seam, turned).depth == b.depth);
        CHECK(exact(band_height(b).value()) == 2 * exact(b.depth) + exact(seam) + exact(turned));
    }
}

TEST_CASE("a patch that does not hold, does not cover or does not fit is refused with its figures") {
    CHECK(message<patch_error>([] {
              patch_over<inch>({3_in, 2_in}, {.reach = "1/4"_in, .turned = "3/8"_in});
          }) ==
          "what is turned under at the edges of a patch, 3/8 in, shows in its hole where it reaches 1/4 in beyond");
    CHECK(facts<patch_error>([] {
              patch_over<inch>({3_in, 2_in}, {.reach = "1/4"_in, .turned = "3/8"_in});
          }) == "too large: what is turned under at the edges of a patch, given 3/8 in, most 1/4 in");
    CHECK(patch_over<inch>({3_in, 2_in}, {.reach = "3/8"_in, .turned = "3/8"_in}).width.value() == "4 1/2"_in);
    CHECK(facts<patch_error>([] {
              patch_over<inch>({3_in, 2_in}, {});
          }) == "too small: the reach of a patch, given 0 in, least 0 in");
    CHECK(message<patch_error>([] {
              hole_under<inch>({9_in, "2 1/2"_in}, sateen);
          }) == "the height of a patch of 2 1/2 in covers no hole: its edges take 2 1/2 in");
    CHECK(facts<patch_error>([] {
              hole_under<inch>({2_in, 9_in}, sateen);
          }) == "too small: the width of a patch, given 2 in, least 5/2 in");
    CHECK(message<patch_error>([] { patch_rows<inch>(hole, sateen, {.inset = "1/4"_in, .beyond = "1/2"_in}); }) ==
          "a patch that reaches 3/4 in beyond its hole has no room for two rows, 1/4 in inside its edge and 1/2 in "
          "outside the hole");
    CHECK(facts<patch_error>([] { patch_rows<inch>(hole, sateen, {.inset = "1/4"_in, .beyond = "1/2"_in}); }) ==
          "no room: the reach of a patch, given 3/4 in, least 3/4 in");
    CHECK(message<patch_error>([] {
              patch_begins<inch>(9_in, {.begins = 6_in, .wide = 2_in}, {.reach = "3/4"_in}, "1/2"_in);
          }) == "a hole 1 in from the edge leaves no room for a patch that reaches 3/4 in beyond it and stays 1/2 in "
                "clear of that edge");
    CHECK(facts<patch_error>([] {
              patch_begins<inch>(9_in, {.begins = 1_in, .wide = 2_in}, {.reach = "3/4"_in}, "1/2"_in);
          }) == "no room: the distance of a hole from the edge, given 1 in, least 5/4 in");
    CHECK(patch_begins<inch>(9_in, {.begins = "1 1/4"_in, .wide = 2_in}, {.reach = "3/4"_in}, "1/2"_in) ==
          at<finished_edge>("1/2"_in));
}

TEST_CASE("a band that leaves worn cloth, or does not hold its edges, is refused with its figures") {
    CHECK(message<patch_error>([] { cut_off(band, "4.5"_cm); }) ==
          "a band 5 cm deep leaves worn cloth: 4.4 cm is cut off, and the hem is worn for 4.5 cm");
    CHECK(facts<patch_error>([] { cut_off(band, "4.5"_cm); }) ==
          "too small: the depth of a band, given 5 cm, least 51/10 cm");
    CHECK(cut_off(band, "4.4"_cm).value() == "4.4"_cm);
    CHECK(message<patch_error>([] { band_height<inch>({.depth = "3/8"_in, .seam = "1/4"_in, .turned = "1/2"_in}); }) ==
          "a band 3/8 in deep does not hold its edges, which take 1/2 in inside it");
    CHECK(facts<patch_error>([] { band_height<inch>({.depth = "3/8"_in, .seam = "1/2"_in, .turned = "1/4"_in}); }) ==
          "too small: the depth of a band, given 3/8 in, least 1/2 in");
    CHECK(message<patch_error>([] { band_of<inch>(1_in, "1/2"_in, "1/2"_in); }) ==
          "a strip of 1 in makes no band: its edges take 1 in");
    CHECK(facts<patch_error>([] { band_height<inch>({.depth = 1_in, .seam = "1/4"_in, .turned = 0_in}); }) ==
          "too small: what is turned in at the edge of a band, given 0 in, least 0 in");
}
