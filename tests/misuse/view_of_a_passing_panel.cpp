// must-say: give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto rows = panel(finished_size(9_in, 6_in), all_round(single_turned_hem(1_in))).finish_of(edge::top).stitching();
#else
auto flap = panel(finished_size(9_in, 6_in), all_round(single_turned_hem(1_in)));
auto rows = flap.finish_of(edge::top).stitching();
#endif
