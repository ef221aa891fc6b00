// The prices of a shop, as the table that whoever buys for a class keeps beside the list.
//
//   prices_of(rows)             the list; throws heading_error, and row_error, which names the row and the column
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
#include "columns.hpp"
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

namespace detail {

class price_rows {
public:
    explicit price_rows(const std::vector<table_row>& rows) : columns_(rows, names, 3) {}

    price_list read() const {
        price_list all;
        bool has_coin = false;
        for (const table_row& r : columns_.rows()) {
            columns_.require_sound(r);
            const price p{columns_.needed(r, what), number(r, amount), sold(r)};
            if (price_of(p.of, all) != nullptr)
                refuse(r, what, turncloth::detail::in_quotes(p.of) + " has a price already", fault::repeated);
            all.all.push_back(p);
            if (const std::string own = columns_.field(r, currency); !own.empty()) {
                if (!all.currency.empty() && all.currency != own)
                    refuse(r, currency, "a list has one currency, and this one has " + all.currency, fault::disagree);
                all.currency = own;
            }
            if (columns_.field(r, coin).empty())
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
    enum column : std::size_t { what, amount, per, currency, coin };

    [[noreturn]] void refuse(const table_row& r, column c, const std::string& why, fault kind) const {
        columns_.refuse(r, c, why, {.kind = kind, .what = "a price"});
    }
    fraction number(const table_row& r, column c) const {
        const std::string text = columns_.needed(r, c);
        fraction read;
        try {
            read = read_fraction(text);
        } catch (const error& refused) {
            refuse(r, c, refused.what(), refused.facts().kind);
        }
        if (read < 0 || (read == 0 && c == coin))
            refuse(r, c, "it is " + text + (c == coin ? ": it must be more than zero" : ": it must not be below zero"),
                   fault::too_small);
        return read;
    }
    sold_per sold(const table_row& r) const {
        const std::string text = slug(columns_.needed(r, per));
        if (text == "piece" || text == "each")
            return sold_per::one;
        if (text == "yard" || text == "yd")
            return sold_per::a_yard;
        if (text == "metre" || text == "meter" || text == "m")
            return sold_per::a_metre;
        refuse(r, per, "a thing is sold by the piece, the yard or the metre", fault::unreadable);
    }

    named_columns columns_;
};

} // namespace detail

inline price_list prices_of(const std::vector<table_row>& rows) { return detail::price_rows(rows).read(); }

inline price_list read_price_file(const std::string& path) {
    try {
        return prices_of(read_table(require_text(path, read_file(path))));
    } catch (const heading_error& refused) {
        throw file_error("use", path, refused.what());
    } catch (const row_error& refused) {
        throw file_error("use", path, refused.what());
    }
}

} // namespace allotment

#endif
