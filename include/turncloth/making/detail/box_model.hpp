// The seams of a design in whole numbers, for the walk: pieces, pairs of lines, and what of a seam is left open.
//
//   class box_model<U>(design, flat_model)
//     .parts()  .pairs()  .walked()
//     .opening(mouth)           where a mouth lies on seams
//     .runs(seam)               the stretches that are sewn, each as long as it is, mouths left out
//
// A seam that goes on over several pieces is one run: stretches whose ends meet in space are joined.
#ifndef TURNCLOTH_MAKING_DETAIL_BOX_MODEL_HPP
#define TURNCLOTH_MAKING_DETAIL_BOX_MODEL_HPP

#include <turncloth/making/detail/box_walk.hpp>
#include <turncloth/making/detail/model.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <numeric>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class box_model {
public:
    using whole = boxed_work::whole;
    using seam_line = boxed_work::seam_line;
    using stretch = flat_work::stretch;
    using walk = boxed_work::lazy_walk<for_any<Unit>>;

    /// Of a mouth on seams: a stretch of a pair, so far along it.
    struct left_open {
        std::size_t mouth = 0, pair = 0;
        stretch along{};
    };
    /// Sewn in one: its first pair, and its length in all.
    struct run {
        std::size_t pair = 0;
        whole sewn = 0;
    };

    box_model(const making<Unit>& design, const flat_model<Unit>& model) : design_(design), model_(model) {
        parts_.resize(model.count());
        for (std::size_t p = 0; p < parts_.size(); ++p) {
            parts_[p].width = model.flat().parts[p].width;
            parts_[p].height = model.flat().parts[p].height;
        }
        for (std::size_t i = 0; i < design.seams().size(); ++i)
            add(design.seams()[i], i);
        for (const crease<Unit>& c : design.creases())
            add(c);
        for (std::size_t m = 0; m < design.mouths().size(); ++m)
            for (const chalk_line<Unit>& l : design.mouths()[m].at)
                add_mouth(m, line(l));
        require_few_cells();
        walk_.emplace(parts_, pairs_);
    }
    box_model(const box_model&) = delete;
    box_model& operator=(const box_model&) = delete;

    const std::vector<boxed_work::box_part>& parts() const { return parts_; }
    const std::vector<boxed_work::seam_pair>& pairs() const { return pairs_; }
    const std::vector<left_open>& openings() const { return open_; }
    const walk& walked() const { return *walk_; }

    seam_line line(const chalk_line<Unit>& l) const {
        const flat_work::flat_line f = model_.line(l, l.in);
        const flat_work::flat_part& p = model_.flat().parts[f.part];
        return {f.part,
                f.at.level,
                f.at.at,
                l.from == edge::top || l.from == edge::left ? -1 : 1,
                f.begins.value_or(0),
                f.ends.value_or(f.at.level ? p.width : p.height)};
    }

    /// How long a mouth is: on seams, each stretch of a seam once, and beside them along its lines.
    whole opening(std::size_t mouth) const {
        whole sum = 0;
        for (const left_open& o : open_)
            if (o.mouth == mouth)
                sum += o.along.to - o.along.from;
        return sum;
    }

    std::vector<run> runs(std::size_t seam) const {
        std::vector<part_sewn> all;
        for (std::size_t k = 0; k < pairs_.size(); ++k)
            if (pairs_[k].seam == seam)
                add_sewn(all, k);
        std::vector<std::size_t> of(all.size());
        std::iota(of.begin(), of.end(), std::size_t{0});
        std::map<std::array<whole, 3>, std::size_t> ends; // in space, each with a stretch that has one there
        for (std::size_t i = 0; i < all.size(); ++i)
            for (const whole t : {all[i].along.from, all[i].along.to})
                if (const auto end = in_space(all[i].pair, t)) {
                    const auto [met, alone] = ends.try_emplace({end->x, end->y, end->z}, i);
                    if (const std::size_t a = of[i], b = of[met->second]; !alone && a != b)
                        std::replace(of.begin(), of.end(), std::max(a, b), std::min(a, b));
                }
        std::vector<run> made;
        for (std::size_t first = 0; first < all.size(); ++first) {
            whole sewn = 0;
            for (std::size_t i = 0; i < all.size(); ++i)
                if (of[i] == first)
                    sewn += all[i].along.to - all[i].along.from;
            if (sewn > 0)
                made.push_back({all[first].pair, sewn});
        }
        return made;
    }

private:
    struct part_sewn {
        std::size_t pair = 0;
        stretch along{};
    };

    void require_few_cells() const {
        std::int64_t cells = 0;
        for (const boxed_work::box_part& p : parts_)
            cells += static_cast<std::int64_t>(boxed_work::stops_of(p).cells());
        if (cells > making<Unit>::most_box_areas)
            refuse<making_error>("the seams and creases of this design part its pieces into " + std::to_string(cells) +
                                     " areas: boxes are found of at most " +
                                     std::to_string(making<Unit>::most_box_areas),
                                 refusal{.kind = fault::does_not_fit,
                                         .what = "the number of areas",
                                         .given = amount_of(cells),
                                         .most = amount_of(making<Unit>::most_box_areas)});
    }

    void add(const seam_of<Unit>& s, std::size_t seam) {
        constexpr boxed_work::turned turns[] = {boxed_work::turned::not_at_all, boxed_work::turned::inward,
                                                boxed_work::turned::back};
        for (std::size_t k = 0; k < s.one.size(); ++k) {
            const boxed_work::seam_pair p{line(s.one[k]), line(s.other[k]), turns[static_cast<std::size_t>(s.beyond)],
                                          seam, s.lets_in()};
            pairs_.push_back(p);
            parts_[p.one.part].ends.push_back(p.one);
            parts_[p.other.part].ends.push_back(p.other);
        }
    }
    void add(const crease<Unit>& c) {
        if (c.across)
            return;
        const seam_line l = line(c.at);
        if (c.turn == turning::quarter)
            parts_[l.part].creases.push_back({l, c.over});
        else
            parts_[l.part].ends.push_back(l);
    }

    void add_mouth(std::size_t mouth, const seam_line& l) {
        for (std::size_t k = 0; k < pairs_.size(); ++k) {
            const boxed_work::seam_pair& p = pairs_[k];
            if (l.same_line(p.one))
                leave_open({mouth, k, along(p.one, l, p.one.clockwise(), p.long_())});
            if (l.same_line(p.other))
                leave_open({mouth, k, along(p.other, l, !p.other.clockwise(), p.long_())});
        }
    }
    static stretch along(const seam_line& seam, const seam_line& l, bool forward, whole most) {
        const whole a = forward ? l.begins - seam.begins : seam.ends - l.ends,
                    b = forward ? l.ends - seam.begins : seam.ends - l.begins;
        return {std::max<whole>(a, 0), std::min(b, most)};
    }
    /// A mouth may name both sides of a seam: what was open already is not opened again.
    void leave_open(const left_open& o) {
        const auto known = [&](const left_open& x) {
            return x.pair == o.pair && x.along.from <= o.along.from && o.along.to <= x.along.to;
        };
        if (!o.along.is_nothing() && std::none_of(open_.begin(), open_.end(), known))
            open_.push_back(o);
    }

    void add_sewn(std::vector<part_sewn>& all, std::size_t k) const {
        std::vector<stretch> gone;
        for (const left_open& o : open_)
            if (o.pair == k)
                gone.push_back(o.along);
        std::sort(gone.begin(), gone.end(), [](const stretch& a, const stretch& b) { return a.from < b.from; });
        whole from = 0;
        for (const stretch& g : gone) {
            if (from < g.from)
                all.push_back({k, {from, g.from}});
            from = std::max(from, g.to);
        }
        if (from < pairs_[k].long_())
            all.push_back({k, {from, pairs_[k].long_()}});
    }
    std::optional<boxed_work::point> in_space(std::size_t pair, whole t) const {
        const boxed_work::seam_pair& p = pairs_[pair];
        const bool by_other = p.other.long_() < p.one.long_();
        const boxed_work::spot on = by_other ? p.on_other(t) : p.on_one(t);
        for (const boxed_work::box_cell& c : walk_->cells_of(by_other ? p.other.part : p.one.part))
            if (c.placed && c.own.left <= on.x && on.x <= c.own.right && c.own.top <= on.y && on.y <= c.own.bottom)
                return c.stands.how(on);
        return {};
    }

    const making<Unit>& design_;
    const flat_model<Unit>& model_;
    std::vector<boxed_work::box_part> parts_{};
    std::vector<boxed_work::seam_pair> pairs_{};
    std::vector<left_open> open_{};
    std::optional<walk> walk_{};
};

} // namespace turncloth::detail

#endif
