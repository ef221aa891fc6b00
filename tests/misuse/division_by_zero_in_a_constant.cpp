// must-say: division_by_zero
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline constexpr auto part = 12_in / 0;
#else
inline constexpr auto part = 12_in / 3;
#endif
