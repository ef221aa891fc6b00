// must-say: bring_both_lengths_to_one_unit_first_since_their_ratio_is_a_plain_number
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
using times = decltype(ratio_of(10_in, 2_cm));
#else
using times = decltype(ratio_of(10_in, as<inch>(2_cm)));
#endif
