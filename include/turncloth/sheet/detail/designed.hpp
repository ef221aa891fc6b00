// The steps of a project that says how it is made: its design carried out, each fault of it a reason.
//
//   designed<U>(draft, design).add_steps()
//
// Edges that are left raw are warned of: some are meant. A part that bears a piece's name is that piece, cut as large
// and as often. Parts of no piece are bought as they are, such as a zipper's tape.
#ifndef TURNCLOTH_SHEET_DETAIL_DESIGNED_HPP
#define TURNCLOTH_SHEET_DETAIL_DESIGNED_HPP

#include <turncloth/making/executed.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/sheet/detail/draft.hpp>
#include <turncloth/sheet/detail/outlines_told.hpp>
#include <turncloth/sheet/detail/turn_of_cloth.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class designed {
public:
    designed(sheet_draft<Unit>& draft, const making<Unit>& design) : draft_(draft), design_(design) {}

    void add_steps() {
        for (const part<Unit>& p : design_.parts())
            check(p);
        for (const sheet_piece<Unit>& p : draft_.made().pieces)
            require_strip(p.made_from.name());
#ifdef BOOST_NO_EXCEPTIONS
        carry_out();
#else
        try {
            carry_out();
        } catch (const making_error& refused) {
            refuse_all(refused.faults(), refused);
        }
#endif
    }

private:
    void carry_out() {
        const executed<Unit> made = execute(design_);
        for (const making_fault& f : made.faults)
            refuse(f);
        for (const making_fault& f : made.raw_edges)
            draft_.warn({f.sentence});
        work_plan<Unit> plan = work_plan_of(design_, made.steps);
        std::vector<work_group<Unit>> prepared;
        const auto prepare = [&](const std::vector<std::string>& sentences) {
            for (const std::string& sentence : sentences) {
                work_step<Unit> s;
                s.verb = work_verb::prepare;
                s.what = sentence;
                prepared.push_back(group_of(std::move(s)));
            }
        };
        prepare(draft_.from().preparations());
        for (const outlined_piece<Unit>& p : draft_.from().outlines())
            prepare(edges_to_turn(p));
        if (const std::string names = names_of_outlines(draft_.from()); !names.empty())
            draft_.warn({"the making holds no piece that is cut to an outline: what joins ", names,
                         " to the rest, and what holds the edges there, is not proved"});
        plan.groups.insert(plan.groups.begin() + 1, prepared.begin(), prepared.end()); // once all is cut
        for (std::size_t i = 0; i < design_.parts().size(); ++i)
            for (const piece<Unit>& p :
                 draft_.from().pieces()) // no strips: what goes round their edges lies beyond a fold
                if (p.name() == design_.parts()[i].name)
                    give_turn_of_cloth(plan.groups, i, p.shape());
        draft_.made().steps = std::move(plan);
        draft_.made().design.kept = draft_.from().way().design;
    }

    void check(const part<Unit>& p) {
        const sheet_piece<Unit>* piece = draft_.find(p.name);
        if (piece == nullptr)
            return;
        const std::string made = named(p.name) + " is made as cut ";
        if (p.width != piece->cut.width() || p.height != piece->cut.height())
            draft_.refuse({made, text_part(p.width, p.height), ", but its sheet cuts it ", piece->cut},
                          {.kind = fault::disagree, .what = "the cut size of a part", .where = p.name});
        else if (p.count != piece->made_from.count())
            draft_.refuse({made, p.count, " times, but its sheet cuts ", piece->made_from.count()},
                          {.kind = fault::disagree, .what = "the number of a part", .where = p.name});
    }

    /// Strips that the project names are to be sewn on.
    void require_strip(const std::string& name) {
        const auto& pieces = draft_.from().pieces();
        const auto& parts = design_.parts();
        if (std::none_of(pieces.begin(), pieces.end(), [&](const piece<Unit>& p) { return p.name() == name; }) &&
            std::none_of(parts.begin(), parts.end(), [&](const part<Unit>& p) { return p.name == name; }))
            draft_.refuse({"the sheet cuts ", named(name), ", and no part of the making is named so"},
                          {.kind = fault::missing, .what = "a strip of a binding", .where = name});
    }

    void refuse_all(const std::vector<making_fault>& faults, const making_error& said) {
        for (const making_fault& f : faults)
            refuse(f);
        if (faults.empty())
            draft_.refuse({said.what(), said.facts()});
    }
    void refuse(const making_fault& f) { draft_.refuse({f.sentence, f.facts, piece_of(f.facts.where)}); }
    /// A fault names the copy, as "film strip 3"; or a line on it, in words that end otherwise.
    std::string piece_of(const std::string& where) const {
        for (const sheet_piece<Unit>& p : draft_.made().pieces)
            if (const std::string& name = p.made_from.name();
                where == name || (p.made_from.count() > 1 && where.rfind(name + " ", 0) == 0))
                return name;
        return {};
    }

    sheet_draft<Unit>& draft_;
    const making<Unit>& design_;
};

} // namespace turncloth::detail

#endif
