// The demonstration's projects carried out: no fault at any size, thread by a list by hand, and what their pockets hold.
#include "../../examples/sheets/projects.hpp"
#include "at_random.hpp"
#include <turncloth/making/executed.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <string>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

template <length_unit Unit>
std::string faults_of(const project<Unit>& p) {
    std::string all;
    for (const making_fault& f : execute(*p.design()).faults)
        all += f.sentence + "\n";
    return all;
}

/// What the sheet's thread is worked out from.
template <length_unit Unit>
length<Unit> rows_on_sheet(const project<Unit>& p) {
    for (const notion<Unit>& n : sheet_of(p).notions)
        for (const auto& d : n.details())
            if (d.what == "rows of stitching, with their ends")
                return d.amount.value();
    return {};
}

} // namespace

/// Whether a pad's filling passes its zipper, in sixteenths of an inch or in millimetres: end on, flat or folded in half.
struct pad_rules {
    std::int64_t margin, least_margin, longest, squeeze;
    bool goes_in(std::int64_t w, std::int64_t h, std::int64_t t) const {
        const std::int64_t along = std::max(w, h), wide = std::min(w, h) + squeeze;
        const auto opens = [&](std::int64_t beside) { return std::min(along - 2 * beside, longest); };
        bool goes = wide + t - 2 * squeeze <= opens(margin) || wide + t - 2 * squeeze <= opens(least_margin);
        for (std::int64_t k = 1; k <= 2; ++k) // 2^k times thicker and as often narrower, where it is 4 times as wide
            if (const std::int64_t parts = std::int64_t{1} << k; wide * 4 >= 4 * t * parts * parts)
                goes |= wide + (t * parts - 2 * squeeze) * parts <= opens(least_margin) * parts;
        return goes;
    }
};

/// Refused where its filling does not go in, for that alone; made without a fault anywhere else.
template <length_unit Unit>
void check_pad(const pad_rules& rules, fraction part, std::int64_t w, std::int64_t h, std::int64_t t) {
    const auto at = [&](std::int64_t n) { return length_of<Unit>(part * n); };
    const auto p = allotment::kneeling_pad::design(finished_size<Unit>(at(w), at(h)), at(t));
    const auto faults = execute(*p.design()).faults;
    CHECK_MESSAGE(faults.empty() == rules.goes_in(w, h, t), p.name() << ", " << w << " x " << h);
    for (const making_fault& f : faults) {
        CHECK(f.facts.kind == fault::no_room);
        CHECK(f.facts.what == "an opening");
    }
}

TEST_CASE("the organiser and the roll are made without a fault at any size") {
    at_random::sampler random(71);
    while (random.another_of(30)) {
        const finished_size<inch> size(random.inches(48) + 12_in, random.inches(34) + 11_in);
        const finished_size<centimetre> metric(random.centimetres(120) + 30_cm, random.centimetres(80) + 28_cm);
        CHECK(faults_of(allotment::organiser::design(size)) == "");
        CHECK(faults_of(allotment::organiser::design(metric)) == "");
        CHECK(faults_of(allotment::tool_roll::design(size)) == "");
        CHECK(faults_of(allotment::tool_roll::design(metric)) == "");
    }
}

TEST_CASE("a pad is made without a fault at any size and thickness where its filling goes in") {
    constexpr pad_rules inches{24, 16, 576, 4}, metric{40, 25, 900, 6};
    at_random::sampler random(83);
    while (random.another_of(300)) {
        check_pad<inch>(inches, {1, 16}, random.between(80, 900), random.between(80, 700), random.between(8, 64));
        check_pad<centimetre>(metric, {1, 10}, random.between(120, 1500), random.between(120, 1100),
                              random.between(15, 100));
    }
}

// The organiser at 20 x 24 in has three strips of five pockets, in inches:
//   the backing's sides, raw, 2 x 28 1/8; its foot and its heading, 20 each                                      96 1/4
//   of each strip: its sides, raw, 2 x 4 5/8; its top, 20 + 5 x 7/8; its foot in tucks, 20; six sides of
//   pockets, 3 3/4 each                                                                         3 x 76 1/8 = 228 3/8
//   34 rows, sewn back over 1/2 at both ends                                                                     34
// The roll at 24 x 18 in has two zippers and eight tool pockets:
//   of each zipper two rows, 22 1/4, and a row of 1 across each end                                   2 x 46 1/2 = 93
//   the tools' hem, 24; seven rows between tools, 9 each; two from side to side of the lining, 24 each            135
//   the binding: at the sides, with top and foot turned once, 21 - 2 x 5/8; top and foot, 24                   87 1/2
//   22 rows, sewn back over                                                                                       22
// The pad at 16 x 10 in, 1 1/2 in thick, its edging in one strip:
//   between the halves, from the cut edge to the zipper's opening, 1/2 + 1 1/2 at both ends                    4
//   beside the zipper, right across each half, 17 each; across each end of its tape 1/4 + 1/4                 35
//   to stay the edging at three corners, above and below, 1 to each side                                      12
//   its ends joined, 1 1/2; the base sewn to it and the top, 2 x (16 + 10) each                          105 1/2
//   15 rows, sewn back over                                                                                   15
// At 12 x 30 in its edging is in four: 4 + 2 x 31 + 1, four joins of 1 3/4, 2 x 84; 12 rows.
TEST_CASE("the thread of each project is that of its rows, listed by hand") {
    CHECK(rows_on_sheet(allotment::kneeling_pad::design(finished_size(16_in, 10_in), "1 1/2"_in)) == "171 1/2"_in);
    CHECK(rows_on_sheet(allotment::kneeling_pad::design(finished_size(12_in, 30_in))) == 254_in);
    CHECK(rows_on_sheet(allotment::organiser::design(finished_size(20_in, 24_in))) == "358 5/8"_in);
    CHECK(rows_on_sheet(allotment::tool_roll::design(finished_size(24_in, 18_in))) == "337 1/2"_in);
}

// By hand, at 24 x 18 in: the binding's row lies 1/2 in from each side; the lining is sewn to its back 1/4 in above the
// tool pockets, which begin at 9, and 1/4 in above the tape of the second zipper, at 4 1/2 - 1/2.
TEST_CASE("the pockets of the roll are as large between their rows as the sheet says") {
    const auto p = allotment::tool_roll::design(finished_size(24_in, 18_in));
    const auto made = execute(*p.design());
    REQUIRE(made.spaces.size() == 11);
    CHECK(made.spaces[0].tallest == "8 1/2"_in);
    CHECK(made.spaces[8].tallest == "3 1/4"_in);
    CHECK(made.spaces[9].tallest == 5_in);
    for (const auto& s : made.spaces) // behind the tool pockets nothing opens
        CHECK(s.openings.size() == (&s == &made.spaces[10] ? 0 : 1));
}
