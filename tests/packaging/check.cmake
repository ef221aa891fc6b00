# What stands twice in the repository agrees: the recipes with the version.
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
