// Whether figures are shown on the ruler that they were worked out on, and what is then said of the other unit.
//
//   shows_its_ruler(graduation, ruler)
//   converted_note<U>(ruler)              "Centimetres beside them are converted from these, each rounded to 0.1 cm."
#ifndef TURNCLOTH_SHEET_DETAIL_ITS_RULER_HPP
#define TURNCLOTH_SHEET_DETAIL_ITS_RULER_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/measure/write.hpp>

#include <string>

namespace turncloth::detail {

/// Whether it shows what was worked out on a ruler of that graduation as it is there; zero is that of no ruler.
template <length_unit Unit>
bool shows_its_ruler(length<Unit> graduation, const ruler& by) {
    const bool metric = metric_unit<Unit>;
    const units_shown other = metric ? units_shown::inches : units_shown::centimetres;
    return graduation.value() > 0 && by.shows != other &&
           (metric ? as<centimetre>(graduation) == by.centimetres : as<inch>(graduation) == by.inches);
}

/// Of the other unit, where both are shown.
template <length_unit Unit>
std::string converted_note(const ruler& by) {
    const bool metric = metric_unit<Unit>;
    return metric ? sentence({"Inches beside them are converted from these, each rounded to ", to_text(by.inches), "."})
                  : sentence({"Centimetres beside them are converted from these, each rounded to ",
                              to_text(by.centimetres), "."});
}

} // namespace turncloth::detail

#endif
