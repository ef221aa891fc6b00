// Marks as a ruler shows them.
//
//   rounded_division<Datum, U>(span, n, graduation)   the marks of n equal parts, each rounded from its exact place
//     .part(k)                                        the parts between them, which add up to the span
//     .exact()   .farthest_off()                      the exact marks; how far from them the rounded ones fall
//   stepped(spacing, graduation)                      the spacing as rounded, and how far stepping it along drifts
//
//   constexpr rounded_division<finished_edge, inch> thirds(10_in, 3, "1/8"_in);
//   static_assert(thirds[0] == at<finished_edge>("3 3/8"_in) && thirds[1] == at<finished_edge>("6 5/8"_in));
//
// Marked from the datum, every mark is within half a graduation of its place, however many there are. Stepped along
// with dividers set to the rounded spacing, the k-th is off by k times the error of one step; both are here, to be
// compared.
#ifndef TURNCLOTH_MARKS_ROUNDED_HPP
#define TURNCLOTH_MARKS_ROUNDED_HPP

#include <turncloth/marks/row.hpp>
#include <turncloth/measure/rounding.hpp>

namespace turncloth {

namespace detail {

/// 0 <= by < modulus.
struct residue {
    std::int64_t by, modulus;
};

/// The least k above 0 with low <= k by mod modulus <= high, for 0 < low <= high < modulus; 0 where there is none. If no
/// multiple of `by` itself lies there, the multiples round the modulus must make up for it: k by - y modulus lies there
/// just where y modulus mod by is from -high to -low, which is the same question of smaller numbers, as in Euclid's
/// algorithm, and the least y has the least k.
constexpr std::int64_t first_multiple_within(const residue& r, std::int64_t low, std::int64_t high) noexcept {
    if (r.by == 0)
        return 0;
    const std::int64_t k = (low - 1) / r.by + 1;
    if (k <= high / r.by)
        return k;
    const std::int64_t y = first_multiple_within({r.modulus % r.by, r.by}, r.by - high % r.by, r.by - low % r.by);
    return y == 0 ? 0 : static_cast<std::int64_t>((int128{y} * r.modulus + low - 1) / r.by + 1);
}

} // namespace detail

/// The n - 1 inner marks of a span, rounded to a graduation (a half goes to the even one). Throws marks_error as
/// `divided`, and where a part is less than the graduation, so that two marks, or a mark and an end, could fall on one;
/// range_error for a graduation that is not above zero.
template <class Datum, length_unit Unit>
class rounded_division : public detail::indexed<rounded_division<Datum, Unit>, place<Datum, Unit>> {
public:
    constexpr rounded_division() = default;
    constexpr rounded_division(length<Unit> span, std::int64_t parts, length<Unit> graduation)
        : exact_(divided<Datum>(span, parts)), span_(span), graduation_(graduation) {
        // Neighbours a graduation or more apart stay apart: they could meet only if they lay exactly one graduation
        // apart, both halfway between two, and then every mark would be a whole number of graduations.
        if (detail::steps_in(exact_.step().value(), graduation.value()) < 1 && parts > 1)
            detail::refuse<marks_error>(
                "parts of " + to_text(exact_.step()) + " cannot be told apart at a graduation of " +
                    to_text(graduation),
                refusal{fault::too_small, "a part", amount_of(exact_.step()), amount_of(graduation)});
    }

    constexpr std::int64_t size() const noexcept { return exact_.size(); }
    constexpr place<Datum, Unit> operator[](std::int64_t k) const {
        return at<Datum>(nearest_to(exact_[k].from_datum(), graduation_));
    }
    constexpr const row<Datum, Unit>& exact() const { return exact_; }

    /// From the mark before (or the datum) to mark k (or the end of the span), for k from 0 to size(). Each is the
    /// difference of two marks, so together they are the span exactly. Throws marks_error for another k.
    constexpr length<Unit> part(std::int64_t k) const {
        require_index<marks_error>(k, size() + 1, "a part of a span");
        return mark_or_end(k) - (k == 0 ? place<Datum, Unit>() : (*this)[k - 1]);
    }

    /// The largest distance of a mark from its exact place: at most half a graduation. With a part of p/q graduations in
    /// lowest terms, mark k lies k p mod q q-ths past a graduation, so it is d q-ths off or more where that remainder is
    /// from d to q - d. The largest d that some mark reaches is found by halving: a few thousand divisions, however many
    /// marks there are.
    constexpr length<Unit> farthest_off() const {
        if (size() == 0)
            return {};
        const fraction part = detail::steps_in(exact_.step().value(), graduation_.value());
        const std::int64_t q = denominator(part);
        std::int64_t reached = 0, beyond = q / 2 + 1;
        while (beyond - reached > 1) {
            const std::int64_t d = reached + (beyond - reached) / 2;
            const std::int64_t first = detail::first_multiple_within({numerator(part) % q, q}, d, q - d);
            (first > 0 && first <= size() ? reached : beyond) = d;
        }
        return graduation_ * fraction(reached, q);
    }

private:
    constexpr place<Datum, Unit> mark_or_end(std::int64_t k) const {
        return k == size() ? at<Datum>(span_) : (*this)[k];
    }

    row<Datum, Unit> exact_;
    length<Unit> span_, graduation_;
};

/// A spacing stepped along at its rounded size.
template <length_unit Unit>
struct stepping {
    length<Unit> spacing;  ///< the rounded step
    length<Unit> per_step; ///< rounded less exact: what each step adds to the error

    /// How far the k-th mark, counted from 1, is from its exact place.
    constexpr length<Unit> drift(std::int64_t k) const { return per_step * fraction(k); }
};

/// Throws marks_error for a spacing that is not above zero, or that rounds to nothing.
template <length_unit Unit>
constexpr stepping<Unit> stepped(length<Unit> spacing, length<Unit> graduation) {
    require_more_than_zero<marks_error>(spacing, "the distance between marks");
    const length<Unit> rounded = nearest_to(spacing, graduation);
    if (rounded.value() == 0)
        detail::refuse<marks_error>(
            {"a distance between marks of ", spacing, " rounds to nothing at a graduation of ", graduation},
            {.kind = fault::too_small, .what = "the distance between marks", .given = spacing, .least = graduation});
    return {rounded, rounded - spacing};
}

} // namespace turncloth

/// As for a row.
template <class Datum, turncloth::length_unit Unit>
inline constexpr bool std::ranges::enable_borrowed_range<turncloth::rounded_division<Datum, Unit>> = true;

#endif
