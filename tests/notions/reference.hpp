// What the tests of the notions compare with: numbers of 50 digits from Boost.Multiprecision, random sizes, and what a
// refusal says and knows.
#ifndef TURNCLOTH_TESTS_NOTIONS_REFERENCE_HPP
#define TURNCLOTH_TESTS_NOTIONS_REFERENCE_HPP

#include "at_random.hpp"
#include "refused.hpp"
#include <turncloth/measure/length.hpp>

#include <boost/multiprecision/cpp_bin_float.hpp>

namespace reference {

using real = boost::multiprecision::cpp_bin_float_50;

inline real exact(turncloth::fraction x) { return real(numerator(x)) / denominator(x); }
template <turncloth::length_unit Unit>
real exact(turncloth::length<Unit> l) {
    return exact(l.value());
}

using at_random::sampler;
using refused::facts;
using refused::message;

} // namespace reference

#endif
