// Where the pieces of a project lie upon one another, so that a row of one of them names all that it goes through.
//
//   lying_there<U>(kinds)                            of so many kinds of pieces
//     .add({piece, on, left, top, face_to_face})     finished edges from finished edges, as on the right side of `on`
//     .on(piece)                                     all that lies on it
//     .under_rows(piece, edge)                       what the rows of that edge's finish cross
//     .under_row_across(piece, edge, so much, end, in)    what one across the first so much of it crosses there
//     .under_rows(piece, edge, rows)                 what rows so far from its finished edge cross
#ifndef TURNCLOTH_SHEET_DETAIL_LYING_THERE_HPP
#define TURNCLOTH_SHEET_DETAIL_LYING_THERE_HPP

#include <turncloth/making/finishing.hpp>

#include <algorithm>
#include <cstddef>
#include <map>
#include <span>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class lying_there {
public:
    explicit lying_there(std::size_t kinds) : kinds_(kinds) {}

    /// Face to face the piece's right edge lies at the left.
    struct laid_piece {
        panel_part<Unit> piece, on;
        length<Unit> left{}, top{};
        bool face_to_face = false;
    };

    void add(const laid_piece& p) { on_[p.on.part].push_back(p); }

    /// A row that runs exactly along the edge of what lies there does not go through it.
    std::vector<cut_part> under_rows(const panel_part<Unit>& piece, edge e) const {
        const finish<Unit>& f = piece.shape.finish_of(e);
        std::vector<length<Unit>> rows;
        for (const auto& row : f.stitching())
            rows.push_back(row.from_datum() - f.allowance());
        return under_rows(piece, e, rows);
    }
    std::vector<cut_part> under_rows(const panel_part<Unit>& piece, edge e, std::span<const length<Unit>> rows) const {
        std::vector<cut_part> under;
        for (const place_of& p : on(piece, kinds_)) {
            const auto [begins, ends] = away_from(e, p, piece.shape.finished());
            if (std::any_of(rows.begin(), rows.end(),
                            [&, b = begins, n = ends](length<Unit> in) { return b < in && in < n; }))
                under.push_back(p.part);
        }
        return under;
    }
    /// All that lies on it.
    std::vector<cut_part> on(const panel_part<Unit>& piece) const {
        std::vector<cut_part> all;
        for (const place_of& p : on(piece, kinds_))
            all.push_back(p.part);
        return all;
    }
    /// What a row across the first so much of an edge crosses, so far from that end of it.
    std::vector<cut_part> under_row_across(const panel_part<Unit>& piece, edge e, length<Unit> so_much, edge end,
                                           length<Unit> in) const {
        std::vector<cut_part> under;
        for (const place_of& p : on(piece, kinds_)) {
            const span across = away_from(end, p, piece.shape.finished()),
                       down = away_from(e, p, piece.shape.finished());
            if (across.begins < in && in < across.ends && down.begins < so_much && down.ends.value() > 0)
                under.push_back(p.part);
        }
        return under;
    }

private:
    struct place_of {
        cut_part part{};
        length<Unit> left{}, top{}, width{}, height{};
    };
    struct span {
        length<Unit> begins{}, ends{};
    };

    static span away_from(edge e, const place_of& p, const finished_size<Unit>& size) {
        switch (e) {
        case edge::left:
            return {p.left, p.left + p.width};
        case edge::right:
            return {size.width() - p.left - p.width, size.width() - p.left};
        case edge::top:
            return {p.top, p.top + p.height};
        case edge::bottom:
            break;
        }
        return {size.height() - p.top - p.height, size.height() - p.top};
    }

    /// All that lies on it, and on that in turn. No kind lies on itself: `deep` bounds a circle, which the design refuses.
    std::vector<place_of> on(const panel_part<Unit>& piece, std::size_t deep) const {
        std::vector<place_of> found;
        const auto laid = on_.find(piece.part);
        if (laid == on_.end() || deep == 0)
            return found;
        for (const laid_piece& l : laid->second) {
            const finished_size<Unit> size = l.piece.shape.finished();
            found.push_back({l.piece.part, l.left, l.top, size.width(), size.height()});
            for (place_of p : on(l.piece, deep - 1)) {
                p.left = l.left + (l.face_to_face ? size.width() - p.left - p.width : p.left);
                p.top += l.top;
                found.push_back(p);
            }
        }
        return found;
    }

    std::map<cut_part, std::vector<laid_piece>> on_{};
    std::size_t kinds_;
};

} // namespace turncloth::detail

#endif
