// The bits of numbers, by what GCC and Clang both have for them: the standard's own functions are missing from some of the
// libraries that come with them, or test for a case that cannot be.
//
//   trailing_zeros(n)      of a 64-bit n other than 0
//   bits_as<To>(from)      the same bits as another type
//
//   static_assert(bits_as<std::uint64_t>(1.0) == std::uint64_t{1023} << 52);
#ifndef TURNCLOTH_MEASURE_DETAIL_BITS_HPP
#define TURNCLOTH_MEASURE_DETAIL_BITS_HPP

#include <cstdint>

namespace turncloth::detail {

constexpr int trailing_zeros(std::uint64_t n) noexcept { return __builtin_ctzll(n); }

template <class To, class From>
constexpr To bits_as(const From& from) noexcept {
    return __builtin_bit_cast(To, from);
}

} // namespace turncloth::detail

#endif
