// What a refusal says and what it knows, each as one line to compare.
//
//   refused::message<marks_error>([] { divided<cut_edge>(0_in, 2); })  // "a span to divide must be more than zero: ..."
//   refused::facts<marks_error>([] { divided<cut_edge>(0_in, 2); })    // "too small: a span to divide, given 0 in, ..."
#ifndef TURNCLOTH_TESTS_REFUSED_HPP
#define TURNCLOTH_TESTS_REFUSED_HPP

#include <turncloth/measure/error.hpp>

#include <array>
#include <optional>
#include <sstream>
#include <string>

namespace refused {

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
    std::ostringstream text;
    text << ", " << what << " ";
    if (a->denominator == 0) // a double, or what 64 bits do not hold
        text << a->nearest;
    else
        text << a->numerator;
    if (a->denominator > 1)
        text << "/" << a->denominator;
    if (!a->unit.empty())
        text << " " << a->unit;
    return text.str();
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

} // namespace refused

#endif
