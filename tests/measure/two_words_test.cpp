// measure/detail/two_words.hpp: each operation is the one of the compiler's own 128-bit numbers, where it has them.
#include "at_random.hpp"
#include <turncloth/measure/detail/two_words.hpp>

#include <doctest/doctest.h>

#include <compare>
#include <cstdint>

using turncloth::detail::two_words;

// By hand: 2^100 / 3 leaves 1, as 2^2 leaves 1 and so does every even power; a quotient goes toward zero.
static_assert((two_words<false>(1) << 100) % 3 == 1);
static_assert((two_words<false>(1) << 100) / 3 * 3 + 1 == (two_words<false>(1) << 100));
static_assert(two_words<true>(-7) / 2 == -3);
static_assert(two_words<true>(-7) % 2 == -1);
static_assert((two_words<true>(-1) >> 127) == -1);
static_assert(static_cast<double>(two_words<false>(1) << 100) == 0x1p100);
static_assert(two_words<true>(-0x1.8p100) == -(two_words<true>(3) << 99));
static_assert(two_words<true>(0.75) == 0);

#ifdef __SIZEOF_INT128__
namespace {

__extension__ typedef __int128 own_signed;
__extension__ typedef unsigned __int128 own_unsigned;

template <class Own>
constexpr bool is_signed = Own(-1) < Own(0);

/// Of any number of bits, and of either sign where there is one; also the ends, and what is near them.
template <class Own>
Own some(at_random::sampler& random) {
    const auto whole = own_unsigned{random()} << 64 | random();
    const auto short_of_bits = whole >> random.between(0, 127);
    const auto n = random.between(0, 9) == 0
                       ? (own_unsigned{1} << random.between(0, 127)) - own_unsigned(random.between(0, 2))
                       : short_of_bits;
    return static_cast<Own>(random.between(0, 1) == 0 ? n : own_unsigned{0} - n);
}

template <class Own>
two_words<is_signed<Own>> ours(Own n) {
    using result = two_words<is_signed<Own>>;
    const auto bits = static_cast<own_unsigned>(n);
    return result(two_words<false>(static_cast<std::uint64_t>(bits >> 64)) << 64 | static_cast<std::uint64_t>(bits));
}

template <class Own>
void check_all(Own a, Own b) {
    const auto x = ours(a), y = ours(b);
    // What overflows is undefined for the compiler's own, so sums and products are compared as numbers without a sign.
    const auto u = static_cast<own_unsigned>(a), v = static_cast<own_unsigned>(b);
    CHECK(x + y == ours(static_cast<Own>(u + v)));
    CHECK(x - y == ours(static_cast<Own>(u - v)));
    CHECK(x * y == ours(static_cast<Own>(u * v)));
    CHECK((x & y) == ours(static_cast<Own>(a & b)));
    CHECK((x | y) == ours(static_cast<Own>(a | b)));
    const auto order = a < b   ? std::strong_ordering::less
                       : a > b ? std::strong_ordering::greater
                               : std::strong_ordering::equal;
    CHECK(((x <=> y) == order));
    CHECK((x == y) == (a == b));
    CHECK(static_cast<bool>(x) == (a != 0));
    if (b != 0 && !(is_signed<Own> && b == Own(-1))) {
        CHECK(x / y == ours(static_cast<Own>(a / b)));
        CHECK(x % y == ours(static_cast<Own>(a % b)));
    }
    CHECK(static_cast<double>(x) == static_cast<double>(a));
    CHECK(static_cast<std::int64_t>(x) == static_cast<std::int64_t>(a));
    CHECK(static_cast<std::uint64_t>(x) == static_cast<std::uint64_t>(a));
    for (int by : {0, 1, 31, 63, 64, 65, 127}) {
        CAPTURE(by);
        CHECK((x << by) == ours(static_cast<Own>(u << by)));
        CHECK((x >> by) == ours(static_cast<Own>(a >> by)));
    }
}

} // namespace

TEST_CASE("numbers of two words do what the compiler's own of 128 bits do, bit for bit") {
    at_random::sampler random(20261126);
    while (random.another_of(20'000)) {
        check_all(some<own_unsigned>(random), some<own_unsigned>(random));
        check_all(some<own_signed>(random), some<own_signed>(random));
    }
}

TEST_CASE("a double becomes the whole number below it in size") {
    at_random::sampler random(7);
    while (random.another_of(20'000)) {
        const auto n = some<own_signed>(random) / 4;
        const double d = static_cast<double>(n) / static_cast<double>(std::int64_t{1} << random.between(0, 60));
        CHECK(two_words<true>(d) == ours(static_cast<own_signed>(d)));
    }
}
#endif

TEST_CASE("what must hold of numbers of two words is proved at compile time") {}
