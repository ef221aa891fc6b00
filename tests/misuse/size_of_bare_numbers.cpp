// A size without a unit.
// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
#include <turncloth.hpp>
using namespace turncloth;

#ifdef MISUSE
finished_size<centimetre> flap(15, 22.5);
#else
finished_size<centimetre> flap(15_cm, 22.5_cm);
#endif
