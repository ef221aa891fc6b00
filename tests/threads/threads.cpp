// The same work done by many threads at once, to be run under a thread sanitizer: every thread gets what one alone gets.
#include <turncloth.hpp>
#include <turncloth/cloth/lay/solve.hpp>
#include <turncloth/cloth/stock.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/measure/estimate.hpp>
#include <turncloth/notions/bow.hpp>
#include <turncloth/panel/made_up.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdio>
#include <string>
#include <thread>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;

namespace {

length<inch> sixteenths(int n) { return length_of<inch>({n, 16}); }

std::string numbers(int n) {
    std::string said = to_text(read_length<inch>(std::to_string(n) + " 3/8 in") + sixteenths(n)) + ";";
    said += to_text(diagonal(sixteenths(n), 11_in, "1/16"_in, rounding::up)) + ";";
    said += to_text(as<centimetre>(nearest_to(sixteenths(n), "1/8"_in)), ruler()) + ";";
    try {
        read_length<centimetre>(std::to_string(n) + " 1/");
    } catch (const text_error& refused) {
        said += refused.what();
    }
    return said;
}

std::string marks(int n) {
    std::string said;
    for (const auto mark : rounded_division<finished_edge, inch>(sixteenths(400 + n), 7, "1/8"_in))
        said += to_text(mark.from_datum()) + ";";
    const even_mapping<inch> film(sixteenths(500 + n), sixteenths(400 + n), 5);
    said += to_text(film.onto_short(at<long_piece>(sixteenths(n))).from_datum());
    return said + ";" + to_text(bow_height(sixteenths(200 + n), 12_in, "1/16"_in, rounding::nearest));
}

project<inch> roll(int n) {
    project<inch> p("tool roll " + std::to_string(n), {sixteenths(320 + n), 13_in});
    auto& outer = p.add({"outer", "canvas", panel(p.finished(), all_round(self_binding("3/8"_in, "1/8"_in)))});
    auto& lining = p.add({"lining", "cotton", panel(p.finished())}).lies_inside(outer);
    lining.mark("pocket", edge::left, divided<finished_edge>(p.finished().width(), 3));
    p.add(zipper<inch>{.on = "lining",
                       .from = edge::top,
                       .centres = {at<finished_edge>("2 1/2"_in)},
                       .opening = {.across = p.finished().width(), .margin = 1_in, .beyond = "3/4"_in},
                       .rows = "1/2"_in,
                       .slit = "1/4"_in,
                       .supply = zipper_supply<inch>::from_roll(as<inch>(5_yd))});
    return p;
}

std::string sheets(int n) {
    const sheet<inch> made = sheet_of(roll(n));
    std::string said = to_text(made);
    for (const auto& piece : made.pieces)
        said += to_svg(page_of(piece));
    return said;
}

std::string folds(int n) {
    const panel<inch> napkin({sixteenths(200 + n), 12_in}, all_round(double_turned_hem("1/4"_in, 1_in)));
    const auto folded = fold_panel(napkin, all_corners(mitred("1/4"_in, "1/16"_in)));
    return std::to_string(folded.stack().layer_count()) + (folded.proof() ? " proved" : " not proved");
}

std::string lays(int n) {
    const std::vector<lay_piece> pieces = {{.width = 12, .length = 18 + n, .quantity = 3},
                                           {.width = 9, .length = 7, .quantity = 5, .grain = grain::may_turn}};
    const whole_lay found = shortest_lay(pieces, {.width = 44}, {.steps = 500});
    std::string said = std::to_string(found.length) + " of " + std::to_string(found.bound);
    for (const lay_place& at : found.places)
        said += ";" + std::to_string(at.x) + "," + std::to_string(at.y);
    return said;
}

std::string lengths(int n) {
    const auto plan = cut_from_stock<inch>({{"tie", sixteenths(300 + n), 8}, {"loop", "4 3/4"_in, 12}}, {{"108"_in}});
    return std::to_string(plan.pieces_of_stock) + ";" + to_text(plan.left);
}

std::string all(int n) {
    return numbers(n) + "\n" + marks(n) + "\n" + sheets(n) + "\n" + folds(n) + "\n" + lays(n) + "\n" + lengths(n);
}

} // namespace

int main() {
    constexpr std::size_t tasks = 12, workers = 8;
    using results = std::array<std::string, tasks>;
    std::array<results, workers> together;
    // The threads go first, so that whatever is made at its first use is made by several at once; each starts at another
    // task, so that different work meets as well as the same work.
    std::vector<std::thread> threads;
    for (std::size_t w = 0; w < workers; ++w)
        threads.emplace_back([w, &mine = together[w]] {
            for (std::size_t k = 0; k < tasks; ++k)
                mine[(k + w) % tasks] = all(static_cast<int>((k + w) % tasks));
        });
    for (std::thread& t : threads)
        t.join();

    results alone;
    for (std::size_t n = 0; n < tasks; ++n)
        alone[n] = all(static_cast<int>(n));
    const auto same = std::count(together.begin(), together.end(), alone);
    std::printf("%td of %zu threads, with %zu tasks each, did as one thread alone\n", same, workers, tasks);
    return same == workers ? 0 : 1;
}
