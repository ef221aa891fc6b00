# cmake -D "COMMAND=<program;argument;...>" -D REASON=<text> -P must_fail.cmake
# The command must fail and its output must hold the text. (ctest's own WILL_FAIL does not ask why.)
execute_process(COMMAND ${COMMAND} RESULT_VARIABLE code OUTPUT_VARIABLE said ERROR_VARIABLE said)
if(code EQUAL 0)
    message(FATAL_ERROR "It must fail and did not: ${COMMAND}\n${said}")
endif()
# CMake wraps its messages; a reason is compared as if it had not.
string(REGEX REPLACE "[ \n]+" " " unwrapped "${said}")
string(FIND "${unwrapped}" "${REASON}" found)
if(found EQUAL -1)
    message(FATAL_ERROR "It failed without giving the reason \"${REASON}\":\n${said}")
endif()
