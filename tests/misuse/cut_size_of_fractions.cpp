// Exact numbers are no lengths either.
// must-say: name_the_unit_of_a_length_for_instance_12_in_or_30_cm
#include <turncloth.hpp>
using namespace turncloth;

constexpr fraction half = {1, 2};
#ifdef MISUSE
cut_size<inch> flap(half, half);
#else
cut_size<inch> flap(length_of<inch>(half), length_of<inch>(half));
#endif
