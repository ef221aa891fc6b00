// Pictures of steps: what is drawn is what the work is at that step, worked out by hand as one folds paper; consecutive
// pictures differ in what the step did; words can be read and stay on the page at any size.
#include "../../examples/sheets/projects.hpp"
#include "draw/dimensions.hpp"
#include "draw/picture.hpp"
#include "making/random_design.hpp"
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/step.hpp>
#include <turncloth/making/executed.hpp>
#include <turncloth/making/work_plan.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <set>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::drawn;

namespace {

/// Cut 12 x 9 in; its left edge is turned over by 1 in and stitched 3/4 in from the fold.
making<inch> hemmed_mat() {
    making<inch> d("mat");
    const cut_part mat = d.cut({.name = "mat", .width = 12_in, .height = 9_in});
    d.add(laying<inch>{.piece = mat, .up = face::wrong});
    d.add(crease<inch>{.at = {.on = mat, .from = edge::left, .in = at<cut_edge>(1_in)}, .over = true});
    d.add(stitching<inch>{.along = {.on = mat, .from = edge::left, .in = at<cut_edge>("1 3/4"_in)}});
    return d;
}

std::vector<step_page> steps_drawn(const making<inch>& d) { return pages_of_steps(d, work_plan_of(d)); }

/// Lines of some kinds, in mm of cloth from the upper left corner of what lies there, however they are parted: every
/// millimetre along a line is a place on it. (A sixteenth of an inch is 1.5875 mm, so that nothing lies half between.)
std::set<std::string> places_on(const picture& p, std::initializer_list<const char*> kinds) {
    double left = 1e9, top = 1e9;
    for (const char* kind : {"edge", "folded"})
        for (const segment& s : p.lines(kind)) {
            left = std::min({left, s.a.x, s.b.x});
            top = std::min({top, s.a.y, s.b.y});
        }
    std::set<std::string> all;
    for (const char* kind : kinds)
        for (const segment& s : p.lines(kind)) {
            const auto at = [&](double v, double from) { return std::lround((v - from) * p.scale() + 0.003); };
            const long x0 = at(std::min(s.a.x, s.b.x), left), x1 = at(std::max(s.a.x, s.b.x), left),
                       y0 = at(std::min(s.a.y, s.b.y), top), y1 = at(std::max(s.a.y, s.b.y), top);
            for (long x = x0; x <= x1; ++x)
                for (long y = y0; y <= y1; ++y)
                    if (x0 == x1 || y0 == y1)
                        all.insert(std::to_string(x) + ',' + std::to_string(y));
        }
    return all;
}

/// Of one kind, the distances of its upright lines from the left end of all that lies there, in inches.
std::vector<double> upright_at(const picture& p, const char* kind) {
    double left = 1e9;
    for (const char* all : {"edge", "folded"})
        for (const segment& s : p.lines(all))
            left = std::min({left, s.a.x, s.b.x});
    std::vector<double> found;
    for (const segment& s : p.lines(kind))
        if (s.a.x == s.b.x)
            found.push_back((s.a.x - left) * p.scale() / 25.4);
    std::sort(found.begin(), found.end());
    return found;
}

/// The middle of each line of hatching, in inches from the left end.
std::vector<double> hatched_at(const picture& p) {
    double left = 1e9;
    for (const segment& s : p.lines("edge"))
        left = std::min({left, s.a.x, s.b.x});
    std::vector<double> found;
    for (const segment& s : p.lines("wrong"))
        found.push_back(((s.a.x + s.b.x) / 2 - left) * p.scale() / 25.4);
    return found;
}

double right_end(const picture& p) {
    double left = 1e9, right = -1e9;
    for (const char* kind : {"edge", "folded"})
        for (const segment& s : p.lines(kind)) {
            left = std::min({left, s.a.x, s.b.x});
            right = std::max({right, s.a.x, s.b.x});
        }
    return (right - left) * p.scale() / 25.4;
}

doctest::Approx inches(double x) { return doctest::Approx(x).epsilon(1e-4); }

} // namespace

TEST_CASE("a turned edge is drawn where it comes to lie, its former place in dashes, and the figure is the plan's") {
    const auto all = steps_drawn(hemmed_mat());
    REQUIRE(all.size() == 2);
    const picture fold(all[0].page);
    CHECK(right_end(fold) == inches(11)); // 12 less the 1 in that is turned
    // The wrong side lies up, so that the left edge is at the right.
    REQUIRE(upright_at(fold, "folded").size() == 1);
    CHECK(upright_at(fold, "folded")[0] == inches(11));
    REQUIRE(upright_at(fold, "edge").size() == 2);
    CHECK(std::abs(upright_at(fold, "edge")[0]) < 1e-4);
    CHECK(upright_at(fold, "edge")[1] == inches(10)); // where the cut edge comes to lie
    REQUIRE(upright_at(fold, "before").size() == 1);
    CHECK(upright_at(fold, "before")[0] == inches(12));
    CHECK(fold.says("1 in (2.5 cm)"));
    CHECK(fold.mentions("wrong side of the mat up"));
    // Hatched is the mat's wrong side; the hem shows its right side.
    CHECK_FALSE(fold.lines("wrong").empty());
    for (const double x : hatched_at(fold))
        CHECK((x > 0 && x < 10));
    check_legible(fold);
}

TEST_CASE("the row that is sewn is the only heavy line, as far from the fold as the step says") {
    const auto all = steps_drawn(hemmed_mat());
    const picture sewn(all[1].page);
    CHECK(right_end(sewn) == inches(11));
    REQUIRE(upright_at(sewn, "new").size() == 1);
    CHECK(upright_at(sewn, "new")[0] == inches(11 - 0.75));
    CHECK(sewn.says("3/4 in (1.9 cm)"));
    CHECK(sewn.lines("before").empty());
    CHECK_FALSE(sewn.lines("datum").empty()); // the edge that it is measured from
    for (const auto& s : all[1].page.strokes)
        if (s.with.means != stroke_name("new") && s.with.means != stroke_name("legend"))
            CHECK(s.with.weight < 0.5);
    check_legible(sewn);
}

TEST_CASE("a row is as heavy as it is new: the next picture of the same work differs in that alone") {
    const auto s = allotment::tool_roll::make(finished_size(12_in, 14_in), "1/16"_in);
    const auto all = pages_of_steps(s);
    std::size_t compared = 0;
    for (std::size_t i = 1; i < all.size(); ++i) {
        const work_group<inch>& g = s.steps.groups[all[i].group];
        if (all[i].group != all[i - 1].group || g.steps[all[i].step].verb != work_verb::sew)
            continue;
        INFO(all[i].page.title);
        const picture before(all[i - 1].page), after(all[i].page);
        CHECK(places_on(before, {"edge", "folded", "slit"}) == places_on(after, {"edge", "folded", "slit"}));
        std::set<std::string> had = places_on(before, {"sewn", "new"}), has = places_on(after, {"sewn"});
        CHECK_FALSE(after.lines("new").empty());
        for (const std::string& place : places_on(after, {"new"}))
            has.insert(place);
        CHECK(std::includes(has.begin(), has.end(), had.begin(), had.end()));
        CHECK(has.size() > had.size());
        ++compared;
    }
    CHECK(compared >= 6);
}

TEST_CASE("each step that turns, lays, sews, cuts or pierces has its picture, in the order of work") {
    const auto s = allotment::kneeling_pad::make(finished_size("17 1/2"_in, "10 1/2"_in), 2_in, {}, "1/16"_in);
    const auto all = pages_of_steps(s);
    std::size_t next = 0;
    for (std::size_t g = 0; g < s.steps.groups.size(); ++g)
        for (std::size_t k = 0; k < s.steps.groups[g].steps.size(); ++k) {
            const work_verb v = s.steps.groups[g].steps[k].verb;
            if (v == work_verb::cut || v == work_verb::prepare || v == work_verb::open || v == work_verb::turn_out ||
                v == work_verb::put_in || v == work_verb::close)
                continue;
            REQUIRE(next < all.size());
            CHECK(all[next].group == g);
            CHECK(all[next++].step == k);
        }
    CHECK(next == all.size());
    // The seam of the base is left open for the zipper: two stretches on each half.
    const picture base(all[0].page);
    CHECK(base.lines("new").size() == 4);
    CHECK(base.lines("mouth").size() == 2);
    for (const segment& open : base.lines("mouth")) // 2 to 16 1/2 in from the left of base half 1, as its step says
        CHECK(std::abs(open.b.x - open.a.x) * base.scale() / 25.4 == inches(14.5));
}

TEST_CASE("a thing that is bound is drawn with the sizes that a maker measures, not those of cloth without thickness") {
    // A binding of 3/4 in with 1/4 in for the turn of cloth: 1/8 in of it goes round the edge, and 5/8 in lies flat.
    const auto s = allotment::tool_roll::make(finished_size(29_in, 21_in), "1/16"_in);
    const auto sides = pages_of_finished(s);
    REQUIRE(sides.size() == 2);
    for (const page& side : sides) {
        const picture p(side);
        CHECK(p.says("29 in (73.7 cm)"));
        CHECK(p.says("21 in (53.3 cm)"));
        CHECK(p.mentions("finished 29 x 21 in"));
        double drawn = -1e9, dimensioned = -1e9;
        for (const segment& l : p.lines("folded"))
            drawn = std::max({drawn, l.a.x, l.b.x});
        for (const segment& l : p.lines("dimension"))
            if (l.a.y == l.b.y)
                dimensioned = std::max({dimensioned, l.a.x, l.b.x});
        CHECK(dimensioned == doctest::Approx(drawn).epsilon(0.0001)); // from edge to edge
    }
    CHECK(picture(sides[0]).says("5/8 in (1.6 cm)"));
    const auto steps = pages_of_steps(s);
    CHECK(picture(steps.back().page).says("29 in (73.7 cm)"));
    CHECK(picture(steps.back().page).says("21 in (53.3 cm)"));
    for (const step_page& step : steps) {
        CHECK_FALSE(picture(step.page).says("29 1/4 in (74.3 cm)"));
        CHECK_FALSE(picture(step.page).says("21 1/4 in (54 cm)"));
    }
}

TEST_CASE("the finished thing has its finished size, front and back, and its pockets' mouths in sight") {
    const auto s = allotment::organiser::make(finished_size(27_in, 28_in), "1/16"_in);
    const auto sides = pages_of_finished(s);
    REQUIRE(sides.size() == 2);
    for (const page& side : sides) {
        const picture p(side);
        CHECK(right_end(p) == inches(27));
        CHECK(p.says("27 in (68.6 cm)"));
        CHECK(p.says("28 in (71.1 cm)"));
        check_legible(p);
    }
    CHECK(picture(sides[0]).lines("mouth").size() == 4); // four strips of pockets
    CHECK(picture(sides[1]).lines("mouth").empty());
    const auto pad = allotment::kneeling_pad::make(finished_size("17 1/2"_in, "10 1/2"_in), 2_in, {}, "1/16"_in);
    const auto box = pages_of_finished(pad);
    REQUIRE(box.size() == 2);
    const picture top(box[0]);
    CHECK(top.rectangle("folded").width * top.scale() / 25.4 == inches(17.5));
    CHECK(picture(box[0]).says("top panel"));
    CHECK(picture(box[1]).mentions("base half"));
    CHECK(picture(box[0]).mentions("2 in (5.1 cm) deep"));
}

TEST_CASE("a cross is drawn from corner to corner of its box, as it is sewn and when it is done") {
    making<inch> d("mat");
    const cut_part mat = d.cut({.name = "mat", .width = 12_in, .height = 9_in});
    d.add(spot<inch>{.what = spot_kind::cross,
                     .along = {.on = mat, .from = edge::top, .in = at<cut_edge>(4_in)},
                     .places = row<cut_edge, inch>(at<cut_edge>(7_in), length<inch>(), 1),
                     .width = 2_in,
                     .height = 1_in});
    const picture sewn(steps_drawn(d).back().page), done(pages_of_finished(d, steps_of(d)).front());
    for (const auto& [p, kind] : {std::pair(&sewn, "new"), std::pair(&done, "sewn")}) {
        const auto rows = p->lines(kind);
        REQUIRE(rows.size() == 2);
        double left = 1e9, top = 1e9;
        for (const segment& s : p->lines("edge"))
            left = std::min({left, s.a.x, s.b.x}), top = std::min({top, s.a.y, s.b.y});
        // 2 x 1 in round the spot that lies 7 in from the left and 4 in from the top: 6 to 8 in, 3 1/2 to 4 1/2 in.
        for (const segment& s : rows) {
            const auto in = [scale = p->scale()](double mm) { return mm * scale / 25.4; };
            CHECK(in(s.a.x - left) == inches(6));
            CHECK(in(s.b.x - left) == inches(8));
            CHECK(in(s.a.y + s.b.y - 2 * top) == inches(8));
            CHECK(in(std::abs(s.b.y - s.a.y)) == inches(1));
        }
        CHECK(p->lines("spot").empty());
        check_legible(*p);
    }
}

TEST_CASE("at any size of the three projects every word of their pictures can be read") {
    const auto check = [](const sheet<inch>& s) {
        INFO(s.name);
        for (const step_page& p : pages_of_steps(s, {.sentences = false})) {
            INFO(p.page.title);
            check_legible(picture(p.page));
        }
        for (const page& p : pages_of_finished(s))
            check_legible(picture(p));
    };
    const length<inch> ruler = "1/16"_in;
    check(allotment::tool_roll::make(finished_size(24_in, 11_in), ruler));
    check(allotment::kneeling_pad::make(finished_size(8_in, 6_in), 1_in, {}, ruler));
    check(allotment::organiser::make(finished_size(8_in, 50_in), ruler));
}

// By hand: the tape is 1 in wide and lies under the folds of two halves that are turned under by 3/4 in. From the wrong side
// the cut edges of what is turned under are in sight, and the tape's edge lies 1/4 in inside one of them; the fold is 1/2 in
// from it, and is under the tape.
TEST_CASE("a piece laid from beneath is drawn from that side, and measured to the cut edge that is in sight there") {
    const auto s = allotment::kneeling_pad::make(finished_size("17 1/2"_in, "10 1/2"_in), 2_in, {}, "1/16"_in);
    const auto all = pages_of_steps(s);
    const auto laid = std::find_if(all.begin(), all.end(),
                                   [&](const step_page& p) { return s.steps.groups[p.group].steps[p.step].beneath; });
    REQUIRE(laid != all.end());
    const dimensions read(laid->page);
    CHECK(read.measures("1/4 in (0.6 cm)", false));
    CHECK_FALSE(read.measures("1/4 in (0.6 cm)", true));
    const picture p(laid->page);
    CHECK(p.mentions("wrong side of the zipper up"));
    CHECK_FALSE(p.lines("wrong").empty());
    for (const dimension_read& d : read.all())
        if (d.words == "1/4 in (0.6 cm)")
            CHECK(read.of_cloth(d.to - d.from) == doctest::Approx(25.4 / 4));
}

TEST_CASE(
    "a dimension is as long as its figure, and runs from an edge that is in sight: in inches and in centimetres") {
    const auto check = [](const auto& s) {
        CAPTURE(s.name);
        return check_measured(pages_of_steps(s, {.sentences = false}), s.steps);
    };
    CHECK(check(allotment::tool_roll::make(finished_size(29_in, 21_in), "1/16"_in)) > 60);
    CHECK(check(allotment::organiser::make(finished_size("41.5"_cm, 72_cm), "0.1"_cm)) > 40);
    CHECK(check(allotment::kneeling_pad::make(finished_size(44_cm, 27_cm), 5_cm, {}, "0.1"_cm)) > 20);
}

TEST_CASE("dimensions of random work are as long as their figures, and run from edges in sight") {
    things::sampler any(71);
    std::size_t figures = 0;
    while (any.another_of(40)) {
        const making<inch> d = things::random_design(any);
        try {
            figures += check_measured(steps_drawn(d), work_plan_of(d));
        } catch (const making_error&) {
            continue;
        }
    }
    CHECK(figures > 400);
}

// After the hem of the mat, 1 in turned at its left edge, the mat lies 11 in wide; it is drawn wrong side up, as the hem was.
TEST_CASE("handwork is drawn as the work lies then, with nothing new, and not at all once seams join it to more") {
    making<inch> d = hemmed_mat();
    const operation own = d.add(handwork{"Press it.", {{0, 0}}});
    d.add(before{{operation_kind::stitching, 0}, own});
    const auto all = steps_drawn(d);
    REQUIRE(all.size() == 3);
    const picture sewn(all[1].page), pressed(all[2].page);
    CHECK(right_end(pressed) == inches(11));
    CHECK(pressed.lines("new").empty());
    CHECK(places_on(pressed, {"sewn"}) == places_on(sewn, {"new"}));
    CHECK(places_on(pressed, {"edge", "folded"}) == places_on(sewn, {"edge", "folded"}));
    CHECK(pressed.says("Press it."));
    CHECK(pressed.mentions("wrong side of the mat up"));
    check_legible(pressed);

    making<inch> bag("bag");
    const cut_part front = bag.cut({.name = "front", .width = 6_in, .height = 8_in}),
                   back = bag.cut({.name = "back", .width = 6_in, .height = 8_in});
    const operation seam =
        bag.add(seam_of<inch>{.one = {{.on = front, .from = edge::left, .in = at<cut_edge>("1/2"_in)}},
                              .other = {{.on = back, .from = edge::right, .in = at<cut_edge>("1/2"_in)}}});
    const operation after = bag.add(handwork{"Press it.", {back}});
    CHECK(steps_drawn(bag).size() == 2); // before the seam
    bag.add(before{seam, after});
    CHECK(steps_drawn(bag).size() == 1);
}
