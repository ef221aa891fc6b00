// Which things are one by what joins them: one to another, and that to a third. Parts by what is sewn, gaps by what is open.
//
//   class held(count)      .join(a, b)      .together(a, b)      .lowest_with_each()
#ifndef TURNCLOTH_MAKING_DETAIL_HELD_HPP
#define TURNCLOTH_MAKING_DETAIL_HELD_HPP

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <utility>
#include <vector>

namespace turncloth::detail {

class held {
public:
    explicit held(std::size_t count) : to_(count) { std::iota(to_.begin(), to_.end(), std::size_t{0}); }

    void join(std::size_t a, std::size_t b) {
        if (to_[a] == to_[b])
            return;
        a = halved(a);
        b = halved(b);
        to_[std::max(a, b)] = std::min(a, b);
    }
    bool together(std::size_t a, std::size_t b) { return halved(a) == halved(b); }
    /// For each the lowest of all that are one with it.
    std::vector<std::size_t> lowest_with_each() && {
        for (std::size_t& to : to_) // from the lowest on, as none is above what it leads to
            to = to_[to];
        return std::move(to_);
    }

private:
    /// The ways to it are halved as they are walked, so that long ones do not stay long.
    std::size_t halved(std::size_t a) {
        while (to_[a] != a)
            a = to_[a] = to_[to_[a]];
        return a;
    }

    std::vector<std::size_t> to_;
};

} // namespace turncloth::detail

#endif
