// Sheets and drawings as files: what is written, and that nothing half-written remains.
#include "program.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <sstream>

TEST_CASE("a sheet is written as text, and each piece of it as a drawing") {
    const scratch dir;
    const outcome o = dir.run("--project kneeling-pad --out deep/in/here");
    CHECK(o.status == 0);
    CHECK(o.says("In deep/in/here: 1 sheet (.txt) and 5 drawings (.svg)"));
    auto names = dir.files("deep");
    std::sort(names.begin(), names.end());
    CHECK(names == std::vector<std::string>{"kneeling-pad.base-half.svg", "kneeling-pad.lay.canvas.svg",
                                            "kneeling-pad.long-side-of-the-edging.svg",
                                            "kneeling-pad.short-side-of-the-edging.svg", "kneeling-pad.top-panel.svg",
                                            "kneeling-pad.txt"});
    const std::string text = dir.read("deep/in/here/kneeling-pad.txt");
    CHECK(o.out.substr(0, text.size()) == text);
    const std::string drawing = dir.read("deep/in/here/kneeling-pad.top-panel.svg");
    CHECK(drawing.find("<svg") != std::string::npos);
    CHECK(drawing.rfind("</svg>") != std::string::npos);
    CHECK(drawing.find("18 1/2 in") != std::string::npos); // the cut width of the top
    const std::string lay = dir.read("deep/in/here/kneeling-pad.lay.canvas.svg");
    for (const char* words : {"lay of canvas", "usable width 53 in", "A: top panel", "cut 1: "})
        CHECK_MESSAGE(lay.find(words) != std::string::npos, words);
}

TEST_CASE("drawings are for the paper asked for, or for the usual one where such a size is typed") {
    const scratch dir;
    // ANSI Letter is 8 1/2 x 11 in, 215.9 x 279.4 mm; ISO 216 A4 is 210 x 297 mm.
    const auto page = [&](const std::string& arguments) {
        REQUIRE(dir.run("--project kneeling-pad --quiet --out here " + arguments).status == 0);
        std::string all;
        for (const std::string& name : dir.files("here"))
            if (name.size() > 4 && name.substr(name.size() - 4) == ".svg") {
                const std::string drawing = dir.read("here/" + name);
                const std::size_t from = drawing.find("width=\""), to = drawing.find("mm\"", from);
                all += drawing.substr(from + 7, to - from - 7) + ' ';
            }
        return all;
    };
    const auto only = [](const std::string& sizes, const std::string& one, const std::string& other) {
        std::istringstream all(sizes);
        for (std::string size; all >> size;)
            if (size != one && size != other)
                return false;
        return !sizes.empty();
    };
    CHECK(only(page(""), "215.9", "279.4"));
    CHECK(only(page("--size '44 x 27 cm'"), "210", "297"));
    CHECK(only(page("--paper A4"), "210", "297"));
    CHECK(only(page("--size '44 x 27 cm' --paper letter"), "215.9", "279.4"));
}

TEST_CASE("a sheet is written as JSON too where that is asked for, with the cloth to buy among its notions") {
    const scratch dir;
    REQUIRE(dir.run("--project kneeling-pad --size '16 x 9 in' --json --quiet --out here").status == 0);
    const auto sheet = nlohmann::json::parse(dir.read("here/kneeling-pad.json"));
    CHECK(sheet["finished"]["width"] == nlohmann::json{{"exact", "16"}, {"unit", "in"}});
    CHECK(sheet["pieces"].size() == 3);
    CHECK(sheet["notions"].back()["name"] == "canvas");
    CHECK(sheet["notions"].back()["details"].back()["amount"]["exact"] == "18"); // see figures_test.cpp
}

TEST_CASE("quiet prints nothing, and writes all the same") {
    const scratch dir;
    const outcome o = dir.run("--project all --quiet --out here");
    CHECK(o.status == 0);
    CHECK(o.out.empty());
    CHECK(o.err.empty());
    CHECK(dir.files("here").size() == 20); // 3 sheets; 2, 5 and 4 pieces; 2, 3 and 1 lays
}

TEST_CASE("a folder that cannot be made is named with its reason") {
    const scratch dir;
    dir.write("a-file", "");
    const outcome o = dir.run("--project all --quiet --out a-file/below");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot make the folder a-file/below: Not a directory"));
}

TEST_CASE("a file that cannot be finished leaves nothing behind, and the one before it as it was") {
    const scratch dir;
    REQUIRE(dir.run("--project kneeling-pad --quiet --out here").status == 0);
    const std::string before = dir.read("here/kneeling-pad.txt");
    const auto names = dir.files("here");
    // A limit on the size of files, as a full disk: the sheet is longer than one block of 512 or 1024 bytes.
    const outcome o = dir.run("--project kneeling-pad --size 30x20 --quiet --out here", "trap '' XFSZ; ulimit -f 1;");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot write here/kneeling-pad.txt: File too large"));
    CHECK(dir.read("here/kneeling-pad.txt") == before);
    CHECK(dir.files("here") == names);
}

TEST_CASE("a file whose place is taken by a folder leaves nothing behind") {
    const scratch dir;
    std::filesystem::create_directories(dir / "here/kneeling-pad.top-panel.svg/kept");
    const outcome o = dir.run("--project kneeling-pad --quiet --out here");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot write here/kneeling-pad.top-panel.svg: Is a directory"));
    CHECK(dir.files("here") == std::vector<std::string>{"kneeling-pad.txt"}); // whole, as it came before
    CHECK(dir.read("here/kneeling-pad.txt").find("Local codes") != std::string::npos);
}

TEST_CASE("a folder that takes no files is named with its reason") {
    const scratch dir;
    // Its permissions do not bind root, but no user can write there.
    const outcome o = dir.run("--project kneeling-pad --quiet --out /proc/self");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot write /proc/self/kneeling-pad.txt: "));
}
