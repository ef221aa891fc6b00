// A whole program of a user: from an installed prefix, from the sources, without exceptions, without type information.
#include <turncloth/version.hpp>

#include <cstdio>

int main() {
    const auto& v = turncloth::version;
    std::printf("%d.%d.%d\n", v.major_number, v.minor_number, v.patch_number);
}
