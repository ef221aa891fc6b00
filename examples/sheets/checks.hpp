// What is asked of lengths that are typed beside a size.
//
//   check_thickness(text)             refuses what is not a thickness
//   check_cutting_table(text)         refuses what is no length of a table
//   read_cloth_width(text)            "54 in" of all cloth, or "film: 36 in" of one; what is no width is refused
#ifndef TURNCLOTH_EXAMPLES_SHEETS_CHECKS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_CHECKS_HPP

#include "cloth_named.hpp"
#include <turncloth.hpp>
#include <turncloth/measure/require.hpp>

#include <string>

namespace allotment {

using namespace turncloth;

/// Throws text_error, overflow_error or range_error.
inline void check_thickness(const std::string& text) {
    require_more_than_zero<range_error>(read_length<inch>(text), "a thickness");
}

/// The same.
inline void check_cutting_table(const std::string& text) {
    require_more_than_zero<range_error>(read_length<inch>(text), "the length of a cutting table");
}

struct typed_width {
    std::string material; ///< empty for all
    std::string width;    ///< as it is typed
};

/// The same.
inline typed_width read_cloth_width(const std::string& text) {
    const auto of_one = said_of_one_cloth(text);
    if (of_one && of_one->material.empty())
        throw range_error("the width of one cloth is written as \"film: 36 in\": it was " +
                              turncloth::detail::in_quotes(text),
                          {.kind = fault::unreadable, .what = "the width of a cloth"});
    typed_width read = of_one ? typed_width{of_one->material, of_one->rest} : typed_width{{}, text};
    require_more_than_zero<range_error>(read_length<inch>(read.width), "the width of the cloth");
    return read;
}

} // namespace allotment

#endif
