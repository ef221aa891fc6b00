// Any bytes as a project's file: every fault has a reason, what is read is written and read back equal, and made at a size
// or refused with a typed error. The same bytes as an expression come to a value, or fail at a place in them.
#include "feed.hpp"
#include <turncloth/design/expression_value.hpp>
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>

using namespace fuzzing;

namespace {

void read_expression(const std::string& text) {
    expression_names names;
    names.add("finished width", expression_value::of(20_in));
    try {
        const expression_value v = value_of(expression(text), names);
        must(v.number.has_value(), "what is known comes to a number");
    } catch (const expression_error& refused) {
        must(refused.position() <= text.size(), "the place of a mistake lies in the text");
        must(!refused.reason().empty(), "a mistake has a reason");
    }
}

void read_file(const std::string& text) {
    try {
        const project_design d = read_design(text);
        must(read_design(to_json(d).dump()) == d, "what is written reads back equal");
        refused([&] { project_of(d, finished_size(20_in, 15_in)); });
        refused([&] { project_of(d, finished_size(50_cm, 40_cm), ruled<centimetre>("0.1"_cm)); });
    } catch (const design_error& refused) {
        must(!refused.faults().empty(), "a file that is refused has a fault");
        for (const design_fault& f : refused.faults())
            must(!f.why.empty(), "a fault has a reason");
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    read_expression(text);
    read_file(text);
    return 0;
}
