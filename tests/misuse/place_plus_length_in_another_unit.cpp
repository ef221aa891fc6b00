// must-say: bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

struct shelf_end;
struct wall;

#ifdef MISUSE
auto where = at<shelf_end>(4_in) + 10_cm;
#else
auto where = at<shelf_end>(4_in) + as<inch>(10_cm);
#endif
