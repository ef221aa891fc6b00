// The part of a handout that lists every piece to be cut.
//
//   handout_cut_table<U>(sheet, cloths, ruler).add(to)      letter, name, number, cloth, size and grain of each
//   cloth_of(cloths, material)                              what was laid of it; null for none
#ifndef TURNCLOTH_HANDOUT_DETAIL_CUT_TABLE_HPP
#define TURNCLOTH_HANDOUT_DETAIL_CUT_TABLE_HPP

#include <turncloth/handout/detail/shared.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/page/drawing.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline document::cell figure_cell(std::string text) { return {std::move(text), document::in_cell::figure}; }

template <length_unit Unit>
const sheet_cloth<Unit>* cloth_of(const std::vector<sheet_cloth<Unit>>& cloths, const std::string& material) {
    for (const sheet_cloth<Unit>& c : cloths)
        if (c.material == material)
            return &c;
    return nullptr;
}

template <length_unit Unit>
class handout_cut_table {
public:
    handout_cut_table(const sheet<Unit>& s, const std::vector<sheet_cloth<Unit>>& cloths, const ruler& by)
        : sheet_(s), cloths_(cloths), by_(by) {}

    void add(document& to) const {
        for (const project_cloth<Unit>& c : sheet_.cloths)
            if (c.washed == washed_when::before_cutting)
                to.add(document::paragraph{said_again(washing_step(c))});
        document::table t{sentence({"Every piece, as it is cut: its allowances are in these sizes"}),
                          {sentence({"Letter"}), sentence({"Piece"}), sentence({"How many"}), sentence({"Cloth"}),
                           sentence({"Width x height"}), sentence({"Grain"})},
                          {}};
        for (std::size_t i = 0; i < sheet_.pieces.size(); ++i) {
            const sheet_piece<Unit>& p = sheet_.pieces[i];
            const piece<Unit>& from = p.made_from;
            t.rows.push_back({{letter_of(i)},
                              {from.name()},
                              figure_cell(std::to_string(from.count())),
                              {from.material()},
                              figure_cell(size_cut(i)),
                              {grain_of(i)}});
        }
        for (std::size_t i = 0; i < sheet_.outlines.size(); ++i) {
            const outlined_piece<Unit>& p = sheet_.outlines[i];
            t.rows.push_back({{letter_of(sheet_.pieces.size() + i)},
                              {p.name()},
                              figure_cell(std::to_string(p.count())),
                              {p.material()},
                              figure_cell(sentence({"within ", text(p.cut)})),
                              {std::string(word(p.made_from.may_turn ? "either way" : "as drawn"))}});
        }
        to.add(std::move(t));
    }

private:
    std::string text(length<Unit> l) const { return unbroken(to_text(l, by_)); }
    std::string text(const auto& size) const { return unbroken(size_text(size.width(), size.height(), by_)); }

    /// A piece's height lies along the grain where nothing else is said. As it was laid, where it was.
    std::string grain_of(std::size_t piece) const {
        const auto& from = sheet_.pieces[piece].made_from;
        const project_cloth<Unit>* const said = said_of(sheet_.cloths, from.material());
        cloth_piece<Unit> lies =
            laid_as_said(sheet_.pieces[piece], said, grain::fixed, said != nullptr && said->folded);
        bool one_way = said != nullptr && said->one_way;
        if (const sheet_cloth<Unit>* c = cloth_of(cloths_, from.material()))
            if (const cloth_piece<Unit>* laid = c->piece_on(piece)) {
                lies = *laid;
                one_way = c->bolt.one_way;
            }
        if (lies.on_fold)
            return sentence({"along the height, the middle on the fold"});
        if (one_way || from.lies() == cloth_lie::one_way)
            return sentence({"along the height, all tops one way"});
        if (lies.grain == grain::turn_together)
            return sentence({"all such along the height, or all across"});
        return lies.grain == grain::may_turn ? sentence({"either way"}) : sentence({"along the height"});
    }
    /// Where pieces are washed once they are cut, the size before that too.
    std::string size_cut(std::size_t i) const {
        const sheet_piece<Unit>& p = sheet_.pieces[i];
        const cut_size<Unit> larger = size_to_cut(p, said_of(sheet_.cloths, p.made_from.material()));
        for (const sheet_cloth<Unit>& c : cloths_)
            for (const piece_in_parts<Unit>& j : c.joined)
                if (j.on_sheet == i)
                    return j.parts.join.value() > 0
                               ? sentence({text(p.cut), "; cut in parts, from the left ", numbered(j.parts.in_order()),
                                           " wide, of each ", text(j.parts.join), " for a join"})
                               : sentence({text(p.cut), "; cut in parts, from the left ", numbered(j.parts.in_order()),
                                           " wide, laid edge to edge"});
        return larger == p.cut ? text(p.cut) : sentence({text(p.cut), "; cut ", text(larger), " before it is washed"});
    }
    /// "(1) 30 in, (2) 44 in"
    std::string numbered(const std::vector<length<Unit>>& widths) const {
        std::string all;
        for (std::size_t k = 0; k < widths.size(); ++k)
            all.append(k == 0 ? "(" : ", (").append(std::to_string(k + 1)).append(") ").append(text(widths[k]));
        return all;
    }

    const sheet<Unit>& sheet_;
    const std::vector<sheet_cloth<Unit>>& cloths_;
    const ruler& by_;
};

} // namespace turncloth::detail

#endif
