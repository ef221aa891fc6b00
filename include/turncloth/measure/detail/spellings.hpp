// How measurements are spelt: the characters for vulgar fractions and the names and signs of units.
#ifndef TURNCLOTH_MEASURE_DETAIL_SPELLINGS_HPP
#define TURNCLOTH_MEASURE_DETAIL_SPELLINGS_HPP

#include <turncloth/measure/length.hpp>

#include <array>
#include <string_view>

namespace turncloth::detail {

struct vulgar {
    std::string_view character;
    fraction value;
};

// The vulgar fractions of ISO/IEC 10646 (Latin-1 Supplement and Number Forms), as UTF-8.
inline constexpr std::array<vulgar, 18> vulgar_fractions = {{
    {"\u00BC", {1, 4}},
    {"\u00BD", {1, 2}},
    {"\u00BE", {3, 4}},
    {"\u2150", {1, 7}},
    {"\u2151", {1, 9}},
    {"\u2152", {1, 10}},
    {"\u2153", {1, 3}},
    {"\u2154", {2, 3}},
    {"\u2155", {1, 5}},
    {"\u2156", {2, 5}},
    {"\u2157", {3, 5}},
    {"\u2158", {4, 5}},
    {"\u2159", {1, 6}},
    {"\u215A", {5, 6}},
    {"\u215B", {1, 8}},
    {"\u215C", {3, 8}},
    {"\u215D", {5, 8}},
    {"\u215E", {7, 8}},
}};

struct unit_spelling {
    std::string_view text;
    fraction inches;
};

template <class Unit>
inline constexpr fraction inches_in = unit_facts<Unit>::inches;

// Within one first letter the longer spellings come first, so that the first match is the longest.
inline constexpr std::array<unit_spelling, 34> unit_spellings = {{
    {"inches", 1},
    {"inch", 1},
    {"ins", 1},
    {"in", 1},
    {"\"", 1},
    {"''", 1},
    {"\u2033", 1},
    {"\u201D", 1},
    {"feet", 12},
    {"foot", 12},
    {"ft", 12},
    {"'", 12},
    {"\u2032", 12},
    {"\u2019", 12},
    {"yards", 36},
    {"yard", 36},
    {"yds", 36},
    {"yd", 36},
    {"millimetres", inches_in<millimetre>},
    {"millimetre", inches_in<millimetre>},
    {"millimeters", inches_in<millimetre>},
    {"millimeter", inches_in<millimetre>},
    {"mm", inches_in<millimetre>},
    {"centimetres", inches_in<centimetre>},
    {"centimetre", inches_in<centimetre>},
    {"centimeters", inches_in<centimetre>},
    {"centimeter", inches_in<centimetre>},
    {"cms", inches_in<centimetre>},
    {"cm", inches_in<centimetre>},
    {"metres", inches_in<metre>},
    {"metre", inches_in<metre>},
    {"meters", inches_in<metre>},
    {"meter", inches_in<metre>},
    {"m", inches_in<metre>},
}};

} // namespace turncloth::detail

#endif
