// must-say: name_the_lists_first_since_a_mapping_only_refers_to_them
#include <turncloth.hpp>

#include <vector>

using namespace turncloth;

std::vector<length<inch>> spans_of_the_back() { return {4_in, 5_in}; }

length<inch> fullness() {
    const std::vector<length<inch>> pocket = {6_in, 7_in};
#ifdef MISUSE
    return listed_mapping<inch>(pocket, spans_of_the_back()).surplus();
#else
    const std::vector<length<inch>> back = spans_of_the_back();
    return listed_mapping<inch>(pocket, back).surplus();
#endif
}
