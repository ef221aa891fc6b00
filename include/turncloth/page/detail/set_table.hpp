// A table of a document set on a galley: columns as wide as they need, rows that no page parts, and a head for each page.
//
//   table_setter(table, letters, left, width)
//     .add_to(galley)          its caption, the names of its columns, its rows
//
// Columns are as wide as their longest cell where all of them fit. Where they do not, each has its longest word, and what
// is left is shared out by what they lack.
#ifndef TURNCLOTH_PAGE_DETAIL_SET_TABLE_HPP
#define TURNCLOTH_PAGE_DETAIL_SET_TABLE_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/page/detail/galley.hpp>
#include <turncloth/page/detail/set_words.hpp>
#include <turncloth/page/document.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr pen tick_pen = {"tick box", 0.25}, blank_pen = {"blank", 0.2}, rule_pen = {"rule", 0.15, {}, 0.5},
                     head_rule_pen = {"head rule", 0.35};

inline constexpr double tick_side = 3.2;

/// In the middle of a line of words whose upper left corner is there.
inline void draw_tick(galley_strip& on, page_point at) {
    on.draw_closed(tick_pen, page_area{at.x, at.y + (read_text.step - tick_side) / 2, tick_side, tick_side});
}

class table_setter {
public:
    table_setter(const document::table& t, const document_letters& by, double left, double width)
        : from_(t), by_(by), left_(left), width_(width) {
        for (const auto& row : t.rows)
            require_between<range_error>(t.columns.size(), row.size(), t.columns.size(),
                                         "the number of cells of a row");
        choose_widths();
    }

    void add_to(galley& to) const {
        add_lines(to, by_.lines(from_.caption, read_small, width_), read_small);
        std::vector<galley_strip> head = head_strips();
        double height = 0;
        for (const galley_strip& s : head) {
            height += s.height;
            to.add(s);
        }
        to.keep_last();
        constexpr double most_repeated = 60;
        std::size_t repeated = no_head;
        if (height <= most_repeated) {
            repeated = to.heads.size();
            to.heads.push_back(std::move(head));
        }
        for (const auto& row : from_.rows)
            for (galley_strip& s : row_strips(row)) {
                s.head = repeated;
                to.add(std::move(s));
            }
    }

private:
    static constexpr double gap = 5, pad = 0.9, least_blank = 20;
    static constexpr text_style head_text{read_small.size, read_small.step, true};

    struct set_cell {
        std::vector<std::string> lines{};
        text_style style{};
        document::in_cell holds{};
    };

    /// The caption keeps what follows it.
    void add_lines(galley& to, const std::vector<std::string>& lines, const text_style& style) const {
        for (const std::string& line : lines) {
            galley_strip s{.height = style.step, .above = &line == lines.data() ? 3.0 : 0.0, .keeps = true};
            s.write({left_, line_in(style, 0)}, line, style.size);
            to.add(std::move(s));
        }
    }

    /// The first cell that is words names its row.
    std::vector<text_style> styles_of(const std::vector<document::cell>& row) const {
        bool to_name = from_.rows_have_names;
        std::vector<text_style> all;
        for (const document::cell& c : row) {
            const bool words = is_words(c);
            all.push_back(to_name && words ? read_bold : read_text);
            to_name = to_name && !words;
        }
        return all;
    }
    static bool is_words(const document::cell& c) {
        return c.holds == document::in_cell::words || c.holds == document::in_cell::figure;
    }

    void choose_widths() {
        const std::size_t n = from_.columns.size();
        std::vector<double> least(n), most(n);
        std::vector<bool> written_in(n);
        const auto need = [&](std::size_t i, double at_least, double at_most) {
            least[i] = std::max(least[i], at_least);
            most[i] = std::max(most[i], at_most);
        };
        for (std::size_t i = 0; i < n; ++i)
            need(i, by_.least(from_.columns[i], head_text), by_.width(from_.columns[i], head_text));
        for (const auto& row : from_.rows) {
            const std::vector<text_style> styles = styles_of(row);
            for (std::size_t i = 0; i < n; ++i) {
                if (is_words(row[i]))
                    need(i, by_.least(row[i].text, styles[i]), by_.width(row[i].text, styles[i]));
                else if (row[i].holds == document::in_cell::tick)
                    need(i, tick_side, tick_side);
                else
                    need(i, least_blank, least_blank), written_in[i] = true;
            }
        }
        share_out(least, most, written_in);
    }
    /// What is left over is for writing in.
    void share_out(const std::vector<double>& least, const std::vector<double>& most,
                   const std::vector<bool>& written_in) {
        const double there = width_ - gap * (static_cast<double>(least.size()) - 1), over = there - sum_of(most),
                     lacking = there - sum_of(least);
        if (lacking >= 0 && over < 0)
            widths_ = shared_fairly(least, most, there);
        for (std::size_t i = 0; i < least.size() && widths_.size() < least.size(); ++i)
            if (over >= 0)
                widths_.push_back(most[i] + (written_in[i] ? over / count_of(written_in) : 0));
            else
                widths_.push_back(there * least[i] / sum_of(least));
    }
    /// By the root of what each lacks, so that a long column is neither starved nor starves the others; what one does not
    /// need goes to those that need more.
    static std::vector<double> shared_fairly(const std::vector<double>& least, const std::vector<double>& most,
                                             double there) {
        std::vector<double> widths = least;
        std::vector<std::pair<double, std::size_t>> lacking;
        double left = there - sum_of(least), roots = 0;
        for (std::size_t i = 0; i < least.size(); ++i) {
            lacking.emplace_back(most[i] - least[i], i);
            roots += std::sqrt(most[i] - least[i]);
        }
        std::sort(lacking.begin(), lacking.end());
        for (const auto& [lack, i] : lacking) {
            const double more = lack > 0 ? std::min(lack, left * std::sqrt(lack) / roots) : 0;
            widths[i] += more;
            left -= more;
            roots -= std::sqrt(lack);
        }
        return widths;
    }
    static double sum_of(const std::vector<double>& all) { return std::accumulate(all.begin(), all.end(), 0.0); }
    static double count_of(const std::vector<bool>& all) {
        return static_cast<double>(std::count(all.begin(), all.end(), true));
    }

    std::vector<galley_strip> head_strips() const {
        std::vector<set_cell> cells;
        for (std::size_t i = 0; i < from_.columns.size(); ++i)
            cells.push_back({by_.lines(from_.columns[i], head_text, widths_[i]), head_text});
        std::vector<galley_strip> all = set(cells, head_rule_pen);
        all.back().keeps = true;
        return all;
    }
    std::vector<galley_strip> row_strips(const std::vector<document::cell>& row) const {
        const std::vector<text_style> styles = styles_of(row);
        std::vector<set_cell> cells;
        for (std::size_t i = 0; i < row.size(); ++i)
            cells.push_back(
                {is_words(row[i]) ? by_.lines(row[i].text, styles[i], widths_[i]) : std::vector<std::string>{},
                 styles[i], row[i].holds});
        return set(cells, rule_pen);
    }

    /// A strip for each line, which keep one another, over a rule.
    std::vector<galley_strip> set(const std::vector<set_cell>& cells, const pen& rule) const {
        std::size_t lines = 1;
        double step = head_text.step;
        for (const set_cell& c : cells) {
            lines = std::max(lines, c.lines.size());
            step = std::max(step, c.style.step);
        }
        std::vector<galley_strip> all(lines);
        for (std::size_t k = 0; k < lines; ++k) {
            const double top = k == 0 ? pad : 0;
            all[k].height = top + step + (k + 1 == lines ? pad : 0);
            all[k].keeps = k + 1 < lines;
            double x = left_;
            for (std::size_t i = 0; i < cells.size(); ++i) {
                set_line(all[k], {x, top}, cells[i], k, widths_[i]);
                x += widths_[i] + gap;
            }
        }
        const double y = all.back().height;
        all.back().draw(rule, {{left_, y}, {left_ + width_, y}});
        return all;
    }
    static void set_line(galley_strip& on, page_point at, const set_cell& c, std::size_t k, double width) {
        if (k < c.lines.size())
            on.write({at.x, line_in(c.style, at.y)}, c.lines[k], c.style.size, c.style.bold);
        if (k == 0 && c.holds == document::in_cell::tick)
            draw_tick(on, at);
        if (k == 0 && c.holds == document::in_cell::blank)
            on.draw(blank_pen, {{at.x, at.y + read_text.step - 0.6}, {at.x + width, at.y + read_text.step - 0.6}});
    }

    const document::table& from_;
    const document_letters& by_;
    double left_, width_;
    std::vector<double> widths_{};
};

} // namespace turncloth::detail

#endif
