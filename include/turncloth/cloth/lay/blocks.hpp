// What pieces lie round on the cloth, as rectangles that do not overlap: flaws, and pieces that stay where they are.
//
//   bool detail::parts_meet(a, b)                     whether they overlap
//   std::vector<lay_part> detail::made_apart(parts)   the same cloth in parts of which no two meet
//   std::int64_t detail::area_within(apart, length)   what they take of so much length
//
//   auto blocks = detail::made_apart({{2, 6, 0, 4}, {4, 8, 2, 5}});      // the second loses what the first has of it
#ifndef TURNCLOTH_CLOTH_LAY_BLOCKS_HPP
#define TURNCLOTH_CLOTH_LAY_BLOCKS_HPP

#include <turncloth/cloth/lay/types.hpp>

#include <algorithm>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

constexpr bool parts_meet(const lay_part& a, const lay_part& b) {
    return a.left < b.right && b.left < a.right && a.near < b.far && b.near < a.far;
}

/// What is left of `part` round `other`: near and far of it over the whole width, then at both its sides.
inline void add_without(const lay_part& part, const lay_part& other, std::vector<lay_part>& to) {
    if (!parts_meet(part, other)) {
        to.push_back(part);
        return;
    }
    const std::int64_t near = std::max(part.near, other.near), far = std::min(part.far, other.far);
    if (part.near < near)
        to.push_back({part.left, part.right, part.near, near});
    if (far < part.far)
        to.push_back({part.left, part.right, far, part.far});
    if (part.left < other.left)
        to.push_back({part.left, other.left, near, far});
    if (other.right < part.right)
        to.push_back({other.right, part.right, near, far});
}

inline std::vector<lay_part> made_apart(const std::vector<lay_part>& parts) {
    std::vector<lay_part> apart;
    for (const lay_part& part : parts) {
        std::vector<lay_part> left{part};
        for (const lay_part& known : apart) {
            std::vector<lay_part> rest;
            for (const lay_part& l : left)
                add_without(l, known, rest);
            left = std::move(rest);
        }
        apart.insert(apart.end(), left.begin(), left.end());
    }
    return apart;
}

constexpr std::int64_t area_within(const lay_part& p, std::int64_t length) {
    return (p.right - p.left) * std::max<std::int64_t>(0, std::min(p.far, length) - p.near);
}
inline std::int64_t area_within(const std::vector<lay_part>& apart, std::int64_t length) {
    std::int64_t area = 0;
    for (const lay_part& p : apart)
        area += area_within(p, length);
    return area;
}

} // namespace turncloth::detail

#endif
