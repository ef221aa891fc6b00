// handout/handout.hpp: what a handout holds of a sheet, and what it leaves out; its figures are read in tests/examples.
#include <turncloth.hpp>
#include <turncloth/handout/detail/shared.hpp>
#include <turncloth/handout/handout.hpp>
#include <turncloth/page/detail/svg_writer.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/page/pages.hpp>
#include <turncloth/sheet/bulk.hpp>

#include <doctest/doctest.h>
#include <pugixml.hpp>

#include <algorithm>
#include <regex>
#include <string>
#include <utility>
#include <variant>
#include <vector>

using namespace turncloth;

namespace {

sheet<inch> mat(const std::string& name) {
    project<inch> p(name, {14_in, 11_in});
    const auto layers = self_bound(p.finished(), "1/2"_in);
    auto& outer = p.add(piece<inch>("outer " + name, "cotton", layers.outer));
    outer.mark("middle", edge::left, at<finished_edge>(7_in));
    p.add(piece<inch>("inner", "wadding", panel<inch>(p.finished(), {}))).lies_inside(outer);
    p.add(listed("tie", 1, ribbon_tie<inch>{14_in, 0, 1, 2_in, 0_in, 9_in, 0_in}));
    return sheet_of(p);
}

const document::table* table(const document& d, const std::string& begins) {
    for (const document::block& b : d.blocks)
        if (const auto* t = std::get_if<document::table>(&b.is); t != nullptr && t->caption.rfind(begins, 0) == 0)
            return t;
    return nullptr;
}
bool has_heading(const document& d, const std::string& text) {
    return std::any_of(d.blocks.begin(), d.blocks.end(), [&](const document::block& b) {
        const auto* h = std::get_if<document::heading>(&b.is);
        return h != nullptr && h->text == text;
    });
}

} // namespace

TEST_CASE("how much to buy is left to be written in where no cloth is given, and told where one is") {
    const sheet<inch> s = mat("mat");
    const document::table* buy = nullptr;
    const document open = handout_of(s);
    buy = table(open, "What to buy");
    REQUIRE(buy != nullptr);
    REQUIRE(buy->rows.size() == 3); // cotton, wadding, ribbon
    CHECK(buy->rows[0][2].holds == document::in_cell::blank);
    const auto cotton = cloth_for<inch>(s, "cotton", {.width = 44_in}, {.sold = eighths_of_a_yard<inch>});
    const document told = handout_of(s, {cotton}, {.by = inch_ruler(16)});
    buy = table(told, "What to buy");
    CHECK(buy->rows[0][2].text == "3/8\xC2\xA0yd"); // 13 in laid: 13 1/2 in
    CHECK(buy->rows[1][2].holds == document::in_cell::blank);
    // A tie of 14 in across needs 14 in, its loop there and back and its free end: no less is bought.
    CHECK(buy->rows[2][2].text.find("yd") != std::string::npos);
}

TEST_CASE("what off a roll is bought is rounded up for each shop from the exact length") {
    const ruler both;
    // 36 in is a yard, and 91.44 cm: a shop that sells by 10 cm sells 1 m.
    CHECK(detail::sold_text(36_in, sold_as::off_a_roll, both) == "1 yd (1 m)");
    CHECK(detail::sold_text("36 1/16"_in, sold_as::off_a_roll, both) == "1 1/8 yd (1 m)");
    CHECK(detail::sold_text(90_cm, sold_as::off_a_roll, both) == "1 yd (90 cm)"); // 35.43 in
    CHECK(detail::sold_text(180_in, sold_as::as_told, both) == "5 yd (4.57 m)");
    CHECK(detail::sold_text("16"_in, sold_as::as_told, both) == "16 in (40.6 cm)");
}

// By hand: 13 in of cotton are laid, so 3/8 of a yard or 40 cm are bought. 3/8 x 12.50 = 4.6875; 2 x 0.80 = 1.60.
TEST_CASE(
    "where prices are given each line says what it costs, and the list is added up; otherwise no word is of money") {
    project<inch> p("Roll", {14_in, 11_in});
    p.add(piece<inch>("outer", "cotton", panel<inch>({14_in, 13_in}, {})));
    p.add(listed("zipper", 2, zipped_opening<inch>{12_in, 1_in, "1/2"_in}, zipper_supply<inch>::from_roll(180_in)));
    p.add(notion<inch>("eyelets").number("eyelets", 5).sold(sold_as::as_told));
    const sheet<inch> s = sheet_of(p);
    const auto cotton = cloth_for<inch>(s, "cotton", {.width = 44_in}, {.sold = eighths_of_a_yard<inch>});
    price_list shop{"EUR",
                    {{"cotton", read_fraction("12.50"), sold_per::a_yard}, {"zipper: sliders", read_fraction("0.80")}}};
    const auto list = [&](const price_list& prices) {
        return handout_of(s, {cotton}, {.by = inch_ruler(16), .prices = prices});
    };
    const document told = list(shop);
    const document::table* buy = table(told, "What to buy");
    REQUIRE(buy->columns.size() == 5);
    CHECK(buy->columns[4] == "Price, EUR");
    CHECK(buy->rows[0][4].text == "3/8\xC2\xA0yd x 12.50 = 4.69");
    CHECK(buy->rows[1][4].text == "2 x 0.80 = 1.60");
    CHECK(buy->rows[2][4].holds == document::in_cell::blank);
    CHECK(to_html(told).find("In all 6.29 EUR, for 2 of 3 lines: add the others. Each line is rounded to 0.01 EUR") !=
          std::string::npos);
    shop.all = {{"cotton", 9, sold_per::a_metre}, {"zipper: rolls", 6}, {"eyelets", read_fraction("0.25")}};
    const document metric = list(shop);
    CHECK(table(metric, "What to buy")->rows[0][4].text == "0.4\xC2\xA0m x 9.00 = 3.60");
    CHECK(to_html(metric).find("In all 10.85 EUR. Each") != std::string::npos); // 3.60 + 6.00 + 5 x 0.25
    CHECK(table(list({}), "What to buy")->columns.size() == 4);
    CHECK(to_html(list({})).find("In all") == std::string::npos);
    shop.all = {{"cotton", 3}}; // cloth by the piece
    CHECK_THROWS_AS(list(shop), price_error);
}

TEST_CASE("how many and how much of a thing is asked for together, and sizes say of which kind") {
    project<inch> p("Roll", {14_in, 11_in});
    p.add(piece<inch>("outer", "cotton", panel<inch>(p.finished(), {})));
    const zipped_opening<inch> z{.across = 12_in, .margin = 1_in, .beyond = "1/2"_in};
    p.add(listed("zipper", 2, z, zipper_supply<inch>::from_roll(180_in)));
    p.add(notion<inch>("filling")
              .figure("width", 14_in)
              .sold(sold_as::as_told)
              .figure("height", 11_in)
              .sold(sold_as::as_told));
    const document told = handout_of(sheet_of(p), {}, {.by = inch_ruler(16)});
    const document::table* buy = table(told, "What to buy");
    REQUIRE(buy != nullptr);
    REQUIRE(buy->rows.size() == 3);
    CHECK(buy->rows[1][2].text == "sliders: 2; rolls: 1"); // 2 of 10 in and an inch more go on 180 in
    CHECK(buy->rows[1][3].text == "length of a roll: 5\xC2\xA0yd");
    CHECK(buy->rows[2][2].text == "width: 14\xC2\xA0in; height: 11\xC2\xA0in"); // nothing is counted of it
    CHECK(buy->rows[2][3].text.empty());
}

// 3/8 in is 0.9525 cm and 14 in are 35.56 cm, as 1 in is 2.54 cm (NIST SP 811): no rounding.
TEST_CASE("a sum is exact in centimetres where those alone are read, and stays metric where it was worked out so") {
    const ruler metric{.shows = units_shown::centimetres};
    const auto f = figure<inch>().plus(14_in, "finished").plus_times(2, {"3/8"_in, "1/4"_in}, "in hem");
    CHECK(detail::working_text(f, metric) == "38.735 cm = 35.56 cm finished + 2 x (0.9525 + 0.635) cm in hem");
    CHECK(detail::working_text(f, {}) == to_text(f));
    const auto m = figure<centimetre>().plus(3_cm, "finished").plus(1_cm, "hem");
    CHECK(detail::working_text(m, {.shows = units_shown::inches}) == "4 cm = 3 cm finished + 1 cm hem");
}

TEST_CASE("where centimetres alone are read no inch is on a page of it, its warnings and bars among it") {
    sheet<inch> s = mat("mat");
    s.bulk = bulk_warnings(s, 2);
    REQUIRE_FALSE(s.bulk.empty());
    s.asked = finished_size<inch>{"14 1/64"_in, 11_in};
    const auto cotton = cloth_for<inch>(s, "cotton", {.width = 44_in}, {.sold = eighths_of_a_yard<inch>});
    const document d = handout_of(s, {cotton}, {.by = {.shows = units_shown::centimetres}});
    static const std::regex inches("[0-9](\xC2\xA0| )(in|yd)( |,|;|\\.|\\)|$)|inch|yard");
    std::size_t words = 0;
    for (const page& p : pages_of(d))
        for (const page_words& w : p.words) {
            ++words;
            CHECK_MESSAGE(!std::regex_search(w.text, inches), w.text);
        }
    CHECK(words > 200);
    CHECK(to_html(d).find("Rows of stitching on") != std::string::npos); // a sentence, as it stands by itself
}

TEST_CASE("marks of one name share a row only where they are marked alike") {
    project<inch> p("Mat", {14_in, 11_in});
    auto& mat = p.add(piece<inch>("mat", "cotton", panel<inch>(p.finished(), {})));
    const std::vector<short_mark<inch>> at_top = {{edge::top, "1/2"_in}}, at_foot = {{edge::bottom, "1/2"_in}};
    mat.mark("quarter", edge::left, at<finished_edge>(3_in), at_top);
    mat.mark("quarter", edge::left, at<finished_edge>(7_in), at_top);
    mat.mark("quarter", edge::left, at<finished_edge>(10_in), at_foot);
    const document told = handout_of(sheet_of(p), {}, {.by = inch_ruler(16)});
    const document::table* lines = table(told, "Lines on A: mat");
    REQUIRE(lines != nullptr);
    REQUIRE(lines->rows.size() == 2);
    CHECK(lines->rows[0][2].text == "3\xC2\xA0in, 7\xC2\xA0in");
    CHECK(lines->rows[1][1].text.find("bottom edge") != std::string::npos);
    CHECK(lines->rows[1][2].text == "10\xC2\xA0in");
}

TEST_CASE("workings, author, licence and date are there where they are asked for") {
    const sheet<inch> s = mat("mat");
    CHECK(has_heading(handout_of(s), "Workings"));
    const document d =
        handout_of(s, {}, {.author = "The society", .licence = "Free to copy", .date = "12 May", .workings = false});
    CHECK_FALSE(has_heading(d, "Workings"));
    const std::string html = to_html(d);
    CHECK(html.find("<p>The society. Free to copy. 12 May.</p>") != std::string::npos);
    CHECK(d.foot.find("12 May") != std::string::npos);
}

TEST_CASE("whatever its names hold, a handout is well-formed") {
    const document d = handout_of(mat("<script>alert(1)</script>&\"'"));
    pugi::xml_document read;
    CHECK(read.load_string(to_html(d).c_str(), pugi::parse_full));
    CHECK(read.select_nodes("//script").empty());
    CHECK(read.select_nodes("//h1").size() == 1);
}

TEST_CASE("every caution of a sheet stands in its handout, in full and once") {
    const sheet<inch> s = mat("mat");
    REQUIRE(s.cautions.size() > 3);
    const std::string html = to_html(handout_of(s));
    for (const sheet_caution& c : s.cautions) {
        const std::string said = detail::escaped(c.sentence);
        const auto at = html.find(said);
        REQUIRE_MESSAGE(at != std::string::npos, c.sentence);
        CHECK_MESSAGE(html.find(said, at + 1) == std::string::npos, c.sentence);
    }
}

// Half of 1/16 in at each of two cuts and two folds is 1/8 in; half of 0.1 cm is 0.2 cm.
TEST_CASE("what is looked at in the end has how far it may be off, and room for what was measured") {
    const sheet<inch> s = mat("mat");
    const std::pair<ruler, std::string> read[] = {{inch_ruler(16), "1/8\xC2\xA0in"},
                                                  {ruler{.shows = units_shown::centimetres}, "0.2\xC2\xA0"
                                                                                             "cm"}};
    for (const auto& [by, off] : read) {
        const document d = handout_of(s, {}, {.by = by});
        const document::table* t = table(d, "Measure and look");
        REQUIRE(t != nullptr);
        REQUIRE(t->columns.size() == 5);
        CHECK(t->columns[2] == "Within");
        for (const auto& row : t->rows) {
            REQUIRE(row.size() == 5);
            CHECK(row[3].holds == document::in_cell::blank);
            CHECK(row[4].holds == document::in_cell::tick);
            const bool size =
                row[0].text.find("inished") != std::string::npos || row[0].text.find("diagonal") != std::string::npos;
            CHECK(row[2].text == (size ? off : "exactly"));
        }
    }
}
