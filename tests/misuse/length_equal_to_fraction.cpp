// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
bool same = 3_in == fraction(3);
#else
bool same = 3_in == length_of<inch>(3);
#endif
