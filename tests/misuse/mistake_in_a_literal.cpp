// must-say: cannot_read_because
// must-not-say (gcc): no match for
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline constexpr auto depth = "12 1/"_in;
#else
inline constexpr auto depth = "12 1/2"_in;
#endif
