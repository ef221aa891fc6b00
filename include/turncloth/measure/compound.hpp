// Lengths in two units, as they are called out and written on a drawing.
//
//   feet_and_inches(l)                        "9 ft 9 in", "2 ft 3 1/2 in"
//   feet_and_inches(l, unit_marks::signs)     9' 9"
//   yards_and_inches(l)                       "1 yd 4 in"
//   yards_and_eighths(l)                      "1 3/8 yd"; what is no whole eighth follows in inches
//
//   feet_and_inches(27.5_in) == "2 ft 3 1/2 in";   read_length<inch>(feet_and_inches(27.5_in)) == 27.5_in;
//
// All exact: read_length reads back what it was. Round to a graduation first where it is to be shown on a ruler.
#ifndef TURNCLOTH_MEASURE_COMPOUND_HPP
#define TURNCLOTH_MEASURE_COMPOUND_HPP

#include <turncloth/measure/length.hpp>
#include <turncloth/measure/write.hpp>

#include <string>
#include <string_view>

namespace turncloth {

/// How units are written: "ft" and "in", or ' and ".
enum class unit_marks { words, signs };

namespace detail {

/// Two units, so that `inches` of one are a step of the larger.
struct two_units {
    fraction step; ///< in inches, of which the larger unit is counted
    fraction larger;
    std::string_view larger_mark, inch_mark;
};

/// The larger unit in whole steps, then what is left in inches; one of them alone where the other is nothing. The sign
/// stands once, before both, as read_length takes it.
inline std::string compound_text(fraction inches, const two_units& units) {
    const fraction size = abs(inches);
    const fraction in_larger = units.step * floor(size / units.step), rest = size - in_larger;
    std::string text = inches < 0 ? "-" : "";
    if (in_larger > 0)
        text.append(to_text(in_larger / units.larger)).append(units.larger_mark);
    if (in_larger > 0 && rest > 0)
        text += ' ';
    if (rest > 0 || in_larger == 0)
        text.append(to_text(rest)).append(units.inch_mark);
    return text;
}

} // namespace detail

/// Throws overflow_error, as the next two do, where 64 bits do not hold the length in inches.
template <length_unit Unit>
std::string feet_and_inches(length<Unit> l, unit_marks as_written = unit_marks::words) {
    const bool signs = as_written == unit_marks::signs;
    return detail::compound_text(as<inch>(l).value(), {12, 12, signs ? "'" : " ft", signs ? "\"" : " in"});
}

template <length_unit Unit>
std::string yards_and_inches(length<Unit> l) {
    return detail::compound_text(as<inch>(l).value(), {36, 36, " yd", " in"});
}

/// As cloth is sold by the yard.
template <length_unit Unit>
std::string yards_and_eighths(length<Unit> l) {
    return detail::compound_text(as<inch>(l).value(), {{9, 2}, 36, " yd", " in"});
}

} // namespace turncloth

#endif
