// A piece of any shape as a person drafts it, and what it comes to: light, as every project may hold some.
//
//   drafted_corner<U>{across, up, edge, shape, curve, notches}     and the edge from it to the next corner
//   drafted_curve<U>                     hollow or rounded by so much, or a cubic Bezier curve; straight where nothing is said
//   drafted_piece<U>{name, material, count, may_turn, corners, grain, tolerance}
//   outlined_piece<U>                    its outline, its edges, and the rectangles round it; outlined.hpp works it out
//
//   drafted_piece<inch> bib{.name = "bib", .material = "canvas", .corners = {{0_in, 0_in, hem}, {9_in, 0_in, hem}, ...}};
//   bib.corners[2].curve = hollow(2_in);
//   roll.add(outlined(bib));
//
// `across` grows to the right and `up` upward; corners may run either way round, and lie on the finished edge.
#ifndef TURNCLOTH_SHEET_DRAFTED_PIECE_HPP
#define TURNCLOTH_SHEET_DRAFTED_PIECE_HPP

#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/size.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

enum class corner_shape;
template <length_unit Unit>
class outline; // panel/outline.hpp has both

template <length_unit Unit>
struct drafted_spot {
    length<Unit> across, up;

    friend constexpr bool operator==(const drafted_spot&, const drafted_spot&) = default;
};

enum class curve_kind : unsigned char {
    straight,
    hollow,  ///< part of a circle that goes into the piece, by its rise
    rounded, ///< part of a circle that stands out from it
    cubic    ///< a cubic Bezier curve
};

template <length_unit Unit>
struct drafted_curve {
    curve_kind kind = curve_kind::straight;
    length<Unit> rise{};                     ///< of its middle from the straight line between its ends
    drafted_spot<Unit> pull{}, other_pull{}; ///< a cubic curve leaves its first corner towards `pull`

    friend constexpr bool operator==(const drafted_curve&, const drafted_curve&) = default;
};

template <length_unit Unit>
constexpr drafted_curve<Unit> hollow(length<Unit> rise) {
    return {curve_kind::hollow, rise};
}
template <length_unit Unit>
constexpr drafted_curve<Unit> rounded(length<Unit> rise) {
    return {curve_kind::rounded, rise};
}

template <length_unit Unit>
struct drafted_corner {
    length<Unit> across, up;
    finish<Unit> edge = {};  ///< of the edge from here to the next corner
    corner_shape shape = {}; ///< mitred, where nothing is said
    drafted_curve<Unit> curve = {};
    std::vector<length<Unit>> notches = {}; ///< on that edge, each along it from this corner

    drafted_corner(length<Unit> x, length<Unit> y, finish<Unit> finished = {})
        : across(x), up(y), edge(std::move(finished)) {}

    friend bool operator==(const drafted_corner&, const drafted_corner&) = default;
};

template <length_unit Unit>
struct drafted_piece {
    std::string name, material;
    std::int64_t count = 1; ///< cut alike
    bool may_turn = false;  ///< its grain may lie across the cloth
    std::vector<drafted_corner<Unit>> corners = {};
    /// From one spot to the other; straight up, where none is given.
    std::optional<std::array<drafted_spot<Unit>, 2>> grain = {};
    length<Unit> tolerance = as<Unit>(length_of<millimetre>({1, 10})); ///< within which edges stand for a curve

    friend bool operator==(const drafted_piece&, const drafted_piece&) = default;
};

/// The edge from one drafted corner to the next.
template <length_unit Unit>
struct outlined_edge {
    std::size_t first, count; ///< of the outline's edges; a curve is several
    length<Unit> size;        ///< along the finished edge, to 1/1024 in or 1/1000 mm: most are no fraction
    bool trimmed = false;     ///< its allowance overlaps that of others, so that it is not wholly cut round
    std::vector<length<Unit>>
        sewn{}; ///< each row of its finish along the shape, on the flat piece, likewise to 1/1024 in

    friend bool operator==(const outlined_edge&, const outlined_edge&) = default;
};

/// The rectangles have the grain along their height, and are the narrowest; each side is the next 1/64 in or 0.1 mm.
template <length_unit Unit>
struct outlined_piece {
    drafted_piece<Unit> made_from;
    std::shared_ptr<const outline<Unit>> shape;
    std::vector<outlined_edge<Unit>> edges; ///< one for each drafted corner
    cut_size<Unit> cut;                     ///< round the line to cut along
    finished_size<Unit> finished;

    const std::string& name() const { return made_from.name; }
    const std::string& material() const { return made_from.material; }
    std::int64_t count() const { return made_from.count; }

    /// Of what they are made from: all else follows.
    friend bool operator==(const outlined_piece& a, const outlined_piece& b) { return a.made_from == b.made_from; }
};

} // namespace turncloth

#endif
