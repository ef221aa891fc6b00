// Strips on the bias, at 45 degrees to the threads.
//
//   bias_from_square(side, width)             about how much strip a square gives: its area over the width
//   square_for_bias(length, width, step)      the side of the square for a length, rounded up, never short
//   cloth_for_bias(length, width, shortest, across, step)   the length of cloth of a given width, likewise
//   bias_from_cloth(across, along, width, shortest)         what a piece of cloth gives
//   counted_bias(across, along, width, seam, step)          strips actually cut from a rectangle, piece by piece
//   cloth_for_counted_bias(strip, across, width, seam, step)   the cloth for a length of strip, in that manner
//   along_selvedge(width, step, side)         where to mark along the selvedge for a strip of that width
//   longest_bias(square, width, step, side)   one strip from corner to corner
//
//   static_assert(square_for_bias(150_in, 2_in, "1/8"_in) == "17 3/8"_in); // sqrt(300) = 17.32...
//
// Every root is brought to its graduation by comparing whole numbers, so "rounded up" is up, and by less than one step.
#ifndef TURNCLOTH_NOTIONS_BIAS_HPP
#define TURNCLOTH_NOTIONS_BIAS_HPP

#include <turncloth/notions/binding.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// Area over width: what a square would give without seams. A seam takes its share: see counted_bias.
template <length_unit Unit>
constexpr length<Unit> bias_from_square(length<Unit> square, length<Unit> width) {
    detail::more_than_zero<binding_error>(square, "the side of a square");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    return square * ratio(square, width);
}

/// The least multiple of `step` whose square is length * width or more.
template <length_unit Unit>
constexpr length<Unit> square_for_bias(length<Unit> strip, length<Unit> width, length<Unit> step) {
    detail::more_than_zero<binding_error>(strip, "the length of a strip");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    return length_of<Unit>(square_root(strip.value() * width.value(), step.value(), side::above));
}

/// For strips none of which is shorter than `shortest`, two corners of the cloth are lost, right-angled triangles whose
/// legs are shortest / sqrt(2): together shortest^2 / 2. (The rule of NIMI, Dress Making, Trade Practical, vol. 2, p.
/// 220, which takes 1.4 for sqrt(2).) Up to the next `step`.
template <length_unit Unit>
constexpr length<Unit> cloth_for_bias(length<Unit> strip, length<Unit> width, length<Unit> shortest,
                                      length<Unit> across, length<Unit> step) {
    detail::more_than_zero<binding_error>(strip, "the length of a strip");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    detail::not_negative<binding_error>(shortest, "the shortest strip");
    detail::more_than_zero<binding_error>(across, "the width of the cloth");
    const auto needed = strip * width + shortest * shortest / 2;
    return up_to(length_of<Unit>(needed.value() / across.value()), step);
}

/// The other way about. Throws binding_error where the corners are all there is.
template <length_unit Unit>
constexpr length<Unit> bias_from_cloth(length<Unit> across, length<Unit> along, length<Unit> width,
                                       length<Unit> shortest) {
    detail::more_than_zero<binding_error>(across, "the width of the cloth");
    detail::more_than_zero<binding_error>(along, "the length of the cloth");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    detail::not_negative<binding_error>(shortest, "the shortest strip");
    const auto left = across * along - shortest * shortest / 2;
    if (left.value() <= 0)
        detail::refuse<binding_error>("strips of " + to_text(shortest) + " and more cannot be cut from a piece " +
                                      to_text(across) + " by " + to_text(along));
    return length_of<Unit>(left.value() / width.value());
}

/// The distance along the selvedge, or along any straight thread, between the two edges of a bias strip: width x
/// sqrt(2).
template <length_unit Unit>
constexpr length<Unit> along_selvedge(length<Unit> width, length<Unit> step, side wanted) {
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    return length_of<Unit>(square_root(width.value() * width.value() * 2, step.value(), wanted));
}

/// One strip along the diagonal of a square, measured where both its edges are still there: the diagonal less the width
/// (each end comes to a right-angled point half as long as the strip is wide). Rounded down. Throws binding_error where
/// nothing is left.
template <length_unit Unit>
constexpr length<Unit> longest_bias(length<Unit> square, length<Unit> width, length<Unit> step) {
    detail::more_than_zero<binding_error>(square, "the side of a square");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    const fraction s = square.value(), w = width.value();
    if (s * s * 2 <= w * w)
        detail::refuse<binding_error>("a square of " + to_text(square) + " gives no strip " + to_text(width) +
                                      " wide on its diagonal");
    // The diagonal is brought down first, so the difference may be one graduation short: then the next is allowed too.
    const fraction candidate = down_to(square_root(s * s * 2, step.value(), side::below) - w, step.value());
    const fraction next = candidate + step.value() + w;
    return length_of<Unit>(next * next <= s * s * 2 ? candidate + step.value() : candidate);
}

/// Bias strips cut from a piece and joined to one.
template <length_unit Unit>
struct bias_strips {
    std::int64_t count, joins;
    length<Unit> joined; ///< along the strip, rounded down
};

/// A triangle is cut off at 45 degrees from one corner and sewn on at the other end, which makes a parallelogram; all
/// strips cut from that are alike, sqrt(2) x across along each edge. The seam takes 2 x seam from the length, then
/// floor((along - 2 seam) / (sqrt(2) width)) strips fit, and each join takes 2 sqrt(2) x seam. (Sewn into a tube
/// instead and cut round and round, the strips come joined, and are as many.) Throws binding_error for a piece that is
/// longer across than along, or too small for one strip.
template <length_unit Unit>
constexpr bias_strips<Unit> counted_bias(length<Unit> across, length<Unit> along, length<Unit> width, length<Unit> seam,
                                         length<Unit> step) {
    detail::more_than_zero<binding_error>(across, "the width of the cloth");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    detail::more_than_zero<binding_error>(seam, "the seam of a join");
    if (along < across || across <= seam * 2)
        detail::refuse<binding_error>(
            "a piece for bias strips must be at least as long as wide, and wider than two seams"
            " of " +
            to_text(seam) + ": it was " + to_text(across) + " by " + to_text(along));
    const fraction base = (along - seam * 2).value() / width.value();
    const std::int64_t count = floor(square_root(base * base / 2, 1, side::below));
    if (count < 1)
        detail::refuse<binding_error>("a piece " + to_text(across) + " by " + to_text(along) + " gives no bias strip " +
                                      to_text(width) + " wide");
    const fraction straight = (across * count - seam * 2 * (count - 1)).value();
    return {count, count - 1, length_of<Unit>(square_root(straight * straight * 2, step.value(), side::below))};
}

/// The length of cloth for a length of strip in that manner, rounded up; at least as long as the cloth is wide.
template <length_unit Unit>
constexpr length<Unit> cloth_for_counted_bias(length<Unit> strip, length<Unit> across, length<Unit> width,
                                              length<Unit> seam, length<Unit> step) {
    detail::more_than_zero<binding_error>(strip, "the length of a strip");
    detail::more_than_zero<binding_error>(width, "the width of a strip");
    detail::more_than_zero<binding_error>(seam, "the seam of a join");
    if (across <= seam * 2)
        detail::refuse<binding_error>("a cloth for bias strips must be wider than two seams of " + to_text(seam) +
                                      ": it was " + to_text(across));
    // The least count with sqrt(2) (count across - 2 (count - 1) seam) >= strip, by squares; the start is not too high.
    const fraction l = strip.value(), p = across.value(), a = seam.value(), w = width.value();
    const fraction start = (square_root(l * l / 2, step.value(), side::below) - 2 * a) / (p - 2 * a);
    std::int64_t count = start > 1 ? ceil(start) : 1;
    const auto falls_short = [&](std::int64_t n) {
        const fraction straight = p * n - 2 * a * (n - 1);
        return straight * straight * 2 < l * l;
    };
    while (falls_short(count))
        ++count;
    const length<Unit> base = length_of<Unit>(square_root(w * w * 2 * count * count, step.value(), side::above));
    const length<Unit> along = up_to(base + seam * 2, step);
    return along < across ? across : along;
}

} // namespace turncloth

#endif
