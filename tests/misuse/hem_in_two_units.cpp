// must-say: bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto hem = double_turned_hem(1_cm, 1_in);
#else
auto hem = double_turned_hem(1_cm, as<centimetre>(1_in));
#endif
