// A sheet worked out on a ruler: what its title and its warnings say; what is refused, with the two lines that the ruler
// does not tell apart and one that does.
#include "../refused.hpp"
#include "../vectors.hpp"
#include <turncloth.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace turncloth;

namespace {

/// A flat bag's front: a zipper with a slit behind it, in thirds, and hems that may be narrow.
struct bag_front {
    length<inch> hem = length_of<inch>({1, 2}), rows = length_of<inch>({1, 2}), slit = length_of<inch>({1, 4}),
                 fold = length_of<inch>(2);
    bool says_its_kinds = true;

    project<inch> operator()(const finished_size<inch>& asked, const ruled<inch>& by) const {
        const finished_size<inch> size = by.given(asked);
        project<inch> p("Bag front", size);
        auto& front = p.add(piece<inch>("front", "canvas",
                                        panel<inch>(size, all_round(double_turned_hem(by.given(hem), by.given(hem))))));
        const auto thirds = divided<finished_edge>(size.width(), 3);
        front.mark("third", edge::left, says_its_kinds ? by.parts(thirds) : thirds);
        front.mark("fold", edge::top, at<finished_edge>(by.given(fold)));
        p.add(zipper<inch>{.on = "front",
                           .from = edge::top,
                           .centres = {at<finished_edge>(by.given(3_in))},
                           .opening = {size.width(), by.given(3_in), by.given(1_in)},
                           .rows = by.given(rows, 2),
                           .slit = by.given(slit, 2),
                           .supply = zipper_supply<inch>::from_roll(180_in)});
        p.add(notion<inch>("ties").number("ribbons", std::max<std::int64_t>(1, floor(ratio_of(size.width(), 5_in)))));
        return p;
    }
};

bool says(const std::string& text, const std::string& what) { return text.find(what) != std::string::npos; }

} // namespace

TEST_CASE("a sheet on a ruler says the size asked for, and which numbers the rounding changed") {
    // 14 15/16 to eighths: half way between 14 7/8 and 15, so 15, and of that a third ribbon.
    const auto s = sheet_on_ruler<inch>({"14 15/16"_in, 11_in}, "1/8"_in, bag_front());
    CHECK(s.finished == finished_size<inch>(15_in, 11_in));
    CHECK(s.warnings == std::vector<std::string>{"ribbons: 3, where the size asked for has 2"});
    const std::string text = to_text(s, inch_ruler(8));
    CHECK(says(text, "finishes 15 x 11 in, for 14 15/16 x 11 in asked\n"));
    CHECK(says(text,
               "Pieces and steps are worked out on a ruler of 1/8 in, so that what is printed of them adds up; other "
               "amounts are rounded to it.\n"));
    CHECK(says(to_text(s, {.inches = "1/8"_in}),
               "Centimetres beside them are converted from these, each rounded to 0.1 "
               "cm.\n"));
    // Another ruler than its own rounds it once more.
    CHECK(says(to_text(s, inch_ruler(4)), "Figures are rounded to 1/4 in, each from the exact length"));
    // A size that the ruler shows is no other size than asked for.
    CHECK(says(to_text(sheet_on_ruler<inch>({15_in, 11_in}, "1/8"_in, bag_front()), inch_ruler(8)),
               "finishes 15 x 11 in\n"));
}

TEST_CASE("parts fall on the ruler, and what lies between them adds up") {
    // 14 in by three, in eighths: 37.33 and 74.67; with 1 in of hem 38 1/3, so 4 5/8 + 1 and 9 3/8 + 1.
    const auto s = sheet_on_ruler<inch>({14_in, 11_in}, "1/8"_in, bag_front());
    std::vector<length<inch>> thirds;
    for (const auto& l : s.pieces[0].lines)
        if (l.what == "third")
            thirds.push_back(l.from_cut_edge.value());
    CHECK(thirds == std::vector<length<inch>>{"5 5/8"_in, "10 3/8"_in});
    // Exact where no ruler is given.
    CHECK(sheet_on_ruler<inch>({14_in, 11_in}, 0_in, bag_front()).graduation == 0_in);
}

// On quarters a row 1/8 in inside a pocket's edge comes to 1/4 in, where a mark is.
TEST_CASE("a row that sews a piece on is told apart from what is marked beside it") {
    const auto bag = [](const finished_size<inch>& asked, const ruled<inch>& by) {
        project<inch> p("bag", by.given(asked));
        p.add(piece<inch>("front", "canvas", panel<inch>(by.given(asked))));
        auto& pocket = p.add(piece<inch>("pocket", "canvas", panel<inch>(finished_size<inch>(4_in, 3_in))));
        pocket.mark("line of the hem", edge::left, at<finished_edge>(by.given("1/4"_in)));
        placing<inch> on{"pocket", "front", at<finished_edge>(2_in), at<finished_edge>(2_in)};
        on.sewn = {edge::left};
        on.inset = by.given("1/8"_in);
        return p.add(on);
    };
    const std::string said = refused::message<ruler_error>([&] {
        sheet_on_ruler<inch>({14_in, 11_in}, "1/4"_in, bag);
    });
    CHECK(says(said, "\"stitch onto front\""));
    CHECK(says(said, "\"mark line of the hem\""));
    CHECK(says(said, "use 1/8 in or finer"));
    CHECK_NOTHROW(sheet_on_ruler<inch>({14_in, 11_in}, "1/8"_in, bag));
}

TEST_CASE("lines that a ruler does not tell apart are named, with a ruler that does") {
    // On quarters the slit of 1/4, parted in two, becomes 1/2, as wide as the rows are apart.
    const auto too_coarse = [] { sheet_on_ruler<inch>({14_in, 11_in}, "1/4"_in, bag_front()); };
    CHECK(refused::message<ruler_error>(too_coarse) ==
          "a ruler of 1/4 in does not tell apart on front \"stitch zipper\", 3 3/4 in from its cut top edge, and "
          "\"slit behind the zipper\", 3 7/8 in, which it shows at 3 3/4 in and 3 3/4 in: use 1/8 in or finer");
    CHECK(refused::facts<ruler_error>(too_coarse) ==
          "too large: the graduation of a ruler, given 1/4 in, most 1/8 in, where front");
    try {
        too_coarse();
    } catch (const ruler_error& e) {
        CHECK(e.lines()[0].what == "stitch zipper on front");
        CHECK(e.lines()[1].what == "slit behind the zipper on front");
        CHECK(e.lines()[1].exact.numerator == 31);
        CHECK(e.lines()[1].shown.numerator == 15);
    }
    // Lines in one place by the design stay one, and are not refused.
    CHECK(sheet_on_ruler<inch>({14_in, 11_in}, "1/8"_in, bag_front{.fold = "2 3/4"_in}).pieces.size() == 1);
    // On halves a fold at 2 1/4 goes up to 2 1/2, where the zipper's upper row lies; both are 1 in farther from the cut edge.
    CHECK(refused::message<ruler_error>([] {
              sheet_on_ruler<inch>({14_in, 11_in}, "1/2"_in,
                                   bag_front{.rows = 1_in, .slit = "1/2"_in, .fold = "2 1/4"_in});
          }) == "a ruler of 1/2 in does not tell apart on front \"mark fold\", 3 1/4 in from its cut top edge, and "
                "\"stitch zipper\", 3 1/2 in, which it shows at 3 1/2 in and 3 1/2 in: use 1/4 in or finer");
}

TEST_CASE("a length that is on no graduation is refused: a design must say of which kind each number is") {
    CHECK(refused::message<ruler_error>([] {
              sheet_on_ruler<inch>({14_in, 11_in}, "1/8"_in, bag_front{.says_its_kinds = false});
          }) ==
          "third of 5 2/3 in is no whole number of 1/8 in, the graduation of the ruler: say of which kind each number "
          "is that it comes from");
}

TEST_CASE("an allowance that the ruler changes by a third is said") {
    // 3/16 goes up to 1/4: a third more.
    const auto s = sheet_on_ruler<inch>({15_in, 11_in}, "1/8"_in, bag_front{.hem = "3/16"_in});
    CHECK(s.warnings ==
          std::vector<std::string>{"on this ruler the double-turned hem of front is allowed 1/2 in in place "
                                   "of 3/8 in"});
    // 7/16 goes up to 1/2: a seventh.
    CHECK(sheet_on_ruler<inch>({15_in, 11_in}, "1/8"_in, bag_front{.hem = "7/16"_in}).warnings.empty());
}
