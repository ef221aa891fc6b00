// Folding the pieces of the three example projects by their sheets' own lines gives back the size that was asked for;
// round_trip_slow_test.cpp does it for many more.
#include "round_trip.hpp"

using namespace turncloth;

TEST_CASE("folded by its own lines, every piece of the three projects comes out at the size asked for") {
    round_trip::check_round_trips<inch>(500, 20260713);
}

TEST_CASE("so does every piece of the metric editions") { round_trip::check_round_trips<centimetre>(500, 20260714); }
