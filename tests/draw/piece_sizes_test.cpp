// draw/piece.hpp: words find room at any size, neither on one another nor on a line.
#include "at_random.hpp"
#include "draw/picture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

using namespace turncloth;
using namespace turncloth::drawn;

TEST_CASE("many marks become numbers, and a list says what each is") {
    const auto strip = with_marks(100_in, 3_in, edge::left, 201);
    const picture p(page_of(strip));
    check_legible(p);
    check_true(p, strip);
    CHECK(p.says("eyelet,"));
    CHECK(p.says("from the cut left edge:"));
    for (std::int64_t k = 1; k <= 200; ++k) // k x 100/201 in from the finished edge, 1/2 in beyond the cut edge
        CHECK(p.count(std::to_string(k) + ": " +
                      to_text(length_of<inch>(fraction(100 * k, 201) + fraction(1, 2)), ruler())) == 1);
    // A number written beside the piece stands at the end of its own mark's leader.
    std::size_t numbers = 0;
    const auto leaders = p.leaders();
    for (const word& w : p.words()) {
        if (w.text.find_first_not_of("0123456789") != std::string::npos)
            continue;
        ++numbers;
        const double at = 25.4 * (std::stod(w.text) * 100 / 201 + 0.5), middle = w.where.x + w.where.width / 2;
        CHECK(std::any_of(leaders.begin(), leaders.end(), [&](const std::vector<page_point>& l) {
            return (l.front().x - p.rectangle("cut").x) * p.scale() == near(at) &&
                   std::fabs(l.back().x - middle) < 0.01;
        }));
    }
    CHECK(numbers >= 5);
    CHECK(numbers == leaders.size());

    // Two sides: the numbers go on, k x 2/61 in of 60 marks from the left after k x 60/61 in of 60 from the top.
    project<inch> p2("Shed", finished_size(2_in, 60_in));
    p2.add({"apron", "cotton", panel(p2.finished())})
        .mark("row", edge::top, divided<finished_edge>(60_in, 61))
        .mark("column", edge::left, divided<finished_edge>(2_in, 61));
    const picture two(page_of(first_of(p2)));
    check_legible(two);
    CHECK(two.count("1: 1 in (2.5 cm)") == 1);       // 60/61 = 0.98 in = 2.498 cm
    CHECK(two.count("60: 59 in (149.9 cm)") == 1);   // 59.016 in = 149.90 cm
    CHECK(two.count("61: 1/16 in (0.1 cm)") == 1);   // 2/61 = 0.0328 in = 0.083 cm
    CHECK(two.count("120: 1 15/16 in (5 cm)") == 1); // 120/61 = 1.967 in = 4.997 cm

    const picture more(page_of(with_marks(100_in, 3_in, edge::left, 2001)));
    check_legible(more);
    std::size_t listed = 0, left_out = 0;
    for (const word& w : more.words()) {
        listed += w.text.find(": ") != std::string::npos && w.text.find_first_not_of("0123456789") == w.text.find(": ");
        if (w.text.rfind("and ", 0) == 0 && w.text.find(" more") != std::string::npos)
            left_out = std::stoul(w.text.substr(4));
    }
    CHECK(listed + left_out == 2000);
    CHECK(left_out > 0);
}

TEST_CASE("words neither overlap, nor cross a line, nor leave the page, at any size") {
    check_legible(picture(page_of(roll_outer(), {}, {.project = "Hand-tool roll"})));
    check_legible(picture(page_of(backing())));
    check_legible(
        picture(page_of(backing(), {.shows = units_shown::centimetres}, {.project = "", .on = paper::letter})));
    const auto all = all_round(self_binding("1/100"_in));
    for (const paper on : {paper::a4, paper::letter})
        for (const auto& piece : {plain(1_in, 1_in), plain(400_in, 2_in), plain(2_in, 400_in),
                                  plain("0.1"_in, "0.1"_in, all), plain(118_in, 118_in, all), plain(5280_in, "1/8"_in),
                                  with_marks(400_in, 2_in, edge::left, 201), with_marks(2_in, 400_in, edge::top, 201),
                                  with_marks(1_in, 1_in, edge::top, 14), with_marks(1_in, 1_in, edge::left, 40),
                                  with_marks(2_in, 60_in, edge::left, 60), with_marks(60_in, 2_in, edge::top, 30)}) {
            INFO(to_text(piece.cut));
            const picture p(page_of(piece, {}, {.project = "An allotment", .on = on}));
            check_legible(p);
            check_true(p, piece);
        }
}

// By hand: cut 61 1/2 x 2 1/2 in, six times as long as it is high is 15 in, 381 mm: a page of 297 mm has it at 1:2. Whole it is
// 1562 mm long, which fits at 1:8 at most.
TEST_CASE("a long narrow piece is drawn larger with a part left out, where nothing is lost by it") {
    const auto hem = all_round(double_turned_hem("1/4"_in, "1/2"_in));
    for (const bool upright : {false, true}) {
        const auto strip = upright ? plain(1_in, 60_in, hem) : plain(60_in, 1_in, hem);
        const picture p(page_of(strip));
        CHECK(p.scale() <= 4);
        CHECK(unbroken_cloth(p, mm(strip.cut.width()), mm(strip.cut.height())).is_broken());
        CHECK(p.says("cut 61 1/2 in (156.2 cm)"));
        CHECK(p.says("finished 60 in (152.4 cm)"));
        CHECK(p.says("left out"));
        check_true(p, strip);
        check_legible(p);
    }
    // Two marks near one end stay, and what is left out lies beyond them; a row of them leaves no stretch alone.
    project<inch> p("Strip", finished_size(60_in, 2_in));
    p.add({"strip", "cotton", panel(p.finished())})
        .mark("loop", edge::left, at<finished_edge>(3_in))
        .mark("hook", edge::left, at<finished_edge>(5_in));
    const picture marked(page_of(first_of(p)));
    CHECK(unbroken_cloth(marked, mm(60_in), mm(2_in)).is_broken());
    check_true(marked, first_of(p));
    check_legible(marked);
    for (const auto& whole :
         {with_marks(60_in, 2_in, edge::left, 46), plain(24_in, 6_in, hem), plain(6_in, "1/2"_in)}) {
        const picture as_it_is(page_of(whole));
        CHECK_FALSE(unbroken_cloth(as_it_is, mm(whole.cut.width()), mm(whole.cut.height())).is_broken());
        check_true(as_it_is, whole);
    }
}

TEST_CASE("pieces of random sizes, finishes and marks are true and legible") {
    at_random::seeded<std::mt19937> random(20240611);
    const auto below = [&](std::int64_t n) {
        return static_cast<std::int64_t>(random() % static_cast<std::uint32_t>(n));
    };
    for (const int round : random.cases(150)) {
        const auto size = [&] {
            const std::int64_t most = std::int64_t{64} << below(8), sixteenths = 1 + below(most), sevenths = below(7);
            return length_of<inch>(fraction(sixteenths, 16) + fraction(sevenths, 7));
        };
        const length<inch> width = size(), height = size(),
                           least = std::min(width, height, [](auto a, auto b) { return a.value() < b.value(); });
        const auto any = [&]() -> finish<inch> {
            const auto part = least / (8 + below(30));
            switch (below(6)) {
            case 0:
                return seam(part);
            case 1:
                return self_binding(part, part / 4);
            case 2:
                return double_turned_hem(part / 3, part);
            case 3:
                return casing(part * 2, part);
            case 4:
                return separate_binding(part);
            default:
                return {};
            }
        };
        project<inch> p("Shed", finished_size(width, height));
        auto& one =
            p.add({"piece " + std::to_string(round), "cloth", panel(p.finished(), {any(), any(), any(), any()})});
        for (const edge e : all_edges)
            for (std::int64_t n = below(4) == 0 ? below(60) : below(4); n > 0; --n) {
                const std::string what(static_cast<std::size_t>(1 + below(30)), 'n');
                one.mark(what, e, at<finished_edge>((is_level(e) ? height : width) * fraction(below(1000), 1000)));
            }
        if (below(3) == 0) { // two zippers, from the top or the left
            const auto way = below(2) == 0 ? edge::top : edge::left;
            const auto across = (way == edge::top ? width : height) * fraction(7, 8),
                       deep = way == edge::top ? height : width;
            p.add(zipper<inch>{one.name(),
                               way,
                               {at<finished_edge>(deep / 4), at<finished_edge>(deep / 2)},
                               {across, across / 10, across / 20},
                               deep / 8,
                               deep / (9 + below(50)),
                               zipper_supply<inch>::from_roll(width + height)});
        }
        const auto piece = first_of(p);
        const ruler by{.shows = static_cast<units_shown>(below(3))};
        const picture drawn(page_of(piece, by, {.project = p.name(), .on = below(2) == 0 ? paper::a4 : paper::letter}));
        INFO("cut ", to_text(piece.cut));
        check_true(drawn, piece);
        check_legible(drawn);
    }
}

TEST_CASE("very long names are shortened, and no figure is") {
    const std::string name(300, 'W');
    std::string many_words;
    for (int i = 0; i < 60; ++i)
        many_words += "word ";
    project<inch> p(name, finished_size(5_in, 5_in));
    p.add({name, many_words, panel(p.finished())})
        .mark(name, edge::top, at<cut_edge>(2_in))
        .mark(many_words, edge::left, at<cut_edge>("1 1/16"_in));
    const picture drawn(page_of(first_of(p), {}, {.project = name}));
    check_legible(drawn);
    CHECK(drawn.says("2 in (5.1 cm) from the top"));
    CHECK(drawn.says("1 1/16 in (2.7 cm) from the left"));
    CHECK(drawn.mentions("WW..."));
}

TEST_CASE("a measurement stays together over the lines of a text, but may part from its second unit") {
    const auto f = single_turned_hem("1 15/16"_in);
    const picture hem(
        page_of(plain(118_in, 118_in, {f, double_turned_hem("1 1/16"_in, "1 15/16"_in), f, finish<inch>()})));
    for (const word& w : hem.words()) {
        INFO(w.text);
        CHECK((w.bold || std::string("0123456789").find(w.text.back()) == std::string::npos));
        CHECK(w.text.rfind("in ", 0) == std::string::npos);
    }
}
