// A design: a project for any finished size, as data.
//
//   project_design       name, measures, refusals, pieces, outlines, cloths, meetings, placings, span lists, zippers, notions, ...
//   design_piece  design_marks  design_meeting  ...      its records; those of its making are in design_making.hpp
//   is_made_in<U>(design)                                whether it can be made in inches, or in centimetres
//
//   project_design bag{.name = {"Bag"}, .pieces = {{.name = "front", .material = "canvas", .width = {"finished width"}}}};
//
// A design of numbers for one size is a project (sheet/project.hpp): project_of.hpp makes one of the other, and json.hpp
// reads and writes designs. Each record tells its members to whoever visits it, so that the reader, the writer, the checks
// and the schema have one list of them.
#ifndef TURNCLOTH_DESIGN_PROJECT_DESIGN_HPP
#define TURNCLOTH_DESIGN_PROJECT_DESIGN_HPP

#include <turncloth/design/design_making.hpp>
#include <turncloth/design/design_terms.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/panel/outline.hpp>
#include <turncloth/panel/panel.hpp>
#include <turncloth/sheet/notion.hpp>
#include <turncloth/sheet/project_cloth.hpp>

#include <optional>
#include <string>
#include <vector>

namespace turncloth {

/// Either worked out from the measures before it, or given in inches and in centimetres.
struct design_measure {
    std::string name;
    measure_expression is{}, inches{}, centimetres{};
    on_the_ruler ruler = on_the_ruler::nearest; ///< of what is given; what is worked out stays as it is
    friend bool operator==(const design_measure&, const design_measure&) = default;
};

struct design_refusal {
    condition_expression where;
    design_words sentence;
    friend bool operator==(const design_refusal&, const design_refusal&) = default;
};

struct design_tick {
    edge at;
    length_expression size;
    friend bool operator==(const design_tick&, const design_tick&) = default;
};

struct design_marks {
    design_words what;
    edge parallel_to = edge::top;
    design_row places;
    design_datum from = design_datum::finished_edge;
    std::vector<design_tick> only{};
    condition_expression where{};
    friend bool operator==(const design_marks&, const design_marks&) = default;
};

/// A finish of one's own, as panel/finish.hpp has it. An edge is finished so where its form "is" what this is called.
struct design_own_finish {
    std::string called;
    std::string name{}; ///< as it is printed: what it is called, where nothing is said
    std::vector<length_expression> allows{}, folds{}, stitching{};
    length_expression reaches{};
    bool joins = false;
    friend bool operator==(const design_own_finish&, const design_own_finish&) = default;
};

/// Of an edge that is not named, `all`; raw where that is not given either.
struct design_edges {
    std::optional<design_finish> all{}, top{}, right{}, bottom{}, left{};
    friend bool operator==(const design_edges&, const design_edges&) = default;
};

/// In the heading of a piece's top edge, and listed as a notion of that name: "eyelets", where none is given.
struct design_eyelets {
    design_words listed_as{};
    count_expression count;
    length_expression hole, rim, margin, clear;
    friend bool operator==(const design_eyelets&, const design_eyelets&) = default;
};

/// Laid out by the lengths given, in the top edge or elsewhere, and listed by no notion of its own.
struct design_eyelet_row {
    count_expression count;
    length_expression hole, rim;
    length_expression margin, gap; ///< clear before the first and between two, from the finished left edge
    length_expression down;        ///< of the middles, from the finished top edge
    length_expression graduation{};
    friend bool operator==(const design_eyelet_row&, const design_eyelet_row&) = default;
};

/// Side by side from a place on, as notions/pleats.hpp has them.
struct design_pleats {
    edge from = edge::left;
    pleat kind = pleat::knife;
    length_expression finished; ///< of all of them
    count_expression count;
    length_expression depth;
    length_expression starts{};
    condition_expression where{};
    friend bool operator==(const design_pleats&, const design_pleats&) = default;
};

/// Of each of two equal panels of a box: the squares cut out of their corners, and the seam across each.
struct design_corners {
    length_expression square, across;
    condition_expression where{};
    friend bool operator==(const design_corners&, const design_corners&) = default;
};

struct design_piece {
    std::string name, material;
    length_expression width, height; ///< finished
    count_expression count{};
    bool film = false, does_not_fray = false, cut_up = false;
    cloth_lie lies = cloth_lie::as_asked;
    std::string inside{};
    design_edges edges{};
    std::vector<design_marks> marks{};
    std::vector<design_pleats> pleats{};
    std::optional<design_corners> corners{};
    std::optional<design_eyelets> eyelets{};
    std::vector<design_eyelet_row> eyelet_rows{};
    condition_expression where{};
    friend bool operator==(const design_piece&, const design_piece&) = default;
};

/// Of an outline, with the edge from here to the next corner.
struct design_outline_corner {
    length_expression across{}, up{};    ///< zero, where nothing is said
    std::optional<design_finish> edge{}; ///< as all of them, where nothing is said
    corner_shape shape = corner_shape::mitred;
    std::optional<design_curve> curve{};
    std::vector<length_expression> notches{};
    condition_expression where{};
    friend bool operator==(const design_outline_corner&, const design_outline_corner&) = default;
};

struct design_grain {
    length_expression from_across{}, from_up{}, to_across{}, to_up{}; ///< zero, where nothing is said
    friend bool operator==(const design_grain&, const design_grain&) = default;
};

/// A piece that is no rectangle, as sheet/drafted_piece.hpp has it.
struct design_outline {
    std::string name, material;
    count_expression count{};
    bool may_turn = false;
    std::optional<design_grain> grain{};
    length_expression tolerance{};
    std::optional<design_finish> edges{}; ///< of those that say nothing themselves
    std::vector<design_outline_corner> corners{};
    condition_expression where{};
    friend bool operator==(const design_outline&, const design_outline&) = default;
};

/// A piece of a cloth that is there already.
struct design_on_hand {
    std::string name;
    length_expression width, length;
    condition_expression where{};
    friend bool operator==(const design_on_hand&, const design_on_hand&) = default;
};

/// A cloth that pieces are cut from, as sheet/project_cloth.hpp has it. What it shrinks by is in percent, below zero where it
/// grows.
struct design_cloth {
    std::string material;
    length_expression width{}, selvedge{};
    bool one_way = false, folded = false;
    washed_when washed = washed_when::unwashed;
    number_expression shrinks_along{}, shrinks_across{};
    length_expression join{};
    std::vector<design_on_hand> on_hand{};
    length_expression repeat_along{}, repeat_across{};
    condition_expression where{};
    friend bool operator==(const design_cloth&, const design_cloth&) = default;
};

struct design_meeting {
    std::string longer, shorter;
    edge from = edge::left;
    length_expression on_longer, on_shorter;
    count_expression spans;
    length_expression graduation{}; ///< of the ruler that its marks are for: that of the sheet, where nothing is said
    condition_expression where{};
    friend bool operator==(const design_meeting&, const design_meeting&) = default;
};

/// As sheet/project.hpp has an edge_seam.
struct design_edge_seam {
    std::string one, other;
    edge of_one = edge::top, of_other = edge::top;
    beyond_seam beyond = beyond_seam::flat;
    surplus taken_up = surplus::none;
    count_expression spans{};
    length_expression graduation{}; ///< as a meeting's
    condition_expression where{};
    friend bool operator==(const design_edge_seam&, const design_edge_seam&) = default;
};

struct design_placing {
    std::string piece, on;
    length_expression from_left{}, from_top{};
    std::vector<edge> sewn{};
    length_expression inset{};
    condition_expression where{};
    friend bool operator==(const design_placing&, const design_placing&) = default;
};

struct design_span {
    length_expression size;
    condition_expression where{};
    friend bool operator==(const design_span&, const design_span&) = default;
};

struct design_span_list {
    design_words what;
    std::string on;
    edge from = edge::top;
    std::vector<design_span> spans;
    condition_expression where{};
    friend bool operator==(const design_span_list&, const design_span_list&) = default;
};

/// From rolls of one length, or made up: the shortest of the lengths sold that is long enough.
struct design_zipper {
    std::string on;
    edge from = edge::top;
    std::vector<design_span> centres; ///< each from that edge
    length_expression across, margin, beyond, rows, slit;
    length_expression roll{};
    std::vector<length_expression> lengths_sold{};
    length_expression ends{}, tail{};
    length_expression graduation{}; ///< as a meeting's
    condition_expression where{};
    friend bool operator==(const design_zipper&, const design_zipper&) = default;
};

/// Strips that bind these edges of a piece, or every edge where none is named, as sheet/project.hpp has them.
struct design_binding {
    std::string on, material;
    length_expression finished, seam, turn{}, inset, turned_in{};
    std::vector<edge> edges{};
    design_words name{}; ///< "binding", where none is given
    bool doubled = false, by_hand = false;
    condition_expression where{};
    friend bool operator==(const design_binding&, const design_binding&) = default;
};

struct design_reach {
    design_words what;
    length_expression has, needs;
    condition_expression where{};
    friend bool operator==(const design_reach&, const design_reach&) = default;
};

/// So many times the sum of the parts.
struct design_term {
    design_words what{};
    number_expression times{}; ///< once, where nothing is said
    std::vector<length_expression> parts{};
    friend bool operator==(const design_term&, const design_term&) = default;
};

/// A figure, the terms that it is the sum of, a number of things, or places one by one.
struct design_detail {
    design_words what;
    length_expression figure{};
    std::vector<design_term> terms{};
    count_expression number{};
    std::vector<length_expression> places{};
    sold_as sold = sold_as::not_sold;
    condition_expression where{};
    friend bool operator==(const design_detail&, const design_detail&) = default;
};

struct design_caution {
    caution::work at = caution::work::using_it;
    design_words sentence;
    condition_expression where{};
    friend bool operator==(const design_caution&, const design_caution&) = default;
};

struct design_notion {
    design_words name;
    notion_form from{};
    std::vector<design_detail> details{};
    std::vector<design_caution> cautions{};
    bool before_seams = false;
    condition_expression where{};
    friend bool operator==(const design_notion&, const design_notion&) = default;
};

struct design_sewing {
    count_expression stitch;
    length_expression overrun, spool;
    number_expression waste;
    friend bool operator==(const design_sewing&, const design_sewing&) = default;
};

struct design_step {
    design_words sentence;
    condition_expression where{};
    friend bool operator==(const design_step&, const design_step&) = default;
};

struct project_design {
    design_words name;
    design_units units = design_units::both;
    std::vector<std::string> sizes{}; ///< to begin with, as they are written
    /// On a ruler the finished shorter side is so many times a whole number of graduations, and stays the shorter.
    count_expression shorter_side_parts{};
    std::vector<design_measure> measures{};
    std::vector<design_refusal> refusals{};
    std::vector<design_own_finish> finishes{};
    std::vector<design_piece> pieces{};
    std::vector<design_outline> outlines{};
    std::vector<design_cloth> cloths{};
    std::vector<design_meeting> meetings{};
    std::vector<design_edge_seam> seams{};
    std::vector<design_placing> placings{};
    std::vector<design_span_list> span_lists{};
    std::vector<design_zipper> zippers{};
    std::vector<design_binding> bindings{};
    std::vector<design_reach> reaches{};
    std::vector<design_notion> notions{};
    std::vector<design_sewing> sewings{};
    std::optional<design_making> making{}; ///< none: its steps come from the finishes of its pieces
    std::vector<design_caution> cautions{};
    std::vector<design_step> preparations{};
    count_expression most_layers{};
    friend bool operator==(const project_design&, const project_design&) = default;
};

template <length_unit Unit>
bool is_made_in(const project_design& d) {
    return d.units == design_units::both ||
           (d.units == design_units::centimetres ? metric_unit<Unit> : !metric_unit<Unit>);
}

} // namespace turncloth

#endif
