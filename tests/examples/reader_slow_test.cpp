// More handouts read from what is printed alone: tiny ones, huge ones, for which no cloth is wide enough, and odd ones.
#include "reader.hpp"

using turncloth::units_shown;

TEST_CASE("a reader finds every printed sum, cut size, mark and amount again at any size") {
    for (const char* size : {"27 x 28 in", "13 3/16 x 17 5/16 in", "120 x 90 in"})
        reader::read("organiser", size, units_shown::both);
    for (const char* size : {"7 x 11 in", "17 3/16 x 13 1/8 in", "110 x 40 in"})
        reader::read("tool-roll", size, units_shown::both);
    for (const char* size : {"9 x 7 in", "17 1/2 x 10 1/2 in", "100 x 60 in"})
        reader::read("kneeling-pad", size, units_shown::both);
    for (const char* size : {"70 x 72 cm", "31.7 x 44.9 cm", "300 x 200 cm"})
        reader::read("organiser", size, units_shown::centimetres);
    for (const char* size : {"75.3 x 54 cm", "20 x 28 cm"})
        reader::read("tool-roll", size, units_shown::centimetres);
}
