// A page written as SVG.
//
//   svg_writer().write(page)         with a declaration; write(page, id) without
//   escaped(text)  number(x)         as XML spells them
//
//   svg_writer().write(page{.width = 210, .height = 297});
#ifndef TURNCLOTH_PAGE_DETAIL_SVG_WRITER_HPP
#define TURNCLOTH_PAGE_DETAIL_SVG_WRITER_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/page/detail/lettering.hpp>

#include <cmath>
#include <cstddef>
#include <string>
#include <string_view>

namespace turncloth::detail {

inline std::string escaped(std::string_view text) {
    constexpr std::string_view marks = "&<>\"'", names[] = {"&amp;", "&lt;", "&gt;", "&quot;", "&#39;"};
    std::string all;
    each_character(text, [&](std::string_view c) {
        const std::size_t mark = marks.find(c);
        all += mark == std::string_view::npos ? c : names[mark];
    });
    return all;
}

/// To a millionth, so that even a drawing at 1:1000 is true to 1/1000 mm of cloth. Throws range_error for what is not
/// finite or beyond 10^12.
inline std::string number(double x) {
    if (!is_within(x, 1e12))
        refuse<range_error>("a number on a page must be finite and at most 1000000000000: it was " + std::to_string(x),
                            refusal{.kind = fault::too_large,
                                    .what = "a number on a page",
                                    .given = amount_of(x),
                                    .most = amount_of(std::int64_t{1'000'000'000'000})});
    const long long millionths = std::llround(std::fabs(x) * 1e6), part = millionths % 1'000'000;
    std::string text = x < 0 && millionths > 0 ? "-" : "";
    text += std::to_string(millionths / 1'000'000);
    if (part == 0)
        return text;
    const std::size_t point = text.size();
    text += std::to_string(part + 1'000'000); // seven digits, of which the first becomes the point
    text[point] = '.';
    text.erase(text.find_last_not_of('0') + 1);
    return text;
}

class svg_writer {
public:
    std::string write(const page& p) {
        put({"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"});
        return write(p, {});
    }
    /// Named by its title and its description where it has an identifier, as it is one of several.
    std::string write(const page& p, const std::string& id) {
        const std::string w = number(p.width), h = number(p.height);
        const auto identified = [&](const char* what) {
            return id.empty() ? std::string() : sentence({" id=\"", escaped(id), what, "\""});
        };
        put({"<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\""});
        if (!id.empty())
            put({" aria-labelledby=\"", escaped(id), "-title\" aria-describedby=\"", escaped(id), "-desc\""});
        put({" width=\"", w, "mm\" height=\"", h, "mm\" viewBox=\"0 0 ", w, " ", h, "\">\n"});
        put({"<title", identified("-title"), ">", escaped(p.title), "</title>\n"});
        put({"<desc", identified("-desc"), ">", escaped(p.description), "</desc>\n"});
        put({"<rect class=\"paper\" width=\"", w, "\" height=\"", h, "\" fill=\"#fff\"/>\n"});
        put({"<g font-family=\"sans-serif\" fill=\"#000\">\n"});
        const page_stroke* before = nullptr;
        for (const page_stroke& s : p.strokes) {
            if (before == nullptr || before->with != s.with || before->dash_from != s.dash_from) {
                put({before == nullptr ? "" : "</g>\n"});
                open(s);
            }
            put_stroke(s);
            before = &s;
        }
        put({before == nullptr ? "" : "</g>\n"});
        for (const page_words& words : p.words)
            put_words(words);
        put({"</g>\n</svg>\n"});
        return std::move(all_);
    }

private:
    void put(text_parts parts) {
        for (const text_part& part : parts)
            part.write_to(all_, nullptr);
    }

    void open(const page_stroke& s) {
        put({"<g class=\"", s.with.means.text(), "\" fill=\"none\" stroke=\"", colour(s.with), "\" stroke-width=\"",
             number(s.with.weight), "\""});
        std::string dashes;
        for (std::size_t i = 0; i < s.with.dashes.size() && s.with.dashes[i] > 0; ++i)
            dashes.append(i == 0 ? "" : " ").append(number(s.with.dashes[i]));
        if (!dashes.empty())
            put({" stroke-dasharray=\"", dashes, "\""});
        if (s.dash_from != 0)
            put({" stroke-dashoffset=\"", number(s.dash_from), "\""});
        put({">\n"});
    }
    static std::string colour(const pen& p) {
        constexpr char digits[] = "0123456789abcdef";
        const auto level = static_cast<std::size_t>(std::lround(std::fmin(1, std::fmax(0, p.grey)) * 15));
        return "#" + std::string(3, digits[level]);
    }

    void put_stroke(const page_stroke& s) {
        const auto& points = s.points;
        if (points.size() == 1) {
            put({"<circle cx=\"", number(points[0].x), "\" cy=\"", number(points[0].y), "\" r=\"",
                 number(s.with.weight / 2), "\" fill=\"", colour(s.with), "\" stroke=\"none\"/>\n"});
        } else if (points.size() == 2) {
            put({"<line x1=\"", number(points[0].x), "\" y1=\"", number(points[0].y), "\" x2=\"", number(points[1].x),
                 "\" y2=\"", number(points[1].y), "\"/>\n"});
        } else {
            put({s.closed ? "<polygon" : "<polyline", " points=\""});
            for (std::size_t i = 0; i < points.size(); ++i)
                put({i == 0 ? "" : " ", number(points[i].x), ",", number(points[i].y)});
            put({"\"/>\n"});
        }
    }

    void put_words(const page_words& w) {
        const std::string x = number(w.at.x), y = number(w.at.y);
        put({"<text x=\"", x, "\" y=\"", y, "\" font-size=\"", number(w.size), "\""});
        if (w.anchor != set_from::start)
            put({w.anchor == set_from::middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\""});
        if (w.turned != 0)
            put({" transform=\"rotate(", number(-w.turned), " ", x, " ", y, ")\""});
        if (w.bold)
            put({" font-weight=\"bold\""});
        put({">", escaped(w.text), "</text>\n"});
    }

    std::string all_;
};

} // namespace turncloth::detail

#endif
