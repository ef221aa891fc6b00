// What is written on the drawing of an outline: its edges, its name, its grain, its notches and crossings.
//
//   outline_words                          of each edge, notch and crossing, in mm of cloth as the page has it
//   outline_marker(page, place, words).write()     at any scale
//   longest_chord(corners, line)           the longest stretch of a line, or of one beside it, in a piece
//
// Words get room where no line and no other word is, first come first served: beside their edge, else off it with a
// leader.
#ifndef TURNCLOTH_DRAW_DETAIL_OUTLINE_LABELS_HPP
#define TURNCLOTH_DRAW_DETAIL_OUTLINE_LABELS_HPP

#include <turncloth/page/drawing.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace turncloth::detail {

inline constexpr kind_of_line notch_line = {{"notch", 0.35}, "notch"}, grain_line = {grain_pen, "grain, an arrow"},
                              crossing_line = {{"crossing", 0.45}, "crossing, a diamond"};

struct outline_words {
    /// An edge of the seam line, the way out of the piece, and what of the cloth outside it is the piece's. It has the
    /// longest of its words that there is room for.
    struct edge {
        page_segment seam;
        page_point outward;
        double allowance;
        std::size_t run = 0; ///< edges of one run stand for one curve, and one of them has its words
        std::vector<std::string> words = {};
        double depth = 0;                                ///< how far inside the seam line its rows of stitching lie
        std::size_t lines_outside = 0, lines_inside = 0; ///< of its finish, off the seam line
    };
    struct notch {
        page_segment mark; ///< from the seam line to the cut line
        page_point inward;
    };
    std::vector<edge> edges{};
    std::vector<notch> notches{};
    std::vector<page_point> crossings{};
    std::optional<page_segment> grain{}; ///< the stretch of its line that has room in the piece
    std::vector<std::string> name{};     ///< in the middle of the piece
    std::vector<page_area> kept_clear{}; ///< on the page
};

/// A stretch of the line through `from` in the direction `way`, of length 1, that lies within the piece.
inline std::optional<page_segment> chord(const std::vector<page_point>& piece, page_point from, page_point way) {
    const page_segment line{from, moved(from, way, 1)};
    std::vector<double> stops;
    for (std::size_t i = 0; i < piece.size(); ++i) {
        const page_point a = piece[i], b = piece[(i + 1) % piece.size()];
        const double one = side_of(line, a), other = side_of(line, b);
        if ((one > 0) == (other > 0))
            continue;
        const page_point there = moved(a, {b.x - a.x, b.y - a.y}, one / (one - other));
        stops.push_back((there.x - from.x) * way.x + (there.y - from.y) * way.y);
    }
    std::sort(stops.begin(), stops.end());
    double best = 1e-9, best_from = 0;
    for (std::size_t i = 0; i + 1 < stops.size(); i += 2) // a line that comes in goes out again
        if (stops[i + 1] - stops[i] > best)
            best = stops[i + 1] - stops[i], best_from = stops[i];
    return best > 1e-9 ? std::optional(page_segment{moved(from, way, best_from), moved(from, way, best_from + best)})
                       : std::nullopt;
}

/// On the line itself where it meets the piece, else on the parallel to it that has most room. A piece too thin to hold
/// any has its first corner.
inline page_segment longest_chord(const std::vector<page_point>& piece, const page_segment& line) {
    const double size = distance(line.from, line.to);
    const page_point way{(line.to.x - line.from.x) / size, (line.to.y - line.from.y) / size}, across{-way.y, way.x};
    // The spot of the line beside the first corner: the points that it leads through may be far off.
    const page_point from =
        moved(line.from, way, (piece[0].x - line.from.x) * way.x + (piece[0].y - line.from.y) * way.y);
    if (const auto on_it = chord(piece, from, way))
        return *on_it;
    const auto off = [&](const page_point& p) { return (p.x - from.x) * across.x + (p.y - from.y) * across.y; };
    const auto [first, last] = std::minmax_element(
        piece.begin(), piece.end(), [&](const page_point& a, const page_point& b) { return off(a) < off(b); });
    page_segment best{piece[0], moved(piece[0], way, 1e-9)};
    constexpr int parallels = 32;
    for (int k = 1; k < parallels; ++k)
        if (const auto c =
                chord(piece, moved(from, across, off(*first) + (off(*last) - off(*first)) * k / parallels), way);
            c && distance(c->from, c->to) > distance(best.from, best.to) + 1e-9)
            best = *c;
    return best;
}

class outline_marker {
public:
    outline_marker(page& on, const picture_place& at, const outline_words& words)
        : on_(on), at_(at), words_(words), room_(draw_marks(), at.by) {
        for (const outline_words::edge& e : words.edges) {
            if (!e.words.empty())
                named_.push_back(seam_.size());
            seam_.push_back(at.to(e.seam));
        }
        for (const page_area& a : words.kept_clear)
            room_.take(a);
    }

    /// Every edge or run has words, longer ones where there is room. Of very many edges every n-th has some.
    void write() {
        constexpr std::size_t most = 100;
        const std::size_t n = named_.size(), every = round_number([&](std::size_t k) { return n / k <= most; });
        std::vector<std::optional<page_area>> found(n);
        for (std::size_t i = every - 1; i < n; i += every)
            if ((found[i] = beside(named_[i], words_.edges[named_[i]].words.front())))
                room_.take(*found[i]);
        std::size_t without = 0;
        for (std::size_t i = every - 1; i < n; i += every)
            if (!found[i] && !lead(named_[i]))
                ++without;
        for (std::size_t i = 0; i < n; ++i)
            if (found[i])
                write_longest(named_[i], *found[i]);
        name_piece();
        write_note(every, without);
    }

private:
    static constexpr double clearance = 0.5, just = 0.02;

    /// Of marks that have one size at any scale.
    const page& draw_marks() {
        for (const outline_words::notch& n : words_.notches) {
            // Where seam and cut line lie close or on each other the notch shows as a stroke inward.
            const page_segment mark = at_.to(n.mark);
            if (distance(mark.from, mark.to) < 1.5)
                on_.draw(notch_line.with.meaning("notch-inward"), {mark.from, moved(mark.from, n.inward, 2)});
        }
        constexpr double diamond = 2.2;
        for (const page_point& crossing : words_.crossings) {
            const page_point c = at_.to(crossing);
            on_.draw_closed(crossing_line.with,
                            {{c.x, c.y - diamond}, {c.x + diamond, c.y}, {c.x, c.y + diamond}, {c.x - diamond, c.y}});
        }
        if (words_.grain) { // over most of its room, and never so short that it cannot be seen
            const page_segment room = at_.to(*words_.grain);
            const double size = distance(room.from, room.to), half = std::max(6.0, 0.7 * size) / 2 / size;
            const page_point way{room.to.x - room.from.x, room.to.y - room.from.y}, middle = middle_of(room);
            draw_arrow(on_, grain_pen, {moved(middle, way, -half), moved(middle, way, half)});
        }
        return on_;
    }

    page_area size_of(const std::string& words) const {
        return {0, 0, at_.by.width(words, body_size) + 1.2, body_size + 0.8};
    }
    bool is_free(const page_area& a) const { return within(a, at_.zone) && room_.is_free(a); }
    /// Every other edge of the seam line is clearly further from the words than their own.
    bool is_plain(const page_area& a, std::size_t own) const {
        const double near = distance(a, seam_[own]);
        for (std::size_t i = 0; i < seam_.size(); ++i)
            if (words_.edges[i].run != words_.edges[own].run && distance(a, seam_[i]) < 1.3 * near + 0.5)
                return false;
        return true;
    }

    /// Inside the edge and its rows or outside its cut line, with nothing else between and no other edge as near.
    std::optional<page_area> beside(std::size_t i, const std::string& words) const {
        const page_area size = size_of(words);
        const page_segment& seam = seam_[i];
        const outline_words::edge& own = words_.edges[i];
        const page_point out = own.outward;
        const double half = (std::abs(out.x) * size.width + std::abs(out.y) * size.height) / 2,
                     reach = half + clearance, allowance = own.allowance / at_.to.scale,
                     depth = own.depth / at_.to.scale;
        const page_point way{seam.to.x - seam.from.x, seam.to.y - seam.from.y};
        for (const bool inside : {true, false})
            for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8}) {
                const page_point foot = moved(seam.from, way, part),
                                 middle = moved(foot, out, inside ? -depth - reach : allowance + reach);
                const page_area where = centred(middle, size.width, size.height);
                const page_segment between{moved(foot, out, inside ? -just : just), middle};
                const std::size_t allowed = inside ? own.lines_inside : 1 + own.lines_outside; // 1 for its cut line
                if (is_free(where) && room_.lines_crossed(between) <= allowed && is_plain(where, i))
                    return where;
            }
        return std::nullopt;
    }

    bool lead(std::size_t i) {
        constexpr double furthest = 35;
        const std::string& words = words_.edges[i].words.front();
        const page_point foot = middle_of(seam_[i]);
        const auto found = led_from(foot, centred(foot, 2 * furthest, 2 * furthest), size_of(words), room_,
                                    [&](const page_area& a) { return within(a, at_.zone); });
        if (!found)
            return false;
        room_.take(found->where);
        room_.take(found->leader);
        on_.draw(leader_pen, {found->leader.from, found->leader.to});
        write(words, found->where, body_size);
        return true;
    }

    void write_longest(std::size_t i, page_area where) {
        room_.give_back(where);
        const auto& all = words_.edges[i].words;
        std::size_t longest = 0;
        for (std::size_t k = all.size(); longest == 0 && --k > 0;)
            if (const auto found = beside(i, all[k]))
                where = *found, longest = k;
        room_.take(where);
        write(all[longest], where, body_size);
    }
    page_words& write(const std::string& words, const page_area& where, double size) {
        const page_point middle = where.middle();
        return on_.write({middle.x, middle.y + 0.26 * size}, words, size, set_from::middle);
    }

    /// As near to the middle of the piece as it has room, the larger the better; the first line bold.
    void name_piece() {
        if (words_.name.empty())
            return;
        constexpr int net = 24;
        const page_area& a = at_.drawn;
        std::vector<page_point> corners, spots;
        for (const page_segment& s : seam_)
            corners.push_back(s.from);
        for (int i = 1; i < net; ++i)
            for (int j = 1; j < net; ++j)
                if (const page_point p{a.x + a.width * i / net, a.y + a.height * j / net}; holds(corners, p))
                    spots.push_back(p);
        std::sort(spots.begin(), spots.end(),
                  [&](page_point p, page_point q) { return distance(p, a.middle()) < distance(q, a.middle()); });
        for (const double size : {5.5, 5.0, 4.5, 4.0, 3.5, 3.0, small_size}) {
            const double second = std::max(small_size, 0.7 * size),
                         wide =
                             std::max(at_.by.width(words_.name[0], size, true), at_.by.width(words_.name[1], second));
            for (const page_point& p : spots) {
                const page_area all = centred(p, wide + 2, 1.5 * (size + second));
                if (!is_free(all))
                    continue;
                room_.take(all);
                write(words_.name[0], {all.x, all.y, all.width, 1.5 * size}, size).bold = true;
                write(words_.name[1], {all.x, all.y + 1.5 * size, all.width, 1.5 * second}, second);
                return;
            }
        }
    }

    void write_note(std::size_t every, std::size_t without) {
        std::string note;
        if (every > 1)
            note = sentence({"Of every ", every, " edges one has its number here. "});
        if (without > 0)
            note += without == 1 ? sentence({"No room was found for the number of ", without, " edge."})
                                 : sentence({"No room was found for the number of ", without, " edges."});
        if (!note.empty() && at_.note_width > 0)
            on_.write(at_.note, at_.by.shortened(note, small_size, at_.note_width), small_size);
    }

    page& on_;
    const picture_place& at_;
    const outline_words& words_;
    free_room room_;
    std::vector<page_segment> seam_{};
    std::vector<std::size_t> named_{}; ///< edges that have words
};

} // namespace turncloth::detail

#endif
