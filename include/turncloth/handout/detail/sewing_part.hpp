// The part of a handout about the making: tools, steps with their checks and cautions, and what is looked at at the end.
//
//   handout_sewing<U>(sheet, ruler)
//     .add_finished(to)  .add_tools(to)  .add_other_cautions(to)  .add_steps(to)  .add_inspection(to)  .add_cautions(to, work)
#ifndef TURNCLOTH_HANDOUT_DETAIL_SEWING_PART_HPP
#define TURNCLOTH_HANDOUT_DETAIL_SEWING_PART_HPP

#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/step.hpp>
#include <turncloth/handout/detail/shared.hpp>
#include <turncloth/making/stitched.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/measure/any_length.hpp>
#include <turncloth/measure/irrational.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/page/drawing.hpp>
#include <turncloth/panel/names.hpp>
#include <turncloth/sheet/text.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class handout_sewing {
public:
    handout_sewing(const sheet<Unit>& s, const ruler& by) : sheet_(s), words_{.by = by, .in_lines = true} {
        for (const work_group<Unit>& g : s.steps.groups) {
            cared_for_.insert(g.care.begin(), g.care.end());
            for (const work_step<Unit>& step : g.steps)
                look_at(step);
        }
    }

    /// Front and back, where the sheet knows how it is made.
    void add_finished(document& to) const {
        for (page& p : pages_of_finished(sheet_, *words_.by, handout_drawing())) {
            std::string caption = capital(p.title);
            to.add(document::drawing{std::move(p), {}, std::move(caption), false});
        }
    }

    /// Only what a step asks for.
    void add_tools(document& to) const {
        document::ticks t;
        const auto need = [&](bool needed, std::string_view what) {
            if (needed)
                t.items.emplace_back(word(what));
        };
        const auto uses = [&](work_verb v) { return verbs_.contains(v); };
        const bool film = std::any_of(sheet_.pieces.begin(), sheet_.pieces.end(),
                                      [](const auto& p) { return p.made_from.is_film(); });
        need(true, sentence({"A long rule and a square, read to ", graduation_text(*words_.by)}));
        need(uses(work_verb::cut), "Shears, or a rotary cutter and its mat");
        need(uses(work_verb::slit) || uses(work_verb::clip), "Small sharp scissors");
        need(true, "Chalk, or a marking pencil that comes out of the cloth");
        need(film, "A wax pencil for film, and clips in place of pins");
        need(uses(work_verb::lay) || uses(work_verb::pleat) || uses(work_verb::seam), "Pins or clips");
        const bool washed = std::any_of(sheet_.cloths.begin(), sheet_.cloths.end(),
                                        [](const auto& c) { return c.washed != washed_when::unwashed; });
        need(irons_ || washed, "An iron and a pressing board");
        need(creases_, "A blunt tool to crease film by hand");
        if (const std::size_t most = most_layers(); sews_ && most > 0)
            need(true, sentence({"A sewing machine, with a needle meant for up to ", most, " layers"}));
        else
            need(sews_, "A sewing machine");
        need(zips_, "A zipper foot for it");
        need(by_hand_, "A sewing needle, for what is sewn by hand");
        need(eyelets_, "A setting tool for the eyelets, of their size");
        need(snaps_, "A setting tool for the snaps, of their size");
        need(eyelets_ || snaps_ || zips_, "Eye protection");
        need(uses(work_verb::turn_out), "A blunt point, to push corners out");
        to.add(std::move(t));
    }

    /// Each caution stands in full in the first step that it belongs to, before what is done; later steps name that step.
    void add_steps(document& to) const {
        for (const std::string& sentence : preface_of(sheet_.steps, words_))
            to.add(document::paragraph{sentence});
        const std::vector<step_page> pictures =
            pages_of_steps(sheet_, {.sentences = false}, *words_.by, handout_drawing());
        auto shown = pictures.begin();
        document::steps all;
        std::map<caution::work, std::size_t> said_at;
        for (const work_group<Unit>& g : sheet_.steps.groups) {
            document::step step;
            const std::size_t number = all.all.size() + 1;
            for (document::caution& box : cautions_of(g, number, said_at))
                step.blocks.emplace_back(std::move(box));
            std::vector<std::string> sentences = sentences_of(sheet_.steps, g, words_);
            const std::string check = g.check ? sentences.back() : std::string();
            if (g.check)
                sentences.pop_back();
            for (std::size_t i = 0; i < sentences.size(); ++i) {
                add_lines(step, sentences[i]);
                for (; shown != pictures.end() && shown->group == number - 1 && shown->step == i; ++shown)
                    step.blocks.emplace_back(document::drawing{shown->page, {}, capital(shown->page.title), false});
            }
            if (g.check)
                step.blocks.emplace_back(document::ticks{{check}});
            all.all.push_back(std::move(step));
        }
        to.add(std::move(all));
    }

    /// With room for what was measured, and how far that may be off. A diagonal tells whether the corners are square; what is
    /// filled until it is round has none, and stands as thick as it is filled.
    void add_inspection(document& to) const {
        document::table t{sentence({"Measure and look at it"}),
                          {sentence({"Look at"}), sentence({"Should be"}), sentence({"Within"}), sentence({"Measured"}),
                           sentence({"Right"})},
                          {}};
        const std::string off = text(off_in_size());
        const auto ask = [&](std::string_view english, std::string should_be, std::string within) {
            const std::string what(word(english));
            t.rows.push_back({{what},
                              {std::move(should_be), document::in_cell::figure},
                              {std::move(within), document::in_cell::figure},
                              {what, document::in_cell::blank},
                              {what, document::in_cell::tick}});
        };
        const finished_size<Unit>& size = sheet_.finished;
        ask("Finished width", text(size.width()), off);
        if (is_filled_loosely()) {
            ask("Finished height", sentence({"about ", text(size.height())}), sentence({"as it is filled"}));
        } else {
            ask("Finished height", text(size.height()), off);
            ask("One diagonal", diagonal_of(size), off);
            ask("The other diagonal", sentence({"the same"}), off);
        }
        const std::string exactly = sentence({"exactly"}), none = sentence({"none"});
        if (const std::int64_t rows = rows_sewn(); rows > 0)
            ask("Rows of stitching", std::to_string(rows), exactly);
        for (const sheet_piece<Unit>& p : sheet_.pieces)
            for (const sheet_eyelets<Unit>& e : p.eyelets)
                ask(sentence({"Eyelets in the ", p.made_from.name()}), std::to_string(e.from_left.size()), exactly);
        ask("Raw edges in sight", none, exactly);
        ask("Thread ends left long", none, exactly);
        if (cared_for_.contains(caution::work::pinning))
            ask("Pins and needles, counted again", sentence({"as many as before"}), exactly);
        to.add(std::move(t));
        static constexpr char of_a_size[] = ", the smallest step of the rule. A size lies between two edges, each of "
                                            "them cut and folded, and may be off by four "
                                            "such halves: ";
        to.add(
            document::paragraph{sentence({"A cut, a mark, a fold or a row is right within half of ",
                                          graduation_text(*words_.by), of_a_size, off, ". This is common practice."})});
    }

    /// Those of works that no step has stand before the steps.
    void add_other_cautions(document& to) const {
        document::caution box{sentence({"Safety"}), {}};
        for (const sheet_caution& c : sheet_.cautions)
            if (!cared_for_.contains(c.at) && c.at != caution::work::buying && c.at != caution::work::using_it)
                box.sentences.push_back(said_again(c.sentence));
        box.sentences.push_back(
            sentence({"Local codes, the makers' instructions and licensed practice go before this handout."}));
        to.add(std::move(box));
    }
    bool add_cautions(document& to, caution::work at) const {
        document::caution box{sentence({"Safety"}), sentences_at(at)};
        const bool any = !box.sentences.empty();
        if (any)
            to.add(std::move(box));
        return any;
    }

private:
    std::string text(length<Unit> l) const { return unbroken(to_text(l, *words_.by)); }

    void look_at(const work_step<Unit>& step) {
        verbs_.insert(step.verb);
        const bool sewn = step.verb == work_verb::sew || step.verb == work_verb::seam || step.verb == work_verb::join ||
                          step.verb == work_verb::apply || step.verb == work_verb::close_up ||
                          step.verb == work_verb::hem || step.verb == work_verb::zipper;
        sews_ |= sewn && !step.by_hand;
        by_hand_ |= step.by_hand || (step.verb == work_verb::close && step.closing == closed_by::hand);
        irons_ |= step.verb == work_verb::fold && !step.film;
        creases_ |= step.verb == work_verb::fold && step.film;
        zips_ |= step.verb == work_verb::zipper;
        for (const cut_part& p : step.through)
            zips_ |= sheet_.steps.parts[p.index].bought;
        eyelets_ |= step.verb == work_verb::set && step.spot == spot_kind::eyelet;
        snaps_ |= step.verb == work_verb::set && step.spot == spot_kind::snap;
    }

    bool is_filled_loosely() const {
        return std::any_of(sheet_.notions.begin(), sheet_.notions.end(), [](const notion<Unit>& n) {
            return std::any_of(n.cautions().begin(), n.cautions().end(),
                               [](const sheet_caution& c) { return c.sentence == caution::loose_filling.sentence; });
        });
    }
    std::size_t most_layers() const {
        std::size_t most = 0;
        for (const work_group<Unit>& g : sheet_.steps.groups)
            for (const work_step<Unit>& step : g.steps)
                for (const work_place<Unit>& p : step.places)
                    most = std::max(most, step.by_hand ? 0 : p.most);
        return most;
    }
    std::int64_t rows_sewn() const {
        std::int64_t rows = 0;
        for (const seam_run<Unit>& r : stitched_in(sheet_.steps).runs)
            rows += r.count;
        return rows;
    }
    /// Common practice: half a graduation of the rule that is read at every cut and fold, of which a size has two each.
    length<Unit> off_in_size() const {
        const ruler& by = *words_.by;
        const length<Unit> graduation = by.shows == units_shown::inches ? as<Unit>(by.inches)
                                        : by.shows == units_shown::centimetres
                                            ? as<Unit>(by.centimetres)
                                            : by_edition<Unit>(by.inches, by.centimetres);
        return graduation / fraction(2) * fraction(4);
    }
    /// Found to a hundredth of a graduation, and then written as every length is.
    std::string diagonal_of(const finished_size<Unit>& size) const {
        const length<Unit> step = by_edition<Unit>(words_.by->inches, words_.by->centimetres) / fraction(100);
        return text(diagonal(nearest_to(size.width(), step), nearest_to(size.height(), step), step, rounding::nearest));
    }

    /// What stands in lines of its own is a list, between what is said before it and after it.
    static void add_lines(document::step& to, const std::string& said) {
        const std::size_t first = said.find('\n'), last = said.rfind('\n');
        to.blocks.emplace_back(document::paragraph{said.substr(0, first)});
        if (first == std::string::npos)
            return;
        document::list pairs;
        for (std::size_t at = first; at < last;) {
            const std::size_t end = said.find('\n', at + 1);
            pairs.items.push_back(said.substr(at + 1, end - at - 1));
            at = end;
        }
        if (!pairs.items.empty())
            to.blocks.emplace_back(std::move(pairs));
        if (last + 1 < said.size())
            to.blocks.emplace_back(document::paragraph{said.substr(last + 1)});
    }
    std::vector<std::string> sentences_at(caution::work at) const {
        std::vector<std::string> all;
        for (const sheet_caution& c : sheet_.cautions)
            if (c.at == at)
                all.push_back(said_again(c.sentence));
        return all;
    }
    static std::string work_in_words(caution::work at) {
        return turncloth::said({std::string("caution.").append(heading_of(at)), heading_of(at)}, {});
    }
    std::vector<document::caution> cautions_of(const work_group<Unit>& g, std::size_t number,
                                               std::map<caution::work, std::size_t>& said_at) const {
        document::caution box{sentence({"Safety"}), {}};
        std::vector<std::string> again;
        for (const caution::work at : g.care) {
            const std::vector<std::string> sentences = sentences_at(at);
            if (sentences.empty())
                continue;
            if (const auto [said, first] = said_at.emplace(at, number); first)
                box.sentences.insert(box.sentences.end(), sentences.begin(), sentences.end());
            else
                again.push_back(sentence({work_in_words(at), " (step ", said->second, ")"}));
        }
        std::vector<document::caution> all;
        if (!box.sentences.empty())
            all.push_back(std::move(box));
        if (!again.empty())
            all.push_back({sentence({"Safety"}), {sentence({"as for ", enumerated(again), "."})}, false});
        return all;
    }

    const sheet<Unit>& sheet_;
    const wording words_;
    std::set<work_verb> verbs_{};
    std::set<caution::work> cared_for_{};
    bool sews_ = false, by_hand_ = false, irons_ = false, creases_ = false, zips_ = false, eyelets_ = false,
         snaps_ = false;
};

} // namespace turncloth::detail

#endif
