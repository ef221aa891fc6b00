// A chalk line is measured from a cut edge, as the piece lies before it is turned.
// must-say: remeasure_one_place_first_since_the_two_are_measured_from_different_datums
#include <turncloth/making/finishing.hpp>
#include <turncloth/measure/read.hpp>

using namespace turncloth;
using namespace turncloth::literals;

chalk_line<inch> pocket_line(const panel_part<inch>& lining) {
    chalk_line<inch> line = lining.line(edge::bottom, at<cut_edge>(2_in));
#ifdef MISUSE
    line.in = at<finished_edge>(4_in);
#else
    line = lining.line(edge::top, at<finished_edge>(4_in));
#endif
    return line;
}
