// Whole numbers of 128 bits, which hold any product of two 64-bit ones and the sum of two such products.
//
//   int128  uint128                        the compiler's own, or two_words<true> and two_words<false>
//   overflows_times(a, b, product)         whether a b does not fit the type of `product`, which is set where it does;
//   overflows_plus(a, b, sum)              so of a + b
//
//   static_assert(int128{1} << 100 > std::int64_t{9'223'372'036'854'775'807});
//
// GCC and Clang have such numbers on every machine of 64 bits, and for WebAssembly. Where there are none, and wherever
// TURNCLOTH_PORTABLE is defined, they are made of two 64-bit words: slower, and the same to the last bit.
#ifndef TURNCLOTH_MEASURE_DETAIL_WIDE_HPP
#define TURNCLOTH_MEASURE_DETAIL_WIDE_HPP

#include <concepts>
#include <cstdint>

#if !defined(__SIZEOF_INT128__) && !defined(TURNCLOTH_PORTABLE)
#define TURNCLOTH_PORTABLE
#endif
#ifdef TURNCLOTH_PORTABLE
#include <turncloth/measure/detail/two_words.hpp>

#include <limits>
#endif

namespace turncloth::detail {

#ifdef TURNCLOTH_PORTABLE
using int128 = two_words<true>;
using uint128 = two_words<false>;
#else
__extension__ typedef __int128 int128;
__extension__ typedef unsigned __int128 uint128;
#endif

#ifdef TURNCLOTH_PORTABLE
/// Whether it does.
template <std::integral Whole>
constexpr bool set_if_it_fits(int128 exact, Whole& to) noexcept {
    if (exact < std::numeric_limits<Whole>::min() || exact > std::numeric_limits<Whole>::max())
        return false;
    to = static_cast<Whole>(exact);
    return true;
}

#endif

template <std::integral Whole>
constexpr bool overflows_times(Whole a, Whole b, Whole& product) noexcept {
#ifdef TURNCLOTH_PORTABLE
    return !set_if_it_fits(int128(a) * b, product);
#else
    return __builtin_mul_overflow(a, b, &product);
#endif
}

template <std::integral Whole>
constexpr bool overflows_plus(Whole a, Whole b, Whole& sum) noexcept {
#ifdef TURNCLOTH_PORTABLE
    return !set_if_it_fits(int128(a) + b, sum);
#else
    return __builtin_add_overflow(a, b, &sum);
#endif
}

} // namespace turncloth::detail

#endif
