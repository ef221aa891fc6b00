// Catch2 prints the library's values by itself.
#define CATCH_CONFIG_MAIN
#include "printed.hpp"

#include <catch2/catch.hpp>

using namespace turncloth;

TEST_CASE("as written") {
    CHECK(printed::otherwise([](const auto& value) { return Catch::Detail::stringify(value); }) == 0);
    CHECK(Catch::Detail::stringify(edge::top) == "top");
}
