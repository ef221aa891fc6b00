// must-say: name_the_unit_to_read_in_for_instance_read_length_of_inch
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

inline constexpr auto depth =
#ifdef MISUSE
    read_length("12 in");
#else
    read_length<inch>("12 in");
#endif
