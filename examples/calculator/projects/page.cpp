// The one function that a page calls of projects; everything else is project_answer.cpp. Built only by cmake/calculator.sh.
#ifdef __EMSCRIPTEN__
#include "project_answer.hpp"

#include <emscripten/emscripten.h>

/// The text stays good until the next call.
extern "C" EMSCRIPTEN_KEEPALIVE const char* turncloth_project(const char* question) {
    static std::string text;
    text = project_answer(question);
    return text.c_str();
}
#endif
