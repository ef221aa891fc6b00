// must-say: compare_two_finished_or_two_cut_sizes_but_not_one_with_the_other
#include <turncloth.hpp>

#include <algorithm>
#include <array>

using namespace turncloth;

const std::array finished = {finished_size(10_in, 8_in)};
#ifdef MISUSE
const std::array sizes = {cut_size(10_in, 8_in)};
#else
const std::array sizes = {finished_size(10_in, 8_in)};
#endif
inline const bool same = std::equal(finished.begin(), finished.end(), sizes.begin());
