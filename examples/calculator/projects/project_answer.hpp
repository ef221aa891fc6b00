// A project as a file, made at a size and told: its sheet for programs, its handout for whoever makes it.
//
//   project_answer(R"({"ask": "handout", "design": "{\"turncloth_design\": 1, ...}", "size": "14 x 12 in"})")
//
// A question is a JSON object. "ask" is sheet or handout; "design" the text of the file (design/json.hpp); "size" the
// finished size, the file's own where none is given. "units" (in, cm or both), "author", "licence", "date", "workings"
// (true or false) and "cloth_width" may be there besides. The answer is JSON:
//
//   {"name": "Peg bag, pockets: 2", "size": "14 x 12 in", "text": the sheet to be read, "sheet": as sheet/json.hpp has it}
//   {"name", "size", "text", "html": one file, without a script and with nothing from elsewhere}
//   {"refused": {"sentence", "kind", "field", ..., "faults": [{"where": "/pieces/0/width", "why", "character"}]}}
//
// "faults" are all that the file has, where it is the file that is refused. Figures are those that turncloth_sheets prints
// of the same file at the same size.
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_PROJECT_ANSWER_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_PROJECT_ANSWER_HPP

#include <string>
#include <string_view>

std::string project_answer(std::string_view question);

#endif
