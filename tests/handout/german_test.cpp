// handout/german.hpp and measure/language.hpp: a text for every key, its places, and how numbers and plurals are written.
#include <turncloth.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/handout/german.hpp>
#include <turncloth/handout/handout.hpp>
#include <turncloth/making/phrases.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/page/svg.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <regex>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace turncloth;
using detail::sentence, detail::speaking, detail::said_again, detail::word;
using std::string;

namespace {

/// What stands in braces, without the sign that it is said again.
std::set<string> places_of(const string& text) {
    static const std::regex place(R"(\{=?([a-z0-9_]+)\})");
    std::set<string> all;
    for (std::sregex_iterator at(text.begin(), text.end(), place), end; at != end; ++at)
        all.insert((*at)[1]);
    return all;
}
string english_of(const string& key) {
    for (const phrase& p : all_phrases)
        if (p.key == key)
            return string(p.english);
    return key.starts_with(kept_texts) ? key.substr(kept_texts.size()) : key;
}

sheet<inch> mat() {
    project<inch> p("Mat", {14_in, 11_in});
    const auto layers = self_bound(p.finished(), "1/2"_in);
    auto& outer = p.add(piece<inch>("outer", "cotton", layers.outer));
    outer.mark("middle", edge::left, at<finished_edge>("7 1/4"_in));
    p.add(piece<inch>("inner", "wadding", panel<inch>(p.finished(), {}))).lies_inside(outer);
    p.add(listed("tie", 1, ribbon_tie<inch>{14_in, 0, 1, 2_in, 0_in, 9_in, 0_in}));
    return sheet_of(p);
}

} // namespace

TEST_CASE("each key of the German texts stands there once, and no text leaves out a place or has one more") {
    const language l = german();
    const auto texts = l.texts();
    CHECK(std::adjacent_find(texts.begin(), texts.end(), [](const auto& a, const auto& b) { return a.key == b.key; }) ==
          texts.end());
    for (const phrase_text& t : texts) {
        CHECK_MESSAGE(!t.text.empty(), t.key);
        if (t.key == "each.in_turn") // a sentence after a colon begins with a capital in German
            CHECK(places_of(t.text) == std::set<string>{"piece", "step"});
        else
            CHECK_MESSAGE(places_of(t.text) == places_of(english_of(t.key)), t.key);
    }
}

TEST_CASE("every sentence of the steps, every caution and every stitch type has a German text") {
    const language l = german();
    for (const phrase& p : all_phrases)
        CHECK_MESSAGE(l.text_of(p.key) != nullptr, string(p.key));
    for (const caution::note& n : caution::all)
        CHECK_MESSAGE(l.text_of(n.sentence) != nullptr, string(n.sentence));
    for (const stitch_type& s : stitch_types)
        CHECK_MESSAGE(l.text_of(s.name) != nullptr, string(s.name));
}

// DIN 1333: a decimal has a comma; DIN 5008: a space before the unit (both: value from memory). 1 in is 2.54 cm.
TEST_CASE("lengths have a decimal comma and metric first where German is spoken, and as before where it is no more") {
    const ruler both;
    CHECK(to_text("31.75"_cm) == "31.75 cm");
    {
        const language l = german();
        const speaking in(l);
        CHECK(to_text("31.75"_cm) == "31,75 cm");
        CHECK(to_text("12 1/2"_in, {.metric_first = true}) == "31,8 cm (12 1/2 in)");
        CHECK(detail::size_text(20_in, 12_in, {.shows = units_shown::centimetres}) == "50,8 × 30,5 cm");
    }
    CHECK(to_text("31.75"_cm) == "31.75 cm");
    const sheet<inch> s = mat();
    CHECK_THROWS_AS(handout_of(s, {}, {.by = {.inches = 0_in}, .words = german()}), range_error);
    CHECK(to_text("31.75"_cm) == "31.75 cm");
}

// CLDR, plural rules: German and English have one (1) and other.
TEST_CASE("one and many have each a sentence of their own") {
    const language l = german();
    const speaking in(l);
    CHECK(said(phrases::one_layer, {}) == "1 Lage");
    CHECK(said(phrases::some_layers, {{"most", "2"}}) == "2 Lagen");
    CHECK(said(phrases::the_edge, {{"sides", "oben"}}) == "die Kante oben");
    CHECK(said(phrases::the_edges, {{"sides", "links und rechts"}}) == "die Kanten links und rechts");
}

TEST_CASE("a sentence is turned about as its language has it, and one that is not known stays as it was said") {
    const language l("xx", {}, {{"Cut {1} of {2}.", "{2}: {1}."}, {"edge", "Rand"}, {"edge", "Kante"}});
    const string cloth = "edge";
    CHECK(sentence({"Cut ", 3, " of ", cloth, "."}) == "Cut 3 of edge.");
    const speaking in(l);
    CHECK(sentence({"Cut ", 3, " of ", cloth, "."}) == "edge: 3."); // a name is no word of ours
    CHECK(sentence({"Cut ", 3, " from ", cloth, "."}) == "Cut 3 from edge.");
    CHECK(word("edge") == "Kante"); // the last that was given
    CHECK(word("hem") == "hem");
    {
        const language english;
        const speaking again(english);
        CHECK(word("edge") == "edge");
    }
    CHECK(word("edge") == "Kante");
}

TEST_CASE("what a sheet keeps in English is read by the key that fits it best, and its figures have their comma") {
    const language l("xx", {.decimal_mark = ","},
                     {{"kept: {1}, each", "{1}, je"},
                      {"kept: stock {1}, each", "Vorrat {1}, je"},
                      {"kept: trimmed on {1}", "an {=1}"},
                      {"kept: edge {1}", "Kante {1}"},
                      {"{1}, off the roll", "{1} von der Rolle"}});
    CHECK(said_again("tie, each") == "tie, each");
    const speaking in(l);
    CHECK(said_again("tie, each") == "tie, je");
    CHECK(said_again("stock 2, each") == "Vorrat 2, je");
    CHECK(said_again(", each") == ", each"); // nothing stands there
    CHECK(said_again("trimmed on edge 3") == "an Kante 3");
    CHECK(said_again("tie, off the roll") == "tie, off the roll"); // by no key of another kind
    CHECK(said_again("4.5 cm thick. 2") == "4,5 cm thick. 2");
}

TEST_CASE("a German handout says so, keeps the names given, and may say a project's own words otherwise") {
    const sheet<inch> s = mat();
    const string plain = to_html(handout_of(s, {}, {.author = "The society", .words = german()}));
    CHECK(plain.find("lang=\"de\" xml:lang=\"de\"") != string::npos);
    CHECK(plain.find("counter(page) \" von \" counter(pages)") != string::npos);
    CHECK(plain.find("35,6 × 27,9 cm (14 × 11 in)") != string::npos);
    CHECK(plain.find("A: outer") != string::npos);
    CHECK(plain.find("Marke middle") != string::npos);
    CHECK(plain.find("The society.") != string::npos);
    CHECK(plain.find("Marke Mitte") == string::npos);
    CHECK(to_html(handout_of(s, {}, {.words = german({{"middle", "Mitte"}})})).find("Marke Mitte") != string::npos);
    CHECK(to_html(handout_of(s, {}, {.language = "fr"})).find("lang=\"fr\"") != string::npos);
}

TEST_CASE("a drawing that stands by itself has decimal commas, in the lengths of its scale bars too") {
    const language words = german();
    project<inch> p("Mat", {21_in, 13_in});
    p.add({"outer", "canvas", panel(p.finished())});
    // Inches at a whole scale are hardly ever whole millimetres: 10 in at 1:5 are 50.8.
    const string drawn = to_svg(page_of(sheet_of(p).pieces.front(), {}, {.words = &words}));
    CHECK(std::regex_search(drawn, std::regex("Balken gedruckt [0-9]+,[0-9] und [0-9]+ mm lang")));
    CHECK_FALSE(std::regex_search(drawn, std::regex("[0-9][.][0-9]+ (mm|cm)")));
}
