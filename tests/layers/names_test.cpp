// The names of tests are sentences in one style: they begin in lower case, but for what is written in capitals, say more
// than a word, and end without a full stop.
#include "../vectors.hpp"
#include "tree.hpp"

#include <doctest/doctest.h>

#include <cctype>
#include <regex>
#include <string>
#include <vector>

namespace {

using std::string;

bool is_upper(char c) { return std::isupper(static_cast<unsigned char>(c)) != 0; }

bool in_style(const string& name) {
    const bool capital =
        is_upper(name.at(0)) && !(name.size() > 1 && (is_upper(name[1]) || std::isdigit(name[1]) != 0));
    return !capital && name.find(' ') != string::npos && !name.ends_with('.');
}

std::vector<string> names_in(const string& text) {
    static const std::regex test_case(R"re(TEST_CASE(?:_TEMPLATE)?\(\s*"([^"]+)")re");
    std::vector<string> names;
    for (std::sregex_iterator at(text.begin(), text.end(), test_case), end; at != end; ++at)
        names.push_back((*at)[1]);
    return names;
}

} // namespace

TEST_CASE("the names of all tests are sentences in one style") {
    int seen = 0;
    string out_of_style;
    for (const auto& file : layers::files_in("tests", "_test.cpp", "."))
        for (const string& name : names_in(file.text)) {
            ++seen;
            if (!in_style(name))
                out_of_style += file.path + ": " + name + "\n";
        }
    CHECK(out_of_style == "");
    CHECK(seen > 500);
}

TEST_CASE("a name in another style is seen") {
    CHECK(in_style("a hem takes its depth twice"));
    CHECK(in_style("GNU units agrees"));
    CHECK(in_style("A4 and Letter hold the same"));
    CHECK_FALSE(in_style("A hem takes its depth twice"));
    CHECK_FALSE(in_style("hems"));
    CHECK_FALSE(in_style("a hem takes its depth twice."));
    CHECK(names_in("TEST_CASE(\"a b\") {}\nTEST_CASE_TEMPLATE(\n    \"c d\", int) {}") ==
          std::vector<string>{"a b", "c d"});
}
