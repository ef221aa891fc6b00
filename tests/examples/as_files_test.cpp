// Projects that are files too: the same sheets as from the C++ that shares nothing with them, byte for byte, at any size,
// exactly and on a ruler; and refused at the same sizes.
#include "../../examples/sheets/kneeling_pad.hpp"
#include "../../examples/sheets/organiser.hpp"
#include "../../examples/sheets/tool_roll.hpp"
#include "at_random.hpp"
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/sheet/on_ruler.hpp>
#include <turncloth/sheet/text.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <fstream>
#include <iterator>
#include <string>

using namespace turncloth;

namespace {

project_design design_in(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return read_design(std::string(std::istreambuf_iterator<char>(in), {}));
}

/// As thick as it usually is, of cloth as it is usually sold.
struct kneeling_pad {
    template <length_unit Unit>
    static project<Unit> design(const finished_size<Unit>& asked, const ruled<Unit>& by) {
        return allotment::kneeling_pad::design(asked, allotment::usual_kneeling_pad<Unit>.thickness, {}, by);
    }
    template <length_unit Unit>
    static sheet<Unit> make(const finished_size<Unit>& size, length<Unit> graduation) {
        return allotment::kneeling_pad::make(size, allotment::usual_kneeling_pad<Unit>.thickness, {}, graduation);
    }
};

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

template <class Twin, length_unit Unit>
bool same(const project_design& d, const finished_size<Unit>& size, length<Unit> graduation) {
    const std::string twin = written([&] { return Twin::make(size, graduation); });
    const std::string file = written([&] {
        return sheet_on_ruler(size, graduation, [&](const finished_size<Unit>& asked, const ruled<Unit>& by) {
            return project_of(d, asked, by);
        });
    });
    CHECK_MESSAGE(file == twin, to_text(size), ", ruler ", to_text(graduation));
    if (twin == "refused")
        return false;
    const ruled<Unit> by = graduation.value() == 0 ? ruled<Unit>() : ruled<Unit>(graduation);
    CHECK_MESSAGE(project_of(d, size, by) == Twin::design(size, by), to_text(size), ", ruler ", to_text(graduation));
    return true;
}

/// Sizes from a sixth of `most` to that, in inches, exactly and on a ruler, and about as large ones in centimetres.
template <class Twin>
void check_alike(const std::string& path, std::int64_t most, int sizes) {
    const project_design d = design_in(path);
    at_random::sampler random(29);
    int made = 0, all = 0;
    for (const int i : random.cases(sizes)) {
        const auto inches = [&] { return random.inches(most) + length_of<inch>(most / 6); };
        const auto centimetres = [&] { return random.centimetres(most * 5 / 2) + length_of<centimetre>(most / 2); };
        ++all;
        if (i % 2 == 0)
            made += same<Twin>(d, finished_size<inch>(inches(), inches()), i % 4 == 0 ? 0_in : "1/16"_in);
        else
            made +=
                same<Twin>(d, finished_size<centimetre>(centimetres(), centimetres()), i % 4 == 1 ? 0_cm : "0.1"_cm);
    }
    CHECK(made > all / 3);
    CHECK(made < all);
}

} // namespace

TEST_CASE("the organiser as a file is the organiser in C++") {
    check_alike<allotment::organiser>("examples/designs/organiser.json", 28, 12);
}

TEST_CASE("the tool roll as a file is the tool roll in C++") {
    check_alike<allotment::tool_roll>("examples/designs/tool_roll.json", 28, 12);
}

TEST_CASE("the kneeling pad as a file is the kneeling pad in C++") {
    check_alike<kneeling_pad>("examples/designs/kneeling_pad.json", 32, 6);
    // Its edging in one, in four alike, and in two long and two short ones that begin with either.
    const project_design d = design_in("examples/designs/kneeling_pad.json");
    for (const finished_size<inch>& size :
         {finished_size(16_in, 10_in), finished_size(10_in, 16_in), finished_size(18_in, 18_in),
          finished_size(20_in, 12_in), finished_size(12_in, 20_in), finished_size("17 1/16"_in, "17 1/16"_in)})
        for (const length<inch>& graduation : {0_in, "1/8"_in})
            CHECK(same<kneeling_pad>(d, size, graduation));
}
