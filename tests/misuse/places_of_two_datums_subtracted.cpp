// must-say: remeasure_one_place_first_since_the_two_are_measured_from_different_datums
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

struct shelf_end;
struct wall;

#ifdef MISUSE
auto between = at<wall>(34_in) - at<shelf_end>(4_in);
#else
auto between = remeasured<shelf_end>(at<wall>(34_in), 30_in) - at<shelf_end>(4_in);
#endif
