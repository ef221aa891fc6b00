// Finished sizes as a person types them.
//
//   read_size("24 x 15 in")           a finished size in inches
//   read_size("60 cm x 37,5 cm")      one in centimetres: a metric width asks for the metric edition
//   read_sides("24", "15 in")         the same from two texts, as from two columns of a table
//   check_thickness(text)             refuses what is not a thickness; check_cloth_width(text)
//   side_error                        says which of the two cannot be read, and why
//
// One unit at the end holds for both sides; without any, both are in inches. Where only the width has a unit the height
// could be meant in it or in another, so that is refused.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_TYPED_SIZE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_TYPED_SIZE_HPP

#include <turncloth.hpp>
#include <turncloth/measure/require.hpp>

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace allotment {

using namespace turncloth;

using typed_size = std::variant<finished_size<inch>, finished_size<centimetre>>;

enum class side_of_size { width, height };

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

class size_text_error : public error {
public:
    using error::error;
};

namespace detail {

inline bool has_letter_m(std::string_view text) { return text.find_first_of("mM") != std::string_view::npos; }

inline bool is_bare_number(std::string_view text) {
    try {
        return read_fraction(text), true;
    } catch (const error&) {
        return false;
    }
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
length<Unit> read_side(side_of_size which, const std::string& text) {
    try {
        const length<Unit> l = read_length<Unit>(text);
        if (l.value() <= 0)
            throw side_error(which, "it must be more than zero: it was " + to_text(l),
                             {.kind = fault::too_small,
                              .what = "a side of a size",
                              .given = amount_of(l),
                              .least = amount_of(length<Unit>())});
        return l;
    } catch (const side_error&) {
        throw;
    } catch (const error& refused) {
        throw side_error(which, refused.what(), refused.facts());
    }
}

template <length_unit Unit>
finished_size<Unit> read_both(const std::string& width, const std::string& height) {
    const length<Unit> w = read_side<Unit>(side_of_size::width, width);
    return {w, read_side<Unit>(side_of_size::height, height)};
}

/// Where a word that parts two numbers begins, again and again.
inline std::vector<std::size_t> all_places_of(std::string_view word, const std::string& text) {
    std::vector<std::size_t> places;
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + word.size()))
        places.push_back(at);
    return places;
}

} // namespace detail

/// Throws side_error.
inline typed_size read_sides(std::string width, const std::string& height) {
    const bool bare_width = detail::is_bare_number(width), bare_height = detail::is_bare_number(height);
    if (bare_width && !bare_height) {
        detail::read_side<inch>(side_of_size::height, height);
        const std::string_view unit = detail::only_unit(height);
        if (unit.empty())
            throw side_error(side_of_size::width, "it needs a unit, as the height is in more than one",
                             {.kind = fault::missing, .what = "a unit"});
        width += unit;
    }
    if (!bare_width && bare_height) {
        detail::read_side<inch>(side_of_size::width, width);
        throw side_error(side_of_size::height, "it needs a unit, as the width has one",
                         {.kind = fault::missing, .what = "a unit"});
    }
    if (detail::has_letter_m(width))
        return detail::read_both<centimetre>(width, height);
    return detail::read_both<inch>(width, height);
}

/// Width and height parted by x, X, the multiplication sign, or "by". Throws size_text_error where there are not two,
/// side_error where one cannot be read.
inline typed_size read_size(const std::string& text) {
    std::size_t partings = 0, at = 0, long_as = 0;
    for (const std::string_view word : {"x", "X", "\u00D7", "by"})
        for (const std::size_t place : detail::all_places_of(word, text)) {
            ++partings;
            at = place;
            long_as = word.size();
        }
    if (partings != 1)
        throw size_text_error("cannot read it as a size: write width x height, as in 24 x 15 in",
                              {.kind = fault::unreadable, .what = "a size"});
    return read_sides(text.substr(0, at), text.substr(at + long_as));
}

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
