// Designs: files read and written, every fault with its place, forms beside the library's functions, and projects of a size.
#include "../vectors.hpp"
#include "at_random.hpp"
#include "designs.hpp"
#include "refused.hpp"
#include <turncloth/design/at_size.hpp>
#include <turncloth/design/design_of.hpp>
#include <turncloth/design/project_of.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/sheet/fastened.hpp>
#include <turncloth/sheet/filled_and_pieced.hpp>
#include <turncloth/sheet/making.hpp>
#include <turncloth/sheet/on_ruler.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

using namespace turncloth;

namespace {

/// A file of one piece, with what is said of it and beside it.
std::string file_of(const std::string& piece, const std::string& beside = "") {
    return R"({"turncloth_design": 1, "name": "Mat", "units": "inches", "pieces": [{"name": "mat", "material": "felt", )"
           R"("width": "finished width", "height": "finished height")" +
           (piece.empty() ? "" : ", " + piece) + "}]" + (beside.empty() ? "" : ", " + beside) + "}";
}
project<inch> made(const std::string& text, const ruled<inch>& by = {}) {
    return project_of(read_design(text), finished_size(20_in, 16_in), by);
}
std::string refused_when_made(const std::string& text) {
    return refused::message<error>([&] { made(text); });
}

/// Whole numbers are written as texts.
nlohmann::json as_texts(nlohmann::json j) {
    if (j.is_number_integer())
        return j.dump();
    if (j.is_structured())
        for (auto& member : j)
            member = as_texts(member);
    return j;
}

} // namespace

TEST_CASE("a design is written and read back equal") {
    for (const std::string& text :
         {designs::peg_bag(), designs::every_member(), designs::file("examples/designs/tool_roll.json"),
          designs::file("examples/designs/kneeling_pad.json"), designs::file("examples/designs/scooped_peg_bag.json"),
          designs::file("examples/designs/seed_tray_tote.json"), designs::file("examples/designs/produce_bag.json"),
          designs::file("examples/designs/patchwork_cushion.json"),
          designs::file("examples/designs/draught_stopper.json"), designs::file("examples/designs/mended_panel.json"),
          designs::file("examples/designs/picnic_roll.json"), designs::file("examples/designs/shade_curtain.json"),
          designs::file("examples/designs/table_linen.json"), designs::file("examples/designs/wall_pockets.json"),
          designs::file("examples/designs/bench_cushion.json"), designs::file("examples/designs/advent_hanging.json"),
          designs::file("examples/designs/gift_sack.json"), file_of("")}) {
        const project_design d = read_design(text);
        CHECK(read_design(to_json(d).dump()) == d);
    }
    CHECK_FALSE(read_design(designs::peg_bag()) == read_design(designs::every_member()));
    // Whatever a file says is written again, in its words.
    const auto given = nlohmann::json::parse(designs::every_member()),
               written = nlohmann::json::parse(to_json(read_design(designs::every_member())).dump());
    for (const auto& member : given.items())
        CHECK_MESSAGE(written.contains(member.key()), member.key());
    for (const char* name : {"zippers", "meetings", "notions", "cautions", "measures"})
        CHECK(written[name].dump() == as_texts(given[name]).dump());
}

TEST_CASE("every fault of a file is named at once, with its place") {
    CHECK(designs::faults(designs::peg_bag()) == "");
    CHECK(
        designs::faults(R"({"turncloth_design": 2, "nmae": "Mat", "sizes": "3 x 4 in", "units": "yards",
        "measures": [{"name": "a", "is": "finished width * finished height"}, {"name": "b", "is": "a + 1 in"},
                     {"name": "is it", "inches": "1 in", "centimetres": "1 in"}, {"name": "c", "inches": "1 in"}],
        "pieces": [{"name": "mat", "material": 3, "width": "finished widht", "count": 2.5, "inside": "mat",
                    "edges": {"all": {"is": "zigzag"}, "top": {"is": "seam", "depth": "1 in"}},
                    "marks": [{"what": "{b", "parallel_to": "north", "places": {"is": "divided", "span": 3, "parts": 2}}]}],
        "placings": [{"piece": "mat", "on": "cloth", "from_left": "1 in + 1", "from_top": "2 cm"}],
        "notions": [{"name": "n", "details": [{"what": "x"}]}]})") ==
        "/turncloth_design: expected 1, the version of this format\n"
        "/name: it is missing\n"
        "/units: expected one of \"both\", \"inches\" and \"centimetres\"\n"
        "/sizes: expected a list, [ ]\n"
        "/pieces/0/material: expected a text that is not empty\n"
        "/pieces/0/height: it is missing\n"
        "/pieces/0/count: expected an expression as a text, or a whole number\n"
        "/pieces/0/marks/0/parallel_to: expected one of \"top\", \"right\", \"bottom\" and \"left\"\n"
        "/nmae: there is no such member here: there are $schema, turncloth_design, name, units, sizes, "
        "shorter_side_parts, measures, refuse, finishes, pieces, outlines, cloths, meetings, seams, placings, "
        "span_lists, "
        "zippers, "
        "bindings, "
        "must_reach, notions, sewings, making, cautions, preparations and most_layers\n"
        "/measures/0/is, character 18: a length times a length is no length: one of them must be a number\n"
        "/measures/2/name, character 1: a name is of words of letters and digits, begins with a letter and holds no "
        "word of the grammar\n"
        "/pieces/0/width, character 1: nothing here is named \"finished widht\"\n"
        "/pieces/0/edges/all/is: there is no \"zigzag\" here: there are \"raw edge\", \"seam\", \"single-turned hem\", "
        "\"double-turned hem\", \"heading\", \"casing\", \"self-binding\", \"separate binding\", \"French seam\", "
        "\"flat-felled seam, over\", \"flat-felled seam, under\", \"lapped seam, over\", \"lapped seam, under\" and "
        "\"turned under beside a zipper\"\n"
        "/pieces/0/edges/top/allowance: it is missing\n"
        "/pieces/0/edges/top/depth: a seam has no such part\n"
        "/pieces/0/marks/0/what, character 1: this brace has no other: an expression stands between two\n"
        "/pieces/0/marks/0/places/span: expected a length: this is a number\n"
        "/pieces/0/inside: no piece before this one is named \"mat\"\n"
        "/placings/0/on: no piece is named \"cloth\"\n"
        "/placings/0/from_left, character 8: this is a number, and what it goes with is a length in inches\n"
        "/placings/0/from_top: this is a length in centimetres, and the project is made in inches: give the measure "
        "for "
        "both, or write \"as inches\" or \"as centimetres\" behind it\n"
        "/notions/0/details/0: give either a figure, its terms, a number or places\n"
        "/measures/2/centimetres: this is a length in inches, and the project is made in centimetres: give the measure "
        "for both, or write \"as inches\" or \"as centimetres\" behind it\n"
        "/measures/3/centimetres: it is missing\n");
}

TEST_CASE("what is no JSON, or too much of it, is refused") {
    CHECK(designs::faults("{\"name\":\n \"Mat\" \"x\"}") ==
          "the design: it is no JSON (RFC 8259), in line 2 at character 10\n");
    CHECK(designs::faults(R"({"name": 1, "name": 2})") == "the design: \"name\" stands twice in one object\n");
    CHECK(designs::faults(std::string(100'000, '[')).find("too deep") != std::string::npos);
    CHECK(designs::faults(std::string(100, '[') + std::string(100, ']')) ==
          "the design: its lists and objects lie too deep within one another\n");
    CHECK(designs::faults(std::string(1'000'001, ' ')) == "the design: a file has at most 1000000 bytes\n");
    CHECK(designs::faults(file_of("", R"("sizes": ["3 in"])")) ==
          "/sizes/0: cannot read it as a size: write width x height, as in 24 x 15 in\n");
    CHECK(designs::faults("[]") == "the design: expected an object, { }\n");
    CHECK(designs::faults("") != "");
    std::string many =
        "{\"what\": \"x\", \"parallel_to\": \"top\", \"places\": {\"is\": \"one place\", \"at\": \"1 in\"}}";
    std::string list = many;
    for (int i = 0; i < 1000; ++i)
        list += "," + many;
    CHECK(designs::faults(file_of("\"marks\": [" + list + "]")) ==
          "/pieces/0/marks: expected at most 1000 items in a list\n");
}

TEST_CASE("every finish of a file is the library's own") {
    const std::pair<std::string, finish<inch>> all[] = {
        {R"("is": "raw edge")", finish<inch>()},
        {R"("is": "seam", "allowance": "5/8 in")", seam("5/8"_in)},
        {R"("is": "single-turned hem", "depth": "1 in", "inset": "1/8 in")", single_turned_hem(1_in, "1/8"_in)},
        {R"("is": "double-turned hem", "first": "1/4 in", "depth": "1 in", "inset": "1/8 in", "turn": "1/16 in")",
         double_turned_hem("1/4"_in, 1_in, "1/8"_in, "1/16"_in)},
        {R"("is": "heading", "depth": "2 in", "under": "1/2 in", "inset": "1/8 in")",
         heading(2_in, "1/2"_in, "1/8"_in)},
        {R"("is": "casing", "depth": "2 in", "channel": "3/4 in", "under": "1/2 in", "inset": "1/8 in")",
         casing(2_in, "3/4"_in, "1/2"_in, "1/8"_in)},
        {R"("is": "self-binding", "width": "1/2 in", "inset": "1/8 in", "turn": "1/4 in")",
         self_binding("1/2"_in, "1/8"_in, "1/4"_in)},
        {R"("is": "separate binding", "width": "1/2 in")", separate_binding("1/2"_in)},
        {R"("is": "French seam", "first": "1/4 in", "second": "3/8 in", "trimmed": "1/8 in")",
         french_seam("1/4"_in, "3/8"_in, "1/8"_in)},
        {R"("is": "French seam", "first": "1/8 in", "second": "1/4 in")", french_seam("1/8"_in, "1/4"_in)},
        {R"("is": "flat-felled seam, over", "width": "1/2 in", "under": "1/4 in", "inset": "1/8 in")",
         felled_over("1/2"_in, "1/4"_in, "1/8"_in)},
        {R"("is": "flat-felled seam, under", "allowance": "1/4 in")", felled_under("1/4"_in)},
        {R"("is": "turned under beside a zipper", "turned": "3/4 in", "stitched": "1/4 in")",
         finish<inch>("turned under beside the zipper")
             .allows("3/4"_in)
             .folds_at("3/4"_in)
             .stitched_at(1_in)
             .reaches("3/4"_in)},
        {R"("is": "lapped seam, over", "under": "1/2 in", "inset": "1/8 in")", lapped_over("1/2"_in, "1/8"_in)},
        {R"("is": "lapped seam, under", "lap": "1/2 in", "inset": "1/8 in")", lapped_under("1/2"_in, "1/8"_in)},
    };
    for (const auto& pair : all) {
        const std::string& text = pair.first;
        const auto& expected = pair.second;
        CAPTURE(text);
        const auto p =
            made(file_of(R"("edges": {"all": {"is": "seam", "allowance": "1 in"}, "left": {)" + text + "}}"));
        CHECK(p.pieces()[0].shape().finish_of(edge::left) == expected);
        CHECK(p.pieces()[0].shape().finish_of(edge::right) == seam(1_in));
    }
}

namespace {

/// Where the marks of a form are, from the cut left edge of a mat 20 in wide without any finish.
std::vector<length<inch>> marks_of(const std::string& places, const ruled<inch>& by = {}) {
    std::vector<length<inch>> all;
    const auto p = made(file_of(R"("marks": [{"what": "m", "parallel_to": "left", "places": {)" + places + "}}]"), by);
    for (const auto& m : p.pieces()[0].marks())
        all.push_back(m.from_cut_edge.value());
    return all;
}
using lengths = std::vector<length<inch>>;

} // namespace

TEST_CASE("what repeats is one of the library's repeaters") {
    CHECK(marks_of(R"("is": "one place", "at": "3 in")") == lengths{3_in});
    CHECK(marks_of(R"("is": "divided", "span": "finished width", "parts": 3)") == lengths{"6 2/3"_in, "13 1/3"_in});
    CHECK(marks_of(R"("is": "divided", "span": "finished width", "parts": 3)", ruled<inch>("1/8"_in)) ==
          lengths{"6 5/8"_in, "13 3/8"_in});
    CHECK(marks_of(R"("is": "halved", "span": "16 in", "times": 2, "start": "2 in")") == lengths{6_in, 10_in, 14_in});
    CHECK(marks_of(R"("is": "every", "step": "6 in", "within": "finished width")") == lengths{6_in, 12_in, 18_in});
    // (20 - 3 x 2) / 4 = 3 1/2 in between.
    CHECK(marks_of(R"("is": "spaced", "count": 3, "width": "2 in", "along": "finished width")") ==
          lengths{"4 1/2"_in, 10_in, "15 1/2"_in});
    CHECK(marks_of(
              R"("is": "spaced", "count": 2, "width": "2 in", "along": "18 in", "margin": "1 in", "start": "1 in")") ==
          lengths{3_in, 17_in});
    CHECK(refused_when_made(file_of(R"("marks": [{"what": "m", "parallel_to": "left",
        "places": {"is": "every", "step": "1/1000 in", "within": "finished width"}}])"))
              .find("/pieces/0/marks/0: the number of marks in a row must be at most 10000") == 0);
}

TEST_CASE("zippers made up, foam and straps are listed as the library lists them") {
    const auto listed_as = [](const std::string& from) {
        return made(file_of("", R"("notions": [{"name": "n", "from": {)" + from + "}}]")).notions()[0];
    };
    CHECK(listed_as(R"("is": "zippers made up", "count": 2, "across": "12 in", "margin": "1 in", "beyond": "5/8 in",
                       "length_sold": "12 in", "ends": "5/8 in", "tail": "1/2 in")") ==
          listed<inch>("n", 2, {12_in, 1_in, "5/8"_in}, zipper_supply<inch>::made_up({12_in}, "5/8"_in, "1/2"_in)));
    const notion<inch> foam =
        listed_as(R"("is": "foam filling", "width": "12 in", "height": "9 in", "thickness": "2 in")");
    CHECK(foam.details().size() == 3);
    CHECK((foam.details()[2].amount.value() == 2_in && foam.details()[2].sold == sold_as::as_told));
    CHECK(foam.cautions()[0].sentence == caution::filling.sentence);
    CHECK(
        listed_as(
            R"("is": "drawstrings", "count": 2, "round": "16 in", "beyond": "1 1/2 in", "knot": "1 in", "closed": "3 in")") ==
        listed("n", 2, drawstrings<inch>{16_in, {"1 1/2"_in, 1_in}, 3_in}));
    CHECK(
        listed_as(
            R"("is": "darn", "width": "2 in", "height": "1 in", "reach": "1/2 in", "apart": "1/8 in", "loop": "1/16 in",
                       "needleful": "24 in", "tail": "1 in")") ==
        listed<inch>("n", darn<inch>{{2_in, 1_in}, "1/2"_in, "1/8"_in, "1/16"_in}, {24_in, 1_in}));
    CHECK(listed_as(
              R"("is": "pleats with gaps", "heading": "53 in", "cloth": "118 in", "return": "3 in", "overlap": "2 in",
                       "count": 13, "turned": "1/2 in")") ==
          listed("n", pleat_groups<inch>(53_in, 118_in, {3_in, 2_in}, 13), "1/2"_in));
    CHECK(listed_as(R"("is": "curtain drops", "width": "98 in", "drop": "64 in", "usable": "58 in", "join": "1/2 in",
                       "repeat": "6 in", "across": "8 in")") ==
          listed("n", curtain_drops<inch>{98_in, 64_in, 58_in, "1/2"_in, 6_in, 8_in}));
    CHECK(listed_as(R"("is": "webbing loops", "count": 2, "stands": "2 in", "sewn": "1 in", "under": "1/2 in")") ==
          listed("n", 2, webbing_loops<inch>{2_in, 1_in, "1/2"_in}));
    CHECK(listed_as(
              R"("is": "elastic", "count": 1, "round": "16 in", "stretch": "9/5", "ease": "1/2 in", "overlap": "3/4 in",
                       "step": "1/4 in")") ==
          listed("n", 1, 16_in, elastic<inch>{{9, 5}, "1/2"_in, "3/4"_in}, "1/4"_in));
    CHECK(listed_as(R"("is": "straps folded in four", "count": 2, "width": "1 in", "free": "13 in", "sewn": "5 in",
                       "turned": "1/2 in", "inset": "1/8 in", "step": "1/4 in")") ==
          listed("n", 2, boxed_straps<inch>{1_in, 13_in, {5_in, "1/2"_in}, "1/8"_in, "1/4"_in}));
    CHECK(
        listed_as(
            R"("is": "loose filling", "girth": "12 in", "along": "32 in", "cube_weighs": "3/20", "step": "1/8 in")") ==
        listed("n", loose_filling<inch>{{12_in, 32_in}, {3, 20}, "1/8"_in}));
    CHECK(
        listed_as(
            R"("is": "patches from strips", "count": 9, "width": "4 in", "height": "3 in", "seam": "1/4 in", "usable": "42 in")") ==
        listed("n", 9, sewn_patch<inch>{4_in, 3_in, "1/4"_in}, 42_in));
    CHECK(listed_as(
              R"("is": "squares of triangles", "count": 5, "finished": "3 in", "seam": "1/4 in", "step": "1/8 in")") ==
          listed("n", 5, triangles<inch>{3_in, {pieced_of::two, "1/4"_in}, "1/8"_in}));
    CHECK(
        listed_as(
            R"("is": "squares of triangles", "count": 5, "finished": "3 in", "seam": "1/4 in", "step": "1/8 in", "triangles": 4)") ==
        listed("n", 5, triangles<inch>{3_in, {pieced_of::four, "1/4"_in}, "1/8"_in}));
    CHECK(listed_as(
              R"("is": "tie round a neck", "girth": "4 in", "loop": "2 in", "tail": "3 in", "knot": "1 in",
                       "ease": "1/4 in", "turned": "1/2 in", "cut": "21 in")") ==
          listed("n", neck_tie<inch>{4_in, {2_in, 3_in, 1_in}, {"1/4"_in, "1/2"_in}}, 21_in));
    CHECK(listed_as(R"("is": "tie round a neck", "girth": "4 in", "loop": "2 in", "tail": "3 in", "knot": "1 in")") ==
          listed("n", neck_tie<inch>{4_in, {2_in, 3_in, 1_in}}));
    CHECK(listed_as(
              R"("is": "piping all round", "width": "20 in", "height": "14 in", "cord": "1/4 in", "cloth": "1/32 in",
                       "seam": "3/8 in", "lap": "1 in", "turned": "1/2 in", "step": "1/8 in")") ==
          listed("n", piped_edge<inch>{.piece = {20_in, 14_in},
                                       .cord = {"1/4"_in, "3/8"_in, "1/32"_in},
                                       .ends = {1_in, "1/2"_in},
                                       .first = 10_in,
                                       .step = "1/8"_in}));
}

TEST_CASE("buttons, snaps and straps that close on themselves are listed as the library lists them") {
    const auto listed_as = [](const std::string& from) {
        return made(file_of("", R"("notions": [{"name": "n", "from": {)" + from + "}}]")).notions()[0];
    };
    buttoned_lap<inch> lap{.button = {"3/4"_in, "1/8"_in},
                           .places = {at<finished_edge>(2_in), 4_in, 2},
                           .edge = 8_in,
                           .stand = "3/4"_in,
                           .deep = 2_in,
                           .hole = "7/8"_in,
                           .clear = "1/4"_in};
    const std::string buttons =
        R"("is": "buttons", "count": 2, "edge": "8 in", "first": "2 in", "step": "4 in", "across": "3/4 in",
           "thickness": "1/8 in", "hole": "7/8 in", "stand": "3/4 in", "deep": "2 in", "clear": "1/4 in", "beyond": "3/8 in")";
    CHECK(listed_as(buttons) == listed("n", lap, "3/8"_in));
    lap.runs = hole_runs::square_to_edge;
    lap.shank = "1/16"_in;
    CHECK(listed_as(buttons + R"(, "shank": "1/16 in")") == listed("n", lap, "3/8"_in));
    CHECK(listed_as(
              R"("is": "snaps", "count": 3, "edge": "8 in", "first": "1 in", "step": "3 in", "across": "1/2 in",
                 "stand": "5/8 in", "deep": "1 1/4 in", "clear": "1/4 in")") ==
          listed("n", snapped_lap<inch>{.across = "1/2"_in,
                                        .places = {at<finished_edge>(1_in), 3_in, 3},
                                        .edge = 8_in,
                                        .stand = "5/8"_in,
                                        .deep = "1 1/4"_in,
                                        .clear = "1/4"_in}));
    CHECK(listed_as(
              R"("is": "straps with hook and loop", "count": 2, "least": "10 in", "most": "12 in", "holds": "2 in",
                 "end": "1/2 in")") == listed("n", 2, touch_strap<inch>{10_in, 12_in, 2_in, "1/2"_in}));
}

TEST_CASE("a side that is parted into two alike is twice a whole number of graduations on a ruler") {
    const auto finished = [](const char* width, const char* height) {
        const project_design d = read_design(file_of("", R"("shorter_side_parts": 2)"));
        const finished_size<inch> asked(read_length<inch>(width), read_length<inch>(height));
        return project_of(d, asked, ruled<inch>("1/8"_in)).finished();
    };
    CHECK(finished("20 in", "9 1/8 in") == finished_size(20_in, "9 1/4"_in)); // a half goes up
    CHECK(finished("9 1/16 in", "20 1/16 in") == finished_size(9_in, "20 1/8"_in));
    CHECK(finished("9 1/8 in", "9 1/8 in") == finished_size("9 1/4"_in, "9 1/4"_in));
    CHECK(refused_when_made(file_of("", R"("shorter_side_parts": 0)")) ==
          "/shorter_side_parts: a side is parted into 1 to 1000 alike: it comes to 0");
}

TEST_CASE("an item is there only where its condition holds") {
    const auto count = [](const std::string& where) {
        return made(file_of(R"("marks": [{"what": "m", "parallel_to": "left", "where": ")" + where +
                            R"(", "places": {"is": "one place", "at": "3 in"}}])"))
            .pieces()[0]
            .marks()
            .size();
    };
    CHECK(count("finished width is 20 in") == 1);
    CHECK(count("finished width is not 20 in") == 0);
    const project_design d = read_design(designs::every_member());
    CHECK(project_of(d, finished_size(20_in, 30_in)).pieces().size() == 4);
    CHECK(project_of(d, finished_size(10_in, 30_in)).pieces().size() == 3);
    CHECK(project_of(d, finished_size(10_in, 30_in)).zippers().size() == 1);
}

TEST_CASE("all that a design says is in the project") {
    const project<inch> p = project_of(read_design(designs::every_member()), finished_size(20_in, 30_in));
    CHECK(p.name() == "Apron with 2 ties");
    CHECK(p.pieces()[1].count() == 2);
    CHECK(p.pieces()[1].is_film());
    CHECK(p.pieces()[2].inside() == "front");
    CHECK(p.pieces()[0].frays());
    CHECK_FALSE(p.pieces()[1].frays()); // film
    CHECK_FALSE(p.pieces()[2].frays());
    CHECK(p.pieces()[2].is_cut_up());
    CHECK_FALSE(p.pieces()[0].is_cut_up());
    CHECK(p.pieces()[0].eyelets()[0].along.size() == 3);
    CHECK(p.pieces()[0].marks()[0].from_cut_edge.value() == 5_in);
    CHECK(p.pieces()[0].marks()[0].only[0].size == "1/2"_in);
    CHECK((p.pieces()[0].eyelets()[1].along.centres()[1] == at<finished_edge>("15 3/4"_in)));
    CHECK(p.pieces()[0].marks().back().from_cut_edge.value() == 4_in); // 2 1/2 + 1 + 1/2 in
    const finish<inch>& own = p.pieces()[1].shape().finish_of(edge::left);
    CHECK((own.name() == label("binding of one's own") && own.joins() && own.reach() == "1/4"_in));
    CHECK((own.allowance() == "1/2"_in && own.folds()[0] == at<cut_edge>("1/2"_in)));
    CHECK(own.stitching()[1] == at<cut_edge>("5/8"_in));
    CHECK((p.meetings()[0].graduation == "1/16"_in && p.zippers()[0].graduation == "1/16"_in));
    CHECK(p.meetings()[0].on_longer == 40_in);
    CHECK(p.placings()[0].from_top == at<finished_edge>(8_in));
    CHECK(p.placings()[0].sewn == std::vector{edge::left, edge::right, edge::bottom});
    CHECK(p.placings()[0].inset == "1/8"_in);
    CHECK(p.span_lists()[0].spans == lengths{10_in, 10_in});
    CHECK(p.zippers()[0].supply.lengths_sold == lengths{12_in, 24_in});
    CHECK(p.zippers()[1].supply.roll == 180_in);
    CHECK(p.zippers()[0].slit == "1/4"_in);
    CHECK(p.bindings()[0] == edge_binding<inch>{"front",
                                                "cotton",
                                                "1/2"_in,
                                                {"3/8"_in, "1/8"_in},
                                                "1/16"_in,
                                                "3/4"_in,
                                                {edge::bottom},
                                                "edging of 2",
                                                true,
                                                true});
    CHECK(p.must_reach_list()[0].needs == 30_in);
    CHECK(p.notions()[0].name() == "rings");
    CHECK(p.notions()[1].name() == "ties of 5 in");
    const auto& details = p.notions()[1].details();
    CHECK(to_text(details[details.size() - 4].amount) == "12 in = 2 x (5 + 1) in tails");
    CHECK(details[details.size() - 3].places == lengths{1_in, 5_in});
    CHECK(p.notions()[1].details().back().count == 2);
    CHECK(p.notions()[1].goes_in_before_seams());
    CHECK(p.sewings()[0].waste == fraction(1, 4));
    CHECK(p.cautions()[0].sentence == "Keep it from the fire.");
    CHECK(p.preparations() == std::vector<std::string>{"Chalk the pockets."});
    CHECK(p.most_layers() == 10);
}

TEST_CASE("all that a design says of an outline is in the project") {
    const project_design d = read_design(designs::every_member());
    const project<inch> p = project_of(d, finished_size(20_in, 30_in));
    REQUIRE(p.outlines().size() == 1);
    const drafted_piece<inch>& bib = p.outlines()[0].made_from;
    CHECK((bib.name == "bib" && bib.material == "canvas" && bib.count == 2 && bib.may_turn));
    CHECK((bib.grain && (*bib.grain)[1] == drafted_spot<inch>{1_in, 6_in} && bib.tolerance == "1/64"_in));
    REQUIRE(bib.corners.size() == 4);
    CHECK((bib.corners[0].notches == lengths{5_in, 10_in} && bib.corners[0].edge == seam("1/2"_in)));
    CHECK((bib.corners[1].across == 20_in && bib.corners[1].curve == drafted_curve<inch>()));
    CHECK((bib.corners[2].edge == single_turned_hem("1/2"_in) && bib.corners[2].curve == hollow(2_in)));
    CHECK((bib.corners[2].shape == corner_shape::reflected_in_edge_after && bib.corners[2].up == 8_in));
    CHECK((bib.corners[3].curve ==
           drafted_curve<inch>{curve_kind::cubic, {}, {1_in, 6_in}, {length_of<inch>(-1), 2_in}}));
    // One corner or the other is there.
    const auto narrow = project_of(d, finished_size(10_in, 30_in));
    CHECK((narrow.outlines()[0].made_from.corners[3].curve == rounded(1_in)));
    // A project of outlines is written as one.
    const project<inch> bag =
        project_of(read_design(designs::file("examples/designs/scooped_peg_bag.json")), finished_size(12_in, 14_in));
    CHECK(design_of(bag).outlines[0].corners[4].curve->is == "hollow");
}

namespace {

/// Of a pad of felt with these corners.
std::string outlined_file(const std::string& corners, const std::string& more = "") {
    return R"({"turncloth_design": 1, "name": "Pad", "units": "inches", "outlines": [{"name": "pad", "material": "felt",
        "edges": {"is": "seam", "allowance": "1/2 in"}, "corners": [)" +
           corners + "]}]" + more + "}";
}

} // namespace

TEST_CASE("what an outline of a file lacks, or cannot be drafted of, is named with its place") {
    const std::string two = R"({}, {"across": "finished width"}, )";
    CHECK(designs::faults(outlined_file(two + R"({"up": "4", "curve": {"is": "bent"}}, {"shape": "round"},
        {"edge": {"is": "seam"}, "curve": {"is": "hollow"}})",
                                        R"(, "placings": [{"piece": "pad", "on": "pad"}],
        "pieces": [{"name": "pad", "material": "felt", "width": "1 in", "height": "1 in"}])")) ==
          "/outlines/0/corners/3/shape: expected one of \"mitred\", \"squared to edge before\", \"squared to edge "
          "after\", \"reflected in edge before\" and \"reflected in edge after\"\n"
          "/outlines/0/corners/2/up: expected a length: this is a number\n"
          "/outlines/0/corners/2/curve/is: there is no \"bent\" here: there are \"straight\", \"hollow\", "
          "\"rounded\" and \"cubic\"\n"
          "/outlines/0/corners/4/edge/allowance: it is missing\n"
          "/outlines/0/corners/4/curve/rise: it is missing\n"
          "/outlines/0/name: a piece has that name\n");
    CHECK(designs::faults(outlined_file(two + R"({"up": "4 in"})", R"(, "placings": [{"piece": "pad", "on": "pad"}])"))
              .starts_with("/placings/0/piece: \"pad\" is an outline, and this takes a rectangle\n"));
    CHECK(designs::faults(R"({"turncloth_design": 1, "name": "Pad"})") ==
          "the design: it has neither pieces nor outlines\n");
    // At a size, the corner that is there and not the one of its number among those that are.
    const std::string hidden = R"({"up": "1 in", "where": "finished width is less than 1 in"}, )";
    CHECK(refused_when_made(outlined_file(hidden + two + R"({"up": "4 in", "notches": ["finished width * 2"]})")) ==
          "/outlines/0/corners/3: pad: a notch on edge 3 must lie from 0 to 4.000000 from its start: it was at "
          "40.000000");
    CHECK(refused_when_made(outlined_file(R"({}, {"across": "finished width - 20 in"}, {"up": "3 in"})")) ==
          "/outlines/0/corners/0: pad: edge 1 of an outline must have a length: its corners were one point");
    // Of every outline, not of the first alone.
    const std::string flat = R"({}, {"across": "finished width - 20 in"}, {"up": "3 in"})";
    CHECK(refused_when_made(outlined_file(flat + R"(]}, {"name": "lid", "material": "felt", "corners": [)" + flat)) ==
          "/outlines/0/corners/0: pad: edge 1 of an outline must have a length: its corners were one point; "
          "/outlines/1/corners/0: lid: edge 1 of an outline must have a length: its corners were one point");
}

TEST_CASE("all that a design says of its making is in the making") {
    const project<inch> p = project_of(read_design(designs::every_member()), finished_size(20_in, 30_in));
    const making<inch>& d = *p.design();
    CHECK(p.pieces()[0].pleats()[0].pleats.kind() == pleat::box);
    CHECK(p.pieces()[0].pleats()[0].starts == at<finished_edge>(2_in));
    CHECK(p.pieces()[0].corners()[0].across == 4_in);
    CHECK(p.notions()[1].details()[p.notions()[1].details().size() - 2].sold == sold_as::off_a_roll);
    CHECK((d.lips() == "1/4"_in && d.name() == "Apron with 2 ties, sewn"));

    // Whole tapes are 8 x 1 in, and the pieces' edges have no finish but those of the front.
    const part<inch>& tape = d.parts().back();
    CHECK((tape.name == "tape" && tape.width == 8_in && tape.count == 2 && tape.cloth.film && !tape.cloth.frays));
    CHECK((tape.cloth.two_sided && tape.cloth.one_way && tape.cloth.thickness == "1/32"_in));
    CHECK((tape.cloth.sold_width == 1_in && tape.cloth.sold_by == 36_in));
    const laying<inch>& l = d.layings().back();
    CHECK((d.parts()[l.on.index].name == "pocket" && l.on.copy == 1 && l.up == face::wrong));
    CHECK((l.upside_down && l.beneath && l.set_into_one && l.left == 1_in && l.top == 2_in));
    CHECK(l.fit == fit<inch>{surplus::tuck, 2, 1_in, 6_in, 5_in, false, "1/16"_in});
    // The folds of the top edge's heading and of the left edge's hem, without their rows, come before the other creases.
    const auto& creases = d.creases();
    CHECK(creases[creases.size() - 3].at.from == edge::left);
    CHECK(creases[creases.size() - 3].over);
    // A hem of 1/2 in is sewn on its raw edge, 1/2 in inside the finished edge; 1 in further in, and from 2 1/2 + 1 in
    // below the cut top edge, where the stitching of a heading 2 in deep, 1/2 in turned under, lies 1/8 in above its edge.
    const crease<inch>& side = creases[creases.size() - 2];
    CHECK((side.turn == turning::quarter && side.over && side.begins_wall));
    CHECK(side.at.in == at<cut_edge>(2_in));
    CHECK(*side.at.begins == "5 3/8"_in);
    CHECK(creases.back().across->leg == 2_in);
    const stitching<inch>& quilting = d.rows().back();
    CHECK((quilting.each.size() == 3 && quilting.each[0] == at<cut_edge>("5 1/2"_in) && quilting.by_hand));
    CHECK((quilting.along.in == quilting.each[0] && quilting.through.size() == 2));
    CHECK((quilting.stitch == stitch(401) && quilting.overrun == "1/4"_in));
    const seam_of<inch>& frill = d.seams()[0];
    CHECK((frill.beyond == beyond_seam::quarter && frill.taken_up == surplus::gather && frill.spans == 8));
    CHECK((frill.stitch == stitch(504) && frill.overrun == "1/8"_in && frill.graduation == "1/8"_in));
    CHECK((frill.pressed == pressed::to_other && frill.one[0].in == at<cut_edge>("1/2"_in)));
    CHECK((d.snips().back().kind == snip_kind::clip && d.snips().back().at.in == at<cut_edge>("5 1/2"_in)));
    CHECK((d.spots().back().places[0] == at<cut_edge>("2 1/2"_in) && d.spots().back().width == 1_in));
    CHECK(d.handworks() == std::vector{handwork{"Stay-stitch the corners at 2 places.", {{0, 0}, {1, 1}}}});
    CHECK(d.befores()[d.befores().size() - 2].first == operation{operation_kind::handwork, 0});
    CHECK(d.mouths().back().at[0].on == cut_part{d.parts().size() - 1, 1});
    const compartment<inch>& pouch = d.compartments()[0];
    CHECK((pouch.from_left == "2 1/2"_in && pouch.from_top == "4 1/2"_in && pouch.mouths.size() == 2));
    CHECK((pouch.count == 2 && pouch.step == 3_in && pouch.least_depth == "1/2"_in));
    CHECK(pouch.mouths[0].index == d.mouths().size() - 1);
    CHECK(d.mouths()[pouch.mouths[1].index].by == closed_by::zipper);
    CHECK((d.all_contents()[0].folds == 1 && d.all_contents()[0].squeezed == "1/4"_in));
    CHECK((d.moments()[0].what == moment_kind::put_in && d.moments()[1].index == d.mouths().size() - 1));
    CHECK(d.befores().back().why == "it is filled first");
    CHECK(d.befores().back().then == operation{operation_kind::moment, 1});
}

TEST_CASE("a making says what it names that is not there, in the file and at a size") {
    const auto making_of = [](const std::string& said) { return file_of("", "\"making\": {" + said + "}"); };
    CHECK(designs::faults(making_of(R"(
        "layings": [{"piece": "mta", "on": "mat 2"}],
        "creases": [{"called": "a"}, {"across": {"on": "mat", "upright": "top", "level": "left", "leg": "1 in"}}],
        "rows": [{"along": {"on": "mat", "from": "top", "in": "1 in"}, "places": {"is": "one place", "at": "1 in"}}],
        "seams": [{"one": [], "other": [{"on": "mat", "from": "top"}]}],
        "compartments": [{"name": "c", "between": ["mat"], "from_left": "1 in", "from_top": "1 in",
                          "mouths": [{"mouth": "lid"}, {"number": 1}, {"mouth": "lid", "number": 1}]}],
        "contents": [{"what": "foam", "width": "1 in", "height": "1 in", "into": "d", "by": {"zipper_on": "rug"}}],
        "moments": [{"what": "close"}, {"what": "put in", "contents": "wadding"}, {"what": "roll", "contents": "foam"}],
        "order": [{"first": "a", "then": "b", "why": "so"}])")) ==
          "/making/layings/0/piece: no part is named \"mta\"\n"
          "/making/creases/0: give either a line or a corner\n"
          "/making/creases/1/across: a corner is of an upright edge and a level one\n"
          "/making/rows/0: give either how far in the line is or the places of rows\n"
          "/making/seams/0/one: it is missing\n"
          "/making/compartments/0: a compartment lies between two walls\n"
          "/making/compartments/0/mouths/0/mouth: no mouth is named \"lid\"\n"
          "/making/compartments/0/mouths/1: give either a mouth or the piece that a zipper is on\n"
          "/making/compartments/0/mouths/2: a mouth that has a name needs no number\n"
          "/making/compartments/0/mouths/2/mouth: no mouth is named \"lid\"\n"
          "/making/contents/0/into: no compartment is named \"d\"\n"
          "/making/contents/0/by/zipper_on: no piece is named \"rug\"\n"
          "/making/moments/0: say which mouth\n"
          "/making/moments/1/contents: no contents are named \"wadding\"\n"
          "/making/moments/2: no contents are named for this\n"
          "/making/order/0/then: no operation is called \"b\"\n");
    CHECK(refused_when_made(making_of(R"(
        "rows": [{"along": {"on": "mat 2", "from": "top", "in": "1 in"}},
                 {"along": {"on": "mat", "from": "top", "in": "1 in", "measured_from": "stitching"}}],
        "mouths": [{"name": "m", "at": [{"on": "mat", "from": "top"}], "where": "finished width is 1 in"}],
        "compartments": [{"name": "c", "between": ["mat", "mat"], "from_left": "1 in", "from_top": "1 in",
                          "mouths": [{"mouth": "m"}]}])")) ==
          "/making/rows/0/along/on: no part is named \"mat 2\" at this size; /making/rows/1: the top edge has no "
          "stitching "
          "to measure from; /making/compartments/0/mouths/0/mouth: none of the mouths is named \"m\" at this size");
}

namespace {

/// As numbers it is the same project, reads back equal, and is of that size alone.
template <length_unit Unit>
void check_numbers(const project_design& d, const finished_size<Unit>& size) {
    const project_design numbers = at_size(d, size);
    CHECK(read_design(to_json(numbers).dump()) == numbers);
    CHECK(project_of(numbers, size) == project_of(d, size));
    CHECK(at_size(numbers, size) == numbers);
    CHECK(numbers.measures.empty());
    for (const char* name : {"finished width /", "\"where\": \"ties", "otherwise"})
        CHECK(to_json(numbers).dump().find(name) == std::string::npos);
    const finished_size<Unit> wider(size.width() * 2, size.height());
    CHECK(refused::message<refused_size>([&] { project_of(numbers, wider); }) ==
          "These are the numbers of " + to_text(size) + " alone.");
}

} // namespace

TEST_CASE("a design at a size is a file of numbers that gives the same project") {
    check_numbers(read_design(designs::every_member()), finished_size(20_in, 30_in));
    check_numbers(read_design(designs::every_member()), finished_size(10_in, 30_in));
    for (const char* name :
         {"peg_bag", "organiser", "tool_roll", "kneeling_pad", "scooped_peg_bag", "seed_tray_tote", "patchwork_cushion",
          "mended_panel", "picnic_roll", "table_linen", "shade_curtain", "bench_cushion"}) {
        const project_design d = read_design(designs::file("examples/designs/" + std::string(name) + ".json"));
        check_numbers(d, finished_size("20 1/3"_in, 16_in));
        check_numbers(d, finished_size(52_cm, "40.7"_cm));
    }
    const project_design cords = read_design(designs::file("examples/designs/produce_bag.json"));
    check_numbers(cords, finished_size("8 1/3"_in, 10_in));
    check_numbers(cords, finished_size(24_cm, "30.7"_cm));
    for (const char* name : {"wall_pockets", "gift_sack"}) {
        const project_design d = read_design(designs::file("examples/designs/" + std::string(name) + ".json"));
        check_numbers(d, finished_size("14 1/3"_in, 20_in));
        check_numbers(d, finished_size(40_cm, "60.7"_cm));
    }
    const project_design advent = read_design(designs::file("examples/designs/advent_hanging.json"));
    check_numbers(advent, finished_size("22 1/3"_in, 30_in));
    check_numbers(advent, finished_size(56_cm, "76.7"_cm));
    const project_design stopper = read_design(designs::file("examples/designs/draught_stopper.json"));
    check_numbers(stopper, finished_size("32 1/3"_in, 4_in));
    check_numbers(stopper, finished_size(80_cm, "8.7"_cm));
    const project_design bag = at_size(read_design(designs::peg_bag()), finished_size(14_in, 12_in));
    CHECK(bag.name.text == "Peg bag, pockets: 2");
    CHECK(bag.pieces[1].width.text() == "18 in");
    CHECK(bag.sizes == std::vector<std::string>{"14 x 12 in"});
}

TEST_CASE("a design refuses a size in its own words, before anything else") {
    const project_design bag = read_design(designs::peg_bag());
    CHECK(refused::message<refused_size>([&] { project_of(bag, finished_size(1_in, 12_in)); }) ==
          "A peg bag needs at least 6 in of width and 10 3/4 in of height.");
    CHECK(refused::message<refused_size>([&] { project_of(bag, finished_size(14_cm, 30_cm)); }) ==
          "A peg bag needs at least 15 cm of width and 27 cm of height.");
    CHECK(refused::message<refused_size>([&] { project_of(bag, finished_size(1000_in, 12_in)); }) ==
          "More than 20 pockets: is the size right?");
}

TEST_CASE("a file and a size are tried without throwing, and say the same faults") {
    const auto bag = try_read_design(designs::peg_bag());
    REQUIRE(bag);
    CHECK(*bag == read_design(designs::peg_bag()));
    const auto made = try_project_of(*bag, finished_size(14_in, 12_in));
    REQUIRE(made);
    CHECK(*made == project_of(*bag, finished_size(14_in, 12_in)));
    const auto narrow = try_project_of(*bag, finished_size(1_in, 12_in));
    REQUIRE_FALSE(narrow);
    CHECK(narrow.refused().faults() ==
          std::vector<design_fault>{
              {"/refuse/0", "A peg bag needs at least 6 in of width and 10 3/4 in of height.", {}}});
    const auto metric = try_project_of(read_design(file_of("")), finished_size(20_cm, 16_cm));
    REQUIRE_FALSE(metric);
    CHECK(metric.refused().faults() == std::vector<design_fault>{{"/units", "it is not made in centimetres", {}}});
    const auto nothing = try_read_design("{");
    REQUIRE_FALSE(nothing);
    CHECK(nothing.refused().faults()[0].why.starts_with("it is no JSON"));
}

TEST_CASE("what cannot be made at a size is named with its place, all at once") {
    CHECK(refused_when_made(file_of(R"("edges": {"all": {"is": "seam", "allowance": "finished width - 20 in"}})",
                                    R"x("most_layers": "whole part (finished width / (finished height - 16 in))")x")) ==
          "/pieces/0: a seam allowance must be more than zero: it was 0 in; /most_layers, character 30: division by "
          "zero: the divisor must not be zero");
    CHECK(refused_when_made(file_of(R"("count": "finished width / 3 in")")) ==
          "/pieces/0/count: expected a whole number: it comes to 6 2/3");
    const project_design inches = read_design(file_of(""));
    CHECK(refused::message<design_error>([&] { project_of(inches, finished_size(20_cm, 16_cm)); }) ==
          "/units: it is not made in centimetres");
}

TEST_CASE("a bag of any size is worked out on its ruler, and its pieces meet") {
    const project_design bag = read_design(designs::peg_bag());
    at_random::sampler random(13);
    while (random.another_of(20)) {
        const finished_size asked(random.inches(60) + 6_in, random.inches(30) + 12_in);
        const sheet<inch> s = sheet_on_ruler(asked, "1/16"_in, [&](const finished_size<inch>& size, const auto& by) {
            return project_of(bag, size, by);
        });
        // Hems of 1/2 + 3/4 in, the heading of 1/2 + 2 1/2 in. The strip has 2 in more for each pocket and hems of 3/8 in at
        // its sides; it reaches from 2 1/2 + 3 in below the top to 3/4 + 1/2 in above the bottom, with the hem and 3/8 in more.
        const length<inch> width = s.finished.width(), height = s.finished.height();
        CHECK(s.pieces[0].width.value() == width + "2 1/2"_in);
        CHECK(s.pieces[0].height.value() == height + "4 1/4"_in);
        CHECK(s.pieces[1].height.value() == height - "6 3/4"_in + "1 5/8"_in);
        const std::int64_t pockets = std::max(std::int64_t{1}, floor(ratio_of(width, 6_in)));
        CHECK(s.name == "Peg bag, pockets: " + std::to_string(pockets));
        CHECK(s.pieces[1].width.value() == width + 2_in * pockets + "3/4"_in);
        CHECK(s.pieces[1].made_from.marks().empty()); // they come of how the two meet
        CHECK(s.meetings.size() == 1);
    }
}

// By hand: at 10 x 8 in the flounce of 2 x 10 in goes onto 10 in of the front, on a ruler of 1/8 in where the file says nothing.
TEST_CASE(
    "edges that a file sews to each other, and steps in its own words, are those of its project, and read back equal") {
    const std::string file = R"({"turncloth_design": 1, "name": "Apron", "units": "inches", "pieces": [
        {"name": "front", "material": "cotton", "width": "finished width", "height": "finished height",
         "edges": {"bottom": {"is": "seam", "allowance": "1/2 in"}}},
        {"name": "flounce", "material": "cotton", "width": "2 * finished width", "height": "3 in",
         "edges": {"top": {"is": "seam", "allowance": "1/2 in"}}}],
        "seams": [{"one": "flounce", "of_one": "top", "other": "front", "of_other": "bottom", "taken_up": "gathers",
                   "spans": 5, "beyond": "flat"}],
        "making": {"handwork": [{"says": "Press it flat.", "pieces": ["front", "flounce"], "called": "pressed"}],
                   "rows": [{"along": {"on": "front", "from": "top", "in": "1 in"}, "called": "row"}],
                   "order": [{"first": "row", "then": "pressed", "why": "it puckers"}]}})";
    const ruled<inch> by("1/8"_in);
    const project<inch> p = project_of(read_design(file), finished_size(10_in, 8_in), by);
    REQUIRE(p.edge_seams().size() == 1);
    CHECK(p.edge_seams()[0] == edge_seam<inch>{.one = "flounce",
                                               .other = "front",
                                               .of_one = edge::top,
                                               .of_other = edge::bottom,
                                               .taken_up = surplus::gather,
                                               .spans = 5,
                                               .graduation = "1/8"_in});
    REQUIRE(p.design()->seams().size() == 1); // begun as the project says
    CHECK(p.design()->seams()[0].spans == 5);
    CHECK(p.design()->handworks() == std::vector{handwork{"Press it flat.", {{0, 0}, {1, 0}}}});
    const project_design one_size = design_of(p);
    CHECK(project_of(read_design(to_json(one_size).dump()), finished_size(10_in, 8_in)) == p);
    CHECK(one_size.making->order[0].then == one_size.making->handwork[0].called);
}
