// What the tests of this room compare with: numbers of 50 digits from Boost.Multiprecision, random sizes such as cloth
// has, and the message of a refusal.
#ifndef TURNCLOTH_TESTS_NOTIONS_REFERENCE_HPP
#define TURNCLOTH_TESTS_NOTIONS_REFERENCE_HPP

#include <turncloth/measure/length.hpp>

#include <boost/multiprecision/cpp_bin_float.hpp>

#include <cstdint>
#include <random>
#include <string>

namespace reference {

using real = boost::multiprecision::cpp_bin_float_50;

inline real exact(turncloth::fraction x) { return real(numerator(x)) / denominator(x); }
template <turncloth::length_unit Unit>
real exact(turncloth::length<Unit> l) {
    return exact(l.value());
}

/// Random sizes. The seed is fixed, so a failure comes again.
class sampler {
public:
    explicit sampler(std::uint64_t seed) : bits_(seed) {}

    std::int64_t between(std::int64_t least, std::int64_t most) {
        return std::uniform_int_distribution<std::int64_t>(least, most)(bits_);
    }
    /// From 1/64 in to `most` in, on a ruler of 64ths; from 0.1 mm to `most` cm.
    turncloth::length<turncloth::inch> inches(std::int64_t most) {
        return turncloth::length_of<turncloth::inch>({between(1, most * 64), 64});
    }
    turncloth::length<turncloth::centimetre> centimetres(std::int64_t most) {
        return turncloth::length_of<turncloth::centimetre>({between(1, most * 100), 100});
    }

private:
    std::mt19937_64 bits_;
};

/// What an Error says that `refused` throws, or that it throws none.
template <class Error, class Call>
std::string message(Call refused) {
    try {
        refused();
    } catch (const Error& e) {
        return e.what();
    }
    return "(nothing was refused)";
}

} // namespace reference

#endif
