// What was asked for on the command line.
//
//   parse(argc, argv, printer)     the orders, or none and the exit status where there is nothing more to do
#ifndef TURNCLOTH_EXAMPLES_SHEETS_COMMAND_LINE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_COMMAND_LINE_HPP

#include "../command/asked.hpp"
#include "../command/console.hpp"
#include "asked_language.hpp"
#include "checks.hpp"
#include "names.hpp"
#include "on_hand.hpp"
#include "part.hpp"
#include "printing.hpp"
#include "projects.hpp"
#include <turncloth/cloth/price.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/panel/typed_size.hpp>

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <thread>
#include <vector>

namespace allotment {

struct orders {
    std::string project, project_file, size, thickness, table, out, cloth_width, prices;
    price_list shop;                       ///< what stands in `prices`
    std::vector<typed_width> cloth_widths; ///< of one cloth each
    std::vector<typed_cloth> on_hand;
    ruler by;
    std::string paper;            ///< "a4", "letter", or empty for what is usual where such a size is typed
    std::int64_t most_layers = 0; ///< that the machine sews through; 0 where it is not said
    part share;                   ///< of the table
    std::size_t jobs = 1;         ///< threads that work
    std::string cutting_table;    ///< how long it is; empty for any length
    std::int64_t plies = 1;       ///< cut at once
    bool one_order = false, json = false, handout = false, quiet = false, progress = false, replace = false,
         exact = false;
    handout_printer* print = nullptr; ///< of handouts as PDF; none where that is not wanted
    language words{};                 ///< of sheets, drawings and handouts
};

namespace detail {

inline std::string help_footer() {
    std::string text =
        "Projects, and the sizes they are made at where none is given (metric with --units centimetres):\n";
    for (const known_project& p : known_projects)
        text += "  " + std::string(p.key) + ": " + std::string(p.about) + ", " + std::string(p.usual_inches) + " or " +
                std::string(p.usual_centimetres) + "\n";
    return text +
           "\nSizes are finished sizes, width before height: 24x15, \"24 1/2 x 15 in\", \"2 ft x 15 in\", \"60 x 38 "
           "cm\".\nOne unit at the end holds for both sides; a number without a unit is in inches. A metric width "
           "gives the\n"
           "metric edition of a project, with round metric allowances.\n"
           "\nA table is a CSV file in UTF-8 whose first row names its columns: project, width and height, and where\n"
           "wanted name and thickness; semicolons or tabs may part them instead of commas. A project is one of the\n"
           "above, or a file of your own beside the table, as peg_bag.json. Rows that cannot be done are named, and\n"
           "the others are done. Files of the same names are not written over without --replace.\n"
           "\nExit status: 0 all done; 1 some sheets could not be made; 2 the command line is wrong; 3 a file cannot "
           "be\nread or written.";
}

template <length_unit Unit>
length<Unit> read_graduation(const std::string& text) {
    const length<Unit> l = read_length<Unit>(text);
    require_more_than_zero<range_error>(l, "a graduation");
    return l;
}

inline std::string check_handout(const std::string& format, handout_printer* printer) {
    if (slug(format) != "html" && slug(format) != "pdf")
        throw range_error("a handout is written as html or pdf: there is no " + turncloth::detail::in_quotes(format),
                          {.kind = fault::missing, .what = "a format"});
    if (slug(format) == "pdf" && printer == nullptr)
        throw range_error("this program was built without cairo, so it prints no PDF: write html, and print that",
                          {.kind = fault::missing, .what = "what paints pages"});
    return format;
}

inline std::string read_project(const std::string& text) {
    if (text != "all" && find_project(text) == nullptr)
        throw range_error("there is no project " + turncloth::detail::in_quotes(text) + ": there are " +
                              project_keys() + ", or all",
                          {.kind = fault::missing, .what = "a project"});
    return text;
}

} // namespace detail

/// `printer` is null where the program was built without what paints pages.
inline parsed<orders> parse(int argc, char** argv, handout_printer* printer) {
    orders o;
    std::vector<std::string> handouts, on_hand, cloth_widths;
    std::string tag;
    std::string inches = "1/16", centimetres = "0.1", share = "1/1";
    CLI::App app("Works out sewing projects of an allotment society for any finished size: what to cut, fold, mark, "
                 "stitch and buy.",
                 "turncloth_sheets");
    app.set_version_flag("--version", version_text("turncloth_sheets"));
    app.footer(detail::help_footer());
    app.get_formatter()->column_width(34);

    auto* project = app.add_option("--project", o.project, "One of the projects below, or all of them")
                        ->check(refused_by(detail::read_project))
                        ->type_name("NAME");
    auto* file = app.add_option("--project-file", o.project_file,
                                "A project of your own, as a JSON file: the guide tells how one is written")
                     ->type_name("FILE")
                     ->excludes(project);
    auto* size = app.add_option("--size", o.size, "The finished size, as \"24 x 15 in\" or \"60 x 38 cm\"")
                     ->check(refused_by(read_size))
                     ->type_name("SIZE");
    auto* thickness =
        app.add_option("--thickness", o.thickness, "Of the kneeling pad; without a unit, in that of its size")
            ->check(refused_by(check_thickness))
            ->type_name("LENGTH")
            ->needs(project);
    auto* table = app.add_option("--table", o.table, "A CSV file of many sizes")
                      ->type_name("FILE")
                      ->excludes(project)
                      ->excludes(file)
                      ->excludes(size)
                      ->excludes(thickness);
    app.add_option("--part", share,
                   "Of the table, as 3/8: the third of eight, for as many machines; all parts joined are the whole")
        ->check(refused_by(read_part))
        ->type_name("PART")
        ->needs(table);
    auto* order =
        app.add_flag("--one-order", o.one_order,
                     "Lay all rows of the table together, as one order of each cloth. A column copies in the table "
                     "says how many of each row are made, 1 where it is empty")
            ->needs(table)
            ->excludes("--part");
    app.add_option("--plies", o.plies, "Of an order: how many plies of cloth are cut at once, 1 where none is given")
        ->check(CLI::Range(1, 1000).description(""))
        ->type_name("NUMBER")
        ->needs(order);
    app.add_option("--cutting-table", o.cutting_table,
                   "Of an order: how long the table is that cloth is spread on; any length where none is given")
        ->check(refused_by(check_cutting_table))
        ->type_name("LENGTH")
        ->needs(order);
    o.jobs = std::max(1U, std::thread::hardware_concurrency());
    app.add_option("--jobs", o.jobs,
                   "How many threads work, all that the machine has where none is given; what is "
                   "written is the same")
        ->check(CLI::Range(1, 1000).description(""))
        ->type_name("NUMBER");
    app.add_option(
           "--cloth-width", cloth_widths,
           "Of the cloth to buy, with its selvedges; without a unit, in that of the size. Where none is given it "
           "is what the project says, or else 54 in or 140 cm. Of one cloth alone: \"film: 36 in\", once for "
           "each")
        ->allow_extra_args(false)
        ->check(refused_by(read_cloth_width))
        ->type_name("LENGTH");
    app.add_option(
           "--on-hand", on_hand,
           "Cloth that you have, used before any is bought, as \"canvas: 40 x 30 in\", the size once its sides are cut "
           "straight and square, washed where the project washes it; the first figure across the grain; once for each "
           "piece of it. Stains and holes after it: \"canvas: 40 x 30 in; 3 x 2 in at 10 x 12 in\" has one 3 in wide "
           "and 2 in long, 10 in from the left edge and 12 in from the end that you mark")
        ->allow_extra_args(false)
        ->check(refused_by(read_on_hand))
        ->type_name("CLOTH")
        ->excludes(order);
    app.add_option("--most-layers", o.most_layers,
                   "Warn of stitching through more layers than this, 8 where none is given, corners being folded one "
                   "edge over the other")
        ->check(CLI::Range(1, 1000).description(""))
        ->type_name("NUMBER");
    auto* prices =
        app.add_option("--prices", o.prices,
                       "A CSV file of what things cost, with the columns what, price and per (piece, yard or "
                       "metre) and once a currency: handouts then say what each line costs, and the sum")
            ->type_name("FILE");
    auto* out = app.add_option("--out", o.out,
                               "The folder for each sheet as text, and for each piece and each lay of cloth as an SVG "
                               "drawing; made if missing")
                    ->type_name("FOLDER");
    app.add_option(
           "--paper", o.paper,
           "What drawings are printed on, a4 or letter: where none is given, letter for a size in inches and a4 "
           "for a metric one")
        ->check(CLI::IsMember({"a4", "letter"}, CLI::ignore_case).description(""))
        ->type_name("PAPER");
    app.add_flag("--json", o.json, "Write each sheet as JSON too")->needs(out);
    auto* handout =
        app.add_option(
               "--handout", handouts,
               "Write each sheet as one document to print and follow too, with its drawings in it: html, pdf, or "
               "html,pdf")
            ->delimiter(',')
            ->allow_extra_args(false)
            ->check(refused_by([&](const std::string& format) { return detail::check_handout(format, printer); }))
            ->type_name("FORMATS")
            ->needs(out);
    app.add_option("--language", tag,
                   "What sheets, drawings and handouts are written in: en, English (as when not given), or de, German")
        ->check(refused_by(read_language))
        ->type_name("LANGUAGE");
    prices->needs(handout);
    app.add_flag("--replace", o.replace, "Write over files of the same names in that folder")->needs(out);
    app.add_option("--units", o.by.shows,
                   "What figures are written in: inches, centimetres, or both (as when not given)")
        ->transform(CLI::CheckedTransformer(named_units()).description(""))
        ->type_name("UNITS");
    app.add_option("--inch-graduation", inches, "Inches are rounded to the nearest multiple of this")
        ->capture_default_str()
        ->check(refused_by(detail::read_graduation<inch>))
        ->type_name("LENGTH");
    app.add_option("--centimetre-graduation", centimetres, "Centimetres are rounded to the nearest multiple of this")
        ->capture_default_str()
        ->check(refused_by(detail::read_graduation<centimetre>))
        ->type_name("LENGTH");
    app.add_flag(
        "--exact", o.exact,
        "Work with exact lengths, and round each printed figure by itself: where not given, all is worked out on "
        "the ruler, so that what is printed adds up");
    app.add_flag("--quiet", o.quiet, "Print no sheets: errors only");
    app.add_flag("--progress", o.progress, "Tell how far a long table is done, also where no terminal is watching");

    try {
        app.parse(argc, argv);
        if (!o.size.empty() && o.project.empty() && o.project_file.empty())
            throw CLI::RequiresError("--size", "--project");
        if (o.project.empty() && o.table.empty() && o.project_file.empty())
            throw CLI::RequiredError("--project, --project-file or --table");
    } catch (const CLI::ParseError& e) {
        return {std::nullopt, say(app, e)};
    }
    o.by.inches = read_length<inch>(inches);
    o.by.centimetres = read_length<centimetre>(centimetres);
    o.share = read_part(share);
    for (const std::string& w : cloth_widths)
        if (const typed_width of = read_cloth_width(w); of.material.empty())
            o.cloth_width = of.width;
        else
            o.cloth_widths.push_back(of);
    for (const std::string& c : on_hand)
        o.on_hand.push_back(read_on_hand(c));
    o.words = read_language(tag);
    for (const std::string& format : handouts)
        if (slug(format) == "pdf")
            o.print = printer;
        else
            o.handout = true;
    return {o};
}

} // namespace allotment

#endif
