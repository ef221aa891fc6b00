// Which parts hold together by what has been sewn: one to another, and that to a third.
//
//   class held(count)      .join(a, b)      .together(a, b)
#ifndef TURNCLOTH_MAKING_DETAIL_HELD_HPP
#define TURNCLOTH_MAKING_DETAIL_HELD_HPP

#include <cstddef>
#include <numeric>
#include <vector>

namespace turncloth::detail {

class held {
public:
    explicit held(std::size_t parts) : to_(parts) { std::iota(to_.begin(), to_.end(), std::size_t{0}); }

    void join(std::size_t a, std::size_t b) { to_[last_of(a)] = last_of(b); }
    bool together(std::size_t a, std::size_t b) { return last_of(a) == last_of(b); }

private:
    /// The ways to it are halved as they are walked, so that long ones do not stay long.
    std::size_t last_of(std::size_t part) {
        while (to_[part] != part)
            part = to_[part] = to_[to_[part]];
        return part;
    }

    std::vector<std::size_t> to_;
};

} // namespace turncloth::detail

#endif
