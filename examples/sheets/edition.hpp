// The two editions of a project: in inches, and in centimetres with round figures of its own.
//
//   by_edition<U>(inches, centimetres)     the one that belongs to the unit of the project
//
//   const auto seam = by_edition<Unit>("1/2"_in, "1.5"_cm);   // never 1.27 cm
#ifndef TURNCLOTH_EXAMPLES_SHEETS_EDITION_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_EDITION_HPP

#include <turncloth.hpp>

#include <string>

namespace allotment {

using namespace turncloth;

template <length_unit Unit>
constexpr length<Unit> by_edition(length<inch> inches, length<centimetre> centimetres) {
    if constexpr (metric_unit<Unit>)
        return as<Unit>(centimetres);
    else
        return as<Unit>(inches);
}

/// A finished size that a project cannot be made at.
class unsuitable_size : public error {
public:
    using error::error;
};

template <length_unit Unit>
void require_at_least(const finished_size<Unit>& size, length<Unit> width, length<Unit> height, const char* for_what) {
    if (size.width() < width || size.height() < height)
        throw unsuitable_size(std::string(for_what) + " needs a finished size of at least " +
                              to_text(finished_size<Unit>(width, height)) + ": it was " + to_text(size));
}

/// Keeps a mistyped size from asking for more marks than a sheet can hold.
inline void require_at_most(fraction count, std::int64_t most, const char* what) {
    if (count > most)
        throw unsuitable_size("more than " + std::to_string(most) + " " + what + ": is the size right?");
}

} // namespace allotment

#endif
