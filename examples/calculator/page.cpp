// The one function that the page calls; everything else is answer.cpp. Built only for the page, by cmake/calculator.sh.
#ifdef __EMSCRIPTEN__
#include "answer.hpp"

#include <emscripten/emscripten.h>

/// The text stays good until the next call.
extern "C" EMSCRIPTEN_KEEPALIVE const char* turncloth_answer(const char* question) {
    static std::string text;
    text = answer(question);
    return text.c_str();
}
#endif
