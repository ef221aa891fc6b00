// Thread for the rows of all steps: each once, as long as it is then, with its ends.
//
//   add_sewings(draft)
//
// A project that does not say how it is made states the rows of its finishes, zippers and seams, and no others: what is
// sewn in its other steps is named in a warning, since a figure that is silent about it would be taken for all of it.
// A piece that is cut to an outline is in no making, so the rows of its finishes are those that its edges have.
#ifndef TURNCLOTH_SHEET_DETAIL_THREAD_HPP
#define TURNCLOTH_SHEET_DETAIL_THREAD_HPP

#include <turncloth/making/stitched.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/sheet/detail/draft.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
void add_thread(sheet_draft<Unit>& draft, const sewing<Unit>& s, const stitched<Unit>& rows) {
    const stitch_type stitch = rows.runs.front().type;
    const std::string number = std::to_string(stitch.number);
    length<Unit> sewn;
    for (const seam_run<Unit>& r : rows.runs)
        sewn += (r.sewn + r.overrun * 2) * r.count;
    const length<Unit> thread = with_waste(thread_for<Unit>(rows.runs), s.waste);
    const std::int64_t needed = spools(thread, s.spool);
    if (needed == 0)
        return draft.warn({"no stitching is sewn with stitch ", number});
    notion<Unit> n("thread, stitch " + number + " of ISO 4915, " + std::string(stitch.name));
    n.figure("rows of stitching, with their ends", sewn).figure("thread, with waste", thread);
    if (rows.by_hand.value() > 0)
        n.figure("sewn by hand besides", rows.by_hand);
    draft.made().notions.push_back(
        n.number("spools", needed).sold(sold_as::as_told).figure("thread on a spool", s.spool).sold(sold_as::as_told));
}

/// One list for each stitch; what is sewn by hand is told with the first.
template <length_unit Unit>
std::vector<stitched<Unit>> by_stitch(const stitched<Unit>& all, const sewing<Unit>& s) {
    std::vector<stitched<Unit>> lists;
    for (const seam_run<Unit>& r : all.runs) {
        const auto same = std::find_if(lists.begin(), lists.end(), [&](const stitched<Unit>& list) {
            const stitch_type& t = list.runs.front().type;
            return t.number == r.type.number && t.ratio == r.type.ratio;
        });
        (same == lists.end() ? lists.emplace_back() : *same).runs.push_back(r);
    }
    if (lists.empty())
        lists.push_back({.runs = {{s.stitch, {}, 0, {}}}});
    lists.front().by_hand = all.by_hand;
    return lists;
}

/// Sewn or tacked, and by rows that nothing states.
template <length_unit Unit>
bool has_unstated_rows(const work_step<Unit>& s) {
    switch (s.verb) {
    case work_verb::pleat:
    case work_verb::hem:
    case work_verb::join:
    case work_verb::add:
        return true;
    case work_verb::apply:
    case work_verb::zipper:
    case work_verb::close_up:
        return std::any_of(s.places.begin(), s.places.end(),
                           [](const work_place<Unit>& p) { return p.sewn.value() == 0; });
    default:
        return false;
    }
}
template <length_unit Unit>
void warn_of_unstated_rows(sheet_draft<Unit>& draft) {
    const work_plan<Unit>& plan = draft.made().steps;
    std::string steps;
    for (const work_group<Unit>& g : plan.groups)
        if (std::any_of(g.steps.begin(), g.steps.end(), has_unstated_rows<Unit>))
            steps.append(" ").append(sentence_of(plan, g));
    if (!steps.empty())
        draft.warn({"the thread holds the rows of the pieces' own finishes, zippers and seams, and leaves out what is "
                    "sewn in these steps, of which no row is stated:",
                    steps});
}

/// Of a seam each edge counts half, as in the steps.
template <length_unit Unit>
void add_rows_of_outlines(stitched<Unit>& all, const project<Unit>& from, const sewing<Unit>& s) {
    for (const outlined_piece<Unit>& p : from.outlines())
        for (std::size_t i = 0; i < p.edges.size(); ++i) {
            const std::int64_t sides = p.made_from.corners[i].edge.joins() ? 2 : 1;
            for (const length<Unit>& sewn : p.edges[i].sewn)
                if (sewn.value() > 0)
                    all.add({s.stitch, sewn / sides, p.count(), s.overrun / sides});
        }
}

/// Of a seam each edge counts half: two that are equally long are one row. One that has none like it is sewn to an edge
/// of another length, or to what the project does not tell of.
template <length_unit Unit>
class odd_seams {
public:
    explicit odd_seams(sheet_draft<Unit>& draft) : draft_(draft) {
        const work_plan<Unit>& plan = draft.made().steps;
        for (const work_group<Unit>& g : plan.groups)
            for (const work_step<Unit>& s : g.steps)
                for (const work_place<Unit>& p : s.places)
                    if (s.verb == work_verb::close_up)
                        note(p.sewn, plan.parts[p.piece.index].count,
                             {&plan.parts[p.piece.index].name, name_of(p.side), 0});
        for (const outlined_piece<Unit>& p : draft.from().outlines())
            for (std::size_t i = 0; i < p.edges.size(); ++i)
                for (const length<Unit>& sewn : p.edges[i].sewn)
                    if (p.made_from.corners[i].edge.joins())
                        note(sewn, p.count(), {&p.name(), {}, i + 1});
    }
    void warn() const {
        for (const auto& [sewn, edges] : alike_)
            if (const seam_edge& e = edges.second; edges.first % 2 == 0)
                continue;
            else if (e.number > 0)
                draft_.warn({"the thread holds half a row for edge ", e.number, " of ", named(*e.piece),
                             ", which joins no other edge of its length"});
            else
                draft_.warn({"the thread holds half a row for the ", e.side, " edge of ", named(*e.piece),
                             ", which joins no other edge of its length"});
    }

private:
    struct seam_edge {
        const std::string* piece = nullptr;
        std::string_view side{};
        std::size_t number = 0; ///< of an outline's, from 1
    };
    void note(const length<Unit>& sewn, std::int64_t count, const seam_edge& e) {
        if (sewn.value() == 0)
            return;
        auto& found = alike_[sewn];
        found.first += count;
        found.second = e;
    }

    sheet_draft<Unit>& draft_;
    std::map<length<Unit>, std::pair<std::int64_t, seam_edge>> alike_{};
};

template <length_unit Unit>
void add_sewing(sheet_draft<Unit>& draft, const sewing<Unit>& s) {
    stitched<Unit> all = stitched_in(draft.made().steps);
    add_rows_of_outlines(all, draft.from(), s);
    for (const stitched<Unit>& rows : by_stitch(all, s))
        add_thread(draft, s, rows);
    if (draft.from().design() == nullptr)
        warn_of_unstated_rows(draft);
    odd_seams<Unit>(draft).warn();
}

/// One for the project: its stitch is that of the rows which no design names another for.
template <length_unit Unit>
void add_sewings(sheet_draft<Unit>& draft) {
    const auto& all = draft.from().sewings();
    if (all.size() > 1)
        draft.refuse({"thread is asked for twice, and every row is sewn once"},
                     {.kind = fault::repeated, .what = "the stitch of a project"});
    for (const sewing<Unit>& s : all)
        draft.attempt("thread for stitch " + std::to_string(s.stitch.number), {}, [&] { add_sewing(draft, s); });
}

} // namespace detail

} // namespace turncloth

#endif
