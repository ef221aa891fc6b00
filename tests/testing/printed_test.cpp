// doctest prints the library's values by itself; tests/frameworks has GoogleTest and Catch2.
#include "../frameworks/printed.hpp"

#include <doctest/doctest.h>

TEST_CASE("what is measured is printed as it is written") {
    CHECK(printed::otherwise([](const auto& value) { return std::string(doctest::toString(value).c_str()); }) == 0);
}
