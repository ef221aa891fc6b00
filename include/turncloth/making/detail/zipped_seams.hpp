// A zipper in a seam: whether rows hold its tape all round the opening.
//
//   zipped_seams(design, model, bench, rows).faults()      rows: what was met, sewn_row by sewn_row
//
// The seam lies open along a zipper's mouth and its tape under it. Two rows along the tape leave a tunnel past each of its
// ends: from the opening between cloth and tape, and round the tape's end. So rows go round the opening, through the tape
// and whichever piece lies there; a seam that takes the tape's end in closes that end as well.
#ifndef TURNCLOTH_MAKING_DETAIL_ZIPPED_SEAMS_HPP
#define TURNCLOTH_MAKING_DETAIL_ZIPPED_SEAMS_HPP

#include <turncloth/making/detail/model.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class zipped_seams {
public:
    using bench_type = flat_work::lazy_workbench<for_any<Unit>>;

    zipped_seams(const making<Unit>& design, const flat_model<Unit>& model, const bench_type& bench,
                 const std::vector<flat_work::sewn_row>& rows)
        : design_(design), model_(model), bench_(bench), rows_(rows) {}

    std::vector<making_fault> faults() {
        for (std::size_t m = 0; m < design_.mouths().size(); ++m)
            if (design_.mouths()[m].by == closed_by::zipper)
                for (const chalk_line<Unit>& l : design_.mouths()[m].at)
                    if (const auto other = across_seam(l))
                        judge({m, l, model_.number_of(l.on), model_.number_of(*other)});
        return std::move(found_);
    }

private:
    using whole = flat_work::whole;
    using stretch = flat_work::stretch;
    using table_line = flat_work::table_line;

    struct opening {
        std::size_t mouth = 0;
        chalk_line<Unit> line{};
        std::size_t one = 0, other = 0; ///< the pieces that the seam joins
    };
    /// The rows through a tape in its own spots, those along the opening and those across it, at each place.
    struct round {
        table_line mouth{};
        whole from = 0, to = 0;   ///< of the mouth
        bool begins_first = true; ///< where the mouth's line begins is at `from`
        std::map<whole, std::vector<stretch>> along{}, across{};
        whole one_side = 0; ///< a place on the side of the piece that the mouth is drawn on
    };
    struct missing_rows {
        std::vector<std::size_t> beside{}; ///< pieces
        std::array<bool, 2> end{};         ///< where the line begins, and where it ends
        std::size_t count() const { return beside.size() + (end[0] ? 1U : 0U) + (end[1] ? 1U : 0U); }
    };

    /// The piece that a seam joins to the one that the line is on, along it.
    std::optional<cut_part> across_seam(const chalk_line<Unit>& l) const {
        const flat_work::flat_line own = model_.line(l, l.in);
        const stretch open = flat_work::stretch_of(own, model_.flat().parts[own.part]);
        const auto same = [&](const chalk_line<Unit>& s) {
            const flat_work::flat_line f = model_.line(s, s.in);
            const stretch sewn = flat_work::stretch_of(f, model_.flat().parts[f.part]);
            return f.part == own.part && f.at.level == own.at.level && f.at.at == own.at.at && sewn.from < open.to &&
                   open.from < sewn.to;
        };
        for (const seam_of<Unit>& s : design_.seams())
            for (std::size_t k = 0; k < s.one.size(); ++k) {
                if (same(s.one[k]))
                    return s.other[k].on;
                if (same(s.other[k]))
                    return s.one[k].on;
            }
        return {};
    }

    void judge(const opening& o) {
        std::optional<missing_rows> best;
        for (std::size_t tape = 0; tape < model_.count(); ++tape)
            if (tape != o.one && tape != o.other && lies_with(tape, o.one) && lies_with(o.other, o.one)) {
                const missing_rows m = missing_round(o, tape);
                if (m.beside.size() < 2 && (!best || m.count() < best->count()))
                    best = m;
            }
        const std::string of = "\"" + design_.mouths()[o.mouth].name + "\"";
        if (!best)
            return fault_is(o, "no tape is sewn under the opening of " + of, o.one);
        for (const std::size_t piece : best->beside)
            fault_is(o, "the tape of " + of + " is not sewn to " + name(piece) + " all along its opening", piece);
        for (const std::size_t e : {0U, 1U})
            if (best->end[e])
                fault_is(o,
                         "past the tape of " + of + " a tunnel leads in at the " + end_name(o, e == 0) +
                             " end of its opening: no row goes across the tape there",
                         o.one);
    }
    static std::string end_name(const opening& o, bool first) {
        return std::string(
            name_of(o.line.is_level() ? (first ? edge::left : edge::right) : (first ? edge::top : edge::bottom)));
    }
    bool lies_with(std::size_t a, std::size_t b) const { return &bench_.stack_of(a) == &bench_.stack_of(b); }

    missing_rows missing_round(const opening& o, std::size_t tape) const {
        const round r = round_of(o, tape);
        missing_rows m;
        const std::array<std::optional<whole>, 2> sides{side(r, true), side(r, false)};
        const bool one_above = r.one_side < r.mouth.at;
        if (!sides[0])
            m.beside.push_back(one_above ? o.one : o.other);
        if (!sides[1])
            m.beside.push_back(one_above ? o.other : o.one);
        const whole low = sides[0].value_or(r.mouth.at), high = sides[1].value_or(r.mouth.at);
        const bool before = is_crossed(r, low, high, true), after = is_crossed(r, low, high, false);
        m.end = {!(r.begins_first ? before : after), !(r.begins_first ? after : before)};
        return m;
    }

    /// The nearest row to that side that is sewn all along the mouth.
    static std::optional<whole> side(const round& r, bool above) {
        std::optional<whole> nearest;
        for (const auto& [at, sewn] : r.along)
            if ((above ? at < r.mouth.at : at > r.mouth.at) && covers(sewn, r.from, r.to) && (!nearest || above))
                nearest = at;
        return nearest;
    }
    /// A row across at an end of the mouth or beyond, as far as the rows along it reach.
    static bool is_crossed(const round& r, whole low, whole high, bool before) {
        return std::any_of(r.across.begin(), r.across.end(), [&](const auto& row) {
            const whole at = row.first, near = before ? r.from : r.to;
            const auto reaches = [&](whole side) {
                const auto found = r.along.find(side);
                return found == r.along.end() || covers(found->second, std::min(at, near), std::max(at, near));
            };
            return (before ? at <= near : at >= near) && covers(row.second, low, high) && reaches(low) && reaches(high);
        });
    }
    /// Stretches that meet count as one.
    static bool covers(std::vector<stretch> sewn, whole from, whole to) {
        std::sort(sewn.begin(), sewn.end(), [](const stretch& a, const stretch& b) { return a.from < b.from; });
        whole reached = from;
        for (const stretch& s : sewn)
            if (s.from <= reached)
                reached = std::max(reached, s.to);
        return !sewn.empty() && sewn.front().from <= from && reached >= to;
    }

    round round_of(const opening& o, std::size_t tape) const {
        const flat_work::lie to_tape =
            flat_work::after(bench_.body_of(o.one)->how, flat_work::inverse(bench_.body_of(tape)->how));
        const flat_work::flat_line own = model_.line(o.line, o.line.in);
        const stretch open = flat_work::stretch_of(own, model_.flat().parts[own.part]);
        const stretch there = flat_work::carried(open, own.at, to_tape);
        const auto& cut = model_.flat().parts[o.one];
        const flat_work::spot middle = to_tape({cut.width / 2, cut.height / 2});
        round r{flat_work::carried(own.at, to_tape), there.from, there.to};
        r.one_side = r.mouth.level ? middle.y : middle.x;
        const flat_work::spot begin =
            to_tape(own.at.level ? flat_work::spot{open.from, own.at.at} : flat_work::spot{own.at.at, open.from});
        r.begins_first = (r.mouth.level ? begin.x : begin.y) == r.from;
        add_rows(r, o, tape);
        add_seams(r, tape, {o.one, o.other});
        return r;
    }
    static void note(round& r, const table_line& at, const stretch& sewn) {
        (at.level == r.mouth.level ? r.along : r.across)[at.at].push_back(sewn);
    }
    void add_rows(round& r, const opening& o, std::size_t tape) const {
        for (const flat_work::sewn_row& row : rows_)
            for (const flat_work::sewn_span& span : row.spans) {
                const auto held =
                    std::find_if(span.plies.begin(), span.plies.end(), [&](const auto& p) { return p.part == tape; });
                const bool joins = std::any_of(span.plies.begin(), span.plies.end(),
                                               [&](const auto& p) { return p.part == o.one || p.part == o.other; });
                if (held == span.plies.end() || !joins)
                    continue;
                const flat_work::lie back = flat_work::inverse(row.how(*held));
                note(r, flat_work::carried(row.at, back), flat_work::carried({span.from, span.to}, row.at, back));
            }
    }
    /// Seams of the two pieces that cross the opening's line and have the tape under them.
    void add_seams(round& r, std::size_t tape, const std::array<std::size_t, 2>& pieces) const {
        const auto& t = model_.flat().parts[tape];
        const auto add = [&](const chalk_line<Unit>& l) {
            const flat_work::flat_line f = model_.line(l, l.in);
            if (f.part != pieces[0] && f.part != pieces[1])
                return;
            const flat_work::lie to_tape =
                flat_work::after(bench_.body_of(f.part)->how, flat_work::inverse(bench_.body_of(tape)->how));
            const table_line at = flat_work::carried(f.at, to_tape);
            if (at.level != r.mouth.level && at.at > 0 && at.at < (at.level ? t.height : t.width))
                note(r, at, flat_work::carried(flat_work::stretch_of(f, model_.flat().parts[f.part]), f.at, to_tape));
        };
        for (const seam_of<Unit>& s : design_.seams())
            for (const auto* side : {&s.one, &s.other})
                for (const chalk_line<Unit>& l : *side)
                    add(l);
    }

    std::string name(std::size_t part) const { return name_of(design_, model_.part_of(part)); }
    void fault_is(const opening& o, std::string sentence, std::size_t part) {
        found_.push_back(
            {std::move(sentence), {.kind = fault::missing, .what = "a row", .index = o.mouth, .where = name(part)}});
    }

    const making<Unit>& design_;
    const flat_model<Unit>& model_;
    const bench_type& bench_;
    const std::vector<flat_work::sewn_row>& rows_;
    std::vector<making_fault> found_{};
};

} // namespace turncloth::detail

#endif
