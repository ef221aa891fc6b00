// must-say: give_the_finishes_in_the_unit_of_the_size
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

inline const finished_size flap(9_in, 4_in);
#ifdef MISUSE
inline const panel cut_flap(flap, all_round(seam(1_cm)));
#else
inline const panel cut_flap(flap, all_round(seam(as<inch>(1_cm))));
#endif
