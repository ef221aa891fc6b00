// A mark measured from the finished edge, taken for one from the cut edge.
// must-say: remeasure_one_place_first_since_the_two_are_measured_from_different_datums
#include <turncloth.hpp>
using namespace turncloth;

constexpr panel flap(finished_size(6_in, 9_in), all_round(single_turned_hem(1_in)));
constexpr auto pocket = at<finished_edge>(2_in);
#ifdef MISUSE
bool clears_the_hem = pocket > flap.finish_of(edge::top).stitching()[0];
#else
bool clears_the_hem = flap.from_cut_edge(edge::top, pocket) > flap.finish_of(edge::top).stitching()[0];
#endif
