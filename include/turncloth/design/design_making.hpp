// How a project of a design is made: what making/operations.hpp and making/compartments.hpp name, for any size.
//
//   design_making          lists of operations, by kind; each is there only where its condition holds
//   design_part            a part by the name that its sheet gives it: "film strip 3" of several cut alike
//   design_line            a line on a part, parallel to an edge
//
//   design_making{.rows = {{.along = {.on = {"pocket"}, .from = edge::left, .in = length_expression("1/8 in")},
//                           .through = {{"pocket"}, {"front"}}}}};
//
// The order of the lists says nothing: it follows from what lies where, as ever (making/order.hpp), and from `order`.
#ifndef TURNCLOTH_DESIGN_DESIGN_MAKING_HPP
#define TURNCLOTH_DESIGN_DESIGN_MAKING_HPP

#include <turncloth/design/design_terms.hpp>
#include <turncloth/making/compartments.hpp>
#include <turncloth/making/operations.hpp>

#include <optional>
#include <string>
#include <vector>

namespace turncloth {

/// Expressions may stand in braces: "film strip {rows}". Of several cut alike, the first where no number follows.
struct design_part {
    std::string text;
    friend bool operator==(const design_part&, const design_part&) = default;
};

/// Places are from that datum of the edge; `begins` and `ends` from the same of the left or of the top edge.
struct design_line {
    design_part on;
    edge from = edge::top;
    length_expression in{}; ///< on the datum itself, where nothing is said
    design_datum measured_from = design_datum::finished_edge;
    length_expression begins{}, ends{}; ///< from end to end, where nothing is said
    condition_expression where{};
    friend bool operator==(const design_line&, const design_line&) = default;
};

/// Strips that meet a piece as one of the meetings says, sewn to it in rows of pockets, each with its foot at one of that
/// piece's marks: making/strip_pockets.hpp.
struct design_strip_pockets {
    std::string strip, on;
    design_words feet;       ///< what those marks are
    length_expression inset; ///< of the rows beside the outer pockets, from the finished edges
    design_words name;       ///< of the pockets of a row, whose number follows it
    length_expression holds; ///< the width of what each must hold
    condition_expression where{};
    friend bool operator==(const design_strip_pockets&, const design_strip_pockets&) = default;
};

/// Beside the pieces of the project: a tape, say. Its edges stay raw.
struct design_own_part {
    std::string name, material{};
    length_expression width, height;
    count_expression count{};
    bool film = false, does_not_fray = false, two_sided = false, one_way = false;
    length_expression thickness{}, sold_width{}, sold_by{};
    condition_expression where{};
    friend bool operator==(const design_own_part&, const design_own_part&) = default;
};

/// A further name of a part, which may be another's at another size.
struct design_called {
    std::string name;
    design_part part;
    condition_expression where{};
    friend bool operator==(const design_called&, const design_called&) = default;
};

/// As making/operations.hpp has a fit.
struct design_fit {
    surplus taken_up = surplus::ease;
    count_expression spans{};
    length_expression begins{}, of_piece, on;
    bool down = false;              ///< along the height of the piece, otherwise along its width
    length_expression graduation{}; ///< of the ruler that its marks are for: that of the sheet, where nothing is said
    friend bool operator==(const design_fit&, const design_fit&) = default;
};

/// `left` and `top` are from a datum of what it is laid on to the same of the edges that come to lie nearest there.
struct design_laying {
    design_part piece;
    design_part on{}; ///< none: on the table
    face up = face::right;
    length_expression left{}, top{};
    design_datum measured_from = design_datum::finished_edge;
    std::optional<design_fit> fit{};
    bool upside_down = false, beneath = false, one_wall = false;
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_laying&, const design_laying&) = default;
};

/// The folds and rows of the finishes of these edges; folds alone where another row holds them.
struct design_finishing {
    design_part piece;
    std::vector<edge> edges;
    std::vector<design_part> through{};
    bool folds_alone = false;
    face up = face::right; ///< so does it lie: folds go under, or over where the wrong side lies up
    condition_expression where{};
    friend bool operator==(const design_finishing&, const design_finishing&) = default;
};

struct design_corner {
    design_part on;
    edge upright = edge::left, level = edge::top;
    length_expression leg;
    friend bool operator==(const design_corner&, const design_corner&) = default;
};

/// Along a line or across a corner.
struct design_crease {
    std::optional<design_line> at{};
    std::optional<design_corner> across{};
    bool quarter = false; ///< stands up, otherwise turned right back
    bool over = false, begins_wall = false;
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_crease&, const design_crease&) = default;
};

/// With places, one row at each, from the datum that the line is measured from.
struct design_rows {
    design_line along;
    std::vector<design_part> through{};
    std::optional<design_row> places{};
    bool by_hand = false;
    count_expression stitch{}; ///< by its number: that of the project, where nothing is said; by hand, 301
    length_expression overrun{};
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_rows&, const design_rows&) = default;
};

struct design_seam {
    std::vector<design_line> one, other;
    beyond_seam beyond = beyond_seam::flat;
    surplus taken_up = surplus::none;
    count_expression spans{};
    turncloth::pressed pressed = turncloth::pressed::open;
    bool by_hand = false;
    length_expression graduation{}; ///< as a fit's
    count_expression stitch{};      ///< as of rows
    length_expression overrun{};
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_seam&, const design_seam&) = default;
};

struct design_snip {
    design_line at;
    snip_kind kind = snip_kind::slit;
    length_expression width{};
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_snip&, const design_snip&) = default;
};

struct design_spot {
    spot_kind what = spot_kind::bar_tack;
    design_line along;
    design_row places; ///< from the left or from the top, from the datum that the line is measured from
    std::vector<design_part> through{};
    length_expression width{}, height{}, tie{};
    count_expression stitches{};
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_spot&, const design_spot&) = default;
};

/// A step in the designer's own words, in which expressions may stand in braces.
struct design_handwork {
    design_words says;
    std::vector<design_part> pieces;
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_handwork&, const design_handwork&) = default;
};

struct design_mouth {
    std::string name;
    std::vector<design_line> at;
    closed_by by = closed_by::nothing;
    std::string called{}; ///< by what names it: its name, where nothing is said
    condition_expression where{};
    friend bool operator==(const design_mouth&, const design_mouth&) = default;
};

/// One of this making's own, or that of a zipper of the project: the one of that number on that piece.
struct design_mouth_of {
    std::string mouth{}, zipper_on{};
    count_expression number{};
    friend bool operator==(const design_mouth_of&, const design_mouth_of&) = default;
};

/// `from_left` and `from_top` are from the finished edges of the first of the two.
struct design_compartment {
    design_words name;
    std::vector<design_part> between;
    length_expression from_left, from_top;
    std::vector<design_mouth_of> mouths{};
    length_expression least_width{}, least_height{}, least_depth{};
    count_expression count{};
    length_expression step{};
    std::string called{}; ///< as a mouth
    condition_expression where{};
    friend bool operator==(const design_compartment&, const design_compartment&) = default;
};

struct design_contents {
    std::string what;
    length_expression width, height, depth{};
    design_words into;
    design_mouth_of by;
    length_expression squeezed{};
    count_expression folds{};
    std::string called{}; ///< as a mouth
    condition_expression where{};
    friend bool operator==(const design_contents&, const design_contents&) = default;
};

/// What is turned out through a mouth, put in, or closed; nothing is named where it is folded or rolled up.
struct design_moment {
    moment_kind what = moment_kind::close;
    std::optional<design_mouth_of> mouth{};
    std::string contents{};
    std::string called{};
    condition_expression where{};
    friend bool operator==(const design_moment&, const design_moment&) = default;
};

/// Of operations by what they are called.
struct design_before {
    std::string first, then;
    design_words why;
    condition_expression where{};
    friend bool operator==(const design_before&, const design_before&) = default;
};

/// What is there before any operation of the design's own: all that the project says of its making
/// (sheet/making_of.hpp), its pieces as they are cut, or nothing: then a part that bears a piece's name is that piece.
enum class design_begins : unsigned char { as_the_project_says, with_pieces_cut, with_nothing };

struct design_making {
    design_begins begins = design_begins::as_the_project_says;
    design_words name{};      ///< that of the project, where nothing is said
    length_expression lips{}; ///< gaps that are open and nowhere deeper count as outside
    std::vector<design_strip_pockets> strip_pockets{};
    std::vector<design_own_part> parts{};
    std::vector<design_called> called{};
    std::vector<design_laying> layings{};
    std::vector<design_finishing> finishings{};
    std::vector<design_crease> creases{};
    std::vector<design_rows> rows{};
    std::vector<design_seam> seams{};
    std::vector<design_snip> snips{};
    std::vector<design_spot> spots{};
    std::vector<design_handwork> handwork{};
    std::vector<design_mouth> mouths{};
    std::vector<design_compartment> compartments{};
    std::vector<design_contents> contents{};
    std::vector<design_moment> moments{};
    std::vector<design_before> order{};
    friend bool operator==(const design_making&, const design_making&) = default;
};

} // namespace turncloth

#endif
