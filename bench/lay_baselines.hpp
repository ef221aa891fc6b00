// Lays as made without a search, to measure a search against.
//
//   std::int64_t shelf_length(pieces, width)        first fit, longest first, on shelves: what a person does
//   std::int64_t bottom_left_length(pieces, width)  each piece where it lies nearest, widest first
//   std::int64_t three_stage_length(pieces, width)  strips across, each cut along into stacks: the best of many orders
//
//   double saving = 1.0 - double(shortest_lay(pieces, cloth).length) / double(shelf_length(pieces, cloth.width));
//
// Shelves: Coffman, Garey, Johnson, Tarjan, SIAM J. Computing 9 (1980). Bottom-left: Baker, Coffman, Rivest, the same
// volume.
#ifndef TURNCLOTH_BENCH_LAY_BASELINES_HPP
#define TURNCLOTH_BENCH_LAY_BASELINES_HPP

#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/lay/types.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace baselines {

inline std::vector<turncloth::detail::lay_piece> one_by_one(const std::vector<turncloth::detail::lay_piece>& pieces) {
    std::vector<turncloth::detail::lay_piece> each;
    for (const auto& piece : pieces)
        each.insert(each.end(), static_cast<std::size_t>(piece.quantity), piece);
    return each;
}

inline std::int64_t shelf_length(const std::vector<turncloth::detail::lay_piece>& pieces, std::int64_t width) {
    auto each = one_by_one(pieces);
    std::stable_sort(each.begin(), each.end(), [](const auto& a, const auto& b) { return a.length > b.length; });
    std::vector<std::int64_t> left; // of each shelf's width
    std::int64_t length = 0;
    for (const auto& piece : each) {
        const auto shelf = std::find_if(left.begin(), left.end(), [&](std::int64_t l) { return l >= piece.width; });
        if (shelf != left.end()) {
            *shelf -= piece.width;
        } else {
            left.push_back(width - piece.width);
            length += piece.length;
        }
    }
    return length;
}

inline std::int64_t bottom_left_length(const std::vector<turncloth::detail::lay_piece>& pieces, std::int64_t width) {
    auto each = one_by_one(pieces);
    std::stable_sort(each.begin(), each.end(), [](const auto& a, const auto& b) { return a.width > b.width; });
    struct step {
        std::int64_t x, y;
    };
    std::vector<step> sky{{0, 0}};
    std::int64_t length = 0;
    for (const auto& piece : each) {
        std::int64_t best_x = 0, best_y = -1;
        for (std::size_t i = 0; i < sky.size() && sky[i].x + piece.width <= width; ++i) {
            std::int64_t y = 0;
            for (std::size_t j = i; j < sky.size() && sky[j].x < sky[i].x + piece.width; ++j)
                y = std::max(y, sky[j].y);
            if (best_y < 0 || y < best_y)
                best_y = y, best_x = sky[i].x;
        }
        const std::int64_t end = best_x + piece.width;
        std::vector<step> next;
        std::int64_t beyond = 0;
        for (const step& s : sky) {
            if (s.x < best_x || s.x >= end) {
                if (s.x > end && (next.empty() || next.back().x < end))
                    next.push_back({end, beyond});
                next.push_back(s);
            } else if (s.x == best_x) {
                next.push_back({best_x, best_y + piece.length});
            }
            if (s.x < end)
                beyond = s.y;
        }
        if (next.back().x < end && end < width)
            next.push_back({end, beyond});
        sky = std::move(next);
        length = std::max(length, best_y + piece.length);
    }
    return length;
}

/// The first piece of the list that fits into width x length, taken out of it; an empty one where none fits.
inline turncloth::detail::lay_piece first_fitting(std::vector<turncloth::detail::lay_piece>& left, std::int64_t width,
                                                  std::int64_t length) {
    for (auto piece = left.begin(); piece != left.end(); ++piece)
        if (piece->width <= width && piece->length <= length) {
            const auto taken = *piece;
            left.erase(piece);
            return taken;
        }
    return {};
}

/// One lay: the first piece left opens a strip, the first that fits beside opens a stack, the first that fit stand on
/// it.
inline std::int64_t stacks_in_order(std::vector<turncloth::detail::lay_piece> left, std::int64_t width) {
    std::int64_t length = 0;
    while (!left.empty()) {
        const std::int64_t strip = left.front().length;
        for (std::int64_t room = width; room > 0;) {
            const auto opener = first_fitting(left, room, strip);
            if (opener.width == 0)
                break;
            for (std::int64_t above = strip - opener.length; above > 0;) {
                const auto next = first_fitting(left, opener.width, above);
                if (next.width == 0)
                    break;
                above -= next.length;
            }
            room -= opener.width;
        }
        length += strip;
    }
    return length;
}

/// The shortest of orders by falling length, shaken more and more, and kept where they are no worse.
inline std::int64_t three_stage_length(const std::vector<turncloth::detail::lay_piece>& pieces, std::int64_t width) {
    auto order = one_by_one(pieces);
    std::stable_sort(order.begin(), order.end(), [](const auto& a, const auto& b) { return a.length > b.length; });
    std::int64_t best = stacks_in_order(order, width);
    turncloth::detail::lay_random chance(1);
    for (int i = 0; i < 20'000; ++i) {
        auto shaken = order;
        for (std::uint32_t swaps = 1 + chance.below(3); swaps > 0; --swaps) {
            auto& one = shaken[chance.below(static_cast<std::uint32_t>(shaken.size()))];
            std::swap(one, shaken[chance.below(static_cast<std::uint32_t>(shaken.size()))]);
        }
        if (const std::int64_t length = stacks_in_order(shaken, width); length <= best) {
            best = length;
            order = std::move(shaken);
        }
    }
    return best;
}

} // namespace baselines

#endif
