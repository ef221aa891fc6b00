// Drafted pieces, printed at true scale on pages to be joined. turncloth_drafting --help tells how it is used.
#include "../command/console.hpp"
#include "../command/files.hpp"
#include "../painter/pdf.hpp"
#include "../sheets/project_file.hpp"
#include "command_line.hpp"
#include <turncloth/handout/handout.hpp>
#include <turncloth/page/pages.hpp>

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace {

using namespace drafting;

over_what may_be_over(const orders& o) { return {.replace = o.replace, .input = o.from}; }

template <class Unit>
void tell(const sheet<Unit>& made, const std::vector<sheet_cloth<Unit>>& cloths, const ruler& shown,
          const std::string& printed) {
    std::string text = made.name + "\n";
    const auto add = [&](const auto& p, const char* how, const cut_size<Unit>& size) {
        text += "  " + p.name() + ", " + std::to_string(p.count()) + " of " + p.material() + ": " + how +
                to_text(size.width(), shown) + " x " + to_text(size.height(), shown) + "\n";
    };
    for (const outlined_piece<Unit>& p : made.outlines)
        add(p, "within ", p.cut);
    for (const sheet_piece<Unit>& p : made.pieces)
        add(p.made_from, "", p.cut);
    for (const std::string& warning : made.warnings)
        text += "  " + warning + "\n";
    for (const sheet_cloth<Unit>& cloth : cloths)
        text += "  buy " + to_text(cloth.bought.bought, shown) + " of " + cloth.material +
                " at least, by bounding rectangles\n";
    print(text + printed);
}

template <class Unit>
void make(const project_design& design, const finished_size<Unit>& size, const orders& o) {
    const ruler shown{.shows = o.shows.value_or(metric_unit<Unit> ? units_shown::centimetres : units_shown::inches)};
    const painter::pdf_letters letters;
    const sheet<Unit> made = sheet_of(project_of(design, size));
    const auto cloths = o.cloth ? laid_out(made, *o.cloth, shown) : std::vector<sheet_cloth<Unit>>();
    std::vector<std::pair<std::string, std::vector<page>>> files = {
        {o.to, pages_of(made, cloths, shown, {.project = made.name, .on = o.on, .letters = &letters})}};
    if (!o.handout.empty())
        files.emplace_back(o.handout,
                           pages_of(handout_of(made, cloths, {.by = shown, .words = o.words}), o.on, &letters));
    std::string printed;
    for (const auto& [to, pages] : files) {
        write_file(to, painter::pdf_of(made.name, pages), may_be_over(o));
        printed += std::to_string(pages.size()) + " pages of " + std::string(o.on.name()) + " in " + to + "\n";
    }
    if (!o.quiet)
        tell(made, cloths, shown, printed);
}

int run(int argc, char** argv) {
    const auto asked = parse(argc, argv);
    if (!asked.wanted)
        return asked.status;
    const orders& o = *asked.wanted;
    for (const std::string& to : {o.to, o.handout})
        if (!to.empty()) {
            require_writable(to, may_be_over(o));
            remove_leftovers(fs::path(to).parent_path());
        }
    const project_design design = read_project_file(o.from);
    try {
        const bool in_centimetres = o.shows == units_shown::centimetres;
        std::visit([&](const auto& size) { make(design, size, o); }, size_to_make(design, o.size, in_centimetres));
        return exit_status::all_done;
    } catch (const design_error& refused) {
        for (const design_fault& f : refused.faults())
            complain(o.from + ": " + to_text(f));
        return exit_status::not_made;
    } catch (const error& refused) {
        complain(o.from + ": " + refused.what());
        return exit_status::not_made;
    }
}

} // namespace

int main(int argc, char** argv) { return allotment::at_work(argc, argv, "turncloth_drafting", run); }
