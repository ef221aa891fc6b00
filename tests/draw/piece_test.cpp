// draw/piece.hpp: what is drawn is true to scale, what is written is right, and the document is well-formed.
#include "draw/picture.hpp"
#include <turncloth/page/detail/svg_writer.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <locale>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

using namespace turncloth;
using namespace turncloth::drawn;

TEST_CASE("a drawing is an SVG 1.1 document whose page is in millimetres, A4 or Letter, upright or on its side") {
    const picture tall(page_of(backing())), wide(page_of(plain(60_in, 2_in)));
    CHECK(std::string(tall.root().name()) == "svg");
    CHECK(std::string(tall.root().attribute("xmlns").value()) == "http://www.w3.org/2000/svg");
    CHECK(std::string(tall.root().attribute("version").value()) == "1.1");
    // ISO 216: A4 is 210 x 297 mm.
    CHECK(std::string(tall.root().attribute("width").value()) == "210mm");
    CHECK(std::string(tall.root().attribute("height").value()) == "297mm");
    CHECK(tall.page().width == 210);
    CHECK(tall.page().height == 297);
    CHECK(wide.page().width == 297);
    CHECK(wide.page().height == 210);
    // ANSI Letter is 8 1/2 x 11 in, 215.9 x 279.4 mm.
    const picture letter(page_of(plain(60_in, 2_in), {}, {.project = "", .on = paper::letter}));
    CHECK(letter.page().width == 279.4);
    CHECK(letter.page().height == 215.9);
}

TEST_CASE("what is drawn is true to the scale that is written") {
    // By hand, in mm: cut 22 x 14 in = 558.8 x 355.6; folds at 1/2 and 1 in = 12.7 and 25.4 from every edge, stitching
    // at 3 x 1/2 - 1/8 = 1 3/8 in = 34.925; pocket lines at 1 + 4 = 5 in = 127, 228.6, 330.2, 431.8 from the left. The
    // first zipper's centre is 4 in = 101.6 from the cut top, its stitching 1/4 in = 6.35 to either side, and the slit
    // 1/8 in = 3.175; it opens 1 + 1 = 2 in = 50.8 from the left edge, to 20 in = 508, and is stitched 1/2 in further.
    const picture p(page_of(roll_outer()));
    const box cut = p.rectangle("cut"), finished = p.rectangle("finished");
    CHECK(cut.width * p.scale() == near(558.8));
    CHECK(cut.height * p.scale() == near(355.6));
    CHECK((finished.x - cut.x) * p.scale() == near(25.4));
    CHECK((finished.y - cut.y) * p.scale() == near(25.4));
    CHECK(finished.width * p.scale() == near(508));
    CHECK(finished.height * p.scale() == near(304.8));
    const auto folds = p.on_cloth("fold"), stitching = p.on_cloth("stitching"), marks = p.on_cloth("mark"),
               slits = p.on_cloth("slit");
    CHECK(folds.size() == 8);
    for (const double at : {12.7, 25.4}) {
        CHECK(has(folds, {{0, at}, {558.8, at}}));
        CHECK(has(folds, {{0, 355.6 - at}, {558.8, 355.6 - at}}));
        CHECK(has(folds, {{at, 0}, {at, 355.6}}));
        CHECK(has(folds, {{558.8 - at, 0}, {558.8 - at, 355.6}}));
    }
    CHECK(has(stitching, {{0, 34.925}, {558.8, 34.925}}));
    CHECK(has(stitching, {{38.1, 95.25}, {520.7, 95.25}}));
    CHECK(has(stitching, {{38.1, 107.95}, {520.7, 107.95}}));
    CHECK(marks.size() == 4);
    for (const double at : {127.0, 228.6, 330.2, 431.8})
        CHECK(has(marks, {{at, 0}, {at, 355.6}}));
    CHECK(has(slits, {{50.8, 98.425}, {508, 98.425}}));
    CHECK(has(slits, {{50.8, 104.775}, {508, 104.775}}));
    check_true(p, roll_outer());
    check_true(picture(page_of(backing())), backing());
}

TEST_CASE("the scale is the largest of a plain series at which the piece fits, and its bars are true") {
    // Room for a plain piece on A4 is less than 277 mm, and more than 200 where it lies on its side.
    struct {
        length<inch> width;
        double scale;
    } const expected[] = {{"7 7/8"_in, 1}, {15_in, 2}, {31_in, 4}, {60_in, 8}, {90_in, 10}, {157_in, 20}};
    for (const auto& e : expected)
        CHECK(picture(page_of(plain(e.width, e.width / 8))).scale() == e.scale);
    const std::set<double> series = {1, 2, 4, 5, 8, 10, 20, 40, 50, 80, 100, 200, 400};
    for (const auto& piece : {roll_outer(), plain(400_in, 2_in), plain(3_in, 90_in), plain("0.1"_in, "0.1"_in)}) {
        const picture p(page_of(piece));
        CHECK(series.count(p.scale()) == 1);
        CHECK(p.mentions("scale 1:"));
        for (const auto& [unit, size] : {std::pair{" in", 25.4}, std::pair{" cm", 10.0}}) {
            bool found = false;
            for (const word& w : p.words()) { // a whole number and the unit, beside the end of a bar
                if (w.text.find_first_not_of("0123456789") != w.text.size() - 3 ||
                    w.text.find(unit) == std::string::npos)
                    continue;
                for (const segment& s : p.lines("scale"))
                    found |= std::fabs(s.b.x + 1.5 - w.where.x) < 1e-6 && s.a.x < s.b.x &&
                             (s.b.x - s.a.x) * p.scale() == near(std::strtod(w.text.c_str(), nullptr) * size);
            }
            CHECK(found);
        }
    }
}

TEST_CASE("every kind of line has a pattern and weight of its own, in black, and the legend shows those there are") {
    const picture p(page_of(roll_outer()));
    std::set<std::string> dashes, weights;
    for (const char* kind : {"cut", "finished", "fold", "stitching", "mark", "slit"}) {
        REQUIRE(p.groups(kind).size() == 1);
        dashes.insert(p.groups(kind)[0].attribute("stroke-dasharray").value());
        weights.insert(p.groups(kind)[0].attribute("stroke-width").value());
        const auto in_legend = [&](const pugi::xml_node& g) {
            const auto own = p.groups(kind)[0];
            return std::string(g.attribute("stroke-dasharray").value()) == own.attribute("stroke-dasharray").value() &&
                   std::string(g.attribute("stroke-width").value()) == own.attribute("stroke-width").value();
        };
        const auto legend = p.groups("legend");
        CHECK(std::count_if(legend.begin(), legend.end(), in_legend) == 1);
    }
    CHECK(dashes.size() == 6);
    CHECK(weights.size() == 6);
    for (const char* words : {"cut edge", "finished edge", "fold", "stitching", "mark", "slit"})
        CHECK(p.count(words) == 1);
    const picture bare(page_of(plain(5_in, 5_in)));
    CHECK(bare.says("cut edge"));
    for (const char* words : {"finished edge", "fold", "stitching", "mark", "slit"})
        CHECK_FALSE(bare.says(words));
    CHECK(bare.groups("legend").size() == 1);
    CHECK(bare.groups("finished").empty());
    for (const auto& a : p.root().select_nodes("//@stroke | //@fill")) {
        const std::string colour = a.attribute().value();
        CHECK((colour == "#000" || colour == "#fff" || colour == "none"));
    }
}

TEST_CASE("the title block and the dimensions say what is cut and what it finishes") {
    const picture p(page_of(roll_outer(), {}, {.project = "Hand-tool roll"}));
    // 14 in = 35.56 cm, 22 in = 55.88 cm, 12 in = 30.48 cm, 20 in = 50.8 cm.
    for (const char* words : {"Hand-tool roll", "outer", "cut 1 of canvas", "cut 22 x 14 in (55.9 x 35.6 cm)",
                              "finishes 20 x 12 in (50.8 x 30.5 cm)", "cut 22 in (55.9 cm)", "cut 14 in (35.6 cm)",
                              "finished 20 in (50.8 cm)", "finished 12 in (30.5 cm)"})
        CHECK(p.count(words) == 1);
    CHECK(p.mentions("every edge: self-binding; fold at 1/2 in"));
    CHECK(p.mentions("stitch at 1 3/8 in"));
    CHECK(p.mentions("rounded to 1/16 in and 0.1 cm"));
    const picture metric(page_of(backing(), {.shows = units_shown::centimetres}));
    CHECK(metric.says("cut 43 x 76 cm"));
    CHECK(metric.says("finishes 38 x 64 cm"));
    CHECK(metric.says("finished 64 cm"));
    CHECK_FALSE(metric.mentions(" in ("));
    CHECK(picture(page_of(plain(5_in, 7_in))).says("cut and finished 7 in (17.8 cm)"));
    CHECK(std::string(p.root().child("title").text().get()) == "Hand-tool roll: outer");
    CHECK(std::string(p.root().child("desc").text().get()).find("scale 1:") != std::string::npos);
}

TEST_CASE("a dimension spans what it names") {
    const picture p(page_of(roll_outer()));
    const auto dimensions = p.on_cloth("dimension");
    const auto spans = [&](double from, double to, bool level) {
        return std::any_of(dimensions.begin(), dimensions.end(), [&](const segment& s) {
            return level ? s.a.y == s.b.y && s.a.x == near(from) && s.b.x == near(to)
                         : s.a.x == s.b.x && s.a.y == near(from) && s.b.y == near(to);
        });
    };
    CHECK(spans(0, 558.8, true));
    CHECK(spans(25.4, 533.4, true));
    CHECK(spans(0, 355.6, false));
    CHECK(spans(25.4, 330.2, false));
}

TEST_CASE("a mark is labelled with its distance from the cut edge named, and a leader joins the two") {
    // As above: 5, 9, 13, 17 in = 12.7, 22.86, 33.02, 43.18 cm.
    const picture p(page_of(roll_outer()));
    for (const char* words :
         {"5 in (12.7 cm) from the left", "9 in (22.9 cm) from the left", "13 in (33 cm) from the left",
          "17 in (43.2 cm) from the left", "3 3/4 in (9.5 cm) from the top", "4 1/4 in (10.8 cm) from the top",
          "2 in (5.1 cm) from the left", "20 1/2 in (52.1 cm) from the left"})
        CHECK(p.count(words) == 1);
    CHECK(p.count("pocket line") == 4);
    CHECK(p.says("slit behind the zipper, begins"));
    CHECK(p.says("stitch zipper, ends"));
    const box cut = p.rectangle("cut");
    for (const auto& mark : p.lines("mark")) {
        const auto leaders = p.leaders();
        const auto joins = [&](const std::vector<page_point>& l) {
            return l.front().x == near(mark.a.x) && l.front().y == near(cut.y) &&
                   std::any_of(p.words().begin(), p.words().end(), [&](const word& w) {
                       const double x = w.where.x + w.where.width / 2, y = w.where.bottom();
                       return w.text.find("from the left") != std::string::npos && std::fabs(l.back().x - x) < 3 &&
                              std::fabs(l.back().y - y) < 3;
                   });
        };
        CHECK(std::count_if(leaders.begin(), leaders.end(), joins) == 1);
    }
    // From the bottom and the right edge too: 3 in + 1/2 in of seam.
    project<inch> pad("Kneeling pad", finished_size(16_in, 10_in));
    pad.add({"top", "canvas", panel(pad.finished(), all_round(seam("1/2"_in)))})
        .mark("handle", edge::bottom, at<finished_edge>(3_in))
        .mark("handle", edge::right, at<finished_edge>(3_in));
    const picture q(page_of(first_of(pad), inch_ruler(8)));
    CHECK(q.says("3 1/2 in from the bottom"));
    CHECK(q.says("3 1/2 in from the right"));
    check_true(q, first_of(pad));
    // The twelve labels beside the backing, each by the leader that starts where its mark meets the cut right edge.
    const picture r(page_of(backing()));
    for (const auto& mark : r.lines("mark")) {
        const auto leaders = r.leaders();
        const auto joins = [&](const std::vector<page_point>& l) {
            return l.front().x == near(mark.b.x) && l.front().y == near(mark.b.y) &&
                   std::any_of(r.words().begin(), r.words().end(), [&](const word& w) {
                       return w.text.find("from the top") != std::string::npos &&
                              std::fabs(l.back().x - w.where.x) < 3 && std::fabs(l.back().y - w.where.bottom()) < 3;
                   });
        };
        CHECK(std::count_if(leaders.begin(), leaders.end(), joins) == 1);
    }
}

TEST_CASE("the outline of a piece sewn onto another is drawn and labelled once") {
    // By hand: 2 in and 4 in from the finished edges, 2 1/2 and 4 1/2 in from the cut ones; the pocket is 6 x 5 in.
    project<inch> p("Seed-packet organiser", finished_size(14_in, 20_in));
    p.add({"backing", "canvas", panel(p.finished(), all_round(seam("1/2"_in)))});
    p.add({"pocket", "clear film", panel(finished_size(6_in, 5_in), all_round(seam("1/4"_in)))});
    p.add(placing<inch>{"pocket", "backing", at<finished_edge>(2_in), at<finished_edge>(4_in)});
    const picture drawn(page_of(first_of(p), inch_ruler(16)));
    check_true(drawn, first_of(p));
    check_legible(drawn);
    CHECK(has(drawn.on_cloth("mark"), {{63.5, 114.3}, {63.5, 241.3}}));
    CHECK(has(drawn.on_cloth("mark"), {{63.5, 114.3}, {215.9, 114.3}}));
    for (const char* words : {"2 1/2 in from the left", "8 1/2 in from the left", "4 1/2 in from the top",
                              "9 1/2 in from the top", "left edge of pocket", "top edge of pocket, ends"})
        CHECK(drawn.count(words) == 1);
    CHECK_FALSE(drawn.mentions("begins"));
}

TEST_CASE("names may hold any character, and read back as they were") {
    const std::string hostile = "<b a=\"1\">&amp; 'x' ]]> \xC3\xA9 \xE2\x82\xAC";
    project<inch> p(hostile, finished_size(5_in, 5_in));
    p.add({hostile, hostile, panel(p.finished())}).mark(hostile, edge::top, at<cut_edge>(2_in));
    const picture drawn(page_of(first_of(p), {}, {.project = hostile}));
    CHECK(std::string(drawn.root().child("title").text().get()) == hostile + ": " + hostile);
    CHECK(drawn.count(hostile) >= 2);
    check_legible(drawn);

    // No XML 1.0 document may hold these (XML 1.0, production 2), and pugixml would let some pass: U+FFFD instead.
    CHECK(detail::escaped(std::string("a\0b\x01\x1F"
                                      "c",
                                      6)) == "a\xEF\xBF\xBD"
                                             "b\xEF\xBF\xBD\xEF\xBF\xBD"
                                             "c");
    CHECK(detail::escaped("<&\"'>") == "&lt;&amp;&quot;&#39;&gt;");
    CHECK(detail::escaped("\xFF") == "\xEF\xBF\xBD");
    CHECK(detail::escaped("\xC3") == "\xEF\xBF\xBD");
    CHECK(detail::escaped("\xC0\xAF") == "\xEF\xBF\xBD\xEF\xBF\xBD");                 // too long a form of '/'
    CHECK(detail::escaped("\xED\xA0\x80") == "\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD"); // a surrogate
    CHECK(detail::escaped("\xEF\xBF\xBF") == "\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD"); // U+FFFF
    CHECK(detail::escaped("\xF0\x9F\xA7\xB5 \xF4\x8F\xBF\xBD\t") == "\xF0\x9F\xA7\xB5 \xF4\x8F\xBF\xBD\t");
}

TEST_CASE("a film is cautioned about at the foot of its own page") {
    CHECK(picture(page_of(backing())).mentions("Press beside film"));
    CHECK_FALSE(picture(page_of(roll_outer())).mentions("Press beside film"));
}

TEST_CASE("the same piece gives the same document, in any locale") {
    const std::string once = to_svg(page_of(roll_outer()));
    struct commas : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
        char do_thousands_sep() const override { return '.'; }
        std::string do_grouping() const override { return "\3"; }
    };
    const std::locale before = std::locale::global(std::locale(std::locale::classic(), new commas));
    const std::string again = to_svg(page_of(roll_outer()));
    std::locale::global(before);
    CHECK(again == once);
    CHECK(detail::number(0) == "0");
    CHECK(detail::number(-0.0000001) == "0");
    CHECK(detail::number(-12.5) == "-12.5");
    CHECK(detail::number(1234.567891) == "1234.567891");
    CHECK(detail::number(0.000001) == "0.000001");
}

TEST_CASE("a ruler without a graduation is refused") {
    CHECK_THROWS_AS(page_of(roll_outer(), {.inches = 0_in}), range_error);
    CHECK_THROWS_AS(page_of(roll_outer(), {.centimetres = -(1_cm)}), range_error);
}

namespace {

/// What a page draws in the pen of a meaning.
std::vector<page_stroke> strokes_of(const page& p, std::string_view meaning) {
    std::vector<page_stroke> all;
    for (const page_stroke& s : p.strokes)
        if (s.with.means.text() == meaning)
            all.push_back(s);
    return all;
}

} // namespace

TEST_CASE("corners that are cut out are notches of the outline") {
    // Cut 19 x 13 in with squares of 1 in out of its corners; on A4 at 1:4.
    project<inch> p("pad", finished_size(16_in, 10_in));
    p.add({"panel", "canvas", panel<inch>::from_cut(cut_size(19_in, 13_in), all_round(seam("1/2"_in)))})
        .count(2)
        .corners_cut_out(1_in, "1/2"_in);
    const page drawn = page_of(sheet_of(p).pieces[0]);
    const auto cut = strokes_of(drawn, "cut");
    const page_stroke& outline = cut.front();
    REQUIRE(outline.points.size() == 12);
    CHECK(outline.closed);
    const double inch_on_page = 25.4 / 4;
    double left = 1e9, right = 0, top = 1e9, bottom = 0;
    for (const page_point& at : outline.points) {
        left = std::min(left, at.x);
        right = std::max(right, at.x);
        top = std::min(top, at.y);
        bottom = std::max(bottom, at.y);
    }
    CHECK(right - left == doctest::Approx(19 * inch_on_page));
    CHECK(bottom - top == doctest::Approx(13 * inch_on_page));
    for (const page_point& at : outline.points) { // none is at a corner of the piece
        CHECK_FALSE(((at.x < left + 0.9 * inch_on_page || at.x > right - 0.9 * inch_on_page) &&
                     (at.y < top + 0.9 * inch_on_page || at.y > bottom - 0.9 * inch_on_page)));
    }
}

TEST_CASE("an arrow runs from every fold of a pleat to where it is brought") {
    // Three box pleats, each back and forward 2 in at both sides: 6 arrows of 2 in, three to the left, three to the right.
    project<inch> p("cover", finished_size(12_in, 6_in));
    p.add({"flounce", "canvas", panel(finished_size(24_in, 6_in))})
        .pleated(edge::left, pleats_near(pleat::box, 12_in, {.width = 4_in, .depth = 1_in}));
    const page drawn = page_of(sheet_of(p).pieces[0]);
    const auto cut = strokes_of(drawn, "cut").front().points;
    const double inch_on_page = (cut[1].x - cut[0].x) / 24;
    double to_left = 0, to_right = 0;
    for (const page_stroke& s : strokes_of(drawn, "brought to"))
        if (s.points.size() == 2) { // its shaft
            const double along = (s.points[1].x - s.points[0].x) / inch_on_page;
            CHECK(s.points[0].y == s.points[1].y);
            (along < 0 ? to_left : to_right) += along;
        }
    CHECK(to_left == doctest::Approx(-6));
    CHECK(to_right == doctest::Approx(6));
}

TEST_CASE("an eyelet is a cross, its hole and its rim, true to scale") {
    project<inch> p("rack", finished_size(18_in, 22_in));
    const auto hem = double_turned_hem("1/4"_in, "3/4"_in, "1/8"_in);
    auto& backing =
        p.add({"backing", "canvas", panel(p.finished(), {heading(3_in, "1/2"_in, "1/8"_in), hem, hem, hem})});
    const eyelet<inch> brass{"3/8"_in, "5/8"_in};
    backing.eyelets(eyelets(backing.shape(), 4, brass, {.margin = "1 3/16"_in, .clear = "1/8"_in}));
    const page drawn = page_of(sheet_of(p).pieces[0]);
    const auto cut = strokes_of(drawn, "cut").front().points; // 20 in wide
    const double inch_on_page = (cut[1].x - cut[0].x) / 20;
    std::vector<double> centres, sizes;
    for (const page_stroke& s : strokes_of(drawn, "eyelet"))
        if (s.closed) {
            const auto [least, most] = std::minmax_element(
                s.points.begin(), s.points.end(), [](const page_point& a, const page_point& b) { return a.x < b.x; });
            centres.push_back(((least->x + most->x) / 2 - cut[0].x) / inch_on_page);
            sizes.push_back((most->x - least->x) / inch_on_page);
        }
    // 18 - 2 x 1 3/16 - 5/8 = 15 in between the outer centres: 5 in apart from 1 1/2 in on, and 1 in more to the cut edge.
    REQUIRE(centres.size() == 8);
    for (std::size_t i = 0; i < 8; ++i) {
        CHECK(centres[i] == doctest::Approx(2.5 + 5 * static_cast<double>(i / 2)));
        CHECK(sizes[i] == doctest::Approx(i % 2 == 0 ? 0.375 : 0.625));
    }
}

TEST_CASE("the edges that distances are from are ticked, the top and the left named, and an arrow runs up the grain") {
    const picture p(page_of(roll_outer()));
    const box cut = p.rectangle("cut");
    std::size_t at_top = 0, at_left = 0;
    for (const segment& s : p.lines("datum")) { // each begins on its edge and leads out of it
        at_top += s.a.y == cut.y && s.b.y < cut.y ? 1U : 0U;
        at_left += s.a.x == cut.x && s.b.x < cut.x ? 1U : 0U;
    }
    CHECK(at_top == 3);
    CHECK(at_left == 3);
    CHECK(p.says("measured from"));
    for (const char* words : {"top", "left", "grain"})
        CHECK(p.count(words) == 1);
    REQUIRE(p.lines("grain").size() == 1);
    const segment grain = p.lines("grain")[0];
    CHECK(grain.a.x == grain.b.x);
    CHECK(grain.b.y < grain.a.y);
    CHECK((cut.y < grain.b.y && grain.a.y < cut.bottom() && cut.x < grain.a.x && grain.a.x < cut.right()));
    CHECK(p.mentions("The grain runs up the piece"));
    const picture film(page_of(backing()));
    CHECK(film.lines("grain").empty());
    CHECK_FALSE(film.mentions("The grain"));
    const picture bare(page_of(plain(5_in, 5_in)));
    CHECK(bare.says("top"));
    CHECK(bare.lines("datum").empty()); // nothing is measured
}
