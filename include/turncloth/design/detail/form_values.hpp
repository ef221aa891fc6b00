// A form with its named parts, and what these come to where a design fills it in.
//
//   form  may_have(name)  counted_part(name)      what a form is called, and its parts
//   form_values<U>      its parts by number: a length, a number, a count; .has(i) whether it is given
//   form_maker<Made, U>                           a form, and what makes of such values what it stands for
#ifndef TURNCLOTH_DESIGN_DETAIL_FORM_VALUES_HPP
#define TURNCLOTH_DESIGN_DETAIL_FORM_VALUES_HPP

#include <turncloth/design/detail/figures.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/panel/finish.hpp>

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace turncloth::detail {

inline constexpr std::size_t most_parts_of_a_form = 12;

struct form_part {
    std::string_view name{};
    wanted is = wanted::length;
    bool must = true;
};
constexpr form_part may_have(std::string_view name, wanted is = wanted::length) { return {name, is, false}; }
constexpr form_part counted_part(std::string_view name) { return {name, wanted::count, true}; }

struct form {
    std::string_view is;
    std::array<form_part, most_parts_of_a_form> parts{};

    std::size_t size() const { return count_named(parts); }
};

/// What the parts of a form come to, in the order of its table.
template <length_unit Unit>
struct form_values {
    std::array<std::optional<expression_value>, most_parts_of_a_form> parts{};
    ruled<Unit> by{};

    length<Unit> operator[](std::size_t i) const {
        return parts[i] ? parts[i]->template as_length<Unit>() : length<Unit>();
    }
    bool has(std::size_t i) const { return parts[i].has_value(); }
    fraction number(std::size_t i, fraction otherwise = 0) const { return parts[i] ? *parts[i]->number : otherwise; }
    std::int64_t count(std::size_t i) const { return whole_number(number(i), "a number of things"); }
};

template <class Made, length_unit Unit>
struct form_maker {
    form is;
    Made (*make)(const form_values<Unit>&);
};

template <length_unit Unit>
using finish_maker = form_maker<finish<Unit>, Unit>;

template <length_unit Unit>
using parts_given_of = const form_values<Unit>&;

} // namespace turncloth::detail

#endif
