// What a project says of its cloths: kept on the sheet, checked, and the steps of washing them.
//
//   add_cloths(draft)     once the steps of making are there
#ifndef TURNCLOTH_SHEET_DETAIL_CLOTHS_HPP
#define TURNCLOTH_SHEET_DETAIL_CLOTHS_HPP

#include <turncloth/making/work_plan.hpp>
#include <turncloth/sheet/detail/cloth_told.hpp>
#include <turncloth/sheet/detail/draft.hpp>
#include <turncloth/sheet/project_cloth.hpp>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class cloth_check {
public:
    explicit cloth_check(sheet_draft<Unit>& draft) : draft_(draft), sheet_(draft.made()) {}

    void check() {
        std::vector<std::string> told;
        for (const project_cloth<Unit>& c : sheet_.cloths) {
            if (std::find(told.begin(), told.end(), c.material) != told.end())
                refuse(fault::disagree, {"the ", named(c.material), " is told of twice"});
            told.push_back(c.material);
            check(c);
        }
        for (const sheet_piece<Unit>& p : sheet_.pieces)
            check(p.made_from);
        for (const outlined_piece<Unit>& p : sheet_.outlines)
            if (const project_cloth<Unit>* c = said_of(sheet_.cloths, p.material());
                c != nullptr && c->washed == washed_when::as_pieces)
                refuse(fault::unsuitable, {"the ", named(p.name()), " is cut as it is drawn: wash the ",
                                           named(c->material), " before it is cut"});
    }

private:
    void refuse(fault kind, text_parts parts) { draft_.refuse(parts, {.kind = kind, .what = "a cloth"}); }

    void check(const project_cloth<Unit>& c) {
        const auto is_of = [&](const auto& p) { return p.material() == c.material; };
        if (std::none_of(sheet_.pieces.begin(), sheet_.pieces.end(),
                         [&](const auto& p) { return is_of(p.made_from); }) &&
            std::none_of(sheet_.outlines.begin(), sheet_.outlines.end(), is_of))
            refuse(fault::missing, {"no piece is cut from the ", named(c.material), " that the project tells of"});
        const auto below_nothing = [](length<Unit> l) { return l.value() < 0; };
        if (below_nothing(c.width) || below_nothing(c.selvedge) || below_nothing(c.join))
            refuse(fault::too_small,
                   {"the width of the ", named(c.material), ", its selvedges and joins are not below zero"});
        else if (c.width.value() > 0 && c.selvedge * 2 >= c.width)
            refuse(fault::no_room,
                   {"selvedges of ", c.selvedge, " leave nothing of the ", named(c.material), ", ", c.width, " wide"});
        std::vector<std::string> told;
        for (const piece_on_hand<Unit>& kept : c.on_hand) {
            if (kept.width.value() <= 0 || kept.length.value() <= 0)
                refuse(fault::too_small, {"a piece of ", named(c.material), " on hand is ", kept.width, " x ",
                                          kept.length, ": it is more than nothing either way"});
            if (std::find(told.begin(), told.end(), kept.name) != told.end())
                refuse(fault::disagree, {"two pieces of ", named(c.material), " on hand are named ", named(kept.name)});
            told.push_back(kept.name);
        }
        if (c.washed == washed_when::unwashed && c.change != washing())
            refuse(fault::missing,
                   {"it is not said when the ", named(c.material), ", which changes its size, is washed"});
    }

    void check(const piece<Unit>& p) {
        const project_cloth<Unit>* c = said_of(sheet_.cloths, p.material());
        if (p.lies() == cloth_lie::on_fold && (c == nullptr || !c->folded))
            refuse(fault::unsuitable, {"the ", named(p.name()), " is cut on the fold, and the ", named(p.material()),
                                       " is not said to lie folded"});
        if (p.is_film() && c != nullptr && c->washed != washed_when::unwashed)
            refuse(fault::unsuitable,
                   {"the ", named(p.material()), " is plastic film, which is neither washed nor pressed"});
    }

    sheet_draft<Unit>& draft_;
    const sheet<Unit>& sheet_;
};

/// Cloth is washed before all else, pieces once they are cut.
template <length_unit Unit>
void add_washing(sheet<Unit>& s) {
    std::vector<work_group<Unit>>& groups = s.steps.groups;
    std::vector<work_group<Unit>> cloths, pieces;
    for (const project_cloth<Unit>& c : s.cloths) {
        if (c.washed == washed_when::unwashed)
            continue;
        work_step<Unit> step;
        step.verb = work_verb::prepare;
        step.what = washing_step(c);
        std::vector<work_group<Unit>>& to = c.washed == washed_when::before_cutting ? cloths : pieces;
        to.push_back(group_of(std::move(step)));
        to.back().care = {caution::work::pressing};
    }
    if (!groups.empty()) // the first is the cutting
        groups.insert(groups.begin() + 1, pieces.begin(), pieces.end());
    groups.insert(groups.begin(), cloths.begin(), cloths.end());
}

template <length_unit Unit>
void add_cloths(sheet_draft<Unit>& draft) {
    draft.made().cloths = draft.from().cloths();
    cloth_check<Unit>(draft).check();
    add_washing(draft.made());
}

} // namespace turncloth::detail

#endif
