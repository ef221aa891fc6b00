// must-say: bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

void lengthen(length<inch>& strip) {
#ifdef MISUSE
    strip += 2_cm;
#else
    strip += as<inch>(2_cm);
#endif
}
