// What is done to one edge of a piece, as lengths measured from the cut edge inward.
//
//   finish<U>             allowance(), folds(), stitching(), reach(), name()
//   seam  single_turned_hem  double_turned_hem  heading  casing  self_binding  separate_binding  french_seam
//   felled_over  felled_under  lapped_over  lapped_under     the finishes of the trade; finish<U>() is a raw edge
//   turn_of_cloth(stack, cloth, step)                        what a fold takes up as it goes round a thickness
//   finish_error                                             a finish that cannot be made, with its numbers
//
//   constexpr auto hem = double_turned_hem("1/4"_in, 1_in, "1/8"_in);
//   static_assert(hem.allowance() == "1 1/4"_in && hem.stitching()[0] == at<cut_edge>("2 1/8"_in));
//
// A finish is data, so a further one is a further function that says the same four things; a panel needs no more.
#ifndef TURNCLOTH_PANEL_FINISH_HPP
#define TURNCLOTH_PANEL_FINISH_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/working.hpp>

#include <array>
#include <span>
#include <string>
#include <string_view>

namespace turncloth {

/// Where a length on a piece is measured from.
struct cut_edge { ///< the edge as the shears left it
    static constexpr std::string_view name = "the cut edge";
};
struct finished_edge { ///< the edge as it lies when sewn
    static constexpr std::string_view name = "the finished edge";
};
struct stitched_line { ///< the innermost row of stitching of the edge
    static constexpr std::string_view name = "the stitching";
};

/// A finish that cannot be made.
class finish_error : public error {
public:
    using error::error;
};

/// One edge's finish. Its lines are places on the flat piece, before anything is turned. A finish is built up by the
/// four verbs below; without any it is a raw edge.
template <length_unit Unit>
class finish {
public:
    using line = place<cut_edge, Unit>;

    constexpr finish() : finish("raw edge") {}
    constexpr explicit finish(label name) : name_(name) {}

    constexpr label name() const { return name_; }
    /// From the cut edge to the finished edge.
    constexpr length<Unit> allowance() const {
        length<Unit> sum;
        for (const length<Unit>& part : allowance_parts())
            sum += part;
        return sum;
    }
    constexpr std::span<const length<Unit>> allowance_parts() const& { return allowances_.view(); }
    /// In the order of folding, and of sewing.
    constexpr std::span<const line> folds() const& { return folds_.view(); }
    constexpr std::span<const line> stitching() const& { return stitching_.view(); }
    template <class Please = please::give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it>
    void allowance_parts() const&& = delete;
    template <class Please = please::give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it>
    void folds() const&& = delete;
    template <class Please = please::give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it>
    void stitching() const&& = delete;
    /// How far turned cloth lies inward of the finished edge.
    constexpr length<Unit> reach() const { return reach_; }

    friend constexpr bool operator==(const finish&, const finish&) = default;

    /// Whether the edge is sewn to another piece, which then shares its stitching.
    constexpr bool joins() const { return joins_; }

    constexpr finish& allows(length<Unit> l) { return allowances_.add(l), *this; }
    constexpr finish& folds_at(length<Unit> from_cut_edge) { return folds_.add(line(from_cut_edge)), *this; }
    constexpr finish& stitched_at(length<Unit> from_cut_edge) { return stitching_.add(line(from_cut_edge)), *this; }
    constexpr finish& reaches(length<Unit> l) { return reach_ = l, *this; }
    constexpr finish& joins_another() { return joins_ = true, *this; }

private:
    /// Room for four, so that nothing is allocated; no finish of the trade has more than three of anything.
    template <class T>
    class few {
    public:
        constexpr void add(const T& t) {
            if (count_ == all_.size())
                detail::refuse<finish_error>(
                    {"a finish has at most 4 parts, 4 folds and 4 rows of stitching"},
                    {.kind = fault::does_not_fit, .what = "a finish", .given = count_ + 1, .most = all_.size()});
            all_[count_++] = t;
        }
        constexpr std::span<const T> view() const { return {all_.data(), count_}; }
        friend constexpr bool operator==(const few&, const few&) = default;

    private:
        std::array<T, 4> all_{};
        std::size_t count_ = 0;
    };

    label name_;
    few<length<Unit>> allowances_;
    few<line> folds_, stitching_;
    length<Unit> reach_;
    bool joins_ = false;
};

namespace detail {

/// Turned under by `first` (zero for not at all), then turned by `depth` round something that takes up `turn` (zero for
/// nothing). The second crease is in the middle of the turn. What was the edge comes to lie `depth` inward of the
/// finished edge, which itself is first + depth + turn from the cut edge.
template <length_unit Unit>
[[gnu::noinline]] constexpr finish<Unit> turned_over(label name, length<Unit> first, length<Unit> depth,
                                                     length<Unit> inset, length<Unit> turn) {
    const length<Unit> nothing;
    require_more_than_zero<finish_error>(depth, "the depth of a hem");
    require_between<finish_error>(nothing, first, depth, "the first turn of a hem", "so that it lies inside the hem");
    require_between<finish_error>(nothing, inset, depth, "the inset of stitching", "so that it holds the hem");
    require_not_negative<finish_error>(turn, "the turn of cloth");
    finish<Unit> f(name);
    if (first > nothing)
        f.allows(first).folds_at(first);
    f.allows(depth).folds_at(first + depth + turn / 2);
    if (turn > nothing)
        f.allows(turn);
    return f.stitched_at(first + depth * 2 + turn - inset).reaches(depth);
}

} // namespace detail

// Below, a row of stitching keeps `inset` away from the edge that it holds, zero for stitching on the very edge. Each
// function throws finish_error for a length that is negative, or zero where there would be nothing to turn, and for an
// inset deeper than the hem. The distances are geometry: fold a strip of paper, prick it, unfold it.

/// A seam with its allowance: the stitching is the finished edge.
template <length_unit Unit>
constexpr finish<Unit> seam(length<Unit> allowance) {
    require_more_than_zero<finish_error>(allowance, "a seam allowance");
    return finish<Unit>("seam allowance").joins_another().allows(allowance).stitched_at(allowance);
}

/// Turned once. The cut edge shows inside, and is held.
template <length_unit Unit>
constexpr finish<Unit> single_turned_hem(length<Unit> depth, length<Unit> inset = {}) {
    return detail::turned_over("single-turned hem", length<Unit>(), depth, inset, length<Unit>());
}

/// Turned by `first` and again by `depth`, so that no cut edge shows.
template <length_unit Unit>
constexpr finish<Unit> double_turned_hem(length<Unit> first, length<Unit> depth, length<Unit> inset = {},
                                         length<Unit> turn = {}) {
    require_more_than_zero<finish_error>(first, "the first turn of a double-turned hem");
    return detail::turned_over("double-turned hem", first, depth, inset, turn);
}

/// A deep hem at the top of a hanging, its cut edge turned under by `under` (zero for an edge that does not fray).
template <length_unit Unit>
constexpr finish<Unit> heading(length<Unit> depth, length<Unit> under = {}, length<Unit> inset = {}) {
    return detail::turned_over("heading", under, depth, inset, length<Unit>());
}

/// A heading with a second row of stitching, `channel` nearer to the fold than the first, for a rod or cord between
/// them.
template <length_unit Unit>
constexpr finish<Unit> casing(length<Unit> depth, length<Unit> channel, length<Unit> under = {},
                              length<Unit> inset = {}) {
    finish<Unit> f = detail::turned_over("casing", under, depth, inset, length<Unit>());
    require_more_than_zero<finish_error>(channel, "the channel of a casing");
    require_between<finish_error>(length<Unit>(), channel, depth - inset, "the channel of a casing",
                                  "the depth within its stitching");
    return f.stitched_at(f.stitching()[0].from_datum() - channel);
}

/// The outer layer brought round over the inner layers and turned twice, both turns `width` deep. `turn` is what the
/// outer takes up in going round the inner layers' thickness. Common practice: 1 in beyond the inner layers, as two 1/2
/// in turns.
template <length_unit Unit>
constexpr finish<Unit> self_binding(length<Unit> width, length<Unit> inset = {}, length<Unit> turn = {}) {
    require_more_than_zero<finish_error>(width, "the width of a binding");
    return detail::turned_over("self-binding", width, width, inset, turn);
}

/// A strip bound over the edge: nothing is taken, and the strip's own edge is stitched `width` in, on both faces.
template <length_unit Unit>
constexpr finish<Unit> separate_binding(length<Unit> width) {
    require_more_than_zero<finish_error>(width, "the width of a binding");
    return finish<Unit>("separate binding").stitched_at(width).reaches(width);
}

/// Sewn at `first` with wrong sides together, trimmed to `trimmed`, folded along that seam and sewn again `second` from
/// the fold, so that the second seam encloses the first. (1/8 then 1/4 in: Conover, A Complete Course in Dressmaking,
/// 1922.)
template <length_unit Unit>
constexpr finish<Unit> french_seam(length<Unit> first, length<Unit> second, length<Unit> trimmed) {
    require_more_than_zero<finish_error>(first, "the first seam of a French seam");
    require_more_than_zero<finish_error>(second, "the second seam of a French seam");
    require_between<finish_error>(length<Unit>(), trimmed, first, "the trimmed edge of a French seam",
                                  "the first seam's allowance");
    if (trimmed >= second)
        detail::refuse<finish_error>(
            {"the second seam of a French seam must be wider than the edge it encloses, ", trimmed, ": it was ",
             second},
            {.kind = fault::too_small, .what = "the second seam of a French seam", .given = second, .least = trimmed});
    return finish<Unit>("French seam")
        .joins_another()
        .allows(first)
        .allows(second)
        .folds_at(first)
        .stitched_at(first)
        .stitched_at(first + second);
}
template <length_unit Unit>
constexpr finish<Unit> french_seam(length<Unit> first, length<Unit> second) {
    return french_seam(first, second, first);
}

/// The side of a flat-felled seam that is turned over the other: sewn `width` + `under` from its edge, its edge turned
/// under, and stitched down `inset` from that fold.
template <length_unit Unit>
constexpr finish<Unit> felled_over(length<Unit> width, length<Unit> under, length<Unit> inset = {}) {
    require_more_than_zero<finish_error>(width, "the width of a fell");
    require_more_than_zero<finish_error>(under, "the turn under a fell");
    require_between<finish_error>(length<Unit>(), under, width, "the turn under a fell",
                                  "so that it lies inside the fell");
    require_between<finish_error>(length<Unit>(), inset, under, "the inset of stitching",
                                  "so that it holds what is turned under");
    return finish<Unit>("flat-felled seam, over")
        .joins_another()
        .allows(under)
        .allows(width)
        .folds_at(under)
        .stitched_at(under + width)
        .stitched_at(under + inset);
}

/// The side of a flat-felled seam that lies inside it, sewn `allowance` from its edge.
template <length_unit Unit>
constexpr finish<Unit> felled_under(length<Unit> allowance) {
    require_more_than_zero<finish_error>(allowance, "the allowance inside a fell");
    return finish<Unit>("flat-felled seam, under").joins_another().allows(allowance).stitched_at(allowance);
}

/// The upper side of a lapped seam: its edge is turned under by `under` (zero for an edge that does not fray), and that
/// fold is the line at which the two pieces meet.
template <length_unit Unit>
constexpr finish<Unit> lapped_over(length<Unit> under, length<Unit> inset = {}) {
    if (under.value() == 0) {
        require_not_negative<finish_error>(inset, "the inset of stitching");
        return finish<Unit>("lapped seam, over").joins_another().stitched_at(inset);
    }
    require_more_than_zero<finish_error>(under, "the turn under a lapped seam");
    require_between<finish_error>(length<Unit>(), inset, under, "the inset of stitching",
                                  "so that it holds what is turned under");
    return finish<Unit>("lapped seam, over")
        .joins_another()
        .allows(under)
        .folds_at(under)
        .stitched_at(under + inset)
        .reaches(under);
}

/// The lower side of a lapped seam, which goes on under the upper by `lap`; stitched where the upper is.
template <length_unit Unit>
constexpr finish<Unit> lapped_under(length<Unit> lap, length<Unit> inset = {}) {
    require_more_than_zero<finish_error>(lap, "the lap of a seam");
    require_between<finish_error>(length<Unit>(), inset, lap, "the inset of stitching", "so that it holds the lap");
    return finish<Unit>("lapped seam, under").joins_another().allows(lap).stitched_at(lap - inset);
}

/// What a cloth of thickness `cloth` takes up as it goes half round a stack of thickness `stack`, rounded up to `step`.
/// The model: a half circle on the middle of the cloth, pi (stack + cloth) / 2; nothing for nothing. No published
/// constant exists, and a fold pressed square takes up as little as stack + cloth, so the figure is on the side of more
/// cloth. Throws finish_error for a negative thickness, range_error for a step not above zero.
template <length_unit Unit>
constexpr length<Unit> turn_of_cloth(length<Unit> stack, length<Unit> cloth, length<Unit> step) {
    require_not_negative<finish_error>(stack, "the thickness of a stack");
    require_not_negative<finish_error>(cloth, "the thickness of a cloth");
    return times_pi((stack + cloth) / 2, step, rounding::up);
}

// What a finish is given are lengths, in one unit.
#define TURNCLOTH_LENGTHS_ALONE(name)                                                                     \
    template <class Please = detail::name_the_unit, class... Given>                                       \
        requires(detail::numbers_among_lengths<Given...>)                                                 \
    void name(const Given&...) = delete;                                                                  \
    template <class Please = detail::bring_to_one_unit, class First, class... More>                       \
        requires(detail::lengths_in_two_units<First, More...> && !detail::numbers_among_lengths<More...>) \
    void name(const First&, const More&...) = delete
TURNCLOTH_LENGTHS_ALONE(seam);
TURNCLOTH_LENGTHS_ALONE(single_turned_hem);
TURNCLOTH_LENGTHS_ALONE(double_turned_hem);
TURNCLOTH_LENGTHS_ALONE(heading);
TURNCLOTH_LENGTHS_ALONE(casing);
TURNCLOTH_LENGTHS_ALONE(self_binding);
TURNCLOTH_LENGTHS_ALONE(separate_binding);
TURNCLOTH_LENGTHS_ALONE(french_seam);
TURNCLOTH_LENGTHS_ALONE(felled_over);
TURNCLOTH_LENGTHS_ALONE(felled_under);
TURNCLOTH_LENGTHS_ALONE(lapped_over);
TURNCLOTH_LENGTHS_ALONE(lapped_under);
#undef TURNCLOTH_LENGTHS_ALONE

TURNCLOTH_ONCE(class finish<inch>);
TURNCLOTH_ONCE(class finish<centimetre>);

TURNCLOTH_ONCE(finish<inch> detail::turned_over(label, length<inch>, length<inch>, length<inch>, length<inch>));
TURNCLOTH_ONCE(finish<centimetre> detail::turned_over(label, length<centimetre>, length<centimetre>, length<centimetre>,
                                                      length<centimetre>));

} // namespace turncloth

#endif
