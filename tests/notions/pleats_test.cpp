// Gathers, pleats and tucks: published worked examples at compile time; every pleat folded on paper, crease by crease,
// for thousands of sizes; and what is refused.
#include "reference.hpp"
#include <turncloth/marks/mapping.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/joining.hpp>
#include <turncloth/notions/pleats.hpp>

#include <doctest/doctest.h>

#include <array>
#include <cstdint>
#include <limits>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// NIMI (Government of India), Dress Making, Trade Practical, vol. 2, p. 203 (published): 92 cm, depth 4, width 5: 18.4,
// taken as 18 pleats; corrected width 92 / 18 = 5.11; 2 x 4 x 18 + 92 = 236 cm. Cloth 90 wide, 2 in seams: 236 / 88 =
// 2.68, 3 widths (the text misprints 2.34 m and 2.6); at 15 cm each 45 cm of cloth.
constexpr auto skirt = pleats_near(pleat::knife, 92_cm, {.width = 5_cm, .depth = 4_cm});
static_assert(skirt.count() == 18);
static_assert(skirt.cut().value() == 236_cm);
static_assert(nearest_to(skirt.width(), "0.1"_cm) == "5.1"_cm);
static_assert(skirt.width() * 18 == 92_cm);
constexpr auto skirt_cloth = cloth_widths(skirt.cut().value(), {.width = 90_cm, .join = 2_cm}, joined::in_the_round);
static_assert(skirt_cloth.count == 3);
static_assert(15_cm * skirt_cloth.count == 45_cm);
// p. 204 (published): as deep as wide, 50 cm in 20 pleats of 2.5 takes 150, three times; 152 with 2 cm for the seam.
constexpr auto normal = pleats_near(pleat::knife, 50_cm, {.width = "2.5"_cm, .depth = "2.5"_cm});
static_assert(normal.count() == 20);
static_assert(normal.cut().value() + 2_cm == 152_cm);
static_assert(normal.fullness() == 3);
static_assert(normal.lie() == pleat_lie::meeting);
static_assert(normal.most_layers() == 3);
// p. 204-205 (published): one box pleat 12 deep in a front of 60: 108 cm; one inverted pleat 6.5 deep in 66: 92 cm.
static_assert(pleating(pleat::box, 60_cm, 1, 12_cm).cut().value() == 108_cm);
static_assert(pleating(pleat::inverted, 66_cm, 1, "6.5"_cm).cut().value() == 92_cm);
// p. 202 (published): normal, shallow (depth below width), overlapping (depth above width).
static_assert(skirt.lie() == pleat_lie::shallow);
static_assert(pleating(pleat::knife, 50_cm, 20, 3_cm).lie() == pleat_lie::overlapping);

struct exercise {
    length<centimetre> depth, width, finished, down, cloth, seam;
    std::int64_t pleats;
    length<centimetre> cut;
    std::int64_t widths;
    length<centimetre> to_buy;
};

// p. 205, exercises: the questions are published, the answers derived by the rules of p. 203.
constexpr std::array<exercise, 5> exercises = {{
    {3_cm, 3_cm, 168_cm, 22_cm, 105_cm, "1.5"_cm, 56, 504_cm, 5, 110_cm},
    {"4.5"_cm, 5_cm, 260_cm, 12_cm, 90_cm, 2_cm, 52, 728_cm, 9, 108_cm},
    {"3.5"_cm, 3_cm, 144_cm, 10_cm, 122_cm, 3_cm, 48, 480_cm, 5, 50_cm}, // 480 / 119 = 4.03
    {"4.2"_cm, 4_cm, "172.2"_cm, 48_cm, 148_cm, "2.5"_cm, 43, "533.4"_cm, 4, 192_cm},
    {"2.5"_cm, 4_cm, 124_cm, "18.5"_cm, 130_cm, 2_cm, 31, 279_cm, 3, "55.5"_cm},
}};

// The same page, 6: 144.5 cm in pleats 3.5 wide and 2.5 deep: 17, which cover 59.5 cm.
constexpr auto from_cloth = pleats_in(pleat::knife, "144.5"_cm, {.width = "3.5"_cm, .depth = "2.5"_cm});
static_assert(from_cloth.pleats.count() == 17);
static_assert(from_cloth.pleats.finished() == "59.5"_cm);
static_assert(from_cloth.left_over == 0_cm);

// p. 209 (published): 39 less 2 x 1.5 is 36; at 1.2 from tuck to tuck 30 gaps, 31 tucks.
static_assert(tucks(39_cm, {.ends = "1.5"_cm, .pitch = "1.2"_cm, .depth = "0.2"_cm}).count == 31);
// The same page: 28 cm, ends 2, a gap of 1.5 and tucks of 2 mm: 24 / 1.7 = 14.1, taken as 15 gaps, 16 tucks, 34.4 cm;
// corrected 24 / 15 = 1.6, which is from tuck to tuck; clear of each other they are 1.4 (derived).
constexpr auto yoke = tucks(28_cm, {.ends = 2_cm, .pitch = "1.7"_cm, .depth = "0.2"_cm});
static_assert(yoke.count == 16);
static_assert(yoke.pitch == "1.6"_cm);
static_assert(yoke.clear == "1.4"_cm);
static_assert(yoke.cut.value() == "34.4"_cm);

// Stephenson, Cutting and Draping, 1905 (published): a curtain of 50 in shirred to 20, a fullness of 2 1/2.
static_assert(gathered(20_in, {5, 2}).value() == 50_in);
// The Complete Arithmetic (published): 32 tucks of a quarter inch take up 16 in.
constexpr auto many = tucks(40_in, {.ends = "1/2"_in, .pitch = "39/31"_in, .depth = "1/4"_in});
static_assert(many.count == 32);
static_assert(many.cut.value() - 40_in == 16_in);
// Krolik, Hand Sewing Lessons, Model 6 (published): tucks of 1/2 in with 1/2 in between their stitchings have creases 1
// 1/2 in apart, on the flat cloth; they touch.
constexpr auto close = tucks(6_in, {.ends = "1/2"_in, .pitch = "1/2"_in, .depth = "1/2"_in});
static_assert(close.pitch + 2 * "1/2"_in == "1 1/2"_in);
static_assert(close.clear == 0_in);
// Hapgood, School Needlework, Plaiting (published): plaits of 1/2 in that meet take three times their length; notches 1
// in from the end and then every 1 1/2 in, the last at 8 1/2 in.
constexpr pleating<inch> plaiting(pleat::knife, 3_in, 6, "1/2"_in);
static_assert(plaiting.fullness() == 3);
static_assert(plaiting.lie() == pleat_lie::meeting);
static_assert(plaiting.inner_folds()[0] == at<cut_edge>(1_in));
static_assert(plaiting.inner_folds()[1] == at<cut_edge>("2 1/2"_in));
static_assert(plaiting.inner_folds()[5] == at<cut_edge>("8 1/2"_in));

// The synopsis.
constexpr auto curtain = pleats_near(pleat::knife, 30_in, {.width = "1 3/4"_in, .depth = "1 1/2"_in});
static_assert(curtain.count() == 17);
static_assert(curtain.width() == length_of<inch>({30, 17}));
static_assert(curtain.cut().value() == 81_in);

// Common practice: box pleats edge to edge take three times their length, as knife pleats do.
static_assert(pleating(pleat::box, 30_in, 10, "1 1/2"_in).fullness() == 3);
static_assert(pleating(pleat::box, 30_in, 10, "1 1/2"_in).lie() == pleat_lie::meeting);
static_assert(gathered(30_in, 2).value() == 60_in);
static_assert(gathered(30_in, {3, 2}).value() == 45_in);

/// Folds a strip of paper at creases, in order, each turning it about; where the face comes to lie along the finished
/// edge. `creases` are on the flat cloth; the first stretch lies forward.
template <std::size_t N>
std::array<length<inch>, N + 1> folded(const std::array<length<inch>, N>& creases, length<inch> end) {
    std::array<length<inch>, N + 1> lies{}; // where each crease, and the end, comes to lie
    length<inch> at, from;
    bool forward = true;
    for (std::size_t i = 0; i <= N; ++i) {
        const length<inch> to = i < N ? creases[i] : end;
        at += forward ? to - from : from - to;
        lies[i] = at;
        from = to;
        forward = !forward;
    }
    return lies;
}

} // namespace

TEST_CASE("the exercises of a training manual come out, pleats, cloth, widths and all") {
    for (const exercise& e : exercises) {
        const auto p = pleats_near(pleat::knife, e.finished, {.width = e.width, .depth = e.depth});
        CHECK(p.count() == e.pleats);
        CHECK(p.cut().value() == e.cut);
        // Skirts are joined to a ring: the manual takes a seam off every width.
        CHECK(cloth_widths(p.cut().value(), {.width = e.cloth, .join = e.seam}, joined::in_the_round).count ==
              e.widths);
        CHECK(e.down * e.widths == e.to_buy);
    }
    // Exercise 4: 189 cm of normal pleats take 567, 6 widths, 90 cm. Its width of cloth is not legible: any that
    // gives 6.
    CHECK(pleats_near(pleat::knife, 189_cm, {.width = 3_cm, .depth = 3_cm}).cut().value() == 567_cm);
}

TEST_CASE("a knife pleat folded at its marks meets its placement line, and the row fills the length") {
    reference::sampler random(1921);
    while (random.another_of(3'000)) {
        const pleating<inch> p(pleat::knife, random.inches(60), random.between(1, 40), random.inches(3));
        const auto outer = p.outer_folds(), inner = p.inner_folds(), placed = p.placements();
        CHECK(outer.size() == p.count());
        for (const std::int64_t k : {std::int64_t{0}, p.count() / 2, p.count() - 1}) {
            const length<inch> start = k == 0 ? length<inch>() : placed[k - 1].from_datum(); // of the pleat
            const auto lies = folded<2>({outer[k].from_datum() - start, inner[k].from_datum() - start},
                                        placed[k].from_datum() - start);
            CHECK(lies[0] == p.width());             // the face
            CHECK(lies[1] == p.width() - p.depth()); // behind it
            CHECK(lies[2] == lies[0]);               // the fold lies on its placement line
        }
        CHECK(placed.back().from_datum() == p.cut().value());
        CHECK(p.width() * p.count() == p.finished());
        CHECK(p.finished() * p.fullness() == p.cut().value());
    }
}

TEST_CASE("box and inverted pleats folded at their marks show their width, and both folds meet their placement lines") {
    reference::sampler random(1923);
    while (random.another_of(3'000)) {
        const length<inch> finished = random.inches(60), depth = random.inches(3);
        const std::int64_t n = random.between(1, 40);
        const pleating<inch> box(pleat::box, finished, n, depth), inverted(pleat::inverted, finished, n, depth);
        for (const std::int64_t k : {std::int64_t{0}, n - 1}) {
            const length<inch> start = (box.width() + box.taken()) * k;
            const auto on = [&](const auto& row) { return row[k].from_datum() - start; };
            const length<inch> end = box.width() + box.taken();
            // Box: placement line, back under the face to the inner fold, out to the outer fold; the face; and the
            // same.
            const auto b = folded<4>(
                {on(box.inner_folds(0)), on(box.outer_folds(0)), on(box.outer_folds(1)), on(box.inner_folds(1))}, end);
            CHECK(b[1] == on(box.placements(0))); // zero: the first outer fold lies on its placement line
            CHECK(b[2] - b[1] == -1 * box.width() + box.width() * 2);
            CHECK(b[2] == b[4]); // and so does the second, on the end of the pleat
            CHECK(b[0] == depth);
            CHECK(b[3] == box.width() - depth);
            // Inverted: half a face, back under it, forward across the middle, back, half a face.
            const auto v = folded<4>({on(inverted.outer_folds(0)), on(inverted.inner_folds(0)),
                                      on(inverted.inner_folds(1)), on(inverted.outer_folds(1))},
                                     end);
            CHECK(v[0] == inverted.width() / 2);
            CHECK(v[3] == v[0]); // the two folds meet
            CHECK(v[4] == inverted.width());
            // The placement line is where the middle of the under layer lies, behind their meeting.
            CHECK(v[1] + (on(inverted.placements(0)) - on(inverted.inner_folds(0))) == v[0]);
            CHECK(inverted.placements(0)[k] == inverted.placements(1)[k]);
        }
        CHECK(box.placements(1).back().from_datum() == box.cut().value());
        CHECK(box.cut().value() == finished + depth * 4 * n);
    }
}

TEST_CASE("the most layers are those counted point by point across a wide row") {
    reference::sampler random(1925);
    for (const int i : random.cases(400)) {
        // Whole numbers of eighths, and points at odd 32nds, so that no point lies on a crease.
        const std::int64_t w = random.between(1, 12), d = random.between(1, 40), n = 24;
        const auto kind = std::array{pleat::knife, pleat::box, pleat::inverted}[static_cast<std::size_t>(i % 3)];
        const pleating<inch> p(kind, length_of<inch>(fraction(w * n, 8)), n, length_of<inch>(fraction(d, 8)));
        std::int64_t most = 0;
        for (std::int64_t x = 1; x < 4 * w * n; x += 2) { // in 32nds of the finished length
            std::int64_t layers = 1;
            for (std::int64_t k = -60; k < n + 60; ++k) { // the row as it would go on at both ends
                const std::int64_t from = 4 * w * k, to = from + 4 * w, middle = from + 2 * w;
                const auto between = [x](std::int64_t a, std::int64_t b) { return x > a && x < b ? 2 : 0; };
                if (kind == pleat::knife)
                    layers += between(to - 4 * d, to);
                else if (kind == pleat::box)
                    layers += between(from, from + 4 * d) + between(to - 4 * d, to);
                else
                    layers += between(middle - 4 * d, middle) + between(middle, middle + 4 * d);
            }
            most = layers > most ? layers : most;
        }
        CHECK(p.most_layers() == most);
        CHECK((p.lie() == pleat_lie::meeting) == (p.depth() * p.folds() == p.width()));
    }
}

TEST_CASE("the number of pleats comes nearest to the wanted width, and cloth is used up to less than one pleat") {
    reference::sampler random(1927);
    while (random.another_of(5'000)) {
        const length<inch> finished = random.inches(60) + 2_in, width = random.inches(3), depth = random.inches(3);
        const fraction wanted = ratio_of(finished, width);
        const std::int64_t n = pleats_near(pleat::box, finished, {.width = width, .depth = depth}).count();
        CHECK((n == 1 || abs(wanted - n) <= fraction(1, 2)));
        const length<inch> cloth = random.inches(200) + 20_in;
        const auto in = pleats_in(pleat::inverted, cloth, {.width = width, .depth = depth});
        CHECK(in.pleats.cut().value() + in.left_over == cloth);
        CHECK(in.pleats.width() == width);
        CHECK(in.left_over < width + depth * 4);
    }
}

TEST_CASE("pleats rounded to a ruler still fill the length, and their starts keep step on the cloth") {
    reference::sampler random(1929);
    while (random.another_of(2'000)) {
        const pleating<inch> p(pleat::knife, random.inches(40) + 10_in, random.between(1, 20), random.inches(2));
        CHECK(rounded_start(p, 0, "1/8"_in).on_cloth == at<cut_edge>(0_in));
        CHECK(rounded_start(p, p.count(), "1/8"_in).on_face == at<finished_edge>(p.finished()));
        CHECK(rounded_start(p, p.count(), "1/8"_in).on_cloth == at<cut_edge>(p.cut().value()));
        for (std::int64_t k = 1; k < p.count(); ++k) {
            const auto start = rounded_start(p, k, "1/8"_in);
            CHECK(abs(start.on_face.from_datum() - p.width() * k) <= "1/16"_in);
            CHECK(start.on_cloth.from_datum() - start.on_face.from_datum() == p.depth() * 2 * k);
            CHECK(is_whole(start.on_face.from_datum().value() * 8));
        }
    }
}

TEST_CASE("tucks keep to their ends and their pitch, and take twice their depth each") {
    reference::sampler random(1931);
    while (random.another_of(3'000)) {
        const length<centimetre> finished = random.centimetres(60) + 10_cm, ends = random.centimetres(4);
        const length<centimetre> depth = random.centimetres(1), pitch = depth * 3 + random.centimetres(3);
        if (finished - ends * 2 < pitch)
            continue;
        const auto t = tucks(finished, {.ends = ends, .pitch = pitch, .depth = depth});
        CHECK(t.pitch * (t.count - 1) + ends * 2 == finished);
        CHECK(t.pitch <= pitch);
        CHECK((t.count == 2 || (finished - ends * 2) / (t.count - 2) > pitch));
        CHECK(t.cut.value() == finished + depth * 2 * t.count);
        CHECK(t.clear + depth == t.pitch);
    }
}

TEST_CASE("a gathered piece is quartered on both edges and matched") {
    const even_mapping<inch> frill(gathered(30_in, {5, 3}).value(), 30_in, 4);
    CHECK(frill.mark_on_long(1) == at<long_piece>("12 1/2"_in));
    CHECK(frill.mark_on_short(1) == at<short_piece>("7 1/2"_in));
}

TEST_CASE("workings of pleats and tucks show their rule") {
    CHECK(to_text(skirt.cut()) == "236 cm = 92 cm finished + 36 x 4 cm depth");
    CHECK(to_text(yoke.cut) == "34.4 cm = 28 cm finished + 32 x 0.2 cm depth");
    // 180 cm gathered twice between two hems of 2.5 cm: the fullness stands in the working.
    CHECK(to_text(gathered(180_cm, 2).plus_times(2, {"2.5"_cm}, "hem")) ==
          "365 cm = 2 x 180 cm gathered + 2 x 2.5 cm hem");
}

TEST_CASE("what cannot be pleated says why") {
    CHECK(message<pleats_error>([] {
              return gathered(30_in, {9, 10});
          }) == "the fullness of gathers must be at least 1: it was 9/10");
    CHECK(facts<pleats_error>([&] { return gathered(0_in, 2); }) ==
          "too small: the length to gather into, given 0 in, least 0 in");
    CHECK(message<pleats_error>([] { return pleating(pleat::box, 30_in, 0, 1_in); }) ==
          "the number of pleats must be at least 1: it was 0");
    CHECK(facts<pleats_error>([&] { return pleating(pleat::box, 0_in, 1, 1_in); }) ==
          "too small: the length to pleat into, given 0 in, least 0 in");
    CHECK(facts<pleats_error>([&] { return pleating(pleat::box, 30_in, 1, 0_in); }) ==
          "too small: the depth of a pleat, given 0 in, least 0 in");
    CHECK(message<pleats_error>([] { return pleating(pleat::knife, 30_in, 3, 1_in).outer_folds(1); }) ==
          "a fold of this pleat must be numbered from 0 to 0: it was 1");
    CHECK(facts<pleats_error>([&] { return pleating(pleat::box, 30_in, 3, 1_in).placements(2); }) ==
          "too large: a fold of this pleat, given 2, least 0, most 1");
    CHECK(facts<pleats_error>([&] { return pleating(pleat::box, 30_in, 3, 1_in).inner_folds(-1); }) ==
          "too small: a fold of this pleat, given -1, least 0, most 1");
    CHECK(facts<pleats_error>([&] { return pleats_near(pleat::box, 0_in, {.width = 1_in, .depth = 1_in}); }) ==
          "too small: the length to pleat into, given 0 in, least 0 in");
    CHECK(facts<pleats_error>([&] { return pleats_near(pleat::box, 30_in, {.width = 0_in, .depth = 1_in}); }) ==
          "too small: the width of a pleat, given 0 in, least 0 in");
    CHECK(message<pleats_error>([] { return pleats_in(pleat::box, 4_in, {.width = 1_in, .depth = 1_in}); }) ==
          "a pleat takes 5 in of cloth: there was 4 in");
    CHECK(facts<pleats_error>([&] { return pleats_in(pleat::box, 4_in, {.width = 0_in, .depth = 1_in}); }) ==
          "too small: the width of a pleat, given 0 in, least 0 in");
    CHECK(message<pleats_error>([] { return rounded_start(pleating(pleat::box, 30_in, 3, 1_in), 4, "1/8"_in); }) ==
          "the number of a pleat's start must be from 0 to 3: it was 4");
    CHECK(facts<pleats_error>([&] { return rounded_start(pleating(pleat::box, 30_in, 3, 1_in), -1, "1/8"_in); }) ==
          "too small: the number of a pleat's start, given -1, least 0, most 3");
    CHECK_THROWS_AS(rounded_start(pleating(pleat::box, 30_in, 300, 1_in), 4, "1/8"_in), marks_error);
    CHECK(message<pleats_error>([] { return tucks(28_cm, {.ends = 14_cm, .pitch = 2_cm, .depth = 1_cm}); }) ==
          "the ends beyond the tucks, 28 cm, leave nothing of 28 cm");
    CHECK(facts<pleats_error>([&] { return tucks(28_cm, {.ends = 2_cm, .pitch = "0.9"_cm, .depth = 1_cm}); }) ==
          "too small: the pitch of tucks, given 9/10 cm, least 1 cm");
    CHECK(message<pleats_error>([] { return tucks(10_cm, {.ends = 2_cm, .pitch = "1.1"_cm, .depth = 1_cm}); }) ==
          "(nothing was refused)");
    CHECK(message<pleats_error>([] { return tucks(7_cm, {.ends = 2_cm, .pitch = "1.6"_cm, .depth = "1.55"_cm}); }) ==
          "tucks 1.55 cm deep at a pitch of 1.5 cm would cover each other");
    CHECK(facts<pleats_error>([&] { return tucks(28_cm, {.ends = 2_cm, .pitch = 2_cm, .depth = 0_cm}); }) ==
          "too small: the depth of a tuck, given 0 cm, least 0 cm");
    CHECK(facts<pleats_error>([&] { return tucks(28_cm, {.ends = "-1"_cm, .pitch = 2_cm, .depth = 1_cm}); }) ==
          "too small: the length beyond the last tuck, given -1 cm, least 0 cm");
}

TEST_CASE("counts beyond what 64 bits hold are refused, and never come out smaller") {
    constexpr std::int64_t huge = std::int64_t{1} << 62;
    // 2^62 box pleats 1 in deep take 2^64 in.
    CHECK(facts<overflow_error>([] { return pleating(pleat::box, 8_in, huge, 1_in).cut(); }) ==
          "does not fit: a number");
    // Half an inch and four eighths to a pleat: 2^60 pleats out of 2^60 in, all of it pleated; four times as many folds
    // are too many to count.
    const auto in = pleats_in(pleat::box, length_of<inch>(huge / 4), {.width = "1/2"_in, .depth = "1/8"_in});
    CHECK(in.pleats.count() == huge / 4);
    CHECK(in.pleats.cut().value() == length_of<inch>(huge / 4));
    CHECK(in.left_over == 0_in);
    const auto too_many = pleats_in(pleat::box, length_of<inch>(huge), {.width = "1/2"_in, .depth = "1/8"_in});
    CHECK_THROWS_AS(too_many.pleats.cut(), overflow_error);
    CHECK_THROWS_AS(pleating(pleat::box, 1_in, 1, length_of<inch>(huge)).most_layers(), overflow_error);
    CHECK_THROWS_AS(pleating(pleat::knife, 1_in, 1, length_of<inch>(huge)).most_layers(), overflow_error);
    CHECK(pleating(pleat::knife, 1_in, 1, length_of<inch>(huge / 4)).most_layers() == huge / 2 + 1);
    constexpr length<inch> long_yoke = length_of<inch>(std::numeric_limits<std::int64_t>::max());
    CHECK_THROWS_AS(tucks(long_yoke, {.ends = {}, .pitch = 1_in, .depth = "1/2"_in}), overflow_error);
    const auto most = tucks(length_of<inch>(huge / 4), {.ends = {}, .pitch = 1_in, .depth = "1/8"_in});
    CHECK(most.count == huge / 4 + 1);
}
