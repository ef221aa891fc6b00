// A boxed kneeling pad: a cover of a top, a base in two halves with a zipper between them, and an edging round the
// sides; and what fills it.
//
//   kneeling_pad::make(finished, thickness, cloth)   the sheet for any finished size; the zipper runs across its width
//
// The edging starts and ends at a corner, and is marked where it turns the others. It is cut in one where the cloth is
// wide enough, else in four, with a seam at every corner.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_KNEELING_PAD_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_KNEELING_PAD_HPP

#include "edition.hpp"

#include <algorithm>

namespace allotment {

template <length_unit Unit>
struct kneeling_pad_measures {
    length<Unit> thickness = by_edition<Unit>("1 3/4"_in, "4.5"_cm); ///< where none is asked for
    length<Unit> seam_allowance = by_edition<Unit>("1/2"_in, "1.5"_cm);

    length<Unit> zipper_turn = by_edition<Unit>("3/4"_in, 2_cm);          ///< turned under beside the zipper
    length<Unit> zipper_stitching = by_edition<Unit>("1/4"_in, "0.7"_cm); ///< from that fold
    length<Unit> zipper_margin = by_edition<Unit>("1 1/2"_in, 4_cm);
    length<Unit> zipper_ends = by_edition<Unit>("5/8"_in, "1.5"_cm); ///< of tape beyond the stops, as sold
    length<Unit> zipper_tail = by_edition<Unit>("3/4"_in, 2_cm);     ///< of tape left below a new stop

    length<Unit> squeeze = by_edition<Unit>("1/4"_in, "0.6"_cm); ///< the filling is so much larger than the cover
    length<Unit> loft = by_edition<Unit>("1/2"_in, "1.2"_cm);    ///< of a layer of wadding
    fraction kept = {3, 4};                                      ///< of its loft, knelt on
};

/// A constant, as Clang 14 cannot call literals where members are given their values at run time.
template <length_unit Unit>
inline constexpr kneeling_pad_measures<Unit> usual_kneeling_pad{};

struct kneeling_pad {
    template <length_unit Unit>
    static sheet<Unit> make(const finished_size<Unit>& finished,
                            length<Unit> thickness = usual_kneeling_pad<Unit>.thickness,
                            const cloth_sold<Unit>& cloth = {}) {
        return sheet_of(design(finished, thickness, cloth));
    }

    template <length_unit Unit>
    static project<Unit> design(const finished_size<Unit>& finished, length<Unit> thickness,
                                const cloth_sold<Unit>& cloth) {
        constexpr kneeling_pad_measures<Unit> m = usual_kneeling_pad<Unit>;
        const boxed_size<Unit> box(finished.width(), finished.height(), thickness);
        const zipped_opening<Unit> z = zipper_across(m, finished.width());
        project<Unit> p("Kneeling pad cover, " + to_text(thickness) + " thick", finished);
        const auto sewn = seam(m.seam_allowance);
        p.add(piece<Unit>("top panel", "canvas", panel<Unit>::from_cut(plate(box, m.seam_allowance), all_round(sewn))));
        p.add(piece<Unit>("base half", "canvas", {finished.width(), finished.height() / 2},
                          {beside_zipper(m), sewn, sewn, sewn}))
            .count(2)
            .mark("end of the zipper's opening", edge::left, at<finished_edge>(z.margin), {{edge::top, m.zipper_turn}})
            .mark("end of the zipper's opening", edge::right, at<finished_edge>(z.margin),
                  {{edge::top, m.zipper_turn}});
        add_edging(p, m, box, cloth);
        p.caution("A cover that is loose on its pad slides: kneel on it only where it fills out every corner.",
                  caution::work::using_it);
        p.add(listed("zipper between the base halves", 1, z,
                     zipper_supply<Unit>::made_up(lengths_sold<Unit>(), m.zipper_ends, m.zipper_tail)));
        p.add(filling(m, box)).add(sewn_throughout<Unit>());
        return p;
    }

private:
    /// The edges of both halves are turned under and meet over the chain.
    template <length_unit Unit>
    static finish<Unit> beside_zipper(const kneeling_pad_measures<Unit>& m) {
        return finish<Unit>("turned under beside the zipper")
            .allows(m.zipper_turn)
            .folds_at(m.zipper_turn)
            .stitched_at(m.zipper_turn + m.zipper_stitching)
            .reaches(m.zipper_turn);
    }

    template <length_unit Unit>
    static void add_edging(project<Unit>& p, const kneeling_pad_measures<Unit>& m, const boxed_size<Unit>& box,
                           const cloth_sold<Unit>& cloth) {
        const auto add = [&](const char* name, length<Unit> long_, length<Unit> width) -> piece<Unit>& {
            return p.add(
                piece<Unit>(name, "canvas",
                            panel<Unit>::from_cut(cut_size<Unit>(long_, width), all_round(seam(m.seam_allowance)))));
        };
        const box_edging<Unit> whole = edging(box, m.seam_allowance, 1);
        if (whole.total <= cloth.usable()) {
            auto& strip = add("edging joined at a corner", whole.total, whole.width);
            for (const length<Unit>& turns : {box.width(), box.width() + box.height(), box.width() * 2 + box.height()})
                strip.mark("corner", edge::left, at<finished_edge>(turns),
                           {{edge::top, m.seam_allowance}, {edge::bottom, m.seam_allowance}});
            p.prepare("Stay-stitch the edging just outside its seam lines at each corner mark, and clip there to just "
                      "short of that stitching.");
            return;
        }
        const box_edging<Unit> four = edging(box, m.seam_allowance, 4);
        if (box.width() == box.height()) {
            add("side of the edging", four.pieces[0], four.width).count(4);
            return;
        }
        const bool wide = box.width() > box.height();
        add("long side of the edging", four.pieces[wide ? 0 : 1], four.width).count(2);
        add("short side of the edging", four.pieces[wide ? 1 : 0], four.width).count(2);
    }

    template <length_unit Unit>
    static notion<Unit> filling(const kneeling_pad_measures<Unit>& m, const boxed_size<Unit>& box) {
        const boxed_size<Unit> foam = filling_for(box, {.around = -m.squeeze});
        return notion<Unit>("filling")
            .figure("foam, width", foam.width())
            .figure("foam, height", foam.height())
            .figure("foam, thickness", foam.depth())
            .number("or instead, layers of wadding of that size", wadding_layers(box.depth(), m.loft, m.kept))
            .figure("thickness of each layer before it is knelt on", m.loft)
            .caution(caution::filling)
            .caution(caution::infants_and_animals);
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
