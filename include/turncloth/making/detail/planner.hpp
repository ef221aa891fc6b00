// A design carried out bundle by bundle, and for each step what the maker needs to know at that moment.
//
//   class planner<U>(design, tasks)      .groups()
//
// Distances are from the edges that detail/sight.hpp finds in sight.
#ifndef TURNCLOTH_MAKING_DETAIL_PLANNER_HPP
#define TURNCLOTH_MAKING_DETAIL_PLANNER_HPP

#include <turncloth/making/corner_out.hpp>
#include <turncloth/making/detail/bundles.hpp>
#include <turncloth/making/detail/fit_marks.hpp>
#include <turncloth/making/detail/like_rows.hpp>
#include <turncloth/making/detail/model.hpp>
#include <turncloth/making/detail/sewn_up.hpp>
#include <turncloth/making/detail/side_up.hpp>
#include <turncloth/making/detail/sight.hpp>
#include <turncloth/making/detail/step_begun.hpp>
#include <turncloth/making/work_step.hpp>

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Carries a design out bundle by bundle, and notes for each step what the maker needs to know.
template <length_unit Unit>
class planner {
public:
    planner(const making<Unit>& design, std::vector<task> tasks)
        : design_(design), model_(design), bench_(model_.flat()), tasks_(std::move(tasks)), side_(model_.count()) {
        laid_.assign(model_.count(), false);
    }

    std::vector<work_group<Unit>> groups() {
        std::vector<work_group<Unit>> made;
        const std::vector<bundle> bundles = lazy_bundler<for_any<Unit>>(tasks_).in_order();
        made.reserve(bundles.size()); // groups are large
        for (const bundle& b : bundles)
            add(made, b);
        return made;
    }

private:
    using whole = flat_work::whole;
    using place = work_place<Unit>;

    void add(std::vector<work_group<Unit>>& groups, const bundle& b) {
        if (const operation& o = tasks_[b.strands[0][0]].what; o.kind >= operation_kind::handwork) {
            groups.push_back(group_of(step_of(design_, o)));
            return o.kind == operation_kind::handwork ? note_handwork(groups.back().steps[0])
                                                      : note_moment(groups.back().steps[0]);
        }
        work_group<Unit> made;
        made.steps.resize(b.strands[0].size());
        for (std::size_t k = 0; k < b.strands[0].size(); ++k)
            step_begun<Unit>{design_, model_}.begin(made.steps[k], tasks_[b.strands[0][k]],
                                                    k > 0 ? &tasks_[b.strands[0][k - 1]] : nullptr);
        for (const strand& s : b.strands) {
            const cut_part piece = tasks_[s[0]].on;
            if (std::find(made.pieces.begin(), made.pieces.end(), piece) == made.pieces.end())
                made.pieces.push_back(piece);
            for (std::size_t k = 0; k < s.size(); ++k) {
                // The row of a hem is sewn from the side that the hem was turned to.
                made.steps[k].up = b.hem && k > 0 ? made.steps[0].up : up_of(tasks_[s[k]].on);
                carry_out(made.steps[k], tasks_[s[k]]);
            }
        }
        made.one_after_another = !b.hem && made.pieces.size() > 1;
        join_like_rows(made.steps);
        if (b.hem)
            made.check = measured_now(made.pieces[0]);
        if (b.hem && !groups.empty() && groups.back().check && groups.back().pieces == made.pieces) {
            work_group<Unit>& last = groups.back();
            last.steps.insert(last.steps.end(), std::make_move_iterator(made.steps.begin()),
                              std::make_move_iterator(made.steps.end()));
            last.check = made.check;
            return;
        }
        groups.push_back(std::move(made));
    }

    void carry_out(work_step<Unit>& s, const task& t) {
        s.stands_for.push_back(t.what);
        switch (t.what.kind) {
        case operation_kind::laying:
            return lay(s, t);
        case operation_kind::crease:
            return fold(s, t);
        case operation_kind::stitching:
            return sew(s, t);
        case operation_kind::snip:
            return slit(s, t);
        case operation_kind::spot:
            return set(s, t);
        case operation_kind::seam:
            side_.forget();
            return note_seam(s, seam_made{design_, model_, boxed(), bench_}, t.what.index);
        case operation_kind::handwork:
        case operation_kind::moment:
        case operation_kind::opening:
            return;
        }
    }

    flat_work::lazy_sight<for_any<Unit>> seen(const cut_part& p) const {
        return {bench_.stack_of(model_.number_of(p)), model_.flat()};
    }
    const flat_work::lie& how(const cut_part& p) const { return bench_.body_of(model_.number_of(p))->how; }
    face up_of(const cut_part& p) const { return how(p).right_up() ? face::right : face::wrong; }

    /// A way along the table, in the lengths of a piece's own cloth where it lies by itself.
    length<Unit> on_piece(std::size_t part, bool level, whole w) const {
        return laid_[part] ? model_.length_of_whole(w) : model_.length_along(part, level, w);
    }
    seen_edge edge_of(const flat_work::sighted& e) const { return {model_.part_of(e.part), e.side, e.folded}; }
    length<Unit> way(const flat_work::sighted& from, whole to) const {
        const whole w = from.at < to ? to - from.at : from.at - to;
        return on_piece(from.part, !is_level(from.side), w);
    }
    /// Of what is done at several places of one piece the first says whether it is turned over.
    void look_from(work_step<Unit>& s, std::size_t part, bool above) {
        const bool turned = side_.turn(bench_.root_of(part), above);
        if (s.places.empty() || s.places[0].piece != model_.part_of(part))
            s.turned_over |= turned;
    }
    void lay(work_step<Unit>& s, const task& t) {
        const laying<Unit>& l = design_.layings()[t.what.index];
        look_from(s, model_.number_of(l.on), !l.beneath);
        const std::size_t piece = model_.number_of(l.piece);
        laid_[piece] = true;
        std::vector<char> with(model_.count(), 0); // lies with the piece already
        for (const flat_work::ply& p : bench_.stack_of(piece).plies)
            with[p.part] = p.part != piece;
        bench_.lay(piece);
        note_carried(s, piece, with, l.beneath);
        s.up = l.beneath ? opposite(up_of(l.piece)) : up_of(l.piece);
        s.towards = l.beneath ? opposite(up_of(l.on)) : up_of(l.on);
        place p{.piece = l.piece};
        p.own_left = measure_laid(l, edge::left, p.across);
        p.own_top = measure_laid(l, edge::top, p.along);
        p.side = p.own_left.side;
        seen_distances<Unit> right, bottom;
        measure_laid(l, edge::right, right);
        measure_laid(l, edge::bottom, bottom);
        const auto like_left = [&](const seen_distances<Unit>& m) { return m.from.of == l.on && m.at == p.across.at; };
        p.all_round = like_left(p.across) && like_left(p.along) && like_left(right) && like_left(bottom);
        if (l.fit.is_given() && s.places.empty())
            mark_fit(s, l, p);
        s.places.push_back(std::move(p));
    }
    /// What comes with a piece lies on its cloth or under it, as seen from where it is laid.
    void note_carried(work_step<Unit>& s, std::size_t piece, const std::vector<char>& with, bool from_beneath) const {
        const std::vector<flat_work::ply>& plies = bench_.stack_of(piece).plies;
        const flat_work::ply* const body = bench_.body_of(piece);
        bool above = false;
        for (const flat_work::ply& p : plies) {
            if (with[p.part] != 0)
                (above == from_beneath ? s.carries_beneath : s.carries) = true;
            above = above || &p == body;
        }
    }
    /// From that side of what a piece is laid on to the edge of the piece that lies there, which is returned.
    seen_edge measure_laid(const laying<Unit>& l, edge side, seen_distances<Unit>& into) const {
        const std::size_t piece = model_.number_of(l.piece), on = model_.number_of(l.on);
        const flat_work::lazy_sight<for_any<Unit>> now = seen(l.piece);
        const edge toward = flat_work::on_table(side, how(l.on));
        const auto own = now.outermost(piece, toward, how(l.piece));
        const flat_work::bounds b = flat_work::extent(bench_.stack_of(piece), piece);
        flat_work::looked_along at{{is_level(toward), own->at},
                                   is_level(toward) ? flat_work::stretch{b.left, b.right}
                                                    : flat_work::stretch{b.top, b.bottom},
                                   !l.beneath};
        at.laid = l.beneath ? piece : flat_work::nowhere;
        auto from = now.measured_from(on, side, at);
        if (from.part == piece) // beside itself it has no distance
            from = *now.outermost(on, toward, how(l.on));
        into.from = edge_of(from);
        const bool beyond = is_left_or_top(toward) ? own->at < from.at : own->at > from.at;
        const length<Unit> d = model_.length_of_whole(own->at < from.at ? from.at - own->at : own->at - from.at);
        into.at = {beyond && from.side == side ? -d : d};
        return edge_of(*own);
    }
    static bool is_left_or_top(edge e) { return e == edge::left || e == edge::top; }

    void fold(work_step<Unit>& s, const task& t) {
        const crease<Unit>& c = design_.creases()[t.what.index];
        const std::size_t part = model_.number_of(t.on);
        const face up = up_of(t.on);
        look_from(s, part, c.over);
        s.up = s.towards = c.over ? up : opposite(up);
        place p{.piece = t.on, .side = t.from};
        if (c.across) {
            p.turned = c.across->leg;
            p.corner = true;
            p.side = c.across->level;
            p.across.from = {t.on, c.across->upright, false, {}};
            const auto same = [&](const crease<Unit>* b) {
                return b->on() == c.on() && b->across->level == c.across->level &&
                       b->across->upright == c.across->upright;
            };
            s.once_more = std::any_of(corners_.begin(), corners_.end(), same);
            corners_.push_back(&c);
        } else {
            const flat_work::flat_line line = model_.line(c.at, c.at.in);
            const flat_work::table_line at = carried(line.at, how(t.on));
            const edge toward = flat_work::on_table(t.from, how(t.on));
            const auto outer = seen(t.on).outermost(part, toward, how(t.on));
            p.across.from = edge_of(*outer);
            p.turned = way(*outer, at.at);
            s.on_a_row = std::any_of(sewn_.begin(), sewn_.end(), [&](const sewn_line& r) {
                return r.part == part && r.at.level == line.at.level && r.at.at == line.at.at;
            });
        }
        bench_.crease(t.what.index);
        s.places.push_back(std::move(p));
    }

    void sew(work_step<Unit>& s, const task& t) {
        const stitching<Unit>& r = design_.rows()[t.what.index];
        const auto [first, end] = model_.rows_of(t.what.index);
        place p{.piece = t.on, .side = t.from};
        if (is_uppermost_now(model_.number_of(t.on), first))
            s.up = opposite(up_of(t.on));
        const bool above = s.up == up_of(t.on);
        look_from(s, model_.number_of(t.on), above);
        for (std::size_t i = first; i < end; ++i) {
            const flat_work::row_layers met = bench_.layers_under(i, room_);
            const auto from = seen(t.on).measured_from(model_.number_of(t.on), t.from, {met.at, met.run, above});
            p.across.from = edge_of(from);
            p.across.at.push_back(way(from, met.at.at));
            p.sewn = on_piece(model_.number_of(t.on), is_level(t.from), met.run.to - met.run.from);
            note_layers(p, met, from);
            if (i == first)
                find_ends(p, r.through.empty() ? std::vector<cut_part>{t.on} : r.through, met, above);
            sewn_.push_back({model_.number_of(t.on), model_.flat().rows[i].along.at});
        }
        s.places.push_back(std::move(p));
    }
    /// A row on what was laid from beneath is sewn from there while the work lies so, and the piece is in sight all along.
    bool is_uppermost_now(std::size_t part, std::size_t row) {
        if (!model_.flat().parts[part].beneath || side_.of(bench_.root_of(part)) != side_up::beneath)
            return false;
        const flat_work::row_layers under = bench_.layers_under(row, room_);
        return under.one_lowest && (under.lowest == part || under.lowest == flat_work::nowhere);
    }
    /// A row on the very edge of a hem holds it: it is looked at a trifle nearer to the fold.
    void note_layers(place& p, const flat_work::row_layers& met, const flat_work::sighted& from) const {
        flat_work::layers found{met.least, met.most};
        if (met.touches && from.folded && from.part == model_.number_of(p.piece)) {
            const flat_work::table_line nearer{met.at.level, met.at.at + (from.at < met.at.at ? -1 : 1)};
            found = layers_along(bench_.stack_of(from.part), nearer, met.run);
        }
        p.most = std::max(p.most, found.most);
        p.least = p.least == 0 ? found.least : std::min(p.least, found.least);
    }

    /// From edge to edge of one of the walls, the uppermost first; or else from where to where.
    void find_ends(place& p, const std::vector<cut_part>& walls, const flat_work::row_layers& met, bool above) const {
        const flat_work::stack& lies = bench_.stack_of(model_.number_of(p.piece));
        for (auto ply = lies.plies.rbegin(); ply != lies.plies.rend(); ++ply) {
            const cut_part wall = model_.part_of(ply->part);
            if (std::find(walls.begin(), walls.end(), wall) == walls.end())
                continue;
            const flat_work::bounds b = flat_work::extent(lies, ply->part);
            const flat_work::stretch all =
                met.at.level ? flat_work::stretch{b.left, b.right} : flat_work::stretch{b.top, b.bottom};
            if (all.from == met.run.from && all.to == met.run.to) {
                p.end_to_end = wall;
                return;
            }
        }
        const bool reversed = note_ends(p, {met.at, met.run, above});
        for (const bool low : {true, false}) {
            const edge toward = met.at.level ? (low ? edge::left : edge::right) : (low ? edge::top : edge::bottom);
            if (const auto e = seen(p.piece).folded_at(toward, low ? met.run.from : met.run.to, met.at))
                (low == reversed ? p.ends_on : p.begins_on) = edge_of(*e);
        }
    }
    /// Whether it begins where it lies furthest right or down.
    bool note_ends(place& p, const flat_work::looked_along& row, bool from_end = false) const {
        const flat_work::stretch& run = row.run;
        const edge start =
            is_level(p.side) ? (from_end ? edge::right : edge::left) : (from_end ? edge::bottom : edge::top);
        const edge toward = flat_work::on_table(start, how(p.piece));
        const bool from_low = is_left_or_top(toward);
        const whole first = from_low ? run.from : run.to, last = from_low ? run.to : run.from;
        const flat_work::spot begins =
            row.at.level ? flat_work::spot{first, row.at.at} : flat_work::spot{row.at.at, first};
        const auto from = seen(p.piece).measured_from(model_.number_of(p.piece), start,
                                                      flat_work::looked_from(begins, !row.at.level, row.above));
        p.along.from = edge_of(from);
        const bool across = std::min(first, last) < from.at && from.at < std::max(first, last);
        p.along.at = {across ? -way(from, first) : way(from, first), way(from, last)};
        return !from_low;
    }

    /// The work stays as it lies.
    void note_handwork(work_step<Unit>& s) const {
        for (const cut_part& p : design_.handworks()[s.stands_for.front().index].pieces)
            s.places.push_back({.piece = p});
        const cut_part& first = s.places.front().piece;
        const bool beneath = side_.of(bench_.root_of(model_.number_of(first))) == side_up::beneath;
        s.up = beneath ? opposite(up_of(first)) : up_of(first);
    }
    void note_moment(work_step<Unit>& s) {
        side_.forget();
        if (s.verb == work_verb::put_in)
            note_passage(s, design_, model_, boxed());
        if (s.verb == work_verb::close && s.closing == closed_by::hand)
            note_sewn_shut(s, design_, model_, boxed());
    }
    /// What the seams make, walked once, and only where there are seams.
    const box_model<Unit>& boxed() { return boxed_ ? *boxed_ : boxed_.emplace(design_, model_); }

    void slit(work_step<Unit>& s, const task& t) {
        const snip<Unit>& c = design_.snips()[t.what.index];
        const auto corner = corner_cut_out(design_, c);
        const flat_work::flat_line line = model_.line(c.at, corner ? at<cut_edge>(corner->in) : c.at.in);
        const flat_work::lie& lies = how(t.on);
        const flat_work::table_line at = carried(line.at, lies);
        place p{.piece = t.on, .side = t.from, .corner = corner.has_value()};
        const auto part = model_.number_of(t.on);
        const flat_work::flat_part& own = model_.flat().parts[part];
        const flat_work::stretch run = stretch_of(line, own);
        // A slit is marked on the wrong side; a clip, or a corner, is cut from whichever lies up.
        const bool edged = corner || c.kind == snip_kind::clip;
        const side_up lies_up = side_.of(bench_.root_of(part));
        const bool above = corner ? lies_up != side_up::beneath : edged && lies_up == side_up::above;
        look_from(s, part, above);
        const flat_work::looked_along cut{at, carried(run, line.at, lies), above};
        const auto from = seen(t.on).measured_from(part, t.from, cut);
        p.across.from = edge_of(from);
        p.across.at = {way(from, at.at)};
        // It is as deep as it is from the edge that it cuts into.
        note_ends(p, cut, edged && run.from > 0 && run.to == (line.at.level ? own.width : own.height));
        s.up = above ? up_of(t.on) : opposite(up_of(t.on));
        bench_.snip(t.what.index);
        s.places.push_back(std::move(p));
    }

    void set(work_step<Unit>& s, const task& t) {
        const auto [first, end] = model_.spots_of(t.what.index);
        place p{.piece = t.on, .side = t.from};
        const std::size_t part = model_.number_of(t.on);
        look_from(s, part, true);
        for (std::size_t i = first; i < end; ++i) {
            const flat_work::spot at = how(t.on)(model_.flat().spots[i].at);
            const auto measure = [&](edge side, seen_distances<Unit>& into) {
                const bool level = is_level(flat_work::on_table(side, how(t.on)));
                const whole there = level ? at.y : at.x;
                const auto from = seen(t.on).measured_from(part, side, flat_work::looked_from(at, level, true));
                into.from = edge_of(from);
                into.at.push_back(way(from, there));
            };
            if (i == first)
                measure(t.from, p.across);
            measure(is_level(t.from) ? edge::left : edge::top, p.along);
            const std::size_t layers = bench_.pierce(i).size();
            p.most = std::max(p.most, layers);
            p.least = i == first ? layers : std::min(p.least, layers);
        }
        s.places.push_back(std::move(p));
    }

    work_check<Unit> measured_now(const cut_part& of) const {
        const std::size_t part = model_.number_of(of);
        const flat_work::bounds b = flat_work::extent(bench_.stack_of(part), part);
        const bool turned = how(of).xx == 0;
        const whole across = b.right - b.left, down = b.bottom - b.top;
        return {of, on_piece(part, true, turned ? down : across), on_piece(part, false, turned ? across : down)};
    }

    struct sewn_line {
        std::size_t part;
        flat_work::table_line at;
    };

    const making<Unit>& design_;
    flat_model<Unit> model_;
    flat_work::lazy_workbench<for_any<Unit>> bench_;
    std::vector<task> tasks_;
    std::vector<bool> laid_{};
    sides_up side_;
    std::vector<sewn_line> sewn_{};              ///< in its part's own spots
    std::vector<const crease<Unit>*> corners_{}; ///< that were folded over
    flat_work::row_room room_{};
    std::optional<box_model<Unit>> boxed_{};
};

} // namespace turncloth::detail

#endif
