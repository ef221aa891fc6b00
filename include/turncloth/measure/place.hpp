// A place is not a length: it is a length from somewhere.
//
//   place<Datum, U>                        measured from Datum (an empty type that names an edge or a line)
//   at<Datum>(l)                           the place l from the datum
//   place + length   place - place         a place; a length (as a time point and a duration)
//   ==  <=>  std::hash                     of places from one datum in one unit
//   remeasured<To>(p, offset)              the same spot from another datum, which lies `offset` from the old one
//
//   struct table_end {};                                  // a layer that knows of cloth names its own datums
//   auto pin = at<table_end>("4"_in) + "1 1/2"_in;         // 5 1/2 in from the table's end
//
// Two places do not add, and places from different datums neither subtract nor compare: the compiler says what to
// write.
#ifndef TURNCLOTH_MEASURE_PLACE_HPP
#define TURNCLOTH_MEASURE_PLACE_HPP

#include <turncloth/measure/length.hpp>

#include <compare>
#include <cstddef>

namespace turncloth {

namespace detail {
template <class A, class B>
concept different_datums = !std::same_as<A, B>;
using do_not_add = please::subtract_two_places_or_add_a_length_to_a_place_but_do_not_add_two_places;
using make_a_place = please::make_a_place_of_the_length_with_at_and_its_datum_before_comparing_it_with_a_place;
using remeasure_first = please::remeasure_one_place_first_since_the_two_are_measured_from_different_datums;
} // namespace detail

template <class Datum, length_unit Unit>
class place {
public:
    using datum = Datum;
    using unit = Unit;

    /// The datum itself.
    constexpr place() = default;
    constexpr explicit place(length<Unit> from_datum) : from_datum_(from_datum) {}
    template <class Other, class Please = detail::remeasure_first>
        requires detail::different_datums<Other, Datum>
    constexpr place(const place<Other, Unit>&) = delete;

    constexpr length<Unit> from_datum() const { return from_datum_; }

    friend constexpr bool operator==(const place& a, const place& b) { return a.from_datum_ == b.from_datum_; }
    friend constexpr std::strong_ordering operator<=>(const place& a, const place& b) {
        return a.from_datum_.value() <=> b.from_datum_.value();
    }

    friend constexpr place operator+(const place& p, length<Unit> l) { return place(p.from_datum_ + l); }
    friend constexpr place operator+(length<Unit> l, const place& p) { return p + l; }
    friend constexpr place operator-(const place& p, length<Unit> l) { return place(p.from_datum_ - l); }
    friend constexpr length<Unit> operator-(const place& a, const place& b) { return a.from_datum_ - b.from_datum_; }

private:
    length<Unit> from_datum_;
};

template <class Datum, length_unit Unit>
constexpr place<Datum, Unit> at(length<Unit> from_datum) {
    return place<Datum, Unit>(from_datum);
}

/// The same spot measured from `To`, which lies `offset` from the old datum in the direction in which places grow.
template <class To, class From, length_unit Unit>
constexpr place<To, Unit> remeasured(const place<From, Unit>& p, length<Unit> offset) {
    return place<To, Unit>(p.from_datum() - offset);
}

/// The same place in another unit, exactly.
template <length_unit To, class Datum, length_unit From>
constexpr place<Datum, To> as(const place<Datum, From>& p) {
    return place<Datum, To>(as<To>(p.from_datum()));
}

template <class Please = detail::do_not_add, class A, class B, class U, class V>
void operator+(const place<A, U>&, const place<B, V>&) = delete;

template <class Please = detail::remeasure_first, class A, class B, class U, class V>
    requires detail::different_datums<A, B>
void operator-(const place<A, U>&, const place<B, V>&) = delete;

template <class Please = detail::remeasure_first, class A, class B, class U, class V>
    requires detail::different_datums<A, B>
bool operator==(const place<A, U>&, const place<B, V>&) = delete;

template <class Please = detail::remeasure_first, class A, class B, class U, class V>
    requires detail::different_datums<A, B>
bool operator<=>(const place<A, U>&, const place<B, V>&) = delete;

template <class Please = detail::bring_to_one_unit, class Datum, class U, class V>
    requires detail::different_units<U, V>
void operator+(const place<Datum, U>&, const detail::exact_quantity<V>&) = delete;

template <class Please = detail::bring_to_one_unit, class Datum, class U, class V>
    requires detail::different_units<U, V>
void operator-(const place<Datum, U>&, const detail::exact_quantity<V>&) = delete;

template <class Please = detail::bring_to_one_unit, class Datum, class U, class V>
    requires detail::different_units<U, V>
void operator-(const place<Datum, U>&, const place<Datum, V>&) = delete;

template <class Please = detail::bring_to_one_unit, class Datum, class U, class V>
    requires detail::different_units<U, V>
bool operator==(const place<Datum, U>&, const place<Datum, V>&) = delete;

template <class Please = detail::bring_to_one_unit, class Datum, class U, class V>
    requires detail::different_units<U, V>
bool operator<=>(const place<Datum, U>&, const place<Datum, V>&) = delete;

template <class Please = detail::name_the_unit, class Datum, class U, detail::bare_number Number>
void operator+(const place<Datum, U>&, const Number&) = delete;

template <class Please = detail::name_the_unit, class Datum, class U, detail::bare_number Number>
void operator-(const place<Datum, U>&, const Number&) = delete;

template <class Please = please::add_the_from_datum_of_a_place_since_a_place_is_no_length, class Datum, class U,
          class V>
void operator+=(detail::exact_quantity<V>&, const place<Datum, U>&) = delete;

template <class Please = please::add_the_from_datum_of_a_place_since_a_place_is_no_length, class Datum, class U,
          class V>
void operator-=(detail::exact_quantity<V>&, const place<Datum, U>&) = delete;

namespace detail {
using name_the_datum = please::name_the_datum_for_instance_divided_of_finished_edge_or_at_of_cut_edge;
}

/// Only where no datum is named: with one, it would stand where the sentence does.
template <class Please = detail::name_the_datum, length_unit Unit>
    requires std::same_as<Please, detail::name_the_datum>
void at(const detail::exact_quantity<Unit>&) = delete;

template <class Please = detail::make_a_place, class Datum, class U, length_unit V>
bool operator==(const place<Datum, U>&, const detail::exact_quantity<V>&) = delete;

template <class Please = detail::make_a_place, class Datum, class U, length_unit V>
bool operator<=>(const place<Datum, U>&, const detail::exact_quantity<V>&) = delete;

} // namespace turncloth

template <class Datum, turncloth::length_unit Unit>
struct std::hash<turncloth::place<Datum, Unit>> {
    std::size_t operator()(const turncloth::place<Datum, Unit>& p) const noexcept {
        return std::hash<turncloth::length<Unit>>{}(p.from_datum());
    }
};

#endif
