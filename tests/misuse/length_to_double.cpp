// must-say: take_the_value_of_a_length_in_a_unit_that_you_name_for_instance_as_centimetre_x_value
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

inline constexpr double shown =
#ifdef MISUSE
    to_double(1_in);
#else
    to_double(as<centimetre>(1_in).value());
#endif
