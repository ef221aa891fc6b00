// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto hem = double_turned_hem(1, 2);
#else
auto hem = double_turned_hem(1_in, 2_in);
#endif
