// The outline of a folded stack: what its shadow would be.
//
//   silhouette_of(folding)     the lines round all layers together: counter-clockwise round cloth, clockwise
//                                round holes
//
//   folding<inch> napkin(...);   napkin.fold(...);
//   silhouette_of(napkin).size() == 1;   // in one piece, without a hole; its corners are polygon<inch>
//
// Exact for exact foldings. Its time grows with the square of the number of layers. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_SILHOUETTE_HPP
#define TURNCLOTH_PANEL_SILHOUETTE_HPP

#include <turncloth/panel/folding.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// The sides of all layers, less what lies within the stack, joined up again.
template <length_unit Unit, coordinate Number>
class silhouette {
public:
    explicit silhouette(const folding<Unit, Number>& stack) : stack_(stack) {
        for (std::size_t l = 0; l < stack.layer_count(); ++l) {
            const auto corners = stack.layer(l).corners;
            for (std::size_t i = 0; i < corners.size(); ++i)
                add_free_parts(l, bare(corners[i]), bare(corners[i + 1 == corners.size() ? 0 : i + 1]));
        }
    }

    std::vector<polygon<Unit, Number>> loops() {
        std::vector<polygon<Unit, Number>> all;
        while (!parts_.empty()) {
            std::vector<arrow<Number>> around = {parts_.back().from, parts_.back().to};
            parts_.pop_back();
            while (!same(around.back(), around.front())) {
                const auto next = next_part(around[around.size() - 2], around.back());
                if (!next)
                    refuse<folding_error>("the outline of this stack is finer than drafted points can tell apart");
                around.push_back(parts_[*next].to);
                parts_.erase(parts_.begin() + static_cast<std::ptrdiff_t>(*next));
            }
            around.pop_back();
            all.push_back(without_straight_corners(around));
        }
        return all;
    }

private:
    struct part {
        arrow<Number> from, to; // cloth lies left of it
    };
    using span_of_side = std::pair<Number, Number>; // from 0 at its start to 1 at its end

    void add_free_parts(std::size_t layer, const arrow<Number>& a, const arrow<Number>& b) {
        std::vector<span_of_side> free = {{Number(0), Number(1)}};
        for (std::size_t other = 0; other < stack_.layer_count() && !free.empty(); ++other)
            if (other != layer)
                take_out(free, hidden_by(other, other < layer, a, b));
        for (const auto& [begin, end] : free) {
            const arrow<Number> way = b - a;
            const part p{a + way * begin, a + way * end};
            if (!same(p.from, p.to))
                parts_.push_back(p);
        }
    }

    /// Which part of the side lies within another layer. A side of the other on the same line hides its part where the
    /// other's cloth lies on the other side of it, or where it shows that part itself, being the lower layer.
    span_of_side hidden_by(std::size_t other, bool is_lower, const arrow<Number>& a, const arrow<Number>& b) const {
        const auto corners = stack_.layer(other).corners;
        const arrow<Number> way = b - a;
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const arrow<Number> c = bare(corners[i]), d = bare(corners[i + 1 == corners.size() ? 0 : i + 1]);
            if (turn(c, d, a) != 0 || turn(c, d, b) != 0)
                continue;
            const Number square = dot(way, way), from = dot(c - a, way) / square, to = dot(d - a, way) / square;
            if (from < to && !is_lower)
                return {Number(0), Number(0)};
            return {std::max(Number(0), std::min(from, to)), std::min(Number(1), std::max(from, to))};
        }
        return span_within(corners, a, way);
    }

    static void take_out(std::vector<span_of_side>& free, const span_of_side& hidden) {
        if (!(hidden.first < hidden.second))
            return;
        std::vector<span_of_side> left;
        for (const auto& [begin, end] : free) {
            if (begin < hidden.first)
                left.emplace_back(begin, std::min(end, hidden.first));
            if (hidden.second < end)
                left.emplace_back(std::max(begin, hidden.second), end);
        }
        free.swap(left);
    }

    /// The part that goes on from `here`, reached from `before`. Where several do, cloth touches cloth at a corner: the
    /// first one clockwise from the way back bounds the same cloth.
    std::optional<std::size_t> next_part(const arrow<Number>& before, const arrow<Number>& here) const {
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < parts_.size(); ++i)
            if (same(parts_[i].from, here) && (!best || comes_first(before, here, parts_[i].to, parts_[*best].to)))
                best = i;
        return best;
    }
    /// Of two ways on, whether `one` makes the sharper turn to the left.
    static bool comes_first(const arrow<Number>& before, const arrow<Number>& here, const arrow<Number>& one,
                            const arrow<Number>& other) {
        const int one_turns = turn(before, here, one), other_turns = turn(before, here, other);
        if (one_turns != other_turns)
            return one_turns > other_turns;
        return turn(here, other, one) > 0;
    }

    static polygon<Unit, Number> without_straight_corners(const std::vector<arrow<Number>>& around) {
        polygon<Unit, Number> corners;
        for (std::size_t i = 0; i < around.size(); ++i) {
            const arrow<Number>& before = around[i == 0 ? around.size() - 1 : i - 1];
            if (turn(before, around[i], around[i + 1 == around.size() ? 0 : i + 1]) != 0)
                corners.push_back(in_unit<Unit>(around[i]));
        }
        return corners;
    }

    const folding<Unit, Number>& stack_;
    std::vector<part> parts_;
};

} // namespace detail

/// Throws overflow_error where fractions run out; folding_error where doubles are too coarse.
template <length_unit Unit, coordinate Number>
std::vector<polygon<Unit, Number>> silhouette_of(const folding<Unit, Number>& stack) {
    return detail::silhouette<Unit, Number>(stack).loops();
}

} // namespace turncloth

#endif
