// must-say: denominator_is_zero
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline constexpr fraction part(1, 0);
#else
inline constexpr fraction part(1, 2);
#endif
