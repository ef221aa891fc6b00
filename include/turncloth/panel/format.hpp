// std::format for sizes and edges too: see measure/format.hpp, which this brings.
//
//   std::format("{}", size)          "10 x 16 in", as to_text(size)
//   std::format("{}", edge::top)     "top", as name_of(edge)
//
//   std::format("cut {} from the {}", pocket.cut(), edge::left) == "cut 10 1/2 x 5 1/2 in from the left";
#ifndef TURNCLOTH_PANEL_FORMAT_HPP
#define TURNCLOTH_PANEL_FORMAT_HPP

#include <turncloth/measure/format.hpp>
#include <turncloth/panel/panel.hpp>

#if __has_include(<format>) && defined(__cpp_lib_format)

template <turncloth::length_unit Unit>
struct std::formatter<turncloth::finished_size<Unit>>
    : turncloth::detail::formatter_by_to_text<turncloth::finished_size<Unit>> {};

template <turncloth::length_unit Unit>
struct std::formatter<turncloth::cut_size<Unit>> : turncloth::detail::formatter_by_to_text<turncloth::cut_size<Unit>> {
};

template <>
struct std::formatter<turncloth::edge> : turncloth::detail::text_formatter {
    template <class FormatContext>
    auto format(turncloth::edge e, FormatContext& context) const {
        return text_formatter::format(turncloth::name_of(e), context);
    }
};

#endif

#endif
