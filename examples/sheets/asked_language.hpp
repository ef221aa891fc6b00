// What sheets, drawings and handouts are written in, as it is asked for.
//
//   read_language(tag)      English for "en" and for nothing, German for "de"
#ifndef TURNCLOTH_EXAMPLES_SHEETS_ASKED_LANGUAGE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_ASKED_LANGUAGE_HPP

#include "german_words.hpp"
#include "names.hpp"
#include <turncloth/handout/german.hpp>
#include <turncloth/panel/names.hpp>

#include <string>

namespace allotment {

/// Throws range_error for any other.
inline turncloth::language read_language(const std::string& tag) {
    if (slug(tag) == "de")
        return turncloth::german(own_words_in_german());
    if (!tag.empty() && slug(tag) != "en")
        throw turncloth::range_error("a sheet or a handout is written in en or de: there is no " +
                                         turncloth::detail::in_quotes(tag),
                                     {.kind = turncloth::fault::missing, .what = "a language"});
    return {};
}

} // namespace allotment

#endif
