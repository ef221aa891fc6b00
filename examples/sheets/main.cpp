// Sheets and drawings for three projects of an allotment society, at any finished size or at a whole table of sizes.
// turncloth_sheets --help tells how it is used.
#include "../command/console.hpp"
#include "../command/in_order.hpp"
#include "../command/plain_text.hpp"
#include "command_line.hpp"
#include "jobs.hpp"
#include "one_order.hpp"
#include "price_file.hpp"
#include "printing.hpp"
#include "project_file.hpp"
#include "worked_out.hpp"
#include "writing.hpp"

#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace {

using namespace allotment;

typed_size size_for(const known_project& p, const orders& o) {
    if (!o.size.empty())
        return read_size(o.size);
    return read_size(std::string(o.by.shows == units_shown::centimetres ? p.usual_centimetres : p.usual_inches));
}

std::vector<wanted_sheet> projects_wanted(const orders& o) {
    const known_project* only = find_project(o.project); // none for all
    std::vector<wanted_sheet> all;
    for (const known_project& p : known_projects)
        if (only == nullptr || only == &p)
            all.push_back({.where = std::string(p.key) + ": ",
                           .made_of = job{&p, size_for(p, o), o.thickness, {}, std::string(p.key)}});
    return all;
}

/// Its files bear the name of the project's own, which has no path and no ending.
std::vector<wanted_sheet> file_wanted(const orders& o) {
    const auto design = std::make_shared<const project_design>(read_project_file(o.project_file));
    const std::string own = slug(fs::path(o.project_file).stem().string());
    wanted_sheet made{.where = o.project_file + ": "};
    try {
        made.made_of = job{.project = nullptr,
                           .size = size_to_make(*design, o.size, o.by.shows == units_shown::centimetres),
                           .file_name = own.empty() ? "project" : own,
                           .design = design};
    } catch (const error& refused) {
        made.refusal = made.where + refused.what();
    }
    return {made};
}

std::vector<wanted_sheet> rows_wanted(const orders& o) {
    try {
        const auto rows = read_table(require_text(o.table, read_file(o.table)));
        const fs::path beside = fs::path(o.table).parent_path();
        auto wanted = job_table(rows, o.one_order, [&](const std::string& file) {
                          return read_project_file((beside / file).string());
                      }).wanted();
        if (wanted.empty())
            complain(o.table + " has no row below the first, which names its columns");
        return wanted;
    } catch (const heading_error& refused) {
        throw file_error("use", o.table, refused.what());
    }
}

/// What is printed and written is the same by one thread and by many, and all parts joined are the whole.
bool make(const std::vector<wanted_sheet>& wanted, const orders& o, sheet_output& out) {
    const std::size_t first = o.share.first(wanted.size()), count = o.share.end(wanted.size()) - first;
    progress told(count, o);
    bool all_done = true;
    in_order(
        count, o.jobs, [&](std::size_t i) { return work_out(wanted[first + i], o); },
        [&](std::size_t i, const worked_out_sheet& s) {
            if (s.refusal.empty()) {
                out.put(wanted[first + i].made_of->file_name, s, first + i > 0);
            } else {
                complain(s.refusal);
                all_done = false;
            }
            told.done(i + 1);
        });
    return all_done;
}

/// All rows are made before any is written, as what they are cut from is laid together.
bool make_one_order(const std::vector<wanted_sheet>& wanted, const orders& o, sheet_output& out) {
    one_order order(o);
    std::vector<const job*> made;
    unused_names names;
    progress told(wanted.size(), o);
    in_order(
        wanted.size(), o.jobs, [&](std::size_t i) { return make_sheet(wanted[i], o); },
        [&](std::size_t i, sheet_made s) {
            if (s.refusal.empty()) {
                names.next(wanted[i].made_of->file_name);
                made.push_back(&*wanted[i].made_of);
                order.add(std::move(s), *made.back());
            } else {
                complain(s.refusal);
            }
            told.done(i + 1);
        });
    order.lay();
    for (std::size_t i = 0; i < made.size(); ++i)
        out.put(made[i]->file_name, order.row(i), i > 0);
    for (const worked_out_sheet& whole : order.wholes())
        out.put(names.next("order"), whole, true);
    return made.size() == wanted.size();
}

int run(int argc, char** argv) {
    const auto asked = parse(argc, argv, printer());
    if (!asked.wanted)
        return asked.status;
    orders o = *asked.wanted;
    if (!o.prices.empty())
        o.shop = read_price_file(o.prices);
    const auto wanted =
        !o.project_file.empty() ? file_wanted(o) : (o.table.empty() ? projects_wanted(o) : rows_wanted(o));
    sheet_output out(o);
    const bool all_done = o.one_order ? make_one_order(wanted, o, out) : make(wanted, o, out);
    out.finish();
    return all_done ? exit_status::all_done : exit_status::not_made;
}

} // namespace

int main(int argc, char** argv) { return at_work(argc, argv, "turncloth_sheets", run); }
