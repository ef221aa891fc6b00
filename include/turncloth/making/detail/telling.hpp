// Sentences of steps whose lengths are written already: grammar, the same for every unit.
//
//   class teller(parts, table)     .tell(group): its sentences
#ifndef TURNCLOTH_MAKING_DETAIL_TELLING_HPP
#define TURNCLOTH_MAKING_DETAIL_TELLING_HPP

#include <turncloth/making/detail/telling_seams.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <class Late>
class lazy_teller : lazy_seam_teller<Late> {
public:
    using lazy_seam_teller<Late>::lazy_seam_teller;

    std::vector<std::string> tell(const told_group& g) {
        group_ = &g;
        std::vector<std::string> all;
        for (std::size_t i = 0; i < g.steps.size(); ++i) {
            const told_step* before = i > 0 ? &g.steps[i - 1] : nullptr;
            std::string step = tell_step(g.steps[i], before) + this->held(g, i);
            if (g.steps[i].turned_over && !says_side(g.steps[i], before))
                step = say(phrases::turn_over, {}) + " " + capital(step);
            all.push_back(
                g.one_after_another && i == 0
                    ? capital(say(phrases::one_after_another,
                                  {{"piece", group_name()}, {"step", capital(step)}, {"small_step", small(step)}}))
                : g.steps[i].verb == work_verb::handwork ? step // as it was given
                                                         : capital(step));
        }
        if (g.checked.is_given())
            all.push_back(capital(say(phrases::check, {{"piece", name(g.checked)}, {"size", g.size}})));
        return all;
    }

private:
    using namer = lazy_seam_teller<Late>;
    using namer::all_copies, namer::copy_name, namer::corner_out, namer::different, namer::edge_in_words,
        namer::edges_of, namer::from_to, namer::group_, namer::group_name, namer::layers, namer::listed, namer::name,
        namer::names, namer::own_edge, namer::say, namer::seam, namer::side, namer::small, namer::span_of,
        namer::taking_up, namer::the_edges;

    std::string tell_step(const told_step& s, const told_step* before) const {
        switch (s.verb) {
        case work_verb::lay:
            return s.places[0].across.at.empty() ? lay_inside(s) : lay(s);
        case work_verb::fold:
            return fold(s, before);
        case work_verb::sew:
            return sew(s, before);
        case work_verb::seam:
            return seam(s);
        case work_verb::slit:
            return s.places[0].corner ? corner_out(s.places[0]) : slit(s);
        case work_verb::clip:
            return clip(s);
        case work_verb::set:
            return set(s);
        case work_verb::handwork:
            return say(phrases::handwork, {{"what", s.what}});
        default:
            return in_short(s);
        }
    }

    /// Whether its sentence says which side lies up.
    bool says_side(const told_step& s, const told_step* before) const {
        return s.verb == work_verb::lay || (s.verb == work_verb::slit && !s.places[0].corner) ||
               (s.verb == work_verb::fold && (s.places[0].corner || s.on_a_seam || !(s.on_a_row || again(s, before))));
    }
    bool again(const told_step& s, const told_step* before) const {
        return s.once_more && before != nullptr && edges_of(*before) == edges_of(s);
    }
    /// Steps that have a name at most.
    std::string in_short(const told_step& s) const {
        const auto piece = [&] { return s.places.empty() ? std::string() : all_copies(s.places[0].piece); };
        switch (s.verb) {
        case work_verb::cut:
            return say(phrases::cut, {});
        case work_verb::prepare:
            return say(phrases::prepare, {{"what", said_again(s.what)}});
        case work_verb::pleat:
            return say(phrases::pleat, {{"piece", piece()}});
        case work_verb::zipper:
            return say(s.once_more ? phrases::zipper_many : phrases::zipper_one, {{"piece", piece()}});
        case work_verb::hem:
            return say(phrases::hem, {{"edges", the_edges(edges_of(s))}, {"piece", piece()}});
        case work_verb::join:
            return say(phrases::join, {{"piece", piece()}, {"on", all_copies(s.on)}});
        case work_verb::apply:
            return say(
                s.width.empty() ? phrases::apply : phrases::apply_rows,
                {{"piece", piece()}, {"on", all_copies(s.on)}, {"inset", s.width}, {"edges", the_edges(edges_of(s))}});
        case work_verb::close_up:
            return say(phrases::close_up, {{"pieces", names_of_places(s)}});
        case work_verb::add:
            return say(phrases::add, {{"what", s.what}});
        case work_verb::open:
            return say(phrases::open_up, {{"what", s.what}});
        case work_verb::turn_out:
            return say(phrases::turn_out, {{"what", s.what}});
        case work_verb::put_in:
            return say(s.folds > 1    ? phrases::put_in_folded_more
                       : s.folds == 1 ? phrases::put_in_folded
                                      : phrases::put_in,
                       {{"what", s.what}, {"folds", std::to_string(s.folds)}});
        case work_verb::close:
            return say(s.closing == closed_by::hand     ? phrases::close_by_hand
                       : s.closing == closed_by::zipper ? phrases::close_zipper
                       : s.closing == closed_by::tie    ? phrases::close_tie
                                                        : phrases::close_other,
                       {{"what", s.what}});
        case work_verb::fold_up:
            return say(phrases::fold_up, {});
        default:
            return say(phrases::roll, {});
        }
    }
    std::string names_of_places(const told_step& s) const {
        return different(s.places, [&](const told_place& p) { return all_copies(p.piece); });
    }

    std::string fold(const told_step& s, const told_step* before) const {
        std::string all = turn_over(s, before);
        if (!s.places[0].goes_round.empty())
            all.append(" ").append(say(
                phrases::fold_round, {{"round", different(s.places, [](const told_place& q) { return q.goes_round; })},
                                      {"flat", different(s.places, [](const told_place& q) { return q.lies_flat; })}}));
        return all;
    }
    std::string turn_over(const told_step& s, const told_step* before) const {
        const told_place& p = s.places[0];
        const std::string press = say(s.film ? phrases::press_film : phrases::press_iron, {});
        const std::vector<edge> edges = edges_of(s);
        const auto turned = [](const told_place& q) { return q.turned; };
        const std::string by = different(s.places, turned);
        if (p.corner)
            return say(s.once_more ? phrases::fold_corner_again : phrases::fold_corner,
                       {{"up", side(s.up)},
                        {"piece", name(p.piece)},
                        {"level", side(p.side)},
                        {"upright", side(p.across.from.side)},
                        {"turned", by},
                        {"press", press}});
        if (s.on_a_seam)
            return say(phrases::fold_on_seam, {{"up", side(s.up)},
                                               {"piece", name(p.piece)},
                                               {"edges", the_edges(edges)},
                                               {"turned", by},
                                               {"press", press}});
        if (s.on_a_row)
            return say(phrases::fold_on_row, {{"piece", name(p.piece)},
                                              {"edge", edge_in_words(p.across.from, edges)},
                                              {"turned", by},
                                              {"press", press}});
        if (again(s, before))
            return say(edges.size() == 1 ? phrases::fold_more_one : phrases::fold_more_many,
                       {{"turned", by}, {"press", press}});
        const bool known = before != nullptr && before->up == s.up && before->places[0].piece.index == p.piece.index;
        return say(known ? phrases::fold_next : phrases::fold, {{"up", side(s.up)},
                                                                {"piece", name(p.piece)},
                                                                {"edges", the_edges(edges, p.across.from.folded)},
                                                                {"turned", by},
                                                                {"press", press}});
    }

    std::string sew(const told_step& s, const told_step* before) const {
        const told_place& p = s.places[0];
        const bool hem = before != nullptr && before->verb == work_verb::fold && p.across.at.size() == 1 &&
                         p.across.from.folded && p.across.from.of.index == p.piece.index &&
                         edges_of(*before) == edges_of(s);
        const std::string sewn = different(s.places, [](const told_place& q) { return q.sewn; });
        const std::string at = different(s.places, [&](const told_place& q) { return listed(q.across.at); });
        const std::vector<edge> sides = sides_measured_from(s);
        std::string all;
        if (hem)
            all = say(edges_of(s).size() == 1 ? phrases::hem_one : phrases::hem_many,
                      {{"at", at}, {"sewn", sewn}, {"layers", layers(s)}});
        else
            all = say(p.across.at.size() > 1                 ? phrases::row_many
                      : sides.size() > 1 || several_spans(s) ? phrases::row_each
                                                             : phrases::row_one,
                      {{"count", std::to_string(p.across.at.size())},
                       {"walls", names(s.through.empty() ? std::vector<cut_part>{p.piece} : s.through)},
                       {"at", at},
                       {"edge", edge_in_words(p.across.from, sides)},
                       {"ends",
                        several_spans(s) ? all_spans(s) : different(s.places, [&](const auto& q) { return ends(q); })},
                       {"sewn", sewn},
                       {"layers", layers(s)}});
        if (s.by_hand)
            all += " " + say(phrases::by_hand, {});
        return s.overrun.empty() ? all : all + " " + say(phrases::overrun, {{"overrun", s.overrun}});
    }
    static std::vector<edge> sides_measured_from(const told_step& s) {
        std::vector<edge> all;
        for (const told_place& p : s.places)
            if (std::find(all.begin(), all.end(), p.across.from.side) == all.end())
                all.push_back(p.across.from.side);
        return all;
    }
    std::string ends(const told_place& p) const {
        if (p.end_to_end.is_given())
            return say(phrases::end_to_end, {{"piece", name(p.end_to_end)}});
        return from_to(p.along);
    }
    /// Like rows one beyond another on one line: all measured from one edge.
    static bool several_spans(const told_step& s) {
        const told_place& p = s.places[0];
        return !p.along.at.empty() && std::all_of(s.places.begin(), s.places.end(), [&](const told_place& q) {
            return q.piece == p.piece && q.along.from == p.along.from && !q.along.at.empty();
        }) && std::any_of(s.places.begin(), s.places.end(), [&](const told_place& q) {
            return q.along.at != p.along.at;
        });
    }
    std::string all_spans(const told_step& s) const {
        const std::string spans = different(s.places, [&](const told_place& q) { return span_of(q.along); });
        return say(phrases::spans_off, {{"spans", spans}, {"edge", edge_in_words(s.places[0].along.from)}});
    }

    std::string lay_inside(const told_step& s) const {
        return say(phrases::lay_in, {{"pieces", names_of_places(s)}, {"on", all_copies(s.on)}});
    }
    std::string lay(const told_step& s) const {
        const told_place& p = s.places[0];
        if (s.on_a_seam)
            return say(phrases::opened_out, {{"piece", name(p.piece)}, {"on", name(s.on)}, {"up", side(s.up)}});
        std::string where = s.upside_down ? say(phrases::upside_down, {}) : std::string();
        if (p.all_round && s.places.size() == 1)
            where += say(p.across.none ? phrases::all_level : phrases::all_round, {{"at", p.across.at[0]}});
        else
            where +=
                listed({from_edge(s, p.own_left, &told_place::across), from_edge(s, p.own_top, &told_place::along)});
        std::string all = say(s.beneath ? phrases::lay_beneath : phrases::lay, {{"piece", name(p.piece)},
                                                                                {"carried", this->carried(s)},
                                                                                {"up", side(s.up)},
                                                                                {"under", side(s.towards)},
                                                                                {"on", name(s.on)},
                                                                                {"where", where}});
        return s.fit.taken_up == surplus::none ? all : all + " " + fitted(s);
    }
    std::string fitted(const told_step& s) const {
        const bool whole = s.fit.long_.at.empty();
        return capital(say(whole ? phrases::fitted_whole : phrases::fitted,
                           {{"piece", name(s.places[0].piece)},
                            {"long", listed(s.fit.long_.at)},
                            {"edge", whole ? std::string() : own_edge(s.fit.long_.from)},
                            {"on", name(s.on)},
                            {"short", listed(s.fit.short_.at)},
                            {"end", whole ? std::string() : own_edge(s.fit.short_.from)},
                            {"spans", std::to_string(s.fit.spans)},
                            {"join", say(s.film ? phrases::join_clips : phrases::join_pins, {})},
                            {"taken", say(taking_up(s), {})},
                            {"extra", s.fit.extra}}));
    }
    /// From an edge that is the same for all copies, each with its own distance where they differ.
    std::string from_edge(const told_step& s, const seen_edge& own, told_distances told_place::*which) const {
        const told_distances& first = s.places[0].*which;
        const bool same = std::all_of(s.places.begin(), s.places.end(),
                                      [&](const told_place& p) { return (p.*which).at == first.at; });
        std::vector<std::string> each;
        for (const told_place& p : s.places)
            each.push_back(say(phrases::at_copy, {{"at", (p.*which).at[0]}, {"piece", copy_name(p.piece)}}));
        return say(
            same && first.none ? phrases::level
            : first.beyond     ? phrases::set_beyond
                               : phrases::set_in,
            {{"own", own_edge(own)}, {"at", same ? first.at[0] : listed(each)}, {"edge", edge_in_words(first.from)}});
    }

    std::string clip(const told_step& s) const {
        const told_place& p = s.places[0];
        return say(phrases::clip,
                   {{"piece", name(p.piece)},
                    {"at", different(s.places, [&](const told_place& q) { return listed(q.across.at); })},
                    {"edge", own_edge(p.across.from)},
                    {"depth", p.along.at.back()},
                    {"end", own_edge(p.along.from)}});
    }
    std::string slit(const told_step& s) const {
        const told_place& p = s.places[0];
        return say(s.width.empty() ? phrases::slit_open : phrases::slit,
                   {{"up", side(s.up)},
                    {"piece", name(p.piece)},
                    {"at", different(s.places, [&](const told_place& q) { return listed(q.across.at); })},
                    {"edge", edge_in_words(p.across.from)},
                    {"ends", different(s.places, [&](const told_place& q) { return from_to(q.along); })},
                    {"width", s.width}});
    }
    std::string set(const told_step& s) const {
        constexpr const phrase* kinds[] = {&phrases::eyelets, &phrases::bar_tacks, &phrases::snaps,
                                           &phrases::buttons, &phrases::tie_ends,  &phrases::tie_middle,
                                           &phrases::crosses};
        const told_place& p = s.places[0];
        return say(*kinds[static_cast<std::size_t>(s.spot)], {{"piece", name(p.piece)},
                                                              {"down", p.across.at[0]},
                                                              {"edge", edge_in_words(p.across.from)},
                                                              {"at", listed(p.along.at)},
                                                              {"end", edge_in_words(p.along.from)},
                                                              {"width", s.width},
                                                              {"height", s.height},
                                                              {"layers", layers(s)}});
    }
};
using teller = lazy_teller<void>;

} // namespace turncloth::detail

#endif
