# What stands twice in the repository agrees: the one-file header with include/, the recipes with the version.
#
#   cmake -D SCRATCH=<folder> -P tests/packaging/check.cmake
cmake_minimum_required(VERSION 3.25)
set(root "${CMAKE_CURRENT_LIST_DIR}/../..")
include("${root}/cmake/version.cmake")

execute_process(COMMAND "${CMAKE_COMMAND}" -P "${root}/cmake/single_header.cmake" "${SCRATCH}/single/turncloth.hpp"
    COMMAND_ERROR_IS_FATAL ANY)
file(READ "${SCRATCH}/single/turncloth.hpp" wanted)
file(READ "${root}/cmake/single/turncloth.hpp" found)
if(NOT found STREQUAL wanted)
    message(FATAL_ERROR "cmake/single/turncloth.hpp is not what include/ makes: "
        "cmake -P cmake/single_header.cmake cmake/single/turncloth.hpp writes it anew")
endif()

read_version("${root}/include/turncloth/version.hpp" version)
file(READ "${root}/cmake/vcpkg/vcpkg.json" recipe)
string(JSON recipe_version GET "${recipe}" version)
if(NOT recipe_version STREQUAL version)
    message(FATAL_ERROR "cmake/vcpkg/vcpkg.json says version ${recipe_version}, include/turncloth/version.hpp ${version}")
endif()
