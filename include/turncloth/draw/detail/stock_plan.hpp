// What the drawing of lengths cut from stock shows and says, before anything has a place on the page.
//
//   bar_planner<U>(stock_cuts, ruler).make(project)     one bar for each way to cut, in millimetres and words
//
// In a bar the longest pieces come first, so that after a slip what is left takes the most others; pieces of one size
// lie side by side. With a loss k at every cut the piece i begins at (l1 + k) + ... + (l(i-1) + k), and is cut where it
// ends; the cut takes k beyond that, or what is left where that is less (cloth/stock/problem.hpp).
#ifndef TURNCLOTH_DRAW_DETAIL_STOCK_PLAN_HPP
#define TURNCLOTH_DRAW_DETAIL_STOCK_PLAN_HPP

#include <turncloth/draw/detail/words.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// In mm of stock from the start of the bar.
struct bar_piece {
    double from, to;
    std::size_t kind;
};

/// Where a piece ends, and how far the loss goes from there.
struct bar_cut {
    double at, to;
    std::vector<std::string> figures; ///< one in each unit
    std::string in_a_line;
};

/// One way to cut a piece of stock.
struct stock_bar {
    std::string times, stock, pieces; ///< "2 times", "108 in", "4 A, 1 B"
    std::string left;                 ///< empty where nothing is
    double length = 0, left_from = 0;
    std::vector<bar_piece> places;
    std::vector<bar_cut> cuts;
};

struct bar_plan {
    frame_words words{};
    std::vector<std::string> kinds{}, sizes{}; ///< of the pieces
    std::vector<stock_bar> bars{};
    bool loses = false;

    double longest() const {
        double most = 0;
        for (const stock_bar& b : bars)
            most = std::max(most, b.length);
        return most;
    }
};

template <length_unit Unit>
class bar_planner {
public:
    bar_planner(const stock_cuts<Unit>& c, const ruler& by) : from_(c), by_(by), order_(c.wanted.size()) {
        made_.loses = c.rules.loss_per_cut.value() > 0;
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::stable_sort(order_.begin(), order_.end(),
                         [&](std::size_t a, std::size_t b) { return c.wanted[b].size < c.wanted[a].size; });
    }

    bar_plan make(const std::string& project) {
        made_.words.project = project;
        made_.words.title = "lengths of " + from_.name;
        made_.words.lists.resize(1);
        add_list();
        add_facts();
        std::uint64_t pieces = 0;
        for (const stock_cutting<Unit>& p : from_.plan.cuttings)
            for (const std::int64_t n : p.pieces)
                require_few_enough(pieces += static_cast<std::uint64_t>(n), "the number of lengths that are drawn");
        for (const stock_cutting<Unit>& p : from_.plan.cuttings)
            made_.bars.push_back(bar_of(p));
        require_drawable(made_.longest());
        say_how();
        return std::move(made_);
    }

private:
    std::string written(length<Unit> l) const { return unbroken(to_text(l, by_)); }
    static std::string counted(std::int64_t n, const char* one, const char* more) {
        return std::to_string(n).append(" ").append(n == 1 ? one : more);
    }

    /// "A: tie, 22 1/2 in, 8 of them"
    void add_list() {
        for (std::size_t i = 0; i < from_.wanted.size(); ++i) {
            const wanted_length<Unit>& w = from_.wanted[i];
            made_.kinds.push_back(w.name);
            made_.sizes.push_back(to_text(w.size, by_));
            made_.words.lists[0].push_back(
                joined({letter_of(i), ": ", lettering().shortened(w.name, small_size, 62), ", ", made_.sizes.back(),
                        ", ", w.count == 1 ? "one" : std::to_string(w.count).append(" of them")}));
        }
        if (from_.stock.size() == 1)
            return;
        std::vector<std::int64_t> used(from_.stock.size());
        for (const stock_cutting<Unit>& p : from_.plan.cuttings)
            used[p.stock] += p.times;
        for (std::size_t i = 0; i < from_.stock.size(); ++i) {
            std::string entry = joined({which_stock(from_, i), ": ", to_text(from_.stock[i].size, by_), ", ",
                                        used[i] > 0 ? std::to_string(used[i]) : "none"});
            if (from_.stock[i].on_hand)
                entry.append(" of ").append(std::to_string(*from_.stock[i].on_hand));
            made_.words.lists[0].push_back(entry.append(" to be cut"));
        }
    }

    void add_facts() {
        const length_plan<Unit>& plan = from_.plan;
        const auto add = [&](std::string words, stock_aim aim, const char* least, const std::string& bound) {
            if (from_.rules.aim == aim && plan.proved_best)
                words += joined({", the ", least, " that will do"});
            made_.words.facts.push_back(std::move(words));
            if (from_.rules.aim == aim && !plan.proved_best)
                made_.words.facts.push_back("at least this much is needed: " + bound);
        };
        std::string pieces = counted(plan.pieces_of_stock, "piece of stock", "pieces of stock");
        if (from_.stock.size() == 1)
            pieces.append(plan.pieces_of_stock == 1 ? " of " : ", each ").append(written(from_.stock[0].size));
        add(pieces, stock_aim::fewest_pieces, "fewest", std::to_string(ceil(plan.bound)));
        add(joined({"in all ", written(plan.length_of_stock), " of stock"}), stock_aim::least_length, "least",
            written(length_of<Unit>(from_.rules.aim == stock_aim::least_length ? plan.bound : fraction(0))));
        if (from_.rules.aim == stock_aim::least_cost)
            add(joined({"cost ", to_text(plan.value)}), stock_aim::least_cost, "least", to_text(plan.bound));
        made_.words.facts.push_back(joined({"used by the pieces ", written(plan.wanted)}));
        if (made_.loses)
            made_.words.facts.push_back(joined({"lost in cuts ", written(plan.lost)}));
        made_.words.facts.push_back(joined({"left over in all ", written(plan.left)}));
    }

    stock_bar bar_of(const stock_cutting<Unit>& p) const {
        stock_bar bar;
        const length<Unit> size = from_.stock[p.stock].size, loss = from_.rules.loss_per_cut;
        bar.times = p.times == 1 ? "once" : std::to_string(p.times).append(" times");
        bar.stock = joined({from_.stock.size() == 1 ? "" : which_stock(from_, p.stock).append(", "), written(size)});
        length<Unit> at{};
        for (const std::size_t kind : order_) {
            if (p.pieces[kind] == 0)
                continue;
            bar.pieces.append(bar.pieces.empty() ? "" : ", ")
                .append(unbroken(std::to_string(p.pieces[kind]).append(" ").append(letter_of(kind))));
            for (std::int64_t n = 0; n < p.pieces[kind]; ++n) {
                const length<Unit> end = at + from_.wanted[kind].size, next = std::min(end + loss, size);
                bar.places.push_back({in_mm(at), in_mm(end), kind});
                if (end < size)
                    bar.cuts.push_back({in_mm(end), in_mm(next), in_each_unit(end), to_text(end, by_)});
                at = next;
            }
        }
        bar.length = in_mm(size);
        bar.left_from = in_mm(at);
        if (at < size)
            bar.left = written(size - at);
        return bar;
    }

    std::vector<std::string> in_each_unit(length<Unit> l) const {
        ruler one = by_;
        std::vector<std::string> all;
        for (const units_shown unit : {units_shown::inches, units_shown::centimetres})
            if (by_.shows == unit || by_.shows == units_shown::both) {
                one.shows = unit;
                all.push_back(to_text(l, one));
            }
        return all;
    }

    void say_how() {
        std::string how = joined({"The figures under a bar say how far from its start, at the left, each "
                                  "piece ends, rounded to ",
                                  graduation_text(by_), ", each from the exact length."});
        if (made_.loses)
            how += joined({" Cut there; each cut then takes ", written(from_.rules.loss_per_cut),
                           ", which the places of those that follow allow for."});
        made_.words.small_print.push_back(how);
    }

    const stock_cuts<Unit>& from_;
    const ruler by_;
    std::vector<std::size_t> order_; ///< of the pieces wanted, the longest first
    bar_plan made_;
};

} // namespace turncloth::detail

#endif
