// What turncloth::compiled holds: every template that a header names with TURNCLOTH_ONCE, in inches and in centimetres.
#define TURNCLOTH_COMPILING
#include <turncloth/all.hpp>
