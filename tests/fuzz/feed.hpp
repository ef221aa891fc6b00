// What the fuzz targets share: values made of a fuzzer's bytes, and what must hold.
//
//   feed bytes(data, size);         .length<U>() .finish<U>() .size<U>() .text() ... and what FuzzedDataProvider offers
//   must(held, "what")              stops the program where it does not hold
//   refused([&] { ... })            runs it: whether it threw a typed error; any other exception ends the program
#ifndef TURNCLOTH_TESTS_FUZZ_FEED_HPP
#define TURNCLOTH_TESTS_FUZZ_FEED_HPP

#include <turncloth.hpp>

#include <fuzzer/FuzzedDataProvider.h>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace fuzzing {

using namespace turncloth;

inline void must(bool held, const char* what) {
    if (held)
        return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

template <class Work>
bool refused(Work&& work) {
    try {
        work();
        return false;
    } catch (const error& e) {
        must(e.what()[0] != '\0', "a refusal says why");
        return true;
    }
}

class feed : public FuzzedDataProvider {
public:
    using FuzzedDataProvider::FuzzedDataProvider;

    bool one_in(int n) { return ConsumeIntegralInRange(0, n - 1) == n - 1; }
    std::int64_t between(std::int64_t low, std::int64_t high) { return ConsumeIntegralInRange(low, high); }

    /// Mostly what a ruler shows; at times awkward, at times anything that 64 bits hold.
    fraction number() {
        static constexpr std::int64_t parts[] = {1, 2, 4, 8, 16, 32, 10, 3};
        const int kind = ConsumeIntegralInRange(0, 31);
        if (kind < 26)
            return {between(0, 4096), PickValueInArray(parts)};
        if (kind < 28)
            return {between(-64, 64), PickValueInArray(parts)};
        if (kind < 30)
            return {between(-100'000, 100'000), between(1, 10'000)};
        const auto below = ConsumeIntegral<std::int64_t>();
        return {ConsumeIntegral<std::int32_t>(), below == 0 || below == INT64_MIN ? 1 : below};
    }
    template <length_unit Unit>
    turncloth::length<Unit> length() {
        return length_of<Unit>(number());
    }
    template <length_unit Unit>
    finished_size<Unit> size() {
        const auto width = length<Unit>();
        return {width, length<Unit>()};
    }
    /// Any bytes but zero, which would cut short what an error says.
    std::string text(std::size_t most = 12) {
        std::string any = ConsumeRandomLengthString(most);
        std::replace(any.begin(), any.end(), '\0', '?');
        return any;
    }
    edge any_edge() { return PickValueInArray({edge::top, edge::right, edge::bottom, edge::left}); }

    template <length_unit Unit>
    turncloth::finish<Unit> finish() {
        const auto a = length<Unit>(), b = length<Unit>(), c = length<Unit>();
        switch (ConsumeIntegralInRange(0, 12)) {
        case 0:
            return seam(a);
        case 1:
            return single_turned_hem(a, b);
        case 2:
            return double_turned_hem(a, b, c, length<Unit>());
        case 3:
            return heading(a, b, c);
        case 4:
            return casing(a, b, c, length<Unit>());
        case 5:
            return self_binding(a, b, c);
        case 6:
            return separate_binding(a);
        case 7:
            return french_seam(a, b, c);
        case 8:
            return felled_over(a, b, c);
        case 9:
            return felled_under(a);
        case 10:
            return lapped_over(a, b);
        case 11:
            return lapped_under(a, b);
        default:
            return {};
        }
    }
    template <length_unit Unit>
    turncloth::edges<Unit> edges() {
        if (ConsumeBool())
            return all_round(finish<Unit>());
        const auto top = finish<Unit>(), right = finish<Unit>(), bottom = finish<Unit>();
        return {top, right, bottom, finish<Unit>()};
    }
};

} // namespace fuzzing

#endif
