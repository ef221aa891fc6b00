// How doctest shows what the library computes: failures read `12 1/2 in`, `10 x 16 in`, not the bytes of an object.
//
//   #include <turncloth/testing/doctest.hpp>
//   CHECK(panel.cut() == cut_size(12_in, 18_in));   // "CHECK( 12 x 18 1/2 in == 12 x 18 in )"
//
// It brings doctest; a project that keeps doctest under another path includes that first. It is a header for tests alone
// and no part of turncloth.hpp; audit.hpp beside it is its companion.
#ifndef TURNCLOTH_TESTING_DOCTEST_HPP
#define TURNCLOTH_TESTING_DOCTEST_HPP

#ifndef DOCTEST_LIBRARY_INCLUDED
#include <doctest/doctest.h>
#endif

#include <turncloth/measure/place.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/panel/size.hpp>

#include <string>

namespace doctest {

template <>
struct StringMaker<turncloth::fraction> {
    static String convert(turncloth::fraction x) { return turncloth::to_text(x).c_str(); }
};

template <turncloth::length_unit Unit>
struct StringMaker<boost::units::quantity<Unit, turncloth::fraction>> {
    static String convert(const turncloth::length<Unit>& l) { return turncloth::to_text(l).c_str(); }
};

template <class Datum, turncloth::length_unit Unit>
struct StringMaker<turncloth::place<Datum, Unit>> {
    static String convert(const turncloth::place<Datum, Unit>& p) {
        return ("place at " + turncloth::to_text(p.from_datum())).c_str();
    }
};

template <turncloth::length_unit Unit>
struct StringMaker<turncloth::finished_size<Unit>> {
    static String convert(const turncloth::finished_size<Unit>& s) {
        return ("finished " + turncloth::to_text(s)).c_str();
    }
};

template <turncloth::length_unit Unit>
struct StringMaker<turncloth::cut_size<Unit>> {
    static String convert(const turncloth::cut_size<Unit>& s) { return ("cut " + turncloth::to_text(s)).c_str(); }
};

template <turncloth::length_unit Unit>
struct StringMaker<turncloth::figure<Unit>> {
    static String convert(const turncloth::figure<Unit>& f) { return turncloth::to_text(f).c_str(); }
};

} // namespace doctest

#endif
