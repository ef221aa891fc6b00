// must-say: bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
bool same = 1_in == 2.54_cm;
#else
bool same = 1_in == as<inch>(2.54_cm);
#endif
