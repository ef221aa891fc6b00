// What is to be made: one sheet each.
//
//   job                          a project, its finished size, and what distinguishes it
//   wanted_sheet                 a job, or why there is none
//   job_table(rows, one_order, read)    a table whose first row names its columns; throws heading_error. `read` reads a project
//                              that a row names by its file, once for all of its rows
//     .job_of(row)               the job of any further row; throws row_error, which names the row and the column
//     .wanted()                  of all further rows
#ifndef TURNCLOTH_EXAMPLES_SHEETS_JOBS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_JOBS_HPP

#include "checks.hpp"
#include "columns.hpp"
#include "names.hpp"
#include "project_made.hpp"
#include "projects.hpp"
#include "table_file.hpp"
#include <turncloth/design/project_design.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/order.hpp>

#include <array>
#include <charconv>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <system_error>
#include <utility>
#include <vector>

namespace allotment {

struct job {
    const known_project* project;
    typed_size size;
    std::string thickness = {};                        ///< empty for the usual one
    std::string name = {};                             ///< empty, or whom or what it is for
    std::string file_name = {};                        ///< of all its files, before the first dot; no other job's
    std::shared_ptr<const project_design> design = {}; ///< of a project as a file; `project` is null then
    std::int64_t copies = 1;                           ///< in an order
};

struct wanted_sheet {
    std::string where; ///< the row or project, as a refusal begins
    std::optional<job> made_of{};
    std::string refusal{}; ///< where there is no job
};

class job_table {
public:
    using reader = std::function<project_design(const std::string& file)>;

    /// Copies are counted in an order alone. `read` throws as read_project_file.
    job_table(const std::vector<table_row>& rows, bool one_order, reader read)
        : columns_(rows, names, 3), read_(std::move(read)) {
        if (!one_order && columns_.has(column::copies))
            throw heading_error("its column \"copies\" is for --one-order, which lays all of them together",
                                {.kind = fault::disagree, .what = "a column", .where = "copies"});
    }

    std::span<const table_row> rows() const { return columns_.rows(); }

    job job_of(const table_row& r) {
        columns_.require_sound(r);
        const std::string asked = columns_.needed(r, column::project), name = columns_.field(r, column::name);
        job made{.project = find_project(asked),
                 .size = size_of(r),
                 .thickness = thickness_of(r),
                 .name = name,
                 .file_name = slug(name),
                 .copies = copies_of(r)};
        std::string own = asked;
        if (made.project == nullptr) {
            made.design = design_of(r, asked);
            made.size = in_unit_of(*made.design, made.size);
            own = slug(std::filesystem::path(asked).stem().string());
        }
        if (made.file_name.empty())
            made.file_name = (own.empty() ? "project" : own) + "-row-" + std::to_string(r.number);
        return made;
    }

    /// Names of files are given out here, before any sheet is made, so that a part of the table has those of the whole.
    std::vector<wanted_sheet> wanted() {
        std::vector<wanted_sheet> all;
        unused_names names_of_files;
        for (const table_row& r : rows()) {
            all.push_back({"row " + std::to_string(r.number) + ": "});
            try {
                job j = job_of(r);
                j.file_name = names_of_files.next(j.file_name);
                all.back().made_of = std::move(j);
            } catch (const row_error& refused) {
                all.back().refusal = refused.what();
            }
        }
        return all;
    }

private:
    static constexpr std::array<std::string_view, 6> names = {"project", "width",     "height",
                                                              "name",    "thickness", "copies"};
    struct column {
        enum : std::size_t { project, width, height, name, thickness, copies };
    };

    struct design_read {
        std::shared_ptr<const project_design> design{};
        std::string refusal{}; ///< where there is none: the rows below it need not read it again
    };

    /// A file is told of by its ending: what it is not named for is a mistyped project.
    std::shared_ptr<const project_design> design_of(const table_row& r, const std::string& asked) {
        if (!asked.ends_with(".json"))
            columns_.refuse(r, column::project,
                            "there is no project " + turncloth::detail::in_quotes(asked) + ": there are " +
                                project_keys() + ", and project files, which end in .json",
                            {.kind = fault::missing, .what = "a project"});
        if (!columns_.field(r, column::thickness).empty())
            columns_.refuse(r, column::thickness, "a project file says its own",
                            {.kind = fault::unsuitable, .what = "a thickness"});
        const auto [found, is_new] = designs_.try_emplace(asked);
        design_read& file = found->second;
        if (is_new)
            try {
                file.design = std::make_shared<const project_design>(read_(asked));
            } catch (const std::runtime_error& refused) {
                file.refusal = refused.what();
            }
        if (file.design == nullptr)
            columns_.refuse(r, column::project, file.refusal, {.kind = fault::unreadable, .what = "a project file"});
        return file.design;
    }

    typed_size size_of(const table_row& r) const {
        const std::string width = columns_.needed(r, column::width), height = columns_.needed(r, column::height);
        try {
            return read_sides(width, height);
        } catch (const side_error& refused) {
            columns_.refuse(r, refused.which() == side_of_size::width ? column::width : column::height, refused.why(),
                            refused.facts());
        }
    }

    std::string thickness_of(const table_row& r) const {
        std::string text = columns_.field(r, column::thickness);
        try {
            if (!text.empty())
                check_thickness(text);
        } catch (const error& refused) {
            columns_.refuse(r, column::thickness, refused.what(), refused.facts());
        }
        return text;
    }

    std::int64_t copies_of(const table_row& r) const {
        const std::string text = columns_.field(r, column::copies);
        std::int64_t n = 1;
        const auto [end, why] = std::from_chars(text.data(), text.data() + text.size(), n);
        if (!text.empty() && (why != std::errc() || end != text.data() + text.size() || n < 1 || n > most_copies))
            columns_.refuse(r, column::copies,
                            "a whole number from 1 to " + std::to_string(most_copies) + " is wanted: it was " +
                                turncloth::detail::in_quotes(text),
                            {.kind = fault::unreadable, .what = "the number of copies"});
        return n;
    }

    named_columns columns_;
    reader read_;
    std::map<std::string, design_read> designs_{}; ///< by file
};

} // namespace allotment

#endif
