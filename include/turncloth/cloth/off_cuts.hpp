// What a lay leaves over, big enough to keep.
//
//   std::vector<cloth_part<Unit>> off_cuts(lay, least_across, least_along)    the largest first
//
//   for (const auto& kept : off_cuts(found, 6_in, 6_in)) show(kept.across, kept.along);
//
// Where the lay has cuts from edge to edge, off-cuts are what the cuts leave in hand; where it is cut free, they are
// rectangles between the pieces and flaws, each as large as it can be where it is, none overlapping another. Together these need
// not be the most that could be had. Selvedges count where they are left on.
#ifndef TURNCLOTH_CLOTH_OFF_CUTS_HPP
#define TURNCLOTH_CLOTH_OFF_CUTS_HPP

#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/lay/free_rectangles.hpp>

#include <algorithm>
#include <cstddef>
#include <set>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// What the cuts leave in hand: every part that they make and that no later one cuts again.
template <length_unit Unit>
std::vector<cloth_part<Unit>> parts_left(const lay<Unit>& found) {
    std::vector<cloth_part<Unit>> parts{found.made_ready};
    std::vector<bool> cut_again(2 * found.cuts.size() + 1);
    const auto number = [](const part_origin& o) { return o.cut == 0 ? 0 : 2 * o.cut - (o.taken_off ? 1 : 0); };
    for (const cloth_cut<Unit>& c : found.cuts) {
        parts.insert(parts.end(), {c.taken_off(), c.rest()});
        cut_again[number(c.origin)] = true;
    }
    std::vector<cloth_part<Unit>> last;
    for (std::size_t i = 0; i < parts.size(); ++i)
        if (!cut_again[i])
            last.push_back(parts[i]);
    return last;
}

/// Of a lay with cuts: what they leave that is no piece, and large enough.
template <length_unit Unit>
std::vector<cloth_part<Unit>> parts_kept(const lay<Unit>& found, length<Unit> least_across, length<Unit> least_along) {
    std::vector<cloth_part<Unit>> parts = parts_left(found);
    std::set<std::pair<fraction, fraction>> pieces; // by their near left corners
    for (const cloth_place<Unit>& p : found.places)
        pieces.emplace(p.where.from_left.value(), p.where.from_end.value());
    std::erase_if(parts, [&](const cloth_part<Unit>& part) {
        return part.across < least_across || part.along < least_along ||
               pieces.contains({part.from_left.value(), part.from_end.value()});
    });
    std::stable_sort(parts.begin(), parts.end(), [](const cloth_part<Unit>& a, const cloth_part<Unit>& b) {
        return a.across * a.along > b.across * b.along;
    });
    return parts;
}

inline constexpr std::size_t most_places_between = 10'000;

template <length_unit Unit>
std::vector<cloth_part<Unit>> parts_between(const lay<Unit>& found, length<Unit> least_across,
                                            length<Unit> least_along) {
    const auto rectangle = [](const cloth_part<Unit>& p) {
        return free_rectangle<fraction>{p.from_left.value(), p.from_end.value(), (p.from_left + p.across).value(),
                                        (p.from_end + p.along).value()};
    };
    std::vector<free_rectangle<fraction>> taken;
    for (const cloth_place<Unit>& p : found.places)
        taken.push_back(rectangle(p.where));
    const auto whole = rectangle(found.made_ready);
    for (const cloth_part<Unit>& flaw : found.flaws) { // so far as they are on what is laid
        const auto f = rectangle(flaw);
        const free_rectangle<fraction> on{std::max(f.left, whole.left), std::max(f.near, whole.near),
                                          std::min(f.right, whole.right), std::min(f.far, whole.far)};
        if (on.left < on.right && on.near < on.far)
            taken.push_back(on);
    }
    std::vector<cloth_part<Unit>> parts;
    for (const auto& f : free_rectangles(taken, whole, least_across.value(), least_along.value()))
        parts.push_back({length_of<Unit>(f.left), length_of<Unit>(f.near), length_of<Unit>(f.right - f.left),
                         length_of<Unit>(f.far - f.near)});
    return parts;
}

} // namespace detail

/// Throws lay_error unless both sizes are more than zero, and for a lay cut free of more than 10,000 places: time grows with
/// the square of these, some seconds for the most. Of a lay with cuts they are found as fast as sorted.
template <length_unit Unit>
std::vector<cloth_part<Unit>> off_cuts(const lay<Unit>& found, length<Unit> least_across, length<Unit> least_along) {
    require_more_than_zero<lay_error>(least_across, "the least width of an off-cut");
    require_more_than_zero<lay_error>(least_along, "the least length of an off-cut");
    if (!found.cuts.empty())
        return detail::parts_kept(found, least_across, least_along);
    require_at_most<lay_error>(found.places.size(), detail::most_places_between,
                               "the number of places that off-cuts are looked for between");
    return detail::parts_between(found, least_across, least_along);
}

} // namespace turncloth

#endif
