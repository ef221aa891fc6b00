// The columns of a table, by their names in its first row.
//
//   named_columns(rows, names, needed)        the first `needed` names must be there; throws heading_error
//     .rows()                                 all further rows
//     .has(c)                                 whether the first row names names[c]
//     .field(row, c)  .needed(row, c)         what stands in the column of names[c]; throws row_error
//     .refuse(row, c, why, facts)             throws a row_error that names the row and the column
//
// Text is looked at where it enters, here: no field that is used holds what is unfit to print, or is too long.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_COLUMNS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_COLUMNS_HPP

#include "../command/plain_text.hpp"
#include "names.hpp"
#include "table_file.hpp"
#include <turncloth/measure/error.hpp>
#include <turncloth/panel/names.hpp>

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace allotment {

using namespace turncloth;

class heading_error : public error {
public:
    using error::error;
};

class row_error : public error {
public:
    /// `facts` say what is wrong; the row is their index, and its column where they are.
    row_error(std::size_t row, const std::string& why, refusal facts)
        : error("row " + std::to_string(row) + why, at(row, std::move(facts))) {}

private:
    static refusal at(std::size_t row, refusal facts) {
        facts.index = row;
        return facts;
    }
};

class named_columns {
public:
    /// Of a table and of names that outlive it.
    named_columns(const std::vector<table_row>& rows, std::span<const std::string_view> names, std::size_t needed)
        : rows_(rows), names_(names) {
        const std::string must =
            turncloth::detail::enumerated({names.begin(), names.begin() + static_cast<std::ptrdiff_t>(needed)});
        if (rows.empty())
            throw heading_error("it is empty: the first row must name the columns " + must,
                                {.kind = fault::missing, .what = "the first row"});
        if (!rows[0].wrong.empty())
            throw heading_error("in the first row, " + rows[0].wrong,
                                {.kind = fault::unreadable, .what = "the first row"});
        for (const std::string_view name : names)
            columns_.push_back(find(name));
        for (std::size_t c = 0; c < needed; ++c)
            if (!columns_[c])
                throw heading_error("its first row names no column \"" + std::string(names[c]) + "\": it must name " +
                                        must,
                                    {.kind = fault::missing, .what = "a column", .where = std::string(names[c])});
    }

    std::span<const table_row> rows() const { return std::span(rows_).subspan(1); }
    bool has(std::size_t c) const { return columns_[c].has_value(); }

    /// Throws row_error for a row that could not be read, or has more fields than the first.
    void require_sound(const table_row& r) const {
        if (!r.wrong.empty())
            throw row_error(r.number, ": " + r.wrong, {.kind = fault::unreadable, .what = "a row"});
        if (r.fields.size() > rows_[0].fields.size())
            throw row_error(r.number,
                            ": it has " + std::to_string(r.fields.size()) + " fields, more than the " +
                                std::to_string(rows_[0].fields.size()) + " columns of the first row",
                            {.kind = fault::too_large,
                             .what = "the number of fields",
                             .given = amount_of(r.fields.size()),
                             .most = amount_of(rows_[0].fields.size())});
    }

    /// Without the blanks around it; empty where the row is too short or the table has no such column.
    std::string field(const table_row& r, std::size_t c) const {
        if (!columns_[c] || *columns_[c] >= r.fields.size())
            return {};
        const std::string& all = r.fields[*columns_[c]];
        const std::size_t first = all.find_first_not_of(" \t"), last = all.find_last_not_of(" \t");
        std::string text = first == std::string::npos ? std::string() : all.substr(first, last - first + 1);
        if (const std::string why = why_unfit(text); !why.empty())
            refuse(r, c, why, {.kind = fault::unreadable, .what = "a field"});
        return text;
    }
    std::string needed(const table_row& r, std::size_t c) const {
        std::string text = field(r, c);
        if (text.empty())
            refuse(r, c, "it is missing", {.kind = fault::missing, .what = "a field"});
        return text;
    }

    [[noreturn]] void refuse(const table_row& r, std::size_t c, const std::string& why, refusal facts) const {
        const std::string where =
            ", column " + std::to_string(columns_[c].value_or(0) + 1) + " (" + std::string(names_[c]) + "): ";
        facts.where = std::string(names_[c]);
        throw row_error(r.number, where + why, std::move(facts));
    }

private:
    std::optional<std::size_t> find(std::string_view name) const {
        std::optional<std::size_t> found;
        for (std::size_t i = 0; i < rows_[0].fields.size(); ++i) {
            if (slug(rows_[0].fields[i]) != name)
                continue;
            if (found)
                throw heading_error("its first row names the column \"" + std::string(name) + "\" twice",
                                    {.kind = fault::repeated, .what = "a column", .where = std::string(name)});
            found = i;
        }
        return found;
    }

    const std::vector<table_row>& rows_;
    std::span<const std::string_view> names_;
    std::vector<std::optional<std::size_t>> columns_{};
};

} // namespace allotment

#endif
