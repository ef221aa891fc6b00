// Sheets on their way out: to the terminal, and as files.
//
//   sheet_output(orders)      where sheets go
//     .put(job)               makes one sheet and writes it; throws turncloth::error or file_error
//     .finish()               says where the files are; throws file_error where the terminal or pipe took not all
//   progress(total, orders)   tells on stderr how far a long table is done
#ifndef TURNCLOTH_EXAMPLES_SHEETS_WRITING_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_WRITING_HPP

#include "cloth_to_buy.hpp"
#include "command_line.hpp"
#include "files.hpp"
#include "jobs.hpp"
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/json.hpp>

#include <unistd.h>

#include <chrono>
#include <cstddef>
#include <cstdio>
#include <filesystem>
#include <string>
#include <system_error>
#include <variant>
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
    }

    void put(const job& j) {
        std::visit([&](const auto& finished) { put(j, finished); }, j.size);
    }

    void finish() {
        if (!orders_.out.empty() && !orders_.quiet)
            print("\nIn " + orders_.out + ": " + counted(sheets_, "sheet") + " (.txt) and " +
                  counted(drawings_, "drawing") + " (.svg)\n");
        if (std::fflush(stdout) != 0 || std::ferror(stdout) != 0)
            throw file_error("write", "the standard output", last_error());
    }

private:
    template <length_unit Unit>
    void put(const job& j, const finished_size<Unit>& finished) {
        const cloth_sold<Unit> cloth = cloth_asked_for<Unit>();
        sheet<Unit> s = sheet_for(j.project->which, finished, j.thickness, cloth, graduation<Unit>());
        const std::vector<sheet_cloth<Unit>> lays = add_cloth(s, cloth, j.project->hangs);
        if (orders_.most_layers > 0)
            s.bulk = bulk_warnings(s, orders_.most_layers);
        if (!j.name.empty())
            s.name = j.name + ": " + s.name;
        const std::string text = to_text(s, orders_.by);
        if (!orders_.quiet)
            print((sheets_ > 0 ? "\n" + std::string(72, '-') + "\n\n" : "") + text);
        ++sheets_;
        if (orders_.out.empty())
            return;
        // A dot parts the names, as no slug holds one; so no two sheets can write the same file.
        const std::string wanted = slug(j.name);
        const fs::path stem = fs::path(orders_.out) / names_.next(wanted.empty() ? j.file_name : wanted);
        write_file(with(stem, ".txt"), text);
        if (orders_.json)
            write_file(with(stem, ".json"), to_json(s).dump(2) + "\n");
        for (const sheet_piece<Unit>& p : s.pieces) {
            write_file(with(stem, "." + slug(p.made_from.name()) + ".svg"),
                       to_svg(page_of(p, orders_.by, {.project = s.name, .on = paper_for<Unit>()})));
            ++drawings_;
        }
        // Left-overs are kept that would make another pocket.
        const length<Unit> kept_from = by_edition<Unit>(6_in, 15_cm);
        for (const sheet_cloth<Unit>& lay : lays) {
            write_file(with(stem, ".lay." + slug(lay.material) + ".svg"),
                       to_svg(page_of(lay, orders_.by, {.project = s.name, .on = paper_for<Unit>()},
                                      {.across = kept_from, .along = kept_from})));
            ++drawings_;
        }
    }

    /// Of the ruler in the unit of the size: what is shown in the other unit is converted.
    template <length_unit Unit>
    length<Unit> graduation() const {
        if (orders_.exact)
            return {};
        return metric_unit<Unit> ? as<Unit>(orders_.by.centimetres) : as<Unit>(orders_.by.inches);
    }

    template <length_unit Unit>
    paper paper_for() const {
        const bool metric = orders_.paper.empty() ? metric_unit<Unit> : slug(orders_.paper) == "a4";
        return metric ? paper::a4 : paper::letter;
    }

    template <length_unit Unit>
    cloth_sold<Unit> cloth_asked_for() const {
        cloth_sold<Unit> cloth;
        if (!orders_.cloth_width.empty())
            cloth.width = read_length<Unit>(orders_.cloth_width);
        return cloth;
    }

    static fs::path with(fs::path stem, const std::string& end) { return stem += end; }
    static std::string counted(std::size_t n, const char* what) {
        return std::to_string(n) + " " + what + (n == 1 ? "" : "s");
    }
    static void print(const std::string& text) {
        if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size())
            throw file_error("write", "the standard output", last_error());
    }

    const orders& orders_;
    unused_names names_;
    std::size_t sheets_ = 0, drawings_ = 0;
};

/// A line at every hundredth row, and after every second of a slow one; nothing where nobody looks.
class progress {
public:
    progress(std::size_t total, const orders& o) : total_(total), told_(o.progress || ::isatty(STDERR_FILENO) == 1) {}

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
