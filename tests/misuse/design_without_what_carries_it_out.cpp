// must-say: include turncloth/sheet/made_as.hpp: it carries the design out
#ifdef MISUSE
#include <turncloth/sheet/project.hpp>
#else
#include <turncloth/sheet/made_as.hpp>
#endif

using namespace turncloth;

void with_its_making(project<inch>& mat, const making<inch>& design) { mat.made_as(design); }
