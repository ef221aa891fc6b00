// Proof by folding: for every finish and every corner the folded panel has the outline that was asked for, the hems
// of a mitre meet, nothing shows past the hems, and as many layers lie at each spot as on paper folded point by point.
#include "measure/against_gmp.hpp"
#include "panel/paper.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/panel/made_up.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <vector>

using namespace turncloth;
using namespace turncloth::literals;
using paper_folding::sheet;

namespace {

/// A finish of the trade with lengths in eighths of an inch, and its creases, worked out here from what the makers do.
struct sample {
    finish<inch> made;
    std::vector<fraction> creases; ///< from the cut edge, in order, a seam's allowance turned back at its stitching
    bool is_turned;
};

sample any_finish(against_gmp::sampler& any) {
    const fraction d = {any.between(2, 12), 8}, t = d * fraction(any.between(1, 4), 4);
    const auto l = [](fraction x) { return length_of<inch>(x); };
    const fraction inset = d / 8;
    switch (any.between(0, 11)) {
    case 0:
        return {finish<inch>(), {}, false};
    case 1:
        return {seam(l(d)), {d}, false};
    case 2:
        return {single_turned_hem(l(d), l(inset)), {d}, true};
    case 3:
        return {double_turned_hem(l(t), l(d), l(inset)), {t, t + d}, true};
    case 4:
        return {heading(l(d), l(t)), {t, t + d}, true};
    case 5:
        return {casing(l(d), l(d / 2), l(t), l(inset)), {t, t + d}, true};
    case 6:
        return {self_binding(l(d), l(inset)), {d, 2 * d}, true};
    case 7:
        return {separate_binding(l(d)), {}, false};
    case 8:
        return {french_seam(l(d / 2), l(d)), {d / 2, d / 2 + d}, false};
    case 9:
        return {felled_over(l(d), l(t)), {t, t + d}, false};
    case 10:
        return {felled_under(l(d)), {d}, false};
    default:
        return {lapped_over(l(t)), {t}, true};
    }
}

sample any_turned_finish(against_gmp::sampler& any) {
    for (;;)
        if (const sample s = any_finish(any); s.is_turned)
            return s;
}

/// How many layers lie `in` from the finished edge, folded at `creases` measured from a cut edge that lies `allowance`
/// outside: 1, and one more for each turn that reaches so far. Along one line only, so that it needs no geometry.
std::size_t layers_across(const std::vector<fraction>& creases, fraction allowance, fraction in) {
    // The strip between crease i - 1 and crease i is turned n - i times: fold its ends one after the other.
    std::size_t layers = 1;
    for (std::size_t i = 0; i < creases.size(); ++i) {
        fraction a = i == 0 ? fraction(0) : creases[i - 1], b = creases[i];
        for (std::size_t later = i; later < creases.size(); ++later) {
            a = 2 * creases[later] - a;
            b = 2 * creases[later] - b;
        }
        const fraction spot = allowance + in;
        layers += (a < spot) != (b < spot) ? 1 : 0;
    }
    return layers;
}

struct four {
    sample top, right, bottom, left;

    edges<inch> all() const { return {top.made, right.made, bottom.made, left.made}; }
};

line<inch> upright(fraction x, bool up) {
    return up ? line<inch>{point_of<inch>(x, 0), point_of<inch>(x, 1)}
              : line<inch>{point_of<inch>(x, 1), point_of<inch>(x, 0)};
}
line<inch> level(fraction y, bool rightward) {
    return rightward ? line<inch>{point_of<inch>(0, y), point_of<inch>(1, y)}
                     : line<inch>{point_of<inch>(1, y), point_of<inch>(0, y)};
}

/// Paper of the panel's cut size, folded along the samples' own creases.
sheet paper_of(const cut_size<inch>& cut) {
    const fraction w = cut.width().value(), h = cut.height().value();
    return sheet(polygon<inch>{point_of<inch>(0, 0), point_of<inch>(w, 0), point_of<inch>(w, h), point_of<inch>(0, h)});
}
void turn_all(sheet& paper, const four& s, const cut_size<inch>& cut) {
    for (const fraction& x : s.left.creases)
        paper.fold(upright(x, true));
    for (const fraction& x : s.right.creases)
        paper.fold(upright(cut.width().value() - x, false));
    for (const fraction& y : s.bottom.creases)
        paper.fold(level(y, false));
    for (const fraction& y : s.top.creases)
        paper.fold(level(cut.height().value() - y, true));
}

/// A size with ample room, on a scale of sixteenths.
finished_size<inch> any_size(against_gmp::sampler& any) {
    return {length_of<inch>({any.between(16 * 12, 16 * 40), 16}), length_of<inch>({any.between(16 * 12, 16 * 40), 16})};
}

/// A distance that no crease has.
fraction any_distance(against_gmp::sampler& any, fraction most) { return fraction(any.between(1, 1008), 1009) * most; }

place<finished_edge, inch> in_from_edge(fraction x) { return at<finished_edge>(length_of<inch>(x)); }

} // namespace

TEST_CASE("stacked corners: any four finishes of the trade fold to the finished size, layers multiply") {
    against_gmp::sampler any(7);
    while (any.another_of(3000)) {
        const four s{any_finish(any), any_finish(any), any_finish(any), any_finish(any)};
        const panel piece(any_size(any), s.all());
        const auto folded = fold_panel(piece, all_corners(stacked<inch>()));
        const folding_proof shown = folded.proof();
        REQUIRE(shown.outline);
        REQUIRE(shown.cloth);
        REQUIRE(shown.hems);
        const auto outline = folded.outline();
        REQUIRE(outline[2].x - outline[0].x == piece.finished().width());
        REQUIRE(outline[2].y - outline[0].y == piece.finished().height());
        for (int i = 0; i < 5; ++i) {
            const fraction w = piece.finished().width().value(), h = piece.finished().height().value();
            // Mostly near an edge, where the layers are.
            const fraction x = i % 2 == 0 ? any_distance(any, 3) : w - any_distance(any, 3),
                           y = i % 4 < 2 ? any_distance(any, 3) : h - any_distance(any, 3);
            const std::size_t expected = (layers_across(s.left.creases, s.left.made.allowance().value(), x) +
                                          layers_across(s.right.creases, s.right.made.allowance().value(), w - x) - 1) *
                                         (layers_across(s.bottom.creases, s.bottom.made.allowance().value(), y) +
                                          layers_across(s.top.creases, s.top.made.allowance().value(), h - y) - 1);
            REQUIRE(folded.layers_at(in_from_edge(x), in_from_edge(y)) == expected);
        }
    }
}

TEST_CASE("mitred corners of equal hems: every proof holds, and the layers are those of paper") {
    against_gmp::sampler any(8);
    while (any.another_of(1500)) {
        const sample hem = any_turned_finish(any);
        const four s{hem, hem, hem, hem};
        const panel piece(any_size(any), all_round(hem.made));
        const bool trims = any.bits() % 2 != 0;
        const auto allowance = length_of<inch>(hem.made.reach().value() / fraction(any.between(3, 9)));
        const auto way = trims ? mitred(allowance, "1/64"_in) : mitred<inch>();
        const auto folded = fold_panel(piece, all_corners(way));
        const folding_proof shown = folded.proof();
        REQUIRE(shown.outline);
        REQUIRE(shown.mitres);
        REQUIRE(shown.cloth);
        // Untrimmed, the corner of a hem turned twice shows past it by its first turn (geometry: it lies at 2 (t + d)
        // from the cut edges, the hem's inner edge at t + 2 d).
        REQUIRE(shown.hems == (trims || hem.creases.size() == 1));

        sheet paper = paper_of(piece.cut());
        const fraction w = piece.cut().width().value(), h = piece.cut().height().value(),
                       c = 2 * hem.made.allowance().value();
        if (trims) {
            const fraction leg = mitre<inch>(hem.made, hem.made).trim(allowance, "1/64"_in).along_level.value();
            paper.trim(line<inch>{point_of<inch>(leg, 0), point_of<inch>(0, leg)});
            paper.trim(line<inch>{point_of<inch>(w, leg), point_of<inch>(w - leg, 0)});
            paper.trim(line<inch>{point_of<inch>(w - leg, h), point_of<inch>(w, h - leg)});
            paper.trim(line<inch>{point_of<inch>(0, h - leg), point_of<inch>(leg, h)});
            REQUIRE(folded.stack().trimmed_area().value() == 2 * leg * leg); // four triangles
        }
        paper.fold(line<inch>{point_of<inch>(c, 0), point_of<inch>(0, c)});
        paper.fold(line<inch>{point_of<inch>(w, c), point_of<inch>(w - c, 0)});
        paper.fold(line<inch>{point_of<inch>(w - c, h), point_of<inch>(w, h - c)});
        paper.fold(line<inch>{point_of<inch>(0, h - c), point_of<inch>(c, h)});
        turn_all(paper, s, piece.cut());
        for (int i = 0; i < 4; ++i) {
            const fraction x = any_distance(any, 3), y = any_distance(any, 3) + fraction(1, 1013),
                           cut_off = hem.made.allowance().value();
            const std::size_t expected = paper.layers_at(sheet::exact(point_of<inch>(cut_off + x, cut_off + y)));
            REQUIRE(folded.layers_at(in_from_edge(x), in_from_edge(y)) == expected);
            const fraction right = piece.finished().width().value() - x, top = piece.finished().height().value() - y;
            REQUIRE(folded.layers_at(in_from_edge(right), in_from_edge(top)) == expected);
        }
    }
}

TEST_CASE("mitred corners of unequal hems: every proof holds in fractions and again in doubles") {
    against_gmp::sampler any(9);
    while (any.another_of(1500)) {
        const four s{any_turned_finish(any), any_turned_finish(any), any_turned_finish(any), any_turned_finish(any)};
        const panel piece(finished_size(length_of<inch>(any.between(40, 90)), length_of<inch>(any.between(40, 90))),
                          s.all());
        const auto ways = all_corners(mitred("1/16"_in, "1/64"_in));
        const folding_proof shown = fold_panel(piece, ways).proof();
        REQUIRE(shown.outline);
        REQUIRE(shown.mitres);
        REQUIRE(shown.hems);
        REQUIRE(shown.cloth);
        const auto in_doubles = fold_panel<double>(piece, ways);
        const folding_proof again = in_doubles.proof();
        REQUIRE(again.outline);
        REQUIRE(again.mitres);
        REQUIRE(again.hems);
        REQUIRE(again.cloth);
    }
}

TEST_CASE("lengths so awkward that fractions run out are folded in doubles") {
    const auto hem = [](fraction depth) { return single_turned_hem(length_of<inch>(depth)); };
    const edges<inch> awkward{hem({1009, 1013}), hem({2003, 1999}), hem({1543, 1531}), hem({877, 883})};
    const panel piece(finished_size(length_of<inch>({30011, 1009}), length_of<inch>({20011, 1013})), awkward);
    const auto ways = all_corners(mitred("1/4"_in, "1/16"_in));
    CHECK_THROWS_AS(fold_panel(piece, ways), overflow_error);
    const folding_proof shown = fold_panel<double>(piece, ways).proof();
    CHECK(shown.outline);
    CHECK(shown.mitres);
    CHECK(shown.hems);
    CHECK(shown.cloth);
}

TEST_CASE("a mitre in the wrong place is found out") {
    // Folded by hand with the crease a quarter inch too far in: the hems then leave a gap, and the corner is cut short.
    const auto hem = single_turned_hem(1_in);
    const panel piece(finished_size(8_in, 8_in), all_round(hem));
    const auto right = fold_panel(piece, all_corners(mitred<inch>()));
    REQUIRE(right.proof());
    folding<inch> wrong({point_of<inch>(0, 0), point_of<inch>(10, 0), point_of<inch>(10, 10), point_of<inch>(0, 10)});
    wrong.fold({point_of<inch>({9, 4}, 0), point_of<inch>(0, {9, 4})});
    wrong.fold(upright(1, true)).fold(level(1, false));
    CHECK(wrong.layers_at(point_of<inch>({101, 100}, {102, 100})) == 0); // nothing is left at the finished corner
    CHECK(right.layers_at(in_from_edge({1, 100}), in_from_edge({2, 100})) > 0);
}

TEST_CASE("hems meet where one lies on each side of the mitre's line, and not where one is missing or short") {
    const auto square = [] {
        return folding<inch>(
            {point_of<inch>(0, 0), point_of<inch>(10, 0), point_of<inch>(10, 10), point_of<inch>(0, 10)});
    };
    const line<inch> crease{point_of<inch>(2, 0), point_of<inch>(0, 2)};
    folding<inch> cloth = square();
    cloth.fold(crease).fold(upright(1, true));
    CHECK_FALSE(detail::meet_along(cloth, point_of<inch>(1, 1), point_of<inch>(2, 2)));
    cloth.fold(level(1, false));
    CHECK(detail::meet_along(cloth, point_of<inch>(1, 1), point_of<inch>(2, 2)));
    folding<inch> short_hem = square();
    short_hem.fold(crease).fold(upright(1, true)).fold(level({3, 4}, false));
    CHECK_FALSE(detail::meet_along(short_hem, point_of<inch>(1, 1), point_of<inch>(2, 2)));
}

TEST_CASE("a finish that does not do what it says is found out by folding") {
    const auto stack = all_corners(stacked<inch>());
    // It turns 1 in and says that only 1/2 in lies over the piece.
    const auto shallow = finish<inch>("says too little").allows(1_in).folds_at(1_in).reaches("1/2"_in);
    const edges<inch> one_shallow{finish<inch>(), shallow, finish<inch>(), finish<inch>()};
    const folding_proof hems = fold_panel(panel(finished_size(8_in, 6_in), one_shallow), stack).proof();
    CHECK(hems.outline);
    CHECK_FALSE(hems.hems);
    CHECK_FALSE(hems);
    // Its creases are in the wrong order: once folded at 2 in, nothing is left to fold at 1 in.
    const auto reversed = finish<inch>("reversed").allows(1_in).folds_at(2_in).folds_at(1_in).reaches(1_in);
    const edges<inch> one_reversed{finish<inch>(), finish<inch>(), reversed, finish<inch>()};
    CHECK_FALSE(fold_panel(panel(finished_size(8_in, 6_in), one_reversed), stack).proof().outline);
}

TEST_CASE("worked: a kneeling pad's cover, self-bound with mitred corners") {
    // Common practice: 1 in beyond the inner layers turned as two folds of 1/2 in.
    const auto cover = self_bound(finished_size(18_in, 11_in), "1/2"_in, "1/16"_in).outer;
    CHECK(cover.cut() == cut_size(20_in, 13_in));
    const auto folded = fold_panel(cover, all_corners(mitred("1/4"_in, "1/16"_in)));
    CHECK(folded.proof());
    CHECK(folded.layers_at(in_from_edge(9), in_from_edge({11, 2})) == 1);
    CHECK(folded.layers_at(in_from_edge(9), in_from_edge({1, 4})) == 3); // through the binding
    // Stitching 1/16 in within the inner edge of the binding goes through three layers, and five where the corner's
    // allowance is folded in (three and the two layers of the other binding's mitre).
    CHECK(folded.most_layers_in_row(edge::bottom, cover.finish_of(edge::bottom).stitching()[0]).layers >= 3);
    const auto square = fold_panel(cover, all_corners(stacked<inch>()));
    CHECK(square.proof());
    CHECK(square.layers_at(in_from_edge({1, 4}), in_from_edge({1, 4})) == 9); // 3 x 3
    CHECK(square.stack().most_layers().layers == 9);
    CHECK(folded.stack().most_layers().layers < 9);
    CHECK(square.most_layers_in_row(edge::left, cover.finish_of(edge::left).stitching()[0]).layers == 9);
}

TEST_CASE("a turn of cloth lies half of it beyond the finished edge, and mitres meet all the same") {
    against_gmp::sampler any(10);
    while (any.another_of(300)) {
        const auto width = length_of<centimetre>({any.between(5, 40), 10}),
                   turn = length_of<centimetre>({any.between(1, 20), 20});
        const panel piece(finished_size(30_cm, 40_cm), all_round(self_binding(width, 0_cm, turn)));
        const auto folded = fold_panel(piece, all_corners(mitred(width / 4, 0.1_cm)));
        REQUIRE(folded.proof());
        REQUIRE(folded.outline()[2].x - folded.outline()[0].x == 30_cm + turn);
        // The binding still ends `width` inward of the finished edge.
        const auto just = length_of<centimetre>({1, 1000});
        const auto middle = at<finished_edge>(15_cm);
        REQUIRE(folded.layers_at(middle, at<finished_edge>(width - just)) == 3);
        REQUIRE(folded.layers_at(middle, at<finished_edge>(width + just)) == 1);
    }
}

TEST_CASE("allowances left flat lie beyond the finished edge") {
    const panel strip(
        finished_size(10_in, 6_in),
        edges<inch>{seam("1/2"_in), lapped_under("3/4"_in), felled_over("1/2"_in, "1/4"_in), single_turned_hem(1_in)});
    const auto pressed = fold_panel(strip, all_corners(stacked<inch>()));
    const auto flat = fold_panel(strip, all_corners(stacked<inch>()), lie_of_allowances::left_flat);
    CHECK(pressed.proof());
    CHECK(flat.proof().outline);
    CHECK(flat.proof().cloth);
    CHECK(pressed.outline()[2].y - pressed.outline()[0].y == 6_in);
    CHECK(flat.outline()[2].y - flat.outline()[0].y == 7_in); // 6 and the two halves, 1/4 turned under already
    CHECK(flat.outline()[2].x - flat.outline()[0].x == "10 3/4"_in);
    CHECK(flat.layers_at(in_from_edge(5), in_from_edge({-3, 8})) == 2); // the over side of the fell, turned under
    CHECK(flat.layers_at(in_from_edge({43, 4}), in_from_edge(3)) == 1);
}

TEST_CASE("one corner may be mitred and another stacked") {
    const panel piece(finished_size(9_in, 7_in), all_round(double_turned_hem("1/4"_in, "1/2"_in)));
    const auto way = mitred("1/8"_in, "1/32"_in);
    const auto folded = fold_panel(piece, corners<inch>{way, stacked<inch>(), way, stacked<inch>()});
    CHECK(folded.proof());
    CHECK(folded.layers_at(in_from_edge({1, 3}), in_from_edge({1, 4})) == 9);                         // bottom left
    CHECK(folded.layers_at(in_from_edge(9 - fraction(1, 3)), in_from_edge(7 - fraction(1, 4))) == 9); // top right
    CHECK(folded.layers_at(in_from_edge({1, 3}), in_from_edge(7 - fraction(1, 4))) < 9);
}

TEST_CASE("mitres that have no room or no turned cloth are refused") {
    const auto hem = double_turned_hem("1/2"_in, 1_in);
    CHECK_THROWS_WITH_AS(
        fold_panel(panel(finished_size("2 1/2"_in, 9_in), all_round(hem)), all_corners(mitred<inch>())),
        "the mitres of the top edge take up 6 in of it, and it is cut 5 1/2 in long", corner_error);
    CHECK_THROWS_WITH_AS(
        fold_panel(panel(finished_size(9_in, "2 1/2"_in), all_round(hem)), all_corners(mitred<inch>())),
        "the mitres of the left edge take up 6 in of it, and it is cut 5 1/2 in long", corner_error);
    CHECK_THROWS_AS(
        fold_panel(panel(finished_size(9_in, 9_in), all_round(seam("1/2"_in))), all_corners(mitred<inch>())),
        corner_error);
    CHECK_THROWS_AS(fold_panel(panel(finished_size(9_in, 9_in)), all_corners(mitred<inch>())), corner_error);
    // Very unequal hems throw one untrimmed corner over the next one's crease, unless the piece is large or is trimmed.
    const edges<inch> uneven{single_turned_hem("1/4"_in), single_turned_hem("1/2"_in), single_turned_hem(3_in),
                             single_turned_hem(3_in)};
    const panel small(finished_size(4_in, 7_in), uneven);
    CHECK_THROWS_WITH_AS(fold_panel(small, all_corners(mitred<inch>())),
                         "the corners of this piece, folded across, lie over one another: trim them, or stack them, or "
                         "make its hems less unequal",
                         corner_error);
    CHECK(fold_panel(small, all_corners(mitred("1/8"_in, "1/16"_in))).proof().mitres);
    CHECK(fold_panel(panel(finished_size(10_in, 7_in), uneven), all_corners(mitred<inch>())).proof().mitres);
}
