// std::format for fractions and lengths, where the standard library has it (GCC 13, Clang 17 with libc++, or later).
//
//   std::format("{}", l)          "12 1/2 in", as to_text(l)
//   std::format("{:>12}", l)      "   12 1/2 in": fill, alignment and width, as for text
//
//   std::format("cut {} by {}", "12 1/2"_in, 30_cm) == "cut 12 1/2 in by 30 cm";
//
// A precision is refused with std::format_error: it would cut the text short, and so change the number. Round to a
// graduation first. Not part of <turncloth.hpp>, because <format> is slow to compile; where <format> does not exist
// this header offers nothing.
#ifndef TURNCLOTH_MEASURE_FORMAT_HPP
#define TURNCLOTH_MEASURE_FORMAT_HPP

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

} // namespace turncloth::detail

template <>
struct std::formatter<turncloth::fraction> : turncloth::detail::text_formatter {
    template <class FormatContext>
    auto format(turncloth::fraction x, FormatContext& context) const {
        return text_formatter::format(turncloth::to_text(x), context);
    }
};

template <turncloth::length_unit Unit>
struct std::formatter<boost::units::quantity<Unit, turncloth::fraction>> : turncloth::detail::text_formatter {
    template <class FormatContext>
    auto format(const boost::units::quantity<Unit, turncloth::fraction>& l, FormatContext& context) const {
        return text_formatter::format(turncloth::to_text(l), context);
    }
};

#endif

#endif
