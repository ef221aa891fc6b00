// The steps of a plan in sentences.
//
//   sentences_of(plan, group)                one for each step; exact lengths, in English
//   sentences_of(plan, group, wording)       rounded to a ruler; said otherwise where a table has a text for a key
//   sentence_of(plan, group, wording)        all of them, one after another
//   preface_of(plan, wording)                what holds for all steps: how edges are named, how rows end
//
//   for (const work_group<inch>& g : plan.groups)
//       std::puts(sentence_of(plan, g).c_str());
//   // "With the wrong side of the tools up, turn its top edge over by 3/8 in, and press. ..."
//
// What is said is in phrases.hpp. The lengths are written here; the rest is the same for every unit and is compiled once.
#ifndef TURNCLOTH_MAKING_WORK_WORDS_HPP
#define TURNCLOTH_MAKING_WORK_WORDS_HPP

#include <turncloth/making/detail/telling.hpp>
#include <turncloth/making/phrases.hpp>
#include <turncloth/making/work_step.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/write.hpp>

#include <optional>
#include <string>
#include <vector>

namespace turncloth {

/// How steps are said: exact where no ruler is given.
struct wording {
    std::optional<ruler> by{};
    phrase_table table{};
    bool in_lines = false; ///< what meets what along a seam of three pairs or more: each pair on a line of its own
};

namespace detail {

template <length_unit Unit>
std::string told_length(const length<Unit>& l, const wording& w) {
    return w.by ? to_text(l, *w.by) : to_text(l);
}

/// The unit stands after the last of a list, or after each where two units are shown.
template <length_unit Unit>
std::string told_number(const length<Unit>& l, const wording& w) {
    if (!w.by)
        return number_text(l);
    switch (w.by->shows) {
    case units_shown::inches:
        return number_text(nearest_to(as<inch>(l), w.by->inches, w.by->halfway));
    case units_shown::centimetres:
        return number_text(nearest_to(as<centimetre>(l), w.by->centimetres, w.by->halfway));
    case units_shown::both:
        break;
    }
    return to_text(l, *w.by);
}

template <length_unit Unit>
told_distances told(const seen_distances<Unit>& m, const wording& w) {
    told_distances made{m.from, {}, true, false};
    for (std::size_t i = 0; i < m.at.size(); ++i) {
        const length<Unit>& l = m.at[i];
        const length<Unit> positive = l < length<Unit>() ? -l : l;
        made.none &= l == length<Unit>();
        made.beyond |= l < length<Unit>();
        made.at.push_back(i + 1 < m.at.size() ? told_number(positive, w) : told_length(positive, w));
    }
    return made;
}

template <length_unit Unit>
told_place told(const work_place<Unit>& p, const wording& w) {
    told_place made{.piece = p.piece, .side = p.side, .own_left = p.own_left, .own_top = p.own_top};
    made.across = told(p.across, w);
    made.along = told(p.along, w);
    made.meets = told(p.meets, w);
    made.meets_along = told(p.meets_along, w);
    made.marks = told(p.marks, w);
    made.meets_marks = told(p.meets_marks, w);
    if (p.surplus > length<Unit>())
        made.surplus = told_length(p.surplus, w);
    made.end_to_end = p.end_to_end;
    made.all_round = p.all_round;
    made.corner = p.corner;
    made.turned = told_length(p.turned, w);
    if (p.goes_round > length<Unit>()) {
        made.goes_round = told_length(p.goes_round, w);
        made.lies_flat = told_length(p.turned - p.goes_round, w);
    }
    made.sewn = told_length(p.sewn, w);
    made.least = p.least;
    made.most = p.most;
    return made;
}

template <length_unit Unit>
std::string told_size(const work_check<Unit>& c, const wording& w) {
    return w.by ? size_text(c.width, c.height, *w.by) : number_text(c.width) + " x " + to_text(c.height);
}

template <length_unit Unit>
told_step told(const work_step<Unit>& s, const wording& w) {
    told_step made{.verb = s.verb, .on = s.on, .through = s.through, .what = s.what, .up = s.up, .towards = s.towards};
    if (s.verb == work_verb::handwork)
        made.what = fit_to_print(word(s.what)); // its own words, in a language that has just these
    for (const work_place<Unit>& p : s.places)
        made.places.push_back(told(p, w));
    if (s.fit.is_given()) {
        made.fit = {s.fit.taken_up, s.fit.spans, told(s.marks_on_piece, w), told(s.marks_on_other, w), {}};
        made.fit.extra = told_length((s.fit.of_piece - s.fit.on) / fraction(s.fit.spans), w);
    }
    for (const seam_opening<Unit>& o : s.left_open)
        made.left_open.push_back({o.what, o.in, told(o.along, w)});
    made.spot = s.spot;
    made.folds = s.folds;
    made.closing = s.closing;
    if (s.width > length<Unit>())
        made.width = told_length(s.width, w);
    if (s.height > length<Unit>())
        made.height = told_length(s.height, w);
    if (s.overrun > length<Unit>())
        made.overrun = told_length(s.overrun, w);
    made.pressed = s.pressed;
    made.straight = s.straight;
    made.by_hand = s.by_hand;
    made.carries = s.carries;
    made.carries_beneath = s.carries_beneath;
    made.film = s.film;
    made.turned_over = s.turned_over;
    made.beneath = s.beneath;
    made.upside_down = s.upside_down;
    made.on_a_row = s.on_a_row;
    made.on_a_seam = s.on_a_seam;
    made.once_more = s.once_more;
    return made;
}

/// What every row is sewn back over by, where that is the same for all that the machine sews; otherwise nothing.
template <length_unit Unit>
std::optional<length<Unit>> common_overrun(const work_plan<Unit>& plan) {
    std::optional<length<Unit>> common;
    for (const work_group<Unit>& g : plan.groups)
        for (const work_step<Unit>& s : g.steps)
            if (s.verb == work_verb::sew && !s.by_hand) {
                if (common && *common != s.overrun)
                    return {};
                common = s.overrun;
            }
    return common && *common > length<Unit>() ? common : std::nullopt;
}

} // namespace detail

/// One for each step, and one for what to check.
template <length_unit Unit>
std::vector<std::string> sentences_of(const work_plan<Unit>& plan, const work_group<Unit>& g, const wording& w = {}) {
    detail::told_group made{.pieces = g.pieces, .every_copy = g.every_copy, .one_after_another = g.one_after_another};
    const bool said_before = detail::common_overrun(plan).has_value();
    for (const work_step<Unit>& s : g.steps) {
        made.steps.push_back(detail::told(s, w));
        if (said_before && !s.by_hand)
            made.steps.back().overrun.clear();
    }
    if (g.check) {
        made.checked = g.check->of;
        made.size = detail::told_size(*g.check, w);
    }
    return detail::lazy_teller<detail::for_any<Unit>>(plan.parts, w.table, w.in_lines).tell(made);
}

template <length_unit Unit>
std::string sentence_of(const work_plan<Unit>& plan, const work_group<Unit>& g, const wording& w = {}) {
    std::string all;
    for (const std::string& s : sentences_of(plan, g, w))
        all.append(all.empty() ? "" : " ").append(s);
    return all;
}

template <length_unit Unit>
std::vector<std::string> preface_of(const work_plan<Unit>& plan, const wording& w = {}) {
    std::vector<std::string> all;
    bool wrong_side = false;
    for (const work_group<Unit>& g : plan.groups)
        for (const work_step<Unit>& s : g.steps)
            wrong_side |= s.up == face::wrong;
    if (wrong_side)
        all.push_back(said(phrases::orientation, {}, w.table));
    if (const auto overrun = detail::common_overrun(plan))
        all.push_back(said(phrases::overrun_always, {{"overrun", detail::told_length(*overrun, w)}}, w.table));
    return all;
}

TURNCLOTH_ONCE(std::vector<std::string> sentences_of(const work_plan<inch>&, const work_group<inch>&, const wording&));
TURNCLOTH_ONCE(std::vector<std::string> sentences_of(const work_plan<centimetre>&, const work_group<centimetre>&,
                                                     const wording&));
TURNCLOTH_ONCE(std::vector<std::string> preface_of(const work_plan<inch>&, const wording&));
TURNCLOTH_ONCE(std::vector<std::string> preface_of(const work_plan<centimetre>&, const wording&));

} // namespace turncloth

#endif
