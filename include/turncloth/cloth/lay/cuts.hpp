// The order in which to cut a lay whose cuts go from edge to edge.
//
//   std::vector<lay_cut> cutting_order(places, width, length)
//
//   for (const lay_cut& cut : cutting_order(found.places, 44, found.length)) show(cut);
//
// A cut that parts pieces without touching one can always be made first: whatever cuts would have parted the pieces
// still do, each shortened to the part of it in hand. So at every stage all cuts across that meet no piece are made,
// then all along, by turns. A part with one piece in it is trimmed to the piece. Each cut takes the nearest or leftmost
// band off the part in hand, so that what it is measured from is still there.
#ifndef TURNCLOTH_CLOTH_LAY_CUTS_HPP
#define TURNCLOTH_CLOTH_LAY_CUTS_HPP

#include <turncloth/cloth/lay/types.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace turncloth::detail {

/// A part of the cloth in hand, and the pieces in it.
struct part_in_hand {
    lay_part where;
    part_origin origin;
    std::span<lay_place> places;
};

class cutter {
public:
    explicit cutter(std::vector<lay_cut>& cuts) : cuts_(&cuts) {}

    /// Cuts up the part. Returns false if some of it cannot be parted from edge to edge.
    bool cut(const part_in_hand& part, cut_direction direction) {
        if (part.places.empty())
            return true;
        if (part.places.size() == 1)
            return trim(part);
        const std::vector<part_in_hand> bands = parted(part, direction);
        if (bands.size() > 1)
            return cut_all(bands, other(direction));
        const std::vector<part_in_hand> others = parted(part, other(direction));
        return others.size() > 1 && cut_all(others, direction);
    }

private:
    static cut_direction other(cut_direction direction) {
        return direction == cut_direction::across ? cut_direction::along : cut_direction::across;
    }

    bool cut_all(const std::vector<part_in_hand>& bands, cut_direction direction) {
        for (const part_in_hand& band : bands)
            if (!cut(band, direction))
                return false;
        return true;
    }

    /// Parts it by every cut in one direction that meets no piece; no cut is made unless there are two bands at least.
    std::vector<part_in_hand> parted(part_in_hand part, cut_direction direction) {
        const bool across = direction == cut_direction::across;
        const auto start = [&](const lay_place& p) { return across ? p.y : p.x; };
        const auto end = [&](const lay_place& p) { return across ? p.y + p.length : p.x + p.width; };
        std::sort(part.places.begin(), part.places.end(),
                  [&](const lay_place& a, const lay_place& b) { return start(a) < start(b); });
        std::vector<part_in_hand> bands;
        const auto places = part.places;
        std::size_t first = 0;
        std::int64_t reach = end(places.front());
        for (std::size_t i = 1; i <= places.size(); ++i) {
            if (i < places.size() && start(places[i]) < reach) {
                reach = std::max(reach, end(places[i]));
                continue;
            }
            if (first == 0 && i == places.size())
                return {part};
            part.places = places.subspan(first, i - first);
            bands.push_back(take_off(direction, reach, part));
            first = i;
            if (i < places.size())
                reach = end(places[i]);
        }
        return bands;
    }

    bool trim(part_in_hand part) {
        const lay_place& piece = part.places.front();
        take_off(cut_direction::across, piece.y, part);
        part = take_off(cut_direction::across, piece.y + piece.length, part);
        take_off(cut_direction::along, piece.x, part);
        take_off(cut_direction::along, piece.x + piece.width, part);
        return true;
    }

    /// Notes the cut, unless it would run along the part's own edge; the part becomes the rest of it.
    part_in_hand take_off(cut_direction direction, std::int64_t at, part_in_hand& part) {
        const bool across = direction == cut_direction::across;
        std::int64_t& start = across ? part.where.near : part.where.left;
        part_in_hand off = part;
        std::int64_t& end = across ? off.where.far : off.where.right;
        if (at > start && at < end) {
            cuts_->push_back({direction, at, part.where, part.origin});
            off.origin = {cuts_->size(), true};
            part.origin = {cuts_->size(), false};
        }
        end = std::min(at, end);
        start = std::max(at, start);
        return off;
    }

    std::vector<lay_cut>* cuts_;
};

/// The cuts, in order, that part all `places` from a cloth of `width` by `length`; each goes from edge to edge of the
/// part it cuts. Empty if the pieces cannot be parted so, or if no cut is needed.
inline std::vector<lay_cut> cutting_order(std::vector<lay_place> places, std::int64_t width, std::int64_t length) {
    std::vector<lay_cut> cuts;
    cutter hand(cuts);
    if (!hand.cut({{0, width, 0, length}, {}, places}, cut_direction::across))
        cuts.clear();
    return cuts;
}

} // namespace turncloth::detail

#endif
