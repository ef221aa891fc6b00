// Sheets worked out on a ruler: a few sizes of each project, and what is printed of them. The slow test has 500.
#include "on_ruler.hpp"

using namespace on_ruler_checks;

TEST_CASE("on usual rulers what is printed of every project adds up") {
    at_random::sampler random(7101);
    CHECK(sheets_on_ruler<inch>(random, 4, "1/16"_in, true).passed > 0);
    CHECK(sheets_on_ruler<inch>(random, 4, "1/8"_in, true).passed > 0);
    CHECK(sheets_on_ruler<centimetre>(random, 4, "0.1"_cm, true).passed > 0);
}
