// Random cases that can be found again: whatever fails while a generator is alive says its seed and the case.
//
//   at_random::sampler random(51);
//   while (random.another_of(2000)) {              // "random case 17 of seed 51" stands with what fails in it
//       const length<inch> l = random.inches(60);
//       CHECK(up_to(l, "1/8"_in) >= l);
//   }
//   for (const int i : random.cases(2000)) { }     // the same, with the number of the case
//
// A generator is made here and nowhere else in the tests; tests/layers holds them to it.
#ifndef TURNCLOTH_TESTS_AT_RANDOM_HPP
#define TURNCLOTH_TESTS_AT_RANDOM_HPP

#include <turncloth/measure/length.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <ostream>
#include <random>

namespace at_random {

/// An engine that tells doctest, as INFO does, what it is at. doctest keeps such contexts on a stack, so it stays where
/// it was made.
template <class Engine>
class seeded : public Engine, private doctest::detail::ContextScopeBase {
public:
    explicit seeded(std::uint64_t seed) : Engine(seed), seed_(seed) {}
    seeded(const seeded&) = delete;
    seeded& operator=(const seeded&) = delete;
    ~seeded() override { destroy(); }

    /// Whether there is one more case, which then is the one told.
    bool another_of(int count) {
        case_ = case_ + 1 < count ? case_ + 1 : none;
        return case_ != none;
    }

    /// 0 to count - 1, each told while it lasts.
    auto cases(int count) { return range{this, count}; }

private:
    struct iterator {
        seeded* of;
        int i;

        int operator*() const { return of->case_ = i; }
        iterator& operator++() { return ++i, *this; }
        bool operator!=(const iterator& end) const {
            if (i == end.i)
                of->case_ = none;
            return i != end.i;
        }
    };
    struct range {
        seeded* of;
        int count;

        iterator begin() const { return {of, 0}; }
        iterator end() const { return {of, count}; }
    };

    void stringify(std::ostream* out) const override {
        if (case_ != none)
            *out << "random case " << case_ << " of seed " << seed_;
        else
            *out << "random numbers of seed " << seed_;
    }

    static constexpr int none = -1;
    std::uint64_t seed_;
    int case_ = none;
};

/// Whole numbers, and lengths such as cloth has.
class sampler : public seeded<std::mt19937_64> {
public:
    using seeded::seeded;

    std::int64_t between(std::int64_t least, std::int64_t most) {
        return std::uniform_int_distribution<std::int64_t>(least, most)(*this);
    }

    /// From 1/64 in to `most` in, on a ruler of 64ths; from 0.1 mm to `most` cm.
    turncloth::length<turncloth::inch> inches(std::int64_t most) {
        return turncloth::length_of<turncloth::inch>({between(1, most * 64), 64});
    }
    turncloth::length<turncloth::centimetre> centimetres(std::int64_t most) {
        return turncloth::length_of<turncloth::centimetre>({between(1, most * 100), 100});
    }
};

} // namespace at_random

#endif
