// Drafting files of any text: read, or refused with a typed error that says why and, where it is of a line, which.
#include "../../examples/drafting/drafting_file.hpp"
#include "feed.hpp"

using namespace fuzzing;

namespace {

/// Half of it words that a file may hold, so that lines are reached which no chance would write.
std::string any_file(feed& bytes) {
    static constexpr const char* words[] = {"title: Pad\n",
                                            "unit: cm\n",
                                            "unit: in\n",
                                            "unit: mm\n",
                                            "piece: cover\n",
                                            "material: canvas\n",
                                            "cut: 2\n",
                                            "turn: allowed\n",
                                            "grain: 10; 2; 10; 20\n",
                                            "all edges: seam 1.5\n",
                                            "corner: 0; 0\n",
                                            "corner: 30; 0\n",
                                            "corner: 30; 20\n",
                                            "corner: 0; 20\n",
                                            "edge: double-turned hem 1; 3\n",
                                            "notch: 12 1/2\n",
                                            "; reflected in edge after\n",
                                            "seam ",
                                            ": ",
                                            "; ",
                                            "\n",
                                            "# "};
    std::string all;
    while (bytes.remaining_bytes() > 0 && all.size() < 4000)
        all += bytes.ConsumeBool() ? words[bytes.ConsumeIntegralInRange<std::size_t>(0, std::size(words) - 1)]
                                   : bytes.text(8);
    return all;
}

/// Without what could end the sentence or drive a terminal.
bool is_plain(const std::string& sentence) {
    return std::none_of(sentence.begin(), sentence.end(), [](unsigned char c) { return c < 0x20 || c == 0x7F; });
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    const std::string file = any_file(bytes);
    const auto ends = std::count_if(file.begin(), file.end(), [](char c) { return c == '\n' || c == '\r'; });
    const auto lines = static_cast<std::size_t>(ends) + 1;
    try {
        const auto read = drafting::read_drafting(file);
        std::visit([](const auto& made) { must(!made.title.empty(), "a drafting that is read has a title"); }, read);
    } catch (const drafting::drafting_error& e) {
        must(e.facts().index.value_or(0) <= lines, "a refusal names a line of the file");
        must(is_plain(e.what()), "a refusal can be printed");
    } catch (const error& e) {
        must(e.what()[0] != '\0', "a refusal says why");
    }
    return 0;
}
