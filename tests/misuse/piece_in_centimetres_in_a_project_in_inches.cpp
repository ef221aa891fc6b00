// must-say: make every piece in the unit of its project
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

void add(project<inch>& roll, const finished_size<centimetre>& flap) {
#ifdef MISUSE
    roll.add(piece<centimetre>("flap", "canvas", panel(flap)));
#else
    roll.add(piece<inch>("flap", "canvas", panel(as<inch>(flap))));
#endif
}
