// Comma-separated tables as RFC 4180 describes them.
//
//   read_table(text)       the rows of a table
//   table_row              number (as a spreadsheet counts, from 1), fields, and what is wrong with it, if anything
//
// A field in double quotes may hold commas, line ends and, doubled, quotes. As people type inch marks, a quote within a
// field that does not begin with one stands for itself: 24" is a field. Lines end in LF or CRLF; a byte order mark
// (ISO/IEC 10646) at the start is passed over; blank lines count as rows, but are not given.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_TABLE_FILE_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_TABLE_FILE_HPP

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
    explicit table_reader(std::string_view text) : text_(text) { take("\xEF\xBB\xBF"); }

    std::vector<table_row> rows() {
        std::vector<table_row> all;
        for (std::size_t number = 1; !done(); ++number)
            if (table_row r = row(number); !is_blank(r))
                all.push_back(std::move(r));
        return all;
    }

private:
    static bool is_blank(const table_row& r) {
        return r.wrong.empty() && r.fields.size() == 1 && r.fields[0].find_first_not_of(" \t") == std::string::npos;
    }

    table_row row(std::size_t number) {
        table_row r{number, {}, {}};
        do
            r.fields.push_back(field(r));
        while (take(","));
        end_of_line();
        return r;
    }

    std::string field(table_row& r) {
        if (!take("\""))
            return std::string(plain());
        std::string content;
        for (; !done(); ++at_) {
            if (take("\"") && !(at_ < text_.size() && text_[at_] == '"')) {
                if (!plain().empty())
                    r.wrong = "text follows the closing quote of field " + std::to_string(r.fields.size() + 1);
                return content;
            }
            content += text_[at_];
        }
        r.wrong = "the quote that opens field " + std::to_string(r.fields.size() + 1) + " is never closed";
        return content;
    }

    std::string_view plain() {
        const std::size_t start = at_;
        while (!done() && text_[at_] != ',' && text_[at_] != '\n' && text_.substr(at_, 2) != "\r\n")
            ++at_;
        return text_.substr(start, at_ - start);
    }

    void end_of_line() {
        if (!take("\r\n"))
            take("\n");
    }

    bool done() const { return at_ == text_.size(); }
    bool take(std::string_view token) {
        if (text_.substr(at_, token.size()) != token)
            return false;
        at_ += token.size();
        return true;
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

inline std::vector<table_row> read_table(std::string_view text) { return table_reader(text).rows(); }

} // namespace allotment

#endif
