// Where everything goes on the page of a drawing.
//
//   arrangement_of(plan, paper)     the scale, and a box for each part of the page
//   spread(wanted, sizes, from, to) labels moved apart along a margin, each as near to its line as may be
//
// The piece stands in a core box, large enough for the words of its dimensions too. Dimensions keep to the left of the
// core and below it, labels of level lines to its right, labels of upright lines above it: no two of these meet. Labels
// that do not fit beside the piece become numbers, and a list below says what they are.
#ifndef TURNCLOTH_SHEET_DRAWING_LAYOUT_HPP
#define TURNCLOTH_SHEET_DRAWING_LAYOUT_HPP

#include <turncloth/sheet/drawing_plan.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <tuple>
#include <vector>

namespace turncloth {

namespace detail {

// All in mm on paper.
inline constexpr double page_margin = 10, gap = 4;
inline constexpr double body = 3, small = 2.6, large = 5;           // sizes of text
inline constexpr double line_height = 3.8, small_line_height = 3.3; // baseline to baseline
inline constexpr double lead = 9;                                   // from the core to a label
inline constexpr double label_height = 7.6, longest_label = 62;     // a label has two lines
inline constexpr double number_height = 3.4;
inline constexpr double dimension_row = 7;
inline constexpr double legend_width = 40, least_core = 25;

/// How the labels of one side are written.
struct label_side {
    enum class manner { none, level, turned, numbered } how = manner::none;
    double depth = 0;      ///< across the side, from the core
    std::size_t every = 1; ///< of numbers, which are written
    std::size_t first = 1; ///< the number of the first
};

struct arrangement {
    box page{}, picture{}, list{}, foot{}, print{};
    box core{}, piece{};
    double scale = 1; ///< mm of cloth to one mm on paper
    label_side above, beside;
    std::vector<std::string> entries; ///< of the list, in columns
    double column = 0;                ///< their width
    std::vector<std::string> edges, print_lines;
    std::size_t left_out = 0;

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

/// The least of 1, 2, 4, 5, 8, 10, 20, ... at which a size fits a room.
inline double scale_for(double width, double height, double room_width, double room_height) {
    constexpr double steps[] = {1, 2, 4, 5, 8};
    for (double ten = 1;; ten *= 10)
        for (const double step : steps)
            if (width <= room_width * step * ten && height <= room_height * step * ten)
                return step * ten;
}

/// The first of 1, 2, 5, 10, 20, ... that is enough.
template <class Enough>
std::size_t round_number(Enough enough) {
    for (std::size_t ten = 1;; ten *= 10)
        for (const std::size_t step : {ten, 2 * ten, 5 * ten})
            if (enough(step))
                return step;
}

inline double label_width(const plan_label& l) {
    return std::min(longest_label, std::max(text_width(l.distance(), body), text_width(l.what, body)));
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

/// Level where one row holds them all, else turned, else numbers.
inline label_side side_above(const std::vector<plan_label>& labels, double room) {
    using manner = label_side::manner;
    if (labels.empty())
        return {};
    double row = 0;
    for (const plan_label& l : labels)
        row += label_width(l) + gap;
    if (row <= room)
        return {manner::level, lead + 2 * line_height};
    if (static_cast<double>(labels.size()) * label_height <= room)
        return {manner::turned, lead + widest(labels) + 1};
    return {manner::numbered, lead + line_height};
}

inline label_side side_beside(const std::vector<plan_label>& labels, double room) {
    using manner = label_side::manner;
    if (labels.empty())
        return {};
    if (static_cast<double>(labels.size()) * label_height <= room)
        return {manner::level, lead + widest(labels) + 1};
    return {manner::numbered, lead + text_width("00000", body)};
}

/// The entries of a numbered side; what all of them share is said once, before them.
inline void list_side(std::vector<std::string>& entries, const std::vector<plan_label>& labels, std::size_t first) {
    const auto alike = [&](std::string plan_label::*part) {
        return std::all_of(labels.begin(), labels.end(),
                           [&](const plan_label& l) { return l.*part == labels[0].*part; });
    };
    const bool one_edge = alike(&plan_label::from), one_thing = alike(&plan_label::what);
    if (one_thing)
        entries.push_back(labels[0].what + ':');
    if (one_edge)
        entries.push_back("from the cut " + labels[0].from + " edge:");
    for (const plan_label& l : labels) {
        entries.push_back(std::to_string(first++) + ": " + (one_edge ? l.figure : l.distance()) +
                          (one_thing ? "" : ", " + l.what));
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
        take_print();
        take_foot();
        choose_sides();
        take_list();
        choose_scale();
        place_piece();
        return std::move(made_);
    }

private:
    using manner = label_side::manner;

    /// The lowest `height` of what is left of the page.
    box take(double height) {
        box& rest = made_.picture;
        rest.height -= height;
        return {rest.x, rest.bottom(), rest.width, height};
    }

    void take_print() {
        for (const std::string& sentence : plan_.small_print)
            for (std::string& line : wrapped(sentence, small, made_.picture.width, 3))
                made_.print_lines.push_back(std::move(line));
        made_.print = take(static_cast<double>(made_.print_lines.size()) * small_line_height + 1);
    }

    void take_foot() {
        for (const std::string& edge : plan_.edges)
            for (std::string& line : wrapped(edge, body, edges_width(), 5))
                made_.edges.push_back(std::move(line));
        const double least = 38, with_bars = static_cast<double>(made_.edges.size()) * line_height + 26;
        made_.foot = take(std::max(least, with_bars) + gap);
        made_.foot.y += gap;
        made_.foot.height -= gap;
    }

    double edges_width() const { return made_.picture.width - legend_width - title_width() - 2 * gap; }

public:
    /// Of the title block; wider where there is room.
    static double title_width() { return 72; }

private:
    double rows_left() const { return has_two_rows() ? 2 * dimension_row + 1 : dimension_row + 1; }
    bool has_two_rows() const { return plan_.has_takes(); }
    double least_height() const {
        return std::max({least_core, text_width(plan_.cut_height, body), text_width(plan_.finished_height, body)});
    }
    double least_width() const {
        return std::max({least_core, text_width(plan_.cut_width, body), text_width(plan_.finished_width, body)});
    }

    void choose_sides() {
        made_.above = side_above(plan_.above, made_.picture.width);
        made_.beside = side_beside(plan_.beside, made_.picture.height - made_.above.depth);
        made_.above.first = made_.beside.how == manner::numbered ? plan_.beside.size() + 1 : 1;
    }

    /// The list may take what the least picture leaves; entries that find no room are counted.
    void take_list() {
        auto& entries = made_.entries;
        if (made_.beside.how == manner::numbered)
            list_side(entries, plan_.beside, made_.beside.first);
        if (made_.above.how == manner::numbered)
            list_side(entries, plan_.above, made_.above.first);
        if (entries.empty())
            return;
        for (const std::string& e : entries)
            made_.column = std::max(made_.column, text_width(e, small) + gap);
        made_.column = std::min(made_.column, made_.picture.width);
        const double room = made_.picture.height - made_.above.depth - rows_left() - least_height() - 2 * gap;
        const auto columns = static_cast<std::size_t>(made_.picture.width / made_.column);
        const auto most = columns * static_cast<std::size_t>(std::max(1.0, room / small_line_height));
        if (entries.size() > most) {
            made_.left_out = entries.size() - most + 1;
            entries.resize(most - 1);
            entries.push_back("and " + std::to_string(made_.left_out) + " more on the sheet");
        }
        const std::size_t rows = (entries.size() + columns - 1) / columns;
        made_.list = take(static_cast<double>(rows) * small_line_height + gap);
    }

    void choose_scale() {
        const box& room = made_.picture;
        made_.scale = scale_for(plan_.width, plan_.height, room.width - rows_left() - made_.beside.depth,
                                room.height - rows_left() - made_.above.depth);
    }

    /// The whole figure, dimensions and labels included, in the middle of the picture.
    void place_piece() {
        const box& room = made_.picture;
        const double width = plan_.width / made_.scale, height = plan_.height / made_.scale;
        box& core = made_.core;
        core.width = std::max(width, least_width());
        core.height = std::max(height, least_height());
        const double spare_width = room.width - rows_left() - core.width - made_.beside.depth;
        const double spare_height = room.height - rows_left() - core.height - made_.above.depth;
        core.x = std::round(room.x + rows_left() + spare_width / 2);
        core.y = std::round(room.y + made_.above.depth + spare_height / 2);
        made_.piece = {core.x + (core.width - width) / 2, core.y + (core.height - height) / 2, width, height};
        number_sides();
    }

    void number_sides() {
        const auto fits = [](const std::vector<plan_label>& labels, double size, double room) {
            return round_number([&](std::size_t n) { return static_cast<double>(labels.size() / n) * size <= room; });
        };
        made_.beside.every = fits(plan_.beside, number_height, made_.core.height);
        made_.above.every = fits(plan_.above, number_width(plan_.above, made_.above) + 2, made_.core.width);
    }

    const plan& plan_;
    arrangement made_;
};

/// Upright or on its side: what leaves fewest marks out, then fewest to look up, then the larger scale, then the page
/// that lies as the piece does.
inline arrangement arrangement_of(const plan& p, paper on) {
    const double narrow = on == paper::a4 ? 210 : 215.9, wide = on == paper::a4 ? 297 : 279.4;
    arrangement upright = arranger(p, narrow, wide).make(), sideways = arranger(p, wide, narrow).make();
    const auto rank = [](const arrangement& a) { return std::make_tuple(a.left_out, a.numbered(), a.scale); };
    if (rank(upright) == rank(sideways))
        return p.width > p.height ? sideways : upright;
    return rank(upright) < rank(sideways) ? upright : sideways;
}

} // namespace detail

} // namespace turncloth

#endif
