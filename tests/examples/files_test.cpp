// Sheets and drawings as files: what is written and what is not written over, and that nothing half-written remains.
#include "../../examples/command/files.hpp"
#include "../vectors.hpp"
#include "at_random.hpp"
#include "program.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>
#include <sys/stat.h>

#include <algorithm>
#include <chrono>
#include <sstream>

namespace {

namespace fs = std::filesystem;

int permissions(const fs::path& path) { return static_cast<int>(fs::status(path).permissions()); }

std::string why_not_written(const fs::path& path, const allotment::over_what& over) {
    try {
        allotment::write_file(path, "new", over);
        return "written";
    } catch (const allotment::file_error& trouble) {
        const std::string sentence = trouble.what(), before = "cannot write " + path.string() + ": ";
        CHECK(sentence.substr(0, before.size()) == before);
        return sentence.substr(before.size());
    }
}

std::size_t unfinished_in(const std::vector<std::string>& names) {
    return static_cast<std::size_t>(std::count_if(names.begin(), names.end(), [](const std::string& name) {
        return name.find("unfinished") != std::string::npos;
    }));
}

} // namespace

TEST_CASE("a sheet is written as text, and each piece of it as a drawing") {
    const scratch dir;
    const run_result o = dir.run("--project kneeling-pad --out deep/in/here");
    CHECK(o.status == 0);
    CHECK(o.says("In deep/in/here: 1 sheet (.txt) and 20 drawings (.svg)"));
    auto names = dir.files("deep");
    std::sort(names.begin(), names.end());
    const auto steps = std::erase_if(names, [](const std::string& name) { return name.find(".step.") != name.npos; });
    CHECK(steps == 13); // seams and rows, creases and layings: tests/draw/step_test.cpp
    CHECK(names == std::vector<std::string>{"kneeling-pad.base-half.svg", "kneeling-pad.finished.back.svg",
                                            "kneeling-pad.finished.front.svg", "kneeling-pad.lay.canvas.svg",
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

TEST_CASE("a handout is one file beside the rest, named on the last line, and not written over unasked") {
    const scratch dir;
    const std::string asked = "--project kneeling-pad --out here --handout html";
    const run_result o = dir.run(asked);
    CHECK(o.status == 0);
    CHECK(o.out.ends_with("\nTo print and to follow: here/kneeling-pad.html\n"));
    const std::string html = dir.read("here/kneeling-pad.html");
    CHECK(html.starts_with("<!DOCTYPE html>"));
    CHECK(html.ends_with("</html>\n"));
    CHECK(html.find("<h2>What to buy</h2>") != std::string::npos);
    dir.write("here/kneeling-pad.html", "mine");
    CHECK(dir.run(asked).status != 0);
    CHECK(dir.read("here/kneeling-pad.html") == "mine");
    CHECK(dir.run(asked + " --replace").status == 0);
    CHECK(dir.read("here/kneeling-pad.html") == html);
    CHECK(dir.run("--project kneeling-pad --handout html").status == 2); // nowhere to write it
    CHECK(dir.run("--project kneeling-pad --out here --handout docx").status == 2);
}

TEST_CASE("drawings are for the paper asked for, or for the usual one where such a size is typed") {
    const scratch dir;
    // ANSI Letter is 8 1/2 x 11 in, 215.9 x 279.4 mm; ISO 216 A4 is 210 x 297 mm.
    const auto page = [&](const std::string& arguments) {
        REQUIRE(dir.run("--project kneeling-pad --quiet --replace --out here " + arguments).status == 0);
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
    const run_result o = dir.run("--project all --quiet --out here");
    CHECK(o.status == 0);
    CHECK(o.out.empty());
    CHECK(o.err.empty());
    const auto names = dir.files("here");
    const auto count = [&](const char* part) {
        return std::count_if(names.begin(), names.end(),
                             [&](const std::string& name) { return name.find(part) != std::string::npos; });
    };
    CHECK(count(".finished.") == 6); // front and back
    CHECK(count(".step.") > 30);
    CHECK(names.size() - static_cast<std::size_t>(count(".finished.") + count(".step.")) ==
          20); // 3 sheets; 2, 5 and 4 pieces; 2, 3 and 1 lays
}

TEST_CASE("a folder that cannot be made is named with its reason") {
    const scratch dir;
    dir.write("a-file", "");
    const run_result o = dir.run("--project all --quiet --out a-file/below");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot make the folder a-file/below: Not a directory"));
}

TEST_CASE("a file that cannot be finished leaves nothing behind, and the one before it as it was") {
    const scratch dir;
    REQUIRE(dir.run("--project kneeling-pad --quiet --out here").status == 0);
    const std::string before = dir.read("here/kneeling-pad.txt");
    const auto names = dir.files("here");
    // A limit on the size of files, as a full disk: the sheet is longer than one block of 512 or 1024 bytes.
    const run_result o = dir.run("--project kneeling-pad --size 30x20 --quiet --replace --out here", "ulimit -f 1;");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot write here/kneeling-pad.txt: File too large"));
    CHECK(dir.read("here/kneeling-pad.txt") == before);
    CHECK(dir.files("here") == names);
}

TEST_CASE("a file whose place is taken by a folder leaves nothing behind") {
    const scratch dir;
    std::filesystem::create_directories(dir / "here/kneeling-pad.top-panel.svg/kept");
    const run_result o = dir.run("--project kneeling-pad --quiet --out here");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot write here/kneeling-pad.top-panel.svg: Is a directory"));
    CHECK(dir.files("here").empty()); // those that come before it neither
}

TEST_CASE("a folder that takes no files is named with its reason") {
    const scratch dir;
    // Its permissions do not bind root, but no user can write there.
    const run_result o = dir.run("--project kneeling-pad --quiet --out /proc/self");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot write /proc/self/kneeling-pad.txt: "));
}

TEST_CASE("a file that is there already is written over only where that is asked for, and keeps its mode") {
    const scratch dir;
    REQUIRE(dir.run("--project kneeling-pad --quiet --out here").status == 0);
    const std::string before = dir.read("here/kneeling-pad.txt");
    const run_result refused = dir.run("--project kneeling-pad --size 20x10 --quiet --out here");
    CHECK(refused.status == 3);
    CHECK(refused.complains("cannot write here/kneeling-pad.txt: a file is there already: --replace writes over such"));
    CHECK(dir.read("here/kneeling-pad.txt") == before);
    for (const int mode : {0600, 0644, 0660}) {
        fs::permissions(dir / "here/kneeling-pad.txt", static_cast<fs::perms>(mode));
        CHECK(dir.run("--project kneeling-pad --size 20x10 --quiet --out here --replace").status == 0);
        CHECK(permissions(dir / "here/kneeling-pad.txt") == mode);
    }
    CHECK(dir.read("here/kneeling-pad.txt").find("finishes 20 x 10 in") != std::string::npos);
    // A new one has what the user's mask leaves of 0666.
    CHECK(dir.run("--project organiser --quiet --out here", "umask 027;").status == 0);
    CHECK(permissions(dir / "here/organiser.txt") == 0640);
}

// Pipes and links of the test's own stand for devices too: were the rule broken, a real one would be lost to the machine.
TEST_CASE("neither what is read nor a pipe or a link, to a device even, is ever written over") {
    const scratch dir;
    const auto has = [](const std::string& text, const char* part) { return text.find(part) != std::string::npos; };
    dir.write("in.txt", "old");
    fs::create_hard_link(dir / "in.txt", dir / "also.txt");
    for (const char* name : {"in.txt", "also.txt", "./in.txt"})
        CHECK(why_not_written(dir / name, {.replace = true, .input = dir / "in.txt"}) == "it is the file that is read");
    CHECK(dir.read("in.txt") == "old");
    fs::create_symlink(dir / "in.txt", dir / "link");
    fs::create_symlink("/dev/null", dir / "device");
    REQUIRE(::mkfifo((dir / "pipe").c_str(), 0600) == 0);
    for (const fs::path& path : {dir / "link", dir / "pipe", dir / "device"})
        CHECK(has(why_not_written(path, {.replace = true}), "a device, a pipe or a link is there"));
    CHECK(fs::is_fifo(dir / "pipe"));
    CHECK(fs::is_symlink(dir / "link"));
    CHECK(fs::is_symlink(dir / "device"));
    // A row whose file has the table's own name.
    fs::create_directory(dir / "here");
    dir.write("here/shed.txt", "project,width,height,name\nkneeling-pad,16,9,shed\n");
    const run_result o = dir.run("--table here/shed.txt --quiet --out here --replace");
    CHECK(o.status == 3);
    CHECK(o.complains("cannot write here/shed.txt: it is the file that is read"));
    CHECK(dir.read("here/shed.txt").substr(0, 7) == "project");
}

TEST_CASE("what comes to be there while a file is written stays, where nothing is to be replaced") {
    const scratch dir;
    allotment::detail::unfinished_file file(dir / "sheet.txt", 0600);
    file.write("ours");
    dir.write("sheet.txt", "theirs");
    CHECK_THROWS_WITH_AS(file.take_its_name(false), doctest::Contains("File exists"), allotment::file_error);
    CHECK(dir.read("sheet.txt") == "theirs");
}

TEST_CASE("files that belong together are written together, however many, and none where one of them cannot be") {
    const scratch dir;
    std::vector<allotment::file_to_write> all;
    for (int i = 0; i < 150; ++i) // more than are unfinished at one time
        all.push_back({dir / ("sheet." + std::to_string(i)), "whole"});
    const auto alike = [&](const char* content) {
        const auto names = dir.files("");
        return static_cast<std::size_t>(std::count_if(
            names.begin(), names.end(), [&](const std::string& name) { return dir.read(name) == content; }));
    };
    allotment::write_files(all);
    CHECK(alike("whole") == 150);
    CHECK_THROWS_AS(allotment::write_files(all), allotment::file_error);
    fs::remove(dir / "sheet.0");
    CHECK_THROWS_AS(allotment::write_files(all), allotment::file_error);
    CHECK_FALSE(fs::exists(dir / "sheet.0"));
    allotment::write_files(all, {.replace = true});
    CHECK(alike("whole") == 150);
    CHECK(unfinished_in(dir.files("")) == 0);
    allotment::write_files({});
}

// 60 runs are stopped after a random time, half of them outright and half by a signal that they can answer.
TEST_CASE("runs that are stopped at any moment leave no file half-written, and what they leave the next removes") {
    const scratch dir;
    const auto begun = std::chrono::steady_clock::now();
    REQUIRE(dir.run("--project kneeling-pad --quiet --out whole").status == 0);
    const std::chrono::duration<double> lasts = std::chrono::steady_clock::now() - begun;
    const std::size_t files = dir.files("whole").size();
    fs::create_directory(dir / "here");
    at_random::sampler random(60);
    for (const int run : random.cases(60)) {
        const bool outright = run % 2 == 0;
        const std::size_t left = unfinished_in(dir.files("here"));
        const double after = lasts.count() * static_cast<double>(random.between(10, 110)) / 100;
        dir.run("--project kneeling-pad --quiet --out here --replace",
                "timeout -s " + std::string(outright ? "KILL " : "TERM ") + std::to_string(after));
        const auto names = dir.files("here");
        for (const std::string& name : names)
            if (unfinished_in({name}) == 0)
                CHECK_MESSAGE(dir.read("here/" + name) == dir.read("whole/" + name), name);
        CHECK(unfinished_in(names) <= left + (outright ? files : 0));
    }
    REQUIRE(dir.run("--project kneeling-pad --quiet --out here --replace").status == 0);
    CHECK(unfinished_in(dir.files("here")) == 0);
}

TEST_CASE("leftovers are removed, but not what another run is writing") {
    const scratch dir;
    const std::string prefix(allotment::detail::unfinished_prefix);
    dir.write(prefix + "1-2", "left by a run that was killed");
    dir.write("not" + prefix, "kept");
    fs::create_symlink(dir / ("not" + prefix), dir / (prefix + "link"));
    REQUIRE(::mkfifo((dir / (prefix + "pipe")).c_str(), 0600) == 0); // which must not be waited for
    allotment::detail::unfinished_file now(dir / "sheet.txt", 0600);
    allotment::remove_leftovers(dir / "");
    CHECK_FALSE(fs::exists(dir / (prefix + "1-2")));
    CHECK(dir.read("not" + prefix) == "kept");
    CHECK(fs::is_symlink(dir / (prefix + "link")));
    now.write("whole");
    now.take_its_name(false);
    CHECK(dir.read("sheet.txt") == "whole");
}
