// Small jobs with remnants at random, and the least new cloth that they leave to buy, found by filling cells one after
// another: a reference that shares nothing with the library but the numbers asked.
#ifndef TURNCLOTH_TESTS_CLOTH_SMALL_JOBS_HPP
#define TURNCLOTH_TESTS_CLOTH_SMALL_JOBS_HPP

#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/remnants.hpp>

#include <cstddef>
#include <utility>
#include <vector>

namespace small_jobs {

struct kind {
    int width, length, left;
    bool may_turn;
};
struct grid {
    int width, length;
};

/// Whether all the kinds go on the grids, each cell in turn left empty or given the near left corner of a piece.
class filling {
public:
    filling(std::vector<kind> kinds, std::vector<grid> grids) : kinds_(std::move(kinds)), grids_(std::move(grids)) {
        for (const grid& g : grids_) {
            taken_.emplace_back(static_cast<std::size_t>(g.width * g.length), false);
            free_ += g.width * g.length;
        }
        for (const kind& k : kinds_)
            wanted_ += k.width * k.length * k.left;
    }
    bool possible() { return from(0, 0); }

private:
    bool from(std::size_t g, std::size_t cell) {
        if (wanted_ == 0)
            return true;
        if (wanted_ > free_ || g == grids_.size())
            return false;
        if (cell == taken_[g].size())
            return from(g + 1, 0);
        if (taken_[g][cell])
            return from(g, cell + 1);
        for (kind& k : kinds_)
            if (k.left > 0 && (with(k, k.width, k.length, g, cell) ||
                               (k.may_turn && k.width != k.length && with(k, k.length, k.width, g, cell))))
                return true;
        --free_;
        const bool all = from(g, cell + 1);
        ++free_;
        return all;
    }
    bool with(kind& k, int width, int length, std::size_t g, std::size_t cell) {
        const int x = static_cast<int>(cell) % grids_[g].width, y = static_cast<int>(cell) / grids_[g].width;
        if (x + width > grids_[g].width || y + length > grids_[g].length)
            return false;
        for (int i = 0; i < width; ++i)
            for (int j = 0; j < length; ++j)
                if (at(g, x + i, y + j))
                    return false;
        take(k, {width, length}, g, x, y, true);
        const bool all = from(g, cell + 1);
        take(k, {width, length}, g, x, y, false);
        return all;
    }
    std::vector<bool>::reference at(std::size_t g, int x, int y) {
        return taken_[g][static_cast<std::size_t>(y * grids_[g].width + x)];
    }
    void take(kind& k, grid size, std::size_t g, int x, int y, bool on) {
        for (int i = 0; i < size.width; ++i)
            for (int j = 0; j < size.length; ++j)
                at(g, x + i, y + j) = on;
        const int area = size.width * size.length * (on ? 1 : -1);
        free_ -= area;
        wanted_ -= area;
        k.left -= on ? 1 : -1;
    }

    std::vector<kind> kinds_;
    std::vector<grid> grids_;
    std::vector<std::vector<bool>> taken_{};
    int free_ = 0, wanted_ = 0;
};

/// Of cloth so wide.
inline int least_bought(const std::vector<kind>& kinds, const std::vector<grid>& remnants, int width) {
    for (int length = 0;; ++length) {
        std::vector<grid> all = remnants;
        if (length > 0)
            all.push_back({width, length});
        if (filling(kinds, all).possible())
            return length;
    }
}

/// Two or three kinds of piece on one or two remnants, and the same for the reference.
struct job {
    std::vector<turncloth::cloth_piece<turncloth::inch>> pieces{};
    std::vector<turncloth::remnant<turncloth::inch>> remnants{};
    std::vector<kind> kinds{};
    std::vector<grid> grids{};

    explicit job(turncloth::detail::lay_random& chance) {
        const auto up_to = [&](std::uint32_t most) { return 1 + static_cast<int>(chance.below(most)); };
        for (int i = 1 + up_to(2); i > 0; --i)
            kinds.push_back({up_to(4), up_to(4), up_to(3), chance.below(2) == 0});
        for (int i = up_to(2); i > 0; --i)
            grids.push_back({1 + up_to(4), 1 + up_to(4)});
        using turncloth::length_of, turncloth::inch, turncloth::grain;
        for (const kind& k : kinds)
            pieces.push_back({.name = "p",
                              .size = {length_of<inch>(k.width), length_of<inch>(k.length)},
                              .quantity = k.left,
                              .grain = k.may_turn ? grain::may_turn : grain::fixed});
        for (const grid& g : grids) {
            turncloth::bolt<inch> cloth;
            cloth.width = length_of<inch>(g.width);
            remnants.push_back({cloth, length_of<inch>(g.length)});
        }
    }
};

inline constexpr int new_width = 5;

} // namespace small_jobs

#endif
