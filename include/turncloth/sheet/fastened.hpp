// Fasteners as notions that a project can hold.
//
//   listed(name, buttoned lap, beyond)    buttons, their holes and the interfacing under these
//   listed(name, snapped lap)             snaps on a lap
//   listed(name, count, touch strap)      straps alike that close on themselves with hook and loop tape
//
//   cushion.add(listed("strap tape", 2, touch_strap<inch>{.least = 10_in, .most = 12_in, .holds = 2_in}));
#ifndef TURNCLOTH_SHEET_FASTENED_HPP
#define TURNCLOTH_SHEET_FASTENED_HPP

#include <turncloth/notions/fastening.hpp>
#include <turncloth/sheet/notion.hpp>

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
std::vector<length<Unit>> listed_places(const row<finished_edge, Unit>& r) {
    std::vector<length<Unit>> all;
    for (const auto& place : r)
        all.push_back(place.from_datum());
    return all;
}

} // namespace detail

/// Buttons, their holes, and the interfacing that goes `beyond` these. Throws as holes_of and interfacing_under do.
template <length_unit Unit>
notion<Unit> listed(std::string name, const buttoned_lap<Unit>& l, std::type_identity_t<length<Unit>> beyond) {
    require_at_most<range_error>(l.places.size(), most_in_a_row, "the number of buttons in a row");
    const auto holes = holes_of(l);
    const interfacing_strip<Unit> under = interfacing_under(l, beyond);
    notion<Unit> n(std::move(name));
    n.number("buttons", l.places.size())
        .sold(sold_as::as_told)
        .figure("button, across", l.button.across)
        .sold(sold_as::as_told)
        .figure("buttonhole, its length", l.hole)
        .places("buttons, from the finished end of the edge", detail::listed_places(l.places))
        .figure("buttons, from the finished edge that is fastened", l.stand);
    if (l.runs == hole_runs::along_edge) {
        std::vector<length<Unit>> begins;
        begins.reserve(holes.size());
        for (const buttonhole<Unit>& h : holes)
            begins.push_back(h.begins);
        n.places("buttonholes along the edge, where they begin, from its finished end", std::move(begins));
    } else {
        n.figure("buttonholes square to the edge, where they begin, from it", holes[0].from)
            .figure("buttonholes square to the edge, where they end, from it", holes[0].to);
    }
    return n.figure("interfacing, cut across the edge", under.width)
        .figure("interfacing, cut along the edge", under.length_)
        .figure("interfacing, from the finished end of the edge", under.begins)
        .figure("interfacing, from the finished edge inward", under.from)
        .caution(caution::small_parts);
}

/// Each snap is a ball and a socket. Throws as require_snaps does.
template <length_unit Unit>
notion<Unit> listed(std::string name, const snapped_lap<Unit>& s) {
    require_at_most<range_error>(s.places.size(), most_in_a_row, "the number of snaps in a row");
    require_snaps(s);
    return notion<Unit>(std::move(name))
        .number("snaps", s.places.size())
        .sold(sold_as::as_told)
        .figure("snap, across", s.across)
        .sold(sold_as::as_told)
        .places("snaps, from the finished end of either edge", detail::listed_places(s.places))
        .figure("snaps, from either finished edge", s.stand)
        .caution(caution::setting_eyelets)
        .caution(caution::small_parts);
}

/// Their cloth is cut with the other pieces.
template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const touch_strap<Unit>& s) {
    const turncloth::figure<Unit> hook = hook_tape(s), loop = loop_tape(s);
    return notion<Unit>(std::move(name))
        .number("straps", count)
        .figure("each, finished, from end to end", strap_round(s))
        .figure("hook tape, each", hook)
        .figure("loop tape, each", loop)
        .figure("hook tape in all", hook.value() * count)
        .sold(sold_as::off_a_roll)
        .figure("loop tape in all", loop.value() * count)
        .sold(sold_as::off_a_roll)
        .caution(caution::infants_and_animals);
}

} // namespace turncloth

#endif
