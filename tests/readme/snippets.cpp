// Holds a page (README.md, DEVELOPERS.md) to what it shows. Fences, at the start of a line:
//
//     ```cpp                    compiled; without a main it becomes the body of one, with its includes before it
//     ```text                   directly after a cpp block: what that program prints, byte for byte
//     ```sh
//     ```text output            directly after a sh block: what its commands print, byte for byte
//     ```text output of `cmd`   what cmd prints, whatever stands before
//
// "Directly" allows empty lines between. Commands are run where `build/turncloth` is the build tree and `examples` the
// sources.
//
//     snippets count <page> <expected>                                      are there as many, and not none?
//     snippets check <page> <index> <scratch folder> <compiler> <flag>...   is this one true? (the first is 1)
//     snippets single <page> light|all <folder> <compiler> <flag>...        do they compile with the library as one file?
//
// The last takes the folder's light.hpp for the snippets that include <turncloth.hpp> alone, and its all.hpp for the others.
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <optional>
#include <sstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace {

namespace fs = std::filesystem;
using std::string;

struct block {
    string info; // what stands after the fence: "cpp", "text", "text output"
    string text;
    int line = 0;      // of the text's first line
    bool next = false; // only empty lines between the block before and this one
};

struct check {
    string language; // "cpp" or "sh"
    string text;
    int line;
    std::optional<string> output;
};

[[noreturn]] void fail(const string& why) { throw std::runtime_error(why); }

string read(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    if (!in)
        fail("cannot read " + path.string());
    return {std::istreambuf_iterator<char>(in), {}};
}

std::vector<block> blocks_of(const fs::path& page) {
    std::vector<block> found;
    std::istringstream in(read(page));
    string line;
    bool inside = false;
    bool next = false;
    for (int number = 1; std::getline(in, line); ++number) {
        const bool fence = line.starts_with("```");
        if (inside && fence) {
            inside = false;
            next = true;
        } else if (inside) {
            found.back().text += line + '\n';
        } else if (fence) {
            inside = true;
            found.push_back({line.substr(3), "", number + 1, next});
        } else if (!line.empty()) {
            next = false;
        }
    }
    if (inside)
        fail("the block in line " + std::to_string(found.back().line - 1) + " is not closed");
    return found;
}

std::vector<check> checks_of(const fs::path& page) {
    static constexpr std::string_view output = "text output";
    const auto blocks = blocks_of(page);
    std::vector<check> found;
    for (std::size_t i = 0; i != blocks.size(); ++i) {
        const block& b = blocks[i];
        if (b.info.starts_with("cpp")) {
            const bool prints = i + 1 != blocks.size() && blocks[i + 1].next && blocks[i + 1].info == "text";
            found.push_back({"cpp", b.text, b.line, prints ? std::optional(blocks[i + 1].text) : std::nullopt});
        } else if (b.info == output) {
            if (!b.next || blocks[i - 1].info != "sh")
                fail("line " + std::to_string(b.line - 1) + ": no sh block directly before this output");
            found.push_back({"sh", blocks[i - 1].text, b.line, b.text});
        } else if (b.info.starts_with(output)) {
            const auto from = b.info.find('`');
            const auto to = b.info.rfind('`');
            if (from == to)
                fail("line " + std::to_string(b.line - 1) + ": no command between backquotes");
            found.push_back({"sh", b.info.substr(from + 1, to - from - 1) + '\n', b.line, b.text});
        }
    }
    return found;
}

string as_program(const check& c, const fs::path& page) {
    const string origin = "\"" + page.filename().string() + "\"\n";
    if (c.text.find("int main(") != string::npos)
        return "#line " + std::to_string(c.line) + ' ' + origin + c.text;
    string includes;
    string body;
    std::istringstream in(c.text);
    string line;
    for (int number = c.line; std::getline(in, line); ++number) {
        const string numbered = "#line " + std::to_string(number) + ' ' + origin + line + '\n';
        (line.starts_with("#include") ? includes : body) += numbered;
    }
    return includes + "int main() {\n" + body + "}\n";
}

string quoted(const string& word) {
    string q = "'";
    for (const char c : word)
        q += c == '\'' ? string("'\\''") : string(1, c);
    return q + "'";
}

/// Runs the shell command; standard output goes to `<stem>.out`, errors to `<stem>.err`.
string run(const string& command, const fs::path& stem, const string& what) {
    const string out = stem.string() + ".out";
    const string err = stem.string() + ".err";
    if (std::system(("( " + command + " ) >" + quoted(out) + " 2>" + quoted(err) + " </dev/null").c_str()) != 0)
        fail(what + " failed:\n" + read(out) + read(err));
    return read(out);
}

void hold(check c, const fs::path& page, const fs::path& scratch, const string& name, const string& compiler) {
    const fs::path stem = scratch / name;
    string printed;
    if (c.language == "cpp") {
        const string source = stem.string() + ".cpp";
        std::ofstream(source, std::ios::binary) << as_program(c, page);
        const string target = c.output ? " -o " + quoted(stem.string()) : string(" -fsyntax-only");
        run(compiler + ' ' + quoted(source) + target, stem, "compiling the snippet");
        if (!c.output)
            return;
        printed = run(quoted(stem.string()), stem, "running the snippet");
    } else {
        const string script = stem.string() + ".sh";
        std::ofstream(script, std::ios::binary) << c.text;
        printed = run("cd " + quoted(scratch.string()) + " && sh -e " + quoted(script), stem, "running the command");
    }
    if (printed != *c.output)
        fail("it does not print what the page shows.\n--- printed:\n" + printed + "--- shown:\n" + *c.output + "---");
}

/// Every snippet of a page for which the light form is enough, or every other, as one program: each in a namespace of its own,
/// after all their includes. The one file stands in the place of the library's headers, but for those of tests, which it
/// leaves out.
string all_with_one_file(const fs::path& page, bool light) {
    string includes;
    string bodies;
    for (const check& c : checks_of(page)) {
        if (c.language != "cpp" || (c.text.find("#include <turncloth/") == string::npos) != light)
            continue;
        bodies += "namespace snippet_" + std::to_string(c.line) + " {\n";
        std::istringstream in(as_program(c, page));
        for (string line; std::getline(in, line);)
            if (!line.starts_with("#include"))
                bodies += line + '\n';
            else if (!line.starts_with("#include <turncloth") || line.starts_with("#include <turncloth/testing/"))
                includes += line + '\n';
        bodies += "}\n";
    }
    return includes + bodies;
}

void hold_with_one_file(const fs::path& page, const string& form, const fs::path& folder, const string& compiler) {
    const fs::path stem = folder / (page.stem().string() + '_' + form);
    const string source = stem.string() + ".cpp";
    std::ofstream(source, std::ios::binary) << "#include " << fs::absolute(folder / (form + ".hpp")) << '\n'
                                            << all_with_one_file(page, form == "light");
    run(compiler + ' ' + quoted(source) + " -fsyntax-only", stem, "compiling with one file");
}

int count(const fs::path& page, std::size_t expected) {
    const auto checks = checks_of(page);
    if (checks.empty())
        fail("no snippets found");
    if (checks.size() != expected)
        fail(std::to_string(checks.size()) + " snippets found, " + std::to_string(expected) + " checked");
    return EXIT_SUCCESS;
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<string> args(argv + 1, argv + argc);
    string where = args.size() > 1 ? args[1] : "snippets";
    try {
        if (args.size() == 3 && args[0] == "count")
            return count(args[1], std::stoul(args[2]));
        if (args.size() < 5 || (args[0] != "check" && args[0] != "single"))
            fail("usage: count <page> <expected> | check <page> <index> | single <page> light|all, and then "
                 "<folder> <compiler> <flag>...");
        string compiler;
        for (std::size_t i = 4; i != args.size(); ++i)
            compiler += (i == 4 ? "" : " ") + quoted(args[i]);
        const fs::path page = args[1];
        if (args[0] == "single") {
            hold_with_one_file(page, args[2], args[3], compiler);
            return EXIT_SUCCESS;
        }
        const check c = checks_of(page).at(std::stoul(args[2]) - 1);
        where += ':' + std::to_string(c.line);
        hold(c, page, args[3], page.stem().string() + '_' + args[2], compiler);
    } catch (const std::exception& e) {
        std::cerr << where << ": " << e.what() << '\n';
        return EXIT_FAILURE;
    }
    return EXIT_SUCCESS;
}
