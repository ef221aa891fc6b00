# turncloth::compiled, in a build of the library itself and beside an installed copy: what costs most to compile, made once
# in inches and in centimetres, in a static library of the user's own build and with its options. It is built only where
# something links it. Everything else stays in the headers, and turncloth::turncloth as it is.
if(NOT TARGET turncloth_compiled)
    add_library(turncloth_compiled STATIC EXCLUDE_FROM_ALL
        "${CMAKE_CURRENT_LIST_DIR}/compiled/sheets.cpp" "${CMAKE_CURRENT_LIST_DIR}/compiled/drawings.cpp")
    add_library(turncloth::compiled ALIAS turncloth_compiled)
    target_link_libraries(turncloth_compiled PUBLIC turncloth::turncloth)
    target_compile_definitions(turncloth_compiled INTERFACE TURNCLOTH_COMPILED)
endif()
