// must-say: name_the_datum_for_instance_divided_of_finished_edge_or_at_of_cut_edge
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

inline constexpr auto marks =
#ifdef MISUSE
    divided(12_in, 4);
#else
    divided<finished_edge>(12_in, 4);
#endif
