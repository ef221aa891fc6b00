// Strips on the bias, at 45 degrees to the threads: what a piece gives, and what to cut for a length.
//
//   bias_from(piece, strip, step)             the strips that a piece really gives, counted, and their length when joined
//   square_for_bias(wanted, step)             the side of the least square that gives a length, counted likewise
//   cloth_for_bias(wanted, across, step)      the least length of a cloth of that width
//   most_bias_before_seams(piece, width)      the rule of areas, which no seam is taken from: at most so much
//   least_square_before_seams(wanted, step)   least_cloth_before_seams(wanted, across, shortest, step)   at least so much
//   along_selvedge(width, step, rounding)     where to mark along the selvedge for a strip of that width
//   longest_bias({.square, .width}, step)     one strip from corner to corner
//
//   constexpr bias_wanted<inch> piping{.joined = 130_in, .width = "2 1/2"_in, .seam = "1/4"_in};
//   static_assert(square_for_bias(piping, "1/8"_in) == "18 7/8"_in);            // 5 strips, 4 joins
//   static_assert(least_square_before_seams(piping, "1/8"_in) == "18 1/8"_in);  // which gives 100 3/8 in
//
// Tell a maker the counted figure: whole strips, less their seams. Every root is brought to its graduation by comparing
// whole numbers, so "rounded up" is up, and by less than one step.
#ifndef TURNCLOTH_NOTIONS_BIAS_HPP
#define TURNCLOTH_NOTIONS_BIAS_HPP

#include <turncloth/notions/binding.hpp>

#include <algorithm>
#include <cstdint>
#include <string>

namespace turncloth {

/// A piece to cut bias strips from.
template <length_unit Unit>
struct bias_piece {
    length<Unit> across; ///< its width
    length<Unit> along;  ///< its length, at least as much
};

/// The strips to cut.
template <length_unit Unit>
struct bias_strip {
    length<Unit> width; ///< to cut, square to its edges
    length<Unit> seam;  ///< the allowance of each join
};

/// A length of strip that is asked for.
template <length_unit Unit>
struct bias_wanted {
    length<Unit> joined; ///< along the strip, when all of it is sewn to one
    length<Unit> width;
    length<Unit> seam = {}; ///< the rules before seams leave it out
};

/// Bias strips cut from a piece and joined to one.
template <length_unit Unit>
struct bias_strips {
    std::int64_t count, joins;
    length<Unit> joined; ///< along the strip, rounded down
};

namespace detail {

template <length_unit Unit>
constexpr void require_strips(const bias_strip<Unit>& strip, length<Unit> across) {
    require_more_than_zero<binding_error>(strip.width, "the width of a strip");
    require_more_than_zero<binding_error>(strip.seam, "the seam of a join");
    require_more_than_zero<binding_error>(across, "the width of the cloth");
    if (across <= strip.seam * 2)
        refuse<binding_error>(
            {"a cloth for bias strips must be wider than two seams of ", strip.seam, ": it was ", across},
            {.kind = fault::too_small, .what = "the width of the cloth", .given = across, .least = strip.seam * 2});
}

/// floor(x / sqrt(2)) for x >= 0, by halving: n is at most that where n^2 <= floor(x^2 / 2), of 128 bits.
constexpr std::int64_t over_root_of_two(fraction x) noexcept {
    const uint128 over = magnitude(numerator(x)), under = magnitude(denominator(x));
    const uint128 square = over * over / (under * under * 2);
    std::uint64_t reached = 0, beyond = magnitude(floor(x)) + 1;
    while (beyond - reached > 1) {
        const std::uint64_t middle = reached + (beyond - reached) / 2;
        (uint128{middle} * middle <= square ? reached : beyond) = middle;
    }
    return static_cast<std::int64_t>(reached);
}

/// floor((along - 2 seam) / (sqrt(2) width)), of a piece that is longer than two seams.
template <length_unit Unit>
constexpr std::int64_t bias_count(const bias_piece<Unit>& piece, const bias_strip<Unit>& strip) {
    return over_root_of_two((piece.along - strip.seam * 2).value() / strip.width.value());
}

/// Of n strips along one of their threads, where a seam takes its own width: the strips themselves are sqrt(2) times as
/// long.
template <length_unit Unit>
constexpr fraction straight_length(length<Unit> across, length<Unit> seam, std::int64_t n) {
    return (across * n - seam * 2 * (fraction(n) - 1)).value();
}

/// Whether the strips, which are sqrt(2) times as long as along a thread, come to what is wanted. Where they do so along
/// the thread already, that is not worked out: it is the area of a large piece.
template <length_unit Unit>
constexpr bool gives_bias(const bias_piece<Unit>& piece, const bias_wanted<Unit>& w) {
    const std::int64_t n = bias_count(piece, bias_strip<Unit>{w.width, w.seam});
    if (n < 1 || fraction(n) >= ratio_of(w.joined, piece.across - w.seam * 2))
        return n >= 1;
    const fraction ratio = w.joined.value() / straight_length(piece.across, w.seam, n);
    const int128 over = numerator(ratio), under = denominator(ratio);
    return over * over <= under * under * 2;
}

/// The least multiple of `step` that will do, where `enough` does and all above what does do too. What is enough is not
/// asked about, so that a coarse step leads to nothing larger than its first multiple.
template <length_unit Unit, class Does>
constexpr length<Unit> least_multiple(length<Unit> step, length<Unit> enough, Does does) {
    const divided_steps steps = divide_steps(enough.value(), step.value());
    if (!fits(steps.below + 1))
        width_64::does_not_fit();
    std::int64_t fails = 0, last = static_cast<std::int64_t>(steps.below) + (steps.rest > 0 ? 1 : 0);
    while (last - fails > 1) {
        const std::int64_t middle = fails + (last - fails) / 2;
        (does(step * middle) ? last : fails) = middle;
    }
    return step * last;
}

} // namespace detail

/// A triangle is cut off at 45 degrees from one corner and sewn on at the other end, which makes a parallelogram; all
/// strips cut from that are alike, sqrt(2) x across along each edge. The seam takes 2 x seam from the length, then
/// floor((along - 2 seam) / (sqrt(2) width)) strips fit, and each join takes 2 sqrt(2) x seam. (Sewn into a tube
/// instead and cut round and round, the strips come joined, and are as many.) Throws binding_error for a piece that is
/// longer across than along, or too small for one strip.
template <length_unit Unit>
constexpr bias_strips<Unit> bias_from(const bias_piece<Unit>& piece, const bias_strip<Unit>& strip, length<Unit> step) {
    detail::require_strips(strip, piece.across);
    require_at_least<binding_error>(piece.along, piece.across, "the length of a piece for bias strips");
    const std::int64_t n = detail::bias_count(piece, strip);
    if (n < 1)
        detail::refuse<binding_error>(
            {"a piece ", piece.across, " by ", piece.along, " gives no bias strip ", strip.width, " wide"},
            {.kind = fault::no_room, .what = "the width of a strip", .given = strip.width});
    const fraction straight = detail::straight_length(piece.across, strip.seam, n);
    return {n, n - 1, length_of<Unit>(square_root(straight * straight * 2, step.value(), rounding::down))};
}

/// The least square, its side on a graduation, that gives the length in that manner. A larger one never gives less. At
/// most some 60 sizes are tried. Throws binding_error for lengths of nothing, range_error for such a graduation, and
/// overflow_error where the side, or the length of strips across it, does not fit.
template <length_unit Unit>
constexpr length<Unit> square_for_bias(const bias_wanted<Unit>& w, length<Unit> step) {
    require_more_than_zero<binding_error>(w.joined, "the length of a strip");
    detail::require_strips(bias_strip<Unit>{w.width, w.seam}, w.seam * 3);
    // It has room for one strip, which across it is long enough.
    const length<Unit> enough = std::max(w.joined, w.width * fraction(3, 2) + w.seam * 2);
    return detail::least_multiple(step, enough, [&](length<Unit> side) {
        return side > w.seam * 2 && detail::gives_bias(bias_piece<Unit>{side, side}, w);
    });
}

/// The least length of a cloth of that width: the width itself where that will do, else on a graduation beyond it. It
/// costs and throws as square_for_bias, and binding_error for a cloth that is not wider than two seams.
template <length_unit Unit>
constexpr length<Unit> cloth_for_bias(const bias_wanted<Unit>& w, length<Unit> across, length<Unit> step) {
    require_more_than_zero<binding_error>(w.joined, "the length of a strip");
    detail::require_strips(bias_strip<Unit>{w.width, w.seam}, across);
    require_more_than_zero<range_error>(step.value(), "a graduation");
    if (detail::gives_bias(bias_piece<Unit>{across, across}, w))
        return across;
    // Each strip adds at least so much, and takes less than 3/2 of its width along the selvedge.
    const fraction strips = ceil(ratio_of(w.joined, across - w.seam * 2));
    const length<Unit> enough = w.seam * 2 + w.width * fraction(3, 2) * strips;
    return detail::least_multiple(step, enough, [&](length<Unit> along) {
        return along > across && detail::gives_bias(bias_piece<Unit>{across, along}, w);
    });
}

// The rule of areas: strip x width is the area of the cloth. No seam is taken off, and a remainder too narrow for a
// strip is counted as strip.

/// At most so much, before seams. Where no strip is to be shorter than `shortest`, two corners of the cloth are lost
/// besides, right-angled triangles whose legs are shortest / sqrt(2): together shortest^2 / 2. Throws binding_error
/// where the corners are all there is.
template <length_unit Unit>
constexpr length<Unit> most_bias_before_seams(const bias_piece<Unit>& piece, length<Unit> width,
                                              length<Unit> shortest = {}) {
    require_more_than_zero<binding_error>(piece.across, "the width of the cloth");
    require_more_than_zero<binding_error>(piece.along, "the length of the cloth");
    require_more_than_zero<binding_error>(width, "the width of a strip");
    require_not_negative<binding_error>(shortest, "the shortest strip");
    const auto left = piece.across * piece.along - shortest * shortest / 2;
    if (left.value() <= 0)
        detail::refuse<binding_error>(
            {"strips of ", shortest, " and more cannot be cut from a piece ", piece.across, " by ", piece.along},
            {.kind = fault::no_room, .what = "the shortest strip", .given = shortest});
    return length_of<Unit>(left.value() / width.value());
}

/// At least so large a square, before seams: the least multiple of `step` whose square is joined x width or more.
template <length_unit Unit>
constexpr length<Unit> least_square_before_seams(const bias_wanted<Unit>& w, length<Unit> step) {
    require_more_than_zero<binding_error>(w.joined, "the length of a strip");
    require_more_than_zero<binding_error>(w.width, "the width of a strip");
    return length_of<Unit>(square_root(w.joined.value() * w.width.value(), step.value(), rounding::up));
}

/// At least so long a piece of cloth, before seams, up to the next `step`: most_bias_before_seams the other way about.
/// (The rule of NIMI, Dress Making, Trade Practical, vol. 2, p. 220, which takes 1.4 for sqrt(2).)
template <length_unit Unit>
constexpr length<Unit> least_cloth_before_seams(const bias_wanted<Unit>& w, length<Unit> across, length<Unit> shortest,
                                                length<Unit> step) {
    require_more_than_zero<binding_error>(w.joined, "the length of a strip");
    require_more_than_zero<binding_error>(w.width, "the width of a strip");
    require_more_than_zero<binding_error>(across, "the width of the cloth");
    require_not_negative<binding_error>(shortest, "the shortest strip");
    const auto needed = w.joined * w.width + shortest * shortest / 2;
    return up_to(length_of<Unit>(needed.value() / across.value()), step);
}

/// The distance along the selvedge, or along any straight thread, between the two edges of a bias strip: width x
/// sqrt(2).
template <length_unit Unit>
constexpr length<Unit> along_selvedge(length<Unit> width, length<Unit> step, rounding wanted) {
    require_more_than_zero<binding_error>(width, "the width of a strip");
    return length_of<Unit>(square_root(width.value() * width.value() * 2, step.value(), wanted));
}

/// A square, and one strip to be cut along its diagonal.
template <length_unit Unit>
struct diagonal_strip {
    length<Unit> square; ///< its side
    length<Unit> width;  ///< of the strip, to cut
};

/// One strip along the diagonal of a square, measured where both its edges are still there: the diagonal less the width
/// (each end comes to a right-angled point half as long as the strip is wide). Rounded down. Throws binding_error where
/// nothing is left.
template <length_unit Unit>
constexpr length<Unit> longest_bias(const diagonal_strip<Unit>& strip, length<Unit> step) {
    const length<Unit> square = strip.square, width = strip.width;
    require_more_than_zero<binding_error>(square, "the side of a square");
    require_more_than_zero<binding_error>(width, "the width of a strip");
    const fraction s = square.value(), w = width.value();
    if (s * s * 2 <= w * w)
        detail::refuse<binding_error>({"a square of ", square, " gives no strip ", width, " wide on its diagonal"},
                                      {.kind = fault::no_room, .what = "the width of a strip", .given = width});
    // The diagonal is brought down first, so the difference may be one graduation short: then the next is allowed too.
    const fraction candidate = down_to(square_root(s * s * 2, step.value(), rounding::down) - w, step.value());
    const fraction next = candidate + step.value() + w;
    return length_of<Unit>(next * next <= s * s * 2 ? candidate + step.value() : candidate);
}

} // namespace turncloth

#endif
