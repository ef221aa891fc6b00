// What the drawing of a lay shows and says, before anything has a place on the page.
//
//   lay_drawing_options<U>{project, on, keep_across, keep_along}
//   detail::lay_plan_of(cloth, ruler, options)    the lay in millimetres and words, whatever its unit was
//
//   const detail::lay_plan p = detail::lay_plan_of(canvas, ruler(), {});   // lay_drawing.hpp does this
#ifndef TURNCLOTH_DRAW_DETAIL_LAY_PLAN_HPP
#define TURNCLOTH_DRAW_DETAIL_LAY_PLAN_HPP

#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/cloth/off_cuts.hpp>
#include <turncloth/draw/detail/page_parts.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <type_traits>
#include <vector>

namespace turncloth {

/// What is left over is drawn where it is at least `keep_across` by `keep_along`; zero for none.
template <length_unit Unit>
struct lay_drawing_options {
    std::string project = {};
    paper on = paper::a4;
    length<Unit> keep_across = {}, keep_along = {};
};

namespace detail {

/// A piece as it lies, in mm of cloth from the left edge and the end first cut.
struct lay_box {
    box where;
    std::size_t kind;
    bool turned;
};

/// Across the cloth, or along it; from left to right, or from the end first cut on.
struct lay_cut_line {
    page_point from, to;
};

struct lay_plan {
    std::string project, material;
    std::string width_words, usable_words, length_words;
    std::vector<std::string> facts;          ///< for the title block
    double width = 0, length = 0;            ///< of the cloth as it lies, in mm
    double usable_from = 0, usable_to = 0;   ///< across it
    bool folded = false;                     ///< along its left edge
    std::vector<std::string> kinds, sizes;   ///< the names and cut sizes of the pieces
    std::vector<std::string> list, cut_list; ///< all that is laid or left over; the cuts in order
    std::vector<lay_box> places;
    std::vector<lay_cut_line> cuts;
    std::vector<box> kept; ///< left over, large enough
    std::vector<std::string> kept_sizes;
    std::vector<std::string> small_print;
};

template <length_unit Unit>
class lay_planner {
public:
    lay_planner(const sheet_cloth<Unit>& c, const ruler& by, const lay_drawing_options<Unit>& options)
        : from_(c), by_(by), options_(options) {}

    lay_plan make() {
        made_.project = options_.project;
        made_.material = from_.material;
        made_.folded = from_.bolt.folded;
        made_.width = mm(made_.folded ? from_.bolt.width / 2 : from_.bolt.width);
        made_.length = mm(from_.lay.length);
        made_.usable_from = mm(from_.bolt.usable_from_left());
        made_.usable_to = made_.usable_from + mm(from_.bolt.usable_width());
        say_sizes();
        add_pieces();
        add_cuts();
        if (options_.keep_across.value() > 0 && options_.keep_along.value() > 0)
            add_kept();
        made_.small_print.push_back(
            joined({"Print at 100 %. Figures are rounded to ", graduation_text(by_), ", each from the exact length. ",
                    "The arrow on a piece shows its height, which lies along the grain unless the piece is turned."}));
        return std::move(made_);
    }

private:
    static double mm(length<Unit> l) { return to_double(l.value()) * to_double(units_per<millimetre, Unit>); }
    std::string written(length<Unit> l) const { return unbroken(to_text(l, by_)); }

    void say_sizes() {
        const bolt<Unit>& b = from_.bolt;
        made_.width_words = joined(
            {made_.folded ? "half the width, folded: " : "width ", to_text(made_.folded ? b.width / 2 : b.width, by_)});
        made_.usable_words = joined({"usable ", to_text(b.usable_width(), by_)});
        made_.length_words = joined({"laid ", to_text(from_.lay.length, by_)});
        auto& facts = made_.facts;
        facts.push_back(joined({"cloth ", written(b.width), " wide, ", written(b.usable_width()), " usable",
                                b.folded ? ", folded" : "", b.one_way ? ", one way up" : ""}));
        facts.push_back(joined(
            {"length laid ", written(from_.lay.length), from_.lay.proved_best() ? ", the least that can be" : ""}));
        if (!from_.lay.proved_best())
            facts.push_back(joined({"no lay can be shorter than ", written(from_.lay.bound)}));
        facts.push_back(joined({"length to buy ", written(from_.bought.bought)}));
    }

    /// "A: back, 20 x 30 in, 2 of them, 1 turned"
    void add_pieces() {
        std::vector<std::size_t> laid(from_.pieces.size()), turned(from_.pieces.size());
        for (const cloth_place<Unit>& p : from_.lay.places) {
            made_.places.push_back({box_of(p.where), p.piece, p.turned});
            laid[p.piece] += static_cast<std::size_t>(p.comes_out);
            turned[p.piece] += p.turned ? 1U : 0U;
        }
        for (std::size_t i = 0; i < from_.pieces.size(); ++i) {
            const cloth_piece<Unit>& p = from_.pieces[i];
            made_.kinds.push_back(p.name);
            made_.sizes.push_back(size_text(p.size.width(), p.size.height(), by_));
            std::string entry = joined({letters(i), ": ", p.name, ", ", made_.sizes.back()});
            if (laid[i] > 1)
                entry.append(", ").append(std::to_string(laid[i])).append(" of them");
            if (turned[i] > 0)
                entry.append(", ").append(laid[i] > 1 ? std::to_string(turned[i]) + " turned" : "turned");
            if (p.on_fold)
                entry += ", on the fold";
            made_.list.push_back(entry);
        }
    }

    static box box_of(const cloth_part<Unit>& p) {
        return {mm(p.from_left), mm(p.from_end), mm(p.across), mm(p.along)};
    }

    void add_cuts() {
        if (!from_.lay.cuts.empty())
            say_making_ready();
        std::size_t n = 0;
        for (const cloth_cut<Unit>& c : from_.lay.cuts) {
            const box in_hand = box_of(c.in_hand);
            const bool across = c.direction == cut_direction::across;
            const double at = mm(c.on_cloth());
            made_.cuts.push_back(across ? lay_cut_line{{in_hand.x, at}, {in_hand.right(), at}}
                                        : lay_cut_line{{at, in_hand.y}, {at, in_hand.bottom()}});
            made_.cut_list.push_back(
                joined({"cut ", std::to_string(++n), across ? ": across " : ": along ", words_for(c.origin), ", ",
                        to_text(c.at, by_), across ? " from its near side; " : " from its left; ",
                        to_text(c.on_cloth(), by_), across ? " from the end" : " from the left edge"}));
        }
    }

    /// Cut 0 gives the edges that all others are told from.
    void say_making_ready() {
        made_.cut_list.push_back("cut 0: straighten the end; near is toward it");
        made_.cut_list.push_back(joined({"cut 0: cut off ", to_text(from_.lay.length, by_), " from that end"}));
        if (from_.bolt.selvedge.value() > 0)
            made_.cut_list.push_back(joined({"cut 0: trim ", to_text(from_.bolt.selvedge, by_), " off the selvedges"}));
    }

    void add_kept() {
        for (const cloth_part<Unit>& o : off_cuts<Unit>(from_.lay, options_.keep_across, options_.keep_along)) {
            made_.kept.push_back(box_of(o));
            made_.kept_sizes.push_back(size_text(o.across, o.along, by_));
            made_.list.push_back(joined({"left over, to keep: ", made_.kept_sizes.back()}));
        }
    }

    const sheet_cloth<Unit>& from_;
    const ruler by_;
    const lay_drawing_options<Unit>& options_;
    lay_plan made_;
};

template <length_unit Unit>
lay_plan lay_plan_of(const sheet_cloth<Unit>& c, const ruler& by,
                     const std::type_identity_t<lay_drawing_options<Unit>>& options) {
    return lay_planner<Unit>(c, by, options).make();
}

} // namespace detail

} // namespace turncloth

#endif
