// What a range that computes its elements needs beside operator[] and size(): begin(), end(), empty(), front(), back().
//
//   template <...> class row : public detail::indexed<row<...>, element> { size(); operator[](k); };
//
// The iterators hold a copy of the range (a few numbers), so they outlive it, and satisfy std::random_access_iterator.
// As with an array, k is not checked.
// Written by hand because <ranges> would double the time that the whole library takes to compile.
#ifndef TURNCLOTH_MARKS_DETAIL_INDEXED_HPP
#define TURNCLOTH_MARKS_DETAIL_INDEXED_HPP

#include <compare>
#include <cstdint>
#include <iterator>

namespace turncloth::detail {

template <class Range, class Element>
class indexed_iterator {
public:
    using iterator_concept = std::random_access_iterator_tag;
    using iterator_category = std::input_iterator_tag; // elements are values, which the older category does not allow
    using value_type = Element;
    using difference_type = std::int64_t;
    using reference = Element;
    using pointer = void;

    constexpr indexed_iterator() = default;
    constexpr indexed_iterator(const Range& range, difference_type k) : range_(range), k_(k) {}

    constexpr Element operator*() const { return range_[k_]; }
    constexpr Element operator[](difference_type n) const { return range_[k_ + n]; }

    constexpr indexed_iterator& operator+=(difference_type n) { return k_ += n, *this; }
    constexpr indexed_iterator& operator-=(difference_type n) { return k_ -= n, *this; }
    constexpr indexed_iterator& operator++() { return *this += 1; }
    constexpr indexed_iterator& operator--() { return *this -= 1; }
    constexpr indexed_iterator operator++(int) {
        const indexed_iterator before = *this;
        ++k_;
        return before;
    }
    constexpr indexed_iterator operator--(int) {
        const indexed_iterator before = *this;
        --k_;
        return before;
    }

    friend constexpr indexed_iterator operator+(indexed_iterator i, difference_type n) { return i += n; }
    friend constexpr indexed_iterator operator+(difference_type n, indexed_iterator i) { return i += n; }
    friend constexpr indexed_iterator operator-(indexed_iterator i, difference_type n) { return i -= n; }
    friend constexpr difference_type operator-(const indexed_iterator& a, const indexed_iterator& b) {
        return a.k_ - b.k_;
    }
    friend constexpr bool operator==(const indexed_iterator& a, const indexed_iterator& b) { return a.k_ == b.k_; }
    friend constexpr std::strong_ordering operator<=>(const indexed_iterator& a, const indexed_iterator& b) {
        return a.k_ <=> b.k_;
    }

private:
    Range range_{};
    difference_type k_ = 0;
};

template <class Range, class Element>
class indexed {
public:
    using value_type = Element;
    using iterator = indexed_iterator<Range, Element>;

    constexpr iterator begin() const { return {self(), 0}; }
    constexpr iterator end() const { return {self(), self().size()}; }
    constexpr bool empty() const { return self().size() == 0; }
    constexpr Element front() const { return self()[0]; }
    constexpr Element back() const { return self()[self().size() - 1]; }

    friend constexpr bool operator==(const indexed&, const indexed&) = default;

private:
    constexpr const Range& self() const { return static_cast<const Range&>(*this); }
};

} // namespace turncloth::detail

#endif
