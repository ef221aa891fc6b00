// One half of what turncloth::compiled holds: what leads from measures to sheets, and the pages of drawings.
#define TURNCLOTH_COMPILING
#include "to_sheets.hpp"
