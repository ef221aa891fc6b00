// What is on hand used first: the least new cloth to buy, and what the remnants make by themselves.
//
//   struct remnant<Unit>       cloth, length
//   struct cloth_plan<Unit>    on_remnants, bought, bound; proved_best()
//   cloth_plan<Unit> lay_with_remnants(pieces, remnants, bolt, effort = {})    the least new cloth
//   remnant_yield things_from(pieces, remnants, effort = {})                   how many of a thing the remnants make
//   std::vector<cloth_part<Unit>> off_cuts(lay, remnant, least_across, least_along)   what a remnant leaves
//
//   const remnant<inch> scrap{{.width = 40_in}, 12_in};
//   const auto plan = lay_with_remnants<inch>({{"square", {12_in, 12_in}, 3}, {"strip", {40_in, 11_in}}}, {scrap}, canvas);
//   // three squares from the scrap, and 11 in to buy: the fuller remnant, with the strip on it, would ask for 12
//
// Which pieces go on which remnant decides what is bought, and the fullest remnant is not always the best one. Few
// pieces are shared out in every way there is; with more, plans are mended one or two remnants at a time.
#ifndef TURNCLOTH_CLOTH_REMNANTS_HPP
#define TURNCLOTH_CLOTH_REMNANTS_HPP

#include <turncloth/cloth/detail/remnant_search.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/off_cuts.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

/// A piece of cloth on hand.
template <length_unit Unit>
struct remnant {
    bolt<Unit> cloth;
    turncloth::length<Unit> length{};
};

/// `on_remnants` in the order of the remnants; `bought` is the lay on new cloth, of length nothing if none is needed.
/// No plan buys less than `bound`.
template <length_unit Unit>
struct cloth_plan {
    std::vector<lay<Unit>> on_remnants;
    lay<Unit> bought;
    length<Unit> bound{};
    bool proved_best() const { return bought.length == bound; }
};

/// So many things found, and no more than so many possible.
struct remnant_yield {
    std::int64_t count = 0;
    std::int64_t at_most = 0;
    bool proved_best() const { return count == at_most; }
};

namespace detail {

/// On which of the cloths it lies is not known.
template <length_unit Unit>
void check_none_stays(const std::vector<cloth_piece<Unit>>& pieces) {
    for (std::size_t i = 0; i < pieces.size(); ++i)
        if (pieces[i].stays)
            refuse<lay_error>({named(pieces[i], i), " stays where it lies, so it is not shared out among cloths"},
                              {.kind = fault::unsuitable,
                               .what = sentence({"where ", named(pieces[i], i), " stays"}),
                               .index = i,
                               .where = pieces[i].name});
}

template <length_unit Unit>
void check_remnants(const std::vector<remnant<Unit>>& remnants) {
    for (const remnant<Unit>& on : remnants) {
        check_bolt(on.cloth);
        require_more_than_zero<lay_error>(on.length, "the length of a remnant");
    }
}

/// The ways that pieces may lie that turn together: those in which each goes on new cloth or some remnant, or the first.
template <length_unit Unit>
std::vector<bool> ways_that_go(const std::vector<cloth_piece<Unit>>& pieces, const std::vector<remnant<Unit>>& remnants,
                               const bolt<Unit>* cloth) {
    std::vector<bolt<Unit>> cloths;
    if (cloth != nullptr)
        cloths.push_back(*cloth);
    for (const remnant<Unit>& on : remnants)
        cloths.push_back(on.cloth);
    std::vector<bool> ways = ways_together(pieces, cloths);
    const bool first = ways.front();
    std::erase_if(ways, [&](bool turned) {
        const std::vector<cloth_piece<Unit>> as_laid = laid_so(pieces, turned);
        for (std::size_t i = 0; i < as_laid.size(); ++i)
            if ((cloth == nullptr || too_wide(as_laid[i], i, *cloth)) &&
                std::none_of(remnants.begin(), remnants.end(),
                             [&](const remnant<Unit>& on) { return fits_remnant(as_laid[i], i, on); }))
                return true;
        return false;
    });
    return ways.empty() ? std::vector<bool>{first} : ways;
}

/// By area, and no thing of which a piece fits nowhere.
template <length_unit Unit>
std::int64_t most_things(const std::vector<cloth_piece<Unit>>& one_thing, const std::vector<remnant<Unit>>& remnants) {
    fraction all = 0, one = 0;
    for (const remnant<Unit>& on : remnants)
        all += usable_area(on);
    for (std::size_t i = 0; i < one_thing.size(); ++i) {
        if (std::none_of(remnants.begin(), remnants.end(),
                         [&](const remnant<Unit>& on) { return fits_remnant(one_thing[i], i, on); }))
            return 0;
        one += area_of(one_thing[i]) * one_thing[i].quantity;
    }
    return floor(all / one);
}

/// None turn together.
template <length_unit Unit>
remnant_yield things_one_way(const std::vector<cloth_piece<Unit>>& one_thing,
                             const std::vector<remnant<Unit>>& remnants, const lay_effort& effort) {
    remnant_yield yield{0, most_things<Unit>(one_thing, remnants)};
    std::int64_t in_one = 0;
    for (const cloth_piece<Unit>& p : one_thing)
        in_one += p.quantity;
    std::int64_t refused = std::min(yield.at_most, most_pieces_of_a_lay / in_one) + 1;
    while (yield.count + 1 < refused) {
        const std::int64_t n = yield.count + (refused - yield.count) / 2;
        std::vector<cloth_piece<Unit>> all = one_thing;
        for (cloth_piece<Unit>& p : all)
            p.quantity *= n;
        const shared_out found = remnant_search<Unit>(all, remnants, nullptr, effort).share_out();
        (found == shared_out::all ? yield.count : refused) = n;
        if (found == shared_out::refuted)
            yield.at_most = n - 1;
    }
    return yield;
}

} // namespace detail

/// Shares the pieces out between the remnants and new cloth so that the least new cloth is bought that the effort finds.
/// In all lays of the plan a place names its piece by its index in the list given; the use of a remnant counts all of
/// it. Where pieces turn together, both ways are looked at, for twice the cost. Throws as lay_out does if a piece goes on
/// neither remnants nor new cloth.
template <length_unit Unit>
cloth_plan<Unit> lay_with_remnants(const std::vector<cloth_piece<Unit>>& pieces,
                                   const std::type_identity_t<std::vector<remnant<Unit>>>& remnants,
                                   const std::type_identity_t<bolt<Unit>>& cloth, const lay_effort& effort = {}) {
    detail::check_quantities(pieces);
    detail::check_none_stays(pieces);
    detail::check_remnants(remnants);
    detail::check_bolt(cloth);
    std::optional<cloth_plan<Unit>> best;
    for (const bool turned : detail::ways_that_go<Unit>(pieces, remnants, &cloth)) {
        const std::vector<cloth_piece<Unit>> as_laid = detail::laid_so(pieces, turned);
        cloth_plan<Unit> plan = detail::remnant_search<Unit>(as_laid, remnants, &cloth, effort).plan();
        for (lay<Unit>& on : plan.on_remnants)
            on = detail::told_turned(std::move(on), pieces, turned);
        plan.bought = detail::told_turned(std::move(plan.bought), pieces, turned);
        const length<Unit> bound = best ? std::min(best->bound, plan.bound) : plan.bound;
        if (!best || best->bought.length > plan.bought.length)
            best = std::move(plan);
        best->bound = bound;
    }
    return *best;
}

/// How many times all the pieces of one thing can be had from the remnants: looked for up to as many as have
/// `most_pieces_of_a_lay` pieces together, whatever the bound. Throws lay_error for a thing of no pieces, or with a
/// quantity or a remnant that is none.
template <length_unit Unit>
remnant_yield things_from(const std::vector<cloth_piece<Unit>>& one_thing,
                          const std::type_identity_t<std::vector<remnant<Unit>>>& remnants,
                          const lay_effort& effort = {}) {
    if (one_thing.empty())
        detail::refuse<lay_error>("a thing is cut from at least 1 piece",
                                  refusal{.kind = fault::missing, .what = "the pieces of a thing"});
    detail::check_quantities(one_thing);
    detail::check_none_stays(one_thing);
    detail::check_remnants(remnants);
    remnant_yield best;
    for (const bool turned : detail::ways_that_go<Unit>(one_thing, remnants, nullptr)) {
        const remnant_yield found = detail::things_one_way<Unit>(detail::laid_so(one_thing, turned), remnants, effort);
        best = {std::max(best.count, found.count), std::max(best.at_most, found.at_most)};
    }
    return best;
}

/// What a remnant leaves, of at least this size, the largest first: the whole of it where nothing is laid on it.
template <length_unit Unit>
std::vector<cloth_part<Unit>> off_cuts(lay<Unit> found, const std::type_identity_t<remnant<Unit>>& on,
                                       length<Unit> least_across, length<Unit> least_along) {
    const length<Unit> used = found.length;
    if (found.places.empty()) {
        found.made_ready = {{}, {}, on.cloth.width, {}};
        found.flaws = on.cloth.flaws;
    }
    if (found.cuts.empty()) {
        found.made_ready.along = on.length;
        return off_cuts(found, least_across, least_along);
    }
    std::vector<cloth_part<Unit>> left = off_cuts(found, least_across, least_along);
    const cloth_part<Unit> end{{}, used, on.cloth.width, on.length - used};
    if (end.across >= least_across && end.along >= least_along)
        left.insert(
            std::upper_bound(left.begin(), left.end(), end,
                             [](const auto& a, const auto& b) { return a.across * a.along > b.across * b.along; }),
            end);
    return left;
}

} // namespace turncloth

#endif
