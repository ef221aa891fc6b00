// must-say: name_the_lists_first_since_a_mapping_only_refers_to_them
#include <turncloth.hpp>

#include <vector>

using namespace turncloth;

std::vector<place<short_piece, inch>> marks_of_the_back() { return {at<short_piece>(4_in), at<short_piece>(9_in)}; }

length<inch> fullness() {
    const std::vector pocket = {at<long_piece>(6_in), at<long_piece>(13_in)};
#ifdef MISUSE
    return listed_mapping<inch>(pocket, marks_of_the_back()).surplus();
#else
    const std::vector back = marks_of_the_back();
    return listed_mapping<inch>(pocket, back).surplus();
#endif
}
