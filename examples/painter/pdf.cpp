#include "pdf.hpp"

#include <cairo/cairo-pdf.h>

#include <algorithm>
#include <memory>
#include <numbers>

namespace painter {

namespace {

using namespace turncloth;

using surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;
using context = std::unique_ptr<cairo_t, decltype(&cairo_destroy)>;

constexpr double points_in_millimetre = 72 / 25.4;

void require_good(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS)
        detail::refuse<painting_error>(std::string("the pages cannot be painted: ") + cairo_status_to_string(status),
                                       refusal{fault::unsuitable, "a page"});
}

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int size) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), size);
    return CAIRO_STATUS_SUCCESS;
}

void choose(cairo_t* to, double size, bool bold) {
    cairo_select_font_face(to, "sans-serif", CAIRO_FONT_SLANT_NORMAL,
                           bold ? CAIRO_FONT_WEIGHT_BOLD : CAIRO_FONT_WEIGHT_NORMAL);
    cairo_set_font_size(to, size);
}

double width_of(cairo_t* to, const std::string& text) {
    cairo_text_extents_t size{};
    cairo_text_extents(to, text.c_str(), &size);
    require_good(cairo_status(to));
    return size.x_advance;
}

void draw(cairo_t* to, const page_stroke& s) {
    cairo_new_path(to); // words leave a point behind
    for (const page_point& at : s.points)
        cairo_line_to(to, at.x, at.y);
    if (s.points.size() == 1) // with round ends, a dot as wide as the pen
        cairo_line_to(to, s.points[0].x, s.points[0].y);
    if (s.closed)
        cairo_close_path(to);
    cairo_set_source_rgb(to, s.with.grey, s.with.grey, s.with.grey);
    cairo_set_line_width(to, s.with.weight);
    const auto& dashes = s.with.dashes;
    const auto count = static_cast<int>(std::find(dashes.begin(), dashes.end(), 0.0) - dashes.begin());
    cairo_set_dash(to, dashes.data(), count, s.dash_from);
    // A broken line with round ends would close its gaps; a whole one has its corners filled where it was parted.
    cairo_set_line_cap(to, count > 0 ? CAIRO_LINE_CAP_BUTT : CAIRO_LINE_CAP_ROUND);
    cairo_set_line_join(to, CAIRO_LINE_JOIN_MITER);
    cairo_stroke(to);
}

void draw(cairo_t* to, const page_words& w) {
    choose(to, w.size, w.bold);
    const double width = w.anchor == set_from::start ? 0 : width_of(to, w.text);
    cairo_save(to);
    cairo_set_source_rgb(to, 0, 0, 0);
    cairo_translate(to, w.at.x, w.at.y);
    cairo_rotate(to, -w.turned * std::numbers::pi / 180);
    cairo_move_to(to, w.anchor == set_from::end ? -width : -width / 2, 0);
    cairo_show_text(to, w.text.c_str());
    cairo_restore(to);
}

} // namespace

std::string pdf_of(const std::string& title, const std::vector<page>& pages) {
    std::string bytes;
    const surface file(cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1), &cairo_surface_destroy);
    require_good(cairo_surface_status(file.get()));
    cairo_pdf_surface_set_metadata(file.get(), CAIRO_PDF_METADATA_TITLE, title.c_str());
    // A date would make every run differ.
    cairo_pdf_surface_set_metadata(file.get(), CAIRO_PDF_METADATA_CREATE_DATE, "");
    const context to(cairo_create(file.get()), &cairo_destroy);
    cairo_scale(to.get(), points_in_millimetre, points_in_millimetre);
    for (const page& p : pages) {
        cairo_pdf_surface_set_size(file.get(), p.width * points_in_millimetre, p.height * points_in_millimetre);
        for (const page_stroke& s : p.strokes)
            draw(to.get(), s);
        for (const page_words& w : p.words)
            draw(to.get(), w);
        cairo_show_page(to.get());
        require_good(cairo_status(to.get()));
    }
    cairo_surface_finish(file.get());
    require_good(cairo_surface_status(file.get()));
    return bytes;
}

pdf_letters::pdf_letters() {
    const surface nowhere(cairo_pdf_surface_create_for_stream(nullptr, nullptr, 1000, 1000), &cairo_surface_destroy);
    // The context keeps its surface.
    canvas_ =
        std::shared_ptr<void>(cairo_create(nowhere.get()), [](void* to) { cairo_destroy(static_cast<cairo_t*>(to)); });
}

double pdf_letters::width_of(std::string_view text, double size, bool bold) const {
    auto* const to = static_cast<cairo_t*>(canvas_.get());
    choose(to, size, bold);
    return painter::width_of(to, std::string(text));
}

} // namespace painter
