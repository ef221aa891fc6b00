// What the example programs share of a command line.
//
//   exit_status              what a program ends with
//   parsed<Orders>           the orders, or none and the exit status where there is nothing more to do
//   version_text(program)    "turncloth_sheets 1.2.0"
//   refused_by(read)         a check of CLI11's: the reason why read(text) refuses a text
//   named_units()            for --units
#ifndef TURNCLOTH_EXAMPLES_COMMAND_ASKED_HPP
#define TURNCLOTH_EXAMPLES_COMMAND_ASKED_HPP

#include <turncloth/measure/error.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/version.hpp>

#include <CLI/CLI.hpp>

#include <map>
#include <optional>
#include <string>

namespace allotment {

namespace exit_status {
inline constexpr int all_done = 0, not_made = 1, wrong_command = 2, file_trouble = 3;
}

template <class Orders>
struct parsed {
    std::optional<Orders> wanted;
    int status = exit_status::all_done; ///< where nothing is wanted
};

inline std::string version_text(const std::string& program) {
    using turncloth::version;
    return program + " " + std::to_string(version.major_number) + "." + std::to_string(version.minor_number) + "." +
           std::to_string(version.patch_number);
}

/// Gives CLI11 the reason why a text is refused, or nothing.
template <class Read>
CLI::Validator refused_by(Read read) {
    return CLI::Validator(
        [read](const std::string& text) {
            try {
                return read(text), std::string();
            } catch (const turncloth::error& refused) {
                return std::string(refused.what());
            }
        },
        "");
}

inline std::map<std::string, turncloth::units_shown> named_units() {
    using turncloth::units_shown;
    return {{"inches", units_shown::inches}, {"centimetres", units_shown::centimetres}, {"both", units_shown::both}};
}

} // namespace allotment

#endif
