// The pieces of a sheet: their sizes, every line on each that comes from itself, and what lies inside what.
//
//   add_outlines(draft)      pieces that are no rectangles
//   add_pieces(draft)        cut and finished sizes; finishes, marks, pleats, cut corners, eyelets
//   check_layers(draft)      inner layers against the piece that is brought round them
#ifndef TURNCLOTH_SHEET_DETAIL_PIECES_HPP
#define TURNCLOTH_SHEET_DETAIL_PIECES_HPP

#include <turncloth/measure/printable.hpp>
#include <turncloth/sheet/detail/draft.hpp>
#include <turncloth/sheet/detail/kinds.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>

namespace turncloth {

namespace detail {

/// Puts the lines of one piece onto it.
template <length_unit Unit>
class piece_work {
public:
    piece_work(sheet_draft<Unit>& draft, sheet_piece<Unit>& on)
        : draft_(draft), on_(on), shape_(on.made_from.shape()), name_(on.made_from.name()) {}

    void add_all() {
        for (const edge e : edges_in_order(shape_))
            add_finish(e);
        for (const mark_line<Unit>& m : on_.made_from.marks())
            add_mark(m);
        for (const auto& p : on_.made_from.pleats())
            draft_.attempt("the pleats of " + named(name_), name_, [&] { add_pleats(p); });
        for (const auto& c : on_.made_from.corners())
            draft_.attempt("the corners of " + named(name_), name_, [&] { cut_corners(c); });
        for (const auto& e : on_.made_from.eyelets())
            draft_.attempt("the eyelets of " + named(name_), name_, [&] { add_eyelets(e); });
    }

    void add_mark(const mark_line<Unit>& m) {
        const length<Unit> at = m.from_cut_edge.value(), size = across(on_.cut, m.from);
        const std::string which = sentence({"the mark ", in_quotes(m.what), " of ", named(name_)});
        const std::string where = sentence({which, ", ", at, " from the cut ", name_of(m.from), " edge,"});
        if (at.value() < 0 || at > size)
            draft_.refuse({where, " is off the piece, which is cut ", size, " that way"},
                          {.kind = at.value() < 0 ? fault::too_small : fault::too_large,
                           .what = which,
                           .given = at,
                           .least = length<Unit>(),
                           .most = size,
                           .where = name_},
                          m.from);
        else if (at < shape_.finish_of(m.from).allowance() ||
                 at > size - shape_.finish_of(opposite(m.from)).allowance())
            draft_.warn({where, " lies in what is turned under or taken by a seam"});
        for (const short_mark<Unit>& t : m.only)
            check_tick(which, m.from, t);
        on_.lines.push_back(
            {line_kind::mark, m.what, m.from, m.from_cut_edge, {}, along(on_.cut, m.from), false, m.only});
    }

private:
    void check_tick(const std::string& which, edge from, const short_mark<Unit>& t) {
        const length<Unit> most = along(on_.cut, from);
        if (is_level(t.at) == is_level(from))
            draft_.refuse({which, " runs along the ", name_of(t.at), " edge, so it does not meet that edge"},
                          {.kind = fault::unsuitable, .what = which, .where = name_}, t.at);
        else if (t.size.value() <= 0 || t.size > most)
            draft_.refuse({which, " must run in from the ", name_of(t.at), " edge by more than zero and at most ", most,
                           ": it was ", t.size},
                          {.kind = t.size > most ? fault::too_large : fault::too_small,
                           .what = which,
                           .given = t.size,
                           .least = length<Unit>(),
                           .most = most,
                           .where = name_},
                          t.at);
    }

    void add_finish(edge e) {
        const finish<Unit>& f = shape_.finish_of(e);
        const auto whole_line = [&](line_kind kind, const place<cut_edge, Unit>& at) {
            on_.lines.push_back({kind,
                                 std::string(f.name()),
                                 e,
                                 figure<Unit>().plus(at.from_datum(), ""),
                                 {},
                                 along(on_.cut, e),
                                 true});
        };
        for (const auto& at : f.folds())
            whole_line(line_kind::fold, at);
        for (const auto& at : f.stitching())
            whole_line(line_kind::stitching, at);
    }

    /// Each pleat's creases and placement lines, from the cut edge; the piece finishes smaller by what they take up.
    void add_pleats(const pleats_on_piece<Unit>& p) {
        const length<Unit> taken = p.pleats.cut().value() - p.pleats.finished();
        const length<Unit> from = p.starts.from_datum(), room = across(shape_.finished(), p.from);
        if (from.value() < 0 || from + p.pleats.cut().value() > room)
            return draft_.refuse({"pleats of ", p.pleats.cut().value(), " of cloth from ", from, " on do not lie on ",
                                  named(name_), ", which is ", room, " before it is pleated"},
                                 {.kind = fault::no_room,
                                  .what = "pleats",
                                  .given = p.pleats.cut().value(),
                                  .most = room - from,
                                  .where = name_},
                                 p.from);
        for (std::int64_t k = 0; k < p.pleats.count(); ++k)
            for (int i = 0; i < p.pleats.folds(); ++i)
                add_fold(p, i, k);
        const finished_size<Unit> flat = on_.finished;
        on_.finished = is_level(p.from) ? finished_size<Unit>(flat.width(), flat.height() - taken)
                                        : finished_size<Unit>(flat.width() - taken, flat.height());
    }

    void add_fold(const pleats_on_piece<Unit>& p, int i, std::int64_t k) {
        const auto way = [&](const place<cut_edge, Unit>& on_pleats) {
            return shape_.way_from_cut_edge(p.from, p.starts + on_pleats.from_datum());
        };
        const figure<Unit> onto = way(p.pleats.placements(i)[k]);
        const auto line = [&](line_kind kind, const char* what, const figure<Unit>& at) -> sheet_line<Unit>& {
            on_.lines.push_back({kind, what, p.from, at, {}, along(on_.cut, p.from)});
            return on_.lines.back();
        };
        line(line_kind::fold, "front of the pleat", way(p.pleats.outer_folds(i)[k])).brought_to = onto.value();
        line(line_kind::fold, "back of the pleat", way(p.pleats.inner_folds(i)[k]));
        line(line_kind::placement, "of the pleat", onto);
    }

    /// A square c of a panel seamed at s, its opened corner sewn `across`, makes half of a depth of 2 (c - s + across)
    /// on each side: see notions/boxed.hpp.
    void cut_corners(const corners_cut<Unit>& c) {
        const length<Unit> seam = shape_.finish_of(edge::top).allowance();
        for (const edge e : all_edges)
            if (shape_.finish_of(e).allowance() != seam || !shape_.finish_of(e).joins())
                return draft_.refuse(
                    {"the corners of ", named(name_), " cannot be cut out: all four edges need one seam"},
                    {.kind = fault::disagree, .what = "the seams beside a corner cut out", .where = name_}, e);
        const boxed_size<Unit> made = box_from_cut(on_.cut, c.square, corner_seams<Unit>{seam, c.across});
        on_.corner = c.square;
        for (sheet_line<Unit>& l : on_.lines)
            if (l.of_finish && l.from_cut_edge.value() < c.square) { // it ends where the corners are cut out
                l.begins = c.square;
                l.ends = along(on_.cut, l.parallel_to) - c.square;
            }
        on_.depth = made.depth();
        on_.finished = finished_size<Unit>(made.width(), made.height());
    }

    void add_eyelets(const eyelet_row<Unit>& row) {
        sheet_eyelets<Unit> made{row.each, shape_.way_from_cut_edge(edge::top, row.down), {}};
        for (const auto& centre : row.along.centres())
            made.from_left.push_back(shape_.from_cut_edge(edge::left, centre).from_datum());
        on_.eyelets.push_back(std::move(made));
    }

    sheet_draft<Unit>& draft_;
    sheet_piece<Unit>& on_;
    const panel<Unit>& shape_;
    const std::string& name_;
};

template <length_unit Unit>
void check_name(sheet_draft<Unit>& draft, const std::string& name) {
    if (name.empty())
        draft.refuse({"a piece has no name"}, {.kind = fault::missing, .what = "the name of a piece"});
    else if (unfit_at(name))
        draft.refuse({"the name of a piece is one line of plain text: ", in_quotes(fit_to_print(name)), " is not"},
                     {.kind = fault::unsuitable, .what = "the name of a piece", .where = name});
    else if (const auto& others = draft.made().outlines;
             draft.find(name) != nullptr ||
             std::any_of(others.begin(), others.end(), [&](const auto& other) { return other.name() == name; }))
        draft.refuse({"two pieces are named ", named(name)},
                     {.kind = fault::repeated, .what = "the name of a piece", .where = name});
}

template <length_unit Unit>
void add_pieces(sheet_draft<Unit>& draft) {
    if (draft.from().pieces().empty() && draft.from().outlines().empty())
        draft.refuse({"it has no pieces"}, {.kind = fault::missing, .what = "a piece"});
    for (const piece<Unit>& p : draft.from().pieces()) {
        check_name(draft, p.name());
        const panel<Unit>& shape = p.shape();
        draft.attempt(named(p.name()), p.name(), [&] {
            draft.made().pieces.push_back(
                {p, shape.cut(), shape.width_working(), shape.height_working(), shape.finished()});
            piece_work<Unit>(draft, draft.made().pieces.back()).add_all();
        });
    }
}

template <length_unit Unit>
void add_outlines(sheet_draft<Unit>& draft) {
    for (const outlined_piece<Unit>& p : draft.from().outlines()) {
        check_name(draft, p.name());
        draft.made().outlines.push_back(p);
        const std::string trimmed = numbered_edges(p.edges.size(), [&](std::size_t i) { return p.edges[i].trimmed; });
        if (!trimmed.empty())
            draft.warn({"the allowances of ", named(p.name()), " overlap: its cut line is trimmed on ", trimmed});
    }
}

/// The inner layers of a piece are cut to the size at which the outer one finishes.
template <length_unit Unit>
void check_layer(sheet_draft<Unit>& draft, const piece<Unit>& inner) {
    const sheet_piece<Unit>* outer = draft.find_for(named(inner.name()) + " is said to lie inside", inner.inside());
    if (outer == nullptr)
        return;
    const std::int64_t each = (inner.count() - 1) / outer->made_from.count() + 1;
    if (each > most_layers_inside)
        return draft.refuse({"at most ", most_layers_inside, " of ", named(inner.name()), " lie inside ",
                             named(inner.inside()), ": there would be ", each, " in one"},
                            {.kind = fault::too_large,
                             .what = "the number of layers inside a piece",
                             .given = each,
                             .most = most_layers_inside,
                             .where = inner.name()});
    const cut_size<Unit> cut = inner.shape().cut();
    const finished_size<Unit>& finished = outer->made_from.shape().finished();
    const bool too_wide_or_narrow = cut.width() != finished.width();
    if (too_wide_or_narrow || cut.height() != finished.height())
        draft.refuse({named(inner.name()), " is cut ", cut, ", but ", named(inner.inside()),
                      ", round which it lies, finishes ", finished},
                     {.kind = fault::disagree,
                      .what = too_wide_or_narrow ? "the width of a layer" : "the height of a layer",
                      .given = too_wide_or_narrow ? cut.width() : cut.height(),
                      .most = too_wide_or_narrow ? finished.width() : finished.height(),
                      .where = inner.name()});
}

/// How many pieces out from this one it comes back to itself, each lying inside the next; zero where it does not.
template <length_unit Unit>
std::size_t round_to_itself(sheet_draft<Unit>& draft, const piece<Unit>& first) {
    const sheet_piece<Unit>* at = draft.find(first.inside());
    for (std::size_t steps = 1; at != nullptr && steps <= draft.made().pieces.size(); ++steps) {
        if (at->made_from.name() == first.name())
            return steps;
        at = draft.find(at->made_from.inside());
    }
    return 0;
}

template <length_unit Unit>
void check_layers(sheet_draft<Unit>& draft) {
    for (const piece<Unit>& p : draft.from().pieces()) {
        if (p.inside().empty())
            continue;
        if (const std::size_t steps = round_to_itself(draft, p); steps > 0)
            draft.refuse({named(p.name()), " is said to lie inside ", steps == 1 ? "itself" : named(p.inside()),
                          steps == 1 ? "" : ", which itself lies inside it"},
                         {.kind = fault::disagree, .what = "what a piece lies inside", .where = p.name()});
        else
            check_layer(draft, p);
    }
}

} // namespace detail

} // namespace turncloth

#endif
