// What the library gives, as text: run on the machine at hand, where tests hold it against references, and as it is built
// elsewhere: with bytes in the other order, with std::size_t of 32 bits, without the compiler's 128-bit numbers, with
// floating point that need not keep the standard's rules, with another standard library. The texts must be the same.
//
// Sizes run from 1 to 10^18; what is random has the seed below, of a generator that is the same everywhere.
#include <turncloth.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/stock.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/notions/bow.hpp>
#include <turncloth/page/svg.hpp>

#include <cstdint>
#include <cstdio>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

constexpr std::uint64_t seed = 20261125;

/// FNV-1a, so that a drawing is a line.
std::uint64_t digest(const std::string& text) {
    std::uint64_t hash = 14695981039346656037U;
    for (const char c : text)
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
    return hash;
}

/// A line of what it gives, or of the refusal.
template <class Function>
void show(const std::string& what, Function function) {
    std::string given;
    try {
        given = function();
    } catch (const error& refused) {
        given = "refused: " + std::string(refused.what());
    }
    std::printf("%s: %s\n", what.c_str(), given.c_str());
}

class numbers {
public:
    std::int64_t next(std::int64_t below) {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return static_cast<std::int64_t>((state_ >> 1) % static_cast<std::uint64_t>(below));
    }
    fraction next_fraction(std::int64_t below) {
        const std::int64_t over = next(below) - below / 2;
        return {over, 1 + next(below)};
    }

private:
    std::uint64_t state_ = seed;
};

void show_arithmetic() {
    numbers random;
    for (int i = 0; i < 2000; ++i) {
        const std::int64_t below = i % 3 == 0 ? 100 : i % 3 == 1 ? 1'000'000 : std::int64_t{1} << 62;
        const fraction a = random.next_fraction(below), b = random.next_fraction(below);
        const std::string pair = to_text(a) + " and " + to_text(b);
        show(pair, [&] { return to_text(a + b); });
        show(pair, [&] { return to_text(a * b); });
        show(pair, [&] { return to_text(a / b); });
        show(pair, [&] { return std::string(a < b ? "less" : "not less"); });
        show(pair, [&] { return to_text(length_of<inch>(a), ruler()); });
        show(pair, [&] { return to_text(read_length<inch>(to_text(a) + " cm")); });
        show(pair, [&] { return to_text(diagonal(length_of<inch>(a), length_of<inch>(b), "1/16"_in, rounding::up)); });
    }
}

/// What is solved by steps that start from doubles, and must not rest on them.
void show_estimates() {
    numbers random;
    for (int i = 0; i < 500; ++i) {
        const fraction x{1 + random.next(10'000'000), 1 + random.next(10'000)};
        const fraction over = x + fraction{1 + random.next(1000), 64};
        show("arctangent of " + to_text(x), [&] {
            return to_text(arctangent(x).on({1, 1'000'000'000}, rounding::nearest));
        });
        show("root of " + to_text(x), [&] {
            return to_text(square_root(estimate(x)).on({1, 1'000'000'000}, rounding::up));
        });
        show("bow of " + to_text(over) + " over " + to_text(x), [&] {
            return to_text(bow_height(length_of<inch>(over), length_of<inch>(x), "1/64"_in, rounding::nearest));
        });
    }
}

/// A lay's places and a plan's cuts, found by searches that draw at random and compare values.
void show_searches() {
    numbers random;
    for (int i = 0; i < 12; ++i) {
        std::vector<cloth_piece<inch>> pieces;
        std::vector<wanted_length<inch>> ties;
        for (std::int64_t k = 0, kinds = 1 + random.next(8); k < kinds; ++k) {
            const auto side = [&] { return length_of<inch>({8 + random.next(200), 8}); };
            const length<inch> across = side(), along = side();
            pieces.push_back({"piece", cut_size<inch>(across, along), 1 + random.next(5)});
            ties.push_back({"tie", side(), 1 + random.next(9)});
        }
        show("lay", [&] {
            const auto found = lay_out<inch>(pieces, {.width = 44_in});
            std::string all = to_text(found.length) + ", at least " + to_text(found.bound);
            for (const auto& place : found.places)
                all += "; " + to_text(place.where.from_left) + " " + to_text(place.where.from_end);
            return all;
        });
        show("stock", [&] {
            const auto plan = cut_from_stock<inch>(ties, {{60_in}});
            return to_text(plan.length_of_stock) + ", left " + to_text(plan.left);
        });
    }
}

template <length_unit Unit>
void show_drawings(std::int64_t size) {
    const std::string sized = to_text(length_of<Unit>(size));
    const auto digested = [](const std::string& drawing) {
        return std::to_string(drawing.size()) + " bytes, " + std::to_string(digest(drawing));
    };
    for (const std::int64_t high : {std::int64_t{1}, size}) {
        show("piece, " + sized + " by " + std::to_string(high), [&] {
            project<Unit> p("sizes", finished_size<Unit>(length_of<Unit>(size), length_of<Unit>(high)));
            p.add({"piece", "canvas", panel(p.finished(), all_round(seam(length_of<Unit>({1, 4}))))});
            const auto s = sheet_of(p);
            return to_text(s, inch_ruler(16)) + digested(to_svg(page_of(s.pieces.front())));
        });
    }
    show("page, " + sized, [&] {
        const auto at = static_cast<double>(size);
        page p{.width = at, .height = at, .title = sized};
        p.draw({"edge", 0.5}, {{0, 0}, {at / 4, at / 8}});
        p.write({at / 2, at / 2}, sized, 3);
        return digested(to_svg(p));
    });
}

} // namespace

int main() {
    show_arithmetic();
    show_estimates();
    show_searches();
    std::int64_t size = 1;
    for (int power = 0; power <= 18; ++power) {
        show_drawings<inch>(size);
        show_drawings<centimetre>(size);
        if (power < 18)
            size *= 10;
    }
}
