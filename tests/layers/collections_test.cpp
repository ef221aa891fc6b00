// The two collections, held to the folders: <turncloth.hpp> brings what its opening says and leaves out the rest,
// <turncloth/all.hpp> brings every header at the top of a folder. What is for tests alone is in neither. And the map of
// them in DEVELOPERS.md.
#include "tree.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>

namespace {

using std::string;
using names = std::map<string, std::set<string>>; // folder to headers, as "panel" to "size"

/// Every header at the top of a folder that a program, and not its tests, may include.
names everything() {
    names found;
    for (const auto& header : layers::headers())
        if (const string folder = layers::folder_of(header.path);
            !folder.empty() && folder != "testing" && !layers::in_sub_folder(header.path))
            found[folder].insert(layers::stem_of(header.path));
    return found;
}

/// What a header brings, directly or through another.
names brought_by(const string& header) {
    std::map<string, layers::source> sources;
    for (const auto& s : layers::headers())
        sources[s.path] = s;
    std::set<string> seen;
    std::vector<string> open{header};
    names found;
    while (!open.empty()) {
        const string next = open.back();
        open.pop_back();
        if (!seen.insert(next).second)
            continue;
        if (const string folder = layers::folder_of(next); !folder.empty() && !layers::in_sub_folder(next))
            found[folder].insert(layers::stem_of(next));
        for (const auto& include : layers::includes_of(sources.at(next)))
            open.push_back(include.of);
    }
    return found;
}

/// The lists "//   panel: finish, size" below the line of the opening that starts so; a list may run over lines.
names said_below(const string& text, const string& start) {
    static const std::regex first("^//   ([a-z]+): (.*)$");
    static const std::regex more("^//       +(.*)$");
    names found;
    string folder;
    bool below = false;
    std::istringstream in(text);
    for (string line; std::getline(in, line);) {
        std::smatch match;
        if (!below) {
            below = line.starts_with("// " + start);
            continue;
        }
        if (std::regex_match(line, match, first))
            folder = match[1];
        else if (folder.empty() || !std::regex_match(line, match, more))
            break;
        std::istringstream list(match[match.size() - 1]);
        for (string name; list >> name;)
            found[folder].insert(name.substr(0, name.find(',')));
    }
    return found;
}

/// What stands in backticks in the row of each folder, folders apart: "| `panel/` | `size` ...; `detail/` ... |".
names on_the_map(const string& page) {
    static const std::regex row(R"(\n\| `([a-z]+)/` \|([^\n]*))");
    static const std::regex quoted("`(\\w+)`");
    names found;
    for (std::sregex_iterator at(page.begin(), page.end(), row), end; at != end; ++at) {
        const string headers = (*at)[2];
        for (std::sregex_iterator name(headers.begin(), headers.end(), quoted); name != end; ++name)
            found[(*at)[1]].insert((*name)[1]);
    }
    return found;
}

string shown(const names& lists) {
    string text;
    for (const string& folder : layers::order)
        if (const auto list = lists.find(folder); list != lists.end() && !list->second.empty()) {
            text += folder + ":";
            for (const string& name : list->second)
                text += " " + name;
            text += "\n";
        }
    return text;
}

names without(names lists, const names& gone) {
    for (const auto& [folder, list] : gone)
        for (const string& name : list)
            lists[folder].erase(name);
    return lists;
}

} // namespace

TEST_CASE("the single include brings and leaves out what its opening says") {
    const string opening = layers::read("include/turncloth.hpp");
    CHECK(shown(said_below(opening, "It brings")) == shown(brought_by("turncloth.hpp")));
    CHECK(shown(said_below(opening, "It leaves out")) == shown(without(everything(), brought_by("turncloth.hpp"))));
}

TEST_CASE("the full include names every public header itself") {
    names named;
    for (const auto& include : layers::includes_of({"", layers::read("include/turncloth/all.hpp")}))
        named[layers::folder_of(include.of)].insert(layers::stem_of(include.of));
    named.erase("");
    CHECK(shown(named) == shown(everything()));
}

TEST_CASE("the map in DEVELOPERS.md names every public header, and nothing that is not there") {
    const names map = on_the_map(layers::read("DEVELOPERS.md"));
    names there;
    for (const auto& header : layers::headers())
        if (const string folder = layers::folder_of(header.path); !folder.empty())
            there[folder].insert(layers::stem_of(header.path));
    names at_top = everything();
    for (const auto& header : layers::headers())
        if (layers::folder_of(header.path) == "testing")
            at_top["testing"].insert(layers::stem_of(header.path));
    CHECK(shown(without(at_top, map)) == "");
    CHECK(shown(without(map, there)) == "");
}

TEST_CASE("an opening that says too little or too much is seen") {
    const string opening = "// It brings\n//   panel: finish, size\n//       panel\n// Then\n//   marks: row\n";
    CHECK(shown(said_below(opening, "It brings")) == "panel: finish panel size\n");
    CHECK(shown(said_below(opening, "It leaves out")) == "");
    CHECK(shown(on_the_map("\n| `panel/` | `size` both; `hat`; `detail/` more |\n| `marks/` | `row` |\n")) ==
          "marks: row\npanel: hat size\n");
}
