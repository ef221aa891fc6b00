// Tests at random can be run again: their generators are those of tests/at_random.hpp, which say their seed with what
// fails, and a loop of cases is counted by its generator, which says the case.
#include "tree.hpp"

#include <doctest/doctest.h>

#include <regex>
#include <string>
#include <string_view>

namespace {

using std::string;

/// Generators that would say nothing.
string silent_ones(const string& text) {
    static const std::regex made(
        R"(\b(?:std::(?:mt19937\w*|minstd\w*|default_random_engine|random_device)|lay_random) \w+[({;])");
    string found;
    for (std::sregex_iterator at(text.begin(), text.end(), made), end; at != end; ++at)
        found += at->str() + "\n";
    return found;
}

/// Loops that check something with a generator and count their cases themselves.
string uncounted_loops(const string& text) {
    static const std::regex made(R"(\n    (?:\w+::)*(?:sampler|maker|dice|seeded<[\w:]+>) (\w+)\()");
    static const std::regex check(R"(\b(?:CHECK|REQUIRE|FAIL))");
    string found;
    std::smatch generator;
    for (auto from = text.cbegin(); std::regex_search(from, text.cend(), generator, made);) {
        from = generator[0].second;
        const string test(from, text.cbegin() + static_cast<std::ptrdiff_t>(
                                                    text.find("\n}", static_cast<std::size_t>(from - text.cbegin()))));
        const std::regex loop(R"(\n    for \(\S+ (\w+) = 0; \1 < [\d']+; \+\+\1\)(?: \{\n[^]*?\n    \}|[^{}]*?;))");
        const std::regex drawn("\\b" + generator[1].str() + "\\b");
        for (std::sregex_iterator at(test.begin(), test.end(), loop), end; at != end; ++at)
            if (const string body = at->str(); std::regex_search(body, drawn) && std::regex_search(body, check))
                found += body.substr(1, body.find('\n', 1) - 1) + "\n";
    }
    return found;
}

} // namespace

TEST_CASE("every generator in the tests says its seed, and every loop of cases its case") {
    for (const auto& file : layers::files_in("tests", "pp", ".")) {
        if (file.path.starts_with("tests/fuzz/") || file.path == "tests/layers/random_test.cpp")
            continue;
        INFO(file.path);
        CHECK(silent_ones(file.text) == "");
        CHECK(uncounted_loops(file.text) == "");
    }
}

TEST_CASE("a silent generator and a loop that counts itself are seen") {
    CHECK(silent_ones("    std::mt19937 bits(3);\n    std::random_device any;\n") ==
          "std::mt19937 bits(\nstd::random_device any;\n");
    CHECK(silent_ones("int roll(std::mt19937& dice, int low);\n") == "");
    const string before = "TEST_CASE(\"a\") {\n    against_gmp::sampler any(3);\n";
    CHECK(
        uncounted_loops(before + "    for (int i = 0; i < 1'000; ++i) {\n        CHECK(any.bits() > i);\n    }\n}\n") ==
        "    for (int i = 0; i < 1'000; ++i) {\n");
    CHECK(uncounted_loops(before + "    for (int i = 0; i < 9; ++i)\n        CHECK(any.bits() > i);\n}\n") ==
          "    for (int i = 0; i < 9; ++i)\n");
    CHECK(uncounted_loops(before + "    for (int i = 0; i < 9; ++i)\n        l.push_back(any.bits());\n}\n") == "");
    CHECK(uncounted_loops(before + "    while (any.another_of(9))\n        CHECK(any.bits() > 0);\n}\n") == "");
}
