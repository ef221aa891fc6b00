// A sheet as plain text, to be printed or pasted.
//
//   to_text(sheet)           inches and centimetres, to 1/16 in and 0.1 cm
//   to_text(sheet, ruler)    the units and graduations of a ruler (measure/write.hpp)
//   to_text(sheet, ruler, german())     in that language (measure/language.hpp, handout/german.hpp)
//   to_text(notion, ruler, german())    one notion alone, as a sheet has it, after an empty line
//
//   std::puts(to_text(sheet_of(roll), {.shows = units_shown::centimetres}).c_str());
//
// Each figure is rounded by itself from the exact length; each working is exact and in the project's own unit; where what
// is printed is to add up, the sheet is worked out on the ruler (on_ruler.hpp). Every line goes through fit_to_print
// (measure/printable.hpp), so no name makes a line of its own or drives a terminal.
#ifndef TURNCLOTH_SHEET_TEXT_HPP
#define TURNCLOTH_SHEET_TEXT_HPP

#include <turncloth/sheet/detail/its_ruler.hpp> // of drawings too
#include <turncloth/sheet/detail/kinds.hpp>
#include <turncloth/sheet/sheet.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/sheet/detail/writing.hpp>
#endif

#include <string>

namespace turncloth {

/// Throws range_error for a ruler whose graduation is not above zero.
template <detail::compiled_unit Unit>
std::string to_text(const sheet<Unit>& s, const ruler& by = {}, const language& words = {});
template <detail::compiled_unit Unit>
std::string to_text(const notion<Unit>& n, const ruler& by = {}, const language& words = {});

#ifndef TURNCLOTH_COMPILED
template <detail::compiled_unit Unit>
std::string to_text(const sheet<Unit>& s, const ruler& by, const language& words) {
    const detail::speaking in(words);
    return detail::sheet_writer<Unit>(s, detail::read_in(by, &words)).write();
}
template <detail::compiled_unit Unit>
std::string to_text(const notion<Unit>& n, const ruler& by, const language& words) {
    const detail::speaking in(words);
    detail::line_writer<Unit> alone(detail::read_in(by, &words));
    alone.write(n);
    return alone.written();
}
#endif

TURNCLOTH_ONCE(std::string to_text(const sheet<inch>&, const ruler&, const language&));
TURNCLOTH_ONCE(std::string to_text(const sheet<centimetre>&, const ruler&, const language&));
TURNCLOTH_ONCE(std::string to_text(const notion<inch>&, const ruler&, const language&));
TURNCLOTH_ONCE(std::string to_text(const notion<centimetre>&, const ruler&, const language&));

} // namespace turncloth

#endif
