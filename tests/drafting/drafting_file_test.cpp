// Drafting files: what is read is what was written, and what is wrong is said with its line and field.
#include "cloth.hpp"
#include "drafting_file.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace drafting;

namespace {

const std::string head = "title: Pad\nunit: cm\n",                                // lines 1 and 2
    begun = head + "piece: cover\nmaterial: canvas\ncut: 2\ngrain: 5; 2; 5; 8\n", // 3 to 6
    square = "corner: 0; 0\ncorner: 10; 0\ncorner: 10; 10\ncorner: 0; 10\n";

made_drafting<centimetre> in_cm(const std::string& text) {
    return std::get<made_drafting<centimetre>>(read_drafting(text));
}

/// What is said of it, or nothing where it is accepted.
std::string refusal(const std::string& text) {
    try {
        read_drafting(text);
    } catch (const drafting_error& refused) {
        return refused.what();
    }
    return "";
}
bool refused(const std::string& text, const std::string& beginning, const std::string& within = "") {
    const std::string said = refusal(text);
    const bool good = said.starts_with(beginning) && said.find(within) != std::string::npos;
    if (!good)
        MESSAGE("it said: ", said);
    return good;
}

} // namespace

TEST_CASE("a drafting is read with its pieces, allowances and notches") {
    const auto d = in_cm(
        "\xEF\xBB\xBF# a remark\r\n" + begun +
        "all edges: seam 1 1/2\nturn: allowed\ncorner: 0; 0\nnotch: 4\ncorner: 10; 0\nedge: double-turned hem 1; 3\n"
        "corner: 10,5; 10\ncorner: 0; 100 mm\n\npiece: tape\nmaterial: cotton\ncut: 1\ngrain: 0; 1; 1; 1\nall edges: "
        "raw\n" +
        square);
    CHECK(d.title == "Pad");
    REQUIRE(d.pieces.size() == 2);
    const made_piece<centimetre>& cover = d.pieces[0];
    CHECK(cover.says.name == "cover");
    CHECK(cover.says.material == "canvas");
    CHECK(cover.says.count == 2);
    CHECK(cover.turns == grain::may_turn);
    CHECK(d.pieces[1].turns == grain::fixed);
    REQUIRE(cover.says.finishes.size() == 4);
    CHECK(cover.shape.allowance_of(0).allowance.value() == 1.5);
    CHECK(cover.shape.allowance_of(1).allowance.value() == 4);
    CHECK(cover.says.finishes[1] == "double-turned hem");
    CHECK(cover.shape.seam_line()[2] == drafted_point<centimetre>(10.5, 10));
    CHECK(cover.shape.seam_line()[3] == drafted_point<centimetre>(0, 10));
    CHECK(cover.says.grain->to == drafted_point<centimetre>(5, 8));
    REQUIRE(cover.says.notches.size() == 1);
    CHECK(cover.says.notches[0].edge == 0);
    CHECK(cover.says.notches[0].from_start.value() == 4);
    CHECK(area_of(d.pieces[1].shape.cut_line()).value() == doctest::Approx(10 * 10));
}

TEST_CASE("every finish of the trade can be written, and takes what the trade says") {
    const struct {
        const char* written;
        double allowance; ///< common practice: geometry of a folded strip
    } finishes[] = {{"raw", 0},
                    {"seam 1.5", 15},
                    {"single-turned hem 2", 20},
                    {"double-turned hem 1; 2.5", 35},
                    {"heading 4; 1", 50},
                    {"casing 4; 2; 1", 50},
                    {"self-binding 1.2", 24},
                    {"separate binding 1", 0},
                    {"French seam 0.4; 0.6", 10},
                    {"felled over 1; 0.5", 15},
                    {"felled under 0.5", 5},
                    {"lapped over 1", 10},
                    {"lapped under 2", 20}};
    for (const auto& f : finishes) {
        CAPTURE(f.written);
        const auto d = in_cm(begun + "all edges: " + f.written + "\n" + square);
        const double side = 10 + 2 * f.allowance / 10; // cm
        CHECK(area_of(d.pieces[0].shape.cut_line()).value() == doctest::Approx(side * side));
        CHECK(finishes_help().find(std::string(f.written).substr(0, std::string(f.written).find_last_of("rgmn") + 1)) !=
              std::string::npos);
    }
}

TEST_CASE("a hem's ends are reflected where the corner says so") {
    // Sides at 45 degrees: with an allowance of sqrt 2 on the sides, the folded hem ends on their cut lines (geometry).
    const auto d =
        in_cm(head + "piece: p\nmaterial: m\ncut: 1\ngrain: 10; 1; 10; 4\ncorner: 0; 0; reflected in edge after\n"
                     "edge: single-turned hem 3\ncorner: 20; 0; reflected in edge before\nedge: raw\ncorner: 15; 5\n"
                     "edge: raw\ncorner: 5; 5\nedge: raw\n");
    bool found = false;
    for (const auto& p : d.pieces[0].shape.cut_line())
        found = found || (std::abs(p.x.value() - 3) < 1e-6 && std::abs(p.y.value() + 3) < 1e-6);
    CHECK(found);
}

TEST_CASE("a file without anything, or without a beginning, says what is expected") {
    CHECK(refused("", "nothing is drafted here"));
    CHECK(refused("\n# only this\n\n", "nothing is drafted here"));
    CHECK(refused("piece: cover\n", "line 1: piece: a drafting begins with its title"));
    CHECK(refused("title: Pad\n", "line 1: title: after the title the unit is expected"));
    CHECK(refused("title: Pad\npiece: cover\n", "line 2: piece: after the title the unit is expected"));
    CHECK(refused("title: Pad\nunit: furlong\n", "line 2: unit: expected cm, mm or in", "furlong"));
    CHECK(refused(head, "line 2: no piece is drafted"));
    CHECK(refused(head + "cut: 2\n", "line 3: cut: this belongs to a piece"));
    CHECK(refused(head + "piece\n", "line 3: expected a word, a colon and a value", "\"piece\""));
    CHECK(refused(head + "piece:\n", "line 3: piece: nothing follows the colon"));
    // What drives a terminal is not repeated to it.
    CHECK(refused(head + "\x1B[2J\n", "line 3: its character 1 (U+001B) cannot be printed"));
    CHECK(refused(head + "\x1B[2J:\n", "line 3: its character 1 (U+001B) cannot be printed"));
}

TEST_CASE("a field that is missing, said twice or unknown is named") {
    CHECK(refused(head + "piece: cover\ncut: 1\ngrain: 0; 0; 0; 1\nall edges: raw\n" + square,
                  "line 3: piece \"cover\" lacks the field \"material\""));
    CHECK(refused(head + "piece: cover\nmaterial: m\ngrain: 0; 0; 0; 1\nall edges: raw\n" + square,
                  "line 3: piece \"cover\" lacks the field \"cut\""));
    CHECK(refused(head + "piece: cover\nmaterial: m\ncut: 1\nall edges: raw\n" + square,
                  "line 3: piece \"cover\" lacks the field \"grain\""));
    CHECK(refused(begun + square, "line 7: corner: the edge from here has no finish"));
    CHECK(refused(begun + "cut: 3\n", "line 7: cut: said already, on line 5"));
    CHECK(refused(begun + "colour: red\n", "line 7: colour: a piece has no such field", "all edges"));
    CHECK(refused(begun + "edge: raw\n", "line 7: edge: this belongs to the corner it follows"));
    CHECK(refused(begun + "notch: 3\n", "line 7: notch: this belongs to the corner it follows"));
    CHECK(refused(begun + "corner: 0; 0\nedge: raw\nedge: raw\n", "line 9: edge: the edge from this corner was said",
                  "line 8"));
    CHECK(refused(begun + "all edges: raw\n" + square + "piece: cover\n",
                  "line 12: piece: there is a piece of that name"));
}

TEST_CASE("a value that cannot be read is named with what is allowed") {
    for (const char* n : {"nan", "inf", "-inf", "1e3", "ten", "1,000", "0x10", "99999999999999999999"}) {
        CAPTURE(n);
        CHECK(refused(begun + "corner: " + n + "; 0\n", "line 7: corner: ", n));
        CHECK(refused(begun + "corner: 0; 0\nnotch: " + n + "\n", "line 8: notch: ", n));
    }
    for (const char* n : {"0", "-1", "1.5", "two", "1001", "99999999999999999999"}) {
        CAPTURE(n);
        CHECK(refused(head + "piece: p\ncut: " + n + "\n", "line 4: cut: expected a whole number from 1 to 1000", n));
    }
    CHECK(refused(begun + "corner: 4\n", "line 7: corner: expected across; up", "1 field"));
    CHECK(refused(begun + "corner: 4; 4; bent\n", "line 7: corner: there is no corner shape \"bent\"", "mitred"));
    CHECK(refused(begun + "turn: maybe\n", "line 7: turn: expected \"allowed\" or \"not allowed\"", "maybe"));
    CHECK(refused(head + "piece: p\ngrain: 1; 2; 3\n", "line 4: grain: expected 4 lengths", "3"));
    CHECK(refused(begun + "all edges: glued 1\n", "line 7: all edges: there is no finish \"glued 1\"", "French seam"));
    CHECK(refused(begun + "all edges: seams 1\n", "line 7: all edges: there is no finish \"seams 1\""));
    CHECK(refused(begun + "all edges: seam\n", "line 7: all edges: a seam needs allowance after it", "0 lengths"));
    CHECK(refused(begun + "all edges: seam 1; 2\n", "line 7: all edges: a seam needs allowance after it", "2 lengths"));
    CHECK(refused(begun + "all edges: seam 0\n", "line 7: all edges: a seam allowance must be more than zero"));
    CHECK(refused(begun + "all edges: seam -1\n", "line 7: all edges: ", "-1 cm"));
    CHECK(refused(begun + "all edges: double-turned hem 3; 1\n", "line 7: all edges: ", "3 cm"));
}

TEST_CASE("where allowances overlap the piece is cut along their trimmed line, and the lines of its edges are told") {
    // A slot 2 cm wide and 15 deep, with allowances of 1.5 cm: all of it is cut with the piece. What the two upper edges share
    // counts for the first of them, which keeps its length.
    const auto slotted = std::get<made_drafting<centimetre>>(read_drafting(
        begun + "all edges: seam 1.5\ncorner: 0; 0\ncorner: 20; 0\ncorner: 20; 20\ncorner: 11; 20\nnotch: 2\n"
                "corner: 11; 5\ncorner: 9; 5\ncorner: 9; 20\ncorner: 0; 20\n"));
    const auto& cover = slotted.pieces[0];
    CHECK(area_of(cover.cut.boundary).value() == doctest::Approx(23 * 23));
    CHECK(cover.trimmed_on == "lines 11, 13, 14, 15");
    CHECK(bounding_size(cover) == cut_size(23_cm, 23_cm));
    const auto plain = std::get<made_drafting<centimetre>>(read_drafting(begun + "all edges: seam 1.5\n" + square));
    CHECK(plain.pieces[0].trimmed_on.empty());
    CHECK(plain.pieces[0].cut.boundary == plain.pieces[0].shape.cut_line());
    // The folds and the stitching of every edge, to be drawn: a seam's row is its seam line.
    REQUIRE(plain.pieces[0].says.lines.size() == 4);
    CHECK(plain.pieces[0].says.lines[0].stitching.at(0).at == at<cut_edge>("1.5"_cm));
}

TEST_CASE("an outline that cannot be drafted says where") {
    const std::string raw = begun + "all edges: raw\n"; // line 7
    CHECK(refused(raw + "corner: 0; 0\ncorner: 10; 10\ncorner: 10; 0\ncorner: 0; 10\n",
                  "line 3: piece \"cover\": a seam line must not cross itself", "(it begins on line 8)"));
    CHECK(refused(raw + "corner: 0; 0\ncorner: 10; 10\n",
                  "line 3: piece \"cover\": the number of corners of an outline must be at least 3"));
    CHECK(refused(raw, "line 3: piece \"cover\": the number of corners of an outline must be at least 3"));
    CHECK(refused(raw + "corner: 0; 0\ncorner: 0; 0\ncorner: 10; 0\ncorner: 0; 10\n",
                  "line 3: piece \"cover\": edge 0 of an outline must have a length", "(it begins on line 8)"));
    CHECK(refused(raw + "corner: 0; 0\nnotch: 10 1/4\ncorner: 10; 0\ncorner: 0; 10\n",
                  "line 9: notch of piece \"cover\": a notch on edge 0 must lie from 0 to 10"));
    // Almost straight on: a hem's ends cannot be reflected there.
    CHECK(refused(raw + "corner: 0; 0\nedge: single-turned hem 2\ncorner: 10; 0; reflected in edge before\n"
                        "corner: 20; 1\ncorner: 0; 10\n",
                  "line 3: piece \"cover\": corner 1 is too straight or too sharp", "(it begins on line 10)"));
    CHECK(refused(head + "piece: p\nmaterial: m\ncut: 1\ngrain: 5; 5; 5; 5\nall edges: raw\n" + square,
                  "line 3: piece \"p\": a grain line needs two different points"));
}
