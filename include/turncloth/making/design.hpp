// The design of one thing in one size: its parts, all that is done with them, and what it is to hold.
//
//   making<U>(name)
//     .cut(part)                     adds a part; returns its handle
//     .add(laying, crease, stitching, seam_of, snip, spot, handwork or moment)     returns the operation's handle
//     .add(mouth)  .add(compartment)  .add(contents)  .add(before)
//     .lips(l)                       gaps that are open and nowhere deeper count as outside
//     .faults()                      everything wrong that can be told before it is made; empty for none
//     .require_sound()               throws making_error with all of them
//   name_of(design, cut_part)        "film strip 3", for sentences
//
//   making<inch> mat("Mat");
//   const cut_part top = mat.cut({.name = "top", .width = 12_in, .height = 9_in});
//   mat.add(stitching<inch>{.along = {.on = top, .from = edge::left, .in = at<cut_edge>(20_in)}});
//   mat.faults().front().sentence;      // "a row on top lies 20 in from its left edge, and it is cut 12 in that way"
//
// Handles are numbers, so a design may be copied, kept and moved.
#ifndef TURNCLOTH_MAKING_DESIGN_HPP
#define TURNCLOTH_MAKING_DESIGN_HPP

#include <turncloth/making/compartments.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
class making {
public:
    /// More than these, families and copies counted out, are refused; `most_turned` layings, creases, spans of seams, and
    /// clips and slits, each by itself; `most_box_areas` that seams and creases part all pieces of boxed work into. Carrying
    /// a design out takes a time that grows with the square of what is turned, some seconds for the most, with the rows and
    /// spots in proportion, and with its `gaps` (executed.hpp) a little faster than they.
    static constexpr std::int64_t most_parts = 20'000, most_rows = 200'000, most_spots = 200'000,
                                  most_compartments = 200'000, most_turned = 5000, most_box_areas = 100'000;
    /// Bytes of a step in the designer's own words; of such steps there are at most `most_turned`.
    static constexpr std::size_t most_of_handwork = 1000;

    explicit making(std::string name = {}) : name_(std::move(name)) {}

    cut_part cut(part<Unit> p) {
        parts_.push_back(std::move(p));
        return {parts_.size() - 1, 0};
    }
    operation add(laying<Unit> l) { return push(layings_, std::move(l), operation_kind::laying); }
    operation add(crease<Unit> c) { return push(creases_, std::move(c), operation_kind::crease); }
    operation add(stitching<Unit> s) { return push(rows_, std::move(s), operation_kind::stitching); }
    operation add(seam_of<Unit> s) { return push(seams_, std::move(s), operation_kind::seam); }
    operation add(snip<Unit> s) { return push(snips_, std::move(s), operation_kind::snip); }
    operation add(spot<Unit> s) { return push(spots_, std::move(s), operation_kind::spot); }
    operation add(handwork h) { return push(handworks_, std::move(h), operation_kind::handwork); }
    operation add(moment m) { return push(moments_, m, operation_kind::moment); }
    mouth_handle add(mouth<Unit> m) {
        mouths_.push_back(std::move(m));
        return {mouths_.size() - 1};
    }
    compartment_handle add(compartment<Unit> c) {
        compartments_.push_back(std::move(c));
        return {compartments_.size() - 1};
    }
    making& add(contents<Unit> c) { return contents_.push_back(std::move(c)), *this; }
    making& add(before b) { return befores_.push_back(std::move(b)), *this; }
    /// What the thing is called from now on.
    making& named(std::string name) { return name_ = std::move(name), *this; }
    making& lips(length<Unit> depth) { return lips_ = depth, *this; }
    /// Every row and seam so far that is not sewn by hand: its stitch, and how far it is sewn back over at each end.
    making& sewn_by_machine(const stitch_type& stitch, length<Unit> overrun) {
        const auto sew_all = [&](auto& all) {
            for (auto& row : all)
                if (!row.by_hand) {
                    row.stitch = stitch;
                    row.overrun = overrun;
                }
        };
        sew_all(rows_);
        sew_all(seams_);
        return *this;
    }

    const std::string& name() const { return name_; }
    const std::vector<part<Unit>>& parts() const { return parts_; }
    const std::vector<laying<Unit>>& layings() const { return layings_; }
    const std::vector<crease<Unit>>& creases() const { return creases_; }
    const std::vector<stitching<Unit>>& rows() const { return rows_; }
    const std::vector<seam_of<Unit>>& seams() const { return seams_; }
    const std::vector<snip<Unit>>& snips() const { return snips_; }
    const std::vector<spot<Unit>>& spots() const { return spots_; }
    const std::vector<handwork>& handworks() const { return handworks_; }
    const std::vector<mouth<Unit>>& mouths() const { return mouths_; }
    const std::vector<compartment<Unit>>& compartments() const { return compartments_; }
    const std::vector<contents<Unit>>& all_contents() const { return contents_; }
    const std::vector<moment>& moments() const { return moments_; }
    const std::vector<before>& befores() const { return befores_; }
    length<Unit> lips() const { return lips_; }

    bool has(const cut_part& p) const {
        return p.index < parts_.size() && p.copy >= 0 && p.copy < parts_[p.index].count;
    }
    std::size_t count_of(operation_kind k) const {
        switch (k) {
        case operation_kind::laying:
            return layings_.size();
        case operation_kind::crease:
            return creases_.size();
        case operation_kind::stitching:
            return rows_.size();
        case operation_kind::seam:
            return seams_.size();
        case operation_kind::snip:
            return snips_.size();
        case operation_kind::spot:
            return spots_.size();
        case operation_kind::handwork:
            return handworks_.size();
        case operation_kind::moment:
            return moments_.size();
        case operation_kind::opening:
            break;
        }
        return mouths_.size();
    }
    bool has(const operation& o) const { return o.index < count_of(o.kind); }

    std::vector<making_fault> faults() const; // in detail/check.hpp
    void require_sound() const {
        if (std::vector<making_fault> found = faults(); !found.empty())
            detail::refuse<making_error>(std::move(found));
    }

    friend bool operator==(const making&, const making&) = default;

private:
    template <class T>
    operation push(std::vector<T>& list, T item, operation_kind kind) {
        list.push_back(std::move(item));
        return {kind, list.size() - 1};
    }

    std::string name_;
    std::vector<part<Unit>> parts_;
    std::vector<laying<Unit>> layings_;
    std::vector<crease<Unit>> creases_;
    std::vector<stitching<Unit>> rows_;
    std::vector<seam_of<Unit>> seams_;
    std::vector<snip<Unit>> snips_;
    std::vector<spot<Unit>> spots_;
    std::vector<handwork> handworks_;
    std::vector<mouth<Unit>> mouths_;
    std::vector<compartment<Unit>> compartments_;
    std::vector<contents<Unit>> contents_;
    std::vector<moment> moments_;
    std::vector<before> befores_;
    length<Unit> lips_{};
};

/// "film strip 3" of several, "backing" of one; copies are counted from 1, as people count.
template <length_unit Unit>
std::string name_of(const making<Unit>& design, const cut_part& p) {
    if (p.index >= design.parts().size())
        return "a part that was not added";
    const part<Unit>& found = design.parts()[p.index];
    return found.count == 1 && p.copy == 0 ? found.name : found.name + " " + std::to_string(p.copy + 1);
}

TURNCLOTH_ONCE(class making<inch>);
TURNCLOTH_ONCE(class making<centimetre>);

} // namespace turncloth

#include <turncloth/making/detail/check.hpp>

#endif
