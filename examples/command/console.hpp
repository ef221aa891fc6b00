// What a program says, and how it ends.
//
//   at_work(argc, argv, "turncloth_sheets", run)     the exit status of run(argc, argv)
//   print(text)                                      on the standard output; throws file_error where it is not taken
//   complain(what)                                   one line on the standard error, after the program's name
//   say(app, ended)                                  what CLI11 says where there is nothing more to do
//
//   int main(int argc, char** argv) { return allotment::at_work(argc, argv, "turncloth_sheets", run); }
//
// What people and files gave is in what is said, so every line of it goes through fit_to_print: none of it drives a
// terminal, and none forges a line of a complaint.
#ifndef TURNCLOTH_EXAMPLES_COMMAND_CONSOLE_HPP
#define TURNCLOTH_EXAMPLES_COMMAND_CONSOLE_HPP

#include "asked.hpp"
#include "files.hpp"
#include <turncloth/measure/printable.hpp>

#include <CLI/CLI.hpp>

#include <csignal>
#include <cstdio>
#include <exception>
#include <sstream>
#include <string>
#include <string_view>

namespace allotment {

namespace detail {

inline const char* program_name = "";

/// Its lines stay lines.
inline std::string lines_fit_to_print(std::string_view text) {
    std::string all;
    for (std::size_t end = 0; !text.empty(); text.remove_prefix(end)) {
        end = text.find('\n');
        all += turncloth::fit_to_print(text.substr(0, end));
        if (end != std::string_view::npos)
            all += '\n';
        end = end == std::string_view::npos ? text.size() : end + 1;
    }
    return all;
}

} // namespace detail

inline void complain(const std::string& what) {
    std::fprintf(stderr, "%s: %s\n", detail::program_name, turncloth::fit_to_print(what).c_str());
}

inline void print(std::string_view text) {
    const std::string shown = detail::lines_fit_to_print(text);
    if (std::fwrite(shown.data(), 1, shown.size(), stdout) != shown.size())
        throw file_error("write", "the standard output", last_error());
}

/// Help and the version are printed, all else is a complaint; the exit status.
inline int say(const CLI::App& app, const CLI::ParseError& ended) {
    std::ostringstream out, err;
    const bool asked = app.exit(ended, out, err) == 0;
    print(out.str());
    std::fputs(detail::lines_fit_to_print(err.str()).c_str(), stderr);
    return asked ? exit_status::all_done : exit_status::wrong_command;
}

/// Whatever `run` printed has arrived where it says that all is done.
template <class Run>
int at_work(int argc, char** argv, const char* name, Run run) {
    detail::program_name = name;
    remove_unfinished_on_signals();
    for (const int signal : {SIGPIPE, SIGXFSZ}) // every write is looked at, and says why it failed
        std::signal(signal, SIG_IGN);
    int status = exit_status::file_trouble;
    try {
        status = run(argc, argv);
    } catch (const std::exception& trouble) {
        complain(trouble.what());
    }
    if (std::fflush(stdout) == 0 && std::ferror(stdout) == 0)
        return status;
    if (status != exit_status::file_trouble)
        complain(file_error("write", "the standard output", last_error()).what());
    return exit_status::file_trouble;
}

} // namespace allotment

#endif
