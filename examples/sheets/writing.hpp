// Sheets on their way out: to the terminal, and as files.
//
//   sheet_output(orders)      where sheets go
//     .put(name, sheet, rule) prints one sheet, ruled off from what came before, and writes its files; throws file_error
//     .finish()               says where the files are
//   progress(total, orders)   tells on stderr how far a long table is done
#ifndef TURNCLOTH_EXAMPLES_SHEETS_WRITING_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_WRITING_HPP

#include "../command/console.hpp"
#include "../command/files.hpp"
#include "command_line.hpp"
#include "worked_out.hpp"

#include <unistd.h>

#include <chrono>
#include <cstddef>
#include <cstdio>
#include <string>
#include <system_error>
#include <vector>

namespace allotment {

class sheet_output {
public:
    explicit sheet_output(const orders& o) : orders_(o) {
        if (o.out.empty())
            return;
        std::error_code why;
        fs::create_directories(o.out, why);
        if (why)
            throw file_error("make the folder", o.out, why);
        remove_leftovers(o.out);
    }

    void put(const std::string& name, const worked_out_sheet& s, bool rule) {
        if (!orders_.quiet)
            print((rule ? "\n" + std::string(72, '-') + "\n\n" : "") + s.text);
        std::vector<file_to_write> files;
        for (const file_of_sheet& f : s.files)
            files.push_back({fs::path(orders_.out) / (name + f.ending), f.content});
        write_files(files, {.replace = orders_.replace, .input = orders_.table});
        const bool printed = orders_.print != nullptr;
        if ((orders_.handout || printed) && sheets_ == 0)
            first_handout_ = (fs::path(orders_.out) / name).string().append(printed ? printed_ending : handout_ending);
        ++sheets_;
        drawings_ += s.drawings;
    }

    /// The last line names what a maker opens.
    void finish() {
        if (orders_.out.empty() || orders_.quiet)
            return;
        print("\nIn " + orders_.out + ": " + counted(sheets_, "sheet") + " (.txt) and " +
              counted(drawings_, "drawing") + " (.svg)\n");
        if (!first_handout_.empty())
            print("To print and to follow: " + first_handout_ +
                  (sheets_ > 1 ? " and " + std::to_string(sheets_ - 1) + " more" : "") + "\n");
    }

private:
    static std::string counted(std::size_t n, const char* what) {
        return std::to_string(n) + " " + what + (n == 1 ? "" : "s");
    }

    const orders& orders_;
    std::size_t sheets_ = 0, drawings_ = 0;
    std::string first_handout_{};
};

/// A line at every hundredth row, and after every second of a slow one; nothing where nobody looks.
class progress {
public:
    progress(std::size_t total, const orders& o)
        : total_(total), told_(!o.table.empty() && (o.progress || ::isatty(STDERR_FILENO) == 1)) {}

    void done(std::size_t rows) {
        const auto now = clock::now();
        if (!told_ || (rows % 100 != 0 && now - last_ < std::chrono::seconds(1)))
            return;
        last_ = now;
        std::fprintf(stderr, "%zu of %zu rows done\n", rows, total_);
    }

private:
    using clock = std::chrono::steady_clock;
    std::size_t total_;
    bool told_;
    clock::time_point last_ = clock::now();
};

} // namespace allotment

#endif
