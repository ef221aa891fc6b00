// Pieces of cloth as a person types them: "3 of 13 x 9", rows parted by semicolons or new lines, or by commas that no
// decimal stands around.
//
//   rows_typed(text)          "3 of 13 x 9; 29 × 32 in, 2 of 13 by 9"     as {"3", "13", "9"}, {"1", "29", "32 in"}, ...
//   typed_row                 how many, width, height, as texts; `said` is the whole row
//
// Where only the height has a unit it holds for both sides, as on a label. A row that ends in "may turn" is of a piece
// whose grain may lie across the cloth.
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_PIECES_TYPED_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_PIECES_TYPED_HPP

#include <array>
#include <cctype>
#include <string>
#include <string_view>
#include <vector>

namespace calculator {

struct typed_row {
    std::string said{}, count = "1", width{}, height{};
    bool is_read = false; ///< it has two sides
    bool may_turn = false;
};

namespace detail {

inline std::string trimmed(std::string_view text) {
    const std::size_t from = text.find_first_not_of(" \t\r");
    return from == std::string_view::npos ? std::string()
                                          : std::string(text.substr(from, text.find_last_not_of(" \t\r") - from + 1));
}

/// "31,75" has a decimal comma; "13 x 9, 4 x 5" a comma between rows.
inline bool parts_rows(std::string_view text, std::size_t at) {
    if (text[at] == ';' || text[at] == '\n')
        return true;
    const auto digit = [&](std::size_t i) {
        return i < text.size() && std::isdigit(static_cast<unsigned char>(text[i]));
    };
    return text[at] == ',' && !(at > 0 && digit(at - 1) && digit(at + 1));
}

/// What stands behind the last digit: " cm" of "9 1/2 cm".
inline std::string_view unit_behind(std::string_view text) {
    const std::size_t digit = text.find_last_of("0123456789");
    return digit == std::string_view::npos ? std::string_view() : text.substr(digit + 1);
}

inline typed_row row_of(std::string_view text) {
    typed_row row{.said = trimmed(text)};
    if (constexpr std::string_view last = "may turn"; row.said.ends_with(last)) {
        row.may_turn = true;
        text = std::string_view(row.said).substr(0, row.said.size() - last.size());
    }
    if (const std::size_t of = text.find(" of "); of != std::string_view::npos) {
        row.count = trimmed(text.substr(0, of));
        text.remove_prefix(of + 4);
    }
    for (const std::string_view word : std::array<std::string_view, 4>{"x", "X", "\u00D7", "by"})
        if (const std::size_t at = text.find(word); at != std::string_view::npos) {
            row.width = trimmed(text.substr(0, at));
            row.height = trimmed(text.substr(at + word.size()));
            if (unit_behind(row.width).empty())
                row.width += unit_behind(row.height);
            row.is_read = !row.width.empty() && !row.height.empty();
            break;
        }
    return row;
}

} // namespace detail

inline std::vector<typed_row> rows_typed(std::string_view text) {
    std::vector<typed_row> rows;
    for (std::size_t from = 0, at = 0; at <= text.size(); ++at)
        if (at == text.size() || detail::parts_rows(text, at)) {
            if (typed_row row = detail::row_of(text.substr(from, at - from)); !row.said.empty())
                rows.push_back(row);
            from = at + 1;
        }
    return rows;
}

} // namespace calculator

#endif
