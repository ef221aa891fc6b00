// A name that cannot be left behind by its text.
//
//   label          made of a literal, and of nothing else; used as a text as it stands
//   words          a table that owns texts made while the program runs, and hands out labels for them
//
//   figure<inch>().plus(10_in, "finished");                          // a literal
//   words table;
//   figure<inch>().plus(10_in, table.keep("pocket " + number));      // good as long as the table, or a copy of it, lives
//
// Figures, terms and finishes are passed about by value and allocate nothing, so they cannot own the names that they
// bear. A label is what they keep instead: std::string does not convert to one, and the compiler says what to write.
#ifndef TURNCLOTH_MEASURE_LABEL_HPP
#define TURNCLOTH_MEASURE_LABEL_HPP

#include <turncloth/measure/detail/please.hpp>

#include <concepts>
#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

class words;

class label {
public:
    constexpr label() = default;
    template <std::size_t Size>
    consteval label(const char (&literal)[Size]) : text_(literal, Size - 1) {}

    template <class Text, class Please = please::keep_the_name_in_a_table_of_words_that_outlives_it_or_write_a_literal>
        requires(std::convertible_to<const Text&, std::string_view> && !std::is_array_v<Text>)
    label(const Text&)
    = delete;

    constexpr std::string_view text() const { return text_; }
    constexpr operator std::string_view() const { return text_; }

    friend constexpr bool operator==(const label& a, const label& b) { return a.text_ == b.text_; }
    template <class Text>
        requires(std::same_as<Text, std::string> || std::same_as<Text, std::string_view>)
    friend constexpr bool operator==(const label& a, const Text& b) { return a.text_ == b; }

private:
    friend words;
    struct kept {};
    constexpr label(kept, std::string_view text) : text_(text) {}

    std::string_view text_;
};

/// A copy shares the texts, so a label stays good until the last copy is gone.
class words {
public:
    label keep(std::string text) & {
        all_.push_back(std::make_shared<const std::string>(std::move(text)));
        return {label::kept{}, *all_.back()};
    }
    /// A table that is gone at the end of the statement keeps nothing.
    template <class Please = please::keep_the_name_in_a_table_of_words_that_outlives_it_or_write_a_literal>
    label keep(std::string) && = delete;

    /// What is kept says nothing by itself: what bears a label is compared by that label's text.
    friend bool operator==(const words&, const words&) { return true; }

private:
    std::vector<std::shared_ptr<const std::string>> all_;
};

} // namespace turncloth

#endif
