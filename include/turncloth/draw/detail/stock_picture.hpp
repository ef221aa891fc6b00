// Lengths cut from stock as bars, and the pages that the bars are placed on.
//
//   stock_picture<Unit>(cuts, ruler, project)              words, bars
//   stock_pages(words, bars, options, width, height)       the bars on pages of one size: rank(), draw()
//
//   const stock_picture<inch> cut(ties, ruler(), "Roll");
//   const std::vector<page> pages = stock_pages(cut.words, cut.bars, {}, 210, 297).draw();
#ifndef TURNCLOTH_DRAW_DETAIL_STOCK_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_STOCK_PICTURE_HPP

#include <turncloth/draw/detail/stock_bar.hpp>
#include <turncloth/draw/detail/words.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// All bars, on pages of one size. From the largest scale at which the longest is as long as the page is wide; bars that
/// find no room go on to further pages.
class stock_pages {
public:
    stock_pages(const frame_words& words, const std::vector<stock_bar>& bars, const drawing_options& options,
                double width, double height)
        : ways_(bars.size()), frame_(words, options, width, height) {
        const page_area room = frame_.picture;
        scale_ = scale_for([&](double scale) {
            return std::all_of(bars.begin(), bars.end(),
                               [&](const stock_bar& b) { return b.length <= room.width * scale; });
        });
        pages_.emplace_back();
        double used = 0, most = 0;
        for (const stock_bar& b : bars) {
            const placed_bar placed(b, scale_, room, frame_.by);
            if (used + placed.height() > room.height && !pages_.back().empty()) {
                pages_.emplace_back();
                used = 0;
            }
            used += placed.height() + page_gap;
            most = std::max(most, used);
            pages_.back().push_back(placed);
        }
        frame_.take_only(most);
    }

    /// The fewest pages, then the larger scale.
    auto rank() const { return std::tuple(pages_.size(), scale_); }

    std::vector<page> draw() const {
        std::vector<page> all;
        std::size_t before = 0;
        for (const std::vector<placed_bar>& bars : pages_) {
            std::vector<std::string> ways;
            ways.reserve(bars.size());
            for (const placed_bar& b : bars)
                ways.push_back(sentence({b.bar().times, " ", b.bar().heading, ": ", b.bar().listed}));
            page on = frame_.begin(scale_, {}, ways);
            // The room that they leave is shared out between them, but not so that they stand far apart.
            double spare = frame_.picture.height, y = frame_.picture.y;
            for (const placed_bar& b : bars)
                spare -= b.height() + page_gap;
            const double more = bars.empty() ? 0 : std::clamp(spare / static_cast<double>(bars.size()), 0.0, 8.0);
            for (const placed_bar& b : bars) {
                b.draw(on, y);
                y += b.height() + page_gap + more;
            }
            all.push_back(frame_.draw(std::move(on), scale_, page_words(all.size(), before, bars.size())));
            before += bars.size();
        }
        return all;
    }

private:
    /// "page 2 of 3: ways to cut 5 to 8 of 11"
    std::string page_words(std::size_t which, std::size_t before, std::size_t here) const {
        if (pages_.size() == 1)
            return {};
        return here > 1
                   ? sentence({"page ", which + 1, " of ", pages_.size(), ": ways to cut ", before + 1, " to ",
                               before + here, " of ", ways_})
                   : sentence({"page ", which + 1, " of ", pages_.size(), ": way to cut ", before + 1, " of ", ways_});
    }

    std::size_t ways_;
    page_frame frame_;
    double scale_ = 1;
    std::vector<std::vector<placed_bar>> pages_{};
};

template <length_unit Unit>
class stock_picture {
public:
    frame_words words{};
    std::vector<stock_bar> bars{};

    stock_picture(const stock_cuts<Unit>& c, const ruler& by, const std::string& project)
        : from_(c), by_(by), order_(c.wanted.size()) {
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::stable_sort(order_.begin(), order_.end(),
                         [&](std::size_t a, std::size_t b) { return c.wanted[b].size < c.wanted[a].size; });
        words.project = project;
        words.title = sentence({"lengths of ", said_again(from_.name)});
        words.lists.resize(1);
        words.most_list = 0.2;
        words.in_pages = true;
        std::uint64_t pieces = 0;
        for (const stock_cutting<Unit>& p : from_.plan.cuttings)
            for (const std::int64_t n : p.pieces)
                require_few_enough(pieces += static_cast<std::uint64_t>(n), "the number of lengths that are drawn");
        for (const stock_cutting<Unit>& p : from_.plan.cuttings)
            bars.push_back(bar_of(p));
        add_list();
        add_facts();
        add_legend();
        say_how();
    }

private:
    bool loses() const { return from_.rules.loss_per_cut.value() > 0; }
    std::string written(length<Unit> l) const { return unbroken(to_text(l, by_)); }

    /// "A: tie, 22 1/2 in, 8 of them"
    void add_list() {
        for (std::size_t i = 0; i < from_.wanted.size(); ++i) {
            const wanted_length<Unit>& w = from_.wanted[i];
            words.lists[0].push_back(
                sentence({letter_of(i), ": ", lettering().shortened(w.name, small_size, 62), ", ", to_text(w.size, by_),
                          ", ", w.count == 1 ? sentence({"one"}) : sentence({w.count, " of them"})}));
        }
        if (from_.stock.size() == 1)
            return;
        std::vector<std::int64_t> used(from_.stock.size());
        for (const stock_cutting<Unit>& p : from_.plan.cuttings)
            used[p.stock] += p.times;
        for (std::size_t i = 0; i < from_.stock.size(); ++i) {
            const std::string which = sentence({stock_in_words(i), ": ", to_text(from_.stock[i].size, by_)}),
                              many = used[i] > 0 ? std::to_string(used[i]) : sentence({"none"});
            words.lists[0].push_back(from_.stock[i].on_hand
                                         ? sentence({which, ", ", many, " of ", *from_.stock[i].on_hand, " to be cut"})
                                         : sentence({which, ", ", many, " to be cut"}));
        }
    }

    void add_facts() {
        const length_plan<Unit>& plan = from_.plan;
        const auto add = [&](std::string said, stock_aim aim, const std::string& bound) {
            const bool is_aim = from_.rules.aim == aim;
            if (is_aim && plan.proved_best)
                said = aim == stock_aim::fewest_pieces ? sentence({said, ", the fewest that will do"})
                                                       : sentence({said, ", the least that will do"});
            words.facts.push_back(std::move(said));
            if (is_aim && !plan.proved_best)
                words.facts.push_back(sentence({"at least this much is needed: ", bound}));
        };
        add(pieces_in_words(), stock_aim::fewest_pieces, std::to_string(ceil(plan.bound)));
        add(sentence({"in all ", written(plan.length_of_stock), " of stock"}), stock_aim::least_length,
            written(length_of<Unit>(from_.rules.aim == stock_aim::least_length ? plan.bound : fraction(0))));
        if (from_.rules.aim == stock_aim::least_cost)
            add(sentence({"cost ", to_text(plan.value)}), stock_aim::least_cost, to_text(plan.bound));
        words.facts.push_back(sentence({"used by the pieces ", written(plan.wanted)}));
        if (loses())
            words.facts.push_back(sentence({"lost in cuts ", written(plan.lost)}));
        words.facts.push_back(sentence({"left over in all ", written(plan.left)}));
    }

    std::string pieces_in_words() const {
        const std::int64_t n = from_.plan.pieces_of_stock;
        if (from_.stock.size() > 1)
            return n == 1 ? sentence({n, " piece of stock"}) : sentence({n, " pieces of stock"});
        const std::string size = written(from_.stock[0].size);
        return n == 1 ? sentence({n, " piece of stock of ", size}) : sentence({n, " pieces of stock, each ", size});
    }
    std::string stock_in_words(std::size_t i) const { return sentence({"stock ", i + 1}); }

    stock_bar bar_of(const stock_cutting<Unit>& p) const {
        const length<Unit> size = from_.stock[p.stock].size, loss = from_.rules.loss_per_cut;
        require_drawable({in_mm(size)});
        stock_bar bar{.times = p.times == 1 ? sentence({"once"}) : sentence({p.times, " times"}),
                      .heading = {},
                      .listed = {},
                      .length = in_mm(size)};
        length<Unit> at{};
        for (const std::size_t kind : order_) {
            if (p.pieces[kind] == 0)
                continue;
            const wanted_length<Unit>& w = from_.wanted[kind];
            const std::string letter = letter_of(kind), named = sentence({letter, ": ", w.name});
            bar.listed.append(bar.listed.empty() ? "" : ", ")
                .append(unbroken(std::to_string(p.pieces[kind]).append(" ").append(letter)));
            for (std::int64_t n = 0; n < p.pieces[kind]; ++n) {
                const length<Unit> end = at + w.size, next = std::min(end + loss, size);
                bar.pieces.push_back(
                    {in_mm(at), in_mm(end), letter, {{named, to_text(w.size, by_)}, {named}, {letter}}});
                if (end < size)
                    bar.cuts.push_back({in_mm(end), in_mm(next), in_each_unit(end), to_text(end, by_)});
                at = next;
            }
        }
        bar.left_from = in_mm(at);
        const std::string left = at < size ? written(size - at) : sentence({"nothing"}), over = sentence({"left over"});
        if (at < size)
            bar.pieces.push_back({in_mm(at), in_mm(size), "", {{over, plain(left)}, {over}}});
        bar.heading = from_.stock.size() == 1
                          ? sentence({"from ", written(size), ", leaving ", left})
                          : sentence({"from ", stock_in_words(p.stock), ", ", written(size), ", leaving ", left});
        return bar;
    }

    std::vector<std::string> in_each_unit(length<Unit> l) const {
        ruler one = by_;
        std::vector<std::string> all;
        const units_shown first = by_.metric_first ? units_shown::centimetres : units_shown::inches;
        for (const units_shown unit :
             {first, first == units_shown::inches ? units_shown::centimetres : units_shown::inches})
            if (by_.shows == unit || by_.shows == units_shown::both) {
                one.shows = unit;
                all.push_back(to_text(l, one));
            }
        return all;
    }

    void add_legend() {
        words.legend = {stock_line, length_line, stock_cut_line};
        if (loses())
            words.legend.push_back(lost_line);
        if (std::any_of(bars.begin(), bars.end(), [](const stock_bar& b) { return b.left_from < b.length; }))
            words.legend.push_back(stock_left_line);
    }

    void say_how() {
        std::string how = sentence(
            {"The figures under a bar say how far from its start, at the left, each piece ends, ", rounded_note(by_)});
        if (loses())
            how += " " + sentence({"Cut there; each cut then takes ", written(from_.rules.loss_per_cut),
                                   ", which the places of those that follow allow for."});
        words.small_print.push_back(how);
    }

    const stock_cuts<Unit>& from_;
    const ruler by_;
    std::vector<std::size_t> order_; ///< of the pieces wanted, the longest first
};

} // namespace turncloth::detail

#endif
