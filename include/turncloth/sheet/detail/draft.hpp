// A sheet being worked out: what is made so far, and all that is found wrong.
//
//   sheet_draft<U>(project)     made()  find(name)  refuse(parts, grounds, edge)  warn(parts)
//     .attempt(what, piece, work)   does it; what is refused in it becomes a reason, and the rest goes on
//     .is_within_limits()       whether it has no more of anything than a sheet is worked out of; what it has more of is refused
//     .is_sound()               whether nothing was refused so far
//     .done()                   the sheet, or the sheet_error where anything was refused
#ifndef TURNCLOTH_SHEET_DETAIL_DRAFT_HPP
#define TURNCLOTH_SHEET_DETAIL_DRAFT_HPP

#include <turncloth/measure/outcome.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// A size from side to side at right angles to an edge, or along it.
template <length_unit Unit>
length<Unit> across(const finished_size<Unit>& size, edge e) {
    return is_level(e) ? size.height() : size.width();
}
template <length_unit Unit>
length<Unit> along(const finished_size<Unit>& size, edge e) {
    return is_level(e) ? size.width() : size.height();
}

template <length_unit Unit>
class sheet_draft {
public:
    explicit sheet_draft(const project<Unit>& from)
        : from_(from), made_{from.name(), from.finished(), {}, {}, {}, {}, {}, {}, {}, {}, from.kept()} {}

    const project<Unit>& from() const { return from_; }
    sheet<Unit>& made() { return made_; }

    sheet_piece<Unit>* find(const std::string& name) {
        for (sheet_piece<Unit>& s : made_.pieces)
            if (s.made_from.name() == name)
                return &s;
        return nullptr;
    }

    /// Nothing and a reason where there is no such piece: "<what> is put on <name>".
    sheet_piece<Unit>* find_for(std::string_view what, const std::string& name) {
        sheet_piece<Unit>* found = find(name);
        if (found == nullptr)
            refuse({what, " ", named(name), ", which is not in the project"},
                   {.kind = fault::missing, .what = "a piece", .where = name});
        return found;
    }

    /// Each reason once.
    void refuse(sheet_reason why) {
        for (const sheet_reason& said : wrong_)
            if (said.sentence == why.sentence)
                return;
        wrong_.push_back(std::move(why));
    }
    /// Of the piece that `why` names as the place of the fault.
    void refuse(text_parts parts, const grounds& why, std::optional<edge> from = {}) {
        refuse({sentence(parts), refusal_on(why), std::string(why.where), from});
    }
    void warn(text_parts parts) { made_.warnings.push_back(sentence(parts)); }

    /// Without exceptions, the program's own handler has the first refusal.
    template <class Work>
    void attempt([[maybe_unused]] const std::string& what, [[maybe_unused]] const std::string& piece, Work work) {
#ifdef BOOST_NO_EXCEPTIONS
        work();
#else
        try {
            work();
        } catch (const error& refused) {
            sheet_reason why{what + ": " + refused.what(), refused.facts(), piece};
            if (why.facts.where.empty())
                why.facts.where = piece;
            refuse(std::move(why));
        }
#endif
    }

    bool is_sound() const { return wrong_.empty(); }

    bool is_within_limits() {
        std::int64_t marks = 0;
        std::size_t zippers = 0;
        for (const piece<Unit>& p : from_.pieces()) {
            marks += static_cast<std::int64_t>(p.marks().size());
            for (const pleats_on_piece<Unit>& row : p.pleats())
                marks += row.pleats.count(); // the piece has seen to it that a row is not endless
            for (const eyelet_row<Unit>& row : p.eyelets())
                marks += row.along.size();
        }
        for (const span_list<Unit>& l : from_.span_lists())
            marks += static_cast<std::int64_t>(l.spans.size());
        for (const meeting<Unit>& m : from_.meetings())
            marks += std::clamp<std::int64_t>(m.spans, 0, most_in_a_row);
        for (const zipper<Unit>& z : from_.zippers())
            zippers += z.centres.size();
        at_most(most_marks_of_a_project, marks, "marks on its pieces");
        at_most(most_added_alike, std::max(zippers, from_.zippers().size()), "zippers");
        at_most(most_added_alike, from_.pieces().size(), "different pieces");
        at_most(most_added_alike, from_.outlines().size(), "different outlines");
        at_most(most_added_alike, from_.cloths().size(), "cloths");
        at_most(most_added_alike, from_.meetings().size(), "meetings");
        at_most(most_added_alike, from_.edge_seams().size(), "seams of two edges");
        at_most(most_added_alike, from_.placings().size(), "placings");
        at_most(most_added_alike, from_.span_lists().size(), "lists of spans");
        at_most(most_added_alike, from_.bindings().size(), "bindings");
        at_most(most_added_alike, from_.must_reach_list().size(), "lengths that must reach");
        at_most(most_added_alike, from_.notions().size(), "notions");
        at_most(most_added_alike, from_.cautions().size(), "cautions");
        at_most(most_added_alike, from_.preparations().size(), "preparations");
        return is_sound();
    }

    outcome<sheet<Unit>, sheet_error> done() {
        if (!wrong_.empty())
            return sheet_error(from_.name(), std::move(wrong_));
        return std::move(made_);
    }

private:
    template <std::integral Count>
    void at_most(std::int64_t most, Count n, const char* what) {
        if (std::cmp_greater(n, most))
            refuse({"it has at most ", most, " ", what, ": there are ", n},
                   {.kind = fault::too_large, .what = what, .given = n, .most = most});
    }

    const project<Unit>& from_;
    sheet<Unit> made_;
    std::vector<sheet_reason> wrong_;
};

} // namespace detail

} // namespace turncloth

#endif
