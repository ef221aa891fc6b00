// Writing SVG 1.1: what a drawing puts on its page, in millimetres.
//
//   svg_page(width, height, title, description)    a document of that size on paper
//   .line(a, b) .path({a, b, c}) .closed({a, b, c}) .rectangle(b) .dot(a, r)   in the pen of the group that is open
//   .text(at, words, size, ...)                    level, or turned to be read from the right
//   .open(name, pen) .close()                      a group of lines drawn with one pen
//   .done()                                        the document
//   text_width(words, size)                        an estimate that errs on the side of more
//   wrapped(words, size, width, lines)  shortened(words, size, width)  unbroken(measurement)
//
// Numbers are written with a point in every locale. Text is escaped, and bytes that no XML document may hold (control
// characters, broken UTF-8) become U+FFFD, so the document is well-formed whatever it is given.
#ifndef TURNCLOTH_PAGE_SVG_HPP
#define TURNCLOTH_PAGE_SVG_HPP

#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

struct page_point {
    double x, y;
};

struct box {
    double x, y, width, height;
    constexpr double right() const { return x + width; }
    constexpr double bottom() const { return y + height; }
};

/// How a line is drawn: its weight in mm, and lengths drawn and left out by turns (empty: drawn throughout).
struct pen {
    double weight;
    std::string_view dashes;
};

enum class anchor { start, middle, end };

/// The first character of `text`, one to four bytes of UTF-8; empty where they are not a character of XML 1.0.
inline std::string_view first_character(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const std::size_t size = byte(0) < 0x80 ? 1 : (byte(0) < 0xE0 ? 2 : (byte(0) < 0xF0 ? 3 : 4));
    if (size > text.size() || (byte(0) >= 0x80 && byte(0) < 0xC2) || byte(0) > 0xF4)
        return {};
    unsigned long code = size == 1 ? byte(0) : byte(0) & (0xFFU >> (size + 1));
    for (std::size_t i = 1; i < size; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U)
            return {};
        code = code << 6U | (byte(i) & 0x3FU);
    }
    constexpr unsigned long shortest[] = {0x20, 0x80, 0x800, 0x10000}; // below this a longer form is a broken one
    const bool space = code == '\t' || code == '\n' || code == '\r';
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    if ((code < shortest[size - 1] && !space) || surrogate || code == 0xFFFE || code == 0xFFFF || code > 0x10FFFF)
        return {};
    return text.substr(0, size);
}

/// Calls `use` with each character in turn, U+FFFD in place of each byte that belongs to none.
template <class Use>
void each_character(std::string_view text, Use use) {
    while (!text.empty()) {
        const std::string_view c = first_character(text);
        use(c.empty() ? std::string_view("\xEF\xBF\xBD") : c);
        text.remove_prefix(c.empty() ? 1 : c.size());
    }
}

inline std::string escaped(std::string_view text) {
    std::string all;
    each_character(text, [&](std::string_view c) {
        switch (c.front()) {
        case '&':
            all += "&amp;";
            break;
        case '<':
            all += "&lt;";
            break;
        case '>':
            all += "&gt;";
            break;
        case '"':
            all += "&quot;";
            break;
        case '\'':
            all += "&#39;";
            break;
        default:
            all += c;
        }
    });
    return all;
}

/// To a millionth, so that even a drawing at 1:1000 is true to 1/1000 mm of cloth.
inline std::string number(double x) {
    const long long millionths = std::llround(std::fabs(x) * 1e6);
    std::string text = x < 0 && millionths > 0 ? "-" : "";
    text += std::to_string(millionths / 1000000);
    std::string part = std::to_string(millionths % 1000000 + 1000000).substr(1);
    while (!part.empty() && part.back() == '0')
        part.pop_back();
    return part.empty() ? text : text + '.' + part;
}

/// The width of one character in hundredths of the size, as in the widest sans-serif faces in common use.
inline int character_width(std::string_view c) {
    struct widths {
        std::string_view characters;
        int hundredths;
    };
    constexpr widths all[] = {
        {" ,.:;'|/\xC2\xA0", 34}, {"ijlI()[]!-", 41}, {"frt", 43}, {"cskvxyz", 60}, {"mwMW@%&+=<>#^~", 100}};
    for (const widths& w : all)
        if (w.characters.find(c) != std::string_view::npos)
            return w.hundredths;
    if (c.size() > 1)
        return c.size() > 2 ? 100 : 82;
    return c.front() >= 'A' && c.front() <= 'Z' ? 79 : 64;
}

/// An estimate on the side of more, as the reader's sans-serif is not known.
inline double text_width(std::string_view text, double size) {
    int hundredths = 0;
    each_character(text, [&](std::string_view c) { hundredths += character_width(c); });
    return size * hundredths / 100;
}

/// The text itself, or as much of it as fits with an ellipsis behind.
inline std::string shortened(std::string_view text, double size, double width) {
    if (text_width(text, size) <= width)
        return std::string(text);
    std::string kept;
    bool full = false;
    each_character(text, [&](std::string_view c) {
        full = full || text_width(kept + std::string(c) + "...", size) > width;
        if (!full)
            kept += c;
    });
    return kept + "...";
}

inline constexpr std::string_view unbreakable_space = "\xC2\xA0";

/// A measurement that is not to be broken over two lines, but for the second unit in brackets.
inline std::string unbroken(std::string_view text) {
    std::string all;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == ' ' && text.substr(i + 1, 1) != "(")
            all += unbreakable_space;
        else
            all += text[i];
    }
    return all;
}

/// With common spaces only, as they are printed.
inline std::string plain(std::string_view text) {
    std::string all;
    while (!text.empty()) {
        const std::size_t end = text.find(unbreakable_space);
        all += text.substr(0, end);
        if (end == std::string_view::npos)
            break;
        all += ' ';
        text.remove_prefix(end + unbreakable_space.size());
    }
    return all;
}

/// Broken at spaces into lines no wider than `width`, and no more than `most` of them: what does not fit is shortened.
inline std::vector<std::string> wrapped(std::string_view text, double size, double width, std::size_t most = 99) {
    std::vector<std::string> lines;
    std::string line;
    while (!text.empty()) {
        const std::size_t end = text.find(' ') == std::string_view::npos ? text.size() : text.find(' ');
        const std::string longer =
            line.empty() ? std::string(text.substr(0, end)) : line + ' ' + std::string(text.substr(0, end));
        if (!line.empty() && lines.size() + 1 < most && text_width(longer, size) > width) {
            lines.push_back(shortened(plain(line), size, width));
            line.clear();
            continue;
        }
        line = longer;
        text.remove_prefix(end < text.size() ? end + 1 : end);
    }
    if (!line.empty())
        lines.push_back(shortened(plain(line), size, width));
    return lines;
}

class svg_page {
public:
    svg_page(double width, double height, std::string_view title, std::string_view description) {
        const std::string w = number(width), h = number(height);
        all_ = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
               "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" width=\"" +
               w + "mm\" height=\"" + h + "mm\" viewBox=\"0 0 " + w + ' ' + h + "\">\n<title>" + escaped(title) +
               "</title>\n<desc>" + escaped(description) + "</desc>\n<rect class=\"paper\" width=\"" + w +
               "\" height=\"" + h + "\" fill=\"#fff\"/>\n";
        all_ += "<g font-family=\"sans-serif\" fill=\"#000\">\n";
    }

    void open(std::string_view name, const pen& p) {
        all_ += "<g class=\"" + std::string(name) + "\" fill=\"none\" stroke=\"#000\" stroke-width=\"" +
                number(p.weight) + '"';
        if (!p.dashes.empty())
            all_ += " stroke-dasharray=\"" + std::string(p.dashes) + '"';
        all_ += ">\n";
    }
    void close() { all_ += "</g>\n"; }

    void line(page_point a, page_point b) {
        all_ += "<line" + attribute("x1", a.x) + attribute("y1", a.y) + attribute("x2", b.x) + attribute("y2", b.y) +
                "/>\n";
    }
    void path(std::initializer_list<page_point> points) { shape("polyline", points.begin(), points.end()); }
    void closed(const std::vector<page_point>& corners) {
        shape("polygon", corners.data(), corners.data() + corners.size());
    }
    void rectangle(const box& b) {
        all_ += "<rect" + attribute("x", b.x) + attribute("y", b.y) + attribute("width", b.width) +
                attribute("height", b.height) + "/>\n";
    }

    void dot(page_point centre, double radius) {
        all_ += "<circle" + attribute("cx", centre.x) + attribute("cy", centre.y) + attribute("r", radius) +
                " fill=\"#000\" stroke=\"none\"/>\n";
    }

    /// `at` is on the baseline. Turned text runs upward.
    void text(page_point at, std::string_view words, double size, anchor from = anchor::start, bool turned = false,
              bool bold = false) {
        all_ += "<text" + attribute("x", at.x) + attribute("y", at.y) + attribute("font-size", size);
        if (from != anchor::start)
            all_ += from == anchor::middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"";
        if (turned)
            all_ += " transform=\"rotate(-90 " + number(at.x) + ' ' + number(at.y) + ")\"";
        if (bold)
            all_ += " font-weight=\"bold\"";
        all_ += '>' + escaped(words) + "</text>\n";
    }

    std::string done() { return std::move(all_ += "</g>\n</svg>\n"); }

private:
    void shape(const char* name, const page_point* begin, const page_point* end) {
        all_.append("<").append(name).append(" points=\"");
        for (const page_point* p = begin; p != end; ++p)
            all_.append(p == begin ? "" : " ").append(number(p->x)).append(",").append(number(p->y));
        all_ += "\"/>\n";
    }

    static std::string attribute(const char* name, double value) {
        return std::string(" ") + name + "=\"" + number(value) + '"';
    }

    std::string all_;
};

} // namespace turncloth::detail

#endif
