// The library's own figures that expressions know by name, and the parts that each is given by name.
//
//   whole part (...)                                       the largest whole number not above it
//   half on the ruler (...)                                half of a length, at the nearest graduation
//   mark (span, parts, number)                             where a span's mark of that number is, of equal parts
//   narrowest part (span, parts)                           of the parts between these marks
//   turn of cloth (stack, cloth, step)                     what a fold takes up as it goes round a stack
//   girth of a roll (strip, thickness, step)               once round a strip rolled up tightly
//   fewest eyelets (along, rim, margin, apart)             that are at most so far apart, from centre to centre
//   bow of a pocket (film, backing, pockets, step)         how far it stands open in its middle
//   free length of a handle (drop, apart, over, step)      between its ends, so that it comes up so far
//   square for two triangles (finished, seam, step)        to cut, so that squares pieced of its triangles come out right
//   square for four triangles (finished, seam, step)
//   girth of a tube (across, step)                         once round what is stuffed so thick
//   volume of a tube (girth, along, step)                  in cubes of the unit, at the most
//   strip for a cord (cord, cloth, seam, step)             how wide a strip is cut that is folded round it
//   girth of a neck (round, thickness, packed, step)       once round a mouth gathered in the hand
//   buttonhole for a button (across, thickness, ease, step)    how long a flat button's hole is
#ifndef TURNCLOTH_DESIGN_DETAIL_FIGURES_HPP
#define TURNCLOTH_DESIGN_DETAIL_FIGURES_HPP

#include <turncloth/design/expression_value.hpp>
#include <turncloth/making/ruled.hpp>
#include <turncloth/marks/row.hpp>
#include <turncloth/notions/fastening.hpp>
#include <turncloth/notions/filling.hpp>
#include <turncloth/notions/gathered.hpp>
#include <turncloth/notions/hanging.hpp>
#include <turncloth/notions/piping.hpp>
#include <turncloth/notions/strap.hpp>
#include <turncloth/notions/tie.hpp>
#include <turncloth/notions/triangles.hpp>
#include <turncloth/panel/finish.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace turncloth::detail {

inline constexpr std::size_t most_parts_of_a_figure = 4;
inline constexpr std::int64_t most_parts_looked_at = 10'000;
using figure_parts = std::array<fraction, most_parts_of_a_figure>;

enum class figure_part : unsigned char { length, number };

struct named_part {
    std::string_view name{};
    figure_part is = figure_part::length;
};

/// Those that have names come first.
template <class Parts>
std::size_t count_named(const Parts& parts) {
    std::size_t n = 0;
    while (n < parts.size() && !parts[n].name.empty())
        ++n;
    return n;
}

/// Worked out in one unit of length; `gives` says what its number is.
struct named_figure {
    std::string_view name;
    std::array<named_part, most_parts_of_a_figure> parts;
    figure_part gives;
    fraction (*in_inches)(const figure_parts&, fraction graduation);
    fraction (*in_centimetres)(const figure_parts&, fraction graduation);

    std::size_t size() const { return count_named(parts); }
};

template <length_unit Unit>
ruled<Unit> ruler_of(fraction graduation) {
    return graduation == 0 ? ruled<Unit>() : ruled<Unit>(length_of<Unit>(graduation));
}

/// Throws range_error for a number of things that is not whole.
inline std::int64_t whole_number(fraction x, const char* what) {
    if (!is_whole(x))
        refuse<range_error>({what, " must be a whole number: it was ", x},
                            {.kind = fault::unsuitable, .what = what, .given = x});
    return numerator(x);
}

inline fraction whole_part(const figure_parts& p, fraction) { return floor(p[0]); }

template <length_unit Unit>
fraction half_on_ruler(const figure_parts& p, fraction graduation) {
    return ruler_of<Unit>(graduation).middle(length_of<Unit>(p[0])).value();
}
template <length_unit Unit>
fraction mark_of_span(const figure_parts& p, fraction graduation) {
    const auto marks = divided<finished_edge>(length_of<Unit>(p[0]), whole_number(p[1], "the number of parts"));
    const std::int64_t n = whole_number(p[2], "the number of a mark");
    require_between<range_error>(std::int64_t{1}, n, marks.size(), "the number of a mark");
    return ruler_of<Unit>(graduation).parts(marks)[n - 1].from_datum().value();
}
template <length_unit Unit>
fraction narrowest_of_parts(const figure_parts& p, fraction graduation) {
    const std::int64_t parts = whole_number(p[1], "the number of parts");
    require_at_most<range_error>(parts, most_parts_looked_at, "the number of parts");
    const auto marks = ruler_of<Unit>(graduation).parts(divided<finished_edge>(length_of<Unit>(p[0]), parts));
    fraction narrowest = p[0], from = 0;
    for (const auto& mark : marks) {
        narrowest = std::min(narrowest, mark.from_datum().value() - from);
        from = mark.from_datum().value();
    }
    return std::min(narrowest, p[0] - from);
}
template <length_unit Unit>
fraction turn_of_a_cloth(const figure_parts& p, fraction) {
    return turn_of_cloth(length_of<Unit>(p[0]), length_of<Unit>(p[1]), length_of<Unit>(p[2])).value();
}
template <length_unit Unit>
fraction girth_of_a_roll(const figure_parts& p, fraction) {
    return roll_girth(rolled<Unit>{length_of<Unit>(p[0]), length_of<Unit>(p[1]), {}}, length_of<Unit>(p[2]),
                      rounding::up)
        .value();
}
template <length_unit Unit>
fraction eyelets_needed(const figure_parts& p, fraction) {
    return fewest_eyelets<Unit>(
        length_of<Unit>(p[0]),
        {.rim = length_of<Unit>(p[1]), .margin = length_of<Unit>(p[2]), .most = length_of<Unit>(p[3])});
}
template <length_unit Unit>
fraction bow_of_pocket(const figure_parts& p, fraction) {
    const pocket_row<Unit> pockets(length_of<Unit>(p[1]), length_of<Unit>(p[0]),
                                   whole_number(p[2], "the number of pockets"));
    return pockets.bow(length_of<Unit>(p[3]), rounding::nearest).value();
}
template <length_unit Unit>
fraction free_length_of_handle(const figure_parts& p, fraction) {
    return free_of_handle<Unit>(length_of<Unit>(p[0]), {.apart = length_of<Unit>(p[1]), .over = length_of<Unit>(p[2])},
                                length_of<Unit>(p[3]), rounding::up)
        .value();
}
template <length_unit Unit, pieced_of Of>
fraction square_for_triangles(const figure_parts& p, fraction) {
    return cut_for_triangles<Unit>(length_of<Unit>(p[0]), {Of, length_of<Unit>(p[1])}, length_of<Unit>(p[2]))
        .value()
        .value();
}
template <length_unit Unit>
fraction girth_of_a_tube(const figure_parts& p, fraction) {
    return girth_of_tube(length_of<Unit>(p[0]), length_of<Unit>(p[1]), rounding::up).value();
}
template <length_unit Unit>
fraction volume_of_a_tube(const figure_parts& p, fraction) {
    return tube_holds(stuffed_tube<Unit>{length_of<Unit>(p[0]), length_of<Unit>(p[1])}, p[2], rounding::up);
}

template <length_unit Unit>
fraction buttonhole_for(const figure_parts& p, fraction) {
    const sewn_button<Unit> b{
        .across = length_of<Unit>(p[0]), .thick = length_of<Unit>(p[1]), .ball = false, .ease = length_of<Unit>(p[2])};
    return buttonhole_length(b, length_of<Unit>(p[3])).value().value();
}

template <length_unit Unit>
fraction strip_for_cord(const figure_parts& p, fraction) {
    const piped_cord<Unit> cord{
        .across = length_of<Unit>(p[0]), .seam = length_of<Unit>(p[2]), .cloth = length_of<Unit>(p[1])};
    return piping_width(cord, length_of<Unit>(p[3])).value().value();
}

template <length_unit Unit>
fraction girth_of_a_neck(const figure_parts& p, fraction) {
    return neck_girth(gathered_neck<Unit>{length_of<Unit>(p[0]), length_of<Unit>(p[1]), p[2]}, length_of<Unit>(p[3]),
                      rounding::up)
        .value();
}

inline constexpr figure_part a_length = figure_part::length, a_number = figure_part::number;

inline constexpr std::array<named_figure, 16> named_figures = {{
    {"whole part", {{{"of", a_number}}}, a_number, whole_part, whole_part},
    {"half on the ruler", {{{"of"}}}, a_length, half_on_ruler<inch>, half_on_ruler<centimetre>},
    {"mark",
     {{{"span"}, {"parts", a_number}, {"number", a_number}}},
     a_length,
     mark_of_span<inch>,
     mark_of_span<centimetre>},
    {"narrowest part",
     {{{"span"}, {"parts", a_number}}},
     a_length,
     narrowest_of_parts<inch>,
     narrowest_of_parts<centimetre>},
    {"turn of cloth", {{{"stack"}, {"cloth"}, {"step"}}}, a_length, turn_of_a_cloth<inch>, turn_of_a_cloth<centimetre>},
    {"girth of a roll",
     {{{"strip"}, {"thickness"}, {"step"}}},
     a_length,
     girth_of_a_roll<inch>,
     girth_of_a_roll<centimetre>},
    {"fewest eyelets",
     {{{"along"}, {"rim"}, {"margin"}, {"apart"}}},
     a_number,
     eyelets_needed<inch>,
     eyelets_needed<centimetre>},
    {"bow of a pocket",
     {{{"film"}, {"backing"}, {"pockets", a_number}, {"step"}}},
     a_length,
     bow_of_pocket<inch>,
     bow_of_pocket<centimetre>},
    {"free length of a handle",
     {{{"drop"}, {"apart"}, {"over"}, {"step"}}},
     a_length,
     free_length_of_handle<inch>,
     free_length_of_handle<centimetre>},
    {"square for two triangles",
     {{{"finished"}, {"seam"}, {"step"}}},
     a_length,
     square_for_triangles<inch, pieced_of::two>,
     square_for_triangles<centimetre, pieced_of::two>},
    {"square for four triangles",
     {{{"finished"}, {"seam"}, {"step"}}},
     a_length,
     square_for_triangles<inch, pieced_of::four>,
     square_for_triangles<centimetre, pieced_of::four>},
    {"girth of a tube", {{{"across"}, {"step"}}}, a_length, girth_of_a_tube<inch>, girth_of_a_tube<centimetre>},
    {"volume of a tube",
     {{{"girth"}, {"along"}, {"step", a_number}}},
     a_number,
     volume_of_a_tube<inch>,
     volume_of_a_tube<centimetre>},
    {"strip for a cord",
     {{{"cord"}, {"cloth"}, {"seam"}, {"step"}}},
     a_length,
     strip_for_cord<inch>,
     strip_for_cord<centimetre>},
    {"girth of a neck",
     {{{"round"}, {"thickness"}, {"packed", a_number}, {"step"}}},
     a_length,
     girth_of_a_neck<inch>,
     girth_of_a_neck<centimetre>},
    {"buttonhole for a button",
     {{{"across"}, {"thickness"}, {"ease"}, {"step"}}},
     a_length,
     buttonhole_for<inch>,
     buttonhole_for<centimetre>},
}};

inline const named_figure* find_figure(std::string_view name) {
    for (const named_figure& f : named_figures)
        if (f.name == name)
            return &f;
    return nullptr;
}

} // namespace turncloth::detail

#endif
