# turncloth_warnings: for the project's own programs only, never for those who link the library.
# The headers are seen through it too, as they are not system headers here.
add_library(turncloth_warnings INTERFACE)
target_compile_options(turncloth_warnings INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Werror)
# GCC 12 sees overlapping copies in "literal" + std::string where there are none (its bug 105651).
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
    target_compile_options(turncloth_warnings INTERFACE -Wno-restrict)
endif()
