// Whole numbers of 128 bits, which hold any product of two 64-bit ones and the sum of two such products.
//
//   int128  uint128                        the compiler's own, or two_words<true> and two_words<false>
//   overflows_plus(a, b, sum)              whether a + b does not fit their type; `sum` is set to it where it does
//   overflows_minus  overflows_times       so of a - b, of narrower numbers, and of a b
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

/// Of narrower numbers, whose sums, differences and products int128 holds.
template <std::integral Whole>
constexpr bool overflows(int128 exact, Whole& result) noexcept {
    result = static_cast<Whole>(exact);
    return exact != result;
}
/// Of 128 bits there is only what wraps: it is wrong where it does not lie on the side of a that b says.
constexpr bool overflows_plus(int128 a, int128 b, int128& sum) noexcept {
    const int128 wrapped = a + b;
    const bool wrong = (b < 0) != (wrapped < a);
    sum = wrapped;
    return wrong;
}
constexpr bool overflows_times(int128 a, int128 b, int128& product) noexcept {
    const int128 wrapped = a * b;
    const bool wrong = a == -1 ? b != 0 && wrapped == b : a != 0 && wrapped / a != b; // -lowest is lowest again
    product = wrapped;
    return wrong;
}
template <std::integral Whole>
constexpr bool overflows_plus(Whole a, Whole b, Whole& sum) noexcept {
    return overflows(int128(a) + b, sum);
}
template <std::integral Whole>
constexpr bool overflows_minus(Whole a, Whole b, Whole& difference) noexcept {
    return overflows(int128(a) - b, difference);
}
template <std::integral Whole>
constexpr bool overflows_times(Whole a, Whole b, Whole& product) noexcept {
    return overflows(int128(a) * b, product);
}

#else

template <class Whole>
constexpr bool overflows_plus(Whole a, Whole b, Whole& sum) noexcept {
    return __builtin_add_overflow(a, b, &sum);
}
template <class Whole>
constexpr bool overflows_minus(Whole a, Whole b, Whole& difference) noexcept {
    return __builtin_sub_overflow(a, b, &difference);
}
template <class Whole>
constexpr bool overflows_times(Whole a, Whole b, Whole& product) noexcept {
    return __builtin_mul_overflow(a, b, &product);
}

#endif

} // namespace turncloth::detail

#endif
