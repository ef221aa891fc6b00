// What is to be made: one sheet each.
//
//   job                          a project, its finished size, and what distinguishes it
//   wanted_sheet                 a job, or why there is none
//   job_table(rows, one_order)   a table whose first row names its columns; throws heading_error
//     .job_of(row)               the job of any further row; throws row_error, which names the row and the column
//     .wanted()                  of all further rows
#ifndef TURNCLOTH_EXAMPLES_SHEETS_JOBS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_JOBS_HPP

#include "checks.hpp"
#include "columns.hpp"
#include "names.hpp"
#include "projects.hpp"
#include "table_file.hpp"
#include <turncloth/design/project_design.hpp>
#include <turncloth/panel/typed_size.hpp>
#include <turncloth/sheet/order.hpp>

#include <array>
#include <charconv>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
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
    /// Copies are counted in an order alone.
    job_table(const std::vector<table_row>& rows, bool one_order) : columns_(rows, names, 3) {
        if (!one_order && columns_.has(column::copies))
            throw heading_error("its column \"copies\" is for --one-order, which lays all of them together",
                                {.kind = fault::disagree, .what = "a column", .where = "copies"});
    }

    std::span<const table_row> rows() const { return columns_.rows(); }

    job job_of(const table_row& r) const {
        columns_.require_sound(r);
        const known_project* project = find_project(columns_.needed(r, column::project));
        if (project == nullptr)
            columns_.refuse(r, column::project,
                            "there is no project " + turncloth::detail::in_quotes(columns_.field(r, column::project)) +
                                ": there are " + project_keys(),
                            {.kind = fault::missing, .what = "a project"});
        const std::string name = columns_.field(r, column::name), from_name = slug(name);
        return {.project = project,
                .size = size_of(r),
                .thickness = thickness_of(r),
                .name = name,
                .file_name =
                    from_name.empty() ? std::string(project->key) + "-row-" + std::to_string(r.number) : from_name,
                .copies = copies_of(r)};
    }

    /// Names of files are given out here, before any sheet is made, so that a part of the table has those of the whole.
    std::vector<wanted_sheet> wanted() const {
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
};

} // namespace allotment

#endif
