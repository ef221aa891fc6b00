// Drafted pieces, printed at true scale on pages to be joined. turncloth_drafting --help tells how it is used.
#include "../painter/pdf.hpp"
#include "../sheets/files.hpp"
#include "command_line.hpp"

#include <cstdio>
#include <exception>
#include <string>

namespace {

using namespace drafting;

void complain(const std::string& what) { std::fprintf(stderr, "turncloth_drafting: %s\n", what.c_str()); }

void tell(const made_drafting& made, const page_orders& by, std::size_t pages, const std::string& to) {
    std::string text = made.title + "\n";
    for (const made_piece& piece : made.pieces) {
        const cut_size<millimetre> size = bounding_size(piece);
        text += "  " + piece.name + ", " + std::to_string(piece.quantity) + " of " + piece.material + ": within " +
                to_text(size.width(), by.shown) + " x " + to_text(size.height(), by.shown) + ", " +
                area_text(area_of(piece.cut).value(), by.shown) + "\n";
    }
    if (by.cloth)
        for (const material_lay& lay : by.cloth->lays)
            text += "  buy " + to_text(up_to(lay.laid.length, length_of<millimetre>(1)), by.shown) + " of " +
                    lay.material + " at least, by bounding rectangles\n";
    text += std::to_string(pages) + " pages of " + std::string(by.on.name()) + " in " + to + "\n";
    std::fputs(text.c_str(), stdout);
}

void make(const orders& o) {
    const made_drafting made = read_drafting(allotment::read_file(o.from));
    const units_shown own = made.unit == drafted_in::inches ? units_shown::inches : units_shown::centimetres;
    page_orders by{.on = o.on, .shown = {.shows = o.shows.value_or(own)}};
    if (o.cloth)
        by.cloth = laid_out(made, *o.cloth, by.shown);
    const print printed = pages_of(made, by, painter::pdf_letters());
    allotment::write_file(o.to, painter::pdf_of(printed.title, printed.pages));
    if (!o.quiet)
        tell(made, by, printed.pages.size(), o.to);
}

int carry_out(const orders& o) {
    try {
        make(o);
        return exit_status::all_done;
    } catch (const error& refused) {
        complain(o.from + ": " + refused.what());
        return exit_status::cannot_be_made;
    } catch (const allotment::file_error& trouble) {
        complain(trouble.what());
        return exit_status::file_trouble;
    }
}

} // namespace

int main(int argc, char** argv) try {
    const parsed asked = parse(argc, argv);
    return asked.wanted ? carry_out(*asked.wanted) : asked.status;
} catch (const std::exception& unforeseen) {
    complain(unforeseen.what());
    return exit_status::file_trouble;
}
