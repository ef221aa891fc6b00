// What must compile: panels, their sizes and places, as they are meant to be used.
#include <turncloth.hpp>
using namespace turncloth;

constexpr panel sleeve(finished_size(11_cm, 16_cm),
                       edges<centimetre>{heading(3_cm, 1_cm), seam(1.5_cm), seam(1.5_cm), seam(1.5_cm)});
constexpr cut_size<centimetre> cut = sleeve.cut();
constexpr cut_size<inch> cut_in_inches = as<inch>(cut);
constexpr bool same = panel<centimetre>::from_cut(cut, sleeve.finishes()).finished() == sleeve.finished();
constexpr place<cut_edge, centimetre> mark = sleeve.from_cut_edge(edge::top, at<finished_edge>(4_cm)) + 1_cm;
static_assert(same && mark > at<cut_edge>(8_cm) && cut_in_inches.width() > 5_in);
