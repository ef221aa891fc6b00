// A place on the long piece is not carried over as if it were on the short one.
// must-say: carry_a_place_over_from_the_piece_that_it_is_measured_on
// must-not-say: boost::mpl
#include <turncloth/marks/mapping.hpp>
#include <turncloth/measure/read.hpp>
using namespace turncloth;
constexpr even_mapping<inch> film(42_in, 30_in, 6);
#ifdef MISUSE
auto meets = film.onto_long(at<long_piece>(4_in));
#else
auto meets = film.onto_short(at<long_piece>(4_in));
#endif
