// Texts in which expressions stand in braces: "{rows} x {columns} pockets". A brace itself cannot be written.
//
//   pieces_of(text)          words and expressions in turn, each with the place where it begins
//   written(value, unit)     what is put in an expression's place: a number or a length, exactly
#ifndef TURNCLOTH_DESIGN_DETAIL_DESIGN_WORDS_HPP
#define TURNCLOTH_DESIGN_DETAIL_DESIGN_WORDS_HPP

#include <turncloth/design/expression.hpp>
#include <turncloth/measure/write.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth::detail {

struct words_piece {
    std::string text;
    std::size_t at;
    bool is_expression;
};

/// Throws expression_error for a brace that has no other.
inline std::vector<words_piece> pieces_of(std::string_view text) {
    std::vector<words_piece> all;
    for (std::size_t at = 0; at < text.size();) {
        const bool inside = text[at] == '{';
        const std::size_t from = inside ? at + 1 : at, end = text.find_first_of("{}", from);
        if ((inside && (end == std::string_view::npos || text[end] == '{')) || (!inside && text[from] == '}'))
            refuse<expression_error>(at, std::string("this brace has no other: an expression stands between two"));
        all.push_back({std::string(text.substr(from, end - from)), from, inside});
        at = inside ? end + 1 : (end == std::string_view::npos ? text.size() : end);
    }
    return all;
}

template <length_unit Unit>
std::string written(const expression_value& v) {
    return v.is_length() ? to_text(v.as_length<Unit>()) : to_text(*v.number);
}

} // namespace turncloth::detail

#endif
