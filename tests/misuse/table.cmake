# The table of MESSAGES.md, made of the cases beside it: what is forbidden, what to write instead, and what the compiler's
# text holds, as each case states it and its own test finds it.
#
# cmake -P tests/misuse/table.cmake               writes MESSAGES.md
# cmake -D CHECK=ON -P tests/misuse/table.cmake   fails where MESSAGES.md is not what would be written
cmake_minimum_required(VERSION 3.25)

# One cell: lines joined, and nothing that a table would take for its own.
function(cell result text)
    string(STRIP "${text}" text)
    string(REPLACE "|" "\\|" text "${text}")
    string(REGEX REPLACE "\n+" "`<br>`" text "${text}")
    set(${result} "`${text}`" PARENT_SCOPE)
endfunction()

set(page "# What does not compile, and what the compiler says

Made of the cases in this folder by `cmake -P tests/misuse/table.cmake`; the tests compile each of them with GCC and with
Clang, both ways round, and look for these words in what the compiler says.

| you wrote | write | the compiler says |
|---|---|---|
")
file(GLOB cases "${CMAKE_CURRENT_LIST_DIR}/*.cpp")
list(SORT cases)
foreach(case IN LISTS cases)
    cmake_path(GET case FILENAME name)
    if(name MATCHES "^allowed_")
        continue()
    endif()
    file(READ "${case}" source)
    string(REGEX MATCH "#ifdef MISUSE\n(.*)#else\n(.*)#endif" found "${source}")
    if(NOT found)
        message(FATAL_ERROR "${name} does not show the wrong way and the right way between #ifdef MISUSE, #else and #endif")
    endif()
    cell(wrong "${CMAKE_MATCH_1}")
    cell(right "${CMAKE_MATCH_2}")
    set(says "")
    while(source MATCHES "// must-say( \\((gcc|clang)\\))?: ([^\n]*[^\n ])")
        set(only "${CMAKE_MATCH_2}")
        set(line "${CMAKE_MATCH_0}")
        cell(text "${CMAKE_MATCH_3}")
        string(REPLACE "gcc" "GCC: " only "${only}")
        string(REPLACE "clang" "Clang: " only "${only}")
        string(APPEND says "${says_break}${only}${text}")
        set(says_break "<br>")
        string(FIND "${source}" "${line}" at)
        string(LENGTH "${line}" length)
        math(EXPR at "${at} + ${length}")
        string(SUBSTRING "${source}" ${at} -1 source)
    endwhile()
    set(says_break "")
    string(APPEND page "| ${wrong} | ${right} | ${says} |\n")
endforeach()

set(file "${CMAKE_CURRENT_LIST_DIR}/MESSAGES.md")
if(NOT CHECK)
    file(WRITE "${file}" "${page}")
    return()
endif()
file(READ "${file}" stands)
if(NOT stands STREQUAL page)
    message(FATAL_ERROR "tests/misuse/MESSAGES.md is not what its cases say: cmake -P tests/misuse/table.cmake writes it anew")
endif()
