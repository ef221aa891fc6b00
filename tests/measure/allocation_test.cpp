// Nothing in this room allocates, but for the strings that to_text returns and the errors that are thrown.
#include "../allocations.hpp"
#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/working.hpp>

#include <doctest/doctest.h>

#include <functional>

using namespace turncloth;

namespace {

struct bench_end {};

} // namespace

TEST_CASE("the count sees an allocation") {
    const auto long_named = figure<inch>().plus(unforeseen(1_in), "a name that no short string holds");
    CHECK(allocations_of([&] { static_cast<void>(to_text(long_named)); }) > 0);
}

TEST_CASE("arithmetic, rounding, roots, places, reading and workings allocate nothing") {
    const fraction x = unforeseen(fraction(25, 3)), y = unforeseen(fraction(7, 64));
    const auto l = unforeseen("12 1/2"_in);
    bool right = false;
    CHECK(allocations_of([&] {
              const fraction sum = x + y - x * y / (x - y);
              right = sum < x + y && floor(sum) < ceil(sum) && std::hash<fraction>{}(sum) != 0;
          }) == 0);
    CHECK(right);
    CHECK(allocations_of([&] {
              right = as<inch>(as<centimetre>(l)) == l && nearest_to(l, 1_in) == 12_in && up_to(l, 1_in) == 13_in &&
                      diagonal(l, l, "1/8"_in, rounding::up) > l && times_pi(l, "1/8"_in, rounding::down) > l &&
                      approximate(to_double(x), {1, 64}).value > 0;
          }) == 0);
    CHECK(right);
    CHECK(allocations_of([&] {
              const auto p = at<bench_end>(l) + 1_in;
              right = p - at<bench_end>(l) == 1_in;
          }) == 0);
    CHECK(right);
    CHECK(allocations_of([&] { right = read_length<inch>("1 yd 4½\"") == 40.5_in && read_fraction("-31,75") < 0; }) ==
          0);
    CHECK(right);
    CHECK(allocations_of([&] {
              const auto f = figure<inch>().plus(l, "finished").plus_times(2, {1_in, "1/4"_in}, "hems");
              right = f.value() == 15_in;
          }) == 0);
    CHECK(right);
}
