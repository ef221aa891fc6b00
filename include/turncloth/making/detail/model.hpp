// A design in whole numbers: its parts, layings, creases, rows, snips, spots and mouths for the workbench.
//
//   class flat_model<U>(design)       throws making_error (does_not_fit) where 64 bits do not hold it
//     .flat()                         the design for the workbench
//     .number_of(cut_part)  .part_of(number)
//     .rows_of(stitching)             its rows among those of the flat design, first and past the last
//     .length_along(part, level, w)   a whole length along a part, before it was fitted to another
//     .length_of_whole(w)             a whole length on the table
//
// One whole unit is 1 / (2 d), with d the common denominator of every length given: see detail/whole.hpp for the 2. A
// piece that is fitted to a shorter length has its own spots in the shorter one's lengths, so that what is sewn together
// lies together; its rows are given back in its own.
#ifndef TURNCLOTH_MAKING_DETAIL_MODEL_HPP
#define TURNCLOTH_MAKING_DETAIL_MODEL_HPP

#include <turncloth/making/design.hpp>
#include <turncloth/making/detail/workbench.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <optional>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class flat_model {
public:
    using whole = flat_work::whole;

    explicit flat_model(const making<Unit>& design) : design_(design) {
        number_parts();
        find_scale();
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            const part<Unit>& p = design.parts()[parts_[i].index];
            flat_.parts.push_back({along(i, true, p.width), along(i, false, p.height)});
        }
        for (const laying<Unit>& l : design.layings())
            flat_.parts[number_of(l.piece)].right_up = l.up == face::right;
        for (const laying<Unit>& l : design.layings())
            add(l);
        for (const crease<Unit>& c : design.creases())
            add(c);
        for (const stitching<Unit>& s : design.rows())
            add(s);
        for (const snip<Unit>& s : design.snips())
            flat_.snips.push_back({line(s.at, s.at.in), across(s.at, s.width) / 2});
        for (const spot<Unit>& s : design.spots())
            add(s);
    }

    const flat_work::flat_design& flat() const { return flat_; }
    std::size_t number_of(const cut_part& p) const { return first_[p.index] + static_cast<std::size_t>(p.copy); }
    cut_part part_of(std::size_t number) const { return parts_[number]; }
    std::size_t count() const { return parts_.size(); }
    std::pair<std::size_t, std::size_t> rows_of(std::size_t s) const { return {rows_[s], rows_[s + 1]}; }
    std::pair<std::size_t, std::size_t> spots_of(std::size_t s) const { return {spots_[s], spots_[s + 1]}; }

    length<Unit> length_of_whole(whole w) const { return length_of<Unit>(fraction(w, unit_)); }
    /// A length along a part that is not yet laid.
    length<Unit> length_along(std::size_t part, bool level, whole w) const {
        return length_of<Unit>(fraction(w, unit_) / (level ? scale_[part].across : scale_[part].down));
    }
    whole along(std::size_t part, bool level, length<Unit> l) const {
        return whole_of(l.value() * (level ? scale_[part].across : scale_[part].down));
    }
    /// A length on the table.
    whole on_table(length<Unit> l) const { return whole_of(l.value()); }
    flat_work::flat_line line(const chalk_line<Unit>& l, const place<cut_edge, Unit>& in) const {
        const std::size_t p = number_of(l.on);
        flat_work::flat_line made{p, {l.is_level(), from_edge(l, in)}, {}, {}};
        if (l.begins)
            made.begins = along(p, l.is_level(), *l.begins);
        if (l.ends)
            made.ends = along(p, l.is_level(), *l.ends);
        return made;
    }

private:
    struct scales {
        fraction across = 1, down = 1;
    };

    void number_parts() {
        for (std::size_t i = 0; i < design_.parts().size(); ++i) {
            first_.push_back(parts_.size());
            for (std::int64_t k = 0; k < design_.parts()[i].count; ++k)
                parts_.push_back({i, k});
        }
        scale_.resize(parts_.size());
        for (const laying<Unit>& l : design_.layings())
            if (l.fit.is_given())
                (l.fit.along_level ? scale_[number_of(l.piece)].across : scale_[number_of(l.piece)].down) =
                    ratio_of(l.fit.on, l.fit.of_piece);
        for (const seam_of<Unit>& s : design_.seams())
            for (std::size_t k = 0; s.taken_up != surplus::none && !s.lets_in() && k < s.one.size(); ++k)
                take_up(s.one[k], s.other[k]);
    }
    length<Unit> long_(const chalk_line<Unit>& l) const { return l.end_on(design_.parts()[l.on.index]) - l.begin(); }
    void take_up(const chalk_line<Unit>& a, const chalk_line<Unit>& b) {
        const chalk_line<Unit>&longer = long_(a) < long_(b) ? b : a, &shorter = long_(a) < long_(b) ? a : b;
        scales& s = scale_[number_of(longer.on)];
        (longer.is_level() ? s.across : s.down) = ratio_of(long_(shorter), long_(longer));
    }

    /// The common denominator of every length, each in its part's scale.
    void find_scale() {
        for (std::size_t i = 0; i < parts_.size(); ++i)
            include(i, {design_.parts()[parts_[i].index].width, design_.parts()[parts_[i].index].height});
        for (const laying<Unit>& l : design_.layings()) {
            include(number_of(l.piece), {l.fit.begins});
            include(l.on.is_given() ? number_of(l.on) : number_of(l.piece), {l.left, l.top});
        }
        for (const crease<Unit>& c : design_.creases())
            include(number_of(c.on()), {c.at.in.from_datum(), c.across ? c.across->leg : length<Unit>()});
        for (const stitching<Unit>& s : design_.rows())
            include(s.along, s.each);
        for (const seam_of<Unit>& s : design_.seams())
            for (const auto* side : {&s.one, &s.other})
                for (const chalk_line<Unit>& l : *side)
                    include(l, {});
        for (const snip<Unit>& s : design_.snips()) {
            include(s.at, {});
            include(number_of(s.at.on), {s.width / 2});
        }
        for (const spot<Unit>& s : design_.spots())
            include(s.along, s.places);
        for (const mouth<Unit>& m : design_.mouths())
            for (const chalk_line<Unit>& l : m.at)
                include(l, {});
        for (const compartment<Unit>& c : design_.compartments())
            include(number_of(c.between[0]), {c.from_left, c.from_top, c.step, c.least_width, c.least_height});
        include(design_.lips().value());
        unit_ *= 2;
    }
    void include(const chalk_line<Unit>& l, const row<cut_edge, Unit>& each) {
        include(number_of(l.on),
                {l.in.from_datum(), l.begins.value_or(length<Unit>()), l.ends.value_or(length<Unit>())});
        if (each.size() > 0)
            include(number_of(l.on),
                    {each[0].from_datum(), each.graduation().value() == 0 ? each.step() : each.graduation()});
    }
    void include(std::size_t part, std::initializer_list<length<Unit>> lengths) {
        for (const length<Unit>& l : lengths) {
            include(l.value());
            for (const fraction& scale : {scale_[part].across, scale_[part].down})
                if (scale != 1) // few pieces are fitted to a shorter length
                    include(l.value() * scale);
        }
    }
    void include(const fraction& x) {
        if (unit_ % denominator(x) == 0)
            return;
        const whole g = std::gcd(unit_, denominator(x));
        if (overflows_times(unit_, denominator(x) / g, unit_) || unit_ > most_unit)
            too_fine();
    }
    static constexpr whole most_unit = whole{1} << 40, most_whole = whole{1} << 52;
    [[noreturn]] static void too_fine() {
        refuse<making_error>("the lengths of this design have no common denominator that 64 bits hold: round them",
                             refusal{.kind = fault::does_not_fit, .what = "the common denominator"});
    }
    whole whole_of(const fraction& x) const {
        const int128 w = int128{numerator(x)} * (unit_ / denominator(x));
        if (w > most_whole || w < -most_whole)
            too_fine();
        return static_cast<whole>(w);
    }

    whole across(const chalk_line<Unit>& l, length<Unit> d) const { return along(number_of(l.on), !l.is_level(), d); }
    whole from_edge(const chalk_line<Unit>& l, const place<cut_edge, Unit>& in) const {
        const whole d = across(l, in.from_datum());
        const flat_work::flat_part& p = flat_.parts[number_of(l.on)];
        return l.from == edge::bottom ? p.height - d : l.from == edge::right ? p.width - d : d;
    }

    flat_work::half_plane stays(const crease<Unit>& c) const {
        const flat_work::flat_part& p = flat_.parts[number_of(c.on())];
        if (!c.across) {
            const whole at = from_edge(c.at, c.at.in);
            switch (c.at.from) {
            case edge::top:
                return {0, -1, -at};
            case edge::bottom:
                return {0, 1, at};
            case edge::left:
                return {-1, 0, -at};
            case edge::right:
                break;
            }
            return {1, 0, at};
        }
        const whole a = c.across->upright == edge::right ? 1 : -1, b = c.across->level == edge::bottom ? 1 : -1;
        const whole leg = along(number_of(c.on()), true, c.across->leg);
        return {a, b, (a > 0 ? p.width : 0) + (b > 0 ? p.height : 0) - leg};
    }

    void add(const laying<Unit>& l) {
        const std::size_t n = number_of(l.piece);
        flat_work::flat_part& p = flat_.parts[n];
        if (!l.on.is_given())
            return;
        p.on = number_of(l.on);
        p.beneath = l.beneath;
        p.set_into = l.set_into_one;
        whole left = along(p.on, true, l.left), top = along(p.on, false, l.top);
        (l.fit.along_level ? left : top) -= along(n, l.fit.along_level, l.fit.begins);
        // Face to face it is turned left to right; upside down it is turned by a half besides.
        const bool across = (flat_.parts[p.on].right_up != p.right_up) != l.upside_down;
        p.there = {across ? -1 : 1,
                   0,
                   0,
                   l.upside_down ? -1 : 1,
                   left + (across ? p.width : 0),
                   top + (l.upside_down ? p.height : 0)};
    }

    /// A quarter turn turns nothing while the piece is flat.
    void add(const crease<Unit>& c) {
        if (c.turn == turning::quarter)
            flat_.creases.push_back({number_of(c.on()), {-1, 0, 0}, false, false, false});
        else
            flat_.creases.push_back({number_of(c.on()), stays(c), c.over, c.begins_wall, !c.across && is_sewn(c.at)});
    }
    bool is_sewn(const chalk_line<Unit>& l) const {
        const auto same = [&](const chalk_line<Unit>& s) { return s.on == l.on && s.from == l.from && s.in == l.in; };
        return std::any_of(design_.seams().begin(), design_.seams().end(), [&](const seam_of<Unit>& s) {
            return std::any_of(s.one.begin(), s.one.end(), same) || std::any_of(s.other.begin(), s.other.end(), same);
        });
    }

    std::vector<std::size_t> numbers_of(const std::vector<cut_part>& walls) const {
        std::vector<std::size_t> all;
        all.reserve(walls.size());
        for (const cut_part& w : walls)
            all.push_back(number_of(w));
        return all;
    }
    void add(const stitching<Unit>& s) {
        if (rows_.empty())
            rows_.push_back(0);
        std::vector<std::size_t> through = numbers_of(s.through);
        if (through.empty())
            through.push_back(number_of(s.along.on));
        if (s.each.size() == 0)
            flat_.rows.push_back({line(s.along, s.along.in), std::move(through)});
        for (std::int64_t k = 0; k < s.each.size(); ++k)
            flat_.rows.push_back({line(s.along, s.each[k]), through});
        rows_.push_back(flat_.rows.size());
    }
    void add(const spot<Unit>& s) {
        if (spots_.empty())
            spots_.push_back(0);
        const std::vector<std::size_t> through = numbers_of(s.through);
        const std::size_t p = number_of(s.along.on);
        const whole in = from_edge(s.along, s.along.in);
        for (std::int64_t k = 0; k < s.places.size(); ++k) {
            const whole at = along(p, s.along.is_level(), s.places[k].from_datum());
            const flat_work::spot spot = s.along.is_level() ? flat_work::spot{at, in} : flat_work::spot{in, at};
            flat_.spots.push_back({p, spot, through});
        }
        spots_.push_back(flat_.spots.size());
    }

    const making<Unit>& design_;
    std::vector<std::size_t> first_{};
    std::vector<cut_part> parts_{};
    std::vector<scales> scale_{};
    whole unit_ = 1;
    std::vector<std::size_t> rows_{}, spots_{};
    flat_work::flat_design flat_{};
};

} // namespace turncloth::detail

#endif
