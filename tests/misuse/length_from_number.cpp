// must-say (gcc): conversion from 'int' to non-scalar type 'turncloth::length<
// must-say (clang): no viable conversion from 'int' to 'length<turncloth::inch>'
// must-not-say (gcc): candidate
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
length<inch> depth = 12;
#else
length<inch> depth = 12_in;
#endif
