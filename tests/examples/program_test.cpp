// The program as a person uses it: its help, its exit statuses, sizes as they are typed, and everything that it must
// refuse.
#include "../vectors.hpp"
#include "program.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

TEST_CASE("help names every option, every project and every exit status") {
    const scratch dir;
    const run_result o = dir.run("--help");
    CHECK(o.status == 0);
    CHECK(o.err.empty());
    for (const char* word : {"--project",
                             "--size",
                             "--thickness",
                             "--table",
                             "--part",
                             "--jobs",
                             "--replace",
                             "--out",
                             "--units",
                             "--cloth-width",
                             "--on-hand",
                             "--most-layers",
                             "--json",
                             "--paper",
                             "--inch-graduation",
                             "--centimetre-graduation",
                             "--quiet",
                             "--progress",
                             "organiser",
                             "tool-roll",
                             "kneeling-pad",
                             "Exit status: 0 all done; 1 some",
                             "2 the command",
                             "3 a file"})
        CHECK_MESSAGE(o.says(word), word);
    CHECK(o.says("LENGTH=1/16"));
    CHECK(o.says("LENGTH=0.1"));
    CHECK(dir.run("--version").says("turncloth_sheets " TURNCLOTH_PACKAGE_VERSION));
}

TEST_CASE("all three projects are printed at their usual sizes") {
    const scratch dir;
    const run_result o = dir.run("--project all");
    CHECK(o.status == 0);
    CHECK(o.err.empty());
    for (const char* line : {"Seed-packet organiser", "finishes 27 x 28 in (68.6 x 71.1 cm)", "Hand-tool roll",
                             "finishes 29 x 21 in (73.7 x 53.3 cm)", "Kneeling pad cover",
                             "finishes 17 1/2 x 10 1/2 in (44.4 x 26.7 cm)"}) // 44.45: a tie goes to the even 44.4
        CHECK_MESSAGE(o.says(line), line);
    CHECK(dir.run("--project all --units centimetres").says("finishes 70 x 72 cm"));
    CHECK(dir.run("--project 'Tool roll'").says("Hand-tool roll"));
}

TEST_CASE("a sheet says what to be careful of with what its parts are made of") {
    const scratch dir;
    const run_result o = dir.run("--project organiser");
    CHECK(o.says("Press beside film, never on it"));
    CHECK(o.says("small children"));
    CHECK(dir.run("--project tool-roll").says("strangle, smother"));
    CHECK(dir.run("--project kneeling-pad").says("cover that is loose"));
}

TEST_CASE("a size is read however it is typed") {
    const scratch dir;
    const auto finishes = [&](const std::string& size) {
        const run_result o = dir.run("--project kneeling-pad --units inches --size '" + size + "'");
        const auto start = o.out.find("finishes ");
        return o.status == 0 ? o.out.substr(start, o.out.find('\n', start) - start) : o.err;
    };
    for (const char* size :
         {"24x15", "24 x 15 in", "24X15", "24 × 15 in", "24 by 15 inches", "24in x 15in", "2 ft x 15 in",
          "2 ft x 1 ft 3 in", "24\" x 15\"", "24″ × 15″", "2/3 yd x 15 in", " 24 in x 15 in ", "24.0 x 15,0 in"})
        CHECK_MESSAGE(finishes(size) == "finishes 24 x 15 in", size);
    CHECK(finishes("24 1/2 x 15 3/8 in") == "finishes 24 1/2 x 15 3/8 in");
    CHECK(finishes("24-1/2 x 15½ in") == "finishes 24 1/2 x 15 1/2 in");
    // The width's unit chooses the edition, the height may be in any.
    CHECK(dir.run("--project kneeling-pad --size '60 x 38 cm' --units centimetres")
              .says("top panel, 1 of canvas: 63 x 41 cm"));
    CHECK(dir.run("--project kneeling-pad --size '600 x 380mm' --units centimetres")
              .says("top panel, 1 of canvas: 63 x 41 cm"));
    CHECK(dir.run("--project kneeling-pad --size '.6 m x 38 cm' --units centimetres")
              .says("top panel, 1 of canvas: 63 x 41 cm"));
    CHECK(
        dir.run("--project kneeling-pad --size '60 cm x 15 in' --units centimetres").says(", for 60 x 38.1 cm asked"));
    CHECK(dir.run("--project kneeling-pad --size '24 in x 38.1 cm' --units inches")
              .says("top panel, 1 of canvas: 25 x 16 in"));
}

TEST_CASE("a project of one's own is made from its file, at any size, or every fault of it is told") {
    const scratch dir;
    std::ifstream in("examples/designs/peg_bag.json", std::ios::binary);
    dir.write("my bag.json", std::string(std::istreambuf_iterator<char>(in), {}));
    CHECK(dir.run("--project-file 'my bag.json' --size '14 x 12 in' --units inches")
              .says("back, 1 of canvas: 16 1/2 x 16 1/4 in\n"));
    CHECK(dir.run("--project-file 'my bag.json' --units centimetres").says("finishes 36 x 30 cm\n"));
    CHECK(dir.run("--project-file 'my bag.json'").says("finishes 14 x 12 in"));
    CHECK(dir.run("--project-file 'my bag.json' --out drawn --json --quiet").status == 0);
    std::vector<std::string> files = dir.files("drawn");
    std::sort(files.begin(), files.end());
    std::erase_if(files, [](const std::string& name) { return name.starts_with("my-bag.step."); });
    CHECK(files == std::vector<std::string>{"my-bag.back.svg", "my-bag.finished.back.svg", "my-bag.finished.front.svg",
                                            "my-bag.json", "my-bag.lay.canvas.svg", "my-bag.pocket-strip.svg",
                                            "my-bag.txt"});
    const run_result small = dir.run("--project-file 'my bag.json' --size '5 x 12 in'");
    CHECK(small.status == 1);
    CHECK(small.complains("my bag.json: A peg bag needs at least 6 in of width and 10 3/4 in of height."));

    dir.write("wrong.json",
              R"({"turncloth_design": 1, "name": "Mat", "pieces": [{"name": "m\u001b[2J", "material": "felt",
        "width": "finished widht", "height": "2"}]})");
    const run_result wrong = dir.run("--project-file wrong.json --size '5 x 12 in'");
    CHECK(wrong.status == 3);
    CHECK(wrong.complains(
        "turncloth_sheets: wrong.json: /pieces/0/name: it holds what cannot be printed\n"
        "turncloth_sheets: wrong.json: /pieces/0/width, character 1: nothing here is named \"finished widht\"\n"
        "turncloth_sheets: wrong.json: /pieces/0/height: expected a length: this is a number\n"
        "turncloth_sheets: cannot use wrong.json: it has 3 faults\n"));
    dir.write("inches.json", R"({"turncloth_design": 1, "name": "Mat", "units": "inches", "pieces": [{"name": "mat",
        "material": "felt", "width": "finished width", "height": "finished height"}]})");
    CHECK(dir.run("--project-file inches.json --size '50.8 x 25.4 cm' --units inches").says("finishes 20 x 10 in\n"));
    CHECK(dir.run("--project-file inches.json").complains("inches.json: no size is given"));
    dir.write("utf16.json", "\xFF\xFE{");
    CHECK(dir.run("--project-file utf16.json").complains("it is in UTF-16"));
    CHECK(dir.run("--project-file missing.json").status == 3);
}

TEST_CASE("the project files of the year are made from their files, in either unit, each with a handout") {
    const scratch dir;
    for (const std::string name : {"seed_tray_tote", "produce_bag", "patchwork_cushion", "draught_stopper"}) {
        CAPTURE(name);
        std::ifstream in("examples/designs/" + name + ".json", std::ios::binary);
        dir.write(name + ".json", std::string(std::istreambuf_iterator<char>(in), {}));
        for (const char* unit : {"inches", "centimetres"}) {
            const std::string made = "--project-file " + name + ".json --units " + unit;
            CHECK(dir.run(made + " --out " + name + "/" + unit + " --handout html --quiet").status == 0);
            CHECK(dir.run(made).says("In this order\n"));
        }
        CHECK(dir.files(name).size() > 4);
    }
}

TEST_CASE("a sheet and its drawings are written in German without a handout too") {
    const scratch dir;
    const run_result printed = dir.run("--project tool-roll --language de");
    CHECK(printed.status == 0);
    CHECK(printed.says("In dieser Reihenfolge\n"));
    CHECK_FALSE(printed.says("In this order\n"));
    CHECK(dir.run("--project tool-roll --language de --out g --quiet").status == 0);
    CHECK(dir.read("g/tool-roll.txt").find("In dieser Reihenfolge\n") != std::string::npos);
    CHECK(dir.read("g/tool-roll.lining.svg").find("Schnittkante") != std::string::npos);
    CHECK(dir.run("--project tool-roll --language xx").complains("written in en or de: there is no \"xx\""));
}

TEST_CASE("a command line that is wrong ends with 2 and says what is wrong with it") {
    const scratch dir;
    const auto refused = [&](const std::string& arguments, const char* why) {
        const run_result o = dir.run(arguments);
        CHECK_MESSAGE(o.status == 2, arguments);
        CHECK_MESSAGE(o.out.empty(), arguments);
        CHECK_MESSAGE(o.complains(why), o.err);
    };
    refused("", "--project, --project-file or --table");
    refused("--project all --project-file a.json", "--project-file");
    refused("--table a.csv --project-file a.json", "--project-file");
    refused("--project hammock", "there are organiser, tool-roll, kneeling-pad, or all");
    refused("--project", "--project");
    refused("--nonsense", "--nonsense");
    refused("--size 24x15", "--project");
    refused("--project all --table a.csv", "--table");
    refused("--project all --units furlongs", "furlongs");
    refused("--project all --inch-graduation 0", "must be more than zero: it was 0 in");
    refused("--project all --centimetre-graduation -1", "must be more than zero: it was -1 cm");
    refused("--project all --inch-graduation 1/0", "a denominator must not be zero");
    refused("--project all --thickness 0", "must be more than zero");
    refused("--project all --cloth-width 0", "the width of the cloth must be more than zero: it was 0");
    refused("--project all --cloth-width wide", "cannot read \"wide\"");
    for (const char* cloth :
         {"canvas", ":", "canvas 40 x 30 in", " : 4 x 3", "canvas: 40", "canvas: 0 x 3", "canvas: 40 x 30 in; 3 x 2 in",
          "canvas: 40 x 30 in; 3 x 2 in at 4", "canvas: 40 x 30 in;", "canvas: 40 x 30 in; 0 x 2 in at 4 x 5 in",
          "canvas: 40 x 30 in; 3 x 2 in at -1 x 5 in"})
        refused("--project all --on-hand '" + std::string(cloth) + "'", "--on-hand");
    refused("--project all --json", "--out");
    refused("--project all --replace", "--out");
    refused("--project all --part 1/2", "--table");
    for (const char* part : {"0/8", "9/8", "3", "3/", "/8", "3/8 ", "-1/8", "3/1000001", "3/99999999999999999999"})
        refused("--table t.csv --part '" + std::string(part) + "'", "a part is written as 3/8");
    refused("--project all --jobs 0", "--jobs");
    refused("--project '\x1b[2J'", "there is no project \"\xEF\xBF\xBD[2J\"");
    refused("--project all --paper a3", "a3");
    refused("--project all --most-layers 0", "--most-layers");
    refused("--project all --most-layers many", "--most-layers");
    refused("--project all --size 24", "write width x height");
    refused("--project all --size 24x15x2", "write width x height");
    refused("--project all --size ''", "write width x height");
    refused("--project all --size 24x", "the height: cannot read");
    refused("--project all --size '12 1/ x 15'", "expected a denominator after the '/'");
    refused("--project all --size '1/0 x 15'", "a denominator must not be zero");
    refused("--project all --size='--3 x 15'", "the width: cannot read");
    refused("--project all --size '12,3,4 x 15'", "only one decimal mark");
    refused("--project all --size '24 x 0'", "the height: it must be more than zero: it was 0 in");
    refused("--project all --size='-24 x 15'", "the width: it must be more than zero: it was -24 in");
    refused("--project all --size '24 in x 15'", "the height: it needs a unit");
    refused("--project all --size '2 x 1 ft 3 in'", "the width: it needs a unit");
    refused("--project all --size '99999999999999999999 x 15'", "more digits than 64 bits hold");
    refused("--project all --size '9000000000000000000 ft x 15 in'", "the width:");
}

TEST_CASE("a size that a project cannot be made at ends with 1, and the others are made") {
    const scratch dir;
    // One column and one row: 3 1/4 + 3/4, and (2 1/2 - 1/8) + (4 3/4 + 3/4) + (3/4 + 1/4).
    CHECK(dir.run("--project organiser --size '4 x 8 7/8 in'").says("1 x 1 pockets"));
    run_result o = dir.run("--project organiser --size '4 x 8 3/4 in'");
    CHECK(o.status == 1);
    CHECK(o.complains("organiser: one pocket for a seed packet needs a finished size of at least 4 x 8 7/8 in: it was "
                      "4 x 8 3/4 in"));
    CHECK(dir.run("--project organiser --size '3 15/16 x 20 in'").status == 1);
    // 2 x 2 3/4 + 2 x 5/8.
    CHECK(dir.run("--project tool-roll --size '6 3/4 x 11 in'").says("Hand-tool roll, 2 tool pockets"));
    CHECK(dir.run("--project tool-roll --size '6 1/2 x 11 in'").complains("at least 6 3/4 x 11 in"));
    o = dir.run("--project all --size '5 x 9 in'"); // too narrow for the roll alone
    CHECK(o.status == 1);
    CHECK(o.says("Seed-packet organiser"));
    CHECK(o.says("Kneeling pad cover"));
    CHECK_FALSE(o.says("Hand-tool roll"));
    o = dir.run("--project all --size '1000000 x 1000000 in'");
    CHECK(o.status == 1);
    CHECK(o.complains("more than 100 columns of pockets"));
    CHECK(o.complains("more than 100 tool pockets"));
    CHECK(dir.run("--project organiser --size '20 x 1000000 in'").complains("more than 100 rows of pockets"));
    o = dir.run("--project kneeling-pad --size '1 1/2 x 2 in'"); // two margins of 1 in
    CHECK(o.status == 1);
    CHECK(o.complains("leave no opening"));
}

TEST_CASE("a roll of little height has one zipper, a higher one has two") {
    const scratch dir;
    // The second is put in where a quarter of the height is 1 3/4 + 2 1/2 in or more.
    CHECK(dir.run("--project tool-roll --size '20 x 16 15/16 in'").says("openings: 1\n"));
    CHECK(dir.run("--project tool-roll --size '20 x 17 in'").says("openings: 2\n"));
}

TEST_CASE("figures are rounded to the graduations asked for") {
    const scratch dir;
    // 2.775 + 0.625 = 3.4 in and 8.636 cm.
    const std::string coarse =
        "--project tool-roll --size '29 x 21' --inch-graduation 1/4 --centimetre-graduation '5 mm'";
    const run_result o = dir.run(coarse + " --exact");
    CHECK(o.says("rounded to 1/4 in and 0.5 cm"));
    CHECK(o.says("between two tools: 3 1/2 in (8.5 cm)"));
    // Worked out on quarters, the slit of 1/4 in becomes 1/2, as wide as the zipper's rows are apart.
    const run_result refused = dir.run(coarse);
    CHECK(refused.status == 1);
    CHECK(refused.complains("a ruler of 1/4 in does not tell apart on lining \"stitch zipper\""));
    CHECK(refused.complains(": use 1/8 in or finer\n"));
}

TEST_CASE("what the standard output does not take ends with 3") {
    const scratch dir;
    const auto refused = [&](const std::string& arguments, const char* why) {
        const run_result o = dir.run(arguments);
        CHECK(o.status == 3);
        CHECK_MESSAGE(o.complains(why), o.err);
    };
    refused("--project all >/dev/full", "cannot write the standard output: No space left on device");
    // So little that it is still waiting to be written when the sheet is done.
    refused("--project kneeling-pad --units inches >/dev/full", "No space left on device");
    refused("--help >/dev/full", "No space left on device");
    refused("--project all >&-", "cannot write the standard output: Bad file descriptor");
}

TEST_CASE("a pipe that nobody reads any more ends with 3") {
    const scratch dir;
    std::string table = "project,width,height\n"; // for more than a pipe holds
    for (int i = 0; i < 60; ++i)
        table += "kneeling-pad,16,9\n";
    dir.write("t.csv", table);
    const run_result o = dir.run("--table t.csv >&3", "mkfifo pipe; (exec 4<pipe) & exec 3>pipe;");
    CHECK(o.status == 3);
    CHECK_MESSAGE(o.complains("cannot write the standard output: Broken pipe"), o.err);
}

TEST_CASE("what is printed goes into no file, though a stream is closed and lends it its number") {
    const scratch dir;
    CHECK(dir.run("--project kneeling-pad --out here >&-").status == 3);
    CHECK(dir.files("here").empty());
    CHECK(dir.run("--project kneeling-pad --quiet --out here >&- <&- 2>&-").status == 0);
    CHECK(dir.read("here/kneeling-pad.txt").substr(0, 12) == "Kneeling pad");
}
