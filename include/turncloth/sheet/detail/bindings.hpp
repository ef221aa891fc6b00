// The strips that bind edges of pieces: pieces of the sheet themselves, with their folds and rows, and what they come to.
//
//   add_bindings(draft)
#ifndef TURNCLOTH_SHEET_DETAIL_BINDINGS_HPP
#define TURNCLOTH_SHEET_DETAIL_BINDINGS_HPP

#include <turncloth/sheet/detail/binding_said.hpp>
#include <turncloth/sheet/detail/pieces.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
class binding_work {
public:
    binding_work(sheet_draft<Unit>& draft, const edge_binding<Unit>& b, const piece<Unit>& on)
        : draft_(draft), b_(b), strip_(strip_of(b)), edges_(edges_of(b)), on_(on) {}

    /// Throws binding_error, finish_error and size_error as the making of a strip.
    void add_all() {
        require_bindable(strip_);
        if (edges_.size() == all_edges.size())
            require_more_than_zero<binding_error>(b_.turned_in, "what is turned in at the ends of a binding");
        for (std::size_t i = 0; i < edges_.size(); ++i)
            check_edge(i);
        if (!draft_.is_sound())
            return;
        // What binds layers lies wrong side up, as making_of has it: the strip's own names for its edges follow.
        const auto& all = draft_.from().pieces();
        const bool layered = std::any_of(all.begin(), all.end(), [&](const piece<Unit>& inner) {
            return inner.inside() == on_.name() && &inner != &on_;
        });
        const panel_part<Unit> lies{{}, on_.shape(), layered ? face::wrong : face::right};
        figure<Unit> joined;
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
            if (std::find(edges_.begin(), edges_.end(), e) != edges_.end())
                joined.plus(add_strip(e, lies), name_of_strip(e));
        list(joined);
    }

private:
    static label name_of_strip(edge e) {
        switch (e) {
        case edge::top:
            return "top";
        case edge::bottom:
            return "bottom";
        case edge::left:
            return "left";
        case edge::right:
            break;
        }
        return "right";
    }

    void check_edge(std::size_t i) {
        const edge e = edges_[i];
        const std::string where = std::string(name_of(e)) + " edge of " + named(b_.on);
        const finish<Unit>& f = on_.shape().finish_of(e);
        if (f.joins() || f.allowance().value() != 0 || !f.folds().empty())
            return draft_.refuse({"the ", where, " is bound in strips, and finished as a ", f.name(), " besides"},
                                 {.kind = fault::disagree, .what = "the finish of a bound edge", .where = b_.on}, e);
        if (!f.stitching().empty() && f.stitching()[0] != at<cut_edge>(b_.finished))
            return draft_.refuse({"the ", where, " is finished for a binding of ", f.stitching()[0].from_datum(),
                                  ", and its strips are to show ", b_.finished},
                                 {.kind = fault::disagree,
                                  .what = "the width of a binding",
                                  .given = b_.finished,
                                  .most = f.stitching()[0].from_datum(),
                                  .where = b_.on},
                                 e);
        for (const edge_binding<Unit>& other : draft_.from().bindings()) {
            const std::vector<edge> bound = edges_of(other);
            if (other.on == b_.on && std::count(bound.begin(), bound.end(), e) > (&other == &b_ ? 1 : 0))
                return draft_.refuse({"the ", where, " is bound twice"},
                                     {.kind = fault::repeated, .what = "a bound edge", .where = b_.on}, e);
        }
        for (const edge beside : edges_)
            if (edges_.size() < all_edges.size() && is_level(beside) != is_level(e))
                return draft_.refuse({"strips that meet at a corner bind ", named(b_.on),
                                      " all round: name every edge, or no two that meet"},
                                     {.kind = fault::unsuitable, .what = "the edges of a binding", .where = b_.on}, e);
    }

    /// How long it is.
    length<Unit> add_strip(edge e, const panel_part<Unit>& on) {
        const binding_strip<Unit> strip = strip_for(strip_, e, edges_.size() == all_edges.size());
        check_name(draft_, strip.name);
        piece<Unit> cut(strip.name, b_.material, strip_panel(strip, on, e));
        cut.count(on_.count());
        const panel<Unit>& shape = cut.shape();
        draft_.made().pieces.push_back(
            {cut, shape.cut(), shape.width_working(), shape.height_working(), shape.finished()});
        piece_work<Unit>(draft_, draft_.made().pieces.back()).add_all();
        return is_level(e) ? shape.cut().width() : shape.cut().height();
    }

    void list(const figure<Unit>& joined) {
        notion<Unit> n(b_.name + " of the " + b_.on);
        n.figure("strips, cut width", strip_.width());
        n.number("strips", static_cast<std::int64_t>(edges_.size()) * on_.count());
        draft_.made().notions.push_back(
            n.figure(on_.count() == 1 ? "all strips together" : "the strips of each", joined));
    }

    sheet_draft<Unit>& draft_;
    const edge_binding<Unit>& b_;
    binding_strip<Unit> strip_;
    std::vector<edge> edges_;
    const piece<Unit> on_; ///< a copy: the sheet's pieces move as strips are added to them
};

template <length_unit Unit>
void add_bindings(sheet_draft<Unit>& draft) {
    for (const edge_binding<Unit>& b : draft.from().bindings()) {
        const sheet_piece<Unit>* on = draft.find_for("a binding is sewn to", b.on);
        if (on == nullptr)
            continue;
        draft.attempt("the binding of " + named(b.on), b.on,
                      [&] { binding_work<Unit>(draft, b, on->made_from).add_all(); });
    }
}

} // namespace detail

} // namespace turncloth

#endif
