// What functions ask of what they are given, each in one sentence and one shape of data whoever asks.
//
//   require_more_than_zero<Error>(x, "the width of a strip")       x is a length, a fraction or a count
//   require_not_negative<Error>(x, what)
//   require_at_least<Error>(x, least, what)   require_at_most<Error>(x, most, what)
//   require_between<Error>(least, x, most, what, why)
//   require_index<Error>(i, count, "an edge")                      numbered from 0
//   amount_of(x)                                                   a count or a double as the data of a refusal
//   detail::is_within(x, most)                                     of doubles: |x| <= most, and x is a number
//
//   require_more_than_zero<finish_error>(allowance, "a seam allowance");
//   // finish_error: "a seam allowance must be more than zero: it was -1/4 in", fault::too_small, given -1/4 in, least 0 in
//
// `Error` is a type derived from error that inherits its constructors. `what` begins the sentence, so it has its article.
// What does not fit one of these is refused by detail::refuse<Error>(sentence, refusal{...}), with the same data.
#ifndef TURNCLOTH_MEASURE_REQUIRE_HPP
#define TURNCLOTH_MEASURE_REQUIRE_HPP

#include <turncloth/measure/detail/bits.hpp>
#include <turncloth/measure/detail/sentence.hpp>

#include <concepts>
#include <cstddef>
#include <cstdint>
#include <string_view>
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

/// Read from the bits, in whose order doubles of one sign are: -ffast-math takes it that every double is a number, and
/// leaves out a comparison that is there to find out.
constexpr bool is_within(double x, double most) noexcept {
    constexpr std::uint64_t without_sign = ~std::uint64_t{0} >> 1;
    return (bits_as<std::uint64_t>(x) & without_sign) <= bits_as<std::uint64_t>(most);
}

/// "<what> must be <allowed>: it was <x>"
template <class Error>
[[noreturn, gnu::cold, gnu::noinline]] void refuse_value(grounds why, text_parts allowed) {
    refuse<Error>({why.what, " must be ", sentence(allowed), ": it was ", why.given}, why);
}

} // namespace detail

template <class Error, class Number>
constexpr void require_more_than_zero(const Number& x, std::string_view what) {
    if (x <= Number())
        detail::refuse_value<Error>({.kind = fault::too_small, .what = what, .given = x, .least = Number()},
                                    {"more than zero"});
}

template <class Error, class Number>
constexpr void require_not_negative(const Number& x, std::string_view what) {
    if (x < Number())
        detail::refuse_value<Error>({.kind = fault::too_small, .what = what, .given = x, .least = Number()},
                                    {"zero or more"});
}

template <class Error, class Number>
constexpr void require_at_least(const Number& x, const Number& least, std::string_view what) {
    if (x < least)
        detail::refuse_value<Error>({.kind = fault::too_small, .what = what, .given = x, .least = least},
                                    {"at least ", least});
}

template <class Error, class Number>
constexpr void require_at_most(const Number& x, const Number& most, std::string_view what) {
    if (x > most)
        detail::refuse_value<Error>({.kind = fault::too_large, .what = what, .given = x, .most = most},
                                    {"at most ", most});
}

/// `why` says what the limits are for: "so that it lies inside the hem"; nothing where they speak for themselves.
template <class Error, class Number>
constexpr void require_between(const Number& least, const Number& x, const Number& most, std::string_view what,
                               std::string_view why = {}) {
    if (x < least || x > most)
        detail::refuse_value<Error>({.kind = x < least ? fault::too_small : fault::too_large,
                                     .what = what,
                                     .given = x,
                                     .least = least,
                                     .most = most},
                                    {"from ", detail::bare(least), " to ", most, why.empty() ? "" : ", ", why});
}

/// For places, spans, edges and pieces that are numbered from 0: `what` is one of them, "a mark of this row".
template <class Error>
constexpr void require_index(std::int64_t i, std::int64_t count, std::string_view what) {
    if (i < 0 || i >= count)
        detail::refuse_value<Error>({.kind = i < 0 ? fault::too_small : fault::too_large,
                                     .what = what,
                                     .given = i,
                                     .least = 0,
                                     .most = count - 1},
                                    {count == 0 ? "one of none" : "numbered from 0 to ",
                                     count == 0 ? detail::text_part() : detail::text_part(count - 1)});
}

} // namespace turncloth

#endif
