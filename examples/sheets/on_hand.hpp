// Cloth that the maker has, as it is typed: "canvas: 40 x 30 in".
//
//   read_on_hand(text)       the material, and the size of a piece of it
//   on_hand<U>(all)          the same for a sheet, told apart by their sizes
#ifndef TURNCLOTH_EXAMPLES_SHEETS_ON_HAND_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_ON_HAND_HPP

#include "../command/plain_text.hpp"
#include "cloth_named.hpp"
#include "names.hpp"
#include <turncloth/panel/format.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <string>
#include <variant>
#include <vector>

namespace allotment {

using namespace turncloth;

struct typed_cloth {
    std::string material;
    typed_size size;
};

/// Throws range_error, and as read_size.
inline typed_cloth read_on_hand(const std::string& text) {
    const auto said = said_of_one_cloth(text);
    if (!said || said->material.empty())
        throw range_error("cloth on hand is written as \"canvas: 40 x 30 in\": it was " +
                              turncloth::detail::in_quotes(text),
                          {.kind = fault::unreadable, .what = "cloth on hand"});
    if (const std::string why = why_unfit(said->material); !why.empty())
        throw range_error("the name of the cloth on hand: " + why, {.kind = fault::unreadable, .what = "a name"});
    return {said->material, read_size(said->rest)};
}

template <length_unit Unit>
std::vector<cloth_on_hand<Unit>> on_hand(const std::vector<typed_cloth>& all) {
    std::vector<cloth_on_hand<Unit>> made;
    unused_names names;
    for (const typed_cloth& c : all)
        std::visit(
            [&](const auto& size) {
                made.push_back(
                    {names.next(to_text(size)), c.material, as<Unit>(size.width()), as<Unit>(size.height())});
            },
            c.size);
    return made;
}

} // namespace allotment

#endif
