// One side of a box as it is seen: its faces that look that way, and lines on them. In mm from its upper left corner.
//
//   box_side<U> front(box, true);     towards the viewer; false: from behind, turned left to right
//   front.faces()  front.area_of(face)  front.line_of(face, chalk_line)  front.size()  front.depth()
#ifndef TURNCLOTH_DRAW_DETAIL_BOX_SIDE_HPP
#define TURNCLOTH_DRAW_DETAIL_BOX_SIDE_HPP

#include <turncloth/draw/detail/words.hpp>
#include <turncloth/making/boxed.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class box_side {
public:
    box_side(const box_found<Unit>& box, bool front) : box_(box), front_(front) {
        for (const box_face<Unit>& f : box.faces)
            if (f.out[2] == (front ? 1 : -1))
                faces_.push_back(f);
        bool first = true;
        for (const box_face<Unit>& f : faces_)
            for (const auto& [x, y] : {point(f, f.left, f.top), point(f, f.right, f.bottom)}) {
                left_ = first ? x : std::min(left_, x), right_ = first ? x : std::max(right_, x);
                top_ = first ? y : std::min(top_, y), bottom_ = first ? y : std::max(bottom_, y);
                first = false;
            }
    }

    const std::vector<box_face<Unit>>& faces() const { return faces_; }
    std::pair<length<Unit>, length<Unit>> size() const { return {right_ - left_, bottom_ - top_}; }
    length<Unit> depth() const { return box_.depth; }

    page_area area_of(const box_face<Unit>& f) const {
        const page_point a = seen(f, f.left, f.top), b = seen(f, f.right, f.bottom);
        return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x) - std::min(a.x, b.x),
                std::max(a.y, b.y) - std::min(a.y, b.y)};
    }
    /// What of it lies on the face.
    std::optional<page_segment> line_of(const box_face<Unit>& f, const chalk_line<Unit>& l, length<Unit> width,
                                        length<Unit> height) const {
        const length<Unit> d = l.in.from_datum(),
                           at = l.from == edge::right    ? width - d
                                : l.from == edge::bottom ? height - d
                                                         : d,
                           low = l.is_level() ? f.left : f.top, high = l.is_level() ? f.right : f.bottom,
                           from = std::max(l.begins.value_or(low), low), to = std::min(l.ends.value_or(high), high);
        if (at < (l.is_level() ? f.top : f.left) || at > (l.is_level() ? f.bottom : f.right) || !(from < to))
            return {};
        return l.is_level() ? page_segment{seen(f, from, at), seen(f, to, at)}
                            : page_segment{seen(f, at, from), seen(f, at, to)};
    }

private:
    /// Of a place on the piece.
    std::pair<length<Unit>, length<Unit>> point(const box_face<Unit>& f, length<Unit> x, length<Unit> y) const {
        const auto along = [&](std::size_t axis) {
            return f.at[axis] + (x - f.left) * fraction(f.rightward[axis]) + (y - f.top) * fraction(f.downward[axis]);
        };
        return {front_ ? along(0) : -along(0), along(1)};
    }
    page_point seen(const box_face<Unit>& f, length<Unit> x, length<Unit> y) const {
        const auto [across, down] = point(f, x, y);
        return {in_mm(across - left_), in_mm(down - top_)};
    }

    const box_found<Unit>& box_;
    bool front_;
    std::vector<box_face<Unit>> faces_{};
    length<Unit> left_{}, right_{}, top_{}, bottom_{};
};

} // namespace turncloth::detail

#endif
