// must-say: give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
auto folds = double_turned_hem("1/4"_in, 1_in).folds();
#else
auto hem = double_turned_hem("1/4"_in, 1_in);
auto folds = hem.folds();
#endif
