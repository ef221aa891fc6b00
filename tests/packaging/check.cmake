# What stands twice in the repository agrees: the recipes with the version, the presets with the options.
#
#   cmake -P tests/packaging/check.cmake
cmake_minimum_required(VERSION 3.25)
set(root "${CMAKE_CURRENT_LIST_DIR}/../..")
include("${root}/cmake/version.cmake")

read_version("${root}/include/turncloth/version.hpp" version)
file(READ "${root}/cmake/vcpkg/vcpkg.json" recipe)
string(JSON recipe_version GET "${recipe}" version)
if(NOT recipe_version STREQUAL version)
    message(FATAL_ERROR "cmake/vcpkg/vcpkg.json says version ${recipe_version}, include/turncloth/version.hpp ${version}")
endif()
function(require_in file says)
    file(READ "${root}/${file}" recipe)
    string(FIND "${recipe}" "${says}" found)
    if(found EQUAL -1)
        message(FATAL_ERROR "${file} does not say ${says}, as include/turncloth/version.hpp does")
    endif()
endfunction()
require_in(cmake/meson/packagefiles/turncloth/meson.build "version: '${version}'")
require_in(cmake/meson/turncloth.wrap "revision = v${version}\n")
require_in(cmake/bazel/MODULE.bazel "name = \"turncloth\", version = \"${version}\"")

# CMake reads the presets, and each thing that they set of turncloth's is an option of it.
execute_process(COMMAND "${CMAKE_COMMAND}" --list-presets=all WORKING_DIRECTORY "${root}"
    RESULT_VARIABLE unread OUTPUT_VARIABLE listed ERROR_VARIABLE listed)
if(unread OR NOT listed MATCHES "\"programs\".*\"tests\".*\"bench\"")
    message(FATAL_ERROR "CMakePresets.json is not read, or lacks a preset: ${listed}")
endif()
file(READ "${root}/CMakePresets.json" presets)
file(READ "${root}/CMakeLists.txt" project)
string(REGEX MATCHALL "TURNCLOTH_[A-Z]+" set_there "${presets}")
foreach(name IN LISTS set_there)
    if(NOT project MATCHES "option\\(${name} ")
        message(FATAL_ERROR "CMakePresets.json sets ${name}, which is no option of turncloth")
    endif()
endforeach()
