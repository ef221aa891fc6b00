// What the tests of the notions compare with: numbers of 50 digits from Boost.Multiprecision, random sizes, and what a refusal says and knows.
#ifndef TURNCLOTH_TESTS_NOTIONS_REFERENCE_HPP
#define TURNCLOTH_TESTS_NOTIONS_REFERENCE_HPP

#include "at_random.hpp"
#include <turncloth/measure/error.hpp>
#include <turncloth/measure/length.hpp>

#include <boost/multiprecision/cpp_bin_float.hpp>

#include <array>
#include <cstdint>
#include <optional>
#include <string>

namespace reference {

using real = boost::multiprecision::cpp_bin_float_50;

inline real exact(turncloth::fraction x) { return real(numerator(x)) / denominator(x); }
template <turncloth::length_unit Unit>
real exact(turncloth::length<Unit> l) {
    return exact(l.value());
}

using at_random::sampler;

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

namespace detail {

inline std::string text(const char* what, const std::optional<turncloth::amount>& a) {
    if (!a)
        return {};
    std::string text = std::string(", ") + what + " " + std::to_string(a->numerator);
    if (a->denominator != 1)
        text += "/" + std::to_string(a->denominator);
    return a->unit.empty() ? text : text + " " + std::string(a->unit);
}

} // namespace detail

/// What an Error that `refused` throws knows, on one line: "too small: the width of a strip, given 0 in, least 0 in".
template <class Error, class Call>
std::string facts(Call refused) {
    constexpr std::array kinds = {"too small", "too large",  "no room",    "disagree",     "missing",
                                  "repeated",  "unsuitable", "unreadable", "does not fit", "undefined"};
    try {
        refused();
    } catch (const Error& e) {
        const turncloth::refusal& f = e.facts();
        return std::string(kinds[static_cast<std::size_t>(f.kind)]) + ": " + f.what + detail::text("given", f.given) +
               detail::text("least", f.least) + detail::text("most", f.most) +
               (f.index ? ", index " + std::to_string(*f.index) : "") + (f.where.empty() ? "" : ", where " + f.where);
    }
    return "(nothing was refused)";
}

} // namespace reference

#endif
