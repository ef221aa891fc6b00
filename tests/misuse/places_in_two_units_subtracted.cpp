// must-say: bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

struct shelf_end;

#ifdef MISUSE
auto between = at<shelf_end>(4_in) - at<shelf_end>(5_cm);
#else
auto between = at<shelf_end>(4_in) - as<inch>(at<shelf_end>(5_cm));
#endif
