// Tables as spreadsheets write them: comma-separated as RFC 4180 describes it, or with semicolons or tabs instead.
//
//   read_table(text)       the rows of a table
//   table_row              number (as a spreadsheet counts, from 1), fields, and what is wrong with it, if anything
//
//   for (const table_row& row : read_table("project;width\nkneeling-pad;16,5\n")) row.fields[1];
//
// What parts the fields is the mark that the first row has most of: where a comma is the decimal mark, spreadsheets part
// with semicolons. A field in double quotes may hold that mark, line ends and, doubled, quotes. As people type inch marks,
// a quote within a field that does not begin with one stands for itself: 24" is a field. Lines end in LF, CRLF or CR; a
// byte order mark (ISO/IEC 10646) at the start is passed over; blank lines count as rows, but are not given.
//
// A quote that is never closed would swallow the rows below it, or be closed by a quote of theirs. So a quoted field
// that runs on over what looks like a row, or that is not followed by a mark or a line end, spoils its own line alone:
// reading goes on with the next one.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_TABLE_FILE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_TABLE_FILE_HPP

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace allotment {

struct table_row {
    std::size_t number = 0;
    std::vector<std::string> fields;
    std::string wrong; ///< empty for a sound row
};

class table_reader {
public:
    explicit table_reader(std::string_view text) : text_(text) {
        take("\xEF\xBB\xBF");
        mark_ = mark_of(rest_of_line());
    }

    std::vector<table_row> rows() {
        std::vector<table_row> all;
        for (std::size_t number = 1; !done(); ++number)
            if (table_row r = row(number); !is_blank(r))
                all.push_back(std::move(r));
        return all;
    }

private:
    static constexpr std::string_view marks = ",;\t", line_ends = "\r\n";
    static constexpr std::size_t longest_field = 10'000; ///< so that many open quotes do not read all to the end

    static bool is_blank(const table_row& r) {
        return r.wrong.empty() && r.fields.size() == 1 && r.fields[0].find_first_not_of(" \t") == std::string::npos;
    }

    /// The comma where there is none, or as many of another.
    static char mark_of(std::string_view line) {
        std::array<std::size_t, marks.size()> count{};
        bool quoted = false;
        for (const char c : line) {
            quoted ^= c == '"';
            if (const std::size_t i = marks.find(c); i != std::string_view::npos && !quoted)
                ++count[i];
        }
        return marks[static_cast<std::size_t>(std::max_element(count.begin(), count.end()) - count.begin())];
    }
    /// No row of use has fewer than three fields: its project, its width and its height.
    static bool is_like_a_row(std::string_view line) {
        return std::count_if(line.begin(), line.end(),
                             [](char c) { return marks.find(c) != std::string_view::npos; }) >= 2;
    }

    table_row row(std::size_t number) {
        table_row r{number, {}, {}};
        const std::size_t start = at_;
        do
            r.fields.push_back(field(r));
        while (r.wrong.empty() && take(std::string_view(&mark_, 1)));
        if (!r.wrong.empty()) {
            at_ = start;
            at_ += rest_of_line().size();
        }
        if (!take("\r\n") && !take("\n"))
            take("\r");
        return r;
    }

    std::string field(table_row& r) {
        if (!take("\""))
            return std::string(plain());
        const std::string which = " of field " + std::to_string(r.fields.size() + 1);
        std::string content;
        for (; !done() && content.size() < longest_field; ++at_) {
            if (take("\"") && !(!done() && text_[at_] == '"')) {
                if (!plain().empty())
                    r.wrong = "text follows the closing quote" + which;
                return content;
            }
            content += text_[at_];
            const bool begins_line = line_ends.find(text_[at_]) != std::string_view::npos;
            if (begins_line && is_like_a_row(text_.substr(at_ + 1, text_.find_first_of(line_ends, at_ + 1) - at_ - 1)))
                break;
        }
        if (content.size() >= longest_field)
            r.wrong = "more than " + std::to_string(longest_field) + " bytes follow the opening quote" + which;
        else
            r.wrong =
                "the opening quote" + which + (done() ? " is never closed" : " is not closed before the next row");
        return content;
    }

    std::string_view plain() {
        const std::size_t start = at_;
        while (!done() && text_[at_] != mark_ && line_ends.find(text_[at_]) == std::string_view::npos)
            ++at_;
        return text_.substr(start, at_ - start);
    }
    std::string_view rest_of_line() const { return text_.substr(at_, text_.find_first_of(line_ends, at_) - at_); }

    bool done() const { return at_ == text_.size(); }
    bool take(std::string_view token) {
        if (text_.substr(at_, token.size()) != token)
            return false;
        at_ += token.size();
        return true;
    }

    std::string_view text_;
    std::size_t at_ = 0;
    char mark_ = ',';
};

inline std::vector<table_row> read_table(std::string_view text) { return table_reader(text).rows(); }

} // namespace allotment

#endif
