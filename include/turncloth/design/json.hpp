// A design as a JSON file, and one back.
//
//   read_design(text)     the design; throws design_error with every fault found, each with its place
//   try_read_design(text) the design, or the faults as a value
//   to_json(design)       nlohmann::ordered_json, which read_design reads back equal
//
//   const project_design bag = read_design(text_of_file);
//   std::puts(to_json(bag).dump(2).c_str());
//
// Expressions are texts, or whole numbers as they are: "finished width / 2", 4. A form is an object whose "is" names it:
// {"is": "seam", "allowance": "1/2 in"}. design/project_design.schema.json describes such files; schema.hpp writes it.
//
// Included by itself; it needs the header of JSON for Modern C++ (Debian: nlohmann-json3-dev), the library does not.
#ifndef TURNCLOTH_DESIGN_JSON_HPP
#define TURNCLOTH_DESIGN_JSON_HPP

#include <turncloth/design/project_design.hpp>
#include <turncloth/measure/outcome.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/design/detail/fault_places.hpp>
#include <turncloth/design/detail/json_reader.hpp>
#include <turncloth/design/detail/json_writer.hpp>
#include <turncloth/design/faults.hpp>
#endif

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

TURNCLOTH_INLINE nlohmann::ordered_json to_json(const project_design& d);

/// Throws design_error. Time grows with the text and its faults.
TURNCLOTH_INLINE project_design read_design(std::string_view text);

/// Throws nothing of turncloth's. Without exceptions, an expression that cannot be read goes to the program's own
/// boost::throw_exception, as elsewhere.
TURNCLOTH_INLINE outcome<project_design, design_error> try_read_design(std::string_view text);

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE nlohmann::ordered_json to_json(const project_design& d) { return detail::design_writer::written(d); }

namespace detail {

inline outcome<project_design, design_error> design_read(std::string_view text) {
    std::vector<design_fault> faults;
    const json read = json_of_file(text, faults);
    project_design d;
    if (faults.empty())
        d = design_reader(faults).read(read);
    // What could not be read is not there, so that it is named once.
    const fault_places unread(faults);
    for (design_fault& f : faults_of(d))
        if (!unread.touches(f.where))
            faults.push_back(std::move(f));
    if (!faults.empty())
        return design_error(std::move(faults));
    return d;
}

} // namespace detail

TURNCLOTH_INLINE project_design read_design(std::string_view text) {
    outcome<project_design, design_error> read = detail::design_read(text);
    if (!read)
        detail::refuse<design_error>(read.refused());
    return *std::move(read);
}

TURNCLOTH_INLINE outcome<project_design, design_error> try_read_design(std::string_view text) {
#ifdef BOOST_NO_EXCEPTIONS
    return detail::design_read(text);
#else
    try {
        return detail::design_read(text);
    } catch (const error& refused) {
        return design_error(std::vector<design_fault>{{"", refused.what(), {}}});
    }
#endif
}
#endif

} // namespace turncloth

#endif
