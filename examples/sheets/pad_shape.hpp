// The kneeling pad's measures, and a pad worked out from them: its cover, its zipper, and what fills it.
//
//   usual_kneeling_pad<U>                        as designed; .on(ruled) the same on a ruler
//   pad_shape<U>(measures, ruled, cover)         the foam, the zipper that it passes, and how often it is folded to do so
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PAD_SHAPE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PAD_SHAPE_HPP

#include "edition.hpp"

#include <algorithm>
#include <cstdint>
#include <initializer_list>
#include <vector>

namespace allotment {

template <length_unit Unit>
struct kneeling_pad_measures {
    length<Unit> thickness = by_edition<Unit>("1 3/4"_in, "4.5"_cm); ///< where none is asked for
    length<Unit> seam_allowance = by_edition<Unit>("1/2"_in, "1.5"_cm);

    length<Unit> zipper_turn = by_edition<Unit>("3/4"_in, 2_cm);          ///< turned under beside the zipper
    length<Unit> zipper_stitching = by_edition<Unit>("1/4"_in, "0.7"_cm); ///< from that fold
    length<Unit> zipper_margin = by_edition<Unit>("1 1/2"_in, 4_cm);
    length<Unit> least_margin = by_edition<Unit>(1_in, "2.5"_cm);    ///< where the filling needs a longer opening
    length<Unit> zipper_ends = by_edition<Unit>("5/8"_in, "1.5"_cm); ///< of tape beyond the stops, old and new

    length<Unit> off_seam = by_edition<Unit>("1/16"_in, "0.2"_cm); ///< at the edging's corners, stay-stitched
    length<Unit> off_stay = by_edition<Unit>("1/16"_in, "0.2"_cm); ///< a clip ends
    length<Unit> stay = by_edition<Unit>(1_in, "2.5"_cm);          ///< to each side of a corner

    length<Unit> squeeze = by_edition<Unit>("1/4"_in, "0.6"_cm); ///< the filling is so much larger than the cover
    std::int64_t bends = 4;                                   ///< folded in half where it is so often as wide as thick
    length<Unit> loft = by_edition<Unit>("1/2"_in, "1.2"_cm); ///< of a layer of wadding
    fraction kept = {3, 4};                                   ///< of its loft, knelt on

    length<Unit> stayed() const { return seam_allowance - off_seam; } ///< from the cut edge
    length<Unit> clip() const { return stayed() - off_stay; }         ///< from the cut edge
    /// The filling's loft stays as it is bought.
    kneeling_pad_measures on(const ruled<Unit>& by) const {
        kneeling_pad_measures m = *this;
        by.give(m.thickness, m.seam_allowance, m.zipper_turn, m.zipper_stitching, m.zipper_margin, m.least_margin)
            .give(m.zipper_ends, m.off_seam, m.off_stay, m.stay, m.squeeze);
        return m;
    }
};

/// A constant, as Clang 14 cannot call literals where members are given their values at run time.
template <length_unit Unit>
inline constexpr kneeling_pad_measures<Unit> usual_kneeling_pad{};

/// A pad worked out: its cover, its zipper, and what fills it.
template <length_unit Unit>
struct pad_shape {
    kneeling_pad_measures<Unit> m;
    ruled<Unit> by;
    boxed_size<Unit> box, foam;
    zipped_opening<Unit> zipper;
    std::int64_t folds = 0; ///< of the foam, to go in

    pad_shape(const kneeling_pad_measures<Unit>& measures, const ruled<Unit>& ruler, const boxed_size<Unit>& cover)
        : m(measures),
          by(ruler),
          box(cover),
          foam(filling_for(cover, cover_ease<Unit>{-m.squeeze, {}})),
          zipper{along(), margin_of(m.zipper_margin), m.zipper_ends} {
        if (foam_across() <= along() - zipper.margin * 2)
            return;
        zipper.margin = margin_of(m.least_margin);
        for (length<Unit> wide = std::min(foam.width(), foam.height()), thick = foam.depth();
             folds < 2 && wide >= thick * m.bends; wide = wide / 2, thick = thick * 2)
            ++folds;
    }

    /// The zipper runs along the longer side, since what fills the pad goes in end on.
    bool runs_across() const { return box.width() >= box.height(); }
    length<Unit> along() const { return std::max(box.width(), box.height()); }
    finished_size<Unit> half() const { return {along(), std::min(box.width(), box.height()) / 2}; }

    /// From the shortest to the longest.
    static std::vector<length<Unit>> lengths_sold() {
        if constexpr (metric_unit<Unit>)
            return lengths_of<centimetre>({18, 20, 25, 30, 35, 40, 45, 50, 55, 60, 75, 90});
        else
            return lengths_of<inch>({7, 9, 12, 14, 16, 18, 20, 22, 24, 30, 36});
    }

private:
    /// Half round the foam as it is pushed in, both sides giving way.
    length<Unit> foam_across() const { return std::min(foam.width(), foam.height()) + foam.depth() - m.squeeze * 2; }
    /// A wide pad need not open along its whole width, so the margins grow where no zipper would be long enough.
    length<Unit> margin_of(length<Unit> least) const {
        return std::max(least, by.middle(along() - lengths_sold().back()));
    }

    template <length_unit Written>
    static std::vector<length<Unit>> lengths_of(std::initializer_list<int> numbers) {
        std::vector<length<Unit>> all;
        for (const int n : numbers)
            all.push_back(as<Unit>(length_of<Written>(n)));
        return all;
    }
};

} // namespace allotment

#endif
