// must-say (gcc): cannot convert 'turncloth::fraction' to 'double'
// must-say (clang): no viable conversion from 'turncloth::fraction' to 'double'
// must-not-say (gcc): candidate
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
double shown = fraction(1, 3);
#else
double shown = to_double(fraction(1, 3));
#endif
