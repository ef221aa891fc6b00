// must-say (gcc): static_rational<2>
// must-say (clang): no viable conversion from
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
length<inch> binding = 3_in * 2_in;
#else
length<inch> binding = (3_in + 2_in) * 2;
#endif
