// The terms that every record of a design is put together from.
//
//   expression_for<wanted>     an expression, and what it is to come to: length_expression, count_expression,
//                              number_expression, condition_expression, measure_expression
//   design_words               a text in which expressions stand in braces: "{rows} rows of pockets"
//   filled_form                one of a list of forms, with its parts: {"seam", {{"allowance", "1/2 in"}}}
//   design_fault  design_error    every fault of a design, each with its place; refused_size, in a design's own words
//
//   const length_expression half("finished width / 2");
#ifndef TURNCLOTH_DESIGN_DESIGN_TERMS_HPP
#define TURNCLOTH_DESIGN_DESIGN_TERMS_HPP

#include <turncloth/design/expression.hpp>

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
enum class form_kind : unsigned char { finish, row, notion, curve };

template <form_kind Kind>
struct filled_form {
    std::string is;
    std::map<std::string, expression, std::less<>> with{};
    friend bool operator==(const filled_form&, const filled_form&) = default;
};
using design_finish = filled_form<form_kind::finish>;
using design_row = filled_form<form_kind::row>;
using notion_form = filled_form<form_kind::notion>;
using design_curve = filled_form<form_kind::curve>;

enum class design_units : unsigned char { both, inches, centimetres };
/// How a measure comes onto a ruler, as making/ruled.hpp has it.
enum class on_the_ruler : unsigned char { nearest, halves, step, half_steps, exact };
enum class design_datum : unsigned char { finished_edge, cut_edge, stitched_line };

} // namespace turncloth

#endif
