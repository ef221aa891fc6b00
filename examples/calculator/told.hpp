// What a question comes in as and what goes back for it, whatever is asked.
//
//   read_question(text)                  the JSON object that it is; throws field_error where it is none
//   no_answer(sentence, facts, field)    {"refused": {"sentence", "kind", "field", "what", "given", "least", "most", ...}}
//   said(json)                           as text, which is sound whatever was given
//
//   catch (const error& e) { return said(no_answer(e.what(), e.facts())); }
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_TOLD_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_TOLD_HPP

#include "calculation.hpp"

#include <string>
#include <string_view>

namespace calculator {

json read_question(std::string_view text);
json no_answer(const std::string& why, const turncloth::refusal& facts, const std::string& field = {});
std::string said(const json& j);

} // namespace calculator

#endif
