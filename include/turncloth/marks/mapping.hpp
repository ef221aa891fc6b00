// A long piece sewn to a short one so that mark meets mark.
//
//   even_mapping<U>(longer, shorter, n)        n equal spans on both; with a graduation after it, its marks on a ruler
//   listed_mapping<U>(on_long, on_short)       the marks of each, from the first to the end (two std::span, not copied)
//     .mark_on_long(k)  .mark_on_short(k)      the k-th meets the k-th, from 0 (both starts) to spans() (both ends)
//     .fullness(k)  .surplus(k)                of span k: long over short, long less short
//     .fullness()   .surplus()                 of the whole
//     .onto_short(place)  .onto_long(place)    the exact image of any place
//
//   constexpr even_mapping<inch> film(42_in, 30_in, 6);
//   static_assert(film.mark_on_long(1) == at<long_piece>(7_in) && film.mark_on_short(1) == at<short_piece>(5_in));
//   static_assert(film.fullness() == fraction(7, 5) && film.surplus(0) == 2_in);
#ifndef TURNCLOTH_MARKS_MAPPING_HPP
#define TURNCLOTH_MARKS_MAPPING_HPP

#include <turncloth/marks/row.hpp>

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace turncloth {

/// Datums: the start of each of the two pieces.
struct long_piece {
    static constexpr std::string_view name = "the start of the long piece";
};
struct short_piece {
    static constexpr std::string_view name = "the start of the short piece";
};

namespace detail {

/// What both mappings offer, from mark_on_long(k), mark_on_short(k) and spans(). Within a span the fuller piece is
/// eased evenly, so places are carried over in proportion. A mark or a span that does not exist throws marks_error.
template <class Mapping, class Unit>
class mapped_spans {
public:
    using on_long = place<long_piece, Unit>;
    using on_short = place<short_piece, Unit>;

    constexpr fraction fullness(std::int64_t k) const {
        require_index<marks_error>(k, self().spans(), "a span of a mapping");
        return ratio_of(long_span(k), short_span(k));
    }
    constexpr length<Unit> surplus(std::int64_t k) const {
        require_index<marks_error>(k, self().spans(), "a span of a mapping");
        return long_span(k) - short_span(k);
    }

    constexpr fraction fullness() const { return ratio_of(end_of_long().from_datum(), end_of_short().from_datum()); }
    constexpr length<Unit> surplus() const { return end_of_long().from_datum() - end_of_short().from_datum(); }

    friend constexpr bool operator==(const mapped_spans&, const mapped_spans&) = default;

    /// Throws marks_error for a place off the piece.
    constexpr on_short onto_short(const on_long& p) const {
        require_on_piece(p, end_of_long(), "long");
        const std::int64_t k = first_span([&](std::int64_t span) { return p <= self().mark_on_long(span + 1); });
        return self().mark_on_short(k) + (p - self().mark_on_long(k)) / fullness(k);
    }
    constexpr on_long onto_long(const on_short& p) const {
        require_on_piece(p, end_of_short(), "short");
        const std::int64_t k = first_span([&](std::int64_t span) { return p <= self().mark_on_short(span + 1); });
        return self().mark_on_long(k) + (p - self().mark_on_short(k)) * fullness(k);
    }

    template <class Please = please::carry_a_place_over_from_the_piece_that_it_is_measured_on>
    void onto_short(const on_short&) const = delete;
    template <class Please = please::carry_a_place_over_from_the_piece_that_it_is_measured_on>
    void onto_long(const on_long&) const = delete;

private:
    constexpr const Mapping& self() const { return static_cast<const Mapping&>(*this); }
    constexpr on_long end_of_long() const { return self().mark_on_long(self().spans()); }
    constexpr on_short end_of_short() const { return self().mark_on_short(self().spans()); }
    constexpr length<Unit> long_span(std::int64_t k) const {
        return self().mark_on_long(k + 1) - self().mark_on_long(k);
    }
    constexpr length<Unit> short_span(std::int64_t k) const {
        return self().mark_on_short(k + 1) - self().mark_on_short(k);
    }

    /// The first span that reaches as far as a place does, by halving: the last one does, as the place is on the piece.
    template <class Reaches>
    constexpr std::int64_t first_span(Reaches reaches) const {
        std::int64_t low = 0, high = self().spans() - 1;
        while (low < high) {
            const std::int64_t middle = low + (high - low) / 2;
            reaches(middle) ? high = middle : low = middle + 1;
        }
        return low;
    }

    template <class Datum>
    static constexpr void require_on_piece(const place<Datum, Unit>& p, const place<Datum, Unit>& end,
                                           const char* which) {
        if (p < place<Datum, Unit>() || p > end)
            refuse<marks_error>({"a place ", p.from_datum(), " along is off the ", which, " piece, which is ",
                                 end.from_datum(), " long"},
                                {.kind = p > end ? fault::too_large : fault::too_small,
                                 .what = "a place on the piece",
                                 .given = p.from_datum(),
                                 .least = length<Unit>(),
                                 .most = end.from_datum()});
    }
};

} // namespace detail

/// On a ruler the marks of the short piece are rounded; those of the long one lie farther by what it has more up to
/// there, rounded by itself: where each span has a whole number of graduations more, all spans have the same.
/// Throws marks_error for no spans, a length of nothing, or a long piece shorter than the short one.
template <length_unit Unit>
class even_mapping : public detail::mapped_spans<even_mapping<Unit>, Unit> {
public:
    constexpr even_mapping(length<Unit> longer, length<Unit> shorter, std::int64_t spans, length<Unit> graduation = {})
        : long_(divided_with_ends<long_piece>(longer, spans)),
          short_(divided_with_ends<short_piece>(shorter, spans).on_ruler(graduation)) {
        if (longer < shorter)
            detail::refuse<marks_error>(
                {"the long piece must not be shorter than the short one: they were ", longer, " and ", shorter},
                {.kind = fault::too_small, .what = "the long piece", .given = longer, .least = shorter});
    }

    constexpr std::int64_t spans() const { return long_.size() - 1; }
    constexpr place<long_piece, Unit> mark_on_long(std::int64_t k) const {
        place<long_piece, Unit> exact = mark(long_, k);
        if (short_.graduation().value() == 0)
            return exact;
        const length<Unit> more = exact.from_datum() - short_.exact()[k].from_datum();
        return at<long_piece>(short_[k].from_datum() + nearest_to(more, short_.graduation(), ties::up));
    }
    constexpr place<short_piece, Unit> mark_on_short(std::int64_t k) const { return mark(short_, k); }

    friend constexpr bool operator==(const even_mapping&, const even_mapping&) = default;

private:
    template <class Row>
    static constexpr typename Row::value_type mark(const Row& marks, std::int64_t k) {
        return marks[k];
    }

    row<long_piece, Unit> long_;
    row<short_piece, Unit> short_;
};

namespace detail {
template <class List, class Place>
concept temporary_list = !std::is_lvalue_reference_v<List> && !std::same_as<List, std::span<const Place>> &&
                         !std::same_as<List, const std::span<const Place>>;
} // namespace detail

/// The marks of both pieces, each list from the first after the start to the end of the piece. The lists stay the
/// caller's and must outlive the mapping. Making it walks the lists once, and a place is carried over in a time that
/// grows with the logarithm of their size, as for equal spans. Throws marks_error for lists of unequal number, for none, for a mark of the
/// short piece that is not beyond the one before it, and for a span that is shorter on the long piece than on the short.
template <length_unit Unit>
class listed_mapping : public detail::mapped_spans<listed_mapping<Unit>, Unit> {
public:
    constexpr listed_mapping(std::span<const place<long_piece, Unit>> longer,
                             std::span<const place<short_piece, Unit>> shorter)
        : long_(longer), short_(shorter) {
        if (longer.size() != shorter.size() || longer.empty())
            detail::refuse<marks_error>({"both pieces need the same number of marks, at least one: they had ",
                                         longer.size(), " and ", shorter.size()},
                                        {.kind = fault::disagree,
                                         .what = "the number of marks",
                                         .given = longer.size(),
                                         .most = shorter.size()});
        for (std::int64_t k = 0; k < spans(); ++k)
            require_span(k);
    }

    /// Lists that are gone at the end of the statement would be read after it.
    template <class Long, class Short, class Please = please::name_the_lists_first_since_a_mapping_only_refers_to_them>
        requires(detail::temporary_list<Long, place<long_piece, Unit>> ||
                 detail::temporary_list<Short, place<short_piece, Unit>>)
    listed_mapping(Long&&, Short&&)
    = delete;

    constexpr std::int64_t spans() const { return static_cast<std::int64_t>(long_.size()); }
    constexpr place<long_piece, Unit> mark_on_long(std::int64_t k) const { return mark(long_, k); }
    constexpr place<short_piece, Unit> mark_on_short(std::int64_t k) const { return mark(short_, k); }

private:
    constexpr void require_span(std::int64_t k) const {
        const length<Unit> longer = mark_on_long(k + 1) - mark_on_long(k);
        const length<Unit> shorter = mark_on_short(k + 1) - mark_on_short(k);
        require_more_than_zero<marks_error>(shorter, "a span of the short piece");
        if (longer < shorter)
            detail::refuse<marks_error>(
                {"span ", k + 1, " of the long piece is ", longer, ", less than the ", shorter, " it is sewn to"},
                {.kind = fault::too_small,
                 .what = "a span of the long piece",
                 .given = longer,
                 .least = shorter,
                 .index = static_cast<std::size_t>(k)});
    }

    template <class Place>
    static constexpr Place mark(std::span<const Place> marks, std::int64_t k) {
        require_index<marks_error>(k, static_cast<std::int64_t>(marks.size()) + 1, "a mark of a mapping");
        return k == 0 ? Place() : marks[static_cast<std::size_t>(k - 1)];
    }

    std::span<const place<long_piece, Unit>> long_;
    std::span<const place<short_piece, Unit>> short_;
};

} // namespace turncloth

#endif
