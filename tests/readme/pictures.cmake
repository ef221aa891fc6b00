# The pictures of examples/guide are what its program draws, byte for byte.
#
#   cmake -D PROGRAM=<turncloth_guide> -D SCRATCH=<folder> -P tests/readme/pictures.cmake
cmake_minimum_required(VERSION 3.25)
set(kept "${CMAKE_CURRENT_LIST_DIR}/../../examples/guide/pictures")
file(REMOVE_RECURSE "${SCRATCH}")
file(MAKE_DIRECTORY "${SCRATCH}")
execute_process(COMMAND "${PROGRAM}" "${SCRATCH}" COMMAND_ERROR_IS_FATAL ANY)
file(GLOB drawn RELATIVE "${SCRATCH}" "${SCRATCH}/*.svg")
file(GLOB found RELATIVE "${kept}" "${kept}/*.svg")
if(NOT drawn STREQUAL found OR NOT drawn)
    message(FATAL_ERROR "turncloth_guide draws ${drawn}, but examples/guide/pictures holds ${found}")
endif()
foreach(picture IN LISTS drawn)
    file(READ "${SCRATCH}/${picture}" wanted)
    file(READ "${kept}/${picture}" is)
    if(NOT is STREQUAL wanted)
        message(FATAL_ERROR "examples/guide/pictures/${picture} is not what turncloth_guide draws: "
            "run turncloth_guide examples/guide/pictures")
    endif()
endforeach()
