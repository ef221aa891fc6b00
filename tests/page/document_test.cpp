// page/document.hpp, page/html.hpp: what is written is well-formed, in order, escaped, and said to those who cannot see.
#include "../vectors.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/page/html.hpp>

#include <doctest/doctest.h>
#include <pugixml.hpp>

#include <set>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

using in_cell = document::in_cell;

// Signs that XML, CSS and HTML would read, a control, the mark that turns direction (U+202E), and a byte that is no UTF-8.
const std::string hostile = "<b>&\"'</style>\\\n]]>\x1b[0m\xE2\x80\xAE\xFF{--";

page small_page(const std::string& title) {
    page p{.width = 60, .height = 30, .title = title, .description = "a line"};
    p.draw({"cut", 0.6}, {{1, 2}, {3, 4}});
    p.write({5, 5}, hostile, 3);
    return p;
}

document everything(const std::string& text) {
    document d{.title = text, .subtitle = text, .language = "en-GB", .foot = text};
    d.add(document::heading{text}).add(document::heading{text, 3}).add(document::paragraph{text});
    d.add(document::list{{text, text}}).add(document::ticks{{text}}).add(document::blanks{{text}});
    d.add(document::caution{text, {text, text}});
    d.add(document::table{text,
                          {text, text, text, text},
                          {{{text, in_cell::tick}, {text}, {text, in_cell::figure}, {text, in_cell::blank}}}});
    d.add(document::steps{{document::step{{document::caution{text, {text}}, document::paragraph{text},
                                           document::drawing{small_page(text), text, text}}},
                           document::step{{document::paragraph{text}}}}});
    return d.add(document::drawing{small_page(text), text, text, true});
}

pugi::xml_document parsed(const std::string& html) {
    pugi::xml_document d;
    const auto result = d.load_string(html.c_str(), pugi::parse_full);
    REQUIRE_MESSAGE(result, result.description());
    return d;
}

std::string without_space(const std::string& text) {
    std::string all;
    for (const char c : text)
        if (c != ' ' && c != '\n')
            all += c;
    return all;
}

} // namespace

TEST_CASE("a document is well-formed XML in one file that needs nothing else, whatever its texts hold") {
    const std::string html = to_html(everything(hostile));
    const auto d = parsed(html);
    const auto root = d.document_element();
    CHECK(std::string(root.name()) == "html");
    CHECK(std::string(root.attribute("lang").value()) == "en-GB");
    CHECK(d.select_nodes("//script|//link|//img|//iframe|//object|//b|//@onload|//@src").empty());
    CHECK(html.find('\x1b') == std::string::npos);
    CHECK(html.find("\xE2\x80\xAE") == std::string::npos);
    CHECK(html.find("http://", html.find("<head")) ==
          html.find("http://www.w3.org/2000/svg")); // a name, not an address
    const std::string read = "<b>&\"'</style>\\ ]]>\xEF\xBF\xBD[0m\xEF\xBF\xBD\xEF\xBF\xBD{--";
    CHECK(std::string(d.select_node("//h1").node().text().get()) == read);
    CHECK(std::string(d.select_node("//strong").node().text().get()) == read + ": ");
    CHECK(std::string(d.select_node("//*[local-name()='text']").node().text().get()) == read);
    CHECK(std::string(d.select_node("//caption").node().text().get()) == read);
    // In the style sheet it is a string of CSS, by numbers alone.
    const std::string style = d.select_node("//style").node().text().get();
    CHECK(style.find("content: \"\\00003cb\\00003e\\000026\\000022\\000027\\00003c\\00002fstyle\\00003e\\00005c ") !=
          std::string::npos);
}

TEST_CASE("every identifier is given once, and every drawing is named by its own") {
    const auto d = parsed(to_html(everything("thing")));
    std::set<std::string> ids;
    for (const auto& found : d.select_nodes("//@id"))
        CHECK_MESSAGE(ids.insert(found.attribute().value()).second, found.attribute().value());
    const auto drawings = d.select_nodes("//*[local-name()='svg']");
    REQUIRE(drawings.size() == 2);
    CHECK(ids.size() == 4);
    for (const auto& found : drawings) {
        const auto svg = found.node();
        CHECK(std::string(svg.attribute("role").value()) == "img");
        CHECK(std::string(svg.child("title").attribute("id").value()) == svg.attribute("aria-labelledby").value());
        CHECK(std::string(svg.child("desc").attribute("id").value()) == svg.attribute("aria-describedby").value());
        CHECK(std::string(svg.child("desc").text().get()) == "thing");
    }
    CHECK(d.select_nodes("//figure[@class='true-to-size']").size() == 1);
}

TEST_CASE("tables have a caption and named columns, and a row is named by its first words") {
    const auto d = parsed(to_html(everything("thing")));
    const auto table = d.select_node("//table").node();
    CHECK(std::string(table.child("caption").text().get()) == "thing");
    CHECK(table.select_nodes(".//th[@scope='col']").size() == 4);
    const auto row = table.select_node(".//tbody/tr").node();
    std::vector<std::string> kinds;
    for (const auto& c : row.children())
        kinds.push_back(std::string(c.name()) + c.attribute("scope").value() +
                        c.first_child().attribute("class").value());
    CHECK(kinds == std::vector<std::string>{"tdtick", "throw", "td", "tdblank"});
    CHECK(std::string(table.select_node(".//span[@class='blank']").node().attribute("aria-label").value()) ==
          "room to write: thing");
}

TEST_CASE("there is one heading of level 1, and none below it passes over a level") {
    const auto d = parsed(to_html(everything("thing")));
    CHECK(d.select_nodes("//h1").size() == 1);
    for (const auto& levels : {std::vector{3}, std::vector{2, 4}, std::vector{1}, std::vector{2, 3, 4, 5, 6, 7}}) {
        document bad{.title = "thing"};
        for (const int level : levels)
            bad.add(document::heading{"part", level});
        CHECK_THROWS_AS(to_html(bad), range_error);
    }
    document good{.title = "thing"};
    for (const int level : {2, 3, 4, 5, 6, 2, 3, 3})
        good.add(document::heading{"part", level});
    CHECK(parsed(to_html(good)).select_nodes("//h3").size() == 3);
}

TEST_CASE("a row of more or fewer cells than there are columns is refused") {
    for (const std::size_t cells : {1U, 3U}) {
        document d{.title = "thing"};
        d.add(document::table{"sizes", {"piece", "cut"}, {std::vector<document::cell>(cells)}});
        CHECK_THROWS_AS(to_html(d), range_error);
    }
}

TEST_CASE("a drawing inside a document is the drawing, without a declaration of its own") {
    const page p = small_page("thing");
    std::string alone = to_svg(p), inside = to_svg_inside(p, "d");
    CHECK(inside.find("<?xml") == std::string::npos);
    CHECK(without_space(alone.substr(alone.find("<rect"))) == without_space(inside.substr(inside.find("<rect"))));
}
