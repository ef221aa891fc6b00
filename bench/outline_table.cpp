// Prints how cut lines of random outlines come out: ours, and a general buffer's, beside an exact union of polygons.
//
//   outline_table [how many]         10000 when nothing is said; a million take some hours
//
// The outlines are convex, L, T, U, stars and curves, as likely as not on a grid where lines fall on each other, each the
// same in every run. First every edge has an allowance of its own, in one or two of five none; then all have one, the
// only kind that the buffer of Boost.Geometry knows. The reference is CGAL's exact union of the piece and its allowances:
// its area says how far off a line is, as a part of the area, and its exact test whether a line crosses itself. Outlines
// with a strip that crosses itself are not compared. A straight skeleton with a weight for each edge would be a third way;
// the CGAL 5.5 of Debian 12 has it without weights only, so the exact union stands in its place. What each took is told
// as a multiple of what ours did in the same run. Ends with 1 where one of ours is invalid or off.
#define DOCTEST_CONFIG_IMPLEMENT
#include "panel/boost_geometry.hpp"
#include "panel/exact_union.hpp"
#include "panel/random_outline.hpp"
#include <turncloth/panel/trimmed.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <string>
#include <vector>

namespace {

using namespace turncloth;
using random_outline::pieces;
namespace bg = boost::geometry;
using bg_point = bg::model::d2::point_xy<double>;
using bg_polygon = bg::model::polygon<bg_point, false>;
using bg_pieces = bg::model::multi_polygon<bg_polygon>;

/// What came of one way of making cut lines.
struct row {
    std::string name;
    int made = 0, none = 0, invalid = 0, off = 0;
    double worst = 0, seconds = 0;

    static constexpr double bound = 1e-9; ///< off by more, as a part of the area, counts

    void judge(const std::optional<pieces>& line, double expected) {
        ++made;
        if (!line)
            return void(++none);
        const auto exact = exact_union::as_exact(*line);
        if (exact.size() < 3 || !exact.is_simple())
            return void(++invalid);
        const double error = std::abs(CGAL::to_double(CGAL::abs(exact.area())) - expected) / expected;
        off += error > bound ? 1 : 0;
        worst = std::max(worst, error);
    }
};

double seconds_since(std::chrono::steady_clock::time_point begin) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

/// The outer ring, where it is one piece.
std::optional<pieces> buffered(const pieces& corners, double allowance, double& seconds) {
    bg_polygon ring;
    for (const auto& p : corners)
        bg::append(ring.outer(), bg_point(p.x.value(), p.y.value()));
    bg::correct(ring);
    bg_pieces made;
    const auto begin = std::chrono::steady_clock::now();
    bg::buffer(ring, made, bg::strategy::buffer::distance_symmetric<double>(allowance),
               bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_miter(1000),
               bg::strategy::buffer::end_flat(), bg::strategy::buffer::point_square());
    seconds += seconds_since(begin);
    if (made.size() != 1)
        return std::nullopt;
    pieces outer;
    for (const auto& p : made[0].outer())
        outer.push_back(drafted_point<centimetre>(p.x(), p.y()));
    outer.pop_back(); // the first again
    return outer;
}

class table {
public:
    void add(const pieces& corners, std::vector<edge_allowance<centimetre>> own, double one, double limit) {
        if (const auto piece = outline_of(corners, std::move(own), limit))
            static_cast<void>(compare(*piece, ours_, union_));
        const auto alike = outline_of(corners, {edge_allowance<centimetre>(drafted_length_of<centimetre>(one))}, 1000);
        if (!alike)
            return;
        if (const auto expected = compare(*alike, ours_alike_, union_alike_))
            buffer_.judge(buffered(corners, one, buffer_.seconds), *expected);
    }

    void print() const {
        std::printf("| cut lines | outlines | no one line | invalid | off by more than 1e-9 | worst | time |\n"
                    "|---|---|---|---|---|---|---|\n");
        print(ours_, ours_), print(union_, ours_);
        print(ours_alike_, ours_alike_), print(buffer_, ours_alike_), print(union_alike_, ours_alike_);
    }

    bool ours_hold() const {
        const auto holds = [](const row& r) { return r.none == 0 && r.invalid == 0 && r.off == 0; };
        return holds(ours_) && holds(ours_alike_);
    }

private:
    /// None where the seam line crosses itself.
    static std::optional<outline<centimetre>>
    outline_of(const pieces& corners, std::vector<edge_allowance<centimetre>> allowances, double limit) {
        try {
            return outline<centimetre>(corners, std::move(allowances), {}, limit);
        } catch (const outline_error&) {
            return std::nullopt;
        }
    }

    static std::optional<double> compare(const outline<centimetre>& piece, row& ours, row& reference) {
        auto begin = std::chrono::steady_clock::now();
        const outline<centimetre> again(piece.seam_line(), allowances_of(piece));
        const auto line = trimmed_cut_line(piece).boundary;
        const double took = seconds_since(begin);
        begin = std::chrono::steady_clock::now();
        const auto expected = exact_union::area_of(piece);
        if (!expected)
            return expected;
        reference.seconds += seconds_since(begin), ++reference.made;
        ours.seconds += took;
        ours.judge(line, *expected);
        return expected;
    }
    static std::vector<edge_allowance<centimetre>> allowances_of(const outline<centimetre>& piece) {
        std::vector<edge_allowance<centimetre>> all;
        for (std::size_t i = 0; i < piece.seam_line().size(); ++i)
            all.push_back(piece.allowance_of(i));
        return all;
    }

    static void print(const row& r, const row& beside) {
        std::printf("| %s | %d | %d | %d | %d | %.1e | %.1f |\n", r.name.c_str(), r.made, r.none, r.invalid, r.off,
                    r.worst, r.seconds / beside.seconds);
    }

    row ours_{"turncloth, an allowance for each edge"}, union_{"CGAL's exact union, which is the reference"},
        ours_alike_{"turncloth, one allowance for all"}, buffer_{"Boost.Geometry's mitred buffer, likewise"},
        union_alike_{"CGAL's exact union, likewise"};
};

} // namespace

int main(int argc, char** argv) {
    const int asked = argc > 1 ? std::atoi(argv[1]) : 10000;
    random_outline::maker any(25);
    table all;
    while (any.another_of(asked)) {
        const pieces corners = any.of_any_kind();
        const double most = any.between(0.5, 6);
        auto own = any.allowances_or_none(corners.size(), most);
        const double one = any.between(0.3, 3);
        const double limit = any.between(2, 6);
        all.add(corners, std::move(own), one, limit);
    }
    all.print();
    return all.ours_hold() ? 0 : 1;
}
