// What the walk finds, said in lengths and sentences: boxes, seams as they are sewn, openings, and what is wrong.
//
//   class boxer<U>(design, flat_model, box_model)      .run()  .box_of(part)
#ifndef TURNCLOTH_MAKING_DETAIL_BOXER_HPP
#define TURNCLOTH_MAKING_DETAIL_BOXER_HPP

#include <turncloth/making/box_found.hpp>
#include <turncloth/making/detail/box_model.hpp>
#include <turncloth/making/detail/described.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class boxer {
public:
    boxer(const making<Unit>& design, const flat_model<Unit>& model, const box_model<Unit>& work)
        : design_(design), model_(model), work_(work) {}

    boxed<Unit> run() {
        for (std::size_t c = 0; c < design_.creases().size(); ++c)
            look_for_seam(c);
        if (design_.seams().empty())
            return std::move(made_);
        for (std::size_t i = 0; i < design_.seams().size(); ++i)
            note_seam(i);
        find_openings();
        find_boxes();
        for (const boxed_work::box_gap& g : work_.walked().gaps())
            note_gap(g);
        look_for_clips();
        look_for_openings();
        for (std::size_t c = 0; c < design_.all_contents().size(); ++c)
            put_in(c);
        for (std::size_t c = 0; c < design_.compartments().size(); ++c)
            hold(c);
        return std::move(made_);
    }

    /// The box that a part belongs to, if any.
    std::optional<std::size_t> box_of(const cut_part& p) const {
        for (const boxed_work::box_cell& c : work_.walked().cells())
            if (c.placed && model_.part_of(c.part) == p)
                return c.box;
        return {};
    }

    /// Whether it is the inside of a box.
    bool is_boxed(const compartment<Unit>& c) const {
        const auto one = box_of(c.between[0]);
        return one && one == box_of(c.between[1]);
    }

private:
    using whole = boxed_work::whole;
    using point = boxed_work::point;
    using seam_line = boxed_work::seam_line;
    using triple = std::array<length<Unit>, 3>;

    void fault_is(std::string sentence, refusal facts) {
        made_.faults.push_back({std::move(sentence), std::move(facts)});
    }
    length<Unit> long_(whole w) const { return model_.length_of_whole(w); }
    static operation seam(std::size_t i) { return {operation_kind::seam, i}; }
    std::string name(std::size_t part) const { return name_of(design_, model_.part_of(part)); }

    void look_for_seam(std::size_t c) {
        const crease<Unit>& made = design_.creases()[c];
        if (made.turn == turning::quarter && work_.parts()[model_.number_of(made.on())].ends.empty())
            fault_is(described(design_, operation{operation_kind::crease, c}) +
                         ", is to stand at a quarter turn, and no seam holds it so",
                     {.kind = fault::unsuitable, .what = "a crease", .index = c, .where = name_of(design_, made.on())});
    }
    void note_seam(std::size_t i) {
        std::int64_t member = 0;
        for (const auto& r : work_.runs(i)) {
            const boxed_work::seam_pair& p = work_.pairs()[r.pair];
            made_.sewn.push_back(
                {seam(i), member++, model_.part_of(p.one.part), model_.part_of(p.other.part), long_(r.sewn)});
        }
        const seam_of<Unit>& s = design_.seams()[i];
        for (std::size_t k = 0; k < s.one.size(); ++k) {
            const seam_line one = work_.line(s.one[k]), other = work_.line(s.other[k]);
            const length<Unit> a = own_length(s.one[k]), b = own_length(s.other[k]);
            if (a != b)
                made_.marks.push_back({seam(i), static_cast<std::int64_t>(k), b < a, s.taken_up,
                                       even_mapping<Unit>(std::max(a, b), std::min(a, b), s.spans, s.graduation)});
            if (one.long_() != other.long_() && !s.lets_in())
                fault_is(described(design_, seam(i)) + " joins " + to_text(long_(one.long_())) + " to " +
                             to_text(long_(other.long_())) + " where another of its spans takes up as much as it can",
                         {.kind = fault::disagree,
                          .what = "the two sides of a seam",
                          .given = amount_of(long_(one.long_())),
                          .least = amount_of(long_(other.long_())),
                          .most = amount_of(long_(other.long_())),
                          .index = i,
                          .where = name(one.part)});
        }
    }
    length<Unit> own_length(const chalk_line<Unit>& l) const {
        return l.end_on(design_.parts()[l.on.index]) - l.begin();
    }

    void find_openings() {
        for (std::size_t m = 0; m < design_.mouths().size(); ++m)
            for (const auto& o : work_.openings())
                if (o.mouth == m) {
                    made_.openings.push_back({{m}, seam(work_.pairs()[o.pair].seam), long_(work_.opening(m))});
                    break;
                }
    }

    static std::array<int, 3> axis(const point& p) {
        return {static_cast<int>(p.x), static_cast<int>(p.y), static_cast<int>(p.z)};
    }
    void find_boxes() {
        for (const boxed_work::box_extent& b : work_.walked().boxes())
            made_.boxes.push_back(
                {{}, long_(b.high.x - b.low.x), long_(b.high.y - b.low.y), long_(b.high.z - b.low.z), b.open});
        for (const boxed_work::box_cell& c : work_.walked().cells()) {
            if (!c.placed)
                continue;
            const point at = c.stands.how({c.own.left, c.own.top});
            made_.boxes[c.box].faces.push_back({model_.part_of(c.part),
                                                model_.length_along(c.part, true, c.own.left),
                                                model_.length_along(c.part, false, c.own.top),
                                                model_.length_along(c.part, true, c.own.right),
                                                model_.length_along(c.part, false, c.own.bottom),
                                                axis(c.stands.how.right),
                                                axis(c.stands.how.down),
                                                axis(c.stands.how.out),
                                                {long_(at.x), long_(at.y), long_(at.z)}});
        }
    }

    /// Along the axis in which the two are furthest apart.
    void note_gap(const boxed_work::box_gap& g) {
        const std::size_t i = work_.pairs()[g.pair].seam;
        const std::string where = name(g.part), what = described(design_, seam(i));
        if (g.by == boxed_work::nowhere || g.otherwise)
            return fault_is(what + " does not close: " + where + " is turned otherwise there" +
                                (g.by == boxed_work::nowhere
                                     ? std::string()
                                     : ", than by " + described(design_, seam(work_.pairs()[g.by].seam))),
                            {.kind = fault::disagree, .what = "a seam that closes a box", .index = i, .where = where});
        const auto along = [](const point& p, int k) { return k == 0 ? p.x : k == 1 ? p.y : p.z; };
        const auto size = [](whole w) { return w < 0 ? -w : w; };
        int axis = 0;
        for (const int k : {1, 2})
            if (size(along(g.apart, k)) > size(along(g.apart, axis)))
                axis = k;
        const whole is = along(g.at_pair, axis) - along(g.at_by, axis), to_be = is - along(g.apart, axis);
        fault_is(where + " does not close the box: from the seam along its " + edge_of(g.by, g.part) +
                     " edge to the end of that along its " + edge_of(g.pair, g.part) + " edge it measures " +
                     to_text(long_(size(is))) + ", and what it is sewn to measures " + to_text(long_(size(to_be))),
                 {.kind = fault::disagree,
                  .what = "a seam that closes a box",
                  .given = amount_of(long_(size(is))),
                  .least = amount_of(long_(size(to_be))),
                  .most = amount_of(long_(size(to_be))),
                  .index = i,
                  .where = where});
    }

    std::string edge_of(std::size_t pair, std::size_t part) const {
        const boxed_work::seam_pair& p = work_.pairs()[pair];
        const seam_line& l = p.other.part == part ? p.other : p.one;
        return std::string(
            name_of(l.level ? (l.toward < 0 ? edge::top : edge::bottom) : (l.toward < 0 ? edge::left : edge::right)));
    }

    /// A strip that is sewn on across one of its quarter creases, to lines that meet at a corner, is clipped there.
    void look_for_clips() {
        const auto& pairs = work_.pairs();
        for (std::size_t j = 0; j < pairs.size(); ++j)
            for (std::size_t k = 0; k < pairs.size(); ++k)
                for (const bool one : {true, false}) {
                    const seam_line &before = one ? pairs[j].one : pairs[j].other,
                                    &after = one ? pairs[k].one : pairs[k].other;
                    const seam_line &to = one ? pairs[j].other : pairs[j].one,
                                    &then = one ? pairs[k].other : pairs[k].one;
                    if (before.same_line(after) && before.ends == after.begins && to.part == then.part &&
                        to.level != then.level && !is_clipped(before))
                        refuse_corner(before, pairs[j].seam);
                }
    }
    bool is_clipped(const seam_line& l) const {
        return std::any_of(design_.snips().begin(), design_.snips().end(), [&](const snip<Unit>& s) {
            const seam_line cut = work_.line(s.at);
            return cut.part == l.part && cut.level != l.level && cut.at == l.ends &&
                   (l.toward < 0 ? cut.begins < l.at : cut.ends > l.at);
        });
    }
    void refuse_corner(const seam_line& l, std::size_t i) {
        const length<Unit> along = model_.length_along(l.part, l.level, l.ends);
        fault_is(
            described(design_, seam(i)) + ", goes round a corner " + to_text(along) + " along " + name(l.part) +
                ", and the allowance is not clipped there",
            {.kind = fault::missing, .what = "a clip", .given = amount_of(along), .index = i, .where = name(l.part)});
    }

    /// A mouth on a piece of it, as a zipper in one of its faces, opens a box too.
    void look_for_openings() {
        for (std::size_t b = 0; b < made_.boxes.size(); ++b) {
            const auto is_of = [&](const mouth<Unit>& m) {
                return std::any_of(m.at.begin(), m.at.end(), [&](const auto& l) { return box_of(l.on) == b; });
            };
            const std::string of = name_of(design_, made_.boxes[b].faces.front().of);
            if (!made_.boxes[b].open && std::none_of(design_.mouths().begin(), design_.mouths().end(), is_of))
                fault_is("the box of " + of + " is sewn up all round, and has no opening to turn it out through",
                         {.kind = fault::missing, .what = "an opening", .index = b, .where = of});
        }
    }

    /// Round the opening: both sides of a slit in a seam; of a rim, all the lines that go round it.
    length<Unit> loop_of(std::size_t mouth) const {
        if (const whole slit = work_.opening(mouth); slit > 0)
            return long_(slit) * 2;
        length<Unit> sum;
        for (const chalk_line<Unit>& l : design_.mouths()[mouth].at)
            sum += own_length(l);
        return sum;
    }

    static triple sorted(triple t) {
        std::sort(t.begin(), t.end());
        return t;
    }

    /// What is put in goes end on: its section is its two smaller sides. Folded in half it is half as wide and twice as
    /// thick.
    void put_in(std::size_t index) {
        const contents<Unit>& c = design_.all_contents()[index];
        if (!is_boxed(design_.compartments()[c.into.index]))
            return;
        const length<Unit> nothing;
        const auto squeezed = [&](const length<Unit>& l) { return std::max(l - c.squeezed, nothing); };
        triple size = sorted({c.width, c.height, c.depth});
        passage<Unit> best{index, 0, squeezed(size[0]) + squeezed(size[1]), loop_of(c.by.index) / 2};
        for (std::int64_t k = 1; k <= c.folds && !best.passes(); ++k) {
            size = sorted({size[0] * 2, size[1] / 2, size[2]});
            if (const length<Unit> needs = squeezed(size[0]) + squeezed(size[1]); needs < best.needs) {
                best.needs = needs;
                best.folded = k;
            }
        }
        made_.passages.push_back(best);
        if (!best.passes())
            fault_is(c.what + " cannot pass \"" + design_.mouths()[c.by.index].name + "\": it needs an opening of " +
                         to_text(best.needs) + ", and that one is " + to_text(best.has),
                     {.kind = fault::no_room,
                      .what = "an opening",
                      .given = amount_of(best.needs),
                      .most = amount_of(best.has),
                      .index = index,
                      .where = c.what});
        fill(c, index);
    }
    std::size_t shell_of(const cut_part& p) const {
        for (const boxed_work::box_cell& c : work_.walked().cells())
            if (c.placed && model_.part_of(c.part) == p)
                return c.shell;
        return boxed_work::nowhere;
    }
    /// Across, down and through what it is between: the lining alone where both its walls are of that.
    triple inside_of(const compartment<Unit>& c) const {
        const std::size_t shell = shell_of(c.between[0]);
        const boxed_work::box_extent& b = shell == shell_of(c.between[1])
                                              ? work_.walked().shells()[shell]
                                              : work_.walked().boxes()[*box_of(c.between[0])];
        return {long_(b.high.x - b.low.x), long_(b.high.y - b.low.y), long_(b.high.z - b.low.z)};
    }
    void fill(const contents<Unit>& c, std::size_t index) {
        const triple inside = sorted(inside_of(design_.compartments()[c.into.index])),
                     size = sorted({c.width, c.height, c.depth});
        for (std::size_t k = 0; k < 3; ++k)
            if (size[k] - c.squeezed > inside[k])
                return fault_is(c.what + " is larger than the box, squeezed too: " + to_text(size[k]) + " goes into " +
                                    to_text(inside[k]),
                                {.kind = fault::too_large,
                                 .what = "a filling",
                                 .given = amount_of(size[k]),
                                 .most = amount_of(inside[k]),
                                 .index = index,
                                 .where = c.what});
    }

    /// What it must hold against the inside of the box, as that lies before you.
    void hold(std::size_t index) {
        const compartment<Unit>& c = design_.compartments()[index];
        if (!is_boxed(c))
            return;
        const std::size_t box = *box_of(c.between[0]);
        const triple inside = inside_of(c);
        refuse_leak(c, index, work_.walked().boxes()[box].open_part);
        if (c.least_width > inside[0] || c.least_height > inside[1] || c.least_depth > inside[2])
            fault_is("the compartment \"" + c.name + "\" does not hold " + size_of(c.least_width, c.least_height) +
                         " x " + to_text(c.least_depth) + ": inside it is " + size_of(inside[0], inside[1]) + " x " +
                         to_text(inside[2]),
                     {.kind = fault::no_room, .what = "a compartment", .index = index, .where = c.name});
    }
    /// All of its mouths are left open in seams, and an edge is sewn to nothing besides: no rim was meant.
    void refuse_leak(const compartment<Unit>& c, std::size_t index, std::size_t open_part) {
        const auto in_seam = [&](const mouth_handle& m) { return work_.opening(m.index) > 0; };
        if (open_part != boxed_work::nowhere && !c.mouths.empty() &&
            std::all_of(c.mouths.begin(), c.mouths.end(), in_seam))
            fault_is("the compartment \"" + c.name + "\" opens at more than its mouths: an edge of " + name(open_part) +
                         " is sewn to nothing",
                     {.kind = fault::missing, .what = "a seam", .index = index, .where = name(open_part)});
    }
    static std::string size_of(length<Unit> w, length<Unit> h) { return number_text(w) + " x " + number_text(h); }

    const making<Unit>& design_;
    const flat_model<Unit>& model_;
    const box_model<Unit>& work_;
    boxed<Unit> made_{};
};

} // namespace turncloth::detail

#endif
