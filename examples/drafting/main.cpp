// Drafted pieces, printed at true scale on pages to be joined. turncloth_drafting --help tells how it is used.
#include "../command/console.hpp"
#include "../command/files.hpp"
#include "../command/plain_text.hpp"
#include "../painter/pdf.hpp"
#include "command_line.hpp"

#include <string>
#include <type_traits>
#include <variant>
#include <vector>

namespace {

using namespace drafting;

over_what may_be_over(const orders& o) { return {.replace = o.replace, .input = o.from}; }

template <class Unit>
void tell(const made_drafting<Unit>& made, const std::vector<sheet_cloth<Unit>>& cloths, const ruler& shown,
          const std::string& printed) {
    std::string text = made.title + "\n";
    for (const made_piece<Unit>& piece : made.pieces) {
        const cut_size<Unit> size = bounding_size(piece);
        text += "  " + piece.says.name + ", " + std::to_string(piece.says.count) + " of " + piece.says.material +
                ": within " + to_text(size.width(), shown) + " x " + to_text(size.height(), shown) + "\n";
        if (!piece.trimmed_on.empty())
            text += "    allowances overlap: its cut line is trimmed on the edges of " + piece.trimmed_on + "\n";
    }
    for (const sheet_cloth<Unit>& cloth : cloths)
        text += "  buy " + to_text(cloth.bought.bought, shown) + " of " + cloth.material +
                " at least, by bounding rectangles\n";
    print(text + printed);
}

template <class Unit>
void make(const made_drafting<Unit>& made, const orders& o) {
    constexpr bool in_inches = std::is_same_v<Unit, inch>;
    const ruler shown{.shows = o.shows.value_or(in_inches ? units_shown::inches : units_shown::centimetres)};
    const painter::pdf_letters letters;
    const auto cloths = o.cloth ? laid_out(made, *o.cloth, shown) : std::vector<sheet_cloth<Unit>>();
    const std::vector<page> pages =
        pages_of(made, cloths, shown, {.project = made.title, .on = o.on, .letters = &letters});
    write_file(o.to, painter::pdf_of(made.title, pages), may_be_over(o));
    if (!o.quiet)
        tell(made, cloths, shown,
             std::to_string(pages.size()) + " pages of " + std::string(o.on.name()) + " in " + o.to + "\n");
}

int run(int argc, char** argv) {
    const auto asked = parse(argc, argv);
    if (!asked.wanted)
        return asked.status;
    const orders& o = *asked.wanted;
    require_writable(o.to, may_be_over(o));
    remove_leftovers(fs::path(o.to).parent_path());
    const std::string text = require_text(o.from, read_file(o.from));
    try {
        std::visit([&](const auto& made) { make(made, o); }, read_drafting(text));
        return exit_status::all_done;
    } catch (const error& refused) {
        complain(o.from + ": " + refused.what());
        return exit_status::not_made;
    }
}

} // namespace

int main(int argc, char** argv) { return allotment::at_work(argc, argv, "turncloth_drafting", run); }
