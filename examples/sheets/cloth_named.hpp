// What is typed of one cloth: "canvas: 40 x 30 in", "film: 36 in".
//
//   said_of_one_cloth(text)      its name, and what is said of it; nothing where no name is given
#ifndef TURNCLOTH_EXAMPLES_SHEETS_CLOTH_NAMED_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_CLOTH_NAMED_HPP

#include <cstddef>
#include <optional>
#include <string>

namespace allotment {

struct cloth_named {
    std::string material; ///< empty where the colon comes first
    std::string rest;
};

inline std::optional<cloth_named> said_of_one_cloth(const std::string& text) {
    const std::size_t colon = text.rfind(':');
    if (colon == std::string::npos)
        return {};
    const std::string before = text.substr(0, colon);
    return cloth_named{before.substr(0, before.find_last_not_of(" \t") + 1), text.substr(colon + 1)};
}

} // namespace allotment

#endif
