// The finished thing as two pages, its front and its back, of what lies there at last.
//
//   finished_drawer<Unit>(design, steps, ruler, figures, options)     note_turns(plan); draw(): the pages
//
//   finished_drawer<inch> pouch(d, steps_of(d), ruler(), "", {});
//   const std::vector<page> front_and_back = pouch.draw();
#ifndef TURNCLOTH_DRAW_DETAIL_FINISHED_DRAWER_HPP
#define TURNCLOTH_DRAW_DETAIL_FINISHED_DRAWER_HPP

#include <turncloth/draw/detail/box_side.hpp>
#include <turncloth/draw/detail/lying_picture.hpp>
#include <turncloth/draw/detail/turns_taken.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class finished_drawer {
public:
    finished_drawer(const making<Unit>& design, const std::vector<making_step>& steps, const ruler& by,
                    const std::string& figures, const drawing_options& options)
        : design_(design),
          by_(by),
          note_(figures.empty() ? rounded_note(by) : figures),
          options_(options),
          table_(design) {
        for (const making_step& s : steps)
            table_.carry_out(s.what);
    }

    /// What the steps that a maker is given say of turns of cloth.
    void note_turns(const work_plan<Unit>& plan) {
        for (const work_group<Unit>& g : plan.groups)
            for (const work_step<Unit>& s : g.steps)
                turns_.note(g, s);
    }

    std::vector<page> draw() {
        std::vector<page> made;
        const std::vector<box_found<Unit>> boxes =
            design_.seams().empty() ? std::vector<box_found<Unit>>() : boxed_of(design_).boxes;
        for (const bool front : {true, false})
            made.push_back(boxes.empty() ? draw_flat(front) : draw_box(boxes[0], front));
        return made;
    }

private:
    using sizes = std::pair<length<Unit>, length<Unit>>;

    picture begin(bool front, const sizes& size) const {
        picture p;
        p.words.project = options_.project;
        p.words.title = front ? sentence({"finished, front"}) : sentence({"finished, back"});
        p.words.facts_size = body_size;
        p.words.facts = {sentence({"finished ", unbroken(size_text(size.first, size.second, by_))})};
        p.width = in_mm(size.first), p.height = in_mm(size.second);
        p.below = {{0, p.width, p.height, to_text(size.first, by_)}};
        p.beside = {{0, p.height, 0, to_text(size.second, by_)}};
        return p;
    }

    page draw_flat(bool front) {
        const cut_part of = largest();
        const plies_lying<Unit> lies = turns_.as_measured(table_.plies(of), table_);
        const table_view view = view_of(lies, front);
        const plies_seen seen(lies.plies, view);
        picture drawn = begin(front, size_of(lies));
        drawn.words.facts.emplace_back(word(front ? "as it lies when it is done" : "turned over, left to right"));
        draw_lying(drawn, lies, seen, view, [](const operation&) { return false; });
        lying_notes notes;
        const lying<Unit> patches = table_.in_sight(of);
        if (shows_a_wrong_side(patches, view))
            drawn.explain(wrong_side_line);
        for (auto& [part, where] : parts_in_sight(patches, view)) {
            for (page_area& a : where)
                a = common_area(a, {0, 0, drawn.width, drawn.height});
            const table_area<Unit> all = extent_of(lies);
            measure_border(drawn, where, patches, view, front ? all.left : all.right);
            notes.names.push_back(
                {name_there(lies, part), std::move(where), copies(lies, part) <= 3, design_.parts()[part.index].name});
        }
        draw_mouths(drawn, of, seen, view);
        for (const thread_lying<Unit>& s : lies.spots)
            if (const page_point p = view(s.at.from);
                !seen.visible(around(p), s.ply).empty() &&
                !draw_cross(drawn, box_of_cross(design_.spots()[s.what.index], table_, p), earlier_row_line))
                notes.spots.push_back(p);
        if (!notes.spots.empty())
            drawn.explain(fastening_line);
        return page_of_lying(drawn, notes, &seen, note_, options_);
    }

    page draw_box(const box_found<Unit>& box, bool front) {
        const box_side<Unit> side(box, front);
        picture drawn = begin(front, side.size());
        drawn.words.facts.push_back(sentence({"and ", to_text(side.depth(), by_), " deep"}));
        lying_notes notes;
        for (const box_face<Unit>& f : side.faces()) {
            const page_area where = side.area_of(f);
            drawn.draw(folded_side_line, where);
            notes.names.push_back({name_of(design_, f.of), {where}, true});
            for (const stitching<Unit>& r : design_.rows())
                if (r.along.on == f.of)
                    if (const auto at = line_on(side, f, r.along))
                        drawn.draw(earlier_row_line, *at);
        }
        for (const mouth<Unit>& m : design_.mouths())
            for (const chalk_line<Unit>& l : m.at)
                for (const box_face<Unit>& f : side.faces())
                    if (l.on == f.of)
                        if (const auto at = line_on(side, f, l))
                            drawn.draw(mouth_line, *at);
        return page_of_lying(drawn, notes, nullptr, note_, options_);
    }

    std::optional<page_segment> line_on(const box_side<Unit>& side, const box_face<Unit>& f,
                                        const chalk_line<Unit>& l) const {
        const part<Unit>& p = design_.parts()[f.of.index];
        return side.line_of(f, l, p.width, p.height);
    }

    /// Of the stacks that are left, the one that covers most.
    cut_part largest() const {
        cut_part best{0, 0};
        double most = -1;
        for (std::size_t i = 0; i < design_.parts().size(); ++i)
            for (std::int64_t k = 0; k < design_.parts()[i].count; ++k) {
                const auto size = size_of(table_.plies({i, k}));
                const double area = in_mm(size.first) * in_mm(size.second);
                if (area > most)
                    most = area, best = {i, k};
            }
        return best;
    }
    static std::size_t copies(const plies_lying<Unit>& lies, const cut_part& part) {
        std::vector<cut_part> all;
        for (const ply_lying<Unit>& p : lies.plies)
            if (p.of.index == part.index && std::find(all.begin(), all.end(), p.of) == all.end())
                all.push_back(p.of);
        return all.size();
    }
    std::string name_there(const plies_lying<Unit>& lies, const cut_part& part) const {
        return copies(lies, part) > 1 ? name_of(design_, part) : design_.parts()[part.index].name;
    }

    /// What runs all down the left, from its outer edge inward, as a narrow border: a binding or a hem.
    void measure_border(picture& drawn, const std::vector<page_area>& where, const lying<Unit>& patches,
                        const table_view& view, length<Unit> outer) const {
        for (const page_area& a : where) {
            if (a.x > too_thin || a.width > drawn.width / 6 || a.height < drawn.height - 6 * a.width)
                continue;
            const auto exact = [&](double at) {
                for (const patch<Unit>& p : patches.patches)
                    for (const length<Unit>& l : {p.left, p.right})
                        if (std::abs(view.x(in_mm(l)) - at) < too_thin)
                            return l;
                return length<Unit>();
            };
            const length<Unit> inner = exact(a.width);
            drawn.below.insert(drawn.below.begin(),
                               {0, a.width, drawn.height, to_text(outer < inner ? inner - outer : outer - inner, by_)});
        }
    }

    /// A short line through a place, to ask whether it is covered.
    static page_segment around(page_point p) { return {{p.x - 0.1, p.y}, {p.x + 0.1, p.y}}; }

    void draw_mouths(picture& drawn, const cut_part& of, const plies_seen& seen, const table_view& view) const {
        straight_lines all;
        for (const mouth<Unit>& m : design_.mouths())
            for (const chalk_line<Unit>& l : m.at)
                if (const auto at = table_.in_one_stack(l.on, of) ? table_.line(l) : std::nullopt)
                    for (const page_segment& s : seen.on_top(view(*at), table_.plies(of).plies, l.on))
                        all.add(s);
        for (const page_segment& s : all.without({}))
            drawn.draw(mouth_line, s);
    }

    const making<Unit>& design_;
    const ruler by_;
    const std::string note_;
    const drawing_options& options_;
    table_work<Unit> table_;
    turns_taken<Unit> turns_{};
};

} // namespace turncloth::detail

#endif
