# A program built with Meson takes the library as a subproject, with the recipe of cmake/meson.
#
#   cmake -D MESON=<meson> -D SCRATCH=<folder> -P tests/packaging/meson.cmake
cmake_minimum_required(VERSION 3.25)
set(root "${CMAKE_CURRENT_LIST_DIR}/../..")
file(REMOVE_RECURSE "${SCRATCH}")
file(WRITE "${SCRATCH}/meson.build" "project('user', 'cpp', default_options: ['cpp_std=c++20', 'warning_level=2', 'werror=true'])
executable('user', 'main.cpp', dependencies: dependency('turncloth', version: '>=0.1'))
")
file(WRITE "${SCRATCH}/main.cpp" "#include <turncloth/measure/read.hpp>
using namespace turncloth;
static_assert(\"12 1/2\"_in * 2 == 25_in);
int main() {}
")
# In place of what the wrap would fetch, the sources as they are, with its folder laid over them.
file(COPY "${root}/include" "${root}/cmake/meson/packagefiles/turncloth/meson.build"
    DESTINATION "${SCRATCH}/subprojects/turncloth-sources")
file(READ "${root}/cmake/meson/turncloth.wrap" wrap)
string(REGEX REPLACE "url =[^[]*patch_directory = turncloth\n" "directory = turncloth-sources\n" wrap "${wrap}")
string(REPLACE "[wrap-git]" "[wrap-file]" wrap "${wrap}")
file(WRITE "${SCRATCH}/subprojects/turncloth.wrap" "${wrap}")
foreach(step IN ITEMS "setup;${SCRATCH}/build;${SCRATCH}" "compile;-C;${SCRATCH}/build")
    execute_process(COMMAND "${MESON}" ${step} OUTPUT_VARIABLE said ERROR_VARIABLE said RESULT_VARIABLE result)
    if(NOT result EQUAL 0)
        message(FATAL_ERROR "meson ${step}:\n${said}")
    endif()
endforeach()
execute_process(COMMAND "${SCRATCH}/build/user" COMMAND_ERROR_IS_FATAL ANY)
