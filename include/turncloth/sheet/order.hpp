// The order of making: which work comes before which, a sentence a step.
//
//   order_of_making(project)     for example: cut, mark, sew zippers, hem what lies on top, join, sew on, bind, hang
//
//   for (const std::string& step : order_of_making(roll)) std::puts(step.c_str());
//
// Common practice: marks are made while the cloth is flat and raw; what is sewn onto a piece is finished before it goes
// on, and goes on before that piece's own edges are turned; inner layers are laid in last, just before they are bound.
#ifndef TURNCLOTH_SHEET_ORDER_HPP
#define TURNCLOTH_SHEET_ORDER_HPP

#include <turncloth/sheet/sheet.hpp>

#include <string>
#include <vector>

namespace turncloth {

namespace detail {

/// "left, right, top and bottom": the turned edges of a piece in the order of work; empty where none is turned.
template <length_unit Unit>
std::string turned_edges(const panel<Unit>& p) {
    std::vector<std::string> names;
    for (const edge e : edges_in_order(p))
        if (!p.finish_of(e).folds().empty())
            names.emplace_back(name_of(e));
    std::string all;
    for (std::size_t i = 0; i < names.size(); ++i)
        all += (i == 0 ? "" : (i + 1 == names.size() ? " and " : ", ")) + names[i];
    return all;
}

template <length_unit Unit>
class order_maker {
public:
    explicit order_maker(const project<Unit>& p) : project_(p) {}

    std::vector<std::string> make() {
        say("Cut every piece, and mark it while it is flat: folds, stitching, marks.");
        for (const zipper<Unit>& z : project_.zippers())
            say("Sew the zippers to " + z.on + ", then open the slits behind them.");
        for (const piece<Unit>& p : project_.pieces())
            if (goes_onto_another(p.name()))
                turn_edges(p);
        add_notions(true);
        for (const meeting<Unit>& m : project_.meetings()) {
            turn_first_where_ends_lie_on_edges(m);
            say("Sew " + m.longer + " to " + m.shorter + ", mark to mark.");
        }
        for (const placing<Unit>& p : project_.placings())
            say("Sew " + p.piece + " onto " + p.on + ".");
        for (const piece<Unit>& p : project_.pieces())
            if (!goes_onto_another(p.name()))
                turn_edges(p);
        join_seams();
        add_notions(false);
        return order_;
    }

private:
    /// Once each: three pockets of one name are one step.
    void say(std::string step) {
        for (const std::string& said : order_)
            if (said == step)
                return;
        order_.push_back(std::move(step));
    }

    bool goes_onto_another(const std::string& name) const {
        for (const meeting<Unit>& m : project_.meetings())
            if (m.longer == name)
                return true;
        for (const placing<Unit>& p : project_.placings())
            if (p.piece == name)
                return true;
        return false;
    }

    /// A longer piece whose ends come to the finished edges of the shorter lies on its hems, so these are turned first.
    /// Not where layers lie inside: they are bound in last.
    void turn_first_where_ends_lie_on_edges(const meeting<Unit>& m) {
        for (const piece<Unit>& p : project_.pieces()) {
            const finished_size<Unit>& size = p.shape().finished();
            if (p.name() == m.shorter && m.on_shorter == (is_level(m.from) ? size.height() : size.width()) &&
                layers_inside(p).empty())
                turn_edges(p);
        }
    }

    /// The names of the pieces that lie inside one, parted by commas.
    std::string layers_inside(const piece<Unit>& outer) const {
        std::string names;
        for (const piece<Unit>& p : project_.pieces())
            if (p.inside() == outer.name())
                names.append(names.empty() ? "" : ", ").append(p.name());
        return names;
    }

    void turn_edges(const piece<Unit>& p) {
        const std::string inner = layers_inside(p);
        const std::string edges = turned_edges(p.shape());
        if (edges.empty())
            return;
        const std::string laid = inner.empty() ? "" : "Lay " + inner + " on " + p.name() + ". ";
        say(laid + "Turn and stitch " + p.name() + ": " + edges + ".");
    }

    void add_notions(bool before_seams) {
        for (const notion<Unit>& n : project_.notions())
            if (n.goes_in_before_seams() == before_seams)
                say("Add the " + n.name() + ".");
    }

    void join_seams() {
        std::string all;
        for (const piece<Unit>& p : project_.pieces())
            for (const edge e : all_edges)
                if (p.shape().finish_of(e).joins() && all.find(p.name()) == std::string::npos)
                    all += (all.empty() ? "" : ", ") + p.name();
        if (!all.empty())
            say("Sew the remaining seams of " + all + ".");
    }

    const project<Unit>& project_;
    std::vector<std::string> order_;
};

} // namespace detail

template <length_unit Unit>
std::vector<std::string> order_of_making(const project<Unit>& p) {
    return detail::order_maker<Unit>(p).make();
}

} // namespace turncloth

#endif
