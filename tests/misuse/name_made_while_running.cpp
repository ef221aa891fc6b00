// must-say: keep_the_name_in_a_table_of_words_that_outlives_it_or_write_a_literal
#include <turncloth.hpp>

using namespace turncloth;

figure<inch> with_pocket(int number, words& kept) {
#ifdef MISUSE
    static_cast<void>(kept);
    return figure<inch>().plus(10_in, "pocket " + std::to_string(number));
#else
    return figure<inch>().plus(10_in, kept.keep("pocket " + std::to_string(number)));
#endif
}
