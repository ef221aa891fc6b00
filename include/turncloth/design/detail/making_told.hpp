// The making of a project as a design says it, with every place from a cut edge.
//
//   making_told<U>(project).say()      a design_making, of which making_said.hpp makes the same again
#ifndef TURNCLOTH_DESIGN_DETAIL_MAKING_TOLD_HPP
#define TURNCLOTH_DESIGN_DETAIL_MAKING_TOLD_HPP

#include <turncloth/design/design_making.hpp>
#include <turncloth/design/detail/finish_said.hpp>
#include <turncloth/making/design.hpp>
#include <turncloth/sheet/cloth_of.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// Rows of places, from the datum of the line or edge that they stand with.
template <class Datum, length_unit Unit>
design_row row_said(const row<Datum, Unit>& r) {
    const row<Datum, Unit> exact = r.exact();
    const length<Unit> first = r.size() > 0 ? exact[0].from_datum() : length<Unit>();
    if (r.size() == 1 && r.step().value() == 0 && r.graduation().value() == 0)
        return {"one place", {{"at", said(first)}}};
    design_row made{"in steps",
                    {{"at", said(first)}, {"step", said(r.step())}, {"count", expression(std::to_string(r.size()))}}};
    if (r.graduation().value() != 0)
        made.with["graduation"] = said(r.graduation());
    return made;
}

inline count_expression counted_unless(std::int64_t n, std::int64_t usual) {
    return n == usual ? count_expression() : count_expression(std::to_string(n));
}

template <length_unit Unit>
class making_told {
public:
    explicit making_told(const project<Unit>& p) : project_(p), design_(*p.design()) {}

    design_making say() {
        made_.name.text = design_.name() == project_.name() ? "" : design_.name();
        made_.lips = said_unless_nothing(design_.lips());
        say_parts();
        say_all(made_.layings, design_.layings());
        say_all(made_.creases, design_.creases());
        say_all(made_.rows, design_.rows());
        say_all(made_.seams, design_.seams());
        say_all(made_.snips, design_.snips());
        say_all(made_.spots, design_.spots());
        say_all(made_.handwork, design_.handworks());
        say_all(made_.mouths, design_.mouths());
        say_all(made_.compartments, design_.compartments());
        say_all(made_.contents, design_.all_contents());
        say_all(made_.moments, design_.moments());
        for (const before& b : design_.befores())
            made_.order.push_back({called(b.first), called(b.then), {b.why}, {}});
        return std::move(made_);
    }

private:
    template <class Said, class All>
    void say_all(std::vector<Said>& to, const All& all) {
        for (const auto& one : all)
            to.push_back(say(one));
    }

    /// Those of the project's pieces as they are cut say nothing of themselves.
    void say_parts() {
        const auto& pieces = project_.pieces();
        const auto& parts = design_.parts();
        bool cut = parts.size() >= pieces.size();
        for (std::size_t i = 0; cut && i < pieces.size(); ++i) {
            const piece<Unit>& p = pieces[i];
            const auto [width, height] = p.shape().cut();
            cut = parts[i] ==
                  part<Unit>{
                      .name = p.name(), .cloth = cloth_of(p), .width = width, .height = height, .count = p.count()};
        }
        made_.begins = cut ? design_begins::with_pieces_cut : design_begins::with_nothing;
        pieces_cut_ = cut ? pieces.size() : 0;
        for (std::size_t i = pieces_cut_; i < parts.size(); ++i)
            made_.parts.push_back(say(parts[i]));
    }
    static design_own_part say(const part<Unit>& p) {
        design_own_part made{p.name, p.cloth.name, said(p.width), said(p.height), counted_unless(p.count, 1)};
        made.film = p.cloth.film;
        made.does_not_fray = !p.cloth.frays;
        made.two_sided = p.cloth.two_sided;
        made.one_way = p.cloth.one_way;
        made.thickness = said_unless_nothing(p.cloth.thickness);
        made.sold_width = said_unless_nothing(p.cloth.sold_width);
        made.sold_by = said_unless_nothing(p.cloth.sold_by);
        return made;
    }

    design_part part_said(const cut_part& p) const {
        return {p.is_given() && p.index < design_.parts().size() ? name_of(design_, p) : ""};
    }
    std::vector<design_part> parts_said(const std::vector<cut_part>& all) const {
        std::vector<design_part> made;
        for (const cut_part& p : all)
            made.push_back(part_said(p));
        return made;
    }
    design_line say(const chalk_line<Unit>& l) const {
        design_line made{part_said(l.on), l.from, said_unless_nothing(l.in.from_datum()), design_datum::cut_edge};
        if (l.begins)
            made.begins = said(*l.begins);
        if (l.ends)
            made.ends = said(*l.ends);
        return made;
    }
    std::vector<design_line> lines_said(const std::vector<chalk_line<Unit>>& all) const {
        std::vector<design_line> made;
        for (const chalk_line<Unit>& l : all)
            made.push_back(say(l));
        return made;
    }

    design_laying say(const laying<Unit>& l) const {
        design_laying made{part_said(l.piece),         part_said(l.on),       l.up, said_unless_nothing(l.left),
                           said_unless_nothing(l.top), design_datum::cut_edge};
        made.upside_down = l.upside_down;
        made.beneath = l.beneath;
        made.one_wall = l.set_into_one;
        if (l.fit.is_given())
            made.fit = design_fit{l.fit.taken_up,
                                  counted_unless(l.fit.spans, 1),
                                  said_unless_nothing(l.fit.begins),
                                  said(l.fit.of_piece),
                                  said(l.fit.on),
                                  !l.fit.along_level,
                                  said_unless_nothing(l.fit.graduation)};
        return made;
    }
    design_crease say(const crease<Unit>& c) const {
        design_crease made;
        if (c.across)
            made.across =
                design_corner{part_said(c.across->on), c.across->upright, c.across->level, said(c.across->leg)};
        else
            made.at = say(c.at);
        made.quarter = c.turn == turning::quarter;
        made.over = c.over;
        made.begins_wall = c.begins_wall;
        return made;
    }
    /// How it is sewn is left out where it is sewn as the project says.
    template <class Row, class Said>
    void sew(const Row& r, Said& made) const {
        const auto& all = project_.sewings();
        const bool usual = r.by_hand || all.empty();
        made.by_hand = r.by_hand;
        if (!(r.stitch == (usual ? stitch(301) : all.back().stitch)))
            made.stitch = count_expression(std::to_string(r.stitch.number));
        if (r.overrun != (usual ? length<Unit>() : all.back().overrun))
            made.overrun = said(r.overrun);
    }
    design_rows say(const stitching<Unit>& r) const {
        design_rows made{say(r.along), parts_said(r.through)};
        if (r.each.size() > 0) {
            made.along.in = {};
            made.places = row_said(r.each);
        }
        sew(r, made);
        return made;
    }
    design_seam say(const seam_of<Unit>& s) const {
        design_seam made{lines_said(s.one), lines_said(s.other), s.beyond, s.taken_up, counted_unless(s.spans, 4)};
        made.pressed = s.pressed;
        made.graduation = said_unless_nothing(s.graduation);
        sew(s, made);
        return made;
    }
    design_snip say(const snip<Unit>& s) const { return {say(s.at), s.kind, said_unless_nothing(s.width)}; }
    design_spot say(const spot<Unit>& s) const {
        return {s.what,
                say(s.along),
                row_said(s.places),
                parts_said(s.through),
                said_unless_nothing(s.width),
                said_unless_nothing(s.height),
                said_unless_nothing(s.tie),
                counted_unless(s.stitches, 0)};
    }

    design_handwork say(const handwork& h) const { return {{h.says}, parts_said(h.pieces)}; }

    /// A name by which the rest may tell this one of several apart; nothing where its own does.
    template <class All, class Name>
    static std::string own_name(const All& all, std::size_t i, const Name& name, const char* what) {
        const auto alike =
            std::count_if(all.begin(), all.end(), [&](const auto& one) { return name(one) == name(all[i]); });
        return alike > 1 ? what + std::to_string(i + 1) : std::string();
    }
    std::string mouth_called(std::size_t i) const {
        return own_name(
            design_.mouths(), i, [](const mouth<Unit>& m) { return m.name; }, "mouth ");
    }
    std::string compartment_called(std::size_t i) const {
        return own_name(
            design_.compartments(), i, [](const compartment<Unit>& c) { return c.name; }, "compartment ");
    }
    std::string contents_called(std::size_t i) const {
        return own_name(
            design_.all_contents(), i, [](const contents<Unit>& c) { return c.what; }, "contents ");
    }
    static std::string either(const std::string& called, const std::string& name) {
        return called.empty() ? name : called;
    }

    design_mouth say(const mouth<Unit>& m) const {
        return {m.name, lines_said(m.at), m.by, mouth_called(made_.mouths.size())};
    }
    design_mouth_of mouth_said(const mouth_handle& m) const {
        if (m.index >= design_.mouths().size())
            return {};
        return {either(mouth_called(m.index), design_.mouths()[m.index].name)};
    }
    design_compartment say(const compartment<Unit>& c) const {
        length<Unit> left = c.from_left, top = c.from_top;
        if (c.between[0].index < pieces_cut_) {
            const panel<Unit>& shape = project_.pieces()[c.between[0].index].shape();
            left -= shape.finish_of(edge::left).allowance();
            top -= shape.finish_of(edge::top).allowance();
        }
        design_compartment made{{c.name}, {part_said(c.between[0]), part_said(c.between[1])}, said(left), said(top)};
        for (const mouth_handle& m : c.mouths)
            made.mouths.push_back(mouth_said(m));
        made.least_width = said_unless_nothing(c.least_width);
        made.least_height = said_unless_nothing(c.least_height);
        made.least_depth = said_unless_nothing(c.least_depth);
        made.count = counted_unless(c.count, 1);
        made.step = said_unless_nothing(c.step);
        made.called = compartment_called(made_.compartments.size());
        return made;
    }
    design_contents say(const contents<Unit>& c) const {
        design_contents made;
        made.what = c.what;
        made.width = said(c.width);
        made.height = said(c.height);
        made.depth = said_unless_nothing(c.depth);
        if (c.into.index < design_.compartments().size())
            made.into.text = either(compartment_called(c.into.index), design_.compartments()[c.into.index].name);
        made.by = mouth_said(c.by);
        made.squeezed = said_unless_nothing(c.squeezed);
        made.folds = counted_unless(c.folds, 0);
        made.called = contents_called(made_.contents.size());
        return made;
    }
    design_moment say(const moment& m) const {
        design_moment made{m.what};
        if (m.what == moment_kind::turn_out || m.what == moment_kind::close)
            made.mouth = mouth_said({m.index});
        if (m.what == moment_kind::put_in && m.index < design_.all_contents().size())
            made.contents = either(contents_called(m.index), design_.all_contents()[m.index].what);
        return made;
    }

    /// Only what the order names is called anything; an opening cannot be.
    std::string called(const operation& o) {
        const auto call = [&](auto& all, const char* what) {
            return o.index < all.size() ? all[o.index].called = what + std::to_string(o.index + 1) : std::string();
        };
        switch (o.kind) {
        case operation_kind::laying:
            return call(made_.layings, "laying ");
        case operation_kind::crease:
            return call(made_.creases, "crease ");
        case operation_kind::stitching:
            return call(made_.rows, "row ");
        case operation_kind::seam:
            return call(made_.seams, "seam ");
        case operation_kind::snip:
            return call(made_.snips, "snip ");
        case operation_kind::spot:
            return call(made_.spots, "spot ");
        case operation_kind::handwork:
            return call(made_.handwork, "handwork ");
        case operation_kind::moment:
            return call(made_.moments, "moment ");
        case operation_kind::opening:
            break;
        }
        return {};
    }

    const project<Unit>& project_;
    const making<Unit>& design_;
    std::size_t pieces_cut_ = 0; ///< so many of its parts are pieces
    design_making made_;
};

} // namespace turncloth::detail

#endif
