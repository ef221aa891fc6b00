// A figure that carries its own working.
//
//   figure<U>                          a length that is the sum of its terms; value(), terms()
//   f.plus(l, "what")                  one more term
//   f.plus_times(n, {a, b}, "what")    n times (a + b), for equal allowances on both sides
//   f.plus_any(n, l, "what")           n times l, unless it is nothing
//   ==   out << f                      term by term; as to_text
//   to_text(f)                         "12 in = 10 in finished + 2 x (1/2 + 1/2) in self-binding"
//
//   auto cut = figure<inch>().plus("10"_in, "finished").plus_times(2, {"1/2"_in, "1/2"_in}, "hem");
//
// The value is computed from the terms and from nothing else, so a printed working can never disagree with its figure.
// Nothing is allocated: a figure has room for eight terms of up to four parts, and names are labels (label.hpp): literals,
// or kept in a table of words.
#ifndef TURNCLOTH_MEASURE_WORKING_HPP
#define TURNCLOTH_MEASURE_WORKING_HPP

#include <turncloth/measure/label.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/write.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <initializer_list>
#include <iosfwd>
#include <span>
#include <string>
#include <string_view>

namespace turncloth {

/// times x (part + part + ...) of something. `times` below zero is taken off.
template <length_unit Unit>
class term {
public:
    constexpr term() = default;
    constexpr term(fraction times, std::span<const length<Unit>> parts, label what)
        : times_(times), count_(parts.size()), what_(what) {
        require_between<range_error>(std::size_t{1}, parts.size(), parts_.size(), "the number of parts of a term");
        for (std::size_t i = 0; i < parts.size(); ++i)
            parts_[i] = parts[i];
    }

    constexpr fraction times() const { return times_; }
    constexpr std::span<const length<Unit>> parts() const& { return {parts_.data(), count_}; }
    template <class Please = please::give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it>
    void parts() const&& = delete;
    constexpr label what() const { return what_; }
    constexpr length<Unit> value() const {
        length<Unit> sum;
        for (const length<Unit>& part : parts())
            sum += part;
        return sum * times_;
    }
    friend constexpr bool operator==(const term&, const term&) = default;

private:
    fraction times_ = 1;
    std::array<length<Unit>, 4> parts_{};
    std::size_t count_ = 0;
    label what_;
};

template <length_unit Unit>
class figure {
public:
    constexpr figure() = default;

    /// Adds one term. Throws range_error for a ninth.
    constexpr figure& plus(const term<Unit>& t) {
        require_at_most<range_error>(count_ + 1, terms_.size(), "the number of terms of a working");
        terms_[count_++] = t;
        return *this;
    }
    constexpr figure& plus(length<Unit> l, label what) { return plus_times(1, {l}, what); }
    constexpr figure& plus_times(fraction times, std::initializer_list<length<Unit>> parts, label what) {
        return plus(term<Unit>(times, {parts.begin(), parts.size()}, what));
    }

    /// The same, unless it is nothing.
    constexpr figure& plus_any(fraction times, length<Unit> l, label what) {
        return l.value() == 0 ? *this : plus_times(times, {l}, what);
    }

    constexpr std::span<const term<Unit>> terms() const& { return {terms_.data(), count_}; }
    template <class Please = please::give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it>
    void terms() const&& = delete;
    constexpr length<Unit> value() const {
        length<Unit> sum;
        for (const term<Unit>& t : terms())
            sum += t.value();
        return sum;
    }
    friend constexpr bool operator==(const figure&, const figure&) = default;

private:
    std::array<term<Unit>, 8> terms_{};
    std::size_t count_ = 0;
};

namespace detail {

/// The unit stands once behind all parts, or behind each where they are not written in one.
template <length_unit Unit>
std::string term_text(const term<Unit>& t) {
    const auto as_metric = [](const length<Unit>& part) { return reads_as_metric(part.value(), written_as<Unit>); };
    const bool apart = std::any_of(t.parts().begin(), t.parts().end(), as_metric);
    std::string sum;
    for (const length<Unit>& part : t.parts())
        sum.append(sum.empty() ? "" : " + ").append(apart ? to_text(part) : number_text(part));
    if (t.parts().size() > 1)
        sum = "(" + sum + ")";
    std::string text = abs(t.times()) == 1 ? sum : to_text(abs(t.times())).append(detail::word(" x ")).append(sum);
    if (!apart)
        text += " " + std::string(unit_name<Unit>);
    const std::string_view what = t.what();
    return what.empty() ? text : text + " " + said_again(what);
}

} // namespace detail

/// The working on one line, exact; of a figure without terms, its value alone.
template <length_unit Unit>
std::string to_text(const figure<Unit>& f) {
    std::string text = to_text(f.value());
    if (!f.terms().empty())
        text += " =";
    bool first = true;
    for (const term<Unit>& t : f.terms()) {
        const bool taken_off = t.times() < 0;
        text += first ? (taken_off ? " -" : " ") : (taken_off ? " - " : " + ");
        text += detail::term_text(t);
        first = false;
    }
    return text;
}

template <class Traits, length_unit Unit>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, const figure<Unit>& f) {
    return out << to_text(f);
}

TURNCLOTH_ONCE(class term<inch>);
TURNCLOTH_ONCE(class term<centimetre>);
TURNCLOTH_ONCE(class figure<inch>);
TURNCLOTH_ONCE(class figure<centimetre>);
TURNCLOTH_ONCE(std::string to_text(const figure<inch>&));
TURNCLOTH_ONCE(std::string to_text(const figure<centimetre>&));

} // namespace turncloth

#endif
