// One operation in the order of making, and what it had to wait for.
//
//   struct making_step     the operation, its phase, and its needs
//   struct step_need       what had to come before, and why
//   text_of(why)           "the row runs over what is turned"
//
//   for (const making_step& s : steps_of(roll))              // order.hpp
//       for (const step_need& n : s.needs) std::puts(text_of(n.why).data());
#ifndef TURNCLOTH_MAKING_MAKING_STEP_HPP
#define TURNCLOTH_MAKING_MAKING_STEP_HPP

#include <turncloth/making/operations.hpp>

#include <string_view>
#include <vector>

namespace turncloth {

/// The phases of work, in their order.
enum class making_phase : unsigned char {
    alone,
    slit,
    hem_of_piece,
    joining,
    hem_of_base,
    seaming,
    enclosing,
    spot,
    rest
};

struct step_need {
    operation first{}; ///< what had to come before
    order_reason why = order_reason::asked;
};

struct making_step {
    operation what{};
    making_phase phase = making_phase::rest;
    std::vector<step_need> needs{};
};

constexpr std::string_view text_of(order_reason why) {
    switch (why) {
    case order_reason::walls_laid:
        return "the row goes through what is laid";
    case order_reason::before_covered:
        return "it is sewn before what it does not go through lies over or under it";
    case order_reason::turned_first:
        return "the row runs over what is turned";
    case order_reason::sewn_flat:
        return "the row runs in what is turned later";
    case order_reason::enclosed:
        return "what a turning encloses is laid and sewn before";
    case order_reason::outer_first:
        return "of two creases from one edge the outer comes first";
    case order_reason::corner_first:
        return "a corner is folded across before its edges";
    case order_reason::piece_ready:
        return "a piece is finished by itself before its seams";
    case order_reason::crossed:
        return "a seam that crosses the end of another comes after it";
    case order_reason::pressed_open:
        return "a seam is sewn before its allowances are turned along it";
    case order_reason::set_in:
        return "a seam is sewn before the zipper in its mouth";
    case order_reason::opened:
        return "what is turned out through a mouth is sewn up with that open";
    case order_reason::work_done:
        return "it is sewn before that";
    case order_reason::asked:
        break;
    }
    return "the designer asks for it";
}

} // namespace turncloth

#endif
