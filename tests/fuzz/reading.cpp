// Text that is read as a measurement: refused with text_error or overflow_error alone; what is read is written, and read
// back equal, and blanks around it change nothing.
#include "feed.hpp"

#include <optional>
#include <string_view>

using namespace fuzzing;

namespace {

template <class Read>
auto read_or_refuse(Read read, std::string_view text) -> std::optional<decltype(read(text))> {
    try {
        return read(text);
    } catch (const text_error& e) {
        must(e.position() <= text.size(), "the place of a mistake lies in the text");
        must(!e.reason().empty(), "a mistake has a reason");
    } catch (const overflow_error&) {
    }
    return std::nullopt;
}

template <class Read>
void check(Read read, std::string_view text) {
    const auto value = read_or_refuse(read, text);
    if (!value)
        return;
    must(read(to_text(*value)) == *value, "what is written reads back equal");
    must(read(" \t" + std::string(text) + "\u00A0\n") == *value, "blanks around a measurement change nothing");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    check([](std::string_view t) { return read_fraction(t); }, text);
    check([](std::string_view t) { return read_length<inch>(t); }, text);
    check([](std::string_view t) { return read_length<yard>(t); }, text);
    check([](std::string_view t) { return read_length<centimetre>(t); }, text);
    check([](std::string_view t) { return read_length<metre>(t); }, text);
    return 0;
}
