// The least length of cloth for some pieces, their grain along it, and what to buy.
#include "calculation.hpp"
#include "pieces_typed.hpp"
#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/purchase.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/notions/caution.hpp>

#include <string>
#include <utility>
#include <vector>

using namespace turncloth;
using namespace calculator;

namespace {

constexpr std::int64_t most_alike = 1000, most_in_all = 2000;

/// A side of a row in `Unit`, or in the unit that is written with it.
template <length_unit Unit>
cloth_piece<Unit> piece_of(const given& row) {
    const length<Unit> width = row.size<Unit>("width"), height = row.size<Unit>("height");
    try {
        const cut_size<Unit> size(width, height);
        cloth_piece<Unit> made{row.has("name") ? row.text("name") : to_text(size), size};
        made.quantity = row.has("count") ? row.count("count", most_alike) : 1;
        if (row.holds("may_turn"))
            made.grain = grain::may_turn;
        return made;
    } catch (const size_error& e) {
        throw field_error(row.within() + "width", e.what(), e.facts());
    }
}

/// Rows as they are typed. What is wrong with one is said of the whole field, as a form has one field for all.
template <length_unit Unit>
std::vector<cloth_piece<Unit>> pieces_typed(const std::string& typed) {
    std::vector<cloth_piece<Unit>> pieces;
    for (const typed_row& row : rows_typed(typed)) {
        if (!row.is_read)
            throw field_error("pieces",
                              "expected \"how many of width x height\", as in 3 of 13 x 9: it was \"" + row.said + "\"",
                              {.kind = fault::unreadable, .what = "a piece of cloth"});
        try {
            pieces.push_back(piece_of<Unit>(given(
                {{"count", row.count}, {"width", row.width}, {"height", row.height}, {"may_turn", row.may_turn}})));
        } catch (const field_error& e) {
            throw field_error("pieces", "\"" + row.said + "\": " + e.what(), e.facts());
        }
    }
    return pieces;
}

template <length_unit Unit>
std::vector<cloth_piece<Unit>> pieces_of(const given& g) {
    std::vector<cloth_piece<Unit>> pieces;
    if (g.has("pieces") && g.members().at("pieces").is_array())
        for (const given& row : g.list("pieces"))
            pieces.push_back(piece_of<Unit>(row));
    else
        pieces = pieces_typed<Unit>(g.text("pieces"));
    if (pieces.empty())
        throw field_error("pieces", "expected at least one piece", {.kind = fault::missing, .what = "a piece"});
    std::int64_t in_all = 0;
    for (const cloth_piece<Unit>& p : pieces)
        in_all += p.quantity;
    if (in_all > most_in_all)
        throw field_error("pieces",
                          "expected at most " + std::to_string(most_in_all) + " pieces: there were " +
                              std::to_string(in_all),
                          {.kind = fault::too_large, .what = "a number of pieces"});
    return pieces;
}

template <length_unit Unit>
void say_places(reply& r, const sheet_cloth<Unit>& c) {
    json places = json::array();
    for (const cloth_place<Unit>& at : c.lay.places) {
        r.line(c.pieces[at.piece].name,
               in_both(at.where.from_left) + " from the left edge of the cloth, selvedge included; " +
                   in_both(at.where.from_end) + " from its straightened end" + (at.turned ? ", turned" : ""));
        places.push_back({{"piece", at.piece},
                          {"from_left", shown(at.where.from_left)},
                          {"from_end", shown(at.where.from_end)},
                          {"turned", at.turned}});
    }
    r.set("places", std::move(places));
}

template <length_unit Unit>
void cloth(const given& g, reply& r) {
    sheet_cloth<Unit> c{.material = "cloth", .bolt = {}, .pieces = pieces_of<Unit>(g), .lay = {}, .bought = {}};
    c.bolt.width = g.size<Unit>("width");
    c.bolt.selvedge = g.size_or("selvedge", length<Unit>());
    c.bolt.gap = g.size_or("gap", length<Unit>());
    c.lay = lay_out<Unit>(c.pieces, c.bolt);
    const purchase_rules<Unit> rules{.straightening = g.size_or("ends", length<Unit>()),
                                     .sold = metric_unit<Unit> ? ten_centimetres<Unit> : eighths_of_a_yard<Unit>};
    c.bought = amount_to_buy(c.lay.length, rules);
    r.set("proved_best", c.lay.proved_best());
    r.say("laid", c.lay.proved_best() ? "length laid, the shortest possible" : "length laid", c.lay.length);
    if (!c.lay.proved_best())
        r.say("bound", "no lay can be shorter than", c.lay.bound);
    r.say("buy", "length to buy", c.bought.working);
    r.say("usable_width", "usable width, between the selvedges", c.bolt.usable_width());
    say_places(r, c);
    r.draw(page_of(c, shown_by<Unit>, {.project = "lay", .on = paper::custom(15_cm, 24_cm), .for_screen = true}));
}

constexpr calculation cloth_sum{
    .name = "cloth",
    .title = "Cloth to buy",
    .about =
        "The shortest length that your pieces can be laid on, and what the shop cuts: eighths of a yard or tens of "
        "centimetres. Write or paste a line for each kind; its grain lies along the cloth, or write \"may turn\" "
        "behind "
        "it.",
    .asks = {{"pieces", "pieces, cut sizes", "1 of 29 x 32\n3 of 13 x 9", "1 of 74 x 81\n3 of 33 x 23",
              field::kind::pieces},
             {"width", "width of the cloth", "44 in", "112 cm"},
             {"selvedge", "each selvedge", "1/2 in", "1.2 cm"},
             {"ends", "straightened at each end", "1 in", "2.5 cm"}},
    .takes = {"gap"},
    .cautions = {caution::cutting},
    .in_inches = cloth<inch>,
    .in_centimetres = cloth<centimetre>};
const listed_calculation is_listed(cloth_sum);

} // namespace
