// Whether a lay may be cut as it stands: a check that shares nothing with the code that makes lays. Its front with
// units is testing/lay_faults.hpp.
//
//   enum class lay_fault_kind            what may be wrong
//   struct lay_fault                     kind, piece, what(name = {})
//   std::vector<lay_fault> detail::faults_of(found, pieces, cloth)    none when all is well
//
//   assert(detail::faults_of(found, pieces, cloth).empty());
//
// It looks at: every piece there as often as wanted, its size and turn, the edges of the cloth, overlaps and gaps, the
// repeat, flaws, what stays where it lies, the length said to be used, the bound, whether the pieces can be parted in the way asked for, and whether the
// cuts listed, made in order, each from edge to edge of the part in hand, leave exactly the pieces.
#ifndef TURNCLOTH_CLOTH_LAY_CHECK_HPP
#define TURNCLOTH_CLOTH_LAY_CHECK_HPP

#include <turncloth/cloth/lay/types.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth {

enum class lay_fault_kind : unsigned char {
    no_such_piece,
    wrong_count,
    wrong_size,
    turned_against_grain,
    turned_apart,
    off_the_cloth,
    overlap,
    too_close,
    off_the_repeat,
    off_the_edge,
    on_a_flaw,
    near_a_flaw,
    moved,
    wrong_length,
    bound_above_length,
    not_edge_to_edge,
    not_in_strips,
    wrong_cuts
};

/// One thing wrong; `piece` is an index in the list of pieces, where one is to blame.
struct lay_fault {
    lay_fault_kind kind;
    std::optional<std::size_t> piece{};

    /// The name given stands for the piece, if it is not empty.
    std::string what(const std::string& name = {}) const {
        static constexpr const char* said[] = {"is not in the list",
                                               "is not laid as often as wanted",
                                               "is laid in another size",
                                               "is turned against its grain",
                                               "is not turned as those that turn together with it",
                                               "leaves the cloth",
                                               "overlaps another",
                                               "is nearer to another than the gap",
                                               "does not start on the repeat",
                                               "does not lie against the edge",
                                               "lies on a flaw",
                                               "is nearer to a flaw than the gap",
                                               "does not stay where it lies",
                                               "the length is not where the last piece ends",
                                               "the bound is above the length",
                                               "the pieces cannot be parted from edge to edge",
                                               "the pieces cannot be cut in strips",
                                               "the cuts do not part the pieces"};
        std::string sentence = said[static_cast<std::size_t>(kind)];
        if (!piece)
            return sentence;
        return (name.empty() ? "piece " + std::to_string(*piece + 1) : name) + " " + sentence;
    }
};

namespace detail {

class lay_checker {
public:
    lay_checker(const whole_lay& found, const std::vector<lay_piece>& pieces, const lay_cloth& cloth)
        : found_(found), pieces_(pieces), cloth_(cloth) {}

    std::vector<lay_fault> faults() {
        check_pieces();
        if (!faults_.empty())
            return faults_; // what follows looks pieces up
        check_apart(0, lay_fault_kind::overlap);
        if (faults_.empty() && cloth_.gap > 0)
            check_apart(cloth_.gap, lay_fault_kind::too_close);
        check_length();
        if (faults_.empty() && cloth_.cutting != cutting::free)
            check_cutting();
        return faults_;
    }

private:
    void fault(lay_fault_kind kind, std::optional<std::size_t> piece = {}) { faults_.push_back({kind, piece}); }

    void check_pieces() {
        std::vector<std::int64_t> count(pieces_.size(), 0);
        std::optional<bool> together;
        for (const lay_place& place : found_.places) {
            if (place.piece >= pieces_.size()) {
                fault(lay_fault_kind::no_such_piece, place.piece);
                continue;
            }
            ++count[place.piece];
            check_place(place, pieces_[place.piece]);
            if (pieces_[place.piece].grain == grain::turn_together && place.turned != together.value_or(place.turned))
                fault(lay_fault_kind::turned_apart, place.piece);
            else if (pieces_[place.piece].grain == grain::turn_together)
                together = place.turned;
        }
        for (std::size_t i = 0; i < pieces_.size(); ++i)
            if (count[i] != pieces_[i].quantity)
                fault(lay_fault_kind::wrong_count, i);
    }

    void check_place(const lay_place& place, const lay_piece& piece) {
        const std::int64_t width = place.turned ? piece.length : piece.width;
        const std::int64_t length = place.turned ? piece.width : piece.length;
        if (place.width != width || place.length != length)
            fault(lay_fault_kind::wrong_size, place.piece);
        if (place.turned && piece.grain == grain::fixed)
            fault(lay_fault_kind::turned_against_grain, place.piece);
        const bool inside = place.x >= 0 && place.y >= 0 && place.width <= cloth_.width - place.x &&
                            place.length <= found_.length - place.y;
        if (!inside)
            fault(lay_fault_kind::off_the_cloth, place.piece);
        if (piece.at_edge && place.x != 0)
            fault(lay_fault_kind::off_the_edge, place.piece);
        if (within_repeat(place.x, cloth_.repeat_across) != within_repeat(piece.match_across, cloth_.repeat_across) ||
            within_repeat(place.y, cloth_.repeat_along) != within_repeat(piece.match_along, cloth_.repeat_along))
            fault(lay_fault_kind::off_the_repeat, place.piece);
        if (piece.stays &&
            std::tie(place.x, place.y, place.turned) != std::tie(piece.stays->x, piece.stays->y, piece.stays->turned))
            fault(lay_fault_kind::moved, place.piece);
        check_flaws(place);
    }

    void check_flaws(const lay_place& place) {
        const auto within = [&](const lay_part& flaw, std::int64_t between) {
            return place.x < flaw.right + between && flaw.left < place.x + place.width + between &&
                   place.y < flaw.far + between && flaw.near < place.y + place.length + between;
        };
        for (const lay_part& flaw : cloth_.flaws)
            if (within(flaw, 0))
                fault(lay_fault_kind::on_a_flaw, place.piece);
            else if (within(flaw, cloth_.gap))
                fault(lay_fault_kind::near_a_flaw, place.piece);
    }

    /// How far into the repeat, from 0; always 0 where there is none to match.
    static std::int64_t within_repeat(std::int64_t at, std::int64_t repeat) {
        if (repeat == 0)
            return 0;
        const std::int64_t rest = at % repeat;
        return rest < 0 ? rest + repeat : rest;
    }

    /// Sweeps along the cloth. The pieces met at one y, widened by the gap between them, must not overlap across; in
    /// order of their left edges it is enough to look at the neighbours of a piece as it comes in.
    void check_apart(std::int64_t between, lay_fault_kind kind) {
        struct event {
            std::int64_t y;
            bool enters;
            const lay_place* place;
        };
        std::vector<event> events;
        for (const lay_place& place : found_.places) {
            events.push_back({place.y, true, &place});
            events.push_back({place.y + place.length + between, false, &place});
        }
        std::sort(events.begin(), events.end(),
                  [](const event& a, const event& b) { return std::tuple(a.y, a.enters) < std::tuple(b.y, b.enters); });
        std::map<std::int64_t, const lay_place*> met; // by left edge
        for (const event& now : events) {
            const auto same = met.find(now.place->x);
            if (!now.enters) {
                if (same != met.end() && same->second == now.place)
                    met.erase(same);
                continue;
            }
            const auto after = met.lower_bound(now.place->x);
            const bool clear_after = after == met.end() || after->first >= now.place->x + now.place->width + between;
            const bool clear_before =
                after == met.begin() ||
                std::prev(after)->first + std::prev(after)->second->width + between <= now.place->x;
            if (!clear_after || !clear_before)
                fault(kind, now.place->piece);
            met.emplace(now.place->x, now.place);
        }
    }

    void check_length() {
        std::int64_t end = 0;
        for (const lay_place& place : found_.places)
            end = std::max(end, place.y + place.length);
        if (end != found_.length)
            fault(lay_fault_kind::wrong_length);
        if (found_.bound > found_.length)
            fault(lay_fault_kind::bound_above_length);
    }

    void check_cutting() {
        std::vector<lay_part> parts;
        for (const lay_place& place : found_.places)
            parts.push_back({place.x, place.x + place.width, place.y, place.y + place.length});
        if (cloth_.cutting == cutting::strips) {
            if (!in_strips(parts))
                fault(lay_fault_kind::not_in_strips);
        } else if (!can_be_parted(parts)) {
            fault(lay_fault_kind::not_edge_to_edge);
        }
        if (faults_.empty() && !cuts_leave(parts))
            fault(lay_fault_kind::wrong_cuts);
    }

    /// The groups that a cut in one direction, anywhere, can part from each other.
    static std::vector<std::vector<lay_part>> groups(std::vector<lay_part> parts, bool across) {
        const auto from = [&](const lay_part& p) { return across ? p.near : p.left; };
        const auto to = [&](const lay_part& p) { return across ? p.far : p.right; };
        std::sort(parts.begin(), parts.end(), [&](const lay_part& a, const lay_part& b) { return from(a) < from(b); });
        std::vector<std::vector<lay_part>> all;
        std::int64_t reach = 0;
        for (const lay_part& next : parts) {
            if (all.empty() || from(next) >= reach)
                all.emplace_back();
            all.back().push_back(next);
            reach = std::max(reach, to(next));
        }
        return all;
    }

    static bool can_be_parted(const std::vector<lay_part>& parts) {
        if (parts.size() <= 1)
            return true;
        for (const bool across : {true, false}) {
            const auto split = groups(parts, across);
            if (split.size() > 1)
                return std::all_of(split.begin(), split.end(), [](const auto& group) { return can_be_parted(group); });
        }
        return false;
    }

    static bool in_strips(const std::vector<lay_part>& parts) {
        for (const auto& strip : groups(parts, true))
            for (const auto& column : groups(strip, false))
                if (column.size() != 1)
                    return false;
        return true;
    }

    /// Makes the cuts on the cloth; each must divide a part in hand, which must be the one it says.
    bool cuts_leave(const std::vector<lay_part>& wanted) const {
        std::map<lay_part, part_origin> in_hand{{{0, cloth_.edge(), 0, found_.length}, {}}};
        std::size_t number = 0;
        for (const lay_cut& cut : found_.cuts) {
            const auto whole = in_hand.find(cut.in_hand);
            if (whole == in_hand.end() || whole->second != cut.origin)
                return false;
            lay_part near = cut.in_hand, far = cut.in_hand;
            const bool across = cut.direction == cut_direction::across;
            (across ? near.far : near.right) = cut.at;
            (across ? far.near : far.left) = cut.at;
            if (near.near >= near.far || near.left >= near.right || far.near >= far.far || far.left >= far.right)
                return false;
            in_hand.erase(whole);
            ++number;
            in_hand.insert({{near, {number, true}}, {far, {number, false}}});
        }
        return std::all_of(wanted.begin(), wanted.end(),
                           [&](const lay_part& piece) { return in_hand.count(piece) == 1; });
    }

    const whole_lay& found_;
    const std::vector<lay_piece>& pieces_;
    const lay_cloth& cloth_;
    std::vector<lay_fault> faults_;
};

/// Everything wrong with the lay, for these pieces on this cloth. The time is about n log n in the pieces and cuts, and
/// pieces times flaws.
inline std::vector<lay_fault> faults_of(const whole_lay& found, const std::vector<lay_piece>& pieces,
                                        const lay_cloth& cloth) {
    return lay_checker(found, pieces, cloth).faults();
}

} // namespace detail

} // namespace turncloth

#endif
