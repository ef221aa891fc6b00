// What a sheet written as JSON must say: parsed back, every part of it is there, and every length is the exact one.
#ifndef TURNCLOTH_TESTS_SHEET_JSON_DOCUMENT_HPP
#define TURNCLOTH_TESTS_SHEET_JSON_DOCUMENT_HPP

#include <turncloth.hpp>
#include <turncloth/making/choices.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/sheet/json.hpp>

#include <doctest/doctest.h>

#include <string>

namespace turncloth::json_document {

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

/// Each is its sign and so many times its parts, and together they are the figure.
template <length_unit Unit>
void check_terms(const nlohmann::json& terms, const figure<Unit>& f) {
    REQUIRE(terms.size() == f.terms().size());
    length<Unit> sum;
    for (std::size_t i = 0; i < terms.size(); ++i) {
        CHECK(terms[i].at("what") == std::string(f.terms()[i].what().text()));
        length<Unit> parts;
        for (const auto& part : terms[i].at("parts"))
            parts += read<Unit>(part);
        const length<Unit> value = read<Unit>(terms[i].at("value"));
        CHECK(parts * read_fraction(terms[i].at("times").get<std::string>()) == value);
        sum += terms[i].at("sign") == "-" ? -value : value;
    }
    CHECK(sum == f.value());
}

template <length_unit Unit>
void check_figure(const nlohmann::json& j, const figure<Unit>& f) {
    CHECK(read<Unit>(j) == f.value());
    CHECK(j.contains("working") == (f.terms().size() > 1));
    if (j.contains("working"))
        CHECK(j["working"] == to_text(f));
    CHECK(j.contains("terms") == j.contains("working"));
    if (j.contains("terms"))
        check_terms(j["terms"], f);
}

inline constexpr const char* kinds[] = {"fold", "stitch", "mark", "slit"};

template <length_unit Unit>
void check_piece(const nlohmann::json& j, const sheet_piece<Unit>& p) {
    CHECK(j.at("name") == p.made_from.name());
    CHECK(j.at("material") == p.made_from.material());
    CHECK(j.at("count") == p.made_from.count());
    CHECK(j.at("film") == p.made_from.is_film());
    CHECK(j.at("frays") == p.made_from.frays());
    CHECK(j.value("lies", "as asked") == word_of(p.made_from.lies()));
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
        CHECK(line.contains("finish") == p.lines[i].of_finish);
        if (line.contains("finish"))
            CHECK(line["finish"] == j.at("edges").at(line["parallel_to"].get<std::string>()).at("finish"));
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
        CHECK(detail.contains("sold") == (n.details()[i].sold != sold_as::not_sold));
    }
    CHECK(j.at("cautions").size() == n.cautions().size());
    CHECK(j.at("before_seams") == n.goes_in_before_seams());
}

template <length_unit Unit>
void check_group(const nlohmann::json& j, const work_plan<Unit>& plan, const work_group<Unit>& g) {
    CHECK(j.at("sentences") == sentences_of(plan, g));
    CHECK(j.contains("check") == g.check.has_value());
    CHECK(j.at("cautions").size() == g.care.size());
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
    CHECK(j.at("turncloth_sheet") == 1);
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

} // namespace turncloth::json_document

#endif
