// Gathers, pleats and tucks that fill a length exactly.
//
//   gathered(finished, fullness)                the cloth to gather, a figure with the fullness in it
//   pleating<U>(kind, finished, count, depth)   count pleats side by side, each folded back by depth
//     .width()  .taken()  .cut()  .fullness()   of each on the face; of cloth in each; to cut, a figure
//     .outer_folds(i)  .inner_folds(i)  .placements(i)   rows of places on the flat cloth, for the i-th fold of a pleat
//     .lie()  .most_layers()                    whether the folds behind meet; how much a needle must go through
//   pleats_near(kind, finished, {.width, .depth})   as many as come nearest to a wanted width
//   pleats_in(kind, cloth, {.width, .depth})    as many as a cut length makes, and what is left
//   rounded_start(pleating, k, graduation)      where the k-th pleat begins, on a ruler, on the face and on the cloth
//   tucks(finished, {.ends, .pitch, .depth})    parallel tucks: count, pitch, clear gap, cloth to cut
//   pleats_error                                pleats that cannot be
//
//   constexpr auto p = pleats_near(pleat::knife, 30_in, {.width = "1 3/4"_in, .depth = "1 1/2"_in});
//   static_assert(p.count() == 17 && p.width() == length_of<inch>({30, 17}) && p.cut().value() == 81_in);
//
// Where one width of cloth is not enough, cloth_widths (joining.hpp) says how many to join. The rule for knife pleats, cloth = 2 x depth x number + finished, is NIMI, Dress Making, Trade Practical, vol. 2, p.
// 203.
#ifndef TURNCLOTH_NOTIONS_PLEATS_HPP
#define TURNCLOTH_NOTIONS_PLEATS_HPP

#include <turncloth/marks/rounded.hpp>
#include <turncloth/marks/row.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/panel/finish.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// Pleats that cannot be made.
class pleats_error : public notion_error {
public:
    using notion_error::notion_error;
};

/// The cloth to gather into `finished`: the start of a working that hems and seams are added to. Common practice: 1 1/2
/// to 3 times. Throws pleats_error for less than once.
template <length_unit Unit>
constexpr figure<Unit> gathered(length<Unit> finished, fraction fullness) {
    require_more_than_zero<pleats_error>(finished, "the length to gather into");
    require_at_least<pleats_error>(fullness, fraction(1), "the fullness of gathers");
    return figure<Unit>().plus_times(fullness, {finished}, "gathered");
}

enum class pleat {
    knife,   ///< one fold each, all laid the same way
    box,     ///< two folds each, laid away from each other: the face stands forward
    inverted ///< two folds each, laid toward each other: they meet on the face
};

/// How the folds behind lie to their neighbours.
enum class pleat_lie {
    shallow, ///< apart
    meeting, ///< edge to edge: three layers throughout
    overlapping
};

/// Equal pleats side by side. On the face each shows its width; behind, each fold goes back by the depth and forward
/// again, so it takes twice the depth.
template <length_unit Unit>
class pleating {
public:
    using marks = row<cut_edge, Unit>;

    /// Throws pleats_error for a length or depth of nothing, or no pleat.
    constexpr pleating(pleat kind, length<Unit> finished, std::int64_t count, length<Unit> depth)
        : kind_(kind), finished_(finished), count_(count), depth_(depth) {
        require_more_than_zero<pleats_error>(finished, "the length to pleat into");
        require_more_than_zero<pleats_error>(depth, "the depth of a pleat");
        require_at_least<pleats_error>(count, std::int64_t{1}, "the number of pleats");
    }

    constexpr pleat kind() const { return kind_; }
    constexpr std::int64_t count() const { return count_; }
    constexpr length<Unit> depth() const { return depth_; }
    constexpr length<Unit> finished() const { return finished_; }
    constexpr int folds() const { return kind_ == pleat::knife ? 1 : 2; }
    /// Of each pleat on the face, exactly the finished length over their number.
    constexpr length<Unit> width() const { return finished_ / count_; }
    /// Of cloth in each pleat's folds.
    constexpr length<Unit> taken() const { return depth_ * (2 * folds()); }
    constexpr figure<Unit> cut() const {
        return figure<Unit>()
            .plus(finished_, "finished")
            .plus_times(fraction(count_) * (2 * folds()), {depth_}, "depth");
    }
    constexpr fraction fullness() const { return ratio_of(width() + taken(), width()); }

    /// On the flat cloth, from the start of the first pleat; mark k belongs to pleat k. The i-th fold of each pleat (i
    /// = 0, and 1 for box and inverted pleats) has its outer crease, which shows, brought onto its placement line; the
    /// inner crease, midway, lies behind. Throws pleats_error for a fold that the kind does not have.
    constexpr marks outer_folds(int i = 0) const { return each(creases(i).outer); }
    constexpr marks inner_folds(int i = 0) const { return each(creases(i).inner); }
    constexpr marks placements(int i = 0) const { return each(creases(i).placement); }

    constexpr pleat_lie lie() const {
        const length<Unit> behind = depth_ * folds();
        return behind < width() ? pleat_lie::shallow
                                : (behind == width() ? pleat_lie::meeting : pleat_lie::overlapping);
    }

    /// The most layers that lie anywhere between two creases of a long row. A fold puts two layers over a stretch of
    /// its depth, which is m whole widths and a rest f. Knife pleats: m + 1 folds cover some point, or m where f is
    /// nothing. With folds both ways, 2 m, and one more where f is something, and another where the rests overlap, 2 f
    /// > width.
    constexpr std::int64_t most_layers() const {
        const fraction m = floor(ratio_of(depth_, width()));
        const length<Unit> rest = depth_ - width() * m;
        const fraction some = rest.value() > 0 ? 1 : 0;
        if (folds() == 1)
            return numerator(1 + 2 * (m + some));
        return numerator(1 + 2 * (2 * m + some + (rest * 2 > width() ? 1 : 0)));
    }

    friend constexpr bool operator==(const pleating&, const pleating&) = default;

private:
    struct fold_lines {
        length<Unit> outer, inner, placement; ///< from the start of the pleat
    };

    constexpr fold_lines creases(int i) const {
        require_index<pleats_error>(i, folds(), "a fold of this pleat");
        const length<Unit> face = width(), d = depth_;
        switch (kind_) {
        case pleat::knife: // face, back, forward
            return {face, face + d, face + d * 2};
        case pleat::box: // back and forward, face, back and forward
            return i == 0 ? fold_lines{d * 2, d, length<Unit>()} : fold_lines{d * 2 + face, d * 3 + face, d * 4 + face};
        case pleat::inverted: // half the face, to the meeting line behind it and back, half the face
            break;
        }
        const length<Unit> half = face / 2;
        return i == 0 ? fold_lines{half, half + d, half + d * 2} : fold_lines{half + d * 4, half + d * 3, half + d * 2};
    }

    constexpr marks each(length<Unit> first) const { return {at<cut_edge>(first), width() + taken(), count_}; }

    pleat kind_;
    length<Unit> finished_;
    std::int64_t count_;
    length<Unit> depth_;
};

/// One pleat: what it shows, and how far each of its folds goes back.
template <length_unit Unit>
struct pleat_size {
    length<Unit> width, depth;
};

/// The number of pleats that comes nearest to the wanted width, at least one.
template <length_unit Unit>
constexpr pleating<Unit> pleats_near(pleat kind, length<Unit> finished, const pleat_size<Unit>& wanted) {
    require_more_than_zero<pleats_error>(finished, "the length to pleat into");
    require_more_than_zero<pleats_error>(wanted.width, "the width of a pleat");
    const std::int64_t n = floor(nearest_to(ratio_of(finished, wanted.width), fraction(1), ties::up));
    return {kind, finished, n < 1 ? 1 : n, wanted.depth};
}

/// Pleats from a cut length.
template <length_unit Unit>
struct pleats_and_rest {
    pleating<Unit> pleats;
    length<Unit> left_over; ///< of the cloth, not pleated
};

/// As many pleats of exactly this size as the cloth makes. Throws pleats_error where it does not make one.
template <length_unit Unit>
constexpr pleats_and_rest<Unit> pleats_in(pleat kind, length<Unit> cloth, const pleat_size<Unit>& size) {
    require_more_than_zero<pleats_error>(size.width, "the width of a pleat");
    const length<Unit> each = size.width + pleating<Unit>(kind, size.width, 1, size.depth).taken();
    if (cloth < each)
        detail::refuse<pleats_error>({"a pleat takes ", each, " of cloth: there was ", cloth},
                                     {.kind = fault::too_small, .what = "the cloth", .given = cloth, .least = each});
    const std::int64_t n = floor(ratio_of(cloth, each));
    return {pleating<Unit>(kind, size.width * n, n, size.depth), cloth - each * n};
}

/// Where the k-th pleat begins on the face and on the flat cloth, k from 0 to count (the end), each face width brought
/// to a graduation so that all of them still fill the finished length. What the folds take stays exact.
template <length_unit Unit>
struct pleat_start {
    place<finished_edge, Unit> on_face;
    place<cut_edge, Unit> on_cloth;
};

template <length_unit Unit>
constexpr pleat_start<Unit> rounded_start(const pleating<Unit>& p, std::int64_t k, length<Unit> graduation) {
    require_between<pleats_error>(std::int64_t{0}, k, p.count(), "the number of a pleat's start");
    const rounded_division<finished_edge, Unit> starts(p.finished(), p.count(), graduation);
    const length<Unit> along = k == 0 ? length<Unit>() : (k == p.count() ? p.finished() : starts[k - 1].from_datum());
    return {at<finished_edge>(along), at<cut_edge>(along + p.taken() * k)};
}

/// Tucks as they are asked for.
template <length_unit Unit>
struct tuck_size {
    length<Unit> ends;  ///< from each end of the finished length to the nearest tuck
    length<Unit> pitch; ///< from tuck to tuck, at most
    length<Unit> depth; ///< of each tuck
};

/// Parallel tucks, stitched down.
template <length_unit Unit>
struct tucking {
    std::int64_t count;
    length<Unit> pitch; ///< from tuck to tuck
    length<Unit> clear; ///< between the edge of one and the stitching of the next
    figure<Unit> cut;
};

/// Tucks on a finished length, none further apart than the pitch: n gaps have n + 1 tucks, as buttons have, and each
/// tuck takes twice its depth (NIMI, Dress Making, p. 209). Throws pleats_error for lengths of nothing, or tucks that
/// would cover each other.
template <length_unit Unit>
constexpr tucking<Unit> tucks(length<Unit> finished, const tuck_size<Unit>& size) {
    require_more_than_zero<pleats_error>(size.depth, "the depth of a tuck");
    require_not_negative<pleats_error>(size.ends, "the length beyond the last tuck");
    require_at_least<pleats_error>(size.pitch, size.depth, "the pitch of tucks");
    const length<Unit> between = finished - size.ends * 2;
    if (between.value() <= 0)
        detail::refuse<pleats_error>({"the ends beyond the tucks, ", size.ends * 2, ", leave nothing of ", finished},
                                     {.kind = fault::no_room,
                                      .what = "the length beyond the last tuck",
                                      .given = size.ends,
                                      .most = finished / 2});
    const fraction gaps = ceil(ratio_of(between, size.pitch));
    const length<Unit> each = between / gaps;
    if (each < size.depth)
        detail::refuse<pleats_error>(
            {"tucks ", size.depth, " deep at a pitch of ", each, " would cover each other"},
            {.kind = fault::no_room, .what = "the depth of a tuck", .given = size.depth, .most = each});
    figure<Unit> cut;
    cut.plus(finished, "finished").plus_times(2 * (gaps + 1), {size.depth}, "depth");
    return {numerator(gaps + 1), each, each - size.depth, cut};
}

} // namespace turncloth

#endif
