// A seam allowance without a unit.
// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
#include <turncloth.hpp>
using namespace turncloth;

#ifdef MISUSE
auto allowance = seam(0.5);
#else
auto allowance = seam(0.5_in);
#endif
