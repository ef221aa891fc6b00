// Calculations of what lies along an edge: pleats that fill a length, a row of eyelets, a mitred corner.
#include "calculation.hpp"
#include <turncloth/notions/caution.hpp>
#include <turncloth/notions/hanging.hpp>
#include <turncloth/notions/pleats.hpp>
#include <turncloth/panel/corner.hpp>

#include <array>
#include <cmath>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

using namespace turncloth;
using namespace calculator;

namespace {

constexpr std::int64_t most_in_a_list = 200;
constexpr std::array<std::string_view, 3> pleat_names = {"knife pleats", "box pleats", "inverted pleats"};
constexpr std::array<std::string_view, 2> numbers = {"any number", "an even number"};

template <length_unit Unit>
constexpr length<Unit> fine_line = length_of<Unit>(metric_unit<Unit> ? fraction(1, 10) : fraction(1, 16));

/// What would fill more lines than anybody reads, from a slip of the keyboard in one field.
void require_listed(std::int64_t n, const std::string& field, const char* things) {
    if (n > most_in_a_list)
        throw field_error(field,
                          "expected at most " + std::to_string(most_in_a_list) + " " + things + ": this would make " +
                              std::to_string(n),
                          {.kind = fault::too_small, .what = things});
}

std::string behind(pleat_lie lie) {
    switch (lie) {
    case pleat_lie::shallow:
        return "apart from each other";
    case pleat_lie::meeting:
        return "edge to edge";
    case pleat_lie::overlapping:
        break;
    }
    return "over each other";
}

template <length_unit Unit>
void pleats(const given& g, reply& r) {
    const auto kind = static_cast<pleat>(g.choice("kind", pleat_names));
    const auto p =
        pleats_near(kind, g.size<Unit>("finished"), pleat_size<Unit>{g.size<Unit>("width"), g.size<Unit>("depth")});
    require_listed(p.count(), "width", "pleats");
    r.say("count", "pleats", p.count());
    r.say("width", "each shows", p.width());
    r.say("cut", "cloth to pleat, hems and seams apart", p.cut());
    r.line("fullness, cloth over finished", to_text(p.fullness()));
    r.set("fullness", {{"exact", to_text(p.fullness())}, {"near", to_double(p.fullness())}});
    r.line("folds behind lie", behind(p.lie()));
    r.say("layers", "most layers under the needle", p.most_layers());
    for (int i = 0; i < p.folds(); ++i) {
        const std::string which = p.folds() == 1 ? "fold" : i == 0 ? "first fold" : "second fold";
        r.line(which + " of each pleat", "the crease at " + in_both(p.outer_folds(i)[0].from_datum()) +
                                             " from its start is brought to the line at " +
                                             in_both(p.placements(i)[0].from_datum()));
    }
    json starts = json::array();
    for (std::int64_t k = 0; k < p.count(); ++k) {
        const auto start = rounded_start(p, k, fine_line<Unit>);
        starts.push_back(
            {{"on_cloth", shown(start.on_cloth.from_datum())}, {"on_face", shown(start.on_face.from_datum())}});
        r.line("pleat " + std::to_string(k + 1) + " starts",
               in_both(start.on_cloth.from_datum()) + " from the start, on the flat cloth");
    }
    r.set("starts", std::move(starts));
}

/// The edge from end to end, each eyelet as its rim. How deep the piece is was not asked, so its sides fade out.
template <length_unit Unit>
page edge_with_eyelets(length<Unit> along, const spacing<finished_edge, Unit>& row) {
    constexpr double left = 6, width = 108, top = 12, deep = 16;
    constexpr pen edge = {"edge", 0.6}, side = {"side", 0.3, {1.5, 1}}, rim = {"rim", 0.3};
    const auto mm = [&](length<Unit> l) { return width * to_double(l.value()) / to_double(along.value()); };
    page p{.width = width + 2 * left,
           .height = top + deep + 10,
           .title = "a row of eyelets",
           .description = "The edge, and on it each eyelet by its rim."};
    p.draw(edge, {{left, top}, {left + width, top}});
    for (const double x : {left, left + width})
        p.draw(side, {{x, top}, {x, top + deep}});
    const double round = mm(row.width()) / 2, down = top + 2 + round;
    for (const auto centre : row.centres()) {
        constexpr int corners = 24;
        std::vector<page_point> circle;
        for (int i = 0; i < corners; ++i) {
            const double turn = 2 * 3.14159265358979 * i / corners;
            circle.push_back({left + mm(centre.from_datum()) + round * std::cos(turn), down + round * std::sin(turn)});
        }
        p.strokes.push_back({rim, std::move(circle), true});
    }
    p.write({left + width / 2, top - 4}, "finished edge, " + in_both(along), 4.2, set_from::middle);
    return p;
}

template <length_unit Unit>
void eyelets_along(const given& g, reply& r) {
    const length<Unit> along = g.size<Unit>("along"), rim = g.size<Unit>("rim"), margin = g.size<Unit>("margin");
    const std::int64_t n = fewest_eyelets(along, eyelet_limits<Unit>{.rim = rim,
                                                                     .margin = margin,
                                                                     .most = g.size<Unit>("apart"),
                                                                     .even_count = g.choice("number", numbers) == 1});
    require_listed(n, "apart", "eyelets");
    const auto row = spaced_from_margins<finished_edge>(n, rim, along, margin);
    r.say("count", "eyelets", n);
    r.say("apart", "from centre to centre", row.width() + row.gap());
    json centres = json::array();
    for (const auto centre : row.on_ruler(fine_line<Unit>).centres()) {
        centres.push_back(shown(centre.from_datum()));
        r.line("centre " + std::to_string(centres.size()),
               in_both(centre.from_datum()) + " from the left finished edge");
    }
    r.set("centres", std::move(centres));
    r.draw(edge_with_eyelets(along, row));
}

/// The corner as it is cut, its creases and the line that is trimmed along.
template <length_unit Unit>
page corner_with_lines(const finish<Unit>& hem, const corner_legs<Unit>& crease, const corner_legs<Unit>& trim) {
    constexpr double left = 8, top = 14, side = 80;
    constexpr pen cut = {"cut", 0.6}, fold = {"fold", 0.25, {2, 1}}, across = {"crease", 0.45, {4, 1, 1, 1}},
                  off = {"trim", 0.35};
    const double shown_along = to_double(crease.along_level.value()) * 1.25;
    const auto mm = [&](length<Unit> l) { return side * to_double(l.value()) / shown_along; };
    page p{.width = side + 2 * left,
           .height = side + top + 8,
           .title = "a mitred corner",
           .description =
               "The cut corner, the creases of its two hems, the crease across it and the line to trim along."};
    p.draw(cut, {{left, top + side}, {left, top}, {left + side, top}});
    for (const auto& at : hem.folds()) {
        const double in = mm(at.from_datum());
        p.draw(fold, {{left + in, top}, {left + in, top + side}});
        p.draw(fold, {{left, top + in}, {left + side, top + in}});
    }
    p.draw(across, {{left + mm(crease.along_level), top}, {left, top + mm(crease.along_upright)}});
    p.draw(off, {{left + mm(trim.along_level), top}, {left, top + mm(trim.along_upright)}});
    p.write({left + mm(trim.along_level), top - 2}, "trim", 3.6, set_from::end);
    p.write({left + mm(crease.along_level), top - 2}, "crease", 3.6, set_from::start);
    return p;
}

template <length_unit Unit>
void mitred_corner(const given& g, reply& r) {
    const length<Unit> first = g.size<Unit>("first"), depth = g.size<Unit>("depth");
    const finish<Unit> hem = double_turned_hem(first, depth);
    const mitre<Unit> corner(hem, hem);
    const corner_legs<Unit> crease = corner.crease_legs(),
                            trim = corner.trim(g.size<Unit>("allowance"), fine_line<Unit>);
    r.say("first_fold", "first crease, from each cut edge", hem.folds()[0].from_datum());
    r.say("second_fold", "second crease, from each cut edge", hem.folds()[1].from_datum());
    r.say("crease", "crease across the corner meets each edge", crease.along_level);
    r.say("trim", "trim from edge to edge, each mark", trim.along_level);
    r.say("finished_corner", "finished corner, from each cut edge", corner.finished_corner().x);
    r.draw(corner_with_lines(hem, crease, trim));
}

constexpr auto chosen = field::kind::choice;

constexpr calculation pleats_sum{.name = "pleats",
                                 .title = "Pleats that fill a length",
                                 .about = "As many as come nearest to the width you want: the cloth they take, and "
                                          "where each starts.",
                                 .asks = {{"kind", "kind", "knife pleats", "knife pleats", chosen, pleat_names},
                                          {"finished", "finished length", "26 in", "66 cm"},
                                          {"width", "each to show, about", "2 in", "5 cm"},
                                          {"depth", "depth of each fold", "3/4 in", "2 cm"}},
                                 .cautions = {caution::pins_and_needles, caution::hot_iron},
                                 .in_inches = pleats<inch>,
                                 .in_centimetres = pleats<centimetre>};
const listed_calculation pleats_is_listed(pleats_sum);
constexpr calculation eyelets_sum{
    .name = "eyelets",
    .title = "Eyelets along an edge",
    .about = "The fewest that lie no further apart than you allow, and where each goes.",
    .asks = {{"along", "finished length of the edge", "46 in", "117 cm"},
             {"rim", "across the rim of an eyelet", "7/8 in", "22 mm"},
             {"margin", "from each end to the nearest rim", "1 in", "2.5 cm"},
             {"apart", "at most, from centre to centre", "7 in", "18 cm"},
             {"number", "number of eyelets", "any number", "any number", chosen, numbers}},
    .cautions = {caution::setting_eyelets, caution::hanging_up},
    .in_inches = eyelets_along<inch>,
    .in_centimetres = eyelets_along<centimetre>};
const listed_calculation eyelets_is_listed(eyelets_sum);
constexpr calculation mitre_sum{.name = "mitre",
                                .title = "A mitred corner of two equal hems",
                                .about = "Where the corner is creased and trimmed, so that its hems meet on a slant.",
                                .asks = {{"first", "turned under first", "1/4 in", "6 mm"},
                                         {"depth", "depth of the hem", "1 1/4 in", "3 cm"},
                                         {"allowance", "left beyond the crease", "1/4 in", "6 mm"}},
                                .cautions = {caution::cutting, caution::hot_iron},
                                .in_inches = mitred_corner<inch>,
                                .in_centimetres = mitred_corner<centimetre>};
const listed_calculation mitre_is_listed(mitre_sum);

} // namespace
