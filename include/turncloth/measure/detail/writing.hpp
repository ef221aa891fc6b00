// What measure/write.hpp declares and is no template, apart, so that it can be compiled once.
#ifndef TURNCLOTH_MEASURE_DETAIL_WRITING_HPP
#define TURNCLOTH_MEASURE_DETAIL_WRITING_HPP

#include <turncloth/measure/write.hpp>

#include <cstddef>
#include <cstdint>
#include <string>

namespace turncloth {

TURNCLOTH_INLINE std::string to_text(fraction x) {
    const std::uint64_t size = detail::magnitude(numerator(x));
    const auto under = static_cast<std::uint64_t>(denominator(x));
    std::string text = numerator(x) < 0 ? "-" : "";
    if (size >= under || size == 0)
        text += std::to_string(size / under);
    if (under == 1)
        return text;
    if (size >= under)
        text += ' ';
    return text + std::to_string(size % under) + '/' + std::to_string(under);
}

namespace detail {

/// The digits after the point that write a fraction exactly, or -1 where none do (a prime factor other than 2 and 5) or
/// where more than 18 would be needed.
constexpr int exact_decimals(std::int64_t denominator) noexcept {
    int twos = 0, fives = 0;
    for (; denominator % 2 == 0; denominator /= 2)
        ++twos;
    for (; denominator % 5 == 0; denominator /= 5)
        ++fives;
    const int digits = twos > fives ? twos : fives;
    return denominator == 1 && digits <= 18 ? digits : -1;
}

TURNCLOTH_INLINE std::string to_decimal_text(fraction x) {
    const int digits = exact_decimals(denominator(x));
    if (digits < 0)
        return to_text(x);
    std::uint64_t scale = 1;
    for (int i = 0; i < digits; ++i)
        scale *= 10;
    const std::uint64_t size = magnitude(numerator(x)), under = static_cast<std::uint64_t>(denominator(x));
    std::string text = numerator(x) < 0 ? "-" : "";
    text += std::to_string(size / under);
    if (digits == 0)
        return text;
    const std::string tail = std::to_string(size % under * (scale / under));
    return text + '.' + std::string(static_cast<std::size_t>(digits) - tail.size(), '0') + tail;
}

TURNCLOTH_INLINE std::string number_text(fraction number, const written_unit& unit) {
    return unit.decimal ? to_decimal_text(number) : to_text(number);
}

TURNCLOTH_INLINE std::string length_text(fraction number, const written_unit& unit) {
    return number_text(number, unit).append(" ").append(unit.name);
}

TURNCLOTH_INLINE std::string length_text(fraction number, const written_unit& unit, const ruler& by) {
    return as_shown(
        by,
        [&] { return length_text(nearest_to(number * unit.inches, by.inches.value(), by.halfway), written_as<inch>); },
        [&] {
            return length_text(nearest_to(number * unit.centimetres, by.centimetres.value(), by.halfway),
                               written_as<centimetre>);
        });
}

TURNCLOTH_INLINE std::string size_text(fraction width, fraction height, const written_unit& unit, const ruler& by) {
    const auto in = [&](const written_unit& shown, fraction of_it, fraction step) {
        return number_text(nearest_to(width * of_it, step, by.halfway), shown) + " x " +
               length_text(nearest_to(height * of_it, step, by.halfway), shown);
    };
    return as_shown(
        by, [&] { return in(written_as<inch>, unit.inches, by.inches.value()); },
        [&] { return in(written_as<centimetre>, unit.centimetres, by.centimetres.value()); });
}

} // namespace detail

} // namespace turncloth

#endif
