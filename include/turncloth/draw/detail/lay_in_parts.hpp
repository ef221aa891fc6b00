// A long lay drawn in parts that stand side by side, each read downward, so that it is not one narrow column on its page.
//
//   cloth_breaks(lay, straightened, in_hand, n)     where it is parted: between pieces, where that is near enough
//   lay_in_parts<Unit>(picture, words, breaks, straightened, ruler)     drawn, words: the same in parts
//   best_parts(whole, options)                      whole, or in as many parts as make it so much larger that it is worth it
//
//   const lay_drawn shown = best_parts(lay_picture<inch>(canvas, ruler(), "Roll", {}), options);
//
// What is drawn of the whole cloth is cut through and moved, whatever it is. Where cloth goes on its edge is broken, by the
// zigzag line of ISO 128-2.
#ifndef TURNCLOTH_DRAW_DETAIL_LAY_IN_PARTS_HPP
#define TURNCLOTH_DRAW_DETAIL_LAY_IN_PARTS_HPP

#include <turncloth/draw/detail/lay_picture.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr pen break_pen = {"break", 0.25};

/// From the beginning of the cloth on; none are 0 or its end. A place where no piece is cut through, as far as a fifth of a
/// part from where it should be; whole inches or centimetres from the straightened end otherwise.
template <length_unit Unit>
std::vector<length<Unit>> cloth_breaks(const lay<Unit>& of, length<Unit> straightened, length<Unit> in_hand,
                                       std::int64_t parts) {
    std::vector<std::pair<length<Unit>, length<Unit>>> places;
    for (const cloth_place<Unit>& p : of.places)
        places.emplace_back(p.where.from_end, p.where.from_end + p.where.along);
    std::sort(places.begin(), places.end());
    std::vector<length<Unit>> clean;
    length<Unit> until;
    for (const auto& [from, to] : places) {
        if (from >= until && from.value() > 0)
            clean.push_back(straightened + from);
        until = std::max(until, to);
    }
    clean.push_back(straightened + of.length);
    std::vector<length<Unit>> all;
    for (std::int64_t k = 1; k < parts; ++k) {
        const length<Unit> wanted = in_hand * fraction(k, parts), near = in_hand / (5 * parts);
        const auto off = [&](length<Unit> l) { return l < wanted ? wanted - l : l - wanted; };
        const auto best = std::min_element(clean.begin(), clean.end(),
                                           [&](length<Unit> a, length<Unit> b) { return off(a) < off(b); });
        const length<Unit> whole = straightened + length_of<Unit>(floor((wanted - straightened).value())),
                           at = off(*best) <= near ? *best : whole;
        if (at < in_hand && at > straightened && (all.empty() || at > all.back()))
            all.push_back(at);
    }
    return all;
}

struct lay_drawn {
    picture drawn{};
    lay_words words{};
};

template <length_unit Unit>
class lay_in_parts {
public:
    lay_drawn made{};

    lay_in_parts(const picture& whole, const lay_words& words, const std::vector<length<Unit>>& breaks,
                 length<Unit> straightened, const ruler& by)
        : whole_(whole) {
        for (const length<Unit>& b : breaks)
            bounds_.push_back(in_mm(b));
        bounds_.push_back(whole.height);
        double longest = 0;
        for (std::size_t k = 0; k < count(); ++k)
            longest = std::max(longest, to(k) - from(k));
        tail_ = longest / 60;
        gap_ = std::max(whole.width * static_cast<double>(count()), longest) / 20;
        take_over(longest);
        made.drawn.beside = {{whole.beside[0].from, to(0), 0, to_text(breaks[0] - straightened, by)}};
        for (std::size_t k = 0; k < count(); ++k) {
            draw_broken_ends(k);
            if (k > 0)
                made.drawn.names.push_back({{{left(k), 0}, {left(k) + whole_.width + gap_ / 2, 0}},
                                            1.2,
                                            sentence({"from ", to_text(breaks[k - 1] - straightened, by), " on"}),
                                            {}});
        }
        for (const page_stroke& s : whole.strokes)
            add(s);
        for (const edge_name& n : whole.names)
            if (const auto parts = parted(n.edge); !parts.empty())
                made.drawn.names.push_back({parts.front(), n.beyond, n.words, n.shorter});
        add_words(words);
    }

private:
    std::size_t count() const { return bounds_.size(); }
    double from(std::size_t k) const { return k == 0 ? 0 : bounds_[k - 1]; }
    double to(std::size_t k) const { return bounds_[k]; }
    double left(std::size_t k) const { return static_cast<double>(k) * (whole_.width + gap_); }
    page_point moved_to(std::size_t k, page_point p) const { return {p.x + left(k), p.y - from(k) + tail_}; }

    /// All that is said, and the room that it takes; the dimensions below are those of the first part.
    void take_over(double longest) {
        made.drawn = whole_;
        picture& p = made.drawn;
        p.strokes.clear();
        p.names.clear();
        p.width = left(count() - 1) + whole_.width;
        p.height = longest + 2 * tail_;
        for (measured& m : p.below)
            m.edge = to(0) + 2 * tail_;
        p.has_note = true;
        std::string said;
        for (const measured& m : whole_.beside)
            said.append(said.empty() ? "" : ", ").append(m.words);
        const std::string parts = sentence({"drawn in ", count(), " parts, side by side from the left"});
        made.words.notes = {sentence({said, "; ", parts}), sentence({said, "; in ", count(), " parts"}), parts};
    }

    /// What of a straight line lies in each part. One that runs across where the cloth is parted is in the part before.
    std::vector<page_segment> parted(const page_segment& s) const {
        std::vector<page_segment> all;
        for (std::size_t k = 0; k < count(); ++k) {
            const double high = std::min(s.from.y, s.to.y), low = std::max(s.from.y, s.to.y);
            const bool level = high == low;
            if (level ? high > to(k) + slack || (k > 0 && high <= from(k) + slack)
                      : low <= from(k) + slack || high >= to(k) - slack)
                continue;
            const auto held = [&](page_point p) {
                const double y = std::clamp(p.y, from(k), to(k));
                const double part = level ? 0 : (y - s.from.y) / (s.to.y - s.from.y);
                return level ? p : page_point{s.from.x + part * (s.to.x - s.from.x), y};
            };
            all.push_back({moved_to(k, held(s.from)), moved_to(k, held(s.to))});
        }
        return all;
    }
    std::vector<page_area> parted(const page_area& a) const {
        std::vector<page_area> all;
        for (std::size_t k = 0; k < count(); ++k) {
            const double high = std::max(a.y, from(k)), low = std::min(a.bottom(), to(k));
            if (high >= low - slack)
                continue;
            const page_point p = moved_to(k, {a.x, high});
            all.push_back({p.x, p.y, a.width, low - high});
        }
        return all;
    }

    void add(const page_stroke& s) {
        for (std::size_t k = 0; k < count(); ++k)
            if (std::all_of(s.points.begin(), s.points.end(),
                            [&](page_point p) { return p.y >= from(k) - slack && p.y <= to(k) + slack; })) {
                page_stroke there = s;
                for (page_point& p : there.points)
                    p = moved_to(k, p);
                made.drawn.strokes.push_back(std::move(there));
                return;
            }
        for (std::size_t i = 1; i < s.points.size() + (s.closed ? 1 : 0); ++i)
            for (const page_segment& part : parted(page_segment{s.points[i - 1], s.points[i % s.points.size()]}))
                made.drawn.strokes.push_back({s.with, {part.from, part.to}});
    }

    /// A little of the cloth beyond, and the line that breaks it off.
    void draw_broken_ends(std::size_t k) {
        for (const bool below : {false, true}) {
            if (below ? k + 1 == count() : k == 0)
                continue;
            const double size = tail_ * 0.4, at = tail_ + (below ? to(k) - from(k) : 0),
                         end = below ? at + tail_ - size : size;
            for (const double x : {left(k), left(k) + whole_.width})
                made.drawn.strokes.push_back({cloth_line.with, {{x, at}, {x, end}}});
            std::vector<page_point> line{{left(k) - tail_ / 2, end}};
            for (const double part : {0.2, 0.5, 0.8}) {
                const double x = left(k) + part * whole_.width, y = below ? end - size : end + size;
                line.insert(line.end(),
                            {{x - size, end}, {x - size / 3, y}, {x + size / 3, end + (end - y)}, {x + size, end}});
            }
            line.push_back({left(k) + whole_.width + tail_ / 2, end});
            made.drawn.strokes.push_back({break_pen, std::move(line)});
        }
    }

    /// A piece that is cut through by a break is named in full where most of it is.
    void add_words(const lay_words& words) {
        for (const page_segment& c : words.cuts)
            made.words.cuts.push_back(parted(c).front());
        const auto largest = [](const std::vector<page_area>& parts) {
            return std::max_element(parts.begin(), parts.end(),
                                    [](const page_area& a, const page_area& b) { return a.height < b.height; });
        };
        for (const words_inside& l : words.left)
            if (const auto parts = parted(l.where); !parts.empty())
                made.words.left.push_back({*largest(parts), l.choice});
        for (const lay_words::piece& p : words.pieces) {
            const auto parts = parted(p.words.where);
            const auto most = largest(parts);
            const std::vector<std::string>& letter = p.words.choice.back();
            for (auto part = parts.begin(); part != parts.end(); ++part)
                made.words.pieces.push_back(
                    {{*part,
                      part == most ? p.words.choice : std::vector{{sentence({"rest of ", letter.front()})}, letter}},
                     p.turned});
        }
    }

    static constexpr double slack = 1e-6; ///< mm of cloth, for what is rounded

    const picture& whole_;
    std::vector<double> bounds_{}; ///< where each part ends, on the whole cloth
    double tail_ = 0, gap_ = 0;
};

/// A break makes a lay harder to read, so it must be a fifth larger for it.
template <length_unit Unit>
lay_drawn best_parts(const lay_picture<Unit>& lay, const drawing_options& options) {
    constexpr double worth = 1.2;
    picture bare = lay.drawn;
    bare.strokes.clear();
    const auto rank_of = [&](const picture& p) { return best_page_of(p, options).rank(); };
    const auto in = [&](const picture& p, const lay_words& words, std::int64_t n) {
        const auto breaks = cloth_breaks(lay.of(), lay.straightened(), lay.in_hand(), n);
        return breaks.empty() ? lay_drawn{p, words}
                              : lay_in_parts<Unit>(p, words, breaks, lay.straightened(), lay.by()).made;
    };
    auto best = rank_of(bare);
    std::int64_t parts = 1;
    const bool is_long = bare.height > 1.5 * bare.width;
    const double most = 2 + 2 * std::sqrt(bare.height / bare.width);
    for (std::int64_t n = 2; is_long && static_cast<double>(n) < std::min(most, 12.0); ++n)
        if (const auto rank = rank_of(in(bare, {}, n).drawn);
            std::get<0>(rank) <= std::get<0>(best) && std::get<2>(rank) * worth < std::get<2>(best)) {
            best = rank;
            parts = n;
        }
    return in(lay.drawn, lay.words, parts);
}

} // namespace turncloth::detail

#endif
