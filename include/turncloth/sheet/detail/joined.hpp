// What joins pieces, and what is sewn or marked on one because of another.
//
//   add_meetings(draft)   check_edge_seams(draft)   add_placings(draft)   add_span_lists(draft)   check_reaches(draft)
#ifndef TURNCLOTH_SHEET_DETAIL_JOINED_HPP
#define TURNCLOTH_SHEET_DETAIL_JOINED_HPP

#include <turncloth/sheet/detail/edge_seams.hpp>
#include <turncloth/sheet/detail/pieces.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// Film keeps what is drawn on it, so its marks are made in its allowances alone.
template <length_unit Unit>
std::vector<short_mark<Unit>> ticks_on(const piece<Unit>& p, edge from) {
    std::vector<short_mark<Unit>> all;
    if (p.is_film())
        for (const edge e : all_edges)
            if (const length<Unit> size = p.shape().finish_of(e).allowance();
                is_level(e) != is_level(from) && size.value() > 0)
                all.push_back({e, size});
    return all;
}

/// Marks a piece where it meets another, and checks that the spans lie on it.
template <length_unit Unit>
void add_spans(sheet_draft<Unit>& draft, const meeting<Unit>& m, bool longer) {
    const std::string &name = longer ? m.longer : m.shorter, &other = longer ? m.shorter : m.longer;
    const length<Unit> span = longer ? m.on_longer : m.on_shorter;
    sheet_piece<Unit>* on = draft.find_for("a meeting is put on", name);
    if (on == nullptr)
        return;
    const panel<Unit>& shape = on->made_from.shape();
    const length<Unit> room = across(shape.finished(), m.from);
    if (span > room)
        return draft.refuse(
            {"the spans marked on ", named(name), " need ", span, ", but it finishes ", room},
            {.kind = fault::no_room, .what = "the spans of a meeting", .given = span, .most = room, .where = name},
            m.from);
    const even_mapping<Unit> marks = m.marks();
    for (std::int64_t k = 1; k < m.spans; ++k) {
        const length<Unit> along = longer ? marks.mark_on_long(k).from_datum() : marks.mark_on_short(k).from_datum();
        piece_work<Unit>(draft, *on)
            .add_mark({"where the " + other + " meets it", m.from,
                       shape.way_from_cut_edge(m.from, at<finished_edge>(along)), ticks_on(on->made_from, m.from)});
    }
}

template <length_unit Unit>
void add_meetings(sheet_draft<Unit>& draft) {
    for (const meeting<Unit>& m : draft.from().meetings())
        draft.attempt("the meeting of " + named(m.longer) + " and " + named(m.shorter), m.longer, [&] {
            require_at_most<range_error>(m.spans, most_in_a_row, "the number of spans of a meeting");
            draft.made().meetings.push_back({m, m.marks()});
            add_spans(draft, m, true);
            add_spans(draft, m, false);
        });
}

template <length_unit Unit>
void check_edge_seams(sheet_draft<Unit>& draft) {
    for (const edge_seam<Unit>& s : draft.from().edge_seams()) {
        const sheet_piece<Unit>*one = draft.find_for("an edge is sewn to another on", s.one),
              *other = draft.find_for("an edge is sewn to another on", s.other);
        if (one == nullptr || other == nullptr)
            continue;
        const piece<Unit>& first = one->made_from;
        if (std::optional<making_fault> wrong = edge_seam_fault(s, first, one == other ? first : other->made_from))
            draft.refuse({std::move(wrong->sentence), std::move(wrong->facts), s.one, s.of_one});
    }
}

/// The finished left and top edge of what is sewn on, marked on what lies beneath.
template <length_unit Unit>
void add_outline(sheet_piece<Unit>& under, const placing<Unit>& p, const finished_size<Unit>& size) {
    const panel<Unit>& shape = under.made_from.shape();
    const length<Unit> left = shape.from_cut_edge(edge::left, p.from_left).from_datum();
    const length<Unit> top = shape.from_cut_edge(edge::top, p.from_top).from_datum();
    under.lines.push_back({line_kind::mark, "left edge of " + p.piece, edge::left,
                           shape.way_from_cut_edge(edge::left, p.from_left), top, top + size.height()});
    under.lines.push_back({line_kind::mark, "top edge of " + p.piece, edge::top,
                           shape.way_from_cut_edge(edge::top, p.from_top), left, left + size.width()});
}

/// Each edge once, and no row on it or beyond the opposite one.
template <length_unit Unit>
void check_rows(sheet_draft<Unit>& draft, const placing<Unit>& p, const finished_size<Unit>& size) {
    const std::string row = "a row that sews " + named(p.piece) + " onto " + named(p.on);
    for (auto e = p.sewn.begin(); e != p.sewn.end(); ++e) {
        if (std::find(p.sewn.begin(), e, *e) != e)
            return draft.refuse({row, " runs along its ", name_of(*e), " edge twice"},
                                {.kind = fault::repeated, .what = "an edge that is sewn on", .where = p.piece}, *e);
        if (p.inset.value() <= 0 || p.inset >= across(size, *e))
            draft.refuse({row, " runs ", p.inset, " inside its ", name_of(*e), " edge, and it finishes ",
                          across(size, *e), " that way"},
                         {.kind = p.inset.value() <= 0 ? fault::too_small : fault::too_large,
                          .what = "the inset of a row",
                          .given = p.inset,
                          .least = length<Unit>(),
                          .most = across(size, *e),
                          .where = p.piece},
                         *e);
    }
}

/// What is sewn on must lie on the finished piece beneath.
template <length_unit Unit>
void add_placing(sheet_draft<Unit>& draft, const placing<Unit>& p) {
    const sheet_piece<Unit>* top = draft.find_for("a piece to be sewn onto " + named(p.on) + " is", p.piece);
    sheet_piece<Unit>* under = draft.find_for(named(p.piece) + " is to be sewn onto", p.on);
    if (top == nullptr || under == nullptr)
        return;
    const finished_size<Unit>&size = top->finished, &room = under->made_from.shape().finished();
    const length<Unit> x = p.from_left.from_datum(), y = p.from_top.from_datum();
    const bool off_sideways = x.value() < 0 || x + size.width() > room.width();
    if (off_sideways || y.value() < 0 || y + size.height() > room.height())
        draft.refuse({named(p.piece), ", which finishes ", size, ", is placed ", x, " from the left and ", y,
                      " from the top of ", named(p.on), ", and does not lie on it: that finishes ", room},
                     {.kind = fault::no_room,
                      .what = "the place of a piece sewn on",
                      .given = off_sideways ? x : y,
                      .least = length<Unit>(),
                      .most = off_sideways ? room.width() - size.width() : room.height() - size.height(),
                      .where = p.piece},
                     off_sideways ? edge::left : edge::top);
    add_outline(*under, p, size);
    check_rows(draft, p, size);
}

template <length_unit Unit>
bool overlap(sheet_draft<Unit>& draft, const placing<Unit>& a, const placing<Unit>& b) {
    const sheet_piece<Unit>*of_a = draft.find(a.piece), *of_b = draft.find(b.piece);
    if (a.on != b.on || of_a == nullptr || of_b == nullptr)
        return false;
    const finished_size<Unit>&of = of_a->finished, &other = of_b->finished;
    return a.from_left < b.from_left + other.width() && b.from_left < a.from_left + of.width() &&
           a.from_top < b.from_top + other.height() && b.from_top < a.from_top + of.height();
}

/// Two pieces sewn onto one that lie over each other may be meant, as pockets on pockets are; it is said.
template <length_unit Unit>
void check_placings(sheet_draft<Unit>& draft) {
    const auto& all = draft.from().placings();
    for (std::size_t i = 0; i < all.size(); ++i) {
        std::int64_t uses = 0;
        bool last = true;
        for (std::size_t j = 0; j < all.size(); ++j) {
            uses += all[j].piece == all[i].piece ? 1 : 0;
            last = last && (j <= i || all[j].piece != all[i].piece);
            if (j < i && overlap(draft, all[i], all[j]))
                draft.warn({named(all[j].piece), " and ", named(all[i].piece), " overlap on ", named(all[i].on)});
        }
        const sheet_piece<Unit>* placed = draft.find(all[i].piece);
        if (last && placed != nullptr && uses > placed->made_from.count())
            draft.warn({named(all[i].piece), " is placed ", uses, " times, but ", placed->made_from.count(),
                        placed->made_from.count() == 1 ? " is cut" : " are cut"});
    }
}

template <length_unit Unit>
void add_placings(sheet_draft<Unit>& draft) {
    for (const placing<Unit>& p : draft.from().placings())
        draft.attempt(named(p.piece) + " on " + named(p.on), p.piece, [&] { add_placing(draft, p); });
    check_placings(draft);
}

/// Marks where spans end, all but the last, which must end on the finished edge.
template <length_unit Unit>
void add_span_list(sheet_draft<Unit>& draft, const span_list<Unit>& p) {
    sheet_piece<Unit>* on = draft.find_for("spans are marked on", p.on);
    if (on == nullptr)
        return;
    const panel<Unit>& shape = on->made_from.shape();
    const length<Unit> room = across(shape.finished(), p.from);
    length<Unit> sum;
    for (std::size_t i = 0; i < p.spans.size(); ++i) {
        if (p.spans[i].value() <= 0)
            return draft.refuse(
                {"a span of ", in_quotes(p.what), " on ", named(p.on), " must be more than zero: it was ", p.spans[i]},
                {.kind = fault::too_small,
                 .what = "a span",
                 .given = p.spans[i],
                 .least = length<Unit>(),
                 .index = i,
                 .where = p.on},
                p.from);
        sum += p.spans[i];
        if (sum < room)
            piece_work<Unit>(draft, *on)
                .add_mark({p.what, p.from, shape.way_from_cut_edge(p.from, at<finished_edge>(sum))});
    }
    if (sum != room)
        draft.refuse(
            {"the spans of ", in_quotes(p.what), " on ", named(p.on), " add up to ", sum, ", but it finishes ", room},
            {.kind = fault::disagree, .what = "spans", .given = sum, .most = room, .where = p.on}, p.from);
}

template <length_unit Unit>
void add_span_lists(sheet_draft<Unit>& draft) {
    for (const span_list<Unit>& p : draft.from().span_lists())
        draft.attempt("the spans of " + in_quotes(p.what) + " on " + named(p.on), p.on,
                      [&] { add_span_list(draft, p); });
}

template <length_unit Unit>
void check_reaches(sheet_draft<Unit>& draft) {
    for (const must_reach<Unit>& r : draft.from().must_reach_list())
        if (r.has < r.needs)
            draft.refuse({excerpt(r.what), " is ", r.has, ", ", r.needs - r.has, " short of the ", r.needs,
                          " that it must reach"},
                         {.kind = fault::too_small, .what = excerpt(r.what), .given = r.has, .least = r.needs});
}

} // namespace detail

} // namespace turncloth

#endif
