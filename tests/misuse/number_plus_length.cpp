// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto total = 3 + 12_in;
#else
auto total = 3_in + 12_in;
#endif
