// A straight-edged piece of any shape drawn to scale on a page to be printed.
//
//   outline_labels<U>{name, material, count, notches, grain, finishes, lines, edges}   what an outline does not know itself
//   page_of(outline, labels, ruler, options)       a page as a value (page/page.hpp)
//   pages_at_full_size(outline, labels, ruler, options, foot)   a pattern to cut by, on pages that are joined again
//
//   const outline<inch> gusset({drafted_point<inch>(0, 0), drafted_point<inch>(12, 0), drafted_point<inch>(0, 8)},
//                              {drafted_length_of<inch>(0.5)});
//   save("gusset.svg", to_svg(page_of(gusset, {.name = "gusset", .material = "canvas", .count = 2})));
//
// The outline lies as it was drafted, y upward; at full size it is given a quarter turn where that saves pages. Edge i of
// it is number i + 1 on the page, as a page counts from 1; edges that stand for a curve have one number. The grain's arrow
// lies on the grain line where that meets the piece, else beside it. Lengths and areas are rounded from the doubles
// drafted; what is drawn is not rounded.
//
// Where allowances overlap the line drawn is the one to cut along, trimmed, with a diamond where cut lines cross on it and
// a sentence above that names the edges. With the lines of its finishes, of `lines_of`, its folds and rows of stitching are
// drawn as those of a panel are, and listed with their places from the cut edge. Included by itself, as outline.hpp is.
#ifndef TURNCLOTH_DRAW_OUTLINE_HPP
#define TURNCLOTH_DRAW_OUTLINE_HPP

#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/panel/curve.hpp>
#include <turncloth/panel/finish_lines.hpp>
#include <turncloth/panel/outline.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/draw/detail/outline_picture.hpp>
#endif

#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

namespace turncloth {

/// The notches lie on the seam line. The grain leads from the first point of its line through the second.
template <length_unit Unit>
struct outline_labels {
    std::string name = {};
    std::string material = {};
    std::int64_t count = 1; ///< how many are cut alike
    std::vector<notch<Unit>> notches = {};
    std::optional<line<Unit, double>> grain = {};
    std::vector<std::string> finishes = {};     ///< of each edge, or of none
    std::vector<finish_lines<Unit>> lines = {}; ///< likewise: lines_of (finish_lines.hpp)
    /// Runs of edges that count as one, which are all edges in their order; each edge by itself, where none is given. A
    /// notch is then told by the first edge of its run, and along the run.
    std::vector<curve_run> edges = {};
};

/// Throws outline_error for a notch that is not on its edge or that a corner has taken away, or a grain line without
/// direction; range_error for fewer than one piece, a ruler whose graduation is not above zero, or a piece over 1 km
/// long or wide; overflow_error where 64 bits do not hold a figure. Time grows with the edges, and for those with words of
/// their own with the places where the words are tried.
template <detail::compiled_unit Unit>
page page_of(const outline<Unit>& piece, const std::type_identity_t<outline_labels<Unit>>& labels, const ruler& by = {},
             const drawing_options& options = {});

/// A pattern for scissors to follow: the drawing of the piece with the joints in it, then, at full size, the parts that
/// are joined there. `foot_words` are written at the foot of every part. Throws as page_of, and range_error for more than
/// 400 parts.
template <detail::compiled_unit Unit>
std::vector<page> pages_at_full_size(const outline<Unit>& piece,
                                     const std::type_identity_t<outline_labels<Unit>>& labels, const ruler& by = {},
                                     const drawing_options& options = {}, const std::string& foot_words = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
page page_of(const outline<Unit>& piece, const std::type_identity_t<outline_labels<Unit>>& labels, const ruler& by,
             const drawing_options& options) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    return detail::outline_picture<Unit>(piece, labels, shown_by, options.project).on_page(options);
}

template <detail::compiled_unit Unit>
std::vector<page> pages_at_full_size(const outline<Unit>& piece,
                                     const std::type_identity_t<outline_labels<Unit>>& labels, const ruler& by,
                                     const drawing_options& options, const std::string& foot_words) {
    const detail::speaking in(options.words);
    const ruler shown_by = detail::read_in(by, options.words);
    detail::outline_picture<Unit> upright(piece, labels, shown_by, options.project),
        turned(piece, labels, shown_by, options.project, true);
    const auto one = upright.at_full_size(options), other = turned.at_full_size(options);
    const bool turn = other.second.pages(other.first) < one.second.pages(one.first);
    const auto& [whole, parts] = turn ? other : one;
    auto& shown = turn ? turned : upright;
    shown.draw_joints(parts);
    std::vector<page> all = parted(whole, parts, {labels.name, shown.count_text(labels), foot_words}, options.letters);
    all.insert(all.begin(), shown.on_page(options));
    return all;
}
#endif

TURNCLOTH_ONCE(page page_of<inch>(const outline<inch>&, const outline_labels<inch>&, const ruler&,
                                  const drawing_options&));
TURNCLOTH_ONCE(page page_of<centimetre>(const outline<centimetre>&, const outline_labels<centimetre>&, const ruler&,
                                        const drawing_options&));
TURNCLOTH_ONCE(std::vector<page> pages_at_full_size<inch>(const outline<inch>&, const outline_labels<inch>&,
                                                          const ruler&, const drawing_options&, const std::string&));
TURNCLOTH_ONCE(std::vector<page> pages_at_full_size<centimetre>(const outline<centimetre>&,
                                                                const outline_labels<centimetre>&, const ruler&,
                                                                const drawing_options&, const std::string&));

} // namespace turncloth

#endif
