// The steps of making of a project whose pieces say what is joined to what, but not by which rows: each piece's own
// finishes as they are carried out, and the rest by name.
//
//   steps_by_name(draft)     for example: cut, mark, sew zippers, hem what lies on top, join, sew on, bind, hang
//
// Common practice: marks are made while the cloth is flat and raw; what is sewn onto a piece is finished before it goes
// on, and goes on before that piece's own edges are turned; inner layers are laid in last, just before they are bound.
#ifndef TURNCLOTH_SHEET_DETAIL_ORDER_HPP
#define TURNCLOTH_SHEET_DETAIL_ORDER_HPP

#include <turncloth/sheet/detail/draft.hpp>
#include <turncloth/sheet/detail/kinds.hpp>
#include <turncloth/sheet/detail/outlines_told.hpp>
#include <turncloth/sheet/detail/own_finishes.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
class order_maker {
public:
    explicit order_maker(sheet_draft<Unit>& draft)
        : project_(draft.from()), pieces_(draft.made().pieces), own_(draft.from()), turned_(pieces_.size(), false) {}

    work_plan<Unit> make() {
        plan_.parts = own_.parts();
        say(named_step(work_verb::cut));
        for (const std::string& step : project_.preparations())
            say(named_step(work_verb::prepare, step));
        for (const outlined_piece<Unit>& p : project_.outlines())
            for (const std::string& step : edges_to_turn(p))
                say(named_step(work_verb::prepare, step));
        for (const piece<Unit>& p : project_.pieces())
            if (!p.pleats().empty())
                say(step_on(work_verb::pleat, p.name()));
        for (const zipper<Unit>& z : project_.zippers())
            sew(z);
        for (const piece<Unit>& p : project_.pieces())
            if (goes_onto_another(p.name()))
                turn_edges(p);
        for (const meeting<Unit>& m : project_.meetings()) {
            turn_first_where_ends_lie_on_edges(m);
            say(step_on(work_verb::join, m.longer, m.shorter));
        }
        for (const placing<Unit>& p : project_.placings())
            say(sewn_on(p));
        for (const piece<Unit>& p : project_.pieces())
            if (!goes_onto_another(p.name()))
                turn_edges(p);
        add_notions(true); // whose edges may have been turned for them
        join_seams();
        add_notions(false);
        for (work_group<Unit>& g : plan_.groups)
            note_care(g, plan_.parts);
        return std::move(plan_);
    }

private:
    std::size_t number_of(const std::string& name) const {
        std::size_t i = 0;
        while (i + 1 < pieces_.size() && pieces_[i].made_from.name() != name)
            ++i;
        return i;
    }
    static work_step<Unit> named_step(work_verb verb, const std::string& what = {}) {
        work_step<Unit> s;
        s.verb = verb;
        s.what = what;
        return s;
    }
    work_step<Unit> step_on(work_verb verb, const std::string& piece, const std::string& on = {}) const {
        work_step<Unit> s = named_step(verb);
        s.places.emplace_back().piece = {number_of(piece), 0};
        if (!on.empty())
            s.on = {number_of(on), 0};
        return s;
    }
    /// Once each: three pockets of one name are one step.
    void say(work_step<Unit> step) {
        for (const work_group<Unit>& g : plan_.groups)
            if (const work_step<Unit>& s = g.steps[0]; s.verb == step.verb && s.what == step.what && s.on == step.on &&
                                                       s.places == step.places && g.steps.size() == 1)
                return;
        plan_.groups.push_back(group_of(std::move(step)));
    }

    /// Through the tape and the piece.
    void sew(const zipper<Unit>& z) {
        work_step<Unit> s = named_step(work_verb::zipper);
        const std::size_t i = number_of(z.on);
        for (const sheet_line<Unit>& l : pieces_[i].lines)
            if (l.kind == line_kind::stitching && !l.of_finish)
                s.places.push_back(row_along(i, l, 2, 2));
        if (s.places.empty())
            s = step_on(work_verb::zipper, z.on);
        s.once_more = z.centres.size() > 1;
        say(sewn_as_asked(std::move(s)));
    }
    work_step<Unit> sewn_as_asked(work_step<Unit> s) const {
        if (!project_.sewings().empty()) {
            s.stitch = project_.sewings().front().stitch;
            s.overrun = project_.sewings().front().overrun;
        }
        return s;
    }
    static work_place<Unit> row_along(std::size_t i, const sheet_line<Unit>& l, std::size_t least, std::size_t most) {
        work_place<Unit> p;
        p.piece = {i, 0};
        p.side = l.parallel_to;
        p.across = {{{i, 0}, l.parallel_to, false}, {l.from_cut_edge.value()}};
        p.along = {{{i, 0}, is_level(l.parallel_to) ? edge::left : edge::top, false}, {l.begins, l.ends}};
        p.sewn = l.ends - l.begins;
        p.least = least;
        p.most = most;
        return p;
    }

    /// As many of it as are placed so, while there are that many. Its own edges are turned by then, those that join are not.
    work_step<Unit> sewn_on(const placing<Unit>& p) {
        work_step<Unit> s = step_on(work_verb::apply, p.piece, p.on);
        if (p.sewn.empty())
            return s;
        const std::size_t i = number_of(p.piece);
        const panel<Unit>& shape = pieces_[i].made_from.shape();
        s.places.clear();
        s.width = p.inset;
        for (const edge e : p.sewn) {
            work_place<Unit>& row = s.places.emplace_back();
            row.piece = {i, 0};
            row.side = e;
            row.across = {{{i, 0}, e, true}, {p.inset}};
            row.sewn = along(shape.finished(), e);
            for (const edge end : all_edges)
                if (is_level(end) != is_level(e) && shape.finish_of(end).folds().empty())
                    row.sewn += shape.finish_of(end).allowance();
            row.least = 2;
            row.most = 1 + layers_beside(shape, e) * (shape.finish_of(e).folds().size() + 1);
        }
        s.runs = 0;
        for (const placing<Unit>& like : project_.placings())
            if (like.piece == p.piece && like.on == p.on && like.sewn == p.sewn && like.inset == p.inset)
                s.runs += pieces_[number_of(p.on)].made_from.count();
        s.runs = std::min(s.runs, pieces_[i].made_from.count());
        return sewn_as_asked(std::move(s));
    }

    bool goes_onto_another(const std::string& name) const {
        const auto& on_to = project_.meetings();
        const auto& placed = project_.placings();
        return std::any_of(on_to.begin(), on_to.end(), [&](const auto& m) { return m.longer == name; }) ||
               std::any_of(placed.begin(), placed.end(), [&](const auto& p) { return p.piece == name; });
    }

    /// A longer piece whose ends come to the finished edges of the shorter lies on its hems, so these are turned first.
    /// Not where layers lie inside: they are bound in last.
    void turn_first_where_ends_lie_on_edges(const meeting<Unit>& m) {
        for (const piece<Unit>& p : project_.pieces()) {
            const finished_size<Unit>& size = p.shape().finished();
            if (p.name() == m.shorter && m.on_shorter == (is_level(m.from) ? size.height() : size.width()) &&
                layers_inside(p).empty())
                turn_edges(p);
        }
    }

    std::vector<work_place<Unit>> layers_inside(const piece<Unit>& outer) const {
        std::vector<work_place<Unit>> inner;
        for (const piece<Unit>& p : project_.pieces())
            if (p.inside() == outer.name())
                inner.emplace_back().piece = {number_of(p.name()), 0};
        return inner;
    }

    void turn_edges(const piece<Unit>& p) {
        const std::size_t i = number_of(p.name());
        if (turned_[i])
            return;
        turned_[i] = true;
        for (const work_group<Unit>& g : own_.of(i))
            plan_.groups.push_back(g);
        if (!own_.fits())
            turn_by_name(p, i);
    }
    void turn_by_name(const piece<Unit>& p, std::size_t i) {
        work_step<Unit> s = named_step(work_verb::hem);
        for (const edge e : edges_in_order(p.shape()))
            if (!p.shape().finish_of(e).folds().empty()) {
                work_place<Unit>& place = s.places.emplace_back();
                place.piece = {i, 0};
                place.side = e;
            }
        if (s.places.empty())
            return;
        work_step<Unit> lay = named_step(work_verb::lay);
        lay.on = {i, 0};
        lay.places = layers_inside(p);
        if (!lay.places.empty())
            say(std::move(lay));
        say(std::move(s));
    }

    void add_notions(bool before_seams) {
        for (const notion<Unit>& n : project_.notions())
            if (n.goes_in_before_seams() == before_seams)
                say(named_step(work_verb::add, n.name()));
    }

    /// Sewn before its allowance is pressed, through this piece and another like it, with their other edges turned.
    void join_seams() {
        work_step<Unit> s = named_step(work_verb::close_up);
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            const panel<Unit>& shape = pieces_[i].made_from.shape();
            for (const sheet_line<Unit>& l : pieces_[i].lines)
                if (l.kind == line_kind::stitching && l.of_finish && shape.finish_of(l.parallel_to).joins())
                    s.places.push_back(row_along(i, l, 2, 2 * layers_beside(shape, l.parallel_to)));
            if (std::any_of(all_edges.begin(), all_edges.end(), [&](edge e) { return joins_unsewn(shape, e); }))
                s.places.emplace_back().piece = {i, 0};
        }
        if (!s.places.empty())
            say(sewn_as_asked(std::move(s)));
    }
    static bool joins_unsewn(const panel<Unit>& shape, edge e) {
        return shape.finish_of(e).joins() && shape.finish_of(e).stitching().empty();
    }
    static std::size_t layers_beside(const panel<Unit>& shape, edge e) {
        std::size_t most = 1;
        for (const edge beside : all_edges)
            if (is_level(beside) != is_level(e) && !shape.finish_of(beside).joins())
                most = std::max(most, shape.finish_of(beside).folds().size() + 1);
        return most;
    }

    const project<Unit>& project_;
    const std::vector<sheet_piece<Unit>>& pieces_;
    own_finishes<Unit> own_;
    std::vector<bool> turned_{};
    work_plan<Unit> plan_{};
};

template <length_unit Unit>
work_plan<Unit> steps_by_name(sheet_draft<Unit>& draft) {
    return order_maker<Unit>(draft).make();
}

} // namespace detail

} // namespace turncloth

#endif
