// What pieces do to their own edges, carried out as flat work: folds and rows of every finish that joins to nothing else,
// and the layers that are bound in.
//
//   class own_finishes<U>(project)
//     .parts()        what the steps name by number: the pieces, and the strips that bind some of them
//     .of(i)          the groups of steps for the i-th piece, copies together; none where it has nothing to turn
//
// A piece lies right side up and is turned to its wrong side; one with layers inside lies wrong side up and is brought
// round them.
#ifndef TURNCLOTH_SHEET_DETAIL_OWN_FINISHES_HPP
#define TURNCLOTH_SHEET_DETAIL_OWN_FINISHES_HPP

#include <turncloth/making/work_plan.hpp>
#include <turncloth/sheet/cloth_of.hpp>
#include <turncloth/sheet/detail/binding_said.hpp>
#include <turncloth/sheet/detail/edges.hpp>
#include <turncloth/sheet/detail/turn_of_cloth.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class own_finishes {
public:
    explicit own_finishes(const project<Unit>& p) : project_(p), design_(p.name()), of_(p.pieces().size()) {
        if (!p.sewings().empty())
            sewing_ = &p.sewings().front();
        for (const piece<Unit>& from : p.pieces())
            cut(from);
        for (std::size_t i = 0; i < p.pieces().size(); ++i)
            lay_inside(i);
        for (std::size_t i = 0; i < p.pieces().size(); ++i)
            for (const edge e : all_edges)
                if (!is_bound(p, at(i).name(), e))
                    finish_edge(i, e);
        for (const edge_binding<Unit>& b : p.bindings())
            bind(b);
        if (fits_)
            carry_out();
    }

    const std::vector<work_group<Unit>>& of(std::size_t piece) const { return of_[piece]; }
    std::vector<work_part> parts() const {
        std::vector<work_part> all;
        for (std::size_t i = 0; i < design_.parts().size(); ++i)
            all.push_back({design_.parts()[i].name, at(owner(i)).count()});
        return all;
    }
    /// Whether the lengths have a common denominator that 64 bits hold; nothing is carried out where they have not.
    bool fits() const { return fits_; }

private:
    const piece<Unit>& at(std::size_t i) const { return project_.pieces()[i]; }

    /// One copy of each, but of what lies inside another as many as lie in one of those.
    void cut(const piece<Unit>& from) {
        std::int64_t count = 1;
        for (const piece<Unit>& outer : project_.pieces())
            if (outer.name() == from.inside())
                count = (from.count() + outer.count() - 1) / outer.count();
        const cut_size<Unit> size = from.shape().cut();
        design_.cut({.name = from.name(),
                     .cloth = cloth_of(from),
                     .width = measured(size.width()),
                     .height = measured(size.height()),
                     .count = count});
        inner_.emplace_back();
    }

    void lay_inside(std::size_t outer) {
        cut_part below{outer, 0};
        for (std::size_t i = 0; i < project_.pieces().size(); ++i) {
            if (at(i).inside() != at(outer).name() || i == outer)
                continue;
            if (inner_[outer].empty())
                design_.add(laying<Unit>{.piece = below, .up = face::wrong});
            const panel<Unit>& shape = at(outer).shape();
            for (std::int64_t k = 0; k < design_.parts()[i].count; ++k) {
                laying<Unit> l{.piece = {i, k}, .on = below};
                if (inner_[outer].empty()) {
                    l.left = measured(shape.finish_of(edge::left).allowance());
                    l.top = measured(shape.finish_of(edge::top).allowance());
                }
                design_.add(l);
                below = l.piece;
                inner_[outer].push_back(l.piece);
            }
        }
    }

    void finish_edge(std::size_t i, edge e) {
        const finish<Unit>& f = at(i).shape().finish_of(e);
        if (f.joins())
            return;
        const bool binds = !inner_[i].empty();
        for (const auto& fold : f.folds())
            design_.add(crease<Unit>{.at = line(i, e, fold), .over = binds});
        for (const auto& row : f.stitching()) {
            stitching<Unit> s{.along = line(i, e, row), .through = inner_[i]};
            s.through.insert(s.through.begin(), cut_part{i, 0});
            if (sewing_ != nullptr) {
                s.stitch = sewing_->stitch;
                s.overrun = sewing_->overrun;
            }
            design_.add(s);
        }
    }
    /// Of one copy.
    void bind(const edge_binding<Unit>& b) {
        std::size_t i = 0;
        while (at(i).name() != b.on)
            ++i;
        for (const length<Unit>& l : {b.finished, b.allowance.seam, b.allowance.turn / 2, b.inset, b.turned_in})
            measured(l);
        const panel_part<Unit> on{{i, 0}, at(i).shape(), inner_[i].empty() ? face::right : face::wrong};
        edges_binder<Unit>(design_, on, strip_of(b), edges_of(b)).bind(0, [&](edge, edge, length<Unit>) {
            return inner_[i];
        });
        bound_.resize(design_.parts().size() - project_.pieces().size(), i);
        if (sewing_ != nullptr)
            design_.sewn_by_machine(sewing_->stitch, sewing_->overrun);
    }
    chalk_line<Unit> line(std::size_t i, edge e, const place<cut_edge, Unit>& in) {
        measured(in.from_datum());
        return {.on = {i, 0}, .from = e, .in = in};
    }

    /// Notes its denominator; flat work has twice the common one for its unit, and 2^40 as its limit.
    length<Unit> measured(const length<Unit>& l) {
        constexpr std::int64_t most = std::int64_t{1} << 38;
        const std::int64_t own = denominator(l.value());
        fits_ = fits_ && !overflows_times(unit_ / std::gcd(unit_, own), own, unit_) && unit_ < most &&
                numerator(l.value()) / own < most / unit_;
        return l;
    }

    void carry_out() {
        // Sound by how it is put together: nothing of it is asked for by name.
        const flat_model<Unit> model(design_);
        const box_model<Unit> boxed(design_, model);
        work_plan<Unit> plan = work_plan_of(design_, step_maker<Unit>(design_, model, boxed).steps());
        for (work_group<Unit>& g : plan.groups) {
            if (g.pieces.empty())
                continue;
            const bool lays = g.steps[0].verb == work_verb::lay;
            const std::size_t first = g.pieces[0].index,
                              i = lays && first < project_.pieces().size() ? bound_by(g.pieces[0]) : owner(first);
            g.every_copy = at(i).count() > 1;
            of_[i].push_back(std::move(g));
        }
        for (std::size_t i = 0; i < of_.size(); ++i)
            give_turn_of_cloth(of_[i], i, at(i).shape());
    }

    /// Of strips, the piece that they bind.
    std::size_t owner(std::size_t part) const {
        return part < project_.pieces().size() ? part : bound_[part - project_.pieces().size()];
    }
    std::size_t bound_by(const cut_part& inner) const {
        std::size_t i = 0;
        while (std::find(inner_[i].begin(), inner_[i].end(), inner) == inner_[i].end())
            ++i;
        return i;
    }

    const project<Unit>& project_;
    making<Unit> design_;
    std::vector<std::vector<work_group<Unit>>> of_{};
    std::vector<std::size_t> bound_{};           ///< the piece that each strip binds
    std::vector<std::vector<cut_part>> inner_{}; ///< what lies in each piece, from the bottom up
    const sewing<Unit>* sewing_ = nullptr;
    std::int64_t unit_ = 1;
    bool fits_ = true;
};

} // namespace turncloth::detail

#endif
