// The lines of a project as a ruler must tell them apart.
//
//   ruler_lines(project)           every line and edge of its pieces and of what is done with them: placed_line
//   confused(exact, shown)         two that change their order on the ruler, fall together, or come apart; none for none
#ifndef TURNCLOTH_SHEET_DETAIL_RULER_LINES_HPP
#define TURNCLOTH_SHEET_DETAIL_RULER_LINES_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/sheet/detail/bindings.hpp>
#include <turncloth/sheet/detail/joined.hpp>
#include <turncloth/sheet/detail/kinds.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// From the cut top edge where it is level, otherwise from the cut left one.
struct placed_line {
    std::string on, what;
    bool level;
    fraction at;
};

template <length_unit Unit>
class ruler_line_list {
public:
    explicit ruler_line_list(const project<Unit>& p) {
        sheet_draft<Unit> draft(p); // what is refused in it, sheet_of refuses with every reason
        if (!draft.is_within_limits())
            return;
        add_pieces(draft);
        add_meetings(draft);
        add_placings(draft);
        add_span_lists(draft);
        add_bindings(draft);
        for (const sheet_piece<Unit>& s : draft.made().pieces)
            add(s);
        for (const zipper<Unit>& z : p.zippers())
            if (const sheet_piece<Unit>* on = draft.find(z.on))
                add(z, *on);
        if (p.design() != nullptr)
            add(*p.design());
        else
            for (const placing<Unit>& sewn_on : p.placings())
                if (const sheet_piece<Unit>* piece = draft.find(sewn_on.piece))
                    add(sewn_on, *piece);
    }
    std::vector<placed_line> take() { return std::move(all_); }

private:
    void put(const std::string& on, std::string what, bool level, length<Unit> at) {
        all_.push_back({on, std::move(what), level, at.value()});
    }
    /// From any of its edges.
    void put(const std::string& on, std::string what, edge from, length<Unit> at, length<Unit> size) {
        put(on, std::move(what), is_level(from), from == edge::left || from == edge::top ? at : size - at);
    }

    void add(const sheet_piece<Unit>& s) {
        const std::string& on = s.made_from.name();
        for (const edge e : all_edges)
            put(on, std::string(name_of(e)) + " edge", e, length<Unit>(), across(s.cut, e));
        for (const sheet_line<Unit>& l : s.lines) {
            const std::string what = l.kind == line_kind::slit ? l.what : std::string(verb_of(l.kind)) + " " + l.what;
            put(on, what, l.parallel_to, l.from_cut_edge.value(), across(s.cut, l.parallel_to));
            if (l.brought_to)
                put(on, what, l.parallel_to, *l.brought_to, across(s.cut, l.parallel_to));
            put(on, what, !is_level(l.parallel_to), l.begins);
            put(on, what, !is_level(l.parallel_to), l.ends);
        }
        // Points are taken for no line, so they are told apart from one another alone.
        for (const sheet_eyelets<Unit>& row : s.eyelets)
            for (const length<Unit>& at : row.from_left)
                put(on + ", its eyelets", "centre of an eyelet", false, at);
    }

    /// As it is to be, even where the sheet will refuse it: a slit as wide as its rows are apart.
    void add(const zipper<Unit>& z, const sheet_piece<Unit>& s) {
        const panel<Unit>& shape = s.made_from.shape();
        const edge start = is_level(z.from) ? edge::left : edge::top;
        const length<Unit> opens = shape.finish_of(start).allowance() +
                                   (along(shape.finished(), z.from) - z.opening.across) / 2 + z.opening.margin;
        const length<Unit> ends = opens + z.opening.across - z.opening.margin * 2;
        for (const auto& centre : z.centres) {
            const length<Unit> at = shape.from_cut_edge(z.from, centre).from_datum();
            for (const auto& [what, half] :
                 {std::pair("stitch zipper", z.rows / 2), {"slit behind the zipper", z.slit / 2}})
                for (const length<Unit>& line : {at - half, at + half})
                    put(s.made_from.name(), what, z.from, line, across(s.cut, z.from));
        }
        for (const length<Unit>& place : {opens - z.opening.beyond, ends + z.opening.beyond})
            put(s.made_from.name(), "end of a zipper", !is_level(z.from), place);
        for (const length<Unit>& place : {opens, ends})
            put(s.made_from.name(), "end of an opening", !is_level(z.from), place);
    }

    void add(const placing<Unit>& p, const sheet_piece<Unit>& s) {
        const panel<Unit>& shape = s.made_from.shape();
        for (const edge e : p.sewn)
            put(p.piece, "stitch onto " + p.on, e, shape.from_cut_edge(e, at<finished_edge>(p.inset)).from_datum(),
                across(s.cut, e));
    }

    void add(const making<Unit>& design) {
        for (const stitching<Unit>& r : design.rows()) {
            add(design, r.along, "row of stitching", r.each.size() == 0 ? r.along.in : r.each[0]);
            for (std::int64_t k = 1; k < r.each.size(); ++k)
                add(design, r.along, "row of stitching", r.each[k]);
        }
        for (const crease<Unit>& c : design.creases())
            if (!c.across)
                add(design, c.at, "fold", c.at.in);
        for (const seam_of<Unit>& s : design.seams())
            for (const auto* side : {&s.one, &s.other})
                for (const chalk_line<Unit>& l : *side)
                    add(design, l, "seam", l.in);
        for (const snip<Unit>& s : design.snips()) {
            add(design, s.at, s.kind == snip_kind::clip ? "clip" : "slit", s.at.in - s.width / 2);
            add(design, s.at, s.kind == snip_kind::clip ? "clip" : "slit", s.at.in + s.width / 2);
        }
    }
    void add(const making<Unit>& design, const chalk_line<Unit>& l, const char* what, const place<cut_edge, Unit>& in) {
        if (!design.has(l.on))
            return;
        const part<Unit>& of = design.parts()[l.on.index];
        const bool level = l.is_level();
        put(of.name, what, l.from, in.from_datum(), level ? of.height : of.width);
        if (l.begins)
            put(of.name, what, !level, *l.begins);
        if (l.ends)
            put(of.name, what, !level, *l.ends);
    }

    std::vector<placed_line> all_;
};

template <compiled_unit Unit>
std::vector<placed_line> ruler_lines(const project<Unit>& p);

#ifndef TURNCLOTH_COMPILED
template <compiled_unit Unit>
std::vector<placed_line> ruler_lines(const project<Unit>& p) {
    return ruler_line_list<Unit>(p).take();
}
#endif

TURNCLOTH_ONCE(std::vector<placed_line> ruler_lines(const project<inch>&));
TURNCLOTH_ONCE(std::vector<placed_line> ruler_lines(const project<centimetre>&));

/// Both lists are of one project, line by line; the indices are of lines of one piece, side by side on it. Where each
/// line lies as it should against its neighbour, it does so against all.
inline std::optional<std::pair<std::size_t, std::size_t>> confused(const std::vector<placed_line>& exact,
                                                                   const std::vector<placed_line>& shown) {
    std::vector<std::size_t> order(exact.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    const auto key = [&](std::size_t i) { return std::tie(exact[i].on, exact[i].level, exact[i].at, shown[i].at); };
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    for (std::size_t i = 1; i < order.size(); ++i) {
        const std::size_t a = order[i - 1], b = order[i];
        const bool beside = exact[a].on == exact[b].on && exact[a].level == exact[b].level;
        if (beside && (exact[a].at < exact[b].at ? shown[a].at >= shown[b].at : shown[a].at != shown[b].at))
            return std::pair(a, b);
    }
    return {};
}

} // namespace turncloth::detail

#endif
