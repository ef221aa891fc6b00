// A finished size handed to the shears.
// must-say: turn_a_finished_size_into_a_cut_size_with_the_finishes_of_a_panel
// must-not-say: no matching function
#include <turncloth.hpp>
using namespace turncloth;

constexpr panel flap(finished_size(6_in, 9_in), all_round(seam("1/2"_in)));
#ifdef MISUSE
cut_size<inch> to_cut = flap.finished();
#else
cut_size<inch> to_cut = flap.cut();
#endif
