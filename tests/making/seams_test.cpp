// Orders of making with seams, against published ones; the rows that are sewn, listed by hand; what is turned and filled.
#include "at_random.hpp"
#include "making/boxes.hpp"
#include "making/in_order.hpp"
#include <turncloth/making/lying.hpp>
#include <turncloth/making/stitched.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

using namespace things;

namespace {

constexpr box_asked seed_box{.w = 16_in, .h = 9_in, .d = 2_in, .s = "1/2"_in};

std::string sentences(const std::vector<making_fault>& found) {
    std::string all;
    for (const making_fault& f : found)
        all.append(all.empty() ? "" : "; ").append(f.sentence);
    return all;
}

} // namespace

// Published, University of Kentucky CT-MMB.174, a zipper into a seam: the seam is sewn to the marks of the opening, its
// allowances pressed, the zipper fastened on one side and then on the other. The basting of the opening is left out: the
// turned edges are pressed instead.
// Published, how boxed covers with a zipper are made (common practice): the edging is closed to a ring and clipped at
// its corners before it is sewn to a plate; the zipper goes in first and is left open; turned through it, filled, closed.
TEST_CASE("a zipped pad is made in the published order") {
    zipped_pad pad(seed_box);
    const auto turned = pad.design.add(moment{moment_kind::turn_out, pad.zip.index});
    const auto closed = pad.design.add(moment{moment_kind::close, pad.zip.index});
    const order made(pad.design);
    const operation open{operation_kind::opening, pad.zip.index};
    // The creases 0 and 1 turn the halves' edges; layings 0 and 1 are the tape and the second half.
    CHECK(made.comes({pad.join_of_halves, crease_no(0), laying_no(0), row_no(0), row_no(1), pad.base_seam}));
    CHECK(made.comes({pad.join_of_halves, crease_no(1), laying_no(1), row_no(1), pad.base_seam}));
    CHECK(made.comes({pad.ring, pad.top_seam}));
    CHECK(made.comes({pad.ring, pad.base_seam, open, pad.top_seam, turned, closed}));
    for (std::size_t k = 0; k < 6; ++k)
        CHECK(made.comes({snip_no(k), pad.base_seam}));
}

// Whichever seam proves to be the last, the opening comes before it.
TEST_CASE("the opening is open before the last seam, also where the designer changes which that is") {
    zipped_pad pad(seed_box);
    pad.design.add(moment{moment_kind::turn_out, pad.zip.index});
    pad.design.add(before{pad.top_seam, pad.base_seam});
    const order made(pad.design);
    CHECK(made.comes({pad.top_seam, {operation_kind::opening, pad.zip.index}, pad.base_seam}));
    zipped_pad not_turned(seed_box);
    CHECK(!order(not_turned.design).has({operation_kind::opening, not_turned.zip.index}));
}

TEST_CASE("a seam before one that it crosses is a circle, refused with its reasons") {
    zipped_pad pad(seed_box);
    pad.design.add(before{pad.top_seam, pad.ring});
    try {
        steps_of(pad.design);
        FAIL("a circle was not found");
    } catch (const making_error& refused) {
        CHECK(refused.faults().size() == 2);
        CHECK(std::string(refused.what()).find("a seam that crosses the end of another comes after it") !=
              std::string::npos);
    }
}

// Published, general how-to, a lined bag turned through a gap: outer, its sides and foot; the lining the same, with a gap
// in its foot; stitched round the rim; pulled through; the gap closed; stitched round once more.
TEST_CASE("a lined bag is made in the published order, and lies in itself") {
    const lined_bag bag(seed_box);
    const order made(bag.design);
    for (const boxed_bag_shell* shell : {&bag.outer, &bag.lining})
        for (const operation& corner : shell->corners) {
            CHECK(made.comes({shell->sides[0], corner}));
            CHECK(made.comes({shell->sides[1], corner}));
            CHECK(made.comes({shell->base, corner}));
            CHECK(made.comes({shell->sides[0], bag.rim, bag.turned, bag.closed, bag.round[0]}));
        }
    const executed<inch> all = execute(bag.design);
    CHECK(sentences(all.faults) == "");
    REQUIRE(all.boxed.boxes.size() == 1);
    CHECK(!all.boxed.boxes[0].open);
    CHECK(all.boxed.boxes[0].width == 16_in);
    CHECK(all.boxed.boxes[0].height == 9_in);
    CHECK(all.boxed.boxes[0].depth == 2_in);
    // By hand, each of outer and lining: two sides of 9, a base of 16, two corners of 2. The gap takes 8 of the lining's
    // base. The rim once round, and the row beside it: 2 x (16 + 2) each. The gap is closed by hand.
    const auto rows = stitched_in(work_plan_of(bag.design, all.steps));
    CHECK(rows.by_machine() == (9_in * 2 + 16_in + 2_in * 2) * 2 - 8_in + 36_in * 2);
    CHECK(rows.by_hand == 8_in);
}

TEST_CASE("a lined bag without a gap cannot be turned out") {
    const executed<inch> all = execute(lined_bag(seed_box, false).design);
    REQUIRE(all.faults.size() == 1);
    CHECK(all.faults[0].sentence ==
          "the box of outer 1 is sewn up all round, and has no opening to turn it out through");
    CHECK(all.faults[0].facts.kind == fault::missing);
}

// By hand, of a row down the left side of the cushion, from its cut top edge: 2 layers to 7 in; the lower back's hem, of 3
// layers, to 7 1/2, 5 in all; 3 to 9 1/2; the upper's hem to 10, 5 in all; then 2. Rows: two hems of 17, four of 17.
TEST_CASE("a cushion with a lapped back is sewn through what lies there, and turned out by its lap") {
    const lapped_cushion cushion;
    const executed<inch> all = execute(cushion.design);
    CHECK(sentences(all.faults) == "");
    for (const row_met<inch>& row : all.rows)
        if (row.walls.size() == 3) {
            CHECK(row.least == 2);
            CHECK(row.most == 5);
        } else if (row.walls.size() == 2) {
            CHECK(row.most == 2);
        }
    CHECK(stitched_in(work_plan_of(cushion.design, all.steps)).by_machine() == 17_in * 6);
    CHECK(all.steps.back().what == cushion.turned);
    // The upper back is laid first, next to the front, so that it shows once what is inside is outside.
    const auto lies = lying_after(cushion.design, all.steps, all.steps.size(), cushion.front);
    const auto at_lap = std::find_if(lies.patches.begin(), lies.patches.end(),
                                     [](const patch<inch>& p) { return p.upper[0] <= 8_in && p.lower[0] >= 9_in; });
    REQUIRE(at_lap != lies.patches.end());
    CHECK(at_lap->layers == 3);
    CHECK(at_lap->above.of == cushion.lower);
}

// Foam of 16 1/4 x 9 1/4 x 2 1/4, each side giving 1/4: its section is 9 + 2 = 11 in half round. Folded once it is 4 5/8
// by 4 1/2, and 8 5/8 half round.
TEST_CASE("what is put in passes the opening, passes it folded, or cannot") {
    const auto with = [](length<inch> margin, std::int64_t folds, length<inch> thick) {
        zipped_pad pad(seed_box, {.more_margin = margin - 1_in});
        const auto inside =
            pad.design.add(compartment<inch>{.name = "inside", .between = {pad.top, pad.half[0]}, .mouths = {pad.zip}});
        pad.design.add(contents<inch>{.what = "the foam",
                                      .width = "16 1/4"_in,
                                      .height = "9 1/4"_in,
                                      .depth = thick,
                                      .into = inside,
                                      .by = pad.zip,
                                      .squeezed = "1/4"_in,
                                      .folds = folds});
        return execute(pad.design);
    };
    const auto whole = with(1_in, 1, "2 1/4"_in);
    CHECK(sentences(whole.faults) == "");
    REQUIRE(whole.boxed.passages.size() == 1);
    CHECK(whole.boxed.passages[0].folded == 0);
    CHECK(whole.boxed.passages[0].needs == 11_in);
    CHECK(whole.boxed.passages[0].has == 14_in);
    const auto exactly = with("2 1/2"_in, 0, "2 1/4"_in);
    CHECK(exactly.boxed.passages[0].passes());
    const auto folded = with(3_in, 1, "2 1/4"_in);
    CHECK(sentences(folded.faults) == "");
    CHECK(folded.boxed.passages[0].folded == 1);
    CHECK(folded.boxed.passages[0].needs == "8 5/8"_in);
    CHECK(sentences(with(3_in, 0, "2 1/4"_in).faults) ==
          "the foam cannot pass \"zipper\": it needs an opening of 11 in, and that one is 10 in");
    CHECK(sentences(with(1_in, 0, "2 1/2"_in).faults) ==
          "the foam is larger than the box, squeezed too: 2 1/2 in goes into 2 in");
}

// 18 1/4 in eased to 18 in between four marks, 4 9/16 to 4 1/2 each; the foot is sewn as long as the shorter side.
TEST_CASE("what a seam takes up is met mark to mark") {
    making<inch> d("bag");
    const cut_part front = d.cut({.name = "front", .width = "18 1/4"_in, .height = 10_in});
    const cut_part back = d.cut({.name = "back", .width = 18_in, .height = 10_in});
    d.add(seam_of<inch>{.one = {line(front, edge::bottom, "1/2"_in)},
                        .other = {line(back, edge::bottom, "1/2"_in)},
                        .beyond = beyond_seam::back,
                        .taken_up = surplus::ease});
    const executed<inch> made = execute(d);
    CHECK(sentences(made.faults) == "");
    REQUIRE(made.boxed.marks.size() == 1);
    CHECK(made.boxed.marks[0].one_is_longer);
    CHECK(made.boxed.marks[0].marks.mark_on_long(1) == at<long_piece>("4 9/16"_in));
    CHECK(made.boxed.marks[0].marks.mark_on_short(1) == at<short_piece>("4 1/2"_in));
    CHECK(made.boxed.boxes[0].open);
    REQUIRE(made.rows.size() == 1);
    CHECK(made.rows[0].sewn == 18_in);
    CHECK(made.rows[0].most == 2);
}

namespace {

struct eased {
    making<inch> d{"bag"};
    eased(length<inch> front_long, length<inch> back_long, edge front_edge, edge back_edge, std::int64_t spans) {
        const auto cut = [&](const char* name, edge e, const length<inch>& long_) {
            const bool level = is_level(e);
            return d.cut({.name = name, .width = level ? long_ : 10_in, .height = level ? 10_in : long_});
        };
        const cut_part front = cut("front", front_edge, front_long), back = cut("back", back_edge, back_long);
        d.add(seam_of<inch>{.one = {line(front, front_edge, "1/2"_in)},
                            .other = {line(back, back_edge, "1/2"_in)},
                            .beyond = beyond_seam::back,
                            .taken_up = surplus::ease,
                            .spans = spans,
                            .graduation = "1/16"_in});
    }
    work_step<inch> seam() const {
        const auto plan = work_plan_of(d);
        for (const auto& g : plan.groups)
            for (const auto& s : g.steps)
                if (s.verb == work_verb::seam)
                    return s;
        FAIL("no seam");
        return {};
    }
};

} // namespace

// By hand, 18 1/8 in eased to 18 in on sixteenths: the shorter side's marks at 4 1/2, 9 and 13 1/2; the longer has 1/32,
// 1/16 and 3/32 more up to there, 1/16, 1/16 and 1/8 on the ruler. Bottom meets bottom with right sides together, so the
// right end of one lies on the left end of the other, and the marks run from there.
TEST_CASE("the marks of an eased seam are on the ruler, and its step says where both sides are marked") {
    const eased bag("18 1/8"_in, 18_in, edge::bottom, edge::bottom, 4);
    const auto plan = work_plan_of(bag.d);
    CHECK(
        sentence_of(plan, plan.groups.back()) ==
        "Mark the cut bottom edge of the front at 4 1/2, 9 1/16 and 13 9/16 in from its cut left edge, and the cut "
        "bottom "
        "edge of the back at 4 1/2, 9 and 13 1/2 in from its cut right edge: pin mark to mark and end to end, and ease "
        "in "
        "the 1/8 in more, shared over the 4 parts. With right sides together, sew the cut bottom edge of the front to "
        "the cut bottom edge of the back, 1/2 in from the cut edges: 18 in in all, through 2 layers.");
    CHECK(
        sentence_of(work_plan_of(eased(18_in, 19_in, edge::top, edge::bottom, 1).d),
                    work_plan_of(eased(18_in, 19_in, edge::top, edge::bottom, 1).d).groups.back())
            .rfind(
                "Pin the cut top edge of the front to the cut bottom edge of the back end to end, and ease in the 1 in "
                "more. With right sides together",
                0) == 0);
    making<inch> none = eased(18_in, 19_in, edge::top, edge::bottom, 0).d;
    CHECK(sentences(none.faults()) == "the number of spans of a seam must be more than zero: it was 0");
}

// In sixteenths: a mark of the shorter side is its exact place to the nearest, one of the longer so many more as its
// surplus up to there, to the nearest; whichever side is named first, and whichever edges they are.
TEST_CASE(
    "on a ruler each mark of an eased seam is within half a graduation, and meets its fellow, at random lengths") {
    at_random::sampler any(41);
    while (any.another_of(300)) {
        const std::int64_t a = any.between(100, 400), b = a + any.between(-40, 40), n = any.between(1, 9);
        if (a == b)
            continue;
        const edge from = all_edges[static_cast<std::size_t>(any.between(0, 3))],
                   to = all_edges[static_cast<std::size_t>(any.between(0, 3))];
        const work_step<inch> s = eased(length_of<inch>({a, 16}), length_of<inch>({b, 16}), from, to, n).seam();
        const work_place<inch>& p = s.places.at(0);
        REQUIRE(p.marks.at.size() == static_cast<std::size_t>(n - 1));
        REQUIRE(p.meets_marks.at.size() == p.marks.at.size());
        CHECK(p.surplus == length_of<inch>({a < b ? b - a : a - b, 16}));
        for (std::int64_t k = 1; k < n; ++k) {
            const auto i = static_cast<std::size_t>(k - 1);
            const fraction one = p.marks.at[i].value() * 16, other = p.meets_marks.at[i].value() * 16;
            REQUIRE(denominator(one) == 1);
            REQUIRE(denominator(other) == 1);
            const fraction from_short = (a < b ? one : other) * n - fraction(k) * std::min(a, b);
            CHECK(2 * abs(from_short) <= fraction(n));
            const fraction more = (a < b ? other - one : one - other) * n - fraction(k) * std::max(a - b, b - a);
            CHECK(2 * abs(more) <= fraction(n));
        }
    }
}
