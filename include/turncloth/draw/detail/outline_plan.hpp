// What the drawing of an outline shows and says, before anything has a place on the page.
//
//   outline_labels<U>{name, material, count, notches, grain}   what an outline does not know of itself
//   detail::outline_planner<U>(outline, labels, ruler).make(project)   the piece in millimetres and words
//   detail::on_graduation(drafted, step, ties)                 a drafted length on the graduation nearest to it
//
// An outline has y upward and a page has it downward: the plan has it as the page.
#ifndef TURNCLOTH_DRAW_DETAIL_OUTLINE_PLAN_HPP
#define TURNCLOTH_DRAW_DETAIL_OUTLINE_PLAN_HPP

#include <turncloth/draw/detail/piece_plan.hpp>
#include <turncloth/measure/irrational.hpp>
#include <turncloth/panel/outline.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// The notches lie on the seam line. The grain leads from the first point of its line through the second.
template <length_unit Unit>
struct outline_labels {
    std::string name = {};
    std::string material = {};
    std::int64_t count = 1; ///< how many are cut alike
    std::vector<notch<Unit>> notches = {};
    std::optional<line<Unit, double>> grain = {};
};

namespace detail {

/// The ruler's rule for halves holds where a double says that it is a half. Throws range_error for a step not above
/// zero or a length that is not finite, overflow_error where 64 bits do not hold the result.
template <length_unit To, length_unit Unit>
length<To> on_graduation(drafted_length<Unit> drafted, length<To> step, ties halfway) {
    // The step is brought to the unit of the double, exactly, so that the double itself is what is compared.
    const fraction own_step = as<Unit>(step).value();
    const approximation half = approximate(drafted.value(), own_step / 2);
    const fraction number =
        half.error == 0 ? nearest_to(half.value, own_step, halfway) : approximate(drafted.value(), own_step).value;
    return as<To>(length_of<Unit>(number));
}

template <length_unit Unit>
std::string drafted_text(drafted_length<Unit> l, const ruler& by) {
    return as_shown(
        by, [&] { return to_text(on_graduation(l, by.inches, by.halfway)); },
        [&] { return to_text(on_graduation(l, by.centimetres, by.halfway)); });
}

/// "12 x 8 in (30.5 x 20.3 cm)"
template <length_unit Unit>
std::string drafted_size_text(drafted_length<Unit> width, drafted_length<Unit> height, const ruler& by) {
    const auto in = [&](auto step) {
        return number_text(on_graduation(width, step, by.halfway)) + " x " +
               to_text(on_graduation(height, step, by.halfway));
    };
    return as_shown(
        by, [&] { return in(by.inches); }, [&] { return in(by.centimetres); });
}

/// In tenths of a square inch and of a square centimetre: a ruler has no graduation for areas.
template <length_unit Unit>
std::string drafted_area_text(double number, const ruler& by) {
    const auto tenths = [&](fraction units, const char* name) {
        const fraction step = fraction(1, 10) / (units * units);
        const fraction whole_tenths = approximate(number, step).value / step;
        return to_decimal_text(whole_tenths / 10) + name;
    };
    return as_shown(
        by, [&] { return tenths(units_per<inch, Unit>, " sq in"); },
        [&] { return tenths(units_per<centimetre, Unit>, " sq cm"); });
}

/// In mm of cloth from the top left corner of what is drawn.
struct outline_plan {
    frame_words words{};
    std::vector<std::string> warnings{}; ///< above the drawing
    double width = 0, height = 0;        ///< of what is drawn, in mm
    std::vector<page_point> seam{}, cut{}, crossings{};
    std::vector<page_segment> notches{};      ///< from the seam line to the cut line
    std::vector<page_point> notches_inward{}; ///< of each, the way into the piece, of length 1
    std::vector<double> allowances{};         ///< of each edge of the seam line
    std::vector<page_point> outward{};        ///< of each edge, of length 1
    std::vector<std::string> edge_words{};    ///< of each edge, its number and length
    std::optional<page_segment> grain{};      ///< two points on it
};

template <length_unit Unit>
class outline_planner {
public:
    outline_planner(const outline<Unit>& o, const outline_labels<Unit>& labels, const ruler& by)
        : from_(o), labels_(labels), by_(by) {}

    outline_plan make(const std::string& project) {
        if (labels_.count < 1)
            refuse<range_error>(
                "at least one piece must be cut: it was " + std::to_string(labels_.count),
                refusal{fault::too_small, "the number of pieces to cut", amount_of(labels_.count), amount_of(1)});
        made_.words.project = project;
        made_.words.title = labels_.name;
        made_.words.lists.resize(1);
        measure();
        made_.seam = on_page(from_.seam_line());
        made_.cut = on_page(from_.cut_line());
        add_crossings();
        add_edges();
        add_notches();
        add_grain();
        add_facts();
        warn();
        made_.words.small_print.push_back(
            "Figures are rounded to " + graduation_text(by_) +
            ", areas to a tenth, each from the length drafted; what is drawn is not rounded.");
        return std::move(made_);
    }

private:
    static constexpr double mm = to_double(units_per<millimetre, Unit>);

    /// The box round both lines: the cut line lies outside, but where it crosses itself it may not.
    void measure() {
        low_ = high_ = bare(from_.cut_line().front());
        for (const auto* points : {&from_.cut_line(), &from_.seam_line()})
            for (const auto& p : *points) {
                low_ = {std::min(low_.x, p.x.value()), std::min(low_.y, p.y.value())};
                high_ = {std::max(high_.x, p.x.value()), std::max(high_.y, p.y.value())};
            }
        made_.width = (high_.x - low_.x) * mm;
        made_.height = (high_.y - low_.y) * mm;
        require_drawable(made_.width);
        require_drawable(made_.height);
    }

    page_point on_page(const point<Unit, double>& p) const {
        return {(p.x.value() - low_.x) * mm, (high_.y - p.y.value()) * mm};
    }
    std::vector<page_point> on_page(const polygon<Unit, double>& points) const {
        std::vector<page_point> all;
        for (const auto& p : points)
            all.push_back(on_page(p));
        return all;
    }

    /// Of edges that meet in one place it is marked once.
    void add_crossings() {
        for (const cut_crossing<Unit>& c : from_.crossings()) {
            const page_point where = on_page(c.where);
            const auto is_there = [&](const page_point& p) {
                return std::hypot(p.x - where.x, p.y - where.y) <= drafting_tolerance * mm;
            };
            if (std::none_of(made_.crossings.begin(), made_.crossings.end(), is_there))
                made_.crossings.push_back(where);
        }
    }

    std::string written(drafted_length<Unit> l) const { return drafted_text(l, by_); }

    /// "3: 12 1/2 in, allowance 1/2 in, of which 1/4 in turned under first"
    void add_edges() {
        const auto& seam = from_.seam_line();
        const double way = signed_area_of(seam).value() > 0 ? 1 : -1;
        made_.words.lists[0].emplace_back("Edges of the seam line and their allowances:");
        for (std::size_t i = 0; i < seam.size(); ++i) {
            const arrow<double> edge = bare(seam[(i + 1) % seam.size()]) - bare(seam[i]);
            const double size = length_of_arrow(edge);
            made_.outward.push_back({edge.y * way / size, edge.x * way / size}); // y is turned over
            const edge_allowance<Unit>& t = from_.allowance_of(i);
            made_.allowances.push_back(t.allowance.value() * mm);
            made_.edge_words.push_back(std::to_string(i + 1) + ": " + written(drafted_length_of<Unit>(size)));
            std::string entry = made_.edge_words.back();
            entry += t.allowance.value() > 0 ? ", allowance " + written(t.allowance) : std::string(", no allowance");
            if (t.first_turn.value() > 0)
                entry += ", of which " + written(t.first_turn) + " turned under first";
            made_.words.lists[0].push_back(std::move(entry));
        }
    }

    void add_notches() {
        for (const notch<Unit>& n : labels_.notches) {
            const carried_notch<Unit> c = from_.carried(n);
            made_.notches.push_back({on_page(c.on_seam), on_page(c.on_cut)});
            const page_point out = made_.outward[n.edge];
            made_.notches_inward.push_back({-out.x, -out.y});
            const std::size_t before = n.edge == 0 ? from_.seam_line().size() : n.edge;
            made_.words.lists[0].push_back("notch on edge " + std::to_string(n.edge + 1) + ", " +
                                           written(n.from_start) + " from its corner with edge " +
                                           std::to_string(before));
        }
    }

    void add_grain() {
        if (!labels_.grain)
            return;
        const line<Unit, double>& g = *labels_.grain;
        static_cast<void>(from_.angle_to_grain(0, g)); // which refuses a line without direction
        const arrow<double> from = bare(g.from), to = bare(g.to);
        if (!std::isfinite((length_of_arrow(to - from) + length_of_arrow(from)) * mm))
            refuse<outline_error>("a grain line needs two points that are finite: they were (" +
                                      std::to_string(from.x) + ", " + std::to_string(from.y) + ") and (" +
                                      std::to_string(to.x) + ", " + std::to_string(to.y) + ")",
                                  refusal{fault::unsuitable, "a grain line"});
        made_.grain = page_segment{on_page(g.from), on_page(g.to)};
    }

    void add_facts() {
        auto& facts = made_.words.facts;
        facts.push_back("cut " + std::to_string(labels_.count) +
                        (labels_.material.empty() ? std::string() : " of " + labels_.material));
        if (made_.crossings.empty())
            facts.push_back("area cut " + unbroken(drafted_area_text<Unit>(area_of(from_.cut_line()).value(), by_)));
        facts.push_back("over all " + unbroken(drafted_size_text(drafted_length_of<Unit>(high_.x - low_.x),
                                                                 drafted_length_of<Unit>(high_.y - low_.y), by_)));
    }

    /// Such a piece is drawn all the same: where the line goes wrong is what its drafter needs to see.
    void warn() {
        const std::size_t n = made_.crossings.size();
        if (n == 0)
            return;
        made_.warnings.push_back("This piece cannot be cut: its cut line crosses or touches itself at " +
                                 (n == 1 ? std::string("the place") : "the " + std::to_string(n) + " places") +
                                 " marked with a diamond. Allow less there, or draft it wider. Its area is not given.");
    }

    const outline<Unit>& from_;
    const outline_labels<Unit>& labels_;
    const ruler by_;
    arrow<double> low_{}, high_{}; ///< corners of what is drawn
    outline_plan made_;
};

} // namespace detail

} // namespace turncloth

#endif
