// What a project says of its own making, as operations: where its designer's own begin.
//
//   making_of(project)             a project_making<U>
//   project_making<U>              .design   .part(name)   .parts   .zippers
//
//   auto bag = making_of(p);
//   sew_on(bag.design, bag.part("pocket"), bag.part("front"), {edge::left, edge::right, edge::bottom}, "1/8"_in);
//   p.made_as(bag.design);
//
// Every piece is cut; layers lie inside what binds them, and pieces where they are placed, held by the rows that a placing
// names; zippers are sewn over their piece, rows across their ends too; eyelets are set; edges are bound in strips; seams of two
// edges are sewn; and every other edge that is sewn to no other piece is finished, through whatever lies there. A project does
// not say what holds a piece whose placing names no row, nor how meetings, pleats and other seams are sewn: those are the
// designer's to add, and so are the finishes of a meeting's longer piece, since they depend on the face that it lies with.
#ifndef TURNCLOTH_SHEET_MAKING_OF_HPP
#define TURNCLOTH_SHEET_MAKING_OF_HPP

#include <turncloth/making/fastenings.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/making/ruled.hpp>
#include <turncloth/making/zippers_over.hpp>
#include <turncloth/sheet/cloth_of.hpp>
#include <turncloth/sheet/detail/binding_said.hpp>
#include <turncloth/sheet/detail/edge_seams.hpp>
#include <turncloth/sheet/detail/lying_there.hpp>
#include <turncloth/sheet/project.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct project_making {
    making<Unit> design;
    std::vector<panel_part<Unit>> parts{}; ///< of each piece, in the project's order; the first of its copies
    std::vector<zipper_mouths> zippers{};  ///< of each of the project's zippers, on one copy of its piece after another

    /// Throws making_error (missing) for a name that no piece of the project bears.
    const panel_part<Unit>& part(std::string_view name) const {
        for (const panel_part<Unit>& p : parts)
            if (design.parts()[p.part.index].name == name)
                return p;
        detail::refuse<making_error>("no piece of this project is named " + detail::in_quotes(std::string(name)),
                                     refusal{.kind = fault::missing, .what = "a piece", .where = std::string(name)});
    }
};

namespace detail {

template <length_unit Unit>
class project_maker {
public:
    explicit project_maker(const project<Unit>& p)
        : project_(p), made_{making<Unit>(p.name())}, there_(p.pieces().size()) {}

    project_making<Unit> make() {
        for (const piece<Unit>& p : project_.pieces())
            cut(p);
        for (std::size_t i = 0; i < made_.parts.size(); ++i)
            lay_layers(i);
        place_all();
        for (const zipper<Unit>& z : project_.zippers())
            sew(z);
        for (std::size_t i = 0; i < made_.parts.size(); ++i)
            finish_all(i);
        for (const edge_seam<Unit>& s : project_.edge_seams())
            join(s);
        for (const edge_binding<Unit>& b : project_.bindings())
            bind(b);
        if (!project_.sewings().empty())
            design().sewn_by_machine(project_.sewings()[0].stitch, project_.sewings()[0].overrun);
        return std::move(made_);
    }

private:
    making<Unit>& design() { return made_.design; }
    const piece<Unit>& piece_at(std::size_t i) const { return project_.pieces()[i]; }
    std::size_t number_of(const std::string& name) const { return made_.part(name).part.index; }

    /// What binds layers lies wrong side up, to be turned over them.
    void cut(const piece<Unit>& p) {
        const auto& all = project_.pieces();
        const bool binds = std::any_of(all.begin(), all.end(), [&](const piece<Unit>& inner) {
            return inner.inside() == p.name() && &inner != &p;
        });
        cut_from<Unit> from{.count = p.count(), .up = binds ? face::wrong : face::right};
        from.cloth = cloth_of(p);
        made_.parts.push_back(cut_for(design(), p.name(), p.shape(), from));
    }

    /// The copies of a layer are shared out evenly among those of what binds them.
    void lay_layers(std::size_t outer) {
        const panel_part<Unit> binding = made_.parts[outer];
        if (binding.up == face::right)
            return;
        const std::int64_t outers = piece_at(outer).count();
        for (std::int64_t k = 0; k < outers; ++k) {
            std::vector<panel_part<Unit>> layers;
            for (std::size_t i = 0; i < made_.parts.size(); ++i)
                if (i != outer && piece_at(i).inside() == piece_at(outer).name())
                    for (std::int64_t n = k; n < piece_at(i).count(); n += outers) {
                        layers.push_back(made_.parts[i][n]);
                        there_.add({layers.back(), binding[k], {}, {}, true});
                    }
            lay_inside(design(), binding[k], layers);
        }
    }

    /// On each copy of what lies beneath in turn, while there are copies to place.
    void place_all() {
        std::vector<std::int64_t> placed(made_.parts.size());
        std::vector<std::vector<const placing<Unit>*>> on(made_.parts.size());
        for (const placing<Unit>& p : project_.placings())
            on[number_of(p.on)].push_back(&p);
        for (std::size_t under = 0; under < on.size(); ++under)
            for (std::int64_t k = 0; k < piece_at(under).count(); ++k)
                for (const placing<Unit>* p : on[under])
                    if (const std::size_t i = number_of(p->piece); placed[i] < piece_at(i).count())
                        place(made_.parts[i][placed[i]++], made_.parts[under][k], *p);
    }
    void place(const panel_part<Unit>& piece, const panel_part<Unit>& on, const placing<Unit>& p) {
        if (piece.up == face::wrong || on.up == face::wrong)
            refuse<making_error>("how " + named(p.piece) + " is sewn onto " + named(p.on) +
                                     " is not told by the project where either of them binds layers: lay it by an "
                                     "operation of your own",
                                 refusal{.kind = fault::unsuitable, .what = "a placing", .where = p.piece});
        lay_on(design(), piece, on, p.from_left, p.from_top);
        sew_on(design(), piece, on.part, p.sewn, p.inset);
        there_.add({piece, on, p.from_left.from_datum(), p.from_top.from_datum(), false});
    }

    void sew(const zipper<Unit>& z) {
        const panel_part<Unit>& on = made_.part(z.on);
        if (z.from == edge::left || z.from == edge::right)
            refuse<making_error>("a zipper that runs up " + named(z.on) +
                                     " is not told by the project: sew it by operations of your own",
                                 refusal{.kind = fault::unsuitable, .what = "a zipper", .where = z.on});
        zippers_over<Unit> sewn{.from = z.from};
        for (const auto& c : z.centres)
            sewn.centres.push_back(on.shape.from_cut_edge(z.from, c));
        sewn.begins = on.shape.finish_of(edge::left).allowance() +
                      (on.shape.finished().width() - z.opening.across) / 2 + z.opening.margin;
        sewn.opening = opening(z.opening);
        sewn.beyond = z.opening.beyond;
        if (z.graduation.value() != 0)
            sewn.ends_in = ruled<Unit>(z.graduation).middle(sewn.beyond);
        sewn.rows = z.rows;
        sewn.slit = z.slit;
        if (project_.zippers().size() > 1)
            sewn.name = "zipper of the " + z.on;
        for (std::int64_t k = 0; k < design().parts()[on.part.index].count; ++k) {
            sewn.on = on[k];
            made_.zippers.push_back(sew_zippers(design(), sewn));
        }
    }

    void finish_all(std::size_t i) {
        const auto& meetings = project_.meetings();
        if (std::any_of(meetings.begin(), meetings.end(),
                        [&](const meeting<Unit>& m) { return m.longer == piece_at(i).name(); }))
            return;
        for (std::int64_t k = 0; k < piece_at(i).count(); ++k) {
            const panel_part<Unit> piece = made_.parts[i][k];
            for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
                if (!is_bound(project_, piece_at(i).name(), e))
                    finish_edge(design(), piece, e, there_.under_rows(piece, e));
            for (const eyelet_row<Unit>& eyelets : piece_at(i).eyelets())
                set_eyelets(design(), piece, eyelets);
        }
    }

    void join(const edge_seam<Unit>& s) {
        const std::size_t one = number_of(s.one), other = number_of(s.other);
        if (std::optional<making_fault> wrong = edge_seam_fault(s, piece_at(one), piece_at(other)))
            refuse<making_error>(std::vector{std::move(*wrong)});
        for (const auto& [k, n] : copies_that_meet(piece_at(one).count(), one == other)) {
            seam_of<Unit> made{.one = {seam_line(made_.parts[one][k], s.of_one)},
                               .other = {seam_line(made_.parts[other][n], s.of_other)},
                               .beyond = s.beyond,
                               .taken_up = s.taken_up};
            if (s.taken_up != surplus::none) {
                made.spans = s.spans;
                made.graduation = s.graduation;
            }
            design().add(std::move(made));
        }
    }

    void bind(const edge_binding<Unit>& b) {
        const std::size_t i = number_of(b.on);
        const panel_part<Unit>& first = made_.parts[i];
        edges_binder<Unit> binder(design(), first, strip_of(b), edges_of(b), piece_at(i).count());
        for (std::int64_t k = 0; k < piece_at(i).count(); ++k)
            lay_before(first[k], binder.bind(k, [&](edge e, edge end, length<Unit> in) {
                return e == end ? there_.under_rows(first[k], e, std::array{in})
                                : there_.under_row_across(first[k], e, b.finished, end, in);
            }));
    }

    /// Before it is turned a strip lies farther in than where it comes to be sewn, and there are pieces that its rows do not
    /// go through.
    void lay_before(const panel_part<Unit>& on, const std::vector<bound_edge>& strips) {
        const std::vector<cut_part> lying = there_.on(on);
        const std::size_t layings = design().layings().size();
        for (std::size_t l = 0; l < layings; ++l)
            if (std::find(lying.begin(), lying.end(), design().layings()[l].piece) != lying.end())
                for (const bound_edge& strip : strips)
                    for (const operation& step : strip.steps)
                        design().add(
                            before{{operation_kind::laying, l}, step, "what lies on a piece is bound with it"});
    }

    const project<Unit>& project_;
    project_making<Unit> made_;
    lying_there<Unit> there_;
};

} // namespace detail

/// Throws making_error for a name of a placing, a zipper, a seam or a binding that no piece bears, for a zipper that runs up
/// its piece, for edges that cannot be sewn to each other, and for a placing to or of what binds layers; and whatever a zipper
/// or a binding refuses.
template <length_unit Unit>
project_making<Unit> making_of(const project<Unit>& p) {
    return detail::project_maker<Unit>(p).make();
}

TURNCLOTH_ONCE(project_making<inch> making_of(const project<inch>&));
TURNCLOTH_ONCE(project_making<centimetre> making_of(const project<centimetre>&));

} // namespace turncloth

#endif
