// The steps of making as JSON: the data of making/work_step.hpp, what is empty left out, and each group in sentences.
//
//   json_of_steps(plan)
#ifndef TURNCLOTH_SHEET_DETAIL_JSON_OF_STEPS_HPP
#define TURNCLOTH_SHEET_DETAIL_JSON_OF_STEPS_HPP

#include <turncloth/making/choices.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/sheet/detail/kinds.hpp>
#include <turncloth/sheet/json_lengths.hpp>

#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

constexpr std::string_view name_of(work_verb verb) {
    constexpr std::string_view names[] = {"cut",      "prepare", "handwork", "zipper",  "pleat",    "lay",
                                          "hem",      "fold",    "sew",      "seam",    "open",     "slit",
                                          "clip",     "set",     "join",     "apply",   "close up", "add",
                                          "turn out", "put in",  "close",    "fold up", "roll"};
    static_assert(std::size(names) == static_cast<std::size_t>(work_verb::roll) + 1, "every verb has a name");
    return names[static_cast<std::size_t>(verb)];
}
/// A piece by its name; of several cut alike, which one, from 1.
inline json json_of(const cut_part& p, const std::vector<work_part>& parts) {
    json j = {{"piece", sound_text(parts[p.index].name)}};
    if (parts[p.index].count > 1)
        j["copy"] = p.copy + 1;
    return j;
}
inline json json_of(const seen_edge& e, const std::vector<work_part>& parts) {
    json j = json_of(e.of, parts);
    j["edge"] = turncloth::name_of(e.side);
    j["folded"] = e.folded;
    if (e.cut_out_beside)
        j["cut_out_beside"] = turncloth::name_of(*e.cut_out_beside);
    return j;
}
inline json json_of(const std::vector<cut_part>& some, const std::vector<work_part>& parts) {
    json all = json::array();
    for (const cut_part& p : some)
        all.push_back(json_of(p, parts));
    return all;
}

/// Members that are left out where they do not hold.
inline void said_where_so(json& j, std::initializer_list<std::pair<const char*, bool>> all) {
    for (const auto& [name, holds] : all)
        if (holds)
            j[name] = true;
}

template <length_unit Unit>
json json_of(const work_place<Unit>& p, const std::vector<work_part>& parts) {
    json j = json_of(p.piece, parts);
    j["side"] = turncloth::name_of(p.side);
    const auto distances = [&](const char* from, const char* at, const seen_distances<Unit>& d) {
        if (d.from.of.is_given())
            j[from] = json_of(d.from, parts);
        if (!d.at.empty())
            j[at] = to_json(d.at);
    };
    distances("from", "at", p.across);
    distances("along_from", "along", p.along);
    distances("meets", "meets_at", p.meets);
    distances("meets_along_from", "meets_along", p.meets_along);
    distances("marks_from", "marks", p.marks);
    distances("meets_marks_from", "meets_marks", p.meets_marks);
    if (p.surplus.value() > 0)
        j["surplus"] = to_json(p.surplus);
    if (p.end_to_end.is_given())
        j["end_to_end_of"] = json_of(p.end_to_end, parts);
    for (const auto& [name, e] : {std::pair("own_left", p.own_left), std::pair("own_top", p.own_top),
                                  std::pair("begins_on", p.begins_on), std::pair("ends_on", p.ends_on)})
        if (e.of.is_given())
            j[name] = json_of(e, parts);
    said_where_so(j, {{"corner", p.corner}, {"all_round", p.all_round}});
    if (p.turned.value() > 0)
        j["turned"] = to_json(p.turned);
    if (p.goes_round.value() > 0)
        j["goes_round"] = to_json(p.goes_round);
    if (p.sewn.value() > 0)
        j["sewn"] = to_json(p.sewn);
    if (p.most > 0)
        j["layers"] = {{"least", p.least}, {"most", p.most}};
    return j;
}

template <length_unit Unit>
void how_it_lies(json& j, const work_step<Unit>& s) {
    if (s.verb == work_verb::fold || s.verb == work_verb::lay)
        j["towards"] = word_of(s.towards);
    if (s.verb == work_verb::set)
        j["spot"] = word_of(s.spot);
    if (s.verb == work_verb::close || s.verb == work_verb::seam)
        j["closed_by"] = word_of(s.closing);
    said_where_so(j, {{"film", s.film},
                      {"carries", s.carries},
                      {"carries_beneath", s.carries_beneath},
                      {"turned_over", s.turned_over},
                      {"beneath", s.beneath},
                      {"upside_down", s.upside_down},
                      {"on_a_row", s.on_a_row},
                      {"on_a_seam", s.on_a_seam},
                      {"once_more", s.once_more}});
    if (s.fit.is_given())
        j["fit"] = {{"taken_up", word_of(s.fit.taken_up)},
                    {"spans", s.fit.spans},
                    {"of_piece", to_json(s.fit.of_piece)},
                    {"on", to_json(s.fit.on)}};
}

template <length_unit Unit>
json json_of(const work_step<Unit>& s, const std::vector<work_part>& parts) {
    json j = {{"verb", name_of(s.verb)}};
    if (!s.what.empty())
        j["what"] = sound_text(s.what);
    if (!s.places.empty())
        j["up"] = word_of(s.up);
    how_it_lies(j, s);
    if (s.on.is_given())
        j["on"] = json_of(s.on, parts);
    if (!s.through.empty())
        j["through"] = json_of(s.through, parts);
    if (s.verb == work_verb::sew || s.verb == work_verb::seam) {
        j["stitch"] = s.stitch.number;
        j["by_hand"] = s.by_hand;
        if (s.overrun.value() > 0)
            j["overrun"] = to_json(s.overrun);
    }
    if (!s.marks_on_piece.at.empty())
        j["marks"] = {{"on_piece", to_json(s.marks_on_piece.at)}, {"on_other", to_json(s.marks_on_other.at)}};
    if (s.verb == work_verb::seam)
        j["rows"] = s.runs;
    for (const seam_opening<Unit>& o : s.left_open)
        j["left_open"].push_back({{"what", sound_text(o.what)},
                                  {"in", json_of(o.in, parts)},
                                  {"from", json_of(o.along.from, parts)},
                                  {"at", to_json(o.along.at)}});
    if (s.folds > 0)
        j["folded_in_half"] = s.folds;
    if (s.height.value() > 0)
        j["box"] = {{"width", to_json(s.width)}, {"height", to_json(s.height)}};
    else if (s.width.value() > 0)
        j["cut_away"] = to_json(s.width);
    j["places"] = json::array();
    for (const work_place<Unit>& p : s.places)
        j["places"].push_back(json_of(p, parts));
    return j;
}

template <length_unit Unit>
json json_of_steps(const work_plan<Unit>& plan) {
    json all = json::array();
    for (const work_group<Unit>& g : plan.groups) {
        json j = {{"pieces", json_of(g.pieces, plan.parts)}};
        j["every_copy"] = g.every_copy;
        j["one_after_another"] = g.one_after_another;
        j["steps"] = json::array();
        for (const work_step<Unit>& s : g.steps)
            j["steps"].push_back(json_of(s, plan.parts));
        if (g.check)
            j["check"] = {{"of", json_of(g.check->of, plan.parts)},
                          {"width", to_json(g.check->width)},
                          {"height", to_json(g.check->height)}};
        j["cautions"] = json::array();
        for (const caution::work at : g.care)
            j["cautions"].push_back(heading_of(at));
        j["sentences"] = sound_texts(sentences_of(plan, g));
        all.push_back(std::move(j));
    }
    return all;
}

} // namespace turncloth::detail

#endif
