// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto rest = 12_in - 3;
#else
auto rest = 12_in - 3_in;
#endif
