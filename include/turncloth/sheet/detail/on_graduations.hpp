// What must hold of a sheet that was worked out on a ruler, and what is said of it.
//
//   require_graduations(sheet, graduation)        every length of its pieces, meetings and steps is a whole number of them
//   warn_of_allowances(sheet, exact, made)        that the ruler changed by a third or more
//   warn_of_numbers(sheet, asked, made)           of things, that the rounded size changed
#ifndef TURNCLOTH_SHEET_DETAIL_ON_GRADUATIONS_HPP
#define TURNCLOTH_SHEET_DETAIL_ON_GRADUATIONS_HPP

#include <turncloth/making/ruled.hpp>
#include <turncloth/sheet/detail/draft.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class graduation_check {
public:
    explicit graduation_check(length<Unit> graduation) : graduation_(graduation) {}

    void check(const sheet<Unit>& s) {
        for (const sheet_piece<Unit>& p : s.pieces)
            check(p);
        for (const sheet_meeting<Unit>& m : s.meetings) {
            where_ = m.made_from.longer;
            for (std::int64_t k = 0; k <= m.marks.spans(); ++k) {
                one(m.marks.mark_on_long(k).from_datum(), "a mark of a meeting");
                one(m.marks.mark_on_short(k).from_datum(), "a mark of a meeting");
            }
            one(m.marks.surplus(0), "what each span of a meeting takes up");
        }
        where_.clear();
        for (const work_group<Unit>& g : s.steps.groups) {
            for (const work_step<Unit>& step : g.steps)
                check(step);
            if (g.check) {
                one(g.check->width, "a width to check");
                one(g.check->height, "a height to check");
            }
        }
    }

private:
    void one(length<Unit> l, std::string_view what) const {
        if (!is_whole(ratio_of(l, graduation_)))
            refuse<ruler_error>({what, " of ", l, " is no whole number of ", graduation_,
                                 ", the graduation of the ruler: say of which kind each number is that it comes from"},
                                {.kind = fault::unsuitable, .what = what, .given = l, .where = where_});
    }
    void all(const figure<Unit>& f, std::string_view what) const {
        one(f.value(), what);
        for (const term<Unit>& t : f.terms())
            for (const length<Unit>& part : t.parts())
                one(part, what);
    }
    void all(const seen_distances<Unit>& seen, std::string_view what) const {
        for (const length<Unit>& l : seen.at)
            one(l, what);
    }

    void check(const sheet_piece<Unit>& p) {
        where_ = p.made_from.name();
        all(p.width, "the width of a piece");
        all(p.height, "the height of a piece");
        one(p.finished.width(), "the finished width of a piece");
        one(p.finished.height(), "the finished height of a piece");
        one(p.corner, "the corner cut out of a piece");
        for (const sheet_line<Unit>& l : p.lines) {
            all(l.from_cut_edge, l.what);
            one(l.begins, l.what);
            one(l.ends, l.what);
            one(l.brought_to.value_or(length<Unit>()), l.what);
            for (const short_mark<Unit>& tick : l.only)
                one(tick.size, l.what);
        }
        for (const sheet_eyelets<Unit>& e : p.eyelets) {
            all(e.from_top, "a row of eyelets");
            for (const length<Unit>& l : e.from_left)
                one(l, "the place of an eyelet");
        }
    }

    void check(const work_step<Unit>& s) {
        for (const work_place<Unit>& p : s.places) {
            for (const seen_distances<Unit>* seen :
                 {&p.across, &p.along, &p.meets, &p.meets_along, &p.marks, &p.meets_marks})
                all(*seen, "a distance in a step");
            one(p.turned, "what is turned in a step");
            one(p.goes_round, "what goes round an edge in a step");
            one(p.surplus, "what a seam takes up");
            one(p.sewn, "a row in a step");
        }
        for (const seen_distances<Unit>* seen : {&s.marks_on_piece, &s.marks_on_other})
            all(*seen, "a distance in a step");
        for (const seam_opening<Unit>& o : s.left_open)
            all(o.along, "what a step leaves open");
        if (s.fit.is_given())
            one((s.fit.of_piece - s.fit.on) / fraction(s.fit.spans), "what each span of a step takes up");
        one(s.width, "the width of a slit");
        one(s.height, "the height of a box");
        one(s.overrun, "how far a row is sewn back over");
    }

    length<Unit> graduation_;
    std::string where_{};
};

/// Throws ruler_error.
template <compiled_unit Unit>
void require_graduations(const sheet<Unit>& s, length<Unit> graduation);

#ifndef TURNCLOTH_COMPILED
template <compiled_unit Unit>
void require_graduations(const sheet<Unit>& s, length<Unit> graduation) {
    graduation_check<Unit>(graduation).check(s);
}
#endif

TURNCLOTH_ONCE(void require_graduations(const sheet<inch>&, length<inch>));
TURNCLOTH_ONCE(void require_graduations(const sheet<centimetre>&, length<centimetre>));

template <length_unit Unit>
void warn_once(sheet<Unit>& s, std::string sentence) {
    if (std::find(s.warnings.begin(), s.warnings.end(), sentence) == s.warnings.end())
        s.warnings.push_back(std::move(sentence));
}

template <length_unit Unit>
void warn_of_allowances(sheet<Unit>& s, const project<Unit>& exact, const project<Unit>& made) {
    for (std::size_t i = 0; i < made.pieces().size() && i < exact.pieces().size(); ++i)
        for (const edge e : all_edges) {
            const finish<Unit>& now = made.pieces()[i].shape().finish_of(e);
            const length<Unit> is = now.allowance(), was = exact.pieces()[i].shape().finish_of(e).allowance();
            if (is != was && abs(is - was) * 3 >= was)
                warn_once(s, sentence({"on this ruler the ", now.name(), " of ", named(made.pieces()[i].name()),
                                       " is allowed ", is, " in place of ", was}));
        }
}

template <length_unit Unit>
void warn_of_numbers(sheet<Unit>& s, const project<Unit>& asked, const project<Unit>& made) {
    const auto compare = [&](std::string_view what, std::int64_t is, std::int64_t was) {
        if (is != was)
            warn_once(s, sentence({what, ": ", is, ", where the size asked for has ", was}));
    };
    for (std::size_t i = 0; i < made.pieces().size() && i < asked.pieces().size(); ++i)
        compare(named(made.pieces()[i].name()), made.pieces()[i].count(), asked.pieces()[i].count());
    for (std::size_t i = 0; i < made.notions().size() && i < asked.notions().size(); ++i) {
        const auto &now = made.notions()[i].details(), &then = asked.notions()[i].details();
        for (std::size_t k = 0; k < now.size() && k < then.size(); ++k)
            compare(now[k].what, now[k].count, then[k].count);
    }
}

} // namespace turncloth::detail

#endif
