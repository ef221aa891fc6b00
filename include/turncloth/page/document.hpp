// A document as a value: what a maker reads, block by block, without saying how it looks.
//
//   document              title, subtitle, language, blocks, foot, bar
//     .add(block)         one more; returns the document
//   document::heading     text, level 2 to 6: the title is the only one of level 1
//   document::paragraph   document::list       words; lines under each other
//   document::steps       numbered, each of blocks of its own: a caution, sentences, a drawing, what to check
//   document::table       a caption, names of the columns, rows; the first cell of a row may name it
//   document::drawing     a page as a value, with words for those who cannot see it
//   document::caution     boxed or on a line, with the word that it begins with
//   document::ticks       lines with a box to tick before each
//   document::blanks      lines with room to write after each
//
//   document d{.title = "Tool roll", .subtitle = "21 x 13 in"};
//   d.add(document::heading{"Cut"}).add(document::paragraph{"Cut each piece."});
//
// Texts are plain: no sign in them means anything to what writes the document (html.hpp), which is all that knows of
// fonts, lines and pages.
#ifndef TURNCLOTH_PAGE_DOCUMENT_HPP
#define TURNCLOTH_PAGE_DOCUMENT_HPP

#include <turncloth/page/page.hpp>

#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace turncloth {

struct document {
    struct heading {
        std::string text{};
        int level = 2;
    };
    struct paragraph {
        std::string text{};
    };
    struct list {
        std::vector<std::string> items{};
    };
    struct ticks {
        std::vector<std::string> items{};
    };
    struct blanks {
        std::vector<std::string> names{};
    };
    struct caution {
        std::string word{}; ///< "Safety"
        std::vector<std::string> sentences{};
        bool boxed = true; ///< otherwise a line that tells of a box before
    };

    enum class in_cell : unsigned char {
        words,
        figure, ///< kept on one line where there is room
        tick,   ///< a box to tick; its text is what is ticked, for those who cannot see
        blank   ///< room to write; its text is what is to be written
    };
    struct cell {
        std::string text{};
        in_cell holds = in_cell::words;
    };
    struct table {
        std::string caption{};
        std::vector<std::string> columns{};
        std::vector<std::vector<cell>> rows{};
        bool rows_have_names = true; ///< the first cell of each that is neither ticked nor written in
    };

    /// `shows` says in words what the drawing shows. One that is `true_to_size` is printed so, whatever the paper.
    struct drawing {
        page of{};
        std::string shows{}, caption{};
        bool true_to_size = false;
    };

    struct block;
    struct step {
        std::vector<block> blocks{};
    };
    struct steps {
        std::vector<step> all{};
    };
    struct block {
        std::variant<heading, paragraph, list, steps, table, drawing, caution, ticks, blanks> is;

        template <class Kind>
            requires(!std::is_same_v<Kind, block>)
        block(Kind kind) : is(std::move(kind)) {}
    };

    /// What those who write a document say of their own, in its language.
    struct own_words {
        std::string page = "page {1} of {2}", of = " of ", box_to_tick = "box to tick", room_to_write = "room to write",
                    at_full_size = "{1} at 100 %";
    };

    /// Of the unit that its readers' rules are divided into.
    enum class test_bar : unsigned char { one_inch, three_centimetres };

    std::string title{}, subtitle{}, language = "en"; ///< as BCP 47 names it
    std::vector<block> blocks{};
    std::string foot{}; ///< at the foot of each printed page
    test_bar bar{};     ///< beside it, to lay a rule on
    own_words words{};

    document& add(block b) {
        blocks.push_back(std::move(b));
        return *this;
    }
};

} // namespace turncloth

#endif
