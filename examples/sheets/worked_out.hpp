// A sheet with all that is written of it, made in memory: what takes the time, and may be done by any thread.
//
//   work_out(wanted, orders)     the text, and every file with what follows the sheet's name; or why it cannot be made
#ifndef TURNCLOTH_EXAMPLES_SHEETS_WORKED_OUT_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_WORKED_OUT_HPP

#include "cloth_to_buy.hpp"
#include "command_line.hpp"
#include "jobs.hpp"
#include "names.hpp"
#include "on_hand.hpp"
#include "project_file.hpp"
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outlined.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/draw/step.hpp>
#include <turncloth/handout/handout.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/json.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace allotment {

struct file_of_sheet {
    std::string ending, content;
};

inline constexpr std::string_view handout_ending = ".html", printed_ending = ".pdf";

struct worked_out_sheet {
    std::string refusal{}; ///< where it cannot be made
    std::string text{};
    std::vector<file_of_sheet> files{}; ///< none where no folder is given
    std::size_t drawings = 0;
};

namespace detail {

template <length_unit Unit>
paper paper_for(const orders& o) {
    const bool metric = o.paper.empty() ? metric_unit<Unit> : slug(o.paper) == "a4";
    return metric ? paper::a4 : paper::letter;
}

template <length_unit Unit>
cloth_sold<Unit> cloth_asked_for(const orders& o) {
    cloth_sold<Unit> cloth;
    if (!o.cloth_width.empty()) {
        cloth.width = read_length<Unit>(o.cloth_width);
        cloth.typed = true;
    }
    return cloth;
}

template <length_unit Unit>
std::vector<width_of_cloth<Unit>> widths_asked_for(const orders& o) {
    std::vector<width_of_cloth<Unit>> all;
    for (const typed_width& w : o.cloth_widths)
        all.push_back({w.material, read_length<Unit>(w.width)});
    return all;
}

/// Of the ruler in the unit of the size: what is shown in the other unit is converted.
template <length_unit Unit>
length<Unit> graduation(const orders& o) {
    if (o.exact)
        return {};
    if constexpr (metric_unit<Unit>)
        return as<Unit>(o.by.centimetres);
    else
        return as<Unit>(o.by.inches);
}

/// Of the finished thing, and of each step under its number: "tool-roll.step.05.2.svg". Rows of a table have none.
template <length_unit Unit>
void add_pictures(worked_out_sheet& to, const sheet<Unit>& s, const ruler& by, const drawing_options& drawn) {
    const char* sides[] = {".finished.front.svg", ".finished.back.svg"};
    const std::vector<page> finished = pages_of_finished(s, by, drawn);
    for (std::size_t i = 0; i < finished.size(); ++i)
        to.files.push_back({sides[i], to_svg(finished[i])});
    const std::vector<step_page> steps = pages_of_steps(s, {}, by, drawn);
    for (const step_page& p : steps) {
        const std::string group = std::to_string(p.group + 1); // as they are counted; two digits, to be sorted
        to.files.push_back(
            {(p.group < 9 ? ".step.0" : ".step.") + group + "." + std::to_string(p.step + 1) + ".svg", to_svg(p.page)});
    }
    to.drawings += finished.size() + steps.size();
}

inline void add_handout(worked_out_sheet& to, const document& handout, const orders& o, const paper& on) {
    if (o.handout)
        to.files.push_back({std::string(handout_ending), to_html(handout)});
    if (o.print != nullptr)
        to.files.push_back({std::string(printed_ending), o.print(handout, on)});
}

/// A dot parts a sheet's name from the rest, as no slug holds one; so no two sheets can write the same file.
template <length_unit Unit>
void add_files(worked_out_sheet& to, const sheet<Unit>& s, const std::vector<sheet_cloth<Unit>>& lays,
               const orders& o) {
    const drawing_options drawn{.project = s.name, .on = paper_for<Unit>(o), .words = &o.words};
    to.files.push_back({".txt", to.text});
    if (o.json)
        to.files.push_back({".json", to_json(s).dump(2) + "\n"});
    if (o.handout || o.print != nullptr)
        add_handout(to, handout_of(s, lays, {.by = o.by, .words = o.words, .prices = o.shop}), o, drawn.on);
    unused_names pieces, materials; // of a project as a file, names that differ may be alike as slugs
    for (const sheet_piece<Unit>& p : s.pieces)
        to.files.push_back({"." + pieces.next(slug(p.made_from.name())) + ".svg", to_svg(page_of(p, o.by, drawn))});
    for (const outlined_piece<Unit>& p : s.outlines)
        to.files.push_back({"." + pieces.next(slug(p.name())) + ".svg", to_svg(page_of(p, o.by, drawn))});
    for (const sheet_cloth<Unit>& lay : lays)
        to.files.push_back({".lay." + materials.next(slug(turncloth::detail::name_of_cloth(lay))) + ".svg",
                            to_svg(page_of(lay, o.by, drawn, worth_keeping<Unit>::usual()))});
    to.drawings = s.pieces.size() + s.outlines.size() + lays.size();
    if (o.table.empty())
        add_pictures(to, s, o.by, drawn);
}

/// No cloth is laid for it.
template <length_unit Unit>
sheet<Unit> sheet_of_job(const job& j, const finished_size<Unit>& finished, const orders& o) {
    const length<Unit> by = graduation<Unit>(o);
    sheet<Unit> s = j.design ? sheet_for(*j.design, finished, by)
                             : sheet_for(j.project->which, finished, j.thickness, cloth_asked_for<Unit>(o), by);
    if (o.most_layers > 0)
        s.bulk = bulk_warnings(s, o.most_layers);
    if (!j.name.empty())
        s.name = j.name + ": " + s.name;
    return s;
}

inline bool it_hangs(const job& j) { return j.design ? hangs(*j.design) : j.project->hangs; }

/// All that is written of it.
template <length_unit Unit>
worked_out_sheet written(const sheet<Unit>& s, const std::vector<sheet_cloth<Unit>>& lays, const orders& o) {
    worked_out_sheet all{.text = to_text(s, o.by, o.words)};
    if (!o.out.empty())
        add_files(all, s, lays, o);
    return all;
}

template <length_unit Unit>
worked_out_sheet work_out(const job& j, const finished_size<Unit>& finished, const orders& o) {
    sheet<Unit> s = sheet_of_job(j, finished, o);
    const std::vector<sheet_cloth<Unit>> lays =
        add_cloth(s, cloth_asked_for<Unit>(o), it_hangs(j), on_hand<Unit>(o.on_hand), widths_asked_for<Unit>(o));
    return written(s, lays, o);
}

} // namespace detail

/// `work(job, size)`, or why that cannot be made.
template <class Made, class Work>
Made worked(const wanted_sheet& wanted, Work work) {
    if (!wanted.made_of)
        return {.refusal = wanted.refusal};
    const job& j = *wanted.made_of;
    try {
        return std::visit([&](const auto& finished) -> Made { return work(j, finished); }, j.size);
    } catch (const error& refused) {
        return {.refusal = wanted.where + refused.what()};
    }
}

inline worked_out_sheet work_out(const wanted_sheet& wanted, const orders& o) {
    return worked<worked_out_sheet>(
        wanted, [&](const job& j, const auto& finished) { return detail::work_out(j, finished, o); });
}

} // namespace allotment

#endif
