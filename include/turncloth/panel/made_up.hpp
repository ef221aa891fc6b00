// A panel folded by its own finishes and corners: the proof that it finishes as asked, and how many layers lie where.
//
//   stacked<U>()  mitred<U>()  mitred(allowance, step)     how a corner is made; the last is trimmed outside its crease
//   corners<U>{top_left, top_right, bottom_right, bottom_left}     all_corners(way) for four alike
//   fold_panel(panel, corners)             the folded panel, exact;  fold_panel<double>(...)  within drafting_tolerance
//   f.proof()                              outline, mitres, hems, cloth: each true where folding shows it to be right
//   f.layers_at(from_left, from_bottom)    layers at a place of the finished piece
//   f.most_layers_in_row(edge, row)        the most a row of stitching goes through, and where
//   f.stack()                              the folding itself, its origin the cut piece's bottom left corner
//   f.outer_line(edge)  f.ways()           from the cut edge to where the folded piece ends; how its corners are made
//
//   const auto napkin = fold_panel(panel(finished_size(16_in, 16_in), all_round(double_turned_hem("1/4"_in, 1_in))),
//                                  all_corners(mitred("1/4"_in, "1/16"_in)));
//   napkin.proof().outline && napkin.layers_at(at<finished_edge>(8_in), at<finished_edge>("1/2"_in)) == 2;
//
// A fold here has no thickness, so where a finish takes up a turn of cloth, half of the turn lies beyond the finished
// edge: the outline expected is the line of the outermost creases. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_MADE_UP_HPP
#define TURNCLOTH_PANEL_MADE_UP_HPP

#include <turncloth/panel/corner.hpp>
#include <turncloth/panel/folding.hpp>
#include <turncloth/panel/panel.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace turncloth {

/// The four corners as the piece hangs before you.
enum class corner { top_left, top_right, bottom_right, bottom_left };

inline constexpr std::array<corner, 4> every_corner = {corner::top_left, corner::top_right, corner::bottom_right,
                                                       corner::bottom_left};

/// How one corner is made.
template <length_unit Unit>
struct corner_way {
    bool is_mitred = false;
    std::optional<length<Unit>> allowance{}; ///< kept outside the crease of a trimmed mitre; none: not trimmed
    length<Unit> step = length_of<Unit>(1);  ///< the graduation of the trim's legs
};

/// One edge folded over the other, nothing cut.
template <length_unit Unit>
constexpr corner_way<Unit> stacked() {
    return {};
}
/// Folded across first, nothing cut.
template <length_unit Unit>
constexpr corner_way<Unit> mitred() {
    return {true, std::nullopt, length_of<Unit>(1)};
}
/// Trimmed first, at least `allowance` outside the crease, the legs rounded down to `step`.
template <length_unit Unit>
constexpr corner_way<Unit> mitred(length<Unit> allowance, length<Unit> step) {
    return {true, allowance, step};
}

template <length_unit Unit>
struct corners {
    corner_way<Unit> top_left, top_right, bottom_right, bottom_left;

    constexpr const corner_way<Unit>& operator[](corner c) const {
        return c == corner::top_left       ? top_left
               : c == corner::top_right    ? top_right
               : c == corner::bottom_right ? bottom_right
                                           : bottom_left;
    }
};

template <length_unit Unit>
constexpr corners<Unit> all_corners(const corner_way<Unit>& way) {
    return {way, way, way, way};
}

/// Where a seam's allowance lies, and what else goes on past the finished edge without being turned by its finish.
enum class lie_of_allowances {
    turned_back, ///< over the piece itself, folded at the finished edge: a seam pressed open
    left_flat    ///< beyond the finished edge, where the neighbouring piece lies: a lap, the over side of a fell
};

namespace detail {

/// Whether two layers have the whole of this straight piece for a side, one on each side of it.
template <length_unit Unit, coordinate Number>
bool meet_along(const folding<Unit, Number>& stack, const point<Unit, Number>& from, const point<Unit, Number>& to) {
    bool on_one_side = false, on_the_other = false;
    for (std::size_t l = 0; l < stack.layer_count(); ++l) {
        const auto around = stack.layer(l).corners;
        for (std::size_t i = 0; i < around.size(); ++i) {
            const auto a = bare(around[i]), b = bare(around[i + 1 == around.size() ? 0 : i + 1]);
            on_one_side |= same(a, bare(from)) && same(b, bare(to));
            on_the_other |= same(a, bare(to)) && same(b, bare(from));
        }
    }
    return on_one_side && on_the_other;
}

} // namespace detail

/// What folding shows.
struct folding_proof {
    bool outline; ///< one layer is the whole of the finished outline, and no cloth lies outside it
    bool mitres;  ///< at each mitred corner the hems meet along the line from the finished corner to their inner corner
    bool hems;    ///< inward of all turned cloth the piece is one layer: no corner shows past the hems
    bool cloth;   ///< the layers and what was trimmed are together the cut piece

    constexpr explicit operator bool() const { return outline && mitres && hems && cloth; }
};

template <length_unit Unit, coordinate Number = fraction>
class folded_panel {
public:
    using point_type = point<Unit, Number>;

    /// Folds the corners' creases first, then the edges: long edges before short ones, left before right, top before
    /// bottom; all turned cloth goes behind the piece. Throws corner_error where a mitre has no room or no turned
    /// cloth, overflow_error where fractions run out: fold it in doubles then.
    folded_panel(const panel<Unit>& piece, const corners<Unit>& ways,
                 lie_of_allowances lie = lie_of_allowances::turned_back)
        : piece_(piece),
          ways_(ways),
          width_(piece.cut().width()),
          height_(piece.cut().height()),
          lie_(lie),
          stack_(whole()) {
        require_room_for_mitres();
        for (const corner c : every_corner)
            trim(c);
        for (const corner c : every_corner)
            crease(c);
        require_corners_apart();
        const bool level_first = piece.finished().width() >= piece.finished().height();
        for (const edge e : level_first ? std::array{edge::top, edge::bottom, edge::left, edge::right}
                                        : std::array{edge::left, edge::right, edge::top, edge::bottom})
            turn(e);
    }

    const folding<Unit, Number>& stack() const { return stack_; }
    const panel<Unit>& piece() const { return piece_; }
    const corners<Unit>& ways() const { return ways_; }

    /// From the cut edge to where the folded piece ends.
    length<Unit> outer_line(edge e) const {
        const finish<Unit>& f = piece_.finish_of(e);
        const length<Unit> last = f.folds().empty() ? length<Unit>() : f.folds().back().from_datum();
        return detail::is_turned(f) || lie_ == lie_of_allowances::left_flat ? last : f.allowance();
    }

    /// The outermost creases: counter-clockwise from the bottom left, in the coordinates of the stack.
    std::array<point_type, 4> outline() const {
        const Number left = x_at(edge::left), right = x_at(edge::right), bottom = y_at(edge::bottom),
                     top = y_at(edge::top);
        return {spot(left, bottom), spot(right, bottom), spot(right, top), spot(left, top)};
    }

    /// How many layers lie at a place of the finished piece. A place on an edge of cloth counts that cloth.
    std::size_t layers_at(const place<finished_edge, Unit>& from_left,
                          const place<finished_edge, Unit>& from_bottom) const {
        return stack_.layers_at(spot(number(piece_.finish_of(edge::left).allowance() + from_left.from_datum()),
                                     number(piece_.finish_of(edge::bottom).allowance() + from_bottom.from_datum())));
    }

    /// The most layers that a row of stitching along an edge goes through, from finished edge to finished edge.
    thickest<Unit, Number> most_layers_in_row(edge along, const place<cut_edge, Unit>& row) const {
        const length<Unit> in = row.from_datum();
        if (along == edge::left || along == edge::right) {
            const Number x = number(along == edge::left ? in : width_ - in);
            return stack_.most_layers_along(spot(x, y_at(edge::bottom)), spot(x, y_at(edge::top)));
        }
        const Number y = number(along == edge::bottom ? in : height_ - in);
        return stack_.most_layers_along(spot(x_at(edge::left), y), spot(x_at(edge::right), y));
    }

    folding_proof proof() const {
        folding_proof shown{outline_is_whole(), true, hems_cover_all(), true};
        for (const corner c : every_corner)
            shown.mitres &= !ways_[c].is_mitred || hems_meet(c);
        const Number cut = number(width_) * number(height_);
        shown.cloth = detail::sign(stack_.area().value() + stack_.trimmed_area().value() - cut) == 0;
        return shown;
    }

private:
    static Number number(length<Unit> l) {
        if constexpr (std::same_as<Number, double>)
            return to_double(l.value());
        else
            return l.value();
    }
    static point_type spot(const Number& x, const Number& y) {
        return detail::in_unit<Unit>(detail::arrow<Number>{x, y});
    }

    polygon<Unit, Number> whole() const {
        const Number none = 0, w = number(width_), h = number(height_);
        return {spot(none, none), spot(w, none), spot(w, h), spot(none, h)};
    }

    static constexpr edge upright_of(corner c) {
        return c == corner::top_left || c == corner::bottom_left ? edge::left : edge::right;
    }
    static constexpr edge level_of(corner c) {
        return c == corner::top_left || c == corner::top_right ? edge::top : edge::bottom;
    }
    mitre<Unit> mitre_of(corner c) const {
        return mitre<Unit>(piece_.finish_of(upright_of(c)), piece_.finish_of(level_of(c)));
    }

    /// A point measured from a cut corner, measured from the bottom left one.
    point_type from_corner(corner c, const point<Unit>& p) const {
        return spot(number(upright_of(c) == edge::left ? p.x : width_ - p.x),
                    number(level_of(c) == edge::bottom ? p.y : height_ - p.y));
    }
    /// The corner lies left of the line here too: at two corners the view is mirrored, so the line is reversed.
    line<Unit, Number> from_corner(corner c, const line<Unit>& l) const {
        const bool mirrored = (upright_of(c) == edge::right) != (level_of(c) == edge::top);
        return mirrored ? line<Unit, Number>{from_corner(c, l.to), from_corner(c, l.from)}
                        : line<Unit, Number>{from_corner(c, l.from), from_corner(c, l.to)};
    }

    /// Creases that cross each other on the piece would fold each other's corners.
    void require_room_for_mitres() const {
        require_room(corner::top_left, corner::top_right, width_, edge::top);
        require_room(corner::bottom_left, corner::bottom_right, width_, edge::bottom);
        require_room(corner::bottom_left, corner::top_left, height_, edge::left);
        require_room(corner::bottom_right, corner::top_right, height_, edge::right);
    }
    void require_room(corner one, corner other, length<Unit> cut, edge shared) const {
        const length<Unit> needed = leg(one, shared) + leg(other, shared);
        if (needed > cut)
            detail::refuse<corner_error>("the mitres of the " + std::string(name_of(shared)) + " edge take up " +
                                             to_text(needed) + " of it, and it is cut " + to_text(cut) + " long",
                                         refusal{.kind = fault::no_room,
                                                 .what = "the mitres of an edge",
                                                 .given = amount_of(needed),
                                                 .most = amount_of(cut),
                                                 .where = std::string(name_of(shared))});
    }
    length<Unit> leg(corner c, edge along) const {
        if (!ways_[c].is_mitred)
            return {};
        const corner_legs<Unit> legs = mitre_of(c).crease_legs();
        return is_level(along) ? legs.along_level : legs.along_upright;
    }

    void trim(corner c) {
        if (ways_[c].is_mitred && ways_[c].allowance)
            stack_.trim(from_corner(c, mitre_of(c).trim(*ways_[c].allowance, ways_[c].step).across()));
    }

    void crease(corner c) {
        if (!ways_[c].is_mitred)
            return;
        stack_.fold(from_corner(c, mitre_of(c).crease()));
    }

    /// Once all corners are folded across, only the piece itself lies face up, unless one corner's crease has turned
    /// back another's cloth.
    void require_corners_apart() const {
        std::size_t face_up = 0;
        for (std::size_t i = 0; i < stack_.layer_count(); ++i)
            face_up += stack_.layer(i).face_up ? 1 : 0;
        if (face_up != 1)
            detail::refuse<corner_error>(
                "the corners of this piece, folded across, lie over one another: trim them, or "
                "stack them, or make its hems less unequal",
                refusal{fault::disagree, "the corners of a piece"});
    }

    void turn(edge e) {
        const finish<Unit>& f = piece_.finish_of(e);
        for (const auto& at_fold : f.folds())
            stack_.fold(crease_along(e, at_fold.from_datum()));
        if (outer_line(e) == f.allowance() && !detail::is_turned(f) && f.allowance().value() > 0)
            stack_.fold(crease_along(e, f.allowance()));
    }

    /// What lies between it and the cut edge is left of it.
    line<Unit, Number> crease_along(edge e, length<Unit> in) const {
        const Number none = 0, one = 1, x = number(e == edge::left ? in : width_ - in),
                     y = number(e == edge::bottom ? in : height_ - in);
        switch (e) {
        case edge::left:
            return {spot(x, none), spot(x, one)};
        case edge::right:
            return {spot(x, one), spot(x, none)};
        case edge::bottom:
            return {spot(one, y), spot(none, y)};
        case edge::top:
            break;
        }
        return {spot(none, y), spot(one, y)};
    }

    Number x_at(edge e) const { return number(e == edge::left ? outer_line(e) : width_ - outer_line(e)); }
    Number y_at(edge e) const { return number(e == edge::bottom ? outer_line(e) : height_ - outer_line(e)); }

    /// A convex layer within a rectangle, and as large, is that rectangle.
    bool outline_is_whole() const {
        const auto asked = outline();
        const auto low = detail::bare(asked[0]), high = detail::bare(asked[2]);
        bool one_is_whole = false;
        for (std::size_t i = 0; i < stack_.layer_count(); ++i) {
            const auto corners_of_layer = stack_.layer(i).corners;
            for (const point_type& p : corners_of_layer)
                if (detail::compare(p.x.value(), low.x) < 0 || detail::compare(p.y.value(), low.y) < 0 ||
                    detail::compare(high.x, p.x.value()) < 0 || detail::compare(high.y, p.y.value()) < 0)
                    return false;
            one_is_whole |= detail::sign(area_of(corners_of_layer).value() - area_of(asked).value()) == 0;
        }
        return one_is_whole;
    }

    bool hems_meet(corner c) const {
        const mitre<Unit> m = mitre_of(c);
        return detail::meet_along(stack_, from_corner(c, m.finished_corner()), from_corner(c, m.hem_corner()));
    }

    /// From the cut edge to where turned cloth ends.
    length<Unit> inside(edge e) const {
        const finish<Unit>& f = piece_.finish_of(e);
        if (detail::is_turned(f) || lie_ == lie_of_allowances::left_flat)
            return f.allowance() + f.reach();
        return f.allowance() * 2 - (f.folds().empty() ? length<Unit>() : f.folds().back().from_datum());
    }

    /// Inward of every hem lies one layer. Each other layer must be apart from that rectangle: convex figures are apart
    /// exactly where a line along a side of one of them parts them.
    bool hems_cover_all() const {
        const Number left = number(inside(edge::left)), right = number(width_ - inside(edge::right)),
                     bottom = number(inside(edge::bottom)), top = number(height_ - inside(edge::top));
        if (detail::compare(right, left) <= 0 || detail::compare(top, bottom) <= 0)
            return true;
        const std::array<detail::arrow<Number>, 4> body = {
            {{left, bottom}, {right, bottom}, {right, top}, {left, top}}};
        std::size_t over = 0;
        for (std::size_t i = 0; i < stack_.layer_count(); ++i)
            over += apart(stack_.layer(i).corners, body) ? 0 : 1;
        return over == 1;
    }
    static bool apart(std::span<const point_type> layer, const std::array<detail::arrow<Number>, 4>& body) {
        const auto all = [&](auto outside) {
            return std::all_of(layer.begin(), layer.end(),
                               [&](const point_type& p) { return outside(detail::bare(p)); });
        };
        if (all([&](const auto& p) { return detail::compare(p.x, body[0].x) <= 0; }) ||
            all([&](const auto& p) { return detail::compare(p.y, body[0].y) <= 0; }) ||
            all([&](const auto& p) { return detail::compare(p.x, body[2].x) >= 0; }) ||
            all([&](const auto& p) { return detail::compare(p.y, body[2].y) >= 0; }))
            return true;
        for (std::size_t i = 0; i < layer.size(); ++i) {
            const auto a = detail::bare(layer[i]), b = detail::bare(layer[i + 1 == layer.size() ? 0 : i + 1]);
            if (std::all_of(body.begin(), body.end(), [&](const auto& p) { return detail::turn(a, b, p) <= 0; }))
                return true;
        }
        return false;
    }

    panel<Unit> piece_;
    corners<Unit> ways_;
    length<Unit> width_, height_;
    lie_of_allowances lie_;
    folding<Unit, Number> stack_;
};

/// Folds a panel by the folds of its own finishes and its corners. Throws as folded_panel. Each fold looks at every
/// layer and may double them.
template <coordinate Number = fraction, length_unit Unit>
folded_panel<Unit, Number> fold_panel(const panel<Unit>& piece, const corners<Unit>& ways,
                                      lie_of_allowances lie = lie_of_allowances::turned_back) {
    return folded_panel<Unit, Number>(piece, ways, lie);
}

TURNCLOTH_ONCE(class folded_panel<inch, fraction>);
TURNCLOTH_ONCE(class folded_panel<centimetre, fraction>);

} // namespace turncloth

#endif
