// What the drawing of a lay shows and says, before anything has a place on the page.
//
//   worth_keeping<U>{across, along}                   what is left over is drawn from this size on; zero for none
//   detail::lay_planner<U>(cloth, ruler).make(project, keep)     the lay in millimetres and words
#ifndef TURNCLOTH_DRAW_DETAIL_LAY_PLAN_HPP
#define TURNCLOTH_DRAW_DETAIL_LAY_PLAN_HPP

#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/cloth/off_cuts.hpp>
#include <turncloth/draw/detail/piece_plan.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct worth_keeping {
    length<Unit> across = {}, along = {};
};

namespace detail {

inline constexpr pen cloth_pen = {"cloth", 0.6}, laid_pen = {"piece", 0.2}, selvedge_pen = {"selvedge", 0.2, {5, 1.5}},
                     cutting_pen = {"cutting", 0.5, {2.5, 1.5}}, kept_pen = {"left-over", 0.25, {0.4, 1}},
                     datum_pen = {"datum", 1.1};

/// Of the cloth as it lies, in mm from its left edge and the end first cut.
struct lay_plan {
    frame_words words{};
    std::string width_words{}, usable_words{}, length_words{};
    std::string edge_words{}; ///< what the left edge is; with the end, every place and cut counts from it
    double width = 0, length = 0, usable_from = 0, usable_to = 0;
    struct laid {
        page_area where;
        std::size_t kind;
        bool turned;
    };
    std::vector<laid> places{};
    std::vector<std::string> kinds{}, sizes{}; ///< the names and cut sizes of the pieces
    std::vector<page_segment> cuts{};          ///< in order
    std::vector<page_area> kept{};             ///< left over, large enough
    std::vector<std::string> kept_sizes{};
};

template <length_unit Unit>
class lay_planner {
public:
    lay_planner(const sheet_cloth<Unit>& c, const ruler& by) : from_(c), by_(by) {}

    lay_plan make(const std::string& project, const worth_keeping<Unit>& keep) {
        const bolt<Unit>& b = from_.bolt;
        const length<Unit> shown = b.folded ? b.width / 2 : b.width;
        made_.width = in_mm(shown);
        made_.length = in_mm(from_.lay.length);
        made_.usable_from = in_mm(b.usable_from_left());
        made_.usable_to = made_.usable_from + in_mm(b.usable_width());
        require_drawable(made_.width);
        require_drawable(made_.length);
        require_few_enough(from_.lay.places.size(), "the number of pieces laid that are drawn");
        made_.width_words = joined({b.folded ? "half the width, folded: " : "width ", to_text(shown, by_)});
        made_.usable_words = joined({"usable width ", to_text(b.usable_width(), by_)});
        made_.length_words = joined({"laid ", to_text(from_.lay.length, by_)});
        made_.edge_words = left_edge();
        made_.words.project = project;
        made_.words.title = joined({"lay of ", from_.material});
        add_facts();
        made_.words.lists.resize(2);
        add_pieces();
        if (b.cutting == cutting::free)
            add_places();
        else
            add_cuts();
        if (keep.across.value() > 0 && keep.along.value() > 0)
            add_kept(keep);
        add_legend();
        made_.words.small_print.push_back(joined(
            {"Figures are rounded to ", graduation_text(by_), ", each from the exact length. The arrow on a piece ",
             "shows its height, which lies along the grain unless the piece is turned."}));
        return std::move(made_);
    }

private:
    std::string written(length<Unit> l) const { return unbroken(to_text(l, by_)); }
    const char* left_edge() const { return from_.bolt.folded ? "fold" : "left edge"; }

    void add_facts() {
        const bolt<Unit>& b = from_.bolt;
        auto& facts = made_.words.facts;
        facts.push_back(joined({"cloth ", written(b.width), " wide, usable width ", written(b.usable_width()),
                                b.folded ? ", folded" : "", b.one_way ? ", one way up" : ""}));
        facts.push_back(joined(
            {"length laid ", written(from_.lay.length), from_.lay.proved_best() ? ", the shortest possible" : ""}));
        if (!from_.lay.proved_best())
            facts.push_back(joined({"no lay can be shorter than ", written(from_.lay.bound)}));
        facts.push_back(joined({"length to buy ", written(from_.bought.bought)}));
    }

    void add_legend() {
        auto& lines = made_.words.legend;
        lines.push_back({datum_pen, "all counts from here"});
        lines.push_back({cloth_pen, from_.bolt.folded ? "edge; left: fold" : "edge of the cloth"});
        if (made_.usable_to < made_.width)
            lines.push_back({selvedge_pen, "selvedge ends"});
        lines.push_back({laid_pen, "piece"});
        if (!made_.cuts.empty())
            lines.push_back({cutting_pen, "cut, in order"});
        if (!made_.kept.empty())
            lines.push_back({kept_pen, "left over, to keep"});
    }

    /// "A: back, 20 x 30 in, 2 of them, 1 turned"
    void add_pieces() {
        std::vector<std::size_t> laid(from_.pieces.size()), turned(from_.pieces.size());
        for (const cloth_place<Unit>& p : from_.lay.places) {
            made_.places.push_back({area_of_part(p.where), p.piece, p.turned});
            laid[p.piece] += static_cast<std::size_t>(p.comes_out);
            turned[p.piece] += p.turned ? 1U : 0U;
        }
        for (std::size_t i = 0; i < from_.pieces.size(); ++i) {
            const cloth_piece<Unit>& p = from_.pieces[i];
            made_.kinds.push_back(p.name);
            made_.sizes.push_back(size_text(p.size.width(), p.size.height(), by_));
            std::string entry = joined({letter_of(i), ": ", p.name, ", ", made_.sizes.back()});
            if (laid[i] > 1)
                entry.append(", ").append(std::to_string(laid[i])).append(" of them");
            if (turned[i] > 0)
                entry.append(", ").append(laid[i] > 1 ? std::to_string(turned[i]) + " turned" : "turned");
            made_.words.lists[1].push_back(entry.append(p.on_fold ? ", on the fold" : ""));
        }
    }

    static page_area area_of_part(const cloth_part<Unit>& p) {
        return {in_mm(p.from_left), in_mm(p.from_end), in_mm(p.across), in_mm(p.along)};
    }

    /// "A, turned: 3 in from the left edge, 20 in from the end": the corner of a piece that is nearest to both.
    void add_places() {
        auto& list = made_.words.lists[0];
        if (!from_.lay.places.empty())
            list.push_back("cut 0: straighten the end, square to the selvedges");
        for (const cloth_place<Unit>& p : from_.lay.places)
            list.push_back(joined({letter_of(p.piece), p.turned ? ", turned: " : ": ", to_text(p.where.from_left, by_),
                                   " from the ", left_edge(), ", ", to_text(p.where.from_end, by_), " from the end"}));
    }

    /// Each is told on what is in hand and where it lay on the cloth.
    void add_cuts() {
        if (!from_.lay.cuts.empty())
            say_making_ready();
        for (const cloth_cut<Unit>& c : from_.lay.cuts) {
            const page_area in_hand = area_of_part(c.in_hand);
            const bool across = c.direction == cut_direction::across;
            const double at = in_mm(c.on_cloth());
            made_.cuts.push_back(across ? page_segment{{in_hand.x, at}, {in_hand.right(), at}}
                                        : page_segment{{at, in_hand.y}, {at, in_hand.bottom()}});
            made_.words.lists[0].push_back(joined(
                {"cut ", std::to_string(made_.cuts.size()), across ? ": across " : ": along ", words_for(c.origin),
                 ", ", to_text(c.at, by_), across ? " from its near side; " : " from its left; ",
                 to_text(c.on_cloth(), by_), " from the ", across ? "end" : left_edge()}));
        }
    }

    /// Cut 0 gives the edges that all others are told from.
    void say_making_ready() {
        auto& list = made_.words.lists[0];
        list.push_back("cut 0: straighten the end; near is toward it");
        list.push_back(joined({"cut 0: cut off ", to_text(from_.lay.length, by_), " from that end"}));
        if (from_.bolt.selvedge.value() > 0)
            list.push_back(joined({"cut 0: trim ", to_text(from_.bolt.selvedge, by_), " off the selvedges"}));
    }

    void add_kept(const worth_keeping<Unit>& keep) {
        for (const cloth_part<Unit>& o : off_cuts<Unit>(from_.lay, keep.across, keep.along)) {
            made_.kept.push_back(area_of_part(o));
            made_.kept_sizes.push_back(size_text(o.across, o.along, by_));
            made_.words.lists[1].push_back(joined({"left over, to keep: ", made_.kept_sizes.back()}));
        }
    }

    const sheet_cloth<Unit>& from_;
    const ruler by_;
    lay_plan made_;
};

} // namespace detail

} // namespace turncloth

#endif
