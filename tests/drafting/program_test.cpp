// The program as a person uses it: what it says, what it ends with, and what it leaves behind.
#include "drafting/printed.hpp"

#include <doctest/doctest.h>

#include <string>

namespace {

const std::string files = TURNCLOTH_DRAFTING_FILES;
const std::string pad = "'" + files + "/kneeling_pad.drafting' ", trug = "'" + files + "/trug_liner.drafting' ";

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE("both examples print, and what must be bought is told in the units asked for") {
    const workshop w;
    const run_result o = w.run(pad + "--out pad.pdf --cloth 112 --selvedge '1 cm' --gap 1");
    CHECK(o.status == 0);
    CHECK(o.err.empty());
    CHECK(has(o.out, "tool pocket, 2 of ticking: within 25 cm x 22 cm"));
    // Two tops side by side and the strap turned beneath them: 33 + 1 + 10 cm.
    CHECK(has(o.out, "buy 44 cm of waxed canvas at least, by bounding rectangles"));
    CHECK(has(o.out, "pages of A4 in pad.pdf"));
    CHECK(w.read("pad.pdf").starts_with("%PDF-"));
    const run_result inches = w.run(trug + "--out trug.pdf --paper LETTER");
    CHECK(inches.status == 0);
    CHECK(has(inches.out, "9 3/4 in x 10 3/4 in"));
    CHECK(has(w.run(trug + "--out trug.pdf --replace --units both").out, "9 3/4 in (24.8 cm)"));
    CHECK(w.run(trug + "--out trug.pdf --replace --quiet").out.empty());
}

TEST_CASE("the first page says the title, how to print and join, and how the cloth was laid") {
    const workshop w;
    REQUIRE(w.run(pad + "--out pad.pdf --cloth '44 in'").status == 0);
    const auto pages = w.pages("pad.pdf");
    CHECK(pages[0].says("Kneeling pad for a barrow"));
    CHECK(pages[0].says("Print at 100 % (actual size), on A4."));
    CHECK(pages[0].says("To join pages"));
    CHECK(pages[0].says("bounding rectangle of each piece"));
    CHECK(pages[0].says("Local codes, the makers' instructions and licensed practice go before them."));
    for (std::size_t i = 0; i < pages.size(); ++i)
        CHECK(pages[i].says("page " + std::to_string(i + 1) + " of " + std::to_string(pages.size())));
}

TEST_CASE("the same drafting gives the same bytes") {
    const workshop w;
    REQUIRE(w.run(pad + "--out a.pdf").status == 0);
    REQUIRE(w.run(pad + "--out b.pdf").status == 0);
    CHECK(w.read("a.pdf") == w.read("b.pdf"));
}

TEST_CASE("what cannot be made ends with 1, is told with file and line, and leaves nothing behind") {
    const workshop w;
    w.write("bad.drafting", "title: T\nunit: cm\npiece: p\ncorner: nan; 0\n");
    const run_result bad = w.run("bad.drafting --out out.pdf");
    CHECK(bad.status == 1);
    CHECK(bad.out.empty());
    CHECK(has(bad.err, "turncloth_drafting: bad.drafting: line 4: corner: "));
    w.write("empty.drafting", "");
    CHECK(w.run("empty.drafting --out out.pdf").status == 1);
    // On cloth too narrow, and of a size that would take thousands of pages.
    const run_result narrow = w.run(pad + "--out out.pdf --cloth 30");
    CHECK(narrow.status == 1);
    CHECK(
        has(narrow.err, "piece \"pad top\" is 51.8 cm across its grain, 21.8 cm more than the usable width of 30 cm"));
    w.write("huge.drafting", "title: T\nunit: cm\npiece: p\nmaterial: m\ncut: 1\ngrain: 0; 0; 0; 1\nall edges: raw\n"
                             "corner: 0; 0\ncorner: 9999; 0\ncorner: 0; 9999\n");
    const run_result huge = w.run("huge.drafting --out out.pdf");
    CHECK(huge.status == 1);
    CHECK(has(huge.err, "pages of A4: at most 400 are printed"));
    CHECK(w.files() == 3);
    // A file that stood there before stays as it was.
    w.write("out.pdf", "kept");
    CHECK(w.run("bad.drafting --out out.pdf").status == 3);
    CHECK(w.run("bad.drafting --out out.pdf --replace").status == 1);
    CHECK(w.read("out.pdf") == "kept");
}

TEST_CASE("a wrong command line ends with 2 and says what is wrong") {
    const workshop w;
    for (const std::string& arguments :
         {std::string(), pad, pad + "--out x.pdf --paper a5", pad + "--out x.pdf --units feet",
          pad + "--out x.pdf --cloth wide", pad + "--out x.pdf --cloth 0", pad + "--out x.pdf --cloth=-3",
          pad + "--out x.pdf --gap 1", pad + "--out x.pdf --colour"}) {
        CAPTURE(arguments);
        const run_result o = w.run(arguments);
        CHECK(o.status == 2);
        CHECK_FALSE(o.err.empty());
    }
    CHECK(w.files() == 0);
    CHECK(w.run("--help").status == 0);
    CHECK(has(w.run("--help").out, "double-turned hem: first turn; depth"));
    CHECK(has(w.run("--version").out, TURNCLOTH_PACKAGE_VERSION));
}

TEST_CASE("trouble with files ends with 3 and leaves nothing half-written") {
    const workshop w;
    const run_result missing = w.run("missing.drafting --out x.pdf");
    CHECK(missing.status == 3);
    CHECK(has(missing.err, "cannot read missing.drafting"));
    CHECK(w.run(pad + "--out no/such/folder/x.pdf").status == 3);
    // A disk that is full after the first 8 kB.
    const run_result full = w.run(pad + "--out x.pdf", "ulimit -f 16;");
    CHECK(full.status == 3);
    CHECK(has(full.err, "cannot write x.pdf"));
    CHECK(w.files() == 0);
}

TEST_CASE("neither the drafting nor a file that is there already is written over unasked") {
    const workshop w;
    const auto mode = [&](const char* name) {
        return static_cast<int>(std::filesystem::status(w / name).permissions());
    };
    std::filesystem::copy_file(files + "/kneeling_pad.drafting", w / "mine.drafting");
    const std::string drafted = w.read("mine.drafting");
    std::filesystem::create_hard_link(w / "mine.drafting", w / "also.drafting");
    for (const char* to : {"mine.drafting", "./mine.drafting", "also.drafting"}) {
        const run_result o = w.run("mine.drafting --replace --out " + std::string(to));
        CHECK(o.status == 3);
        CHECK(has(o.err, "it is the file that is read"));
    }
    CHECK(w.read("mine.drafting") == drafted);
    w.write("out.pdf", "kept");
    std::filesystem::permissions(w / "out.pdf", static_cast<std::filesystem::perms>(0600));
    const run_result refused = w.run("mine.drafting --out out.pdf");
    CHECK(refused.status == 3);
    CHECK(has(refused.err, "cannot write out.pdf: a file is there already: --replace writes over such files"));
    CHECK(w.read("out.pdf") == "kept");
    CHECK(w.run("mine.drafting --replace --out out.pdf").status == 0);
    CHECK(w.read("out.pdf").starts_with("%PDF-"));
    CHECK(mode("out.pdf") == 0600);
    std::filesystem::create_symlink("/dev/null", w / "device"); // never a real one: a broken rule would remove it
    CHECK(has(w.run("mine.drafting --replace --out device").err, "a device, a pipe or a link is there"));
}

TEST_CASE("what the standard output does not take ends with 3") {
    const workshop w;
    const run_result full = w.run(pad + "--out pad.pdf >/dev/full");
    CHECK(full.status == 3);
    CHECK(has(full.err, "cannot write the standard output: No space left on device"));
    CHECK(w.run(pad + "--out pad.pdf --replace >&-").status == 3);
    CHECK(w.read("pad.pdf").starts_with("%PDF-"));
    CHECK(w.run("--help >/dev/full").status == 3);
}

TEST_CASE("text that is not fit to print is told with its line, and never printed") {
    const workshop w;
    const std::string rest = "unit: cm\npiece: p\nmaterial: m\n";
    const auto refused = [&](const std::string& text, int status, const char* why) {
        w.write("bad.drafting", text);
        const run_result o = w.run("bad.drafting --out out.pdf");
        CHECK(o.status == status);
        CHECK_MESSAGE(has(o.err, why), o.err);
        CHECK(o.err.find('\x1B') == std::string::npos);
    };
    refused("title: caf\xE9\n" + rest, 1, "line 1: its character 4 is not UTF-8 (byte E9): save the file as UTF-8");
    refused("title: T\nunit: cm\npiece: a\x1B[2J\n", 1, "line 3: its character 2 (U+001B) cannot be printed");
    refused("title: T\x1B[2J no colon\nmore \x1B[2J\n", 1, "line 1: its character 2 (U+001B)");
    refused("no colon \x1B[2J\n", 1, "line 1: its character 10 (U+001B) cannot be printed");
    refused("title: " + std::string(101, 't') + "\n" + rest, 1, "line 1: it is longer than 100 characters");
    refused("\xFF\xFEt", 3, "cannot use bad.drafting: it is in UTF-16, as its first bytes say: save it as UTF-8");
    // Lines may end in a carriage return alone.
    refused("title: T\runit: cm\rpiece: p\rcorner: nan; 0\r", 1, "line 4: corner: ");
}
