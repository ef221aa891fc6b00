// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

void lengthen(length<inch>& strip) {
#ifdef MISUSE
    strip += 2;
#else
    strip += 2_in;
#endif
}
