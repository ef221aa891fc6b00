// What can be told of a design before it is made: every reference, every length, every name.
//
// Included by making/design.hpp, whose faults() this is. Everything is looked at, whatever was found before, so that a
// designer sees all of it at once; what depends on a reference that is wrong is not looked at further.
#ifndef TURNCLOTH_MAKING_DETAIL_CHECK_HPP
#define TURNCLOTH_MAKING_DETAIL_CHECK_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/making/detail/handwork_faults.hpp>
#include <turncloth/notions/bar_tack.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class design_check {
public:
    explicit design_check(const making<Unit>& design) : design_(design) {}

    std::vector<making_fault> all() {
        check_parts();
        if (found_.empty()) { // with parts that cannot be cut, what is measured on them means nothing
            check_layings();
            check_each(design_.creases(), [&](const auto& c, std::size_t i) { check_crease(c, i); });
            check_rows();
            check_seams();
            check_each(design_.snips(), [&](const auto& s, std::size_t i) { check_snip(s, i); });
            check_spots();
            handwork_faults(design_, found_);
            check_each(design_.mouths(), [&](const auto& m, std::size_t i) { check_mouth(m, i); });
            check_compartments();
            check_moments();
        }
        return std::move(found_);
    }

private:
    using line = chalk_line<Unit>;

    template <class List, class Check>
    static void check_each(const List& list, Check check) {
        for (std::size_t i = 0; i < list.size(); ++i)
            check(list[i], i);
    }

    void fault_is(std::string sentence, refusal facts) { found_.push_back({std::move(sentence), std::move(facts)}); }
    void fault_is(text_parts parts, const grounds& why) { fault_is(sentence(parts), refusal_on(why)); }

    /// "<what> must be more than zero: it was ..."
    template <class Number>
    bool positive(const Number& x, std::string_view what, std::size_t i, std::string_view where) {
        if (x > Number())
            return true;
        fault_is({what, " must be more than zero: it was ", x},
                 {.kind = fault::too_small, .what = what, .given = x, .least = Number(), .index = i, .where = where});
        return false;
    }

    void repeated(const std::string& what, const std::string& name, std::size_t i) {
        fault_is("two " + what + " are named \"" + name + "\"",
                 {.kind = fault::repeated, .what = "the name of one of the " + what, .index = i, .where = name});
    }
    void missing(const std::string& sentence, const std::string& what, std::size_t i) {
        fault_is(sentence, {.kind = fault::missing, .what = what, .index = i});
    }

    void check_parts() {
        std::set<std::string> names;
        check_each(design_.parts(), [&](const part<Unit>& p, std::size_t i) {
            if (!names.insert(p.name).second)
                repeated("parts", p.name, i);
            positive(p.width, "the width of " + p.name, i, p.name);
            positive(p.height, "the height of " + p.name, i, p.name);
            positive(p.count, "the number of " + p.name, i, p.name);
        });
        limit(
            design_.parts(), [](const auto& p) { return p.count; }, making<Unit>::most_parts, "the number of parts");
        const auto one = [](const auto&) { return 1; };
        limit(design_.layings(), one, making<Unit>::most_turned, "the number of layings");
        limit(design_.creases(), one, making<Unit>::most_turned, "the number of creases");
        limit(
            design_.seams(), [](const auto& s) { return static_cast<std::int64_t>(s.one.size()); },
            making<Unit>::most_turned, "the number of spans of seams");
        limit(design_.snips(), one, making<Unit>::most_turned, "the number of clips and slits");
        limit(design_.handworks(), one, making<Unit>::most_turned, "the number of steps in the designer's own words");
        if (design_.parts().empty())
            missing("a design needs a part: it has none", "a part", 0);
    }

    /// Of all in the list, each of which may stand for many; counted no further than it could matter.
    template <class List, class CountOf>
    void limit(const List& list, CountOf count_of, std::int64_t most, const std::string& what) {
        constexpr std::int64_t most_counted = std::int64_t{1} << 40;
        std::int64_t count = 0;
        for (const auto& item : list)
            count = std::min(most_counted, count + std::clamp<std::int64_t>(count_of(item), 1, most_counted));
        if (count > most)
            fault_is(what + " must be at most " + std::to_string(most) + ": it was " + std::to_string(count),
                     {.kind = fault::does_not_fit, .what = what, .given = amount_of(count), .most = amount_of(most)});
    }

    bool known(const cut_part& p, const std::string& what, std::size_t i) {
        if (design_.has(p))
            return true;
        missing(what + " names a part, or a copy of one, that was not added", what, i);
        return false;
    }
    std::string name(const cut_part& p) const { return name_of(design_, p); }
    const part<Unit>& of(const cut_part& p) const { return design_.parts()[p.index]; }
    length<Unit> across(const line& l) const { return l.is_level() ? of(l.on).height : of(l.on).width; }
    length<Unit> along(const line& l) const { return l.is_level() ? of(l.on).width : of(l.on).height; }

    /// Whether the line lies on its part; `open`: neither on an edge.
    bool on_part(const line& l, const std::string& what, std::size_t i, bool open) {
        return known(l.on, what, i) && place_on_part(l, l.in, what, i, open) && span_on_part(l, what, i);
    }
    bool place_on_part(const line& l, const place<cut_edge, Unit>& at, const std::string& what, std::size_t i,
                       bool open) {
        const length<Unit> in = at.from_datum(), most = across(l), nothing;
        if (open ? in > nothing && in < most : in >= nothing && in <= most)
            return true;
        fault_is(what + " on " + name(l.on) + " lies " + to_text(in) + " from its " + std::string(name_of(l.from)) +
                     " edge, and it is cut " + to_text(most) + " that way",
                 {.kind = in < most ? fault::too_small : fault::too_large,
                  .what = what,
                  .given = amount_of(in),
                  .least = amount_of(nothing),
                  .most = amount_of(most),
                  .index = i,
                  .where = name(l.on)});
        return false;
    }
    bool span_on_part(const line& l, const std::string& what, std::size_t i) {
        const length<Unit> nothing, most = along(l), begins = l.begins.value_or(nothing), ends = l.ends.value_or(most);
        if (!positive(ends - begins, "the length of " + what + " on " + name(l.on), i, name(l.on)))
            return false;
        if (begins >= nothing && ends <= most)
            return true;
        fault_is(what + " on " + name(l.on) + " runs from " + to_text(begins) + " to " + to_text(ends) +
                     ", off the part, which is cut " + to_text(most) + " that way",
                 {.kind = begins < nothing ? fault::too_small : fault::too_large,
                  .what = what,
                  .given = amount_of(begins < nothing ? begins : ends),
                  .least = amount_of(nothing),
                  .most = amount_of(most),
                  .index = i,
                  .where = name(l.on)});
        return false;
    }

    /// Each piece is laid once, on another or on the table, and following what each lies on never comes round again.
    void check_layings() {
        check_each(design_.layings(), [&](const laying<Unit>& l, std::size_t i) {
            if (!known(l.piece, "a laying", i) || (l.on.is_given() && !known(l.on, "a laying", i)))
                return;
            if (laid_.contains(l.piece))
                return fault_is(
                    name(l.piece) + " is laid twice",
                    {.kind = fault::repeated, .what = "the laying of a piece", .index = i, .where = name(l.piece)});
            if (l.on.is_given() && root_of(l.on) == l.piece)
                return fault_is(name(l.piece) + " is laid on what lies on it",
                                {.kind = fault::unsuitable, .what = "a laying", .index = i, .where = name(l.piece)});
            laid_.emplace(l.piece, l.on);
            check_fit(l, i);
        });
    }
    void check_fit(const laying<Unit>& l, std::size_t i) {
        if (!l.fit.is_given())
            return;
        positive(l.fit.of_piece, "the length of " + name(l.piece) + " that is fitted", i, name(l.piece));
        positive(l.fit.on, "the length that " + name(l.piece) + " is fitted to", i, name(l.piece));
        positive(l.fit.spans, "the number of spans of a fit", i, name(l.piece));
    }
    cut_part root_of(cut_part p) const {
        for (;;) {
            const auto found = laid_.find(p);
            if (found == laid_.end() || !found->second.is_given())
                return p;
            p = found->second;
        }
    }

    void check_crease(const crease<Unit>& c, std::size_t i) {
        if (!c.across) {
            on_part(c.at, "a crease", i, true);
            return;
        }
        if (!known(c.across->on, "a crease", i))
            return;
        const part<Unit>& p = of(c.across->on);
        if (positive(c.across->leg, "the leg of a crease across a corner", i, p.name))
            limit_leg(c.across->leg, std::min(p.width, p.height), i, p.name);
    }
    void limit_leg(length<Unit> leg, length<Unit> most, std::size_t i, const std::string& where) {
        if (leg > most)
            fault_is("a crease across a corner of " + where + " meets its edges " + to_text(leg) +
                         " from it, and the shorter of them is " + to_text(most),
                     {.kind = fault::too_large,
                      .what = "the leg of a crease across a corner",
                      .given = amount_of(leg),
                      .most = amount_of(most),
                      .index = i,
                      .where = where});
    }

    /// Every place of a family on the part, and nothing else of the line counted twice.
    bool family_on_part(const line& l, const row<cut_edge, Unit>& each, const std::string& what, std::size_t i) {
        if (each.size() == 0)
            return on_part(l, what, i, true);
        return known(l.on, what, i) && place_on_part(l, each[0], what, i, true) &&
               place_on_part(l, each[each.size() - 1], what, i, true) && span_on_part(l, what, i);
    }

    void check_rows() {
        check_each(design_.rows(), [&](const stitching<Unit>& s, std::size_t i) {
            if (family_on_part(s.along, s.each, "a row", i) && !s.through.empty())
                check_walls(s, i);
        });
        limit(
            design_.rows(), [](const auto& s) { return s.each.size(); }, making<Unit>::most_rows, "the number of rows");
    }
    void check_walls(const stitching<Unit>& s, std::size_t i) {
        for (const cut_part& w : s.through) {
            if (!known(w, "a row", i))
                return;
            if (root_of(w) != root_of(s.along.on))
                fault_is("a row on " + name(s.along.on) + " is to go through " + name(w) +
                             ", which is never laid where it is",
                         {.kind = fault::missing, .what = "a wall of a row", .index = i, .where = name(w)});
        }
        if (std::find(s.through.begin(), s.through.end(), s.along.on) == s.through.end())
            fault_is("a row on " + name(s.along.on) + " does not go through it",
                     {.kind = fault::missing, .what = "a wall of a row", .index = i, .where = name(s.along.on)});
    }

    void check_seams() {
        check_each(design_.seams(), [&](const seam_of<Unit>& s, std::size_t i) {
            if (s.one.size() != s.other.size() || s.one.empty())
                return fault_is("a seam joins as many lines of one side as of the other: they were " +
                                    std::to_string(s.one.size()) + " and " + std::to_string(s.other.size()),
                                {.kind = fault::disagree,
                                 .what = "the lines of a seam",
                                 .given = amount_of(s.one.size()),
                                 .least = amount_of(s.other.size()),
                                 .index = i});
            if (s.taken_up != surplus::none && !positive(s.spans, "the number of spans of a seam", i, {}))
                return;
            for (std::size_t k = 0; k < s.one.size(); ++k) {
                // Both are looked at, whatever the first shows.
                const bool one = on_part(s.one[k], "a seam", i, false), other = on_part(s.other[k], "a seam", i, false);
                if (one && other) {
                    sides_agree(s, k, i);
                    sewn_once(s.one[k], i);
                    sewn_once(s.other[k], i);
                }
            }
        });
    }
    length<Unit> begin_of(const line& l) const { return l.begins.value_or(length<Unit>()); }
    length<Unit> end_of(const line& l) const { return l.ends.value_or(along(l)); }
    void sides_agree(const seam_of<Unit>& s, std::size_t k, std::size_t i) {
        const length<Unit> one = end_of(s.one[k]) - begin_of(s.one[k]),
                           other = end_of(s.other[k]) - begin_of(s.other[k]);
        if (one == other || s.taken_up != surplus::none)
            return;
        fault_is("a seam joins " + to_text(one) + " of " + name(s.one[k].on) + " to " + to_text(other) + " of " +
                     name(s.other[k].on) + ", and nothing takes up the difference",
                 {.kind = fault::disagree,
                  .what = "the two sides of a seam",
                  .given = amount_of(one),
                  .least = amount_of(other),
                  .most = amount_of(other),
                  .index = i,
                  .where = name(s.one[k].on)});
    }
    void sewn_once(const line& l, std::size_t i) {
        for (const line& sewn : sewn_)
            if (sewn.on == l.on && sewn.from == l.from && begin_of(sewn) < end_of(l) && begin_of(l) < end_of(sewn))
                return fault_is(
                    "the " + std::string(name_of(l.from)) + " edge of " + name(l.on) + " is sewn in a seam already",
                    {.kind = fault::repeated, .what = "an edge of a seam", .index = i, .where = name(l.on)});
        sewn_.push_back(l);
    }

    void check_snip(const snip<Unit>& s, std::size_t i) {
        if (on_part(s.at, "a snip", i, true) && s.width < length<Unit>())
            fault_is(
                "the width of a snip must be zero or more: it was " + to_text(s.width),
                {.kind = fault::too_small, .what = "the width of a snip", .given = amount_of(s.width), .index = i});
    }
    void check_spots() {
        check_each(design_.spots(), [&](const auto& s, std::size_t i) { check_spot(s, i); });
        limit(
            design_.spots(), [](const auto& s) { return s.places.size(); }, making<Unit>::most_spots,
            "the number of spots");
    }
    void check_bar(const spot<Unit>& s, std::size_t i) {
        if (s.stitches != 0 && !can_be_sewn(bar_of_box(s.width, s.height, s.stitches)))
            fault_is({"a bar-tack has a width, a height and 1 to ", most_stitches_of_a_bar, " stitches: it had ",
                      s.stitches},
                     {.kind = fault::unsuitable, .what = "a bar-tack", .given = s.stitches, .index = i});
    }
    void check_spot(const spot<Unit>& s, std::size_t i) {
        check_bar(s, i);
        if (!on_part(s.along, "a spot", i, true) || s.places.size() == 0)
            return;
        const length<Unit> first = s.places[0].from_datum(), last = s.places[s.places.size() - 1].from_datum();
        if (std::min(first, last) < length<Unit>() || std::max(first, last) > along(s.along))
            fault_is("a spot lies off " + name(s.along.on), {.kind = fault::too_large,
                                                             .what = "the place of a spot",
                                                             .given = amount_of(std::max(first, last)),
                                                             .most = amount_of(along(s.along)),
                                                             .index = i,
                                                             .where = name(s.along.on)});
    }
    void check_mouth(const mouth<Unit>& m, std::size_t i) {
        if (m.at.empty())
            missing("the mouth \"" + m.name + "\" has no line", "the line of a mouth", i);
        for (const line& l : m.at)
            on_part(l, "the mouth \"" + m.name + "\"", i, false);
    }

    void check_compartments() {
        std::set<std::string> names;
        check_each(design_.compartments(), [&](const compartment<Unit>& c, std::size_t i) {
            if (!names.insert(c.name).second)
                repeated("compartments", c.name, i);
            const bool one = known(c.between[0], "the compartment \"" + c.name + "\"", i);
            const bool other = known(c.between[1], "the compartment \"" + c.name + "\"", i);
            if (one && other)
                place_in(c, i);
            positive(c.count, "the number of compartments \"" + c.name + "\"", i, c.name);
            for (const mouth_handle& m : c.mouths)
                if (m.index >= design_.mouths().size())
                    missing("the compartment \"" + c.name + "\" has a mouth that was not added", "a mouth", i);
        });
        limit(
            design_.compartments(), [](const auto& c) { return c.count; }, making<Unit>::most_compartments,
            "the number of compartments");
    }
    void place_in(const compartment<Unit>& c, std::size_t i) {
        const length<Unit> nothing;
        const part<Unit>& p = of(c.between[0]);
        if (c.from_left < nothing || c.from_top < nothing || c.from_left > p.width || c.from_top > p.height)
            fault_is("the place in the compartment \"" + c.name + "\" is off " + p.name,
                     {.kind = fault::too_large, .what = "the place in a compartment", .index = i, .where = c.name});
    }

    void check_moments() {
        check_each(design_.befores(), [&](const before& b, std::size_t i) {
            if (!design_.has(b.first) || !design_.has(b.then))
                missing("an order names an operation that was not added", "an operation", i);
        });
        check_each(design_.all_contents(), [&](const contents<Unit>& c, std::size_t i) {
            if (c.into.index >= design_.compartments().size() || c.by.index >= design_.mouths().size())
                return missing(c.what + " is put into a compartment, or by a mouth, that was not added",
                               "the compartment of contents", i);
            const auto& mouths = design_.compartments()[c.into.index].mouths;
            if (std::find(mouths.begin(), mouths.end(), c.by) == mouths.end())
                missing(c.what + " is put in by a mouth that its compartment does not have", "a mouth", i);
        });
        check_each(design_.moments(), [&](const moment& m, std::size_t i) {
            const bool of_mouth = m.what == moment_kind::turn_out || m.what == moment_kind::close;
            const std::size_t count = of_mouth                        ? design_.mouths().size()
                                      : m.what == moment_kind::put_in ? design_.all_contents().size()
                                                                      : m.index + 1;
            if (m.index >= count)
                missing("a moment names what was not added", "a moment", i);
        });
    }

    const making<Unit>& design_;
    std::vector<making_fault> found_{};
    std::map<cut_part, cut_part> laid_{}; ///< what each piece lies on
    std::vector<line> sewn_{};
};

} // namespace turncloth::detail

namespace turncloth {

template <length_unit Unit>
std::vector<making_fault> making<Unit>::faults() const {
    return detail::design_check<Unit>(*this).all();
}

} // namespace turncloth

#endif
