// must-say: write_approximate_with_a_graduation_to_make_a_fraction_of_a_double
// must-not-say (gcc): conversion from 'double' to non-scalar
// must-not-say (clang): no viable conversion
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
fraction half = 0.5;
#else
fraction half = approximate(0.5, {1, 64}).value;
#endif
