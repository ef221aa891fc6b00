// The version in the header is the one that CMake packages.
#include <turncloth/version.hpp>

#include <doctest/doctest.h>

#include <string>

TEST_CASE("the version in the header is the one that the package carries") {
    const auto& v = turncloth::version;
    CHECK(std::to_string(v.major_number) + "." + std::to_string(v.minor_number) + "." +
              std::to_string(v.patch_number) ==
          TURNCLOTH_PACKAGE_VERSION);
}
