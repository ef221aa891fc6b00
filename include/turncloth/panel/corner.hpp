// Corners where two turned edges meet: mitred or stacked, from equal allowances or unequal ones.
//
//   mitre<U>(upright, level)            the finishes of the edge that runs up and of the edge that runs across
//   m.crease()  m.crease_legs()         the fold across the corner, and where it meets the two cut edges
//   m.finished_corner()  m.hem_corner() where the outer creases cross; where the folded hems' inner edges meet
//   m.trim(allowance, step)             the cut outside the crease;  bulk_removed(trim) what falls off
//   m.seam_on_upright()  m.seam_on_level()   the two lines that a sewn mitre brings together
//   stacked_corner<U>(upright, level)   overlap(), layers(), underlay(margin): what may be cut out from beneath
//   mitred_border<U>(outer, width, allowance)     a strip with both ends cut at 45 degrees: cut_width(), long_edge(...)
//
//   const mitre<inch> napkin(double_turned_hem("1/4"_in, 1_in), double_turned_hem("1/4"_in, 1_in));
//   napkin.crease_legs() == corner_legs<inch>{"2 1/2"_in, "2 1/2"_in};   // from the cut corner, along each edge
//
// All points are measured from the cut corner: x inward from the upright edge, y inward from the level edge. That the
// lines do what is said here is shown by folding: see made_up.hpp. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_CORNER_HPP
#define TURNCLOTH_PANEL_CORNER_HPP

#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/polygon.hpp>

#include <array>
#include <cstddef>
#include <string>
#include <utility>

namespace turncloth {

/// A corner that cannot be made.
class corner_error : public error {
public:
    using error::error;
};

/// A line across a corner by where it meets the two cut edges.
template <length_unit Unit>
struct corner_legs {
    length<Unit> along_level;   ///< from the corner along the edge that runs across: the line passes (along_level, 0)
    length<Unit> along_upright; ///< from the corner along the edge that runs up: the line passes (0, along_upright)

    /// Directed so that the corner lies left of it, as folding asks.
    constexpr line<Unit> across() const { return {{along_level, {}}, {{}, along_upright}}; }
    friend constexpr bool operator==(const corner_legs&, const corner_legs&) = default;
};

/// The triangle that falls off where a corner is cut along a line.
template <length_unit Unit>
constexpr area<Unit> bulk_removed(const corner_legs<Unit>& cut) {
    return cut.along_level * cut.along_upright / 2;
}

namespace detail {

/// base + sqrt(square) (or base - sqrt(square)) on a multiple of `step`; a half goes up. A multiple x lies at or below
/// the value exactly where x - base is at or below the root, which squares of fractions decide; the search starts from
/// doubles.
constexpr fraction with_root(fraction base, bool added, fraction square, fraction step, rounding wanted) {
    const auto at_or_below = [&](fraction x) {
        const fraction past = added ? x - base : base - x; // x <= value is: past <= root, or past >= root
        return added ? past <= 0 || past * past <= square : past >= 0 && past * past >= square;
    };
    const fraction root = square_root(square, step, rounding::down);
    fraction low = down_to(added ? base + root : base - root, step);
    while (!at_or_below(low))
        low -= step;
    while (at_or_below(low + step))
        low += step;
    const fraction rest = added ? low - base : base - low;
    const bool exact = rest >= 0 && rest * rest == square;
    const bool goes_up = wanted == rounding::up || (wanted == rounding::nearest && at_or_below(low + step / 2));
    return goes_up && !exact ? low + step : low;
}

/// The last crease of a turned edge, and what is turned round it: from `inner`, which is the crease before it or the
/// cut edge, to the fold.
template <length_unit Unit>
struct turned_part {
    length<Unit> inner, fold;

    constexpr length<Unit> depth() const { return fold - inner; }
};

/// Whether the cloth of an edge is turned back over the piece, so that the last crease is the finished edge. A seam's
/// allowance is not, nor is what goes on over or under the neighbouring piece.
template <length_unit Unit>
constexpr bool is_turned(const finish<Unit>& f) {
    return !f.folds().empty() && f.reach().value() > 0;
}

template <length_unit Unit>
constexpr turned_part<Unit> turned_part_of(const finish<Unit>& f, const char* which) {
    if (!is_turned(f))
        refuse<corner_error>("this corner needs turned cloth on both edges: the " + std::string(which) +
                                 " edge has a " + std::string(f.name()),
                             refusal{.kind = fault::unsuitable, .what = "a finish", .where = which});
    const auto folds = f.folds();
    return {folds.size() > 1 ? folds[folds.size() - 2].from_datum() : length<Unit>(), folds.back().from_datum()};
}

} // namespace detail

/// A mitre. With F the distance of an edge's last crease from its cut edge and D the depth turned round it, the folded
/// hems meet along the line from the finished corner (F1, F2) to the corner of their inner edges (F1 + D1, F2 + D2).
/// Turned back across the upright crease, that line leads to (F1 - D1, F2 + D2); across the level one, to
/// (F1 + D1, F2 - D2). Both lie on one straight line through (F1, F2): the crease. For equal hems it is at 45 degrees
/// and leaves the edges 2 F from the corner. Where a turn of cloth is taken up, F is the middle of it; the hems then
/// meet exactly as they do flat, and equal hems meet round the thickness too.
template <length_unit Unit>
class mitre {
public:
    /// Throws corner_error unless cloth is turned on both edges.
    constexpr mitre(const finish<Unit>& upright, const finish<Unit>& level)
        : upright_(detail::turned_part_of(upright, "upright")), level_(detail::turned_part_of(level, "level")) {}

    constexpr point<Unit> finished_corner() const { return {upright_.fold, level_.fold}; }
    constexpr point<Unit> hem_corner() const {
        return {upright_.fold + upright_.depth(), level_.fold + level_.depth()};
    }

    constexpr corner_legs<Unit> crease_legs() const {
        return {upright_.fold + level_.fold * shape(), level_.fold + upright_.fold / shape()};
    }
    constexpr line<Unit> crease() const { return crease_legs().across(); }

    /// The cut that leaves at least `allowance` outside the crease, its legs on multiples of `step`: rounded down, that
    /// is toward the corner. A leg is shorter than the crease's by allowance x sqrt(1 + (D1 / D2)^2), or D2 / D1 along
    /// the upright edge: by sqrt(2) allowances for equal hems. Throws corner_error where nothing is left to cut.
    constexpr corner_legs<Unit> trim(length<Unit> allowance, length<Unit> step,
                                     rounding wanted = rounding::down) const {
        require_not_negative<corner_error>(allowance, "the allowance of a mitre");
        const corner_legs<Unit> crease = crease_legs();
        corner_legs<Unit> cut{trimmed(crease.along_level, allowance, shape(), step, wanted),
                              trimmed(crease.along_upright, allowance, reciprocal(shape()), step, wanted)};
        if (cut.along_level.value() <= 0 || cut.along_upright.value() <= 0)
            detail::refuse<corner_error>("an allowance of " + to_text(allowance) +
                                             " leaves nothing to trim from a mitre whose crease meets the edges " +
                                             number_text(crease.along_level) + " and " + to_text(crease.along_upright) +
                                             " from the corner",
                                         refusal{fault::too_large, "the allowance of a mitre", amount_of(allowance)});
        return cut;
    }

    /// The seam of a sewn mitre, from the finished corner to the crease before the last and on to the cut edge. The
    /// first stretch lies on the crease. The second is its mirror image in the first turn, as that is already folded
    /// under when the seam is sewn through it: straight on, the turned-under edges would pull apart at the corner. The
    /// seams on the two edges are brought together; for a hem turned once both stretches lie on the crease.
    constexpr std::array<point<Unit>, 3> seam_on_upright() const {
        const length<Unit> at_turn = level_.fold + level_.depth();
        return {finished_corner(), {upright_.inner, at_turn}, {{}, at_turn - upright_.inner / shape()}};
    }
    constexpr std::array<point<Unit>, 3> seam_on_level() const {
        const length<Unit> at_turn = upright_.fold + upright_.depth();
        return {finished_corner(), {at_turn, level_.inner}, {at_turn - level_.inner * shape(), {}}};
    }

private:
    /// D1 / D2.
    constexpr fraction shape() const { return ratio_of(upright_.depth(), level_.depth()); }

    static constexpr length<Unit> trimmed(length<Unit> leg, length<Unit> allowance, fraction shape, length<Unit> step,
                                          rounding wanted) {
        const fraction square = allowance.value() * allowance.value() * (1 + shape * shape);
        return length_of<Unit>(detail::with_root(leg.value(), false, square, step.value(), wanted));
    }

    detail::turned_part<Unit> upright_, level_;
};

/// A corner folded one edge after the other, nothing cut or mitred.
template <length_unit Unit>
class stacked_corner {
public:
    /// Throws corner_error unless cloth is turned on both edges.
    constexpr stacked_corner(const finish<Unit>& upright, const finish<Unit>& level)
        : upright_(detail::turned_part_of(upright, "upright")),
          level_(detail::turned_part_of(level, "level")),
          layers_((upright.folds().size() + 1) * (level.folds().size() + 1)) {}

    /// Where both hems lie over one another: a square for equal hems, else a rectangle. Width and height.
    constexpr std::pair<length<Unit>, length<Unit>> overlap() const { return {upright_.depth(), level_.depth()}; }
    /// How many layers lie at the hems' outer corner: each edge folded n times has n + 1, and they multiply.
    constexpr std::size_t layers() const { return layers_; }
    /// The rectangle at the cut corner that may be cut out beforehand, as it is turned twice and never seen: all that
    /// lies further than `margin` outside both creases. Width and height. Throws corner_error for a margin that leaves
    /// nothing.
    constexpr std::pair<length<Unit>, length<Unit>> underlay(length<Unit> margin) const {
        const length<Unit> least = upright_.fold < level_.fold ? upright_.fold : level_.fold;
        if (margin.value() < 0 || margin >= least)
            detail::refuse<corner_error>("the margin of an underlay must be from 0 to less than " + to_text(least) +
                                             ", which is turned: it was " + to_text(margin),
                                         refusal{.kind = margin.value() < 0 ? fault::too_small : fault::too_large,
                                                 .what = "the margin of an underlay",
                                                 .given = amount_of(margin),
                                                 .least = amount_of(length<Unit>()),
                                                 .most = amount_of(least)});
        return {upright_.fold - margin, level_.fold - margin};
    }

private:
    detail::turned_part<Unit> upright_, level_;
    std::size_t layers_;
};

/// One strip of a border whose corners are mitred: a seam-line trapezoid with long side `outer` and height `width`, and
/// its allowance all round. Its legs slant at 45 degrees, so a cutting line that keeps `allowance` away from all sides
/// is longer than the outer side by 2 a (1 + sqrt 2), and the inner edge than the inner side by 2 a (sqrt 2 - 1).
template <length_unit Unit>
class mitred_border {
public:
    /// Throws corner_error for lengths that are not above zero, or a strip so wide that its mitres cross.
    constexpr mitred_border(length<Unit> outer, length<Unit> width, length<Unit> allowance)
        : outer_(outer), width_(width), allowance_(allowance) {
        require_more_than_zero<corner_error>(width, "the width of a border");
        require_not_negative<corner_error>(allowance, "the allowance of a border");
        if (outer < width * 2)
            detail::refuse<corner_error>("the outer side of a mitred border " + to_text(width) +
                                             " wide must be at least twice that: it was " + to_text(outer),
                                         refusal{.kind = fault::too_small,
                                                 .what = "the outer side of a mitred border",
                                                 .given = amount_of(outer),
                                                 .least = amount_of(width * 2)});
    }

    constexpr length<Unit> cut_width() const { return width_ + allowance_ * 2; }
    /// The two raw edges, on multiples of `step`.
    constexpr length<Unit> long_edge(length<Unit> step, rounding wanted = rounding::up) const {
        return edge_of(outer_ + allowance_ * 2, step, wanted);
    }
    constexpr length<Unit> short_edge(length<Unit> step, rounding wanted = rounding::up) const {
        return edge_of(outer_ - width_ * 2 - allowance_ * 2, step, wanted);
    }
    /// Enough for a strip cut square, the tips of its seam allowance left off.
    constexpr length<Unit> squared_length() const { return outer_ + allowance_ * 2; }

private:
    constexpr length<Unit> edge_of(length<Unit> base, length<Unit> step, rounding wanted) const {
        const fraction square = allowance_.value() * allowance_.value() * 8; // (2 sqrt(2) a)^2
        return length_of<Unit>(detail::with_root(base.value(), true, square, step.value(), wanted));
    }

    length<Unit> outer_, width_, allowance_;
};

} // namespace turncloth

#endif
