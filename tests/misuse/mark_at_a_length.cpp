// must-say: make_a_place_of_the_length_with_at_and_its_datum_since_a_mark_is_a_place
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

void mark(piece<inch>& flap) {
#ifdef MISUSE
    flap.mark("middle", edge::left, 3_in);
#else
    flap.mark("middle", edge::left, at<finished_edge>(3_in));
#endif
}
