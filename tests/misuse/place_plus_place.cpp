// must-say: subtract_two_places_or_add_a_length_to_a_place_but_do_not_add_two_places
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

struct shelf_end;
struct wall;

#ifdef MISUSE
auto where = at<shelf_end>(4_in) + at<shelf_end>(1_in);
#else
auto where = at<shelf_end>(4_in) + 1_in;
#endif
