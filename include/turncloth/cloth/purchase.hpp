// How much to buy: the length laid, what is trimmed at the ends, what washing takes, rounded up to what is sold.
//
//   sold_in<Unit>{step, least}             cut off the bolt in steps, and no less than so much
//   eighths_of_a_yard<Unit>  ten_centimetres<Unit>            the usual steps
//   purchase_rules<Unit>{straightening, change, sold}      the rules of one cloth
//   amount_to_buy(laid, rules)          -> purchase<Unit> { needed, bought, spare, working, straightened, washed }, of a
//                                          length, or of a figure that says what it is the sum of
//   bought_together({laid, ...}, rules) -> joint_purchase<Unit> { together, apart, saved }
//   length_by_area(l, from, to)         a first guess at another width of cloth
//   purchase_error                      a length, step or width that is not allowed
//
//   constexpr purchase_rules<inch> drill{.straightening = length_of<inch>(1), .change = shrinks_by(percent(4)),
//                                        .sold = eighths_of_a_yard<inch>};
//   amount_to_buy("58"_in, drill).bought == "63"_in;        // 60 in, 62 1/2 before washing, 14 eighths of a yard
//
// The cloth is washed first, then its ends are straightened, then the pieces are laid: so what is bought must leave,
// after washing, the length laid and the straightening at both ends. Nothing is rounded before the end. If pieces are
// cut from unwashed cloth in sizes that allow for washing (cloth/shrinkage.hpp), give no change here, or it counts
// twice.
#ifndef TURNCLOTH_CLOTH_PURCHASE_HPP
#define TURNCLOTH_CLOTH_PURCHASE_HPP

#include <turncloth/cloth/shrinkage.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/working.hpp>

#include <algorithm>
#include <vector>

namespace turncloth {

/// A purchase that makes no sense.
class purchase_error : public error {
public:
    using error::error;
};

/// The lengths that a shop cuts: multiples of `step`, and none below `least`.
template <length_unit Unit>
struct sold_in {
    length<Unit> step;
    length<Unit> least = {};
};

/// Cloth is sold by the eighth of a yard where yards are used, and by ten centimetres where metres are. Common
/// practice.
template <length_unit Unit>
inline constexpr sold_in<Unit> eighths_of_a_yard{as<Unit>(length_of<yard>({1, 8}))};
template <length_unit Unit>
inline constexpr sold_in<Unit> ten_centimetres{as<Unit>(length_of<centimetre>(10))};

template <length_unit Unit>
struct purchase_rules {
    length<Unit> straightening = {}; ///< trimmed off at each of the two ends
    dimensional_change change = {};  ///< of the cloth along its length, washed before it is cut
    sold_in<Unit> sold;
};

template <length_unit Unit>
struct purchase {
    length<Unit> needed; ///< exact
    length<Unit> bought; ///< rounded up to what is sold
    length<Unit> spare;  ///< the difference, before washing
    figure<Unit> working;
    length<Unit> straightened = {}; ///< trimmed off at each end
    length<Unit> washed = {}; ///< what is bought, as long as it is after washing, before its ends are straightened
};

template <length_unit Unit>
struct joint_purchase {
    purchase<Unit> together;
    std::vector<purchase<Unit>> apart; ///< each alone
    length<Unit> saved;                ///< by buying in one length; never below zero
};

namespace detail {

template <length_unit Unit>
constexpr void require_sound(const purchase_rules<Unit>& rules) {
    require_not_negative<purchase_error>(rules.straightening, "the straightening at an end");
    require_more_than_zero<purchase_error>(rules.sold.step, "the step that cloth is sold in");
    require_not_negative<purchase_error>(rules.sold.least, "the least length sold");
}

} // namespace detail

/// What to buy so that `laid` can be laid out, which is the sum of its terms. Throws purchase_error unless it is more than
/// zero.
template <length_unit Unit>
constexpr purchase<Unit> amount_to_buy(const figure<Unit>& laid, const purchase_rules<Unit>& rules) {
    detail::require_sound(rules);
    require_more_than_zero<purchase_error>(laid.value(), "the length to lay");
    const length<Unit> washed = laid.value() + rules.straightening * 2;
    purchase<Unit> p;
    p.needed = before_washing(washed, rules.change);
    p.bought = up_to(std::max(p.needed, rules.sold.least), rules.sold.step);
    p.spare = p.bought - p.needed;
    p.straightened = rules.straightening;
    p.washed = after_washing(p.bought, rules.change);
    p.working = laid;
    p.working.plus_any(2, rules.straightening, "straightened ends")
        .plus_any(1, p.needed - washed, "lost in washing")
        .plus_any(1, p.spare, "up to what is sold");
    return p;
}
template <length_unit Unit>
constexpr purchase<Unit> amount_to_buy(length<Unit> laid, const purchase_rules<Unit>& rules) {
    return amount_to_buy(figure<Unit>().plus(laid, "laid"), rules);
}

/// Several lengths laid one after the other on one length of the same cloth: two ends to straighten instead of two for
/// each, and one rounding. Throws purchase_error if there is none, or one is not more than zero.
template <length_unit Unit>
joint_purchase<Unit> bought_together(const std::vector<length<Unit>>& laid, const purchase_rules<Unit>& rules) {
    if (laid.empty())
        detail::refuse<purchase_error>("at least one length to lay must be given: none was",
                                       refusal{.kind = fault::missing, .what = "a length to lay"});
    joint_purchase<Unit> joint;
    length<Unit> all, apart;
    for (const length<Unit>& l : laid) {
        joint.apart.push_back(amount_to_buy(l, rules));
        apart += joint.apart.back().bought;
        all += l;
    }
    joint.together = amount_to_buy(all, rules);
    joint.saved = apart - joint.together.bought;
    return joint;
}

/// The length at width `to` that has the area of `l` at width `from`. A first guess only: pieces may not fill another
/// width as well, so lay them out before buying. Throws purchase_error for a width that is not more than zero.
template <length_unit Unit>
constexpr length<Unit> length_by_area(length<Unit> l, length<Unit> from, length<Unit> to) {
    require_more_than_zero<purchase_error>(from, "the width of cloth that the length is for");
    require_more_than_zero<purchase_error>(to, "the width of cloth to buy");
    return l * ratio_of(from, to);
}

} // namespace turncloth

#endif
