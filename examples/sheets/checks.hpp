// What is asked of lengths that are typed beside a size.
//
//   check_thickness(text)             refuses what is not a thickness; check_cloth_width(text)
#ifndef TURNCLOTH_EXAMPLES_SHEETS_CHECKS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_CHECKS_HPP

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
inline void check_cloth_width(const std::string& text) {
    require_more_than_zero<range_error>(read_length<inch>(text), "the width of the cloth");
}

} // namespace allotment

#endif
