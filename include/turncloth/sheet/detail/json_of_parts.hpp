// The parts of a sheet as JSON: pieces with their lines, outlines, cloths, meetings, notions and what is warned of.
//
//   json_of(piece)   json_of(notion)
#ifndef TURNCLOTH_SHEET_DETAIL_JSON_OF_PARTS_HPP
#define TURNCLOTH_SHEET_DETAIL_JSON_OF_PARTS_HPP

#include <turncloth/making/choices.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/detail/json_of_making.hpp>
#include <turncloth/sheet/detail/kinds.hpp>
#include <turncloth/sheet/json_lengths.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <cstddef>
#include <cstdint>
#include <string>

namespace turncloth::detail {

inline json json_of(const sheet_caution& c) { return {{"at", heading_of(c.at)}, {"sentence", sound_text(c.sentence)}}; }

template <length_unit Unit>
json json_of(const finished_size<Unit>& s) {
    return {{"width", to_json(s.width())}, {"height", to_json(s.height())}};
}

/// `only`, for a line that is not drawn from end to end, and `brought_to`, for a fold of a pleat, are left out elsewhere.
template <length_unit Unit>
json json_of(const sheet_line<Unit>& l) {
    json j = {{"kind", verb_of(l.kind)},
              {"what", sound_text(l.what)},
              {"parallel_to", name_of(l.parallel_to)},
              {"from_cut_edge", to_json(l.from_cut_edge)},
              {"begins", to_json(l.begins)},
              {"ends", to_json(l.ends)}};
    for (const short_mark<Unit>& t : l.only)
        j["only"].push_back({{"at", name_of(t.at)}, {"size", to_json(t.size)}});
    if (l.brought_to)
        j["brought_to"] = to_json(*l.brought_to);
    return j;
}

template <length_unit Unit>
json json_of(const sheet_eyelets<Unit>& e) {
    return {{"hole", to_json(e.size.hole)},
            {"rim", to_json(e.size.rim)},
            {"from_top", to_json(e.from_top)},
            {"from_left", to_json(e.from_left)}};
}

template <length_unit Unit>
json json_of(const sheet_piece<Unit>& p) {
    const piece<Unit>& from = p.made_from;
    json j = {{"name", sound_text(from.name())},
              {"material", sound_text(from.material())},
              {"count", from.count()},
              {"film", from.is_film()},
              {"frays", from.frays()}};
    if (from.lies() != cloth_lie::as_asked)
        j["lies"] = word_of(from.lies());
    if (!from.inside().empty())
        j["inside"] = sound_text(from.inside());
    j["cut"] = {{"width", to_json(p.width)}, {"height", to_json(p.height)}};
    j["finished"] = json_of(p.finished);
    if (p.corner.value() > 0) {
        j["cut_out_of_each_corner"] = to_json(p.corner);
        j["depth"] = to_json(p.depth);
    }
    for (const sheet_eyelets<Unit>& e : p.eyelets)
        j["eyelets"].push_back(json_of(e));
    for (const edge e : {edge::top, edge::right, edge::bottom, edge::left})
        j["edges"][std::string(name_of(e))] = json_of(from.shape().finish_of(e));
    j["lines"] = json::array();
    for (const sheet_line<Unit>& l : p.lines) {
        j["lines"].push_back(json_of(l));
        if (l.of_finish)
            j["lines"].back()["finish"] = sound_text(std::string(from.shape().finish_of(l.parallel_to).name().text()));
    }
    return j;
}

/// What the project says of a cloth; parts of its size, below zero where it shrinks.
template <length_unit Unit>
json json_of(const project_cloth<Unit>& c) {
    json j = {{"material", sound_text(c.material)}};
    if (c.width.value() > 0)
        j["width"] = to_json(c.width);
    if (c.selvedge.value() > 0)
        j["selvedge"] = to_json(c.selvedge);
    j.update({{"one_way", c.one_way}, {"folded", c.folded}, {"washed", word_of(c.washed)}});
    if (c.join.value() > 0)
        j["join"] = to_json(c.join);
    if (c.repeat_along.value() > 0)
        j["repeat_along"] = to_json(c.repeat_along);
    if (c.repeat_across.value() > 0)
        j["repeat_across"] = to_json(c.repeat_across);
    if (c.change != washing())
        j["change"] = {{"along", to_text(c.change.along.part())}, {"across", to_text(c.change.across.part())}};
    for (const piece_on_hand<Unit>& kept : c.on_hand)
        j["on_hand"].push_back(
            {{"name", sound_text(kept.name)}, {"width", to_json(kept.width)}, {"length", to_json(kept.length)}});
    return j;
}

/// Edges from the corner that was drafted first.
template <length_unit Unit>
json json_of(const outlined_piece<Unit>& p) {
    json edges = json::array();
    for (std::size_t i = 0; i < p.edges.size(); ++i) {
        const drafted_corner<Unit>& c = p.made_from.corners[i];
        edges.push_back({{"across", to_json(c.across)},
                         {"up", to_json(c.up)},
                         {"curved", c.curve.kind != curve_kind::straight},
                         {"length", to_json(p.edges[i].size)},
                         {"finish", json_of(c.edge)},
                         {"notches", to_json(c.notches)},
                         {"trimmed", p.edges[i].trimmed},
                         {"rows", to_json(p.edges[i].sewn)}});
    }
    return {{"name", sound_text(p.name())},
            {"material", sound_text(p.material())},
            {"count", p.count()},
            {"may_turn", p.made_from.may_turn},
            {"within", {{"width", to_json(p.cut.width())}, {"height", to_json(p.cut.height())}}},
            {"finished_within", json_of(p.finished)},
            {"edges", edges}};
}

template <length_unit Unit>
json json_of(const sheet_meeting<Unit>& m) {
    json marks = json::array();
    for (std::int64_t k = 1; k <= m.marks.spans(); ++k)
        marks.push_back({{"longer", to_json(m.marks.mark_on_long(k).from_datum())},
                         {"shorter", to_json(m.marks.mark_on_short(k).from_datum())}});
    return {{"longer", sound_text(m.made_from.longer)},
            {"shorter", sound_text(m.made_from.shorter)},
            {"from", name_of(m.made_from.from)},
            {"fullness", to_text(m.marks.fullness())},
            {"marks", marks}};
}

template <length_unit Unit>
json json_of(const notion<Unit>& n) {
    json details = json::array();
    for (const notion_detail<Unit>& d : n.details()) {
        json j = {{"what", sound_text(d.what)}};
        if (d.count > 0)
            j["count"] = d.count;
        else if (!d.places.empty())
            j["places"] = to_json(d.places);
        else
            j["amount"] = to_json(d.amount);
        if (d.sold != sold_as::not_sold)
            j["sold"] = d.sold == sold_as::as_told ? "as told" : "off a roll";
        details.push_back(j);
    }
    json cautions = json::array();
    for (const sheet_caution& c : n.cautions())
        cautions.push_back(json_of(c));
    return {{"name", sound_text(n.name())},
            {"before_seams", n.goes_in_before_seams()},
            {"details", details},
            {"cautions", cautions}};
}

template <length_unit Unit>
json json_of(const bulk_warning<Unit>& w) {
    json j = {{"piece", sound_text(w.piece)}, {"least", w.least}, {"layers", w.layers}, {"limit", w.limit}};
    for (const edge e : w.edges)
        j["edges"].push_back(name_of(e));
    if (w.mitre_leg) {
        j["mitre_leg"] = to_json(*w.mitre_leg);
        j["mitre_kept"] = to_json(w.mitre_kept());
    }
    j["sentence"] = sound_text(w.what());
    return j;
}

} // namespace turncloth::detail

#endif
