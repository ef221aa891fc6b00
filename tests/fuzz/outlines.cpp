// Outlines of any corners, allowances and shapes, beside plain geometry: typed errors alone; every coordinate a number;
// each straight of the cut line lies its allowance outside its edge, and notches are carried square to theirs.
#include "feed.hpp"
#include <turncloth/panel/outline.hpp>

#include <bit>
#include <cmath>
#include <vector>

using namespace fuzzing;

namespace {

/// Mostly of a drafted piece; at times any bits at all.
double number(feed& bytes) {
    if (bytes.one_in(60))
        return std::bit_cast<double>(bytes.ConsumeIntegral<std::uint64_t>());
    return static_cast<double>(bytes.between(-400, 400)) / 8;
}
drafted_length<centimetre> allowance(feed& bytes) {
    return drafted_length_of<centimetre>(bytes.one_in(40) ? number(bytes)
                                                          : static_cast<double>(bytes.between(0, 48)) / 16);
}

using corner_point = point<centimetre, double>;

/// How far p lies left of the way from a to b.
double left_of(const corner_point& a, const corner_point& b, const corner_point& p) {
    const double dx = (b.x - a.x).value(), dy = (b.y - a.y).value();
    return (dx * (p.y - a.y).value() - dy * (p.x - a.x).value()) / std::hypot(dx, dy);
}
/// How far along that way.
double along(const corner_point& a, const corner_point& b, const corner_point& p) {
    const double dx = (b.x - a.x).value(), dy = (b.y - a.y).value();
    return (dx * (p.x - a.x).value() + dy * (p.y - a.y).value()) / std::hypot(dx, dy);
}

void check(const outline<centimetre>& piece, feed& bytes) {
    const auto& seam = piece.seam_line();
    double largest = 1;
    for (const corner_point& p : piece.cut_line()) {
        must(std::isfinite(p.x.value()) && std::isfinite(p.y.value()), "every coordinate is a number");
        largest = std::max({largest, std::abs(p.x.value()), std::abs(p.y.value())});
    }
    const double close = 1e-8 * largest, outward = signed_area_of(seam).value() > 0 ? -1 : 1;
    for (std::size_t i = 0; i < seam.size(); ++i) {
        const corner_point &from = seam[i], &to = seam[(i + 1) % seam.size()];
        const double asked = piece.allowance_of(i).allowance.value();
        for (const corner_point& end : {piece.cut_edge(i).first, piece.cut_edge(i).second})
            must(std::abs(outward * left_of(from, to, end) - asked) <= close, "a cut edge lies its allowance outside");
        const double length = along(from, to, to), half = length * static_cast<double>(bytes.between(0, 16)) / 16;
        refused([&] {
            const auto carried = piece.carried({i, drafted_length_of<centimetre>(half)});
            must(std::abs(along(from, to, carried.on_cut) - half) <= close, "a notch is carried square to its edge");
            must(std::abs(along(from, to, carried.on_seam) - half) <= close,
                 "a notch keeps its place on the seam line");
        });
        refused([&] {
            const double turn = piece.angle_to_grain(i, {from, to});
            must(turn >= 0 && turn <= 1e-4, "an edge lies along itself");
        });
    }
    const auto crossings = piece.crossings();
    if (crossings.empty())
        must(area_of(piece.cut_line()).value() >= area_of(seam).value() - close * largest,
             "a piece that can be cut holds its seam line");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    const int corners = bytes.ConsumeIntegralInRange(0, 9);
    const bool round = bytes.ConsumeBool(); // points round a middle make a line that does not cross itself
    polygon<centimetre, double> seam;
    std::vector<edge_allowance<centimetre>> allowances;
    std::vector<corner_shape> shapes;
    for (int i = 0; i < corners; ++i) {
        if (round) {
            const double angle = 2 * 3.14159265358979 * (i + static_cast<double>(bytes.between(0, 9)) / 10) / corners,
                         reach = static_cast<double>(bytes.between(8, 200)) / 4;
            seam.push_back(drafted_point<centimetre>(reach * std::cos(angle), reach * std::sin(angle)));
        } else {
            const double x = number(bytes);
            seam.push_back(drafted_point<centimetre>(x, number(bytes)));
        }
        const auto all = allowance(bytes);
        allowances.emplace_back(all, bytes.one_in(4) ? allowance(bytes) : drafted_length<centimetre>());
        shapes.push_back(static_cast<corner_shape>(bytes.ConsumeIntegralInRange(0, 4)));
    }
    if (bytes.ConsumeBool())
        allowances.resize(std::min<std::size_t>(allowances.size(), 1));
    if (bytes.ConsumeBool())
        shapes.clear();
    refused([&] {
        const double limit = bytes.one_in(8) ? number(bytes) : 4;
        check(outline<centimetre>(seam, allowances, shapes, limit), bytes);
    });
    return 0;
}
