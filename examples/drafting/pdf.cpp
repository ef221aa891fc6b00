#include "pdf.hpp"

#include <turncloth/measure/error.hpp>

#include <cairo/cairo-pdf.h>

#include <memory>
#include <numbers>

namespace drafting {

namespace {

/// A PDF that cannot be drawn.
class drawing_error : public turncloth::error {
public:
    using error::error;
};

using surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;
using context = std::unique_ptr<cairo_t, decltype(&cairo_destroy)>;

constexpr double points_in_millimetre = 72 / 25.4;

void require_good(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS)
        throw drawing_error(std::string("the pages cannot be drawn: ") + cairo_status_to_string(status));
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

void draw(cairo_t* to, const stroke& s) {
    const pen p = pen_of(s.kind);
    cairo_new_path(to); // words leave a point behind
    for (const place_on_page& at : s.points)
        cairo_line_to(to, at.x, at.y);
    if (s.closed)
        cairo_close_path(to);
    cairo_set_source_rgb(to, p.grey, p.grey, p.grey);
    cairo_set_line_width(to, p.weight);
    const double dashes[] = {p.dash, p.gap};
    cairo_set_dash(to, dashes, p.dash > 0 ? 2 : 0, s.dash_from);
    // A broken line with round ends would close its gaps; a whole one has its corners filled where it was parted.
    cairo_set_line_cap(to,
                       p.dash > 0 || s.kind == line_kind::joining_mark ? CAIRO_LINE_CAP_BUTT : CAIRO_LINE_CAP_ROUND);
    cairo_set_line_join(to, CAIRO_LINE_JOIN_MITER);
    cairo_stroke(to);
}

void draw(cairo_t* to, const label& l) {
    choose(to, l.size, l.bold);
    const double width = l.anchor == set_from::start ? 0 : width_of(to, l.text);
    cairo_save(to);
    cairo_set_source_rgb(to, 0, 0, 0);
    cairo_translate(to, l.at.x, l.at.y);
    cairo_rotate(to, -l.turned * std::numbers::pi / 180);
    cairo_move_to(to, l.anchor == set_from::end ? -width : -width / 2, 0);
    cairo_show_text(to, l.text.c_str());
    cairo_restore(to);
}

} // namespace

std::string pdf_of(const print& made) {
    std::string bytes;
    const surface file(cairo_pdf_surface_create_for_stream(append, &bytes, made.on.width * points_in_millimetre,
                                                           made.on.height * points_in_millimetre),
                       &cairo_surface_destroy);
    require_good(cairo_surface_status(file.get()));
    cairo_pdf_surface_set_metadata(file.get(), CAIRO_PDF_METADATA_TITLE, made.title.c_str());
    // A date would make every run differ.
    cairo_pdf_surface_set_metadata(file.get(), CAIRO_PDF_METADATA_CREATE_DATE, "");
    const context to(cairo_create(file.get()), &cairo_destroy);
    cairo_scale(to.get(), points_in_millimetre, points_in_millimetre);
    for (const page& p : made.pages) {
        for (const stroke& s : p.strokes)
            draw(to.get(), s);
        for (const label& l : p.labels)
            draw(to.get(), l);
        cairo_show_page(to.get());
        require_good(cairo_status(to.get()));
    }
    cairo_surface_finish(file.get());
    require_good(cairo_surface_status(file.get()));
    return bytes;
}

text_width pdf_text_width() {
    const std::shared_ptr<cairo_surface_t> nowhere(cairo_pdf_surface_create_for_stream(nullptr, nullptr, 1000, 1000),
                                                   &cairo_surface_destroy);
    const std::shared_ptr<cairo_t> to(cairo_create(nowhere.get()), &cairo_destroy);
    return [nowhere, to](std::string_view text, double size, bool bold) {
        choose(to.get(), size, bold);
        return width_of(to.get(), std::string(text));
    };
}

} // namespace drafting
