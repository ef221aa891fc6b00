// A sheet as plain text, to be printed or pasted.
//
//   to_text(sheet)           inches and centimetres, to 1/16 in and 0.1 cm
//   to_text(sheet, ruler)    the units and graduations of a ruler (measure/write.hpp)
//
//   std::puts(to_text(sheet_of(roll), {.shows = units_shown::centimetres}).c_str());
//
// Each figure is rounded by itself from the exact length; each working is exact and in the project's own unit.
#ifndef TURNCLOTH_SHEET_TEXT_HPP
#define TURNCLOTH_SHEET_TEXT_HPP

#include <turncloth/sheet/sheet.hpp>

#include <string>
#include <string_view>

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
    return to_text(by.inches) + " and " + to_text(by.centimetres);
}

/// "1 1/4", or "1 3/7 (about 1.43)" where hundredths are not exact.
inline std::string fullness_text(fraction fullness) {
    const fraction rounded = nearest_to(fullness, fraction(1, 100), ties::to_even);
    return to_text(fullness) + (rounded == fullness ? "" : " (about " + to_decimal_text(rounded) + ")");
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

/// Throws range_error for a ruler whose graduation is not above zero.
template <length_unit Unit>
    requires detail::compiled_in<Unit> std::string to_text(const sheet<Unit>& s, const ruler& by = {});

} // namespace turncloth

#ifndef TURNCLOTH_COMPILED
#include <turncloth/sheet/detail/writing.hpp>
#endif

namespace turncloth {

TURNCLOTH_ONCE(std::string to_text(const sheet<inch>&, const ruler&));
TURNCLOTH_ONCE(std::string to_text(const sheet<centimetre>&, const ruler&));

} // namespace turncloth

#endif
