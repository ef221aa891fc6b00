// A design at one finished size: its expressions worked out, and a project made of what they come to.
//
//   project_from_design<inch>(design, size, ruled).made()        a project, or every fault
#ifndef TURNCLOTH_DESIGN_DETAIL_PROJECT_FROM_DESIGN_HPP
#define TURNCLOTH_DESIGN_DETAIL_PROJECT_FROM_DESIGN_HPP

#include <turncloth/design/detail/evaluating.hpp>
#include <turncloth/design/detail/making_said.hpp>
#include <turncloth/design/detail/outlined_at.hpp>
#include <turncloth/design/detail/walking.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/measure/outcome.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class project_from_design : design_walk<Unit> {
public:
    project_from_design(const project_design& d, const finished_size<Unit>& asked, const ruled<Unit>& by)
        : project_from_design(d, by, finished_on_ruler(d, asked, by)) {}

    /// What the design says of a size that it refuses; empty where it makes it.
    const std::string& said() const { return said_; }

    outcome<project<Unit>, design_error> made() {
        if (!is_made_in<Unit>(design_))
            faults_.push_back(
                {"/units", std::string("it is not made in ") + (metric_unit<Unit> ? "centimetres" : "inches"), {}});
        if (!faults_.empty())
            return design_error(std::move(faults_));
        for (std::size_t i = 0; i < design_.measures.size(); ++i)
            values_.add(design_.measures[i], "/measures/" + std::to_string(i), faults_);
        if (const std::string path = refuse_size(); !said_.empty())
            return design_error(std::vector<design_fault>{{path, said_, {}}});
        if (!faults_.empty())
            return design_error(std::move(faults_));
        project<Unit> p(values_.text(design_.name, "/name"), finished_);
        each(design_.pieces, "/pieces", [&](const design_piece& from) { add(p, from); });
        each(design_.outlines, "/outlines", [&](const design_outline& from) { add(p, from); });
        each(design_.cloths, "/cloths", [&](const design_cloth& from) { add(p, from); });
        each(design_.meetings, "/meetings", [&](const design_meeting& from) { p.add(made(from)); });
        each(design_.seams, "/seams", [&](const design_edge_seam& from) { p.add(made(from)); });
        each(design_.placings, "/placings", [&](const design_placing& from) { p.add(made(from)); });
        each(design_.span_lists, "/span_lists", [&](const design_span_list& from) { p.add(made(from)); });
        each(design_.zippers, "/zippers", [&](const design_zipper& from) { p.add(made(from)); });
        each(design_.bindings, "/bindings", [&](const design_binding& from) { p.add(made(from)); });
        each(design_.reaches, "/must_reach", [&](const design_reach& from) { p.add(made(from)); });
        each(design_.notions, "/notions", [&](const design_notion& from) { p.add(made(p, from)); });
        attempt("/sewings", [&] {
            for (const design_sewing& from : design_.sewings)
                p.add(made(from));
        });
        each(design_.cautions, "/cautions",
             [&](const design_caution& from) { p.caution(text(from.sentence, "/sentence"), from.at); });
        each(design_.preparations, "/preparations",
             [&](const design_step& from) { p.prepare(text(from.sentence, "/sentence")); });
        attempt("/most_layers",
                [&] { p.most_layers(values_.count(design_.most_layers, "/most_layers", usual_most_layers)); });
        if (design_.making && faults_.empty())
            attempt("/making", [&] { p.made_as(making_said<Unit>(values_, p, *design_.making).make()); });
        if (!faults_.empty())
            return design_error(std::move(faults_));
        return p;
    }

private:
    using walk = design_walk<Unit>;
    using typename walk::length_type;
    using walk::attempt, walk::each, walk::length, walk::text;
    using walk::faults_, walk::path_, walk::values_;

    project_from_design(const project_design& d, const ruled<Unit>& by, const finished_size<Unit>& finished)
        : design_walk<Unit>(design_values<Unit>(finished, by)), design_(d), finished_(finished) {}

    static finished_size<Unit> finished_on_ruler(const project_design& d, const finished_size<Unit>& asked,
                                                 const ruled<Unit>& by) {
        if (!d.shorter_side_parts.given())
            return by.given(asked);
        const char* const path = "/shorter_side_parts";
        const fraction parts = *value_at(path, d.shorter_side_parts, {}, wanted::count, value_kind::inches).number;
        if (parts < 1 || parts > most_in_a_design)
            refuse_at(path, "a side is parted into 1 to 1000 alike: it comes to " + to_text(parts));
        const auto [width, height] = asked;
        const length_type shorter = by.given(std::min(width, height), numerator(parts)),
                          longer = std::max(by.given(std::max(width, height)), shorter);
        return width >= height ? finished_size<Unit>(longer, shorter) : finished_size<Unit>(shorter, longer);
    }

    /// The place of the first refusal that holds.
    std::string refuse_size() {
        for (std::size_t i = 0; i < design_.refusals.size(); ++i) {
            std::string path = "/refuse/" + std::to_string(i);
            attempt(path, [&] {
                if (!values_.holds(design_.refusals[i].where, path + "/where"))
                    return;
                said_ = values_.text(design_.refusals[i].sentence, path + "/sentence");
            });
            if (!said_.empty())
                return path;
        }
        return {};
    }
    void add(project<Unit>& p, const design_piece& from) {
        const piece_size<Unit> size(length(from.width, "/width"), length(from.height, "/height"));
        piece<Unit> cut(from.name, from.material, size, edges_of(p, from.edges));
        piece<Unit>& made = p.add(std::move(cut));
        made.count(values_.count(from.count, path_ + "/count"));
        if (from.film)
            made.of_film();
        if (from.does_not_fray)
            made.does_not_fray();
        if (from.cut_up)
            made.cut_up();
        made.lies(from.lies);
        if (!from.inside.empty())
            lay_inside(p, made, from.inside);
        const std::string piece_path = path_;
        each(from.marks, piece_path + "/marks", [&](const design_marks& m) { mark(made, m); });
        each(from.pleats, piece_path + "/pleats", [&](const design_pleats& m) { pleat(made, m); });
        if (from.corners && values_.holds(from.corners->where, piece_path + "/corners/where")) {
            const length_type square = length(from.corners->square, "/corners/square");
            made.corners_cut_out(square, length(from.corners->across, "/corners/across"));
        }
        if (from.eyelets)
            p.add(set(made, *from.eyelets));
        for (std::size_t i = 0; i < from.eyelet_rows.size(); ++i)
            made.eyelets(laid_out(from.eyelet_rows[i], piece_path + "/eyelet_rows/" + std::to_string(i)));
    }
    void add(project<Unit>& p, const design_outline& from) {
        const std::size_t faults_before = faults_.size();
        drafted_piece<Unit> made{.name = from.name, .material = from.material};
        made.count = values_.count(from.count, path_ + "/count");
        made.may_turn = from.may_turn;
        if (const auto& g = from.grain) {
            const length_type x = length(g->from_across, "/grain/from_across"),
                              y = length(g->from_up, "/grain/from_up");
            made.grain = {{{x, y}, {length(g->to_across, "/grain/to_across"), length(g->to_up, "/grain/to_up")}}};
        }
        if (from.tolerance.given())
            made.tolerance = length(from.tolerance, "/tolerance");
        const finish<Unit> all = from.edges ? finish_made(p, *from.edges, path_ + "/edges") : finish<Unit>();
        const std::string piece_path = path_;
        std::vector<std::string> paths; // of the corners that are there
        each(from.corners, piece_path + "/corners", [&](const design_outline_corner& c) {
            made.corners.push_back(corner_made(p, c, all));
            paths.push_back(path_);
        });
        if (faults_.size() == faults_before)
            p.add(outlined_at(made, piece_path, paths));
    }
    /// Of pieces that are there at other sizes alone nothing is said.
    void add(project<Unit>& p, const design_cloth& from) const {
        const auto is_of = [&](const auto& piece) { return piece.material() == from.material; };
        if (std::none_of(p.pieces().begin(), p.pieces().end(), is_of) &&
            std::none_of(p.outlines().begin(), p.outlines().end(), is_of) &&
            std::none_of(design_.bindings.begin(), design_.bindings.end(),
                         [&](const design_binding& b) { return b.material == from.material; }))
            return;
        const auto change = [&](const number_expression& e, const char* member) {
            return dimensional_change(-percent(values_.number(e, path_ + member)));
        };
        const length_type width = length(from.width, "/width"), selvedge = length(from.selvedge, "/selvedge");
        const dimensional_change along = change(from.shrinks_along, "/shrinks_along"),
                                 across = change(from.shrinks_across, "/shrinks_across");
        const length_type join = length(from.join, "/join"), repeat_along = length(from.repeat_along, "/repeat_along"),
                          repeat_across = length(from.repeat_across, "/repeat_across");
        p.add(project_cloth<Unit>{from.material,
                                  width,
                                  selvedge,
                                  from.one_way,
                                  from.folded,
                                  from.washed,
                                  {along, across},
                                  join,
                                  pieces_on_hand(values_, from, path_),
                                  repeat_along,
                                  repeat_across});
    }
    drafted_corner<Unit> corner_made(project<Unit>& p, const design_outline_corner& c, const finish<Unit>& all) const {
        const length_type across = length(c.across, "/across");
        drafted_corner<Unit> made(across, length(c.up, "/up"), c.edge ? finish_made(p, *c.edge, path_ + "/edge") : all);
        made.shape = c.shape;
        if (c.curve)
            made.curve = values_.made(*c.curve, path_ + "/curve");
        made.notches = values_.lengths(c.notches, path_ + "/notches");
        return made;
    }
    void lay_inside(const project<Unit>& p, piece<Unit>& made, const std::string& name) const {
        const auto& all = p.pieces();
        const auto outer =
            std::find_if(all.begin(), all.end(), [&](const auto& other) { return other.name() == name; });
        if (outer == all.end() || &*outer == &made)
            refuse_at(path_ + "/inside", "no piece before this one is named " + in_quotes(name));
        made.lies_inside(*outer);
    }
    finish<Unit> finish_made(project<Unit>& p, const design_finish& f, const std::string& path) const {
        for (std::size_t i = 0; i < design_.finishes.size(); ++i)
            if (design_.finishes[i].called == f.is)
                return own_finish(p, design_.finishes[i], "/finishes/" + std::to_string(i));
        return values_.made(f, path);
    }
    edges<Unit> edges_of(project<Unit>& p, const design_edges& e) const {
        const auto made = [&](const design_finish& f, const char* member) {
            return finish_made(p, f, path_ + "/edges/" + member);
        };
        const auto one = [&](const std::optional<design_finish>& own, const char* member) {
            if (own)
                return made(*own, member);
            return e.all ? made(*e.all, "all") : finish<Unit>();
        };
        return {one(e.top, "top"), one(e.right, "right"), one(e.bottom, "bottom"), one(e.left, "left")};
    }
    finish<Unit> own_finish(project<Unit>& p, const design_own_finish& f, const std::string& path) const {
        finish<Unit> made(p.keep(f.name.empty() ? f.called : f.name));
        for (const length_type& l : values_.lengths(f.allows, path + "/allows"))
            made.allows(l);
        for (const length_type& l : values_.lengths(f.folds, path + "/folds"))
            made.folds_at(l);
        for (const length_type& l : values_.lengths(f.stitching, path + "/stitching"))
            made.stitched_at(l);
        made.reaches(values_.length(f.reaches, path + "/reaches"));
        return f.joins ? made.joins_another() : made;
    }
    eyelet_row<Unit> laid_out(const design_eyelet_row& e, const std::string& path) const {
        const auto part = [&](const length_expression& of, const char* member) {
            return values_.length(of, path + member);
        };
        const length_type rim = part(e.rim, "/rim"), margin = part(e.margin, "/margin"), gap = part(e.gap, "/gap");
        const spacing<finished_edge, Unit> along(values_.count(e.count, path + "/count"), rim, margin, gap);
        const length_type graduation =
            e.graduation.given() ? part(e.graduation, "/graduation") : values_.by().graduation();
        return {along.on_ruler(graduation), at<finished_edge>(part(e.down, "/down")), {part(e.hole, "/hole"), rim}};
    }
    void mark(piece<Unit>& on, const design_marks& m) {
        std::vector<short_mark<Unit>> only;
        for (std::size_t i = 0; i < m.only.size(); ++i)
            only.push_back(
                {m.only[i].at, values_.length(m.only[i].size, path_ + "/only/" + std::to_string(i) + "/size")});
        const std::string what = text(m.what, "/what");
        for (const auto& p : values_.made(m.places, path_ + "/places")) {
            if (m.from == design_datum::finished_edge)
                on.mark(what, m.parallel_to, p, only);
            else if (m.from == design_datum::cut_edge)
                on.mark(what, m.parallel_to, at<cut_edge>(p.from_datum()), only);
            else
                on.mark(what, m.parallel_to, at<stitched_line>(p.from_datum()), only);
        }
    }
    void pleat(piece<Unit>& on, const design_pleats& p) const {
        const length_type finished = length(p.finished, "/finished"), depth = length(p.depth, "/depth");
        const std::int64_t count = values_.count(p.count, path_ + "/count");
        on.pleated(p.from, pleating<Unit>(p.kind, finished, count, depth),
                   at<finished_edge>(length(p.starts, "/starts")));
    }
    notion<Unit> set(piece<Unit>& on, const design_eyelets& e) const {
        const std::string path = path_ + "/eyelets";
        const auto part = [&](const length_expression& of, const char* member) {
            return values_.length(of, path + member);
        };
        const length_type margin = part(e.margin, "/margin"), clear = part(e.clear, "/clear");
        eyelet_row<Unit> row = eyelets(on.shape(), values_.count(e.count, path + "/count"),
                                       eyelet<Unit>{part(e.hole, "/hole"), part(e.rim, "/rim")},
                                       rim_distances<Unit>{.margin = margin, .clear = clear});
        row.along = row.along.on_ruler(values_.by().graduation());
        row.down = at<finished_edge>(values_.by().middle(row.down.from_datum() * 2));
        on.eyelets(row);
        return listed(e.listed_as.text.empty() ? "eyelets" : values_.text(e.listed_as, path + "/listed_as"), row);
    }

    meeting<Unit> made(const design_meeting& m) const {
        const length_type longer = length(m.on_longer, "/on_longer"), shorter = length(m.on_shorter, "/on_shorter");
        const std::int64_t spans = values_.count(m.spans, path_ + "/spans");
        return {m.longer, m.shorter, m.from, longer, shorter, spans, graduation(m)};
    }
    template <class Record>
    length_type graduation(const Record& r) const {
        return r.graduation.given() ? length(r.graduation, "/graduation") : values_.by().graduation();
    }
    edge_seam<Unit> made(const design_edge_seam& s) const {
        edge_seam<Unit> made{s.one, s.other, s.of_one, s.of_other, s.beyond, s.taken_up};
        made.spans = values_.count(s.spans, path_ + "/spans", made.spans);
        if (s.taken_up != surplus::none || s.graduation.given())
            made.graduation = graduation(s);
        return made;
    }
    placing<Unit> made(const design_placing& p) const {
        const length_type left = length(p.from_left, "/from_left"), top = length(p.from_top, "/from_top"),
                          inset = length(p.inset, "/inset");
        return {p.piece, p.on, at<finished_edge>(left), at<finished_edge>(top), p.sewn, inset};
    }
    std::vector<length_type> there(const std::vector<design_span>& all, const char* member) const {
        std::vector<length_type> found;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string path = path_ + member + "/" + std::to_string(i);
            if (values_.holds(all[i].where, path + "/where"))
                found.push_back(values_.length(all[i].size, path + "/size"));
        }
        return found;
    }
    span_list<Unit> made(const design_span_list& s) const {
        std::vector<length_type> spans = there(s.spans, "/spans");
        return {text(s.what, "/what"), s.on, s.from, std::move(spans)};
    }
    zipper<Unit> made(const design_zipper& z) const {
        std::vector<place<finished_edge, Unit>> centres;
        for (const length_type& l : there(z.centres, "/centres"))
            centres.push_back(at<finished_edge>(l));
        const zipped_opening<Unit> opening{length(z.across, "/across"), length(z.margin, "/margin"),
                                           length(z.beyond, "/beyond")};
        const length_type rows = length(z.rows, "/rows"), slit = length(z.slit, "/slit");
        zipper_supply<Unit> supply{length(z.roll, "/roll"), {}, length(z.ends, "/ends"), length(z.tail, "/tail")};
        supply.lengths_sold = values_.lengths(z.lengths_sold, path_ + "/lengths_sold");
        return {z.on, z.from, std::move(centres), opening, rows, slit, std::move(supply), graduation(z)};
    }
    edge_binding<Unit> made(const design_binding& b) const {
        const length_type finished = length(b.finished, "/finished"), seam = length(b.seam, "/seam"),
                          turn = length(b.turn, "/turn"), inset = length(b.inset, "/inset"),
                          turned_in = length(b.turned_in, "/turned_in");
        edge_binding<Unit> made{b.on, b.material, finished, {seam, turn}, inset, turned_in, b.edges};
        if (!b.name.text.empty())
            made.name = text(b.name, "/name");
        made.doubled = b.doubled;
        made.by_hand = b.by_hand;
        return made;
    }
    must_reach<Unit> made(const design_reach& r) const {
        const length_type has = length(r.has, "/has"), needs = length(r.needs, "/needs");
        return {text(r.what, "/what"), has, needs};
    }
    void add(project<Unit>& p, notion<Unit>& to, const design_detail& d) const {
        const std::string what = text(d.what, "/what");
        if (d.number.given())
            to.number(what, values_.count(d.number, path_ + "/number"));
        else if (!d.places.empty())
            to.places(what, values_.lengths(d.places, path_ + "/places"));
        else if (d.terms.empty())
            to.figure(what, length(d.figure, "/figure"));
        else
            to.figure(what, sum_of(p, d.terms));
        to.sold(d.sold);
    }
    figure<Unit> sum_of(project<Unit>& p, const std::vector<design_term>& terms) const {
        figure<Unit> sum;
        for (std::size_t i = 0; i < terms.size(); ++i) {
            const std::string path = path_ + "/terms/" + std::to_string(i);
            const std::vector<length_type> parts = values_.lengths(terms[i].parts, path + "/parts");
            const fraction times = values_.number(terms[i].times, path + "/times", 1);
            const std::string what = values_.text(terms[i].what, path + "/what");
            sum.plus(term<Unit>(times, parts, what.empty() ? label() : p.keep(what)));
        }
        return sum;
    }
    notion<Unit> made(project<Unit>& p, const design_notion& n) {
        const notion<Unit> from = values_.made(n.from, path_ + "/from");
        notion<Unit> to(text(n.name, "/name"));
        for (const notion_detail<Unit>& d : from.details()) {
            if (d.count > 0)
                to.number(d.what, d.count);
            else if (d.places.empty())
                to.figure(d.what, d.amount);
            else
                to.places(d.what, d.places);
            to.sold(d.sold);
        }
        const std::string path = path_;
        each(n.details, path + "/details", [&](const design_detail& d) { add(p, to, d); });
        for (const sheet_caution& c : from.cautions())
            to.caution(c.sentence, c.at);
        each(n.cautions, path + "/cautions",
             [&](const design_caution& c) { to.caution(text(c.sentence, "/sentence"), c.at); });
        if (n.before_seams || from.goes_in_before_seams())
            to.before_seams();
        return to;
    }
    sewing<Unit> made(const design_sewing& s) const {
        const length_type overrun = values_.length(s.overrun, "/sewings/overrun"),
                          spool = values_.length(s.spool, "/sewings/spool");
        const fraction waste = values_.number(s.waste, "/sewings/waste");
        return {values_.stitch(s.stitch, "/sewings/stitch"), overrun, waste, spool};
    }

    const project_design& design_;
    finished_size<Unit> finished_;
    std::string said_;
};

} // namespace turncloth::detail

#endif
