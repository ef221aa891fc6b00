// That two marks meet does not make them the same place.
// must-say: remeasure_one_place_first_since_the_two_are_measured_from_different_datums
// must-not-say: boost::mpl
#include <turncloth/marks/mapping.hpp>
#include <turncloth/measure/read.hpp>
using namespace turncloth;
constexpr even_mapping<inch> film(42_in, 30_in, 6);
#ifdef MISUSE
bool meet = film.mark_on_long(1) == film.mark_on_short(1);
#else
bool meet = film.onto_short(film.mark_on_long(1)) == film.mark_on_short(1);
#endif
