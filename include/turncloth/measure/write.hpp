// Writing measurements as people read them.
//
//   to_text(x)            "12 1/2", "-3/4", "7"                a mixed number, exact
//   to_text(l)            "12 1/2 in", "31.75 cm"              exact: read_length reads back what it was; in centimetres
//                         what was put together from some: "35 cm", which in inches is 13 99/127
//   to_text(a)            "63 sq in"                           an area, exact
//   to_text(p)            "4 in from the finished edge"        a place, exact; of a datum that bears a name
//   to_text(l, ruler)     "12 1/2 in", "31.8 cm", "12 1/2 in (31.8 cm)"   rounded to the graduations of the ruler;
//                         "31.8 cm (12 1/2 in)" with .metric_first
//   out << x              the same text for x, l, a or p
//
//   to_text("31.75"_cm) == "31.75 cm";   to_text("31.75"_cm, {.shows = units_shown::both}) == "12 1/2 in (31.8 cm)";
//
// Both figures of a pair are computed from the exact length, neither from the other's rounded figure.
#ifndef TURNCLOTH_MEASURE_WRITE_HPP
#define TURNCLOTH_MEASURE_WRITE_HPP

#include <turncloth/measure/detail/compiled.hpp>
#include <turncloth/measure/language.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/rounding.hpp>

#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <string>
#include <string_view>

namespace turncloth {

/// Which units a text is written in.
enum class units_shown { inches, centimetres, both };

/// The graduations that a text is rounded to, and the units it shows.
struct ruler {
    units_shown shows = units_shown::both;
    length<inch> inches = length_of<inch>({1, 16});
    length<centimetre> centimetres = length_of<centimetre>({1, 10});
    ties halfway = ties::to_even;
    bool metric_first = false; ///< where both are shown
};

namespace detail {

/// As those who speak the language read it, who may have metric lengths first; by none as it is, or in what is spoken.
inline ruler read_in(ruler by, const language* words) {
    if (words == nullptr)
        words = spoken;
    by.metric_first |= words != nullptr && words->habits().metric_first;
    return by;
}

} // namespace detail

/// The ruler whose inch scale is divided into `largest_denominator` parts.
/// Throws range_error below one part to the inch.
constexpr ruler inch_ruler(std::int64_t largest_denominator) {
    if (largest_denominator < 1)
        detail::refuse<range_error>(
            "an inch on a ruler has at least 1 part: it was " + std::to_string(largest_denominator),
            refusal{.kind = fault::too_small,
                    .what = "the parts of an inch on a ruler",
                    .given =
                        amount{.numerator = largest_denominator, .nearest = static_cast<double>(largest_denominator)},
                    .least = amount{.numerator = 1, .nearest = 1}});
    return {.shows = units_shown::inches, .inches = length_of<inch>(reciprocal(fraction(largest_denominator)))};
}

/// A mixed number in lowest terms; the sign stands once, before everything.
TURNCLOTH_INLINE std::string to_text(fraction x);

namespace detail {

/// A decimal with its trailing zeros left off, or a mixed number where no decimal is exact.
TURNCLOTH_INLINE std::string to_decimal_text(fraction x);

} // namespace detail

namespace detail {

/// What writing a length asks of its unit, so that what writes is the same for every unit.
struct written_unit {
    std::string_view name;
    bool decimal;
    fraction inches, centimetres; ///< how many make one of it
};
template <length_unit Unit>
inline constexpr written_unit written_as{unit_name<Unit>, metric_unit<Unit>, units_per<inch, Unit>,
                                         units_per<centimetre, Unit>};

TURNCLOTH_INLINE std::string number_text(fraction number, const written_unit& unit);
TURNCLOTH_INLINE std::string length_text(fraction number, const written_unit& unit);

/// Whether an exact length of a unit that is not metric was put together from metric ones, and reads better as such: 1 cm
/// is 50/127 in, and no ruler divides its inch by 127. Centimetres take the 127 out again, so what they write is shorter.
constexpr bool reads_as_metric(fraction number, const written_unit& unit) noexcept {
    return !unit.decimal && denominator(number) % 127 == 0 && magnitude(numerator(number)) < std::uint64_t{1} << 58;
}

/// What the ruler shows of two texts, each made only if it is shown: "inches (centimetres)" for both, or the other way.
template <class Inches, class Centimetres>
std::string as_shown(const ruler& by, Inches inches, Centimetres centimetres) {
    switch (by.shows) {
    case units_shown::inches:
        return inches();
    case units_shown::centimetres:
        return centimetres();
    case units_shown::both:
        break;
    }
    std::string first = by.metric_first ? centimetres() : inches();
    return first.append(" (").append(by.metric_first ? inches() : centimetres()).append(")");
}

TURNCLOTH_INLINE std::string length_text(fraction number, const written_unit& unit, const ruler& by);

/// "20 x 12 in (50.8 x 30.5 cm)"
TURNCLOTH_INLINE std::string size_text(fraction width, fraction height, const written_unit& unit, const ruler& by);

template <length_unit Unit>
std::string size_text(length<Unit> width, length<Unit> height, const ruler& by) {
    return size_text(width.value(), height.value(), written_as<Unit>, by);
}

} // namespace detail

/// The number alone, in the manner of its unit: decimal for metric units, mixed for the others.
template <length_unit Unit>
std::string number_text(length<Unit> l) {
    return detail::number_text(l.value(), detail::written_as<Unit>);
}

/// The length exactly, with its unit.
template <length_unit Unit>
std::string to_text(length<Unit> l) {
    return detail::length_text(l.value(), detail::written_as<Unit>);
}

/// The area exactly, in squares of its unit.
template <area_unit Square>
std::string to_text(const boost::units::quantity<Square, fraction>& a) {
    using side = typename boost::units::root_typeof_helper<Square, boost::units::static_rational<2>>::type;
    return detail::number_text(a.value(), detail::written_as<side>).append(" sq ").append(unit_name<side>);
}

/// The place exactly. A datum bears its name as a static member: struct table_end { static constexpr const char* name =
/// "the table's end"; }.
template <class Datum, length_unit Unit>
std::string to_text(const place<Datum, Unit>& p) {
    if constexpr (requires { std::string_view(Datum::name); })
        return to_text(p.from_datum()).append(" from ").append(Datum::name);
    else
        return to_text(p.from_datum()) + " from its datum";
}

/// The length in the units that the ruler shows, each rounded to its graduation from the exact value.
/// Throws range_error for a graduation not above zero.
template <length_unit Unit>
std::string to_text(length<Unit> l, const ruler& by) {
    return detail::length_text(l.value(), detail::written_as<Unit>, by);
}

template <class Traits>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, fraction x) {
    return out << to_text(x);
}

template <class Traits, length_unit Unit>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out,
                                             const boost::units::quantity<Unit, fraction>& l) {
    return out << to_text(l);
}

template <class Traits, area_unit Square>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out,
                                             const boost::units::quantity<Square, fraction>& a) {
    return out << to_text(a);
}

template <class Traits, class Datum, length_unit Unit>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, const place<Datum, Unit>& p) {
    return out << to_text(p);
}

} // namespace turncloth

#ifndef TURNCLOTH_COMPILED

namespace turncloth {

namespace detail {

/// Its digits, of `least` or more, without a string of their own: lengths are most of what is written.
inline void append_digits(std::string& text, std::uint64_t number, int least = 1) {
    char digits[20];
    char* const end = digits + sizeof digits;
    char* first = end;
    for (; number != 0 || least > 0; number /= 10, --least)
        *--first = static_cast<char>('0' + number % 10);
    text.append(first, static_cast<std::size_t>(end - first));
}

} // namespace detail

TURNCLOTH_INLINE std::string to_text(fraction x) {
    const std::uint64_t size = detail::magnitude(numerator(x));
    const auto under = static_cast<std::uint64_t>(denominator(x));
    std::string text = numerator(x) < 0 ? "-" : "";
    if (size >= under || size == 0)
        detail::append_digits(text, size / under);
    if (under == 1)
        return text;
    if (size >= under)
        text += ' ';
    detail::append_digits(text, size % under);
    text += '/';
    detail::append_digits(text, under);
    return text;
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
    append_digits(text, size / under);
    if (digits == 0)
        return text;
    text += decimal_mark();
    append_digits(text, size % under * (scale / under), digits);
    return text;
}

TURNCLOTH_INLINE std::string number_text(fraction number, const written_unit& unit) {
    return unit.decimal ? to_decimal_text(number) : to_text(number);
}

TURNCLOTH_INLINE std::string length_text(fraction number, const written_unit& unit) {
    if (reads_as_metric(number, unit))
        return length_text(number * unit.centimetres, written_as<centimetre>);
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
        return number_text(nearest_to(width * of_it, step, by.halfway), shown)
            .append(word(" x "))
            .append(length_text(nearest_to(height * of_it, step, by.halfway), shown));
    };
    return as_shown(
        by, [&] { return in(written_as<inch>, unit.inches, by.inches.value()); },
        [&] { return in(written_as<centimetre>, unit.centimetres, by.centimetres.value()); });
}

} // namespace detail

} // namespace turncloth

#endif // TURNCLOTH_COMPILED

#endif
