// Marks along one line of a piece, exact at every mark; a row is computed as it is read and allocates nothing.
//
//   row<Datum, U>(first, step, count)      count places: first, first + step, ...; a random-access range
//     .on_ruler(graduation)  .exact()      the same with each place on a ruler; as it was
//   divided(span, n)                       the n - 1 marks that divide a span into n equal parts
//   divided_with_ends(span, n)             the same with both ends, n + 1 marks
//   halved(span, times)   foldings(n)      2^times parts by folding; how many foldings make n parts
//   every(step, span)                      {marks, to_spare}: every step from the datum, and what is left over
//   marks_error                            no parts, no step, a span of nothing, parts that folding cannot make, a mark
//                                          that does not exist
//
//   constexpr auto quarters = divided<finished_edge>(16_in, 4);
//   static_assert(quarters[2] == at<finished_edge>(12_in));
#ifndef TURNCLOTH_MARKS_ROW_HPP
#define TURNCLOTH_MARKS_ROW_HPP

#include <turncloth/marks/detail/indexed.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>

#include <bit>
#include <concepts>
#include <cstdint>
#include <string>
#include <string_view> // declares std::ranges::enable_borrowed_range, and costs less than <ranges>

namespace turncloth {

/// Marks that cannot be made.
class marks_error : public error {
public:
    using error::error;
};

namespace detail {

/// As many as 62 foldings make; so the marks can be counted with both ends.
inline constexpr std::int64_t most_parts = std::int64_t{1} << 62;

constexpr void require_parts(std::int64_t parts) {
    require_between<marks_error>(std::int64_t{1}, parts, most_parts, "the number of parts");
}

} // namespace detail

/// Evenly stepped places. `count` may be zero; the step may be negative, for marks toward the datum.
template <class Datum, length_unit Unit>
class row : public detail::indexed<row<Datum, Unit>, place<Datum, Unit>> {
public:
    constexpr row() = default;
    constexpr row(place<Datum, Unit> first, length<Unit> step, std::int64_t count)
        : first_(first), step_(step), count_(count) {
        require_not_negative<marks_error>(count, "the number of marks");
    }

    constexpr std::int64_t size() const noexcept { return count_; }
    constexpr length<Unit> step() const { return step_; }
    /// The mark k, counted from 0. Multiplied out from the first, so that no error can add up. Throws marks_error for a
    /// mark that is not in the row.
    constexpr place<Datum, Unit> operator[](std::int64_t k) const {
        require_index<marks_error>(k, count_, "a mark of a row");
        place<Datum, Unit> exact = first_ + step_ * fraction(k);
        if (graduation_.value() == 0)
            return exact;
        // Marks that mirror one another about the middle of the row still do: a half goes toward it, and in it up.
        const std::int64_t mirrored = count_ - 1 - k;
        const bool goes_up = k == mirrored || (k < mirrored) == (step_.value() > 0);
        return at<Datum>(nearest_to(exact.from_datum(), graduation_, goes_up ? ties::up : ties::down));
    }

    /// Each mark at the graduation nearest to its exact place, so that none is farther off than half of one and nothing
    /// drifts; `step()` stays exact. Nothing for a graduation of zero. Throws range_error for one below.
    [[nodiscard]] constexpr row on_ruler(length<Unit> graduation) const {
        require_not_negative<range_error>(graduation, "a graduation");
        row made = *this;
        made.graduation_ = graduation;
        return made;
    }
    [[nodiscard]] constexpr row exact() const { return on_ruler({}); }
    constexpr length<Unit> graduation() const { return graduation_; }

    friend constexpr bool operator==(const row&, const row&) = default;

private:
    place<Datum, Unit> first_;
    length<Unit> step_, graduation_;
    std::int64_t count_ = 0;
};

template <class Datum, length_unit Unit>
constexpr row<Datum, Unit> divided(length<Unit> span, std::int64_t parts) {
    require_more_than_zero<marks_error>(span, "a span to divide");
    detail::require_parts(parts);
    const length<Unit> step = span / fraction(parts);
    return {at<Datum>(step), step, parts - 1};
}

template <class Datum, length_unit Unit>
constexpr row<Datum, Unit> divided_with_ends(length<Unit> span, std::int64_t parts) {
    return {place<Datum, Unit>(), divided<Datum>(span, parts).step(), parts + 1};
}

/// The marks that folding in half, `times` over, presses into a span: 2^times parts. At most 62 foldings.
template <class Datum, length_unit Unit>
constexpr row<Datum, Unit> halved(length<Unit> span, int times) {
    require_between<marks_error>(0, times, 62, "the number of foldings in half");
    return divided<Datum>(span, std::int64_t{1} << times);
}

/// How many foldings in half make `parts` parts. Throws marks_error unless that is a power of two: thirds and fifths
/// must be measured.
constexpr int foldings(std::int64_t parts) {
    detail::require_parts(parts);
    if (!std::has_single_bit(static_cast<std::uint64_t>(parts)))
        detail::refuse<marks_error>("folding in half makes 2, 4, 8, ... parts, not " + std::to_string(parts) +
                                        ": measure these",
                                    refusal{fault::unsuitable, "the number of parts", amount_of(parts)});
    return std::countr_zero(static_cast<std::uint64_t>(parts));
}

// Without a datum there is no telling where the marks are measured from.

template <class Please = detail::name_the_datum, length_unit Unit, std::integral Count>
    requires std::same_as<Please, detail::name_the_datum>
void divided(const detail::exact_quantity<Unit>&, Count) = delete;

template <class Please = detail::name_the_datum, length_unit Unit, std::integral Count>
    requires std::same_as<Please, detail::name_the_datum>
void halved(const detail::exact_quantity<Unit>&, Count) = delete;

template <class Datum, length_unit Unit>
struct marks_and_rest {
    row<Datum, Unit> marks;
    length<Unit> to_spare; ///< from the last mark (or the datum, where none fits) to the end of the span

    friend constexpr bool operator==(const marks_and_rest&, const marks_and_rest&) = default;
};

/// A mark at every `step` from the datum, as far as the span goes; one may fall on its very end, with nothing to spare.
template <class Datum, length_unit Unit>
constexpr marks_and_rest<Datum, Unit> every(length<Unit> step, length<Unit> span) {
    require_more_than_zero<marks_error>(step, "the distance between marks");
    require_more_than_zero<marks_error>(span, "a span to mark");
    const std::int64_t count = floor(ratio_of(span, step));
    return {row<Datum, Unit>(at<Datum>(step), step, count), span - step * fraction(count)};
}

} // namespace turncloth

/// Its iterators outlive it, so an algorithm may return one into a row that was made in the call.
template <class Datum, turncloth::length_unit Unit>
inline constexpr bool std::ranges::enable_borrowed_range<turncloth::row<Datum, Unit>> = true;

#endif
