// What the notions refuse alike: lengths that are negative or nothing, and counts that are too small.
//
//   class notion_error                                        the base of what these rooms throw
//   detail::more_than_zero<Error>(l, "the width of a strip")  throws Error, with the length that was given
//   detail::not_negative<Error>(l, what)  detail::at_least<Error>(n, least, what)
#ifndef TURNCLOTH_NOTIONS_REFUSAL_HPP
#define TURNCLOTH_NOTIONS_REFUSAL_HPP

#include <turncloth/measure/write.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

/// A notion that cannot be made.
class notion_error : public error {
public:
    using error::error;
};

namespace detail {

template <class Error, length_unit Unit>
constexpr void more_than_zero(length<Unit> l, const char* what) {
    if (l.value() <= 0)
        refuse<Error>(std::string(what) + " must be more than zero: it was " + to_text(l));
}

template <class Error, length_unit Unit>
constexpr void not_negative(length<Unit> l, const char* what) {
    if (l.value() < 0)
        refuse<Error>(std::string(what) + " must not be negative: it was " + to_text(l));
}

template <class Error>
constexpr void at_least(std::int64_t n, std::int64_t least, const char* what) {
    if (n < least)
        refuse<Error>(std::string(what) + " must be at least " + std::to_string(least) + ": it was " +
                      std::to_string(n));
}

} // namespace detail

} // namespace turncloth

#endif
