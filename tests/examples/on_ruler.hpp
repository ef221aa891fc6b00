// A project's sheets on a ruler, checked from what is printed and from the exact sheet of the rounded size.
//
//   ruler_tally sheets_on_ruler<Unit>(random, cases, graduation)     each case a random size of each project
//
// Where the ruler is fine enough for what the designer gives, every size must pass; a coarse one may be refused, with data.
#ifndef TURNCLOTH_TESTS_EXAMPLES_ON_RULER_HPP
#define TURNCLOTH_TESTS_EXAMPLES_ON_RULER_HPP

#include "../../examples/sheets/projects.hpp"
#include "../at_random.hpp"

#include <doctest/doctest.h>

#include <cctype>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace on_ruler_checks {

using namespace turncloth;
using allotment::which_project;

struct ruler_tally {
    int passed = 0, refused = 0, too_small = 0;
};

/// What a person reads from left to right: "3 1/2", "27.4", "- 2 x (3/8 + 1) in hem".
class printed_working {
public:
    explicit printed_working(std::string_view text) : text_(text) {}

    fraction sum() {
        fraction all = 0;
        int sign = 1;
        for (skip_to_number(sign); at_ < text_.size(); skip_to_number(sign))
            all += term() * sign;
        return all;
    }

private:
    bool is_next(std::string_view s) const { return text_.substr(at_).starts_with(s); }
    bool is_digit() const { return at_ < text_.size() && std::isdigit(static_cast<unsigned char>(text_[at_])) != 0; }

    /// Words lie between terms; a sign stands right before each but the first.
    void skip_to_number(int& sign) {
        while (at_ < text_.size() && !is_digit() && text_[at_] != '(') {
            if (is_next(" + ") || is_next(" - "))
                sign = text_[at_ + 1] == '+' ? 1 : -1;
            ++at_;
        }
    }
    fraction term() {
        if (text_[at_] == '(')
            return bracket();
        const fraction first = number();
        if (!is_next(" x "))
            return first;
        at_ += 3;
        return first * (text_[at_] == '(' ? bracket() : number());
    }
    fraction bracket() {
        ++at_;
        fraction all = number();
        for (; is_next(" + "); all += number())
            at_ += 3;
        REQUIRE(text_[at_] == ')');
        ++at_;
        return all;
    }
    std::int64_t digits() {
        std::int64_t n = 0;
        for (; is_digit(); ++at_)
            n = n * 10 + (text_[at_] - '0');
        return n;
    }
    fraction number() {
        fraction n = digits();
        if (at_ < text_.size() && text_[at_] == '.')
            for (fraction tenth(1, 10); ++at_, is_digit(); tenth = tenth / 10)
                n += tenth * (text_[at_] - '0');
        if (is_next("/"))
            return ++at_, n / digits();
        if (is_next(" ") && at_ + 1 < text_.size() && std::isdigit(static_cast<unsigned char>(text_[at_ + 1])) != 0) {
            ++at_;
            const std::int64_t above = digits();
            REQUIRE(text_[at_] == '/');
            ++at_;
            n += fraction(above, digits());
        }
        return n;
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

/// From one heading to the next that begins with `to`.
inline std::string section(const std::string& text, const std::string& from, const std::string& to) {
    const std::size_t begins = text.find("\n" + from), ends = text.find("\n" + to, begins);
    REQUIRE(begins != std::string::npos);
    return text.substr(begins, ends - begins);
}

/// The right side of a working adds up to its left side.
inline void check_printed_sums(const std::string& text) {
    for (std::size_t at = 0, end = 0; at < text.size(); at = end + 1) {
        end = text.find('\n', at);
        end = end == std::string::npos ? text.size() : end;
        const std::string line = text.substr(at, end - at);
        const std::size_t equals = line.find(" = ");
        if (equals == std::string::npos)
            continue;
        CAPTURE(line);
        std::string left = line.substr(0, equals);
        left = left.substr(left.rfind(": ") == std::string::npos ? 0 : left.rfind(": ") + 2);
        CHECK(printed_working(left).sum() == printed_working(line.substr(equals + 3)).sum());
    }
}

template <length_unit Unit>
ruler ruler_of(length<Unit> graduation) {
    if constexpr (metric_unit<Unit>)
        return {.shows = units_shown::centimetres, .centimetres = graduation};
    else
        return {.shows = units_shown::inches, .inches = graduation};
}

/// What a fine ruler reads off the same sheet is word for word what its own ruler reads.
template <length_unit Unit>
void check_printed(const sheet<Unit>& s, length<Unit> graduation) {
    const std::string text = to_text(s, ruler_of(graduation)), fine = to_text(s, ruler_of(graduation / 3600));
    for (const auto& [from, to] : {std::pair("Cut", "For the"), std::pair("In this order", "Safety")})
        CHECK(section(text, from, to) == section(fine, from, to));
    check_printed_sums(section(text, "Cut", "In this order"));
}

template <length_unit Unit>
length<Unit> from_left_or_top(const sheet_piece<Unit>& p, const sheet_line<Unit>& l) {
    const length<Unit> at = l.from_cut_edge.value();
    if (l.parallel_to == edge::left || l.parallel_to == edge::top)
        return at;
    return (is_level(l.parallel_to) ? p.cut.height() : p.cut.width()) - at;
}

/// All lines of a piece against all others that run the same way.
template <length_unit Unit>
void check_lines(const sheet_piece<Unit>& exact, const sheet_piece<Unit>& shown) {
    REQUIRE(exact.lines.size() == shown.lines.size());
    for (std::size_t i = 0; i < exact.lines.size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            if (is_level(exact.lines[i].parallel_to) != is_level(exact.lines[k].parallel_to))
                continue;
            const auto a = from_left_or_top(exact, exact.lines[i]), b = from_left_or_top(exact, exact.lines[k]);
            const auto c = from_left_or_top(shown, shown.lines[i]), d = from_left_or_top(shown, shown.lines[k]);
            CHECK((a < b) == (c < d));
            CHECK((a == b) == (c == d));
        }
}

template <length_unit Unit>
length<Unit> long_(const making<Unit>& design, const chalk_line<Unit>& l) {
    const part<Unit>& p = design.parts()[l.on.index];
    return l.ends.value_or(l.is_level() ? p.width : p.height) - l.begins.value_or(length<Unit>());
}

template <length_unit Unit>
void check_seams(const making<Unit>& design, length<Unit> graduation) {
    for (const seam_of<Unit>& s : design.seams())
        for (std::size_t k = 0; k < s.one.size(); ++k)
            CHECK(to_text(long_(design, s.one[k]), ruler_of(graduation)) ==
                  to_text(long_(design, s.other[k]), ruler_of(graduation)));
}

template <length_unit Unit>
project<Unit> design_of(which_project which, const finished_size<Unit>& size, const ruled<Unit>& by) {
    switch (which) {
    case which_project::organiser:
        return allotment::organiser::design(size, by);
    case which_project::tool_roll:
        return allotment::tool_roll::design(size, by);
    case which_project::kneeling_pad:
        break;
    }
    return allotment::kneeling_pad::design(size, allotment::usual_kneeling_pad<Unit>.thickness, {}, by);
}

/// `given_as_it_is`: the ruler shows what the designer gives, so that a line can be off by its own rounding alone.
template <length_unit Unit>
void check(which_project which, const finished_size<Unit>& asked, length<Unit> graduation, const sheet<Unit>& s,
           bool given_as_it_is) {
    check_printed(s, graduation);
    // The shorter side of the pad is parted in two, so it is rounded to two graduations.
    const length<Unit> half = which == which_project::kneeling_pad ? graduation : graduation / 2;
    CHECK(abs(s.finished.width() - asked.width()) <= half);
    CHECK(abs(s.finished.height() - asked.height()) <= half);
    CHECK(s.asked.has_value() == (s.finished != asked));
    check_seams(*design_of(which, asked, ruled<Unit>(graduation)).design(), graduation);
    const sheet<Unit> exact = sheet_of(design_of(which, s.finished, ruled<Unit>()));
    REQUIRE(exact.pieces.size() == s.pieces.size());
    for (std::size_t i = 0; i < s.pieces.size(); ++i) {
        check_lines(exact.pieces[i], s.pieces[i]);
        for (std::size_t k = 0; given_as_it_is && k < s.pieces[i].lines.size(); ++k)
            CHECK(abs(exact.pieces[i].lines[k].from_cut_edge.value() - s.pieces[i].lines[k].from_cut_edge.value()) <=
                  graduation / 2);
    }
}

template <length_unit Unit>
void one_sheet(ruler_tally& tally, which_project which, const finished_size<Unit>& asked, length<Unit> graduation,
               bool must_pass) {
    CAPTURE(to_text(asked));
    CAPTURE(to_text(graduation));
    try {
        const sheet<Unit> s = allotment::sheet_for<Unit>(which, asked, "", {}, graduation);
        check(which, asked, graduation, s, must_pass);
        ++tally.passed;
    } catch (const ruler_error& refused) {
        CAPTURE(std::string(refused.what()));
        CHECK_FALSE(must_pass);
        // None does where the exact size cannot be made, and is rounded up to one that can.
        if (!refused.facts().most)
            CHECK_THROWS_AS(allotment::sheet_for<Unit>(which, asked, "", {}), error);
        ++tally.refused;
    } catch (const error& refused) {
        CAPTURE(std::string(refused.what()));
        // What cannot be made at the exact size either.
        CHECK_THROWS_AS(allotment::sheet_for<Unit>(which, asked, "", {}), error);
        ++tally.too_small;
    }
}

/// Sizes of any denominator that people come to, by thirds, sevenths, ninths and the like.
template <length_unit Unit>
ruler_tally sheets_on_ruler(at_random::sampler& random, int cases, length<Unit> graduation, bool must_pass) {
    ruler_tally tally;
    const auto side = [&](std::int64_t least, std::int64_t most) {
        const std::int64_t d = random.between(1, 16);
        const fraction inches(random.between(least * d, most * d), d);
        return metric_unit<Unit> ? length_of<Unit>(inches * fraction(5, 2)) : length_of<Unit>(inches);
    };
    while (random.another_of(cases))
        for (const which_project which :
             {which_project::organiser, which_project::tool_roll, which_project::kneeling_pad}) {
            const length<Unit> width = side(8, 56), height = side(11, 40);
            one_sheet(tally, which, finished_size<Unit>(width, height), graduation, must_pass);
        }
    return tally;
}

} // namespace on_ruler_checks

#endif
