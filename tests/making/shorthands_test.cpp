// What a designer names expands into the public operations: the same things built both ways come out the same.
#include "at_random.hpp"
#include "making/left_out.hpp"
#include "making/outcome.hpp"
#include "making/things.hpp"
#include <turncloth/making/binding_strips.hpp>
#include <turncloth/making/fastenings.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/making/lying.hpp>
#include <turncloth/making/strip_pockets.hpp>
#include <turncloth/making/zippers_over.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

using namespace things;

namespace {

finished_size<inch> size(length<inch> w, length<inch> h) { return {w, h}; }

/// things::tool_roll by shorthands.
making<inch> roll_by_shorthands() {
    making<inch> d("tool roll");
    d.lips("1/4"_in);
    const panel<inch> inside(size(20_in, 16_in), {});
    const auto outer = cut_for(d, "outer", panel<inch>(size(20_in, 16_in), all_round(self_binding("1/2"_in, "1/8"_in))),
                               {.up = face::wrong});
    const auto wadding = cut_for(d, "wadding", inside), back = cut_for(d, "back", inside),
               lining = cut_for(d, "lining", inside);
    const auto tools = cut_for(
        d, "tools", panel<inch>(size(20_in, 8_in), {double_turned_hem("3/8"_in, "5/8"_in, "1/8"_in), {}, {}, {}}));

    lay_inside(d, outer, {wadding, back, lining});
    lay_on(d, tools, lining, {}, at<finished_edge>(8_in));
    finish_edge(d, tools, edge::top);
    const auto z = sew_zippers<inch>(d, {.on = lining,
                                         .centres = {at<cut_edge>("1 3/4"_in), at<cut_edge>(4_in)},
                                         .begins = "1 1/2"_in,
                                         .opening = 17_in,
                                         .beyond = "1/2"_in,
                                         .rows = "1/2"_in,
                                         .slit = "1/4"_in});
    const length<inch> step = 19_in / 6;
    stitching<inch> dividers{.along = tools.line(edge::left, at<cut_edge>(1_in)), .through = {tools, lining}};
    dividers.each = row<cut_edge, inch>(at<cut_edge>("1/2"_in + step), step, 5);
    d.add(dividers);
    const mouth_handle top =
        d.add(mouth<inch>{.name = "top of the tools", .at = {tools.line(edge::top, at<finished_edge>(0_in))}});
    d.add(tool_pockets(lining, tools, top));
    finish_edge(d, outer, edge::top, {wadding, back, lining});
    for (const edge e : {edge::left, edge::right, edge::bottom})
        finish_edge(d, outer, e, {wadding, back, lining, tools});
    for (const length<inch>& down : {"7 3/4"_in, 3_in})
        d.add(stitching<inch>{.along = lining.line(edge::top, at<finished_edge>(down)), .through = {lining, back}});
    return d;
}

/// things::organiser by shorthands.
making<inch> organiser_by_shorthands(std::int64_t strips) {
    making<inch> d("organiser");
    d.lips("1/4"_in);
    const auto hem = double_turned_hem("3/8"_in, "3/4"_in, "1/8"_in);
    const auto backing = cut_for(
        d, "backing",
        panel<inch>(size(20_in, 8_in * strips + 2_in), {heading("2 1/2"_in, "1/2"_in, "1/8"_in), hem, hem, hem}));
    const auto turned = single_turned_hem("1/2"_in, "1/8"_in);
    const auto film = cut_for(d, "film", panel<inch>(size("22 5/8"_in, 4_in), {turned, turned, seam("3/8"_in), turned}),
                              {.cloth = {.name = "clear film", .frays = false, .film = true}, .count = strips});
    finish_edges(d, backing);
    std::vector<place<finished_edge, inch>> feet;
    for (std::int64_t k = 1; k <= strips; ++k)
        feet.push_back(at<finished_edge>(8_in * k));
    const length<inch> step = "19 3/4"_in / 3;
    const auto tops = sew_strips<inch>(d, {.strip = film,
                                           .on = backing,
                                           .feet = feet,
                                           .span = 20_in,
                                           .columns = 3,
                                           .sides = {{at<finished_edge>("1/8"_in), step, 4}}});
    for (std::int64_t k = 0; k < strips; ++k)
        d.add(compartment<inch>{.name = "packets " + std::to_string(k + 1),
                                .between = {backing, film[k]},
                                .from_left = 4_in,
                                .from_top = organiser::below(8_in * (k + 1)) - 1_in,
                                .mouths = {tops[static_cast<std::size_t>(k)]},
                                .least_width = 6_in,
                                .least_height = 4_in,
                                .count = 3,
                                .step = step});
    set_eyelets<inch>(
        d, backing, {.along = {3, 1_in, "2 3/8"_in, 6_in}, .down = at<finished_edge>(1_in), .each = {"3/8"_in, 1_in}});
    return d;
}

} // namespace

TEST_CASE("the tool roll by shorthands is the tool roll from the operations alone") {
    CHECK(outcome_of(roll_by_shorthands()) == outcome_of(tool_roll(true).design));
}

TEST_CASE("the organiser by shorthands is the organiser from the operations alone") {
    CHECK(outcome_of(organiser_by_shorthands(1)) == outcome_of(organiser(1).design));
    CHECK(outcome_of(organiser_by_shorthands(3)) == outcome_of(organiser(3).design));
}

// By paper: a panel turned by its own finishes lies as large as it was to finish, whichever face lies up.
TEST_CASE("a piece that is finished measures what its panel is to finish at") {
    at_random::sampler random(61);
    while (random.another_of(200)) {
        const auto any_finish = [&]() -> finish<inch> {
            const length<inch> depth = random.inches(1) + "1/2"_in;
            switch (random.between(0, 3)) {
            case 0:
                return single_turned_hem(depth, depth / 4);
            case 1:
                return double_turned_hem(depth / 2, depth, depth / 4);
            case 2:
                return self_binding(depth, depth / 4);
            default:
                return {};
            }
        };
        const panel<inch> shape(size(random.inches(30) + 10_in, random.inches(30) + 10_in),
                                {any_finish(), any_finish(), any_finish(), any_finish()});
        making<inch> d("piece");
        const auto piece = cut_for(d, "piece", shape, {.up = random.between(0, 1) == 0 ? face::right : face::wrong});
        if (piece.up == face::wrong)
            d.add(laying<inch>{.piece = piece, .up = face::wrong});
        finish_edges(d, piece);
        const auto made = execute(d);
        CHECK(made.faults.empty());
        const auto lies = lying_after(d, made.steps, made.steps.size(), piece);
        CHECK(lies.width == shape.finished().width());
        CHECK(lies.height == shape.finished().height());
        std::size_t rows = 0;
        for (const edge e : {edge::left, edge::right, edge::top, edge::bottom}) {
            const finish<inch>& f = shape.finish_of(e);
            rows += f.stitching().size();
        }
        CHECK(made.rows.size() == rows);
        for (const auto& r : made.rows)
            CHECK(r.least >= 2); // the piece and what is turned of it
    }
}

TEST_CASE("a piece laid by its finished edges lies where they say, face to face too") {
    for (const face up : {face::right, face::wrong}) {
        making<inch> d("mat");
        const auto mat =
            cut_for(d, "mat", panel<inch>(size(20_in, 10_in), all_round(single_turned_hem(1_in, "1/4"_in))));
        const auto pocket =
            cut_for(d, "pocket",
                    panel<inch>(size(6_in, 4_in),
                                {{}, single_turned_hem("1/2"_in, "1/8"_in), {}, single_turned_hem(1_in, "1/8"_in)}),
                    {.up = up});
        lay_on(d, pocket, mat, at<finished_edge>(3_in), at<finished_edge>(2_in));
        // Its right edge is turned 1/2 in and its left edge 1 in: panels list top, right, bottom, left.
        const length<inch> beside = up == face::right ? 1_in : "1/2"_in;
        CHECK(d.layings()[0].left == 1_in + 3_in - beside);
        CHECK(d.layings()[0].top == 1_in + 2_in);
    }
}

// Common practice: the edges of a pocket are turned under and pressed before it is laid on.
TEST_CASE("edges that a pocket is sewn on by are folded before it is laid on") {
    const auto turned = single_turned_hem("1/2"_in, "1/8"_in);
    making<inch> d("cloth");
    const auto cloth = cut_for(d, "cloth", panel<inch>(size(12_in, 16_in)));
    const auto pocket = cut_for(d, "pocket", panel<inch>(size(8_in, 9_in), all_round(turned)));
    const operation laid = lay_on(d, pocket, cloth, at<finished_edge>(2_in), at<finished_edge>(5_in));
    sew_on(d, pocket, cloth, {edge::left, edge::right, edge::bottom}, "1/8"_in);
    finish_edge(d, pocket, edge::top);
    for (const edge e : {edge::left, edge::right, edge::bottom})
        fold_edge(d, pocket, e);
    std::size_t folds = 0;
    for (const making_step& s : steps_of(d)) {
        if (s.what == laid)
            break;
        folds += s.what.kind == operation_kind::crease ? 1 : 0;
    }
    CHECK(folds == 4);
}

TEST_CASE("strips and feet that are not of one number are refused, and a zipper that opens nowhere") {
    making<inch> d("organiser");
    const auto backing = cut_for(d, "backing", panel<inch>(size(20_in, 20_in), {}));
    const auto film = cut_for(d, "film", panel<inch>(size(24_in, 4_in), {{}, {}, seam("1/2"_in), {}}), {.count = 2});
    try {
        sew_strips<inch>(d, {.strip = film, .on = backing, .feet = {at<finished_edge>(8_in)}, .span = 20_in});
        FAIL("one foot was taken for two strips");
    } catch (const making_error& e) {
        CHECK(e.facts().kind == fault::disagree);
        CHECK(e.facts().given->numerator == 1);
        CHECK(e.facts().least->numerator == 2);
    }
    CHECK_THROWS_AS(sew_zippers<inch>(d, {.on = backing, .centres = {at<cut_edge>(4_in)}}), size_error);
}

namespace {

const binding_strip<inch> mat_binding{
    .finished = "1/2"_in, .allowance = {.seam = "3/8"_in, .turn = "1/8"_in}, .inset = "1/16"_in, .turned_in = "3/4"_in};

/// A mat of 12 x 9 in, bound 1/2 in wide. By hand: strips 2 x 1/2 + 2 x 3/8 + 1/8 = 1 7/8 in wide, sewn 3/8 in from an edge
/// that lies 1/8 in inside the mat's; folded 15/16 in from it, at the mat's edge and half the turn; 3/8 in turned under at
/// the other edge. Those of the sides are 9 in long, the others 12 + 1/8 + 2 x 3/4 = 13 5/8 in.
class mat_by_hand {
public:
    making<inch> make() {
        const auto left = strip(", left", "1 7/8"_in, 9_in), right = strip(", right", "1 7/8"_in, 9_in);
        const auto on_left = bind(left, edge::left, "1/8"_in, {}, {left, mat_}),
                   on_right = bind(right, edge::right, 10_in, {}, {right, mat_});
        const auto on_top = over(", top", edge::top, "1/8"_in, "3/8"_in, {left, right}),
                   on_bottom = over(", bottom", edge::bottom, 7_in, 1_in, {left, right});
        const std::array all{on_left, on_right, on_top, on_bottom};
        for (std::size_t one = 0; one < 4; ++one)
            for (std::size_t next = one + 1; next < 4; ++next)
                for (const operation& first : all[one])
                    for (const operation& then : all[next])
                        d_.add(before{first, then});
        return std::move(d_);
    }

private:
    cut_part strip(const std::string& name, length<inch> width, length<inch> height) {
        return d_.cut({.name = "binding" + name, .width = width, .height = height});
    }
    void then(std::vector<operation>& steps, const operation& next) {
        for (const operation& first : steps)
            d_.add(before{first, next});
        steps.push_back(next);
    }
    /// Its ends turned in, and sewn shut by hand from where its binding begins.
    std::vector<operation> over(const std::string& name, edge e, length<inch> down, length<inch> begins,
                                const std::array<cut_part, 2>& sides) {
        const auto level = strip(name, "13 5/8"_in, "1 7/8"_in);
        std::vector<operation> steps;
        for (const edge end : {edge::left, edge::right})
            then(steps, d_.add(crease<inch>{.at = line(level, end, "3/4"_in)}));
        steps = bind(level, e, down, steps, {level, mat_, sides[0], sides[1]});
        for (const edge end : {edge::left, edge::right}) {
            stitching<inch> shut = sewn(level, end, "7/8"_in, {level, mat_, sides[end == edge::left ? 0 : 1]});
            shut.along.begins = begins;
            shut.along.ends = begins + "1/2"_in;
            shut.by_hand = true;
            then(steps, d_.add(shut));
        }
        return steps;
    }
    std::vector<operation> bind(cut_part strip, edge e, length<inch> off, std::vector<operation> steps,
                                const std::vector<cut_part>& walls) {
        const edge far = opposite(e);
        const bool level = is_level(e);
        then(steps, d_.add(crease<inch>{.at = line(strip, far, "3/8"_in)}));
        then(steps, d_.add(laying<inch>{.piece = strip,
                                        .on = mat_,
                                        .left = level ? "-13/16"_in : off,
                                        .top = level ? off : 0_in,
                                        .beneath = true}));
        then(steps, d_.add(sewn(strip, e, "3/8"_in, walls)));
        then(steps, d_.add(crease<inch>{.at = line(strip, far, "1 1/2"_in)}));
        then(steps, d_.add(crease<inch>{.at = line(strip, far, "15/16"_in), .over = true}));
        then(steps, d_.add(sewn(strip, e, "1 7/16"_in, walls)));
        return steps;
    }

    making<inch> d_{"mat"};
    cut_part mat_ = d_.cut({.name = "mat", .width = 12_in, .height = 9_in});
};

/// Of the mat itself, seen from above and from beneath when all is sewn.
std::pair<area<inch>, area<inch>> seen_of(const making<inch>& d, cut_part mat, const lying<inch>& lies) {
    std::pair<area<inch>, area<inch>> seen;
    for (const patch<inch>& p : lies.patches) {
        const area<inch> a = (p.right - p.left) * (p.lower[0] - p.upper[0]);
        seen.first += p.above.of == mat ? a : area<inch>();
        seen.second += p.below.of == mat ? a : area<inch>();
    }
    CHECK(execute(d).faults.empty());
    return seen;
}

} // namespace

TEST_CASE("a binding built by the shorthand is the binding built from the operations alone") {
    making<inch> d("mat");
    bind_all_round<inch>(d, cut_for(d, "mat", panel<inch>(size(12_in, 9_in), all_round(separate_binding("1/2"_in)))),
                         mat_binding);
    CHECK(execute(d).faults.empty());
    CHECK(outcome_of(d) == outcome_of(mat_by_hand().make()));
}

// Of a mat W x H, W - 2 w by H - 2 w is seen on either face; flat, its folds lie half the turn outside its edges.
TEST_CASE("a bound edge shows its width on both faces, covers all that is raw, and takes what the notion says") {
    at_random::sampler any(37);
    while (any.another_of(10)) {
        const length<inch> w = any.inches(1) + "1/2"_in, seam = w * fraction(any.between(2, 4), 4),
                           turn = any.inches(1) / 8, inset = seam / 4, width = any.inches(9) + 8_in,
                           height = any.inches(9) + 8_in;
        const binding_strip<inch> strip{.finished = w,
                                        .allowance = {.seam = seam, .turn = turn},
                                        .inset = inset,
                                        .turned_in = seam + turn,
                                        .doubled = any.between(0, 1) == 0};
        making<inch> d("mat");
        const auto mat = cut_for(d, "mat", panel<inch>(size(width, height), all_round(separate_binding(w))),
                                 {.up = any.between(0, 1) == 0 ? face::right : face::wrong});
        const auto lining = cut_for(d, "lining", panel<inch>(size(width, height)), {.up = opposite(mat.up)});
        d.add(laying<inch>{.piece = mat, .up = mat.up});
        d.add(laying<inch>{.piece = lining, .on = mat, .up = lining.up});
        const auto bound = bind_all_round<inch>(d, mat, strip, {lining});
        const auto lies = lying_after(d, steps_of(d), d.count_of(operation_kind::crease) * 100, mat);
        CHECK(lies.width == width + turn);
        CHECK(lies.height == height + turn);
        const auto [above, below] = seen_of(d, mat, lies);
        CHECK(below == (width - w * 2) * (height - w * 2));
        CHECK(above == area<inch>()); // the lining lies over it
        CHECK(execute(d).raw_edges.empty());
        length<inch> all;
        for (const auto& b : bound) {
            const part<inch>& cut = d.parts()[b.strip.index];
            CHECK((cut.width == strip.width().value() || cut.height == strip.width().value()));
            all += cut.width + cut.height - strip.width().value();
        }
        CHECK(all == length_of_strips(size(width, height), strip).value());
    }
}

// By paper: without its first row a strip slips off as it is brought over the edge; without its last, or that across an
// end, raw cloth stays loose. Two rows to a strip and one to each end of two: 4 x 2 + 2 x 2.
TEST_CASE("each row of a binding is missed when it is left out") {
    const making<inch> d = mat_by_hand().make();
    CHECK(execute(d).raw_edges.empty());
    CHECK(execute(d).faults.empty());
    REQUIRE(d.rows().size() == 12);
    for (std::size_t left_out = 0; left_out < 12; ++left_out) {
        const auto made = execute(without_row(d, left_out, 0));
        CHECK_MESSAGE(!(made.faults.empty() && made.raw_edges.empty()),
                      described(d, {operation_kind::stitching, left_out}));
    }
    const auto faults = execute(without_row(d, 0, 0)).faults;
    REQUIRE(!faults.empty());
    CHECK(faults[0].sentence ==
          "the crease on binding, left, 1 1/2 in from its right edge turns it where it lies, and no "
          "row holds it to mat yet");
    CHECK(faults[0].facts.kind == fault::missing);
    CHECK(faults[0].facts.what == "a row");
    CHECK(faults[0].facts.where == "binding, left");
}

// A patch sewn to a strip before that is laid holds it to nothing; sewn through to what the strip lies on, it does.
TEST_CASE("a piece is held where it lies by what joins it to that, through a third piece too") {
    for (const bool through_all : {false, true}) {
        making<inch> d("mat");
        const auto mat = d.cut({.name = "mat", .width = 12_in, .height = 9_in}),
                   strip = d.cut({.name = "strip", .width = 6_in, .height = 4_in}),
                   patch = d.cut({.name = "patch", .width = 2_in, .height = 1_in});
        d.add(laying<inch>{.piece = strip, .on = mat, .left = 3_in, .top = 2_in});
        d.add(laying<inch>{.piece = patch, .on = strip, .left = 2_in, .top = 3_in});
        std::vector<operation> sewn = {d.add(stitching<inch>{.along = line(patch, edge::left, "1/8"_in), //
                                                             .through = {patch, strip}})};
        if (through_all)
            sewn.push_back(
                d.add(stitching<inch>{.along = line(patch, edge::right, "1/8"_in), .through = {patch, strip, mat}}));
        const operation fold = d.add(crease<inch>{.at = line(strip, edge::top, 1_in), .over = true});
        for (const operation& row : sewn)
            d.add(before{row, fold});
        const auto faults = execute(d).faults;
        CHECK(faults.size() == (through_all ? 0U : 1U));
        for (const making_fault& f : faults)
            CHECK(f.sentence ==
                  "the crease on strip, 1 in from its top edge turns it where it lies, and no row holds it to mat yet");
    }
}

TEST_CASE("a binding that cannot be turned is refused with its figures") {
    making<inch> d("mat");
    const auto mat = cut_for(d, "mat", panel<inch>(size(12_in, 9_in)));
    auto wide = mat_binding;
    wide.allowance.seam = "5/8"_in;
    CHECK_THROWS_WITH_AS(bind_all_round<inch>(d, mat, wide),
                         "the seam of a binding of 5/8 in is more than its finished width, 1/2 in", binding_error);
    auto loose = mat_binding;
    loose.inset = "7/16"_in;
    CHECK_THROWS_WITH_AS(bind_all_round<inch>(d, mat, loose),
                         "the inset of a binding's last row of 7/16 in is more than its seam, 3/8 in", binding_error);
    auto level = mat_binding;
    level.turned_in = {};
    CHECK_THROWS_AS(bind_all_round<inch>(d, mat, level), binding_error);
    CHECK(d.parts().size() == 1);
}
