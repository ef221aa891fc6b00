// Steps whose lengths are written already: what sentences are made from, the same for every unit.
//
//   struct told_group  told_step  told_place  told_distances  told_fit  told_opening     as work_group, ..., their lengths as texts
//   pressed_onto(step)            the pieces that the allowances of a seam are pressed toward
#ifndef TURNCLOTH_MAKING_DETAIL_TOLD_HPP
#define TURNCLOTH_MAKING_DETAIL_TOLD_HPP

#include <turncloth/making/work_step.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace turncloth::detail {

struct told_distances {
    seen_edge from{};
    std::vector<std::string> at{};
    bool none = true; ///< all are nothing
    bool beyond = false;
};

struct told_place {
    cut_part piece{};
    edge side = edge::top;
    seen_edge own_left{}, own_top{};
    told_distances across{}, along{}, meets{}, meets_along{}, marks{}, meets_marks{};
    cut_part end_to_end{};
    bool all_round = false, corner = false;
    std::string turned{}, goes_round{}, lies_flat{}, surplus{}, sewn{};
    std::size_t least = 0, most = 0;
};

struct told_fit {
    surplus taken_up = surplus::none;
    std::int64_t spans = 1;
    told_distances long_{}, short_{};
    std::string extra{};
};

struct told_opening {
    std::string what{};
    seen_edge in{};
    told_distances along{};
};

struct told_step {
    work_verb verb = work_verb::sew;
    std::vector<told_place> places{};
    cut_part on{};
    std::vector<cut_part> through{};
    std::string what{};
    face up = face::right, towards = face::wrong;
    told_fit fit{};
    std::vector<told_opening> left_open{};
    spot_kind spot = spot_kind::eyelet;
    std::int64_t folds = 0;
    closed_by closing = closed_by::nothing;
    turncloth::pressed pressed = turncloth::pressed::open;
    std::string width{}, height{}, overrun{};
    bool by_hand = false, carries = false, carries_beneath = false, film = false, beneath = false, upside_down = false,
         on_a_row = false, on_a_seam = false, once_more = false, turned_over = false, straight = false;
};

/// The pieces that the allowances of a seam are pressed toward; none where they are pressed open.
inline std::vector<cut_part> pressed_onto(const told_step& s) {
    std::vector<cut_part> all;
    if (s.pressed == pressed::to_one || s.pressed == pressed::to_other)
        for (const told_place& p : s.places)
            if (const cut_part of = s.pressed == pressed::to_one ? p.piece : p.meets.from.of;
                std::find(all.begin(), all.end(), of) == all.end())
                all.push_back(of);
    return all;
}

struct told_group {
    std::vector<told_step> steps{};
    std::vector<cut_part> pieces{};
    bool every_copy = false, one_after_another = false;
    cut_part checked{};
    std::string size{};
};

} // namespace turncloth::detail

#endif
