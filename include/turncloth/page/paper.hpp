// What a page is printed on, and how a drawing is wanted.
//
//   paper::a4  paper::letter         ISO 216: 210 x 297 mm; ANSI/ASME Y14.1 size A: 8 1/2 x 11 in
//   paper::custom(12_in, 18_in)      sides of 120 mm to 2 m; which of them is upright is chosen by what is drawn
//   paper::a4.fitted()               no higher than its content needs, and at most A4
//
//   drawing_options{project, on, for_screen, in_document, letters, words}      of every drawing
//
//   page_of(outer, {}, {.project = "Tool roll", .on = paper::letter});
#ifndef TURNCLOTH_PAGE_PAPER_HPP
#define TURNCLOTH_PAGE_PAPER_HPP

#include <turncloth/measure/language.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/page/page.hpp>

#include <algorithm>
#include <string>
#include <string_view>

namespace turncloth {

class paper {
public:
    static const paper a4, letter;

    /// Throws range_error for a side of less than 120 mm or more than 2 m.
    template <length_unit Unit, length_unit Other>
    static constexpr paper custom(length<Unit> one, length<Other> other) {
        require_side(as<millimetre>(one));
        require_side(as<millimetre>(other));
        const double a = to_double(as<millimetre>(one).value()), b = to_double(as<millimetre>(other).value());
        return {"custom", std::min(a, b), std::max(a, b), false};
    }
    constexpr paper fitted() const { return {name_, narrow_, wide_, true}; }

    constexpr std::string_view name() const { return name_; }
    /// In millimetres; the wide side is the longer.
    constexpr double narrow() const { return narrow_; }
    constexpr double wide() const { return wide_; }
    constexpr bool is_fitted() const { return fitted_; }

    friend constexpr bool operator==(const paper& a, const paper& b) {
        return a.narrow_ == b.narrow_ && a.wide_ == b.wide_ && a.fitted_ == b.fitted_;
    }

private:
    constexpr paper(std::string_view name, double narrow, double wide, bool fitted)
        : name_(name), narrow_(narrow), wide_(wide), fitted_(fitted) {}
    static constexpr void require_side(const length<millimetre>& side) {
        require_between<range_error>(length_of<millimetre>(120), side, length_of<millimetre>(2000), "a side of paper");
    }

    std::string_view name_;
    double narrow_, wide_;
    bool fitted_;
};

inline constexpr paper paper::a4 = {"A4", 210, 297, false}, paper::letter = {"Letter", 8.5 * 25.4, 11 * 25.4, false};

/// A drawing for a screen is no higher than it need be and its lettering larger; as whoever shows it may shrink it, it
/// states no scale and has no scale bars. One that stands in a document has that around it to say its name, its figures
/// and its lists: only the picture is drawn, its labels and the kinds of its lines.
struct drawing_options {
    std::string project = {};
    paper on = paper::a4;
    bool for_screen = false, in_document = false;
    const text_measure* letters = nullptr; ///< how words are measured; an estimate where there is none
    const language* words = nullptr;       ///< what is said: English, where none is given or spoken
};

} // namespace turncloth

#endif
