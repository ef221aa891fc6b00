// Strips that bind an edge: how wide to cut them, how long, and from how much cloth.
//
//   single_fold(finished, seam, turn)  double_fold(finished, seam, turn)   the width to cut, a figure
//   join_loss(kind, width, allowance, step)      what each join takes from the length
//   binding_length(perimeter, corners, fold, overlap)   continuous, mitred at the corners, ends joined: a figure
//   strips_across(needed, width, usable, loss)   pieces from selvedge to selvedge: count, joins, cloth, left over
//   self_bound_area(p, w)  separately_bound_area(p, length, width)         the cloth that each way uses
//   binding_error                                what cannot be bound, and why
//
//   constexpr auto width = double_fold("3/8"_in, "3/8"_in, "1/8"_in);
//   static_assert(width.value() == "2 1/2"_in);   // 4 x 3/8 in finished + 2 x 3/8 in seam + 2 x 1/8 in turn of cloth
//
// Bias strips have a room of their own, bias.hpp.
#ifndef TURNCLOTH_NOTIONS_BINDING_HPP
#define TURNCLOTH_NOTIONS_BINDING_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/refusal.hpp>
#include <turncloth/panel/panel.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// A binding that cannot be made.
class binding_error : public notion_error {
public:
    using notion_error::notion_error;
};

namespace detail {

template <length_unit Unit>
constexpr void require_strip(length<Unit> finished, length<Unit> seam, length<Unit> turn) {
    more_than_zero<binding_error>(finished, "the finished width of a binding");
    more_than_zero<binding_error>(seam, "the seam of a binding");
    not_negative<binding_error>(turn, "the turn of cloth of a binding");
}

} // namespace detail

/// One layer: sewn `seam` from its edge on one face, brought over the bound edge, and its other edge turned under by
/// `seam` on the other face. Each face shows `finished`; the edge between takes up `turn` (see turn_of_cloth). With the
/// seam as wide as the binding, 4 x finished. (2 x finished and 3/8 in on each edge: The New Dressmaker, 1921, p. 131.)
template <length_unit Unit>
constexpr figure<Unit> single_fold(length<Unit> finished, length<Unit> seam, length<Unit> turn = {}) {
    detail::require_strip(finished, seam, turn);
    figure<Unit> f;
    f.plus_times(2, {finished}, "finished").plus_times(2, {seam}, "seam");
    if (turn.value() > 0)
        f.plus(turn, "turn of cloth");
    return f;
}

/// Two layers: the strip folded along its middle, both cut edges sewn together, the fold brought over to the other
/// face. Each layer is 2 x finished and a seam. With the seam as wide as the binding, 6 x finished.
template <length_unit Unit>
constexpr figure<Unit> double_fold(length<Unit> finished, length<Unit> seam, length<Unit> turn = {}) {
    detail::require_strip(finished, seam, turn);
    figure<Unit> f;
    f.plus_times(4, {finished}, "finished").plus_times(2, {seam}, "seam");
    if (turn.value() > 0)
        f.plus_times(2, {turn}, "turn of cloth");
    return f;
}

/// The finished width of a strip that is cut already; the seam and the turn of cloth as above.
template <length_unit Unit>
constexpr length<Unit> finished_width_of_single(length<Unit> cut, length<Unit> seam, length<Unit> turn = {}) {
    const length<Unit> taken = seam * 2 + turn;
    if (cut <= taken)
        detail::refuse<binding_error>("a strip cut " + to_text(cut) + " wide is taken up by its seams and turn, " +
                                      to_text(taken));
    return (cut - taken) / 2;
}
template <length_unit Unit>
constexpr length<Unit> finished_width_of_double(length<Unit> cut, length<Unit> seam, length<Unit> turn = {}) {
    const length<Unit> taken = (seam + turn) * 2;
    if (cut <= taken)
        detail::refuse<binding_error>("a strip cut " + to_text(cut) + " wide is taken up by its seams and turn, " +
                                      to_text(taken));
    return (cut - taken) / 4;
}

/// How two strips are joined end to end.
enum class join {
    straight, ///< square ends, sewn straight across
    diagonal, ///< square ends laid at right angles and sewn from corner to corner, then trimmed
    slanting  ///< ends cut at 45 degrees, as bias strips are, sewn along the slant
};

/// What one join takes from the length, with the joint's allowance. Straight: both allowances. Diagonal: the strips lie
/// square on each other, so the width of the strip, whatever is trimmed. Slanting: each allowance, measured across the
/// slant, is sqrt(2) times as long along the strip: 2 sqrt(2) a, rounded up to `step`.
template <length_unit Unit>
constexpr length<Unit> join_loss(join kind, length<Unit> width, length<Unit> allowance, length<Unit> step) {
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    detail::more_than_zero<binding_error>(allowance, "the allowance of a join");
    switch (kind) {
    case join::straight:
        return allowance * 2;
    case join::diagonal:
        if (allowance * 2 > width)
            detail::refuse<binding_error>("a diagonal join of strips " + to_text(width) +
                                          " wide has no room for an allowance of " + to_text(allowance));
        return width;
    case join::slanting:
        break;
    }
    const fraction a = allowance.value();
    return length_of<Unit>(square_root(a * a * 8, step.value(), side::above));
}

/// A continuous strip round an edge. Folded to a mitre at a corner it uses exactly the edge's own length, along its cut
/// edge: the strip turns on the corner itself (reflect it in the diagonal, then in the edge, and the corner stays where
/// it is). `fold` is what the thickness of that fold takes besides, `overlap` what the two ends need to be joined or
/// tucked one into the other.
template <length_unit Unit>
constexpr figure<Unit> binding_length(length<Unit> perimeter, std::int64_t corners, length<Unit> fold,
                                      length<Unit> overlap) {
    detail::more_than_zero<binding_error>(perimeter, "the edge to bind");
    detail::at_least<binding_error>(corners, 0, "the number of corners");
    detail::not_negative<binding_error>(fold, "the fold at a corner");
    detail::not_negative<binding_error>(overlap, "the overlap of a binding's ends");
    figure<Unit> f;
    f.plus(perimeter, "edge");
    if (corners > 0 && fold.value() > 0)
        f.plus_times(corners, {fold}, "corner folds");
    if (overlap.value() > 0)
        f.plus(overlap, "overlap of the ends");
    return f;
}

template <length_unit Unit>
constexpr figure<Unit> binding_length(const finished_size<Unit>& piece, length<Unit> fold, length<Unit> overlap) {
    return binding_length((piece.width() + piece.height()) * 2, 4, fold, overlap);
}

/// Strips cut straight across the cloth and joined to one.
template <length_unit Unit>
struct strips {
    std::int64_t count;
    std::int64_t joins;     ///< one less
    length<Unit> cloth;     ///< to cut off: count x width
    length<Unit> joined;    ///< the length that they make
    length<Unit> left_over; ///< of that
};

/// n pieces of the usable width, less n - 1 joins, are at least what is needed. Throws binding_error for lengths of
/// nothing, and where a join takes as much as a piece gives.
template <length_unit Unit>
constexpr strips<Unit> strips_across(length<Unit> needed, length<Unit> width, length<Unit> usable, length<Unit> loss) {
    detail::more_than_zero<binding_error>(needed, "the length of strip needed");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    detail::more_than_zero<binding_error>(usable, "the usable width of the cloth");
    detail::not_negative<binding_error>(loss, "the loss at a join");
    if (loss >= usable)
        detail::refuse<binding_error>("each join takes " + to_text(loss) + ", which is all of a piece " +
                                      to_text(usable) + " long");
    const std::int64_t count = needed <= usable ? 1 : ceil(ratio(needed - loss, usable - loss));
    const length<Unit> joined = usable * count - loss * (count - 1);
    return {count, count - 1, width * count, joined, joined - needed};
}

/// The cloth that the outer layer takes when it is brought round as its own binding, cut 4 x width larger each way.
template <length_unit Unit>
constexpr area<Unit> self_bound_area(const finished_size<Unit>& piece, length<Unit> width, length<Unit> turn = {}) {
    return area_of(self_bound(piece, width, length<Unit>(), turn).outer.cut());
}

/// The cloth that the same piece takes with an outer layer cut to size and a strip sewn round it.
template <length_unit Unit>
constexpr area<Unit> separately_bound_area(const finished_size<Unit>& piece, length<Unit> strip_length,
                                           length<Unit> strip_width) {
    detail::more_than_zero<binding_error>(strip_length, "the length of a strip");
    detail::more_than_zero<binding_error>(strip_width, "the width of a strip");
    return area_of(piece) + strip_length * strip_width;
}

} // namespace turncloth

#endif
