// must-say: make_a_place_of_the_length_with_at_and_its_datum_before_comparing_it_with_a_place
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

struct shelf_end;
struct wall;

#ifdef MISUSE
bool before = at<shelf_end>(4_in) < 5_in;
#else
bool before = at<shelf_end>(4_in) < at<shelf_end>(5_in);
#endif
