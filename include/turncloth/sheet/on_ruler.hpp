// A sheet for one ruler: of the finished size as that ruler shows it, and worked out on it, so that what is printed adds up.
//
//   sheet_on_ruler(asked, graduation, design)     design(size, ruled<U>) gives the project; a graduation of zero: exact
//
//   const sheet<inch> s = sheet_on_ruler(size, "1/16"_in, [](const auto& asked, const ruled<inch>& by) {
//       return tool_roll(by.given(asked), by);        // making/ruled.hpp
//   });
//
// Proved of it, or refused with ruler_error: every length of its pieces and steps is a whole number of graduations; any two
// lines of a piece that lie apart lie apart on the ruler and in the same order, and those that are one are one. Said
// as warnings: a number of things that the rounded size changes, an allowance that the ruler changes by a third or more.
#ifndef TURNCLOTH_SHEET_ON_RULER_HPP
#define TURNCLOTH_SHEET_ON_RULER_HPP

#include <turncloth/making/ruled.hpp>
#include <turncloth/sheet/detail/on_graduations.hpp>
#include <turncloth/sheet/detail/ruler_lines.hpp>
#include <turncloth/sheet/making.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// Usual rulers, from coarse to fine.
template <length_unit Unit>
std::vector<length<Unit>> usual_graduations() {
    std::vector<length<Unit>> all;
    if constexpr (metric_unit<Unit>)
        for (const fraction part : {fraction(1), fraction(1, 2), fraction(1, 4), fraction(1, 10), fraction(1, 20)})
            all.push_back(as<Unit>(length_of<centimetre>(part)));
    else
        for (int parts = 1; parts <= 64; parts *= 2)
            all.push_back(as<Unit>(length_of<inch>(fraction(1, parts))));
    return all;
}

/// Whether all lines are told apart; by exceptions too, as the design may refuse the ruler itself.
template <length_unit Unit, class Design>
bool tells_apart(const finished_size<Unit>& asked, length<Unit> graduation, const Design& design) {
#ifdef BOOST_NO_EXCEPTIONS
    const bool tried = false; // the program's own handler would have the refusal
    return tried;
#else
    try {
        const project<Unit> made = design(asked, ruled<Unit>(graduation));
        const auto shown = ruler_lines(made), exact = ruler_lines(design(made.finished(), ruled<Unit>()));
        return exact.size() == shown.size() && !confused(exact, shown);
    } catch (const error&) {
        return false;
    }
#endif
}

template <length_unit Unit, class Design>
std::optional<length<Unit>> a_ruler_that_does(const finished_size<Unit>& asked, length<Unit> graduation,
                                              const Design& design) {
    for (const length<Unit>& finer : usual_graduations<Unit>())
        if (finer < graduation && tells_apart(asked, finer, design))
            return finer;
    return {};
}

/// Throws ruler_error; `finer` is one that does, where there is one.
template <length_unit Unit>
[[noreturn]] void refuse_ruler(const std::vector<placed_line>& exact, const std::vector<placed_line>& shown,
                               length<Unit> graduation, const std::optional<length<Unit>>& finer) {
    const std::string use = finer ? ": use " + to_text(*finer) + " or finer" : std::string();
    refusal facts{.kind = fault::too_large, .what = "the graduation of a ruler", .given = amount_of(graduation)};
    if (finer)
        facts.most = amount_of(*finer);
    const auto found = exact.size() == shown.size() ? confused(exact, shown) : std::nullopt;
    if (!found)
        refuse<ruler_error>("a ruler of " + to_text(graduation) + " changes how many lines there are, " +
                                std::to_string(exact.size()) + " exactly and " + std::to_string(shown.size()) +
                                " on it" + use,
                            facts);
    const auto at = [](const placed_line& l) { return length_of<Unit>(l.at); };
    const auto line = [&](std::size_t i) {
        return ruler_line{exact[i].what + " on " + named(exact[i].on), amount_of(at(exact[i])),
                          amount_of(at(shown[i]))};
    };
    const auto [a, b] = *found;
    facts.where = exact[a].on;
    const char* edge = exact[a].level ? "top" : "left";
    refuse<ruler_error>(sentence({"a ruler of ", graduation, " does not tell apart on ", named(exact[a].on), " ",
                                  in_quotes(exact[a].what), ", ", at(exact[a]), " from its cut ", edge, " edge, and ",
                                  in_quotes(exact[b].what), ", ", at(exact[b]), ", which it shows at ", at(shown[a]),
                                  " and ", at(shown[b])}) +
                            use,
                        std::move(facts), std::array{line(a), line(b)});
}

} // namespace detail

/// Throws sheet_error as sheet_of, ruler_error as above, and whatever the design throws. Costs as sheet_of, with two or three
/// designs more, whose lines are sorted; a ruler that is refused costs two on each finer usual one, of which there are seven.
template <detail::compiled_unit Unit, class Design>
sheet<Unit> sheet_on_ruler(const finished_size<Unit>& asked, length<Unit> graduation, const Design& design) {
    if (graduation.value() == 0)
        return sheet_of(design(asked, ruled<Unit>()));
    const project<Unit> made = design(asked, ruled<Unit>(graduation));
    const project<Unit> exactly = design(made.finished(), ruled<Unit>());
    const auto exact = detail::ruler_lines(exactly), shown = detail::ruler_lines(made);
    if (exact.size() != shown.size() || detail::confused(exact, shown))
        detail::refuse_ruler(exact, shown, graduation, detail::a_ruler_that_does(asked, graduation, design));
    sheet<Unit> s = sheet_of(made);
    detail::require_graduations(s, graduation);
    s.graduation = graduation;
    for (sheet_piece<Unit>& p : s.pieces)
        p.graduation = graduation;
    detail::warn_of_allowances(s, exactly, made);
    if (asked == made.finished())
        return s;
    s.asked = asked;
    detail::warn_of_numbers(s, design(asked, ruled<Unit>()), made);
    return s;
}

} // namespace turncloth

#endif
