// Names that programs bring of their own, beside both namespaces.
#include <turncloth.hpp>

#include <ratio>

using namespace std;
using namespace turncloth;

using json = int;
using half = ratio<1, 2>;

inline constexpr fraction times = ratio_of(12_in, 3_in) * half::den;
inline constexpr json one = 1;
