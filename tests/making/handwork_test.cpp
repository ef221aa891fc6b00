// Steps in the designer's own words: in their place in the order, printed as they are given, and nothing lies otherwise.
#include "../vectors.hpp"
#include "making/random_design.hpp"
#include "refused.hpp"
#include <turncloth/making/executed.hpp>
#include <turncloth/making/lying.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <cstddef>
#include <string>
#include <vector>

using namespace things;

namespace {

/// A pocket on a back: it is hemmed at its top by itself, then laid, and sewn on at its bottom. By hand: crease, hem row,
/// laying, row.
struct pocket_made {
    making<inch> design{"pocket"};
    cut_part back = design.cut({.name = "back", .width = 10_in, .height = 10_in});
    cut_part pocket = design.cut({.name = "pocket", .width = 4_in, .height = 5_in});
    operation fold = design.add(crease<inch>{.at = line(pocket, edge::top, 1_in), .over = true});
    operation hem = design.add(sewn(pocket, edge::top, "1 3/4"_in, {pocket}));
    operation laid = design.add(laying<inch>{.piece = pocket, .on = back, .left = 3_in, .top = 3_in});
    operation row = design.add(sewn(pocket, edge::bottom, "1/4"_in, {pocket, back}));

    std::string order() const {
        std::string all;
        for (const making_step& s : steps_of(design)) {
            const operation& o = s.what;
            all += o == fold ? "fold " : o == hem ? "hem " : o == laid ? "lay " : o == row ? "row " : "";
            if (o.kind == operation_kind::handwork)
                all += design.handworks()[o.index].says + ' ';
        }
        return all;
    }
};

std::string printed_steps(const making<inch>& d, const wording& w = {}) {
    std::string all;
    const work_plan<inch> plan = work_plan_of(d);
    for (const work_group<inch>& g : plan.groups)
        all += sentence_of(plan, g, w) + "\n";
    return all;
}

std::string steps_or_circle(const making<inch>& d) {
    try {
        return printed_steps(d);
    } catch (const making_error& refused) {
        return std::string("a circle: ") + refused.what();
    }
}

/// Up to four of them on pieces at random, of few words, some after and some before operations at random.
void add_handwork(making<inch>& d, sampler& any) {
    const auto some = [&](std::size_t n) {
        return static_cast<std::size_t>(any.between(0, static_cast<std::int64_t>(n) - 1));
    };
    for (std::int64_t n = any.between(1, 4); n > 0; --n) {
        handwork h{any.between(0, 1) == 0 ? "Press it." : "Baste it.", {{some(d.parts().size()), 0}}};
        if (const cut_part more{some(d.parts().size()), 0}; more != h.pieces[0])
            h.pieces.push_back(more);
        const operation own = d.add(h);
        for (std::int64_t k = any.between(0, 3); k > 0; --k) {
            const operation_kind kind = any.between(0, 1) == 0 ? operation_kind::stitching : operation_kind::crease;
            if (d.count_of(kind) == 0)
                continue;
            const operation other{kind, some(d.count_of(kind))};
            d.add(any.between(0, 2) == 0 ? before{own, other} : before{other, own});
        }
    }
}

} // namespace

TEST_CASE("handwork comes as soon as what the designer puts before it is done") {
    pocket_made after_hem;
    const operation pressed = after_hem.design.add(handwork{"press", {after_hem.pocket}});
    after_hem.design.add(before{after_hem.hem, pressed});
    CHECK(after_hem.order() == "fold hem press lay row ");

    pocket_made after_both; // of two that it waits for, the later
    const operation looked = after_both.design.add(handwork{"look", {after_both.back}});
    after_both.design.add(before{after_both.laid, looked}).add(before{after_both.fold, looked});
    CHECK(after_both.order() == "fold hem lay look row ");
    const operation again = after_both.design.add(handwork{"again", {after_both.back}});
    after_both.design.add(before{looked, again});
    CHECK(after_both.order() == "fold hem lay look again row ");
}

TEST_CASE("with nothing before it handwork comes just before what waits for it, and last where nothing does") {
    pocket_made p;
    const operation marked = p.design.add(handwork{"mark", {p.back}});
    CHECK(p.order() == "fold hem lay row mark ");
    p.design.add(before{marked, p.laid});
    CHECK(p.order() == "fold hem mark lay row ");
}

TEST_CASE(
    "handwork on a piece comes before its seams, and before the thing is turned out, unless it is asked otherwise") {
    making<inch> d("bag");
    const cut_part front = d.cut({.name = "front", .width = 6_in, .height = 8_in}),
                   back = d.cut({.name = "back", .width = 6_in, .height = 8_in}),
                   tab = d.cut({.name = "tab", .width = 2_in, .height = 2_in});
    const auto side = [&](edge e, edge other) {
        return d.add(seam_of<inch>{.one = {{.on = front, .from = e, .in = at<cut_edge>("1/2"_in)}},
                                   .other = {{.on = back, .from = other, .in = at<cut_edge>("1/2"_in)}}});
    };
    side(edge::left, edge::right);
    side(edge::bottom, edge::bottom);
    const operation last = side(edge::right, edge::left);
    const mouth_handle top = d.add(mouth<inch>{.name = "top", .at = {line(front, edge::top, 0_in)}});
    const operation out = d.add(moment{moment_kind::turn_out, top.index});
    const operation on_back = d.add(handwork{"on the back", {back}});
    d.add(handwork{"on the tab", {tab}});
    const operation trimmed = d.add(handwork{"trimmed", {front, back}});
    d.add(before{last, trimmed});
    const operation after = d.add(handwork{"afterwards", {front}});
    d.add(before{out, after});
    std::string order;
    for (const making_step& s : steps_of(d))
        order += s.what.kind == operation_kind::handwork ? d.handworks()[s.what.index].says + ", "
                 : s.what.kind == operation_kind::seam   ? "seam, "
                                                         : "out, ";
    CHECK(order == "on the back, seam, seam, trimmed, seam, on the tab, out, afterwards, "); // left, right, bottom
    CHECK(on_back.index == 0);
}

TEST_CASE(
    "the work lies after handwork as it lay before, and stitching, raw edges and sides up are the same without it") {
    pocket_made p;
    const operation pressed = p.design.add(handwork{"Press it.", {p.pocket, p.back}});
    p.design.add(before{p.hem, pressed});
    const auto steps = steps_of(p.design);
    REQUIRE(steps[2].what == pressed);
    const auto before_it = lying_after(p.design, steps, 2, p.pocket),
               after_it = lying_after(p.design, steps, 3, p.pocket);
    CHECK((before_it.width == after_it.width && before_it.height == after_it.height));
    CHECK(before_it.covered() == after_it.covered());
    CHECK(before_it.covered(2) == 4_in * 1_in); // the hem: 1 in turned over by 1 in of the rest
    CHECK(after_it.covered(2) == 4_in * 1_in);
    const auto with = execute(p.design), without = execute(pocket_made().design);
    CHECK(with.faults == without.faults);
    CHECK(with.raw_edges == without.raw_edges);
    CHECK(printed_steps(p.design).find("Turn the work over. Press") == std::string::npos);
}

TEST_CASE("handwork is a step by itself, in the words that were given, made fit to print") {
    pocket_made p;
    const operation h = p.design.add(handwork{"fold {piece} by 1.5,\nand press.\x01", {p.pocket}});
    p.design.add(before{p.hem, h});
    const work_plan<inch> plan = work_plan_of(p.design);
    REQUIRE(plan.groups.size() == 4); // cut; hem; this; lay and sew
    const work_group<inch>& own = plan.groups[2];
    REQUIRE(own.steps.size() == 1);
    CHECK(own.steps[0].verb == work_verb::handwork);
    CHECK(own.steps[0].stands_for == std::vector<operation>{h});
    REQUIRE(own.steps[0].places.size() == 1);
    CHECK(own.steps[0].places[0].piece == p.pocket);
    CHECK(own.care.empty());
    CHECK(sentence_of(plan, own) == "fold {piece} by 1.5, and press.\xEF\xBF\xBD");
    CHECK(sentence_of(plan, own, {.by = {}, .table = {{"step.handwork", "Now: {what}"}}}) ==
          "Now: fold {piece} by 1.5, and press.\xEF\xBF\xBD");
}

TEST_CASE("for 300 random projects with handwork any order of entry gives the same steps") {
    sampler any(31);
    int circles = 0, steps = 0;
    while (any.another_of(300)) {
        making<inch> d = random_design(any);
        add_handwork(d, any);
        const std::string first = steps_or_circle(d);
        circles += first.rfind("a circle", 0) == 0;
        steps += static_cast<int>(d.handworks().size());
        for (int k = 0; k < 3; ++k)
            REQUIRE(steps_or_circle(entered_anew(d, any)) == first);
    }
    CHECK(circles < 200);
    CHECK(steps > 500);
}

// By hand: a row on the first piece waits for both; one of them for a row on the last piece besides. The one that waits for
// nothing is done first, whichever is entered first; then the row on the last piece, the other, and the row on the first.
TEST_CASE(
    "of two in the same words on the same piece the order is that of what they wait for, and not of their entry") {
    std::vector<std::string> orders;
    for (const bool entered_first : {true, false}) {
        making<inch> d("mats");
        const cut_part first = d.cut({.name = "a", .width = 9_in, .height = 9_in}),
                       last = d.cut({.name = "z", .width = 9_in, .height = 9_in});
        const operation on_first = d.add(sewn(first, edge::top, 1_in, {first})),
                        on_last = d.add(sewn(last, edge::top, 1_in, {last}));
        const operation one = d.add(handwork{"press", {first}}), other = d.add(handwork{"press", {first}});
        d.add(before{one, on_first}).add(before{other, on_first}).add(before{on_last, entered_first ? one : other});
        std::string order;
        for (const making_step& s : steps_of(d))
            order += s.what == on_first ? "first " : s.what == on_last ? "last " : "press ";
        orders.push_back(order);
    }
    CHECK(orders[0] == "press last press first ");
    CHECK(orders[1] == orders[0]);
}

TEST_CASE("handwork that must come both before and after is a circle, told in its words") {
    pocket_made p;
    const operation h = p.design.add(handwork{"Press it.", {p.pocket}});
    p.design.add(before{p.row, h}).add(before{h, p.laid});
    CHECK(refused::message<making_error>([&] { steps_of(p.design); }).find("the step \"Press it.\"") !=
          std::string::npos);
}

TEST_CASE("handwork without words or parts, of too many words, or of a part that is not there is refused") {
    pocket_made p;
    const auto faults = [&](const handwork& h) {
        making<inch> d = p.design;
        d.add(h);
        std::string all;
        for (const making_fault& f : d.faults())
            all += f.sentence + "\n";
        return all;
    };
    CHECK(faults({"Press.", {p.pocket, p.back}}).empty());
    CHECK(faults({" \n\t", {p.pocket}}) == "a step in the designer's own words has none\n");
    CHECK(faults({"Press.", {}}) == "a step in the designer's own words names no part\n");
    CHECK(faults({std::string(1000, 'a'), {p.pocket}}).empty());
    CHECK(faults({std::string(1001, 'a'), {p.pocket}}) ==
          "a step in the designer's own words has at most 1000 bytes: it has 1001\n");
    CHECK(faults({"", {p.pocket[1], {}}}) ==
          "a step in the designer's own words has none\n"
          "a step in the designer's own words names a part, or a copy of one, that was not added\n"
          "a step in the designer's own words names a part, or a copy of one, that was not added\n");
    CHECK(faults({"Press.", {p.back, p.pocket, p.back}}) == "a step in the designer's own words names back twice\n");
    making<inch> many = p.design;
    for (int i = 0; i < 5001; ++i)
        many.add(handwork{"Press.", {p.pocket}});
    REQUIRE(many.faults().size() == 1);
    CHECK(many.faults()[0].sentence ==
          "the number of steps in the designer's own words must be at most 5000: it was 5001");
}
