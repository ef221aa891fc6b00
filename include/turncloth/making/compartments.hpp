// What a thing is to hold: compartments with their mouths, and what is put into them. Only what is stated is judged.
//
//   mouth<U>         a line at which a compartment opens, and what closes it
//   compartment<U>   between two walls, at a place in it; its mouths; the least it must hold; how many there are
//   contents<U>      what is put in, by which mouth
//   moment<U>        turn out, put in, close, use: what happens once the flat work is done
//
//   const mouth_handle top = design.add(mouth<inch>{.name = "top", .at = {fold_of_pocket}});
//   design.add(compartment<inch>{.name = "packet", .between = {backing, pocket}, .mouths = {top}, .least_width = 3_in});
#ifndef TURNCLOTH_MAKING_COMPARTMENTS_HPP
#define TURNCLOTH_MAKING_COMPARTMENTS_HPP

#include <turncloth/making/operations.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace turncloth {

/// What closes a mouth.
enum class closed_by : unsigned char { nothing, lap, zipper, hand, fastening, tie };

/// A span left open is stated too: an absence of stitching would let a compartment run out into the allowances of the
/// seam. A mouth by a zipper opens the cloth (its tape) along the line.
template <length_unit Unit>
struct mouth {
    std::string name{};
    std::vector<chalk_line<Unit>> at{};
    closed_by by = closed_by::nothing;

    friend bool operator==(const mouth&, const mouth&) = default;
};

struct mouth_handle {
    std::size_t index = 0;
    friend constexpr bool operator==(const mouth_handle&, const mouth_handle&) = default;
};

/// Between two walls that are neighbours there; `from_left` and `from_top` of the first wall's cut edges are a place in
/// it. Its width runs along its first mouth, its height away from it. With a count above one it is the first of a
/// row, `step` apart along its width.
template <length_unit Unit>
struct compartment {
    std::string name{};
    std::array<cut_part, 2> between{};
    length<Unit> from_left{}, from_top{};
    std::vector<mouth_handle> mouths{};
    length<Unit> least_width{}, least_height{}, least_depth{};
    std::int64_t count = 1;
    length<Unit> step{};

    friend bool operator==(const compartment&, const compartment&) = default;
};

struct compartment_handle {
    std::size_t index = 0;
    friend constexpr bool operator==(const compartment_handle&, const compartment_handle&) = default;
};

template <length_unit Unit>
struct contents {
    std::string what{};
    length<Unit> width{}, height{}, depth{};
    compartment_handle into{};
    mouth_handle by{};
    length<Unit> squeezed{}; ///< by how much each side gives
    std::int64_t folds = 0;  ///< how often it may be folded in half to go in

    friend bool operator==(const contents&, const contents&) = default;
};

enum class moment_kind : unsigned char { turn_out, put_in, close, fold, roll };

/// Named by what it is done to: a mouth (turn out, close), contents (put in), a crease or nothing (fold, roll).
struct moment {
    moment_kind what = moment_kind::close;
    std::size_t index = 0;

    friend constexpr bool operator==(const moment&, const moment&) = default;
};

} // namespace turncloth

#endif
