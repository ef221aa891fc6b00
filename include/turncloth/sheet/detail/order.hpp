// The order of making: which work comes before which, a sentence a step.
//
//   order_of_making(project)     for example: cut, mark, sew zippers, hem what lies on top, join, sew on, bind, hang
//
// Common practice: marks are made while the cloth is flat and raw; what is sewn onto a piece is finished before it goes
// on, and goes on before that piece's own edges are turned; inner layers are laid in last, just before they are bound.
#ifndef TURNCLOTH_SHEET_DETAIL_ORDER_HPP
#define TURNCLOTH_SHEET_DETAIL_ORDER_HPP

#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
class order_maker {
public:
    explicit order_maker(const project<Unit>& p) : project_(p) {}

    std::vector<std::string> make() {
        say("Cut every piece, and mark it while it is flat: folds, stitching and marks.");
        for (const std::string& step : project_.preparations())
            say(step);
        for (const piece<Unit>& p : project_.pieces())
            lay_pleats(p);
        for (const zipper<Unit>& z : project_.zippers())
            sew(z);
        for (const piece<Unit>& p : project_.pieces())
            if (goes_onto_another(p.name()))
                turn_edges(p);
        for (const meeting<Unit>& m : project_.meetings()) {
            turn_first_where_ends_lie_on_edges(m);
            say("Sew " + each(m.longer) + " to " + the(m.shorter) + ", mark to mark.");
        }
        for (const placing<Unit>& p : project_.placings())
            say("Sew " + each(p.piece) + " onto " + the(p.on) + ".");
        for (const piece<Unit>& p : project_.pieces())
            if (!goes_onto_another(p.name()))
                turn_edges(p);
        add_notions(true); // whose edges may have been turned for them
        join_seams();
        add_notions(false);
        return order_;
    }

private:
    /// Once each: three pockets of one name are one step.
    void say(std::string step) {
        if (std::find(order_.begin(), order_.end(), step) == order_.end())
            order_.push_back(std::move(step));
    }

    static std::string the(const std::string& name) { return "the " + named(name); }

    /// "the lining", "each pocket" where more than one is cut
    std::string each(const std::string& name) const {
        for (const piece<Unit>& p : project_.pieces())
            if (p.name() == name && p.count() > 1)
                return "each " + named(name);
        return the(name);
    }

    void lay_pleats(const piece<Unit>& p) {
        if (!p.pleats().empty())
            say("Lay the pleats of " + each(p.name()) + ", fold to placement line, and tack them.");
    }

    void sew(const zipper<Unit>& z) {
        const bool one = z.centres.size() == 1;
        say(std::string("Sew the zipper") + (one ? "" : "s") + " to " + each(z.on) + ", then open the slit" +
            (one ? " behind it." : "s behind them."));
    }

    bool goes_onto_another(const std::string& name) const {
        const auto& on_to = project_.meetings();
        const auto& placed = project_.placings();
        return std::any_of(on_to.begin(), on_to.end(), [&](const auto& m) { return m.longer == name; }) ||
               std::any_of(placed.begin(), placed.end(), [&](const auto& p) { return p.piece == name; });
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

    std::vector<std::string> layers_inside(const piece<Unit>& outer) const {
        std::vector<std::string> names;
        for (const piece<Unit>& p : project_.pieces())
            if (p.inside() == outer.name())
                names.push_back(the(p.name()) +
                                (p.count() > 1 ? " (" + std::to_string(p.count()) + " pieces)" : std::string()));
        return names;
    }

    void turn_edges(const piece<Unit>& p) {
        std::vector<std::string> turned;
        for (const edge e : edges_in_order(p.shape()))
            if (!p.shape().finish_of(e).folds().empty())
                turned.emplace_back(name_of(e));
        if (turned.empty())
            return;
        const std::vector<std::string> inner = layers_inside(p);
        const std::string laid = inner.empty() ? "" : "Lay " + enumerated(inner) + " on " + the(p.name()) + ". ";
        say(laid + "Turn and stitch the " + enumerated(turned) + (turned.size() == 1 ? " edge of " : " edges of ") +
            each(p.name()) + ".");
    }

    void add_notions(bool before_seams) {
        for (const notion<Unit>& n : project_.notions())
            if (n.goes_in_before_seams() == before_seams)
                say("Add the " + n.name() + ".");
    }

    void join_seams() {
        std::vector<std::string> joined;
        for (const piece<Unit>& p : project_.pieces())
            if (std::any_of(all_edges.begin(), all_edges.end(), [&](edge e) { return p.shape().finish_of(e).joins(); }))
                joined.push_back(the(p.name()));
        if (!joined.empty())
            say("Sew the remaining seams of " + enumerated(joined) + ".");
    }

    const project<Unit>& project_;
    std::vector<std::string> order_;
};

template <length_unit Unit>
std::vector<std::string> order_of_making(const project<Unit>& p) {
    return order_maker<Unit>(p).make();
}

} // namespace detail

} // namespace turncloth

#endif
