// The round trip of round_trip_test.cpp for thousands of sizes.
#include "round_trip.hpp"

using namespace turncloth;

TEST_CASE("at 4,000 random sizes in inches the cut pieces fold back to what was asked for") {
    round_trip::check_round_trips<inch>(4'000, 20260715);
}

TEST_CASE("at 4,000 random sizes in centimetres they do as well") {
    round_trip::check_round_trips<centimetre>(4'000, 20260716);
}
