// What is public is of use to somebody: every name declared at the top of a folder's headers, outside detail, is used by
// another header, by something else in its own, by an example, or in the snippets of README, DEVELOPERS or the guide.
#include "tree.hpp"

#include <doctest/doctest.h>

#include <map>
#include <regex>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace {

using layers::source;
using std::string;

// What sheets and drawings begin to read.
constexpr std::string_view not_yet_read = "making";

struct declared {
    string name;
    std::size_t from, to; // with its body
};

/// "template <...> requires ..." before what is declared goes; a requires clause is in brackets or one word long.
string without_template(string head) {
    static const std::regex requirement(R"(^\s*requires\s*(?:[\w:]+(?=\s*[<(\s]))?)");
    head = std::regex_replace(head, std::regex("\\s+"), " ");
    while (true) {
        const std::size_t start = head.find_first_not_of(' ');
        if (start == string::npos || !head.substr(start).starts_with("template <"))
            return head;
        head = head.substr(layers::closing(head, head.find('<', start)) + 1);
        std::smatch clause;
        if (std::regex_search(head, clause, requirement)) {
            head = clause.suffix();
            if (const auto open = head.find_first_not_of(' ');
                open != string::npos && (head[open] == '(' || head[open] == '<'))
                head = head.substr(layers::closing(head, open) + 1);
        }
    }
}

/// The name that a declaration at the level of a namespace gives, or none.
string name_in(const string& declaration) {
    static const std::regex type(R"(^ ?(?:class|struct|enum class|enum|union) (\w+)\s*(?:$|[:;{]| final))");
    static const std::regex alias(R"(^ ?(?:using|concept) (\w+) =)");
    static const std::regex value(R"((\w+)(?:\[\w*\])? ?(?:=|$))");
    const string head = without_template(declaration);
    std::smatch found;
    if (std::regex_search(head, found, type) || std::regex_search(head, found, alias))
        return found[1];
    static const std::regex macro(R"(^ ?(?:TURNCLOTH|BOOST)_)");
    if (std::regex_search(head, macro))
        return {};
    if (const auto f = layers::declared_by(head); !f.name.empty())
        return f.name.starts_with("operator") || f.name.starts_with("__") ? "" : f.name;
    return head.find("operator") == string::npos && std::regex_search(head, found, value) ? found[1].str() : "";
}

/// Everything that a header declares for users.
std::vector<declared> public_names(const string& text) {
    static const std::regex space(R"(^\s*(?:inline )?namespace ([\w:]*)\s*$)");
    std::vector<declared> found;
    std::size_t head = 0;
    int brackets = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '(' || text[i] == ')')
            brackets += text[i] == '(' ? 1 : -1;
        if (brackets != 0 || (text[i] != '{' && text[i] != ';' && text[i] != '}'))
            continue;
        const string declaration = text.substr(head, i - head);
        std::smatch names;
        if (text[i] == '{' && std::regex_match(declaration, names, space)) {
            if (names[1].str().find("detail") != string::npos)
                i = layers::closing(text, i);
        } else if (text[i] != '}') {
            const std::size_t from = head;
            if (text[i] == '{')
                i = layers::closing(text, i);
            if (const string name = name_in(declaration); !name.empty())
                found.push_back({name, from, i});
        }
        head = i + 1;
    }
    return found;
}

std::set<string> words_in(const string& text) {
    std::set<string> words;
    for (std::size_t i = 0; i < text.size();) {
        std::size_t end = i;
        while (end < text.size() && (std::isalnum(static_cast<unsigned char>(text[end])) != 0 || text[end] == '_'))
            ++end;
        if (end != i)
            words.insert(text.substr(i, end - i));
        i = end == i ? i + 1 : end;
    }
    return words;
}

/// The C++ of a page.
string snippets_of(const string& page) {
    static const std::regex block("```cpp\n([^]*?)```");
    string all;
    for (std::sregex_iterator at(page.begin(), page.end(), block), end; at != end; ++at)
        all += (*at)[1];
    return all;
}

/// Names of headers that nobody uses, as "turncloth/panel/size.hpp: area_of".
std::vector<string> unused_names(const std::vector<source>& library, const std::vector<source>& users) {
    std::map<string, int> files_with; // how many files use a word
    std::map<string, std::set<string>> own;
    std::map<string, string> code;
    for (const auto* list : {&library, &users})
        for (const source& s : *list) {
            code[s.path] = layers::blanked(s.text);
            own[s.path] = words_in(code[s.path]);
            for (const string& word : own[s.path])
                ++files_with[word];
        }
    std::vector<string> unused;
    for (const source& s : library) {
        if (layers::in_sub_folder(s.path) || layers::folder_of(s.path).empty() ||
            layers::folder_of(s.path) == not_yet_read)
            continue;
        const auto names = public_names(code[s.path]);
        std::set<string> judged;
        for (const declared& d : names) {
            if (files_with[d.name] > 1 || !judged.insert(d.name).second)
                continue;
            string rest = code[s.path];
            for (const declared& same : names)
                if (same.name == d.name)
                    rest.replace(same.from, same.to - same.from, same.to - same.from, ' ');
            if (!words_in(rest).contains(d.name))
                unused.push_back(s.path + ": " + d.name);
        }
    }
    return unused;
}

string listed(const std::vector<string>& all) {
    string text;
    for (const string& one : all)
        text += one + "\n";
    return text;
}

std::vector<source> users() {
    std::vector<source> found = layers::files_in("examples", "pp", ".");
    for (const char* page : {"README.md", "DEVELOPERS.md", "examples/guide/GUIDE.md"})
        found.push_back({page, snippets_of(layers::read(page))});
    return found;
}

} // namespace

TEST_CASE("every public name is used by somebody") { CHECK(listed(unused_names(layers::headers(), users())) == ""); }

TEST_CASE("a name that nobody uses is seen, whatever it names") {
    const source header{"turncloth/panel/a.hpp", R"(
namespace turncloth {
namespace detail {
int inner();
} // namespace detail
enum class unused_kind { one, two };
struct unused_thing {
    unused_thing() = default;
    int member = 0;
};
template <class T, class U = pair<T, T>>
    requires(is<T>)
constexpr T unused_call(T a = {}) {
    return unused_call(a);
}
template <class T>
concept unused_concept = is<T>;
template <class T>
using unused_alias = pair<T, T>;
inline constexpr int unused_value = 3;
void used_elsewhere();
void used_here();
inline void used_in_page() { used_here(); }
} // namespace turncloth
)"};
    const source other{"turncloth/panel/b.hpp", "// unused_call\nvoid f() { used_elsewhere(); }"};
    const source page{"README.md", snippets_of("unused_kind\n```cpp\nused_in_page();\n```\nunused_thing")};
    CHECK(listed(unused_names({header, other}, {page})) ==
          "turncloth/panel/a.hpp: unused_kind\nturncloth/panel/a.hpp: unused_thing\nturncloth/panel/a.hpp: "
          "unused_call\nturncloth/panel/a.hpp: unused_concept\nturncloth/panel/a.hpp: unused_alias\n"
          "turncloth/panel/a.hpp: unused_value\nturncloth/panel/b.hpp: f\n");
}
