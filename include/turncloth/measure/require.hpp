// What functions ask of what they are given, each in one sentence and one shape of data whoever asks.
//
//   require_more_than_zero<Error>(x, "the width of a strip")       x is a length, a fraction or a count
//   require_not_negative<Error>(x, what)
//   require_at_least<Error>(x, least, what)   require_at_most<Error>(x, most, what)
//   require_between<Error>(least, x, most, what, why)
//   require_index<Error>(i, count, "an edge")                      numbered from 0
//   amount_of(x)                                                   a count or a double as the data of a refusal
//
//   require_more_than_zero<finish_error>(allowance, "a seam allowance");
//   // finish_error: "a seam allowance must be more than zero: it was -1/4 in", fault::too_small, given -1/4 in, least 0 in
//
// `Error` is a type derived from error that inherits its constructors. `what` begins the sentence, so it has its article.
// What does not fit one of these is refused by detail::refuse<Error>(sentence, refusal{...}), with the same data.
#ifndef TURNCLOTH_MEASURE_REQUIRE_HPP
#define TURNCLOTH_MEASURE_REQUIRE_HPP

#include <turncloth/measure/write.hpp>

#include <concepts>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <utility>

namespace turncloth {

template <std::integral Count>
amount amount_of(Count n) {
    if (std::in_range<std::int64_t>(n))
        return {static_cast<std::int64_t>(n), 1, static_cast<double>(n), {}};
    return {0, 0, static_cast<double>(n), {}};
}
inline amount amount_of(double x) { return {0, 0, x, {}}; }

namespace detail {

inline std::string text_of(fraction x) { return to_text(x); }
template <length_unit Unit>
std::string text_of(length<Unit> l) {
    return to_text(l);
}
template <std::integral Count>
std::string text_of(Count n) {
    return std::to_string(n);
}

/// Throws `Error` with the sentence "<what> must be <allowed>: it was <x>".
template <class Error, class Number>
[[noreturn, gnu::cold, gnu::noinline]] void refuse_value(refusal facts, const Number& x, const std::string& allowed) {
    facts.given = amount_of(x);
    const std::string sentence = facts.what + " must be " + allowed + ": it was " + text_of(x);
    refuse<Error>(sentence, std::move(facts));
}

} // namespace detail

template <class Error, class Number>
constexpr void require_more_than_zero(const Number& x, const char* what) {
    if (x <= Number())
        detail::refuse_value<Error>({.kind = fault::too_small, .what = what, .least = amount_of(Number())}, x,
                                    "more than zero");
}

template <class Error, class Number>
constexpr void require_not_negative(const Number& x, const char* what) {
    if (x < Number())
        detail::refuse_value<Error>({.kind = fault::too_small, .what = what, .least = amount_of(Number())}, x,
                                    "zero or more");
}

template <class Error, class Number>
constexpr void require_at_least(const Number& x, const Number& least, const char* what) {
    if (x < least)
        detail::refuse_value<Error>({.kind = fault::too_small, .what = what, .least = amount_of(least)}, x,
                                    "at least " + detail::text_of(least));
}

template <class Error, class Number>
constexpr void require_at_most(const Number& x, const Number& most, const char* what) {
    if (x > most)
        detail::refuse_value<Error>({.kind = fault::too_large, .what = what, .most = amount_of(most)}, x,
                                    "at most " + detail::text_of(most));
}

/// `why` says what the limits are for: "so that it lies inside the hem"; nothing where they speak for themselves.
template <class Error, class Number>
constexpr void require_between(const Number& least, const Number& x, const Number& most, const char* what,
                               const char* why = nullptr) {
    if (x < least || x > most)
        detail::refuse_value<Error>({.kind = x < least ? fault::too_small : fault::too_large,
                                     .what = what,
                                     .least = amount_of(least),
                                     .most = amount_of(most)},
                                    x,
                                    "from " + detail::text_of(least) + " to " + detail::text_of(most) +
                                        (why == nullptr ? std::string() : std::string(", ") + why));
}

/// For places, spans, edges and pieces that are numbered from 0: `what` is one of them, "a mark of this row".
template <class Error>
constexpr void require_index(std::int64_t i, std::int64_t count, const char* what) {
    if (i >= 0 && i < count)
        return;
    // No variable here: where the standard library's strings are older, a constexpr function may not have one.
    detail::refuse_value<Error>(
        {.kind = i < 0 ? fault::too_small : fault::too_large,
         .what = what,
         .least = amount_of(0),
         .most = amount_of(count - 1)},
        i, count == 0 ? std::string("one of none") : "numbered from 0 to " + std::to_string(count - 1));
}

} // namespace turncloth

#endif
