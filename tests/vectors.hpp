// Vectors that a check compares are printed when they differ, one after another, where doctest prints {?} for each.
//
//   CHECK(s.orders() == std::vector<std::string>{"fold", "press"});   // CHECK( [cut, press] == [fold, press] )
#ifndef TURNCLOTH_TESTS_VECTORS_HPP
#define TURNCLOTH_TESTS_VECTORS_HPP

#include <doctest/doctest.h>

#include <utility>
#include <vector>

namespace doctest {

template <class A, class B>
struct StringMaker<std::pair<A, B>> {
    static String convert(const std::pair<A, B>& p) {
        return "(" + toString(p.first) + ", " + toString(p.second) + ")";
    }
};

template <class T>
struct StringMaker<std::vector<T>> {
    static String convert(const std::vector<T>& all) {
        String text = "[";
        const char* between = "";
        for (const T& one : all) {
            text += between + toString(one);
            between = ", ";
        }
        return text + "]";
    }
};

} // namespace doctest

#endif
