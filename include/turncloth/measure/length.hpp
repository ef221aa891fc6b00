// Lengths and areas with their unit in the type, exact.
//
//   inch foot yard millimetre centimetre metre    units for Boost.Units, related by exact fractions
//   length<U>   area<U>                           boost::units::quantity<U, fraction>, and of its square
//   length_of<U>(x)                               names the unit of a number
//   as<V>(l)   as_area<V>(a)                      the same length or area in another unit, exactly
//   ratio_of(a, b)                                how many times b goes into a, a plain fraction
//   ==  <=>  std::hash                            of lengths in one unit
//   unit_name<U>                                  "in", "ft", "yd", "mm", "cm", "m"
//
//   constexpr auto cut = length_of<inch>(10) + 2 * length_of<inch>({1, 2});   // 11 in
//   static_assert(as<centimetre>(cut) == length_of<centimetre>({1397, 50}));  // 27.94 cm
//
// The inch of Boost.Units converts through double and is not used. A conversion is always written out: `in + cm` does
// not compile, and the compiler's message says what to write.
#ifndef TURNCLOTH_MEASURE_LENGTH_HPP
#define TURNCLOTH_MEASURE_LENGTH_HPP

#include <turncloth/measure/detail/please.hpp>
#include <turncloth/measure/fraction.hpp>

#include <boost/units/base_unit.hpp>
#include <boost/units/conversion.hpp>
#include <boost/units/make_system.hpp>
#include <boost/units/physical_dimensions/length.hpp>
#include <boost/units/quantity.hpp>

#include <compare>
#include <concepts>
#include <cstddef>
#include <string_view>
#include <type_traits>

namespace turncloth {

// The ordinals (74110 and on) are arbitrary; Boost only asks that no two base units of a program share one.
struct inch_base : boost::units::base_unit<inch_base, boost::units::length_dimension, 74110> {};
struct foot_base : boost::units::base_unit<foot_base, boost::units::length_dimension, 74111> {};
struct yard_base : boost::units::base_unit<yard_base, boost::units::length_dimension, 74112> {};
struct millimetre_base : boost::units::base_unit<millimetre_base, boost::units::length_dimension, 74113> {};
struct centimetre_base : boost::units::base_unit<centimetre_base, boost::units::length_dimension, 74114> {};
struct metre_base : boost::units::base_unit<metre_base, boost::units::length_dimension, 74115> {};

namespace detail {
template <class Base>
using unit_on = boost::units::unit<boost::units::length_dimension, typename boost::units::make_system<Base>::type>;
}

using inch = detail::unit_on<inch_base>;
using foot = detail::unit_on<foot_base>;
using yard = detail::unit_on<yard_base>;
using millimetre = detail::unit_on<millimetre_base>;
using centimetre = detail::unit_on<centimetre_base>;
using metre = detail::unit_on<metre_base>;

/// How a unit is written, and its size in inches: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in, all exact by the
/// international yard and pound agreement of 1959 (NIST SP 811, 2008, Appendix B). Undefined for anything else.
template <class Unit>
struct unit_facts;
template <>
struct unit_facts<inch> {
    static constexpr std::string_view name = "in";
    static constexpr fraction inches = 1;
};
template <>
struct unit_facts<foot> {
    static constexpr std::string_view name = "ft";
    static constexpr fraction inches = 12;
};
template <>
struct unit_facts<yard> {
    static constexpr std::string_view name = "yd";
    static constexpr fraction inches = 36;
};
template <>
struct unit_facts<millimetre> {
    static constexpr std::string_view name = "mm";
    static constexpr fraction inches = {5, 127};
};
template <>
struct unit_facts<centimetre> {
    static constexpr std::string_view name = "cm";
    static constexpr fraction inches = {50, 127};
};
template <>
struct unit_facts<metre> {
    static constexpr std::string_view name = "m";
    static constexpr fraction inches = {5000, 127};
};

/// One of the six units above.
template <class Unit>
concept length_unit = requires {
    unit_facts<Unit>::inches;
};

/// Units marked on a decimal scale; the others are halved and halved again.
template <class Unit>
concept metric_unit = length_unit<Unit> &&
    (std::same_as<Unit, millimetre> || std::same_as<Unit, centimetre> || std::same_as<Unit, metre>);

template <length_unit Unit>
inline constexpr std::string_view unit_name = unit_facts<Unit>::name;

template <length_unit Unit>
using length = boost::units::quantity<Unit, fraction>;

/// The square of one of them.
template <class Square>
concept area_unit =
    !length_unit<Square> &&
    length_unit<typename boost::units::root_typeof_helper<Square, boost::units::static_rational<2>>::type>;

template <length_unit Unit>
using area = boost::units::quantity<typename boost::units::multiply_typeof_helper<Unit, Unit>::type, fraction>;

/// `number` of the unit: length_of<inch>({25, 2}) is 12 1/2 in.
template <length_unit Unit>
constexpr length<Unit> length_of(fraction number) {
    return length<Unit>::from_value(number);
}

/// How many `To` make one `From`, exactly.
template <length_unit To, length_unit From>
inline constexpr fraction units_per = unit_facts<From>::inches / unit_facts<To>::inches;

/// The same length in another unit. Exact; throws overflow_error where 64 bits do not hold it.
template <length_unit To, length_unit From>
constexpr length<To> as(length<From> l) {
    return length_of<To>(l.value() * units_per<To, From>);
}

/// The same area in the square of another unit, exactly: as_area<yard>(a).
template <length_unit To, class Square>
constexpr area<To> as_area(const boost::units::quantity<Square, fraction>& a) {
    using from = typename boost::units::root_typeof_helper<Square, boost::units::static_rational<2>>::type;
    return area<To>::from_value(a.value() * units_per<To, from> * units_per<To, from>);
}

/// As the data of a refusal, with the name of the unit.
template <length_unit Unit>
constexpr amount amount_of(length<Unit> l) {
    amount a = amount_of(l.value());
    a.unit = unit_name<Unit>;
    return a;
}

/// How many times `b` goes into `a`. Throws zero_denominator_error where b is nothing.
template <length_unit Unit>
constexpr fraction ratio_of(length<Unit> a, length<Unit> b) {
    return a.value() / b.value();
}

template <length_unit Unit>
constexpr length<Unit> abs(length<Unit> l) {
    return length_of<Unit>(abs(l.value()));
}

template <length_unit Unit>
constexpr std::strong_ordering operator<=>(const boost::units::quantity<Unit, fraction>& a,
                                           const boost::units::quantity<Unit, fraction>& b) noexcept {
    return a.value() <=> b.value();
}

// Boost.Units multiplies a quantity by its own number type only; whole numbers are as exact, so they are let in too.

template <class Unit, std::integral Whole>
constexpr auto operator*(const boost::units::quantity<Unit, fraction>& q, Whole times) {
    return q * fraction(times);
}

template <class Unit, std::integral Whole>
constexpr auto operator*(Whole times, const boost::units::quantity<Unit, fraction>& q) {
    return q * fraction(times);
}

template <class Unit, std::integral Whole>
constexpr auto operator/(const boost::units::quantity<Unit, fraction>& q, Whole parts) {
    return q / fraction(parts);
}

namespace detail {
using multiply_exactly = please::multiply_or_divide_by_a_whole_number_or_a_fraction_since_a_double_is_not_exact;
template <class Unit>
using exact_quantity = boost::units::quantity<Unit, fraction>;
} // namespace detail

template <class Please = detail::multiply_exactly, class Unit, std::floating_point Real>
void operator*(const detail::exact_quantity<Unit>&, Real) = delete;

template <class Please = detail::multiply_exactly, class Unit, std::floating_point Real>
void operator*(Real, const detail::exact_quantity<Unit>&) = delete;

template <class Please = detail::multiply_exactly, class Unit, std::floating_point Real>
void operator/(const detail::exact_quantity<Unit>&, Real) = delete;

namespace detail {
template <class A, class B>
concept different_units = length_unit<A> && length_unit<B> && !std::same_as<A, B>;
template <class Number>
concept bare_number = std::is_arithmetic_v<Number> || std::same_as<Number, fraction>;
using bring_to_one_unit = please::bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x;
using ratio_in_one_unit = please::bring_both_lengths_to_one_unit_first_since_their_ratio_is_a_plain_number;
using name_the_unit = please::name_the_unit_of_a_length_for_instance_12_in_or_30_cm;
} // namespace detail

template <class Please = detail::bring_to_one_unit, class A, class B>
    requires detail::different_units<A, B>
void operator+(const detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

template <class Please = detail::bring_to_one_unit, class A, class B>
    requires detail::different_units<A, B>
void operator-(const detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

template <class Please = detail::bring_to_one_unit, class A, class B>
    requires detail::different_units<A, B>
bool operator==(const detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

template <class Please = detail::bring_to_one_unit, class A, class B>
    requires detail::different_units<A, B>
bool operator<=>(const detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

template <class Please = detail::bring_to_one_unit, class A, class B>
    requires detail::different_units<A, B>
void operator+=(detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

template <class Please = detail::bring_to_one_unit, class A, class B>
    requires detail::different_units<A, B>
void operator-=(detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

// Boost.Units divides any quantity by any other, so that 10 in over 2 cm would be 5 of "in per cm".
template <class Please = detail::ratio_in_one_unit, class A, class B>
    requires detail::different_units<A, B>
void operator/(const detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

template <class Please = detail::ratio_in_one_unit, class A, class B>
    requires detail::different_units<A, B>
void ratio_of(const detail::exact_quantity<A>&, const detail::exact_quantity<B>&) = delete;

// A number without a unit is not a length, so it neither adds to one nor compares with one.

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
void operator+(const detail::exact_quantity<Unit>&, const Number&) = delete;

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
void operator+(const Number&, const detail::exact_quantity<Unit>&) = delete;

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
void operator-(const detail::exact_quantity<Unit>&, const Number&) = delete;

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
void operator-(const Number&, const detail::exact_quantity<Unit>&) = delete;

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
void operator+=(detail::exact_quantity<Unit>&, const Number&) = delete;

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
void operator-=(detail::exact_quantity<Unit>&, const Number&) = delete;

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
bool operator==(const detail::exact_quantity<Unit>&, const Number&) = delete;

template <class Please = detail::name_the_unit, length_unit Unit, detail::bare_number Number>
bool operator<=>(const detail::exact_quantity<Unit>&, const Number&) = delete;

// Which double it is depends on the unit.
template <class Please = please::take_the_value_of_a_length_in_a_unit_that_you_name_for_instance_as_centimetre_x_value,
          class Unit>
void to_double(const detail::exact_quantity<Unit>&) = delete;

namespace detail {
template <class A, class B>
inline constexpr bool units_differ = false;
template <class A, class B>
inline constexpr bool units_differ<exact_quantity<A>, exact_quantity<B>> = different_units<A, B>;
/// Of the arguments of a function that takes lengths in one unit.
template <class... Given>
inline constexpr bool numbers_among_lengths = (bare_number<Given> || ...);
template <class First, class... More>
inline constexpr bool lengths_in_two_units = (units_differ<First, More> || ...);
} // namespace detail

} // namespace turncloth

// The explicit conversion that Boost.Units offers between quantities is made exact too: every unit meets in the inch.
BOOST_UNITS_DEFINE_CONVERSION_FACTOR(turncloth::foot_base, turncloth::inch_base, turncloth::fraction, 12);
BOOST_UNITS_DEFINE_CONVERSION_FACTOR(turncloth::yard_base, turncloth::inch_base, turncloth::fraction, 36);
BOOST_UNITS_DEFINE_CONVERSION_FACTOR(turncloth::millimetre_base, turncloth::inch_base, turncloth::fraction,
                                     turncloth::unit_facts<turncloth::millimetre>::inches);
BOOST_UNITS_DEFINE_CONVERSION_FACTOR(turncloth::centimetre_base, turncloth::inch_base, turncloth::fraction,
                                     turncloth::unit_facts<turncloth::centimetre>::inches);
BOOST_UNITS_DEFINE_CONVERSION_FACTOR(turncloth::metre_base, turncloth::inch_base, turncloth::fraction,
                                     turncloth::unit_facts<turncloth::metre>::inches);
BOOST_UNITS_DEFAULT_CONVERSION(turncloth::foot_base, turncloth::inch_base);
BOOST_UNITS_DEFAULT_CONVERSION(turncloth::yard_base, turncloth::inch_base);
BOOST_UNITS_DEFAULT_CONVERSION(turncloth::millimetre_base, turncloth::inch_base);
BOOST_UNITS_DEFAULT_CONVERSION(turncloth::centimetre_base, turncloth::inch_base);
BOOST_UNITS_DEFAULT_CONVERSION(turncloth::metre_base, turncloth::inch_base);

template <turncloth::length_unit Unit>
struct std::hash<boost::units::quantity<Unit, turncloth::fraction>> {
    std::size_t operator()(const boost::units::quantity<Unit, turncloth::fraction>& l) const noexcept {
        return std::hash<turncloth::fraction>{}(l.value());
    }
};

#endif
