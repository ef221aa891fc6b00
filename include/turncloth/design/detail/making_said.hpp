// The making of a design at one size: its operations and compartments, each refused with its place.
//
//   making_said<U>(values, project, said).make()      a making<U>; throws design_error with every fault
#ifndef TURNCLOTH_DESIGN_DETAIL_MAKING_SAID_HPP
#define TURNCLOTH_DESIGN_DETAIL_MAKING_SAID_HPP

#include <turncloth/design/detail/said_parts.hpp>
#include <turncloth/design/detail/strip_pockets_said.hpp>
#include <turncloth/design/detail/walking.hpp>
#include <turncloth/sheet/cloth_of.hpp>
#include <turncloth/sheet/making_of.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class making_said : design_walk<Unit> {
public:
    making_said(const design_values<Unit>& values, const project<Unit>& p, const design_making& said)
        : design_walk<Unit>(values), project_(p), said_(said), made_(begun(p, said.begins)) {
        for (std::size_t i = 0; i < made_.parts.size(); ++i)
            parts_.add(p.pieces()[i].name(), made_.parts[i], p.pieces()[i].count());
        for (const sewing<Unit>& s : p.sewings())
            by_machine_ = {s.stitch, s.overrun};
    }

    making<Unit> make() {
        if (!said_.name.text.empty())
            attempt("/making/name", [&] { design().named(values_.text(said_.name, "/making/name")); });
        attempt("/making/lips", [&] { design().lips(values_.length(said_.lips, "/making/lips")); });
        add_parts();
        add_operations();
        add_compartments();
        throw_faults();
        return std::move(made_.design);
    }

private:
    using walk = design_walk<Unit>;
    using typename walk::length_type;
    using walk::attempt, walk::each, walk::length, walk::text, walk::throw_faults;
    using walk::path_, walk::values_;

    /// How rows are sewn where they do not say it.
    struct how_sewn {
        stitch_type stitch = turncloth::stitch(301);
        length_type overrun{};
    };

    making<Unit>& design() { return made_.design; }

    static project_making<Unit> begun(const project<Unit>& p, design_begins how) {
        if (how == design_begins::as_the_project_says)
            return making_of(p);
        if (how == design_begins::with_nothing)
            return {making<Unit>(p.name())};
        project_making<Unit> made{making<Unit>(p.name())};
        for (const piece<Unit>& each : p.pieces())
            made.parts.push_back(
                cut_for(made.design, each.name(), each.shape(), {.cloth = cloth_of(each), .count = each.count()}));
        return made;
    }

    void add_parts() {
        each(said_.parts, "/making/parts", [&](const design_own_part& p) {
            const length_type width = length(p.width, "/width"), height = length(p.height, "/height");
            const std::int64_t count = values_.count(p.count, path_ + "/count");
            cut_from<Unit> from{.cloth = {.name = p.material, .frays = !p.does_not_fray, .film = p.film}};
            from.cloth.two_sided = p.two_sided;
            from.cloth.one_way = p.one_way;
            from.cloth.thickness = length(p.thickness, "/thickness");
            from.cloth.sold_width = length(p.sold_width, "/sold_width");
            from.cloth.sold_by = length(p.sold_by, "/sold_by");
            from.count = count;
            parts_.add(p.name, cut_for(design(), p.name, panel<Unit>(finished_size<Unit>(width, height)), from), count);
        });
        each(said_.called, "/making/called",
             [&](const design_called& c) { parts_.call(c.name, part(c.part, path_ + "/part")); });
    }
    void add_operations() {
        each(said_.strip_pockets, "/making/strip_pockets", [&](const design_strip_pockets& s) { add(s); });
        const auto every = [&](const auto& all, const char* path) {
            each(all, path, [&](const auto& from) {
                for (const operation& o : add(from))
                    if (!from.called.empty())
                        operations_.add(from.called, o);
            });
        };
        every(said_.layings, "/making/layings");
        each(said_.finishings, "/making/finishings", [&](const design_finishing& f) { add(f); });
        every(said_.creases, "/making/creases");
        design().sewn_by_machine(by_machine_.stitch, by_machine_.overrun);
        every(said_.rows, "/making/rows");
        every(said_.seams, "/making/seams");
        every(said_.snips, "/making/snips");
        every(said_.spots, "/making/spots");
        every(said_.handwork, "/making/handwork");
    }
    void add_compartments() {
        each(said_.mouths, "/making/mouths", [&](const design_mouth& m) {
            mouths_.add(name_here(m), design().add(mouth<Unit>{.name = m.name, .at = lines(m.at, "/at"), .by = m.by}));
        });
        each(said_.compartments, "/making/compartments", [&](const design_compartment& c) {
            const std::string name = text(c.name, "/name");
            compartments_.add(c.called.empty() ? name : c.called, design().add(made(c, name)));
        });
        each(said_.contents, "/making/contents", [&](const design_contents& c) {
            contents_.add(name_here(c), design().all_contents().size());
            design().add(made(c));
        });
        each(said_.moments, "/making/moments", [&](const design_moment& m) {
            const operation o = design().add(moment{m.what, named_by(m)});
            if (!m.called.empty())
                operations_.add(m.called, o);
        });
        each(said_.order, "/making/order", [&](const design_before& b) {
            const operation first = operations_.find(b.first, "the operations", path_ + "/first");
            design().add(
                before{first, operations_.find(b.then, "the operations", path_ + "/then"), text(b.why, "/why")});
        });
    }

    panel_part<Unit> part(const design_part& p, const std::string& path) const {
        return parts_.find(values_.text(p, path), path);
    }
    std::vector<cut_part> parts(const std::vector<design_part>& all, const char* member) const {
        std::vector<cut_part> found;
        for (std::size_t i = 0; i < all.size(); ++i)
            found.push_back(part(all[i], path_ + member + "/" + std::to_string(i)));
        return found;
    }
    chalk_line<Unit> line(const design_line& l, const std::string& path) const {
        const panel_part<Unit> on = part(l.on, path + "/on");
        const edge start = is_level(l.from) ? edge::left : edge::top;
        const auto from = [&](edge e, const length_expression& given, const char* member) {
            return from_cut_edge(on, e, l.measured_from, values_.length(given, path + member));
        };
        chalk_line<Unit> made{.on = on, .from = l.from, .in = from(l.from, l.in, "/in")};
        if (l.begins.given())
            made.begins = from(start, l.begins, "/begins").from_datum();
        if (l.ends.given())
            made.ends = from(start, l.ends, "/ends").from_datum();
        return made;
    }
    std::vector<chalk_line<Unit>> lines(const std::vector<design_line>& all, const char* member) const {
        std::vector<chalk_line<Unit>> made;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string path = path_ + member + "/" + std::to_string(i);
            if (values_.holds(all[i].where, path + "/where"))
                made.push_back(line(all[i], path));
        }
        return made;
    }
    /// Of the line's part, away from `from`.
    row<cut_edge, Unit> places(const design_row& r, const design_line& l, edge from) const {
        return on_part(part(l.on, path_ + "/along/on"), from, l.measured_from, values_.made(r, path_ + "/places"));
    }

    void add(const design_strip_pockets& from) {
        const length_type inset = length(from.inset, "/inset"), holds = length(from.holds, "/holds");
        add_strip_pockets(project_, made_,
                          {.strip = from.strip,
                           .on = from.on,
                           .feet = text(from.feet, "/feet"),
                           .name = text(from.name, "/name"),
                           .inset = inset,
                           .holds = holds});
    }
    void add(const design_finishing& f) {
        panel_part<Unit> piece = part(f.piece, path_ + "/piece");
        piece.up = f.up;
        const std::vector<cut_part> through = parts(f.through, "/through");
        for (const edge e : f.edges)
            if (f.folds_alone)
                fold_edge(design(), piece, e);
            else
                finish_edge(design(), piece, e, through);
    }
    using added = std::vector<operation>;

    added add(const design_laying& l) {
        const panel_part<Unit> piece = part(l.piece, path_ + "/piece");
        laying<Unit> made{.piece = piece,
                          .up = l.up,
                          .left = length(l.left, "/left"),
                          .top = length(l.top, "/top"),
                          .upside_down = l.upside_down,
                          .beneath = l.beneath,
                          .set_into_one = l.one_wall};
        if (l.on.text.empty())
            return {design().add(std::move(made))};
        const panel_part<Unit> on = part(l.on, path_ + "/on");
        made.on = on;
        const bool turned_over = l.up != on.up;
        const edge beside = turned_over != l.upside_down ? edge::right : edge::left,
                   above = l.upside_down ? edge::bottom : edge::top;
        const auto from = [&](const panel_part<Unit>& p, edge e, length_type in) {
            return from_cut_edge(p, e, l.measured_from, in).from_datum();
        };
        made.left = from(on, edge::left, made.left);
        made.top = from(on, edge::top, made.top);
        // What is fitted begins at the fitted span instead.
        if (!l.fit || l.fit->down)
            made.left -= from(piece, beside, {});
        if (!l.fit || !l.fit->down)
            made.top -= from(piece, above, {});
        if (l.fit) {
            made.fit = fitted(*l.fit);
            made.fit.begins = from(piece, l.fit->down ? above : beside, made.fit.begins);
        }
        return {design().add(std::move(made))};
    }
    fit<Unit> fitted(const design_fit& f) const {
        fit<Unit> made{.taken_up = f.taken_up, .along_level = !f.down};
        made.graduation = graduation(f.graduation, "/fit/graduation");
        made.spans = values_.count(f.spans, path_ + "/fit/spans");
        made.begins = length(f.begins, "/fit/begins");
        made.of_piece = length(f.of_piece, "/fit/of_piece");
        made.on = length(f.on, "/fit/on");
        return made;
    }
    length_type graduation(const length_expression& e, const char* member) const {
        return e.given() ? length(e, member) : values_.by().graduation();
    }
    template <class Record, class Row>
    void sew(const Record& said, Row& made) const {
        const how_sewn usual = said.by_hand ? how_sewn() : by_machine_;
        made.stitch = said.stitch.given() ? values_.stitch(said.stitch, path_ + "/stitch") : usual.stitch;
        made.overrun = said.overrun.given() ? length(said.overrun, "/overrun") : usual.overrun;
    }
    added add(const design_crease& c) {
        crease<Unit> made{
            .turn = c.quarter ? turning::quarter : turning::back, .over = c.over, .begins_wall = c.begins_wall};
        if (c.at)
            made.at = line(*c.at, path_ + "/at");
        if (c.across)
            made.across = corner_line<Unit>{.on = part(c.across->on, path_ + "/across/on"),
                                            .upright = c.across->upright,
                                            .level = c.across->level,
                                            .leg = length(c.across->leg, "/across/leg")};
        return {design().add(std::move(made))};
    }
    /// None where there are no places.
    added add(const design_rows& r) {
        stitching<Unit> made{
            .along = line(r.along, path_ + "/along"), .through = parts(r.through, "/through"), .by_hand = r.by_hand};
        sew(r, made);
        if (r.places) {
            made.each = places(*r.places, r.along, r.along.from);
            if (made.each.size() == 0)
                return {};
            made.along.in = made.each[0];
        }
        return {design().add(std::move(made))};
    }
    added add(const design_seam& s) {
        seam_of<Unit> made{.one = lines(s.one, "/one"),
                           .other = lines(s.other, "/other"),
                           .beyond = s.beyond,
                           .taken_up = s.taken_up,
                           .pressed = s.pressed,
                           .by_hand = s.by_hand};
        made.spans = values_.count(s.spans, path_ + "/spans", made.spans);
        sew(s, made);
        if (s.taken_up != surplus::none || s.graduation.given())
            made.graduation = graduation(s.graduation, "/graduation");
        return {design().add(std::move(made))};
    }
    added add(const design_snip& s) {
        return {design().add(
            snip<Unit>{.at = line(s.at, path_ + "/at"), .kind = s.kind, .width = length(s.width, "/width")})};
    }
    added add(const design_spot& s) {
        spot<Unit> made{
            .what = s.what, .along = line(s.along, path_ + "/along"), .through = parts(s.through, "/through")};
        made.places = places(s.places, s.along, is_level(s.along.from) ? edge::left : edge::top);
        made.width = length(s.width, "/width");
        made.height = length(s.height, "/height");
        made.tie = length(s.tie, "/tie");
        made.stitches = values_.count(s.stitches, path_ + "/stitches", 0);
        return {design().add(std::move(made))};
    }

    added add(const design_handwork& h) {
        return {design().add(handwork{.says = text(h.says, "/says"), .pieces = parts(h.pieces, "/pieces")})};
    }

    compartment<Unit> made(const design_compartment& c, const std::string& name) const {
        compartment<Unit> made{.name = name, .count = values_.count(c.count, path_ + "/count")};
        const panel_part<Unit> first = part(c.between[0], path_ + "/between/0");
        made.between = {first, part(c.between[1], path_ + "/between/1")};
        const auto within = [&](edge e, length_type l) {
            return from_cut_edge(first, e, design_datum::finished_edge, l).from_datum();
        };
        made.from_left = within(edge::left, length(c.from_left, "/from_left"));
        made.from_top = within(edge::top, length(c.from_top, "/from_top"));
        for (std::size_t i = 0; i < c.mouths.size(); ++i)
            made.mouths.push_back(mouth_of(c.mouths[i], path_ + "/mouths/" + std::to_string(i)));
        made.least_width = length(c.least_width, "/least_width");
        made.least_height = length(c.least_height, "/least_height");
        made.least_depth = length(c.least_depth, "/least_depth");
        made.step = length(c.step, "/step");
        return made;
    }
    contents<Unit> made(const design_contents& c) const {
        contents<Unit> made{.what = c.what};
        made.width = length(c.width, "/width");
        made.height = length(c.height, "/height");
        made.depth = length(c.depth, "/depth");
        made.into = compartments_.find(text(c.into, "/into"), "the compartments", path_ + "/into");
        made.by = mouth_of(c.by, path_ + "/by");
        made.squeezed = length(c.squeezed, "/squeezed");
        made.folds = values_.count(c.folds, path_ + "/folds", 0);
        return made;
    }
    std::size_t named_by(const design_moment& m) const {
        if (m.mouth)
            return mouth_of(*m.mouth, path_ + "/mouth").index;
        return m.contents.empty() ? 0 : contents_.find(m.contents, "the contents", path_ + "/contents");
    }
    /// The zippers of a piece are counted through all of the project's, and through the copies of the piece.
    mouth_handle mouth_of(const design_mouth_of& m, const std::string& path) const {
        if (!m.mouth.empty())
            return mouths_.find(m.mouth, "the mouths", path + "/mouth");
        std::vector<mouth_handle> all;
        std::size_t next = 0;
        for (const zipper<Unit>& z : project_.zippers()) {
            const panel_part<Unit>& on = made_.part(z.on);
            for (std::int64_t k = 0; k < made_.design.parts()[on.part.index].count && next < made_.zippers.size();
                 ++k, ++next)
                if (const auto& sewn = made_.zippers[next].mouths; z.on == m.zipper_on)
                    all.insert(all.end(), sewn.begin(), sewn.end());
        }
        const std::int64_t n = values_.count(m.number, path + "/number");
        if (n < 1 || n > static_cast<std::int64_t>(all.size()))
            refuse_at(path + "/number", in_quotes(m.zipper_on) + " has " + std::to_string(all.size()) +
                                            " zippers at this size, and this is number " + std::to_string(n));
        return all[static_cast<std::size_t>(n - 1)];
    }

    const project<Unit>& project_;
    const design_making& said_;
    project_making<Unit> made_;
    said_parts<Unit> parts_;
    how_sewn by_machine_{};
    named_things<operation> operations_;
    named_things<mouth_handle> mouths_;
    named_things<compartment_handle> compartments_;
    named_things<std::size_t> contents_;
};

} // namespace turncloth::detail

#endif
