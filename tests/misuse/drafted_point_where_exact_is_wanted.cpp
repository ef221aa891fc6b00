// A double does not become an exact coordinate.
// must-say: write_approximate_with_a_graduation_to_make_a_fraction_of_a_double
#include <turncloth/panel/polygon.hpp>
using namespace turncloth;

#ifdef MISUSE
auto corner_of_flap = point_of<inch>(0.1, 2);
#else
auto corner_of_flap = point_of<inch>({1, 10}, 2);
auto drafted_corner = drafted_point<inch>(0.1, 2);
#endif
