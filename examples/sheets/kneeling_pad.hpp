// The cover of a boxed kneeling pad: a top, a base in two halves with a zipper between them, and a boxing strip round
// the sides.
//
//   kneeling_pad::make(finished, thickness)     the sheet for any finished size; the zipper runs across its width
//
// The strip starts and ends at a corner, and is marked where it turns the others. It is cut in one where the cloth is
// wide enough, else as two alike that are joined at opposite corners.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_KNEELING_PAD_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_KNEELING_PAD_HPP

#include "edition.hpp"

#include <algorithm>

namespace allotment {

template <length_unit Unit>
struct kneeling_pad_measures {
    length<Unit> thickness = by_edition<Unit>("1 3/4"_in, "4.5"_cm); ///< where none is asked for
    length<Unit> seam_allowance = by_edition<Unit>("1/2"_in, "1.5"_cm);
    length<Unit> cloth_width = by_edition<Unit>(54_in, 140_cm); ///< that a strip can be cut across

    length<Unit> zipper_turn = by_edition<Unit>("3/4"_in, 2_cm);          ///< turned under beside the zipper
    length<Unit> zipper_stitching = by_edition<Unit>("1/4"_in, "0.7"_cm); ///< from that fold
    length<Unit> zipper_margin = by_edition<Unit>("1 1/2"_in, 4_cm);
    length<Unit> zipper_ends = by_edition<Unit>("5/8"_in, "1.5"_cm); ///< of tape beyond the stops, as sold
    length<Unit> zipper_tail = by_edition<Unit>("3/4"_in, 2_cm);     ///< of tape left below a new stop
};

struct kneeling_pad {
    template <length_unit Unit>
    static sheet<Unit> make(const finished_size<Unit>& finished,
                            length<Unit> thickness = kneeling_pad_measures<Unit>().thickness) {
        constexpr kneeling_pad_measures<Unit> m;
        const zipped_opening<Unit> z = zipper_across(m, finished.width());
        return sheet_of(design(m, finished, thickness, z));
    }

private:
    template <length_unit Unit>
    static project<Unit> design(const kneeling_pad_measures<Unit>& m, const finished_size<Unit>& finished,
                                length<Unit> thickness, const zipped_opening<Unit>& z) {
        project<Unit> p("Kneeling pad cover, " + to_text(thickness) + " thick", finished);
        const auto sewn = seam(m.seam_allowance);
        p.add(piece<Unit>("top", "canvas", panel<Unit>(finished, all_round(sewn))));
        p.add(piece<Unit>("base half", "canvas",
                          panel<Unit>(finished_size<Unit>(finished.width(), finished.height() / 2),
                                      {beside_zipper(m), sewn, sewn, sewn})))
            .how_many(2)
            .mark("end of the zipper's opening", edge::left, at<finished_edge>(z.margin))
            .mark("end of the zipper's opening", edge::right, at<finished_edge>(z.margin));
        add_boxing(p, m, thickness);
        p.caution("Clip the boxing strip to its stitching line at each corner mark before it turns the corner.");
        p.caution("A cover that is loose on its pad slides: kneel on it only where it fills out every corner.");
        p.caution("Keep soft pads and loose covers out of the cots of infants and away from animals that chew.");
        p.add(listed("zipper between the base halves", 1, z,
                     zipper_supply<Unit>::made_up(lengths_sold<Unit>(), m.zipper_ends, m.zipper_tail)));
        return p;
    }

    /// The edges of both halves are turned under and meet over the chain.
    template <length_unit Unit>
    static finish<Unit> beside_zipper(const kneeling_pad_measures<Unit>& m) {
        return finish<Unit>("turned under beside the zipper")
            .takes(m.zipper_turn)
            .folds_at(m.zipper_turn)
            .stitched_at(m.zipper_turn + m.zipper_stitching)
            .reaches(m.zipper_turn);
    }

    template <length_unit Unit>
    static void add_boxing(project<Unit>& p, const kneeling_pad_measures<Unit>& m, length<Unit> thickness) {
        const length<Unit> width = p.finished().width(), height = p.finished().height();
        const length<Unit> round = (width + height) * 2;
        const std::int64_t strips = round + m.seam_allowance * 2 <= m.cloth_width ? 1 : 2;
        const finished_size<Unit> size(round / strips, thickness);
        auto& strip =
            p.add(piece<Unit>("boxing strip",
                              strips == 1 ? "canvas, joined at a corner" : "canvas, joined at two opposite corners",
                              panel<Unit>(size, all_round(seam(m.seam_allowance)))))
                .how_many(strips);
        for (const length<Unit>& corner : {width, width + height, width * 2 + height})
            if (corner < size.width())
                strip.mark("corner", edge::left, at<finished_edge>(corner));
    }

    /// A wide pad need not open along its whole width, so the margins grow where no zipper would be long enough.
    template <length_unit Unit>
    static zipped_opening<Unit> zipper_across(const kneeling_pad_measures<Unit>& m, length<Unit> width) {
        const length<Unit> beside_the_longest = (width - lengths_sold<Unit>().back()) / 2;
        return {width, std::max(m.zipper_margin, beside_the_longest), m.zipper_ends};
    }

    /// From the shortest to the longest.
    template <length_unit Unit>
    static std::vector<length<Unit>> lengths_sold() {
        if constexpr (metric_unit<Unit>)
            return lengths_of<Unit, centimetre>({18, 20, 25, 30, 35, 40, 45, 50, 55, 60, 75, 90});
        else
            return lengths_of<Unit, inch>({7, 9, 12, 14, 16, 18, 20, 22, 24, 30, 36});
    }
    template <length_unit Unit, length_unit Written>
    static std::vector<length<Unit>> lengths_of(std::initializer_list<int> numbers) {
        std::vector<length<Unit>> all;
        for (const int n : numbers)
            all.push_back(as<Unit>(length_of<Written>(n)));
        return all;
    }
};

} // namespace allotment

#endif
