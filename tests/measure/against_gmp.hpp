// What the tests of this room compare with: GMP (the GNU Multiple Precision library), and random fractions on which a
// wrong result would show.
//
//   exact(x)          the fraction as an mpq_class          same(x, q)    equal to it, in lowest terms
//   fits(q)           q in lowest terms fits 64-bit integers
//   class sampler     fractions of the families that rulers, catalogues and overflow are made of
#ifndef TURNCLOTH_TESTS_MEASURE_AGAINST_GMP_HPP
#define TURNCLOTH_TESTS_MEASURE_AGAINST_GMP_HPP

#include "at_random.hpp"
#include <turncloth/measure/fraction.hpp>

#include <gmpxx.h>

#include <cstdint>
#include <limits>
#include <type_traits>

namespace against_gmp {

using turncloth::fraction;
static_assert(std::is_same_v<std::int64_t, long>, "GMP's interface takes a long where a 64-bit integer is wanted");

inline constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();
inline constexpr std::int64_t lowest = std::numeric_limits<std::int64_t>::min();

inline void assign(mpq_class& q, fraction x) {
    mpz_set_si(mpq_numref(q.get_mpq_t()), numerator(x));
    mpz_set_si(mpq_denref(q.get_mpq_t()), denominator(x));
}

inline mpq_class exact(fraction x) { return {numerator(x), denominator(x)}; }

inline bool fits(const mpq_class& q) { return q.get_num().fits_slong_p() && q.get_den().fits_slong_p(); }

inline bool same(fraction x, const mpq_class& q) {
    return q.get_num() == numerator(x) && q.get_den() == denominator(x);
}

inline mpz_class floor(const mpq_class& q) {
    mpz_class whole;
    mpz_fdiv_q(whole.get_mpz_t(), q.get_num_mpz_t(), q.get_den_mpz_t());
    return whole;
}

inline mpz_class ceil(const mpq_class& q) {
    mpz_class whole;
    mpz_cdiv_q(whole.get_mpz_t(), q.get_num_mpz_t(), q.get_den_mpz_t());
    return whole;
}

class sampler : public at_random::sampler {
public:
    using at_random::sampler::sampler;

    std::uint64_t bits() { return (*this)(); }

    /// Up to 100 either way, on a ruler divided into as many as 64ths.
    fraction on_a_ruler() { return {between(-6400, 6400), std::int64_t{1} << between(0, 6)}; }

    fraction awkward() { return {between(-10000, 10000), between(1, 1000)}; }

    /// Of any size: as many short numbers as long ones.
    fraction of_any_size() { return {any_size(), any_size() | 1}; }

    /// Numerator, denominator or both within a few units of 2^62, 2^63 or -2^63, where results begin not to fit.
    fraction near_overflow() {
        const bool above = between(0, 1) != 0, below = between(0, 1) != 0;
        const std::int64_t under = below || !above ? near_border() : between(1, 64);
        return {above ? near_border() : between(-64, 64), under < 0 ? -(under + 1) : under};
    }

    /// Mostly what rulers show and people type; one in sixteen of a size at which some results do not fit.
    fraction mixed() {
        switch (bits() % 32) {
        case 0:
            return near_overflow();
        case 1:
            return of_any_size();
        default:
            return bits() % 2 != 0 ? awkward() : on_a_ruler();
        }
    }

private:
    std::int64_t any_size() {
        const auto n = static_cast<std::int64_t>(bits() >> between(1, 63));
        return bits() % 2 != 0 ? n : -n;
    }

    std::int64_t near_border() {
        const std::int64_t off = between(0, 5);
        switch (bits() % 4) {
        case 0:
            return largest - off;
        case 1:
            return lowest + off;
        case 2:
            return (std::int64_t{1} << 62) + off - 2;
        default:
            return -(std::int64_t{1} << 62) + off - 2;
        }
    }
};

} // namespace against_gmp

#endif
