// Sentences of steps whose lengths are written already: grammar, the same for every unit.
//
//   class teller(parts, table)     .tell(group): its sentences
#ifndef TURNCLOTH_MAKING_DETAIL_TELLING_HPP
#define TURNCLOTH_MAKING_DETAIL_TELLING_HPP

#include <turncloth/making/detail/told.hpp>
#include <turncloth/making/phrases.hpp>
#include <turncloth/panel/names.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <class>
class lazy_teller {
public:
    lazy_teller(const std::vector<work_part>& parts, const phrase_table& table) : parts_(parts), table_(table) {}

    std::vector<std::string> tell(const told_group& g) {
        group_ = &g;
        std::vector<std::string> all;
        for (std::size_t i = 0; i < g.steps.size(); ++i) {
            const std::string step = tell_step(g.steps[i], i > 0 ? &g.steps[i - 1] : nullptr);
            all.push_back(g.one_after_another && i == 0
                              ? capital(say(phrases::one_after_another, {{"piece", group_name()}}) + small(step))
                              : capital(step));
        }
        if (g.checked.is_given())
            all.push_back(capital(say(phrases::check, {{"piece", name(g.checked)}, {"size", g.size}})));
        return all;
    }

private:
    std::string say(const phrase& p, std::initializer_list<filled_in> data) const { return said(p, data, table_); }
    static std::string capital(std::string s) {
        if (!s.empty() && s[0] >= 'a' && s[0] <= 'z')
            s[0] = static_cast<char>(s[0] - 'a' + 'A');
        return s;
    }
    static std::string small(std::string s) {
        if (!s.empty() && s[0] >= 'A' && s[0] <= 'Z')
            s[0] = static_cast<char>(s[0] - 'A' + 'a');
        return s;
    }

    std::string listed(const std::vector<std::string>& all) const {
        std::string text;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (i > 0)
                text += say(i + 1 == all.size() ? phrases::and_ : phrases::comma, {});
            text += all[i];
        }
        return text;
    }

    /// "the lining"; "film strip 2" of several, but "the film strip" where each is told of in its turn, "each film strip"
    /// where all are done alike, and "one film strip" where each of something else takes one.
    std::string name(const cut_part& p) const {
        const work_part& part = parts_[p.index];
        const std::vector<cut_part>& pieces = group_->pieces;
        const bool of_group = !pieces.empty() && p.index == pieces[0].index;
        if (part.count == 1 || (of_group && pieces.size() > 1 && group_->one_after_another))
            return say(phrases::the_piece, {{"name", named(part.name)}});
        if (group_->every_copy)
            return say(of_group && group_->steps[0].verb == work_verb::lay ? phrases::one_piece : phrases::each_piece,
                       {{"name", named(part.name)}});
        return of_group && pieces.size() > 1 ? group_name() : copy_name(p);
    }
    std::string copy_name(const cut_part& p) const {
        return say(phrases::numbered, {{"name", named(parts_[p.index].name)}, {"number", std::to_string(p.copy + 1)}});
    }
    std::string group_name() const {
        const std::vector<cut_part>& pieces = group_->pieces;
        const work_part& part = parts_[pieces[0].index];
        if (static_cast<std::int64_t>(pieces.size()) == part.count)
            return say(part.count == 1 ? phrases::the_piece : phrases::each_piece, {{"name", named(part.name)}});
        std::vector<std::string> names;
        names.reserve(pieces.size());
        for (const cut_part& p : pieces)
            names.push_back(copy_name(p));
        return listed(names);
    }
    std::string names(const std::vector<cut_part>& some) const {
        std::vector<std::string> all;
        all.reserve(some.size());
        for (const cut_part& p : some)
            all.push_back(name(p));
        return listed(all);
    }

    std::string side(edge e) const {
        constexpr const phrase* sides[] = {&phrases::top, &phrases::right, &phrases::bottom, &phrases::left};
        return say(*sides[static_cast<std::size_t>(e)], {});
    }
    std::string side(face f) const { return say(f == face::right ? phrases::right_side : phrases::wrong_side, {}); }
    /// "the cut top edge of the lining"; with several sides of one piece: "the cut left and right edges of the lining".
    std::string edge_in_words(const seen_edge& e, std::vector<edge> all = {}) const {
        if (all.empty())
            all = {e.side};
        const phrase& p = e.folded                    ? phrases::edge_folded
                          : parts_[e.of.index].bought ? phrases::edge_bought
                                                      : phrases::edge_cut;
        return say(p, {{"side", edges_in_words(all)}, {"piece", name(e.of)}});
    }
    std::string own_edge(const seen_edge& e) const {
        const phrase& p = e.folded                    ? phrases::own_folded
                          : parts_[e.of.index].bought ? phrases::own_bought
                                                      : phrases::own_cut;
        return say(p, {{"side", edges_in_words({e.side})}});
    }
    static std::vector<edge> edges_of(const told_step& s) {
        std::vector<edge> all;
        for (const told_place& p : s.places)
            if (std::find(all.begin(), all.end(), p.side) == all.end())
                all.push_back(p.side);
        return all;
    }
    std::string sides(const std::vector<edge>& all) const {
        std::vector<std::string> each;
        each.reserve(all.size());
        for (const edge e : all)
            each.push_back(side(e));
        return listed(each);
    }
    std::string edges_in_words(const std::vector<edge>& all) const {
        return say(all.size() == 1 ? phrases::edges_one : phrases::edges_many, {{"sides", sides(all)}});
    }
    std::string the_edges(const std::vector<edge>& all, bool folded = false) const {
        const phrase& one = folded ? phrases::the_folded_edge : phrases::the_edge;
        const phrase& many = folded ? phrases::the_folded_edges : phrases::the_edges;
        const phrase& every = folded ? phrases::edges_all_folded : phrases::edges_all;
        return say(all.size() == all_edges.size() ? every : all.size() == 1 ? one : many, {{"sides", sides(all)}});
    }

    /// Each different text once.
    template <class Text>
    std::string different(const std::vector<told_place>& places, Text text) const {
        std::vector<std::string> all;
        for (const told_place& p : places)
            if (const std::string t = text(p); std::find(all.begin(), all.end(), t) == all.end())
                all.push_back(t);
        return listed(all);
    }
    std::string layers(const told_step& s) const {
        std::size_t least = s.places[0].least, most = s.places[0].most;
        for (const told_place& p : s.places) {
            least = std::min(least, p.least);
            most = std::max(most, p.most);
        }
        return say(least != most ? phrases::range_of_layers
                   : most == 1   ? phrases::one_layer
                                 : phrases::some_layers,
                   {{"least", std::to_string(least)}, {"most", std::to_string(most)}});
    }

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
            return snip(s, s.width.empty() ? phrases::slit_open : phrases::slit);
        case work_verb::clip:
            return snip(s, phrases::clip);
        case work_verb::set:
            return set(s);
        default:
            return in_short(s);
        }
    }

    /// Steps that have a name at most.
    std::string in_short(const told_step& s) const {
        const auto piece = [&] { return s.places.empty() ? std::string() : all_copies(s.places[0].piece); };
        switch (s.verb) {
        case work_verb::cut:
            return say(phrases::cut, {});
        case work_verb::prepare:
            return say(phrases::prepare, {{"what", s.what}});
        case work_verb::pleat:
            return say(phrases::pleat, {{"piece", piece()}});
        case work_verb::zipper:
            return say(s.once_more ? phrases::zipper_many : phrases::zipper_one, {{"piece", piece()}});
        case work_verb::hem:
            return say(phrases::hem, {{"edges", the_edges(edges_of(s))}, {"piece", piece()}});
        case work_verb::join:
            return say(phrases::join, {{"piece", piece()}, {"on", all_copies(s.on)}});
        case work_verb::apply:
            return say(phrases::apply, {{"piece", piece()}, {"on", all_copies(s.on)}});
        case work_verb::close_up:
            return say(phrases::close_up, {{"pieces", names_of_places(s)}});
        case work_verb::add:
            return say(phrases::add, {{"what", s.what}});
        case work_verb::open:
            return say(phrases::open_up, {{"what", s.what}});
        case work_verb::turn_out:
            return say(phrases::turn_out, {{"what", s.what}});
        case work_verb::put_in:
            return say(phrases::put_in, {{"what", s.what}});
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
    std::string all_copies(const cut_part& p) const {
        const work_part& part = parts_[p.index];
        return say(part.count == 1 ? phrases::the_piece : phrases::each_piece, {{"name", named(part.name)}});
    }
    std::string names_of_places(const told_step& s) const {
        return different(s.places, [&](const told_place& p) { return all_copies(p.piece); });
    }

    std::string fold(const told_step& s, const told_step* before) const {
        const told_place& p = s.places[0];
        const std::string press = say(s.film ? phrases::press_film : phrases::press_iron, {});
        const std::vector<edge> edges = edges_of(s);
        const auto turned = [](const told_place& q) { return q.turned; };
        const std::string by = different(s.places, turned);
        if (p.corner)
            return say(phrases::fold_corner, {{"up", side(s.up)},
                                              {"piece", name(p.piece)},
                                              {"level", side(p.side)},
                                              {"upright", side(p.across.from.side)},
                                              {"turned", by},
                                              {"press", press}});
        if (s.on_a_row)
            return say(
                phrases::fold_on_row,
                {{"piece", name(p.piece)}, {"edge", edge_in_words(p.across.from)}, {"turned", by}, {"press", press}});
        if (s.once_more && before != nullptr && edges_of(*before) == edges)
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
        const bool hem = before != nullptr && before->verb == work_verb::fold && p.across.from.folded &&
                         p.across.from.of.index == p.piece.index && edges_of(*before) == edges_of(s);
        const std::string sewn = different(s.places, [](const told_place& q) { return q.sewn; });
        const std::string at = different(s.places, [&](const told_place& q) { return listed(q.across.at); });
        const std::vector<edge> sides = sides_measured_from(s);
        std::string all;
        if (hem)
            all = say(edges_of(s).size() == 1 ? phrases::hem_one : phrases::hem_many,
                      {{"at", at}, {"sewn", sewn}, {"layers", layers(s)}});
        else
            all = say(p.across.at.size() > 1 ? phrases::row_many
                      : sides.size() > 1     ? phrases::row_each
                                             : phrases::row_one,
                      {{"count", std::to_string(p.across.at.size())},
                       {"walls", names(s.through.empty() ? std::vector<cut_part>{p.piece} : s.through)},
                       {"at", at},
                       {"edge", edge_in_words(p.across.from, sides)},
                       {"ends", different(s.places, [&](const auto& q) { return ends(q); })},
                       {"sewn", sewn},
                       {"layers", layers(s)}});
        if (s.by_hand)
            all += " " + say(phrases::by_hand, {});
        if (!s.overrun.empty())
            all += " " + say(phrases::overrun, {{"overrun", s.overrun}});
        return all;
    }
    /// The edges of each piece together, to the other pieces.
    std::string seam(const told_step& s) const {
        const std::string edges = different(s.places, [&](const told_place& p) {
            std::vector<edge> own;
            for (const told_place& q : s.places)
                if (q.piece == p.piece && std::find(own.begin(), own.end(), q.side) == own.end())
                    own.push_back(q.side);
            return edge_in_words(p.across.from, own);
        });
        const std::string at = different(s.places, [&](const told_place& q) { return listed(q.across.at); });
        const std::string row =
            say(s.what.empty() ? phrases::seam : phrases::seam_open,
                {{"edges", edges}, {"on", names(s.through)}, {"at", at}, {"what", s.what}, {"sewn", s.places[0].sewn}});
        return s.overrun.empty() ? row : row + " " + say(phrases::overrun, {{"overrun", s.overrun}});
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
        return say(phrases::from_to,
                   {{"first", p.along.at.front()}, {"last", p.along.at.back()}, {"edge", edge_in_words(p.along.from)}});
    }

    std::string lay_inside(const told_step& s) const {
        return say(phrases::lay_in, {{"pieces", names_of_places(s)}, {"on", all_copies(s.on)}});
    }
    std::string lay(const told_step& s) const {
        const told_place& p = s.places[0];
        std::string where = s.upside_down ? say(phrases::upside_down, {}) : std::string();
        if (p.all_round && s.places.size() == 1)
            where += say(p.across.none ? phrases::all_level : phrases::all_round, {{"at", p.across.at[0]}});
        else
            where +=
                listed({from_edge(s, p.own_left, &told_place::across), from_edge(s, p.own_top, &told_place::along)});
        std::string all = say(s.beneath ? phrases::lay_beneath : phrases::lay,
                              {{"piece", name(p.piece)},
                               {"carried", s.carries ? say(phrases::carried, {}) : std::string()},
                               {"up", side(s.up)},
                               {"under", side(s.towards)},
                               {"on", name(s.on)},
                               {"where", where}});
        return s.fit.taken_up == surplus::none ? all : all + " " + fitted(s);
    }
    std::string fitted(const told_step& s) const {
        const phrase& taken = s.fit.taken_up == surplus::ease    ? phrases::take_ease
                              : s.fit.taken_up == surplus::tuck  ? phrases::take_tuck
                              : s.fit.taken_up == surplus::pleat ? phrases::take_pleat
                                                                 : phrases::take_gather;
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
                            {"taken", say(taken, {})},
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

    std::string snip(const told_step& s, const phrase& how) const {
        const told_place& p = s.places[0];
        return say(how, {{"up", side(s.up)},
                         {"piece", name(p.piece)},
                         {"at", different(s.places, [&](const told_place& q) { return listed(q.across.at); })},
                         {"edge", edge_in_words(p.across.from)},
                         {"first", p.along.at.front()},
                         {"last", p.along.at.back()},
                         {"end", edge_in_words(p.along.from)},
                         {"width", s.width}});
    }
    std::string set(const told_step& s) const {
        constexpr const phrase* kinds[] = {&phrases::eyelets, &phrases::bar_tacks, &phrases::snaps, &phrases::buttons,
                                           &phrases::tie_ends};
        const told_place& p = s.places[0];
        return say(*kinds[static_cast<std::size_t>(s.spot)], {{"piece", name(p.piece)},
                                                              {"down", p.across.at[0]},
                                                              {"edge", edge_in_words(p.across.from)},
                                                              {"at", listed(p.along.at)},
                                                              {"end", edge_in_words(p.along.from)},
                                                              {"layers", layers(s)}});
    }

    const std::vector<work_part>& parts_;
    const phrase_table& table_;
    const told_group* group_ = nullptr;
};
using teller = lazy_teller<void>;

} // namespace turncloth::detail

#endif
