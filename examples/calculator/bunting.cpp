// A calculation of one's own: this file is all that it takes (GUIDE.md beside it).
#include "calculation.hpp"
#include <turncloth/notions/caution.hpp>

using namespace turncloth;
using namespace calculator;

namespace {

/// Flags side by side along a tape, with so much of it free at each end to tie.
template <length_unit Unit>
void bunting(const given& g, reply& r) {
    const length<Unit> flag = g.size<Unit>("flag"), gap = g.size<Unit>("gap"), tie = g.size<Unit>("tie");
    const std::int64_t flags = g.count("flags", 500);
    require_more_than_zero<range_error>(flag, "the width of a flag");
    if (gap.value() < 0)
        throw field_error("gap", "the flags would lie over each other: the gap is nothing or more",
                          {.kind = fault::too_small, .what = "the gap", .given = amount_of(gap)});
    r.say("tape", "tape to cut",
          figure<Unit>()
              .plus_times(flags, {flag}, "flags")
              .plus_times(flags - 1, {gap}, "gaps")
              .plus_times(2, {tie}, "ties"));
}

constexpr calculation bunting_sum{.name = "bunting",
                                  .title = "Tape for bunting",
                                  .about = "Flags along a tape, with an end to tie on each side.",
                                  .asks = {{"flag", "width of a flag", "6 in", "15 cm"},
                                           {"flags", "flags", "12", "12", field::kind::count},
                                           {"gap", "between two flags", "1 in", "2 cm"},
                                           {"tie", "free at each end", "18 in", "45 cm"}},
                                  .cautions = {caution::infants_and_animals},
                                  .in_inches = bunting<inch>,
                                  .in_centimetres = bunting<centimetre>};
const listed_calculation bunting_is_listed(bunting_sum);

} // namespace
