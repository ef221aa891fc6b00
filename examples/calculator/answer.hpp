// Questions that a reader of a blog asks, answered as text for a page or a program.
//
//   answer(R"({"ask": "bound", "units": "in", "width": "14 in", "height": 11, "binding": "1/2"})")
//
// A question is a JSON object. "ask" names a calculation (calculation.hpp), "units" is in or cm, for numbers that have
// none; its other members are what a person typed or a program gave. The answer is JSON:
//
//   {"lines": [{"label": "outer layer, cut width", "figure": "16 in (40.6 cm)", "working": "16 in = ..."}],
//    "outer": {"width": {"exact": "16", "unit": "in", "near": 16, "text": ..., "working": ...}, ...},
//    "cautions": ["Cut away from the hand that holds the rule, ..."], "drawing": "<svg ...>", "printed": "<svg ...>"}
//   {"refused": {"sentence": "cannot read ...", "kind": "unreadable", "field": "width", "what": "a measurement", ...}}
//
// "lines" and "cautions" are for people, the other names for programs. "drawing" is for the screen; "printed" is the same
// as a whole page of paper, true to its scale. Two further questions are about the calculations themselves:
//
//   {"ask": "list"}                                   what each is called and asks for, with first values
//   {"ask": "with_units", "of": "bound", ...}         what was typed with its units written out: {"width": "14 in", ...}
//
// The same code is compiled for the browser (WebAssembly) and natively, where the tests compare the two.
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_ANSWER_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_ANSWER_HPP

#include <string>
#include <string_view>

std::string answer(std::string_view question);

#endif
