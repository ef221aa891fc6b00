// must-say: keep_the_name_in_a_table_of_words_that_outlives_it_or_write_a_literal
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
label pocket = words().keep("pocket 3");
#else
words table;
label pocket = table.keep("pocket 3");
#endif
