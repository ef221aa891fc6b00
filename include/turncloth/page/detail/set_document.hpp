// A document set as a galley, each block in the room that it is given.
//
//   document_setter(document, letters, width, height)     of the room on a page
//     .set()                                              all its blocks, for page_filler (galley.hpp)
#ifndef TURNCLOTH_PAGE_DETAIL_SET_DOCUMENT_HPP
#define TURNCLOTH_PAGE_DETAIL_SET_DOCUMENT_HPP

#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/page/detail/galley.hpp>
#include <turncloth/page/detail/set_table.hpp>
#include <turncloth/page/detail/set_words.hpp>
#include <turncloth/page/document.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace turncloth::detail {

inline constexpr pen box_pen = {"box", 0.35}, box_mark_pen = {"box mark", 1.2}, item_pen = {"list item", 1.1},
                     step_rule_pen = {"step rule", 0.15, {}, 0.5};

class document_setter {
public:
    document_setter(const document& d, const document_letters& by, double width, double height)
        : from_(d), by_(by), width_(width), height_(height) {}

    galley set() {
        constexpr text_style title{7.5, 10, true}, subtitle{4.6, 6.6};
        add_words(from_.title, title, {.keeps = true});
        add_words(from_.subtitle, subtitle, {.keeps = true});
        galley_strip rule{.height = 1.5, .above = 1, .keeps = true};
        rule.draw(head_rule_pen, {{0, 0.3}, {width_, 0.3}});
        rule.draw(head_rule_pen, {{0, 1.2}, {width_, 1.2}});
        made_.add(std::move(rule));
        put_all(from_.blocks);
        return std::move(made_);
    }

private:
    /// Where blocks stand: at the left of it there is the number of a step.
    struct place {
        double above = 0;
        bool keeps = false; ///< all its lines the next
        double indent = 0;
        double free_at_right = 0;
        double taken = 0; ///< of the first line
    };
    static constexpr double between = 2.2, beside = 5; // blocks, one below the other; what stands side by side
    static constexpr double step_indent = 11;
    static constexpr double most_alone = 0.8, most_in_row = 0.68; // of the size of a drawing
    static constexpr double most_high = 0.58, two_high = 0.4;     // of the height of a page: one alone, and two on it
    static constexpr double kept_whole = 70;                      // mm: a box that is higher may be parted

    double room() const { return width_ - left_; }

    /// At least two lines of a paragraph stand on a page.
    void add_words(std::string_view text, const text_style& style, const place& at) {
        const std::vector<std::string> lines = by_.lines(text, style, room() - at.indent - at.free_at_right, at.taken);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            galley_strip s{.height = style.step, .above = i == 0 ? at.above : 0};
            s.keeps = at.keeps || (i + 1 < lines.size() && (i == 0 || i + 2 == lines.size()));
            s.write({left_ + at.indent, line_in(style, 0)}, lines[i], style.size, style.bold);
            made_.add(std::move(s));
        }
    }

    static bool is_drawing(const document::block& b) {
        const auto* drawing = std::get_if<document::drawing>(&b.is);
        return drawing != nullptr && !drawing->true_to_size;
    }
    /// Drawings that follow one another stand two by two.
    void put_all(const std::vector<document::block>& blocks) {
        for (std::size_t i = 0; i < blocks.size();) {
            if (i + 1 < blocks.size() && is_drawing(blocks[i]) && is_drawing(blocks[i + 1])) {
                put_row(std::get<document::drawing>(blocks[i].is), std::get<document::drawing>(blocks[i + 1].is));
                i += 2;
            } else {
                const std::size_t first = made_.all.size();
                put(blocks[i]);
                if (i > 0 && i + 1 < blocks.size())
                    keep_introduction(blocks[i - 1], blocks[i], first);
                ++i;
            }
        }
    }
    /// A few lines below a heading tell of what comes next.
    void keep_introduction(const document::block& before, const document::block& b, std::size_t first) {
        constexpr std::size_t most = 4;
        const auto is = [](const document::block& of, auto kind) {
            return std::holds_alternative<decltype(kind)>(of.is);
        };
        if (is(before, document::heading{}) && is(b, document::paragraph{}) && made_.all.size() - first <= most)
            for (std::size_t i = first; i < made_.all.size(); ++i)
                made_.all[i].keeps = true;
    }
    void put(const document::block& b) {
        std::visit([this](const auto& what) { put_block(what); }, b.is);
    }

    void put_block(const document::heading& h) {
        constexpr text_style sizes[] = {{5, 6.6, true}, {4, 5.4, true}, {read_text.size, read_text.step, true}};
        const auto level = static_cast<std::size_t>(std::clamp(h.level, 2, 4) - 2);
        constexpr double above[] = {8, 5.5, 4};
        add_words(h.text, sizes[level], {.above = above[level], .keeps = true});
        galley_strip below{.height = level == 0 ? 1.2 : 0.4, .keeps = true};
        if (level == 0)
            below.draw(rule_pen, {{left_, 0.2}, {width_, 0.2}});
        made_.add(std::move(below));
    }
    void put_block(const document::paragraph& p) { add_words(p.text, read_text, {.above = between}); }
    void put_block(const document::list& l) {
        for (const std::string& item : l.items)
            put_item(item, [](galley_strip& on, page_point at) {
                on.draw(item_pen, {{at.x + 1.5, at.y + read_text.step / 2}});
            });
    }
    /// It belongs to what it follows.
    void put_block(const document::ticks& t) {
        if (left_ > 0)
            made_.keep_last();
        for (const std::string& item : t.items)
            put_item(item, draw_tick);
    }
    template <class Mark>
    void put_item(const std::string& item, Mark mark) {
        constexpr double indent = 5.5;
        const std::size_t first = made_.all.size();
        add_words(item.empty() ? std::string(unbreakable_space) : item, read_text, {.above = 1.2, .indent = indent});
        if (first < made_.all.size())
            mark(made_.all[first], {left_, 0});
    }
    void put_block(const document::blanks& b) {
        constexpr double least = 40;
        for (const std::string& name : b.names) {
            const std::vector<std::string> lines = by_.lines(name, read_text, room() - least);
            const std::string last = lines.empty() ? std::string() : lines.back();
            galley_strip s{.height = 2 * read_text.step};
            for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
                s.write({left_, line_in(read_text, s.height - read_text.step)}, lines[i], read_text.size);
                s.height += read_text.step;
            }
            const double y = line_in(read_text, s.height - read_text.step);
            s.write({left_, y}, last, read_text.size);
            s.draw(blank_pen, {{left_ + by_.width(last, read_text) + 3, y + 0.6}, {width_, y + 0.6}});
            made_.add(std::move(s));
        }
    }

    /// One that is boxed has a heavy line at its left. It keeps what it warns of.
    void put_block(const document::caution& c) {
        constexpr double pad = 1.6, indent = 4;
        const std::size_t first = made_.all.size();
        if (c.boxed)
            made_.add({.height = pad, .above = between, .keeps = true});
        const text_style& style = c.boxed ? read_text : read_small;
        for (const std::string& sentence : c.sentences) {
            const bool begins = &sentence == c.sentences.data() && !c.word.empty();
            add_caution_line(
                begins ? c.word + ":" : std::string(), sentence, style,
                {.above = c.boxed ? 0.6 : between, .indent = c.boxed ? indent : 0, .free_at_right = c.boxed ? 2.5 : 0});
        }
        if (c.boxed)
            made_.add({.height = pad});
        double height = 0;
        for (std::size_t i = first; i < made_.all.size(); ++i)
            height += made_.all[i].height + made_.all[i].above;
        for (std::size_t i = first; i < made_.all.size(); ++i)
            made_.all[i].keeps = made_.all[i].keeps || height <= kept_whole || i + 2 >= made_.all.size();
        for (std::size_t i = first; c.boxed && i < made_.all.size(); ++i)
            draw_box(made_.all[i], i == first, i + 1 == made_.all.size());
    }
    /// Its first word is bold.
    void add_caution_line(const std::string& word, const std::string& sentence, const text_style& style, place at) {
        const std::size_t first = made_.all.size();
        const std::string all = word.empty() ? sentence : word + " " + sentence;
        const text_style bold{style.size, style.step, true};
        if (!word.empty())
            at.taken = by_.width(word, bold) - by_.width(word, style);
        add_words(all, style, at);
        if (word.empty() || first == made_.all.size())
            return;
        std::vector<page_words>& line = made_.all[first].words;
        const std::string told = fit_to_print(word), whole = line.front().text;
        if (whole.rfind(told + " ", 0) != 0)
            return;
        page_words rest = line.front();
        rest.text = whole.substr(told.size() + 1);
        rest.at.x += by_.width(told, bold) + by_.width(" ", style);
        line.front().text = told;
        line.front().bold = true;
        line.push_back(std::move(rest));
    }
    void draw_box(galley_strip& on, bool first, bool last) const {
        const double top = first ? 0 : -on.above, right = width_ - 0.2, left = left_ + 0.6;
        on.draw(box_mark_pen, {{left, top}, {left, on.height}});
        on.draw(box_pen, {{right, top}, {right, on.height}});
        if (first)
            on.draw(box_pen, {{left, 0}, {right, 0}});
        if (last)
            on.draw(box_pen, {{left, on.height}, {right, on.height}});
    }

    /// Numbered, each under a rule. A sentence stands beside the drawing that follows it.
    void put_block(const document::steps& s) {
        std::size_t number = 0;
        for (const document::step& step : s.all) {
            galley_strip begins{.height = 1.2, .above = 3, .keeps = true};
            begins.draw(step_rule_pen, {{left_, 0}, {width_, 0}});
            begins.write({left_, line_in(read_text, begins.height) + 0.4}, std::to_string(++number), 5.2, true);
            made_.add(std::move(begins));
            const std::size_t first = made_.all.size();
            left_ += step_indent;
            put_step(step.blocks);
            left_ -= step_indent;
            if (first == made_.all.size())
                made_.add({.height = read_text.step});
        }
    }
    void put_step(const std::vector<document::block>& blocks) {
        for (std::size_t i = 0; i < blocks.size();) {
            const auto* words = std::get_if<document::paragraph>(&blocks[i].is);
            if (words != nullptr && i + 1 < blocks.size() && is_drawing(blocks[i + 1])) {
                put_pair(*words, std::get<document::drawing>(blocks[i + 1].is));
                i += 2;
            } else {
                put(blocks[i++]);
            }
        }
    }
    void put_pair(const document::paragraph& p, const document::drawing& d) {
        const double factor = factor_of(d, 0.56 * room(), most_in_row, two_high),
                     wide = std::max(d.of.width * factor, 0.3 * room());
        const std::vector<std::string> lines = by_.lines(p.text, read_text, room() - wide - beside);
        const double words_high = static_cast<double>(lines.size()) * read_text.step;
        if (words_high > height_ / 2) { // narrow columns are for short sentences
            put_block(p);
            made_.keep_last();
            put_block(d);
            return;
        }
        galley_strip s{.height = words_high, .above = between};
        for (std::size_t i = 0; i < lines.size(); ++i)
            s.write({left_, line_in(read_text, static_cast<double>(i) * read_text.step)}, lines[i], read_text.size);
        s.height = std::max(words_high, place_drawing(s, d, {width_ - wide, 0}, factor, wide));
        made_.add(std::move(s));
    }

    double factor_of(const document::drawing& d, double wide, double most, double high) const {
        return std::min({most, wide / d.of.width, high * height_ / d.of.height});
    }
    static void draw(galley_strip& on, const document::drawing& d, page_point at, double factor) {
        page shown = d.of;
        for (page_words& w : shown.words)
            w.text = fit_to_print(w.text);
        on.draw(shown, at, factor);
    }
    /// With its caption below, so wide; returns how high that is.
    double place_drawing(galley_strip& on, const document::drawing& d, page_point at, double factor,
                         double wide) const {
        draw(on, d, at, factor);
        double y = at.y + d.of.height * factor;
        for (const std::string& line : by_.lines(d.caption, read_small, wide)) {
            on.write({at.x, line_in(read_small, y)}, line, read_small.size);
            y += read_small.step;
        }
        return y - at.y;
    }
    void put_block(const document::drawing& d) {
        if (d.true_to_size && (d.of.width > room() || d.of.height > height_ - 4 * read_small.step))
            refuse<range_error>("a drawing that is true to size is larger than a page has room for",
                                refusal{.kind = fault::too_large, .what = "a drawing that is true to size"});
        const double factor = d.true_to_size ? 1 : factor_of(d, room(), most_alone, most_high);
        galley_strip s{.height = d.of.height * factor, .above = between + 1, .keeps = !d.caption.empty()};
        draw(s, d, {left_, 0}, factor);
        made_.add(std::move(s));
        add_words(d.caption, read_small, {});
    }
    void put_row(const document::drawing& a, const document::drawing& b) {
        const double each = (room() - beside) / 2;
        galley_strip s{.above = between + 1};
        s.height = place_drawing(s, a, {left_, 0}, factor_of(a, each, most_in_row, most_high), each);
        s.height = std::max(s.height, place_drawing(s, b, {left_ + each + beside, 0},
                                                    factor_of(b, each, most_in_row, most_high), each));
        made_.add(std::move(s));
    }

    void put_block(const document::table& t) { table_setter(t, by_, left_, room()).add_to(made_); }

    const document& from_;
    const document_letters& by_;
    double width_, height_, left_ = 0;
    galley made_{};
};

} // namespace turncloth::detail

#endif
