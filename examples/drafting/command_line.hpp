// What was asked for on the command line.
//
//   parse(argc, argv)     the orders, or none and the exit status where there is nothing more to do
#ifndef TURNCLOTH_EXAMPLES_DRAFTING_COMMAND_LINE_HPP
#define TURNCLOTH_EXAMPLES_DRAFTING_COMMAND_LINE_HPP

#include "../command/asked.hpp"
#include "../command/console.hpp"
#include "../command/files.hpp"
#include "../sheets/asked_language.hpp"
#include "pages.hpp"
#include <turncloth/panel/typed_size.hpp>

#include <CLI/CLI.hpp>

#include <map>
#include <optional>
#include <string>

namespace drafting {

using namespace allotment;

struct orders {
    std::string from, to, handout, size;
    paper on = paper::a4;
    std::optional<units_shown> shows; ///< else the design's own unit
    std::optional<cloth_wanted> cloth;
    bool quiet = false, replace = false;
    language words{}; ///< of the handout
};

/// Without a unit, in centimetres.
inline length<millimetre> read_distance(const std::string& text) {
    const length<centimetre> l = read_length<centimetre>(text);
    require_not_negative<range_error>(l, "it");
    return as<millimetre>(l);
}
inline length<millimetre> read_width(const std::string& text) {
    require_more_than_zero<range_error>(read_length<centimetre>(text), "it");
    return read_distance(text);
}

inline parsed<orders> parse(int argc, char** argv) {
    orders o;
    std::string width, selvedge = "0", gap = "0", tag;
    CLI::App app(
        "Prints drafted pieces at true scale, on pages to be joined, with their allowances, notches and grain.",
        "turncloth_drafting");
    app.set_version_flag("--version", version_text("turncloth_drafting"));
    app.footer("A design file is JSON; examples/drafting/*.json and examples/designs/*.json show what one may say.\n"
               "Lengths on the command line are in cm unless they name a unit: 112, \"44 in\", \"1.5 m\".\n"
               "\nExit status: 0 all done; 1 the design cannot be made; 2 the command line is wrong; 3 a file cannot "
               "be\nread or written.");
    app.get_formatter()->column_width(30);
    const std::map<std::string, std::string> papers = {{"a4", "A4"}, {"letter", "Letter"}};
    std::string chosen = "A4";
    units_shown shows = units_shown::both;
    app.add_option("FILE", o.from, "The design file")->required();
    app.add_option("--size", o.size, "The finished size; when not given, the first that the file names")
        ->check(refused_by([](const std::string& text) { return turncloth::read_size(text); }))
        ->type_name("SIZE");
    app.add_option("--out", o.to, "The PDF file to write")->type_name("PDF")->required();
    auto* handout =
        app.add_option("--handout", o.handout, "Write what to buy, cut, mark and sew as a PDF file of its own too")
            ->type_name("PDF");
    app.add_option("--language", tag, "What the handout is written in: en, English (as when not given), or de, German")
        ->check(refused_by(allotment::read_language))
        ->type_name("LANGUAGE")
        ->needs(handout);
    app.add_option("--paper", chosen, "a4 (as when not given) or letter")
        ->transform(CLI::CheckedTransformer(papers, CLI::ignore_case).description(""))
        ->type_name("PAPER");
    auto* units = app.add_option("--units", shows,
                                 "What figures are written in: inches, centimetres or both; when not "
                                 "given, as the size was")
                      ->transform(CLI::CheckedTransformer(named_units()).description(""))
                      ->type_name("UNITS");
    const auto add_length = [&](const char* name, std::string& to, auto read, const char* about) {
        return app.add_option(name, to, about)->check(refused_by(read))->type_name("LENGTH");
    };
    auto* cloth =
        add_length("--cloth", width, read_width, "The width of the cloth: adds how much to buy and how pieces lie");
    add_length("--selvedge", selvedge, read_distance, "What is not used at each edge of the cloth")->needs(cloth);
    add_length("--gap", gap, read_distance, "The least distance between pieces on the cloth")->needs(cloth);
    app.add_flag("--quiet", o.quiet, "Print nothing but errors");
    app.add_flag("--replace", o.replace, "Write over PDF files that are there already");
    try {
        app.parse(argc, argv);
        const auto whole = [](const std::string& path) { return fs::weakly_canonical(fs::absolute(path)); };
        if (!o.handout.empty() && whole(o.handout) == whole(o.to))
            throw CLI::ValidationError("--handout", "it is the file that --out names");
    } catch (const CLI::ParseError& e) {
        return {std::nullopt, say(app, e)};
    }
    o.words = allotment::read_language(tag);
    o.on = chosen == "Letter" ? paper::letter : paper::a4;
    if (*units)
        o.shows = shows;
    if (*cloth)
        o.cloth = cloth_wanted{read_width(width), read_distance(selvedge), read_distance(gap)};
    return {o};
}

} // namespace drafting

#endif
