// Lengths whose unit is known only when the program runs, and the way from there to the types that know theirs.
//
//   any_unit                        one of the six; name_of(u), any_unit_of<U>
//   any_length                      number() in unit(), as it was typed; of a sum, in its last unit
//   read_any_length(text, u)        in u where no unit is written; try_read_any_length
//   as<U>(l)   to_text(l)           exact; "60 cm" stays that
//   in_unit(u, f)                   f.template operator()<U>() of the unit
//   in_edition(u, f)                the same of inch or centimetre, whichever system u belongs to
//   by_edition<U>(inches, centimetres)     of two lengths the one for that system, in U
//
//   const any_length typed = read_any_length("60 cm", any_unit::inches);
//   std::string cut = in_edition(typed.unit(), [&]<class Unit>() { return to_text(as<Unit>(typed) + by_edition<Unit>(1_in, 2_cm)); });
//
// So a program is written once, as a template of the unit, and does not round from one unit to another.
#ifndef TURNCLOTH_MEASURE_ANY_LENGTH_HPP
#define TURNCLOTH_MEASURE_ANY_LENGTH_HPP

#include <turncloth/measure/detail/reader.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/outcome.hpp>
#include <turncloth/measure/write.hpp>

#include <iosfwd>
#include <string>
#include <string_view>

namespace turncloth {

enum class any_unit : unsigned char { inches, feet, yards, millimetres, centimetres, metres };

/// Calls `f.template operator()<Unit>()` with the type of the unit: `f` is a lambda like `[]<class Unit>() { return ...; }`.
template <class F>
constexpr decltype(auto) in_unit(any_unit u, F&& f) {
    switch (u) {
    case any_unit::inches:
        break;
    case any_unit::feet:
        return f.template operator()<foot>();
    case any_unit::yards:
        return f.template operator()<yard>();
    case any_unit::millimetres:
        return f.template operator()<millimetre>();
    case any_unit::centimetres:
        return f.template operator()<centimetre>();
    case any_unit::metres:
        return f.template operator()<metre>();
    }
    return f.template operator()<inch>();
}

constexpr bool is_metric(any_unit u) {
    return in_unit(u, []<class Unit>() { return metric_unit<Unit>; });
}

/// The same with inch or centimetre: the two units that sheets are made in.
template <class F>
constexpr decltype(auto) in_edition(any_unit u, F&& f) {
    return is_metric(u) ? f.template operator()<centimetre>() : f.template operator()<inch>();
}

/// A measure that has a round figure of its own in each system: never 1.27 cm for a seam of 1/2 in.
template <length_unit Unit>
constexpr length<Unit> by_edition(length<inch> inches, length<centimetre> centimetres) {
    if constexpr (metric_unit<Unit>)
        return as<Unit>(centimetres);
    else
        return as<Unit>(inches);
}

constexpr std::string_view name_of(any_unit u) {
    return in_unit(u, []<class Unit>() { return unit_name<Unit>; });
}

namespace detail {

constexpr fraction inches_of(any_unit u) {
    return in_unit(u, []<class Unit>() { return unit_facts<Unit>::inches; });
}

/// The unit of so many inches, which is one of the six.
constexpr any_unit unit_of_inches(fraction inches) {
    for (const any_unit u :
         {any_unit::feet, any_unit::yards, any_unit::millimetres, any_unit::centimetres, any_unit::metres})
        if (inches_of(u) == inches)
            return u;
    return any_unit::inches;
}

} // namespace detail

template <length_unit Unit>
inline constexpr any_unit any_unit_of = detail::unit_of_inches(unit_facts<Unit>::inches);

class any_length {
public:
    constexpr any_length() = default;
    constexpr any_length(fraction number, any_unit unit) : number_(number), unit_(unit) {}
    template <length_unit Unit>
    constexpr any_length(const boost::units::quantity<Unit, fraction>& l) : any_length(l.value(), any_unit_of<Unit>) {}

    constexpr fraction number() const { return number_; }
    constexpr any_unit unit() const { return unit_; }

    /// Of what was typed: 12 in and 1 ft differ. For lengths, compare as<inch>(a) with as<inch>(b).
    friend constexpr bool operator==(const any_length&, const any_length&) = default;

private:
    fraction number_;
    any_unit unit_ = any_unit::inches;
};

/// Exact. Throws overflow_error where 64 bits do not hold it.
template <length_unit To>
constexpr length<To> as(const any_length& l) {
    return length_of<To>(l.number() * (detail::inches_of(l.unit()) / unit_facts<To>::inches));
}

inline std::string to_text(const any_length& l) {
    return detail::length_text(l.number(), in_unit(l.unit(), []<class Unit>() { return detail::written_as<Unit>; }));
}

template <class Traits>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, const any_length& l) {
    return out << to_text(l);
}

namespace detail {

struct any_reading {
    measure_reader reader;
    any_length typed{};
};

/// Twice over the text: what its unit is, and then how much of it.
constexpr any_reading read_any(std::string_view text, any_unit otherwise) {
    measure_reader first(text);
    static_cast<void>(first.length_in(inches_of(otherwise)));
    if (first.has_failed())
        return {first};
    any_reading found{measure_reader(text)};
    const any_unit unit = unit_of_inches(first.inches_of_last());
    found.typed = any_length(found.reader.length_in(inches_of(unit)), unit);
    return found;
}

} // namespace detail

/// As read_length, in the unit that is typed last; in `otherwise` where none is. Throws text_error or overflow_error.
constexpr any_length read_any_length(std::string_view text, any_unit otherwise) {
    const detail::any_reading found = detail::read_any(text, otherwise);
    found.reader.require_read();
    return found.typed;
}

/// The same, or the error that it throws.
inline outcome<any_length> try_read_any_length(std::string_view text, any_unit otherwise) {
    const detail::any_reading found = detail::read_any(text, otherwise);
    if (found.reader.has_failed())
        return found.reader.why_not();
    return found.typed;
}

} // namespace turncloth

#endif
