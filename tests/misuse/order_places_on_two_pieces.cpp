// Nor does one come before the other.
// must-say: remeasure_one_place_first_since_the_two_are_measured_from_different_datums
// must-not-say: boost::mpl
#include <turncloth/marks/mapping.hpp>
#include <turncloth/measure/read.hpp>
using namespace turncloth;
constexpr even_mapping<inch> film(42_in, 30_in, 6);
#ifdef MISUSE
bool before = film.mark_on_short(1) < film.mark_on_long(1);
#else
bool before = film.mark_on_short(1) < film.onto_short(film.mark_on_long(1));
#endif
