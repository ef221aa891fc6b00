#include "pages.hpp"

namespace drafting {

namespace {

/// Sets one thing below the other.
class setter {
public:
    setter(page& on, const text_measure* letters) : on_(on), by_(letters) {}

    void down(double height) { y_ += height; }

    void words(const std::string& text, double size = 3.2, bool bold = false) {
        detail::text_block set;
        set.add(by_, text, {size, size * 1.4, bold}, on_.width - 2 * tiles::margin);
        y_ = set.draw(on_, {tiles::margin, y_ - 0.4 * size}) + 0.4 * size;
    }
    void test_square(double x, double side, const char* name) {
        on_.draw_closed(test_square_pen, page_area{x, y_, side, side});
        on_.write({x + side / 2, y_ + 24}, name, 4.5, set_from::middle).bold = true;
        on_.write({x + side / 2, y_ + 29}, "each way", 3, set_from::middle);
    }

private:
    page& on_;
    detail::lettering by_;
    double y_ = tiles::margin;
};

} // namespace

page first_page(const std::vector<std::string>& contents, bool with_cloth, const drawing_options& options) {
    page on{.width = options.on.narrow(), .height = options.on.wide(), .title = options.project};
    setter to(on, options.letters);
    to.words(options.project, 7, true);
    to.words("Print at 100 % (actual size), on " + std::string(options.on.name()) +
             ". Measure both squares before anything is cut: if a side is off by as much as a line is wide, set the "
             "printer to 100 % and print again.");
    to.down(2);
    to.test_square(tiles::margin, 50, "50 mm");
    to.test_square(tiles::margin + 70, 50.8, "2 in");
    to.down(55);
    to.words("Cut along the heavy line: allowances and hems are included. The dashed line is the seam line, or the "
             "finished edge of what is hemmed or bound. Lay the grain's arrow along the selvedge. Mark or snip a notch "
             "no deeper than halfway to the seam line.");
    to.words(
        "To join pages: cut a page along its joining lines, dotted, at the right and at the foot. Lay that edge on "
        "the joining line of the next page, so that the halves of its three lozenges meet, and tape it. Join the "
        "pages of a row first, then the rows. Row 1 is the uppermost. The drawing before the pages of a piece shows "
        "where its joints are.");
    to.down(2);
    for (const std::string& line : contents)
        to.words(line);
    to.down(2);
    if (with_cloth)
        to.words(
            "What is laid here is the bounding rectangle of each piece, its grain along the cloth; only a piece "
            "that says so is turned. Pieces with slanting sides may lie closer by hand. Shrinkage is not included: "
            "where the maker of the cloth says that it shrinks, wash it before cutting, or buy more. Do not wash "
            "waxed or coated cloth, and keep irons and steam off it.",
            2.8);
    to.words(std::string(caution::cutting) + " " + std::string(caution::needles_and_metal), caption);
    to.words("These pages print lengths; they certify nothing. Local codes, the makers' instructions and licensed "
             "practice go before them.",
             caption);
    return on;
}

} // namespace drafting
