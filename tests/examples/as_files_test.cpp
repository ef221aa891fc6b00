// Projects that are files too: the same sheets as from the C++ that shares nothing with them, byte for byte, at any size,
// exactly and on a ruler; and refused at the same sizes.
#include "../../examples/sheets/organiser.hpp"
#include "at_random.hpp"
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/sheet/on_ruler.hpp>
#include <turncloth/sheet/text.hpp>

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>

using namespace turncloth;

namespace {

project_design design_in(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return read_design(std::string(std::istreambuf_iterator<char>(in), {}));
}

/// All that is written of a sheet, or that there is none.
template <class Make>
std::string written(const Make& make) {
    try {
        const auto sheet = make();
        return to_text(sheet) + to_json(sheet).dump(1);
    } catch (const error&) {
        return "refused";
    }
}

template <length_unit Unit>
bool same(const project_design& d, const finished_size<Unit>& size, length<Unit> graduation) {
    const std::string twin = written([&] { return allotment::organiser::make(size, graduation); });
    const std::string file = written([&] {
        return sheet_on_ruler(size, graduation, [&](const finished_size<Unit>& asked, const ruled<Unit>& by) {
            return project_of(d, asked, by);
        });
    });
    CHECK_MESSAGE(file == twin, to_text(size));
    return twin != "refused";
}

} // namespace

TEST_CASE("the organiser as a file is the organiser in C++") {
    const project_design d = design_in("examples/designs/organiser.json");
    at_random::sampler random(29);
    int made = 0;
    for (const int i : random.cases(12)) {
        const auto inches = [&] { return random.inches(28) + 3_in; };
        const auto centimetres = [&] { return random.centimetres(70) + 8_cm; };
        if (i % 2 == 0)
            made += same(d, finished_size<inch>(inches(), inches()), i % 4 == 0 ? 0_in : "1/16"_in);
        else
            made += same(d, finished_size<centimetre>(centimetres(), centimetres()), i % 4 == 1 ? 0_cm : "0.1"_cm);
    }
    CHECK(made > 6);
    CHECK(made < 12);
}
