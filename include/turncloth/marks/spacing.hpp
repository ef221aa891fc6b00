// Things of a width, spaced equally along an edge: eyelets, ribbons, buttons, loops.
//
//   spaced<Datum>(n, width, along)                    equal gaps, the two at the ends like those between
//   spaced_from_margins<Datum>(n, width, along, m)    the first starts m from one end, the last ends m from the other
//   spaced_centred<Datum>(n, width, along, gap)       the gap is given; together they lie in the middle
//   spaced_in_spans<Datum>(n, width, along)           one in the middle of each of n equal parts
//   s.starts()  s.centres()  s.ends()                 rows of places
//   s.size()  s.width()  s.gap()  s.margin()          how many, and the clear distances
//   s.on_ruler(graduation)                            the same, its rows on a ruler
//
//   constexpr auto eyelets = spaced_from_margins<finished_edge>(5, "1/2"_in, 20_in, 1_in);
//   static_assert(eyelets.gap() == "3 7/8"_in && eyelets.centres()[0] == at<finished_edge>("1 1/4"_in));
//
// With n things there are n - 1 gaps between them (the spacing rule of tailors' buttons; NIMI, Dress Making, p. 209).
#ifndef TURNCLOTH_MARKS_SPACING_HPP
#define TURNCLOTH_MARKS_SPACING_HPP

#include <turncloth/marks/row.hpp>

namespace turncloth {

/// n things of one width in a line, equal gaps between them and equal margins at the ends.
template <class Datum, length_unit Unit>
class spacing {
public:
    constexpr spacing(std::int64_t n, length<Unit> width, length<Unit> margin, length<Unit> gap)
        : n_(n), width_(width), margin_(margin), gap_(gap) {}

    constexpr std::int64_t size() const { return n_; }
    constexpr length<Unit> width() const { return width_; }
    /// Clear cloth between two neighbours; for a single thing, what would be between it and a second.
    constexpr length<Unit> gap() const { return gap_; }
    /// Clear cloth before the first and after the last.
    constexpr length<Unit> margin() const { return margin_; }
    constexpr row<Datum, Unit> starts() const { return from(margin_); }
    constexpr row<Datum, Unit> centres() const { return from(margin_ + width_ / 2); }
    constexpr row<Datum, Unit> ends() const { return from(margin_ + width_); }

    /// Each place on the nearest graduation; zero for none.
    [[nodiscard]] constexpr spacing on_ruler(length<Unit> graduation) const {
        spacing made = *this;
        made.graduation_ = graduation;
        return made;
    }

    friend constexpr bool operator==(const spacing&, const spacing&) = default;

private:
    constexpr row<Datum, Unit> from(length<Unit> first) const {
        return row<Datum, Unit>(at<Datum>(first), width_ + gap_, n_).on_ruler(graduation_);
    }

    std::int64_t n_;
    length<Unit> width_, margin_, gap_, graduation_{};
};

namespace detail {

inline std::string counted(std::int64_t n, const char* what) {
    return std::to_string(n) + " " + what + (n == 1 ? "" : "s");
}

/// What is left of a length when n things and two margins are taken from it. A width of nothing is a point: a stitch, a
/// pin.
template <length_unit Unit>
constexpr length<Unit> clear_of(std::int64_t n, length<Unit> width, length<Unit> along, length<Unit> margin) {
    require_at_least<marks_error>(n, std::int64_t{1}, "the number of things to space");
    require_more_than_zero<marks_error>(along, "the length to space things along");
    require_not_negative<marks_error>(width, "the width of a thing");
    require_not_negative<marks_error>(margin, "the margin beside the outer things");
    const length<Unit> needed = width * fraction(n) + margin * 2;
    if (needed > along)
        refuse<marks_error>({"for ", counted(n, "thing"), " ", width, " wide, with margins of ", margin, ", ", needed,
                             " is needed, which is ", needed - along, " more than the ", along, " there is"},
                            {.kind = fault::no_room, .what = "the things to space", .given = needed, .most = along});
    return along - needed;
}

} // namespace detail

/// Throws marks_error where the things do not fit, saying by how much, and for counts or lengths that make no sense.
template <class Datum, length_unit Unit>
constexpr spacing<Datum, Unit> spaced(std::int64_t n, length<Unit> width, length<Unit> along) {
    const length<Unit> gap = detail::clear_of(n, width, along, length<Unit>()) / (fraction(n) + 1);
    return {n, width, gap, gap};
}

/// A single thing cannot keep both margins unless it fills the length between them, so at least two are asked for.
template <class Datum, length_unit Unit>
constexpr spacing<Datum, Unit> spaced_from_margins(std::int64_t n, length<Unit> width, length<Unit> along,
                                                   length<Unit> margin) {
    require_at_least<marks_error>(n, std::int64_t{2}, "the number of things to space from two margins");
    return {n, width, margin, detail::clear_of(n, width, along, margin) / fraction(n - 1)};
}

/// Throws marks_error too where the gaps and the things together are longer than what there is.
template <class Datum, length_unit Unit>
constexpr spacing<Datum, Unit> spaced_centred(std::int64_t n, length<Unit> width, length<Unit> along,
                                              length<Unit> gap) {
    const length<Unit> clear = detail::clear_of(n, width, along, length<Unit>());
    require_not_negative<marks_error>(gap, "the gap between two things");
    const length<Unit> gaps = gap * fraction(n - 1);
    if (gaps > clear)
        detail::refuse<marks_error>(
            {"for ", detail::counted(n - 1, "gap"), " of ", gap, ", ", gaps, " is needed, which is ", gaps - clear,
             " more than the ", clear, " that the things leave"},
            {.kind = fault::no_room, .what = "the gaps between the things", .given = gaps, .most = clear});
    return {n, width, (clear - gaps) / 2, gap};
}

template <class Datum, length_unit Unit>
constexpr spacing<Datum, Unit> spaced_in_spans(std::int64_t n, length<Unit> width, length<Unit> along) {
    const length<Unit> gap = detail::clear_of(n, width, along, length<Unit>()) / fraction(n);
    return {n, width, gap / 2, gap};
}

} // namespace turncloth

#endif
