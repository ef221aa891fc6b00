// Strips that bind raw edges: each sewn on, brought over the edge, and sewn down on its other face.
//
//   binding_strip<U>                             what it is cut from, as notions/binding.hpp works its width out
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

#include <array>
#include <cstddef>
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

/// One strip: the lines on it, from the edge that is sewn first.
template <length_unit Unit>
class strip_binder {
public:
    strip_binder(making<Unit>& design, const panel_part<Unit>& on, edge e, const binding_strip<Unit>& b)
        : design_(design),
          on_(on),
          edge_(e),
          b_(b),
          wide_(b.width().value()),
          sewn_(is_level(e) || on.up == face::right ? e : opposite(e)) {}

    /// `at_ends`: what lies at the first and at the other end alone, on the piece.
    bound_edge bind(std::vector<cut_part> walls, const std::vector<cut_part>& at_ends = {}) {
        const length<Unit> seam = b_.allowance.seam, over = seam + b_.finished + b_.allowance.turn / 2,
                           inner = seam + b_.finished * 2 + b_.allowance.turn;
        cut();
        walls.insert(walls.begin(), {strip_, on_.part});
        std::vector<cut_part> all = walls;
        all.insert(all.end(), at_ends.begin(), at_ends.end());
        turn_ends_in();
        fold(inner, false);
        then(lay());
        then(design_.add(stitching<Unit>{.along = along(seam), .through = all}));
        fold(seam, false);
        fold(over, true);
        then(design_.add(stitching<Unit>{.along = along(inner - b_.inset), .through = all, .by_hand = b_.by_hand}));
        sew_ends_shut(walls, at_ends);
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

    void cut() {
        const cut_size<Unit> size = on_.shape.cut();
        const length<Unit> long_ = (is_level(edge_) ? size.width() : size.height()) + b_.beyond() * 2;
        strip_ = design_.cut({.name = b_.name,
                              .cloth = b_.cloth,
                              .width = is_level(edge_) ? long_ : wide_,
                              .height = is_level(edge_) ? wide_ : long_});
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
    void sew_ends_shut(const std::vector<cut_part>& walls, const std::vector<cut_part>& at_ends) {
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
                                .through = walls,
                                .by_hand = true};
            if (!at_ends.empty()) // face to face the strip's left end lies at the right of the piece
                row.through.push_back(at_ends[face_to_face && is_level(edge_) ? 1 - k : k]);
            then(design_.add(std::move(row)));
        }
    }

    making<Unit>& design_;
    const panel_part<Unit>& on_;
    edge edge_;
    const binding_strip<Unit>& b_;
    length<Unit> wide_;
    edge sewn_; ///< the strip's own name for the edge that is sewn first
    cut_part strip_{};
    std::vector<operation> done_{};
};

} // namespace detail

/// `walls`: what else its rows go through. The piece's own edge is raw there, or finished as a separate binding
/// (panel/finish.hpp). Throws binding_error for a seam wider than the binding, for an inset of nothing or beyond what is
/// turned under, and as single_fold and double_fold.
template <length_unit Unit>
bound_edge bind_edge(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& on, edge e,
                     const std::type_identity_t<binding_strip<Unit>>& strip, std::vector<cut_part> walls = {}) {
    detail::require_bindable<Unit>(strip);
    return detail::strip_binder<Unit>(design, on, e, strip).bind(std::move(walls));
}

/// Left, right, top, bottom. Throws as bind_edge, and for ends of nothing.
template <length_unit Unit>
std::array<bound_edge, 4> bind_all_round(making<Unit>& design, const std::type_identity_t<panel_part<Unit>>& on,
                                         const std::type_identity_t<binding_strip<Unit>>& strip,
                                         std::vector<cut_part> walls = {}) {
    require_more_than_zero<binding_error>(strip.turned_in, "what is turned in at the ends of a binding");
    detail::require_bindable<Unit>(strip);
    std::array<bound_edge, 4> made{};
    binding_strip<Unit> side = strip, over = strip;
    side.turned_in = {};
    side.name = strip.name + ", left";
    made[0] = bind_edge(design, on, edge::left, side, walls);
    side.name = strip.name + ", right";
    made[1] = bind_edge(design, on, edge::right, side, walls);
    const std::vector<cut_part> sides = {made[0].strip, made[1].strip};
    over.name = strip.name + ", top";
    made[2] = detail::strip_binder<Unit>(design, on, edge::top, over).bind(walls, sides);
    over.name = strip.name + ", bottom";
    made[3] = detail::strip_binder<Unit>(design, on, edge::bottom, over).bind(walls, sides);
    for (auto one = made.begin(); one != made.end(); ++one)
        for (auto later = one + 1; later != made.end(); ++later)
            for (const operation& first : one->steps)
                for (const operation& next : later->steps)
                    design.add(before{first, next, "one strip of a binding is sewn down before the next is sewn on"});
    return made;
}

/// Of the four strips that bind a piece all round: its edge, and at each corner what the upper strip's end turns in.
template <length_unit Unit>
figure<Unit> length_of_strips(const finished_size<Unit>& piece,
                              const std::type_identity_t<binding_strip<Unit>>& strip) {
    return binding_length(piece, binding_extra<Unit>{.fold = strip.beyond()});
}

} // namespace turncloth

#endif
