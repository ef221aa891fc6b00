// What a handout is to say beside its sheet.
//
//   handout_options      the ruler; the author, the licence, the date; the language; whether workings are shown
//
//   handout_options{.by = ..., .words = german()}     all of it in German (handout/german.hpp)
//
//   const handout_options o{.by = inch_ruler(8), .author = "The allotment society", .workings = false};
#ifndef TURNCLOTH_HANDOUT_OPTIONS_HPP
#define TURNCLOTH_HANDOUT_OPTIONS_HPP

#include <turncloth/measure/language.hpp>
#include <turncloth/measure/write.hpp>

#include <string>

namespace turncloth {

struct handout_options {
    ruler by{};
    std::string author{}, licence{}, date{}; ///< as they are to be printed; each is left out where it is empty
    std::string language = "en"; ///< that names and the project's own sentences are written in; of `words`, where given
    turncloth::language words{}; ///< what all else is said in: English, or german() of handout/german.hpp
    bool workings = true;        ///< how each figure was found, at the end
};

} // namespace turncloth

#endif
