// What the lines of a shopping list cost, each with its working, and their sum.
//
//   handout_costs costs(prices)
//     .add_column(table)                       nothing is added where no price is given
//     .of_cloth(material, purchase)  .of_notion(notion)  .of_what_is_there()     what the next cell is about
//     .add_cell(table)                         "7/8 yd x 12.50 = 10.94", or room to write
//     .in_all()                                "In all 13.44 EUR ..."
#ifndef TURNCLOTH_HANDOUT_DETAIL_COSTS_HPP
#define TURNCLOTH_HANDOUT_DETAIL_COSTS_HPP

#include <turncloth/cloth/price.hpp>
#include <turncloth/handout/detail/shared.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/page/drawing.hpp>
#include <turncloth/sheet/notion.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>

namespace turncloth::detail {

class handout_costs {
public:
    explicit handout_costs(const price_list& prices) : prices_(prices) {}

    void add_column(document::table& to) const {
        if (given())
            to.columns.push_back(prices_.currency.empty() ? sentence({"Price"})
                                                          : sentence({"Price, ", prices_.currency}));
    }

    /// Cloth on hand is not bought.
    void of_what_is_there() { is_there_ = true; }

    /// As much as the shop that asks this price cuts off.
    template <length_unit Unit>
    void of_cloth(const std::string& material, const purchase<Unit>& bought) {
        const price* p = price_of(material, prices_);
        if (p == nullptr)
            return;
        if (p->per == sold_per::a_metre)
            add(*p, as<metre>(bought_by_the_metre(bought)));
        else
            add(*p, as<yard>(bought_by_the_yard(bought)));
    }

    template <length_unit Unit>
    void of_notion(const notion<Unit>& n) {
        const auto sold = [](const notion_detail<Unit>& d) {
            return d.sold == sold_as::off_a_roll || (d.sold != sold_as::not_sold && d.count > 0);
        };
        const auto several = std::count_if(n.details().begin(), n.details().end(), sold);
        for (const notion_detail<Unit>& d : n.details())
            if (sold(d))
                if (const price* p = price_of(several > 1 ? n.name() + ": " + d.what : n.name(), prices_))
                    add_detail(*p, d);
        const bool as_told = std::any_of(n.details().begin(), n.details().end(),
                                         [](const auto& d) { return d.sold != sold_as::not_sold; });
        if (const price* p = price_of(n.name(), prices_); p != nullptr && several == 0 && as_told)
            add(*p, 1);
    }

    void add_cell(document::table& to) {
        if (!given())
            return;
        if (std::exchange(is_there_, false))
            return to.rows.back().push_back({});
        ++lines_;
        priced_ += next_.empty() ? 0U : 1U;
        auto& row = to.rows.back();
        if (next_.empty())
            row.push_back({sentence({"what ", row[1].text, " costs"}), document::in_cell::blank});
        else
            row.push_back({std::exchange(next_, {}), document::in_cell::figure});
    }

    std::string in_all() const {
        if (!given())
            return {};
        return sentence(
            {"In all ", money_text(sum_, prices_),
             priced_ < lines_ ? sentence({", for ", priced_, " of ", lines_, " lines: add the others"}) : std::string(),
             ". Each line is rounded to ", money_text(prices_.coin, prices_), ", and the sum is that of the lines."});
    }

private:
    bool given() const { return !prices_.all.empty(); }

    template <length_unit Unit>
    void add_detail(const price& p, const notion_detail<Unit>& d) {
        if (d.count > 0)
            add(p, d.count);
        else if (p.per == sold_per::a_metre)
            add(p, as<metre>(up_to(as<centimetre>(d.amount.value()), ten_centimetres<centimetre>.step)));
        else
            add(p, as<yard>(up_to(as<inch>(d.amount.value()), eighths_of_a_yard<inch>.step)));
    }
    template <length_unit Unit>
    void add(const price& p, length<Unit> bought) {
        add(to_text(bought), p, cost_of(bought, p, prices_));
    }
    void add(const price& p, std::int64_t bought) { add(std::to_string(bought), p, cost_of(bought, p, prices_)); }
    void add(const std::string& much, const price& p, fraction cost) {
        next_.append(next_.empty() ? "" : "; ")
            .append(sentence({unbroken(much), " x ", price_text(p.amount, prices_), " = ", price_text(cost, prices_)}));
        sum_ = sum_ + cost;
    }

    const price_list& prices_;
    std::string next_{};
    fraction sum_ = 0;
    bool is_there_ = false; ///< what the next cell is about
    std::size_t lines_ = 0, priced_ = 0;
};

} // namespace turncloth::detail

#endif
