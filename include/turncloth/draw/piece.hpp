// A piece drawn to scale on a page to be printed.
//
//   page_of(piece, ruler, options)       a page as a value (page/page.hpp)
//   drawing_of(piece, ruler, options)    the same as an SVG document; A4, inches and centimetres where nothing is said
//
//   const sheet<inch> s = sheet_of(roll);
//   save("outer.svg", drawing_of(s.pieces[0], {}, {.project = s.name}));
//
// The piece is drawn at the largest of 1:1, 1:2, 1:4, 1:5, 1:8, 1:10, 1:20, ... that leaves room for its words. Every
// kind of line has its own pattern and weight, in black. Figures are rounded to the ruler, each from the exact length;
// what is drawn is not rounded.
//
// The piece stands in a core, which holds the words of its width too. Dimensions keep to the left of the core and below
// it, labels of level lines to its right, labels of upright lines above it: no two of these meet. Labels that do not fit
// become numbers, and a list below says what they are.
#ifndef TURNCLOTH_DRAW_PIECE_HPP
#define TURNCLOTH_DRAW_PIECE_HPP

#include <turncloth/draw/detail/piece_plan.hpp>
#include <turncloth/page/drawing.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

namespace turncloth {

namespace detail {

// A finished edge is thin and hardly broken, so that a fold or stitching on it can be told apart from it.
inline constexpr pen cut_pen = {"cut", 0.6}, finished_pen = {"finished", 0.2, {10, 1.2}};

inline constexpr line_kind all_line_kinds[] = {line_kind::fold, line_kind::stitching, line_kind::mark,
                                               line_kind::placement, line_kind::slit};

constexpr pen pen_of(line_kind kind) {
    switch (kind) {
    case line_kind::fold:
        return {"fold", 0.4, {3, 1.5}};
    case line_kind::stitching:
        return stitching_pen;
    case line_kind::mark:
        return {"mark", 0.25, {6, 1, 1, 1}};
    case line_kind::placement:
        return {"placement", 0.35, {0.35, 1.4}};
    case line_kind::slit:
        break;
    }
    return {"slit", 0.7, {0.7, 0.7}};
}

/// How the labels of one side are written.
struct label_side {
    enum class manner { none, level, turned, numbered } how = manner::none;
    double depth = 0;      ///< across the side, from the core
    std::size_t every = 1; ///< of numbers, which are written
    std::size_t first = 1; ///< the number of the first
};

/// A piece on a page of one size.
class piece_drawer {
public:
    piece_drawer(const piece_plan& p, const drawing_options& options, double width, double height)
        : plan_(&p), options_(&options), by_(options.letters) {
        do {
            choose_sides(width);
            for (const double most_list : {0.6, 0.5, 0.4, 0.3, 0.2, 0.1}) {
                take_frame(width, height, most_list);
                if (fits(std::max(plan_->cut.width, plan_->cut.height) / small_piece))
                    break;
            }
            choose_scale();
        } while (turns_to_numbers());
        frame_->take_only(deepest() + 2);
        place_piece();
    }

    /// What leaves fewest marks out, then fewest to look up, then the larger scale, then the page that lies as the piece.
    auto rank() const {
        return std::tuple(frame_->left_out, above_numbered_ + beside_numbered_, scale_,
                          frame_->lies() != (plan_->cut.width > plan_->cut.height));
    }

    page draw() const {
        page on = frame_->begin(description());
        draw_piece(on);
        draw_dimensions(on);
        draw_beside(on);
        draw_above(on);
        return frame_->draw(std::move(on), scale_);
    }

private:
    using manner = label_side::manner;
    static constexpr double lead = 9;                             // from the core to a label
    static constexpr double label_line = 3.5, label_height = 8.6; // a label has two lines
    static constexpr double longest_label = 62, number_height = 3.4;
    static constexpr double least_piece = 8, small_piece = 30;
    static constexpr double vanishing = 1e30; // a scale at which only the words are left

    // How much room there must be.

    /// A figure is written out whatever it needs; what it is of may be shortened.
    double label_width(const piece_label& l) const {
        return std::max(by_.width(l.distance(), body_size), std::min(longest_label, by_.width(l.what, body_size)));
    }
    double widest(const std::vector<piece_label>& labels) const {
        double most = 0;
        for (const piece_label& l : labels)
            most = std::max(most, label_width(l));
        return most;
    }
    double number_width(const std::vector<piece_label>& labels, const label_side& s) const {
        return by_.width(std::to_string(s.first + labels.size() - 1), body_size);
    }
    /// Along the side, were each label written out.
    double extent(const std::vector<piece_label>& labels, bool in_a_row) const {
        double sum = 0;
        for (const piece_label& l : labels)
            sum += in_a_row ? label_width(l) + page_gap : label_height;
        return sum;
    }

    /// Of the dimensions on one side.
    double rows() const { return (plan_->has_allowances() ? 2 : 1) * dimension_row + 1; }
    double past(const std::string& cut_words, double cut, const std::string& finished_words, double finished) const {
        return std::max(overhang(by_, cut_words, cut),
                        plan_->has_allowances() ? overhang(by_, finished_words, finished) : 0);
    }
    double core_width(double scale) const {
        return plan_->cut.width / scale +
               past(plan_->cut_width, plan_->cut.width / scale, plan_->finished_width, plan_->finished.width / scale);
    }
    /// Below the piece: the rows of its width, and the words of a height that is too short for them.
    double below(double scale) const {
        return std::max(rows(), past(plan_->cut_height, plan_->cut.height / scale, plan_->finished_height,
                                     plan_->finished.height / scale));
    }
    double figure_width(double scale) const { return rows() + core_width(scale) + beside_.depth; }
    double figure_height(double scale) const { return above_.depth + plan_->cut.height / scale + below(scale); }
    /// With the labels beside it, which begin where the piece does if there are labels above it.
    double deepest() const {
        const double labels = beside_numbered_ ? plan_->cut.height / scale_ + 20 : extent(plan_->beside, false);
        return std::max(figure_height(scale_), above_.depth + labels);
    }

    // Where everything goes.

    /// Above, level where one row holds them all, else turned.
    void choose_sides(double page_width) {
        const auto &above = plan_->above, &beside = plan_->beside;
        above_ = beside_ = {};
        if (above_numbered_)
            above_ = {manner::numbered, lead + line_height};
        else if (!above.empty() && extent(above, true) <= page_width - 2 * page_margin)
            above_ = {manner::level, lead + 2 * label_line};
        else if (!above.empty())
            above_ = {manner::turned, lead + widest(above) + 1};
        if (beside_numbered_)
            beside_ = {manner::numbered, lead + number_width(beside, beside_) + 2};
        else if (!beside.empty())
            beside_ = {manner::level, lead + widest(beside) + 1};
        above_.first = beside_numbered_ ? beside.size() + 1 : 1;
    }

    void take_frame(double width, double height, double most_list) {
        frame_words words = plan_->words;
        std::vector<std::string> entries;
        if (beside_numbered_)
            list_side(entries, plan_->beside, beside_.first);
        if (above_numbered_)
            list_side(entries, plan_->above, above_.first);
        words.lists = {std::move(entries)};
        words.most_list = most_list;
        if (!options_->for_screen)
            words.small_print[0].insert(0, "Print at 100 %. ");
        words.legend.push_back({cut_pen, "cut edge"});
        if (plan_->has_allowances())
            words.legend.push_back({finished_pen, "finished edge"});
        for (const line_kind kind : all_line_kinds)
            if (plan_->has(kind))
                words.legend.push_back({pen_of(kind), pen_of(kind).means.text()});
        if (!plan_->features.eyelets.empty())
            words.legend.push_back({eyelet_pen, "eyelet"});
        frame_.emplace(words, *options_, width, height);
    }

    bool fits(double scale) const {
        return figure_width(scale) <= frame_->picture.width && figure_height(scale) <= frame_->picture.height;
    }
    /// A piece whose words alone are too much for the page is drawn all the same, small.
    void choose_scale() {
        const double most = std::max(plan_->cut.width, plan_->cut.height);
        const bool words_fit = fits(vanishing);
        scale_ = scale_for([&](double scale) { return words_fit ? fits(scale) : most <= least_piece * scale; });
    }

    /// Labels that find no room, or would stray far from the piece, become numbers, for which all is arranged anew.
    bool turns_to_numbers() {
        const auto strays = [](double length, double piece) { return length > 4 * piece + 40; };
        const double across = extent(plan_->above, above_.how == manner::level), down = extent(plan_->beside, false);
        const page_area& room = frame_->picture;
        const double width = plan_->cut.width / scale_, height = plan_->cut.height / scale_;
        const bool tiny = scale_ > 1 && std::max(width, height) < small_piece; // for the sake of its labels
        const bool no_room = tiny || figure_width(vanishing) + least_piece > room.width;
        const bool above =
            !above_numbered_ && (across > room.width || (above_.how == manner::turned && strays(across, width)) ||
                                 (above_.depth > 0 && (tiny || figure_height(vanishing) + least_piece > room.height)));
        const bool beside = !beside_numbered_ && (down > room.height - above_.depth || strays(down, height) ||
                                                  (beside_.depth > 0 && no_room));
        above_numbered_ |= above;
        beside_numbered_ |= beside;
        return above || beside;
    }

    /// The whole figure, dimensions and labels included, in the middle of the picture. Words of a dimension that is too
    /// short for them stand past its lower or right end.
    void place_piece() {
        const page_area& room = frame_->picture;
        const double width = plan_->cut.width / scale_, height = plan_->cut.height / scale_;
        piece_ = {std::round(room.x + rows() + std::max(0.0, room.width - figure_width(scale_)) / 2),
                  std::round(room.y + above_.depth + std::max(0.0, room.height - deepest()) / 2), width, height};
        core_right_ = piece_.x + core_width(scale_);
        beside_from_ = above_.depth > 0 ? piece_.y : room.y;
        const auto fitting = [](std::size_t labels, double size, double there) {
            const auto most = static_cast<std::size_t>(std::max(1.0, there / size));
            return round_number([&](std::size_t n) { return labels / n <= most; });
        };
        beside_.every =
            fitting(plan_->beside.size(), number_height, std::min(height + 20, room.bottom() - beside_from_));
        above_.every =
            fitting(plan_->above.size(), number_width(plan_->above, above_) + 2, std::min(width + 20, room.width));
    }

    // Drawing it.

    double x(double cloth) const { return piece_.x + cloth / scale_; }
    double y(double cloth) const { return piece_.y + cloth / scale_; }
    page_area on_page(const page_area& a) const { return {x(a.x), y(a.y), a.width / scale_, a.height / scale_}; }

    std::string description() const {
        const auto& facts = plan_->words.facts;
        std::string all = joined({facts[0], ", ", facts[1], ", ", facts[2]});
        if (!options_->for_screen)
            all += ", " + scale_text(scale_);
        all += '.';
        for (std::size_t i = 1; i < plan_->words.sentences.size(); ++i)
            all += joined({" ", plan_->words.sentences[i], "."});
        for (const auto* side : {&plan_->beside, &plan_->above})
            for (const piece_label& l : *side)
                all += joined({" ", l.what, ", ", l.distance(), "."});
        return plain(all);
    }

    void draw_piece(page& on) const {
        if (plan_->has_allowances())
            on.draw_closed(finished_pen, on_page(plan_->finished));
        for (const line_kind kind : all_line_kinds)
            for (const piece_line& l : plan_->lines)
                if (l.kind == kind)
                    on.draw(pen_of(kind), {{x(l.where.from.x), y(l.where.from.y)}, {x(l.where.to.x), y(l.where.to.y)}});
        const cloth_on_page place{{piece_.x, piece_.y}, scale_};
        draw_features(on, plan_->features, place);
        on.draw_closed(cut_pen, cut_outline(plan_->cut, plan_->features.corner, place));
    }

    /// The finished size next to the piece, the cut size outside it.
    void draw_dimensions(page& on) const {
        double row = 1;
        if (plan_->has_allowances())
            dimensions_of(on, on_page(plan_->finished), plan_->finished_width, plan_->finished_height, row++);
        dimensions_of(on, piece_, plan_->cut_width, plan_->cut_height, row);
    }
    void dimensions_of(page& on, const page_area& a, const std::string& width, const std::string& height,
                       double row) const {
        const double below = piece_.bottom() + row * dimension_row,
                     left = piece_.x - row * dimension_row + dimension_row / 2;
        draw_dimension(on, by_, {{a.x, below}, {a.right(), below}, a.bottom(), piece_.right(), width});
        draw_dimension(on, by_, {{left, a.y}, {left, a.bottom()}, a.x, piece_.bottom(), height});
    }

    struct placed {
        const piece_label* label;
        std::string number;
        double wanted, centre = 0;
    };

    /// What is written on one side: every label, or every n-th number; moved apart along the margin, where `size` gives
    /// how much a label takes.
    template <class Size>
    std::vector<placed> placed_along(const std::vector<piece_label>& labels, const label_side& side, bool down,
                                     Size size) const {
        std::vector<placed> all;
        std::vector<double> wanted, sizes;
        for (std::size_t i = 0; i < labels.size(); ++i) {
            const std::size_t n = side.first + i;
            if (side.how == manner::numbered && n % side.every != 0)
                continue;
            all.push_back({&labels[i], std::to_string(n), down ? y(labels[i].at) : x(labels[i].at)});
            wanted.push_back(all.back().wanted);
            sizes.push_back(size(all.back()));
        }
        const page_area& room = frame_->picture;
        const std::vector<double> centres =
            spread(wanted, sizes, down ? beside_from_ : room.x, down ? room.bottom() : room.right());
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i].centre = centres[i];
        return all;
    }

    void draw_beside(page& on) const {
        const bool numbered = beside_.how == manner::numbered;
        const double edge = core_right_, words = edge + lead + 1;
        for (const placed& p : placed_along(plan_->beside, beside_, true,
                                            [&](const placed&) { return numbered ? number_height : label_height; })) {
            on.draw(leader_pen, {{x(p.label->start), p.wanted},
                                 {edge + 1.5, p.wanted},
                                 {edge + lead - 1.5, p.centre},
                                 {edge + lead, p.centre}});
            if (numbered) {
                on.write({words, p.centre + 0.35 * body_size}, p.number, body_size);
                continue;
            }
            on.write({words, p.centre - 0.5}, p.label->distance(), body_size);
            on.write({words, p.centre - 0.5 + label_line}, by_.shortened(p.label->what, body_size, longest_label),
                     body_size);
        }
    }

    void draw_above(page& on) const {
        const auto size = [&](const placed& p) {
            if (above_.how == manner::numbered)
                return by_.width(p.number, body_size) + 2;
            return above_.how == manner::level ? label_width(*p.label) + page_gap : label_height;
        };
        const double edge = piece_.y;
        for (const placed& p : placed_along(plan_->above, above_, false, size)) {
            on.draw(leader_pen, {{p.wanted, y(p.label->start)},
                                 {p.wanted, edge - 1.5},
                                 {p.centre, edge - lead + 1.5},
                                 {p.centre, edge - lead}});
            write_above(on, p, {p.centre, edge - lead - 1});
        }
    }
    void write_above(page& on, const placed& p, page_point at) const {
        const std::string what = by_.shortened(p.label->what, body_size, longest_label);
        if (above_.how == manner::numbered) {
            on.write(at, p.number, body_size, set_from::middle);
        } else if (above_.how == manner::level) {
            on.write({at.x, at.y - label_line}, p.label->distance(), body_size, set_from::middle);
            on.write(at, what, body_size, set_from::middle);
        } else {
            on.write({at.x - 0.5, at.y}, p.label->distance(), body_size).turned = 90;
            on.write({at.x - 0.5 + label_line, at.y}, what, body_size).turned = 90;
        }
    }

    const piece_plan* plan_;
    const drawing_options* options_;
    lettering by_;
    std::optional<page_frame> frame_;
    label_side above_, beside_;
    bool above_numbered_ = false, beside_numbered_ = false;
    double scale_ = 1, core_right_ = 0, beside_from_ = 0;
    page_area piece_{};
};

} // namespace detail

/// Throws range_error for a ruler whose graduation is not above zero, and for a piece over 1 km long or wide.
template <length_unit Unit>
page page_of(const sheet_piece<Unit>& piece, const ruler& by = {}, const drawing_options& options = {}) {
    const detail::piece_plan plan = detail::piece_planner<Unit>(piece, by).make(options.project);
    return detail::best_page(
               options, [&](double width, double height) { return detail::piece_drawer(plan, options, width, height); })
        .draw();
}

/// Throws as page_of.
template <length_unit Unit>
std::string drawing_of(const sheet_piece<Unit>& piece, const ruler& by = {}, const drawing_options& options = {}) {
    return to_svg(page_of(piece, by, options));
}

TURNCLOTH_ONCE(std::string drawing_of(const sheet_piece<inch>&, const ruler&, const drawing_options&));
TURNCLOTH_ONCE(std::string drawing_of(const sheet_piece<centimetre>&, const ruler&, const drawing_options&));

} // namespace turncloth

#endif
