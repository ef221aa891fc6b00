// sheet/json.hpp: parsed back, the document says all that the sheet does, and every length in it is the exact one.
#include "json_document.hpp"
#include <turncloth/making/finishing.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/on_ruler.hpp>

using namespace turncloth;
using namespace turncloth::json_document;

TEST_CASE("what is parsed back is the sheet, with every length exact, in either edition") {
    check_document(sheet_of(seed_tidy(1_in)));
    check_document(sheet_of(seed_tidy(length_of<centimetre>({5, 2}))));
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

TEST_CASE("a sheet worked out on a ruler says which, and the size asked for where that is another") {
    const auto mat = [](const finished_size<inch>& asked, const ruled<inch>& by) {
        project<inch> p("Mat", by.given(asked));
        p.add({"mat", "canvas", panel(p.finished())});
        return p;
    };
    const auto j = nlohmann::json::parse(to_json(sheet_on_ruler<inch>({"8 21/64"_in, 5_in}, "1/16"_in, mat)).dump());
    CHECK(j["ruler"] == nlohmann::json{{"exact", "1/16"}, {"unit", "in"}});
    CHECK(j["asked"]["width"] == nlohmann::json{{"exact", "8 21/64"}, {"unit", "in"}});
    CHECK(j["asked"]["height"] == nlohmann::json{{"exact", "5"}, {"unit", "in"}});
    CHECK(j["finished"]["width"] == nlohmann::json{{"exact", "8 5/16"}, {"unit", "in"}}); // 8 20/64
    const auto as_asked = nlohmann::json::parse(to_json(sheet_on_ruler<inch>({8_in, 5_in}, "1/16"_in, mat)).dump());
    CHECK(as_asked.contains("ruler"));
    CHECK_FALSE(as_asked.contains("asked"));
    CHECK_FALSE(nlohmann::json::parse(to_json(sheet_of(seed_tidy(1_in))).dump()).contains("ruler"));
}

TEST_CASE("what a project says of its making is there as data: rows, and compartments with what they hold and how they "
          "open") {
    project<inch> p("Mat", {12_in, 9_in});
    const auto hem = double_turned_hem("1/4"_in, "1/2"_in, "1/8"_in);
    auto& front = p.add({"front", "canvas", panel(p.finished(), all_round(hem))});
    auto& pocket = p.add({"pocket", "canvas", panel(finished_size(6_in, 5_in), all_round(hem))});
    making<inch> how(p.name());
    const auto below = cut_for(how, "front", front.shape()), above = cut_for(how, "pocket", pocket.shape());
    finish_edges(how, below);
    finish_edge(how, above, edge::top);
    for (const edge e : {edge::left, edge::right, edge::bottom})
        fold_edge(how, above, e);
    lay_on(how, above, below, at<finished_edge>(3_in), at<finished_edge>(3_in));
    sew_on(how, above, below, {edge::bottom, edge::left, edge::right}, "1/8"_in);
    const auto top = how.add(mouth<inch>{.name = "top", .at = {above.line(edge::top, at<finished_edge>(0_in))}});
    compartment<inch> inside{.name = "gloves", .between = {below, above}, .from_left = 6_in, .from_top = 6_in};
    inside.mouths = {top};
    inside.least_width = 5_in;
    how.add(inside);
    const sheet<inch> s = sheet_of(p.made_as(how));
    check_document(s);
    const auto making = nlohmann::json::parse(to_json(s).dump())["making"];
    CHECK(making["rows"].size() == how.rows().size());
    CHECK(making["rows"][0]["along"]["piece"] == "front");
    CHECK(read<inch>(making["rows"][0]["along"]["from_cut_edge"]) == how.rows()[0].along.in.from_datum());
    const auto& gloves = making["compartments"][0];
    CHECK((gloves["name"] == "gloves" && gloves["count"] == 1 && gloves["between"][1]["piece"] == "pocket"));
    CHECK(read<inch>(gloves["holds"]["width"]) == 5_in);
    CHECK((gloves["mouths"][0]["name"] == "top" && gloves["mouths"][0]["closed_by"] == "nothing"));
    CHECK(read<inch>(gloves["mouths"][0]["at"][0]["from_cut_edge"]) == "3/4"_in);
    CHECK_FALSE(to_json(sheet_of(seed_tidy(1_in))).contains("making"));
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
    const auto written = to_json(s);
    CHECK(written.at("name") == shown);
    CHECK(written.at("pieces").at(0).at("material") == shown);
    CHECK(written.at("bulk").at(0).at("piece") == shown);
    CHECK(written.dump().find(bad) == std::string::npos); // which throws where any of its texts is unsound
    for (const char* part : {"pieces", "notions", "cautions"})
        CHECK_MESSAGE(written.at(part).dump().find(shown) != std::string::npos, part);
}
