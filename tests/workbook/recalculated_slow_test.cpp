// The exported functions against the workbook itself, recalculated by LibreOffice Calc (a general-purpose spreadsheet
// engine, Debian's libreoffice-calc-nogui) with several people's inputs typed into its cells.
#include "../../examples/workbook/tool_roll.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace fs = std::filesystem;
namespace wb = tool_roll_workbook;

namespace {

std::string read(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::array<double, 10> in_order(const wb::inputs& b) {
    return {b.finished_width, b.finished_height, b.self_binding,  b.hem_first_turn, b.hem_depth,
            b.hem_inset,      b.tool_pockets,    b.zipper_margin, b.tape_beyond,    b.zipper_roll};
}

std::array<double, 10> exported(const wb::inputs& b) {
    return {wb::outer_cut_width(b),    wb::outer_cut_height(b), wb::pockets_finished_height(b),
            wb::pockets_cut_height(b), wb::hem_stitched_at(b),  wb::third_pocket_mark(b),
            wb::zipper_opening(b),     wb::zipper_tape(b),      wb::zippers_from_a_roll(b),
            wb::left_on_the_roll(b)};
}

/// The workbook with the inputs typed in, one after the other, in place of those it was saved with; shown as decimals, as a
/// fraction to two digits is not all of a figure.
std::string filled_in(std::string workbook, const wb::inputs& b) {
    std::size_t at = 0;
    for (const double value : in_order(b)) {
        const std::string mark = "office:value=\"";
        at = workbook.find(mark, at);
        REQUIRE(at != std::string::npos);
        at += mark.size();
        workbook.replace(at, workbook.find('"', at) - at, std::to_string(value));
    }
    const std::string fractions = " style:data-style-name=\"fractions\"";
    while ((at = workbook.find(fractions)) != std::string::npos)
        workbook.erase(at, fractions.size());
    return workbook;
}

/// The second column of the recalculated workbook, in full precision, headings left out.
std::vector<double> recalculated(const wb::inputs& b) {
    const fs::path folder = fs::temp_directory_path() / "turncloth_workbook";
    fs::remove_all(folder);
    fs::create_directories(folder);
    std::ofstream(folder / "roll.fods", std::ios::binary) << filled_in(read("examples/workbook/tool_roll.fods"), b);
    // Comma, quote, UTF-8, from line 1, cells not "as shown".
    const std::string command =
        "soffice -env:UserInstallation=file://" + (folder / "profile").string() +
        " --headless --convert-to 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false' --outdir " +
        folder.string() + " " + (folder / "roll.fods").string() + " >/dev/null 2>&1";
    REQUIRE_MESSAGE(std::system(command.c_str()) == 0,
                    "LibreOffice Calc could not convert the workbook: is libreoffice-calc-nogui installed?");
    std::ifstream csv(folder / "roll.csv");
    std::vector<double> column;
    for (std::string line; std::getline(csv, line);) {
        const std::size_t unit = line.rfind(','), figure = line.rfind(',', unit - 1) + 1;
        if (figure < unit)
            column.push_back(std::stod(line.substr(figure, unit - figure)));
    }
    fs::remove_all(folder);
    return column;
}

} // namespace

TEST_CASE("the exported functions say what the workbook says when it is recalculated") {
    for (const wb::inputs& b :
         {wb::inputs{}, wb::inputs{.finished_width = 17.375, .finished_height = 9.5, .self_binding = 0.5},
          wb::inputs{.finished_width = 41,
          .hem_first_turn = 0.375,
          .hem_depth = 1,
          .hem_inset = 0.0625,
          .tool_pockets = 7,
          .zipper_margin = 1.25,
          .tape_beyond = 0.75,
          .zipper_roll = 360}}) {
        const std::vector<double> column = recalculated(b);
        REQUIRE(column.size() == 20);
        const auto formulas = exported(b);
        for (std::size_t i = 0; i < formulas.size(); ++i) {
            CAPTURE(i + 11);
            CHECK(column[i + 10] == doctest::Approx(formulas[i]).epsilon(1e-12));
        }
    }
}
