// What is to be made: one sheet each.
//
//   job                          a project, its finished size, and what distinguishes it
//   wanted_sheet                 a job, or why there is none
//   job_table(rows)              a table whose first row names its columns; throws heading_error
//     .job_of(row)               the job of any further row; throws row_error, which names the row and the column
//     .wanted()                  of all further rows
//
// Text is looked at where it enters, here: no field that is used holds what is unfit to print, or is too long.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_JOBS_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_JOBS_HPP

#include "../command/plain_text.hpp"
#include "checks.hpp"
#include "names.hpp"
#include "projects.hpp"
#include "table_file.hpp"
#include <turncloth/design/project_design.hpp>
#include <turncloth/panel/typed_size.hpp>

#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
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
};

struct wanted_sheet {
    std::string where; ///< the row or project, as a refusal begins
    std::optional<job> made_of{};
    std::string refusal{}; ///< where there is no job
};

class heading_error : public error {
public:
    using error::error;
};

class row_error : public error {
public:
    /// `facts` say what is wrong; the row is their index, and its column where they are.
    row_error(std::size_t row, const std::string& why, refusal facts)
        : error("row " + std::to_string(row) + why, at(row, std::move(facts))) {}

private:
    static refusal at(std::size_t row, refusal facts) {
        facts.index = row;
        return facts;
    }
};

class job_table {
public:
    explicit job_table(const std::vector<table_row>& rows) : rows_(rows) {
        if (rows.empty())
            throw heading_error("it is empty: the first row must name the columns project, width and height",
                                {.kind = fault::missing, .what = "the first row"});
        if (!rows[0].wrong.empty())
            throw heading_error("in the first row, " + rows[0].wrong,
                                {.kind = fault::unreadable, .what = "the first row"});
        for (std::size_t i = 0; i < names.size(); ++i)
            columns_[i] = find(names[i]);
        for (const column c : {column::project, column::width, column::height})
            if (!at(c))
                throw heading_error("its first row names no column \"" + std::string(name_of(c)) +
                                        "\": it must name project, width and height",
                                    {.kind = fault::missing, .what = "a column", .where = std::string(name_of(c))});
    }

    std::span<const table_row> rows() const { return std::span(rows_).subspan(1); }

    job job_of(const table_row& r) const {
        if (!r.wrong.empty())
            throw row_error(r.number, ": " + r.wrong, {.kind = fault::unreadable, .what = "a row"});
        if (r.fields.size() > rows_[0].fields.size())
            throw row_error(r.number,
                            ": it has " + std::to_string(r.fields.size()) + " fields, more than the " +
                                std::to_string(rows_[0].fields.size()) + " columns of the first row",
                            {.kind = fault::too_large,
                             .what = "the number of fields",
                             .given = amount_of(r.fields.size()),
                             .most = amount_of(rows_[0].fields.size())});
        const known_project* project = find_project(needed(r, column::project));
        if (project == nullptr)
            refuse(r, column::project,
                   "there is no project " + turncloth::detail::in_quotes(field(r, column::project)) + ": there are " +
                       project_keys(),
                   {.kind = fault::missing, .what = "a project"});
        const std::string name = field(r, column::name), from_name = slug(name);
        return {project, size_of(r), thickness_of(r), name,
                from_name.empty() ? std::string(project->key) + "-row-" + std::to_string(r.number) : from_name};
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
    enum class column { project, width, height, name, thickness };
    static constexpr std::array<std::string_view, 5> names = {"project", "width", "height", "name", "thickness"};

    static std::string_view name_of(column c) { return names[static_cast<std::size_t>(c)]; }
    const std::optional<std::size_t>& at(column c) const { return columns_[static_cast<std::size_t>(c)]; }

    std::optional<std::size_t> find(std::string_view name) const {
        std::optional<std::size_t> found;
        for (std::size_t i = 0; i < rows_[0].fields.size(); ++i) {
            if (slug(rows_[0].fields[i]) != name)
                continue;
            if (found)
                throw heading_error("its first row names the column \"" + std::string(name) + "\" twice",
                                    {.kind = fault::repeated, .what = "a column", .where = std::string(name)});
            found = i;
        }
        return found;
    }

    /// Without the blanks around it; empty where the row is too short or the table has no such column.
    std::string field(const table_row& r, column c) const {
        if (!at(c) || *at(c) >= r.fields.size())
            return {};
        const std::string& all = r.fields[*at(c)];
        const std::size_t first = all.find_first_not_of(" \t"), last = all.find_last_not_of(" \t");
        std::string text = first == std::string::npos ? std::string() : all.substr(first, last - first + 1);
        if (const std::string why = why_unfit(text); !why.empty())
            refuse(r, c, why, {.kind = fault::unreadable, .what = "a field"});
        return text;
    }

    [[noreturn]] void refuse(const table_row& r, column c, const std::string& why, refusal facts) const {
        const std::string where =
            ", column " + std::to_string(at(c).value_or(0) + 1) + " (" + std::string(name_of(c)) + "): ";
        facts.where = std::string(name_of(c));
        throw row_error(r.number, where + why, std::move(facts));
    }

    std::string needed(const table_row& r, column c) const {
        std::string text = field(r, c);
        if (text.empty())
            refuse(r, c, "it is missing", {.kind = fault::missing, .what = "a field"});
        return text;
    }

    typed_size size_of(const table_row& r) const {
        const std::string width = needed(r, column::width), height = needed(r, column::height);
        try {
            return read_sides(width, height);
        } catch (const side_error& refused) {
            refuse(r, refused.which() == side_of_size::width ? column::width : column::height, refused.why(),
                   refused.facts());
        }
    }

    std::string thickness_of(const table_row& r) const {
        std::string text = field(r, column::thickness);
        try {
            if (!text.empty())
                check_thickness(text);
        } catch (const error& refused) {
            refuse(r, column::thickness, refused.what(), refused.facts());
        }
        return text;
    }

    const std::vector<table_row>& rows_;
    std::array<std::optional<std::size_t>, names.size()> columns_;
};

} // namespace allotment

#endif
