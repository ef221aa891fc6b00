// Sheets and drawings for three projects of an allotment society, at any finished size or at a whole table of sizes.
// turncloth_sheets --help tells how it is used.
#include "command_line.hpp"
#include "jobs.hpp"
#include "writing.hpp"

#include <cstdio>
#include <exception>
#include <string>

namespace {

using namespace allotment;

void complain(const std::string& what) { std::fprintf(stderr, "turncloth_sheets: %s\n", what.c_str()); }

/// False where it cannot be made; trouble with files is left to the caller.
bool put(sheet_output& out, const job& j, const std::string& where) {
    try {
        out.put(j);
        return true;
    } catch (const turncloth::error& refused) {
        complain(where + refused.what());
        return false;
    }
}

typed_size size_for(const known_project& p, const orders& o) {
    if (!o.size.empty())
        return read_size(o.size);
    return read_size(std::string(o.by.shows == units_shown::centimetres ? p.usual_centimetres : p.usual_inches));
}

bool make_projects(const orders& o, sheet_output& out) {
    const known_project* only = find_project(o.project); // none for all
    bool all_done = true;
    for (const known_project& p : known_projects)
        if (only == nullptr || only == &p)
            all_done &= put(out, {&p, size_for(p, o), o.thickness, {}, std::string(p.key)}, std::string(p.key) + ": ");
    return all_done;
}

bool make_row(const job_table& table, const table_row& row, sheet_output& out) {
    try {
        return put(out, table.job_of(row), "row " + std::to_string(row.number) + ": ");
    } catch (const row_error& refused) {
        complain(refused.what());
        return false;
    }
}

bool make_table(const std::vector<table_row>& rows, const orders& o, sheet_output& out) {
    const job_table table(rows);
    progress told(table.rows().size(), o);
    bool all_done = true;
    std::size_t done = 0;
    for (const table_row& row : table.rows()) {
        all_done &= make_row(table, row, out);
        told.done(++done);
    }
    return all_done;
}

int run(const orders& o) {
    try {
        const auto rows = o.table.empty() ? std::vector<table_row>() : read_table(read_file(o.table));
        sheet_output out(o);
        const bool all_done = o.table.empty() ? make_projects(o, out) : make_table(rows, o, out);
        out.finish();
        return all_done ? exit_status::all_done : exit_status::not_made;
    } catch (const heading_error& refused) {
        complain(o.table + " cannot be used: " + refused.what());
    } catch (const file_error& trouble) {
        complain(trouble.what());
    }
    return exit_status::file_trouble;
}

} // namespace

int main(int argc, char** argv) try {
    const auto asked = parse(argc, argv);
    return asked.wanted ? run(*asked.wanted) : asked.status;
} catch (const std::exception& unforeseen) {
    complain(unforeseen.what());
    return exit_status::file_trouble;
}
