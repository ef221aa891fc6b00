# turncloth_warnings: for the project's own programs only, never for those who link the library.
# The headers are seen through it too, as they are not system headers here.
add_library(turncloth_warnings INTERFACE)
target_compile_options(turncloth_warnings INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Werror)
# At -O3, GCC 12 sees overlapping copies in "literal" + std::string (its bug 105651), and an array's copies joined to one
# as too large for the first element. Neither is there; later versions and Clang do not say so.
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
    target_compile_options(turncloth_warnings INTERFACE -Wno-restrict -Wno-stringop-overflow)
endif()
