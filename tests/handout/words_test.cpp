// No word of a handout is written where no language reaches it: a language that says each text in an alphabet of its own is
// spoken, and every letter that is printed in the common one must be of a name, of a unit or of the project's own words.
#include "../../examples/sheets/cloth_to_buy.hpp"
#include "../../examples/sheets/projects.hpp"
#include <turncloth.hpp>
#include <turncloth/design/json.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outlined.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/draw/stock.hpp>
#include <turncloth/handout/german.hpp>
#include <turncloth/handout/handout.hpp>
#include <turncloth/making/phrases.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/bulk.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

using namespace turncloth;
using std::string;

namespace {

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// Letters as wide as an ideograph (U+FF21 and on), but for what stands in braces.
string marked(std::string_view text) {
    string all;
    bool place = false;
    for (const char c : text) {
        place = c == '{' || (place && c != '}');
        if (place || !is_letter(c))
            all += c;
        else
            all.append(c < 'a' ? "\xEF\xBC" : "\xEF\xBD")
                .append(1, static_cast<char>(c < 'a' ? c - 'A' + 0xA1 : c - 'a' + 0x81));
    }
    return all;
}

/// English in that alphabet, of every key that German has.
language marked_english() {
    const language from = german();
    phrase_table all;
    for (const phrase_text& t : from.texts()) {
        std::string_view english = t.key;
        if (english.starts_with(kept_texts))
            english.remove_prefix(kept_texts.size());
        if (english.starts_with("caution."))
            english.remove_prefix(8);
        if (english == "cloth.fold")
            english = "fold";
        for (const phrase& p : all_phrases)
            if (p.key == t.key)
                english = p.english;
        string text = marked(english);
        for (const char place : {'1', '2', '3', '4'}) // what is said again in German is in this alphabet too
            if (t.text.find(string("{=") + place) != string::npos)
                text.replace(text.find(string("{") + place), 1, "{=");
        all.push_back({t.key, std::move(text)});
    }
    return {"en-x-marked", {.decimal_mark = ",", .metric_first = true}, std::move(all)};
}

/// What the projects say themselves, the longer before what is part of it: names of pieces, cloths and notions first.
std::vector<string> own_words() {
    std::vector<string> all = {
        "Patchwork cushion cover",
        "light",
        "dark",
        "cotton",
        "light patch",
        "middle patch",
        "square to halve",
        "pieced square",
        "light and dark triangles",
        "pieced square 1",
        "light patch 1",
        "pieced square 2",
        "light patch 2",
        "pieced square 3",
        "light patch 3",
        "pieced square 4",
        "light patch 4",
        "left strip",
        "right strip",
        "top strip",
        "bottom strip",
        "upper left corner",
        "upper right corner",
        "lower left corner",
        "lower right corner",
        "upper back",
        "lower back",
        "lap",
        "light patches, cut from strips",
        "pieced squares",
        "buttonholes, their middles from the finished left edge",
        "cushion pad",
        "pad, width",
        "pad, height",
        "inside of the cover",
        "Lay each light square to halve on a dark one, right sides together. Draw a line from corner to corner, sew as "
        "far from it on either side as the patches' seams are wide, and cut along it: two pieced squares. Press their "
        "seams toward the dark cloth, and trim each square to the size that its figures say, its corners on the seam. "
        "The figures for thread leave this out.",
        "Work three buttonholes in the middle of the hem of the upper back and along it, as long and where the "
        "buttons' figures say.",
        "Sew buttons on so that none comes off, and keep the cushion from children under three, who choke on small "
        "parts.",
        "Draught stopper, at least",
        "thick",
        "side",
        "gap",
        "inside of the tube",
        "filling, a scoop at a time",
        "It lies where people walk: lift it away before the door is opened, and never lay it before a door that is a "
        "way out in a fire, nor before a stove that draws its air under the door.",
        "Greenhouse shade curtain",
        "curtain",
        "shade cloth",
        "heading tape",
        "heading",
        "drops",
        "width of the heading tape",
        "Woven shade cloth is plastic and melts: crease it by hand or with a blunt tool, and keep the iron away.",
        "A curtain in the wind pulls: hang it from a rail that is fixed to the frame, not to the glass, and draw it "
        "back in a storm.",
        "Hold each join of the curtain's widths up to the light, and crease its allowances apart by hand.",
        "Overcast the ends of the heading tape before it is sewn on. The flat at either end of the heading goes round "
        "the corner to the frame, or lies under the next curtain.",
        "Lay each pleat in the middle of its part, so that the same flat is left between any two, and pin it.",
        "Repair kit, practice panel",
        "panel",
        "patch",
        "facing",
        "hem band",
        "loop",
        "webbing",
        "darn",
        "width of the webbing",
        "band in place of a hem, sewn on",
        "band in place of a hem, brought over",
        "Where the panel's hems cross and at the ends of its band ten layers meet: hammer them flat, and turn the "
        "handwheel by hand there, or sew it by hand.",
        "Mended cloth is weaker than new: look at a patch and its rows before each use.",
        "The hole stands for damage that was cut away to a rectangle, along the threads. For another hole, cut the "
        "patch and its facing as much wider and higher than these as that hole is.",
        "Fill the square of rows sewn by hand with running stitches down, then weave across them, over one thread and "
        "under the next, in as many rows each way as the darn's figures say. Leave a small loop at every turn, and "
        "make no knot.",
        "Tablecloth and four napkins",
        "tablecloth",
        "napkin",
        "linen",
        "table",
        "table that it hangs over on every side, width",
        "table that it hangs over on every side, height",
        "hanging over",
        "Slip-stitch each mitre from the corner to the hem's inner edge, through the hem alone.",
        "A cloth that hangs low is pulled down with all that stands on it: keep hot dishes and flames off it where "
        "small children or animals are.",
        "Tool apron",
        "apron",
        "flap",
        "tool strip",
        "bellows pocket",
        "pleated pocket",
        "waist tie",
        "waist tape, in at one end of the casing and out at the other",
        "width of the tape",
        "slots",
        "Where the hems of the apron and of its flaps cross nine layers meet: hammer them flat, and turn the handwheel "
        "by "
        "hand there.",
        "Put blades into their sheaths before they go into a slot, points down, and take them out before you kneel or "
        "sit: a point works its way through cloth.",
        "Wind-proof picnic roll",
        "pebble pockets",
        "end pocket",
        "piping strip",
        "piping along the top",
        "piping along the right",
        "piping along the bottom",
        "piping along the left",
        "piping",
        "upper tie",
        "lower tie",
        "gap in the bottom",
        "seam of the strip, clipped at each corner from its cut edges",
        "Join the piping strips to one: lay the end of one square across the end of the next, right sides together, "
        "sew from corner to corner, trim beside that row and press it open.",
        "Mark on the joined strip where its corners come, as the figures of the piping say. What the steps call the "
        "piping along an edge is a stretch of this one strip: it begins in the middle of the top edge and goes on to "
        "the right, so that the other half of the top edge is sewn last.",
        "Lay the cord into the fold before the strip is sewn on, and sew close beside the cord. At each corner clip "
        "the strip's seam as deep as its figures say, leave the needle down and turn. Where the strip comes round to "
        "its "
        "beginning, cut the cord so that its ends meet, turn the end of the strip in and lap it over.",
        "Pin the outer on, and turn the work over: the rows along its edges are sewn with the lining up, on those that "
        "hold the piping.",
        "Cut across the allowances of the four corners, clear of the seams.",
        "Take the pebbles out before you roll it up or carry it: swung in cloth, a stone hurts.",
        "Wall pockets from remnants, 2 x ",
        "wall pockets",
        "back",
        "upper backing",
        "lower backing",
        "upper pockets",
        "lower pockets",
        "casing strip",
        "sheeting",
        "cane",
        "cane, across",
        "cane, length",
        "channel that it goes through, as it lies flat",
        "between two pockets",
        "pockets in a row",
        "each pocket, between its rows",
        "depth of the upper pockets",
        "depth of the lower pockets",
        "awning",
        "windbreak",
        "bedsheet",
        "Advent hanging, ",
        "plain cotton",
        "striped cotton",
        "pocket strip",
        "upper edge of a pocket strip",
        "depth of each",
        "rail that they go round, across",
        "gap under the rail",
        "ties",
        "Number the pocket strips while they lie flat, before they are sewn on: one number in the middle of each part "
        "that their marks show, from 1 at the left of the uppermost strip to 24 at the right of the lowest.",
        "Gift sack with a tie",
        "sack",
        "round the mouth, as it lies open",
        "height under the neck",
        "Roll up both ends of the tie and pin them to the middle of the sack, clear of every edge: no seam is to catch "
        "them.",
        "Unpin the tie. To close the sack, gather it in the hand where the tie is sewn on, bring both ends round to "
        "the front, and tie them in a bow.",
        "A ribbon is no toy: take the tie off before a child has the sack, and keep sacks that a child could pull over "
        "its head out of its reach.",
        "Seed-tray tote",
        "deep",
        "strap",
        "straps",
        "strap folded in four, over",
        "strap folded in four, inside",
        "stiffener of the base",
        "stiffener",
        "board, width",
        "board, depth",
        "board, thickness",
        "gap in the lining's base",
        "Carry it by both straps at once, and set it down to fill it: wet trays are heavy.",
        "Fold the straps down onto the outers and pin them there, clear of every edge, until the tote "
        "is turned out: no seam is to catch them.",
        "Produce bag",
        "bag",
        "cotton",
        "cord",
        "cord, across",
        "casing strip",
        "top",
        "first cord, in at the left, through both casings and out at the left again, and knot its ends",
        "second cord, in at the right, through both casings and out at the right again, and knot its ends",
        "Wash the bag before food goes into it, and let it dry: damp cloth grows mould.",
        "Cushion for the potting bench",
        "bottom panel",
        "zipped half",
        "boxing strip",
        "front strip",
        "side strip",
        "tab",
        "left tie",
        "right tie",
        "corner",
        "button",
        "zipper in the back strip",
        "back ties",
        "button and tab",
        "button, thickness",
        "tab, finished length",
        "interfacing, from the cut left edge of the tab",
        "interfacing, from the cut top edge of the tab",
        "Iron or tack the interfacing onto the wrong side of the tab while it is flat, as far from its cut left and "
        "top edges as the figures of the button and tab say.",
        "Work one buttonhole through the tab, in the middle of its width and along it, from its left end as the "
        "figures of the button and tab say.",
        "Fold the tails of the ties to the middle of the back strip and pin them there, and pin the tab down, clear of "
        "every edge, until the cover is turned out: no seam is to catch them.",
        "Take the pins out of the ties and the tab. Fold the tab back over the box that holds it: it reaches past the "
        "corner, to the button of the next cushion.",
        "Zipped half 1 is the lower half of the strip along the back, and zipped half 2 the upper one.",
        "Side strip 1 goes along the left of the cushion as you stand before it, and side strip 2 along the right.",
        "The boxing strip goes round the left side, the front and the right side of the cushion as you stand before "
        "it: with its right side up, its left end comes to the back of the left side.",
        "Tie the cushion down before anyone sits on it: a loose one slides off a smooth bench, and who sits on it with "
        "it.",
        "Iron or tack the interfacing onto the wrong side of the tab while it is flat, as far from its cut left and "
        "top edges as the figures of the button and tab say.",
        "Work one buttonhole through the tab, in the middle of its width and along it, from its left end as the "
        "figures of the button and tab say.",
        "Fold the tails of the ties to the middle of the back strip and pin them there, and pin the tab down, clear of "
        "every edge, until the cover is turned out: no seam is to catch them.",
        "Take the pins out of the ties and the tab. Fold the tab back over the box that holds it: it reaches past the "
        "corner, to the button of the next cushion.",
        "The boxing strip goes round the left side, the front and the right side of the cushion as you stand before "
        "it: with its right side up, its left end comes to the back of the left side.",
        "Tie the cushion down before anyone sits on it: a loose one slides off a smooth bench, and who sits on it with "
        "it.",
        "tails",
        "turned in at its ends",
        "Kneeling pad cover",
        "thick",
        "Hand-tool roll",
        "Seed-packet organiser",
        "pockets",
        "Peg bag",
        "Peg bag with a scooped front",
        "back of the zipped pockets",
        "base half",
        "back",
        "backing",
        "canvas",
        "clear film",
        "film",
        "film strip",
        "filling",
        "front",
        "hanger sleeve",
        "lining",
        "lining cloth",
        "long side of the edging",
        "short side of the edging",
        "outer",
        "pocket strip",
        "strip",
        "tie",
        "tool pockets",
        "top panel",
        "thin wadding",
        "wadding",
        "zipper",
        "zipper between the base halves",
        "pegs",
        "zipped pockets",
        "the zipper",
        "foot of a film strip",
        "foot of the pocket strip",
        "end of the zipper's opening",
        "middle of the tie",
        "quarter fold",
        "between two tools",
        "each stands open, in its middle, by",
        "each tool pocket, between its rows",
        "longest tool, when the upper half is folded over it",
        "or instead, layers of wadding of that size",
        "ribbon to buy, cut off the reel",
        "thickness of each layer before it is knelt on",
        "width of the ribbon",
        "zipped pocket near the top, width of the largest flat packet",
        "zipped pocket, width of the largest flat packet",
        "A cover that is loose on its pad slides: kneel on it only where it fills out every corner.",
        "Draw on film with a wax pencil, and within its allowances alone: ink does not come off.",
        "Hang it where nobody walks into it: pegs at the height of the eyes hurt.",
        "Hang the bag where its strings and its rod are out of the reach of small children.",
        "Measure the scoop on the front along its edge, and cut bias binding so long and what its ends turn in.",
        "Overcast every cut edge of the cover, or zigzag along it, so that the allowances, which stay raw inside it, "
        "do not fray in the wash. The figures for thread leave this out.",
        "Put each blade into its sheath before it goes into the roll: a point works its way through cloth.",
        "Seed may be dressed with poison: hang the packets out of children's reach.",
        "Sew the new stop to the zipper, and cut its tape, where the zipper's figures say.",
        "Snip the allowances of the round corners to a thread or two from their stitching once they are sewn."};
    std::stable_sort(all.begin(), all.end(), [](const string& a, const string& b) { return a.size() > b.size(); });
    return all;
}

/// What is left of a text without the project's own words, units, and letters that stand by themselves.
string left_of(string text, const std::vector<string>& own) {
    const auto inside = [&](std::size_t at) { return at < text.size() && is_letter(text[at]); };
    for (const string& words : own)
        for (std::size_t at = text.find(words); at != string::npos; at = text.find(words, at + 1))
            if (!(at > 0 && inside(at - 1)) && !inside(at + words.size()))
                text.replace(at, words.size(), words.size(), ' ');
    string left;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (inside(end))
            ++end;
        const string word = text.substr(at, end - at);
        if (word.size() > 1 && word != "in" && word != "cm" && word != "yd" && word != "mm")
            left.append(left.empty() ? "" : " ").append(word);
        at = std::max(end, at + 1);
    }
    return left;
}

/// Every text of a document and of its drawings.
class texts_of {
public:
    std::vector<string> all{}, in_drawings{};
    explicit texts_of(const document& d) {
        add(d.title), add(d.subtitle), add(d.foot);
        for (const string* own :
             {&d.words.page, &d.words.of, &d.words.box_to_tick, &d.words.room_to_write, &d.words.at_full_size})
            all.push_back(detail::filled(*own, [](string&, std::string_view) { return true; }));
        add(d.blocks);
    }

private:
    void add(const string& text) { all.push_back(text); }
    void add(const std::vector<string>& texts) { all.insert(all.end(), texts.begin(), texts.end()); }
    void add(const std::vector<document::block>& blocks) {
        for (const document::block& b : blocks)
            std::visit([&](const auto& is) { add(is); }, b.is);
    }
    void add(const document::heading& h) { add(h.text); }
    void add(const document::paragraph& p) { add(p.text); }
    void add(const document::list& l) { add(l.items); }
    void add(const document::ticks& t) { add(t.items); }
    void add(const document::blanks& b) { add(b.names); }
    void add(const document::caution& c) { add(c.word), add(c.sentences); }
    void add(const document::steps& s) {
        for (const document::step& step : s.all)
            add(step.blocks);
    }
    void add(const document::table& t) {
        add(t.caption), add(t.columns);
        for (const auto& row : t.rows)
            for (const document::cell& c : row)
                add(c.text);
    }
    void add(const document::drawing& d) {
        add(d.shows), add(d.caption), add(d.of.title), add(d.of.description);
        for (const page_words& w : d.of.words)
            in_drawings.push_back(w.text);
    }
};

/// A name that is set in lines, or shortened, is a part of one.
bool is_part_of_a_name(string text, const std::vector<string>& own) {
    if (text.ends_with("..."))
        text.resize(text.size() - 3);
    return std::any_of(own.begin(), own.end(), [&](const string& name) { return name.find(text) != string::npos; });
}

std::size_t check_words(const document& d, const std::vector<string>& own) {
    const texts_of said(d);
    for (const string& text : said.all)
        CHECK_MESSAGE(left_of(text, own) == "", text);
    for (const string& text : said.in_drawings)
        if (left_of(text, own) != "")
            CHECK_MESSAGE(is_part_of_a_name(text, own), text);
    return said.all.size() + said.in_drawings.size();
}

/// A drawing that stands by itself, with all that is round it.
std::size_t check_page(const page& p, const std::vector<string>& own) {
    for (const page_words& w : p.words)
        if (left_of(w.text, own) != "")
            CHECK_MESSAGE(is_part_of_a_name(w.text, own), w.text);
    CHECK_MESSAGE(left_of(p.title, own) == "", p.title);
    CHECK_MESSAGE(left_of(p.description, own) == "", p.description);
    return p.words.size();
}

/// A sheet's text, and its drawings outside a document.
template <length_unit Unit>
std::size_t check_loose(const sheet<Unit>& s, const std::vector<sheet_cloth<Unit>>& cloths, const language& l,
                        const std::vector<string>& own) {
    const drawing_options options{.words = &l};
    std::size_t texts = 0;
    std::istringstream lines(to_text(s, {}, l));
    for (string line; std::getline(lines, line); ++texts)
        CHECK_MESSAGE(left_of(line, own) == "", line);
    for (const sheet_piece<Unit>& p : s.pieces)
        texts += check_page(page_of(p, {}, options), own);
    for (const outlined_piece<Unit>& p : s.outlines)
        texts += check_page(page_of(p, {}, options), own);
    for (const sheet_cloth<Unit>& c : cloths)
        texts += check_page(page_of(c, {}, options, worth_keeping<Unit>::usual()), own);
    for (const page& p : pages_of_finished(s, {}, options))
        texts += check_page(p, own);
    return texts;
}

template <length_unit Unit>
std::size_t check_sheet(sheet<Unit> s, bool hangs, const language& l, const std::vector<string>& own) {
    const auto cloths = allotment::add_cloth(s, allotment::cloth_sold<Unit>{}, hangs);
    s.bulk = bulk_warnings(s, 2);
    std::size_t texts = check_loose(s, cloths, l, own);
    for (const units_shown shows : {units_shown::both, units_shown::inches, units_shown::centimetres})
        texts += check_words(handout_of(s, cloths, {.by = {.shows = shows}, .words = l}), own);
    return texts;
}

/// Of `size`, in its own unit: on a ruler, so that sums are printed, for an edition of it.
template <class Make>
std::size_t in_both_units(const std::string_view inches, const std::string_view centimetres, Make make) {
    std::size_t texts = 0;
    for (const std::string_view size : {inches, centimetres})
        texts += std::visit([&](const auto& s) { return make(s); }, read_size(string(size)));
    return texts;
}

template <class Size>
using unit_of = typename std::decay_t<decltype(std::declval<Size>().width())>::unit_type;

} // namespace

TEST_CASE("a word that no language reaches is seen") {
    const std::vector<string> own = {"tool pockets", "tie"};
    CHECK(left_of("tool pockets, 2 of them: 5 in (12,7 cm)", own) == "of them");
    CHECK(left_of(marked("Cut the ") + "tie", own).empty());
    CHECK(left_of("ties", own) == "ties");
    CHECK(marked("Az {a} z") == "\xEF\xBC\xA1\xEF\xBD\x9A {a} \xEF\xBD\x9A");
}

TEST_CASE("every word of the handouts of the three projects is said by a language, or is the project's own") {
    const language l = marked_english();
    const std::vector<string> own = own_words();
    std::size_t texts = 0;
    for (const allotment::known_project& p : allotment::known_projects)
        texts += in_both_units(p.usual_inches, p.usual_centimetres, [&](const auto& size) {
            using unit = unit_of<decltype(size)>;
            return check_sheet(
                allotment::sheet_for<unit>(p.which, size, "", {},
                                           by_edition<unit>(length_of<inch>({1, 16}), length_of<centimetre>({1, 10}))),
                p.hangs, l, own);
        });
    CHECK(texts > 10'000);
}

TEST_CASE("every word of the handouts of designs with outlines and bindings is said by a language, or is their own") {
    const language l = marked_english();
    const std::vector<string> own = own_words();
    for (const char* file : {"examples/designs/peg_bag.json", "examples/designs/scooped_peg_bag.json",
                             "examples/designs/seed_tray_tote.json", "examples/designs/produce_bag.json",
                             "examples/designs/patchwork_cushion.json", "examples/designs/draught_stopper.json",
                             "examples/designs/mended_panel.json", "examples/designs/picnic_roll.json",
                             "examples/designs/shade_curtain.json", "examples/designs/table_linen.json",
                             "examples/designs/tool_apron.json", "examples/designs/bench_cushion.json",
                             "examples/designs/wall_pockets.json", "examples/designs/advent_hanging.json",
                             "examples/designs/gift_sack.json"}) {
        std::ifstream in(file, std::ios::binary);
        const project_design d = read_design(string(std::istreambuf_iterator<char>(in), {}));
        for (const string& size : d.sizes)
            std::visit([&](const auto& s) { check_sheet(sheet_of(project_of(d, s)), false, l, own); }, read_size(size));
    }
}

TEST_CASE("every word of notions, marks and warnings of projects with all kinds of them is said by a language") {
    const language l = marked_english();
    std::vector<string> own = {"Hanging", "front", "pocket", "Pocket", "flounce", "liner", "canvas", "felt",
                               "low",     "ends",  "tie",    "rings",  "edging",  "box",   "tools",  "film"};
    const auto hem = all_round(single_turned_hem(1_in));
    project<inch> p("Hanging", {12_in, 9_in});
    auto& front = p.add({"front", "canvas", panel(p.finished(), hem)});
    front.mark("low", edge::top, at<cut_edge>("1/2"_in));
    p.add({"pocket", "canvas", panel(finished_size(5_in, 4_in), hem)}).count(2);
    for (const length<inch>& x : {1_in, 3_in, 6_in})
        p.add(placing<inch>{"pocket", "front", at<finished_edge>(x), at<finished_edge>(2_in)});
    edges<inch> ends;
    ends.left = ends.right = seam("1/2"_in);
    p.add({"flounce", "canvas", panel(finished_size(24_in, 6_in), ends)})
        .pleated(edge::left, pleats_near(pleat::box, 12_in, {.width = 4_in, .depth = 1_in}));
    p.add({"box", "felt", panel(finished_size(16_in, 10_in), all_round(seam("1/2"_in)))})
        .count(2)
        .corners_cut_out(1_in, "1/2"_in);
    p.add({"film", "film", panel(finished_size(17_in, 9_in))}).of_film();
    p.add(meeting<inch>{"film", "front", edge::left, 17_in, 12_in, 5});
    p.add(span_list<inch>{"tools", "pocket", edge::left, {3_in, 2_in}});
    const zipped_opening<inch> z{.across = 12_in, .margin = 1_in, .beyond = "1/2"_in};
    p.add(listed("tie", 2, z, zipper_supply<inch>::from_roll(180_in)));
    p.add(listed("tie", 2, z, zipper_supply<inch>::made_up({14_in}, "1/2"_in, 1_in)));
    p.add(listed("tie", 1, ribbon_tie<inch>{14_in, 0, 1, 2_in, 0_in, 9_in, 0_in}));
    p.add(listed("flounce", pleating<inch>(pleat::box, 24_in, 6, 1_in)));
    CHECK(check_words(handout_of(sheet_of(p), {}, {.words = l}), own) > 200);
    sheet<inch> s = sheet_of(p);
    const auto cut = stock_for<inch>("rings", {{"low", 4_in, 3}, {"ends", 9_in, 2}}, {{30_in}, {50_in}});
    s.notions.push_back(listed(cut));
    CHECK(check_words(handout_of(s, {}, {.by = inch_ruler(8), .words = l}), own) > 200);
    CHECK(check_loose(s, {}, l, own) > 200);
}

TEST_CASE("every word of cloths with a wash, a fold and a nap, and of pieces in parts, is said by a language") {
    const language l = marked_english();
    const std::vector<string> own = {"Bench cover", "cover", "band", "facing", "lid",
                                     "ticking",     "drill", "felt", "calico"};
    project<inch> p("Bench cover", {120_in, 30_in});
    p.add({"cover", "ticking", panel(p.finished(), all_round(seam("1/2"_in)))});
    p.add({"band", "drill", panel(finished_size(20_in, 4_in))}).count(3).lies(cloth_lie::on_fold);
    p.add({"facing", "felt", panel(finished_size(20_in, 4_in))}).lies(cloth_lie::one_way);
    p.add({"lid", "calico", panel(finished_size(90_in, 80_in))}).count(2);
    const washing takes{shrinks_by(percent(5)), grows_by(percent(1))};
    p.add(project_cloth<inch>{
        .material = "ticking", .width = 60_in, .washed = washed_when::before_cutting, .change = takes});
    p.add(project_cloth<inch>{
        .material = "drill", .width = 45_in, .folded = true, .washed = washed_when::as_pieces, .change = takes});
    p.add(project_cloth<inch>{.material = "felt", .one_way = true});
    p.add(project_cloth<inch>{.material = "calico", .washed = washed_when::before_cutting});
    CHECK(check_sheet(sheet_of(p), false, l, own) > 100);
}

TEST_CASE("every word of a drawing of lengths from stock is said by a language") {
    const language l = marked_english();
    const std::vector<string> own = {"ribbon", "tie", "loop", "lath"};
    const drawing_options options{.words = &l};
    std::size_t texts = 0;
    const auto check = [&](const stock_cuts<inch>& cuts) {
        for (const ruler& by : {ruler(), inch_ruler(16)})
            for (const page& p : pages_of(cuts, by, options))
                texts += check_page(p, own);
    };
    for (const stock_aim aim : {stock_aim::fewest_pieces, stock_aim::least_length, stock_aim::least_cost}) {
        check(stock_for<inch>("ribbon", {{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 1}}, {{108_in}, {54_in, 3}},
                              {.loss_per_cut = "1/8"_in, .aim = aim}));
        check(stock_for<inch>("lath", {{"lath", 1_in, 90}, {"tie", 60_in, 2}}, {{96_in}}, {.aim = aim}));
    }
    check(stock_for<inch>("ribbon", {{"tie", 54_in, 2}}, {{108_in}}));
    CHECK(texts > 200);
}
