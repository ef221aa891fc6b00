// What is wrong with steps in the designer's own words.
//
//   handwork_faults(design, found)      adds to what was found
//
//   std::vector<making_fault> found;
//   handwork_faults(tote, found);
#ifndef TURNCLOTH_MAKING_DETAIL_HANDWORK_FAULTS_HPP
#define TURNCLOTH_MAKING_DETAIL_HANDWORK_FAULTS_HPP

#include <turncloth/making/operations.hpp>
#include <turncloth/measure/printable.hpp>

#include <cstddef>
#include <cstdint>
#include <set>
#include <string>
#include <vector>

namespace turncloth::detail {

/// Of a making<Unit>, whose own faults these are among.
template <class Making>
void handwork_faults(const Making& design, std::vector<making_fault>& found) {
    const std::string what = "a step in the designer's own words", words = "the words of a step",
                      parts = "the parts of a step";
    for (std::size_t i = 0; i < design.handworks().size(); ++i) {
        const handwork& h = design.handworks()[i];
        const auto fault_is = [&](const std::string& sentence, refusal facts) {
            facts.index = i;
            found.push_back({what + sentence, std::move(facts)});
        };
        const std::size_t most = Making::most_of_handwork;
        if (fit_to_print(h.says).find_first_not_of(' ') == std::string::npos)
            fault_is(" has none", {.kind = fault::missing, .what = words});
        if (h.says.size() > most)
            fault_is(" has at most " + std::to_string(most) + " bytes: it has " + std::to_string(h.says.size()),
                     {.kind = fault::does_not_fit,
                      .what = words,
                      .given = amount_of(static_cast<std::int64_t>(h.says.size())),
                      .most = amount_of(static_cast<std::int64_t>(most))});
        if (h.pieces.empty())
            fault_is(" names no part", {.kind = fault::missing, .what = parts});
        std::set<cut_part> named;
        for (const cut_part& p : h.pieces)
            if (!design.has(p))
                fault_is(" names a part, or a copy of one, that was not added",
                         {.kind = fault::missing, .what = parts});
            else if (!named.insert(p).second)
                fault_is(" names " + name_of(design, p) + " twice",
                         {.kind = fault::repeated, .what = parts, .where = name_of(design, p)});
    }
}

} // namespace turncloth::detail

#endif
