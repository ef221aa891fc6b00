// One step drawn: what lies there when it is done, and what the step did and measured.
//
//   step_picture<U>(design, table, turns, ruler, note).draw(shown, options)      carries the step out on the table, and draws it
#ifndef TURNCLOTH_DRAW_DETAIL_STEP_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_STEP_PICTURE_HPP

#include <turncloth/draw/detail/lying_picture.hpp>
#include <turncloth/draw/detail/seam_picture.hpp>
#include <turncloth/draw/detail/turns_taken.hpp>
#include <turncloth/making/corner_out.hpp>
#include <turncloth/making/work_step.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr kind_of_line turned_line = {{"turned", 0.3}, "turned over"},
                              fit_mark_line = {{"mark", 0.25, {6, 1, 1, 1}}, "marks brought together"};

/// A step, and what of it one picture shows.
template <length_unit Unit>
struct step_shown {
    const work_step<Unit>& step;
    std::vector<operation> done{};
    std::vector<work_place<Unit>> places{};
};

template <length_unit Unit>
class step_picture {
public:
    /// The note says how figures are rounded.
    step_picture(const making<Unit>& design, table_work<Unit>& table, const turns_taken<Unit>& turns, const ruler& by,
                 std::string note)
        : design_(design), table_(table), turns_(turns), by_(by), note_(std::move(note)) {}

    frame_words& words() { return made_.words; }

    page draw(const step_shown<Unit>& shown, const drawing_options& options) {
        shown_ = &shown;
        if (shown.step.verb == work_verb::seam)
            return draw_seam(shown.done[0], options);
        const cut_part piece = shown.places[0].piece;
        const plies_lying<Unit> before = table_.plies(piece);
        bool from_above = shown.step.up == table_.up(piece);
        for (const operation& o : shown.done) {
            if (o.kind == operation_kind::crease && table_.in_one_stack(design_.creases()[o.index].on(), piece))
                turned_.push_back(table_.turned_by(o));
            table_.carry_out(o);
        }
        if (shown.step.verb == work_verb::lay)
            from_above = shown.step.up == table_.up(piece);
        lies_ = turns_.as_measured(table_.plies(piece), table_);
        view_ = view_of(lies_, from_above, turned_.empty() ? plies_lying<Unit>() : before);
        const plies_seen seen(lies_.plies, view_);
        for (const bool folded : {false, true})
            for (const page_segment& s : seen.edges(folded))
                edges_.push_back(s);
        take_sizes(seen);
        if (!turned_.empty())
            draw_turned(seen, before);
        draw_lying(made_, lies_, seen, view_, [&](const operation& o) { return is_done(o); });
        measure();
        name(piece);
        put_in_order_of_margins();
        return page_of_lying(made_, notes_, &seen, note_, options);
    }

private:
    bool is_done(const operation& o) const {
        return std::find(shown_->done.begin(), shown_->done.end(), o) != shown_->done.end();
    }
    std::string written(length<Unit> l) const { return to_text(l < length<Unit>() ? -l : l, by_); }

    page draw_seam(const operation& o, const drawing_options& options) {
        seam_picture<Unit> seam(design_, table_, by_);
        seam.draw(design_.seams()[o.index]);
        for (const operation& done : shown_->done)
            table_.carry_out(done);
        made_.words.legend = std::move(seam.drawn.words.legend);
        seam.drawn.words = std::move(made_.words);
        seam.drawn.words.facts.emplace_back(word("right sides together: like letters meet"));
        return page_of_lying(seam.drawn, seam.notes, nullptr, note_, options);
    }

    /// Of all that is drawn, and of what lies there now.
    void take_sizes(const plies_seen& seen) {
        double low = 0, right = 0;
        now_ = seen.nearest_first()[0].round;
        for (const seen_ply& p : seen.nearest_first()) {
            right = std::max(now_.right(), p.round.right()), low = std::max(now_.bottom(), p.round.bottom());
            now_.x = std::min(now_.x, p.round.x), now_.y = std::min(now_.y, p.round.y);
            now_.width = right - now_.x, now_.height = low - now_.y;
        }
        made_.width = now_.right(), made_.height = now_.bottom();
        for (const turned_cloth<Unit>& t : turned_)
            for (const page_point& p : {view_(t.before.from), view_(t.before.to)}) {
                made_.width = std::max(made_.width, p.x);
                made_.height = std::max(made_.height, p.y);
            }
    }

    void draw_turned(const plies_seen& seen, const plies_lying<Unit>& before) {
        straight_lines gone;
        const plies_seen was(before.plies, view_);
        for (const bool folded : {false, true})
            for (const page_segment& s : was.edges(folded))
                for (const page_segment& out : seen.uncovered(s))
                    gone.add(out);
        for (const page_segment& s : gone.without({}))
            made_.draw(lay_before_line, s);
        for (const turned_cloth<Unit>& t : turned_) {
            const page_segment from = view_(t.before), to = view_(t.after);
            const auto third = [](const page_segment& s) {
                return moved(s.from, {s.to.x - s.from.x, s.to.y - s.from.y}, 0.3);
            };
            made_.arrows.push_back({turned_line.with, {third(from), third(to)}});
        }
        made_.explain(turned_line);
    }

    // What is measured.

    /// Where an edge lies as it is seen: at the left, say, and from where to where.
    edge_in_sight seen_at(const seen_edge& e) const {
        const edge_lying<Unit> there = table_.lies(e);
        const page_segment at = view_(turns_.as_measured(there.at, e.of, table_));
        const double across = (there.toward == edge::left) == view_.from_above ? -1 : 1;
        if (!is_level(there.toward))
            return {at, {across, 0}};
        return {at, {0, there.toward == edge::top ? -1.0 : 1.0}};
    }
    void tick(edge_in_sight e) {
        e.at = longest_on(e.at, edges_);
        const auto same = [&](const edge_in_sight& o) {
            return o.at.from.x == e.at.from.x && o.at.from.y == e.at.from.y && o.out.x == e.out.x && o.out.y == e.out.y;
        };
        if (std::any_of(notes_.datums.begin(), notes_.datums.end(), same))
            return;
        made_.explain(from_here_line);
        notes_.datums.push_back(std::move(e));
    }
    void dimension(double from, double to, bool upright, std::string words) {
        auto& all = upright ? made_.beside : made_.below;
        const bool again = std::any_of(all.begin(), all.end(), [&](const measured& m) {
            return m.words == words && std::abs(m.to - m.from - std::abs(to - from)) < 0.01;
        });
        if (!again)
            all.push_back({std::min(from, to), std::max(from, to), upright ? now_.x : now_.bottom(), std::move(words)});
    }

    /// Of a corner that is cut out, the side that lies furthest from the snip's edge.
    chalk_line<Unit> line_of_cut(const snip<Unit>& s) const {
        chalk_line<Unit> l = s.at;
        if (const auto corner = corner_cut_out(design_, s))
            l.in = turncloth::at<cut_edge>(corner->in);
        return l;
    }
    /// Of what the step did: ends of rows and slits, spots.
    std::vector<page_point> done_at() const {
        std::vector<page_point> all;
        for (const auto* list : {&lies_.threads, &lies_.spots})
            for (const thread_lying<Unit>& t : *list)
                if (is_done(t.what))
                    for (const page_point& p : {view_(t.at.from), view_(t.at.to)})
                        all.push_back(p);
        for (const operation& o : shown_->done)
            if (o.kind == operation_kind::snip)
                if (const auto at = table_.line(line_of_cut(design_.snips()[o.index])))
                    for (const page_point& p : {view_(at->from), view_(at->to)})
                        all.push_back(p);
        return all;
    }

    /// Distances from one edge: a few are dimensions, many are labels on the margin.
    void measure(const seen_distances<Unit>& m, std::string_view english) {
        if (!m.from.of.is_given() || m.at.empty())
            return;
        const std::string what(word(english));
        const edge_in_sight from = seen_at(m.from);
        const bool across = from.out.y == 0; // along x
        const double start = across ? from.at.from.x : from.at.from.y;
        tick(from);
        for (const length<Unit>& d : m.at) {
            if (d == length<Unit>())
                continue;
            page_point at{};
            double nearest = -1;
            for (const page_point& p : found_) {
                const double off = std::abs(std::abs((across ? p.x : p.y) - start) - std::abs(in_mm(d)));
                if (nearest < 0 || off < nearest)
                    nearest = off, at = p;
            }
            if (nearest < 0)
                continue;
            const double there = across ? at.x : at.y;
            if (m.at.size() < 3) {
                dimension(start, there, !across, written(d));
                continue;
            }
            margin_label l{there, across ? now_.y : now_.right(), written(d), std::string(name_of(m.from.side)), what};
            l.from_cut_edge = !m.from.folded;
            (across ? made_.above : made_.at_right).push_back(std::move(l));
        }
    }

    void measure() {
        found_ = done_at();
        for (const work_place<Unit>& p : shown_->places)
            switch (shown_->step.verb) {
            case work_verb::fold:
                break;
            case work_verb::lay:
                measure_laid(p);
                break;
            default:
                measure(p.across, shown_->step.verb == work_verb::set ? name_of_spot(shown_->step.spot) : "row");
                measure(p.along, shown_->step.verb == work_verb::set ? name_of_spot(shown_->step.spot) : "end");
            }
        measure_turned();
        mark_fit();
        for (const thread_lying<Unit>& s : lies_.spots)
            if (const page_point p = view_(s.at.from);
                is_done(s.what) &&
                !draw_cross(made_, box_of_cross(design_.spots()[s.what.index], table_, p), new_row_line) && is_new(p))
                notes_.spots.push_back(p);
        if (!notes_.spots.empty())
            made_.explain(spot_line);
        const auto [width, height] = size_of(lies_);
        dimension(now_.x, now_.right(), false, written(width));
        dimension(now_.y, now_.bottom(), true, written(height));
    }
    /// A spot lies on each of its layers.
    bool is_new(page_point p) const {
        return std::none_of(notes_.spots.begin(), notes_.spots.end(),
                            [&](const page_point& o) { return distance(o, p) < too_thin; });
    }

    /// From the edge of what a piece is laid on to the piece's own.
    void measure_laid(const work_place<Unit>& p) {
        for (const auto& [from, own] : {std::pair(&p.across, &p.own_left), std::pair(&p.along, &p.own_top)}) {
            if (!from->from.of.is_given() || from->at.empty())
                continue;
            const edge_in_sight there = seen_at(from->from), piece = seen_at(*own);
            const bool across = there.out.y == 0;
            tick(there);
            if (from->at[0] != length<Unit>())
                dimension(across ? there.at.from.x : there.at.from.y, across ? piece.at.from.x : piece.at.from.y,
                          !across, written(from->at[0]));
            if (p.all_round)
                return;
        }
    }
    /// From the fold to where the edge that is turned comes to lie, in the figures of the plan. What goes round the edge
    /// does not lie flat.
    void measure_turned() {
        for (const turned_cloth<Unit>& t : turned_) {
            const page_segment from = view_(t.before), to = view_(t.after);
            const bool level = from.from.x == to.from.x;
            if (!level && from.from.y != to.from.y)
                continue; // across a corner
            const double a = level ? from.from.y : from.from.x, b = level ? to.from.y : to.from.x;
            for (const work_place<Unit>& p : shown_->places)
                if (std::abs(in_mm(p.turned) - std::abs(b - a) / 2) < 0.01) {
                    const double round = in_mm(p.goes_round);
                    dimension((a + b) / 2 + (b < a ? -round : round), b, level, written(p.turned - p.goes_round));
                    break;
                }
        }
    }
    /// Where marks are brought together: from the edge of what the piece is laid on.
    void mark_fit() {
        const seen_distances<Unit>&other = shown_->step.marks_on_other, &own = shown_->step.marks_on_piece;
        if (other.at.empty() || shown_->step.verb != work_verb::lay)
            return;
        const edge_in_sight from = seen_at(other.from);
        const bool across = from.out.y == 0;
        const page_area piece = view_(table_.extent(shown_->places[0].piece));
        for (std::size_t i = 0; i < other.at.size(); ++i) {
            const double off = in_mm(other.at[i]) * (across ? -from.out.x : -from.out.y),
                         at = (across ? from.at.from.x : from.at.from.y) + off;
            made_.draw(fit_mark_line, across ? page_segment{{at, piece.y}, {at, piece.bottom()}}
                                             : page_segment{{piece.x, at}, {piece.right(), at}});
            margin_label l{at, across ? piece.y : piece.right(), written(other.at[i]),
                           std::string(name_of(other.from.side)),
                           sentence({"here ", unbroken(written(own.at[i])), " of the piece"})};
            l.from_cut_edge = !other.from.folded;
            (across ? made_.above : made_.at_right).push_back(std::move(l));
        }
    }
    void put_in_order_of_margins() {
        for (auto* labels : {&made_.above, &made_.at_right})
            std::stable_sort(labels->begin(), labels->end(),
                             [](const margin_label& a, const margin_label& b) { return a.at < b.at; });
    }

    // What is named.

    static const char* name_of_spot(spot_kind s) {
        switch (s) {
        case spot_kind::eyelet:
            return "eyelet";
        case spot_kind::bar_tack:
            return "bar-tack";
        case spot_kind::snap:
            return "snap";
        case spot_kind::button:
            return "button";
        case spot_kind::cross:
            return "cross";
        case spot_kind::tie_end:
        case spot_kind::tie_middle:
            break;
        }
        return "tie";
    }

    /// A copy has its number where several lie there.
    static bool is_numbered(const cut_part& p, const std::vector<cut_part>& there) {
        return std::count_if(there.begin(), there.end(), [&](const cut_part& o) { return o.index == p.index; }) > 1;
    }
    std::string name(const cut_part& p, const std::vector<cut_part>& there) const {
        return is_numbered(p, there) ? name_of(design_, p) : design_.parts()[p.index].name;
    }
    std::string with_article(const cut_part& p, const std::vector<cut_part>& there) const {
        return is_numbered(p, there) ? name(p, there) : sentence({"the ", name(p, there)});
    }
    void name(const cut_part& piece) {
        std::vector<cut_part> there;
        for (const ply_lying<Unit>& p : lies_.plies)
            if (std::find(there.begin(), there.end(), p.of) == there.end())
                there.push_back(p.of);
        const lying<Unit> lies = table_.in_sight(piece);
        if (shows_a_wrong_side(lies, view_))
            made_.explain(wrong_side_line);
        for (auto& [of, where] : parts_in_sight(lies, view_)) {
            const bool few = std::count_if(there.begin(), there.end(),
                                           [index = of.index](const cut_part& o) { return o.index == index; }) <= 3;
            notes_.names.push_back(
                {name(of, there), std::move(where), few || of == piece, design_.parts()[of.index].name});
        }
        const cut_part base = outermost(there, piece);
        for (const edge e : all_edges) {
            edge_in_sight side = seen_at({base, e, true});
            const page_point p = side.at.from;
            const double in = side.out.x < 0   ? p.x - now_.x
                              : side.out.x > 0 ? now_.right() - p.x
                              : side.out.y < 0 ? p.y - now_.y
                                               : now_.bottom() - p.y;
            if (in > too_thin) // something else reaches beyond it
                continue;
            side.words =
                e == edge::top ? sentence({"top of ", with_article(base, there)}) : std::string(word(name_of(e)));
            notes_.edges.push_back(std::move(side));
        }
        const std::string of = with_article(piece, there);
        made_.words.facts.push_back(shown_->step.up == face::right ? sentence({"right side of ", of, " up"})
                                                                   : sentence({"wrong side of ", of, " up"}));
    }
    cut_part outermost(const std::vector<cut_part>& there, const cut_part& piece) const {
        cut_part most = piece;
        const auto size = [&](const cut_part& p) {
            const page_area a = view_(table_.extent(p));
            return a.width * a.height;
        };
        for (const cut_part& p : there)
            if (size(p) > size(most) + too_thin)
                most = p;
        return most;
    }

    const making<Unit>& design_;
    table_work<Unit>& table_;
    const turns_taken<Unit>& turns_;
    const ruler by_;
    const std::string note_;
    const step_shown<Unit>* shown_ = nullptr;
    picture made_{};
    lying_notes notes_{};
    plies_lying<Unit> lies_{};
    table_view view_{};
    page_area now_{}; ///< of what lies there when the step is done
    std::vector<turned_cloth<Unit>> turned_{};
    std::vector<page_point> found_{};
    std::vector<page_segment> edges_{}; ///< in sight
};

} // namespace turncloth::detail

#endif
