// The numbers of a design on a ruler, each by its kind, so that what is printed of it adds up.
//
//   ruled<U>(graduation)        rounds to that ruler; ruled<U>() leaves every number as it is
//     .given(length, alike)     what a designer gives: to the nearest, a half up; `alike`: it is parted into so many alike
//     .give(a, b, ...)          each of these, in place
//     .given(size)              both sides of a finished size
//     .parts(row)  .middle(l)   marks that part a span, each by its own place; half of a length
//     .step(length, alike)      what figures are rounded to: the least multiple of it and the graduation
//   ruler_error                 what a ruler is too coarse for: two lines, and a ruler that tells them apart
//
//   const ruled<inch> by("1/8"_in);
//   by.given("7/16"_in) == "1/2"_in;   by.parts(divided<finished_edge>(10_in, 3))[1] == at<finished_edge>("6 5/8"_in);
//
// A design that takes what is given, its parts and its steps through this, and all else as sums and differences of these,
// has whole graduations alone: a printed sum is the sum of what is printed, both sides of a seam print alike, and nothing
// drifts. What is bought by thickness, and counts, stay as they are. See sheet/on_ruler.hpp, which proves it of a sheet.
#ifndef TURNCLOTH_MAKING_RULED_HPP
#define TURNCLOTH_MAKING_RULED_HPP

#include <turncloth/marks/row.hpp>
#include <turncloth/panel/size.hpp>

#include <array>
#include <cstdint>
#include <numeric>
#include <string>
#include <utility>

namespace turncloth {

/// A line of a piece, where it lies exactly and where it would lie on a ruler.
struct ruler_line {
    std::string what; ///< "the slit behind the zipper on the lining"
    amount exact, shown;
};

/// A ruler that is too coarse. Its facts name its graduation as given, and as `most` one that does, where there is one.
class ruler_error : public error {
public:
    ruler_error(const std::string& sentence, refusal facts, std::array<ruler_line, 2> lines = {})
        : error(sentence, std::move(facts)), lines_(std::move(lines)) {}
    /// That it does not tell apart; without names where it is a single length that it cannot show.
    const std::array<ruler_line, 2>& lines() const noexcept { return lines_; }

private:
    std::array<ruler_line, 2> lines_;
};

namespace detail {

/// Of fractions above zero: a/b and c/d in lowest terms have the least common multiple lcm(a, c) / gcd(b, d).
constexpr fraction common_multiple(fraction x, fraction y) {
    const std::int64_t g = std::gcd(numerator(x), numerator(y));
    return fraction(numerator(x) / g) * numerator(y) / std::gcd(denominator(x), denominator(y));
}

} // namespace detail

template <length_unit Unit>
class ruled {
public:
    constexpr ruled() = default;
    /// Throws range_error for a graduation that is not above zero.
    constexpr explicit ruled(length<Unit> graduation) : graduation_(graduation) {
        require_more_than_zero<range_error>(graduation, "a graduation");
    }

    /// Zero where numbers stay exact.
    constexpr length<Unit> graduation() const { return graduation_; }

    /// Parted into `alike` alike it is rounded to so many graduations, as each of them is a whole number of these. Throws
    /// ruler_error for what is more than nothing and would print as nothing.
    constexpr length<Unit> given(length<Unit> l, std::int64_t alike = 1) const {
        if (graduation_.value() == 0)
            return l;
        const length<Unit> to = graduation_ * fraction(alike), rounded = nearest_to(l, to, ties::up);
        if (rounded.value() == 0 && l.value() != 0)
            too_coarse_for(l, alike);
        return rounded;
    }
    template <class... Lengths>
    constexpr const ruled& give(Lengths&... each) const {
        ((each = given(each)), ...);
        return *this;
    }
    constexpr finished_size<Unit> given(const finished_size<Unit>& size) const {
        return {given(size.width()), given(size.height())};
    }

    template <class Datum>
    constexpr row<Datum, Unit> parts(const row<Datum, Unit>& marks) const {
        return marks.on_ruler(graduation_);
    }
    /// A half of an odd number of graduations goes up.
    constexpr length<Unit> middle(length<Unit> l) const {
        return graduation_.value() == 0 ? l / 2 : nearest_to(l / 2, graduation_, ties::up);
    }
    /// For figures that are parted into `alike` alike, so many graduations.
    constexpr length<Unit> step(length<Unit> l, std::int64_t alike = 1) const {
        return graduation_.value() == 0
                   ? l
                   : length_of<Unit>(detail::common_multiple(l.value(), graduation_.value() * fraction(alike)));
    }

private:
    [[noreturn]] void too_coarse_for(length<Unit> l, std::int64_t alike) const {
        length<Unit> finer = graduation_;
        while (nearest_to(l, finer * fraction(alike), ties::up).value() == 0)
            finer = finer / 2;
        detail::refuse<ruler_error>(
            {"a ruler of ", graduation_, " cannot show ", l, ": use ", finer, " or finer"},
            {.kind = fault::too_large, .what = "the graduation of a ruler", .given = graduation_, .most = finer});
    }

    length<Unit> graduation_{};
};

} // namespace turncloth

#endif
