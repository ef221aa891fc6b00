// A document written as one HTML file.
//
//   html_writer(document).write()     the text
//   in_html(text)  in_css(text)       as HTML and a string of CSS spell them
//
//   html_writer({.title = "Roll"}).write();
#ifndef TURNCLOTH_PAGE_DETAIL_HTML_WRITER_HPP
#define TURNCLOTH_PAGE_DETAIL_HTML_WRITER_HPP

#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/page/detail/html_look.hpp>
#include <turncloth/page/detail/svg_writer.hpp>
#include <turncloth/page/document.hpp>
#include <turncloth/page/svg.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace turncloth::detail {

inline std::string in_html(std::string_view text) { return escaped(fit_to_print(text)); }

/// As a string of CSS in an element of XML: every character that is no letter, digit or space by its number.
inline std::string in_css(std::string_view text) {
    constexpr char digits[] = "0123456789abcdef";
    const std::string fit = fit_to_print(text);
    std::string all;
    for (std::string_view rest = fit; !rest.empty();) {
        const character c = first_of(rest);
        const bool plain = (c.code >= 'a' && c.code <= 'z') || (c.code >= 'A' && c.code <= 'Z') ||
                           (c.code >= '0' && c.code <= '9') || c.code == ' ' || c.code >= 0xA0;
        if (plain)
            all += c.bytes;
        else
            all.append("\\0000").append(1, digits[c.code >> 4U & 0xFU]).append(1, digits[c.code & 0xFU]);
        rest.remove_prefix(c.bytes.size());
    }
    return all;
}

class html_writer {
public:
    explicit html_writer(const document& d) : from_(d) {}

    std::string write() {
        const std::string language = in_html(from_.language);
        put({"<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"", language, "\" xml:lang=\"",
             language, "\">\n<head>\n<meta charset=\"utf-8\"/>\n",
             "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"});
        element("title", from_.subtitle.empty() ? from_.title : sentence({from_.title, ", ", from_.subtitle}));
        put({"<style>\n", html_look, "@page { @bottom-left { content: \"", in_css(from_.foot), "\" }"});
        if (from_.words.of != document::own_words().of)
            put({" @bottom-right { content: counter(page) \"", in_css(from_.words.of), "\" counter(pages) }"});
        put({" }\n</style>\n</head>\n<body>\n<main>\n<header>\n"});
        element("h1", from_.title);
        if (!from_.subtitle.empty())
            element("p", from_.subtitle, "subtitle");
        put({"</header>\n"});
        put_all(from_.blocks);
        put({"</main>\n</body>\n</html>\n"});
        return std::move(all_);
    }

private:
    void put(text_parts parts) { all_ += sentence(parts); }
    void element(std::string_view name, std::string_view text, std::string_view of_class = {}) {
        put({"<", name});
        if (!of_class.empty())
            put({" class=\"", of_class, "\""});
        put({">", in_html(text), "</", name, ">\n"});
    }
    void put(const document::block& b) {
        std::visit([this](const auto& what) { put_block(what); }, b.is);
    }
    /// Drawings that follow one another stand side by side where there is room.
    void put_all(const std::vector<document::block>& blocks) {
        for (std::size_t i = 0; i < blocks.size();) {
            std::size_t end = i;
            while (end < blocks.size() && is_drawing(blocks[end]))
                ++end;
            if (end < i + 2)
                put(blocks[i++]);
            else
                put_beside(blocks, i, end, "row");
        }
    }
    /// A sentence of a step stands beside the drawing that follows it.
    void put_step(const std::vector<document::block>& blocks) {
        for (std::size_t i = 0; i < blocks.size();)
            if (i + 1 < blocks.size() && std::holds_alternative<document::paragraph>(blocks[i].is) &&
                is_drawing(blocks[i + 1]))
                put_beside(blocks, i, i + 2, "pair");
            else
                put(blocks[i++]);
    }
    void put_beside(const std::vector<document::block>& blocks, std::size_t& i, std::size_t end, const char* as) {
        put({"<div class=\"", as, "\">\n"});
        while (i < end)
            put(blocks[i++]);
        put({"</div>\n"});
    }
    static bool is_drawing(const document::block& b) {
        const auto* drawing = std::get_if<document::drawing>(&b.is);
        return drawing != nullptr && !drawing->true_to_size;
    }

    /// A level is not passed over: who hears the headings alone would look for what is missing.
    void put_block(const document::heading& h) {
        require_between<range_error>(2, h.level, level_ + 1, "the level of a heading");
        require_at_most<range_error>(h.level, 6, "the level of a heading");
        level_ = h.level;
        element("h" + std::to_string(h.level), h.text);
    }
    void put_block(const document::paragraph& p) { element("p", p.text); }
    void put_block(const document::list& l) {
        put({"<ul>\n"});
        for (const std::string& item : l.items)
            element("li", item);
        put({"</ul>\n"});
    }
    void put_block(const document::ticks& t) {
        put({"<ul class=\"ticks\">\n"});
        for (const std::string& item : t.items)
            put({"<li>", tick({}), " <span>", in_html(item), "</span></li>\n"});
        put({"</ul>\n"});
    }
    void put_block(const document::blanks& b) {
        put({"<ul class=\"blanks\">\n"});
        for (const std::string& name : b.names)
            put({"<li><span>", in_html(name), "</span> ", blank(name), "</li>\n"});
        put({"</ul>\n"});
    }
    void put_block(const document::caution& c) {
        put({"<div class=\"", c.boxed ? "caution" : "reminder", "\" role=\"note\">\n"});
        const std::string word = c.word.empty() ? c.word : c.word + ": ";
        for (const std::string& sentence : c.sentences)
            put({"<p>",
                 &sentence == c.sentences.data() && !word.empty() ? "<strong>" + in_html(word) + "</strong>" : "",
                 in_html(sentence), "</p>\n"});
        put({"</div>\n"});
    }
    void put_block(const document::steps& s) {
        put({"<ol class=\"steps\">\n"});
        for (const document::step& step : s.all) {
            put({"<li>\n"});
            put_step(step.blocks);
            put({"</li>\n"});
        }
        put({"</ol>\n"});
    }

    void put_block(const document::drawing& d) {
        page shown = d.of;
        shown.title = fit_to_print(d.caption.empty() ? shown.title : d.caption);
        if (!d.shows.empty())
            shown.description = fit_to_print(d.shows);
        for (page_words& words : shown.words)
            words.text = fit_to_print(words.text);
        put({"<figure", d.true_to_size ? " class=\"true-to-size\"" : "", ">\n",
             to_svg_inside(shown, sentence({"drawing-", ++drawings_}))});
        if (!d.caption.empty())
            element("figcaption", d.caption);
        put({"</figure>\n"});
    }

    /// A wide table is moved sideways on a narrow screen, with the keys too, and named for those who come to it so.
    void put_block(const document::table& t) {
        put({"<div class=\"table\" role=\"region\" tabindex=\"0\" aria-label=\"", in_html(t.caption),
             "\">\n<table>\n"});
        element("caption", t.caption);
        put({"<thead><tr>"});
        for (const std::string& column : t.columns)
            put({"<th scope=\"col\">", in_html(column), "</th>"});
        put({"</tr></thead>\n<tbody>\n"});
        for (const std::vector<document::cell>& row : t.rows)
            put_row(t, row);
        put({"</tbody>\n</table>\n</div>\n"});
    }
    void put_row(const document::table& t, const std::vector<document::cell>& row) {
        require_between<range_error>(t.columns.size(), row.size(), t.columns.size(), "the number of cells of a row");
        bool to_name = t.rows_have_names;
        put({"<tr>"});
        for (const document::cell& c : row) {
            const bool words = c.holds == document::in_cell::words || c.holds == document::in_cell::figure;
            const bool names = to_name && words;
            to_name = to_name && !words;
            put({names ? "<th scope=\"row\"" : "<td", c.holds == document::in_cell::figure ? " class=\"figure\"" : "",
                 ">", written(c), names ? "</th>" : "</td>"});
        }
        put({"</tr>\n"});
    }
    std::string written(const document::cell& c) const {
        switch (c.holds) {
        case document::in_cell::tick:
            return tick(c.text);
        case document::in_cell::blank:
            return blank(c.text);
        case document::in_cell::words:
        case document::in_cell::figure:
            break;
        }
        return in_html(c.text);
    }

    std::string tick(std::string_view what) const {
        return sentence({"<span class=\"tick\" role=\"img\" aria-label=\"", in_html(from_.words.box_to_tick),
                         what.empty() ? "" : ": ", in_html(what), "\"></span>"});
    }
    std::string blank(std::string_view what) const {
        return sentence({"<span class=\"blank\" role=\"img\" aria-label=\"", in_html(from_.words.room_to_write),
                         what.empty() ? "" : ": ", in_html(what), "\"></span>"});
    }

    const document& from_;
    std::string all_;
    int level_ = 1;
    std::size_t drawings_ = 0;
};

} // namespace turncloth::detail

#endif
