// Cloth that changes its size when it is washed, along its length and across its width.
//
//   dimensional_change                            a part of the length before washing; below zero it shrinks
//     shrinks_by(s)  grows_by(g)  measured_change(before, after)  then(a, b)
//   percent(p)                                    p / 100, exact: shrinks_by(percent(5))
//   washing{along, across}                        the change with the grain and across it
//   before_washing(l, change)  after_washing(l, change)        exact, and each undoes the other
//   before_washing(cut, washing)  after_washing(cut, washing)  for a cut size whose height runs along the grain
//   washing_working(l, change)                    the length to cut with its working
//   shrinkage_error                               a change that no cloth can make
//
//   static_assert(before_washing(length_of<inch>(27), shrinks_by(percent(10))) == length_of<inch>(30));
//
// The sign is that of AATCC TM 135 and ISO 5077 (value from memory): dimensional change = (B - A) / A, A before and B
// after, so a shrinkage is negative. Who writes shrinks_by(s) gives it as a positive part. What must measure F after
// washing is cut F / (1 - s): not F (1 + s), which comes out short by s^2.
#ifndef TURNCLOTH_CLOTH_SHRINKAGE_HPP
#define TURNCLOTH_CLOTH_SHRINKAGE_HPP

#include <turncloth/measure/length.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/panel/size.hpp>

namespace turncloth {

/// A change of size that no cloth can make, or one given with the wrong sign.
class shrinkage_error : public error {
public:
    using error::error;
};

/// p per hundred.
constexpr fraction percent(fraction p) { return p / 100; }

/// By what part of its length before washing a cloth is longer afterwards. More than -1 always.
class dimensional_change {
public:
    /// None.
    constexpr dimensional_change() = default;
    /// A signed part: -1/20 is 5 % of shrinkage. Throws shrinkage_error unless it is more than -1.
    constexpr explicit dimensional_change(fraction part) : part_(part) {
        if (part <= -1)
            detail::refuse<shrinkage_error>(
                "cloth cannot shrink by its whole length or more: the part that remains was given as " +
                    to_text(part + 1),
                refusal{.kind = fault::too_small,
                        .what = "a change of length",
                        .given = amount_of(part),
                        .least = amount_of(fraction(-1))});
    }
    constexpr fraction part() const { return part_; }
    /// As the standards report it: 100 (B - A) / A.
    constexpr fraction in_percent() const { return part_ * 100; }
    /// What one unit of length becomes.
    constexpr fraction factor() const { return part_ + 1; }

    friend constexpr bool operator==(const dimensional_change&, const dimensional_change&) = default;

private:
    fraction part_ = 0;
};

/// Shrinkage as a positive part of the length before. Throws shrinkage_error unless 0 <= s < 1.
constexpr dimensional_change shrinks_by(fraction s) {
    if (s < 0)
        detail::refuse<shrinkage_error>(
            "a shrinkage is given as a positive part: it was " + to_text(s) + "; cloth that becomes longer grows_by",
            refusal{.kind = fault::too_small, .what = "a shrinkage", .given = amount_of(s), .least = amount_of(0)});
    return dimensional_change(-s);
}

/// Growth as a positive part of the length before. Throws shrinkage_error if it is negative.
constexpr dimensional_change grows_by(fraction g) {
    if (g < 0)
        detail::refuse<shrinkage_error>(
            "a growth is given as a positive part: it was " + to_text(g) + "; cloth that becomes shorter shrinks_by",
            refusal{.kind = fault::too_small, .what = "a growth", .given = amount_of(g), .least = amount_of(0)});
    return dimensional_change(g);
}

/// From marks measured before and after washing: (after - before) / before. Throws shrinkage_error unless both are more
/// than zero.
template <length_unit Unit>
constexpr dimensional_change measured_change(length<Unit> before, length<Unit> after) {
    require_more_than_zero<shrinkage_error>(before, "the distance of marks before washing");
    require_more_than_zero<shrinkage_error>(after, "the distance of marks after washing");
    return dimensional_change(ratio_of(after - before, before));
}

/// One change after another: each is a part of what the one before it left.
constexpr dimensional_change then(dimensional_change first, dimensional_change second) {
    return dimensional_change(first.factor() * second.factor() - 1);
}

/// What is to be cut so that it measures `l` after washing.
template <length_unit Unit>
constexpr length<Unit> before_washing(length<Unit> l, dimensional_change change) {
    return l / change.factor();
}

/// What a length of `l` measures after washing.
template <length_unit Unit>
constexpr length<Unit> after_washing(length<Unit> l, dimensional_change change) {
    return l * change.factor();
}

/// The length to cut: what it must measure after washing, and what is lost (or won, below zero) in washing.
template <length_unit Unit>
constexpr figure<Unit> washing_working(length<Unit> l, dimensional_change change) {
    return figure<Unit>().plus(l, "after washing").plus(before_washing(l, change) - l, "lost in washing");
}

/// The change along the cloth (with the warp) and across it (with the filling).
struct washing {
    dimensional_change along;
    dimensional_change across;
    friend constexpr bool operator==(const washing&, const washing&) = default;
};

/// Which side of a piece the warp runs along.
enum class warp { along_height, along_width };

/// The size to cut from unwashed cloth for a piece that must have the size `s` once it is washed; allowances shrink
/// too, so this is asked of the cut size.
template <length_unit Unit>
constexpr cut_size<Unit> before_washing(const cut_size<Unit>& s, const washing& w, warp runs = warp::along_height) {
    const bool upright = runs == warp::along_height;
    return {before_washing(s.width(), upright ? w.across : w.along),
            before_washing(s.height(), upright ? w.along : w.across)};
}

/// What becomes of a piece cut from unwashed cloth.
template <length_unit Unit>
constexpr cut_size<Unit> after_washing(const cut_size<Unit>& s, const washing& w, warp runs = warp::along_height) {
    const bool upright = runs == warp::along_height;
    return {after_washing(s.width(), upright ? w.across : w.along),
            after_washing(s.height(), upright ? w.along : w.across)};
}

} // namespace turncloth

#endif
