// The steps of a plan drawn one after another, while the design is carried out.
//
//   step_drawer<Unit, Labels, Page>(design, plan, labels, ruler, options).draw()     a Page for each step that is seen
//
//   step_drawer<inch, step_labels, step_page> pouch(d, work_plan_of(d), {}, {}, {});
//   const std::vector<step_page> seen = pouch.draw();
//
// The labels and the pages are those of draw/step.hpp, which includes this.
#ifndef TURNCLOTH_DRAW_DETAIL_STEP_DRAWER_HPP
#define TURNCLOTH_DRAW_DETAIL_STEP_DRAWER_HPP

#include <turncloth/draw/detail/step_picture.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit, class Labels, class Page>
class step_drawer {
public:
    step_drawer(const making<Unit>& design, const work_plan<Unit>& plan, const Labels& labels, const ruler& by,
                const drawing_options& options)
        : design_(design), plan_(plan), labels_(labels), by_(by), options_(options), table_(design) {}

    std::vector<Page> draw() {
        for (std::size_t g = 0; g < plan_.groups.size(); ++g)
            draw_group(g);
        return std::move(made_);
    }

private:
    /// Of pieces that are done one after another the first is drawn; then the others are made.
    void draw_group(std::size_t g) {
        const work_group<Unit>& group = plan_.groups[g];
        std::size_t turns = group.one_after_another ? group.pieces.size() : 1;
        for (const work_step<Unit>& s : group.steps)
            turns = std::min(turns, std::max<std::size_t>(1, s.stands_for.size()));
        const std::vector<std::string> said = sentences_of(plan_, group, wording{.by = by_, .table = {}});
        for (std::size_t turn = 0; turn < turns; ++turn)
            for (std::size_t k = 0; k < group.steps.size(); ++k) {
                const work_step<Unit>& s = group.steps[k];
                turns_.note(group, s);
                std::vector<operation> done;
                for (std::size_t i = turn; i < s.stands_for.size(); i += turns)
                    done.push_back(s.stands_for[i]);
                note_seams(done);
                if (turn == 0 && is_seen(s) && !stands_up(s))
                    made_.push_back({g, k, draw_step(g, k, done, turns, said)});
                else
                    for (const operation& o : done)
                        table_.carry_out(o);
            }
    }
    static bool is_seen(const work_step<Unit>& s) {
        constexpr work_verb seen[] = {work_verb::lay,  work_verb::fold, work_verb::sew, work_verb::seam,
                                      work_verb::slit, work_verb::clip, work_verb::set, work_verb::handwork};
        return !s.places.empty() && !s.stands_for.empty() &&
               std::find(std::begin(seen), std::end(seen), s.verb) != std::end(seen);
    }
    void note_seams(const std::vector<operation>& done) {
        for (const operation& o : done)
            if (o.kind == operation_kind::seam)
                for (const auto* side : {&design_.seams()[o.index].one, &design_.seams()[o.index].other})
                    for (const chalk_line<Unit>& l : *side)
                        in_seams_.push_back(l.on);
    }
    /// Handwork is drawn as the work lies, which it does not once seams join it to more.
    bool stands_up(const work_step<Unit>& s) const {
        return s.verb == work_verb::handwork && std::any_of(in_seams_.begin(), in_seams_.end(), [&](const cut_part& p) {
                   return std::any_of(s.places.begin(), s.places.end(),
                                      [&](const work_place<Unit>& at) { return table_.in_one_stack(p, at.piece); });
               });
    }

    page draw_step(std::size_t g, std::size_t k, const std::vector<operation>& done, std::size_t turns,
                   const std::vector<std::string>& said) {
        const work_group<Unit>& group = plan_.groups[g];
        step_shown<Unit> shown{group.steps[k], done, {}};
        for (std::size_t i = 0; i < shown.step.places.size(); ++i)
            if (turns > 1 ? i % turns == 0
                          : group.pieces.size() < 2 || shown.step.verb == work_verb::seam ||
                                shown.step.places[i].piece == group.pieces[0])
                shown.places.push_back(shown.step.places[i]);
        step_picture<Unit> made(design_, table_, turns_, by_,
                                labels_.figures.empty() ? rounded_note(by_) : labels_.figures);
        made.words().project = options_.project;
        made.words().title = group.steps.size() > 1
                                 ? sentence({"step ", g + 1, ", ", k + 1, " of ", group.steps.size()})
                                 : sentence({"step ", g + 1});
        if (group.pieces.size() > 1)
            made.words().facts.push_back(sentence({"one of ", group.pieces.size(), " is drawn"}));
        if (labels_.sentences && k < said.size())
            made.words().sentences = in_lines(made.words().title, said[k]);
        made.words().sentence_lines = 7;
        made.words().most_beside = 8;
        page on = made.draw(shown, options_);
        if (!labels_.sentences && k < said.size())
            on.description = said[k] + " " + on.description;
        return on;
    }

    /// Each sentence by itself, under a heading.
    static std::vector<std::string> in_lines(const std::string& heading, const std::string& said) {
        std::vector<std::string> all{heading};
        for (std::size_t from = 0; from < said.size();) {
            const std::size_t stop = said.find(". ", from), end = stop == std::string::npos ? said.size() : stop + 1;
            all.push_back(said.substr(from, end - from));
            from = end + 1;
        }
        return all;
    }

    const making<Unit>& design_;
    const work_plan<Unit>& plan_;
    const Labels& labels_;
    const ruler by_;
    const drawing_options& options_;
    table_work<Unit> table_;
    turns_taken<Unit> turns_{};
    std::vector<cut_part> in_seams_{}; ///< sewn so far
    std::vector<Page> made_{};
};

} // namespace turncloth::detail

#endif
