// Joins printed pages as a person does: reads the row and column in the heading, and lays mark on mark.
//
//   pasted_piece j = joined(pages, "pad top");
//   j.misfit                 the farthest that two joining marks which should meet lie apart, in millimetres
//   j.lines(cut_pen)  of all its pages, on one plane
//   j.on_paper(p)            whether a page, cut at its joining lines, has this spot
#ifndef TURNCLOTH_TESTS_DRAFTING_JOINED_HPP
#define TURNCLOTH_TESTS_DRAFTING_JOINED_HPP

#include "printed.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <regex>

inline double apart(const page_point& a, const page_point& b) { return std::hypot(a.x - b.x, a.y - b.y); }

/// A joint as one page shows it: the joining line and the lozenges across it, in order.
struct shown_joint {
    double at = 0;
    std::vector<drawn_line> lozenges;
};

struct joined_page {
    const printed_page* page;
    page_point moved{};
    double left, right, top, bottom; ///< what of the paper is left to see
};

struct pasted_piece {
    std::map<std::pair<int, int>, joined_page> pages; ///< by row and column
    double misfit = 0;
    std::size_t joints = 0;

    std::vector<drawn_line> lines(const pen& with) const {
        std::vector<drawn_line> all;
        for (const auto& [place, p] : pages)
            for (drawn_line l : p.page->of(with)) {
                for (page_point& at : l.points)
                    at = {at.x + p.moved.x, at.y + p.moved.y};
                all.push_back(std::move(l));
            }
        return all;
    }
    bool on_paper(const page_point& at) const {
        return std::ranges::any_of(pages, [&](const auto& entry) {
            const joined_page& p = entry.second;
            const double x = at.x - p.moved.x, y = at.y - p.moved.y;
            return x >= p.left - 0.05 && x <= p.right + 0.05 && y >= p.top - 0.05 && y <= p.bottom + 0.05;
        });
    }
};

namespace detail {

inline bool is_upright(const drawn_line& l) { return std::abs(l.points.front().x - l.points.back().x) < 0.01; }

/// The joint at the right, left, foot or head of a page.
inline shown_joint joint(const printed_page& page, bool upright, bool far_side, double middle) {
    const auto across = [&](const page_point& p) { return upright ? p.x : p.y; };
    shown_joint found;
    bool any = false;
    for (const drawn_line& l : page.of(joining_pen))
        if (l.points.size() == 2 && is_upright(l) == upright && (across(l.points[0]) > middle) == far_side) {
            found.at = across(l.points[0]);
            any = true;
        }
    if (!any)
        throw std::runtime_error("a page lacks a joining line");
    for (const drawn_line& l : page.of(joining_mark_pen)) {
        const auto [left, right] = std::ranges::minmax(l.points, {}, &page_point::x);
        const auto [top, bottom] = std::ranges::minmax(l.points, {}, &page_point::y);
        const bool lies_level = right.x - left.x > bottom.y - top.y;
        const double middle_of = upright ? (left.x + right.x) / 2 : (top.y + bottom.y) / 2;
        if (lies_level == upright && std::abs(middle_of - found.at) < 1)
            found.lozenges.push_back(l);
    }
    std::ranges::sort(found.lozenges, {}, [&](const drawn_line& l) { return upright ? l.points[0].y : l.points[0].x; });
    return found;
}

/// What the second page must be moved by, beyond the first, for its marks to lie on the first page's.
inline page_point moved_by(const shown_joint& first, const shown_joint& second, bool upright, double& misfit) {
    if (first.lozenges.size() != second.lozenges.size() || first.lozenges.empty())
        throw std::runtime_error("two pages have different joining marks");
    const auto& a = first.lozenges[0].points[0];
    const auto& b = second.lozenges[0].points[0];
    const page_point by = {a.x - b.x, a.y - b.y};
    for (std::size_t i = 0; i < first.lozenges.size(); ++i)
        for (std::size_t k = 0; k < 4; ++k) {
            const page_point p = second.lozenges[i].points[k];
            misfit = std::max(misfit, apart(first.lozenges[i].points[k], {p.x + by.x, p.y + by.y}));
        }
    misfit = std::max(misfit, std::abs(first.at - second.at - (upright ? by.x : by.y)));
    return by;
}

} // namespace detail

inline pasted_piece joined(const std::vector<printed_page>& pages, const std::string& name, double width,
                           double height) {
    pasted_piece piece;
    static const std::regex place("row ([0-9]+), column ([0-9]+) of");
    for (const printed_page& p : pages) {
        const std::string heading = p.words.substr(0, p.words.find('\n'));
        std::smatch m;
        if (heading.starts_with(name + " ") && std::regex_search(heading, m, place))
            // 6 mm at the edges of a paper are left blank by printers.
            piece.pages[{std::stoi(m[1]), std::stoi(m[2])}] = {&p, {}, 6, width - 6, 6, height - 6};
    }
    bool first = true;
    for (auto& entry : piece.pages) {
        const std::pair<int, int> at = entry.first;
        joined_page& p = entry.second;
        const auto left = piece.pages.find({at.first, at.second - 1}),
                   above = piece.pages.find({at.first - 1, at.second});
        bool laid = first;
        first = false;
        const auto lay = [&](joined_page& before, bool upright) {
            const double middle = upright ? width / 2 : height / 2;
            const shown_joint a = ::detail::joint(*before.page, upright, true, middle),
                              b = ::detail::joint(*p.page, upright, false, middle);
            const page_point by = ::detail::moved_by(a, b, upright, piece.misfit),
                             moved = {before.moved.x + by.x, before.moved.y + by.y};
            (upright ? before.right : before.bottom) = a.at;
            (upright ? p.left : p.top) = b.at;
            if (laid)
                piece.misfit = std::max(piece.misfit, apart(moved, p.moved));
            p.moved = moved;
            laid = true;
            ++piece.joints;
        };
        if (left != piece.pages.end())
            lay(left->second, true);
        if (above != piece.pages.end())
            lay(above->second, false);
        if (!laid)
            throw std::runtime_error("a page of " + name + " joins no other");
    }
    return piece;
}

#endif
