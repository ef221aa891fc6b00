// What is cut, and the chalk lines on it.
//
//   cloth<U>  part<U>                       what it is cut from; its cut size, and how many are cut alike
//   cut_part                                a handle of what is cut: p[k] is the k-th copy
//   face                                    the right or the wrong side of cloth
//   chalk_line<U>{on, from, in}             a line on one part, parallel to one of its cut edges; begins, ends
//   corner_line<U>{on, upright, level, leg} a line at 45 degrees across a corner
//   apart(a, b)                             how far apart two lines are, of one part and from one edge
//   making_error                            what cannot be made, with every fault found
//
//   const chalk_line<inch> hem{.on = lining, .from = edge::top, .in = at<cut_edge>("1 1/8"_in)};
//   apart(hem, {.on = lining, .from = edge::top, .in = at<cut_edge>("3/8"_in)}) == "3/4"_in;
//
// A line knows its part and its edge, so that it cannot be taken for another's: a place from a finished edge does not
// convert to one from the cut edge, and two lines of different parts or edges have no distance.
#ifndef TURNCLOTH_MAKING_PARTS_HPP
#define TURNCLOTH_MAKING_PARTS_HPP

#include <turncloth/measure/place.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/panel/panel.hpp>

#include <compare>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// One thing that is wrong, as a sentence and as data.
struct making_fault {
    std::string sentence;
    refusal facts;

    friend bool operator==(const making_fault&, const making_fault&) = default;
};

/// A design that cannot be made: what() has every fault, one after another; facts() are those of the first.
class making_error : public error {
public:
    using error::error;
    explicit making_error(std::vector<making_fault> faults)
        : error(joined(faults), faults.empty() ? refusal{fault::unsuitable, "a design"} : faults.front().facts),
          faults_(std::move(faults)) {}

    const std::vector<making_fault>& faults() const noexcept { return faults_; }

private:
    static std::string joined(const std::vector<making_fault>& faults) {
        std::string all;
        for (const making_fault& f : faults)
            all.append(all.empty() ? "" : "; ").append(f.sentence);
        return all;
    }
    std::vector<making_fault> faults_;
};

/// The two sides of cloth.
enum class face : unsigned char { right, wrong };

constexpr face opposite(face f) { return f == face::right ? face::wrong : face::right; }

template <length_unit Unit>
struct cloth {
    std::string name{};
    length<Unit> thickness{};
    bool two_sided = false; ///< either side may be seen
    bool frays = true;
    bool film = false; ///< melts under an iron and keeps every pin hole
    bool one_way = false;
    length<Unit> sold_width{}, sold_by{}; ///< nothing where it is not bought by the length

    friend bool operator==(const cloth&, const cloth&) = default;
};

/// A rectangle as it is cut. Its finish is not a property of it: it is what is done to it.
template <length_unit Unit>
struct part {
    std::string name{};
    turncloth::cloth<Unit> cloth{};
    length<Unit> width{}, height{}; ///< as cut
    std::int64_t count = 1;

    friend bool operator==(const part&, const part&) = default;
};

/// What add() gives for a part, and what every operation names it by.
struct cut_part {
    static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
    std::size_t index = none;
    std::int64_t copy = 0;

    /// The k-th of several cut alike, from 0.
    constexpr cut_part operator[](std::int64_t k) const { return {index, k}; }
    constexpr bool is_given() const { return index != none; }
    friend constexpr bool operator==(const cut_part&, const cut_part&) = default;
    friend constexpr auto operator<=>(const cut_part& a, const cut_part& b) {
        return a.index != b.index ? a.index <=> b.index : a.copy <=> b.copy;
    }
};

/// Runs along an edge, `in` from it. It begins and ends at distances from the part's cut left edge where it is level,
/// from its cut top edge where it is upright; where none is given, at the ends of the cloth as it lies at that moment.
template <length_unit Unit>
struct chalk_line {
    cut_part on{};
    edge from = edge::top;
    place<cut_edge, Unit> in{};
    std::optional<length<Unit>> begins{}, ends{};

    constexpr bool is_level() const { return turncloth::is_level(from); }
    /// From the part's left or top cut edge.
    constexpr length<Unit> begin() const { return begins.value_or(length<Unit>()); }
    constexpr length<Unit> end_on(const part<Unit>& p) const { return ends.value_or(is_level() ? p.width : p.height); }
    friend constexpr bool operator==(const chalk_line&, const chalk_line&) = default;
};

/// Meets both edges of a corner `leg` from it.
template <length_unit Unit>
struct corner_line {
    cut_part on{};
    edge upright = edge::left; ///< left or right
    edge level = edge::top;    ///< top or bottom
    length<Unit> leg{};
    friend constexpr bool operator==(const corner_line&, const corner_line&) = default;
};

/// From `a` further in to `b`; below zero where b is nearer to the edge. Throws making_error (fault::disagree) for
/// lines of two parts, or from two edges: re-measure one of them first.
template <length_unit Unit>
constexpr length<Unit> apart(const chalk_line<Unit>& a, const chalk_line<Unit>& b) {
    if (a.on != b.on)
        detail::refuse<making_error>("two lines on different parts have no distance from each other",
                                     refusal{.kind = fault::disagree, .what = "the part of a chalk line"});
    if (a.from != b.from)
        detail::refuse<making_error>("two lines have a distance where both are measured from one edge: they were from "
                                     "the " +
                                         std::string(name_of(a.from)) + " and the " + std::string(name_of(b.from)),
                                     refusal{.kind = fault::disagree,
                                             .what = "the edge of a chalk line",
                                             .where = std::string(name_of(b.from))});
    return b.in - a.in;
}

} // namespace turncloth

#endif
