// Boxes sewn from pieces: every seam closes, the inside is as large as asked, and what is made wrong is found.
//
// The reference is a walk of its own, in doubles: it moves a piece beside its neighbour by angles, tries both ways in which
// the two lines can meet, and turns it about the seam by a rotation matrix. It shares no code with the library's walk.
#include "making/boxes.hpp"
#include "measure/against_gmp.hpp"
#include "refused.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string>
#include <vector>

using namespace things;

namespace {

using sampler = against_gmp::sampler;

std::string all_faults(const std::vector<making_fault>& found) {
    std::string all;
    for (const making_fault& f : found)
        all.append(all.empty() ? "" : "; ").append(f.sentence);
    return all;
}
std::string all_faults(const making<inch>& design) { return all_faults(boxed_of(design).faults); }
long faults_of(const making<inch>& design, fault kind, const std::string& what) {
    const auto all = boxed_of(design).faults;
    return std::count_if(all.begin(), all.end(),
                         [&](const making_fault& f) { return f.facts.kind == kind && f.facts.what == what; });
}

constexpr box_asked seed_box{.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in};

box_asked random_box(sampler& any) {
    const auto sixteenths = [&](std::int64_t least, std::int64_t most) {
        return length_of<inch>(fraction(any.between(least, most), 16));
    };
    return {sixteenths(64, 640), sixteenths(64, 640), sixteenths(16, 200), sixteenths(4, 16)};
}

bool measures(const box_found<inch>& found, length<inch> w, length<inch> h, length<inch> d) {
    std::array<length<inch>, 3> is = {found.width, found.height, found.depth}, asked = {w, h, d};
    std::sort(is.begin(), is.end());
    std::sort(asked.begin(), asked.end());
    return is == asked;
}

// The reference.

using vec = std::array<double, 3>;
using turn = std::array<vec, 3>; // rows

double in(const length<inch>& l) { return to_double(l.value()); }
vec operator+(const vec& a, const vec& b) { return {a[0] + b[0], a[1] + b[1], a[2] + b[2]}; }
vec operator-(const vec& a, const vec& b) { return {a[0] - b[0], a[1] - b[1], a[2] - b[2]}; }
double dot(const vec& a, const vec& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }
double size(const vec& a) { return std::sqrt(dot(a, a)); }
vec times(const turn& m, const vec& v) { return {dot(m[0], v), dot(m[1], v), dot(m[2], v)}; }
vec unit(const vec& a) {
    const double l = size(a);
    return {a[0] / l, a[1] / l, a[2] / l};
}
vec cross(const vec& a, const vec& b) {
    return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}
turn product(const turn& a, const turn& b) {
    turn made{};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            for (std::size_t k = 0; k < 3; ++k)
                made[i][j] += a[i][k] * b[k][j];
    return made;
}
/// By Rodrigues.
turn rotation(const vec& axis, double angle) {
    const double c = std::cos(angle), s = std::sin(angle), t = 1 - c;
    const auto& [x, y, z] = axis;
    return {{{t * x * x + c, t * x * y - s * z, t * x * z + s * y},
             {t * x * y + s * z, t * y * y + c, t * y * z - s * x},
             {t * x * z - s * y, t * y * z + s * x, t * z * z + c}}};
}

/// A piece in its own drawing, mathematicians' axes (y up), z towards whoever sees the right side.
struct stood {
    turn by{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    vec at{};
    vec operator()(const vec& p) const { return times(by, p) + at; }
};

struct drawn_line {
    vec begin, end, inner; ///< inner: a place on the piece's side of it
};
drawn_line drawn(const making<inch>& d, const chalk_line<inch>& l) {
    const part<inch>& p = d.parts()[l.on.index];
    const double w = in(p.width), h = in(p.height), at = in(l.in.from_datum());
    const double from = l.begins ? in(*l.begins) : 0, to = l.ends ? in(*l.ends) : (l.is_level() ? w : h);
    if (l.is_level()) {
        const double y = l.from == edge::top ? -at : at - h, inner = l.from == edge::top ? -1 : 1;
        return {{from, y, 0}, {to, y, 0}, {(from + to) / 2, y + inner, 0}};
    }
    const double x = l.from == edge::left ? at : w - at, inner = l.from == edge::left ? 1 : -1;
    return {{x, -from, 0}, {x, -to, 0}, {x + inner, -(from + to) / 2, 0}};
}

/// Which side of the line from a to b, in the plane.
double side_of(const vec& a, const vec& b, const vec& p) { return cross(b - a, p - a)[2]; }

/// Beside the line of another piece in one plane, both right sides towards you, then turned about it away from you.
stood beside(const stood& one, const drawn_line& a, drawn_line b, double angle) {
    stood flat;
    for (const bool swapped : {false, true}) {
        if (swapped)
            std::swap(b.begin, b.end);
        const vec from = b.end - b.begin, to = a.end - a.begin;
        const double way = std::atan2(to[1], to[0]) - std::atan2(from[1], from[0]);
        flat.by = rotation({0, 0, 1}, way);
        flat.at = a.begin - times(flat.by, b.begin);
        if (side_of(a.begin, a.end, flat(b.inner)) * side_of(a.begin, a.end, a.inner) < 0)
            break;
    }
    // The turn that takes what lies beyond the line away from you: its sign is that of the side on which it lies.
    const double sign = side_of(a.begin, a.end, a.inner) < 0 ? -1 : 1;
    const turn bend = rotation(unit(a.end - a.begin), angle * sign);
    stood made{product(bend, flat.by), times(bend, flat.at - a.begin) + a.begin};
    return {product(one.by, made.by), times(one.by, made.at) + one.at};
}

/// Every piece of a design without creases, from its first on; -1 where some seam does not close.
double worst_gap(const making<inch>& d) {
    std::map<cut_part, stood> placed;
    placed[d.seams()[0].one[0].on] = {};
    double worst = 0;
    const double right_angle = std::acos(-1.0) / 2;
    for (std::size_t round = 0; round < d.parts().size() + 2; ++round)
        for (const seam_of<inch>& s : d.seams())
            for (std::size_t k = 0; k < s.one.size(); ++k) {
                chalk_line<inch> one = s.one[k], other = s.other[k];
                if (!placed.contains(one.on))
                    std::swap(one, other);
                if (!placed.contains(one.on))
                    continue;
                const stood there = beside(placed[one.on], drawn(d, one), drawn(d, other),
                                           s.beyond == beyond_seam::flat ? 0 : right_angle);
                const auto [found, is_new] = placed.try_emplace(other.on, there);
                for (const vec& corner : {vec{0, 0, 0}, vec{1, 0, 0}, vec{0, 1, 0}, vec{0, 0, 1}})
                    worst = std::max(worst, size(found->second(corner) - there(corner)));
            }
    return placed.size() < d.parts().size() ? -1 : worst;
}

/// The faces of a closed box, each once and nothing else: all on its surface, as large as that together, and looking out.
void check_surface(const box_found<inch>& found) {
    vec low{1e9, 1e9, 1e9}, high{-1e9, -1e9, -1e9};
    double covered = 0;
    std::vector<std::array<vec, 2>> middles; // and where the face looks
    for (const box_face<inch>& f : found.faces) {
        const double w = in(f.right - f.left), h = in(f.bottom - f.top);
        covered += w * h;
        vec at, middle, out;
        for (std::size_t i = 0; i < 3; ++i) {
            const double opposite = in(f.at[i]) + w * f.rightward[i] + h * f.downward[i];
            at[i] = in(f.at[i]);
            middle[i] = (at[i] + opposite) / 2;
            out[i] = f.out[i];
            low[i] = std::min({low[i], at[i], opposite});
            high[i] = std::max({high[i], at[i], opposite});
        }
        middles.push_back({middle, out});
    }
    const vec across = high - low;
    CHECK(covered == doctest::Approx(2 * (across[0] * across[1] + across[0] * across[2] + across[1] * across[2])));
    for (const auto& [middle, out] : middles)
        CHECK(dot(middle - low, out) == doctest::Approx(std::max(0.0, dot(across, out))));
    CHECK(in(found.width) == doctest::Approx(across[0]));
    CHECK(in(found.height) == doctest::Approx(across[1]));
    CHECK(in(found.depth) == doctest::Approx(across[2]));
}

} // namespace

// By hand, of a pad of 16 x 9 x 2 in: the plate lies before you; z is towards you. Beyond its top seam the back wall
// goes away from you, and its right side looks up, to the smaller y. Going on round, the base lies 2 in further away.
TEST_CASE("six pieces make a box, and each stands where it does by hand") {
    const six_pieces box(seed_box);
    const boxed<inch> made = boxed_of(box.design);
    CHECK(all_faults(made.faults) == "");
    REQUIRE(made.boxes.size() == 1);
    REQUIRE(made.boxes[0].faces.size() == 6);
    CHECK(!made.boxes[0].open);
    const auto face = [&](cut_part p) {
        return *std::find_if(made.boxes[0].faces.begin(), made.boxes[0].faces.end(),
                             [&](const box_face<inch>& f) { return f.of == p; });
    };
    using axis = std::array<int, 3>;
    CHECK(face(box.top).out == axis{0, 0, 1});
    CHECK(face(box.base).out == axis{0, 0, -1});
    CHECK(face(box.base).rightward == axis{-1, 0, 0}); // seen from below, its right is the box's left
    CHECK(face(box.base).at[2] == -2_in);
    CHECK(face(box.wall[0]).out == axis{0, -1, 0});
    CHECK(face(box.wall[0]).downward == axis{0, 0, -1});
    CHECK(face(box.wall[1]).out == axis{-1, 0, 0});
    CHECK(face(box.wall[2]).out == axis{0, 1, 0});
    CHECK(face(box.wall[3]).out == axis{1, 0, 0});
    // 4 seams of 16 and 4 of 9 on top and base, four of 2 in; the gap of 4 in is left out and makes two runs of its seam.
    length<inch> sewn;
    for (const seam_sewn<inch>& s : made.sewn)
        sewn += s.sewn;
    CHECK(sewn == 16_in * 4 + 9_in * 4 + 2_in * 4 - 4_in);
    CHECK(made.sewn.size() == 13);
    REQUIRE(made.openings.size() == 1);
    CHECK(made.openings[0].wide == 4_in);
}

// The rows of the pad, by hand: two margins of 1 in beside the zipper; the edging's ring, 2; once round the plate and once
// round the base, 2 x (16 + 9) each, in one run although they go round four corners.
TEST_CASE("a pad with a zipped base closes, and its seams are sewn in as many runs as by hand") {
    const zipped_pad pad(seed_box);
    const boxed<inch> made = boxed_of(pad.design);
    CHECK(all_faults(made.faults) == "");
    REQUIRE(made.sewn.size() == 5);
    CHECK(made.sewn[0].sewn == 1_in);
    CHECK(made.sewn[1].sewn == 1_in);
    CHECK(made.sewn[2].sewn == 2_in);
    CHECK(made.sewn[3].sewn == 50_in);
    CHECK(made.sewn[4].sewn == 50_in);
    REQUIRE(made.openings.size() == 1);
    CHECK(made.openings[0].wide == 14_in);
    CHECK(made.openings[0].in == pad.join_of_halves);
}

TEST_CASE("3,000 random boxes of each kind close and measure what was asked") {
    sampler any(21);
    while (any.another_of(3000)) {
        const box_asked b = random_box(any);
        const six_pieces six(b);
        REQUIRE(all_faults(six.design) == "");
        REQUIRE(worst_gap(six.design) == doctest::Approx(0).epsilon(1e-9));
        for (const making<inch>& d : {six.design, zipped_pad(b).design}) {
            const boxed<inch> made = boxed_of(d);
            REQUIRE(all_faults(made.faults) == "");
            REQUIRE(made.boxes.size() == 1);
            REQUIRE(measures(made.boxes[0], b.w, b.h, b.d));
            check_surface(made.boxes[0]);
        }
        const boxed<inch> tray = boxed_of(folded_tray(b).design);
        REQUIRE(all_faults(tray.faults) == "");
        REQUIRE(measures(tray.boxes[0], b.w, b.h, b.d));
        CHECK(tray.boxes[0].open);
        making<inch> bag("bag");
        const boxed_bag_shell shell(bag, b, "panel", false);
        const boxed<inch> made = boxed_of(bag);
        REQUIRE(all_faults(made.faults) == "");
        REQUIRE(measures(made.boxes[0], b.w, b.h + b.s, b.d)); // its top is raw, so the seam's allowance stands up
        for (const operation corner : shell.corners)
            CHECK(std::count_if(made.sewn.begin(), made.sewn.end(), [&](const seam_sewn<inch>& s) {
                      return s.what == corner && s.sewn == b.d; // across both panels in one run
                  }) == 1);
    }
}

// 4 1/2 in of the edging go along each half's side, and the half is 4 7/16 in deep from fold to seam.
TEST_CASE("a half cut short is caught, with both figures and both seams named") {
    const auto made = boxed_of(zipped_pad(seed_box, {.half_short = "1/16"_in}).design);
    REQUIRE(!made.faults.empty());
    CHECK(made.faults[0].sentence ==
          "base half 1 does not close the box: from the seam along its bottom edge to the end of that along its left "
          "edge it measures 4 7/16 in, and what it is sewn to measures 4 1/2 in");
    CHECK(made.faults[0].facts.given->numerator == 71);
    CHECK(made.faults[0].facts.most->numerator == 9);
}

TEST_CASE("what is made wrong is found, in 1,000 random pads") {
    sampler any(22);
    while (any.another_of(1000)) {
        const box_asked b = random_box(any);
        REQUIRE(faults_of(zipped_pad(b, {.half_short = "1/16"_in}).design, fault::disagree,
                          "a seam that closes a box") > 0);
        REQUIRE(faults_of(zipped_pad(b, {.no_mouth = true}).design, fault::missing, "an opening") == 1);
        REQUIRE(faults_of(zipped_pad(b, {.no_clips = true}).design, fault::missing, "a clip") == 6);
    }
}

TEST_CASE("a seam of many spans is sewn in one run, and more spans than there may be are refused") {
    // Two strips, span to span: what is along the one to the right is along the other to the left.
    const auto strips = [](std::int64_t spans) {
        making<inch> d("strips");
        const cut_part one = d.cut({.name = "one", .width = 1_in * (spans + 2), .height = 9_in}),
                       other = d.cut({.name = "other", .width = 1_in * (spans + 2), .height = 9_in});
        seam_of<inch> s{.one = {}, .other = {}};
        for (std::int64_t i = 1; i <= spans; ++i) {
            s.one.push_back(span(one, edge::top, 1_in, 1_in * i, 1_in * (i + 1)));
            s.other.push_back(span(other, edge::top, 1_in, 1_in * (spans + 1 - i), 1_in * (spans + 2 - i)));
        }
        d.add(s);
        return d;
    };
    const auto sewn = boxed_of(strips(300)).sewn;
    REQUIRE(sewn.size() == 1);
    CHECK(sewn[0].sewn == 300_in);
    CHECK(refused::facts<making_error>([&] {
              static_cast<void>(boxed_of(strips(making<inch>::most_turned + 1)));
          }).starts_with("does not fit"));
}

TEST_CASE("creases that part a piece into more areas than boxes are found of are refused, with how many") {
    const auto grid = [](std::int64_t ways) {
        making<inch> d("grid");
        const cut_part cloth = d.cut({.name = "cloth", .width = 1_in * (ways + 1), .height = 1_in * (ways + 1)}),
                       strip = d.cut({.name = "strip", .width = 1_in * (ways + 1), .height = 2_in});
        for (std::int64_t i = 1; i <= ways; ++i)
            for (const edge from : {edge::left, edge::top})
                d.add(quarter(span(cloth, from, 1_in * i, 0_in, 1_in * (ways + 1))));
        d.add(seam_of<inch>{.one = {span(cloth, edge::top, "1/2"_in, 0_in, 1_in * (ways + 1))},
                            .other = {span(strip, edge::top, "1/2"_in, 0_in, 1_in * (ways + 1))},
                            .beyond = beyond_seam::quarter});
        return d;
    };
    // 400 upright and 401 level lines, the seam's among them, make 401 x 402 areas, and the seam 2 of the strip.
    CHECK(refused::message<making_error>([&] { static_cast<void>(boxed_of(grid(400))); }) ==
          "the seams and creases of this design part its pieces into 161204 areas: boxes are found of at most 100000");
    CHECK_NOTHROW(static_cast<void>(boxed_of(grid(60))));
}
