// must-say: keep_the_name_in_a_table_of_words_that_outlives_it_or_write_a_literal
#include <turncloth.hpp>

using namespace turncloth;

#ifdef MISUSE
inline const finish<inch> hem(std::string_view("rolled hem"));
#else
inline const finish<inch> hem("rolled hem");
#endif
