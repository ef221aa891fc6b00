// The library's folders are layers: a header uses its own folder and those before it, and a sub-folder belongs to its
// folder alone. Headers and functions stay small. First the sources are held to it, then planted faults show that a
// breach is seen, and that both files are named.
#include "tree.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

using layers::folder_of;
using layers::headers;
using layers::in_sub_folder;
using layers::order;
using layers::read;
using layers::source;
using std::string;

constexpr int longest_header = 400;
constexpr int longest_function = 45;
constexpr int most_parameters = 5;

// What is still larger than that. The list only shrinks: an entry that is no longer a fault is one.
const std::vector<string> still_large{};

/// Programs and pages that show a user what to include.
std::vector<source> users() {
    std::vector<source> found = layers::files_in("examples", "pp", ".");
    found.push_back({"README.md", read("README.md")});
    found.push_back({"DEVELOPERS.md", read("DEVELOPERS.md")});
    found.push_back({"examples/guide/GUIDE.md", read("examples/guide/GUIDE.md")});
    return found;
}

auto position(const string& folder) { return std::find(order.begin(), order.end(), folder); }

string include_fault(const string& from, const string& to) {
    const string own = folder_of(from);
    const string used = folder_of(to);
    if (used.empty())
        return to == "turncloth/version.hpp" || own.empty() ? "" : "a header of a folder includes a collection";
    if (position(used) == order.end())
        return "a folder that has no place in the order of layers";
    if (own != used && own != "testing" && in_sub_folder(to))
        return "reaches into a sub-folder of " + used;
    if (!own.empty() && position(used) > position(own))
        return used + " comes after " + own;
    return "";
}

std::vector<string> include_faults(const std::vector<source>& sources) {
    std::vector<string> faults;
    for (const source& s : sources)
        for (const auto& [to, line] : layers::includes_of(s))
            if (const string why = include_fault(s.path, to); !why.empty())
                faults.push_back(s.path + ":" + std::to_string(line) + " includes " + to + ": " + why);
    return faults;
}

/// One chain of includes for each circle, as "a -> b -> a".
std::vector<string> circles(const std::vector<source>& sources) {
    std::map<string, std::vector<string>> uses;
    for (const source& s : sources)
        for (const auto& include : layers::includes_of(s))
            uses[s.path].push_back(include.of);
    std::vector<string> faults;
    std::vector<string> chain;
    std::set<string> done;
    const std::function<void(const string&)> visit = [&](const string& header) {
        if (const auto first = std::find(chain.begin(), chain.end(), header); first != chain.end()) {
            string circle;
            for (auto at = first; at != chain.end(); ++at)
                circle += *at + " -> ";
            faults.push_back(circle + header);
        } else if (!done.contains(header)) {
            chain.push_back(header);
            for (const string& used : uses[header])
                visit(used);
            chain.pop_back();
            done.insert(header);
        }
    };
    for (const source& s : sources)
        visit(s.path);
    return faults;
}

std::vector<string> size_faults(const std::vector<source>& sources) {
    std::vector<string> faults;
    for (const source& s : sources) {
        if (const int lines = layers::lines_in(s.text); lines > longest_header)
            faults.push_back(s.path + " has " + std::to_string(lines) + " lines");
        for (const auto& f : layers::functions_of(s)) {
            const string where = s.path + ": " + f.name;
            if (f.lines > longest_function)
                faults.push_back(where + " has " + std::to_string(f.lines) + " lines");
            if (f.parameters > most_parameters)
                faults.push_back(where + " has " + std::to_string(f.parameters) + " parameters");
        }
    }
    return faults;
}

string listed(const std::vector<string>& faults) {
    string text;
    for (const string& fault : faults)
        text += fault + "\n";
    return text;
}

// A header and its own second half.
const string still_circular =
    "turncloth/making/design.hpp -> turncloth/making/detail/check.hpp -> turncloth/making/design.hpp\n";

string repeated(const string& line, int times) {
    string text;
    for (int i = 0; i != times; ++i)
        text += line;
    return text;
}

} // namespace

TEST_CASE("a header includes its own folder and those before it") {
    REQUIRE(headers().size() > 50);
    CHECK(listed(include_faults(headers())) == "");
}

TEST_CASE("programs and pages include nothing that is internal") {
    REQUIRE(users().size() > 10);
    CHECK(listed(include_faults(users())) == "");
}

TEST_CASE("no headers include each other in a circle") { CHECK(listed(circles(headers())) == still_circular); }

TEST_CASE("headers and functions stay small") { CHECK(listed(size_faults(headers())) == listed(still_large)); }

TEST_CASE("an include of a later folder is seen, and both files are named") {
    const std::vector<source> planted{{"turncloth/measure/length.hpp", "\n#include <turncloth/panel/size.hpp>\n"}};
    CHECK(listed(include_faults(planted)) ==
          "turncloth/measure/length.hpp:2 includes turncloth/panel/size.hpp: panel comes after measure\n");
    CHECK(include_fault("turncloth/panel/size.hpp", "turncloth/measure/length.hpp").empty());
    CHECK(include_fault("turncloth/panel/size.hpp", "turncloth/hats/hat.hpp") ==
          "a folder that has no place in the order of layers");
    CHECK(include_fault("turncloth/panel/size.hpp", "turncloth.hpp") == "a header of a folder includes a collection");
}

TEST_CASE("an include into a sub-folder is seen, from whoever may not") {
    const string inside = "turncloth/cloth/lay/check.hpp";
    CHECK(include_fault("turncloth/sheet/purchases.hpp", inside) == "reaches into a sub-folder of cloth");
    CHECK(include_fault("examples/sheets/main.cpp", inside) == "reaches into a sub-folder of cloth");
    CHECK(include_fault("turncloth.hpp", inside) == "reaches into a sub-folder of cloth");
    CHECK(include_fault("turncloth/cloth/lay.hpp", inside).empty());
    CHECK(include_fault("turncloth/cloth/stock/solve.hpp", inside).empty());
    CHECK(include_fault("turncloth/testing/audit.hpp", inside).empty());
}

TEST_CASE("a circle is seen") {
    CHECK(listed(circles({{"turncloth/panel/a.hpp", "#include <turncloth/panel/b.hpp>\n"},
                          {"turncloth/panel/b.hpp", "#include <turncloth/panel/a.hpp>\n"}})) ==
          "turncloth/panel/a.hpp -> turncloth/panel/b.hpp -> turncloth/panel/a.hpp\n");
}

TEST_CASE("what is too long or too wide is seen") {
    CHECK(listed(size_faults({{"a.hpp", repeated("\n", 401)}})) == "a.hpp has 401 lines\n");
    const auto body = [](int lines) { return "int f() {\n" + repeated("    g();\n", lines - 2) + "}\n"; };
    CHECK(size_faults({{"a.hpp", body(45)}}).empty());
    CHECK(listed(size_faults({{"a.hpp", body(46)}})) == "a.hpp: f has 46 lines\n");
    CHECK(size_faults({{"a.hpp", "void f(int a, int b, int c, int d, int e) {}"}}).empty());
    CHECK(listed(size_faults({{"a.hpp", "void f(int a, int b, int c, int d, int e, int f) {}"}})) ==
          "a.hpp: f has 6 parameters\n");
}

TEST_CASE("functions are found in the shapes that the sources have") {
    const auto found = layers::functions_of({"a.hpp", R"(
namespace n {
#define NOT_A_FUNCTION(x) { x; }
template <class A, class B = pair<int, int>>
    requires(is<A>)
constexpr auto paired(const map<A, B>& a, int b = f({1, 2})) noexcept {
    const auto inner = [](int x, int y) { return x + y; };
    if (a) {
        return inner(1, 2);
    }
    return '{';
}
class thing {
public:
    explicit thing(int a, int b) : a_(a), b_{b} {}
    int operator()(int x) const { return x; }
    friend bool operator==(const thing& x, const thing& y) {
        return x.a_ == y.a_; // a brace in a comment: }
    }

private:
    int a_ = int{1'000};
};
struct point { int x = 0; };
inline const table words{{"a", 1}};
inline void last() {}
} // namespace n
)"});
    string seen;
    for (const auto& f : found)
        seen += f.name + " " + std::to_string(f.line) + "+" + std::to_string(f.lines) + " (" +
                std::to_string(f.parameters) + ") ";
    CHECK(seen == "paired 4+9 (2) thing 15+1 (2) operator() 16+1 (1) operator== 17+3 (2) last 26+1 (0) ");
}
