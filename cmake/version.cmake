# read_version(<header> <variable>): the version written in the header, as "major.minor.patch".
# A header that does not say all three stops the configuration: a guessed version is worse than none.
function(read_version header variable)
    set(numbers)
    foreach(part IN ITEMS MAJOR MINOR PATCH)
        file(STRINGS "${header}" line REGEX "^#define TURNCLOTH_VERSION_${part} [0-9]+$")
        if(NOT line MATCHES "^#define TURNCLOTH_VERSION_${part} ([0-9]+)$")
            message(FATAL_ERROR "${header} must hold exactly one line '#define TURNCLOTH_VERSION_${part} <number>'")
        endif()
        list(APPEND numbers "${CMAKE_MATCH_1}")
    endforeach()
    list(JOIN numbers "." joined)
    set(${variable} "${joined}" PARENT_SCOPE)
endfunction()
