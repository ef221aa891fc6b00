// What lines, cautions and rulers are called on a sheet.
//
//   verb_of(line_kind::fold)   shape_of(curve)   numbered_edges(n, is)      "edges 1, 2 and 4"
//   heading_of(caution::work::cutting)   graduation_text(ruler)   fullness_text(5/4)
#ifndef TURNCLOTH_SHEET_DETAIL_KINDS_HPP
#define TURNCLOTH_SHEET_DETAIL_KINDS_HPP

#include <turncloth/notions/caution.hpp>
#include <turncloth/panel/names.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth {

namespace detail {

inline std::string graduation_text(const ruler& by) {
    switch (by.shows) {
    case units_shown::inches:
        return to_text(by.inches);
    case units_shown::centimetres:
        return to_text(by.centimetres);
    case units_shown::both:
        break;
    }
    const std::string inches = to_text(by.inches), centimetres = to_text(by.centimetres);
    return by.metric_first ? sentence({centimetres, " and ", inches}) : sentence({inches, " and ", centimetres});
}

/// "1 1/4", or "1 3/7 (about 1.43)" where hundredths are not exact.
inline std::string fullness_text(fraction fullness) {
    const fraction rounded = nearest_to(fullness, fraction(1, 100), ties::to_even);
    return rounded == fullness ? to_text(fullness)
                               : sentence({to_text(fullness), " (about ", to_decimal_text(rounded), ")"});
}

constexpr std::string_view verb_of(line_kind kind) {
    switch (kind) {
    case line_kind::fold:
        return "fold";
    case line_kind::stitching:
        return "stitch";
    case line_kind::mark:
        return "mark";
    case line_kind::placement:
        return "placement line";
    case line_kind::slit:
        break;
    }
    return "slit";
}

/// After the size of a piece; nothing where nothing is said.
constexpr std::string_view lie_in_words(cloth_lie lies) {
    switch (lies) {
    case cloth_lie::along_grain:
        return ", along the grain";
    case cloth_lie::one_way:
        return ", along the grain, one way up";
    case cloth_lie::either_way:
        return ", either way";
    case cloth_lie::on_fold:
        return ", on the fold";
    case cloth_lie::turned_alike:
        return ", turned as the others that are turned alike";
    case cloth_lie::as_asked:
        break;
    }
    return "";
}

/// Before the length of an edge; nothing for a straight one.
template <length_unit Unit>
constexpr std::string_view shape_of(const drafted_curve<Unit>& c) {
    switch (c.kind) {
    case curve_kind::hollow:
        return "hollow, ";
    case curve_kind::rounded:
        return "rounded, ";
    case curve_kind::cubic:
        return "curved, ";
    case curve_kind::straight:
        break;
    }
    return "";
}

/// Those of n edges that it is so of, counted from 1 as on their drawing; empty for none.
template <class Is>
std::string numbered_edges(std::size_t n, const Is& is) {
    std::vector<std::string> numbers;
    for (std::size_t i = 0; i < n; ++i)
        if (is(i))
            numbers.push_back(std::to_string(i + 1));
    if (numbers.empty())
        return {};
    return numbers.size() == 1 ? sentence({"edge ", numbers[0]}) : sentence({"edges ", enumerated(numbers)});
}

constexpr std::string_view heading_of(caution::work at) {
    switch (at) {
    case caution::work::buying:
        return "buying";
    case caution::work::cutting:
        return "cutting";
    case caution::work::pinning:
        return "pinning";
    case caution::work::pressing:
        return "pressing";
    case caution::work::stitching:
        return "stitching";
    case caution::work::zippers:
        return "zippers";
    case caution::work::eyelets:
        return "eyelets";
    case caution::work::filling:
        return "filling";
    case caution::work::using_it:
        break;
    }
    return "in use";
}

} // namespace detail

} // namespace turncloth

#endif
