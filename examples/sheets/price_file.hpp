// The prices of a shop, as the table that whoever buys for a class keeps beside the list.
//
//   prices_of(rows)             the list; throws price_file_error, which names the row and the column
//   read_price_file(path)       the same of a file; throws file_error
//
//   what;price;per;currency
//   canvas;12,50;metre;EUR
//   eyelets;0,15;piece;
//
// A currency, or a smallest coin in a column of that name, is of the whole list and need stand only once. What no row names
// is left to be written in on the handout, and what no handout asks for is passed over, so that one list does for a year.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PRICE_FILE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PRICE_FILE_HPP

#include "../command/files.hpp"
#include "../command/plain_text.hpp"
#include "names.hpp"
#include "table_file.hpp"
#include <turncloth/cloth/price.hpp>
#include <turncloth/measure/read.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace allotment {

using namespace turncloth;

class price_file_error : public error {
public:
    using error::error;
};

namespace detail {

class price_rows {
public:
    explicit price_rows(const std::vector<table_row>& rows) : rows_(rows) {
        if (rows.empty() || !rows[0].wrong.empty())
            throw price_file_error("its first row must name the columns what, price and per",
                                   {.kind = fault::missing, .what = "the first row"});
        for (std::size_t c = 0; c < names.size(); ++c)
            for (std::size_t i = 0; i < rows[0].fields.size(); ++i)
                if (slug(rows[0].fields[i]) == names[c])
                    column_[c] = i;
        for (const std::size_t c : {what, amount, per})
            if (column_[c] == nowhere)
                throw price_file_error("its first row names no column \"" + std::string(names[c]) +
                                           "\": it must name what, price and per",
                                       {.kind = fault::missing, .what = "a column", .where = std::string(names[c])});
    }

    price_list read() const {
        price_list all;
        bool has_coin = false;
        for (std::size_t i = 1; i < rows_.size(); ++i) {
            const table_row& r = rows_[i];
            if (!r.wrong.empty())
                refuse(r, what, r.wrong, fault::unreadable);
            const price p{needed(r, what), number(r, amount), sold(r)};
            if (price_of(p.of, all) != nullptr)
                refuse(r, what, turncloth::detail::in_quotes(p.of) + " has a price already", fault::repeated);
            all.all.push_back(p);
            if (const std::string own = field(r, currency); !own.empty()) {
                if (!all.currency.empty() && all.currency != own)
                    refuse(r, currency, "a list has one currency, and this one has " + all.currency, fault::disagree);
                all.currency = own;
            }
            if (field(r, coin).empty())
                continue;
            const fraction own = number(r, coin);
            if (has_coin && own != all.coin)
                refuse(r, coin, "a list has one smallest coin, and this one has another", fault::disagree);
            all.coin = own;
            has_coin = true;
        }
        return all;
    }

private:
    static constexpr std::array<std::string_view, 5> names = {"what", "price", "per", "currency", "coin"};
    static constexpr std::size_t what = 0, amount = 1, per = 2, currency = 3, coin = 4;
    static constexpr auto nowhere = static_cast<std::size_t>(-1);

    [[noreturn]] static void refuse(const table_row& r, std::size_t column, const std::string& why, fault kind) {
        throw price_file_error(
            "row " + std::to_string(r.number) + " (" + std::string(names[column]) + "): " + why,
            {.kind = kind, .what = "a price", .index = r.number, .where = std::string(names[column])});
    }
    /// Without the blanks around it.
    std::string field(const table_row& r, std::size_t column) const {
        if (column_[column] >= r.fields.size())
            return {};
        const std::string& all = r.fields[column_[column]];
        const std::size_t first = all.find_first_not_of(" \t"), last = all.find_last_not_of(" \t");
        std::string text = first == std::string::npos ? std::string() : all.substr(first, last - first + 1);
        if (const std::string why = why_unfit(text); !why.empty())
            refuse(r, column, why, fault::unreadable);
        return text;
    }
    std::string needed(const table_row& r, std::size_t column) const {
        std::string text = field(r, column);
        if (text.empty())
            refuse(r, column, "it is missing", fault::missing);
        return text;
    }
    fraction number(const table_row& r, std::size_t column) const {
        const std::string text = needed(r, column);
        fraction read;
        try {
            read = read_fraction(text);
        } catch (const error& refused) {
            refuse(r, column, refused.what(), refused.facts().kind);
        }
        if (read < 0 || (read == 0 && column == coin))
            refuse(r, column,
                   "it is " + text + (column == coin ? ": it must be more than zero" : ": it must not be below zero"),
                   fault::too_small);
        return read;
    }
    sold_per sold(const table_row& r) const {
        const std::string text = slug(needed(r, per));
        if (text == "piece" || text == "each")
            return sold_per::one;
        if (text == "yard" || text == "yd")
            return sold_per::a_yard;
        if (text == "metre" || text == "meter" || text == "m")
            return sold_per::a_metre;
        refuse(r, per, "a thing is sold by the piece, the yard or the metre", fault::unreadable);
    }

    const std::vector<table_row>& rows_;
    std::array<std::size_t, names.size()> column_ = {nowhere, nowhere, nowhere, nowhere, nowhere};
};

} // namespace detail

inline price_list prices_of(const std::vector<table_row>& rows) { return detail::price_rows(rows).read(); }

inline price_list read_price_file(const std::string& path) {
    try {
        return prices_of(read_table(require_text(path, read_file(path))));
    } catch (const price_file_error& refused) {
        throw file_error("use", path, refused.what());
    }
}

} // namespace allotment

#endif
