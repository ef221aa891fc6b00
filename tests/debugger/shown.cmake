# Drives a debugger through tests/debugger/shown.cpp, and compares what it prints of each value.
#
# cmake -D DEBUGGER=<gdb or lldb> -D WITH=<path> -D PRINTERS=<turncloth.py> -D PROGRAM=<shown> -P shown.cmake
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

set(load -ex "source ${PRINTERS}" -ex "break shown::stop" -ex run)
set(show -ex)
set(verb print)
set(batch -nx -batch)
if(DEBUGGER STREQUAL "lldb")
    set(load -o "command script import ${PRINTERS}" -o "breakpoint set --name shown::stop" -o run)
    set(show -o)
    set(verb "target variable")
    set(batch --no-lldbinit --batch)
endif()
set(commands ${load})
set(rest ${values})
while(rest)
    list(POP_FRONT rest name text)
    list(APPEND commands ${show} "${verb} shown::${name}")
endwhile()
execute_process(COMMAND "${WITH}" ${batch} ${commands} "${PROGRAM}" OUTPUT_VARIABLE said ERROR_VARIABLE said)

set(number 0)
set(rest ${values})
while(rest)
    list(POP_FRONT rest name text)
    math(EXPR number "${number} + 1")
    set(line "\$${number} = ${text}\n")
    if(DEBUGGER STREQUAL "lldb")
        set(line " shown::${name} = ${text}\n")
    endif()
    string(FIND "${said}\n" "${line}" found)
    if(found EQUAL -1)
        message(FATAL_ERROR "${DEBUGGER} does not show ${text} as value ${number}:\n${said}")
    endif()
endwhile()
