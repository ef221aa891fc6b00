// must-say: cannot_read_because
#include <turncloth.hpp>

using namespace turncloth;

length<inch> depth() {
#ifdef MISUSE
    return "12 1/"_in; // no part of a constant expression, and read while compiling all the same
#else
    return "12 1/2"_in;
#endif
}
