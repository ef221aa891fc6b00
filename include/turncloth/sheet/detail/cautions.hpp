// What can hurt in the making of a sheet, and where that is asked of others.
//
//   add_cautions(draft)     the project's own first, then those of its parts, each once
#ifndef TURNCLOTH_SHEET_DETAIL_CAUTIONS_HPP
#define TURNCLOTH_SHEET_DETAIL_CAUTIONS_HPP

#include <turncloth/notions/caution.hpp>
#include <turncloth/sheet/detail/draft.hpp>

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth {

namespace detail {

inline void say_once(std::vector<std::string>& all, std::string_view sentence) {
    if (std::find(all.begin(), all.end(), sentence) == all.end())
        all.emplace_back(sentence);
}

template <length_unit Unit>
void add_cautions(sheet_draft<Unit>& draft) {
    std::vector<std::string>& all = draft.made().cautions;
    for (const std::string& sentence : draft.from().cautions())
        say_once(all, sentence);
    for (const sheet_piece<Unit>& s : draft.made().pieces)
        if (s.made_from.is_film())
            say_once(all, caution::film_and_iron);
    for (const notion<Unit>& n : draft.made().notions)
        for (const std::string& sentence : n.cautions())
            say_once(all, sentence);
    say_once(all, caution::cutting);
    say_once(all, "Local codes, the makers' instructions and licensed practice go before this sheet.");
}

} // namespace detail

} // namespace turncloth

#endif
