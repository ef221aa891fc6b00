// A design: a project for any finished size, as data.
//
//   project_design             name, measures, refusals, pieces, meetings, placings, span lists, zippers, notions, ...
//   expression_for<wanted>     an expression, and what it is to come to: length_expression, count_expression, number_expression, condition_expression
//   design_words                    a text in which expressions stand in braces: "{rows} rows of pockets"
//   filled_form                one of a list of forms, with its parts: {"seam", {{"allowance", "1/2 in"}}}
//   design_error               every fault of a design, each with its place: faults()
//
//   project_design bag{.name = {"Bag"}, .pieces = {{.name = "front", .material = "canvas", .width = {"finished width"}}}};
//
// A design of numbers for one size is a project (sheet/project.hpp): project_of.hpp makes one of the other, and json.hpp
// reads and writes designs. Each record tells its members to whoever visits it, so that the reader, the writer, the checks
// and the schema have one list of them.
#ifndef TURNCLOTH_DESIGN_PROJECT_DESIGN_HPP
#define TURNCLOTH_DESIGN_PROJECT_DESIGN_HPP

#include <turncloth/design/expression.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/panel/panel.hpp>

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// A design has at most so many of anything in one list, and texts of at most so many bytes.
inline constexpr std::size_t most_in_a_design = 1000;

/// One fault of a design. `where` is a JSON Pointer (RFC 6901), and empty for the whole.
struct design_fault {
    std::string where, why;
    std::optional<std::size_t> character{}; ///< in the text there, from 1
    friend bool operator==(const design_fault&, const design_fault&) = default;
};

/// "/pieces/0/width, character 5: nothing here is named ..."
inline std::string to_text(const design_fault& f) {
    const std::string where = f.where.empty() ? "the design" : f.where;
    return where + (f.character ? ", character " + std::to_string(*f.character) : "") + ": " + f.why;
}

/// A design that is not sound, or that cannot be made at a size.
class design_error : public error {
public:
    explicit design_error(std::vector<design_fault> faults)
        : error(joined(faults), {.kind = fault::unsuitable,
                                 .what = "a design",
                                 .where = faults.empty() ? std::string() : faults.front().where}),
          faults_(std::move(faults)) {}
    const std::vector<design_fault>& faults() const noexcept { return faults_; }

private:
    static std::string joined(const std::vector<design_fault>& faults) {
        std::string all;
        for (const design_fault& f : faults)
            all.append(all.empty() ? "" : "; ").append(to_text(f));
        return all;
    }
    std::vector<design_fault> faults_;
};

/// A size that a design refuses, in its own words.
class refused_size : public error {
public:
    using error::error;
};

enum class wanted : unsigned char { length, number, count, condition, length_or_number };

template <wanted Wanted>
struct expression_for : expression {
    using expression::expression;
    bool given() const { return !text().empty(); }
};
using length_expression = expression_for<wanted::length>;
using number_expression = expression_for<wanted::number>;
using count_expression = expression_for<wanted::count>;
using condition_expression = expression_for<wanted::condition>;
using measure_expression = expression_for<wanted::length_or_number>;

struct design_words {
    std::string text;
    friend bool operator==(const design_words&, const design_words&) = default;
};

/// The forms themselves are in design/detail/forms.hpp; each list of them is a kind of its own.
enum class form_kind : unsigned char { finish, row, notion };

template <form_kind Kind>
struct filled_form {
    std::string is;
    std::map<std::string, expression, std::less<>> with{};
    friend bool operator==(const filled_form&, const filled_form&) = default;
};
using design_finish = filled_form<form_kind::finish>;
using design_row = filled_form<form_kind::row>;
using notion_form = filled_form<form_kind::notion>;

enum class design_units : unsigned char { both, inches, centimetres };
/// How a measure comes onto a ruler, as making/ruled.hpp has it.
enum class on_the_ruler : unsigned char { nearest, halves, step, half_steps, exact };
enum class design_datum : unsigned char { finished_edge, cut_edge, stitched_line };

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

struct design_piece {
    std::string name, material;
    length_expression width, height; ///< finished
    count_expression count{};
    bool film = false;
    std::string inside{};
    design_edges edges{};
    std::vector<design_marks> marks{};
    std::optional<design_eyelets> eyelets{};
    condition_expression where{};
    friend bool operator==(const design_piece&, const design_piece&) = default;
};

struct design_meeting {
    std::string longer, shorter;
    edge from = edge::left;
    length_expression on_longer, on_shorter;
    count_expression spans;
    condition_expression where{};
    friend bool operator==(const design_meeting&, const design_meeting&) = default;
};

struct design_placing {
    std::string piece, on;
    length_expression from_left, from_top;
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
    condition_expression where{};
    friend bool operator==(const design_zipper&, const design_zipper&) = default;
};

struct design_reach {
    design_words what;
    length_expression has, needs;
    condition_expression where{};
    friend bool operator==(const design_reach&, const design_reach&) = default;
};

/// A figure, or a number of things.
struct design_detail {
    design_words what;
    length_expression figure{};
    count_expression number{};
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

/// Made as the project itself says (sheet/making_of.hpp), and as is said here.
struct design_making {
    length_expression lips{}; ///< gaps that are open and nowhere deeper count as outside
    std::vector<design_strip_pockets> strip_pockets{};
    friend bool operator==(const design_making&, const design_making&) = default;
};

struct project_design {
    design_words name;
    design_units units = design_units::both;
    std::vector<std::string> sizes{}; ///< to begin with, as they are written
    std::vector<design_measure> measures{};
    std::vector<design_refusal> refusals{};
    std::vector<design_piece> pieces;
    std::vector<design_meeting> meetings{};
    std::vector<design_placing> placings{};
    std::vector<design_span_list> span_lists{};
    std::vector<design_zipper> zippers{};
    std::vector<design_reach> reaches{};
    std::vector<design_notion> notions{};
    std::vector<design_sewing> sewings{};
    std::optional<design_making> making{}; ///< none: its steps come from the finishes of its pieces
    std::vector<design_caution> cautions{};
    std::vector<design_step> preparations{};
    count_expression most_layers{};
    friend bool operator==(const project_design&, const project_design&) = default;
};

} // namespace turncloth

#endif
