// must-say: add_the_from_datum_of_a_place_since_a_place_is_no_length
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

void add(length<inch>& sum, const place<finished_edge, inch>& mark) {
#ifdef MISUSE
    sum += mark;
#else
    sum += mark.from_datum();
#endif
}
