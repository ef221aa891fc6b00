// draw/stock.hpp: lengths cut from stock are drawn where they are to be cut, true to scale, and what is written
// can be read.
#include "at_random.hpp"
#include "draw/picture.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/stock.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <random>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::drawn;

namespace {

std::vector<picture> pictures(const std::vector<page>& pages) {
    std::vector<picture> all;
    for (const page& p : pages)
        all.emplace_back(p);
    return all;
}

/// One bar as it is drawn.
struct bar {
    const picture* page;
    box stock;
    std::vector<box> pieces, lost, left;
    std::vector<segment> cuts;
    std::int64_t times;
};

std::int64_t times_said(const std::string& words) {
    return words == "once" ? 1 : std::strtoll(words.c_str(), nullptr, 10);
}

std::vector<bar> bars_of(const std::vector<picture>& pages) {
    std::vector<bar> all;
    for (const picture& p : pages) {
        std::vector<std::int64_t> times; // bold words, from the top
        for (const word& w : p.words())
            if (w.bold && (w.text == "once" || w.text.find(" times") != std::string::npos))
                times.push_back(times_said(w.text));
        const auto stock = boxes(p, "stock");
        REQUIRE(stock.size() == times.size());
        for (std::size_t i = 0; i < times.size(); ++i) {
            bar b{&p, stock[i], {}, {}, {}, {}, times[i]};
            const auto of_bar = [&](const char* group) {
                std::vector<box> there = boxes(p, group);
                std::erase_if(there, [&](const box& other) { return other.y != b.stock.y; });
                return there;
            };
            b.pieces = of_bar("piece");
            b.lost = of_bar("lost");
            b.left = of_bar("left-over");
            for (const segment& s : p.lines("cutting"))
                if (s.a.y == b.stock.y)
                    b.cuts.push_back(s);
            all.push_back(b);
        }
    }
    return all;
}

/// "A" for the first that is wanted; there are no more than 26 here.
std::string letter(std::size_t kind) { return std::string(1, static_cast<char>('A' + kind)); }

/// Within a piece stands its letter, alone or before its name; a piece without has a share in a letter above the bar.
template <length_unit Unit>
void check_names(const bar& b, const stock_cuts<Unit>& c, const std::vector<std::size_t>& kinds) {
    std::map<std::string, std::int64_t> nameless;
    for (std::size_t i = 0; i < b.pieces.size(); ++i) {
        const word* first = nullptr;
        for (const word& w : b.page->words())
            if (w.where.x >= b.pieces[i].x && w.where.right() <= b.pieces[i].right() &&
                w.where.y >= b.pieces[i].y - 0.01 && w.where.bottom() <= b.pieces[i].bottom() + 0.01 &&
                (first == nullptr || w.where.y < first->where.y))
                first = &w;
        const std::string name = letter(kinds[i]);
        if (first == nullptr)
            ++nameless[name];
        else
            CHECK((first->text == name || first->text == name + ": " + c.wanted[kinds[i]].name));
    }
    for (const word& w : b.page->words()) {
        if (w.bold || w.where.bottom() > b.stock.y || w.where.y < b.stock.y - 10)
            continue;
        std::istringstream in(w.text);
        std::int64_t count = 1;
        std::string name;
        if (w.text[0] >= '0' && w.text[0] <= '9')
            in >> count;
        if (in >> name && nameless.count(name) > 0 && in.eof())
            nameless[name] -= count;
    }
    for (const auto& kind : nameless) {
        INFO(kind.first);
        CHECK(kind.second == 0);
    }
}

/// A line leads from the cut to its figure, unless it is said that not all are written.
template <length_unit Unit>
void check_figure(const bar& b, double x, length<Unit> from_start, const ruler& by) {
    ruler one = by;
    if (by.shows == units_shown::both)
        one.shows = units_shown::inches; // which stand first
    const std::string whole = to_text(from_start, by), first = to_text(from_start, one);
    INFO(whole);
    for (const auto& l : b.page->leaders()) {
        if (std::fabs(l.front().x - x) > 1e-4 || std::fabs(l.front().y - b.stock.bottom()) > 1e-4)
            continue;
        CHECK(std::any_of(b.page->words().begin(), b.page->words().end(), [&](const word& w) {
            const double off = w.where.x + w.where.width / 2 - l.back().x, under = w.where.y - l.back().y;
            return std::fabs(off) < 2 && under > 0 && under < 1.5 && (w.text == whole || w.text == first);
        }));
        return;
    }
    CHECK(b.page->mentions("cut figured where they are close"));
}

/// By adding up lengths and losses: every piece begins where the one before it ends and its cut has lost its part; the
/// cuts are where pieces end short of the end of the stock; and all that is wanted is cut.
template <length_unit Unit>
void check_places(const std::vector<picture>& pages, const stock_cuts<Unit>& c, const ruler& by, bool named = true) {
    const auto bars = bars_of(pages);
    REQUIRE(bars.size() == c.plan.cuttings.size());
    const double loss = mm(c.rules.loss_per_cut);
    std::vector<std::int64_t> cut(c.wanted.size());
    std::int64_t stock_used = 0;
    double left_in_all = 0;
    for (std::size_t n = 0; n < bars.size(); ++n) {
        CAPTURE(n);
        const bar& b = bars[n];
        const double scale = b.page->scale(), whole = mm(c.stock[c.plan.cuttings[n].stock].size);
        CHECK(scale == pages[0].scale());
        stock_used += b.times;
        double at = 0;
        length<Unit> exact{};
        std::size_t cuts = 0;
        std::vector<std::size_t> kinds;
        for (const box& piece : b.pieces) {
            CHECK((piece.x - b.stock.x) * scale == near(at));
            const auto kind = std::find_if(c.wanted.begin(), c.wanted.end(), [&](const wanted_length<Unit>& w) {
                return mm(w.size) == near(piece.width * scale);
            });
            REQUIRE(kind != c.wanted.end());
            kinds.push_back(static_cast<std::size_t>(kind - c.wanted.begin()));
            cut[kinds.back()] += b.times;
            at += mm(kind->size);
            exact += kind->size;
            if (at == near(whole)) {
                at = whole;
                continue;
            }
            REQUIRE(cuts < b.cuts.size());
            CHECK((b.cuts[cuts].a.x - b.stock.x) * scale == near(at));
            CHECK(b.cuts[cuts].a.x == b.cuts[cuts].b.x);
            const double lost = std::min(loss, whole - at);
            if (loss > 0) {
                REQUIRE(cuts < b.lost.size());
                CHECK((b.lost[cuts].x - b.stock.x) * scale == near(at));
                CHECK(b.lost[cuts].width * scale == near(lost));
            }
            check_figure(b, b.cuts[cuts].a.x, exact, by);
            at += lost;
            exact += c.rules.loss_per_cut;
            ++cuts;
        }
        for (std::size_t i = 1; i < b.pieces.size(); ++i)
            CHECK((b.pieces[i].width - b.pieces[i - 1].width) * scale <= 0.01); // the longest first
        CHECK(cuts == b.cuts.size());
        CHECK(b.stock.width * scale == near(at));
        REQUIRE(b.left.size() == (at == near(whole) ? 0U : 1U));
        if (!b.left.empty()) {
            CHECK((b.left[0].x - b.stock.x) * scale == near(at));
            CHECK(b.left[0].width * scale == near(whole - at));
        }
        left_in_all += static_cast<double>(b.times) * (whole - at);
        if (named)
            check_names(b, c, kinds);
    }
    for (std::size_t i = 0; i < cut.size(); ++i)
        CHECK(cut[i] == c.wanted[i].count);
    CHECK(stock_used == c.plan.pieces_of_stock);
    CHECK(std::fabs(left_in_all - mm(c.plan.left)) < 0.1);
}

} // namespace

TEST_CASE("ties from ribbon are drawn to a scale that is written, named and measured from the start, by hand") {
    // Four of 25 in take 100 of 108 in; eight take two pieces of ribbon, each with 8 in left. 108 in are 2743.2 mm, and
    // 277 mm of an A4 sheet on its side lie between its margins.
    const auto ties = stock_for<inch>("ribbon", {{"tie", 25_in, 8}}, {{108_in}});
    const auto pages = pictures(pages_of(ties, inch_ruler(16), {.project = "Hand-tool roll"}));
    REQUIRE(pages.size() == 1);
    const picture& p = pages[0];
    CHECK(p.page().width == 297);
    CHECK(p.page().height == 210); // ISO 216, A4
    CHECK(p.scale() == 10);
    check_places(pages, ties, inch_ruler(16));
    check_legible(p);
    for (const char* words :
         {"2 times", "from 108 in, leaving 8 in: 4 A", "A: tie", "25 in", "50 in", "75 in", "100 in", "left over",
          "A: tie, 25 in, 8 of them", "Hand-tool roll", "lengths of ribbon", "used by the pieces 200 in",
          "left over in all 16 in", "in all 216 in of stock", "scale 1:10"})
        CHECK_MESSAGE(p.says(words), words);
    CHECK(p.count("A: tie") == 4);
    CHECK(p.count("25 in") == 5); // the length of four ties, and where the first cut is
    CHECK(p.mentions("2 pieces of stock, each 108 in, the fewest"));
    CHECK(p.groups("lost").empty());
    CHECK_FALSE(p.mentions("lost"));
    CHECK_FALSE(p.mentions("page"));
}

TEST_CASE("what a cut loses moves all that follow, and the last needs none where its piece ends with the stock") {
    const auto strips = [](length<inch> size) {
        return stock_for<inch>("chain", {{"strip", 14_in, 2}, {"long strip", 30_in, 1}}, {{size}},
                               {.loss_per_cut = "1/4"_in});
    };
    // 30 + 1/4 + 14 + 1/4 + 14 = 58 1/2 in.
    const auto exact = strips("58 1/2"_in);
    const auto pages = pictures(pages_of(exact, inch_ruler(16)));
    check_places(pages, exact, inch_ruler(16));
    check_legible(pages[0]);
    CHECK(pages[0].says("from 58 1/2 in, leaving nothing: 1 B, 2 A"));
    CHECK(bars_of(pages)[0].cuts.size() == 2);
    CHECK(pages[0].says("44 1/4 in"));
    CHECK(pages[0].says("lost in cuts 1/2 in"));
    CHECK(pages[0].mentions("each cut then takes 1/4 in"));
    CHECK(pages[0].groups("left-over").empty());
    // 1/16 in more: the last cut takes all of it.
    const auto eaten = strips("58 9/16"_in);
    const auto short_end = pictures(pages_of(eaten, inch_ruler(16)));
    check_places(short_end, eaten, inch_ruler(16));
    REQUIRE(bars_of(short_end)[0].lost.size() == 3);
    CHECK(bars_of(short_end)[0].lost[2].width * short_end[0].scale() == near(25.4 / 16));
    CHECK(short_end[0].says("58 1/2 in"));
    CHECK(short_end[0].groups("left-over").empty());
}

TEST_CASE("every distance is rounded from the exact length, in each unit, not added up from rounded ones") {
    // Thrice 10 1/3 in are 31 in, 78.74 cm; thrice 10 5/16 would be 30 15/16. Twice: 20 2/3 in, 52.493 cm.
    const auto loops =
        stock_for<inch>("ribbon", {{"loop", length_of<inch>({31, 3}), 3}}, {{36_in}}, {.loss_per_cut = {}});
    const picture p(pages_of(loops).front());
    for (const char* words : {"10 5/16 in", "26.2 cm", "20 11/16 in", "52.5 cm", "31 in", "78.7 cm"})
        CHECK_MESSAGE(p.says(words), words);
    const picture metric(pages_of(loops, {.shows = units_shown::centimetres}).front());
    CHECK(metric.says("78.7 cm"));
    CHECK_FALSE(metric.mentions(" in,"));
    check_legible(p);
    check_legible(metric);
}

TEST_CASE("pieces too narrow for their letter have it above, once for all that lie side by side") {
    // 100 in at 1:10 are 254 mm: a tab of 1/2 in has 1.27 mm.
    const auto c =
        stock_for<inch>("ribbon", {{"tie", 47_in, 2}, {"tab", "1/2"_in, 9}, {"end", "3/4"_in, 1}}, {{100_in}});
    const auto pages = pictures(pages_of(c, inch_ruler(16)));
    check_places(pages, c, inch_ruler(16));
    check_legible(pages[0]);
    CHECK(pages[0].says("9 B"));
    CHECK(pages[0].says("B: tab, 1/2 in, 9 of them"));
    CHECK(pages[0].says("C: end, 3/4 in, one"));
    CHECK(pages[0].says("C"));
    CHECK(pages[0].says("from 100 in, leaving 3/4 in: 2 A, 1 C, 9 B"));
    CHECK(pages[0].says("left over"));
    // A stroke along the nine, and a line to each of three words; a line to each of the figures, of which there are 12.
    CHECK(pages[0].leaders().size() == 4 + 12);
}

TEST_CASE("several lengths of stock are told apart, with how many are taken of those on hand") {
    // Two of 9 in: from one of 20 in, or from two of 9 in, which is less.
    const auto c =
        stock_for<inch>("ribbon", {{"loop", 9_in, 2}}, {{20_in}, {9_in, 5}}, {.aim = stock_aim::least_length});
    const auto pages = pictures(pages_of(c, inch_ruler(16)));
    check_places(pages, c, inch_ruler(16));
    CHECK(pages[0].says("from stock 2, 9 in, leaving nothing: 1 A"));
    CHECK(pages[0].says("stock 1: 20 in, none to be cut"));
    CHECK(pages[0].says("stock 2: 9 in, 2 of 5 to be cut"));
    CHECK(pages[0].says("2 pieces of stock"));
    CHECK(pages[0].says("in all 18 in of stock, the least that will do"));
    CHECK(pages[0].scale() == 1); // only stock that is cut is drawn: 229 mm
    // The dear one costs 3, the two cheap ones 1 each.
    const auto cheap = stock_for<inch>("ribbon", {{"loop", 9_in, 2}},
                                       {{20_in, std::nullopt, fraction(3)}, {9_in, std::nullopt, fraction(5, 4)}},
                                       {.aim = stock_aim::least_cost});
    CHECK(picture(pages_of(cheap).front()).says("cost 2 1/2, the least that will do"));
}

TEST_CASE("what is not proved says what no plan can better") {
    auto ties = stock_for<inch>("ribbon", {{"tie", 25_in, 8}}, {{108_in}});
    ties.plan.proved_best = false;
    ties.plan.bound = {3, 2};
    const picture pieces(pages_of(ties, inch_ruler(16)).front());
    CHECK(pieces.says("2 pieces of stock, each 108 in"));
    CHECK(pieces.says("at least this much is needed: 2"));
    ties.rules.aim = stock_aim::least_length;
    ties.plan.bound = 200;
    const picture length(pages_of(ties, inch_ruler(16)).front());
    CHECK(length.says("at least this much is needed: 200 in"));
    CHECK_FALSE(length.mentions("fewest"));
    CHECK_FALSE(length.mentions("the least"));
}

TEST_CASE("bars that find no room go on to further pages, and every page says which it has") {
    // Each of 20 lengths is more than half of the stock: 20 ways to cut, each taken once.
    std::vector<wanted_length<inch>> straps;
    for (int i = 0; i < 20; ++i)
        straps.push_back({"strap " + std::to_string(i), length_of<inch>(31 + i), 1});
    const auto c = stock_for<inch>("webbing", straps, {{60_in}});
    for (const paper on : {paper::a4, paper::letter}) {
        const auto pages = pictures(pages_of(c, inch_ruler(16), {.project = "Trugs", .on = on}));
        REQUIRE(pages.size() > 1);
        check_places(pages, c, inch_ruler(16));
        std::size_t ways = 0;
        for (std::size_t i = 0; i < pages.size(); ++i) {
            check_legible(pages[i]);
            const std::size_t here = pages[i].groups("stock").size(), last = ways + here;
            CHECK(here > 0);
            CHECK(pages[i].says("page " + std::to_string(i + 1) + " of " + std::to_string(pages.size()) +
                                (here > 1 ? ": ways to cut " + std::to_string(ways + 1) + " to " : ": way to cut ") +
                                std::to_string(last) + " of 20"));
            ways = last;
        }
        CHECK(ways == 20);
    }
}

TEST_CASE(
    "hundreds of cuts are all drawn; those that stand close are figured as often as there is room, which is said") {
    const auto c =
        stock_for<centimetre>("ribbon", {{"tie", 57_cm, 8}, {"loop", 2_cm, 222}}, {{900_cm}}, {.loss_per_cut = {}});
    const auto pages = pictures(pages_of(c, {.shows = units_shown::centimetres}));
    check_places(pages, c, {.shows = units_shown::centimetres});
    check_legible(pages[0]);
    CHECK(pages[0].says("222 B"));
    CHECK(pages[0].says("from 900 cm, leaving nothing, every 10th cut figured where they are close: 8 A, 222 B"));
    for (int i = 1; i <= 8; ++i) // ties end 57 cm apart
        CHECK(pages[0].says(std::to_string(57 * i) + " cm"));
    for (int i = 10; i <= 220; i += 10) // then every tenth loop
        CHECK(pages[0].says(std::to_string(456 + 2 * i) + " cm"));
    CHECK_FALSE(pages[0].says("458 cm"));
}

TEST_CASE("where even the letters have no room the words over the bar say all, in order") {
    std::vector<wanted_length<centimetre>> tags;
    for (int i = 0; i < 130; ++i)
        tags.push_back({"tag " + std::to_string(i), length_of<centimetre>(fraction(400 - i, 100)), 1});
    const auto c = stock_for<centimetre>("tape", tags, {{500_cm}});
    const auto pages = pictures(pages_of(c, {.shows = units_shown::centimetres}));
    check_places(pages, c, {.shows = units_shown::centimetres}, false);
    check_legible(pages[0]);
    CHECK(pages[0].mentions("too narrow to be lettered but in this order"));
    std::set<std::string> said;
    for (const word& w : pages[0].words()) {
        std::istringstream in(w.text);
        for (std::string part, before; in >> part; before = part)
            if (before == "1" && w.size == 3)
                said.insert(part.substr(0, part.find(',')));
    }
    CHECK(said.size() == 130);
}

TEST_CASE("long names and names that hold marks of XML are shortened or escaped, and figures are kept") {
    const std::string name =
        "tie <wide> & \"very long\", for the roll that hangs at the far end of the shed by the beans";
    const auto c = stock_for<inch>(name, {{name, 25_in, 8}}, {{108_in}});
    const picture p(pages_of(c, {}, {.project = name}).front());
    check_legible(p);
    CHECK(p.mentions("A: tie <wide> & \"very long\""));
    CHECK(p.mentions("..., 25 in (63.5 cm), 8 of them"));
    CHECK(std::string(p.root().child("title").text().get()) == name + ": lengths of " + name);
}

TEST_CASE("no two kinds of line in stock are drawn alike, and none by colour alone") {
    const picture p(
        pages_of(stock_for<inch>("ribbon", {{"tie", 25_in, 8}}, {{108_in}}, {.loss_per_cut = 1_in})).front());
    check_told_apart(p, {"stock", "piece", "cutting", "lost", "left-over"});
    CHECK_FALSE(std::string(p.groups("left-over").at(0).attribute("stroke-dasharray").value()).empty());
}

TEST_CASE("a ruler without graduations is refused") {
    const auto c = stock_for<inch>("ribbon", {{"tie", 25_in, 8}}, {{108_in}});
    CHECK_THROWS_AS(pages_of(c, {.inches = 0_in}), range_error);
}

namespace {

/// Lengths in parts of the unit, no two alike.
template <length_unit Unit>
stock_cuts<Unit> random_cuts(std::mt19937_64& random, std::int64_t parts, std::int64_t most) {
    const auto between = [&](std::int64_t low, std::int64_t high) {
        return std::uniform_int_distribution<std::int64_t>(low, high)(random);
    };
    const auto size = [&](std::int64_t n) { return length_of<Unit>(fraction(n, parts)); };
    std::set<std::int64_t> sizes;
    for (std::int64_t kinds = between(1, 7); kinds > 0; --kinds)
        sizes.insert(between(1, between(0, 2) == 0 ? 3 * parts : most));
    std::vector<wanted_length<Unit>> wanted;
    for (const std::int64_t n : sizes)
        wanted.push_back({"piece of kind " + std::to_string(wanted.size()), size(n), between(1, 25)});
    std::shuffle(wanted.begin(), wanted.end(), random);
    std::vector<stock_length<Unit>> stock{{size(between(most, 4 * most))}};
    if (between(0, 2) == 0)
        stock.push_back({size(between(most / 2, 6 * most)), between(1, 4)});
    const auto aim = between(0, 1) == 0 ? stock_aim::fewest_pieces : stock_aim::least_length;
    return stock_for<Unit>("ribbon for the shed", wanted, stock,
                           {.loss_per_cut = size(between(0, 2) == 0 ? between(1, parts) : 0), .aim = aim});
}

template <length_unit Unit>
void check_random(std::uint64_t seed, std::int64_t parts, std::int64_t most) {
    at_random::seeded<std::mt19937_64> random(seed);
    for (const int round : random.cases(60)) {
        const auto c = random_cuts<Unit>(random, parts, most);
        const ruler by{.shows = static_cast<units_shown>(round % 3)};
        const auto pages = pictures(
            pages_of(c, by, {.project = "Tidy for the shed", .on = round % 2 == 0 ? paper::a4 : paper::letter}));
        check_places(pages, c, by);
        for (const picture& p : pages)
            check_legible(p);
    }
}

} // namespace

TEST_CASE("sixty random plans in inches are true and can be read") { check_random<inch>(20261125, 16, 40 * 16); }

TEST_CASE("sixty random plans in centimetres are true and can be read") { check_random<centimetre>(511, 10, 90 * 10); }
