// Things carried out: what rows meet, what compartments come to be, and faults that are found.
#include "../vectors.hpp"
#include "making/boxes.hpp"
#include "making/left_out.hpp"
#include "making/random_design.hpp"
#include "making/things.hpp"
#include <turncloth/making/finishing.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

using namespace things;

namespace {

std::string all_of(const executed<inch>& made) {
    std::string all;
    for (const auto& f : made.faults)
        all += f.sentence + "\n";
    return all;
}

/// The sewn length of one row, if there is just one of it.
length<inch> sewn_length(const executed<inch>& made, const operation& o, std::int64_t member = 0) {
    for (const auto& r : made.rows)
        if (r.what == o && r.member == member)
            return r.sewn;
    return {};
}
std::size_t place_in_order(const executed<inch>& made, const operation& o) {
    return static_cast<std::size_t>(
        std::find_if(made.steps.begin(), made.steps.end(), [&](const making_step& s) { return s.what == o; }) -
        made.steps.begin());
}

compartment<inch> zipped(const tool_roll& roll, const char* name, length<inch> down, std::vector<mouth_handle> mouths) {
    return {.name = name,
            .between = {roll.back, roll.lining},
            .from_left = 10_in,
            .from_top = down,
            .mouths = std::move(mouths)};
}

} // namespace

// By hand, the back and the lining of the roll as it is today: no row but the binding's goes through both, so one hollow
// lies from binding to binding, under all the tool pockets. It opens along both chains, 17 in each. The tape goes on
// 1/2 in beyond its slit between two rows 1/2 in apart, so at each of its four ends a tunnel 1/2 in wide leads outside.
TEST_CASE("the roll of today has one hollow under all its tool pockets, with two zippers and four leaks") {
    tool_roll roll(false);
    roll.design.add(zipped(roll, "upper", 2_in, {roll.zip[0]}));
    roll.design.add(zipped(roll, "lower", 12_in, {roll.zip[1]}));
    const auto made = execute(roll.design);
    REQUIRE(made.spaces.size() == 8); // and six for tools
    const auto &upper = made.spaces[6], &lower = made.spaces[7];
    CHECK(upper.hollow == lower.hollow);
    REQUIRE(upper.openings.size() == 6);
    CHECK(std::count_if(upper.openings.begin(), upper.openings.end(),
                        [](const auto& o) { return o.mouths.empty() && o.wide == "1/2"_in; }) == 4);
    CHECK(std::count_if(upper.openings.begin(), upper.openings.end(),
                        [](const auto& o) { return o.mouths.size() == 1 && o.wide == 17_in; }) == 2);
    const std::string said = all_of(made);
    CHECK(said.find("the compartment \"lower\" is one hollow with the compartment \"upper\"") != std::string::npos);
    CHECK(said.find(
              "the compartment \"upper\" leaks 1/2 in wide, 1 in from the left and 1 3/4 in from the top of back") !=
          std::string::npos);
}

TEST_CASE("with rows across the tape ends, between the zippers and at the middle fold it has two pockets") {
    tool_roll roll(true);
    auto upper = zipped(roll, "upper", 2_in, {roll.zip[0]}), lower = zipped(roll, "lower", 6_in, {roll.zip[1]});
    upper.least_width = lower.least_width = 19_in;
    // Between the rows: 3/8 to 3 in, and 3 to 7 3/4 in, from the top of the lining; 19 1/4 in from side to side.
    upper.least_height = "2 5/8"_in;
    lower.least_height = "4 3/4"_in;
    roll.design.add(upper);
    roll.design.add(lower);
    const auto made = execute(roll.design);
    CHECK_MESSAGE(made.faults.empty(), all_of(made));
    REQUIRE(made.spaces.size() == 8);
    CHECK(made.spaces[6].hollow != made.spaces[7].hollow);
    CHECK(made.spaces[6].tallest == "2 5/8"_in);
    CHECK(made.spaces[7].tallest == "4 3/4"_in);
    CHECK(made.spaces[6].openings.size() == 1);
    // A tool: from the fold of the pockets' hem, 8 in down, to the binding's row, 3/8 in from the foot.
    CHECK(made.spaces[2].tallest == "7 5/8"_in);
}

TEST_CASE("a pocket that is too low, a row left out and one too many are each found") {
    {
        tool_roll roll(true);
        auto lower = zipped(roll, "lower", 6_in, {roll.zip[1]});
        lower.least_width = 19_in;
        lower.least_height = 5_in;
        roll.design.add(lower);
        CHECK(all_of(execute(roll.design)) ==
              "the compartment \"lower\" does not hold 19 in x 5 in: that wide, it is 4 3/4 in high\n");
    }
    {
        tool_roll roll(true);
        auto shut = zipped(roll, "foot", 12_in, {roll.zip[1]});
        roll.design.add(shut);
        CHECK(all_of(execute(roll.design)) == "the compartment \"foot\" is closed at its mouth \"zipper\"\n");
    }
    {
        tool_roll roll(true);
        roll.design.add(compartment<inch>{
            .name = "none", .between = {roll.outer, roll.tools}, .from_left = 9_in, .from_top = 9_in});
        CHECK(all_of(execute(roll.design)).find("\"none\" is not there") != std::string::npos);
    }
    {
        tool_roll roll(true);
        // It crosses the zippers, which are not among its walls, and is to be sewn when they are there already.
        roll.design.add(sewn(roll.lining, edge::left, 10_in, {roll.lining, roll.back}));
        CHECK_THROWS_AS(execute(roll.design), making_error);
    }
}

// By hand: a strip's hems are sewn along its own length; its foot and the sides of its columns after it was tucked, in
// the backing's. The backing's left hem is sewn first, along its raw height, its heading last, along the finished width.
TEST_CASE("a row is as long as its cloth is at the moment at which it is sewn") {
    organiser o;
    const auto made = execute(o.design);
    CHECK_MESSAGE(made.faults.empty(), all_of(made));
    const auto row = [](std::size_t i) { return operation{operation_kind::stitching, i}; };
    CHECK(sewn_length(made, row(0)) == "22 1/8"_in); // left hem of the backing, raw: 18 + 3 + 1 1/8
    CHECK(sewn_length(made, row(3)) == 20_in);       // heading
    CHECK(sewn_length(made, row(4)) == "4 7/8"_in);  // left hem of the first strip, raw
    CHECK(sewn_length(made, row(6)) == "22 5/8"_in); // its top hem
    CHECK(sewn_length(made, row(7)) == 20_in);       // its foot, in tucks
    CHECK(sewn_length(made, row(8)) == 4_in);        // each side of a column
    CHECK(place_in_order(made, row(4)) < place_in_order(made, row(7)));
    CHECK(place_in_order(made, row(2)) < place_in_order(made, {operation_kind::laying, 1})); // the foot's hem first
    // Eyelets go through the heading, turned once over and its edge under: two layers, 1 in from its fold.
    REQUIRE(made.spots.size() == 3);
    CHECK(made.spots[1].layers.size() == 2);
    REQUIRE(made.spaces.size() == 6);
    CHECK(made.spaces[0].openings.size() == 1);
    CHECK(made.spaces[1].openings[0].wide == "19 3/4"_in / 3);
}

TEST_CASE("common practice: zippers before their back is laid, tools before the lining goes in, self-binding last") {
    tool_roll roll(true);
    const auto made = execute(roll.design);
    const auto laying = [](std::size_t i) { return operation{operation_kind::laying, i}; };
    for (std::size_t zipper_row = 0; zipper_row < 4; ++zipper_row)
        CHECK(place_in_order(made, {operation_kind::stitching, zipper_row}) < place_in_order(made, laying(3)));
    CHECK(place_in_order(made, laying(4)) < place_in_order(made, laying(3)));
    for (std::size_t i = 0; i < made.steps.size(); ++i)
        if (made.steps[i].phase == making_phase::enclosing)
            CHECK(i > place_in_order(made, laying(1)));
}

TEST_CASE("each row left out of what needs it is found") {
    tool_roll roll(true);
    roll.design.add(zipped(roll, "upper", 2_in, {roll.zip[0]}));
    roll.design.add(zipped(roll, "lower", 6_in, {roll.zip[1]}));
    roll.design.add(zipped(roll, "under the tools", 12_in, {})); // closed all round
    organiser strips(3);
    int planted = 0;
    for (const making<inch>* d : {&roll.design, &strips.design}) {
        CHECK(execute(*d).faults.empty());
        for (std::size_t i = 0; i < d->rows().size(); ++i) {
            const stitching<inch>& row = d->rows()[i];
            const bool of_compartment = row.through.size() > 1; // a hem left open lets nothing out of a pocket
            for (std::int64_t k = 0; of_compartment && k < std::max<std::int64_t>(1, row.each.size()); ++k) {
                const auto made = execute(without_row(*d, i, k));
                CHECK_MESSAGE(!made.faults.empty(), described(*d, {operation_kind::stitching, i}));
                ++planted;
            }
        }
    }
    CHECK(planted == 34);
}

namespace {

std::vector<std::string> raw_edges_of(const making<inch>& d) {
    std::vector<std::string> all;
    for (const auto& f : execute(d).raw_edges)
        all.push_back(f.sentence);
    return all;
}
/// Without what is done along that edge of that part: its folds and its rows.
making<inch> unfinished(const making<inch>& d, cut_part of, edge e) {
    making<inch> again(d.name());
    for (const auto& p : d.parts())
        again.cut(p);
    for (const auto& l : d.layings())
        again.add(l);
    for (const auto& c : d.creases())
        if (c.at.on != of || c.at.from != e)
            again.add(c);
    for (const auto& r : d.rows())
        if (r.along.on != of || r.along.from != e || r.each.size() > 0)
            again.add(r);
    return again;
}

} // namespace

// By hand: a hem that is turned once lies with its raw edge in sight on the wrong side, and held by its row; turned twice it
// is inside. Raw, it is in sight. Film does not fray, nor does felt.
TEST_CASE("a raw edge that frays is found where it is in sight, or inside and held by no row") {
    making<inch> d("mat");
    const cut_part mat = d.cut({.name = "mat", .width = 12_in, .height = 9_in});
    for (const edge e : {edge::left, edge::right, edge::bottom}) {
        for (const auto& in : {"1/2"_in, 1_in})
            d.add(crease<inch>{.at = line(mat, e, in)});
        if (e != edge::left)
            d.add(sewn(mat, e, "1 3/8"_in, {mat}));
    }
    CHECK(raw_edges_of(d) ==
          std::vector<std::string>{"the top edge of mat is left raw in sight, and its cloth frays",
                                   "the left edge of mat is left raw, and no row along it holds it; its cloth frays"});
    d.add(crease<inch>{.at = line(mat, edge::top, 1_in)}); // once: on the wrong side it is in sight
    d.add(sewn(mat, edge::left, "1 3/8"_in, {mat}));
    d.add(sewn(mat, edge::top, "1 7/8"_in, {mat}));
    CHECK(raw_edges_of(d) == std::vector<std::string>{"the top edge of mat is left raw in sight, and its cloth frays"});
    making<inch> felt("coaster");
    felt.cut({.name = "coaster", .cloth = {.name = "felt", .frays = false}, .width = 4_in, .height = 4_in});
    CHECK(raw_edges_of(felt).empty());
}

TEST_CASE("no raw edge is left on the roll, the organiser, the cushion, the pad and the lined bag, at random sizes") {
    CHECK(raw_edges_of(tool_roll(true).design).empty());
    CHECK(raw_edges_of(lapped_cushion().design).empty());
    sampler any(35);
    while (any.another_of(10)) {
        const auto l = [&](std::int64_t least, std::int64_t most) {
            return length_of<inch>(fraction(any.between(least * 16, most * 16), 16));
        };
        const box_asked b{.w = l(12, 24), .h = l(8, 12), .d = l(1, 3), .s = l(1, 2) / 2};
        CHECK(raw_edges_of(organiser(any.between(1, 4)).design).empty());
        CHECK(raw_edges_of(zipped_pad(b).design).empty());
        CHECK(raw_edges_of(lined_bag(b).design).empty());
    }
}

namespace {

/// A pocket front of 12 x 8 in with a zipper over a slit of 8 x 1/4 in, 3 in from its top; the tape is 1 in wide and goes on by
/// 1/2 in at each end of the opening. `backed`: a back lies beneath it.
struct slit_pocket {
    making<inch> design{"pocket"};
    cut_part front, back, tape;

    explicit slit_pocket(bool backed, bool frays = true) {
        const turncloth::cloth<inch> canvas{.name = "canvas", .frays = false};
        front =
            design.cut({.name = "front", .cloth = {.name = "twill", .frays = frays}, .width = 12_in, .height = 8_in});
        if (backed) {
            back = design.cut({.name = "back", .cloth = canvas, .width = 12_in, .height = 8_in});
            design.add(laying<inch>{.piece = front, .on = back});
            for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
                design.add(sewn(front, e, "1/4"_in, {front, back}));
        }
    }
    void slit() {
        auto at = line(front, edge::top, 3_in);
        at.begins = 2_in;
        at.ends = 10_in;
        design.add(snip<inch>{.at = at, .width = "1/4"_in});
    }
    /// By their numbers: the rows above and below the chain, and across the left and the right end of the tape.
    /// Under the front where that lies wrong side up, so that the tape lies on its right side.
    void zip(std::initializer_list<int> rows, bool beneath = false) {
        tape = design.cut({.name = "tape", .cloth = {.name = "tape", .frays = false}, .width = 9_in, .height = 1_in});
        design.add(laying<inch>{.piece = tape,
                                .on = front,
                                .up = beneath ? face::wrong : face::right,
                                .left = "1 1/2"_in,
                                .top = "2 1/2"_in,
                                .beneath = beneath,
                                .set_into_one = true});
        const edge from[] = {edge::top, edge::bottom, edge::left, edge::right};
        for (const int k : rows)
            design.add(sewn(tape, from[k], "1/4"_in, {tape, front}));
    }
    /// A flap over all of it, sewn down 1/2 in from each edge.
    void cover() {
        const cut_part flap =
            design.cut({.name = "flap", .cloth = {.name = "canvas", .frays = false}, .width = 12_in, .height = 8_in});
        design.add(laying<inch>{.piece = flap, .on = front});
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
            design.add(sewn(flap, e, "1/2"_in, {flap, front, back}));
    }
    std::vector<std::string> slit_left() const {
        std::vector<std::string> all;
        for (const auto& f : execute(design).raw_edges)
            if (f.facts.what == "a raw edge of a slit")
                all.push_back(f.sentence);
        return all;
    }
};

const std::string
    slit_seen = "the slit in front, 3 in from its top edge, is left raw in sight, and its cloth frays",
    slit_loose =
        "the slit in front, 3 in from its top edge, is left raw, and no row along it holds it; its cloth frays";

} // namespace

// By paper, a slit of 8 x 1/4 in cut in a sheet under a strip of 9 x 1 in: its four sides lie under the strip. From below they
// are seen unless a sheet lies there. Each row of the strip runs along one of its sides, so that without that row this side
// is loose, though rows that hold the sheets together run beside it too.
TEST_CASE("the raw edges of a slit are hidden by its tape and a back, and held by the tape's rows alone") {
    slit_pocket bare(true);
    bare.slit();
    CHECK(bare.slit_left() == std::vector<std::string>{slit_seen});
    slit_pocket unbacked(false);
    unbacked.slit();
    unbacked.zip({0, 1, 2, 3});
    CHECK(unbacked.slit_left() == std::vector<std::string>{slit_seen});
    for (const int left_out : {0, 1, 2, 3, 4}) {
        slit_pocket p(true);
        p.slit();
        p.cover();
        if (left_out == 0)
            p.zip({1, 2, 3});
        if (left_out == 1)
            p.zip({0, 2, 3});
        if (left_out == 2)
            p.zip({0, 1, 3});
        if (left_out == 3)
            p.zip({0, 1, 2});
        if (left_out == 4)
            p.zip({0, 1, 2, 3});
        CHECK(p.slit_left() == (left_out == 4 ? std::vector<std::string>{} : std::vector<std::string>{slit_loose}));
    }
    slit_pocket felt(false, false);
    felt.slit();
    CHECK(felt.slit_left().empty());
}

// Turned out, the right side of the front lies outside: a tape hides the slit there, the back does not, nor does a tape on
// the wrong side.
TEST_CASE("of what is turned out a slit is hidden by its tape and not by what it lies face to face with") {
    enum class tape { on_right_side, on_wrong_side, none };
    for (const tape lies : {tape::on_right_side, tape::on_wrong_side, tape::none}) {
        slit_pocket p(false);
        p.slit();
        if (lies != tape::none)
            p.zip({0, 1, 2, 3}, lies == tape::on_right_side);
        const cut_part back =
            p.design.cut({.name = "back", .cloth = {.name = "canvas"}, .width = 12_in, .height = 8_in});
        p.design.add(laying<inch>{.piece = p.front, .on = back, .up = face::wrong});
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom}) {
            auto row = sewn(p.front, e, "1/2"_in, {p.front, back});
            if (e == edge::bottom)
                row.along.ends = 6_in;
            p.design.add(row);
        }
        auto gap = line(back, edge::bottom, "1/2"_in);
        gap.begins = 1_in;
        gap.ends = 5_in;
        const mouth_handle open = p.design.add(mouth<inch>{.name = "gap", .at = {gap}, .by = closed_by::hand});
        p.design.add(moment{moment_kind::turn_out, open.index});
        CHECK(p.slit_left() ==
              (lies == tape::on_right_side ? std::vector<std::string>{} : std::vector<std::string>{slit_seen}));
    }
}

// Hems of 1 in with 1/4 in turned in, folded from the corner 2 1/2 in along both edges: by paper, its tip comes to lie 1/4 in inside
// the hems and shows; folded in first, 1 1/4 in along them, it lies within.
TEST_CASE("a corner that is folded across shows its raw tip, and holds it where that is folded in first") {
    for (const bool tip : {false, true}) {
        making<inch> d("napkin");
        const auto napkin = cut_for<inch>(
            d, "napkin", panel(finished_size(12_in, 9_in), all_round(double_turned_hem("1/4"_in, 1_in, "1/8"_in))),
            {.cloth = {.name = "linen"}});
        for (const edge upright : {edge::left, edge::right})
            for (const edge level : {edge::top, edge::bottom}) {
                const auto fold = [&](length<inch> leg) {
                    return d.add(crease<inch>{
                        .across = corner_line<inch>{.on = napkin, .upright = upright, .level = level, .leg = leg}});
                };
                if (tip) {
                    const operation first = fold("1 1/4"_in);
                    d.add(before{first, fold("2 1/2"_in)});
                } else {
                    fold("2 1/2"_in);
                }
            }
        finish_edges(d, napkin);
        const auto made = execute(d);
        CHECK(made.raw_edges.size() == (tip ? 0 : 4)); // one for each edge
        for (const making_fault& f : made.raw_edges)
            CHECK(f.sentence.ends_with("is left raw in sight, and its cloth frays"));
    }
}

// Sewn up by hand at last, a gap holds what is turned in there; left open, nothing does.
TEST_CASE("the edge of a gap is held where the gap is sewn up by hand") {
    for (const closed_by by : {closed_by::hand, closed_by::nothing}) {
        making<inch> d("mat");
        const auto cloth = [&](const char* name) {
            return d.cut({.name = name, .cloth = {.name = "twill"}, .width = 12_in, .height = 8_in});
        };
        const cut_part front = cloth("front"), back = cloth("back");
        d.add(laying<inch>{.piece = front, .on = back, .up = face::wrong});
        for (const edge e : {edge::left, edge::right, edge::top})
            d.add(sewn(back, e, "1/2"_in, {front, back}));
        const auto part_of = [&](cut_part of, length<inch> begins, length<inch> ends) {
            auto at = line(of, edge::bottom, "1/2"_in);
            at.begins = begins;
            at.ends = ends;
            return at;
        };
        d.add(stitching<inch>{.along = part_of(back, 0_in, 4_in), .through = {front, back}});
        d.add(stitching<inch>{.along = part_of(back, 8_in, 12_in), .through = {front, back}});
        const mouth_handle gap =
            d.add(mouth<inch>{.name = "gap", .at = {part_of(front, 4_in, 8_in), part_of(back, 4_in, 8_in)}, .by = by});
        d.add(moment{moment_kind::turn_out, gap.index});
        d.add(moment{moment_kind::close, gap.index});
        CHECK(execute(d).raw_edges.size() == (by == closed_by::hand ? 0 : 2));
    }
}

// Rows that hold an edge: four hems of the backing, four of the roll's binding, those of the
// cushion and its hems. The film does not fray; its rows and those between pockets hold no raw edge of other cloth.
TEST_CASE("each row that holds an edge, and each finish, is missed when it is left out") {
    const tool_roll roll(true);
    const organiser strips(2);
    const lapped_cushion cushion;
    int planted = 0;
    const auto without = [&](const making<inch>& d, const std::vector<std::size_t>& rows) {
        for (const std::size_t i : rows) {
            CHECK_MESSAGE(!raw_edges_of(without_row(d, i, 0)).empty(), described(d, {operation_kind::stitching, i}));
            ++planted;
        }
    };
    without(roll.design, {10, 11, 12, 13});
    without(strips.design, {0, 1, 2, 3});
    without(cushion.design, {0, 1, 2, 3, 4, 5});
    const auto unfinished_all = [&](const making<inch>& d, cut_part of, const std::vector<edge>& edges) {
        for (const edge e : edges) {
            const auto found = raw_edges_of(unfinished(d, of, e));
            CHECK(std::count(found.begin(), found.end(),
                             "the " + std::string(name_of(e)) + " edge of " + name_of(d, of) +
                                 " is left raw in sight, and its cloth frays") == 1);
            ++planted;
        }
    };
    unfinished_all(roll.design, roll.outer, {edge::left, edge::right, edge::top, edge::bottom});
    unfinished_all(strips.design, strips.backing, {edge::left, edge::right, edge::top, edge::bottom});
    CHECK(planted == 22);
}

TEST_CASE("needs in a circle are refused by the shortest, each with its reason") {
    tool_roll roll(true);
    roll.design.add(before{{operation_kind::stitching, 8}, {operation_kind::crease, 0}, ""}); // hem row before its fold
    try {
        execute(roll.design);
        FAIL("a circle was taken");
    } catch (const making_error& refused) {
        REQUIRE(refused.faults().size() == 3);
        CHECK(refused.facts().what == "the order of making");
    }
}

TEST_CASE("a quarter turn that no seam holds is a fault") {
    making<inch> d("box");
    const cut_part a = d.cut({.name = "a", .width = 4_in, .height = 4_in});
    d.add(crease<inch>{.at = line(a, edge::left, 1_in), .turn = turning::quarter});
    const auto made = execute(d);
    REQUIRE(made.faults.size() == 1);
    CHECK(made.faults[0].sentence ==
          "the crease on a, 1 in from its left edge, is to stand at a quarter turn, and no seam holds it so");
}

TEST_CASE("a row along a fold holds nothing, and a crease through sewn cloth tears it") {
    making<inch> d("strip");
    const cut_part base = d.cut({.name = "base", .width = 8_in, .height = 8_in});
    const cut_part strip = d.cut({.name = "strip", .width = 8_in, .height = 4_in});
    const auto laid = d.add(laying<inch>{.piece = strip, .on = base});
    const auto sewn_down = d.add(sewn(strip, edge::top, 1_in, {strip, base}));
    const auto folded = d.add(crease<inch>{.at = line(strip, edge::top, 2_in), .over = true});
    d.add(before{laid, folded, ""});
    d.add(before{sewn_down, folded, ""});
    d.add(compartment<inch>{.name = "any", .between = {base, strip}, .from_left = 4_in, .from_top = 3_in});
    CHECK(all_of(execute(d)).find("is torn") != std::string::npos);
}
