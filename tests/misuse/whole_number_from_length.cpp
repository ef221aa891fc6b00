// must-say (gcc): cannot convert 'turncloth::length<
// must-say (clang): no viable conversion from 'length<turncloth::inch>'
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline const int strips = 12_in;
#else
inline const auto strips = floor(ratio_of(12_in, 3_in));
#endif
