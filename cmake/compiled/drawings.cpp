// The other half of what turncloth::compiled holds: project files, drawings and handouts. The first half is read as a user
// reads it, as declarations.
#define TURNCLOTH_COMPILED
#include "to_sheets.hpp"

#define TURNCLOTH_COMPILING
#include <turncloth/measure/detail/compiled.hpp>
#undef TURNCLOTH_COMPILED

#include <turncloth/all.hpp>
