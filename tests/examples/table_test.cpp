// Tables of many sizes: how they are read, that a bad row does not stop the others, and that names stay apart.
#include "program.hpp"

#include <doctest/doctest.h>

#include <cstddef>
#include <filesystem>
#include <set>

namespace {

run_result with_table(const scratch& dir, std::string_view content, const std::string& options = "--units inches") {
    dir.write("t.csv", content);
    return dir.run("--table t.csv " + options);
}

} // namespace

TEST_CASE("every row of a table is made, with its own name, size and edition") {
    const scratch dir;
    const run_result o = with_table(dir,
                                    "Name,Project,Height,Width,Notes,Thickness\n"
                                    "Plot 7,kneeling pad,9 in,16 in,\"blue, with piping\",\n"
                                    "\"The \"\"old\"\" shed\",Tool-roll,50,60 cm,,\n"
                                    ",organiser,28,27,,\n"
                                    "Thick,kneeling-pad,9,16,,3\n",
                                    "--out here --units inches");
    INFO(o.err);
    // 50 without a unit beside 60 cm is refused: see the next test.
    CHECK(o.status == 1);
    CHECK(o.complains("row 3, column 3 (height): it needs a unit, as the width has one"));
    CHECK(o.says("Plot 7: Kneeling pad cover"));
    CHECK(o.says("finishes 16 x 9 in"));
    CHECK(o.says("51 x 4 in")); // 3 + 2 x 1/2 high
    const auto names = dir.files("here");
    const std::set<std::string> all(names.begin(), names.end());
    for (const char* name : {"plot-7.txt", "plot-7.top-panel.svg", "organiser-row-4.txt", "thick.txt"})
        CHECK_MESSAGE(all.count(name) == 1, name);
}

TEST_CASE("a bad row is named by its number and column, and the other rows are made") {
    const scratch dir;
    const run_result o = with_table(dir, "project,width,height\n"
                                         "kneeling-pad,16,9\n"        // 2
                                         "kneeling-pad,,9\n"          // 3
                                         "kneeling-pad,16\n"          // 4
                                         "kneeling-pad,16,12 1/\n"    // 5
                                         "kneeling-pad,1/0,9\n"       // 6
                                         "hammock,16,9\n"             // 7
                                         ",16,9\n"                    // 8
                                         "kneeling-pad,0,9\n"         // 9
                                         "kneeling-pad,16,-9\n"       // 10
                                         "organiser,3,3\n"            // 11
                                         "kneeling-pad,16,9,extra\n"  // 12
                                         "kneeling-pad,\"16\" in,9\n" // 13
                                         "kneeling-pad,17,9\n"        // 14
                                         "kneeling-pad,\"18,9\n"      // 15
                                         "kneeling-pad,19,9\n");
    CHECK(o.status == 1);
    for (const char* why :
         {"row 3, column 2 (width): it is missing", "row 4, column 3 (height): it is missing",
          "row 5, column 3 (height): cannot read \"12 1/\" as a measurement: expected a denominator after the '/', at "
          "its "
          "end",
          "row 6, column 2 (width): cannot read \"1/0\" as a measurement: a denominator must not be zero",
          "row 7, column 1 (project): there is no project \"hammock\": there are organiser, tool-roll, kneeling-pad, "
          "and "
          "project files, which end in .json",
          "row 8, column 1 (project): it is missing", "row 9, column 2 (width): it must be more than zero: it was 0 in",
          "row 10, column 3 (height): it must be more than zero: it was -9 in",
          "row 11: one pocket for a seed packet needs a finished size of at least 4 x 8 7/8 in: it was 3 x 3 in",
          "row 12: it has 4 fields, more than the 3 columns of the first row",
          "row 13: text follows the closing quote of field 2",
          "row 15: the opening quote of field 2 is not closed before the next row"})
        CHECK_MESSAGE(o.complains(why), o.err);
    CHECK(o.says("finishes 16 x 9 in"));
    CHECK(o.says("finishes 17 x 9 in"));
    CHECK(o.says("finishes 19 x 9 in")); // though it is within the quote
}

TEST_CASE("a byte order mark, line ends of two characters, blank lines and no last line end are all understood") {
    const scratch dir;
    const run_result o = with_table(dir, "\xEF\xBB\xBFproject,width,height\r\n"
                                         "\r\n"
                                         "kneeling-pad,16,9\r\n"
                                         "   \r\n"
                                         "kneeling-pad,17\",\"9\"\"\"\r\n" // inch marks, bare and as RFC 4180 asks
                                         "kneeling-pad,nothing,9");
    CHECK(o.status == 1);
    CHECK(o.says("finishes 16 x 9 in"));
    CHECK(o.says("finishes 17 x 9 in"));
    CHECK(o.complains("row 6, column 2 (width)")); // blank lines count, as in a spreadsheet
}

TEST_CASE("a table that cannot be used ends with 3 and says why") {
    const scratch dir;
    const auto refused = [&](std::string_view content, const char* why) {
        const run_result o = with_table(dir, content);
        CHECK(o.status == 3);
        CHECK(o.out.empty());
        CHECK_MESSAGE(o.complains(why), o.err);
    };
    refused("", "cannot use t.csv: it is empty: the first row must name the columns project, width and height");
    refused("\xEF\xBB\xBF\n\n  \n", "it is empty");
    refused("kneeling-pad,16,9\n", "its first row names no column \"project\"");
    refused("project,width\nkneeling-pad,16\n", "its first row names no column \"height\"");
    refused("project,width,height,Width\n", "its first row names the column \"width\" twice");
    refused("project,\"width\n", "in the first row, the opening quote of field 2 is never closed");
    CHECK(dir.run("--table nowhere.csv").status == 3);
    CHECK(dir.run("--table nowhere.csv").complains("cannot read nowhere.csv: No such file or directory"));
    CHECK(dir.run("--table /").complains("cannot read /: Is a directory"));
}

TEST_CASE("a table with no rows below its heading is done at once, and says so") {
    const scratch dir;
    const run_result o = with_table(dir, "project,width,height\n");
    CHECK(o.status == 0);
    CHECK(o.out.empty());
    CHECK(o.complains("t.csv has no row below the first"));
}

TEST_CASE("semicolons and tabs part fields where the first row is parted by them") {
    const scratch dir;
    // A comma is then the decimal mark.
    for (const char* table :
         {"project;width;height\nkneeling-pad;16,5;\"9\"\n", "project\twidth\theight\nkneeling-pad\t16,5\t9\n",
          "project;\"width, in\";width;height\nkneeling-pad;;16,5;9\n"}) {
        const run_result o = with_table(dir, table);
        CHECK(o.status == 0);
        CHECK_MESSAGE(o.says("finishes 16 1/2 x 9 in"), o.err);
    }
    CHECK(
        with_table(dir, "project,width,height\nkneeling-pad,16,5,9\n").complains("row 2: it has 4 fields, more than "));
}

TEST_CASE("lines may end in a carriage return alone") {
    const scratch dir;
    const run_result o = with_table(dir, "project,width,height\rkneeling-pad,16,9\r\rkneeling-pad,0,9\r");
    CHECK(o.says("finishes 16 x 9 in"));
    CHECK(o.complains("row 4, column 2 (width)"));
}

TEST_CASE("a table in another encoding is told from one without the right columns") {
    const scratch dir;
    const std::string heading = "project,width,height\n";
    for (const bool low_first : {true, false}) { // UTF-16 in both orders of ISO/IEC 10646, with its mark and without
        std::string wide;
        for (const char c : heading)
            wide += low_first ? std::string{c, '\0'} : std::string{'\0', c};
        const run_result marked = with_table(dir, (low_first ? "\xFF\xFE" : "\xFE\xFF") + wide);
        CHECK(marked.status == 3);
        CHECK(marked.complains("cannot use t.csv: it is in UTF-16, as its first bytes say: save it as UTF-8"));
        CHECK(with_table(dir, wide).complains("it holds bytes of zero, as no text in UTF-8 does: save it as UTF-8"));
    }
}

TEST_CASE("a name that is not fit to print is refused with its row and column, and the other rows are made") {
    const scratch dir;
    const std::string hundred(100, 'n');
    const run_result o = with_table(dir,
                                    "project,width,height,name,notes\n"
                                    "kneeling-pad,16,9,caf\xE9,\n"                // ISO/IEC 8859-1
                                    "kneeling-pad,17,9,\"x\n  outer of gold\",\n" // another line of a sheet
                                    "kneeling-pad,18,9,\x1B[2J,\n"                // clears a terminal
                                    "kneeling-pad,19,9,\xE2\x80\xAE"
                                    "dehs,\n" // turns what follows about
                                    "kneeling-pad,20,9," +
                                        hundred +
                                        "n,\n"
                                        "ke\x1B[2J,21,9,,\n"
                                        "kneeling-pad,\xA0"
                                        "22,9,,\n"
                                        "kneeling-pad,23,9,caf\xC3\xA9,\xE9\x1B\n" // in a column that nobody reads
                                        "kneeling-pad,24,9," +
                                        hundred + ",\n",
                                    "--units inches --json --out here");
    CHECK(o.status == 1);
    for (const char* why : {"row 2, column 4 (name): its character 4 is not UTF-8 (byte E9): save the file as UTF-8",
                            "row 3, column 4 (name): its character 2 ends the line: is a quote missing?",
                            "row 4, column 4 (name): its character 1 (U+001B) cannot be printed",
                            "row 5, column 4 (name): its character 1 (U+202E) cannot be printed",
                            "row 6, column 4 (name): it is longer than 100 characters",
                            "row 7, column 1 (project): its character 3 (U+001B) cannot be printed",
                            "row 8, column 2 (width): its character 1 is not UTF-8 (byte A0)"})
        CHECK_MESSAGE(o.complains(why), o.err);
    CHECK(o.err.find_first_of("\x1B\xA0") == std::string::npos);
    CHECK(o.says("caf\xC3\xA9: Kneeling pad cover"));
    CHECK(o.says("finishes 24 x 9 in"));
    CHECK(dir.read("here/caf.json").find("caf\xC3\xA9: Kneeling") != std::string::npos);
}

TEST_CASE("one quote that is not closed costs its own row alone") {
    const scratch dir;
    std::string rows;
    for (int i = 0; i < 50; ++i)
        rows += "kneeling-pad,16,9,\n";
    // Closed by nothing, by an inch mark further below, or by a quote that opens.
    for (const char* last : {"", "kneeling-pad,24\",9\",", "kneeling-pad,\"16\",9,\"a bench\""}) {
        const run_result o =
            with_table(dir, "project,width,height,notes\nkneeling-pad,16,9,\"blue\n" + rows + last, "--units inches");
        CHECK(o.complains("row 2: the opening quote of field 4 is not closed before the next row"));
        std::size_t made = 0;
        for (std::size_t at = o.out.find("finishes"); at != std::string::npos; at = o.out.find("finishes", at + 1))
            ++made;
        CHECK(made == (*last == '\0' ? 50 : 51));
    }
    // A note of several lines is read.
    CHECK(with_table(dir, "project,width,height,notes\nkneeling-pad,16,9,\"blue,\r\nwith piping\"\n").status == 0);
}

TEST_CASE("rows of one name do not write over each other, nor does any name leave the folder") {
    const scratch dir;
    const run_result o = with_table(dir,
                                    "project,width,height,name\n"
                                    "kneeling-pad,16,9,Shed\n"
                                    "kneeling-pad,17,9,shed\n"
                                    "kneeling-pad,18,9,shed-2\n"
                                    "kneeling-pad,19,9,SHED!\n"
                                    "kneeling-pad,20,9,../../out\n"
                                    "kneeling-pad,21,9,\xC3\xA9\xC3\xA9\n",
                                    "--quiet --out here");
    CHECK(o.status == 0);
    const auto finishes = [&](const std::string& name) {
        const std::string text = dir.read("here/" + name + ".txt");
        return text.empty() ? std::string() : text.substr(text.find("finishes ") + 9, 2);
    };
    CHECK(finishes("shed") == "16");
    CHECK(finishes("shed-2") == "17");
    CHECK(finishes("shed-2-2") == "18");
    CHECK(finishes("shed-3") == "19");
    CHECK(finishes("out") == "20");
    CHECK(finishes("kneeling-pad-row-7") == "21");
    // Each a sheet, a lay and 3 pieces; from 18 x 9 in on 4, as the edging is cut in four: 2 x 5 + 4 x 6.
    CHECK(dir.files("here").size() == 34);
}

TEST_CASE("a thousand rows are made, and told of at every hundredth where that is asked for") {
    const scratch dir;
    std::string table = "project,width,height\n";
    for (int i = 0; i < 1000; ++i)
        table += std::string(i % 3 == 0   ? "organiser,"
                             : i % 3 == 1 ? "tool-roll,"
                                          : "kneeling-pad,") +
                 std::to_string(12 + i % 40) + " 3/8," + std::to_string(12 + i % 17) + "\n";
    const run_result o = with_table(dir, table, "--quiet --progress --out here");
    CHECK(o.status == 0);
    for (int hundred = 100; hundred <= 1000; hundred += 100)
        CHECK(o.complains(std::to_string(hundred) + " of 1000 rows done\n"));
    // Rolls: a sheet, 5 pieces, 3 lays. Organisers: a sheet, 2 pieces, 2 lays; a backing wider than the cloth is made up of
    // parts. Pads: a sheet, a lay, 4 pieces, but 3 where 2 x (w + h) + 1 in are at most 53.
    std::size_t files = 333 * 9;
    for (std::size_t i = 0; i < 1000; ++i) {
        const std::size_t w = 12 + i % 40, h = 12 + i % 17;
        if (i % 3 == 0)
            files += 5;
        if (i % 3 == 2)
            files += 2 * (w + h) + 1 < 53 ? 5 : 6; // with 3/4 in more
    }
    CHECK(dir.files("here").size() == files);
    CHECK(with_table(dir, table, "--quiet").err.empty()); // nobody watches
}

TEST_CASE("a row may name a project file beside the table, which is read once, and made in its own name and unit") {
    const scratch dir;
    std::filesystem::copy_file("examples/designs/gift_sack.json", dir / "sack.json");
    const run_result o = with_table(dir,
                                    "project,width,height,name\n"
                                    "sack.json,8 in,13 in,\n"
                                    "sack.json,30 cm,45 cm,For the fair\n"
                                    "kneeling-pad,16 in,9 in,\n",
                                    "--out here --units inches");
    INFO(o.err);
    REQUIRE(o.status == 0);
    const auto names = dir.files("here");
    const std::set<std::string> all(names.begin(), names.end());
    for (const std::string name : {"sack-row-2.txt", "for-the-fair.txt", "kneeling-pad-row-4.txt"})
        CHECK_MESSAGE(all.count(name) == 1, name);
    CHECK(dir.read("here/for-the-fair.txt").find("For the fair: Gift sack") == 0);
    CHECK(dir.read("here/for-the-fair.txt").find("30 cm") != std::string::npos);
}

TEST_CASE(
    "a project file that is not there, is faulty, or is given a thickness is refused by its rows, and told once") {
    const scratch dir;
    dir.write("broken.json", "{\"format\": 3}");
    std::filesystem::copy_file("examples/designs/gift_sack.json", dir / "sack.json");
    const run_result o = with_table(dir, "project,width,height,thickness\n"
                                         "none.json,8 in,13 in,\n"
                                         "broken.json,8 in,13 in,\n"
                                         "broken.json,9 in,13 in,\n"
                                         "sack.json,8 in,13 in,2\n"
                                         "sack.json,12 in,18 in,\n");
    CHECK(o.status == 1);
    CHECK(o.complains("row 2, column 1 (project): cannot read"));
    CHECK(o.complains("row 3, column 1 (project): cannot use"));
    CHECK(o.complains("row 4, column 1 (project): cannot use"));
    CHECK(o.complains("row 5, column 4 (thickness): a project file says its own"));
    CHECK(o.says("Gift sack"));
    const std::string fault = "broken.json: ";
    std::size_t told = 0;
    for (std::size_t at = o.err.find(fault + "format"); at != std::string::npos;
         at = o.err.find(fault + "format", at + 1))
        ++told;
    CHECK(told <= 1);
}
