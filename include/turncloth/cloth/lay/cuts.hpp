// The order in which to cut a lay whose cuts go from edge to edge.
//
//   std::vector<lay_cut> cutting_order(places, width, length)
//
//   for (const lay_cut& cut : cutting_order(found.places, 44, found.length)) show(cut);
//
// A cut that parts pieces without touching one can always be made first: whatever cuts would have parted the pieces
// still do, each shortened to the part of it in hand. So at every stage all cuts across that meet no piece are made,
// then all along, by turns. A part with one piece in it is trimmed to the piece.
#ifndef TURNCLOTH_CLOTH_LAY_CUTS_HPP
#define TURNCLOTH_CLOTH_LAY_CUTS_HPP

#include <turncloth/cloth/lay/types.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace turncloth {

namespace detail {

/// A part of the cloth in hand, and the pieces in it.
struct cloth_part {
    std::int64_t left, right, near, far;
    std::span<lay_place> places;
};

class cutter {
public:
    explicit cutter(std::vector<lay_cut>& cuts) : cuts_(&cuts) {}

    /// Cuts up the part. Returns false if some of it cannot be parted from edge to edge.
    bool cut(const cloth_part& part, runs direction) {
        if (part.places.empty())
            return true;
        if (part.places.size() == 1)
            return trim(part);
        const std::vector<cloth_part> bands = parted(part, direction);
        if (bands.size() > 1)
            return cut_all(bands, other(direction));
        const std::vector<cloth_part> others = parted(part, other(direction));
        return others.size() > 1 && cut_all(others, direction);
    }

private:
    static runs other(runs direction) { return direction == runs::across ? runs::along : runs::across; }

    bool cut_all(const std::vector<cloth_part>& bands, runs direction) {
        for (const cloth_part& band : bands)
            if (!cut(band, direction))
                return false;
        return true;
    }

    /// Parts it by every cut in one direction that meets no piece; no cut is made unless there are two bands at least.
    std::vector<cloth_part> parted(const cloth_part& part, runs direction) {
        const bool across = direction == runs::across;
        const auto start = [&](const lay_place& p) { return across ? p.y : p.x; };
        const auto end = [&](const lay_place& p) { return across ? p.y + p.length : p.x + p.width; };
        std::sort(part.places.begin(), part.places.end(),
                  [&](const lay_place& a, const lay_place& b) { return start(a) < start(b); });
        std::vector<cloth_part> bands;
        std::size_t first = 0;
        std::int64_t from = across ? part.near : part.left;
        std::int64_t reach = 0;
        for (std::size_t i = 0; i <= part.places.size(); ++i) {
            const bool last = i == part.places.size();
            if (i > 0 && (last || start(part.places[i]) >= reach)) {
                cloth_part band = part;
                (across ? band.near : band.left) = from;
                (across ? band.far : band.right) = reach;
                band.places = part.places.subspan(first, i - first);
                bands.push_back(band);
                first = i;
                from = reach;
            }
            if (!last)
                reach = first == i ? end(part.places[i]) : std::max(reach, end(part.places[i]));
        }
        if (bands.size() > 1)
            for (const cloth_part& band : bands)
                make(direction, across ? band.far : band.right, part);
        return bands;
    }

    bool trim(cloth_part part) {
        const lay_place& piece = part.places.front();
        make(runs::across, piece.y, part);
        part.near = piece.y;
        make(runs::across, piece.y + piece.length, part);
        part.far = piece.y + piece.length;
        make(runs::along, piece.x, part);
        part.left = piece.x;
        make(runs::along, piece.x + piece.width, part);
        return true;
    }

    /// Notes a cut through the part, unless it would run along the part's own edge.
    void make(runs direction, std::int64_t at, const cloth_part& part) {
        const bool across = direction == runs::across;
        if (at <= (across ? part.near : part.left) || at >= (across ? part.far : part.right))
            return;
        cuts_->push_back({direction, at, across ? part.left : part.near, across ? part.right : part.far});
    }

    std::vector<lay_cut>* cuts_;
};

} // namespace detail

/// The cuts, in order, that part all `places` from a cloth of `width` by `length`; each goes from edge to edge of the
/// part it cuts. Empty if the pieces cannot be parted so, or if no cut is needed.
inline std::vector<lay_cut> cutting_order(std::vector<lay_place> places, std::int64_t width, std::int64_t length) {
    std::vector<lay_cut> cuts;
    detail::cutter hand(cuts);
    if (!hand.cut({0, width, 0, length, places}, runs::across))
        cuts.clear();
    return cuts;
}

} // namespace turncloth

#endif
