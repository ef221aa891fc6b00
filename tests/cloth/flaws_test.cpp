// Cloth with flaws and pieces that stay, with units: laid round, told, kept off, and refused.
#include "cloth/pieces.hpp"
#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/cloth/off_cuts.hpp>
#include <turncloth/cloth/remnants.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace turncloth;
using pieces::canvas, pieces::in, pieces::piece;

namespace {

using inch_pieces = std::vector<cloth_piece<inch>>;

std::string refused_lay(const inch_pieces& all, const bolt<inch>& cloth) {
    try {
        lay_out(all, cloth);
    } catch (const lay_error& refused) {
        return refused.what();
    }
    return "";
}

cloth_piece<inch> staying(cloth_piece<inch> p, fraction from_left, fraction from_end, bool turned = false) {
    p.stays = {in(from_left), in(from_end), turned};
    return p;
}

} // namespace

TEST_CASE("pieces lie at both sides of a stain, told from the edge of the selvedge, and off-cuts are off it too") {
    bolt<inch> cloth = canvas(21);
    cloth.selvedge = in({1, 2});
    // 20 in are usable, from 1/2 in to 20 1/2 in; a stain of 4 x 4 1/3 in leaves 8 in at either side.
    cloth.flaws = {{in({17, 2}), in({10, 3}), in(4), in({13, 3})}};
    const inch_pieces all{piece<inch>("side", 8, 10, 2), piece<inch>("top", 4, {10, 3})};
    const auto found = lay_out(all, cloth);
    CHECK(found.length == in(10));
    CHECK(found.proved_best());
    CHECK(lay_faults(found, all, cloth).empty());
    CHECK(found.flaws == cloth.flaws);
    // Beyond the stain are 10 - 10/3 - 13/3 = 7/3 in of 4 in.
    const auto kept = off_cuts<inch>(found, in(1), in(1));
    REQUIRE(kept.size() == 1);
    CHECK(kept[0] == cloth_part<inch>{in({17, 2}), in({23, 3}), in(4), in({7, 3})});
}

TEST_CASE("the checker finds a lay that was made without knowing of the flaw") {
    bolt<inch> cloth = canvas(20);
    const inch_pieces all{piece<inch>("mat", 20, 10)};
    const auto found = lay_out(all, cloth);
    cloth.flaws = {{in(19), in(9), in(5), in(5)}};
    const auto faults = lay_faults(found, all, cloth);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].kind == lay_fault_kind::on_a_flaw);
    CHECK(faults[0].what("mat") == "mat lies on a flaw");
}

TEST_CASE("of folded cloth a flaw is told from the fold, and what is cut on the fold lies round it") {
    bolt<inch> cloth = canvas(40);
    cloth.folded = true;
    cloth.flaws = {{in(3), in(0), in(1), in(2)}};
    cloth_piece<inch> back = piece<inch>("back", 12, 20);
    back.on_fold = true;
    // It reaches 6 in from the fold, and so starts beyond the flaw.
    const auto found = lay_out<inch>({back}, cloth);
    CHECK(found.places[0].where.from_end == in(2));
    CHECK(found.length == in(22));
}

TEST_CASE("a piece laid already stays, the others go round it, and both are told") {
    bolt<inch> cloth = canvas(20);
    cloth.flaws = {{in(0), in(0), in(2), in(3)}};
    const inch_pieces all{staying(piece<inch>("back", 10, 8), 10, 0), piece<inch>("pocket", 8, 8),
                          piece<inch>("strap", 20, 2)};
    const auto found = lay_out(all, cloth);
    CHECK(lay_faults(found, all, cloth).empty());
    CHECK(found.length == in(10));
    const auto steps = cutting_out(found, all, cloth, inch_ruler(8));
    REQUIRE(steps.size() == 5);
    CHECK(steps[1] == "chalk round a flaw, 2 x 3 in: 0 in from the left edge, 0 in from the end");
    CHECK(steps[2] == "pocket, 8 x 8 in: 2 in from the left edge, 0 in from the end");
    CHECK(steps[3] == "back, 10 x 8 in, laid already: 10 in from the left edge, 0 in from the end");
    CHECK(steps[4] == "strap, 20 x 2 in: 0 in from the left edge, 8 in from the end");
}

TEST_CASE("remnants are laid round their flaws, and where a flaw leaves no room the piece is bought") {
    remnant<inch> scrap{canvas(20), in(12)};
    scrap.cloth.flaws = {{in(9), in(5), in(2), in(2)}};
    const inch_pieces all{piece<inch>("mat", 20, 10), piece<inch>("flap", 9, 12, 2)};
    const auto plan = lay_with_remnants<inch>(all, {scrap}, canvas(20));
    // The mat does not go beside the flaw, the flaps do.
    CHECK(plan.bought.length == in(10));
    CHECK(plan.proved_best());
    REQUIRE(plan.on_remnants[0].places.size() == 2);
    CHECK(lay_faults<inch>(plan.on_remnants[0], {{"mat", {in(20), in(10)}, 0}, all[1]}, scrap.cloth).empty());
    CHECK(things_from<inch>({piece<inch>("flap", 9, 6)}, {scrap}).count == 4);
    // With nothing laid on it a remnant is left whole, but for its flaw.
    for (const auto& kept : off_cuts<inch>({}, scrap, in(3), in(3)))
        CHECK_FALSE((kept.from_left < in(11) && in(9) < kept.from_left + kept.across && kept.from_end < in(7) &&
                     in(5) < kept.from_end + kept.along));
}

TEST_CASE("flaws that are none, and pieces that cannot stay, are refused by name") {
    bolt<inch> cloth = canvas(20);
    cloth.flaws = {{in(1), in(1), in(0), in(1)}};
    CHECK(refused_lay({}, cloth) == "the width of a flaw must be more than zero: it was 0 in");
    cloth.flaws = {{in(-1), in(1), in(2), in(1)}};
    CHECK(refused_lay({}, cloth) == "how far a flaw is from the left edge must be zero or more: it was -1 in");
    cloth.flaws.assign(1'001, {in(1), in(1), in(1), in(1)});
    CHECK(refused_lay({}, cloth) == "the number of flaws of a cloth must be at most 1000: it was 1001");
    cloth.flaws = {{in(1), in(1), in(1), in(1)}};
    cloth.cutting = cutting::edge_to_edge;
    CHECK(refused_lay({}, cloth) ==
          "cloth with flaws is cut free, round each piece: cuts from edge to edge would run through them");
    cloth.cutting = cutting::free;
    CHECK(refused_lay({staying(piece<inch>("back", 4, 5), 17, 0)}, cloth) ==
          "back cannot stay where it would lie beyond the usable width, or the end");
    CHECK(refused_lay({staying(piece<inch>("back", 4, 5), 0, 0)}, cloth) ==
          "back cannot stay where it would lie on a flaw");
    CHECK(refused_lay({staying(piece<inch>("back", 4, 5), 3, 0, true)}, cloth) ==
          "back cannot stay where it would lie turned against its grain");
    CHECK(refused_lay({staying(piece<inch>("back", 4, 5), 3, 0), staying(piece<inch>("flap", 4, 5), 6, 2)}, cloth) ==
          "flap cannot stay so near to back");
    CHECK(refused_lay({staying(piece<inch>("back", 4, 5, 2), 3, 0)}, cloth) ==
          "back stays in one place, and 2 are wanted");
    cloth.flaws.clear();
    cloth.cutting = cutting::strips;
    CHECK(refused_lay({staying(piece<inch>("back", 4, 5), 3, 0)}, cloth) ==
          "back stays where it lies, so all is cut free: a cut from edge to edge might run through it");
    cloth.cutting = cutting::free;
    cloth.repeat_along = in(6);
    CHECK(refused_lay({staying(piece<inch>("back", 4, 5), 3, 4)}, cloth) ==
          "back cannot stay where it would lie off the repeat");
    try {
        lay_with_remnants<inch>({piece<inch>("tab", 1, 1), staying(piece<inch>("back", 4, 5), 3, 4)}, {}, canvas(20));
        FAIL("not refused");
    } catch (const lay_error& refused) {
        CHECK(std::string(refused.what()) == "back stays where it lies, so it is not shared out among cloths");
        CHECK(refused.facts().kind == fault::unsuitable);
        CHECK(refused.facts().index == 1);
    }
}
