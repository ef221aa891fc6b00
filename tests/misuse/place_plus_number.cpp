// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

struct shelf_end;
struct wall;

#ifdef MISUSE
auto where = at<shelf_end>(4_in) + 1;
#else
auto where = at<shelf_end>(4_in) + 1_in;
#endif
