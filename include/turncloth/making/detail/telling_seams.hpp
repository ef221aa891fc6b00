// Sentences of seams: which edges are sewn, what stays open, and what meets what.
//
//   class lazy_seam_teller(parts, table, in_lines)     .seam(step); from_to(distances), also for rows
#ifndef TURNCLOTH_MAKING_DETAIL_TELLING_SEAMS_HPP
#define TURNCLOTH_MAKING_DETAIL_TELLING_SEAMS_HPP

#include <turncloth/making/detail/naming.hpp>

#include <algorithm>
#include <string>
#include <vector>

namespace turncloth::detail {

template <class Late>
class lazy_seam_teller : public lazy_namer<Late> {
public:
    using lazy_namer<Late>::lazy_namer;

protected:
    using namer = lazy_namer<Late>;
    using namer::different, namer::edge_in_words, namer::in_lines_, namer::layers, namer::listed, namer::names,
        namer::own_edge, namer::say, namer::taking_up;

    /// The edges of each piece together, to the other pieces; then, where there are several, which meets which.
    std::string seam(const told_step& s) const {
        const told_place& p = s.places[0];
        const std::string edges = different(s.places, [&](const told_place& q) { return edges_of_piece(s, q); });
        const bool round = s.places.size() > 1;
        const std::string on = round           ? names(s.through)
                               : same_piece(p) ? own_edge(p.meets.from)
                                               : edge_in_words(p.meets.from);
        std::string open;
        if (!s.left_open.empty())
            open = say(phrases::seam_left_open, {{"openings", openings(s, round)}});
        else if (!round && !p.along.at.empty())
            open = say(phrases::seam_ends, {{"ends", from_to(p.along)}});
        const std::string at = different(s.places, [&](const told_place& q) { return listed(q.across.at); });
        std::string all;
        for (const told_place& q : s.places)
            if (!q.surplus.empty())
                all += seam_fitted(s, q) + " ";
        all += say(round && !on_one_edge(s) ? phrases::seam_round : phrases::seam,
                   {{"edges", edges}, {"on", on}, {"at", at}, {"open", open}, {"sewn", p.sewn}, {"layers", layers(s)}});
        const auto then = [&](const std::string& more) { all += (all.ends_with('\n') ? "" : " ") + more; };
        if (round)
            then(what_meets_what(s));
        if (round && !s.straight)
            then(say(phrases::seam_corners, {}));
        if (const std::vector<cut_part> onto = pressed_onto(s); !onto.empty())
            then(say(phrases::seam_pressed, {{"pieces", names(onto)}}));
        if (s.by_hand)
            then(say(phrases::by_hand, {}));
        if (!s.overrun.empty())
            then(say(phrases::overrun, {{"overrun", s.overrun}}));
        return all;
    }
    /// In which edge each stays open is told where several are sewn.
    std::string openings(const told_step& s, bool several) const {
        std::vector<std::string> all;
        for (const told_opening& o : s.left_open)
            all.push_back(
                say(several ? phrases::seam_opening_in : phrases::seam_opening,
                    {{"what", o.what},
                     {"edge", edge_in_words(o.in)},
                     {"ends", from_to(o.along, several ? own_edge(o.along.from) : edge_in_words(o.along.from))}}));
        return listed(all);
    }
    std::string seam_fitted(const told_step& s, const told_place& p) const {
        const bool whole = p.marks.at.empty();
        const auto from = [&](const told_distances& d) { return whole ? std::string() : own_edge(d.from); };
        return capital(say(whole ? phrases::seam_fitted_whole : phrases::seam_fitted,
                           {{"edge", edge_in_words(p.across.from)},
                            {"long", listed(p.marks.at)},
                            {"from", from(p.marks)},
                            {"on", edge_in_words(p.meets.from)},
                            {"short", listed(p.meets_marks.at)},
                            {"end", from(p.meets_marks)},
                            {"spans", std::to_string(p.marks.at.size() + 1)},
                            {"join", say(s.film ? phrases::join_clips : phrases::join_pins, {})},
                            {"taken", say(taking_up(s), {})},
                            {"extra", p.surplus}}));
    }
    std::string edges_of_piece(const told_step& s, const told_place& p) const {
        std::vector<edge> own;
        for (const told_place& q : s.places)
            if (q.piece == p.piece && std::find(own.begin(), own.end(), q.side) == own.end())
                own.push_back(q.side);
        return edge_in_words(p.across.from, own);
    }
    static bool same_piece(const told_place& p) { return p.meets.from.of == p.piece; }
    std::string from_to(const told_distances& d) const { return from_to(d, edge_in_words(d.from)); }
    std::string from_to(const told_distances& d, const std::string& edge_named) const {
        return say(d.beyond ? phrases::across_edge : phrases::from_to,
                   {{"first", d.at.front()}, {"last", d.at.back()}, {"edge", edge_named}});
    }
    std::string span_of(const told_distances& d) const {
        return say(phrases::span, {{"first", d.at.front()}, {"last", d.at.back()}});
    }
    /// All on one edge of the other.
    static bool on_one_edge(const told_step& s) {
        return std::all_of(s.places.begin(), s.places.end(),
                           [&](const told_place& p) { return p.meets.from == s.places[0].meets.from; });
    }
    /// Stretch by stretch of one edge; or pairs, and of an edge that meets several which stretch of it. Long ones in lines.
    std::string what_meets_what(const told_step& s) const {
        const bool lines = in_lines_ && s.places.size() > 2, along = on_one_edge(s);
        std::vector<std::string> pairs;
        for (const told_place& p : s.places)
            pairs.push_back(
                along ? say(phrases::seam_on, {{"one", edge_in_words(p.across.from)}, {"span", span_of(p.meets_along)}})
                      : say(phrases::seam_pair, {{"one", edge_in_words(p.across.from)}, {"other", other_edge(s, p)}}));
        std::string all;
        for (const std::string& p : pairs)
            all += lines ? "\n" + p : (all.empty() ? std::string() : say(phrases::pairs_apart, {})) + p;
        const told_place& first = s.places[0];
        if (lines)
            all.append("\n");
        const std::string said_first =
            along ? capital(say(lines ? phrases::seam_along_listed : phrases::seam_along,
                                {{"end", edge_in_words(first.meets_along.from)},
                                 {"edge", own_edge(first.meets.from)},
                                 {"pairs", listed(pairs)}}))
                  : say(lines ? phrases::seam_pairs_listed : phrases::seam_pairs, {{"pairs", all}});
        return lines ? said_first + all : said_first;
    }
    std::string other_edge(const told_step& s, const told_place& p) const {
        std::string other = edge_in_words(p.meets.from);
        const auto meets_it = [&](const told_place& q) { return q.meets.from == p.meets.from; };
        if (std::count_if(s.places.begin(), s.places.end(), meets_it) == 1)
            return other;
        return other + " " +
               say(phrases::spans_off, {{"spans", span_of(p.meets_along)}, {"edge", own_edge(p.meets_along.from)}});
    }
};

} // namespace turncloth::detail

#endif
