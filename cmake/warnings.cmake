# turncloth_warnings: for the project's own programs only, never for those who link the library.
# The headers are seen through it too, as they are not system headers here.
add_library(turncloth_warnings INTERFACE)
target_compile_options(turncloth_warnings INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Werror)
