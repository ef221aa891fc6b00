// A design carried out, step by step: what each row met, what each compartment came to be, and all that is wrong.
//
//   execute(design)        an executed<U>: steps, rows, spots, spaces, faults
//   row_met<U>             a row as it was sewn: how long it was then, through how many layers, which walls it met
//   spot_met               the layers under a spot
//   space_found<U>         a stated compartment: where it opens, and how tall it is at the width that it must have
//   .boxed                 what seams make in space: box_found.hpp
//
//   const executed<inch> made = execute(roll);
//   for (const making_fault& f : made.faults) std::puts(f.sentence.c_str());
//
// Flat work lies in stacks; what seams join is placed in space besides. A compartment whose two walls are of one box is
// judged by the inside of the box. Nothing that is found wrong stops the rest from being looked at; a design that has no
// order is refused by steps_of.
#ifndef TURNCLOTH_MAKING_EXECUTED_HPP
#define TURNCLOTH_MAKING_EXECUTED_HPP

#include <turncloth/making/boxed.hpp>
#include <turncloth/making/detail/held.hpp>
#include <turncloth/making/detail/hollows.hpp>
#include <turncloth/making/detail/raw_edges.hpp>
#include <turncloth/making/detail/seam_layers.hpp>
#include <turncloth/making/detail/short_ties.hpp>
#include <turncloth/making/detail/zipped_seams.hpp>
#include <turncloth/making/order.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct row_met {
    operation what{};
    std::int64_t member = 0;         ///< of a family, from 0
    length<Unit> sewn{};             ///< as long as it was at that moment, its overrun left out
    std::size_t least = 0, most = 0; ///< layers along it
    std::vector<cut_part> walls{};   ///< all that it went through
    std::vector<cut_part> touched{}; ///< whose cloth ends or is folded exactly on it, so that it does not hold them
};

struct spot_met {
    operation what{};
    std::int64_t member = 0;
    std::vector<cut_part> layers{}; ///< from the bottom up, a part once for each of its layers
};

template <length_unit Unit>
struct opening_found {
    length<Unit> wide{};
    std::vector<mouth_handle> mouths{};   ///< none: it leaks
    bool into_another = false;            ///< into another hollow, not outside
    length<Unit> from_left{}, from_top{}; ///< its middle, from the cut edges of the compartment's first wall
};

template <length_unit Unit>
struct space_found {
    compartment_handle what{};
    std::int64_t member = 0;
    std::size_t hollow = 0; ///< compartments of one number share a hollow
    std::vector<opening_found<Unit>> openings{};
    length<Unit> tallest{}; ///< away from its mouth, at its least width
};

template <length_unit Unit>
struct executed {
    std::vector<making_step> steps{};
    std::vector<row_met<Unit>> rows{};
    std::vector<spot_met> spots{};
    std::vector<space_found<Unit>> spaces{};
    turncloth::boxed<Unit> boxed{};
    std::vector<making_fault> faults{}; ///< those of `boxed` too
    /// Edges of cloth that frays, left raw in sight or held by no row: it can be made so, and is seldom meant.
    std::vector<making_fault> raw_edges{};
    std::size_t gaps = 0; ///< what the work of finding hollows grows with
};

namespace detail {

template <length_unit Unit>
class executor {
    using hollows = flat_work::lazy_hollows<for_any<Unit>>;

public:
    explicit executor(const making<Unit>& design)
        : design_(design), model_(design), bench_(model_.flat()), held_(model_.count()) {
        made_.steps = step_maker<Unit>(design, model_, boxed_).steps();
    }

    executed<Unit> run() {
        laid_.assign(model_.count(), false);
        made_.boxed = boxer_.run();
        made_.faults = made_.boxed.faults;
        for (const making_step& s : made_.steps)
            carry_out(s.what);
        for (making_fault& f : zipped_seams<Unit>(design_, model_, bench_, sewn_).faults())
            made_.faults.push_back(std::move(f));
        for (making_fault& f : short_ties(design_, model_, bench_))
            made_.faults.push_back(std::move(f));
        find_spaces();
        made_.raw_edges = detail::raw_edges<Unit>(design_, model_, bench_, sewn_).found();
        return std::move(made_);
    }

private:
    using whole = flat_work::whole;
    /// A stack, and for each of its hollows which of the spaces found is in it, counted from 1; 0 where none is yet.
    struct flooded {
        hollows in;
        std::vector<std::uint32_t> space_in;
        flooded(const flat_work::lazy_workbench<for_any<Unit>>& bench, std::size_t root,
                const std::vector<flat_work::sewn_row>& rows, const std::vector<flat_work::stated_mouth>& mouths,
                whole lips)
            : in(bench, root, rows, mouths, lips), space_in(in.all().count()) {}
    };

    void fault_is(std::string sentence, refusal facts) {
        made_.faults.push_back({std::move(sentence), std::move(facts)});
    }
    std::string name(std::size_t part) const { return name_of(design_, model_.part_of(part)); }

    void carry_out(const operation& o) {
        switch (o.kind) {
        case operation_kind::laying: {
            const std::size_t piece = model_.number_of(design_.layings()[o.index].piece);
            laid_[piece] = true;
            return note(o, bench_.lay(piece));
        }
        case operation_kind::crease:
            return fold(o);
        case operation_kind::snip:
            return note(o, bench_.snip(o.index));
        case operation_kind::spot:
            return pierce(o);
        case operation_kind::stitching:
            return sew(o);
        case operation_kind::seam:
            return join(o);
        case operation_kind::handwork:
        case operation_kind::moment:
        case operation_kind::opening:
            return;
        }
    }

    /// What only lies on another slips as it is folded back: a row that was to hold it is missing.
    void fold(const operation& o) {
        const std::size_t piece = model_.number_of(design_.creases()[o.index].on()), on = model_.flat().parts[piece].on;
        if (laid_[piece] && !held_.together(piece, on))
            fault_is(described(design_, o) + " turns it where it lies, and no row holds it to " + name(on) + " yet",
                     {.kind = fault::missing, .what = "a row", .index = o.index, .where = name(piece)});
        note(o, bench_.crease(o.index));
    }

    void note(const operation& o, const flat_work::work_problem& p) {
        if (p.what == flat_work::work_fault::none)
            return;
        refusal facts{
            .kind = fault::unsuitable, .what = described(design_, o), .index = o.index, .where = name(p.part)};
        const std::string& what = facts.what;
        switch (p.what) {
        case flat_work::work_fault::no_cloth:
            return fault_is(what + " runs along no cloth of " + name(p.part) + " as it lies then", facts);
        case flat_work::work_fault::off_cloth:
            facts.kind = fault::no_room;
            facts.given = amount_of(model_.length_of_whole(p.asked.to - p.asked.from));
            facts.most = amount_of(model_.length_of_whole(p.there.to - p.there.from));
            return fault_is(what + " begins or ends where no cloth of " + name(p.part) + " lies then", facts);
        case flat_work::work_fault::turns_all:
            return fault_is(what + " turns nothing, or all there is", facts);
        case flat_work::work_fault::laid_twice:
            return fault_is(what + " comes when it lies there already", facts);
        case flat_work::work_fault::not_met:
            facts.kind = fault::missing;
            return fault_is(what + " was to go through " + name(p.part) + " and does not meet it", facts);
        case flat_work::work_fault::too_many:
            facts.kind = fault::disagree;
            return fault_is(what + " goes through " + name(p.part) + ", and was not to", facts);
        case flat_work::work_fault::none:
            return;
        }
    }

    void sew(const operation& o) {
        const auto [first, end] = model_.rows_of(o.index);
        for (std::size_t i = first; i < end; ++i) {
            auto [met, wrong] = bench_.sew(i);
            for (const flat_work::work_problem& p : wrong)
                note(o, p);
            const flat_work::flat_line& l = model_.flat().rows[i].along;
            row_met<Unit> row{o, static_cast<std::int64_t>(i - first), length_sewn(l, met.run), 0, 0, {}, {}};
            for (const flat_work::sewn_span& span : met.spans) {
                for (const auto& p : span.plies)
                    held_.join(span.plies.front().part, p.part);
                row.most = std::max(row.most, span.plies.size());
                row.least = row.least == 0 ? span.plies.size() : std::min(row.least, span.plies.size());
                for (const auto& p : span.plies)
                    if (const cut_part wall = model_.part_of(p.part);
                        std::find(row.walls.begin(), row.walls.end(), wall) == row.walls.end())
                        row.walls.push_back(wall);
            }
            for (const std::size_t p : met.touched)
                row.touched.push_back(model_.part_of(p));
            made_.rows.push_back(std::move(row));
            sewn_of_.push_back(o);
            sewn_.push_back(std::move(met));
        }
    }
    /// Right sides together: the layers of both pieces as they are then.
    void join(const operation& o) {
        const seam_of<Unit>& s = design_.seams()[o.index];
        row_met<Unit> row{o, 0, {}, 0, 0, {}, {}};
        for (std::size_t k = 0; k < s.one.size(); ++k) {
            const flat_work::layers there = layers_of_seam(model_, bench_, s, k);
            row.most = std::max(row.most, there.most);
            row.least = k == 0 ? there.least : std::min(row.least, there.least);
            held_.join(model_.number_of(s.one[k].on), model_.number_of(s.other[k].on));
            for (const cut_part& wall : {s.one[k].on, s.other[k].on})
                if (std::find(row.walls.begin(), row.walls.end(), wall) == row.walls.end())
                    row.walls.push_back(wall);
        }
        for (const seam_sewn<Unit>& run : made_.boxed.sewn)
            if (run.what == o) {
                row.member = run.member;
                row.sewn = run.sewn;
                made_.rows.push_back(row);
            }
    }
    length<Unit> length_sewn(const flat_work::flat_line& l, const flat_work::stretch& run) const {
        const whole w = run.to - run.from;
        return laid_[l.part] ? model_.length_of_whole(w) : model_.length_along(l.part, l.at.level, w);
    }

    void pierce(const operation& o) {
        const auto [first, end] = model_.spots_of(o.index);
        for (std::size_t i = first; i < end; ++i) {
            spot_met met{o, static_cast<std::int64_t>(i - first), {}};
            const std::vector<std::size_t> layers = bench_.pierce(i);
            for (const std::size_t p : layers) {
                held_.join(layers.front(), p);
                met.layers.push_back(model_.part_of(p));
            }
            for (const std::size_t wanted : model_.flat().spots[i].through)
                if (std::find(layers.begin(), layers.end(), wanted) == layers.end())
                    note(o, {flat_work::work_fault::not_met, wanted, {}, {}});
            made_.spots.push_back(std::move(met));
        }
    }

    /// Every stack is flooded once, if anything is stated of it.
    void find_spaces() {
        stacks_.resize(model_.count());
        for (std::size_t c = 0; c < design_.compartments().size(); ++c)
            for (std::int64_t k = 0; k < design_.compartments()[c].count; ++k)
                if (!boxer_.is_boxed(design_.compartments()[c]))
                    judge(c, k, flooded_with(model_.number_of(design_.compartments()[c].between[0])));
    }
    flooded& flooded_with(std::size_t part) {
        const std::size_t root = bench_.root_of(part);
        std::unique_ptr<flooded>& found = stacks_[root];
        if (found)
            return *found;
        found = std::make_unique<flooded>(bench_, root, sewn_, mouths(), model_.on_table(design_.lips()));
        made_.gaps += found->in.all().count();
        for (const std::size_t row : found->in.torn())
            fault_is(described(design_, sewn_of_[row]) + " is torn: what it held together lies apart at last",
                     {.kind = fault::disagree, .what = "a row", .index = sewn_of_[row].index});
        return *found;
    }
    std::vector<flat_work::stated_mouth> mouths() const {
        std::vector<flat_work::stated_mouth> all;
        for (std::size_t m = 0; m < design_.mouths().size(); ++m)
            for (const chalk_line<Unit>& l : design_.mouths()[m].at)
                all.push_back({model_.line(l, l.in), m, design_.mouths()[m].by == closed_by::zipper});
        return all;
    }

    bool width_is_level(const compartment<Unit>& c) const {
        return c.mouths.empty() || design_.mouths()[c.mouths[0].index].at.front().is_level();
    }
    std::string name_of_space(const compartment<Unit>& c, std::int64_t k) const {
        return "the compartment \"" + c.name + (c.count > 1 ? " " + std::to_string(k + 1) : "") + "\"";
    }

    void judge(std::size_t index, std::int64_t k, flooded& stack) {
        hollows& in = stack.in;
        const compartment<Unit>& c = design_.compartments()[index];
        const std::size_t part = model_.number_of(c.between[0]), other = model_.number_of(c.between[1]);
        const bool level = width_is_level(c);
        const length<Unit> step = c.step * fraction(k), nothing;
        const flat_work::spot own{model_.along(part, true, c.from_left + (level ? step : nothing)),
                                  model_.along(part, false, c.from_top + (level ? nothing : step))};
        const std::optional<std::size_t> there = in.gap_at(part, other, own);
        if (!there)
            return fault_is(name_of_space(c, k) + " is not there: no gap lies between " + name(part) + " and " +
                                name(other) + " at that place",
                            {.kind = fault::missing, .what = "a compartment", .index = index, .where = c.name});
        space_found<Unit> found{{index}, k, in.all().hollow_of(*there), {}, {}};
        one_hollow_each(found, stack, c);
        for (const flat_work::opening& o : in.openings(found.hollow))
            found.openings.push_back(opening_of(o, part));
        check_openings(found, c);
        if (c.least_width > nothing) {
            found.tallest = model_.length_of_whole(in.tallest(found.hollow, level, model_.on_table(c.least_width)));
            if (found.tallest < c.least_height || found.tallest == nothing)
                fault_is(name_of_space(c, k) + " does not hold " + to_text(c.least_width) + " x " +
                             to_text(c.least_height) + ": that wide, it is " + to_text(found.tallest) + " high",
                         {.kind = fault::no_room,
                          .what = "a compartment",
                          .given = amount_of(c.least_height),
                          .most = amount_of(found.tallest),
                          .index = index,
                          .where = c.name});
        }
        made_.spaces.push_back(std::move(found));
    }

    void one_hollow_each(const space_found<Unit>& found, flooded& stack, const compartment<Unit>& c) {
        std::uint32_t& space = stack.space_in[found.hollow];
        if (space == 0) {
            space = static_cast<std::uint32_t>(made_.spaces.size() + 1); // the next to be added
            return;
        }
        const space_found<Unit>& first = made_.spaces[space - 1];
        fault_is(name_of_space(c, found.member) + " is one hollow with " +
                     name_of_space(design_.compartments()[first.what.index], first.member),
                 {.kind = fault::repeated, .what = "a compartment", .index = found.what.index, .where = c.name});
    }

    opening_found<Unit> opening_of(const flat_work::opening& o, std::size_t part) const {
        opening_found<Unit> made;
        const flat_work::spot &a = o.at.from, &b = o.at.to;
        made.wide = model_.length_of_whole(std::max(std::max(a.x - b.x, b.x - a.x), std::max(a.y - b.y, b.y - a.y)));
        for (const std::size_t m : o.mouths)
            made.mouths.push_back({m});
        made.into_another = o.into_another;
        const flat_work::lie back = flat_work::inverse(bench_.body_of(part)->how);
        const flat_work::spot p = back(a), q = back(b);
        made.from_left = model_.length_of_whole(p.x + q.x) / 2;
        made.from_top = model_.length_of_whole(p.y + q.y) / 2;
        return made;
    }

    void check_openings(const space_found<Unit>& found, const compartment<Unit>& c) {
        const auto is_of = [&](const opening_found<Unit>& o, const mouth_handle& m) {
            return std::find(o.mouths.begin(), o.mouths.end(), m) != o.mouths.end();
        };
        for (const opening_found<Unit>& o : found.openings) {
            if (std::any_of(c.mouths.begin(), c.mouths.end(), [&](const mouth_handle& m) { return is_of(o, m); }))
                continue;
            fault_is(name_of_space(c, found.member) + (o.into_another ? " goes on into another hollow, " : " leaks ") +
                         to_text(o.wide) + " wide, " + to_text(o.from_left) + " from the left and " +
                         to_text(o.from_top) + " from the top of " + name_of(design_, c.between[0]),
                     {.kind = fault::disagree,
                      .what = "a compartment's mouths",
                      .given = amount_of(o.wide),
                      .index = found.what.index,
                      .where = c.name});
        }
        for (const mouth_handle& m : c.mouths)
            if (std::none_of(found.openings.begin(), found.openings.end(), [&](const auto& o) { return is_of(o, m); }))
                fault_is(name_of_space(c, found.member) + " is closed at its mouth \"" +
                             design_.mouths()[m.index].name + "\"",
                         {.kind = fault::missing, .what = "a mouth", .index = found.what.index, .where = c.name});
    }

    const making<Unit>& design_;
    flat_model<Unit> model_;
    flat_work::lazy_workbench<for_any<Unit>> bench_;
    box_model<Unit> boxed_{design_, model_};
    boxer<Unit> boxer_{design_, model_, boxed_};
    executed<Unit> made_{};
    std::vector<bool> laid_{};
    held held_;
    std::vector<flat_work::sewn_row> sewn_{};
    std::vector<operation> sewn_of_{};
    std::vector<std::unique_ptr<flooded>> stacks_{}; ///< by root
};

} // namespace detail

/// Throws as steps_of; what is found while it is made is in faults. What it costs, and the most of each thing: design.hpp.
template <length_unit Unit>
executed<Unit> execute(const making<Unit>& design) {
    design.require_sound();
    return detail::executor<Unit>(design).run();
}

TURNCLOTH_ONCE(executed<inch> execute(const making<inch>&));
TURNCLOTH_ONCE(executed<centimetre> execute(const making<centimetre>&));

} // namespace turncloth

#endif
