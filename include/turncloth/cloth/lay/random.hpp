// A small random source that gives the same numbers on every platform.
//
//   class detail::lay_random { explicit lay_random(seed); std::uint64_t operator()(); std::uint32_t below(n); };
//
//   detail::lay_random chance{7};
//   auto which = chance.below(52);   // 0 .. 51
//
// The standard library's engines are portable but its distributions are not, and a lay must not depend on
// whose library it was built with. The generator is splitmix64: a counter stepped by an odd constant (so of period
// 2^64), each count mixed by shifts and multiplications that can be undone, so no value is met twice in a period.
#ifndef TURNCLOTH_CLOTH_LAY_RANDOM_HPP
#define TURNCLOTH_CLOTH_LAY_RANDOM_HPP

#include <cstdint>

namespace turncloth::detail {

class lay_random {
public:
    explicit constexpr lay_random(std::uint64_t seed) noexcept : state_(seed) {}

    constexpr std::uint64_t operator()() noexcept {
        state_ += 0x9e3779b97f4a7c15U;
        std::uint64_t mixed = state_;
        mixed = (mixed ^ (mixed >> 30U)) * 0xbf58476d1ce4e5b9U;
        mixed = (mixed ^ (mixed >> 27U)) * 0x94d049bb133111ebU;
        return mixed ^ (mixed >> 31U);
    }

    /// A number in 0 .. count - 1. Multiplying instead of dividing leaves a bias below count / 2^32: nothing to a
    /// search.
    constexpr std::uint32_t below(std::uint32_t count) noexcept {
        return static_cast<std::uint32_t>(((*this)() >> 32U) * count >> 32U);
    }

private:
    std::uint64_t state_;
};

} // namespace turncloth::detail

#endif
