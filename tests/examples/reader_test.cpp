// Handouts of the projects, read as a maker reads them: from what is printed alone.
#include "reader.hpp"

using turncloth::units_shown;

TEST_CASE("a reader finds every printed sum, cut size, mark and amount again from the handout alone") {
    reader::read("organiser", "9 x 12 in", units_shown::both); // one pocket
    reader::read("tool-roll", "29 x 21 in", units_shown::inches);
    reader::read("kneeling-pad", "44 x 27 cm", units_shown::centimetres);
}
