// Cloth that the maker has, as it is typed: "canvas: 40 x 30 in", "canvas: 40 x 30 in; 3 x 2 in at 10 x 12 in".
//
//   read_on_hand(text)       the material, the size of a piece of it, and its flaws: each a size and how far its corner is
//                            from the left edge and from the marked end
//   on_hand<U>(all)          the same for a sheet, told apart by their sizes
#ifndef TURNCLOTH_EXAMPLES_SHEETS_ON_HAND_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_ON_HAND_HPP

#include "../command/plain_text.hpp"
#include "cloth_named.hpp"
#include "names.hpp"
#include <turncloth/panel/format.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace allotment {

using namespace turncloth;

using typed_flaw = std::variant<cloth_part<inch>, cloth_part<centimetre>>;

struct typed_cloth {
    std::string material;
    typed_size size;
    std::vector<typed_flaw> flaws;
};

[[noreturn]] inline void refuse_flaw(const std::string& text) {
    throw range_error(
        "a flaw is written as \"3 x 2 in at 10 x 12 in\", its size and how far it is from the left edge and "
        "from the marked end: it was " +
            turncloth::detail::in_quotes(text),
        {.kind = fault::unreadable, .what = "a flaw"});
}

/// Either may be nothing, as a size may not.
template <length_unit Unit>
length<Unit> read_off_an_edge(std::string_view text) {
    const length<Unit> off = turncloth::detail::has_letter_m(text) ? as<Unit>(read_length<centimetre>(text))
                                                                   : as<Unit>(read_length<inch>(text));
    require_not_negative<range_error>(off, "how far a flaw is from an edge");
    return off;
}

template <length_unit Unit>
cloth_part<Unit> part_off_edges(std::string_view left, std::string_view top, const finished_size<Unit>& size) {
    return {read_off_an_edge<Unit>(left), read_off_an_edge<Unit>(top), size.width(), size.height()};
}

/// Throws range_error, and as read_size and read_length.
inline typed_flaw read_flaw(const std::string& text) {
    const std::size_t at = text.find(" at ");
    const auto corner =
        at == std::string::npos ? std::nullopt : turncloth::detail::sides_in(std::string_view(text).substr(at + 4));
    if (!corner)
        refuse_flaw(text);
    const std::string_view unit = turncloth::detail::only_unit(corner->second);
    const std::string left = turncloth::detail::is_bare_number(corner->first) ? std::string(corner->first).append(unit)
                                                                              : std::string(corner->first);
    return std::visit([&](const auto& size) -> typed_flaw { return part_off_edges(left, corner->second, size); },
                      read_size(text.substr(0, at)));
}

/// Throws range_error, and as read_size.
inline typed_cloth read_on_hand(const std::string& text) {
    const auto said = said_of_one_cloth(text);
    if (!said || said->material.empty())
        throw range_error("cloth on hand is written as \"canvas: 40 x 30 in\": it was " +
                              turncloth::detail::in_quotes(text),
                          {.kind = fault::unreadable, .what = "cloth on hand"});
    if (const std::string why = why_unfit(said->material); !why.empty())
        throw range_error("the name of the cloth on hand: " + why, {.kind = fault::unreadable, .what = "a name"});
    std::size_t end = said->rest.find(';');
    typed_cloth cloth{said->material, read_size(said->rest.substr(0, end)), {}};
    while (end != std::string::npos) {
        const std::size_t from = end + 1;
        end = said->rest.find(';', from);
        cloth.flaws.push_back(read_flaw(said->rest.substr(from, end == std::string::npos ? end : end - from)));
    }
    return cloth;
}

template <length_unit Unit>
cloth_part<Unit> in_unit(const typed_flaw& flaw) {
    return std::visit(
        [](const auto& f) {
            return cloth_part<Unit>{as<Unit>(f.from_left), as<Unit>(f.from_end), as<Unit>(f.across), as<Unit>(f.along)};
        },
        flaw);
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
                for (const typed_flaw& flaw : c.flaws)
                    made.back().flaws.push_back(in_unit<Unit>(flaw));
            },
            c.size);
    return made;
}

} // namespace allotment

#endif
