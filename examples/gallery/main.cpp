// turncloth_gallery <file.html>: every kind of drawing on one page, to be looked at.
#include "drawings.hpp"
#include <turncloth/page/html.hpp>

#include <cstdio>
#include <fstream>
#include <string>

namespace {

turncloth::document gallery_page() {
    turncloth::document d{.title = "Drawings", .subtitle = "of every kind, tiny, narrow, huge and crowded"};
    std::string kind;
    for (gallery::drawing_shown& shown : gallery::all()) {
        if (shown.kind != kind)
            d.add(turncloth::document::heading{kind = shown.kind});
        d.add(turncloth::document::drawing{std::move(shown.of), {}, std::move(shown.name)});
    }
    return d;
}

} // namespace

int main(int count, char** words) {
    if (count != 2) {
        std::fputs("usage: turncloth_gallery <file.html>\n", stderr);
        return 2;
    }
    std::ofstream out(words[1], std::ios::binary);
    out << turncloth::to_html(gallery_page());
    if (!out.flush()) {
        std::fprintf(stderr, "turncloth_gallery: cannot write %s\n", words[1]);
        return 3;
    }
    return 0;
}
