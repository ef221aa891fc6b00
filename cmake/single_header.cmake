# cmake -P cmake/single_header.cmake <file to write> [light|all]: the library as one file, for a project that copies one
# header. `light`, where nothing is said, is <turncloth.hpp>; `all` is <turncloth/all.hpp>.
#
# Each header of ours stands once, where it is first included, with its synopsis; what is not ours is included as it was.
# The file opens with its manifest: the version, what is in it and what is left out. It needs Boost's headers beside it.
cmake_minimum_required(VERSION 3.25)
include("${CMAKE_CURRENT_LIST_DIR}/version.cmake")
set(include_dir "${CMAKE_CURRENT_LIST_DIR}/../include")

# Appends a header to `whole`, those that it includes before the line after its include.
function(append_header name)
    if(name IN_LIST seen)
        return()
    endif()
    list(APPEND seen "${name}")
    file(READ "${include_dir}/${name}" text)
    while(text MATCHES "(^|\n)(#include <(turncloth[^>]*)>[^\n]*\n)")
        set(line "${CMAKE_MATCH_2}")
        set(inner "${CMAKE_MATCH_3}")
        # The first line that is an include, and not one that a synopsis shows.
        string(FIND "\n${text}" "\n${line}" at)
        string(SUBSTRING "${text}" 0 ${at} before)
        string(LENGTH "${line}" length)
        math(EXPR at "${at} + ${length}")
        string(SUBSTRING "${text}" ${at} -1 text)
        string(APPEND whole "${before}")
        append_header("${inner}")
    endwhile()
    set(whole "${whole}${text}" PARENT_SCOPE)
    set(seen "${seen}" PARENT_SCOPE)
endfunction()

# The public headers of a list, folder by folder, as comment lines.
function(manifest_of headers variable)
    set(lines "")
    foreach(folder IN ITEMS measure page marks panel notions cloth making sheet draw handout design testing)
        set(names ${headers})
        list(FILTER names INCLUDE REGEX "^turncloth/${folder}/[^/]+\\.hpp$")
        list(TRANSFORM names REPLACE "^turncloth/${folder}/(.*)\\.hpp$" "\\1")
        list(SORT names)
        list(JOIN names ", " names)
        if(names)
            string(APPEND lines "//   ${folder}: ${names}\n")
        endif()
    endforeach()
    set(${variable} "${lines}" PARENT_SCOPE)
endfunction()

if(NOT CMAKE_ARGV3 OR NOT "${CMAKE_ARGV4}" MATCHES "^(light|all|)$")
    message(FATAL_ERROR "usage: cmake -P cmake/single_header.cmake <file to write> [light|all]")
endif()
set(from turncloth.hpp)
if(CMAKE_ARGV4 STREQUAL "all")
    set(from turncloth/all.hpp)
endif()
read_version("${include_dir}/turncloth/version.hpp" version)
file(STRINGS "${CMAKE_CURRENT_LIST_DIR}/../LICENSE" licence)
list(GET licence 0 licence)
set(whole "")
set(seen "")
append_header(${from})
if(whole MATCHES "\n#include <(turncloth[^>]*)>")
    message(FATAL_ERROR "an include of ${CMAKE_MATCH_1} was not replaced by what it includes")
endif()

file(GLOB_RECURSE left_out RELATIVE "${include_dir}" "${include_dir}/turncloth/*.hpp")
list(REMOVE_ITEM left_out ${seen})
manifest_of("${seen}" in)
manifest_of("${left_out}" out)
file(WRITE "${CMAKE_ARGV3}" "// turncloth ${version} in one file, made by cmake/single_header.cmake from <${from}>.
// ${licence}
//
// In it
${in}//
// Left out
${out}
${whole}")
