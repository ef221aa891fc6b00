// sheet/json.hpp: parsed back, the document says all that the sheet does, and every length in it is the exact one.
#include <turncloth.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/testing/doctest.hpp>

#include <string>

using namespace turncloth;

namespace {

/// Every part of a sheet, at sizes that no decimal writes: three pockets and a third of film between them.
template <length_unit Unit>
project<Unit> seed_tidy(length<Unit> one) {
    project<Unit> p("Seed tidy \"north\"", finished_size<Unit>(one * fraction(40, 3), one * 9));
    const auto hem = double_turned_hem(one / 4, one / 2, one / 8);
    auto& back =
        p.add(piece<Unit>("back", "canvas", panel<Unit>(p.finished(), {heading(one, one / 4), hem, hem, hem})));
    p.add(piece<Unit>("stiffening", "felt", panel<Unit>(p.finished()))).lies_inside(back);
    p.add(piece<Unit>("pocket strip", "clear film", panel<Unit>(finished_size<Unit>(one * 14, one * 4))))
        .count(2)
        .of_film();
    back.mark("foot of a pocket", edge::top, at<stitched_line>(one * fraction(13, 7)));
    p.add(meeting<Unit>{"pocket strip", "back", edge::left, one * 14, one * fraction(40, 3), 3});
    p.add(zipper<Unit>{"back",
                       edge::top,
                       {at<finished_edge>(one * 6)},
                       {one * fraction(40, 3), one / 2, one / 3},
                       one / 2,
                       {},
                       zipper_supply<Unit>::from_roll(one * 100)});
    p.add(notion<Unit>("rail").number("rails", 2).figure("each", one * fraction(44, 3)));
    return p;
}

/// The length an object holds; its text with its unit must read back as the same.
template <length_unit Unit>
length<Unit> read(const nlohmann::json& j) {
    const auto exact = j.at("exact").get<std::string>(), unit = j.at("unit").get<std::string>();
    CHECK(unit == unit_name<Unit>);
    CHECK(read_length<Unit>(exact + " " + unit) == length_of<Unit>(read_fraction(exact)));
    return length_of<Unit>(read_fraction(exact));
}

template <length_unit Unit>
void check_figure(const nlohmann::json& j, const figure<Unit>& f) {
    CHECK(read<Unit>(j) == f.value());
    CHECK(j.contains("working") == (f.terms().size() > 1));
    if (j.contains("working"))
        CHECK(j["working"] == to_text(f));
}

const char* const kinds[] = {"fold", "stitch", "mark", "slit"};

template <length_unit Unit>
void check_piece(const nlohmann::json& j, const sheet_piece<Unit>& p) {
    CHECK(j.at("name") == p.made_from.name());
    CHECK(j.at("material") == p.made_from.material());
    CHECK(j.at("count") == p.made_from.count());
    CHECK(j.at("film") == p.made_from.is_film());
    CHECK(j.value("inside", "") == p.made_from.inside());
    check_figure(j.at("cut").at("width"), p.width);
    check_figure(j.at("cut").at("height"), p.height);
    REQUIRE(j.at("lines").size() == p.lines.size());
    for (std::size_t i = 0; i < p.lines.size(); ++i) {
        const auto& line = j["lines"][i];
        CHECK(line.at("kind") == kinds[static_cast<int>(p.lines[i].kind)]);
        CHECK(line.at("what") == p.lines[i].what);
        CHECK(line.at("parallel_to") == name_of(p.lines[i].parallel_to));
        check_figure(line.at("from_cut_edge"), p.lines[i].from_cut_edge);
        CHECK(read<Unit>(line.at("begins")) == p.lines[i].begins);
        CHECK(read<Unit>(line.at("ends")) == p.lines[i].ends);
    }
}

template <length_unit Unit>
void check_notion(const nlohmann::json& j, const notion<Unit>& n) {
    CHECK(j.at("name") == n.name());
    REQUIRE(j.at("details").size() == n.details().size());
    for (std::size_t i = 0; i < n.details().size(); ++i) {
        const auto& detail = j["details"][i];
        CHECK(detail.at("what") == n.details()[i].what);
        CHECK(detail.contains("count") != detail.contains("amount"));
        if (n.details()[i].count > 0)
            CHECK(detail.at("count") == n.details()[i].count);
        else
            check_figure(detail.at("amount"), n.details()[i].amount);
    }
}

template <length_unit Unit>
void check_group(const nlohmann::json& j, const work_plan<Unit>& plan, const work_group<Unit>& g) {
    CHECK(j.at("sentences") == sentences_of(plan, g));
    CHECK(j.contains("check") == g.check.has_value());
    REQUIRE(j.at("steps").size() == g.steps.size());
    for (std::size_t k = 0; k < g.steps.size(); ++k) {
        const auto& step = j["steps"][k];
        REQUIRE(step.at("places").size() == g.steps[k].places.size());
        for (std::size_t i = 0; i < g.steps[k].places.size(); ++i) {
            const work_place<Unit>& p = g.steps[k].places[i];
            const auto& place = step["places"][i];
            CHECK(place.at("piece") == plan.parts[p.piece.index].name);
            CHECK(place.contains("at") == !p.across.at.empty());
            for (std::size_t n = 0; n < p.across.at.size(); ++n)
                CHECK(read<Unit>(place["at"][n]) == p.across.at[n]);
            CHECK(place.contains("turned") == (g.steps[k].verb == work_verb::fold));
            if (place.contains("sewn"))
                CHECK(read<Unit>(place["sewn"]) == p.sewn);
        }
    }
}

template <length_unit Unit>
void check_document(const sheet<Unit>& s) {
    const auto j = nlohmann::json::parse(to_json(s).dump());
    CHECK(j.at("name") == s.name);
    CHECK(read<Unit>(j.at("finished").at("width")) == s.finished.width());
    CHECK(read<Unit>(j.at("finished").at("height")) == s.finished.height());
    REQUIRE(j.at("pieces").size() == s.pieces.size());
    for (std::size_t i = 0; i < s.pieces.size(); ++i)
        check_piece(j["pieces"][i], s.pieces[i]);
    REQUIRE(j.at("notions").size() == s.notions.size());
    for (std::size_t i = 0; i < s.notions.size(); ++i)
        check_notion(j["notions"][i], s.notions[i]);
    REQUIRE(j.at("steps").size() == s.steps.groups.size());
    for (std::size_t i = 0; i < s.steps.groups.size(); ++i)
        check_group(j["steps"][i], s.steps, s.steps.groups[i]);
    REQUIRE(j.at("cautions").size() == s.cautions.size());
    for (std::size_t i = 0; i < s.cautions.size(); ++i)
        CHECK(j["cautions"][i].at("sentence") == s.cautions[i].sentence);
    CHECK(j.at("warnings") == s.warnings);
}

} // namespace

TEST_CASE("what is parsed back is the sheet, with every length exact, in either edition") {
    check_document(sheet_of(seed_tidy(1_in)));
    check_document(sheet_of(seed_tidy(length_of<centimetre>({5, 2}))));
    check_document(sheet_of(seed_tidy(length_of<yard>(1))));
}

TEST_CASE("lengths are written with their exact value, which a number of JSON could not hold") {
    const auto j = nlohmann::json::parse(to_json(sheet_of(seed_tidy(1_in))).dump());
    CHECK(j["finished"]["width"] == nlohmann::json{{"exact", "13 1/3"}, {"unit", "in"}});
    // By hand: 13 1/3 in and on both sides 1/4 + 1/2 in: 14 5/6 in.
    CHECK(j["pieces"][0]["cut"]["width"]["exact"] == "14 5/6");
    CHECK(j["pieces"][0]["cut"]["width"]["working"] ==
          "14 5/6 in = 13 1/3 in finished + 2 x (1/4 + 1/2) in double-turned hem");
    CHECK_FALSE(j["pieces"][1]["cut"]["width"].contains("working")); // raw edges: nothing is added
    CHECK(j["pieces"][1]["inside"] == "back");
    const auto metric = nlohmann::json::parse(to_json(sheet_of(seed_tidy(10_cm))).dump());
    CHECK(metric["finished"]["height"] == nlohmann::json{{"exact", "90"}, {"unit", "cm"}});
    CHECK(metric["pieces"][0]["lines"][0]["from_cut_edge"]["exact"] == "2.5"); // a quarter of 10 cm
}

TEST_CASE("marks that meet are written in pairs with the fullness between them") {
    const auto j = nlohmann::json::parse(to_json(sheet_of(seed_tidy(1_in))).dump());
    REQUIRE(j["meetings"].size() == 1);
    const auto& m = j["meetings"][0];
    CHECK(m["longer"] == "pocket strip");
    CHECK(m["shorter"] == "back");
    CHECK(m["from"] == "left");
    CHECK(m["fullness"] == "1 1/20"); // 14 over 13 1/3
    REQUIRE(m["marks"].size() == 3);
    // By hand: thirds of 14 in are 4 2/3, 9 1/3, 14; thirds of 13 1/3 in are 4 4/9, 8 8/9, 13 1/3.
    const char *const longer[] = {"4 2/3", "9 1/3", "14"}, *const shorter[] = {"4 4/9", "8 8/9", "13 1/3"};
    for (std::size_t k = 0; k < 3; ++k) {
        CHECK(m["marks"][k]["longer"]["exact"] == longer[k]);
        CHECK(m["marks"][k]["shorter"]["exact"] == shorter[k]);
    }
}

TEST_CASE("words of any kind come back as they were, and an empty list is a list") {
    project<inch> p("Mat \"\\ \xC2\xBD <&> \n", finished_size(1_in, 1_in));
    p.add({"mat", "", panel(p.finished())});
    const auto j = nlohmann::json::parse(to_json(sheet_of(p)).dump());
    CHECK(j["name"] == p.name());
    CHECK(j["pieces"][0]["material"] == "");
    CHECK_FALSE(j["pieces"][0].contains("inside"));
    for (const char* list : {"meetings", "notions", "warnings"})
        CHECK(j[list] == nlohmann::json::array());
    CHECK(j["pieces"][0]["lines"] == nlohmann::json::array());
}

TEST_CASE("whatever its names hold, a sheet and each part of it is dumped") {
    const std::string bad = "caf\xE9";
    project<inch> p(bad, finished_size(9_in, 6_in));
    auto& back = p.add({"back", bad, panel(p.finished(), all_round(seam("1/2"_in)))});
    back.mark(bad, edge::left, at<finished_edge>(3_in));
    p.add({"strip", bad, panel(p.finished())}).lies_inside(back);
    p.add(meeting<inch>{"back", "strip", edge::left, 6_in, 5_in, 2});
    p.add(notion<inch>(bad).number(bad, 2));
    p.prepare(bad).caution(bad, caution::work::cutting);
    auto s = sheet_of(p);
    s.warnings.push_back(bad);
    s.bulk.push_back({});
    s.bulk.back().piece = bad;
    const std::string shown = "caf\xEF\xBF\xBD"; // U+FFFD
    CHECK(to_json(s).at("name") == shown);
    CHECK(to_json(s.pieces.at(0)).at("material") == shown);
    CHECK(to_json(s).dump().find(bad) == std::string::npos);
    std::string parts = to_json(s.pieces.at(0)).dump() + to_json(s.pieces.at(0).lines.back()).dump() +
                        to_json(s.meetings.at(0)).dump() + to_json(s.notions.at(0)).dump() +
                        to_json(s.bulk.back()).dump();
    for (const sheet_caution& c : s.cautions)
        parts += to_json(c).dump();
    CHECK(parts.find(shown) != std::string::npos);
}
