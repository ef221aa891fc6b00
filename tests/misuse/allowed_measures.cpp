// What must compile, so that the refusals beside it do not refuse too much.
#include <turncloth.hpp>

using namespace turncloth;

struct shelf_end;

inline constexpr auto total = 10_in + 2 * "1/2"_in - as<inch>(2.54_cm) + 1_in * fraction(1, 3) / 2;
inline constexpr bool longer = total > 3_in && total != 3_in && 1_in == 1_in && 1_cm <= 10_cm;
inline constexpr auto surface = as_area<yard>(total * 36_in);
inline constexpr fraction turns = ratio_of(total, 3_in) + 1;
inline constexpr auto where = 1_in + at<shelf_end>(total) - 2_in;
inline constexpr auto between = where - at<shelf_end>(total) + 1_in;
inline constexpr bool before = where < at<shelf_end>(total) && where != at<shelf_end>(total);
inline constexpr length<centimetre> depth(5_in);
inline constexpr approximation typed = approximate(12.49, {1, 16});
