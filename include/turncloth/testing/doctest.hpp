// How doctest shows what the library computes: failures read `12 1/2 in`, `10 x 16 in`, `top`.
//
//   #include <turncloth/testing/doctest.hpp>
//   CHECK(panel.cut() == cut_size(12_in, 18_in));   // "CHECK( 12 x 18 1/2 in == 12 x 18 in )"
//
// Measured values print themselves, in doctest, Catch2 and GoogleTest alike, and need no such header. doctest alone takes
// an enumeration for a number: this one gives the name of an edge. It brings doctest; a project that keeps doctest under
// another path includes that first. No part of turncloth.hpp; audit.hpp beside it is its companion.
#ifndef TURNCLOTH_TESTING_DOCTEST_HPP
#define TURNCLOTH_TESTING_DOCTEST_HPP

#ifndef DOCTEST_LIBRARY_INCLUDED
#include <doctest/doctest.h>
#endif

#include <turncloth/panel/panel.hpp>

#include <string>

namespace doctest {

template <>
struct StringMaker<turncloth::edge> {
    static String convert(turncloth::edge e) { return std::string(turncloth::name_of(e)).c_str(); }
};

} // namespace doctest

#endif
