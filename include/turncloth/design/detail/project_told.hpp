// A project as a design of numbers says it.
//
//   project_told<U>(project).say()      a project_design
#ifndef TURNCLOTH_DESIGN_DETAIL_PROJECT_TOLD_HPP
#define TURNCLOTH_DESIGN_DETAIL_PROJECT_TOLD_HPP

#include <turncloth/design/detail/finish_said.hpp>
#include <turncloth/design/detail/making_told.hpp>
#include <turncloth/design/detail/one_size.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/sheet/project.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class project_told {
public:
    explicit project_told(const project<Unit>& p) : project_(p) {}

    project_design say() {
        made_.name.text = project_.name();
        for_size_alone(made_, project_.finished());
        say_all(made_.pieces, project_.pieces());
        say_all(made_.outlines, project_.outlines());
        say_all(made_.cloths, project_.cloths());
        say_all(made_.meetings, project_.meetings());
        say_all(made_.seams, project_.edge_seams());
        say_all(made_.placings, project_.placings());
        say_all(made_.span_lists, project_.span_lists());
        say_all(made_.zippers, project_.zippers());
        say_all(made_.bindings, project_.bindings());
        say_all(made_.reaches, project_.must_reach_list());
        say_all(made_.notions, project_.notions());
        say_all(made_.sewings, project_.sewings());
        if (project_.design() != nullptr)
            made_.making = making_told<Unit>(project_).say();
        say_all(made_.cautions, project_.cautions());
        for (const std::string& step : project_.preparations())
            made_.preparations.push_back({{step}, {}});
        made_.most_layers = counted_unless(project_.most_layers(), usual_most_layers);
        return std::move(made_);
    }

private:
    template <class Said, class All>
    void say_all(std::vector<Said>& to, const All& all) {
        for (const auto& one : all)
            to.push_back(say(one));
    }
    static std::vector<length_expression> lengths_said(const std::vector<length<Unit>>& all) {
        std::vector<length_expression> made;
        for (const length<Unit>& l : all)
            made.push_back(said(l));
        return made;
    }

    design_piece say(const piece<Unit>& p) {
        const auto [width, height] = p.shape().finished();
        design_piece made{p.name(), p.material(), said(width), said(height), counted_unless(p.count(), 1)};
        made.film = p.is_film();
        made.does_not_fray = !p.frays() && !p.is_film();
        made.cut_up = p.is_cut_up();
        made.lies = p.lies();
        made.inside = p.inside();
        made.edges = say(p.shape());
        say_marks(p, made.marks);
        for (const pleats_on_piece<Unit>& f : p.pleats())
            made.pleats.push_back({f.from,
                                   f.pleats.kind(),
                                   said(f.pleats.finished()),
                                   count_expression(std::to_string(f.pleats.count())),
                                   said(f.pleats.depth()),
                                   said_unless_nothing(f.starts.from_datum()),
                                   {}});
        for (const corners_cut<Unit>& c : p.corners())
            made.corners = design_corners{said(c.square), said(c.across), {}};
        say_all(made.eyelet_rows, p.eyelets());
        return made;
    }
    design_outline say(const outlined_piece<Unit>& p) {
        const drafted_piece<Unit>& from = p.made_from;
        design_outline made{from.name, from.material, counted_unless(from.count, 1), from.may_turn};
        if (from.grain)
            made.grain = design_grain{said((*from.grain)[0].across), said((*from.grain)[0].up),
                                      said((*from.grain)[1].across), said((*from.grain)[1].up)};
        if (from.tolerance != drafted_piece<Unit>().tolerance)
            made.tolerance = said(from.tolerance);
        for (const drafted_corner<Unit>& c : from.corners) {
            design_outline_corner corner{said(c.across), said(c.up)};
            if (c.edge != finish<Unit>())
                corner.edge = say(c.edge);
            corner.shape = c.shape;
            corner.curve = say(c.curve);
            corner.notches = lengths_said(c.notches);
            made.corners.push_back(std::move(corner));
        }
        return made;
    }
    static std::optional<design_curve> say(const drafted_curve<Unit>& c) {
        switch (c.kind) {
        case curve_kind::hollow:
            return design_curve{"hollow", {{"rise", said(c.rise)}}};
        case curve_kind::rounded:
            return design_curve{"rounded", {{"rise", said(c.rise)}}};
        case curve_kind::cubic:
            return design_curve{"cubic",
                                {{"pull_across", said(c.pull.across)},
                                 {"pull_up", said(c.pull.up)},
                                 {"other_across", said(c.other_pull.across)},
                                 {"other_up", said(c.other_pull.up)}}};
        case curve_kind::straight:
            break;
        }
        return {};
    }
    design_edges say(const panel<Unit>& shape) {
        design_edges made;
        const finish<Unit>& top = shape.finish_of(edge::top);
        const auto one = [&](edge e) {
            const finish<Unit>& f = shape.finish_of(e);
            return f == finish<Unit>() ? std::optional<design_finish>() : std::optional(say(f));
        };
        if (top == shape.finish_of(edge::right) && top == shape.finish_of(edge::bottom) &&
            top == shape.finish_of(edge::left)) {
            made.all = one(edge::top);
            return made;
        }
        made.top = one(edge::top);
        made.right = one(edge::right);
        made.bottom = one(edge::bottom);
        made.left = one(edge::left);
        return made;
    }
    design_finish say(const finish<Unit>& f) {
        if (std::optional<design_finish> form = form_of(f))
            return *std::move(form);
        for (const design_own_finish& own : made_.finishes)
            if (own == own_finish_of(f, own.called))
                return {own.called};
        const std::string called = "finish " + std::to_string(made_.finishes.size() + 1);
        made_.finishes.push_back(own_finish_of(f, called));
        return {called};
    }

    /// Marks that follow one another in equal steps are one row.
    void say_marks(const piece<Unit>& p, std::vector<design_marks>& to) const {
        const auto& all = p.marks();
        for (std::size_t i = 0, n = 1; i < all.size(); i += n) {
            const auto [from, first] = measured(p, all[i]);
            length<Unit> step;
            for (n = 1; i + n < all.size() && follows(p, all[i], all[i + n]); ++n) {
                const auto [datum, at] = measured(p, all[i + n]);
                const length<Unit> further = at - first;
                if (datum != from || (n > 1 && further != step * fraction(static_cast<std::int64_t>(n))))
                    break;
                step = n == 1 ? further : step;
            }
            const row<finished_edge, Unit> places(at_first(first), n > 1 ? step : length<Unit>(),
                                                  static_cast<std::int64_t>(n));
            design_marks made{{all[i].what}, all[i].from, row_said(places), from};
            for (const short_mark<Unit>& t : all[i].only)
                made.only.push_back({t.at, said(t.size)});
            to.push_back(std::move(made));
        }
    }
    static place<finished_edge, Unit> at_first(length<Unit> l) { return at<finished_edge>(l); }
    static bool follows(const piece<Unit>&, const mark_line<Unit>& a, const mark_line<Unit>& b) {
        return a.what == b.what && a.from == b.from && a.only == b.only;
    }
    /// The datum whose way from the cut edge has the same working.
    static std::pair<design_datum, length<Unit>> measured(const piece<Unit>& p, const mark_line<Unit>& m) {
        const panel<Unit>& shape = p.shape();
        const length<Unit> in = m.from_cut_edge.value();
        const finish<Unit>& f = shape.finish_of(m.from);
        const length<Unit> from_finished = in - f.allowance();
        if (shape.way_from_cut_edge(m.from, at<finished_edge>(from_finished)) == m.from_cut_edge)
            return {design_datum::finished_edge, from_finished};
        if (!f.stitching().empty()) {
            const length<Unit> none = shape.from_cut_edge(m.from, at<stitched_line>(length<Unit>())).from_datum();
            if (shape.way_from_cut_edge(m.from, at<stitched_line>(in - none)) == m.from_cut_edge)
                return {design_datum::stitched_line, in - none};
        }
        return {design_datum::cut_edge, in};
    }

    static design_eyelet_row say(const eyelet_row<Unit>& e) {
        return {count_expression(std::to_string(e.along.size())),
                said(e.each.hole),
                said(e.each.rim),
                said(e.along.margin()),
                said(e.along.gap()),
                said(e.down.from_datum()),
                said_unless_nothing(e.along.starts().graduation())};
    }
    static design_cloth say(const project_cloth<Unit>& c) {
        design_cloth made{
            c.material, said_unless_nothing(c.width), said_unless_nothing(c.selvedge), c.one_way, c.folded, c.washed};
        made.shrinks_along = percents_said(c.change.along);
        made.shrinks_across = percents_said(c.change.across);
        made.join = said_unless_nothing(c.join);
        made.repeat_along = said_unless_nothing(c.repeat_along);
        made.repeat_across = said_unless_nothing(c.repeat_across);
        for (const piece_on_hand<Unit>& kept : c.on_hand)
            made.on_hand.push_back({kept.name, said(kept.width), said(kept.length), {}});
        return made;
    }
    static number_expression percents_said(dimensional_change c) {
        const fraction p = -c.in_percent();
        if (p == 0)
            return {};
        return number_expression(p < 0 ? "- (" + to_text(-p) + ")" : to_text(p));
    }
    static design_meeting say(const meeting<Unit>& m) {
        return {m.longer,
                m.shorter,
                m.from,
                said(m.on_longer),
                said(m.on_shorter),
                count_expression(std::to_string(m.spans)),
                said_unless_nothing(m.graduation),
                {}};
    }
    static design_edge_seam say(const edge_seam<Unit>& s) {
        return {s.one,
                s.other,
                s.of_one,
                s.of_other,
                s.beyond,
                s.taken_up,
                counted_unless(s.spans, 4),
                said_unless_nothing(s.graduation),
                {}};
    }
    static design_placing say(const placing<Unit>& p) {
        return {p.piece,
                p.on,
                said_unless_nothing(p.from_left.from_datum()),
                said_unless_nothing(p.from_top.from_datum()),
                p.sewn,
                said_unless_nothing(p.inset),
                {}};
    }
    static design_span_list say(const span_list<Unit>& s) {
        design_span_list made{{s.what}, s.on, s.from, {}, {}};
        for (const length<Unit>& l : s.spans)
            made.spans.push_back({said(l), {}});
        return made;
    }
    static design_zipper say(const zipper<Unit>& z) {
        design_zipper made{
            z.on,         z.from,      {}, said(z.opening.across), said(z.opening.margin), said(z.opening.beyond),
            said(z.rows), said(z.slit)};
        for (const auto& c : z.centres)
            made.centres.push_back({said(c.from_datum()), {}});
        made.roll = said_unless_nothing(z.supply.roll);
        made.lengths_sold = lengths_said(z.supply.lengths_sold);
        made.ends = said_unless_nothing(z.supply.ends);
        made.tail = said_unless_nothing(z.supply.tail);
        made.graduation = said_unless_nothing(z.graduation);
        return made;
    }
    static design_binding say(const edge_binding<Unit>& b) {
        design_binding made{b.on,
                            b.material,
                            said(b.finished),
                            said(b.allowance.seam),
                            said_unless_nothing(b.allowance.turn),
                            said(b.inset),
                            said_unless_nothing(b.turned_in),
                            b.edges,
                            {b.name}};
        made.doubled = b.doubled;
        made.by_hand = b.by_hand;
        return made;
    }
    static design_reach say(const must_reach<Unit>& r) { return {{r.what}, said(r.has), said(r.needs), {}}; }

    design_notion say(const notion<Unit>& n) {
        design_notion made{{n.name()}};
        for (const notion_detail<Unit>& d : n.details())
            made.details.push_back(say(d));
        say_all(made.cautions, n.cautions());
        made.before_seams = n.goes_in_before_seams();
        return made;
    }
    static design_detail say(const notion_detail<Unit>& d) {
        design_detail made{{d.what}};
        made.sold = d.sold;
        made.places = lengths_said(d.places);
        if (d.count > 0)
            made.number = count_expression(std::to_string(d.count));
        else if (d.amount == figure<Unit>().plus(d.amount.value(), ""))
            made.figure = said(d.amount.value());
        else
            for (const term<Unit>& t : d.amount.terms())
                made.terms.push_back(say(t));
        return made;
    }
    static design_term say(const term<Unit>& t) {
        design_term made;
        made.what.text = std::string(t.what().text());
        if (t.times() != 1)
            made.times = number_expression(t.times() < 0 ? "- (" + to_text(-t.times()) + ")" : to_text(t.times()));
        for (const length<Unit>& l : t.parts())
            made.parts.push_back(said(l));
        return made;
    }
    static design_sewing say(const sewing<Unit>& s) {
        return {count_expression(std::to_string(s.stitch.number)), said(s.overrun), said(s.spool),
                number_expression(to_text(s.waste))};
    }
    static design_caution say(const sheet_caution& c) { return {c.at, {c.sentence}, {}}; }

    const project<Unit>& project_;
    project_design made_;
};

} // namespace turncloth::detail

#endif
