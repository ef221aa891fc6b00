// must-say: multiply_or_divide_by_a_whole_number_or_a_fraction_since_a_double_is_not_exact
// must-not-say (gcc): no match for
// must-not-say (clang): invalid operands to binary expression
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto part = 12_in / 2.5;
#else
auto part = 12_in / fraction(5, 2);
#endif
