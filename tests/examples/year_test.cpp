// The table of a year: a project for each month, as a file, at three sizes in inches and at three in centimetres, and a handout
// of each, by one command.
#include "program.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>

TEST_CASE("a year of projects is made by one command: twelve months, three sizes in either unit, a handout of each") {
    const scratch dir;
    std::filesystem::copy("examples/designs", dir / "designs");
    const run_result o = dir.run("--table designs/year.csv --handout html --quiet --out year");
    INFO(o.err);
    REQUIRE(o.status == 0);
    const auto names = dir.files("year");
    for (int month = 1; month <= 12; ++month) {
        const std::string begins = (month < 10 ? "month-0" : "month-") + std::to_string(month) + "-";
        for (const std::string unit : {"-in", "-cm"})
            CHECK_MESSAGE(std::count_if(names.begin(), names.end(),
                                        [&](const std::string& name) {
                                            return name.starts_with(begins) && name.ends_with(unit + ".html");
                                        }) >= 3,
                          begins << unit);
    }
}
