// Thread: the table's figures, sums over runs of seams, and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/thread.hpp>

#include <doctest/doctest.h>

#include <array>
#include <vector>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// Ratios of thread to seam for ISO 4915 stitch types, as tabulated after Carr and Latham, The Technology of Clothing
// Manufacture (value from memory, seen in a second-hand copy).
static_assert(stitch(301).ratio == fraction(25, 10));
static_assert(stitch(401).ratio == fraction(55, 10));
static_assert(stitch(503).ratio == 12);
static_assert(stitch(504).ratio == 14);
static_assert(stitch(512).ratio == 18);
static_assert(stitch(516).ratio == 20);
static_assert(stitch(406).ratio == 18);
static_assert(stitch(602).ratio == 25);
static_assert(stitch(605).ratio == 28);
static_assert(stitch(606).ratio == 32);

// A tool roll: four seams of 20 in and six of 12 in locked, and the long edges overcast.
constexpr std::array<seam_run<inch>, 3> tool_roll = {{
    {stitch(301), 20_in, 4, "1/2"_in}, // sewn back over 1/2 in at each end (US Army TM 10-8415-210-13&P 5-8, published)
    {stitch(301), 12_in, 6, "1/2"_in},
    {stitch(504), 20_in, 2, {}},
}};
static_assert(thread_for<inch>(tool_roll) == 965_in); // 162 in at 5/2 and 40 in at 14: 405 + 560
constexpr seam_run<inch> sides[] = {{stitch(301), 20_in, 4, "1/2"_in}};
static_assert(thread_for<inch>(sides) == 210_in); // the synopsis: 5/2 x 4 x (20 + 2 x 1/2)
static_assert(with_waste(965_in, {1, 5}) == 1158_in);
static_assert(spools(1158_in, as<inch>(length_of<yard>(10))) == 4);
static_assert(spools(0_in, 10_in) == 0);

} // namespace

TEST_CASE("thread adds up over any runs, in proportion to seams, ends and ratios") {
    reference::sampler random(1933);
    while (random.another_of(1'000)) {
        std::vector<seam_run<centimetre>> runs;
        length<centimetre> thread;
        for (std::int64_t k = random.between(0, 6); k > 0; --k) {
            const stitch_type& s = stitch_types[static_cast<std::size_t>(random.between(0, 9))];
            runs.push_back({s, random.centimetres(100), random.between(0, 5), random.centimetres(2)});
            for (std::int64_t n = 0; n < runs.back().count; ++n) { // seam by seam
                const length<centimetre> one = runs.back().sewn + runs.back().overrun + runs.back().overrun;
                thread += one * s.ratio;
            }
        }
        CHECK(thread_for<centimetre>(runs) == thread);
        const length<centimetre> spool = random.centimetres(1'000) + 1_cm;
        CHECK(spool * spools(thread, spool) >= thread);
        CHECK(spool * (spools(thread, spool) - 1) < thread + (thread.value() == 0 ? 1_cm : 0_cm));
    }
}

TEST_CASE("a ratio of one's own is used as given") {
    const std::array<seam_run<inch>, 1> hand = {
        {{stitch_type{209, "running stitch, measured", {6, 5}}, 100_in, 1, {}}}};
    CHECK(thread_for<inch>(hand) == 120_in);
}

TEST_CASE("thread that cannot be worked out says why") {
    CHECK(message<thread_error>([] { return stitch(101); }) ==
          "no thread ratio is listed for stitch type 101: there are 301, 401, 406, 503, 504, 512, 516, 602, 605, 606");
    const auto run = [](seam_run<inch> r) { return message<thread_error>([&] { return thread_for<inch>({&r, 1}); }); };
    CHECK(run({stitch(301), "-1"_in, 1, {}}) == "the length of a seam must be zero or more: it was -1 in");
    CHECK(run({stitch(301), 1_in, -1, {}}) == "the number of seams must be at least 0: it was -1");
    CHECK(run({stitch(301), 1_in, 1, "-1/2"_in}) ==
          "what is sewn over at a seam's end must be zero or more: it was -1/2 in");
    CHECK(run({stitch_type{301, "", {1, 2}}, 1_in, 1, {}}) ==
          "the thread of a stitch, over the length of its seam, must be at least 1: it was 1/2");
    CHECK(message<thread_error>([] {
              return with_waste(10_in, {-1, 10});
          }) == "the part for waste must be zero or more: it was -1/10");
    CHECK(facts<thread_error>([&] { return spools(10_in, 0_in); }) ==
          "too small: the length on a spool, given 0 in, least 0 in");
    CHECK(facts<thread_error>([&] { return spools("-1"_in, 10_in); }) ==
          "too small: the length of thread, given -1 in, least 0 in");
}
