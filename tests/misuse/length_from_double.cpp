// must-say: write_approximate_with_a_graduation_to_make_a_fraction_of_a_double
// must-not-say (gcc): no matching function
// must-not-say (clang): no matching function
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto half = length_of<inch>(0.5);
#else
auto half = length_of<inch>({1, 2});
#endif
