// A program that gets the larger functions from turncloth::compiled: in inches, in centimetres, and in a unit that the
// library was not compiled for.
#include <turncloth.hpp>
#include <turncloth/cloth/lay.hpp>

#include <cstdlib>

#ifndef TURNCLOTH_COMPILED
#error "turncloth::compiled did not say that it holds the functions"
#endif

namespace {

using namespace turncloth;

// By hand: two hems of 1 unit, each turned twice, add four units to each side.
template <length_unit Unit>
bool hemmed() {
    const auto one = length_of<Unit>(1);
    const panel<Unit> cut(finished_size<Unit>(one * 10, one * 8), all_round(double_turned_hem(one, one)));
    const std::string unit(unit_name<Unit>);
    return to_text(cut.cut()) == "14 x 12 " + unit &&
           to_text(cut.width_working()).starts_with("14 " + unit + " = 10 " + unit + " finished");
}

// By hand: 29 beside three of 13 by 9 behind each other, 32 long.
bool laid() {
    const auto lay = lay_out<inch>({{"backing", {29_in, 32_in}, 1}, {"pocket", {13_in, 9_in}, 3}},
                                   {.width = 44_in, .selvedge = "1/2"_in});
    return lay.length == 32_in;
}

} // namespace

int main() {
    return hemmed<inch>() && hemmed<centimetre>() && hemmed<millimetre>() && laid() ? EXIT_SUCCESS : EXIT_FAILURE;
}
