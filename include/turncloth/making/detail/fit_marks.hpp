// The marks by which a piece that is fitted to another comes to lie on it.
//
//   mark_fit(step, laying, place)      on both, where the spans of the fit meet; place: where the piece lies
#ifndef TURNCLOTH_MAKING_DETAIL_FIT_MARKS_HPP
#define TURNCLOTH_MAKING_DETAIL_FIT_MARKS_HPP

#include <turncloth/making/operations.hpp>
#include <turncloth/making/work_step.hpp>
#include <turncloth/marks/mapping.hpp>

#include <cstdint>

namespace turncloth::detail {

template <length_unit Unit>
void mark_fit(work_step<Unit>& s, const laying<Unit>& l, const work_place<Unit>& p) {
    const bool level = l.fit.along_level;
    s.marks_on_piece.from = level ? p.own_left : p.own_top;
    s.marks_on_other.from = level ? p.across.from : p.along.from;
    const length<Unit> there = (level ? p.across : p.along).at[0];
    const bool longer = l.fit.of_piece > l.fit.on;
    const even_mapping<Unit> marks(longer ? l.fit.of_piece : l.fit.on, longer ? l.fit.on : l.fit.of_piece, l.fit.spans,
                                   l.fit.graduation);
    for (std::int64_t k = 1; k < l.fit.spans; ++k) {
        const length<Unit> on_long = marks.mark_on_long(k).from_datum(), on_short = marks.mark_on_short(k).from_datum();
        s.marks_on_piece.at.push_back(longer ? on_long : on_short);
        s.marks_on_other.at.push_back(there + (longer ? on_short : on_long));
    }
}

} // namespace turncloth::detail

#endif
