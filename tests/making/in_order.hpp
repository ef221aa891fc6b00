// The steps of a design, asked for by operation: whether these come one after another.
//
//   things::order made(design);  made.comes({laid, sewn, turned});
#ifndef TURNCLOTH_TESTS_MAKING_IN_ORDER_HPP
#define TURNCLOTH_TESTS_MAKING_IN_ORDER_HPP

#include <turncloth/making/order.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <vector>

namespace things {

using namespace turncloth;

class order {
public:
    explicit order(const making<inch>& d) : steps_(steps_of(d)) {}
    long of(const operation& o) const {
        const auto found =
            std::find_if(steps_.begin(), steps_.end(), [&](const making_step& s) { return s.what == o; });
        REQUIRE(found != steps_.end());
        return found - steps_.begin();
    }
    bool comes(const std::vector<operation>& in_turn) const {
        for (std::size_t i = 0; i + 1 < in_turn.size(); ++i)
            if (of(in_turn[i]) >= of(in_turn[i + 1]))
                return false;
        return true;
    }
    bool has(const operation& o) const {
        return std::any_of(steps_.begin(), steps_.end(), [&](const making_step& s) { return s.what == o; });
    }

private:
    std::vector<making_step> steps_;
};

inline operation crease_no(std::size_t i) { return {operation_kind::crease, i}; }
inline operation row_no(std::size_t i) { return {operation_kind::stitching, i}; }
inline operation laying_no(std::size_t i) { return {operation_kind::laying, i}; }
inline operation snip_no(std::size_t i) { return {operation_kind::snip, i}; }

} // namespace things

#endif
