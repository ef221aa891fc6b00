// The two editions of a project: in inches, and in centimetres with round figures of its own.
//
//   cloth_sold<U>                          cloth as the shops have it
//   usual_steps<U>()                       how cloth and ribbon are cut off for a buyer
//   sewn_throughout<U>(ruled)              the thread that every project counts
//
// What differs between them is written by_edition<Unit>("1/2"_in, "1.5"_cm): never 1.27 cm.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_EDITION_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_EDITION_HPP

#include <turncloth.hpp>
#include <turncloth/making/ruled.hpp>

#include <string>

namespace allotment {

using namespace turncloth;

/// From edge to edge, with both selvedges; `straightening` is trimmed off at each end.
template <length_unit Unit>
struct cloth_sold {
    length<Unit> width = by_edition<Unit>(54_in, 140_cm);
    length<Unit> selvedge = by_edition<Unit>("1/2"_in, 1_cm);
    length<Unit> straightening = by_edition<Unit>(1_in, "2.5"_cm);
    bool typed = false; ///< its width then goes before those that a project says

    constexpr length<Unit> usable() const { return width - selvedge * 2; }
};

/// Every row with a lockstitch, sewn back over at both ends, and a quarter more for tails and breaks.
template <length_unit Unit>
sewing<Unit> sewn_throughout(const ruled<Unit>& by = {}) {
    return {stitch(301), by.given(by_edition<Unit>("1/2"_in, "1.2"_cm)), fraction(1, 4),
            by_edition<Unit>(as<inch>(100_yd), 10000_cm)};
}

/// The steps in which cloth and ribbon are cut off for a buyer.
template <length_unit Unit>
constexpr sold_in<Unit> usual_steps() {
    if constexpr (metric_unit<Unit>)
        return ten_centimetres<Unit>;
    else
        return eighths_of_a_yard<Unit>;
}

/// A finished size that a project cannot be made at.
class unsuitable_size : public error {
public:
    using error::error;
};

template <length_unit Unit>
void require_at_least(const finished_size<Unit>& size, length<Unit> width, length<Unit> height, const char* for_what) {
    const bool narrow = size.width() < width;
    if (narrow || size.height() < height)
        throw unsuitable_size(std::string(for_what) + " needs a finished size of at least " +
                                  to_text(finished_size<Unit>(width, height)) + ": it was " + to_text(size),
                              {.kind = fault::too_small,
                               .what = narrow ? "the finished width" : "the finished height",
                               .given = amount_of(narrow ? size.width() : size.height()),
                               .least = amount_of(narrow ? width : height)});
}

/// Keeps a mistyped size from asking for more marks than a sheet can hold.
inline void require_at_most(fraction count, std::int64_t most, const char* what) {
    if (count > most)
        throw unsuitable_size(
            "more than " + std::to_string(most) + " " + what + ": is the size right?",
            {.kind = fault::too_large, .what = what, .given = amount_of(count), .most = amount_of(most)});
}

} // namespace allotment

#endif
