// must-say: multiply_or_divide_by_a_whole_number_or_a_fraction_since_a_double_is_not_exact
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto half = 0.5 * 12_in;
#else
auto half = fraction(1, 2) * 12_in;
#endif
