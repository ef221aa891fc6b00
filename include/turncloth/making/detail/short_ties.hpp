// Ties that are too short to go round what is rolled up.
//
//   short_ties(design, model, bench)       a fault for each
//
// By paper. A piece is rolled towards the edge that its tie is sewn beside, so as much is rolled up as it then measures across
// from that edge. The roll's section keeps the area of all its layers, so their thickness is that of one layer as large as the
// piece (notions/tie.hpp). Looked at where the length of a tie and the thickness of every cloth are stated, and the thing is
// rolled up; whatever is tied in a bow needs more than the way round, which is the least.
#ifndef TURNCLOTH_MAKING_DETAIL_SHORT_TIES_HPP
#define TURNCLOTH_MAKING_DETAIL_SHORT_TIES_HPP

#include <turncloth/making/detail/described.hpp>
#include <turncloth/making/detail/model.hpp>
#include <turncloth/making/detail/sight.hpp>
#include <turncloth/notions/tie.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace turncloth::detail {

/// As one layer over all of the stack's extent, down to 1/1024; nothing where a cloth's is not stated.
template <length_unit Unit>
length<Unit> mean_thickness(const making<Unit>& design, const flat_model<Unit>& model, const flat_work::stack& lies,
                            const flat_work::bounds& round) {
    const double all = static_cast<double>(round.right - round.left) * static_cast<double>(round.bottom - round.top);
    double sum = 0;
    for (const flat_work::ply& p : lies.plies) {
        const length<Unit>& thick = design.parts()[model.part_of(p.part).index].cloth.thickness;
        if (thick.value() == 0)
            return {};
        sum += to_double(thick.value()) * static_cast<double>(twice_area(p.area)) / 2 / all;
    }
    return length_of<Unit>({static_cast<std::int64_t>(std::floor(sum * 1024)), 1024});
}

template <length_unit Unit, class Bench>
std::vector<making_fault> short_ties(const making<Unit>& design, const flat_model<Unit>& model, const Bench& bench) {
    std::vector<making_fault> found;
    const bool rolled_up = std::any_of(design.moments().begin(), design.moments().end(),
                                       [](const moment& m) { return m.what == moment_kind::roll; });
    for (std::size_t i = 0; rolled_up && i < design.spots().size(); ++i) {
        const spot<Unit>& s = design.spots()[i];
        const bool is_tie = s.what == spot_kind::tie_end || s.what == spot_kind::tie_middle;
        if (!is_tie || s.tie.value() == 0)
            continue;
        const flat_work::stack& lies = bench.stack_of(model.number_of(s.along.on));
        flat_work::bounds round = bounds_of(lies.plies.front().area);
        for (const flat_work::ply& p : lies.plies)
            round = around(round, bounds_of(p.area));
        const bool level = is_level(flat_work::on_table(s.along.from, bench.body_of(model.number_of(s.along.on))->how));
        const rolled<Unit> roll{.strip =
                                    model.length_of_whole(level ? round.bottom - round.top : round.right - round.left),
                                .thickness = mean_thickness(design, model, lies, round)};
        if (roll.thickness.value() == 0 || roll.strip < roll.thickness * pi_above)
            continue;
        const length<Unit> least = roll_girth(roll, length_of<Unit>({1, 16}), rounding::down);
        if (s.tie < least)
            found.push_back({sentence({"the tie on ", name_of(design, s.along.on), " is ", s.tie,
                                       " long, and does not go round it rolled up, ", least}),
                             refusal_on({.kind = fault::too_small,
                                         .what = "a tie",
                                         .given = s.tie,
                                         .least = least,
                                         .index = i,
                                         .where = name_of(design, s.along.on)})});
    }
    return found;
}

} // namespace turncloth::detail

#endif
