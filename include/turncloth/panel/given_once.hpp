// Corners of a seam line that are given twice: where two lines of a drawing were joined, or a line is closed by its first
// point once more.
//
//   given_once(corners, apart)     the corners without those that the next one repeats, and which these were
//
//   const auto read = given_once(corners_of_a_drawing);
//   const outline<inch> piece(read.corners, allowances);   if (!read.left_out.empty()) say_so(read.left_out);
//
// It is done where it is asked for: an outline itself refuses an edge without length. A corner is left out with the edge that
// starts at it, so a list with an entry for each edge loses the same entries. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_GIVEN_ONCE_HPP
#define TURNCLOTH_PANEL_GIVEN_ONCE_HPP

#include <turncloth/panel/outline.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct corners_given_once {
    polygon<Unit, double> corners;
    std::vector<std::size_t> left_out; ///< as they were numbered, the lowest first

    friend bool operator==(const corners_given_once&, const corners_given_once&) = default;
};

/// Corners not further apart than `apart` count as one. Each is held against the next that stays, so that many short edges
/// in a row do not all vanish; of any corners one stays. Each is looked at once. Throws outline_error for a distance below
/// zero, beyond `largest_coordinate` or that is not a number.
template <length_unit Unit>
corners_given_once<Unit> given_once(const polygon<Unit, double>& corners,
                                    drafted_length<Unit> apart = drafted_length_of<Unit>(drafting_tolerance)) {
    const double widest = apart.value();
    if (!detail::is_within(widest, largest_coordinate) || widest < 0)
        detail::refuse<outline_error>("corners that count as one must be from 0 to 1000000 apart: it was " +
                                          std::to_string(widest),
                                      refusal{.kind = widest < 0 ? fault::too_small : fault::too_large,
                                              .what = "how far apart corners count as one",
                                              .given = amount_of(widest),
                                              .least = amount_of(0.0),
                                              .most = amount_of(largest_coordinate)});
    corners_given_once<Unit> read;
    for (std::size_t i = corners.size(); i-- > 0;) { // from the end, so that the next that stays is known
        const auto& next = read.corners.empty() ? corners.front() : read.corners.back();
        const bool alone = i == 0 && read.corners.empty();
        if (!alone && detail::length_of_arrow(detail::bare(next) - detail::bare(corners[i])) <= widest)
            read.left_out.push_back(i);
        else // what is no number too, for an outline to refuse
            read.corners.push_back(corners[i]);
    }
    std::reverse(read.corners.begin(), read.corners.end());
    std::reverse(read.left_out.begin(), read.left_out.end());
    return read;
}

} // namespace turncloth

#endif
