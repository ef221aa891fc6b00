// A seam allowance without a unit.
// must-say (gcc): no matching function for call to 'seam(double)'
// must-say (clang): no matching function for call to 'seam'
#include <turncloth.hpp>
using namespace turncloth;

#ifdef MISUSE
auto allowance = seam(0.5);
#else
auto allowance = seam(0.5_in);
#endif
