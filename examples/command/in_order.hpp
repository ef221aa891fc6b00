// Work shared among threads, its results taken in order.
//
//   in_order(count, jobs, make, take)     make(i) for each i below count, by so many threads; take(i, result) in this
//                                         thread, in order, so that what it writes is the same by one thread and by many
//
//   in_order(rows.size(), 4, [&](std::size_t i) { return worked_out(rows[i]); }, [&](std::size_t i, auto r) { print(r); });
//
// Nobody works further ahead of what is taken than `ahead` results for each thread, so that memory stays bounded.
#ifndef TURNCLOTH_EXAMPLES_COMMAND_IN_ORDER_HPP
#define TURNCLOTH_EXAMPLES_COMMAND_IN_ORDER_HPP

#include <condition_variable>
#include <cstddef>
#include <exception>
#include <future>
#include <mutex>
#include <optional>
#include <utility>
#include <vector>

namespace allotment {

namespace detail {

template <class Make, class Result>
class ordered_work {
public:
    ordered_work(std::size_t count, std::size_t jobs, Make& make)
        : make_(make), end_(count), room_(jobs * ahead), slots_(room_) {
        for (std::size_t i = 0; i < jobs; ++i)
            threads_.push_back(std::async(std::launch::async, [this] { work(); }));
    }
    /// No more is begun; that the threads end is waited for where their futures are destroyed.
    ~ordered_work() {
        const std::lock_guard lock(guard_);
        end_ = 0;
        changed_.notify_all();
    }
    ordered_work(const ordered_work&) = delete;
    ordered_work& operator=(const ordered_work&) = delete;

    Result next() {
        std::unique_lock lock(guard_);
        slot& s = slots_[taken_ % room_];
        changed_.wait(lock, [&] { return s.result || s.failed; });
        slot done = std::exchange(s, {});
        ++taken_;
        changed_.notify_all();
        if (done.failed)
            std::rethrow_exception(done.failed);
        return std::move(*done.result);
    }

private:
    static constexpr std::size_t ahead = 4;
    struct slot {
        std::optional<Result> result{};
        std::exception_ptr failed{};
    };

    void work() {
        std::unique_lock lock(guard_);
        for (;;) {
            changed_.wait(lock, [&] { return begun_ >= end_ || begun_ < taken_ + room_; });
            if (begun_ >= end_)
                return;
            const std::size_t i = begun_++;
            lock.unlock();
            slot made = made_of(i);
            lock.lock();
            slots_[i % room_] = std::move(made);
            changed_.notify_all();
        }
    }
    slot made_of(std::size_t i) {
        try {
            return {make_(i), {}};
        } catch (...) {
            return {{}, std::current_exception()};
        }
    }

    Make& make_;
    std::size_t end_, room_, begun_ = 0, taken_ = 0;
    std::vector<slot> slots_;
    std::mutex guard_;
    std::condition_variable changed_;
    std::vector<std::future<void>> threads_; // last, so that it goes first: they use all of the above
};

} // namespace detail

/// Throws what make or take throws, once all threads have ended.
template <class Make, class Take>
void in_order(std::size_t count, std::size_t jobs, Make make, Take take) {
    if (jobs <= 1) {
        for (std::size_t i = 0; i < count; ++i)
            take(i, make(i));
        return;
    }
    detail::ordered_work<Make, decltype(make(0))> work(count, jobs, make);
    for (std::size_t i = 0; i < count; ++i)
        take(i, work.next());
}

} // namespace allotment

#endif
