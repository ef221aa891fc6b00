// The work as it lies on the table while a design is carried out: every ply, thread and hole, from the bottom up.
//
//   table_work<U>(design)              .carry_out(operation), one after another, in the order of steps_of
//     .plies(part)                     the stack that holds the part: plies_lying<U>
//     .in_sight(part)                  the same stack as patches (lying.hpp)
//     .extent(part)  .up(part)  .on_table(part, edge)      where a part lies, which face up, where an edge of it is
//     .lies(seen_edge)                 an edge as it is folded, or as it was cut, wherever that is turned to
//     .line(chalk_line)                where a line of a part lies
//     .turned_by(crease)               the edge that a crease is about to turn, and where that comes to lie
//
//   table_work<inch> table(roll);
//   for (const making_step& s : steps_of(roll)) table.carry_out(s.what);
//   table.plies(outer).plies.size();
//
// A thread lies on every ply that it was sewn through and moves with the cloth, as do spots and slits.
#ifndef TURNCLOTH_MAKING_ON_TABLE_HPP
#define TURNCLOTH_MAKING_ON_TABLE_HPP

#include <turncloth/making/detail/sight.hpp>
#include <turncloth/making/lying.hpp>
#include <turncloth/making/work_step.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace turncloth {

/// x to the right, y down, on the table.
template <length_unit Unit>
struct table_point {
    length<Unit> x{}, y{};
    friend bool operator==(const table_point&, const table_point&) = default;
};
template <length_unit Unit>
struct table_area {
    length<Unit> left{}, top{}, right{}, bottom{};
    friend bool operator==(const table_area&, const table_area&) = default;
};
template <length_unit Unit>
struct table_segment {
    table_point<Unit> from{}, to{};
};

/// An edge, and toward which side of the table it looks.
template <length_unit Unit>
struct edge_lying {
    table_segment<Unit> at{};
    edge toward = edge::top;
};

/// One thickness of one part: convex, its corners in order round.
template <length_unit Unit>
struct ply_lying {
    cut_part of{};
    face up = face::right;
    std::vector<table_point<Unit>> corners{};
    std::vector<bool> folded{}; ///< of the side that begins at each corner; otherwise a cut edge
    std::vector<table_area<Unit>> holes{};
};

/// Of a row or a spot, on one ply.
template <length_unit Unit>
struct thread_lying {
    operation what{};
    std::int64_t member = 0; ///< of a family, from 0
    std::size_t ply = 0;
    table_segment<Unit> at{}; ///< from and to are one for a spot
};

template <length_unit Unit>
struct plies_lying {
    std::vector<ply_lying<Unit>> plies{}; ///< from the bottom up
    std::vector<thread_lying<Unit>> threads{}, spots{};
    /// A piece that is to be fitted is given at the length that it is fitted to; by itself it is so many times as long.
    fraction across = 1, down = 1;
};

/// What a crease turns: its outermost edge, or corner, before and after.
template <length_unit Unit>
struct turned_cloth {
    table_segment<Unit> before{}, after{};
};

/// A step costs what it does while a design is carried out (design.hpp). What is asked of a part grows with the plies of its
/// stack: times the rows and spots sewn so far for `plies`, and with the patches besides for `in_sight`.
template <length_unit Unit>
class table_work {
public:
    /// Throws as steps_of; the design outlives this.
    explicit table_work(const making<Unit>& design)
        : design_(&design), model_(design), bench_(model_.flat()), laid_(model_.count(), false) {}
    table_work(const table_work&) = delete; // the workbench looks into the model
    table_work& operator=(const table_work&) = delete;
    table_work(table_work&&) = delete;
    table_work& operator=(table_work&&) = delete;
    ~table_work() = default;

    void carry_out(const operation& o) {
        std::size_t piece = 0;
        if (o.kind == operation_kind::laying) {
            piece = model_.number_of(design_->layings()[o.index].piece);
            laid_[piece] = true;
        }
        if (o.kind == operation_kind::stitching)
            sew(o);
        if (o.kind == operation_kind::spot)
            pierce(o);
        detail::carry_out(bench_, o, piece);
    }

    plies_lying<Unit> plies(const cut_part& of) const {
        const std::size_t number = model_.number_of(of);
        const detail::flat_work::stack& lies = bench_.stack_of(number);
        plies_lying<Unit> made;
        for (const detail::flat_work::ply& p : lies.plies)
            made.plies.push_back(ply_of(p));
        add_needles(made.threads, threads_, lies);
        add_needles(made.spots, spots_, lies);
        const bool alone = std::all_of(lies.plies.begin(), lies.plies.end(),
                                       [&](const detail::flat_work::ply& p) { return p.part == lies.plies[0].part; });
        if (alone && !laid_[number]) {
            made.across = own_scale(number, true);
            made.down = own_scale(number, false);
        }
        return made;
    }
    lying<Unit> in_sight(const cut_part& of) const {
        return detail::lying_of(model_, detail::flat_work::lazy_cells<detail::for_any<Unit>>(
                                            bench_.stack_of(model_.number_of(of)), bench_.holes(), {}));
    }

    /// The upright rectangle round it.
    table_area<Unit> extent(const cut_part& of) const {
        const std::size_t number = model_.number_of(of);
        return area(detail::flat_work::extent(bench_.stack_of(number), number));
    }
    face up(const cut_part& of) const { return how(of).right_up() ? face::right : face::wrong; }
    /// On which side of the table an edge of it lies.
    edge on_table(const cut_part& of, edge own) const { return detail::flat_work::on_table(own, how(of)); }
    /// The outermost of its part; or the cut edge, where that is named and what lies outermost is a fold.
    edge_lying<Unit> lies(const seen_edge& e) const {
        const std::size_t number = model_.number_of(e.of);
        const detail::flat_work::stack& stack = bench_.stack_of(number);
        const detail::flat_work::bounds b = detail::flat_work::extent(stack, number);
        const detail::flat_work::lazy_sight<detail::for_any<Unit>> sight{stack, model_.flat()};
        const edge toward = on_table(e.of, e.side);
        if (!e.folded && sight.outermost(number, toward, how(e.of))->folded)
            if (const auto cut = sight.as_cut(number, e.side); !cut.run.is_nothing())
                return {segment(is_level(cut.toward), cut.at, cut.run), cut.toward};
        return {segment(is_level(toward), at_edge(b, toward),
                        is_level(toward) ? detail::flat_work::stretch{b.left, b.right}
                                         : detail::flat_work::stretch{b.top, b.bottom}),
                toward};
    }
    bool in_one_stack(const cut_part& a, const cut_part& b) const {
        return &bench_.stack_of(model_.number_of(a)) == &bench_.stack_of(model_.number_of(b));
    }

    /// As far as it begins and ends, or the part's cloth does; nothing where the line runs inside no cloth of the part.
    std::optional<table_segment<Unit>> line(const chalk_line<Unit>& l) const {
        const detail::flat_work::flat_line own = model_.line(l, l.in);
        const detail::flat_work::stack& lies = bench_.stack_of(own.part);
        const auto on = detail::flat_work::widest_ply(lies, own.part, own.at);
        const detail::flat_work::lie lie = on ? lies.plies[*on].how : how(l.on);
        const detail::flat_work::stretch run = stretch_of(own, model_.flat().parts[own.part]);
        const auto end = [&](detail::flat_work::whole v) {
            return point(
                lie(own.at.level ? detail::flat_work::spot{v, own.at.at} : detail::flat_work::spot{own.at.at, v}));
        };
        return table_segment<Unit>{end(run.from), end(run.to)};
    }

    /// Throws making_error (missing) where the crease turns nothing as the work lies.
    turned_cloth<Unit> turned_by(const operation& o) const {
        const auto line = bench_.line_of_crease(o.index);
        if (!line)
            detail::refuse<making_error>(described(*design_, o) + " turns nothing as the work lies",
                                         refusal{.kind = fault::missing, .what = "a fold", .index = o.index});
        const std::size_t part = model_.number_of(design_->creases()[o.index].on());
        whole most = 0;
        detail::flat_work::bounds far{};
        for (const detail::flat_work::ply& p : bench_.stack_of(part).plies)
            for (const detail::flat_work::spot& at : p.area) {
                const whole past = line->past(at);
                if (p.part != part || past < most)
                    continue;
                far = past > most ? detail::flat_work::bounds{at.x, at.y, at.x, at.y}
                                  : detail::flat_work::bounds{std::min(far.left, at.x), std::min(far.top, at.y),
                                                              std::max(far.right, at.x), std::max(far.bottom, at.y)};
                most = past;
            }
        const auto mirror = mirror_in(*line);
        return {{point({far.left, far.top}), point({far.right, far.bottom})},
                {point(mirror({far.left, far.top})), point(mirror({far.right, far.bottom}))}};
    }

private:
    using whole = detail::flat_work::whole;
    struct needle {
        operation what{};
        std::int64_t member = 0;
        std::size_t part = 0;
        detail::flat_work::spot from{}, to{}; ///< in the part's own spots
    };

    void sew(const operation& o) {
        const auto [first, end] = model_.rows_of(o.index);
        for (std::size_t i = first; i < end; ++i) {
            const detail::flat_work::sewn_row met = bench_.sew(i).first;
            for (const detail::flat_work::sewn_span& s : met.spans)
                for (const auto& p : s.plies) {
                    const detail::flat_work::lie back = inverse(met.how(p));
                    const auto own = [&](whole v) {
                        return back(met.at.level ? detail::flat_work::spot{v, met.at.at}
                                                 : detail::flat_work::spot{met.at.at, v});
                    };
                    threads_.push_back({o, static_cast<std::int64_t>(i - first), p.part, own(s.from), own(s.to)});
                }
        }
    }
    void pierce(const operation& o) {
        const auto [first, end] = model_.spots_of(o.index);
        for (std::size_t i = first; i < end; ++i) {
            const detail::flat_work::flat_spot& s = model_.flat().spots[i];
            const detail::flat_work::spot there = bench_.body_of(s.part)->how(s.at);
            for (const detail::flat_work::ply& p : bench_.stack_of(s.part).plies)
                if (bench_.covers(p, there)) {
                    const detail::flat_work::spot own = inverse(p.how)(there);
                    spots_.push_back({o, static_cast<std::int64_t>(i - first), p.part, own, own});
                }
        }
    }

    const detail::flat_work::lie& how(const cut_part& p) const { return bench_.body_of(model_.number_of(p))->how; }
    table_point<Unit> point(const detail::flat_work::spot& p) const {
        return {model_.length_of_whole(p.x), model_.length_of_whole(p.y)};
    }
    table_segment<Unit> segment(bool level, whole at, const detail::flat_work::stretch& run) const {
        return level ? table_segment<Unit>{point({run.from, at}), point({run.to, at})}
                     : table_segment<Unit>{point({at, run.from}), point({at, run.to})};
    }
    table_area<Unit> area(const detail::flat_work::bounds& b) const {
        return {model_.length_of_whole(b.left), model_.length_of_whole(b.top), model_.length_of_whole(b.right),
                model_.length_of_whole(b.bottom)};
    }
    /// What a length that it is fitted to is by itself, along the table.
    fraction own_scale(std::size_t part, bool along_level) const {
        const bool turned = bench_.body_of(part)->how.xx == 0;
        constexpr whole some = 1;
        return model_.length_along(part, along_level != turned, some).value() / model_.length_of_whole(some).value();
    }

    ply_lying<Unit> ply_of(const detail::flat_work::ply& p) const {
        ply_lying<Unit> made{.of = model_.part_of(p.part), .up = p.how.right_up() ? face::right : face::wrong};
        const detail::flat_work::flat_part& part = model_.flat().parts[p.part];
        const detail::flat_work::lie back = inverse(p.how);
        for (std::size_t i = 0; i < p.area.size(); ++i) {
            const auto &a = back(p.area[i]), &b = back(p.area[i + 1 == p.area.size() ? 0 : i + 1]);
            const bool cut =
                (a.x == b.x && (a.x == 0 || a.x == part.width)) || (a.y == b.y && (a.y == 0 || a.y == part.height));
            made.corners.push_back(point(p.area[i]));
            made.folded.push_back(!cut);
        }
        const auto round = bounds_of(p.area);
        for (const detail::flat_work::bounds& own : bench_.holes_of(p.part))
            if (const auto hole = carried(own, p.how); reaches(hole, round))
                made.holes.push_back(area(hole));
        return made;
    }
    /// One that is cut open only has no width.
    static bool reaches(const detail::flat_work::bounds& a, const detail::flat_work::bounds& b) {
        return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
    }

    /// Each on the ply of its part that it lies on now: a row is cut where the ply ends.
    void add_needles(std::vector<thread_lying<Unit>>& to, const std::vector<needle>& all,
                     const detail::flat_work::stack& lies) const {
        for (std::size_t i = 0; i < lies.plies.size(); ++i) {
            const detail::flat_work::ply& p = lies.plies[i];
            for (const needle& n : all) {
                if (n.part != p.part)
                    continue;
                const auto a = p.how(n.from), b = p.how(n.to);
                if (n.from == n.to) {
                    if (bench_.covers(p, a))
                        to.push_back({n.what, n.member, i, {point(a), point(a)}});
                    continue;
                }
                const bool level = a.y == b.y;
                const auto in = within(p.area, {level, level ? a.y : a.x});
                const whole low = level ? std::min(a.x, b.x) : std::min(a.y, b.y),
                            high = level ? std::max(a.x, b.x) : std::max(a.y, b.y), from = std::max(low, in.from),
                            until = std::min(high, in.to);
                if (from < until)
                    to.push_back({n.what, n.member, i,
                                  level ? table_segment<Unit>{point({from, a.y}), point({until, a.y})}
                                        : table_segment<Unit>{point({a.x, from}), point({a.x, until})}});
            }
        }
    }

    const making<Unit>* design_;
    detail::flat_model<Unit> model_;
    detail::flat_work::lazy_workbench<detail::for_any<Unit>> bench_;
    std::vector<bool> laid_;
    std::vector<needle> threads_{}, spots_{};
};

} // namespace turncloth

#endif
