// The pieces of a lay made ready for searching: equal kinds joined, the gap taken in, common factors taken out.
//
//   detail::lay_problem prepared(pieces, cloth)    what the searches work on
//
//   auto problem = detail::prepared(pieces, {.width = 44});
//
// Every piece must go on the width one way or the other, from where the repeat lets it start: cloth/lay.hpp asks that
// of the caller, in the caller's units. Only sums too large for 64 bits are refused here.
//
// The gap: let every piece, and the cloth's width, grow by the gap g on its far side. Two grown pieces are apart
// exactly when the pieces are g apart, and a grown piece fits the grown width exactly when the piece fits the width; so
// a lay with gaps is a lay of grown pieces without, longer by g. What pieces lie round, flaws and pieces that stay, grows
// likewise.
#ifndef TURNCLOTH_CLOTH_LAY_PROBLEM_HPP
#define TURNCLOTH_CLOTH_LAY_PROBLEM_HPP

#include <turncloth/cloth/lay/blocks.hpp>
#include <turncloth/cloth/lay/types.hpp>
#include <turncloth/measure/require.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Pieces alike in everything. `upright` and `sideways` say which ways it goes on the width; one at least is true.
struct lay_kind {
    std::int64_t width = 0;
    std::int64_t length = 0;
    std::int64_t count = 0;
    bool upright = true;
    bool sideways = false;
    std::int64_t match_across = 0;
    std::int64_t match_along = 0;
    bool at_edge = false;
    std::vector<std::pair<std::size_t, std::int64_t>> sources{}; ///< index in the caller's list, and how many of it

    std::int64_t area() const noexcept { return width * length; }
    std::int64_t least_length() const noexcept {
        return upright && sideways ? std::min(width, length) : upright ? length : width;
    }
};

/// What is searched: sizes are the caller's, grown by the gap and divided by `scale_x` across and `scale_y` along.
struct lay_problem {
    std::int64_t width = 0;
    std::int64_t gap = 0;
    std::int64_t scale_x = 1;
    std::int64_t scale_y = 1;
    std::int64_t repeat_across = 0;
    std::int64_t repeat_along = 0;
    turncloth::cutting cutting = turncloth::cutting::free;
    std::vector<lay_kind> kinds{};
    std::int64_t area = 0;             ///< of all pieces
    std::int64_t pieces = 0;           ///< how many in all
    std::int64_t stacked = 0;          ///< a length that always suffices: the pieces one after another
    std::vector<lay_part> blocks{};    ///< apart from each other: pieces lie round them
    std::vector<lay_place> staying{};  ///< in the caller's sizes
    std::int64_t reach_of_staying = 0; ///< grown; no lay is shorter

    bool matching() const noexcept { return repeat_across > 1 || repeat_along > 1; }
};

/// How far into the repeat an offset falls: 0 .. repeat - 1.
inline std::int64_t into_repeat(std::int64_t offset, std::int64_t repeat) {
    const std::int64_t rest = repeat == 0 ? 0 : offset % repeat;
    return rest < 0 ? rest + repeat : rest;
}

[[noreturn]] inline void refuse_size_of_lay(const char* what) {
    refuse<overflow_error>(std::string(what) + " does not fit 64-bit integers: use a coarser unit or graduation",
                           refusal{.kind = fault::does_not_fit, .what = what});
}

/// Sums and products of sizes that must stay inside 64 bits, with room for the sums of a few.
inline std::int64_t lay_product(std::int64_t a, std::int64_t b) {
    std::int64_t product = 0;
    if (overflows_times(a, b, product) || product > (std::int64_t{1} << 60))
        refuse_size_of_lay("the area of a lay");
    return product;
}

inline std::int64_t lay_sum(std::int64_t a, std::int64_t b) {
    std::int64_t sum = 0;
    if (overflows_plus(a, b, sum) || sum > (std::int64_t{1} << 60))
        refuse_size_of_lay("the length of a lay");
    return sum;
}

/// Joins equal kinds, in an order of their own.
inline void join_kinds(std::vector<lay_kind>& kinds) {
    const auto key = [](const lay_kind& k) {
        return std::tuple(k.width, k.length, k.upright, k.sideways, k.match_across, k.match_along, k.at_edge);
    };
    std::stable_sort(kinds.begin(), kinds.end(), [&](const lay_kind& a, const lay_kind& b) { return key(a) < key(b); });
    std::size_t kept = 0;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (kept > 0 && key(kinds[kept - 1]) == key(kinds[i])) {
            kinds[kept - 1].count = lay_sum(kinds[kept - 1].count, kinds[i].count);
            kinds[kept - 1].sources.insert(kinds[kept - 1].sources.end(), kinds[i].sources.begin(),
                                           kinds[i].sources.end());
        } else {
            if (kept != i)
                kinds[kept] = std::move(kinds[i]);
            ++kept;
        }
    }
    kinds.resize(kept);
}

/// Takes out the factor that all sizes share: across and along apart when nothing turns, else one factor for both.
/// The width keeps only whole factors, since what is left over at the side can hold no piece.
inline void take_out_factors(lay_problem& problem) {
    if (problem.matching() || problem.kinds.empty())
        return;
    std::int64_t across = 0;
    std::int64_t along = 0;
    bool turning = false;
    for (const lay_kind& kind : problem.kinds) {
        across = std::gcd(across, kind.width);
        along = std::gcd(along, kind.length);
        turning = turning || kind.sideways;
    }
    along = std::gcd(along, problem.reach_of_staying);
    for (const lay_part& b : problem.blocks) {
        across = std::gcd(std::gcd(across, b.left), b.right < problem.width ? b.right : 0);
        along = std::gcd(std::gcd(along, b.near), b.far);
    }
    if (turning)
        across = along = std::gcd(across, along);
    for (lay_kind& kind : problem.kinds) {
        kind.width /= across;
        kind.length /= along;
    }
    problem.width /= across;
    problem.reach_of_staying /= along;
    for (lay_part& b : problem.blocks)
        b = {b.left / across, std::min(b.right / across, problem.width), b.near / along, b.far / along};
    problem.scale_x = across;
    problem.scale_y = along;
}

/// What pieces lie round: flaws, so far as these and the gap round them reach onto the usable width, and pieces that stay.
inline void block_out(lay_problem& problem, const std::vector<lay_piece>& pieces, const lay_cloth& cloth) {
    std::vector<lay_part> all;
    for (const lay_part& f : cloth.flaws) {
        const lay_part grown{std::max<std::int64_t>(f.left, 0), std::min(lay_sum(f.right, cloth.gap), problem.width),
                             std::max<std::int64_t>(f.near, 0), lay_sum(f.far, cloth.gap)};
        if (grown.left < grown.right && grown.near < grown.far)
            all.push_back(grown);
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const lay_piece& piece = pieces[i];
        if (!piece.stays)
            continue;
        const auto [x, y, turned] = *piece.stays;
        const std::int64_t width = turned ? piece.length : piece.width, length = turned ? piece.width : piece.length;
        problem.staying.push_back({.piece = i, .x = x, .y = y, .width = width, .length = length, .turned = turned});
        all.push_back({x, lay_sum(x, lay_sum(width, cloth.gap)), y, lay_sum(y, lay_sum(length, cloth.gap))});
        problem.reach_of_staying = std::max(problem.reach_of_staying, all.back().far);
    }
    problem.blocks = made_apart(all);
}

/// Of a problem without other pieces.
inline whole_lay only_staying(const lay_problem& problem) {
    const std::int64_t length = problem.staying.empty() ? 0 : problem.reach_of_staying - problem.gap;
    return {.places = problem.staying, .cuts = {}, .length = length, .bound = length};
}

inline lay_problem prepared(const std::vector<lay_piece>& pieces, const lay_cloth& cloth) {
    lay_problem problem;
    problem.width = lay_sum(cloth.width, cloth.gap);
    problem.gap = cloth.gap;
    problem.cutting = cloth.cutting;
    problem.repeat_across = cloth.repeat_across;
    problem.repeat_along = cloth.repeat_along;
    block_out(problem, pieces, cloth);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const lay_piece& piece = pieces[i];
        if (piece.stays)
            continue;
        lay_kind kind{.width = lay_sum(piece.width, cloth.gap),
                      .length = lay_sum(piece.length, cloth.gap),
                      .count = piece.quantity,
                      .match_across = into_repeat(piece.match_across, cloth.repeat_across),
                      .match_along = into_repeat(piece.match_along, cloth.repeat_along),
                      .at_edge = piece.at_edge};
        const bool turns = piece.grain == grain::may_turn && piece.width != piece.length;
        kind.upright = kind.width <= problem.width;
        kind.sideways = turns && kind.length <= problem.width;
        kind.sources.emplace_back(i, piece.quantity);
        problem.kinds.push_back(std::move(kind));
    }
    join_kinds(problem.kinds);
    take_out_factors(problem);
    for (const lay_kind& kind : problem.kinds) {
        problem.pieces = lay_sum(problem.pieces, kind.count);
        problem.area = lay_sum(problem.area, lay_product(lay_product(kind.width, kind.length), kind.count));
        const std::int64_t step = problem.repeat_along > 1 ? problem.repeat_along : 0;
        const std::int64_t longest = kind.upright && kind.sideways ? std::max(kind.width, kind.length)
                                     : kind.upright                ? kind.length
                                                                   : kind.width;
        problem.stacked = lay_sum(problem.stacked, lay_product(lay_sum(longest, step), kind.count));
    }
    std::int64_t beyond = 0;
    for (const lay_part& b : problem.blocks)
        beyond = std::max(beyond, b.far);
    problem.stacked = lay_sum(problem.stacked, beyond);
    (void)lay_product(problem.stacked, problem.width);
    return problem;
}

} // namespace turncloth::detail

#endif
