// The program as a person uses it: what it says, what it ends with, and what it leaves behind.
#include "drafting/printed.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

namespace {

const std::string files = TURNCLOTH_DRAFTING_FILES;
const std::string pad = "'" + files + "/kneeling_pad.json' ", trug = "'" + files + "/trug_liner.json' ";

/// Of one piece, p, at these corners.
std::string outlined(const std::string& corners) {
    return R"({"turncloth_design": 1, "name": "T", "sizes": ["9 x 9 cm"], "units": "centimetres",
        "outlines": [{"name": "p", "material": "m", "corners": [)" +
           corners + "]}]}";
}

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

TEST_CASE("the handout is written in the language asked for") {
    const workshop w;
    REQUIRE(w.run(pad + "--out pad.pdf --handout to_follow.pdf --language de --cloth 112").status == 0);
    const auto says = [](const auto& pages, const std::string& words) {
        return std::any_of(pages.begin(), pages.end(), [&](const auto& p) { return p.says(words); });
    };
    CHECK(says(w.pages("to_follow.pdf"), "Was einzukaufen ist"));
    CHECK_FALSE(says(w.pages("to_follow.pdf"), "What to buy"));
    CHECK(has(w.run(pad + "--out a.pdf --handout b.pdf --language fr").err,
              "a sheet or a handout is written in en or de"));
    CHECK(w.run(pad + "--out a.pdf --language de").status == 2);
}

TEST_CASE("the same drafting gives the same bytes") {
    const workshop w;
    REQUIRE(w.run(pad + "--out a.pdf").status == 0);
    REQUIRE(w.run(pad + "--out b.pdf").status == 0);
    CHECK(w.read("a.pdf") == w.read("b.pdf"));
}

TEST_CASE("what cannot be made ends with 1, is told with file and place, and leaves nothing behind") {
    const workshop w;
    const std::string crossed = R"({}, {"across": "9 cm", "up": "9 cm"}, {"across": "9 cm"}, {"up": "9 cm"})";
    w.write("bad.json", outlined(crossed));
    const run_result bad = w.run("bad.json --out out.pdf");
    CHECK(bad.status == 1);
    CHECK(bad.out.empty());
    CHECK(has(bad.err, "turncloth_drafting: bad.json: /outlines/0/corners/0: p: a seam line must not cross itself"));
    w.write("empty.json", "");
    CHECK(w.run("empty.json --out out.pdf").status == 3);
    // Every fault is told, those that are found at a size too.
    w.write("both.json", outlined(crossed + R"(]}, {"name": "q", "material": "m", "corners": [)" + crossed));
    const run_result both = w.run("both.json --out out.pdf");
    CHECK(both.status == 1);
    CHECK(has(both.err, "both.json: /outlines/0/corners/0: p: "));
    CHECK(has(both.err, "\nturncloth_drafting: both.json: /outlines/1/corners/0: q: "));
    // On cloth too narrow, and of a size that would take thousands of pages.
    const run_result narrow = w.run(pad + "--out out.pdf --cloth 30");
    CHECK(narrow.status == 1);
    CHECK(has(narrow.err, "pad top is 51.8 cm across its grain, and the usable width of the cloth 30 cm\n"));
    w.write("strap.json", outlined(R"({}, {"across": "40 cm"}, {"across": "40 cm", "up": "9 cm"}, {"up": "9 cm"})"));
    const run_result turned = w.run("strap.json --out out.pdf --cloth 35 --units inches");
    CHECK(turned.status == 1);
    CHECK(has(turned.err,
              "p is 15 3/4 in across its grain, and the usable width of the cloth 13 3/4 in: with \"may_turn\""));
    w.write("huge.json", outlined(R"({}, {"across": "9999 cm"}, {"up": "9999 cm"})"));
    const run_result huge = w.run("huge.json --out out.pdf");
    CHECK(huge.status == 1);
    CHECK(has(huge.err, "pages of A4: at most 400 are printed"));
    CHECK(w.files() == 5);
    // A file that stood there before stays as it was.
    w.write("out.pdf", "kept");
    CHECK(w.run("bad.json --out out.pdf").status == 3);
    CHECK(w.run("bad.json --out out.pdf --replace").status == 1);
    CHECK(w.read("out.pdf") == "kept");
}

TEST_CASE("a project of rectangles and outlines is made at the size asked for") {
    const workshop w;
    const std::string bag = "'" + files + "/../designs/scooped_peg_bag.json' ";
    const run_result o = w.run(bag + "--out bag.pdf --size '12 x 14 in' --cloth '44 in'");
    CHECK(o.status == 0);
    CHECK(has(o.out, "front, 1 of canvas: within 13 in x 15 in\n"));
    CHECK(has(o.out, "hanger sleeve, 1 of canvas: 12 3/4 in x 2 1/4 in\n"));
    CHECK(w.pages("bag.pdf")[0].says("hanger sleeve, cut 1 of canvas, to be measured out"));
    CHECK(
        has(w.run(bag + "--out bag.pdf --replace --size '6 x 14 in'").err, "A hand does not go into a scoop of 4 in"));
    CHECK(has(w.run(bag + "--out bag.pdf --replace --units centimetres").out, "within 33 cm x 39 cm"));
}

TEST_CASE("its handout is a file of its own, with all that the project needs beside its pieces") {
    const workshop w;
    const std::string bag = "'" + files + "/../designs/scooped_peg_bag.json' --size '12 x 14 in' --cloth '44 in' ";
    const run_result o = w.run(bag + "--out bag.pdf --handout told.pdf");
    CHECK(o.status == 0);
    CHECK(has(o.out, "pages of A4 in bag.pdf\n"));
    CHECK(has(o.out, "pages of A4 in told.pdf\n"));
    const auto told = w.pages("told.pdf");
    CHECK(has(o.out, std::to_string(told.size()) + " pages of A4 in told.pdf"));
    CHECK(told[0].says("front"));
    CHECK(told[0].says("hanger sleeve"));
    CHECK(w.pages("bag.pdf")[0].says("Print at 100 %"));
    // Neither is written where one may not be, and one name is not given to both.
    CHECK(w.run(bag + "--out new.pdf --handout told.pdf").status == 3);
    CHECK(w.run(bag + "--out new.pdf --handout ./new.pdf").status == 2);
    CHECK(w.files() == 2);
}

TEST_CASE("a wrong command line ends with 2 and says what is wrong") {
    const workshop w;
    for (const std::string& arguments :
         {std::string(), pad, pad + "--out x.pdf --paper a5", pad + "--out x.pdf --units feet",
          pad + "--out x.pdf --cloth wide", pad + "--out x.pdf --cloth 0", pad + "--out x.pdf --cloth=-3",
          pad + "--out x.pdf --gap 1", pad + "--out x.pdf --colour", pad + "--out x.pdf --size wide"}) {
        CAPTURE(arguments);
        const run_result o = w.run(arguments);
        CHECK(o.status == 2);
        CHECK_FALSE(o.err.empty());
    }
    CHECK(w.files() == 0);
    CHECK(w.run("--help").status == 0);
    CHECK(has(w.run("--help").out, "A design file is JSON"));
    CHECK(has(w.run("--version").out, TURNCLOTH_PACKAGE_VERSION));
}

TEST_CASE("trouble with files ends with 3 and leaves nothing half-written") {
    const workshop w;
    const run_result missing = w.run("missing.json --out x.pdf");
    CHECK(missing.status == 3);
    CHECK(has(missing.err, "cannot read missing.json"));
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
    std::filesystem::copy_file(files + "/kneeling_pad.json", w / "mine.json");
    const std::string drafted = w.read("mine.json");
    std::filesystem::create_hard_link(w / "mine.json", w / "also.json");
    for (const char* to : {"mine.json", "./mine.json", "also.json"}) {
        const run_result o = w.run("mine.json --replace --out " + std::string(to));
        CHECK(o.status == 3);
        CHECK(has(o.err, "it is the file that is read"));
    }
    CHECK(w.read("mine.json") == drafted);
    w.write("out.pdf", "kept");
    std::filesystem::permissions(w / "out.pdf", static_cast<std::filesystem::perms>(0600));
    const run_result refused = w.run("mine.json --out out.pdf");
    CHECK(refused.status == 3);
    CHECK(has(refused.err, "cannot write out.pdf: a file is there already: --replace writes over such files"));
    CHECK(w.read("out.pdf") == "kept");
    CHECK(w.run("mine.json --replace --out out.pdf").status == 0);
    CHECK(w.read("out.pdf").starts_with("%PDF-"));
    CHECK(mode("out.pdf") == 0600);
    std::filesystem::create_symlink("/dev/null", w / "device"); // never a real one: a broken rule would remove it
    CHECK(has(w.run("mine.json --replace --out device").err, "a device, a pipe or a link is there"));
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

TEST_CASE("what is wrong with a file is told with its place, and what is not fit to print is never printed") {
    const workshop w;
    const auto refused = [&](const std::string& text, const char* why) {
        w.write("bad.json", text);
        const run_result o = w.run("bad.json --out out.pdf");
        CHECK(o.status == 3);
        CHECK_MESSAGE(has(o.err, why), o.err);
        CHECK(o.err.find('\x1B') == std::string::npos);
    };
    refused(R"({"turncloth_design": 1, "name": "T"})", "bad.json: the design: it has neither pieces nor outlines");
    refused(outlined(R"({"across": "9"}, {"up": "x\u001B[2J"})"), "bad.json: /outlines/0/corners/0/across: expected a");
    refused("title: T\nunit: cm\n", "bad.json: the design: it is no JSON (RFC 8259), in line 1 at character 2");
    refused("\xFF\xFEt", "cannot use bad.json: it is in UTF-16, as its first bytes say: save it as UTF-8");
}
