// draw/lay.hpp: a lay is drawn where its pieces lie, true to scale, and what is written can be read.
#include "at_random.hpp"
#include "draw/picture.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/sheet/on_hand.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::drawn;

namespace {

constexpr purchase_rules<inch> by_the_eighth{.straightening = 1_in, .sold = eighths_of_a_yard<inch>};

/// Backs cut 20 x 30 in and pockets cut 9 x 12 in.
sheet_cloth<inch> tidy(cutting ways, grain lies = grain::fixed) {
    project<inch> p("Seed tidy", finished_size(20_in, 30_in));
    p.add({"back", "canvas", panel(p.finished())}).count(2);
    p.add({"pocket", "canvas", panel(finished_size(9_in, 12_in))}).count(3);
    return cloth_for<inch>(sheet_of(p), "canvas", {.width = 45_in, .selvedge = "1/2"_in, .cutting = ways},
                           by_the_eighth, {.lies = lies});
}

/// The parts that a long cloth is drawn in, from the left, read off its drawing: where each begins, and how much of the
/// cloth is before it.
class parts_drawn {
public:
    explicit parts_drawn(const picture& p) : scale_(p.scale()) {
        if (const auto whole = boxes(p, "cloth"); !whole.empty()) {
            all_.push_back({whole[0], 0});
            return;
        }
        // Cut through, its left edge and its right one are in pieces; a little beyond a break is drawn again.
        std::vector<segment> breaks;
        for (const auto& g : p.groups("break"))
            for (const auto& line : g.children("polyline")) {
                const auto points = points_of(line);
                breaks.push_back({points.front(), points.back()});
            }
        std::vector<segment> sides;
        for (const segment& s : p.lines("cloth"))
            if (s.a.x == s.b.x && length(s) > 4) // beyond a break it is shorter
                sides.push_back({{s.a.x, std::min(s.a.y, s.b.y)}, {s.a.x, std::max(s.a.y, s.b.y)}});
        std::sort(sides.begin(), sides.end(), [](const segment& a, const segment& b) { return a.a.x < b.a.x; });
        REQUIRE(sides.size() % 2 == 0);
        double before = 0;
        for (std::size_t i = 0; i < sides.size(); i += 2) {
            all_.push_back({{sides[i].a.x, sides[i].a.y, sides[i + 1].a.x - sides[i].a.x, length(sides[i])}, before});
            before += length(sides[i]);
        }
        CHECK(breaks.size() == 2 * (all_.size() - 1));
    }
    std::size_t count() const { return all_.size(); }
    box first() const { return all_[0].where; }
    double length_of_all() const { return (all_.back().before + all_.back().where.height) * scale_; }
    /// On the cloth, in mm from the corner where it begins.
    page_point on_cloth(page_point p) const {
        for (const part& k : all_)
            if (p.x > k.where.x - 0.01 && p.x < k.where.right() + 0.01)
                return {(p.x - k.where.x) * scale_, (p.y - k.where.y + k.before) * scale_};
        FAIL("beside the cloth: ", p.x, ", ", p.y);
        return {};
    }

private:
    struct part {
        box where;
        double before;
    };
    static double length(const segment& s) { return std::abs(s.b.y - s.a.y); }
    double scale_;
    std::vector<part> all_{};
};

/// Each of the lay's cuts is drawn, in as many lines as there are breaks on its way and one more, end to end.
template <length_unit Unit>
void check_cuts(const picture& p, const sheet_cloth<Unit>& c, const parts_drawn& cloth, double end) {
    const auto lines = p.lines("cutting");
    std::size_t k = 0;
    for (const auto& cut : c.lay.cuts) {
        const bool across = cut.direction == cut_direction::across;
        const double left = mm(cut.in_hand.from_left), top = mm(cut.in_hand.from_end) + end, at = mm(cut.at),
                     long_ = mm(across ? cut.in_hand.across : cut.in_hand.along);
        page_point next{across ? left : left + at, across ? top + at : top};
        for (double drawn = 0; drawn < long_ - 0.01; ++k) {
            REQUIRE(k < lines.size());
            const double length = (across ? lines[k].b.x - lines[k].a.x : lines[k].b.y - lines[k].a.y) * p.scale();
            // Where cloth is parted both ends are one place; the line belongs to the part that its other end is in.
            const page_point from = cloth.on_cloth(lines[k].a);
            CHECK(from.x == near(next.x));
            CHECK(from.y == near(next.y));
            drawn += length;
            (across ? next.x : next.y) += length;
        }
    }
    CHECK(k == lines.size());
}

/// Every piece that no break cuts through is drawn where the lay has it, the cuts too, and nothing else; the cloth as long
/// as it is there.
template <length_unit Unit>
void check_places(const picture& p, const sheet_cloth<Unit>& c, length<Unit> straightened = as<Unit>(1_in)) {
    const parts_drawn cloth(p);
    CHECK(cloth.first().width * p.scale() == near(mm(c.bolt.folded ? c.bolt.width / 2 : c.bolt.width)));
    CHECK(cloth.length_of_all() == near(mm(c.on_hand ? c.on_hand->length : c.bought.bought)));
    const double end = mm(straightened);
    std::size_t found = 0;
    const auto pieces = boxes(p, "piece");
    for (const box& drawn : pieces) {
        const page_point at = cloth.on_cloth({drawn.x, drawn.y});
        found += std::any_of(c.lay.places.begin(), c.lay.places.end(), [&](const auto& place) {
            return at.x == near(mm(place.where.from_left)) && at.y - end == near(mm(place.where.from_end)) &&
                   drawn.width * p.scale() == near(mm(place.where.across)) &&
                   drawn.height * p.scale() == near(mm(place.where.along));
        });
    }
    CHECK(found == pieces.size());
    if (cloth.count() == 1)
        CHECK(found == c.lay.places.size());
    check_cuts(p, c, cloth, end);
}

} // namespace

TEST_CASE("a lay is drawn to a scale that is written, with its pieces named and its measurements beside it") {
    // 44 in usable holds two backs, 30 in long, and below them the pockets, 12 in long: 42 in laid. With 1 in off both
    // ends 44 in: ten eighths of a yard, 45 in.
    const auto c = tidy(cutting::free);
    const picture p(page_of(c, inch_ruler(16), {.project = "Seed tidy"}));
    CHECK(p.page().width == 210);
    CHECK(p.page().height == 297); // ISO 216, A4
    CHECK(p.scale() == 8);         // 45 in are 1143 mm: 229 at 1:5, 143 at 1:8
    check_places(p, c);
    for (const char* words :
         {"width 45 in", "usable width 44 in", "laid 42 in", "A: back", "20 x 30 in", "B: pocket", "9 x 12 in",
          "A: back, 20 x 30 in, 2 of them", "B: pocket, 9 x 12 in, 3 of them", "Seed tidy", "lay of canvas",
          "length to buy 45 in, sold as 1 1/4 yd", "bought 1 1/4 yd", "scale 1:8"})
        CHECK_MESSAGE(p.says(words), words);
    CHECK(p.count("A: back") == 2);
    CHECK(p.count("B: pocket") == 3);
    CHECK_FALSE(p.mentions("turned of them"));
    CHECK(p.lines("selvedge").size() == 2);
    CHECK(p.groups("cutting").empty());
    CHECK_FALSE(p.mentions("cut 1"));
    check_legible(p);
}

TEST_CASE("a lay that is cut free lists every place, from an end and an edge that are drawn thick and named") {
    const auto c = tidy(cutting::free);
    const page shown = page_of(c, inch_ruler(16), {.for_screen = true});
    const picture p(page_of(c, inch_ruler(16)));
    const auto says = [&](const std::string& text) {
        return p.count(text) == 1 && std::count_if(shown.words.begin(), shown.words.end(),
                                                   [&](const page_words& w) { return w.text == text; }) == 1;
    };
    CHECK(says("cut 0: straighten the end, square to the selvedges"));
    for (const auto& place : c.lay.places) {
        const std::string listed = std::string(1, "AB"[place.piece]) + ": " +
                                   to_text(place.where.from_left, inch_ruler(16)) + " from the left edge, " +
                                   to_text(place.where.from_end, inch_ruler(16)) + " from the end";
        CHECK_MESSAGE(says(listed), listed);
    }
    // The first of two backs, 20 in wide, lies past the selvedge of 1/2 in, so the second 20 1/2 in from the edge.
    for (const char* words :
         {"A: 1/2 in from the left edge, 0 in from the end", "A: 20 1/2 in from the left edge, 0 in from the end",
          "trim 1 in off to straighten this end", "left edge"})
        CHECK_MESSAGE(says(words), words);
    REQUIRE(p.groups("datum").size() == 1);
    const auto cloth = boxes(p, "cloth").at(0);
    const auto drawn = points_of(p.groups("datum")[0].child("polyline"));
    REQUIRE(drawn.size() == 3); // up the left edge of what is laid, then along the end
    CHECK(drawn[0].x == cloth.x);
    CHECK((drawn[0].y - cloth.y) * p.scale() == near(43 * 25.4));
    CHECK(drawn[1].x == cloth.x);
    CHECK((drawn[1].y - cloth.y) * p.scale() == near(25.4));
    CHECK(drawn[2].x == cloth.right());
    CHECK(drawn[2].y == drawn[1].y);
    check_legible(p);
}

TEST_CASE("cuts from edge to edge are numbered in order, on the cloth and in the list") {
    const auto c = tidy(cutting::edge_to_edge);
    const picture p(page_of(c, inch_ruler(16)));
    REQUIRE(c.lay.cuts.size() >= 4);
    check_places(p, c);
    check_legible(p);
    for (const char* words : {"cut 0: straighten the end; a near side is the one by it",
                              "cut 0: cut off 42 in from that end", "cut 0: trim 1/2 in off the selvedges"})
        CHECK_MESSAGE(p.says(words), words);
    for (std::size_t i = 1; i <= c.lay.cuts.size(); ++i) {
        CHECK(p.says(std::to_string(i)));
        CHECK(p.mentions("cut " + std::to_string(i) + ": "));
    }
    // Cut 1 parts the backs from the pockets, whichever come first: right across, 30 or 12 in from the end.
    CHECK((p.says("cut 1: across the cloth, 30 in from its near side; 30 in from the end") ||
           p.says("cut 1: across the cloth, 12 in from its near side; 12 in from the end")));
}

TEST_CASE("a turned piece says so, and its arrow lies across the cloth") {
    project<inch> one("Mat", finished_size(40_in, 20_in));
    one.add({"mat", "felt", panel(one.finished())});
    const auto lay = [&](length<inch> width) {
        return cloth_for<inch>(sheet_of(one), "felt", {.width = width}, by_the_eighth, {.lies = grain::may_turn});
    };
    const picture turned(page_of(lay(30_in), inch_ruler(16))), straight(page_of(lay(45_in), inch_ruler(16)));
    CHECK(turned.says("turned"));
    CHECK(turned.says("A: mat, 40 x 20 in, turned"));
    CHECK_FALSE(straight.says("turned"));
    REQUIRE(turned.lines("grain").size() == 1); // the shaft
    REQUIRE(straight.lines("grain").size() == 1);
    const segment lies = turned.lines("grain")[0], stands = straight.lines("grain")[0];
    CHECK(lies.a.y == near(lies.b.y));
    CHECK(stands.a.x == near(stands.b.x));
    const auto head = [](const picture& p) { return points_of(p.groups("grain")[0].child("polyline")); };
    for (const std::size_t end : {0U, 2U}) { // of the head, back from the tip
        CHECK((head(turned)[end].x - lies.b.x) * (lies.a.x - lies.b.x) > 0);
        CHECK((head(straight)[end].y - stands.b.y) * (stands.a.y - stands.b.y) > 0);
    }
    CHECK(stands.b.y < stands.a.y); // its head is at the top
    check_legible(turned);
    check_legible(straight);
}

TEST_CASE("what the cuts leave is drawn where it is large enough to keep") {
    // One piece of 20 x 30 in on 44 in: 24 x 30 in are left beside it.
    project<inch> p("Mat", finished_size(20_in, 30_in));
    p.add({"mat", "felt", panel(p.finished())});
    for (const cutting ways : {cutting::free, cutting::edge_to_edge}) {
        const auto c = cloth_for<inch>(sheet_of(p), "felt", {.width = 44_in, .cutting = ways}, by_the_eighth);
        const auto drawn = [&](length<inch> across, length<inch> along) {
            return picture(page_of(c, inch_ruler(16), {}, {.across = across, .along = along}));
        };
        const picture kept = drawn(24_in, 30_in);
        // 32 in with both ends straightened, so 36 in are bought, and 4 in lie beyond the lay: left as one with what is
        // beside the mat where nothing cuts them apart.
        const bool free = ways == cutting::free;
        CHECK(kept.says(free ? "left over, to keep: 24 x 34 in" : "left over, to keep: 24 x 30 in"));
        CHECK(boxes(kept, "left-over").size() == 1);
        check_legible(kept);
        CHECK(boxes(drawn("24 1/16"_in, 6_in), "left-over").empty());
        CHECK(boxes(drawn(6_in, free ? "34 1/16"_in : "30 1/16"_in), "left-over").empty());
        CHECK(boxes(picture(page_of(c)), "left-over").empty()); // nothing is asked for
        const picture all = drawn(4_in, 4_in);
        CHECK(boxes(all, "left-over").size() == 2); // beyond the lay too
        CHECK(all.says(free ? "left over, to keep: 20 x 4 in" : "left over, to keep: 44 x 4 in"));
        check_legible(all);
    }
    CHECK(worth_keeping<inch>::usual().across == 6_in);
    CHECK(worth_keeping<centimetre>::usual().along == 15_cm);
}

namespace {

/// A dimension of a lay: how long it is drawn, on the cloth.
double drawn_length(const picture& p, const std::string& words) {
    const auto w = std::find_if(p.words().begin(), p.words().end(), [&](const word& x) { return x.text == words; });
    REQUIRE_MESSAGE(w != p.words().end(), words);
    double nearest = 1e9, length = 0;
    for (const segment& s : p.lines("dimension")) {
        const double off = std::abs(s.a.x - w->where.right());
        if (s.a.x == s.b.x && off < nearest)
            nearest = off, length = std::abs(s.b.y - s.a.y) * p.scale();
    }
    return length;
}

} // namespace

// By hand: 50 in laid and 1 in off either end are 52 in. Sold by the eighth of a yard that is 54 in; of cloth that loses a
// tenth in the wash 57 7/9 in are asked for, so 58 1/2 in, 13 eighths, are bought, and 52 13/20 in lie there to be cut.
TEST_CASE("what is bought stands beside what is laid, as shops sell it and as long as it is after washing") {
    project<inch> p("Bench cover", finished_size(30_in, 50_in));
    p.add({"cover", "drill", panel(p.finished())});
    const auto drawn = [&](const purchase_rules<inch>& rules, bool folded = false) {
        const auto c = cloth_for<inch>(sheet_of(p), "drill", {.width = 62_in, .folded = folded}, rules);
        return picture(page_of(c, inch_ruler(16)));
    };
    const picture plain = drawn(by_the_eighth);
    CHECK(drawn_length(plain, "laid 50 in") == near(50 * 25.4));
    CHECK(drawn_length(plain, "bought 1 1/2 yd") == near(54 * 25.4));
    CHECK(plain.says("over: 3 in")); // the far end, and 2 in more than are needed
    CHECK(plain.lines("lay-end").size() == 1);
    check_legible(plain);
    purchase_rules<inch> washed = by_the_eighth;
    washed.change = shrinks_by(percent(10));
    const picture shrunk = drawn(washed, true);
    CHECK(drawn_length(shrunk, "bought 1 5/8 yd, washed 52 5/8 in") == near(52.65 * 25.4));
    CHECK(shrunk.says("length to buy 58 1/2 in, sold as 1 5/8 yd"));
    check_legible(shrunk);
    // Nothing is straightened, and what is laid is sold: 54 in of two eighths of a yard more than a yard.
    p = project<inch>("Bench cover", finished_size(30_in, 54_in));
    p.add({"cover", "drill", panel(p.finished())});
    const picture exact = drawn({.sold = eighths_of_a_yard<inch>});
    CHECK(exact.says("straightened end"));
    CHECK(exact.says("laid 54 in"));
    CHECK(exact.says("bought 1 1/2 yd"));
    CHECK_FALSE(exact.mentions("over: "));
    CHECK(exact.lines("lay-end").empty());
}

TEST_CASE("a remnant is drawn whole, its end marked and not trimmed") {
    project<inch> p("Peg bag", finished_size(12_in, 14_in));
    p.add({"front", "cotton", panel(p.finished())}).count(2);
    const auto cloths =
        cloths_for<inch>(sheet_of(p), {"cotton", {.width = 45_in}, by_the_eighth}, {{"scrap", "cotton", 26_in, 20_in}});
    REQUIRE(cloths.size() == 1);
    REQUIRE(cloths[0].on_hand);
    const picture drawn(page_of(cloths[0], inch_ruler(16), {}, {.across = 5_in, .along = 5_in}));
    check_places(drawn, cloths[0], 0_in);
    CHECK(drawn_length(drawn, "laid 14 in") == near(14 * 25.4));
    CHECK(drawn_length(drawn, "on hand 20 in") == near(20 * 25.4));
    CHECK(drawn.says("marked end"));
    CHECK(drawn.mentions("left over, to keep: 26 x 6 in"));
    check_legible(drawn);
}

// By hand: three mats of 70 in are 210 in long; with their ends 212, so 216 in are bought, 6 yd. On cloth 60 in wide that
// is three and a half times as long as it is wide.
TEST_CASE("a long lay is drawn in parts side by side, larger, and every part says where it begins") {
    project<inch> p("Cloche covers", finished_size(40_in, 70_in));
    p.add({"cover", "fleece", panel(p.finished())}).count(3);
    for (const cutting ways : {cutting::free, cutting::edge_to_edge}) {
        const auto c = cloth_for<inch>(sheet_of(p), "fleece", {.width = 60_in, .cutting = ways}, by_the_eighth);
        const picture drawn(page_of(c, inch_ruler(16)));
        const parts_drawn parts(drawn);
        CHECK(parts.count() == 2);
        CHECK(drawn.scale() <= 25); // 216 in are 5486 mm: at 1:40 137 mm, and no page has room for 219, at 1:25
        check_places(drawn, c);
        check_legible(drawn);
        // Half way, 108 in, no mat ends: none within a fifth of that. So 107 in from the straightened end it is parted.
        CHECK(drawn.says("107 in"));
        CHECK(drawn.says("from 107 in on"));
        CHECK(drawn.says("laid 210 in, bought 6 yd; drawn in 2 parts, side by side from the left"));
        CHECK(drawn.count("A: cover") == 3);
        CHECK(drawn.says("rest of A"));
        // In a document, where the part is narrower, the end's name is shorter.
        const drawing_options narrow{.on = paper::custom(15_cm, 17_cm), .for_screen = true, .in_document = true};
        const page small = page_of(c, inch_ruler(16), narrow);
        const auto says = [&](const char* words) {
            return std::any_of(small.words.begin(), small.words.end(),
                               [&](const page_words& w) { return w.text == words; });
        };
        CHECK(says("from 107 in on"));
        CHECK((says("trim 1 in off to straighten this end") || says("straightened end")));
    }
}

TEST_CASE("a long lay is parted between pieces where that is near") {
    project<inch> p("Cloche covers", finished_size(40_in, 35_in));
    p.add({"cover", "fleece", panel(p.finished())}).count(6);
    const auto c = cloth_for<inch>(sheet_of(p), "fleece", {.width = 60_in}, by_the_eighth);
    const picture drawn(page_of(c, inch_ruler(16)));
    REQUIRE(parts_drawn(drawn).count() == 2);
    check_places(drawn, c);
    CHECK(drawn.says("from 105 in on")); // three of 35 in
    CHECK(boxes(drawn, "piece").size() == 6);
    CHECK_FALSE(drawn.mentions("rest of"));
    check_legible(drawn);
    // One that is as wide as long stays whole.
    project<inch> square("Bench cover", finished_size(44_in, 50_in));
    square.add({"cover", "drill", panel(square.finished())});
    CHECK(parts_drawn(picture(page_of(cloth_for<inch>(sheet_of(square), "drill", {.width = 45_in}, by_the_eighth))))
              .count() == 1);
}

TEST_CASE("folded cloth is drawn double, its fold along the left edge") {
    project<inch> p("Two mats", finished_size(18_in, 20_in));
    p.add({"mat", "felt", panel(p.finished())}).count(2);
    const auto c =
        cloth_for<inch>(sheet_of(p), "felt", {.width = 45_in, .selvedge = "1/2"_in, .folded = true}, by_the_eighth);
    const picture drawn(page_of(c, inch_ruler(16)));
    check_places(drawn, c);
    CHECK(drawn.lines("selvedge").size() == 1);
    CHECK(drawn.says("half the width, folded: 22 1/2 in"));
    CHECK(drawn.says("usable width 22 in"));
    CHECK(drawn.says("A: mat, 18 x 20 in, 2 of them")); // cut through both layers, one place gives two
    CHECK(drawn.says("fold"));
    CHECK(drawn.mentions("left: fold"));
    CHECK(drawn.says("A: 0 in from the fold, 0 in from the end"));
}

TEST_CASE("pieces have letters, as many as it takes, and cuts numbers") {
    project<inch> p("Flags", finished_size(1_in, 1_in));
    for (int k = 0; k < 28; ++k)
        p.add({"flag " + std::to_string(k), "cotton", panel(finished_size(10_in, length_of<inch>(8 + k)))});
    const picture drawn(
        page_of(cloth_for<inch>(sheet_of(p), "cotton", {.width = 45_in}, by_the_eighth), inch_ruler(16)));
    CHECK(drawn.says("A: flag 0, 10 x 8 in"));
    CHECK(drawn.says("Z: flag 25, 10 x 33 in"));
    CHECK(drawn.says("AA: flag 26, 10 x 34 in"));
    CHECK(drawn.says("AB: flag 27, 10 x 35 in"));
    check_legible(drawn);
}

TEST_CASE("no two kinds of line are drawn alike, and none by colour alone") {
    const picture p(page_of(tidy(cutting::edge_to_edge), {}, {}, {.across = 4_in, .along = 4_in}));
    check_told_apart(p, {"cloth", "datum", "selvedge", "piece", "cutting", "left-over"});
}

TEST_CASE("lays of random projects are true and can be read, on either paper, down to pieces of an inch") {
    at_random::seeded<std::mt19937_64> random(20260712);
    const auto between = [&](std::int64_t low, std::int64_t high) {
        return std::uniform_int_distribution<std::int64_t>(low, high)(random);
    };
    for (const int round : random.cases(40)) {
        project<inch> p("Tidy for the shed at the far end", finished_size(1_in, 1_in));
        const std::int64_t kinds = between(1, 7), most = round % 4 == 0 ? 60 : 400;
        for (std::int64_t k = 0; k < kinds; ++k)
            p.add({"piece of kind " + std::to_string(k), "canvas",
                   panel(finished_size(length_of<inch>({between(16, most), 16}),
                                       length_of<inch>({between(16, most), 16})))})
                .count(between(1, 9));
        const auto c = cloth_for<inch>(
            sheet_of(p), "canvas",
            {.width = 36_in, .selvedge = "1/2"_in, .cutting = round % 3 == 0 ? cutting::free : cutting::edge_to_edge},
            by_the_eighth, {.lies = grain::may_turn, .effort = {.steps = 1000}});
        const picture drawn(page_of(c, {}, {.project = p.name(), .on = round % 2 == 0 ? paper::a4 : paper::letter},
                                    {.across = 3_in, .along = 3_in}));
        check_places(drawn, c);
        check_legible(drawn);
    }
}

TEST_CASE("a long list is counted, not crowded, and thousands of pieces are drawn all the same") {
    project<inch> p("Bunting", finished_size(2_in, 3_in));
    p.add({"flag", "cotton", panel(p.finished())}).count(3000);
    const auto c = cloth_for<inch>(sheet_of(p), "cotton", {.width = 45_in, .cutting = cutting::edge_to_edge},
                                   by_the_eighth, {.effort = {.steps = 1000}});
    const picture drawn(page_of(c, inch_ruler(16)));
    check_places(drawn, c);
    CHECK(drawn.says("A: flag, 2 x 3 in, 3000 of them"));
    CHECK(drawn.mentions(" more"));
    CHECK(drawn.words().size() < 400);
}

TEST_CASE("a flaw is crossed out where it is, as far as the cloth is drawn, and listed with the pieces") {
    sheet_cloth<inch> c = tidy(cutting::free);
    c.bolt.flaws = {{.from_left = 21_in, .from_end = 0_in, .across = 3_in, .along = 2_in},
                    {.from_left = 40_in, .from_end = 20_in, .across = 9_in, .along = 3_in},
                    {.from_left = 0_in, .from_end = 900_in, .across = 3_in, .along = 2_in}};
    c.lay = lay_out<inch>(c.pieces, c.bolt);
    c.bought = amount_to_buy(c.lay.length, by_the_eighth);
    const picture p(page_of(c, inch_ruler(16)));
    check_places(p, c);
    const auto flaws = boxes(p, "flaw");
    REQUIRE(flaws.size() == 2);
    const auto cloth = boxes(p, "cloth").at(0);
    CHECK((flaws[0].x - cloth.x) * p.scale() == near(mm(21_in)));
    CHECK(flaws[0].width * p.scale() == near(mm(3_in)));
    CHECK(flaws[0].height * p.scale() == near(mm(2_in)));
    CHECK(flaws[1].width * p.scale() == near(mm(5_in))); // it reaches beyond the edge of 45 in
    CHECK(p.lines("flaw").size() == 4);
    CHECK(p.says("flaw, 3 x 2 in: 21 in from the left edge, 0 in from the end"));
    CHECK(p.says("flaw, laid round"));
    CHECK_FALSE(p.mentions("900 in"));
    check_legible(p);
}
