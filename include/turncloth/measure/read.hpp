// Reading measurements as people write them.
//
//   read_fraction(text)     a number alone: "12", "12 1/2", "12-1/2", "12½", "12.5", "31,75", "-3/4"
//   read_length<U>(text)    the same with a unit, or in `U` where none is written; and sums: "1 yd 4 in", "5' 3 1/2\""
//   try_read_length<U>(text)   the same, and where it is none, the refusal as a value: nothing is thrown
//
//   read_length<inch>(" 12-1/2\" ") == "12 1/2"_in;
//   read_length<inch>("31,75 cm") == "12 1/2"_in;
//
// Units: in ins inch inches " ″ ''   ft foot feet ' ′   yd yard yards   mm cm m and their names, capitals allowed. A sum
// may have a comma and a blank, or after ' a dash, between its numbers; 5'3 is in inches, 1m80 in centimetres, 12" 1/2 a
// half of an inch more. Any other comma is a decimal comma. Nothing is rounded and nothing is guessed: "1,000" could be one or a thousand, so it is refused.
// Both functions are constexpr and throw text_error, which says at which character the text fails and why, or
// overflow_error where a sum does not fit. A literal with a mistake in it does not compile.
#ifndef TURNCLOTH_MEASURE_READ_HPP
#define TURNCLOTH_MEASURE_READ_HPP

#include <turncloth/measure/detail/reader.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/outcome.hpp>

#include <concepts>
#include <cstddef>
#include <string_view>

namespace turncloth {

/// A number without a unit, as people write it. Throws text_error or overflow_error.
constexpr fraction read_fraction(std::string_view text) {
    detail::measure_reader reader(text);
    const fraction value = reader.number_alone();
    reader.require_read();
    return value;
}

/// A length as people write it, exactly, in the unit asked for; a number without a unit is taken to be in that unit.
/// Throws text_error or overflow_error.
template <length_unit Unit>
constexpr length<Unit> read_length(std::string_view text) {
    constexpr fraction inches = unit_facts<Unit>::inches;
    detail::measure_reader reader(text);
    const fraction value = reader.length_in(inches);
    reader.require_read();
    return length_of<Unit>(value);
}

/// Only where no unit is named: with one, it would stand where the sentence does.
template <class Please = please::name_the_unit_to_read_in_for_instance_read_length_of_inch>
    requires std::same_as<Please, please::name_the_unit_to_read_in_for_instance_read_length_of_inch>
void read_length(std::string_view) = delete;

/// The length that read_length gives, or the error that it throws. Throws nothing, and needs no exceptions.
template <length_unit Unit>
outcome<length<Unit>> try_read_length(std::string_view text) {
    detail::measure_reader reader(text);
    const length<Unit> l = length_of<Unit>(reader.length_in(unit_facts<Unit>::inches));
    if (reader.has_failed())
        return reader.why_not();
    return l;
}

namespace detail {

/// The characters of a literal as a template argument.
template <std::size_t Size>
struct literal_text {
    char characters[Size];
    consteval literal_text(const char (&literal)[Size]) {
        for (std::size_t i = 0; i < Size; ++i)
            characters[i] = literal[i];
    }
};

/// Read while the program is compiled, wherever it stands.
template <class Unit, literal_text Text>
struct quoted_literal {
    static constexpr length<Unit> value = read_length<Unit>({Text.characters, sizeof(Text.characters) - 1});
};

/// In a constant expression: true, or no constant at all.
template <class Unit>
constexpr bool is_read(std::string_view text) {
    static_cast<void>(read_length<Unit>(text));
    return true;
}

/// The same for digits without quotation marks.
template <class Unit, char... Digits>
struct literal {
    static constexpr char text[] = {Digits...};
    static constexpr length<Unit> value = read_length<Unit>({text, sizeof...(Digits)});
};

} // namespace detail

/// Literals, to be had with `using namespace turncloth::literals`: 12_in, 12.5_in, "12 1/2"_in, 30_cm, "31,75"_cm.
/// The digits are read as written, so that 0.1_cm is one tenth exactly; a mistake in one does not compile.
inline namespace literals {

template <char... Digits>
constexpr length<inch> operator""_in() {
    return detail::literal<inch, Digits...>::value;
}
template <char... Digits>
constexpr length<foot> operator""_ft() {
    return detail::literal<foot, Digits...>::value;
}
template <char... Digits>
constexpr length<yard> operator""_yd() {
    return detail::literal<yard, Digits...>::value;
}
template <char... Digits>
constexpr length<millimetre> operator""_mm() {
    return detail::literal<millimetre, Digits...>::value;
}
template <char... Digits>
constexpr length<centimetre> operator""_cm() {
    return detail::literal<centimetre, Digits...>::value;
}
template <char... Digits>
constexpr length<metre> operator""_m() {
    return detail::literal<metre, Digits...>::value;
}

// Text too is read while compiling, wherever it stands. Clang 14 crashes where such a literal stands in a list, so there
// its attribute for conditions on arguments refuses what cannot be read.
#if defined(__clang__) && __clang_major__ < 15
#pragma clang diagnostic push
#pragma clang diagnostic ignored "-Wgcc-compat"
#define TURNCLOTH_QUOTED(unit, suffix)                                                                              \
    constexpr length<unit> operator""##suffix(const char* text, std::size_t n)                                      \
        __attribute__((enable_if(detail::is_read<unit>({text, n}), "cannot_read_because: it is no measurement"))) { \
        return read_length<unit>({text, n});                                                                        \
    }
#else
#define TURNCLOTH_QUOTED(unit, suffix)                    \
    template <detail::literal_text Text>                  \
    constexpr length<unit> operator""##suffix() {         \
        return detail::quoted_literal<unit, Text>::value; \
    }
#endif
TURNCLOTH_QUOTED(inch, _in)
TURNCLOTH_QUOTED(foot, _ft)
TURNCLOTH_QUOTED(yard, _yd)
TURNCLOTH_QUOTED(millimetre, _mm)
TURNCLOTH_QUOTED(centimetre, _cm)
TURNCLOTH_QUOTED(metre, _m)
#undef TURNCLOTH_QUOTED
#if defined(__clang__) && __clang_major__ < 15
#pragma clang diagnostic pop
#endif

} // namespace literals

} // namespace turncloth

#endif
