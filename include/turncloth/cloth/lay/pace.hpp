// How much of its effort a search has spent, and whether it goes on: asked at even steps, whichever part is at work.
//
//   class detail::lay_pace        asks at even steps; stopped()
//   class detail::lay_allowance   the steps that one part may spend: allows(steps)
//
//   detail::lay_pace pace{1'000'000, [&](std::uint64_t spent) { return spent < enough; }};
//   part.run({250'000, pace, already_spent});
//
// Steps are of work and not of time, so that whoever stops at the same step gets the same lay.
#ifndef TURNCLOTH_CLOTH_LAY_PACE_HPP
#define TURNCLOTH_CLOTH_LAY_PACE_HPP

#include <cstdint>
#include <functional>
#include <limits>
#include <utility>

namespace turncloth::detail {

class lay_pace {
public:
    /// Whether to go on, when so many steps are spent.
    using asking = std::function<bool(std::uint64_t)>;

    /// Asks a hundred times, or never where there is nobody to ask.
    lay_pace(std::uint64_t effort, asking ask)
        : ask_(std::move(ask)), effort_(effort), apart_(effort / 100 + 1), next_(ask_ ? apart_ : never) {}

    bool goes_on(std::uint64_t spent) {
        if (spent >= next_ && spent < effort_ && !stopped_) {
            next_ = (spent / apart_ + 1) * apart_;
            stopped_ = !ask_(spent);
        }
        return !stopped_;
    }
    bool stopped() const noexcept { return stopped_; }

private:
    static constexpr std::uint64_t never = std::numeric_limits<std::uint64_t>::max();

    asking ask_;
    std::uint64_t effort_, apart_, next_;
    bool stopped_ = false;
};

class lay_allowance {
public:
    /// So many steps, at nobody's pace.
    lay_allowance(std::uint64_t steps = 0) noexcept : last_(steps) {} // NOLINT(google-explicit-constructor)
    /// So many, where the other parts have spent what they have.
    lay_allowance(std::uint64_t steps, lay_pace& pace, std::uint64_t of_others) noexcept
        : last_(steps), of_others_(of_others), pace_(&pace) {}

    /// As many for a part that has spent some of its own.
    lay_allowance after(std::uint64_t spent) const noexcept {
        lay_allowance later = *this;
        later.last_ += spent;
        return later;
    }

    /// Whether the part goes on that has spent so many steps.
    bool allows(std::uint64_t spent) const {
        return spent < last_ && (pace_ == nullptr || pace_->goes_on(of_others_ + spent));
    }

private:
    std::uint64_t last_;
    std::uint64_t of_others_ = 0;
    lay_pace* pace_ = nullptr;
};

} // namespace turncloth::detail

#endif
