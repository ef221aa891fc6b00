// Paper to compare folding with: one point at a time, in the rationals of GMP (the GNU Multiple Precision library).
//
//   paper.fold(from, to)  paper.trim(from, to)     what lies left of the line is turned, or cut away
//   paper.layers_at(x, y)       how many points of the flat sheet come to lie there, each found by unfolding
//   paper.folded(x, y)          where a point of the flat sheet comes to lie
//
// It knows nothing of polygons: a spot is unfolded, last fold first, into every point that could have come there.
#ifndef TURNCLOTH_TESTS_PANEL_PAPER_HPP
#define TURNCLOTH_TESTS_PANEL_PAPER_HPP

#include "measure/against_gmp.hpp"
#include <turncloth/panel/polygon.hpp>

#include <gmpxx.h>

#include <cstddef>
#include <optional>
#include <vector>

namespace paper_folding {

struct spot {
    mpq_class x, y;
};

class sheet {
public:
    template <class Unit>
    explicit sheet(const turncloth::polygon<Unit>& convex_counter_clockwise) {
        for (const auto& p : convex_counter_clockwise)
            corners_.push_back(exact(p));
    }

    template <class Unit>
    void fold(const turncloth::line<Unit>& l) {
        steps_.push_back({exact(l.from), exact(l.to), false});
    }
    template <class Unit>
    void trim(const turncloth::line<Unit>& l) {
        steps_.push_back({exact(l.from), exact(l.to), true});
    }

    template <class Unit>
    static spot exact(const turncloth::point<Unit>& p) {
        return {against_gmp::exact(p.x.value()), against_gmp::exact(p.y.value())};
    }

    /// For a spot on no crease and no edge.
    std::size_t layers_at(const spot& s) const { return unfolded(s, steps_.size()); }

    /// None where it was cut away.
    std::optional<spot> folded(spot s) const {
        for (const step& each : steps_) {
            if (side(each, s) <= 0)
                continue;
            if (each.trims)
                return std::nullopt;
            s = mirrored(each, s);
        }
        return s;
    }

private:
    struct step {
        spot from, to;
        bool trims;
    };

    static int side(const step& l, const spot& s) {
        return sgn(mpq_class((l.to.x - l.from.x) * (s.y - l.from.y) - (l.to.y - l.from.y) * (s.x - l.from.x)));
    }

    /// The foot of the perpendicular is as far again from the image.
    static spot mirrored(const step& l, const spot& s) {
        const mpq_class dx = l.to.x - l.from.x, dy = l.to.y - l.from.y;
        const mpq_class along = ((s.x - l.from.x) * dx + (s.y - l.from.y) * dy) / (dx * dx + dy * dy);
        return {2 * (l.from.x + along * dx) - s.x, 2 * (l.from.y + along * dy) - s.y};
    }

    std::size_t unfolded(const spot& s, std::size_t steps) const {
        if (steps == 0) {
            for (std::size_t i = 0; i < corners_.size(); ++i)
                if (side({corners_[i], corners_[(i + 1) % corners_.size()], false}, s) < 0)
                    return 0;
            return 1;
        }
        const step& last = steps_[steps - 1];
        if (side(last, s) > 0)
            return 0; // nothing lies left of a line along which all was turned or cut
        return unfolded(s, steps - 1) + (last.trims ? 0 : unfolded(mirrored(last, s), steps - 1));
    }

    std::vector<spot> corners_;
    std::vector<step> steps_;
};

} // namespace paper_folding

#endif
