// Must be refused: it fails for another reason than the misuse.
// must-say: nowhere.hpp
#include <nowhere.hpp>
