// Expressions of a design: lengths, numbers and conditions in trade words, that hold for any finished size.
//
//   expression                         its text, as it was written
//   expression_names                   what its names stand for; and the ruler that it is worked out on
//   value_of(expression, names)        an expression_value, exactly; throws expression_error, which says where and why
//
//   expression_names names;
//   names.add("finished width", expression_value::of(20_in));
//   value_of(expression("finished width / 3, at least 4 in"), names).as_length<inch>() == "6 2/3"_in;
//
// The grammar, from what binds least to what binds most:
//
//   where CONDITION then THIS otherwise THAT
//   A or B     A and B     not A
//   A is B     A is not B     A is at least B     A is at most B     A is more than B     A is less than B
//   A at least B     A at most B     A rounded up to STEP     A rounded down to STEP     A rounded to STEP
//   A rounded up to one of (B, C, ...)     A rounded down to one of (B, C, ...)
//   A + B     A - B
//   A * B     A / B
//   12 1/2 in     3     finished width     girth of a roll (strip: 20 in, ...)     (A)     - A     A as centimetres
//
// A comma may stand before "at least", "at most", "rounded", "then" and "otherwise". Measurements are read as
// measure/read.hpp reads them. Nothing is guessed: units must agree, inches and centimetres meet only through "as", and
// a fraction that divides stands in brackets. The figures known by name are listed in design/detail/figures.hpp.
#ifndef TURNCLOTH_DESIGN_EXPRESSION_HPP
#define TURNCLOTH_DESIGN_EXPRESSION_HPP

#include <turncloth/design/detail/expression_reader.hpp>
#include <turncloth/design/expression_value.hpp>

#include <string>
#include <utility>

namespace turncloth {

class expression {
public:
    expression() = default;
    explicit expression(std::string text) : text_(std::move(text)) {}
    const std::string& text() const { return text_; }
    friend bool operator==(const expression&, const expression&) = default;

private:
    std::string text_;
};

/// Throws expression_error.
inline expression_value value_of(const expression& e, const expression_names& names) {
    return detail::expression_reader(e.text(), names).all();
}

/// Throws expression_error unless a text can be a name in expressions: words of letters and digits that begin with a
/// letter, none of them a word of the grammar.
inline void require_name(const std::string& text) { detail::expression_reader(text, {}).name_alone(); }

} // namespace turncloth

#endif
