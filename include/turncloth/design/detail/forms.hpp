// The forms that a design chooses from, each with the parts that it is given: finishes, repeaters, notions
// and curves.
//
//   finish_forms<U>   row_forms<U>   notion_forms<U>   curve_forms<U>      what each is called, its parts, and what makes it
//   forms_of(design_finish{})                             the same without what makes them
#ifndef TURNCLOTH_DESIGN_DETAIL_FORMS_HPP
#define TURNCLOTH_DESIGN_DETAIL_FORMS_HPP

#include <turncloth/design/detail/figures.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/marks/spacing.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/notions/tie.hpp>
#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/size.hpp>
#include <turncloth/sheet/drafted_piece.hpp>
#include <turncloth/sheet/fastened.hpp>
#include <turncloth/sheet/filled_and_pieced.hpp>
#include <turncloth/sheet/notion.hpp>

#include <array>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth::detail {

inline constexpr std::size_t most_parts_of_a_form = 12;

struct form_part {
    std::string_view name{};
    wanted is = wanted::length;
    bool must = true;
};
constexpr form_part may_have(std::string_view name, wanted is = wanted::length) { return {name, is, false}; }
constexpr form_part counted_part(std::string_view name) { return {name, wanted::count, true}; }

struct form {
    std::string_view is;
    std::array<form_part, most_parts_of_a_form> parts{};

    std::size_t size() const { return count_named(parts); }
};

/// What the parts of a form come to, in the order of its table.
template <length_unit Unit>
struct form_values {
    std::array<std::optional<expression_value>, most_parts_of_a_form> parts{};
    ruled<Unit> by{};

    length<Unit> operator[](std::size_t i) const {
        return parts[i] ? parts[i]->template as_length<Unit>() : length<Unit>();
    }
    bool has(std::size_t i) const { return parts[i].has_value(); }
    fraction number(std::size_t i, fraction otherwise = 0) const { return parts[i] ? *parts[i]->number : otherwise; }
    std::int64_t count(std::size_t i) const { return whole_number(number(i), "a number of things"); }
};

template <class Made, length_unit Unit>
struct form_maker {
    form is;
    Made (*make)(const form_values<Unit>&);
};

template <length_unit Unit>
using finish_maker = form_maker<finish<Unit>, Unit>;

template <length_unit Unit>
using parts_given_of = const form_values<Unit>&;

/// Two such edges meet over the chain; the row through the tape lies `stitched` beside the fold.
template <length_unit U>
finish<U> turned_beside_zipper(parts_given_of<U> v) {
    require_more_than_zero<finish_error>(v[0], "what is turned under beside a zipper");
    require_more_than_zero<finish_error>(v[1], "the row beside a zipper");
    return finish<U>("turned under beside the zipper")
        .allows(v[0])
        .folds_at(v[0])
        .stitched_at(v[0] + v[1])
        .reaches(v[0]);
}

template <length_unit U>
inline constexpr std::array<finish_maker<U>, 14> finish_forms = {{
    {{"raw edge"}, [](parts_given_of<U>) { return finish<U>(); }},
    {{"seam", {{{"allowance"}}}}, [](parts_given_of<U> v) { return seam(v[0]); }},
    {{"single-turned hem", {{{"depth"}, may_have("inset")}}},
     [](parts_given_of<U> v) { return single_turned_hem(v[0], v[1]); }},
    {{"double-turned hem", {{{"first"}, {"depth"}, may_have("inset"), may_have("turn")}}},
     [](parts_given_of<U> v) { return double_turned_hem(v[0], v[1], v[2], v[3]); }},
    {{"heading", {{{"depth"}, may_have("under"), may_have("inset")}}},
     [](parts_given_of<U> v) { return heading(v[0], v[1], v[2]); }},
    {{"casing", {{{"depth"}, {"channel"}, may_have("under"), may_have("inset")}}},
     [](parts_given_of<U> v) { return casing(v[0], v[1], v[2], v[3]); }},
    {{"self-binding", {{{"width"}, may_have("inset"), may_have("turn")}}},
     [](parts_given_of<U> v) { return self_binding(v[0], v[1], v[2]); }},
    {{"separate binding", {{{"width"}}}}, [](parts_given_of<U> v) { return separate_binding(v[0]); }},
    {{"French seam", {{{"first"}, {"second"}, may_have("trimmed")}}},
     [](parts_given_of<U> v) { return v.has(2) ? french_seam(v[0], v[1], v[2]) : french_seam(v[0], v[1]); }},
    {{"flat-felled seam, over", {{{"width"}, {"under"}, may_have("inset")}}},
     [](parts_given_of<U> v) { return felled_over(v[0], v[1], v[2]); }},
    {{"flat-felled seam, under", {{{"allowance"}}}}, [](parts_given_of<U> v) { return felled_under(v[0]); }},
    {{"lapped seam, over", {{may_have("under"), may_have("inset")}}},
     [](parts_given_of<U> v) { return lapped_over(v[0], v[1]); }},
    {{"lapped seam, under", {{{"lap"}, may_have("inset")}}},
     [](parts_given_of<U> v) { return lapped_under(v[0], v[1]); }},
    {{"turned under beside a zipper", {{{"turned"}, {"stitched"}}}}, turned_beside_zipper<U>},
}};

/// `start` further on, each place on the ruler by itself. Throws range_error for more than `most_in_a_row`.
template <length_unit U>
row<finished_edge, U> begun_at(length<U> start, const row<finished_edge, U>& r, const ruled<U>& by) {
    require_at_most<range_error>(r.size(), most_in_a_row, "the number of marks in a row");
    return r.size() == 0 ? r : by.parts(row<finished_edge, U>(r[0] + start, r.step(), r.size()));
}

template <length_unit U>
using row_maker = form_maker<row<finished_edge, U>, U>;

template <length_unit U>
row<finished_edge, U> spaced_places(parts_given_of<U> v) {
    const auto made = v.has(3) ? spaced_from_margins<finished_edge>(v.count(0), v[1], v[2], v[3])
                               : spaced<finished_edge>(v.count(0), v[1], v[2]);
    return begun_at(v[4], made.centres(), v.by);
}
template <length_unit U>
inline constexpr std::array<row_maker<U>, 6> row_forms = {{
    {{"one place", {{{"at"}}}},
     [](parts_given_of<U> v) { return row<finished_edge, U>(at<finished_edge>(v[0]), {}, 1); }},
    {{"divided", {{{"span"}, counted_part("parts"), may_have("start")}}},
     [](parts_given_of<U> v) { return begun_at(v[2], divided<finished_edge>(v[0], v.count(1)), v.by); }},
    {{"halved", {{{"span"}, counted_part("times"), may_have("start")}}},
     [](parts_given_of<U> v) {
         require_between<marks_error>(std::int64_t{0}, v.count(1), std::int64_t{62}, "the number of foldings in half");
         return begun_at(v[2], halved<finished_edge>(v[0], static_cast<int>(v.count(1))), v.by);
     }},
    {{"every", {{{"step"}, {"within"}, may_have("start")}}},
     [](parts_given_of<U> v) { return begun_at(v[2], every<finished_edge>(v[0], v[1]).marks, v.by); }},
    {{"spaced", {{counted_part("count"), {"width"}, {"along"}, may_have("margin"), may_have("start")}}},
     spaced_places<U>},
    {{"in steps", {{{"at"}, {"step"}, counted_part("count"), may_have("graduation")}}},
     [](parts_given_of<U> v) {
         const row<finished_edge, U> r(at<finished_edge>(v[0]), v[1], v.count(2));
         require_at_most<range_error>(r.size(), most_in_a_row, "the number of marks in a row");
         return v.has(3) ? r.on_ruler(v[3]) : v.by.parts(r);
     }},
}};

/// What a notion begins with; its name is given by the design.
template <length_unit U>
using notion_maker = form_maker<notion<U>, U>;

template <length_unit U>
notion<U> ribbon_round(parts_given_of<U> v) {
    const std::int64_t times = v.has(1) ? v.count(1) : 1;
    return listed_round(
        "", tie_round<U>(v[0], times, {.loop = v[2], .tail = v[3], .knot = v[4]}, {.ease = v[5], .turned = v[6]}),
        v[0]);
}
template <length_unit U>
notion<U> ribbons_sewn(parts_given_of<U> v) {
    return listed("", v.count(0),
                  ribbon_tie<U>{.across = v[1],
                                .from = v.number(2),
                                .to = v.number(3, 1),
                                .loop = v[4],
                                .free_at_start = v[5],
                                .free_at_end = v[6],
                                .turned = v[7]});
}

template <length_unit U>
notion<U> foam(parts_given_of<U> v) {
    require_more_than_zero<size_error>(v[0], "the width of a filling");
    require_more_than_zero<size_error>(v[1], "the height of a filling");
    require_more_than_zero<size_error>(v[2], "the thickness of a filling");
    notion<U> n("");
    n.figure("foam, width", v[0]).sold(sold_as::as_told).figure("foam, height", v[1]).sold(sold_as::as_told);
    n.figure("foam, thickness", v[2]).sold(sold_as::as_told);
    return n.caution(caution::filling).caution(caution::infants_and_animals);
}

template <length_unit U>
notion<U> straps_folded(parts_given_of<U> v) {
    return listed(
        "", v.count(0),
        boxed_straps<U>{
            .finished = v[1], .free = v[2], .ends = {.sewn = v[3], .turned = v[4]}, .inset = v[5], .step = v[6]});
}

/// It begins in the middle of an edge, as near to it as the ruler goes.
template <length_unit U>
notion<U> piped_round(parts_given_of<U> v) {
    return listed("", piped_edge<U>{.piece = {v[0], v[1]},
                                    .cord = {.across = v[2], .seam = v[4], .cloth = v[3]},
                                    .ends = {.lap = v[5], .turned = v[6]},
                                    .first = v.by.middle(v[0]),
                                    .step = v[7]});
}

template <length_unit U>
notion<U> squares_of_triangles(parts_given_of<U> v) {
    const std::int64_t of = v.has(4) ? v.count(4) : 2;
    if (of != 2 && of != 4)
        refuse<patchwork_error>({"a square is pieced of 2 triangles, or of 4: not of ", of},
                                {.kind = fault::unsuitable, .what = "the number of triangles", .given = of});
    return listed("", v.count(0), triangles<U>{v[1], {of == 2 ? pieced_of::two : pieced_of::four, v[2]}, v[3]});
}

template <length_unit U>
notion<U> darned(parts_given_of<U> v) {
    return listed<U>("", darn<U>{.worn = {v[0], v[1]}, .reach = v[2], .apart = v[3], .loop = v[4]},
                     needleful<U>{.cut = v[5], .tail = v[6]});
}

/// The middles of fasteners, each on the ruler by itself; one alone has no step.
template <length_unit U>
row<finished_edge, U> fastened_at(std::int64_t count, length<U> first, length<U> step, const ruled<U>& by) {
    require_at_most<range_error>(count, most_in_a_row, "the number of fasteners in a row");
    return by.parts(row<finished_edge, U>(at<finished_edge>(first), step, count));
}

template <length_unit U>
notion<U> buttoned_edge(parts_given_of<U> v) {
    return listed("",
                  buttoned_lap<U>{.button = {.across = v[4], .thick = v[5]},
                                  .runs = v.has(11) ? hole_runs::square_to_edge : hole_runs::along_edge,
                                  .places = fastened_at<U>(v.count(0), v[2], v[3], v.by),
                                  .edge = v[1],
                                  .stand = v[7],
                                  .deep = v[8],
                                  .shank = v[11],
                                  .hole = v[6],
                                  .clear = v[9]},
                  v[10]);
}

template <length_unit U>
notion<U> snapped_edge(parts_given_of<U> v) {
    return listed("", snapped_lap<U>{.across = v[4],
                                     .places = fastened_at<U>(v.count(0), v[2], v[3], v.by),
                                     .edge = v[1],
                                     .stand = v[5],
                                     .deep = v[6],
                                     .clear = v[7]});
}

template <length_unit U>
inline constexpr std::array<notion_maker<U>, 21> notion_forms = {{
    {{"details"}, [](parts_given_of<U>) { return notion<U>(""); }},
    {{"ribbon round a roll",
      {{{"girth"},
        may_have("times", wanted::count),
        {"loop"},
        {"tail"},
        {"knot"},
        may_have("ease"),
        may_have("turned")}}},
     ribbon_round<U>},
    {{"ribbons sewn on",
      {{counted_part("count"),
        {"across"},
        may_have("from", wanted::number),
        may_have("to", wanted::number),
        may_have("loop"),
        may_have("free_at_start"),
        may_have("free_at_end"),
        may_have("turned")}}},
     ribbons_sewn<U>},
    {{"zippers from a roll", {{counted_part("count"), {"across"}, {"margin"}, {"beyond"}, {"roll"}}}},
     [](parts_given_of<U> v) {
         return listed("", v.count(0), zipped_opening<U>{v[1], v[2], v[3]}, zipper_supply<U>::from_roll(v[4]));
     }},
    {{"zippers made up",
      {{counted_part("count"), {"across"}, {"margin"}, {"beyond"}, {"length_sold"}, {"ends"}, {"tail"}}}},
     [](parts_given_of<U> v) {
         return listed("", v.count(0), zipped_opening<U>{v[1], v[2], v[3]},
                       zipper_supply<U>::made_up({v[4]}, v[5], v[6]));
     }},
    {{"foam filling", {{{"width"}, {"height"}, {"thickness"}}}}, foam<U>},
    {{"straps folded in four",
      {{counted_part("count"), {"width"}, {"free"}, {"sewn"}, may_have("turned"), {"inset"}, {"step"}}}},
     straps_folded<U>},
    {{"darn", {{{"width"}, {"height"}, {"reach"}, {"apart"}, may_have("loop"), {"needleful"}, may_have("tail")}}},
     darned<U>},
    {{"webbing loops", {{counted_part("count"), {"stands"}, {"sewn"}, may_have("under")}}},
     [](parts_given_of<U> v) {
         return listed("", v.count(0), webbing_loops<U>{.stands = v[1], .sewn = v[2], .under = v[3]});
     }},
    {{"pleats with gaps",
      {{{"heading"}, {"cloth"}, may_have("return"), may_have("overlap"), counted_part("count"), may_have("turned")}}},
     [](parts_given_of<U> v) {
         return listed("", pleat_groups<U>(v[0], v[1], {.ret = v[2], .overlap = v[3]}, v.count(4)), v[5]);
     }},
    {{"curtain drops", {{{"width"}, {"drop"}, {"usable"}, {"join"}, may_have("repeat"), may_have("across")}}},
     [](parts_given_of<U> v) {
         return listed("", curtain_drops<U>{v[0], v[1], v[2], v[3], v[4], v[5]});
     }},
    {{"drawstrings", {{counted_part("count"), {"round"}, {"beyond"}, may_have("knot"), {"closed"}}}},
     [](parts_given_of<U> v) {
         return listed("", v.count(0),
                       drawstrings<U>{.round = v[1], .ends = {.beyond = v[2], .knot = v[3]}, .closed = v[4]});
     }},
    {{"elastic",
      {{counted_part("count"),
        {"round"},
        {"stretch", wanted::number},
        may_have("ease"),
        may_have("overlap"),
        {"step"}}}},
     [](parts_given_of<U> v) {
         return listed("", v.count(0), v[1], elastic<U>{.stretch = v.number(2), .ease = v[3], .overlap = v[4]}, v[5]);
     }},
    {{"patches from strips", {{counted_part("count"), {"width"}, {"height"}, {"seam"}, {"usable"}}}},
     [](parts_given_of<U> v) {
         return listed("", v.count(0), sewn_patch<U>{v[1], v[2], v[3]}, v[4]);
     }},
    {{"squares of triangles",
      {{counted_part("count"), {"finished"}, {"seam"}, {"step"}, may_have("triangles", wanted::count)}}},
     squares_of_triangles<U>},
    {{"loose filling", {{{"girth"}, {"along"}, {"cube_weighs", wanted::number}, {"step"}}}},
     [](parts_given_of<U> v) {
         return listed("", loose_filling<U>{{v[0], v[1]}, v.number(2), v[3]});
     }},
    {{"tie round a neck",
      {{{"girth"}, {"loop"}, {"tail"}, {"knot"}, may_have("ease"), may_have("turned"), may_have("cut")}}},
     [](parts_given_of<U> v) {
         const neck_tie<U> tie{v[0], {v[1], v[2], v[3]}, {v[4], v[5]}};
         return v.has(6) ? listed("", tie, v[6]) : listed("", tie);
     }},
    {{"piping all round",
      {{{"width"}, {"height"}, {"cord"}, may_have("cloth"), {"seam"}, {"lap"}, may_have("turned"), {"step"}}}},
     piped_round<U>},
    {{"buttons",
      {{counted_part("count"),
        {"edge"},
        {"first"},
        may_have("step"),
        {"across"},
        {"thickness"},
        {"hole"},
        {"stand"},
        {"deep"},
        {"clear"},
        {"beyond"},
        may_have("shank")}}},
     buttoned_edge<U>},
    {{"snaps",
      {{counted_part("count"), {"edge"}, {"first"}, may_have("step"), {"across"}, {"stand"}, {"deep"}, {"clear"}}}},
     snapped_edge<U>},
    {{"straps with hook and loop", {{counted_part("count"), {"least"}, {"most"}, {"holds"}, may_have("end")}}},
     [](parts_given_of<U> v) {
         return listed("", v.count(0), touch_strap<U>{.least = v[1], .most = v[2], .holds = v[3], .end = v[4]});
     }},
}};

template <length_unit U>
inline constexpr std::array<form_maker<drafted_curve<U>, U>, 4> curve_forms = {{
    {{"straight"}, [](parts_given_of<U>) { return drafted_curve<U>(); }},
    {{"hollow", {{{"rise"}}}}, [](parts_given_of<U> v) { return hollow(v[0]); }},
    {{"rounded", {{{"rise"}}}}, [](parts_given_of<U> v) { return rounded(v[0]); }},
    {{"cubic", {{may_have("pull_across"), may_have("pull_up"), may_have("other_across"), may_have("other_up")}}},
     [](parts_given_of<U> v) {
         return drafted_curve<U>{curve_kind::cubic, {}, {v[0], v[1]}, {v[2], v[3]}};
     }},
}};

/// Of a design_finish, a design_row, a notion_form or a design_curve.
template <length_unit U, class Form>
constexpr const auto& makers_of(const Form& /*form*/) {
    if constexpr (std::same_as<Form, design_finish>)
        return finish_forms<U>;
    else if constexpr (std::same_as<Form, design_row>)
        return row_forms<U>;
    else if constexpr (std::same_as<Form, notion_form>)
        return notion_forms<U>;
    else
        return curve_forms<U>;
}

/// The first form is the one of a filled form that does not say.
template <form_kind Kind>
const form* find_form(const filled_form<Kind>& f) {
    const auto& all = makers_of<inch>(f);
    if (f.is.empty())
        return &all[0].is;
    for (const auto& maker : all)
        if (maker.is.is == f.is)
            return &maker.is;
    return nullptr;
}

} // namespace turncloth::detail

#endif
