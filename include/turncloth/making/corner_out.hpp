// A corner that is cut out of a piece: a slit whose width reaches from one edge, and that runs from another.
//
//   corner_cut_out(design, snip)       the corner_out<U> it cuts; nothing where it is a slit within the piece, or a clip
//   cut_out_beside(design, line)       how much of the cloth between a line and its edge is cut out
//   corner_cut_beside(design, line)    the other edge of the corner that is cut out there; nothing where none is
//
//   const snip<inch> s{.at = {.on = bag, .from = edge::bottom, .in = at<cut_edge>(1_in), .ends = 2_in}, .width = 2_in};
//   corner_cut_out(design, s)->in == 2_in;      // a square of 2 in at the bottom left
#ifndef TURNCLOTH_MAKING_CORNER_OUT_HPP
#define TURNCLOTH_MAKING_CORNER_OUT_HPP

#include <turncloth/making/design.hpp>

#include <algorithm>
#include <optional>

namespace turncloth {

template <length_unit Unit>
struct corner_out {
    edge end = edge::left;   ///< the slit's own edge is the other of the corner
    length<Unit> in{}, up{}; ///< from the slit's own edge, and from `end`
};

template <length_unit Unit>
std::optional<corner_out<Unit>> corner_cut_out(const making<Unit>& design, const snip<Unit>& s) {
    const bool level = s.at.is_level();
    const part<Unit>& p = design.parts()[s.at.on.index];
    const length<Unit> begins = s.at.begin(), ends = s.at.end_on(p);
    const bool near = begins == length<Unit>(), far = ends == (level ? p.width : p.height);
    if (s.kind != snip_kind::slit || s.width == length<Unit>() || s.at.in.from_datum() > s.width / 2 || near == far)
        return {};
    return corner_out<Unit>{level ? (near ? edge::left : edge::right) : (near ? edge::top : edge::bottom),
                            s.at.in.from_datum() + s.width / 2, ends - begins};
}

namespace detail {

template <length_unit Unit>
struct cut_between {
    length<Unit> deep{};
    std::optional<edge> other{};
};
template <length_unit Unit>
cut_between<Unit> cut_out_between(const making<Unit>& design, const chalk_line<Unit>& l) {
    const part<Unit>& p = design.parts()[l.on.index];
    const length<Unit> all = l.is_level() ? p.width : p.height;
    cut_between<Unit> most;
    for (const snip<Unit>& s : design.snips()) {
        const auto out = s.at.on == l.on ? corner_cut_out(design, s) : std::nullopt;
        if (!out || (s.at.from != l.from && out->end != l.from))
            continue;
        const bool own = s.at.from == l.from;
        const edge other = own ? out->end : s.at.from;
        const length<Unit> deep = own ? out->in : out->up, wide = own ? out->up : out->in;
        const bool near = other == edge::left || other == edge::top;
        if (deep < l.in.from_datum() && deep > most.deep && (near ? l.begin() < wide : l.end_on(p) > all - wide))
            most = {deep, other};
    }
    return most;
}

} // namespace detail

/// Where a corner is cut out, what is sewn along it is so much nearer to the edge that is left.
template <length_unit Unit>
length<Unit> cut_out_beside(const making<Unit>& design, const chalk_line<Unit>& l) {
    return detail::cut_out_between(design, l).deep;
}
template <length_unit Unit>
std::optional<edge> corner_cut_beside(const making<Unit>& design, const chalk_line<Unit>& l) {
    return detail::cut_out_between(design, l).other;
}

} // namespace turncloth

#endif
