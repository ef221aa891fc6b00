// 500 random sizes of every project on six rulers. The three that people use must do for all of them.
#include "on_ruler.hpp"

using namespace on_ruler_checks;

namespace {

template <length_unit Unit>
void on(std::uint64_t seed, length<Unit> graduation, bool must_pass) {
    at_random::sampler random(seed);
    const ruler_tally tally = sheets_on_ruler<Unit>(random, 500, graduation, must_pass);
    MESSAGE("on a ruler of " << to_text(graduation) << ": " << tally.passed << " sheets, " << tally.refused
                             << " too coarse, " << tally.too_small << " that cannot be made at all");
    CHECK((!must_pass || tally.passed > 1000));
}

} // namespace

TEST_CASE("what is printed of 500 sizes of every project adds up on a ruler of 1/16 in") { on(7201, "1/16"_in, true); }
TEST_CASE("what is printed of 500 sizes of every project adds up on a ruler of 1/8 in") { on(7202, "1/8"_in, true); }
TEST_CASE("what is printed of 500 sizes of every project adds up on a ruler of 1 mm") { on(7203, "0.1"_cm, true); }
TEST_CASE("on a ruler of 1/4 in a project adds up, or the ruler is refused") { on(7204, "1/4"_in, false); }
TEST_CASE("on a ruler of 2.5 mm a project adds up, or the ruler is refused") { on(7205, "0.25"_cm, false); }
TEST_CASE("on a ruler of 5 mm a project adds up, or the ruler is refused") { on(7206, "0.5"_cm, false); }
