// Calculations of lengths alone: equal parts, a longer piece on a shorter, zippers from a roll.
#include "calculation.hpp"
#include <turncloth/marks/mapping.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/notions/zipper.hpp>
#include <turncloth/panel/finish.hpp>

#include <string>

using namespace turncloth;
using namespace calculator;

namespace {

/// Marks that part an edge equally.
template <length_unit Unit>
void divide(const given& g, reply& r) {
    const length<Unit> whole = g.size<Unit>("length");
    const std::int64_t parts = g.count("parts", 200);
    r.say("part", "each part", whole / parts);
    json marks = json::array();
    for (const auto mark : divided<finished_edge>(whole, parts)) {
        marks.push_back(shown(mark.from_datum()));
        r.line("mark " + std::to_string(marks.size()), in_both(mark.from_datum()));
    }
    r.set("marks", std::move(marks));
}

/// The two edges that are sewn together, the longer above, with a line from each mark to the one that it meets. How deep
/// the pieces are was not asked, so their sides fade out.
template <length_unit Unit>
page strips_of(const even_mapping<Unit>& map) {
    constexpr double left = 6, width = 108, above = 22, below = 58, deep = 9;
    constexpr pen edge = {"edge", 0.6}, side = {"side", 0.3, {1.5, 1}}, joined = {"joined", 0.3};
    const length<Unit> longer = map.mark_on_long(map.spans()).from_datum(),
                       shorter = map.mark_on_short(map.spans()).from_datum();
    const double share = to_double(shorter.value()) / to_double(longer.value());
    const double from = left + width * (1 - share) / 2;
    page p{.width = width + 2 * left,
           .height = below + 22,
           .title = "marks that meet",
           .description = "The edge of the longer piece above, that of the shorter below, mark joined to mark."};
    p.draw(edge, {{left, above}, {left + width, above}});
    p.draw(edge, {{from, below}, {from + width * share, below}});
    for (std::int64_t k = 0; k <= map.spans(); ++k) {
        const double part = static_cast<double>(k) / static_cast<double>(map.spans());
        const page_point on_long{left + width * part, above}, on_short{from + width * share * part, below};
        if (k == 0 || k == map.spans()) {
            p.draw(side, {on_long, {on_long.x, above - deep}});
            p.draw(side, {on_short, {on_short.x, below + deep}});
        } else {
            p.write({on_long.x, above - 2}, std::to_string(k), 3.6, set_from::middle);
            p.write({on_short.x, below + 5}, std::to_string(k), 3.6, set_from::middle);
        }
        p.draw(joined, {on_long, on_short});
    }
    p.write({left, above - deep - 3}, "longer piece, " + in_both(longer), 4.2);
    p.write({left, below + deep + 7}, "shorter piece, " + in_both(shorter), 4.2);
    return p;
}

template <length_unit Unit>
void meeting_marks(const given& g, reply& r) {
    const length<Unit> longer = g.size<Unit>("longer"), shorter = g.size<Unit>("shorter");
    const even_mapping<Unit> map(longer, shorter, g.count("spans", 60));
    const std::string fullness = to_text(map.fullness());
    r.line("fullness, longer over shorter", fullness);
    r.set("fullness", {{"exact", fullness}, {"near", to_double(map.fullness())}});
    r.say("extra", "extra in each span", map.surplus(0));
    json marks = json::array();
    for (std::int64_t k = 1; k < map.spans(); ++k) {
        const length<Unit> on_longer = map.mark_on_long(k).from_datum(), on_shorter = map.mark_on_short(k).from_datum();
        marks.push_back({{"longer", shown(on_longer)}, {"shorter", shown(on_shorter)}});
        r.line("mark " + std::to_string(k),
               in_both(on_longer) + " of the longer meets " + in_both(on_shorter) + " of the shorter");
    }
    r.set("marks", std::move(marks));
    r.draw(strips_of(map));
}

template <length_unit Unit>
void zippers(const given& g, reply& r) {
    const length<Unit> across = g.size<Unit>("across"), margin = g.size<Unit>("margin");
    const zipped_opening<Unit> z{across, margin, g.size<Unit>("beyond")};
    const std::int64_t pieces = g.count("pieces", 10'000);
    const auto cut = from_roll(z, pieces, g.size<Unit>("roll"));
    r.say("opening", "opening", opening_working(z));
    r.say("tape", "tape to cut, each", tape_working(z));
    r.say("clearance", "tape keeps off the seams by", clearance(z));
    r.say("sliders", "sliders", cut.sliders);
    r.say("from_one_roll", "one roll gives", cut.from_one_roll);
    r.say("rolls", "rolls to buy", cut.rolls);
    r.say("left", "left on the last roll", cut.left);
}

constexpr auto counted = field::kind::count;

constexpr calculation divide_sum{
    .name = "divide",
    .title = "An edge in equal parts",
    .about = "Where the marks lie, each measured from the same end.",
    .asks = {{"length", "length to divide", "16 in", "40 cm"}, {"parts", "equal parts", "4", "4", counted}},
    .in_inches = divide<inch>,
    .in_centimetres = divide<centimetre>};
const listed_calculation divide_is_listed(divide_sum);
constexpr calculation map_sum{.name = "map",
                              .title = "A longer piece sewn to a shorter one",
                              .about = "Which mark of the longer piece meets which mark of the shorter.",
                              .asks = {{"longer", "longer piece", "49 in", "126 cm"},
                                       {"shorter", "shorter piece", "35 in", "90 cm"},
                                       {"spans", "equal spans", "7", "6", counted}},
                              .cautions = {caution::pins_and_needles},
                              .in_inches = meeting_marks<inch>,
                              .in_centimetres = meeting_marks<centimetre>};
const listed_calculation map_is_listed(map_sum);
constexpr calculation zipper_sum{.name = "zipper",
                                 .title = "Zippers from a roll",
                                 .about = "What to cut for each, how many rolls to buy, and what is left.",
                                 .asks = {{"across", "from seam to seam, finished", "11 in", "28 cm"},
                                          {"margin", "from a seam to the opening", "3/4 in", "2 cm"},
                                          {"beyond", "tape beyond the opening", "1/2 in", "1.5 cm"},
                                          {"pieces", "zippers wanted", "4", "4", counted},
                                          {"roll", "length of a roll", "5 yd", "5 m"}},
                                 .cautions = {caution::needles_and_metal, caution::zipper_ends},
                                 .in_inches = zippers<inch>,
                                 .in_centimetres = zippers<centimetre>};
const listed_calculation zipper_is_listed(zipper_sum);

} // namespace
