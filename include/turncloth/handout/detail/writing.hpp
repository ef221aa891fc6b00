// What puts a handout together, apart, so that a program that has it compiled once does not read it.
#ifndef TURNCLOTH_HANDOUT_DETAIL_WRITING_HPP
#define TURNCLOTH_HANDOUT_DETAIL_WRITING_HPP

#include <turncloth/handout/detail/cut_table.hpp>
#include <turncloth/handout/detail/cutting_part.hpp>
#include <turncloth/handout/detail/sewing_part.hpp>
#include <turncloth/handout/options.hpp>
#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/text.hpp>

#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// A tenth of a metre and an inch, true to size, to lay a rule on: of the units that are read.
inline page test_bars(units_shown shown) {
    const bool metric = shown != units_shown::inches, inches = shown != units_shown::centimetres;
    page p{.width = 108,
           .height = metric && inches ? 21.0 : 11.0,
           .title = sentence({"To lay a rule on"}),
           .description =
               metric && inches
                   ? sentence({"A bar of 10 cm in ten parts, and a bar of 1 in in eight parts, true to size when "
                               "printed at 100 %."})
               : metric ? sentence({"A bar of 10 cm in ten parts, true to size when printed at 100 %."})
                        : sentence({"a bar of 1 in in eight parts, true to size when printed at 100 %."})};
    const auto bar = [&](double y, int parts, double part, const char* name) {
        p.draw({"bar", 0.3}, {{4, y}, {4 + parts * part, y}});
        for (int i = 0; i <= parts; ++i)
            p.draw({"bar", 0.3}, {{4 + i * part, y}, {4 + i * part, y - (i % parts == 0 ? 4.5 : 2.5)}});
        p.write({4 + parts * part / 2, y + 3.4}, name, 3, set_from::middle);
    };
    if (metric)
        bar(6, 10, 10, "10 cm");
    if (inches)
        bar(metric ? 16 : 6, 8, 25.4 / 8, "1 in");
    return p;
}

template <length_unit Unit>
class handout_writer {
public:
    handout_writer(const sheet<Unit>& s, const std::vector<sheet_cloth<Unit>>& cloths, const handout_options& options)
        : sheet_(s),
          cloths_(cloths),
          options_(options),
          by_(read_in(options.by, &options.words)),
          cutting_(s, cloths, by_, options.prices),
          sewing_(s, by_) {}

    document write() {
        made_.title = sheet_.name;
        const std::string size = size_text(sheet_.finished.width(), sheet_.finished.height(), by_);
        made_.subtitle = sentence({"finishes ", size});
        made_.language = spoken == nullptr ? options_.language : options_.words.tag();
        made_.words = own_words();
        made_.foot = sheet_.name + ", " + size;
        if (by_.shows == units_shown::centimetres)
            made_.bar = document::test_bar::three_centimetres;
        if (!options_.date.empty())
            made_.foot += ", " + options_.date;
        begin();
        get_ready();
        cut_and_mark();
        make();
        finish();
        if (options_.workings)
            add_workings();
        sign();
        return std::move(made_);
    }

private:
    static document::own_words own_words() {
        document::own_words own;
        for (std::string* text : {&own.page, &own.of, &own.box_to_tick, &own.room_to_write, &own.at_full_size})
            *text = word(*text);
        return own;
    }
    void head(std::string_view text) { made_.add(document::heading{std::string(word(text))}); }
    void say(std::string sentence) { made_.add(document::paragraph{std::move(sentence)}); }

    void begin() {
        say(sentence({"Read it through to the end before you begin. Tick each line as it is done."}));
        if (sheet_.asked)
            say(sentence({"This size is the nearest on the ruler to the ", asked(), " that was asked for."}));
        sewing_.add_finished(made_);
        document::caution look{sentence({"Check before you cut"}), {}};
        for (const std::string& warning : sheet_.warnings)
            look.sentences.push_back(as_sentence(said_again(warning)));
        for (const std::string& warning : sentences_of(sheet_.bulk, by_))
            look.sentences.push_back(as_sentence(warning));
        if (!look.sentences.empty())
            made_.add(std::move(look));
    }

    /// As it was typed, where that unit is read.
    std::string asked() const {
        const bool other = by_.shows == (metric_unit<Unit> ? units_shown::inches : units_shown::centimetres);
        return other ? size_text(sheet_.asked->width(), sheet_.asked->height(), by_) : to_text(*sheet_.asked);
    }

    void get_ready() {
        head("What to buy");
        sewing_.add_cautions(made_, caution::work::buying);
        cutting_.add_buying(made_);
        head("Tools");
        sewing_.add_tools(made_);
        head("How it is measured");
        say(sentence(
            {"Sizes are width before height. Cut sizes hold every seam allowance, hem and binding: add nothing "
             "to them. Distances are from the edge named; measure each from that edge, never from the line "
             "before."}));
        say(ruler_sentence());
        if (by_.shows == units_shown::both)
            say(sentence({"A figure in brackets is the same length in ",
                          word(by_.metric_first ? "inches" : "centimetres"),
                          ": keep to one of the two throughout. in: inch; cm: centimetre; yd: yard; m: metre; 1 in is "
                          "2.54 cm."}));
        made_.add(document::drawing{test_bars(by_.shows),
                                    {},
                                    std::string(word(by_.shows == units_shown::both
                                                         ? "Printed at 100 %, these bars are as long as they say: lay "
                                                           "your rule on them"
                                                         : "Printed at 100 %, this bar is as long as it says: lay your "
                                                           "rule on it")),
                                    true});
    }
    std::string ruler_sentence() const {
        if (shows_its_ruler(sheet_.graduation, by_))
            return sentence({"Pieces and steps are worked out on a ruler of ", to_text(sheet_.graduation),
                             ", so that what is printed of them adds up; other amounts are rounded to ",
                             graduation_text(by_), "."});
        return sentence({"Figures are rounded to ", graduation_text(by_), ", each from the exact length."});
    }

    void cut_and_mark() {
        head("What to cut");
        handout_cut_table<Unit>(sheet_, cloths_, by_).add(made_);
        cutting_.add_lays(made_);
        head("What to mark");
        say(sentence({"Mark each piece while it is flat, as it is drawn here. Its letter is the one in the list of "
                      "pieces."}));
        cutting_.add_marking(made_);
        document figures;
        cutting_.add_figures(figures);
        if (figures.blocks.empty())
            return;
        head("Zippers, thread and other figures");
        for (document::block& b : figures.blocks)
            made_.add(std::move(b));
    }

    void make() {
        head("Make it");
        sewing_.add_other_cautions(made_);
        sewing_.add_steps(made_);
    }

    void finish() {
        head("When it is made");
        sewing_.add_inspection(made_);
        made_.add(document::blanks{{sentence({"Made by"}), sentence({"On"})}});
        document in_use;
        if (sewing_.add_cautions(in_use, caution::work::using_it)) {
            head("In use");
            made_.add(std::move(in_use.blocks.front()));
        }
    }

    void add_workings() {
        document::table t{
            sentence({"Each figure and the sum that it is, exact"}), {sentence({"Of"}), sentence({"Sum"})}, {}};
        const auto add = [&](const std::string& of, const figure<Unit>& f) {
            if (f.terms().size() > 1)
                t.rows.push_back({{of}, figure_cell(working_text(f, by_))});
        };
        for (std::size_t i = 0; i < sheet_.pieces.size(); ++i) {
            const sheet_piece<Unit>& p = sheet_.pieces[i];
            const std::string name = letter_of(i) + ": " + p.made_from.name();
            add(sentence({name, ", cut width"}), p.width);
            add(sentence({name, ", cut height"}), p.height);
            for (const sheet_line<Unit>& l : p.lines)
                add(sentence({name, ", ", word(name_of(l.parallel_to)), " edge, ", said_again(l.what)}),
                    l.from_cut_edge);
            for (const sheet_eyelets<Unit>& e : p.eyelets)
                add(sentence({name, ", top edge, eyelets"}), e.from_top);
        }
        for (const notion<Unit>& n : sheet_.notions)
            for (const notion_detail<Unit>& d : n.details())
                add(said_again(n.name()) + ": " + said_again(d.what), d.amount);
        if (t.rows.empty())
            return;
        head("Workings");
        if (metric_unit<Unit> && by_.shows == units_shown::inches)
            say(sentence({"This size was worked out in centimetres, and so are its sums: in inches they would not be "
                          "exact."}));
        made_.add(std::move(t));
    }

    void sign() {
        std::string all;
        for (const std::string* s : {&options_.author, &options_.licence, &options_.date})
            if (!s->empty())
                all.append(all.empty() ? "" : ". ").append(*s);
        if (!all.empty())
            say(all + ".");
    }

    const sheet<Unit>& sheet_;
    const std::vector<sheet_cloth<Unit>>& cloths_;
    const handout_options& options_;
    const ruler by_;
    handout_cutting<Unit> cutting_;
    handout_sewing<Unit> sewing_;
    document made_{};
};

} // namespace turncloth::detail

#endif
