// must-say: cannot_read_because
// must-say (clang): must be initialized by a constant expression
// must-not-say (gcc): no match for
// must-not-say (clang): no matching
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline constexpr auto depth = "12 1/"_in;
#else
inline constexpr auto depth = "12 1/2"_in;
#endif
