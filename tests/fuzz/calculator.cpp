// Questions to the blog's calculator, of any bytes: always answered, in JSON, with lines or with a refusal.
#include "../../examples/calculator/answer.hpp"
#include "feed.hpp"

#include <nlohmann/json.hpp>

using namespace fuzzing;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto said = nlohmann::json::parse(answer({reinterpret_cast<const char*>(data), size}));
    if (said.contains("refused"))
        must(!said["refused"]["sentence"].get<std::string>().empty(), "a refusal says why");
    else if (said.contains("lines"))
        must(!said["lines"].empty(), "an answer has lines");
    return 0;
}
