// What is bought, as money: exact decimals of a currency that is named, rounded to its smallest coin as a till does.
//
//   price{of, amount, per}            of canvas 12.50 a yard, of eyelets 0.20 each
//   price_list{currency, all, coin}   the prices of one shop
//   cost_of(length, price, list)      cost_of(count, price, list)       of what is bought, in whole coins, halves up
//   money_text(amount, list)          "10.94 EUR"
//
//   const price_list shop{"EUR", {{"canvas", read_fraction("12.50"), sold_per::a_yard}}};
//   money_text(cost_of("31 1/2"_in, shop.all[0], shop), shop) == "10.94 EUR";      // 7/8 of a yard: 10.9375
//
// A till rounds each line to the smallest coin, a half of one upward, and adds up what it rounded: so what is printed adds up.
//
// A price belongs to a shop and a day, and so to the list that a maker takes there, not to a design. Nothing is converted
// between currencies, and nothing is known of taxes.
#ifndef TURNCLOTH_CLOTH_PRICE_HPP
#define TURNCLOTH_CLOTH_PRICE_HPP

#include <turncloth/measure/language.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/panel/names.hpp>

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth {

/// A price that makes no sense.
class price_error : public error {
public:
    using error::error;
};

/// What a price is asked for.
enum class sold_per : unsigned char { one, a_yard, a_metre };

struct price {
    std::string of; ///< the material or the thing, as a list of what to buy names it
    fraction amount;
    sold_per per = sold_per::one;

    friend bool operator==(const price&, const price&) = default;
};

struct price_list {
    std::string currency = {}; ///< as it is to be printed
    std::vector<price> all = {};
    fraction coin = fraction(1, 100); ///< the smallest

    friend bool operator==(const price_list&, const price_list&) = default;
};

/// The first of that thing; null where none is given. Looked for from the first on: time grows with the list.
inline const price* price_of(std::string_view thing, const price_list& in) {
    for (const price& p : in.all)
        if (p.of == thing)
            return &p;
    return nullptr;
}

namespace detail {

/// How many digits a coin has behind the point: at most this many, so that every sum has so many.
inline constexpr int most_digits_of_a_coin = 4;

/// Throws price_error for a coin that no decimal of a few digits writes.
constexpr int digits_of_coin(fraction coin) {
    require_more_than_zero<price_error>(coin, "the smallest coin of a currency");
    int digits = 0;
    for (; !is_whole(coin); coin = coin * 10)
        if (++digits > most_digits_of_a_coin)
            refuse<price_error>({"the smallest coin of a currency is a decimal of at most ", most_digits_of_a_coin,
                                 " digits behind the point"},
                                {.kind = fault::unsuitable, .what = "the smallest coin of a currency"});
    return digits;
}

constexpr fraction in_coins(fraction amount, const price_list& by) {
    digits_of_coin(by.coin);
    return nearest_to(amount, by.coin, ties::up);
}

constexpr void require_sound(const price& p) { require_not_negative<price_error>(p.amount, "a price"); }

} // namespace detail

/// Of a length that is bought, at a price for a yard or a metre. Throws price_error for a price of pieces, for one below
/// zero, and for a length that is.
template <length_unit Unit>
constexpr fraction cost_of(length<Unit> bought, const price& p, const price_list& by) {
    detail::require_sound(p);
    require_not_negative<price_error>(bought, "a length that is bought");
    if (p.per == sold_per::one)
        detail::refuse<price_error>({"the price of ", detail::in_quotes(p.of),
                                     " is for a piece, and a length of it is bought: give it for a yard or a metre"},
                                    {.kind = fault::unsuitable, .what = "a price", .where = p.of});
    const fraction many = p.per == sold_per::a_yard ? as<yard>(bought).value() : as<metre>(bought).value();
    return detail::in_coins(many * p.amount, by);
}

/// Of so many pieces. Throws price_error for a price of a length, for one below zero, and for a count that is.
constexpr fraction cost_of(std::int64_t bought, const price& p, const price_list& by) {
    detail::require_sound(p);
    require_not_negative<price_error>(bought, "a number of pieces that are bought");
    if (p.per != sold_per::one)
        detail::refuse<price_error>({"the price of ", detail::in_quotes(p.of),
                                     " is for a length, and so many pieces are bought: give it for one"},
                                    {.kind = fault::unsuitable, .what = "a price", .where = p.of});
    return detail::in_coins(fraction(bought) * p.amount, by);
}

namespace detail {

/// With at least as many digits as a coin has, and with all that there are; a mixed number where no decimal is exact.
inline std::string price_text(fraction amount, const price_list& by) {
    int digits = digits_of_coin(by.coin);
    fraction shifted = amount;
    for (int i = 0; i < digits; ++i)
        shifted = shifted * 10;
    for (; !is_whole(shifted) && digits < 2 * most_digits_of_a_coin; ++digits)
        shifted = shifted * 10;
    if (!is_whole(shifted))
        return to_text(amount);
    std::string all = std::to_string(numerator(shifted));
    if (digits == 0)
        return all;
    const auto behind = static_cast<std::size_t>(digits);
    if (all.size() <= behind)
        all.insert(0, behind + 1 - all.size(), '0');
    return all.insert(all.size() - behind, decimal_mark());
}

} // namespace detail

/// Not below zero.
inline std::string money_text(fraction amount, const price_list& by) {
    require_not_negative<price_error>(amount, "an amount of money");
    return detail::price_text(amount, by).append(by.currency.empty() ? "" : " ").append(by.currency);
}

} // namespace turncloth

#endif
