// must-say: does_not_fit
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline constexpr fraction sum = fraction(9223372036854775807) + 1;
#else
inline constexpr fraction sum = fraction(9223372036854775807) - 1;
#endif
