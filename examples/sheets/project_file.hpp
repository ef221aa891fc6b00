// A project that its maker wrote as a file (design/json.hpp); project_made.hpp makes it at any size.
//
//   read_project_file(path)            the design; every fault is told, each on a line of its own
//
//   const project_design bag = read_project_file("bag.json");
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PROJECT_FILE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PROJECT_FILE_HPP

#include "../command/console.hpp"
#include "../command/files.hpp"
#include "../command/plain_text.hpp"
#include "project_made.hpp"
#include <turncloth/design/json.hpp>

#include <string>

namespace allotment {

/// Throws file_error where it is not read, and once every fault is told.
inline project_design read_project_file(const std::string& path) {
    const std::string text = require_text(path, read_file(path));
    const auto read = try_read_design(text);
    if (read)
        return *read;
    const auto& faults = read.refused().faults();
    for (const design_fault& f : faults)
        complain(path + ": " + to_text(f));
    throw file_error("use", path,
                     "it has " + std::to_string(faults.size()) + (faults.size() == 1 ? " fault" : " faults"));
}

} // namespace allotment

#endif
