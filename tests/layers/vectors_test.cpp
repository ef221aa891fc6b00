// A test that compares vectors prints both when they differ: it includes vectors.hpp.
#include "../vectors.hpp"
#include "tree.hpp"

#include <doctest/doctest.h>

#include <regex>
#include <string>
#include <utility>
#include <vector>

namespace {

bool compares_vectors(const std::string& text) {
    static const std::regex comparison(R"((^|\n) [^\n/]*==\s*(std::)?vector<)");
    return std::regex_search(text, comparison);
}

bool prints_vectors(const std::string& text) { return text.find("vectors.hpp") != std::string::npos; }

} // namespace

TEST_CASE("every test that compares vectors can print them") {
    int seen = 0;
    std::string blind;
    for (const auto& file : layers::files_in("tests", "_test.cpp", "."))
        if (compares_vectors(file.text)) {
            ++seen;
            if (!prints_vectors(file.text))
                blind += file.path + "\n";
        }
    CHECK(blind == "");
    CHECK(seen > 20);
}

TEST_CASE("a comparison of vectors is seen, and what is no comparison is not") {
    CHECK(compares_vectors("{\n    CHECK(names == std::vector<string>{\"a\"});"));
    CHECK(compares_vectors("{\n    CHECK(names ==\n          vector<string>{\"a\"});"));
    CHECK_FALSE(compares_vectors("{\n    // names == std::vector<string>{}"));
    CHECK_FALSE(compares_vectors("{\n    const std::vector<int> names;"));
}

TEST_CASE("vectors, and pairs in them, are printed one after another") {
    CHECK(doctest::toString(std::vector<std::string>{"fold", "press"}) == "[fold, press]");
    CHECK(doctest::toString(std::vector<std::pair<int, std::string>>{{2, "turn"}}) == "[(2, turn)]");
    CHECK(doctest::toString(std::vector<int>{}) == "[]");
}
