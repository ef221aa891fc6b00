// What several drawings say: sizes in millimetres, edges and how they are finished, how figures are rounded.
//
//   in_mm(length)                     as a double, of what is exact and of what is drafted
//   edge_sentences(panel, ruler)      what is done to the edges of a panel
//   rounded_note(ruler)               "rounded to 1/16 in, each from the exact length."
//   figures_note(ruler, graduation)   the same; or, of what was worked out on that ruler, as its sheet says it
#ifndef TURNCLOTH_DRAW_DETAIL_WORDS_HPP
#define TURNCLOTH_DRAW_DETAIL_WORDS_HPP

#include <turncloth/page/drawing.hpp>
#include <turncloth/sheet/text.hpp>

#include <string>
#include <type_traits>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit, class Number>
double in_mm(boost::units::quantity<Unit, Number> l) {
    constexpr double mm = to_double(units_per<millimetre, Unit>);
    if constexpr (std::is_same_v<Number, double>)
        return l.value() * mm;
    else
        return to_double(l.value()) * mm;
}

inline std::string rounded_note(const ruler& by) {
    return sentence({"rounded to ", graduation_text(by), ", each from the exact length."});
}

template <length_unit Unit>
std::string figures_note(const ruler& by, length<Unit> graduation) {
    if (!shows_its_ruler(graduation, by))
        return rounded_note(by);
    const std::string note =
        sentence({"worked out on a ruler of ", to_text(graduation), ", so that what is printed of pieces adds up."});
    return by.shows == units_shown::both ? sentence({note, " ", converted_note<Unit>(by)}) : note;
}

/// Those that are finished alike share a sentence.
template <length_unit Unit>
std::vector<std::string> edge_sentences(const panel<Unit>& shape, const ruler& by) {
    const auto places = [&](std::string_view verb, const auto& lines) {
        std::string all;
        for (const auto& l : lines)
            all.append(all.empty() ? sentence({"; ", verb, " "}) : ", ").append(unbroken(to_text(l.from_datum(), by)));
        return all;
    };
    std::vector<std::string> all{sentence({"Edges, from the cut edge inward"})};
    for (const edges_alike& alike : finished_alike(shape, {all_edges.begin(), all_edges.end()})) {
        const finish<Unit>& f = shape.finish_of(alike.first);
        all.push_back(sentence({alike.names, ": ", word(f.name()), places(word("fold at"), f.folds()),
                                places(word("stitch at"), f.stitching())}));
    }
    return all;
}

} // namespace turncloth::detail

#endif
