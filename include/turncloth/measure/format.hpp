// std::format for fractions, lengths, areas, places and figures, where the standard library has it (GCC 13, Clang 17 with libc++, or later).
//
//   std::format("{}", x)          "12 1/2 in", as to_text(x)
//   std::format("{:>12}", x)      "   12 1/2 in": fill, alignment and width, as for text
//
//   std::format("cut {} by {}", "12 1/2"_in, 30_cm) == "cut 12 1/2 in by 30 cm";
//
// A precision is refused with std::format_error: it would cut the text short, and so change the number. Round to a
// graduation first. panel/format.hpp adds sizes and edges. Not part of <turncloth.hpp>, because <format> is slow to compile; where <format> does not exist
// this header offers nothing.
#ifndef TURNCLOTH_MEASURE_FORMAT_HPP
#define TURNCLOTH_MEASURE_FORMAT_HPP

#include <turncloth/measure/place.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/measure/write.hpp>

#include <boost/throw_exception.hpp>

#include <string_view>
#include <version>

#if __has_include(<format>) && defined(__cpp_lib_format)
#include <format>

namespace turncloth::detail {

/// The formatter of text, but for the precision.
struct text_formatter : std::formatter<std::string_view> {
    template <class ParseContext>
    constexpr auto parse(ParseContext& context) {
        auto from = context.begin();
        const auto end = std::formatter<std::string_view>::parse(context);
        if (from != end && from + 1 != end && is_alignment(from[1]))
            ++from; // a point here is a fill
        for (; from != end; ++from)
            if (*from == '.')
                refuse_precision();
        return end;
    }

private:
    static constexpr bool is_alignment(char c) noexcept { return c == '<' || c == '>' || c == '^'; }
    // Not constexpr, so that a precision in a constant format does not compile.
    [[noreturn]] static void refuse_precision() {
        boost::throw_exception(std::format_error("a measurement has no precision: round it to a graduation first"));
    }
};

template <class Value>
struct formatter_by_to_text : text_formatter {
    template <class FormatContext>
    auto format(const Value& x, FormatContext& context) const {
        return text_formatter::format(to_text(x), context);
    }
};

} // namespace turncloth::detail

template <>
struct std::formatter<turncloth::fraction> : turncloth::detail::formatter_by_to_text<turncloth::fraction> {};

template <class Unit>
    requires(turncloth::length_unit<Unit> || turncloth::area_unit<Unit>)
struct std::formatter<boost::units::quantity<Unit, turncloth::fraction>>
    : turncloth::detail::formatter_by_to_text<boost::units::quantity<Unit, turncloth::fraction>> {};

template <class Datum, turncloth::length_unit Unit>
struct std::formatter<turncloth::place<Datum, Unit>>
    : turncloth::detail::formatter_by_to_text<turncloth::place<Datum, Unit>> {};

template <turncloth::length_unit Unit>
struct std::formatter<turncloth::figure<Unit>> : turncloth::detail::formatter_by_to_text<turncloth::figure<Unit>> {};

#endif

#endif
