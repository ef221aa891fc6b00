// must-say: give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it
#include <turncloth.hpp>

#include <algorithm>

using namespace turncloth;

length<inch> longest_term(const panel<inch>& piece) {
    length<inch> longest;
#ifdef MISUSE
    for (const auto& t : piece.width_working().terms())
        longest = std::max(longest, t.value());
#else
    const figure<inch> working = piece.width_working();
    for (const auto& t : working.terms())
        longest = std::max(longest, t.value());
#endif
    return longest;
}
