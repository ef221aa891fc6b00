// The demonstration's projects carried out: no fault at any size, thread by a list by hand, and what their pockets hold.
#include "../../examples/sheets/projects.hpp"
#include "at_random.hpp"
#include <turncloth/making/executed.hpp>
#include <turncloth/testing/doctest.hpp>

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
TEST_CASE("the thread of the organiser and of the roll is that of their rows, listed by hand") {
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
