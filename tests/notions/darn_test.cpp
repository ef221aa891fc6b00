// Darns: what is published, at compile time; rows laid one by one, and thread followed from row to row, at random; needlefuls
// threaded one after another; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/darn.hpp>

#include <doctest/doctest.h>

#include <algorithm>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// Burton and Burton, School Sewing Based on Home Problems, par. 154 (published): rows begin about 1/2 in from the hole, and go on
// about 1/2 in beyond it. So across a hole of 2 in each is 3 in long, and across one of 1 in, 2 in (by hand).
constexpr darn<inch> hole{.worn = {2_in, 1_in}, .reach = "1/2"_in, .apart = "1/8"_in, .loop = "1/16"_in};
static_assert(darn_across(hole).each == 3_in && darn_down(hole).each == 2_in);
// By hand: 3 in hold 24 spaces of 1/8 in, so 25 rows down; 2 in hold 16, so 17 across.
static_assert(darn_down(hole).count == 25 && darn_across(hole).count == 17);
static_assert(darn_down(hole).apart == "1/8"_in);
// 25 x 2 in, and 24 turns of 1/8 and 1/16 in: a loop is left at the turn for what the thread shrinks (The New Dressmaker, 1921, p.
// 147, says that one is; how large is common practice).
static_assert(row_thread(darn_down(hole), hole.loop).value() == "54 1/2"_in);
// By hand: 25 threads in 1 in, every second: 2/25 in.
static_assert(apart_by_threads(25, 1_in, 2) == length_of<inch>({2, 25}));
// A needleful of 24 in with ends of 1 in holds 22 in: ten rows take 20 and nine turns 1 11/16; eleven would take 23 7/8.
static_assert(needlefuls_for<inch>(darn_down(hole), hole.loop, {24_in, 1_in}).rows == 10);
static_assert(needlefuls_for<inch>(darn_down(hole), hole.loop, {24_in, 1_in}).count == 3);
static_assert(needlefuls_for<inch>(darn_down(hole), hole.loop, {24_in, 1_in}).thread == 72_in);
// By hand: a single row has no turn, and of none its thread says nothing; two have one turn.
constexpr darn_rows<inch> one_row{.count = 1, .apart = "1/8"_in, .each = 2_in},
    two_rows{.count = 2, .apart = "1/8"_in, .each = 2_in};
constexpr figure<inch> thread_of_one = row_thread(one_row, "1/16"_in);
static_assert(thread_of_one.value() == 2_in && thread_of_one.terms().size() == 1);
static_assert(row_thread(two_rows, "1/16"_in).value() == "4 3/16"_in);
static_assert(needlefuls_for<inch>(one_row, "1/16"_in, {4_in, 1_in}).count == 1);

/// Threads one needleful after another, row by row.
std::int64_t threaded(const darn_rows<inch>& rows, length<inch> loop, const needleful<inch>& n) {
    std::int64_t used = 0;
    length<inch> left;
    bool in_work = false;
    for (std::int64_t row = 0; row < rows.count; ++row) {
        const length<inch> next = rows.apart + loop + rows.each;
        if (in_work && left >= next + n.tail) {
            left -= next;
            continue;
        }
        ++used;
        in_work = true;
        left = n.cut - n.tail - rows.each;
    }
    return used;
}

} // namespace

TEST_CASE("rows of a darn begin at one side and end at the other, no further apart than asked, and no fewer would do") {
    reference::sampler random(421);
    while (random.another_of(2'000)) {
        const length<inch> apart = random.inches(1);
        const darn<inch> d{.worn = {apart + random.inches(6), apart + random.inches(6)},
                           .reach = random.inches(2),
                           .apart = apart,
                           .loop = random.inches(1)};
        const darn_rows<inch> down = darn_down(d);
        const length<inch> across = d.worn.width() + d.reach * 2;
        CHECK(down.apart * (down.count - 1) == across);
        CHECK(down.apart <= d.apart);
        CHECK(d.apart * (down.count - 2) < across);
        CHECK(down.each == d.worn.height() + d.reach + d.reach);
        length<inch> thread = down.each;
        for (std::int64_t row = 1; row < std::min<std::int64_t>(down.count, 2'000); ++row)
            thread += down.apart + d.loop + down.each;
        if (down.count <= 2'000)
            CHECK(row_thread(down, d.loop).value() == thread);
    }
}

TEST_CASE("needlefuls make as many rows as when they are threaded one after another") {
    reference::sampler random(422);
    while (random.another_of(1'000)) {
        const length<inch> apart = random.inches(1) + "1/8"_in;
        const darn<inch> d{.worn = {apart + random.inches(6), apart + random.inches(6)},
                           .reach = random.inches(2),
                           .apart = apart,
                           .loop = random.inches(1)};
        const darn_rows<inch> down = darn_down(d);
        const length<inch> tail = random.inches(2);
        const needleful<inch> n{down.each + tail * 2 + random.inches(40), tail};
        const needlefuls<inch> made = needlefuls_for(down, d.loop, n);
        CHECK(made.count == threaded(down, d.loop, n));
        CHECK(made.rows * (made.count - 1) < down.count); // the last is used
        CHECK(down.count <= made.rows * made.count);      // and all are made
        CHECK(made.thread == n.cut * made.count);
    }
    // Exactly two rows and their turn.
    const darn_rows<inch> two{.count = 3, .apart = "1/8"_in, .each = 2_in};
    CHECK(needlefuls_for<inch>(two, "1/8"_in, {"6 1/4"_in, 1_in}).rows == 2);
    CHECK(needlefuls_for<inch>(two, "1/8"_in, {"6 3/16"_in, 1_in}).rows == 1);
}

TEST_CASE("a darn that does not fill, or thread too short for a row, is refused with its figures") {
    CHECK(message<darn_error>([] {
              darn_across<inch>({{4_in, "1/4"_in}, "1/2"_in, "1/2"_in});
          }) == "rows 1/2 in apart do not fill what is worn 1/4 in across");
    CHECK(facts<darn_error>([] {
              darn_across<inch>({{4_in, "1/4"_in}, "1/2"_in, "1/2"_in});
          }) == "too large: the distance of two rows, given 1/2 in, most 1/4 in");
    CHECK(darn_across<inch>({{4_in, "1/2"_in}, "1/2"_in, "1/2"_in}).count == 4);
    CHECK(message<darn_error>([] {
              needlefuls_for<inch>(darn_down(hole), 0_in, {3_in, 1_in});
          }) == "a needleful of 3 in does not make one row of 2 in with ends of 1 in");
    CHECK(facts<darn_error>([] {
              needlefuls_for<inch>(darn_down(hole), 0_in, {3_in, 1_in});
          }) == "too small: a needleful, given 3 in, least 4 in");
    CHECK(needlefuls_for<inch>(darn_down(hole), 0_in, {4_in, 1_in}).rows == 1);
    CHECK(facts<darn_error>([] {
              darn_down<inch>({{1_in, 1_in}, 0_in, "1/8"_in});
          }) == "too small: the reach of a darn, given 0 in, least 0 in");
    CHECK(facts<darn_error>([] {
              row_thread<inch>({0, 1_in, 2_in}, 0_in);
          }) == "too small: the number of rows, given 0, least 1");
    CHECK(facts<darn_error>([] {
              needlefuls_for<inch>({0, 1_in, 2_in}, 0_in, {4_in, 1_in});
          }) == "too small: the number of rows, given 0, least 1");
    CHECK(facts<darn_error>([] { apart_by_threads(0, 1_in, 1); }) ==
          "too small: the number of threads, given 0, least 1");
    CHECK(facts<darn_error>([] { apart_by_threads(20, 1_in, 0); }) ==
          "too small: the number of threads from row to row, given 0, least 1");
}
