// What measure/detail/sentence.hpp declares and is no template, apart, so that it can be compiled once.
#ifndef TURNCLOTH_MEASURE_DETAIL_SENTENCES_WRITTEN_HPP
#define TURNCLOTH_MEASURE_DETAIL_SENTENCES_WRITTEN_HPP

#include <turncloth/measure/detail/sentence.hpp>

#include <cstdint>
#include <optional>
#include <string>

namespace turncloth::detail {

TURNCLOTH_INLINE void text_part::write_to(std::string& text, const ruler* by) const {
    const some_measure& m = measured_;
    switch (is_) {
    case form::nothing:
        return;
    case form::words:
        text += words_.text;
        return;
    case form::in_manner:
        return words_.in(text, words_.text);
    case form::count:
        text += std::to_string(count_);
        return;
    case form::large_count:
        text += std::to_string(static_cast<std::uint64_t>(count_));
        return;
    case form::number:
        text += to_text(m.number);
        return;
    case form::bare:
        text += number_text(m.number, *m.unit);
        return;
    case form::length:
        text += by == nullptr ? length_text(m.number, *m.unit) : length_text(m.number, *m.unit, *by);
        return;
    case form::size:
        text += by == nullptr ? number_text(m.number, *m.unit) + " x " + length_text(m.other, *m.unit)
                              : size_text(m.number, m.other, *m.unit, *by);
        return;
    }
}

TURNCLOTH_INLINE std::optional<amount> text_part::as_amount() const {
    switch (is_) {
    case form::count:
        return amount{count_, 1, static_cast<double>(count_), {}};
    case form::large_count:
        return amount{0, 0, static_cast<double>(static_cast<std::uint64_t>(count_)), {}};
    case form::number:
        return amount_of(measured_.number);
    case form::bare:
    case form::length: {
        amount a = amount_of(measured_.number);
        a.unit = measured_.unit->name;
        return a;
    }
    case form::nothing:
    case form::words:
    case form::in_manner:
    case form::size:
        break;
    }
    return std::nullopt;
}

TURNCLOTH_INLINE std::string sentence(text_parts parts) {
    std::string text;
    for (const text_part& part : parts)
        part.write_to(text, nullptr);
    return text;
}

TURNCLOTH_INLINE std::string sentence(text_parts parts, const ruler& by) {
    std::string text;
    for (const text_part& part : parts)
        part.write_to(text, &by);
    return text;
}

TURNCLOTH_INLINE refusal refusal_on(const grounds& g) {
    return {.kind = g.kind,
            .what = std::string(g.what),
            .given = g.given.as_amount(),
            .least = g.least.as_amount(),
            .most = g.most.as_amount(),
            .index = g.index,
            .where = std::string(g.where)};
}

} // namespace turncloth::detail

#endif
