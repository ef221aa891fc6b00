// The arithmetic of `fraction`, the same source, for every pair of fractions of 6 bits, with integers that notice when a
// step leaves their range, against int. The slow tests have 8 bits.
#include "narrow.hpp"

TEST_CASE("every quotient of 6-bit integers, its sign, floor and ceiling are right, or refused where they do not fit") {
    narrow_integers::check_each<6>();
}

TEST_CASE("every operation on every pair of 6-bit fractions is right, or refused where it does not fit") {
    CHECK(narrow_integers::every_fraction<6>().size() > 1'000);
    narrow_integers::check_every_pair<6>();
}
