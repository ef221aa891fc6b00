// The rows of a table laid as one order of each cloth: in spreads that a table takes, cut through several plies at once.
//
//   sheet_made                 a sheet whose cloth is not laid yet, or why there is none
//   make_sheet(wanted, orders)
//   one_order(orders)          rows of inches and of centimetres
//     .add(sheet_made, job)    in the order of the rows
//     .lay()
//     .row(i)                  the sheet of the row that was added as the i-th, with all that is written of it
//     .wholes()                an order of each unit that has rows
//   order_of_rows<U>(orders)   .add(sheet, hangs, copies, name)   the row's place; lays nothing yet
//                              .lay()                             lays every cloth
//                              .tell(row, sheet)                  lists on that row's sheet which spread its pieces come off
//                              .whole()                           what to buy and how it is spread, and a drawing of each spread
#ifndef TURNCLOTH_EXAMPLES_SHEETS_ONE_ORDER_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_ONE_ORDER_HPP

#include "cloth_to_buy.hpp"
#include "worked_out.hpp"
#include <turncloth/sheet/order.hpp>

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace allotment {

/// Canvas of what hangs keeps its grain upright, so it is laid by itself.
template <length_unit Unit>
class order_of_rows {
public:
    explicit order_of_rows(const orders& o)
        : orders_(o), cloth_(detail::cloth_asked_for<Unit>(o)), widths_(detail::widths_asked_for<Unit>(o)) {
        if (!o.cutting_table.empty())
            table_.table = read_length<Unit>(o.cutting_table);
        table_.most_plies = o.plies;
        table_.ends = cloth_.straightening * 2;
    }

    /// What cannot be ordered is a warning on its sheet.
    std::size_t add(sheet<Unit>& s, bool hangs, std::int64_t copies, const std::string& name) {
        rows_.emplace_back();
        for (const std::string& material : materials_of(s)) {
            const key_of_cloth key{material, keeps_upright(material, hangs)};
            try {
                cloth_order<Unit>& order = cloths_.try_emplace(key, order_of(s, key)).first->second;
                rows_.back().push_back({key, order.add(s, copies, name)});
            } catch (const error& refused) {
                leave_open(s, material, refused);
            }
        }
        return rows_.size() - 1;
    }

    /// Throws as cloth_order::laid.
    void lay() {
        for (const auto& [key, order] : cloths_)
            if (!order.empty())
                laid_.emplace(key, order.laid());
    }

    void tell(std::size_t row, sheet<Unit>& s) const {
        for (const auto& [key, line] : rows_[row]) {
            s.notions.push_back(listed_on(laid_.at(key), line));
            say_joins(s, laid_.at(key).lines[line].joined);
        }
    }

    bool empty() const { return laid_.empty(); }

    worked_out_sheet whole() const {
        const turncloth::detail::speaking in(orders_.words);
        const std::string name = turncloth::detail::sentence({"The whole order"});
        worked_out_sheet all{.text = name + "\n"};
        for (const auto& [key, order] : laid_)
            all.text += to_text(listed(order), orders_.by, orders_.words);
        if (orders_.out.empty())
            return all;
        all.files.push_back({".txt", all.text});
        const drawing_options drawn{.project = name, .on = detail::paper_for<Unit>(orders_), .words = &orders_.words};
        unused_names names;
        for (const auto& [key, order] : laid_)
            for (std::size_t i = 0; i < order.spreads.size(); ++i, ++all.drawings)
                all.files.push_back({"." + names.next(slug(key.first) + "-spread-" + std::to_string(i + 1)) + ".svg",
                                     to_svg(page_of(spread_of(order, i), orders_.by, drawn))});
        return all;
    }

private:
    using key_of_cloth = std::pair<std::string, bool>; ///< its name, and whether it keeps its grain upright

    cloth_order<Unit> order_of(const sheet<Unit>& s, const key_of_cloth& key) const {
        return {key.first,
                roll_of(s, key.first, cloth_, widths_),
                rules_of(cloth_),
                table_,
                {.lies = key.second ? grain::fixed : grain::may_turn, .effort = {.steps = 20'000}, .may_join = true}};
    }

    const orders& orders_;
    cloth_sold<Unit> cloth_;
    std::vector<width_of_cloth<Unit>> widths_;
    spreading<Unit> table_{};
    std::map<key_of_cloth, cloth_order<Unit>> cloths_{};
    std::map<key_of_cloth, ordered_cloth<Unit>> laid_{};
    std::vector<std::vector<std::pair<key_of_cloth, std::size_t>>> rows_{};
};

struct sheet_made {
    std::string refusal{};
    std::variant<std::monostate, sheet<inch>, sheet<centimetre>> made{};
};

inline sheet_made make_sheet(const wanted_sheet& wanted, const orders& o) {
    return worked<sheet_made>(wanted, [&](const job& j, const auto& finished) {
        return sheet_made{.made = detail::sheet_of_job(j, finished, o)};
    });
}

/// A piece in inches and one in centimetres are not laid together, as each edition is sold in its own steps.
class one_order {
public:
    explicit one_order(const orders& o) : orders_(o) {}

    void add(sheet_made row, const job& j) {
        const auto into = [&](auto& order, auto& s) {
            rows_.push_back({{}, order.add(s, detail::it_hangs(j), j.copies, j.file_name)});
        };
        if (auto* const s = std::get_if<sheet<inch>>(&row.made))
            into(inches_, *s);
        else if (auto* const metric = std::get_if<sheet<centimetre>>(&row.made))
            into(centimetres_, *metric);
        rows_.back().made = std::move(row.made);
    }

    void lay() {
        inches_.lay();
        centimetres_.lay();
    }

    worked_out_sheet row(std::size_t i) {
        if (auto* const s = std::get_if<sheet<inch>>(&rows_[i].made))
            return told(inches_, *s, rows_[i].place);
        return told(centimetres_, std::get<sheet<centimetre>>(rows_[i].made), rows_[i].place);
    }

    std::vector<worked_out_sheet> wholes() const {
        std::vector<worked_out_sheet> all;
        if (!inches_.empty())
            all.push_back(inches_.whole());
        if (!centimetres_.empty())
            all.push_back(centimetres_.whole());
        return all;
    }

private:
    struct row_of_order {
        decltype(sheet_made::made) made{};
        std::size_t place = 0;
    };

    template <length_unit Unit>
    worked_out_sheet told(const order_of_rows<Unit>& order, sheet<Unit>& s, std::size_t place) const {
        order.tell(place, s);
        return detail::written(s, {}, orders_);
    }

    const orders& orders_;
    order_of_rows<inch> inches_{orders_};
    order_of_rows<centimetre> centimetres_{orders_};
    std::vector<row_of_order> rows_{};
};

} // namespace allotment

#endif
