// Fractions as whole numbers over one denominator, for searches that count in whole numbers.
//
//   class detail::common_denominator    include(x), whole(x), whole_below(x), parts(), part(n)
//
//   detail::common_denominator eighths;
//   eighths.include({3, 8});            // eighths.whole(2) == 16, eighths.part(3) == fraction(3, 8)
//
// Products are formed in 128 bits, where none of two 64-bit numbers overflows, and refused where they do not come back.
#ifndef TURNCLOTH_CLOTH_DETAIL_COMMON_DENOMINATOR_HPP
#define TURNCLOTH_CLOTH_DETAIL_COMMON_DENOMINATOR_HPP

#include <turncloth/measure/error.hpp>
#include <turncloth/measure/fraction.hpp>

#include <cstdint>
#include <numeric>

namespace turncloth::detail {

class common_denominator {
public:
    /// From now on this fraction is a whole number of parts too.
    constexpr void include(fraction x) {
        const std::int64_t shared = std::gcd(parts_, denominator(x));
        parts_ = checked(int128{parts_} * (denominator(x) / shared));
    }

    /// How many parts one is divided into.
    constexpr std::int64_t parts() const { return parts_; }
    constexpr fraction part(std::int64_t n) const { return {n, parts_}; }

    /// Of a fraction that was included.
    constexpr std::int64_t whole(fraction x) const { return checked(int128{numerator(x)} * (parts_ / denominator(x))); }
    /// Of any that is not below zero: what is finer than the parts is dropped.
    constexpr std::int64_t whole_below(fraction x) const {
        return checked(int128{numerator(x)} * parts_ / denominator(x));
    }

private:
    static constexpr std::int64_t checked(int128 n) {
        if (!fits(n))
            refuse<overflow_error>("these numbers have no common denominator that fits 64-bit integers: round them to "
                                   "one graduation first",
                                   refusal{.kind = fault::does_not_fit, .what = "a common denominator"});
        return static_cast<std::int64_t>(n);
    }

    std::int64_t parts_ = 1;
};

} // namespace turncloth::detail

#endif
