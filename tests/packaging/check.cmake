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
