// Auditing formulas that somebody wrote on doubles: over a range of sizes, do they give what the library gives?
//
//   agrees(theirs, ours, within)                  is a double the length to within a graduation?
//   audit(sizes, within, theirs, ours)            the first size at which they part, or none
//   sizes<U>{from, to, step}                      both ends included
//   finding<U>                                    parted(), at(), theirs(), ours(), to_text
//
//   auto f = audit(sizes<inch>{6_in, 60_in, "1/8"_in}, "1/64"_in, workbook_cut_width,
//                  [](length<inch> w) { return panel(finished_size(w, 9_in), hems).width_working(); });
//   CHECK_MESSAGE(!f.parted(), to_text(f));   // "at 6 in they say 7.25, but 7 1/2 in = 6 in finished + ..."
//
// Not a part of turncloth.hpp: it is for those who test.
#ifndef TURNCLOTH_TESTING_AUDIT_HPP
#define TURNCLOTH_TESTING_AUDIT_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/working.hpp>

#include <concepts>
#include <string>

namespace turncloth {

/// A double against an exact length, `within` to either side. The double is taken to a 4096th of `within` first,
/// exactly, so a true distance up to a 8192th of `within` over the border may still pass. False for what is not finite
/// or out of range. Throws range_error for `within` not above zero.
template <length_unit Unit>
constexpr bool agrees(double theirs, length<Unit> ours, length<Unit> within) {
    constexpr double most = 1e9; // far above any cloth, and its 4096ths of a 64th fit 64 bits
    if (!(theirs > -most && theirs < most))
        return false;
    const fraction value = approximate(theirs, within.value() / 4096).value;
    return abs(value - ours.value()) <= within.value();
}

/// Every size from `from` to `to`, `step` apart.
template <length_unit Unit>
struct sizes {
    length<Unit> from, to, step;
};

/// The first size at which two ways to a figure part.
template <length_unit Unit>
class finding {
public:
    constexpr finding() = default;
    constexpr finding(length<Unit> at, double theirs, const figure<Unit>& ours)
        : parted_(true), at_(at), theirs_(theirs), ours_(ours) {}

    constexpr bool parted() const { return parted_; }
    constexpr length<Unit> at() const { return at_; }
    constexpr double theirs() const { return theirs_; }
    constexpr const figure<Unit>& ours() const { return ours_; }

private:
    bool parted_ = false;
    length<Unit> at_;
    double theirs_ = 0;
    figure<Unit> ours_;
};

namespace detail {
template <length_unit Unit>
constexpr figure<Unit> as_figure(const figure<Unit>& f) {
    return f;
}
template <length_unit Unit>
constexpr figure<Unit> as_figure(length<Unit> l) {
    return figure<Unit>().plus(l, "");
}
} // namespace detail

/// `theirs` takes and gives a double in the unit; `ours` takes a length and gives a length, or a figure with its
/// working. Throws range_error for a step not above zero or a range that ends before it begins.
template <length_unit Unit, std::invocable<double> Theirs, std::invocable<length<Unit>> Ours>
constexpr finding<Unit> audit(const sizes<Unit>& over, length<Unit> within, Theirs theirs, Ours ours) {
    require_more_than_zero<range_error>(over.step, "the step of a range of sizes");
    require_at_least<range_error>(over.to, over.from, "the end of a range of sizes");
    for (length<Unit> at = over.from; at <= over.to; at += over.step) {
        const figure<Unit> right = detail::as_figure(ours(at));
        const double said = theirs(to_double(at.value()));
        if (!agrees(said, right.value(), within))
            return {at, said, right};
    }
    return {};
}

template <length_unit Unit>
std::string to_text(const finding<Unit>& f) {
    if (!f.parted())
        return "they agree";
    return "at " + to_text(f.at()) + " they say " + std::to_string(f.theirs()) + ", but " + to_text(f.ours());
}

} // namespace turncloth

#endif
