# The sources of turncloth::compiled make each function that is promised to its users, and each of them once.
#
#   cmake -D "COMPILER=<c++>;<option>..." -P tests/packaging/compiled.cmake
#
# A line of TURNCLOTH_ONCE names a unit, which nothing of the standard library does; what is no template is marked as used.
cmake_minimum_required(VERSION 3.25)
set(root "${CMAKE_CURRENT_LIST_DIR}/../..")

# lines_of(<variable> <regex> <source> <option>...): what a file becomes where it is preprocessed, blanks left out.
function(lines_of variable regex source)
    execute_process(COMMAND ${COMPILER} -std=c++20 -E -P "-I${root}/include" ${ARGN} "${root}/${source}"
        OUTPUT_VARIABLE text COMMAND_ERROR_IS_FATAL ANY)
    string(REGEX REPLACE "[][]|; *" "" text "${text}")
    string(REGEX MATCHALL "[^\n]+" lines "${text}")
    list(FILTER lines INCLUDE REGEX "${regex}")
    list(TRANSFORM lines REPLACE " |extern " "")
    set(${variable} ${${variable}} ${lines} PARENT_SCOPE)
endfunction()

set(used "^ *gnu::used inline")
lines_of(promised "^ *extern template .*(inch|centimetre)" include/turncloth/all.hpp -DTURNCLOTH_COMPILED)
lines_of(used_promised "${used}" include/turncloth/all.hpp -DTURNCLOTH_COMPILING)
list(APPEND promised ${used_promised})
file(GLOB sources RELATIVE "${root}" "${root}/cmake/compiled/*.cpp")
foreach(source IN LISTS sources)
    lines_of(made "^ *template [^<].*(inch|centimetre)|${used}" "${source}")
endforeach()
list(SORT promised)
list(SORT made)
list(LENGTH promised number)
if(number LESS 100)
    message(FATAL_ERROR "of what turncloth::compiled promises only ${number} lines were found")
endif()
if(NOT promised STREQUAL made)
    set(twice ${made})
    foreach(line IN LISTS promised)
        list(FIND twice "${line}" at)
        if(at EQUAL -1)
            message(SEND_ERROR "made by no source of cmake/compiled: ${line}")
        else()
            list(REMOVE_AT twice ${at})
        endif()
    endforeach()
    message(FATAL_ERROR "made more often than it is promised: ${twice}")
endif()
