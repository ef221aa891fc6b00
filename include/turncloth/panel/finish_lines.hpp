// Where the edges of an outline are folded and stitched: the lines of their finishes, in the coordinates of the outline.
//
//   edge_allowance_of(finish)  edge_allowances_of(finishes)     what an outline asks for, of the finishes of its edges
//   lines_of(o, finishes)       of each edge a finish_lines<U>{folds, stitching}, in the order of its finish
//   finish_line<U>{at, where}   its place from the cut edge, exact, and the line, of which corners may leave nothing
//
//   const std::vector finishes = {double_turned_hem(1_cm, 2_cm), seam(1_cm), seam(1_cm)};
//   const outline<centimetre> gusset(corners, edge_allowances_of(finishes));
//   const auto hem = lines_of(gusset, finishes)[0];
//   for (const auto& fold : hem.folds) press(fold.at, fold.where);
//
// A line runs beside its edge, and the way the edge does. Round an outward corner it goes on over the neighbour's
// allowance to the cut edge, as the lines of a panel do: of a rectangle these are the panel's lines. At an inward corner
// it ends where the two allowances part, inside the seam line half-way between the edges; and where the piece turns by
// less than 30 degrees, as along a curve, where it meets the neighbour's line. Coordinates are within about 1e-12 of the
// size of the piece; an end that a corner's shape or a trimmed cut line has cut off is within 1e-9. Not part of turncloth.hpp.
#ifndef TURNCLOTH_PANEL_FINISH_LINES_HPP
#define TURNCLOTH_PANEL_FINISH_LINES_HPP

#include <turncloth/panel/drafted.hpp>
#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/trimmed.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
struct finish_line {
    place<cut_edge, Unit> at;                ///< on the flat piece
    std::optional<line<Unit, double>> where; ///< none where the corners beside it leave nothing of it

    friend constexpr bool operator==(const finish_line&, const finish_line&) = default;
};

template <length_unit Unit>
struct finish_lines {
    std::vector<finish_line<Unit>> folds, stitching;

    friend bool operator==(const finish_lines&, const finish_lines&) = default;
};

/// Of a hem that is turned twice, what it turns under first is told too, for a corner that is reflected in its edge.
template <length_unit Unit>
edge_allowance<Unit> edge_allowance_of(const finish<Unit>& f) {
    const bool turned_twice = f.folds().size() > 1 && f.reach().value() > 0;
    return {drafted(f.allowance()), turned_twice ? drafted(f.allowance_parts()[0]) : drafted_length<Unit>()};
}

template <length_unit Unit>
std::vector<edge_allowance<Unit>> edge_allowances_of(const std::vector<finish<Unit>>& finishes) {
    std::vector<edge_allowance<Unit>> all;
    all.reserve(finishes.size());
    for (const finish<Unit>& f : finishes)
        all.push_back(edge_allowance_of(f));
    return all;
}

/// Each line is compared with each edge of the cut line, so there is a largest number of edges.
inline constexpr std::size_t most_edges_with_lines = 10000;

namespace detail {

template <length_unit Unit>
class line_drafter {
public:
    line_drafter(const outline<Unit>& o, const std::vector<finish<Unit>>& finishes)
        : of_(o), finishes_(finishes), outward_(signed_area_of(o.seam_line()).value() > 0 ? 1 : -1) {
        const std::size_t n = o.seam_line().size();
        require_at_most<outline_error>(n, most_edges_with_lines, "the number of edges with lines");
        if (finishes.size() != 1 && finishes.size() != n)
            refuse<outline_error>(
                {"an outline of ", n, " edges needs 1 finish or ", n, ": it had ", finishes.size()},
                {.kind = fault::disagree, .what = "the number of finishes", .given = finishes.size(), .most = n});
        for (std::size_t i = 0; i < n; ++i)
            require_allowance(i);
        boundary_ = trimmed_cut_line(o).boundary;
    }

    finish_lines<Unit> lines_of(std::size_t i) const {
        finish_lines<Unit> all;
        for (const auto& fold : finish_of(i).folds())
            all.folds.push_back({fold, drafted_line(i, fold, "a fold")});
        for (const auto& row : finish_of(i).stitching())
            all.stitching.push_back({row, drafted_line(i, row, "a row of stitching")});
        return all;
    }

private:
    struct side { // an edge of the seam line
        arrow<double> along, out;
        double allowance;
    };
    struct stretch { // along a line, from where its edge starts
        double from, to;
    };

    const finish<Unit>& finish_of(std::size_t i) const { return finishes_[finishes_.size() == 1 ? 0 : i]; }
    arrow<double> corner(std::size_t i) const { return bare(of_.seam_line()[i % of_.seam_line().size()]); }
    side side_at(std::size_t i) const {
        const arrow<double> edge = corner(i + 1) - corner(i);
        const double size = length_of_arrow(edge);
        // Divided, and not times 1 / size: an upright or level edge then has a direction that is exact.
        const arrow<double> along{edge.x / size, edge.y / size};
        return {along, {along.y * outward_, -along.x * outward_}, of_.allowance_of(i).allowance.value()};
    }

    void require_allowance(std::size_t i) const {
        const double asked = drafted(finish_of(i).allowance()).value(), made = of_.allowance_of(i).allowance.value();
        if (sign(asked - made) != 0)
            refuse<outline_error>("the finish of edge " + std::to_string(i + 1) + " allows " + std::to_string(asked) +
                                      ", and the outline was drafted with " + std::to_string(made) + " there",
                                  refusal{.kind = fault::disagree,
                                          .what = "an allowance",
                                          .given = amount_of(asked),
                                          .least = amount_of(made),
                                          .most = amount_of(made),
                                          .index = i});
    }

    /// How far beyond the corner a line of the one side goes on that lies `height` outside its edge. Points of it are as
    /// far outside the other side as height cos + beyond sin, of the turn.
    double beyond(const side& one, const side& other, double height, double sine) const {
        const double cosine = dot(one.out, other.out);
        const bool inward = sine < 0;
        if (cosine > almost_straight || (inward && height <= 0))
            return height * sine / std::max(1 + cosine, 1e-12); // where it meets a line as far outside the other
        if (inward)
            return (other.allowance - one.allowance * cosine) / sine * (height / one.allowance);
        return (other.allowance - height * cosine) / sine;
    }

    std::optional<line<Unit, double>> drafted_line(std::size_t i, const place<cut_edge, Unit>& at,
                                                   const char* what) const {
        const std::size_t n = of_.seam_line().size();
        const side before = side_at(i == 0 ? n - 1 : i - 1), own = side_at(i), after = side_at(i + 1 == n ? 0 : i + 1);
        const double height = drafted(finish_of(i).allowance() - at.from_datum()).value(),
                     size = length_of_arrow(corner(i + 1) - corner(i));
        const double turn_before = cross(before.along, own.along) * outward_,
                     turn_after = cross(own.along, after.along) * outward_;
        const stretch whole{-beyond(own, before, height, turn_before), size + beyond(own, after, height, turn_after)};
        if (whole.to - whole.from <= drafting_tolerance)
            return std::nullopt;
        const arrow<double> start = corner(i) + own.out * height;
        const auto kept = on_piece(start, own.along, whole, size);
        if (!kept && height < 0)
            refuse<outline_error>(
                {what, " of edge ", i + 1, ", ", at.from_datum(), " from its cut edge, leaves the piece"},
                {.kind = fault::no_room, .what = what, .given = at.from_datum(), .index = i});
        if (!kept)
            return std::nullopt;
        return line<Unit, double>{in_unit<Unit>(start + own.along * kept->from),
                                  in_unit<Unit>(start + own.along * kept->to)};
    }

    /// The stretch of it that lies on the piece beside the edge itself; none where there is none, or more than one.
    std::optional<stretch> on_piece(const arrow<double>& start, const arrow<double>& along, const stretch& whole,
                                    double size) const {
        std::vector<double> stops = {whole.from, whole.to};
        for (std::size_t k = 0; k < boundary_.size(); ++k)
            add_stops(stops, bare(boundary_[k]) - start, bare(boundary_[k + 1 == boundary_.size() ? 0 : k + 1]) - start,
                      along);
        std::sort(stops.begin(), stops.end());
        std::vector<stretch> found;
        for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
            const stretch s{stops[k], stops[k + 1]};
            if (s.from < whole.from || s.to > whole.to || s.to - s.from <= 4 * drafting_tolerance)
                continue;
            const arrow<double> middle = start + along * ((s.from + s.to) / 2);
            if (locate(boundary_, in_unit<Unit>(middle)) == containment::outside)
                continue;
            if (!found.empty() && s.from - found.back().to <= 4 * drafting_tolerance)
                found.back().to = s.to;
            else
                found.push_back(s);
        }
        std::erase_if(found, [&](const stretch& s) {
            return std::min(s.to, size) - std::max(s.from, 0.0) <= drafting_tolerance;
        });
        if (found.size() != 1)
            return std::nullopt;
        const auto near = [](double a, double b) { return std::abs(a - b) <= 8 * drafting_tolerance ? b : a; };
        return stretch{near(found[0].from, whole.from), near(found[0].to, whole.to)};
    }

    /// Where an edge of the cut line from a to b crosses or touches the line through the origin.
    static void add_stops(std::vector<double>& stops, const arrow<double>& a, const arrow<double>& b,
                          const arrow<double>& along) {
        const double one = cross(along, a), other = cross(along, b);
        if (sign(one) == 0)
            stops.push_back(dot(along, a));
        if (sign(one) * sign(other) < 0)
            stops.push_back(dot(along, a + (b - a) * (one / (one - other))));
    }

    const outline<Unit>& of_;
    const std::vector<finish<Unit>>& finishes_;
    double outward_;
    polygon<Unit, double> boundary_{};
};

} // namespace detail

/// One finish for each edge, or one for all. Throws outline_error for another number of them, for a finish that allows
/// other than the outline does at its edge, for a line inside the seam line that leaves the piece, where it has no room,
/// and for more edges than `most_edges_with_lines`; time grows with the lines times the corners of the cut line.
template <length_unit Unit>
std::vector<finish_lines<Unit>> lines_of(const outline<Unit>& o, const std::vector<finish<Unit>>& finishes) {
    const detail::line_drafter<Unit> drafter(o, finishes);
    std::vector<finish_lines<Unit>> all;
    for (std::size_t i = 0; i < o.seam_line().size(); ++i)
        all.push_back(drafter.lines_of(i));
    return all;
}

} // namespace turncloth

#endif
