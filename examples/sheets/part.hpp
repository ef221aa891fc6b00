// A part of a table: its rows in the order they have, the same rows on every machine.
//
//   read_part("3/8")     the third of eight; throws range_error
//   .first(rows)  .end(rows)     which rows of so many, counted from 0, are of this part
//
// The parts follow each other: what they print, joined, is what the whole table prints.
#ifndef TURNCLOTH_EXAMPLES_SHEETS_PART_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_PART_HPP

#include <turncloth/measure/error.hpp>
#include <turncloth/panel/names.hpp>

#include <charconv>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <system_error>

namespace allotment {

struct part {
    std::uint64_t number = 1, of = 1; ///< from 1 to of, which is at most 1000000

    /// Parts differ by one row at most. A table has fewer than 2^32 rows, and 10^6 is below 2^20.
    std::size_t first(std::size_t rows) const { return static_cast<std::size_t>(rows * (number - 1) / of); }
    std::size_t end(std::size_t rows) const { return static_cast<std::size_t>(rows * number / of); }
};

inline part read_part(const std::string& text) {
    constexpr std::uint64_t most = 1'000'000;
    part p{0, 0};
    const char* const end = text.data() + text.size();
    const auto number = std::from_chars(text.data(), end, p.number);
    const bool parted = number.ec == std::errc() && number.ptr != end && *number.ptr == '/';
    const auto of = std::from_chars(parted ? number.ptr + 1 : end, end, p.of);
    if (!parted || of.ec != std::errc() || of.ptr != end || p.number < 1 || p.number > p.of || p.of > most)
        throw turncloth::range_error("a part is written as 3/8, the third of eight, of 1000000 at most: it was " +
                                         turncloth::detail::in_quotes(text),
                                     {.kind = turncloth::fault::unreadable, .what = "a part"});
    return p;
}

} // namespace allotment

#endif
