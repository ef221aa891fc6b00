// A piece that is wider than its cloth, made up of parts of the cloth's width sewn together: whole widths in the middle, and
// parts at both sides.
//
//   width_parts<U>             middle, middles, left, right, join; count(), joins(), in_order(), working()
//   parts_of_widths(width, cloth)    how a width is made up;  matched_widths(width, cloth, across) of cloth with a pattern
//   piece_in_parts<U>          name, count, parts: such a piece of a sheet
//   cloth_in_widths<U>         usable, join, graduation, beside: of the cloth, and of what lies at the piece's sides
//
//   const auto back = parts_of_widths(102_in, cloth_in_widths<inch>{.usable = 44_in, .join = "1/2"_in});
//   // 102 in = 30 in left + 44 in middle + 30 in right - 2 x 1 in joins
//
// Common practice: no join runs down the middle of a back or a cover, where it would be seen; and none lies in a turned edge,
// where it would be bulky. So where side parts would be lost in the edges, all parts are alike.
#ifndef TURNCLOTH_SHEET_WIDTHS_JOINED_HPP
#define TURNCLOTH_SHEET_WIDTHS_JOINED_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/curtain.hpp>
#include <turncloth/notions/joining.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct cloth_in_widths {
    length<Unit> usable;       ///< of the cloth
    length<Unit> join;         ///< the allowance at each edge that is joined; none where they are laid edge to edge
    length<Unit> graduation{}; ///< of the ruler that parts are cut by; zero: they are exact
    length<Unit> beside{};     ///< what the edges at the sides take of the side parts, from the cut edge
};

/// Widths to cut, from the left: `left`, so often `middle`, `right`. Of a piece that need not be joined `middle` is all.
template <length_unit Unit>
struct width_parts {
    length<Unit> middle{};
    std::int64_t middles = 1;
    length<Unit> left{}, right{};
    length<Unit> join{};    ///< the allowance at each edge that is joined
    bool matched = false;   ///< whole widths, on which a pattern goes on over each join
    length<Unit> trimmed{}; ///< that those make up more; it is cut off once they are joined, half of it at either side

    std::int64_t count() const { return middles + (left.value() > 0 ? 1 : 0) + (right.value() > 0 ? 1 : 0); }
    std::int64_t joins() const { return count() - 1; }
    std::vector<length<Unit>> in_order() const {
        std::vector<length<Unit>> all(static_cast<std::size_t>(middles), middle);
        if (left.value() > 0)
            all.insert(all.begin(), left);
        if (right.value() > 0)
            all.push_back(right);
        return all;
    }
    /// What they measure once they are joined.
    figure<Unit> working() const {
        figure<Unit> sum;
        if (left.value() > 0)
            sum.plus(left, "left");
        sum.plus_times(middles, {middle}, joins() == 0 ? label("cut") : matched ? label("widths") : label("middle"));
        if (right.value() > 0)
            sum.plus(right, "right");
        if (joins() > 0 && join.value() > 0)
            sum.plus_times(-fraction(joins()), {join * 2}, joins() == 1 ? label("join") : label("joins"));
        if (trimmed.value() > 0)
            sum.plus_times(-1, {trimmed}, "cut off");
        return sum;
    }

    friend bool operator==(const width_parts&, const width_parts&) = default;
};

namespace detail {

/// As whole graduations, or as it is.
template <length_unit Unit>
length<Unit> graduated_down(length<Unit> l, length<Unit> graduation) {
    return graduation.value() == 0 ? l : down_to(l, graduation);
}

} // namespace detail

/// A piece has at most so many parts.
inline constexpr std::int64_t most_width_parts = 1000;

/// As many whole widths in the middle as leave a part of at most a width for either side. Throws joining_error for lengths of
/// nothing, where a join takes all of a width, and for more parts than `most_width_parts`.
template <length_unit Unit>
width_parts<Unit> parts_of_widths(length<Unit> width, const cloth_in_widths<Unit>& cloth) {
    const length<Unit> usable = detail::graduated_down(cloth.usable, cloth.graduation), taken = cloth.join * 2;
    require_not_negative<joining_error>(cloth.join, "the allowance of a join");
    const std::int64_t widths = cloth_widths(width, {usable, taken}, joined::flat).count;
    require_at_most<joining_error>(widths, most_width_parts, "the number of widths to join");
    if (widths == 1)
        return {.middle = width, .join = cloth.join};
    width_parts<Unit> made{.middle = usable, .middles = std::max<std::int64_t>(widths - 2, 1), .join = cloth.join};
    const length<Unit> sides = width + taken * (made.middles + 1) - usable * made.middles;
    made.left = detail::graduated_down(sides / 2, cloth.graduation);
    made.right = sides - made.left;
    if (made.left > cloth.beside + cloth.join && made.right <= usable)
        return made;
    // All alike: of two widths three parts, so that none of the joins is in the middle.
    const std::int64_t parts = std::max<std::int64_t>(widths, 3);
    const length<Unit> all = width + taken * (parts - 1);
    made.middles = parts - 2;
    made.left = made.middle = detail::graduated_down(all / parts, cloth.graduation);
    made.right = all - made.left - made.middle * made.middles;
    return made;
}

/// Of cloth with a pattern, whose repeat across it is `across`; nothing where it repeats along it alone. Throws as widths_of a
/// curtain (notions/curtain.hpp), and as parts_of_widths.
template <length_unit Unit>
width_parts<Unit> matched_widths(length<Unit> width, const cloth_in_widths<Unit>& cloth, length<Unit> across) {
    const length<Unit> usable = detail::graduated_down(cloth.usable, cloth.graduation), taken = cloth.join * 2;
    const joined_widths<Unit> whole = widths_of(
        curtain_drops<Unit>{.width = width, .drop = {}, .usable = usable, .join = cloth.join, .across = across});
    require_at_most<joining_error>(whole.count, most_width_parts, "the number of widths to join");
    const length<Unit> all = whole.made_up.value();
    return {.middle = (all + taken * whole.joins) / whole.count,
            .middles = whole.count,
            .join = cloth.join,
            .matched = true,
            .trimmed = all - width};
}

/// A piece of a sheet that is cut as parts and sewn together.
template <length_unit Unit>
struct piece_in_parts {
    std::size_t on_sheet = 0; ///< its place among those of the sheet
    std::string name;
    std::int64_t count = 1; ///< so many are cut alike
    width_parts<Unit> parts;
};

namespace detail {

/// Common practice: wadding is not seamed, which would leave a ridge, but laid edge to edge.
template <length_unit Unit>
length<Unit> usual_join(const std::string& material) {
    if (material.find("wadding") != std::string::npos)
        return {};
    return metric_unit<Unit> ? as<Unit>(length_of<centimetre>({3, 2})) : as<Unit>(length_of<inch>({1, 2}));
}

template <length_unit Unit>
std::string joining_step(const piece_in_parts<Unit>& j) {
    const std::int64_t n = j.parts.count();
    if (j.parts.matched && j.parts.trimmed.value() == 0)
        return sentence(
            {"Make up each ", j.name, " of ", n,
             " widths, before you mark it: lay each two right sides together so that the pattern goes on from one "
             "to the next, sew them along their long edges by the allowance listed, and press or crease the "
             "allowances apart. The figures for thread leave these seams out."});
    if (j.parts.matched)
        return sentence(
            {"Make up each ", j.name, " of ", n,
             " widths, before you mark it: lay each two right sides together so that the pattern goes on from one "
             "to the next, sew them along their long edges by the allowance listed, and press or crease the "
             "allowances apart. Then cut off either side what is listed. The figures for thread leave these seams "
             "out."});
    if (j.parts.join.value() == 0)
        return sentence(
            {"Make up each ", j.name, " of ", n,
             " parts, from the left as they are numbered: lay them edge to edge, none over another, and "
             "catch their edges together by hand or with a wide zigzag. The figures for thread leave this out."});
    return sentence(
        {"Make up each ", j.name, " of ", n,
         " parts, from the left as they are numbered, before you mark it: sew them right sides together along "
         "their long edges, each by the allowance listed, and press the seams open. The figures for thread "
         "leave these seams out."});
}

} // namespace detail

} // namespace turncloth

#endif
