// A panel made of the size it is cut at, as if it finished so.
// must-say: turn_a_cut_size_into_a_finished_size_with_the_finishes_of_a_panel
#include <turncloth.hpp>
using namespace turncloth;

constexpr cut_size cut(7_in, 10_in);
#ifdef MISUSE
panel<inch> flap(cut, all_round(seam("1/2"_in)));
#else
panel<inch> flap = panel<inch>::from_cut(cut, all_round(seam("1/2"_in)));
#endif
