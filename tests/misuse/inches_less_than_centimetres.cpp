// must-say: bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
bool fits = 12_in < 30_cm;
#else
bool fits = as<centimetre>(12_in) < 30_cm;
#endif
