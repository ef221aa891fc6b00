// must-say: name_the_datum_for_instance_divided_of_finished_edge_or_at_of_cut_edge
// must-not-say: boost/mpl
#include <turncloth.hpp>

using namespace turncloth;

inline constexpr auto pin =
#ifdef MISUSE
    at(3_in);
#else
    at<cut_edge>(3_in);
#endif
