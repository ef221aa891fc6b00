// Cautions for work that can hurt, as constant sentences that a sheet prints.
//
//   caution::setting_eyelets  near_infants  ties_near_animals  hanging_up  ...      each a std::string_view
//
//   out << caution::setting_eyelets;   // where a sheet has eyelets
//
// They are reminders, not rules: where a law, a standard or a licensed trade has something to say, that holds. A
// standard is named where one is known, without its edition: ask for the one in force.
#ifndef TURNCLOTH_NOTIONS_CAUTION_HPP
#define TURNCLOTH_NOTIONS_CAUTION_HPP

#include <string_view>

namespace turncloth::caution {

// 29 CFR 1910.133(a) asks for eye protection with side protection where objects fly (read in summary).
inline constexpr std::string_view setting_eyelets = "Wear eye protection with side shields when setting eyelets, snaps "
                                                    "or grommets: rims and chips fly. At work, follow "
                                                    "the local safety code (in the USA, 29 CFR 1910.133).";

// 16 CFR 1120 and ASTM F1816 for outerwear; EN 14682 in Europe (its scope does not cover bags and bibs).
inline constexpr std::string_view ties_on_childrens_clothing =
    "Put no ties, cords or ribbons at the hood or neck of children's clothing; they catch and strangle. Elsewhere on "
    "it, "
    "follow the rules in force where it will be worn (USA: 16 CFR 1120 and ASTM F1816; Europe: EN 14682).";

// CPSC, safe sleep guidance and rule on crib bumpers; ASTM F1917 covers infant bedding.
inline constexpr std::string_view near_infants =
    "Keep ties, ribbons, loops, pads and cushions out of the reach of infants and out of every place where one sleeps: "
    "a "
    "sleeping infant needs a firm flat surface and nothing soft or loose on it (USA: CPSC, and ASTM F1917 for infant "
    "bedding). Ask a doctor or a licensed carer before making an exception.";

// Common practice.
inline constexpr std::string_view ties_near_animals =
    "Animals chew and swallow ribbons, cords and loops, and catch claws in loose weave: leave ties off what an animal "
    "is "
    "left alone with, and ask the shelter or a veterinarian what they allow.";

// 16 CFR 1307.3 limits certain phthalates to 0.1 % in plasticised parts of toys and child-care articles.
inline constexpr std::string_view soft_film = "Soft plastic film may hold phthalates: for anything a child will mouth, "
                                              "use film that is sold as meeting the limits "
                                              "in force (USA: 16 CFR 1307).";

// Common practice: film melts, and bags of film smother.
inline constexpr std::string_view film_and_iron =
    "Press beside film, never on it, with a cool iron and no steam, in an aired room. Keep pieces of film from small "
    "children: they smother.";

// Common practice.
inline constexpr std::string_view needles_and_metal = "Turn the wheel by hand where stitching crosses a zipper or "
                                                      "meets metal: a needle that strikes it breaks and flies. "
                                                      "Wear eye protection.";

// Common practice; the maker's instructions hold.
inline constexpr std::string_view cutting =
    "Cut away from the hand that holds the rule, close a rotary cutter's guard at every pause, and follow its maker's "
    "instructions.";

// Building and fire codes differ by place; hangings over a hearth, cooker or heater burn.
inline constexpr std::string_view hanging_up =
    "Fix what hangs so that a pull does not bring it down, clear of heaters, cookers and cot sides. In a public place "
    "ask "
    "for the fire code's rule on hangings, and have heavy ones fixed by a licensed person.";

} // namespace turncloth::caution

#endif
