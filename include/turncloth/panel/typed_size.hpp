// Finished sizes as a person types them.
//
//   read_size("24 x 15 in")           a finished size in inches
//   read_size("60 cm x 37,5 cm")      one in centimetres: a metric width asks for the metric edition
//   read_sides("24", "15 in")         the same from two texts, as from two fields of a form
//   try_read_size  try_read_sides     the size, or the error as a value
//   side_error                        says which of the two cannot be read, and why
//
//   std::visit([](const auto& size) { std::puts(to_text(panel(size).cut()).c_str()); }, read_size(typed));
//
// One unit at the end holds for both sides; without any, both are in inches. Where only the width has a unit the height
// could be meant in it or in another, so that is refused. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_TYPED_SIZE_HPP
#define TURNCLOTH_PANEL_TYPED_SIZE_HPP

#include <turncloth/measure/outcome.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/panel/size.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>

namespace turncloth {

/// std::visit calls the program, written once for both.
using typed_size = std::variant<finished_size<inch>, finished_size<centimetre>>;

enum class side_of_size { width, height };

/// A side that cannot be read, or is not above zero.
class side_error : public error {
public:
    side_error(side_of_size which, const std::string& why, refusal facts)
        : error(std::string(which == side_of_size::width ? "the width: " : "the height: ") + why,
                at(which, std::move(facts))),
          which_(which),
          why_(why) {}
    side_of_size which() const noexcept { return which_; }
    const std::string& why() const noexcept { return why_; }

private:
    static refusal at(side_of_size which, refusal facts) {
        facts.where = which == side_of_size::width ? "width" : "height";
        return facts;
    }
    side_of_size which_;
    std::string why_;
};

/// A text that is not two sides.
class size_text_error : public error {
public:
    using error::error;
};

namespace detail {

inline bool has_letter_m(std::string_view text) { return text.find_first_of("mM") != std::string_view::npos; }

inline bool is_bare_number(std::string_view text) {
    measure_reader reader(text);
    static_cast<void>(reader.number_alone());
    return !reader.has_failed();
}

/// The unit after the only number of a text: " in" of "15 1/2 in". Empty where it is a sum or cannot be read.
inline std::string_view only_unit(std::string_view text) {
    for (std::size_t n = text.size(); n > 0; --n)
        if (is_bare_number(text.substr(0, n))) {
            const std::string_view unit = text.substr(n);
            return unit.find_first_of("0123456789") == std::string_view::npos ? unit : std::string_view();
        }
    return {};
}

template <length_unit Unit>
outcome<length<Unit>, side_error> read_side(side_of_size which, std::string_view text) {
    const outcome<length<Unit>> l = try_read_length<Unit>(text);
    if (!l)
        return side_error(which, l.refused().what(), l.refused().facts());
    if (l->value() <= 0)
        return side_error(which, "it must be more than zero: it was " + to_text(*l),
                          {.kind = fault::too_small,
                           .what = "a side of a size",
                           .given = amount_of(*l),
                           .least = amount_of(length<Unit>())});
    return *l;
}

/// Why it is no side, in the unit that it has.
inline std::optional<side_error> wrong_side(side_of_size which, std::string_view text) {
    const auto why = [](const auto& side) { return side ? std::nullopt : std::optional<side_error>(side.refused()); };
    return has_letter_m(text) ? why(read_side<centimetre>(which, text)) : why(read_side<inch>(which, text));
}

template <length_unit Unit>
outcome<typed_size, side_error> read_both(std::string_view width, std::string_view height) {
    const auto w = read_side<Unit>(side_of_size::width, width);
    if (!w)
        return w.refused();
    const auto h = read_side<Unit>(side_of_size::height, height);
    if (!h)
        return h.refused();
    return typed_size(finished_size<Unit>(*w, *h));
}

/// Width and height; nothing where not one word parts them, once.
inline std::optional<std::pair<std::string_view, std::string_view>> sides_in(std::string_view text) {
    std::optional<std::pair<std::string_view, std::string_view>> found;
    for (const std::string_view word : {"x", "X", "\u00D7", "by"})
        for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + word.size())) {
            if (found)
                return std::nullopt;
            found = {text.substr(0, at), text.substr(at + word.size())};
        }
    return found;
}

} // namespace detail

/// The size, or why not, and of which side.
inline outcome<typed_size, side_error> try_read_sides(std::string_view width, std::string_view height) {
    const bool bare_width = detail::is_bare_number(width), bare_height = detail::is_bare_number(height);
    std::string with_unit(width);
    if (bare_width && !bare_height) {
        if (const auto wrong = detail::wrong_side(side_of_size::height, height))
            return *wrong;
        const std::string_view unit = detail::only_unit(height);
        if (unit.empty())
            return side_error(side_of_size::width, "it needs a unit, as the height is in more than one",
                              {.kind = fault::missing, .what = "a unit"});
        with_unit += unit;
    }
    if (!bare_width && bare_height) {
        if (const auto wrong = detail::wrong_side(side_of_size::width, width))
            return *wrong;
        return side_error(side_of_size::height, "it needs a unit, as the width has one",
                          {.kind = fault::missing, .what = "a unit"});
    }
    if (detail::has_letter_m(with_unit))
        return detail::read_both<centimetre>(with_unit, height);
    return detail::read_both<inch>(with_unit, height);
}

/// Throws side_error.
inline typed_size read_sides(std::string_view width, std::string_view height) {
    const auto size = try_read_sides(width, height);
    if (!size)
        detail::refuse<side_error>(size.refused());
    return *size;
}

namespace detail {
inline size_text_error no_two_sides() {
    return {"cannot read it as a size: write width x height, as in 24 x 15 in",
            {.kind = fault::unreadable, .what = "a size"}};
}
} // namespace detail

/// Width and height parted by x, X, the multiplication sign, or "by"; or the error that read_size throws.
inline outcome<typed_size> try_read_size(std::string_view text) {
    const auto sides = detail::sides_in(text);
    if (!sides)
        return detail::no_two_sides();
    const auto size = try_read_sides(sides->first, sides->second);
    if (!size)
        return size.refused();
    return *size;
}

/// Throws size_text_error where there are not two sides, side_error where one cannot be read.
inline typed_size read_size(std::string_view text) {
    const auto sides = detail::sides_in(text);
    if (!sides)
        detail::refuse<size_text_error>(detail::no_two_sides());
    return read_sides(sides->first, sides->second);
}

} // namespace turncloth

#endif
