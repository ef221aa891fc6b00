// What pieces, edges and layers are called in the sentences of a group of steps.
//
//   class namer(parts, table)      .name(part)  .edge_in_words(edge)  .layers(step)  .say(phrase, data)
#ifndef TURNCLOTH_MAKING_DETAIL_NAMING_HPP
#define TURNCLOTH_MAKING_DETAIL_NAMING_HPP

#include <turncloth/making/detail/told.hpp>
#include <turncloth/making/phrases.hpp>
#include <turncloth/panel/names.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <vector>

namespace turncloth::detail {

template <class>
class lazy_namer {
public:
    lazy_namer(const std::vector<work_part>& parts, const phrase_table& table, bool in_lines = false)
        : parts_(parts), table_(table), in_lines_(in_lines) {}

protected:
    std::string say(const phrase& p, std::initializer_list<filled_in> data) const { return said(p, data, table_); }
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
        if (all.size() == 1 && e.cut_out_beside)
            return of_cut_out(phrases::edge_cut_out, e);
        const phrase& p = e.folded                    ? phrases::edge_folded
                          : parts_[e.of.index].bought ? phrases::edge_bought
                                                      : phrases::edge_cut;
        return say(p, {{"side", edges_in_words(all)}, {"piece", name(e.of)}});
    }
    std::string own_edge(const seen_edge& e) const {
        if (e.cut_out_beside)
            return of_cut_out(phrases::own_cut_out, e);
        const phrase& p = e.folded                    ? phrases::own_folded
                          : parts_[e.of.index].bought ? phrases::own_bought
                                                      : phrases::own_cut;
        return say(p, {{"side", edges_in_words({e.side})}});
    }
    std::string of_cut_out(const phrase& p, const seen_edge& e) const {
        const bool level = is_level(e.side);
        return say(p, {{"side", edges_in_words({e.side})},
                       {"level", side(level ? e.side : *e.cut_out_beside)},
                       {"upright", side(level ? *e.cut_out_beside : e.side)},
                       {"piece", name(e.of)}});
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

    /// Cut out of a piece as far in from both edges as its place says.
    std::string corner_out(const told_place& p) const {
        const bool level = is_level(p.side);
        return say(phrases::corner_out, {{"level", side(level ? p.side : p.along.from.side)},
                                         {"upright", side(level ? p.along.from.side : p.side)},
                                         {"piece", name(p.piece)},
                                         {"at", p.across.at[0]},
                                         {"edge", own_edge(p.across.from)},
                                         {"depth", p.along.at.back()},
                                         {"end", own_edge(p.along.from)}});
    }

    /// What is only laid would fall off as the work is turned over.
    std::string held(const told_group& g, std::size_t i) const {
        const told_step& s = g.steps[i];
        const bool loose = s.verb == work_verb::lay && !s.on_a_seam && s.fit.taken_up == surplus::none;
        if (!loose || i + 1 == g.steps.size() || !g.steps[i + 1].turned_over)
            return {};
        return " " + say(s.film ? phrases::held_by_clips : phrases::held_by_pins, {});
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
    /// What is laid with a piece, since it is sewn or pinned to it.
    std::string carried(const told_step& s) const {
        if (!s.carries && !s.carries_beneath)
            return {};
        return say(!s.carries          ? phrases::carried_beneath
                   : s.carries_beneath ? phrases::carried_both
                                       : phrases::carried,
                   {});
    }
    static const phrase& taking_up(const told_step& s) {
        return s.fit.taken_up == surplus::ease    ? phrases::take_ease
               : s.fit.taken_up == surplus::tuck  ? phrases::take_tuck
               : s.fit.taken_up == surplus::pleat ? phrases::take_pleat
                                                  : phrases::take_gather;
    }
    std::string all_copies(const cut_part& p) const {
        const work_part& part = parts_[p.index];
        return say(part.count == 1 ? phrases::the_piece : phrases::each_piece, {{"name", named(part.name)}});
    }

    const std::vector<work_part>& parts_;
    const phrase_table& table_;
    bool in_lines_;                     ///< lists that are long stand in lines of their own
    const told_group* group_ = nullptr; ///< whose steps are told
};
using namer = lazy_namer<void>;

} // namespace turncloth::detail

#endif
