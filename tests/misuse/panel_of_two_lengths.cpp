// must-say: say_whether_the_size_is_finished_or_cut_with_finished_size_or_panel_from_cut
// must-not-say: boost/mpl
// must-be-short
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline const auto flap = panel(20_in, 10_in);
#else
inline const auto flap = panel(finished_size(20_in, 10_in));
#endif
