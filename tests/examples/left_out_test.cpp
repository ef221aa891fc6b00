// Faults planted in the demonstration's projects: whatever row is left out, the making no longer holds what it says.
#include "../../examples/sheets/projects.hpp"
#include "at_random.hpp"
#include "making/left_out.hpp"
#include <turncloth/making/executed.hpp>
#include <turncloth/sheet/made_as.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

/// Where the rows are that hold a pocket: those through more than one wall. A hem left open lets nothing out of it.
template <length_unit Unit>
std::vector<std::size_t> rows_of_pockets(const making<Unit>& d) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < d.rows().size(); ++i)
        if (d.rows()[i].through.size() > 1)
            found.push_back(i);
    return found;
}

template <length_unit Unit>
void leave_one_out(at_random::sampler& random, const project<Unit>& p) {
    const making<Unit>& d = *p.design();
    const auto rows = rows_of_pockets(d);
    const std::size_t i = rows[static_cast<std::size_t>(random.between(0, static_cast<int>(rows.size()) - 1))];
    const auto of_family = static_cast<int>(std::max<std::int64_t>(1, d.rows()[i].each.size()));
    const auto made = execute(things::without_row(d, i, random.between(0, of_family - 1)));
    CHECK_MESSAGE(!made.faults.empty(), p.name() << ": " << described(d, {operation_kind::stitching, i}));
}

/// What is found wrong with it, or that it goes round in a circle.
template <length_unit Unit>
bool is_found_out(const making<Unit>& d) {
    try {
        return !execute(d).faults.empty();
    } catch (const making_error&) {
        return true;
    }
}

/// Every row, one of each family: what is wrong then, or left raw beyond what is raw with all of them. The row of a hem in
/// film need not be missed: film does not fray, and stays as it was creased.
template <length_unit Unit>
void leave_each_row_out(const project<Unit>& p) {
    const making<Unit>& d = *p.design();
    const std::size_t raw = execute(d).raw_edges.size();
    CHECK(d.rows().size() > 3);
    for (std::size_t i = 0; i < d.rows().size(); ++i) {
        const stitching<Unit>& row = d.rows()[i];
        if (row.through.size() < 2 && !d.parts()[row.along.on.index].cloth.frays)
            continue;
        const making<Unit> without = things::without_row(d, i, row.each.size() / 2);
        CHECK_MESSAGE((is_found_out(without) || execute(without).raw_edges.size() > raw),
                      p.name() << ": " << described(d, {operation_kind::stitching, i}));
    }
}

template <length_unit Unit>
void leave_each_seam_out(const project<Unit>& p, std::size_t seams) {
    const making<Unit>& d = *p.design();
    CHECK(d.seams().size() == seams);
    CHECK_FALSE(is_found_out(d));
    for (std::size_t i = 0; i < d.seams().size(); ++i)
        CHECK_MESSAGE(is_found_out(things::without_seam(d, i)), p.name()
                                                                    << ": " << described(d, {operation_kind::seam, i}));
}

/// The rows through a zipper's tape, each left out in turn.
template <length_unit Unit>
void leave_each_zipper_row_out(const project<Unit>& p) {
    const making<Unit>& d = *p.design();
    CHECK_FALSE(is_found_out(d));
    int left_out = 0;
    for (std::size_t i = 0; i < d.rows().size(); ++i) {
        const auto& through = d.rows()[i].through;
        if (std::none_of(through.begin(), through.end(),
                         [&](const cut_part& w) { return d.parts()[w.index].name == "zipper"; }))
            continue;
        CHECK_MESSAGE(is_found_out(things::without_row(d, i, 0)),
                      p.name() << ": " << described(d, {operation_kind::stitching, i}));
        ++left_out;
    }
    CHECK(left_out == 4);
}

std::vector<sheet_reason> reasons_against(project<inch> p, const making<inch>& design) {
    try {
        static_cast<void>(sheet_of(p.made_as(design)));
        return {};
    } catch (const sheet_error& refused) {
        return refused.reasons();
    }
}

} // namespace

TEST_CASE("at any size, each row that a pocket needs is missed where it is left out") {
    at_random::sampler random(97);
    while (random.another_of(15)) {
        const finished_size<inch> size(random.inches(25) + 12_in, random.inches(15) + 11_in);
        const finished_size<centimetre> metric(random.centimetres(60) + 30_cm, random.centimetres(40) + 28_cm);
        leave_one_out(random, allotment::tool_roll::design(size));
        leave_one_out(random, allotment::tool_roll::design(metric));
        leave_one_out(random, allotment::organiser::design(size));
        leave_one_out(random, allotment::organiser::design(metric));
    }
}

TEST_CASE("each row of each project is missed where it is left out, hems too") {
    leave_each_row_out(allotment::tool_roll::design(finished_size(24_in, 18_in)));
    leave_each_row_out(allotment::organiser::design(finished_size(24_in, 18_in)));
    leave_each_row_out(allotment::kneeling_pad::design(finished_size("17 1/2"_in, "10 1/2"_in)));
}

// The halves' seam, round the base and round the top; and the edging's ends, once where it is in one, else at each corner.
TEST_CASE("a pad is found out without any one of its seams") {
    leave_each_seam_out(allotment::kneeling_pad::design(finished_size(16_in, 9_in)), 4);
    leave_each_seam_out(allotment::kneeling_pad::design(finished_size("17 1/2"_in, "10 1/2"_in)), 7);
    leave_each_seam_out(allotment::kneeling_pad::design(finished_size(12_in, 12_in), 2_in), 4);
    leave_each_seam_out(allotment::kneeling_pad::design(finished_size(44_cm, 27_cm)), 7);
    const auto p = allotment::kneeling_pad::design(finished_size("17 1/2"_in, "10 1/2"_in));
    const auto faults = execute(things::without_seam(*p.design(), 1)).faults;
    REQUIRE(!faults.empty());
    CHECK(faults[0].sentence ==
          "the compartment \"inside of the cover\" opens at more than its mouths: an edge of long side "
          "of the edging 1 is sewn to nothing");
}

// Common practice: a zipper's tape is sewn down along both sides and across both ends.
TEST_CASE("a pad is found out without any one row of its zipper, and what is missing is said") {
    at_random::sampler random(98);
    while (random.another_of(6)) {
        leave_each_zipper_row_out(allotment::kneeling_pad::design(
            finished_size<inch>(random.inches(20) + 10_in, random.inches(20) + 10_in), 2_in));
        leave_each_zipper_row_out(allotment::kneeling_pad::design(
            finished_size<centimetre>(random.centimetres(50) + 26_cm, random.centimetres(50) + 26_cm), 5_cm));
    }
    const auto p = allotment::kneeling_pad::design(finished_size("17 1/2"_in, "10 1/2"_in));
    const auto only_fault = [&](std::size_t row) {
        const auto faults = execute(things::without_row(*p.design(), row, 0)).faults;
        REQUIRE(faults.size() == 1);
        CHECK(faults[0].facts.kind == fault::missing);
        return faults[0].sentence;
    };
    CHECK(only_fault(0) == "the tape of \"zipper\" is not sewn to base half 1 all along its opening");
    CHECK(only_fault(1) == "the tape of \"zipper\" is not sewn to base half 2 all along its opening");
    CHECK(only_fault(2) == "past the tape of \"zipper\" a tunnel leads in at the left end of its opening: no row goes "
                           "across the tape there");
    CHECK(only_fault(3) == "past the tape of \"zipper\" a tunnel leads in at the right end of its opening: no row goes "
                           "across the tape there");
}

// Sewn along its zippers and bound, and by no further row: under the tool pockets the two zipped pockets are one, and past
// each end of each tape a tunnel leads into it.
TEST_CASE("a roll whose lining is sewn to its back by the binding alone is refused, with every reason") {
    const auto p = allotment::tool_roll::design(finished_size(24_in, 18_in));
    making<inch> bare = *p.design();
    const auto named = [&](const cut_part& part) { return bare.parts()[part.index].name; };
    int left_out = 0;
    for (std::size_t i = bare.rows().size(); i-- > 0;) {
        const stitching<inch> row = bare.rows()[i];
        const bool across_tape_end = named(row.along.on) == "zipper" && !row.along.is_level();
        const bool to_back = named(row.along.on) == "lining" && row.through.size() == 2;
        if (across_tape_end || to_back) {
            bare = things::without_row(bare, i, 0);
            ++left_out;
        }
    }
    CHECK(left_out == 6);
    const auto reasons = reasons_against(p, bare);
    const auto count = [&](const std::string& words) {
        return std::count_if(reasons.begin(), reasons.end(),
                             [&](const sheet_reason& r) { return r.sentence.find(words) != std::string::npos; });
    };
    CHECK(count("\"zipped pocket\" is one hollow with the compartment \"zipped pocket near the top\"") == 1);
    CHECK(count("\"zipped pocket near the top\" leaks 1/2 in wide") == 4);
    CHECK(reasons_against(p, *p.design()).empty());
}
