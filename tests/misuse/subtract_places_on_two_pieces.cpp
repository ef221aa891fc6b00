// A mark on the long piece and the mark that it meets on the short one are measured from different ends.
// must-say: remeasure_one_place_first_since_the_two_are_measured_from_different_datums
// must-not-say: boost::mpl
#include <turncloth/marks/mapping.hpp>
#include <turncloth/measure/read.hpp>
using namespace turncloth;
constexpr even_mapping<inch> film(42_in, 30_in, 6);
#ifdef MISUSE
auto ease = film.mark_on_long(1) - film.mark_on_short(1);
#else
auto ease = film.mark_on_long(1).from_datum() - film.mark_on_short(1).from_datum();
#endif
