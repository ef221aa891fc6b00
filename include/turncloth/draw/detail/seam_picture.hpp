// A seam drawn on the pieces that it joins, each as it lies, side by side and right side up: the lines that meet are
// heavy and have like letters, and what is left open is dotted.
//
//   seam_picture<U> seam(design, table, ruler);  seam.draw(of);      seam.drawn  seam.notes
#ifndef TURNCLOTH_DRAW_DETAIL_SEAM_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_SEAM_PICTURE_HPP

#include <turncloth/draw/detail/lying_picture.hpp>
#include <turncloth/making/corner_out.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class seam_picture {
public:
    picture drawn{};
    lying_notes notes{};

    seam_picture(const making<Unit>& design, const table_work<Unit>& table, const ruler& by)
        : design_(design), table_(table), by_(by) {}

    void draw(const seam_of<Unit>& seam) {
        for (const auto* side : {&seam.one, &seam.other})
            for (const chalk_line<Unit>& l : *side)
                take_stack(l.on);
        put_side_by_side();
        for (const placed_stack& s : stacks_)
            draw_stack(s);
        for (std::size_t k = 0; k < seam.one.size(); ++k) {
            const std::vector<span> open = left_open(seam.one[k], seam.other[k]);
            draw_line(seam.one[k], k, open);
            draw_line(seam.other[k], k, run_back(open));
        }
        measure(seam.one[0]);
    }

private:
    struct placed_stack {
        cut_part of{};
        plies_lying<Unit> lies{};
        table_view view{};
        page_area where{};
    };

    void take_stack(const cut_part& of) {
        if (find(of) != nullptr)
            return;
        placed_stack s{of, table_.plies(of), {}, {}};
        s.view = view_of(s.lies, table_.up(of) == face::right);
        const auto [width, height] = size_of(s.lies);
        s.where = {0, 0, in_mm(width), in_mm(height)};
        stacks_.push_back(std::move(s));
    }
    const placed_stack* find(const cut_part& of) const {
        const auto found = std::find_if(stacks_.begin(), stacks_.end(),
                                        [&](const placed_stack& s) { return table_.in_one_stack(s.of, of); });
        return found == stacks_.end() ? nullptr : &*found;
    }

    /// In rows, about as wide together as they are high.
    void put_side_by_side() {
        double all = 0, widest = 0, most = 0;
        for (const placed_stack& s : stacks_) {
            all += s.where.width * s.where.height;
            widest = std::max(widest, s.where.width);
            most = std::max({most, s.where.width, s.where.height});
        }
        const double gap = most / 12, room = std::max(widest, 1.2 * std::sqrt(all));
        double x = 0, y = 0, high = 0;
        for (placed_stack& s : stacks_) {
            if (x > 0 && x + s.where.width > room)
                x = 0, y += high + gap, high = 0;
            s.where.x = x, s.where.y = y;
            const double to_right = s.view.from_above ? -x : x;
            s.view.left += to_right / s.view.across, s.view.right += to_right / s.view.across;
            s.view.top -= y / s.view.down;
            x += s.where.width + gap, high = std::max(high, s.where.height);
            drawn.width = std::max(drawn.width, s.where.right());
            drawn.height = std::max(drawn.height, s.where.bottom());
        }
    }

    void draw_stack(const placed_stack& s) {
        const plies_seen seen(s.lies.plies, s.view);
        draw_lying(drawn, s.lies, seen, s.view, [](const operation&) { return false; });
        const lying<Unit> lies = table_.in_sight(s.of);
        for (auto& [of, where] : parts_in_sight(lies, s.view))
            notes.names.push_back({name_of(design_, of), std::move(where), true});
    }

    using span = std::pair<double, double>; ///< of a line, from 0 where it begins clockwise to 1

    /// Where a mouth lies on either of two lines that meet: right sides together, they run against each other.
    std::vector<span> left_open(const chalk_line<Unit>& one, const chalk_line<Unit>& other) const {
        std::vector<span> all = mouths_on(one);
        const std::vector<span> there = run_back(mouths_on(other));
        all.insert(all.end(), there.begin(), there.end());
        return straight_lines::joined_up(std::move(all));
    }
    static std::vector<span> run_back(const std::vector<span>& all) {
        std::vector<span> back;
        for (auto s = all.rbegin(); s != all.rend(); ++s)
            back.emplace_back(1 - s->second, 1 - s->first);
        return back;
    }
    /// From end to end of a line, clockwise as its piece's right side is seen.
    page_segment clockwise(const chalk_line<Unit>& l) const {
        const page_segment s = find(l.on)->view(*table_.line(l));
        return l.from == edge::top || l.from == edge::right ? s : page_segment{s.to, s.from};
    }
    std::vector<span> mouths_on(const chalk_line<Unit>& l) const {
        const page_segment all = clockwise(l);
        std::vector<span> open;
        for (const mouth<Unit>& m : design_.mouths())
            for (const chalk_line<Unit>& at : m.at)
                if (at.on == l.on && at.from == l.from && at.in == l.in) {
                    const page_segment s = clockwise(at);
                    const double long_ = distance(all.from, all.to);
                    open.emplace_back(distance(all.from, s.from) / long_, distance(all.from, s.to) / long_);
                }
        return open;
    }

    void draw_line(const chalk_line<Unit>& l, std::size_t k, const std::vector<span>& open) {
        const page_segment all = clockwise(l);
        const auto stretch = [&](const span& s) {
            const page_point way{all.to.x - all.from.x, all.to.y - all.from.y};
            return page_segment{moved(all.from, way, s.first), moved(all.from, way, s.second)};
        };
        for (const span& s : straight_lines::left_of({{0.0, 1.0}}, open)) {
            drawn.draw(new_row_line, stretch(s));
            notes.edges.push_back({stretch(s), inward(l, *find(l.on)), small_letter(k)});
        }
        for (const span& s : open)
            drawn.draw(mouth_line, stretch(s));
    }
    static std::string small_letter(std::size_t k) {
        std::string letter = letter_of(k);
        for (char& c : letter)
            c = static_cast<char>(c - 'A' + 'a');
        return letter;
    }
    page_point inward(const chalk_line<Unit>& l, const placed_stack& s) const {
        edge side = table_.on_table(l.on, l.from);
        if (is_level(side))
            return {0, side == edge::top ? 1.0 : -1.0};
        return {(side == edge::left) == s.view.from_above ? 1.0 : -1.0, 0};
    }

    /// How far in it is sewn from the edge that is left there, and the size of the piece that has the line.
    void measure(const chalk_line<Unit>& l) {
        const placed_stack& s = *find(l.on);
        const page_segment line = s.view(*table_.line(l));
        const page_point in = inward(l, s);
        const page_area piece = s.view(table_.extent(l.on));
        const length<Unit> far = l.in.from_datum() - cut_out_beside(design_, l);
        const double at = in.x == 0 ? line.from.y : line.from.x, off = in_mm(far) * (in.x + in.y);
        const measured m{std::min(at, at - off), std::max(at, at - off), in.x == 0 ? piece.x : piece.bottom(),
                         to_text(far, by_)};
        (in.x == 0 ? drawn.beside : drawn.below).push_back(m);
    }

    const making<Unit>& design_;
    const table_work<Unit>& table_;
    const ruler by_;
    std::vector<placed_stack> stacks_{};
};

} // namespace turncloth::detail

#endif
