// What expressions of a design come to, and what their names stand for.
//
//   expression_value      a number, a length in inches or in centimetres, or whether a condition holds; or its kind alone
//   expression_names      .add(name, value)  .find(name)  .graduation, of the ruler
//   expression_error      where an expression fails, and why
//
//   expression_value::of(12_in).as_length<inch>() == 12_in;
#ifndef TURNCLOTH_DESIGN_EXPRESSION_VALUE_HPP
#define TURNCLOTH_DESIGN_EXPRESSION_VALUE_HPP

#include <turncloth/measure/length.hpp>

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace turncloth {

/// An expression that cannot be read or worked out. `position` counts bytes from 0; it equals the length of the text
/// where the text ends too soon.
class expression_error : public error {
public:
    expression_error(std::size_t position, std::string reason, fault kind = fault::unreadable)
        : error(reason + ", at character " + std::to_string(position + 1),
                {.kind = kind, .what = "an expression", .index = position}),
          position_(position),
          reason_(std::move(reason)) {}
    std::size_t position() const noexcept { return position_; }
    const std::string& reason() const noexcept { return reason_; }

private:
    std::size_t position_;
    std::string reason_;
};

/// A longer text is refused, and so is one whose brackets and choices lie deeper than this.
inline constexpr std::size_t most_in_an_expression = 1000, deepest_expression = 40;

/// Feet and yards go with inches, millimetres and metres with centimetres.
enum class value_kind : unsigned char { number, inches, centimetres, truth };

/// "a number", "a length in inches", ...
inline std::string_view name_of(value_kind k) {
    switch (k) {
    case value_kind::number:
        return "a number";
    case value_kind::inches:
        return "a length in inches";
    case value_kind::centimetres:
        return "a length in centimetres";
    case value_kind::truth:
        break;
    }
    return "a condition";
}

namespace detail {

/// The unit in which an expression holds the lengths of a unit.
template <length_unit Unit>
using unit_held = std::conditional_t<metric_unit<Unit>, centimetre, inch>;

} // namespace detail

/// What an expression comes to. One that is not known has a kind alone: so an expression is checked without a size.
struct expression_value {
    value_kind kind = value_kind::number;
    std::optional<fraction> number{}; ///< inches, centimetres, or 0 and 1 for false and true

    template <length_unit Unit>
    static expression_value of(length<Unit> l) {
        return {length_kind<Unit>, as<detail::unit_held<Unit>>(l).value()};
    }
    static expression_value of(fraction x) { return {value_kind::number, x}; }

    template <length_unit Unit>
    static constexpr value_kind length_kind = metric_unit<Unit> ? value_kind::centimetres : value_kind::inches;

    /// Of a value that is known and of that kind.
    template <length_unit Unit>
    length<Unit> as_length() const {
        return as<Unit>(length_of<detail::unit_held<Unit>>(*number));
    }
    bool holds() const { return *number != 0; }
    bool is_length() const { return kind == value_kind::inches || kind == value_kind::centimetres; }

    friend bool operator==(const expression_value&, const expression_value&) = default;
};

class expression_names {
public:
    /// Takes the place of a value of that name.
    void add(std::string name, expression_value v) { values_[std::move(name)] = v; }
    const expression_value* find(std::string_view name) const {
        const auto found = values_.find(name);
        return found == values_.end() ? nullptr : &found->second;
    }
    auto begin() const { return values_.begin(); }
    auto end() const { return values_.end(); }

    /// Of the ruler that figures are worked out on: a length as the names are held, zero where numbers stay exact.
    fraction graduation = 0;

private:
    std::map<std::string, expression_value, std::less<>> values_;
};

} // namespace turncloth

#endif
