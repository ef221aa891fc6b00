// A handout printed as PDF says what the same handout says as HTML, page by page, and its bars measure what they say.
#include "drafting/printed.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace {

struct printed_on {
    const char* option;
    double width, height; // ISO 216, ANSI/ASME Y14.1
};

/// Text as poppler may part it: without blanks of any kind.
std::string joined_up(const std::string& text) {
    std::string all;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (text.compare(i, 2, "\xC2\xA0") == 0)
            ++i;
        else if (text[i] != ' ' && text[i] != '\n' && text[i] != '\f' && text[i] != '\r')
            all += text[i];
    return all;
}

/// A level line that is so long, alone or with a tick at each end.
bool has_bar(const printed_page& p, double length) {
    return std::ranges::any_of(p.lines, [&](const drawn_line& l) {
        const auto& at = l.points;
        return (at.size() == 2 && std::abs(at[0].y - at[1].y) < 0.01 &&
                std::abs(std::abs(at[1].x - at[0].x) - length) < 0.05) ||
               (at.size() == 4 && !l.closed && std::abs(std::abs(at[2].x - at[1].x) - length) < 0.05);
    });
}

std::string handout_asked(const std::string& of, const printed_on& on) {
    return of + " --quiet --replace --out . --handout html,pdf --paper " + on.option;
}

/// All that is written in an element of the handout as HTML.
std::vector<std::string> texts(const pugi::xml_document& html, const char* path) {
    std::vector<std::string> all;
    for (const auto& found : html.select_nodes(path)) {
        std::string text;
        for (const auto& part : found.node().select_nodes(".//text()"))
            text += part.node().value();
        all.push_back(text);
    }
    return all;
}

void check_handout(const workshop& w, const std::string& name, const printed_on& on) {
    pugi::xml_document html;
    REQUIRE(html.load_string(w.read(name + ".html").c_str(), pugi::parse_full));
    const auto pages = w.pages(name + ".pdf");
    const auto sizes = w.page_sizes(name + ".pdf");
    std::string all;
    std::size_t with_bars = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        CHECK(std::abs(sizes[i].first - on.width / 25.4 * 72) < 0.01);
        CHECK(std::abs(sizes[i].second - on.height / 25.4 * 72) < 0.01);
        CHECK(pages[i].says("page " + std::to_string(i + 1) + " of " + std::to_string(pages.size())));
        CHECK(has_bar(pages[i], 25.4));
        with_bars += has_bar(pages[i], 100) ? 1 : 0;
        all += joined_up(pages[i].words);
        for (const drawn_line& l : pages[i].lines)
            for (const page_point& p : l.points)
                if (p.x < 14.3 || p.y < 14.3 || p.x > on.width - 14.3 || p.y > on.height - 14.3)
                    FAIL_CHECK("page " << i + 1 << " has a line at " << p.x << ", " << p.y);
    }
    CHECK(with_bars == 1);
    // Cells and sentences may run over lines beside others: what is on one line there is on one line here too.
    for (const char* path : {"//h1", "//h2", "//h3", "//td[@class='figure'][string-length() < 12]"})
        for (const std::string& text : texts(html, path))
            CHECK_MESSAGE(all.find(joined_up(text)) != std::string::npos, text);
    const auto cut = texts(html, "//table[starts-with(caption, 'Every piece')]//td[@class='figure']");
    CHECK(cut.size() >= 2);
    for (const std::string& figure : cut)
        CHECK_MESSAGE(all.find(joined_up(figure)) != std::string::npos, figure);
}

} // namespace

TEST_CASE(
    "a handout printed as PDF has every heading and every cut size, on pages of its paper, within their margins") {
    const workshop w;
    const struct {
        const char* name;
        std::string of;
        printed_on on;
    } cases[] = {{"kneeling-pad", "--project kneeling-pad", {"letter", 215.9, 279.4}},
                 {"organiser", "--project organiser --size '9 x 11 in'", {"a4", 210, 297}}};
    for (const auto& c : cases) {
        CAPTURE(c.name);
        const run_result o = w.run_of(TURNCLOTH_SHEETS_PROGRAM, handout_asked(c.of, c.on));
        REQUIRE_MESSAGE(o.status == 0, o.err);
        check_handout(w, c.name, c.on);
    }
}

TEST_CASE("the same handout is printed as the same bytes by one thread and by many, and named on the last line") {
    const workshop w;
    w.write("sizes.csv", "project,width,height,name\nkneeling-pad,15,9,a\nkneeling-pad,15,9,b\nkneeling-pad,15,9,a\n");
    const std::string asked = "--table sizes.csv --handout pdf ";
    const run_result many = w.run_of(TURNCLOTH_SHEETS_PROGRAM, asked + "--jobs 3 --out many"),
                     one = w.run_of(TURNCLOTH_SHEETS_PROGRAM, asked + "--jobs 1 --out one");
    REQUIRE(many.status == 0);
    REQUIRE(one.status == 0);
    CHECK(many.out.ends_with("\nTo print and to follow: many/a.pdf and 2 more\n"));
    for (const char* file : {"/a.pdf", "/b.pdf", "/a-2.pdf"}) {
        CHECK(w.read(std::string("one") + file).starts_with("%PDF"));
        CHECK(w.read(std::string("one") + file) == w.read(std::string("many") + file));
    }
}
