// The part of a handout about what is bought, cut out and marked.
//
//   handout_cutting<U>(sheet, cloths, ruler)
//     .add_buying(to)  .add_lays(to)  .add_marking(to)  .add_figures(to)
#ifndef TURNCLOTH_HANDOUT_DETAIL_CUTTING_PART_HPP
#define TURNCLOTH_HANDOUT_DETAIL_CUTTING_PART_HPP

#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outlined.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/handout/detail/costs.hpp>
#include <turncloth/handout/detail/cut_table.hpp>
#include <turncloth/handout/detail/shared.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/sheet/purchases.hpp>
#include <turncloth/sheet/text.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class handout_cutting {
public:
    handout_cutting(const sheet<Unit>& s, const std::vector<sheet_cloth<Unit>>& cloths, const ruler& by,
                    const price_list& prices)
        : sheet_(s), cloths_(cloths), by_(by), prices_(prices) {}

    /// Cloth first, then all that a notion says is sold. What no cloth is given for is left open, unless its pieces come cut.
    void add_buying(document& to) const {
        handout_costs costs(prices_);
        document::table t{sentence({"What to buy, as shops sell it"}),
                          {sentence({"Have it"}), sentence({"What"}), sentence({"How much"}), sentence({"Which"})},
                          {}};
        costs.add_column(t);
        const auto row = [&](const std::string& what, document::cell amount, std::string which) {
            t.rows.push_back({{what, document::in_cell::tick}, {what}, std::move(amount), {std::move(which)}});
            costs.add_cell(t);
        };
        for (const sheet_cloth<Unit>& c : cloths_)
            if (c.on_hand) {
                costs.of_what_is_there();
                row(name_of_cloth(c), figure_cell(sentence({"on hand"})),
                    unbroken(size_text(c.on_hand->width, c.on_hand->length, by_)));
            } else {
                costs.of_cloth(c.material, c.bought);
                row(c.material, figure_cell(unbroken(cloth_text(c.bought, by_))),
                    sentence({text(c.width_sold()), " wide, or wider"}));
            }
        std::vector<std::string> open;
        const auto leave_open = [&](const std::string& m) {
            if (cloth_of(cloths_, m) == nullptr && std::find(open.begin(), open.end(), m) == open.end() &&
                !comes_cut(m))
                open.push_back(m);
        };
        for (const sheet_piece<Unit>& p : sheet_.pieces)
            leave_open(p.made_from.material());
        for (const outlined_piece<Unit>& p : sheet_.outlines)
            leave_open(p.material());
        for (const std::string& m : open)
            row(m, {sentence({"how much ", m}), document::in_cell::blank}, sentence({"for the pieces below"}));
        for (const notion<Unit>& n : sheet_.notions) {
            costs.of_notion(n);
            if (const auto [much, which] = sold_of(n); !much.empty() || !which.empty())
                row(said_again(n.name()), figure_cell(much.empty() ? which : much),
                    much.empty() ? std::string() : which);
        }
        to.add(std::move(t));
        if (const std::string sum = costs.in_all(); !sum.empty())
            to.add(document::paragraph{sum});
    }

    void add_lays(document& to) const {
        for (const sheet_cloth<Unit>& c : cloths_) {
            to.add(document::heading{sentence({"Cutting out the ", name_of_cloth(c)}), 3});
            to.add(document::drawing{page_of(c, by_, handout_drawing(), kept(c)),
                                     {},
                                     sentence({"The lay of the ", name_of_cloth(c)}),
                                     false});
            to.add(document::list{c.on_hand ? cutting_out<Unit>(c.lay, lettered(c), {c.bolt, c.on_hand->length}, by_)
                                            : cutting_out(c.lay, lettered(c), c.bolt, by_)});
        }
    }

    void add_marking(document& to) const {
        for (std::size_t i = 0; i < sheet_.pieces.size(); ++i)
            add_piece(to, i);
        for (std::size_t i = 0; i < sheet_.outlines.size(); ++i)
            add_outline(to, i);
        for (const sheet_meeting<Unit>& m : sheet_.meetings)
            add_meeting(to, m);
    }

    /// All that notions say, whether bought or not; how cloth is laid is drawn.
    void add_figures(document& to) const {
        for (const notion<Unit>& n : sheet_.notions) {
            if (std::any_of(cloths_.begin(), cloths_.end(),
                            [&](const sheet_cloth<Unit>& c) { return n.name() == name_of_cloth(c); }))
                continue;
            document::table t{
                sentence({"For the ", said_again(n.name())}), {sentence({"What"}), sentence({"Figure"})}, {}};
            for (const notion_detail<Unit>& d : n.details())
                t.rows.push_back({{said_again(d.what)}, figure_cell(told(d))});
            to.add(std::move(t));
        }
    }

private:
    bool comes_cut(const std::string& material) const {
        return std::any_of(sheet_.notions.begin(), sheet_.notions.end(),
                           [&](const notion<Unit>& n) { return n.name() == name_in_order(material); });
    }

    /// A figure is not parted from its unit at the end of a line.
    std::string text(length<Unit> l) const { return unbroken(to_text(l, by_)); }
    std::string text(const auto& size) const { return unbroken(size_text(size.width(), size.height(), by_)); }
    static std::string joined(const std::vector<std::string>& some) {
        std::string all;
        for (const std::string& s : some)
            if (!s.empty())
                all.append(all.empty() ? "" : "; ").append(s);
        return all;
    }
    std::string all_of(const std::vector<length<Unit>>& places) const {
        std::string all;
        for (const length<Unit>& l : places)
            all.append(all.empty() ? "" : ", ").append(text(l));
        return all;
    }

    /// What is left over between thousands of pieces would be long to look for, and is none.
    static worth_keeping<Unit> kept(const sheet_cloth<Unit>& c) {
        return c.lay.places.size() > 1000 ? worth_keeping<Unit>() : worth_keeping<Unit>::usual();
    }
    static std::vector<cloth_piece<Unit>> lettered(const sheet_cloth<Unit>& c) {
        std::vector<cloth_piece<Unit>> all = c.pieces;
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i].name = letter_of(i < c.on_sheet.size() ? c.on_sheet[i] : i) + ": " + all[i].name;
        return all;
    }
    struct on_list {
        std::string much{}, which{};
    };
    /// How many and how much is asked for in a shop first; sizes say of what kind.
    on_list sold_of(const notion<Unit>& n) const {
        on_list all;
        for (const notion_detail<Unit>& d : n.details()) {
            if (d.sold == sold_as::not_sold)
                continue;
            const bool roll = d.sold == sold_as::off_a_roll;
            std::string& to = d.count > 0 || roll ? all.much : all.which;
            to.append(to.empty() ? "" : "; ")
                .append(roll ? sentence({"off the roll"}) : said_again(d.what))
                .append(": ");
            to += d.count > 0 ? std::to_string(d.count) : unbroken(sold_text(d.amount.value(), d.sold, by_));
        }
        return all;
    }
    std::string told(const notion_detail<Unit>& d) const {
        if (d.count > 0)
            return std::to_string(d.count);
        return d.places.empty() ? text(d.amount.value()) : all_of(d.places);
    }

    void add_piece(document& to, std::size_t i) const {
        const sheet_piece<Unit>& p = sheet_.pieces[i];
        const piece<Unit>& from = p.made_from;
        const std::string name = letter_of(i) + ": " + from.name();
        to.add(document::heading{name, 3});
        to.add(document::paragraph{sentence({"Cut ", from.count(), " of ", from.material(), ", ", text(p.cut),
                                             "; each finishes ", text(p.finished), "."})});
        if (p.corner.value() > 0)
            to.add(document::paragraph{
                sentence({"Cut a square of ", text(p.corner), " out of each corner: two such pieces make a box ",
                          text(p.depth), " deep."})});
        if (p.lines.empty() && p.eyelets.empty() && p.corner.value() == 0) {
            to.add(document::paragraph{sentence({"It has no line to mark."})});
            return;
        }
        to.add(document::drawing{page_of(p, by_, handout_drawing()), {}, sentence({name, ", to be marked"}), false});
        document::table t{sentence({"Lines on ", name, ", each from the cut edge named"}),
                          {sentence({"From"}), sentence({"What"}), sentence({"Distance"})},
                          {}};
        add_finishes(t, p);
        add_lines(t, p);
        if (!t.rows.empty())
            to.add(std::move(t));
        add_sums(to, p, name);
    }

    void add_outline(document& to, std::size_t i) const {
        const outlined_piece<Unit>& p = sheet_.outlines[i];
        const std::string name = letter_of(sheet_.pieces.size() + i) + ": " + p.name();
        to.add(document::heading{name, 3});
        to.add(document::paragraph{
            sentence({"Cut ", p.count(), " of ", p.material(), " along the heavy line of the drawing, within ",
                      text(p.cut), "; each finishes within ", text(p.finished), "."})});
        to.add(document::drawing{
            page_of(p, by_, handout_drawing()), {}, sentence({name, ", to be drawn and cut"}), false});
        document::table t{sentence({"Edges of ", name, ", as they are numbered there"}),
                          {sentence({"Edge"}), sentence({"Length"}), sentence({"Finish"}),
                           sentence({"Allowance and lines, from the cut edge"}), sentence({"Notches, along it"})},
                          {}};
        for (std::size_t k = 0; k < p.edges.size(); ++k) {
            const drafted_corner<Unit>& c = p.made_from.corners[k];
            const finish<Unit>& f = c.edge;
            t.rows.push_back({figure_cell(std::to_string(k + 1)),
                              {std::string(word(shape_of(c.curve))) + text(p.edges[k].size)},
                              {std::string(word(f.name()))},
                              figure_cell(joined({text(f.allowance()), places(word("fold at"), f.folds()),
                                                  places(word("stitch at"), f.stitching())})),
                              figure_cell(all_of(c.notches))});
        }
        to.add(std::move(t));
    }

    /// Edges that are finished alike share a row.
    void add_finishes(document::table& t, const sheet_piece<Unit>& p) const {
        const panel<Unit>& shape = p.made_from.shape();
        std::vector<edge> worked;
        for (const edge e : edges_in_order(shape))
            if (!shape.finish_of(e).folds().empty() || !shape.finish_of(e).stitching().empty())
                worked.push_back(e);
        for (const edges_alike& alike : finished_alike(shape, worked)) {
            const finish<Unit>& f = shape.finish_of(alike.first);
            t.rows.push_back(
                {{alike.in_words()},
                 {std::string(word(f.name()))},
                 figure_cell(joined({places(word("fold at"), f.folds()), places(word("stitch at"), f.stitching())}))});
        }
    }
    std::string places(std::string_view verb, const auto& lines) const {
        std::string all;
        for (const auto& l : lines)
            all.append(all.empty() ? sentence({verb, " "}) : ", ").append(text(l.from_datum()));
        return all;
    }

    static bool alike(const sheet_line<Unit>& a, const sheet_line<Unit>& b) {
        return a.kind == b.kind && a.what == b.what && a.parallel_to == b.parallel_to && a.begins == b.begins &&
               a.ends == b.ends && a.only == b.only && !a.brought_to && !b.brought_to;
    }
    struct lines_alike {
        const sheet_line<Unit>& first;
        std::vector<length<Unit>> at{};
    };
    /// Those that follow one another and differ in their place alone; what finishes have is told by itself.
    static std::vector<lines_alike> marked(const sheet_piece<Unit>& p) {
        std::vector<lines_alike> all;
        for (const sheet_line<Unit>& l : p.lines) {
            if (l.of_finish)
                continue;
            if (all.empty() || !alike(all.back().first, l))
                all.push_back({l});
            all.back().at.push_back(l.from_cut_edge.value());
        }
        return all;
    }
    /// Lines of a row share one row of the table.
    void add_lines(document::table& t, const sheet_piece<Unit>& p) const {
        for (const auto& [first, at] : marked(p)) {
            const bool says_itself = first.kind == line_kind::slit;
            const std::string own_name = said_again(first.what),
                              what = says_itself ? own_name : sentence({word(verb_of(first.kind)), " ", own_name});
            t.rows.push_back(
                {{sentence({word(name_of(first.parallel_to)), " edge"})},
                 {what + extent(p, first)},
                 figure_cell(at.size() == 1 && at[0].value() == 0 ? sentence({"at that edge"}) : all_of(at))});
        }
        for (const sheet_eyelets<Unit>& e : p.eyelets) {
            const std::string what =
                sentence({"eyelets, holes of ", text(e.size.hole), " with rims of ", text(e.size.rim)});
            const std::string centres = sentence({what, ": centres"});
            t.rows.push_back({{sentence({"top edge"})}, {centres}, figure_cell(text(e.from_top.value()))});
            t.rows.push_back({{sentence({"left edge"})}, {centres}, figure_cell(all_of(e.from_left))});
        }
    }
    /// Nothing for a line that runs right across and stays where it is.
    std::string extent(const sheet_piece<Unit>& p, const sheet_line<Unit>& l) const {
        if (l.brought_to)
            return ", " + sentence({"folded and brought to ", text(*l.brought_to)});
        std::vector<std::string> ticks;
        for (const short_mark<Unit>& t : l.only)
            ticks.push_back(sentence({"along ", text(t.size), " at the ", word(name_of(t.at)), " edge"}));
        if (!ticks.empty())
            return ", " + sentence({"only ", enumerated(ticks)});
        if (l.begins.value() == 0 && l.ends == along(p.cut, l.parallel_to))
            return {};
        return ", " + sentence({"from ", text(l.begins), " to ", text(l.ends), " off the cut ",
                                word(name_of(is_level(l.parallel_to) ? edge::left : edge::top)), " edge"});
    }

    /// From edge to edge, so that a slip of the rule shows: only where what is printed adds up.
    void add_sums(document& to, const sheet_piece<Unit>& p, const std::string& name) const {
        if (!shows_its_ruler(sheet_.graduation, by_))
            return;
        document::table t{sentence({"The whole of ", name, ", line by line: add them as you mark"}),
                          {sentence({"Marks"}), sentence({"Sum"})},
                          {}};
        const auto add = [&](std::string_view what, edge from, const std::vector<length<Unit>>& at) {
            t.rows.push_back({{sentence({what, ", from the ", word(name_of(from)), " edge"})},
                              figure_cell(closing_sum(at, across(p.cut, from)))});
        };
        for (const auto& [first, at] : marked(p))
            if (at.size() > 1)
                add(said_again(first.what), first.parallel_to, at);
        for (const sheet_eyelets<Unit>& e : p.eyelets)
            if (e.from_left.size() > 1)
                add(word("eyelets"), edge::left, e.from_left);
        if (!t.rows.empty())
            to.add(std::move(t));
    }

    void add_meeting(document& to, const sheet_meeting<Unit>& m) const {
        const meeting<Unit>& of = m.made_from;
        const std::string title = sentence({"Where the ", of.longer, " meets the ", of.shorter});
        to.add(document::heading{title, 3});
        to.add(document::paragraph{sentence({"Bring these together, each from the finished ", word(name_of(of.from)),
                                             " edge; in each part there is ", text(m.marks.surplus(0)), " more of the ",
                                             of.longer, ", a fullness of ", fullness_text(m.marks.fullness()), "."})});
        document::table t{
            title, {sentence({"Mark"}), sentence({"On the ", of.longer}), sentence({"On the ", of.shorter})}, {}};
        for (std::int64_t k = 1; k <= m.marks.spans(); ++k)
            t.rows.push_back({{std::to_string(k)},
                              figure_cell(text(m.marks.mark_on_long(k).from_datum())),
                              figure_cell(text(m.marks.mark_on_short(k).from_datum()))});
        to.add(std::move(t));
    }

    const sheet<Unit>& sheet_;
    const std::vector<sheet_cloth<Unit>>& cloths_;
    const ruler by_;
    const price_list& prices_;
};

} // namespace turncloth::detail

#endif
