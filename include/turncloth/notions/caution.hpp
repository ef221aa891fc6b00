// Cautions for work that can hurt, each with the work that it belongs to, so that it can stand beside that step.
//
//   caution::note                      a sentence and where it belongs; it is used as a text as it stands
//   caution::cutting  hot_iron  setting_eyelets  infants_and_animals  ...
//   caution::all                       every one of them, in the order of the work
//
//   for (const caution::note& n : caution::all)
//       if (n.at == caution::work::pressing)
//           out << n.sentence;
//
// They are reminders, not rules: where a law, a standard or a licensed trade has something to say, that holds. A
// standard is named where one is known, without its edition: ask for the one in force.
#ifndef TURNCLOTH_NOTIONS_CAUTION_HPP
#define TURNCLOTH_NOTIONS_CAUTION_HPP

#include <array>
#include <string_view>

namespace turncloth::caution {

/// What is being done, or done with, where a caution is of use.
enum class work : unsigned char {
    buying, ///< materials are chosen
    cutting,
    pinning,
    pressing,
    stitching,
    zippers, ///< cut to length, sewn in
    eyelets, ///< and snaps, and grommets
    filling,
    using_it ///< when it is made: hung up, tied, given away
};

/// One caution. `sentence` may be more than one; it ends with a full stop.
struct note {
    work at;
    std::string_view sentence;

    constexpr operator std::string_view() const { return sentence; }
};

// 16 CFR 1307.3 limits certain phthalates to 0.1 % in plasticised parts of toys and child-care articles.
inline constexpr note soft_film{work::buying,
                                "Soft plastic film may hold phthalates: for anything that a child will mouth, use film "
                                "that is sold as meeting the limits in force (USA: 16 CFR 1307)."};

// Common practice.
inline constexpr note cutting{work::cutting,
                              "Cut away from the hand that holds the rule, close a rotary cutter's guard at every "
                              "pause, and follow its maker's instructions."};

// Common practice.
inline constexpr note pins_and_needles{work::pinning,
                                       "Count pins and needles before and after: one that is left in the work wounds. "
                                       "Put none into film, where every hole stays; clip it."};

// Common practice.
inline constexpr note hot_iron{
    work::pressing, "An iron and its steam burn: stand it on its heel, keep the other hand out of the steam, "
                    "and never leave it on where children or animals are."};

// Common practice: wax melts, marks the iron and smokes.
inline constexpr note waxed_cloth{work::pressing,
                                  "Do not iron waxed cloth: hot wax burns and its fumes can catch fire. Crease it by "
                                  "hand or with a blunt tool."};

// Common practice: film melts, and bags of film smother.
inline constexpr note film_and_iron{work::pressing,
                                    "Press beside film, never on it, with a cool iron and no steam, in an aired room. "
                                    "Keep pieces of film away from small children, who can smother in them."};

// Common practice.
inline constexpr note film_fumes{work::stitching,
                                 "Sew film slowly, and cut it cold: a hot needle or blade melts it. Where heat must be "
                                 "used, open a window and keep out of the fumes."};

// Common practice; the maker's instructions hold.
inline constexpr note many_layers{work::stitching,
                                  "Many layers break a light needle, and its pieces fly: use a needle and a machine "
                                  "meant for them, turn the handwheel by hand over the thickest, and wear eye "
                                  "protection."};

// Common practice.
inline constexpr note needles_and_metal{work::zippers,
                                        "Turn the handwheel by hand where stitching crosses a zipper or meets metal: a "
                                        "needle that strikes it breaks and flies. Wear eye protection."};

// Common practice.
inline constexpr note zipper_ends{work::zippers,
                                  "Teeth that are cut off fly: wear eye protection. A tape end that is melted to seal "
                                  "it burns: let it cool before you touch it, and keep out of its fumes."};

// 29 CFR 1910.133(a) asks for eye protection with side protection where objects fly (read in summary).
inline constexpr note setting_eyelets{work::eyelets,
                                      "Wear eye protection with side shields when setting eyelets, snaps or grommets: "
                                      "rims and chips fly. At work, follow the local safety code (in the USA, 29 CFR "
                                      "1910.133)."};

// Fire codes for upholstery differ by place and by use; foam without treatment burns fast and its smoke is poisonous.
inline constexpr note filling{
    work::filling, "Foam and loose fillings burn fast, with poisonous smoke: use what meets the fire code of "
                   "your place for such a thing, and keep it away from flames and heaters."};

// Common practice: grain draws mice, sand leaks, and dust is breathed in.
inline constexpr note loose_filling{
    work::filling, "Pour loose filling outdoors or with a mask on, since its dust is breathed in; freeze "
                   "grain for some days first, as it draws moths and mice. What is heavy is lifted "
                   "with bent knees."};

// 16 CFR 1501 on small parts, for children under three (value from memory).
inline constexpr note small_parts{work::using_it,
                                  "Sliders, eyelets and other small parts choke toddlers: see that none can come off, "
                                  "and keep the thing from children under three (USA: 16 CFR 1501)."};

// Common practice: a maker's strap is tested by nobody; lifting gear has its own codes.
inline constexpr note loads{
    work::using_it,
    "No load is certified for a strap, for its stitching or for what it is sewn to. Try it low down, over "
    "something soft, with more than it will carry, look at its stitching before each use, and never carry or "
    "hang a person or an animal by it, nor anything over people: lifting has its own codes."};

// 16 CFR 1120 and ASTM F1816, EN 14682: children's clothing; ASTM F963, EN 71-1: cords of toys (value from memory). None is of
// bags, so the local standard on cords is to be asked.
inline constexpr note cords{work::using_it,
                            "A cord that hangs out catches, and a loop of it strangles: knot it so short that no loop "
                            "goes over a head. Follow the "
                            "standard on cords that is in force where it is used, which goes before the lengths here."};

// CPSC, safe sleep guidance and rule on crib bumpers; ASTM F1917 covers infant bedding. Animals: common practice.
inline constexpr note infants_and_animals{
    work::using_it,
    "Keep ties, loops, cords and soft pads away from infants, from every place where one sleeps, and from animals that "
    "are left alone: they strangle, smother, and are swallowed (USA: CPSC, and ASTM F1917 for infant bedding). Ask a "
    "doctor, a licensed carer or a veterinarian before making an exception."};

// 16 CFR 1120 and ASTM F1816 for outerwear; EN 14682 in Europe (its scope does not cover bags and bibs).
inline constexpr note ties_on_childrens_clothing{
    work::using_it,
    "Put no ties, cords or ribbons at the hood or neck of children's clothing; they catch and strangle. Elsewhere on "
    "it, follow the rules in force where it will be worn (USA: 16 CFR 1120 and ASTM F1816; Europe: EN 14682)."};

// Common practice at machines that turn.
inline constexpr note worn_at_machines{
    work::using_it,
    "Take off what is tied round you before you work at a machine that turns, a shredder or a mower: it draws in a "
    "tie, and whoever wears it."};

// Building and fire codes differ by place; hangings over a hearth, cooker or heater burn.
inline constexpr note hanging_up{
    work::using_it,
    "Fix what hangs so that a pull does not bring it down, clear of heaters, cookers and cot sides. In a public place "
    "ask for the fire code's rule on hangings, and have heavy ones fixed by a licensed person."};

inline constexpr std::array all = {
    soft_film,
    cutting,
    pins_and_needles,
    hot_iron,
    waxed_cloth,
    film_and_iron,
    film_fumes,
    many_layers,
    needles_and_metal,
    zipper_ends,
    setting_eyelets,
    filling,
    loose_filling,
    small_parts,
    loads,
    cords,
    infants_and_animals,
    ties_on_childrens_clothing,
    worn_at_machines,
    hanging_up,
};

} // namespace turncloth::caution

#endif
