// Where everything goes on the page of a drawing.
//
//   arrangement_of(plan, paper)     the scale, and a box for each part of the page
//   spread(wanted, sizes, from, to) labels moved apart along a margin, each as near to its line as may be
//
// The piece stands in a core box, which holds the words of its width too. Dimensions keep to the left of the core and
// below it, labels of level lines to its right, labels of upright lines above it: no two of these meet. Labels that do
// not fit become numbers, and a list below says what they are.
#ifndef TURNCLOTH_DRAW_DETAIL_PIECE_LAYOUT_HPP
#define TURNCLOTH_DRAW_DETAIL_PIECE_LAYOUT_HPP

#include <turncloth/draw/detail/drawing_foot.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <tuple>
#include <vector>

namespace turncloth {

namespace detail {

// All in mm on paper.
inline constexpr double lead = 9;                             // from the core to a label
inline constexpr double label_line = 3.5, label_height = 8.6; // a label has two lines
inline constexpr double longest_label = 62;
inline constexpr double number_height = 3.4;
inline constexpr double least_piece = 8;
inline constexpr double vanishing = 1e30; // a scale at which only the words are left

/// How the labels of one side are written.
struct label_side {
    enum class manner { none, level, turned, numbered } how = manner::none;
    double depth = 0;      ///< across the side, from the core
    std::size_t every = 1; ///< of numbers, which are written
    std::size_t first = 1; ///< the number of the first
};

struct arrangement : page_foot {
    box page{}, picture{}, list{};
    box core{}, piece{};
    double scale = 1; ///< mm of cloth to one mm on paper
    label_side above, beside;
    std::vector<std::string> entries; ///< of the list, in columns
    double column = 0;                ///< their width
    std::size_t list_rows = 1;
    std::size_t left_out = 0;
    double beside_from = 0, beside_to = 0; ///< the margin that labels beside the piece may use

    double x(double cloth) const { return piece.x + cloth / scale; }
    double y(double cloth) const { return piece.y + cloth / scale; }
    int numbered() const {
        return (above.how == label_side::manner::numbered) + (beside.how == label_side::manner::numbered);
    }
};

/// Centres for labels of these sizes, in order and without overlap within from..to, nearest to where they are wanted in
/// least squares: with the room before each label taken off, that is a regression to a sequence that never falls, found
/// by pooling neighbours that would cross.
inline std::vector<double> spread(const std::vector<double>& wanted, const std::vector<double>& sizes, double from,
                                  double to) {
    struct pool {
        double sum;
        std::size_t count;
        double mean() const { return sum / static_cast<double>(count); }
    };
    std::vector<pool> pools;
    std::vector<double> before;
    double total = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        before.push_back(total + sizes[i] / 2);
        total += sizes[i];
        pools.push_back({wanted[i] - before[i], 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
            const pool last = pools.back();
            pools.pop_back();
            pools.back().sum += last.sum;
            pools.back().count += last.count;
        }
    }
    std::vector<double> centres;
    for (const pool& p : pools)
        for (std::size_t i = 0; i < p.count; ++i)
            centres.push_back(std::max(from, std::min(p.mean(), to - total)) + before[centres.size()]);
    return centres;
}

/// A figure is written out whatever it takes; what it is of may be shortened.
inline double label_width(const plan_label& l) {
    return std::max(text_width(l.distance(), body), std::min(longest_label, text_width(l.what, body)));
}

inline double widest(const std::vector<plan_label>& labels) {
    double width = 0;
    for (const plan_label& l : labels)
        width = std::max(width, label_width(l));
    return width;
}

inline double number_width(const std::vector<plan_label>& labels, const label_side& s) {
    return text_width(std::to_string(s.first + labels.size() - 1), body);
}

/// Along the side, were each label written out.
inline double extent(const std::vector<plan_label>& labels, bool in_a_row) {
    double sum = 0;
    for (const plan_label& l : labels)
        sum += in_a_row ? label_width(l) + gap : label_height;
    return sum;
}

/// The entries of a numbered side. Marks of one kind from one edge share a heading, unless the kinds are many.
inline void list_side(std::vector<std::string>& entries, const std::vector<plan_label>& labels, std::size_t first) {
    const auto kind = [&](std::size_t i) { return std::tie(labels[i].what, labels[i].from); };
    std::vector<std::size_t> kinds; // the first label of each
    for (std::size_t i = 0; i < labels.size(); ++i)
        if (std::none_of(kinds.begin(), kinds.end(), [&](std::size_t k) { return kind(k) == kind(i); }))
            kinds.push_back(i);
    const bool many = kinds.size() * 3 > labels.size();
    const auto number = [&](std::size_t i) { return std::to_string(first + i) + ": "; };
    for (std::size_t i = 0; many && i < labels.size(); ++i)
        entries.push_back(number(i) + labels[i].distance() + ", " + labels[i].what);
    for (std::size_t k = 0; !many && k < kinds.size(); ++k) {
        entries.push_back(labels[kinds[k]].what + ',');
        entries.push_back("from the cut " + labels[kinds[k]].from + " edge:");
        for (std::size_t i = kinds[k]; i < labels.size(); ++i)
            if (kind(i) == kind(kinds[k]))
                entries.push_back(number(i) + labels[i].figure);
    }
}

/// Builds an arrangement from the foot of the page upward.
class arranger {
public:
    arranger(const plan& p, double width, double height) : plan_(p) {
        made_.page = {0, 0, width, height};
        made_.picture = {page_margin, page_margin, width - 2 * page_margin, height - 2 * page_margin};
    }

    arrangement make() {
        static_cast<page_foot&>(made_) = take_foot(plan_, made_.picture);
        const arrangement so_far = made_;
        do {
            made_ = so_far;
            choose_sides();
            take_list();
            choose_scale();
            place_piece();
        } while (turns_to_numbers());
        return std::move(made_);
    }

private:
    using manner = label_side::manner;

    /// Of the dimensions on one side.
    double rows() const { return (plan_.has_allowances() ? 2 : 1) * dimension_row + 1; }

    /// How far the words of a side's dimensions reach past the piece, which measures `cut` and `finished` on paper.
    static double overhang(const std::string& cut_words, double cut, const std::string& finished_words,
                           double finished) {
        const auto past = [](const std::string& words, double length) {
            return stands_over(words, length) ? 0 : past_end + text_width(words, body);
        };
        return std::max(past(cut_words, cut), past(finished_words, finished));
    }
    double core_width(double scale) const {
        return plan_.width / scale +
               overhang(plan_.cut_width, plan_.width / scale, plan_.finished_width, plan_.finished.width / scale);
    }
    /// Below the piece: the rows of its width, and the words of a height that is too short for them.
    double below(double scale) const {
        return std::max(rows(), overhang(plan_.cut_height, plan_.height / scale, plan_.finished_height,
                                         plan_.finished.height / scale));
    }
    double figure_width(double scale) const { return rows() + core_width(scale) + made_.beside.depth; }
    double figure_height(double scale) const { return made_.above.depth + plan_.height / scale + below(scale); }

    /// Above, level where one row holds them all, else turned.
    void choose_sides() {
        const auto &above = plan_.above, &beside = plan_.beside;
        if (above_numbered_)
            made_.above = {manner::numbered, lead + line_height};
        else if (!above.empty() && extent(above, true) <= made_.picture.width)
            made_.above = {manner::level, lead + 2 * label_line};
        else if (!above.empty())
            made_.above = {manner::turned, lead + widest(above) + 1};
        if (beside_numbered_)
            made_.beside = {manner::numbered, lead + number_width(beside, made_.beside) + 2};
        else if (!beside.empty())
            made_.beside = {manner::level, lead + widest(beside) + 1};
        made_.above.first = beside_numbered_ ? beside.size() + 1 : 1;
    }

    /// Labels that find no room, or would stray far from the piece, become numbers, for which all is arranged anew.
    bool turns_to_numbers() {
        const auto strays = [](double length, double piece) { return length > 4 * piece + 40; };
        const double across = extent(plan_.above, made_.above.how == manner::level), down = extent(plan_.beside, false);
        const box &room = made_.picture, &piece = made_.piece;
        const bool above = !above_numbered_ &&
                           (across > room.width || (made_.above.how == manner::turned && strays(across, piece.width)));
        const bool beside =
            !beside_numbered_ && (down > room.bottom() - made_.beside_from || strays(down, piece.height));
        above_numbered_ |= above;
        beside_numbered_ |= beside;
        return above || beside;
    }

    void take_list() {
        auto& entries = made_.entries;
        if (made_.beside.how == manner::numbered)
            list_side(entries, plan_.beside, made_.beside.first);
        if (made_.above.how == manner::numbered)
            list_side(entries, plan_.above, made_.above.first);
        if (entries.empty())
            return;
        for (const std::string& e : entries)
            made_.column = std::max(made_.column, text_width(e, small) + 2);
        made_.column = std::min(made_.column, made_.picture.width / 2);
        if (plan_.height <= plan_.width || !take_list_beside())
            take_list_below();
    }

    /// Where the least picture leaves room for all of it.
    bool take_list_beside() {
        box& rest = made_.picture;
        made_.list_rows = whole_number(rest.height / small_line_height);
        const std::size_t columns = (made_.entries.size() + made_.list_rows - 1) / made_.list_rows;
        const double width = static_cast<double>(columns) * made_.column;
        if (width + gap + figure_width(vanishing) + least_piece > rest.width)
            return false;
        made_.list = {rest.right() - width, rest.y + small, width, rest.height};
        rest.width -= width + gap;
        return true;
    }

    /// It may take what the least picture leaves; entries that find no room are counted.
    void take_list_below() {
        const double room = made_.picture.height - made_.above.depth - below(vanishing) - least_piece - gap;
        const auto columns = static_cast<std::size_t>(made_.picture.width / made_.column);
        leave_out_beyond(columns * whole_number(room / small_line_height));
        made_.list_rows = (made_.entries.size() + columns - 1) / columns;
        made_.list = lowest(made_.picture, static_cast<double>(made_.list_rows) * small_line_height + gap);
        made_.list.y += gap;
    }

    static std::size_t whole_number(double x) { return static_cast<std::size_t>(std::max(1.0, x)); }

    void leave_out_beyond(std::size_t most) {
        auto& entries = made_.entries;
        if (entries.size() <= most)
            return;
        made_.left_out = entries.size() - most + 1;
        entries.resize(most - 1);
        entries.push_back("and " + std::to_string(made_.left_out) + " more on the sheet");
    }

    /// A piece whose words alone are too much for the page is drawn all the same, small.
    void choose_scale() {
        const box& room = made_.picture;
        const auto figure_fits = [&](double scale) {
            return figure_width(scale) <= room.width && figure_height(scale) <= room.height;
        };
        const bool words_fit = figure_fits(vanishing);
        made_.scale = first_in_series<double>({1, 2, 4, 5, 8}, [&](double scale) {
            return words_fit ? figure_fits(scale) : std::max(plan_.width, plan_.height) <= least_piece * scale;
        });
    }

    /// The whole figure, dimensions and labels included, in the middle of the picture. Words of a dimension that is too
    /// short for them stand past its lower or right end.
    void place_piece() {
        const box& room = made_.picture;
        const double scale = made_.scale, width = plan_.width / scale, height = plan_.height / scale;
        const bool both = made_.above.depth > 0; // then labels beside begin where the piece does
        const double labels = beside_numbered_ ? 0 : extent(plan_.beside, false);
        const double deep = std::max(figure_height(scale), both ? made_.above.depth + labels : 0);
        made_.piece = {std::round(room.x + rows() + std::max(0.0, room.width - figure_width(scale)) / 2),
                       std::round(room.y + made_.above.depth + std::max(0.0, room.height - deep) / 2), width, height};
        made_.core = {made_.piece.x, made_.piece.y, core_width(scale), height};
        made_.beside_from = both ? made_.core.y : room.y;
        made_.beside_to = room.bottom();
        number_sides();
    }

    void number_sides() {
        const auto fitting = [](std::size_t labels, double size, double room) {
            const auto most = static_cast<std::size_t>(room / size);
            return round_number([&](std::size_t n) { return labels / n <= most; });
        };
        const double down = std::min(made_.piece.height + 20, made_.beside_to - made_.beside_from);
        const double across = std::min(made_.piece.width + 20, made_.picture.width);
        made_.beside.every = fitting(plan_.beside.size(), number_height, down);
        made_.above.every = fitting(plan_.above.size(), number_width(plan_.above, made_.above) + 2, across);
    }

    const plan& plan_;
    arrangement made_;
    bool above_numbered_ = false, beside_numbered_ = false;
};

/// Upright or on its side: what leaves fewest marks out, then fewest to look up, then the larger scale, then the page
/// that lies as the piece does.
inline arrangement arrangement_of(const plan& p, paper on) {
    const auto [narrow, wide] = sides_of(on);
    arrangement upright = arranger(p, narrow, wide).make(), sideways = arranger(p, wide, narrow).make();
    const auto rank = [](const arrangement& a) { return std::make_tuple(a.left_out, a.numbered(), a.scale); };
    if (rank(upright) == rank(sideways))
        return p.width > p.height ? sideways : upright;
    return rank(upright) < rank(sideways) ? upright : sideways;
}

} // namespace detail

} // namespace turncloth

#endif
