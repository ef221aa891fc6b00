// Questions that a reader of the blog asks, answered as text for a page to show.
//
//   answer("ask=bound&units=inches&width=14 in&height=11 in&binding=1/2")
//
// A question is a row of name=value pairs (percent-encoded, as in the address of a page); every value is what a person
// typed. The answer is JSON:
//
//   {"lines": [{"label": "outer, cut", "figure": "16 x 13 in (40.6 x 33 cm)", "working": "16 in = ..."}],
//    "drawing": "<svg ...>", "printed": "<svg ...>"}
//   {"refused": "cannot read ...", "field": "width"}
//
// "drawing" is for the screen; "printed" is the same as a whole page of paper, true to its scale, and empty for a drawing
// that has none. With write=units, the answer is what was typed with its units written out: {"fields": {"width": "14 in",
// ...}}.
//
// The same code is compiled for the page (WebAssembly) and natively, where the tests compare the two.
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_ANSWER_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_ANSWER_HPP

#include <string>
#include <string_view>

std::string answer(std::string_view text);

#endif
