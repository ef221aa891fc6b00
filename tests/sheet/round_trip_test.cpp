// Folding the pieces of the three example projects by their sheets' own lines gives back the size that was asked for;
// round_trip_slow_test.cpp does it for many more.
#include "round_trip.hpp"

using namespace turncloth;

TEST_CASE("folded by its own lines, every piece of the three projects comes out at the size asked for") {
    round_trip::check_round_trips<inch>(500, 20260713);
}

TEST_CASE("so does every piece of the metric editions") { round_trip::check_round_trips<centimetre>(500, 20260714); }

TEST_CASE("a sheet in yards or metres folds back as those in inches and centimetres do") {
    round_trip::check_organiser(length_of<yard>({2, 3}), length_of<yard>({5, 6}));
    round_trip::check_tool_roll(length_of<metre>({3, 4}), length_of<metre>({1, 2}));
    round_trip::check_kneeling_pad(length_of<foot>(2), length_of<foot>(1), length_of<foot>({1, 6}));
}
