// What surrounds a drawing on its page: lists, kinds of line, scale with its bars, title block and small print.
//
//   frame_words                             what is said there
//   page_frame(words, options, width, height)    takes its room from the foot of the page upward
//   .picture                                the room that is left for the drawing
//   .take_only(height)                      a page that is fitted to its content gives back the rest
//   .begin(scale)  .draw(page, scale)       the page with title and description; the frame upon it
//   best_page(options, make)                upright or on its side: whichever make(width, height).rank() is less
//   scale_for(fits)  round_number(enough)   the first of 1, 2, 4, 5, 8, 10, 20, ... and of 1, 2, 5, 10, 20, ...
//   finer_scale_for(fits)                   the first of a series of ten steps from 1 to 10
#ifndef TURNCLOTH_PAGE_DETAIL_FRAME_HPP
#define TURNCLOTH_PAGE_DETAIL_FRAME_HPP

#include <turncloth/page/detail/labels.hpp>
#include <turncloth/page/detail/svg_writer.hpp>
#include <turncloth/page/paper.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline constexpr double page_margin = 10, page_gap = 4;

// Pens after the idea of ISO 128: thick and continuous for what is seen, broken for what is not there yet.
inline constexpr pen frame_pen = {"frame", 0.35}, leader_pen = {"leader", 0.15},
                     stitching_pen = {"stitching", 0.3, {1, 0.8}}, fold_pen = {"fold", 0.4, {3, 1.5}},
                     finished_pen = {"finished", 0.2, {10, 1.2}}, grain_pen = {"grain", 0.25};

/// The first that is enough of these steps, of ten times them, of a hundred times, ...: at most 8 x 10^15, which a double
/// holds, and an integer of 64 bits.
template <class Number, class Enough>
Number first_in_series(std::initializer_list<std::int64_t> steps, Enough enough) {
    Number last = 1;
    for (std::int64_t ten = 1; ten <= 1'000'000'000'000'000; ten *= 10)
        for (const std::int64_t step : steps)
            if (enough(last = static_cast<Number>(step * ten)))
                return last;
    return last;
}
/// In 64 bits wherever it is compiled: a bar at a small scale stands for more units than 32 bits count.
template <class Enough>
std::uint64_t round_number(Enough enough) {
    return first_in_series<std::uint64_t>({1, 2, 5}, enough);
}
template <class Fits>
double scale_for(Fits fits) {
    return first_in_series<double>({1, 2, 4, 5, 8}, fits);
}
/// 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, ...
template <class Fits>
double finer_scale_for(Fits fits) {
    return first_in_series<double>({10, 12, 15, 20, 25, 30, 40, 50, 60, 80},
                                   [&](double ten) { return fits(ten / 10); }) /
           10;
}

/// Throws range_error for more than a drawing shows: 1 km of cloth, 100000 pieces, lines or cuts.
inline void require_drawable(std::initializer_list<double> sides) {
    constexpr std::int64_t most = 1'000'000;
    for (const double side : sides)
        if (!is_within(side, static_cast<double>(most)))
            refuse<range_error>("what is drawn must be at most 1000000 mm long and wide: it was " +
                                    std::to_string(side) + " mm",
                                refusal{.kind = fault::too_large,
                                        .what = "a side of what is drawn",
                                        .given = amount{0, 0, side, "mm"},
                                        .most = amount{most, 1, static_cast<double>(most), "mm"}});
}
inline void require_few_enough(std::uint64_t count, const char* what) {
    require_at_most<range_error>(count, std::uint64_t{100'000}, what);
}

/// A, B, ... Z, AA, AB, ...: pieces have letters, as cuts have numbers.
inline std::string letter_of(std::size_t i) {
    const std::string last(1, static_cast<char>('A' + i % 26));
    return i < 26 ? last : letter_of(i / 26 - 1).append(last);
}

inline std::string scale_text(double scale) {
    return scale < 1 ? sentence({"scale ", number(1 / scale), ":1"}) : sentence({"scale 1:", number(scale)});
}

/// The lowest `height` of what is left of the page.
inline page_area lowest(page_area& rest, double height) {
    rest.height -= height;
    return {rest.x, rest.bottom(), rest.width, height};
}

/// A pen, and how the legend tells of what is drawn with it.
struct kind_of_line {
    pen with;
    std::string_view words;
    bool ticks = false; ///< strokes on an edge, no line of its own
};

struct frame_words {
    std::string project{}, title{};
    std::vector<std::string> facts{};              ///< below the title
    double facts_size = small_size;                ///< of their letters
    std::vector<kind_of_line> legend{};            ///< the kinds of line
    std::vector<std::string> sentences{};          ///< beside it, under the first as a heading
    std::vector<std::vector<std::string>> lists{}; ///< each in columns above the foot, the last lowest
    std::size_t told = 0;                          ///< which list the description has
    double most_list = 0.33;                       ///< of the height of the page, that a list may take
    std::size_t sentence_lines = 5;                ///< that one of the sentences may take
    std::size_t most_beside = 100;                 ///< lines of them beside the rest: more have the whole width
    std::vector<std::string> small_print{};
    bool in_pages = false; ///< a line more below the title: which page it is
};

/// Entries in columns, each read down. What finds no room is counted by the last.
struct list_in_columns {
    std::vector<std::string> entries{};
    std::size_t rows = 0, left_out = 0;
    double column = 0;

    list_in_columns(const lettering& by, const std::vector<std::string>& all, double width, double height)
        : entries(all) {
        if (all.empty())
            return;
        const double widest = std::min(width, by.widest(all, small_size) + page_gap);
        const auto columns = std::max<std::size_t>(1, static_cast<std::size_t>(width / widest)),
                   most = columns * std::max<std::size_t>(1, static_cast<std::size_t>(height / small_line_height));
        if (all.size() > most) {
            left_out = all.size() - most + 1;
            entries.resize(most - 1);
            entries.push_back(sentence({"and ", left_out, " more"}));
        }
        rows = (entries.size() + columns - 1) / columns;
        column = width / static_cast<double>(columns);
    }
    double height() const { return entries.empty() ? 0 : static_cast<double>(rows) * small_line_height + page_gap; }

    void draw(page& on, const lettering& by, page_point at) const {
        for (std::size_t i = 0; i < entries.size(); ++i) {
            const std::size_t across = i / rows, down = i % rows;
            on.write({at.x + static_cast<double>(across) * column,
                      at.y + page_gap + static_cast<double>(down) * small_line_height},
                     by.shortened(entries[i], small_size, column - 1), small_size);
        }
    }
};

class page_frame {
public:
    page_area picture;
    lettering by;

    page_frame(const frame_words& words, const drawing_options& options, double width, double height)
        : picture{page_margin, page_margin, width - 2 * page_margin, height - 2 * page_margin},
          by(options.letters),
          words_(words),
          options_(&options),
          width_(width),
          height_(height) {
        if (options.in_document) {
            constexpr double margin = 3; // there is more around it
            picture = {margin, margin, width - 2 * margin, height - 2 * margin};
            take_legend_and_numbers();
            return;
        }
        if (!options.for_screen && !words_.small_print.empty())
            words_.small_print[0].insert(0, word("Print at 100 %. "));
        for (const std::string& sentence : words_.small_print)
            print_.add(by, sentence, small_text, picture.width, 4);
        print_area_ = lowest(picture, print_.height() + 1);
        take_foot();
        for (auto list = words.lists.rbegin(); list != words.lists.rend(); ++list)
            take_list(*list);
    }

    std::size_t left_out = 0; ///< entries of lists
    bool lies() const { return width_ > height_; }
    double height() const { return height_; }

    /// A page that is fitted to its content gives back what is more than this.
    void take_only(double height) {
        if (!options_->on.is_fitted() && !options_->for_screen)
            return;
        const double spare = std::max(0.0, picture.height - height);
        picture.height -= spare;
        height_ -= spare;
        for (page_area* a : {&print_area_, &legend_, &sentences_area_, &bars_, &title_})
            a->y -= spare;
        for (auto& list : lists_)
            list.second.y -= spare;
    }

    /// The page with its title, and in its description all that is said, which an ear can follow: `more` of it last.
    page begin(double scale, const std::vector<std::string>& warnings = {},
               const std::vector<std::string>& more = {}) const {
        std::string all;
        const auto tell = [&](const std::string& words) {
            all +=
                sentence({all.empty() ? "" : " ", plain(words), words.back() == '.' || words.back() == ':' ? "" : "."});
        };
        for (const auto* some : {&warnings, &words_.facts})
            std::for_each(some->begin(), some->end(), tell);
        if (!options_->for_screen)
            tell(scale_text(scale));
        for (std::size_t i = 1; i < words_.sentences.size(); ++i)
            tell(words_.sentences[i]);
        if (words_.told < words_.lists.size())
            std::for_each(words_.lists[words_.told].begin(), words_.lists[words_.told].end(), tell);
        std::for_each(more.begin(), more.end(), tell);
        std::string title = words_.project.empty() ? words_.title : sentence({words_.project, ": ", words_.title});
        return {width_, height_, std::move(title), std::move(all)};
    }

    /// `which` is what a page of several says of itself.
    page draw(page on, double scale, const std::string& which = {}) const {
        for (const auto& [list, where] : lists_)
            list.draw(on, by, {where.x, where.y});
        draw_legend(on);
        if (!options_->in_document) {
            sentences_.draw(on, {sentences_area_.x, sentences_area_.y + 3 - line_height});
            if (!options_->for_screen)
                draw_scale(on, scale);
            draw_title(on, which);
            print_.draw(on, {print_area_.x, print_area_.y + 1});
        }
        return options_->for_screen ? enlarged(std::move(on)) : on;
    }

    /// How much larger words are on a screen, where paper is as large.
    static constexpr double on_screen = 1.4;

private:
    static constexpr double legend_width = 44, bars_width = 66, bars_height = 26;

    static text_style in_title(double size, bool bold = false) { return {size, size * 1.4, bold}; }

    /// Side by side, or one below the other on a narrow page. Where there are no scale bars the sentences have a place
    /// above the rest.
    void take_foot() {
        const bool bars = !options_->for_screen;
        const double room = picture.width, least = legend_width + (bars ? bars_width + page_gap : 0) + page_gap;
        const bool narrow = room < least + 70;
        const double title_width = narrow ? room : (room > 200 ? 92 : std::min(74.0, room - least));
        set_title(title_width);
        const double middle = room - legend_width - title_width - 2 * page_gap;
        const double legend_height = 5 + 5 * static_cast<double>(words_.legend.size());
        const double title_height =
            2.5 + heading_.height() + facts_.height() + (words_.in_pages ? 2 * in_title(small_size).step : 0);
        const auto set_sentences = [&](double width) {
            sentences_ = {};
            for (const std::string& s : words_.sentences)
                sentences_.add(by, s, sentences_.lines.empty() ? bold_text : body_text, width, words_.sentence_lines);
        };
        bool beside = bars && !narrow;
        set_sentences(beside ? middle : room);
        if (beside && sentences_.lines.size() > words_.most_beside) {
            beside = false;
            set_sentences(room);
        }
        const double sentences = sentences_.lines.empty() ? 0 : sentences_.height() + 2;
        if (narrow) {
            title_ = lowest(picture, title_height);
            if (bars)
                bars_ = lowest(picture, bars_height);
            legend_ = lowest(picture, legend_height + page_gap);
        } else {
            const page_area foot = lowest(
                picture,
                std::max({legend_height, title_height, bars ? bars_height + (beside ? sentences : 0) : 0}) + page_gap);
            const double y = foot.y + page_gap, height = foot.height - page_gap;
            legend_ = {foot.x, y, legend_width, height};
            title_ = {foot.right() - title_width, y, title_width, height};
            bars_ = {foot.x + legend_width + page_gap, foot.bottom() - bars_height, middle, bars_height};
            sentences_area_ = {bars_.x, y, middle, sentences};
        }
        if (!beside)
            sentences_area_ = lowest(picture, sentences);
    }

    void take_list(const std::vector<std::string>& entries) {
        const list_in_columns made(by, entries, picture.width, height_ * words_.most_list);
        lists_.emplace_back(made, lowest(picture, made.height()));
        left_out += made.left_out;
    }

    /// In columns, without a heading; of the lists only the last, which has what numbers in the picture stand for.
    void take_legend_and_numbers() {
        legend_columns_ = std::max<std::size_t>(1, static_cast<std::size_t>(picture.width / legend_width));
        const std::size_t rows = (words_.legend.size() + legend_columns_ - 1) / legend_columns_;
        legend_column_ = picture.width / static_cast<double>(legend_columns_);
        legend_ = lowest(picture, 5 * static_cast<double>(rows) + page_gap);
        if (!words_.lists.empty())
            take_list(words_.lists.back());
    }

    void set_title(double width) {
        heading_.add(by, words_.project, in_title(body_size), width - 6, 2);
        heading_.add(by, words_.title, in_title(4.5, true), width - 6, 2);
        for (const std::string& fact : words_.facts)
            facts_.add(by, fact, in_title(words_.facts_size), width - 6, 4);
    }

    void draw_title(page& on, const std::string& which) const {
        on.draw_closed(frame_pen, title_);
        text_block page_words;
        page_words.add(by, which, in_title(small_size), title_.width - 6, 2);
        double down = title_.y + 1;
        for (const text_block* part : {&heading_, &std::as_const(page_words), &facts_})
            down = part->draw(on, {title_.x + 3, down});
    }

    void draw_legend(page& on) const {
        double y = legend_.y + 3, x = legend_.x;
        if (!options_->in_document)
            on.write({x, y}, sentence({"Lines"}), body_size).bold = true;
        for (std::size_t i = 0; i < words_.legend.size(); ++i) {
            const kind_of_line& l = words_.legend[i];
            y += i % legend_columns_ == 0 ? 5 : 0;
            x = legend_.x + static_cast<double>(i % legend_columns_) * legend_column_;
            if (l.ticks)
                for (const double off : {3.5, 5.3, 7.1})
                    on.draw(l.with.meaning("legend"), {{x + off, y - 0.2}, {x + off + 0.9, y - 1.8}});
            else
                on.draw(l.with.meaning("legend"), {{x, y - 1}, {x + 11, y - 1}});
            on.write({x + 13, y}, by.shortened(word(l.words), small_size, legend_column_ - 13), small_size);
        }
    }

    void draw_scale(page& on, double scale) const {
        const double x = bars_.x, y = bars_.y + 4;
        on.write({x, y}, scale_text(scale), body_size).bold = true;
        const double inches = scale_bar(on, {x, y + 12}, 25.4, " in", scale),
                     centimetres = scale_bar(on, {x, y + 20}, 10, " cm", scale);
        const auto tenths = [](double length) { return with_decimal_marks(number(std::round(length * 10) / 10)); };
        on.write({x, y + small_line_height + 0.6},
                 sentence({"bars print ", tenths(inches), " and ", tenths(centimetres), " mm long"}), small_size);
    }
    /// Of whole units of cloth; returns its length on paper.
    static double scale_bar(page& on, page_point start, double unit, const char* name, double scale) {
        const auto length = [&](std::uint64_t n) { return static_cast<double>(n) * unit / scale; };
        std::uint64_t most = 1;
        round_number([&](std::uint64_t n) {
            most = length(n) <= 51 ? n : most;
            return length(n) > 51;
        });
        const std::uint64_t step = round_number([&](std::uint64_t n) { return length(n) >= 1.2 && most % n == 0; });
        on.draw(scale_pen, {start, {start.x + length(most), start.y}});
        for (std::uint64_t n = 0; n <= most; n += step)
            on.draw(scale_pen,
                    {{start.x + length(n), start.y}, {start.x + length(n), start.y - (n % most == 0 ? 3 : 1.6)}});
        on.write({start.x + length(most) + 1.5, start.y}, std::to_string(most) + name, body_size);
        return length(most);
    }

    static page enlarged(page on) {
        on.width *= on_screen, on.height *= on_screen;
        const placement larger{{}, 1 / on_screen};
        for (page_stroke& s : on.strokes) {
            s = larger(std::move(s));
            s.with.weight *= on_screen;
            for (double& d : s.with.dashes)
                d *= on_screen;
        }
        for (page_words& w : on.words)
            w = larger(std::move(w)), w.size *= on_screen;
        return on;
    }

    frame_words words_;
    const drawing_options* options_;
    double width_, height_;
    std::size_t legend_columns_ = 1;
    double legend_column_ = legend_width;
    text_block print_, sentences_, heading_, facts_;
    page_area print_area_{}, legend_{}, sentences_area_{}, bars_{}, title_{};
    std::vector<std::pair<list_in_columns, page_area>> lists_;
};

/// Upright where both rank alike, and on a screen, which is looked at line by line: only its width is scarce.
template <class Make>
auto best_page(const drawing_options& options, Make make) {
    const double narrow = options.on.narrow(), wide = options.on.wide();
    if (options.for_screen)
        return make(std::max(narrow / page_frame::on_screen, 110.0), wide);
    auto upright = make(narrow, wide), sideways = make(wide, narrow);
    return sideways.rank() < upright.rank() ? sideways : upright;
}

} // namespace turncloth::detail

#endif
