// Orders of making that were published, kept by our steps: each "before" that is printed there is looked for here, by
// operation. Where the two differ a comment says why. The boxed cover, the lined bag and the zipper set into a seam, which
// are published too, are in seams_test.cpp.
#include "making/boxes.hpp"
#include "making/in_order.hpp"
#include <turncloth/making/executed.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/making/work_plan.hpp>

#include <doctest/doctest.h>

#include <vector>

using namespace things;

namespace {

using lengths = std::vector<length<inch>>;

finished_size<inch> size(length<inch> w, length<inch> h) { return {w, h}; }

/// The creases across all four corners, turned to the side that lies up where `over` says so.
std::vector<operation> fold_corners(making<inch>& d, cut_part on, length<inch> leg, bool over) {
    std::vector<operation> all;
    for (const edge upright : {edge::left, edge::right})
        for (const edge level : {edge::top, edge::bottom})
            all.push_back(d.add(crease<inch>{.across = corner_line<inch>{on, upright, level, leg}, .over = over}));
    return all;
}

/// Where each edge's operations begin, which finish_edge adds as an outer fold, an inner fold and a row.
struct edges_made {
    std::size_t folds, rows;
    operation outer(std::size_t edge) const { return crease_no(folds + 2 * edge); }
    operation inner(std::size_t edge) const { return crease_no(folds + 2 * edge + 1); }
    operation row(std::size_t edge) const { return row_no(rows + edge); }
};

template <class Measured>
bool every_fold_and_row(const making<inch>& d, Measured measured) {
    bool any = false, all = true;
    for (const auto& g : work_plan_of(d).groups)
        for (const auto& s : g.steps)
            for (const auto& p : s.places) {
                any |= s.verb == work_verb::sew;
                all &= measured(s, p);
            }
    return any && all;
}

} // namespace

// Common practice, a pad bound by its own outer with mitred corners (general how-to): the outer is pressed to the wadding's
// edges and pressed again over it; each corner is folded at 45 degrees; tucked under; stitched down. There all four edges
// are pressed before any corner is folded, and opened again for it: the folds mark where the corner's comes. Ours name a
// fold once, when it is turned for good, and what lies turned cannot be folded across any more, so a corner's comes first.
TEST_CASE("a pad that is bound by its outer with mitred corners is made in the published order") {
    making<inch> d("mat");
    const auto outer = cut_for(d, "outer", panel<inch>(size(20_in, 16_in), all_round(self_binding("1/2"_in, "1/8"_in))),
                               {.up = face::wrong});
    const auto wadding = cut_for(d, "wadding", panel<inch>(size(20_in, 16_in)));
    lay_inside(d, outer, {wadding});
    const auto corners = fold_corners(d, outer, 1_in, true);
    const edges_made edges{d.creases().size(), d.rows().size()};
    for (const edge e : {edge::left, edge::right, edge::top, edge::bottom})
        finish_edge(d, outer, e, {wadding});
    const order made(d);
    const operation laid = laying_no(1);
    for (const std::size_t e : {0U, 1U, 2U, 3U})
        CHECK(made.comes({edges.outer(e), edges.inner(e), edges.row(e)}));
    for (const std::size_t e : {0U, 1U, 2U, 3U})
        CHECK(made.comes({laid, edges.inner(e)}));
    // Left and right are the edges 0 and 1, top and bottom 2 and 3; corners go left top, left bottom, right top, right bottom.
    for (const std::size_t c : {0U, 1U, 2U, 3U}) {
        CHECK(made.comes({corners[c], edges.inner(c / 2), edges.row(c / 2)}));
        CHECK(made.comes({corners[c], edges.inner(2 + c % 2), edges.row(2 + c % 2)}));
    }
    CHECK(execute(d).faults.empty());
}

// Published, mitred hems in school sewing books (Hapgood, School Needlework, 1893; Woolman, A Sewing Course, exercise 5):
// creases pressed all round; the corner folded diagonally; pressed; the hem stitched. Of the creases the same holds as above.
TEST_CASE("a hem with mitred corners is made in the published order") {
    making<inch> d("mat");
    const auto mat =
        cut_for(d, "mat", panel<inch>(size(12_in, 9_in), all_round(double_turned_hem("1/4"_in, 1_in, "1/8"_in))));
    const auto corners = fold_corners(d, mat, "1 1/4"_in, false);
    const edges_made edges{d.creases().size(), 0};
    finish_edges(d, mat);
    const order made(d);
    for (const std::size_t e : {0U, 1U, 2U, 3U})
        CHECK(made.comes({edges.outer(e), edges.inner(e), edges.row(e)}));
    for (const std::size_t c : {0U, 1U, 2U, 3U})
        for (const std::size_t e : {c / 2, 2 + c % 2})
            CHECK(made.comes({corners[c], edges.outer(e), edges.row(e)}));
    CHECK(execute(d).faults.empty());
}

// Published, a flat fell (Ellesmere Guardian, 24 May 1935): a wide plain seam; both allowances pressed one way; the under one
// trimmed; the wide one turned over it; stitched down along the fold. In place of trimming one edge is set below the other
// before the seam (Hapgood, School Needlework, 1893, the straight-way fell), here by 1/4 in of 3/4. Nothing in where these
// lie says that the wide edge is turned before the other piece is opened out over it, so the maker of the design says it.
TEST_CASE("a flat fell is made in the published order, and its last row goes through what it encloses") {
    making<inch> d("apron");
    const auto one = d.cut({.name = "front", .width = 20_in, .height = 10_in}),
               other = d.cut({.name = "side", .width = 20_in, .height = 10_in});
    const auto laid = d.add(laying<inch>{.piece = other, .on = one, .up = face::wrong, .top = "1/4"_in});
    const auto plain = d.add(sewn(one, edge::top, "3/4"_in, {one, other})),
               fold = d.add(crease<inch>{.at = line(one, edge::top, "1/4"_in), .over = true}),
               open = d.add(crease<inch>{.at = line(other, edge::bottom, "9 1/2"_in), .over = true}),
               down = d.add(sewn(one, edge::top, "5/16"_in, {one, other}));
    d.add(before{plain, fold, "the wide edge is turned over the narrow one"});
    d.add(before{fold, open, "the fell is turned before the piece is opened out"});
    d.add(before{open, down, "the fell is stitched down to the piece"});
    CHECK(order(d).comes({laid, plain, fold, open, down}));
    const auto made = execute(d);
    CHECK(made.faults.empty());
    // By paper: front, side's edge, the front's turned edge, and the side opened out over them.
    REQUIRE(made.rows.size() == 2);
    CHECK(made.rows[0].most == 2);
    CHECK(made.rows[1].least == 4);
    CHECK(made.rows[1].most == 4);
    // Measured from the fold that lies in sight by then: 3/4 - 5/16 = 7/16 in.
    const auto plan = work_plan_of(d);
    const auto& last = plan.groups.back().steps.back().places[0];
    CHECK(last.across.at == lengths{"7/16"_in});
    CHECK(last.across.from == seen_edge{other, edge::top, true});
}

// Published, a school bag (Ontario Teachers' Manual, Household Science, sewing): straighten, measure, cut; sew the sides,
// leaving 3/4 in at the top; then hem it, and put the cords through. Bag 12 x 18 in. A piece is finished by itself before
// its seams in ours; that a hem goes on round over the seams is the maker's to say.
TEST_CASE("a bag whose hem goes round over its side seams is made in the published order") {
    making<inch> d("school bag");
    const auto bag = d.cut({.name = "bag", .width = 13_in, .height = "19 1/4"_in, .count = 2});
    std::vector<operation> seams, hem;
    const auto join = [&](edge a, edge b, length<inch> begins, length<inch> ends) {
        seams.push_back(d.add(seam_of<inch>{.one = {span(bag[0], a, "1/2"_in, begins, ends)},
                                            .other = {span(bag[1], b, "1/2"_in, begins, ends)},
                                            .beyond = beyond_seam::back}));
    };
    join(edge::left, edge::right, "3/4"_in, "18 3/4"_in);
    join(edge::right, edge::left, "3/4"_in, "18 3/4"_in);
    join(edge::bottom, edge::bottom, "1/2"_in, "12 1/2"_in);
    for (const std::int64_t k : {0, 1}) {
        hem.push_back(d.add(crease<inch>{.at = line(bag[k], edge::top, "3/4"_in)}));
        hem.push_back(d.add(sewn(bag[k], edge::top, "1 3/8"_in, {bag[k]})));
    }
    const order usual(d);
    CHECK(usual.comes({hem[1], seams[0]}));
    for (const operation& seam : seams)
        for (const operation& fold : {hem[0], hem[2]})
            d.add(before{seam, fold, "the hem goes round over the seams"});
    const order made(d);
    for (const operation& seam : seams)
        CHECK((made.comes({seam, hem[0], hem[1]}) && made.comes({seam, hem[2], hem[3]})));
}

// Published, a hanging with a heading (Stephenson, Cutting and Draping, 1905): the sides are felled 3/8 in, and the foot; the
// finished length is measured on the table from the foot, and the top folded there, 2 in; then two rows, at its edge and
// 1/2 in above. Ours turn the top before the foot, since the cloth is cut to its length and each is turned by what it allows:
// neither is measured from the other. Who measures the length on the table says so, and has it so.
TEST_CASE("a hanging with a heading is made in the published order") {
    making<inch> d("drape");
    const auto side = double_turned_hem("3/8"_in, "3/8"_in, "1/8"_in);
    const auto drape =
        cut_for(d, "drape", panel<inch>(size(24_in, 40_in), {single_turned_hem(2_in, "1/8"_in), side, side, side}));
    for (const edge e : {edge::left, edge::right, edge::bottom})
        finish_edge(d, drape, e);
    const edges_made sides{0, 0};
    finish_edge(d, drape, edge::top);
    const operation top = crease_no(6), lower = row_no(3),
                    upper = d.add(stitching<inch>{.along = drape.line(edge::top, at<cut_edge>("3 3/8"_in))});
    CHECK(drape.line(edge::top, at<finished_edge>("1 3/8"_in)).in == at<cut_edge>("3 3/8"_in)); // 2 - 1/8 - 1/2
    const order usual(d);
    for (const std::size_t e : {0U, 1U})
        CHECK(usual.comes({sides.outer(e), sides.inner(e), sides.row(e), top}));
    CHECK((usual.comes({top, lower}) && usual.comes({top, upper})));
    CHECK(usual.comes({top, sides.outer(2)}));
    d.add(before{sides.row(2), top, "the length is measured from the foot"});
    CHECK(order(d).comes({sides.outer(2), sides.inner(2), sides.row(2), top, lower}));
    CHECK(execute(d).faults.empty());
}

// Published, a hem in canvas (US Army FM 10-16, p. 8-3): face down; a line 1 in from the raw edge, the edge folded to it,
// which turns 1/2 in; a line 2 in from the fold, folded to it, which turns 1 in; stitched 1/8 in from the fold inside. Each is
// measured from an edge in sight at that moment, and so are ours; the row from the outer fold, 1 - 1/8 in, which lies up.
TEST_CASE("a hem in canvas is made in the published order, each mark from an edge in sight") {
    making<inch> d("cover");
    const auto cover =
        cut_for(d, "cover", panel<inch>(size(40_in, 30_in), {{}, {}, double_turned_hem("1/2"_in, 1_in, "1/8"_in), {}}),
                {.up = face::wrong});
    d.add(laying<inch>{.piece = cover, .up = face::wrong});
    finish_edge(d, cover, edge::bottom);
    CHECK(order(d).comes({crease_no(0), crease_no(1), row_no(0)}));
    lengths turned, sewn;
    CHECK(every_fold_and_row(d, [&](const work_step<inch>& s, const work_place<inch>& p) {
        if (s.verb == work_verb::sew)
            sewn.insert(sewn.end(), p.across.at.begin(), p.across.at.end());
        else
            turned.push_back(p.turned);
        return s.up == face::wrong &&
               p.across.from == seen_edge{cover, edge::bottom, !turned.empty() && turned.size() + sewn.size() > 1};
    }));
    CHECK(turned == lengths{"1/2"_in, 1_in});
    CHECK(sewn == lengths{"7/8"_in});
}
