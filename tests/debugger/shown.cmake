# Drives gdb through tests/debugger/shown.cpp, and compares what it prints of each value.
#
# cmake -D GDB=<path> -D PRINTERS=<turncloth.py> -D PROGRAM=<shown> -P shown.cmake
cmake_minimum_required(VERSION 3.25)

set(values
    part "-12 1/2"
    depth "12 1/2 in"
    metric "31.75 cm"
    third "33 1/3 cm"
    cloth "63 sq in"
    pin "4 1/2 in from the finished edge"
    finished "finished 9 x 4 in"
    cut "cut 10 1/2 x 5 1/2 in"
    working "10 1/2 in = 9 + 2 x (1/4 + 1/2)"
    typed "60 cm")

set(commands -ex "source ${PRINTERS}" -ex "break shown::stop" -ex run)
set(expected "")
set(rest ${values})
while(rest)
    list(POP_FRONT rest name text)
    list(APPEND commands -ex "print shown::${name}")
    list(APPEND expected "${text}")
endwhile()
execute_process(COMMAND "${GDB}" -nx -batch ${commands} "${PROGRAM}" OUTPUT_VARIABLE said ERROR_VARIABLE said)

set(number 0)
foreach(text IN LISTS expected)
    math(EXPR number "${number} + 1")
    string(FIND "${said}\n" "\$${number} = ${text}\n" found)
    if(found EQUAL -1)
        message(FATAL_ERROR "gdb does not show ${text} as value ${number}:\n${said}")
    endif()
endforeach()
