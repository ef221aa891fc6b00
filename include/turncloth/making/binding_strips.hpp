// Strips that bind raw edges: each sewn on, brought over the edge, and sewn down on its other face.
//
//   binding_strip<U>                             what it is cut from, as notions/binding.hpp works its width out
//   strip_panel(strip, on, edge)                 the panel that a strip is cut for: its folds and rows as finishes
//   bind_edge(design, on, edge, strip, walls)    one edge of a piece, and of what lies on it: a bound_edge
//   bind_all_round(design, on, strip, walls)     left and right, then top and bottom over them: four of them
//   length_of_strips(on, strip)                  of all four together: binding_length (notions/binding.hpp) with that
//                                                much in each corner's fold
//
//   const auto bound = bind_all_round<inch>(design, mat, {.finished = "1/2"_in, .allowance = {.seam = "1/2"_in},
//                                                         .inset = "1/16"_in, .turned_in = "1/2"_in});
//
// By paper. The strip lies under the piece, right side up, its edge as far inside that of the piece as the binding is
// wider than its seam; sewn, folded outward along that row, brought over the edge on top, and sewn down there, its
// other edge turned under, or its fold where it is doubled. So what the machine sews last is seen while it is sewn: on the
// right side of a piece that lies right side up, on the wrong side of one that lies wrong side up, as by hand.
//
// Corners are square folds: the strips of the sides are cut level with the piece, and those of top and bottom, which lie
// over them, have their ends turned in and are sewn shut by hand there. The mitre of a continuous strip is not modelled:
// between two edges that strip goes on along another way of the cloth, as no one laying of it does. Its length is
// binding_length with nothing in the corners' folds, and what is sewn of it is what is sewn of these.
#ifndef TURNCLOTH_MAKING_BINDING_STRIPS_HPP
#define TURNCLOTH_MAKING_BINDING_STRIPS_HPP

#include <turncloth/making/finishing.hpp>
#include <turncloth/notions/binding.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct binding_strip {
    std::string name = "binding";
    turncloth::cloth<Unit> cloth{};
    length<Unit> finished{};             ///< shown on either face
    binding_allowance<Unit> allowance{}; ///< no wider than the binding
    length<Unit> inset{};                ///< of the last row, from the binding's inner edge
    length<Unit> turned_in{};            ///< at both ends of a strip that lies over others; none where it is cut level
    bool doubled = false;                ///< two layers, brought over by their fold
    bool by_hand = false;                ///< the last row

    figure<Unit> width() const { return doubled ? double_fold(finished, allowance) : single_fold(finished, allowance); }
    /// What a strip goes on by at an end that is turned in, round the strips that it lies over.
    length<Unit> beyond() const { return turned_in.value() > 0 ? turned_in + allowance.turn / 2 : length<Unit>(); }
};

struct bound_edge {
    cut_part strip{};
    std::vector<operation> steps{}; ///< one after another
};

namespace detail {

template <length_unit Unit>
void require_bindable(const binding_strip<Unit>& b) {
    require_more_than_zero<binding_error>(b.finished, "the finished width of a binding");
    require_more_than_zero<binding_error>(b.inset, "the inset of a binding's last row");
    require_not_negative<binding_error>(b.turned_in, "what is turned in at the ends of a binding");
    require_allowance(b.allowance);
    const auto at_most = [](length<Unit> given, length<Unit> most, const char* what, const char* than) {
        if (given > most)
            refuse<binding_error>({what, " of ", given, " is more than ", than, ", ", most},
                                  {.kind = fault::too_large, .what = what, .given = given, .most = most});
    };
    at_most(b.allowance.seam, b.finished, "the seam of a binding", "its finished width");
    at_most(b.inset, b.doubled ? b.finished : b.allowance.seam, "the inset of a binding's last row",
            b.doubled ? "its finished width" : "its seam");
    if (b.turned_in.value() > 0)
        at_most(b.inset + b.allowance.turn, b.turned_in, "the inset and turn of a binding", "what its ends turn in");
}

/// The strip's own name for the edge that is sewn first: face to face its left lies at the right.
constexpr edge sewn_first(edge e, face up) { return is_level(e) || up == face::right ? e : opposite(e); }

/// One of several, by its edge; all round, those of the sides are cut level.
template <length_unit Unit>
binding_strip<Unit> strip_for(binding_strip<Unit> b, edge e, bool all_round) {
    b.name += ", " + std::string(name_of(e));
    if (all_round && !is_level(e))
        b.turned_in = {};
    return b;
}

} // namespace detail

/// As long as that edge of the piece is cut, and what its ends turn in; it finishes as wide as it shows.
template <length_unit Unit>
panel<Unit> strip_panel(const binding_strip<Unit>& b, const std::type_identity_t<panel_part<Unit>>& on, edge e) {
    const length<Unit> wide = b.width().value(), seam = b.allowance.seam, turn = b.allowance.turn,
                       under = wide - seam - b.finished * 2 - turn;
    finish<Unit> first("binding, sewn first"), last("binding, brought over"), end("end of a binding");
    first.allows(seam).folds_at(seam).stitched_at(seam);
    last.allows(under).allows(b.finished + turn).folds_at(under).folds_at(under + b.finished + turn / 2);
    last.stitched_at(under + b.inset);
    if (b.turned_in.value() > 0) {
        end.allows(b.turned_in).folds_at(b.turned_in);
        if (turn.value() > 0)
            end.allows(turn / 2);
    }
    const bool near = detail::sewn_first(e, on.up) == edge::top || detail::sewn_first(e, on.up) == edge::left;
    const finish<Unit>&near_edge = near ? first : last, &far_edge = near ? last : first;
    const cut_size<Unit> size = on.shape.cut();
    return is_level(e) ? panel<Unit>(finished_size<Unit>(size.width(), b.finished), {near_edge, end, far_edge, end})
                       : panel<Unit>(finished_size<Unit>(b.finished, size.height()), {end, far_edge, end, near_edge});
}

namespace detail {

/// One strip: the lines on it, from the edge that is sewn first.
template <length_unit Unit>
class strip_binder {
public:
    strip_binder(making<Unit>& design, const panel_part<Unit>& on, edge e, const binding_strip<Unit>& b, cut_part strip)
        : design_(design),
          on_(on),
          edge_(e),
          b_(b),
          wide_(b.width().value()),
          sewn_(sewn_first(e, on.up)),
          strip_(strip) {}

    /// `sides`: the strips that lie at its first and at its other end, on the piece; `walls`: as edges_binder has them.
    template <class Walls>
    bound_edge bind(const Walls& walls_at, const std::vector<cut_part>& sides = {}) {
        const length<Unit> seam = b_.allowance.seam, over = seam + b_.finished + b_.allowance.turn / 2,
                           inner = seam + b_.finished * 2 + b_.allowance.turn;
        const auto through = [&](length<Unit> in) {
            std::vector<cut_part> all = {strip_, on_.part};
            for (const std::vector<cut_part>& more : {walls_at(edge_, edge_, in), sides})
                all.insert(all.end(), more.begin(), more.end());
            return all;
        };
        turn_ends_in();
        fold(inner, false);
        then(lay());
        then(design_.add(stitching<Unit>{.along = along(seam), .through = through(b_.finished)}));
        fold(seam, false);
        fold(over, true);
        then(design_.add(stitching<Unit>{
            .along = along(inner - b_.inset), .through = through(b_.finished - b_.inset), .by_hand = b_.by_hand}));
        sew_ends_shut(walls_at, sides);
        return {strip_, std::move(done_)};
    }

private:
    chalk_line<Unit> along(length<Unit> in) const { return {.on = strip_, .from = sewn_, .in = at<cut_edge>(in)}; }
    std::array<edge, 2> ends() const {
        return is_level(edge_) ? std::array{edge::left, edge::right} : std::array{edge::top, edge::bottom};
    }
    /// After all before it: folds of one edge would else come from that edge inward.
    void then(const operation& next) {
        for (const operation& first : done_)
            design_.add(before{first, next, "a binding is sewn on, brought over and sewn down in turn"});
        done_.push_back(next);
    }
    /// What lies beyond that place is turned.
    void fold(length<Unit> in, bool over) {
        then(design_.add(
            crease<Unit>{.at = {.on = strip_, .from = opposite(sewn_), .in = at<cut_edge>(wide_ - in)}, .over = over}));
    }

    void turn_ends_in() {
        for (const edge end : ends())
            if (b_.turned_in.value() > 0)
                then(design_.add(crease<Unit>{.at = {.on = strip_, .from = end, .in = at<cut_edge>(b_.turned_in)}}));
    }
    operation lay() {
        const cut_size<Unit> size = on_.shape.cut();
        const length<Unit> in = b_.finished - b_.allowance.seam,
                           across = is_level(edge_) ? size.height() : size.width(),
                           first = edge_ == edge::left || edge_ == edge::top ? in : across - in - wide_;
        return design_.add(laying<Unit>{.piece = strip_,
                                        .on = on_,
                                        .left = is_level(edge_) ? -b_.beyond() : first,
                                        .top = is_level(edge_) ? first : -b_.beyond(),
                                        .beneath = true});
    }
    /// Across the face that is seen last, as wide as the binding shows.
    template <class Walls>
    void sew_ends_shut(const Walls& walls_at, const std::vector<cut_part>& sides) {
        if (b_.turned_in.value() == 0)
            return;
        const bool from_far = sewn_ == edge::right || sewn_ == edge::bottom, face_to_face = on_.up == face::wrong;
        const length<Unit> near = b_.allowance.seam, far = near + b_.finished;
        for (const std::size_t k : {0U, 1U}) {
            stitching<Unit> row{.along = {.on = strip_,
                                          .from = ends()[k],
                                          .in = at<cut_edge>(b_.beyond() + b_.inset),
                                          .begins = from_far ? wide_ - far : near,
                                          .ends = from_far ? wide_ - near : far},
                                .through = {strip_, on_.part},
                                .by_hand = true};
            const std::size_t at =
                face_to_face && is_level(edge_) ? 1 - k : k; // its left end at the right of the piece
            for (const cut_part& wall : walls_at(edge_, ends()[at], b_.inset))
                row.through.push_back(wall);
            if (!sides.empty())
                row.through.push_back(sides[at]);
            then(design_.add(std::move(row)));
        }
    }

    making<Unit>& design_;
    const panel_part<Unit>& on_;
    edge edge_;
    const binding_strip<Unit>& b_;
    length<Unit> wide_;
    edge sewn_; ///< the strip's own name for the edge that is sewn first
    cut_part strip_;
    std::vector<operation> done_{};
};

/// Strips of one piece, or of each of several cut alike, for edges of which either all four are named or no two that
/// meet. Those of left and right are sewn first; where all are named, those of top and bottom lie over them.
template <length_unit Unit>
class edges_binder {
public:
    /// `on`: the first of `count` copies.
    edges_binder(making<Unit>& design, const panel_part<Unit>& on, const binding_strip<Unit>& b,
                 const std::vector<edge>& edges, std::int64_t count = 1)
        : design_(design), on_(on) {
        require_bindable(b);
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
            if (std::find(edges.begin(), edges.end(), e) != edges.end())
                cut(e, b, edges.size() == 4, count);
    }

    /// The k-th copy; `walls(edge, edge, in)`: what else the row so far in from an edge goes through; `walls(edge, end, in)`:
    /// what the row across its strip does, so far in from that end.
    template <class Walls>
    std::vector<bound_edge> bind(std::int64_t k, const Walls& walls) {
        std::vector<bound_edge> made;
        std::vector<cut_part> sides;
        const panel_part<Unit> on = on_[k];
        for (const strip_cut& s : strips_) {
            const bool over = strips_.size() == 4 && is_level(s.at);
            made.push_back(strip_binder<Unit>(design_, on, s.at, s.from, s.part[k])
                               .bind(walls, over ? sides : std::vector<cut_part>()));
            if (!is_level(s.at))
                sides.push_back(s.part[k]);
        }
        for (auto one = made.begin(); one != made.end(); ++one)
            for (auto later = one + 1; later != made.end(); ++later)
                for (const operation& first : one->steps)
                    for (const operation& next : later->steps)
                        design_.add(
                            before{first, next, "one strip of a binding is sewn down before the next is sewn on"});
        return made;
    }

private:
    struct strip_cut {
        edge at;
        binding_strip<Unit> from;
        cut_part part;
    };

    void cut(edge e, binding_strip<Unit> b, bool all_round, std::int64_t count) {
        b = strip_for(b, e, all_round);
        const panel<Unit> shape = strip_panel(b, on_, e);
        const cut_part part = cut_for(design_, b.name, shape, {.cloth = b.cloth, .count = count});
        strips_.push_back({e, std::move(b), part});
    }

    making<Unit>& design_;
    const panel_part<Unit> on_;
    std::vector<strip_cut> strips_{};
};

} // namespace detail

/// `walls`: what else its rows go through. The piece's own edge is raw there, or finished as a separate binding
/// (panel/finish.hpp). Throws binding_error for a seam wider than the binding, for an inset of nothing or beyond what is
/// turned under, and as single_fold and double_fold.
template <length_unit Unit>
bound_edge bind_edge(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& on, edge e,
                     const std::type_identity_t<binding_strip<Unit>>& strip, std::vector<cut_part> walls = {}) {
    return detail::edges_binder<Unit>(design, on, strip, {e})
        .bind(0, [&](edge, edge, length<Unit>) { return walls; })
        .front();
}

/// Left, right, top, bottom. Throws as bind_edge, and for ends of nothing.
template <length_unit Unit>
std::array<bound_edge, 4> bind_all_round(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& on,
                                         const std::type_identity_t<binding_strip<Unit>>& strip,
                                         std::vector<cut_part> walls = {}) {
    require_more_than_zero<binding_error>(strip.turned_in, "what is turned in at the ends of a binding");
    std::vector<bound_edge> made =
        detail::edges_binder<Unit>(design, on, strip, {edge::left, edge::right, edge::top, edge::bottom})
            .bind(0, [&](edge, edge, length<Unit>) { return walls; });
    return {std::move(made[0]), std::move(made[1]), std::move(made[2]), std::move(made[3])};
}

/// Of the four strips that bind a piece all round: its edge, and at each corner what the upper strip's end turns in.
template <length_unit Unit>
figure<Unit> length_of_strips(const finished_size<Unit>& piece,
                              const std::type_identity_t<binding_strip<Unit>>& strip) {
    return binding_length(piece, binding_extra<Unit>{.fold = strip.beyond()});
}

} // namespace turncloth

#endif
