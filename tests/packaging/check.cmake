# What stands twice in the repository agrees: the recipes with the version. And nothing is added at its top.
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

# What lies at the top is what a reader finds there first: nothing is added beside it, dot-files apart.
set(at_the_top CMakeLists.txt README.md DEVELOPERS.md LICENSE include tests bench examples cmake)
execute_process(COMMAND git ls-tree --name-only HEAD WORKING_DIRECTORY "${root}" OUTPUT_VARIABLE tracked ERROR_QUIET)
string(REGEX MATCHALL "[^\n]+" tracked "${tracked}")
list(FILTER tracked EXCLUDE REGEX "^\\.")
list(REMOVE_ITEM tracked ${at_the_top})
if(tracked)
    message(FATAL_ERROR "At the top of the repository lies ${tracked}, beside ${at_the_top}")
endif()
