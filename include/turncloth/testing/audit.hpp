// Auditing formulas that somebody wrote on doubles: over a range of inputs, do they give what the library gives?
//
//   agrees(theirs, ours, within, side)            is a double the length, or the count, to within so much?
//   audit(over, within, theirs, ours, side)       every case of a range; an exception ends one case, not the audit
//   sizes<U>{from, to, step}  whole_numbers{from, to}    the ranges, both ends included
//   combined(range, range, ...)                   every input of the one with every input of the other
//   agreement                                     either_way, or never_less or never_more than ours
//   finding                                       parted(), first(), worst(), cases(), not_compared(), to_text
//
//   auto f = audit(sizes<inch>{6_in, 60_in, "1/8"_in}, "1/64"_in, workbook_cut_width,
//                  [](length<inch> w) { return panel(finished_size(w, 9_in), hems).width_working(); });
//   CHECK_MESSAGE(f.agrees(), to_text(f));   // "1 of 433 cases parts: at 6 in they say 7.25, but 7 1/2 in = 6 in finished + ..."
//
// Cloth that is rounded down and cloth that is rounded up are both within 1/8 in, and one of them is short: ask for
// agreement::never_less. Not a part of turncloth.hpp: it is for those who test.
#ifndef TURNCLOTH_TESTING_AUDIT_HPP
#define TURNCLOTH_TESTING_AUDIT_HPP

#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/working.hpp>

#include <concepts>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <exception>
#include <optional>
#include <string>
#include <tuple>
#include <type_traits>
#include <utility>

namespace turncloth {

/// To which side of ours theirs may lie.
enum class agreement { either_way, never_less, never_more };

namespace detail {

inline constexpr double most_audited = 1e9; // far above any cloth, and its 4096ths of a 64th fit 64 bits

constexpr bool lies_within(fraction off, fraction within, agreement side) {
    const fraction below = side == agreement::never_less ? 0 : -within;
    const fraction above = side == agreement::never_more ? 0 : within;
    return off >= below && off <= above;
}

} // namespace detail

/// A double against an exact length, `within` to the side or sides that `side` allows. The double is taken to a 4096th of
/// `within` first, exactly, so a true distance up to a 8192th of `within` over the border may still pass. False for what
/// is not finite or out of range. Throws range_error for `within` not above zero.
template <length_unit Unit>
constexpr bool agrees(double theirs, length<Unit> ours, length<Unit> within, agreement side = agreement::either_way) {
    if (!detail::is_within(theirs, detail::most_audited))
        return false;
    return detail::lies_within(approximate(theirs, within.value() / 4096).value - ours.value(), within.value(), side);
}

/// A double against a count. It must be whole, to a 4096th; `within` may be nothing.
constexpr bool agrees(double theirs, std::int64_t ours, std::int64_t within, agreement side = agreement::either_way) {
    if (!detail::is_within(theirs, detail::most_audited))
        return false;
    const fraction said = approximate(theirs, {1, 4096}).value;
    return is_whole(said) && detail::lies_within(said - ours, within, side);
}

/// Every size from `from` to `to`, `step` apart.
template <length_unit Unit>
struct sizes {
    length<Unit> from, to, step;
};

/// Every whole number from `from` to `to`.
struct whole_numbers {
    std::int64_t from, to;
};

/// Of each range, every input with every input of the others.
template <class... Ranges>
struct combined_ranges {
    std::tuple<Ranges...> ranges;
};
template <class... Ranges>
constexpr combined_ranges<Ranges...> combined(const Ranges&... ranges) {
    return {{ranges...}};
}

/// One case, as both sides have it: `ours` is a figure or a count.
template <class Ours, class... Inputs>
struct audited_case {
    std::tuple<Inputs...> inputs;
    double theirs;
    Ours ours;

    template <std::size_t Which = 0>
    const auto& at() const {
        return std::get<Which>(inputs);
    }
};

/// A case that was not compared, as one of the two refused it, and what was said.
template <class... Inputs>
struct refused_case {
    std::tuple<Inputs...> inputs;
    std::string why;
};

/// What an audit found.
template <class Ours, class... Inputs>
class finding {
public:
    using one_case = audited_case<Ours, Inputs...>;

    std::int64_t cases() const { return cases_; }
    /// How many of them part.
    std::int64_t parted() const { return parted_; }
    /// How many of them had no two results.
    std::int64_t not_compared() const { return not_compared_; }
    /// Whether every case was compared, and none parts.
    bool agrees() const { return parted_ == 0 && not_compared_ == 0; }
    /// In the order of the inputs; none where none parts.
    const std::optional<one_case>& first() const { return first_; }
    /// Farthest apart; the first of several.
    const std::optional<one_case>& worst() const { return worst_; }
    const std::optional<refused_case<Inputs...>>& first_refused() const { return first_refused_; }

    void add_agreed() { ++cases_; }
    void add_parted(const one_case& c, double off) {
        ++cases_;
        if (parted_++ == 0)
            first_ = c;
        if (!worst_ || off > farthest_) {
            worst_ = c;
            farthest_ = off;
        }
    }
    void add_refused(const std::tuple<Inputs...>& inputs, std::string why) {
        ++cases_;
        if (not_compared_++ == 0)
            first_refused_ = refused_case<Inputs...>{inputs, std::move(why)};
    }

private:
    std::int64_t cases_ = 0, parted_ = 0, not_compared_ = 0;
    std::optional<one_case> first_, worst_;
    std::optional<refused_case<Inputs...>> first_refused_;
    double farthest_ = 0;
};

namespace detail {

template <length_unit Unit>
figure<Unit> as_audited(const figure<Unit>& f) {
    return f;
}
template <length_unit Unit>
figure<Unit> as_audited(const boost::units::quantity<Unit, fraction>& l) {
    return figure<Unit>().plus(l, "");
}
template <std::integral Count>
std::int64_t as_audited(Count n) {
    return n;
}

template <length_unit Unit>
length<Unit> compared(const figure<Unit>& f) {
    return f.value();
}
inline std::int64_t compared(std::int64_t n) { return n; }

template <length_unit Unit>
double input_of(const boost::units::quantity<Unit, fraction>& l) {
    return to_double(l.value());
}
inline double input_of(std::int64_t n) { return static_cast<double>(n); }

/// Beyond all others where theirs is no number that could be compared.
template <class Ours>
double distance_off(double theirs, const Ours& ours) {
    if (!is_within(theirs, most_audited))
        return most_audited * 4;
    const double off = theirs - input_of(compared(ours));
    return off < 0 ? -off : off;
}

template <length_unit Unit, class Visit>
void visit_range(const sizes<Unit>& over, Visit visit) {
    require_more_than_zero<range_error>(over.step, "the step of a range of sizes");
    require_at_least<range_error>(over.to, over.from, "the end of a range of sizes");
    for (length<Unit> at = over.from; at <= over.to; at += over.step)
        visit(at);
}
template <class Visit>
void visit_range(const whole_numbers& over, Visit visit) {
    require_at_least<range_error>(over.to, over.from, "the end of a range of counts");
    for (std::int64_t at = over.from; at <= over.to; ++at)
        visit(at);
}

template <class... Ranges, class Visit, class... Chosen>
void visit_all(const std::tuple<Ranges...>& ranges, const Visit& visit, const Chosen&... chosen) {
    if constexpr (sizeof...(Chosen) == sizeof...(Ranges))
        visit(chosen...);
    else
        visit_range(std::get<sizeof...(Chosen)>(ranges),
                    [&](const auto& next) { visit_all(ranges, visit, chosen..., next); });
}

template <length_unit Unit>
length<Unit> first_of_range(const sizes<Unit>& over) {
    return over.from;
}
inline std::int64_t first_of_range(const whole_numbers& over) { return over.from; }

/// What either of them throws ends a case; without exceptions, the program's own handler has it.
template <class Work, class Refused>
void try_case(Work work, [[maybe_unused]] Refused refused) {
#ifdef BOOST_NO_EXCEPTIONS
    work();
#else
    try {
        work();
    } catch (const std::exception& why) {
        refused(std::string(why.what()));
    }
#endif
}

template <class Value>
std::string audited_text(const Value& x) {
    if constexpr (std::is_integral_v<Value>)
        return std::to_string(x);
    else
        return to_text(x);
}

template <class... Inputs>
std::string inputs_text(const std::tuple<Inputs...>& inputs) {
    std::string all = "at ";
    const auto add = [&](const auto& x) { all.append(all.size() == 3 ? "" : " and ").append(audited_text(x)); };
    std::apply([&](const auto&... x) { (add(x), ...); }, inputs);
    return all;
}

template <class Case>
std::string parting_text(const Case& c) {
    char theirs[40];
    std::snprintf(theirs, sizeof theirs, "%.9g", c.theirs);
    return inputs_text(c.inputs) + " they say " + theirs + ", but " + audited_text(c.ours);
}

} // namespace detail

/// `theirs` takes a double for each input, a length in its unit or a count, and gives one; `ours` takes the lengths and
/// counts themselves and gives a length, a figure with its working, or a count. `within` is a length in the unit of ours, or
/// a count. Both are asked once for each case, which are as many as the product of the ranges; only the first and the worst
/// that part are kept. Throws range_error for a step not above zero, a range that ends before it begins, or `within` not above zero
/// beside lengths.
template <class... Ranges, class Within, class Theirs, class Ours>
auto audit(const combined_ranges<Ranges...>& over, const Within& within, Theirs theirs, Ours ours,
           agreement side = agreement::either_way) {
    using result = decltype(detail::as_audited(ours(detail::first_of_range(std::declval<Ranges>())...)));
    finding<result, decltype(detail::first_of_range(std::declval<Ranges>()))...> found;
    if constexpr (!std::is_integral_v<Within>)
        require_more_than_zero<range_error>(within, "what a formula may be off by");
    detail::visit_all(over.ranges, [&](const auto&... at) {
        detail::try_case(
            [&] {
                const double said = theirs(detail::input_of(at)...);
                const result right = detail::as_audited(ours(at...));
                if (agrees(said, detail::compared(right), within, side))
                    found.add_agreed();
                else
                    found.add_parted({{at...}, said, right}, detail::distance_off(said, right));
            },
            [&](std::string why) { found.add_refused({at...}, std::move(why)); });
    });
    return found;
}

/// The same of a single range.
template <class Range, class Within, class Theirs, class Ours>
auto audit(const Range& over, const Within& within, Theirs theirs, Ours ours, agreement side = agreement::either_way) {
    return audit(combined(over), within, std::move(theirs), std::move(ours), side);
}

/// How many part, the first and, where it is another, the worst; and what could not be compared.
template <class Ours, class... Inputs>
std::string to_text(const finding<Ours, Inputs...>& f) {
    const std::string of_all = " of " + std::to_string(f.cases()) + " cases";
    std::string text = f.agrees() ? "they agree, in " + std::to_string(f.cases()) + " cases" : "";
    if (f.first()) {
        text = std::to_string(f.parted()) + of_all + (f.parted() == 1 ? " parts: " : " part: ") +
               detail::parting_text(*f.first());
        if (f.worst()->inputs != f.first()->inputs)
            text += "; farthest " + detail::parting_text(*f.worst());
    }
    if (f.first_refused())
        text += (text.empty() ? "" : "; ") + std::to_string(f.not_compared()) + of_all + " not compared, the first " +
                detail::inputs_text(f.first_refused()->inputs) + ": " + f.first_refused()->why;
    return text;
}

} // namespace turncloth

#endif
