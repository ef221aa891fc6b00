# What must not compile, and what the compiler must say.
#
# A case is one file, tests/misuse/<mistake>.cpp. It is compiled twice: as it is, when it must compile, and with
# MISUSE defined, when it must not. So it shows the right way beside the wrong one, and cannot fail for want of a header:
#
#     // must-say: write as<centimetre>(x)          the compiler's text holds this; at least one such line
#     // must-not-say: boost::mpl                   and does not hold this
#     // must-say (gcc): ...                        for one compiler only: gcc or clang
#     // must-be-short                              at most 12 lines, as what is longer is not read
#     #include <turncloth.hpp>
#     using namespace turncloth::literals;
#     #ifdef MISUSE
#     auto total = 1_in + 1_cm;
#     #else
#     auto total = 1_in + as<inch>(1_cm);
#     #endif
#
# A control, tests/misuse/allowed_<use>.cpp, has no such lines and must compile without a warning.
# Texts are compared as they stand, without the source lines that compilers quote.
#
# cmake -D CASE=<file> -D COMPILER=<path> -D COMPILER_ID=<GNU or Clang> -D "FLAGS=<flag;flag>" -P check.cmake
cmake_minimum_required(VERSION 3.25)

set(ENV{LC_ALL} C) # plain quotes in what the compiler says
set(family gcc)
set(no_quoted_source -fno-diagnostics-show-caret)
if(COMPILER_ID MATCHES "Clang")
    set(family clang)
    set(no_quoted_source -fno-caret-diagnostics)
endif()

function(compile exit_code text)
    execute_process(COMMAND "${COMPILER}" ${FLAGS} ${no_quoted_source} -fsyntax-only ${ARGN} "${CASE}"
        RESULT_VARIABLE result OUTPUT_VARIABLE said ERROR_VARIABLE said)
    set(${exit_code} "${result}" PARENT_SCOPE)
    set(${text} "${said}" PARENT_SCOPE)
endfunction()

compile(code said -Wall -Wextra -Werror)
if(NOT code EQUAL 0)
    message("${said}")
    message(FATAL_ERROR "${CASE} must compile where MISUSE is not defined; what the compiler says stands above")
endif()
cmake_path(GET CASE FILENAME name)
file(READ "${CASE}" source)
if(name MATCHES "^allowed_")
    if(source MATCHES "(^|\n)// must")
        message(FATAL_ERROR "${name} is a control, and a control has nothing it must say")
    endif()
    return()
endif()

compile(code said -DMISUSE)
if(code EQUAL 0)
    message(FATAL_ERROR "${name} compiles with MISUSE defined, and must not")
endif()

# A loop over the text, as a CMake list would stumble over brackets and semicolons.
set(complaints "")
set(sayings 0)
while(source MATCHES "(^|\n)// (must[^\n]*)")
    set(line "${CMAKE_MATCH_2}")
    string(FIND "${source}" "// ${line}" at)
    string(LENGTH "// ${line}" length)
    math(EXPR at "${at} + ${length}")
    string(SUBSTRING "${source}" ${at} -1 source)
    if(line STREQUAL "must-be-short")
        string(REGEX MATCHALL "\n" breaks "${said}")
        list(LENGTH breaks lines)
        if(lines GREATER 12)
            string(APPEND complaints "  it must say so in 12 lines at most: it took ${lines}\n")
        endif()
        continue()
    endif()
    if(NOT line MATCHES "^must-(not-)?say( \\((gcc|clang)\\))?: (.*[^ ])")
        string(APPEND complaints "  no such directive: // ${line}\n")
        continue()
    endif()
    set(forbidden "${CMAKE_MATCH_1}")
    set(only "${CMAKE_MATCH_3}")
    set(text "${CMAKE_MATCH_4}")
    if(only AND NOT only STREQUAL family)
        continue()
    endif()
    string(FIND "${said}" "${text}" found)
    if(forbidden AND NOT found EQUAL -1)
        string(APPEND complaints "  it must not say: ${text}\n")
    elseif(NOT forbidden AND found EQUAL -1)
        string(APPEND complaints "  it must say: ${text}\n")
    endif()
    if(NOT forbidden)
        math(EXPR sayings "${sayings} + 1")
    endif()
endwhile()
if(sayings EQUAL 0)
    string(APPEND complaints "  the case does not state what must be said (// must-say: ...)\n")
endif()
if(NOT complaints STREQUAL "")
    message("${said}")
    message(FATAL_ERROR "${name}:\n${complaints}What the compiler (${family}) says stands above.")
endif()
