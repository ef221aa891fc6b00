// Drafted figures as a ruler shows them, each rounded from its double.
//
//   drafted_text(length, ruler)   drafted_size_text(width, height, ruler)   drafted_area_text<U>(number, ruler)
#ifndef TURNCLOTH_DRAW_DETAIL_DRAFTED_WORDS_HPP
#define TURNCLOTH_DRAW_DETAIL_DRAFTED_WORDS_HPP

#include <turncloth/draw/detail/words.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/panel/drafted.hpp>

#include <string>

namespace turncloth::detail {

template <length_unit Unit>
std::string drafted_text(drafted_length<Unit> l, const ruler& by) {
    return as_shown(
        by, [&] { return to_text(on_graduation(l, by.inches, by.halfway)); },
        [&] { return to_text(on_graduation(l, by.centimetres, by.halfway)); });
}

/// "12 x 8 in (30.5 x 20.3 cm)"
template <length_unit Unit>
std::string drafted_size_text(drafted_length<Unit> width, drafted_length<Unit> height, const ruler& by) {
    const auto in = [&](auto step) {
        return number_text(on_graduation(width, step, by.halfway))
            .append(word(" x "))
            .append(to_text(on_graduation(height, step, by.halfway)));
    };
    return as_shown(
        by, [&] { return in(by.inches); }, [&] { return in(by.centimetres); });
}

/// In tenths of a square inch and of a square centimetre: a ruler has no graduation for areas.
template <length_unit Unit>
std::string drafted_area_text(double number, const ruler& by) {
    const auto tenths = [&](fraction units, const char* name) {
        const fraction step = fraction(1, 10) / (units * units);
        const fraction whole_tenths = approximate(number, step).value / step;
        return to_decimal_text(whole_tenths / 10).append(word(name));
    };
    return as_shown(
        by, [&] { return tenths(units_per<inch, Unit>, " sq in"); },
        [&] { return tenths(units_per<centimetre, Unit>, " sq cm"); });
}

} // namespace turncloth::detail

#endif
