// GoogleTest prints the library's values by itself.
#include "printed.hpp"
#include <turncloth.hpp>

#include <gtest/gtest.h>

using namespace turncloth;

TEST(Printed, AsWritten) {
    EXPECT_EQ(printed::otherwise([](const auto& value) { return testing::PrintToString(value); }), 0);
    EXPECT_EQ(testing::PrintToString(edge::top), "top");
}

int main(int count, char** arguments) {
    testing::InitGoogleTest(&count, arguments);
    return RUN_ALL_TESTS();
}
