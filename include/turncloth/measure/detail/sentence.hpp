// One way to make a sentence: its parts are handed over as plain data, and written out in one place.
//
//   sentence({"a zipper ", z.across, " across is wider than ", room})       lengths exact, with their unit, which is one
//                                                                           throughout a sentence
//   sentence({"holes of ", hole, ", rims of ", rim}, ruler)                 lengths as a ruler shows them
//   text_part        words, a whole number, a fraction, a length, or what has a width and a height
//   bare(length)     without its unit, where another follows that bears it
//   struct grounds   what a refusal knows, before it is one
//   refuse<Error>(parts, grounds)
//
// Literals are the sentence; what stands between them is its data: in another language (language.hpp) they are turned about.
//
//   refuse<zipper_error>({"an opening must be more than zero: it was ", opening},
//                        {.kind = fault::too_small, .what = "an opening", .given = opening, .least = length<Unit>()});
//
// A chain of strings put together with + is compiled anew wherever it stands, with all that cleans up after it. Here the
// place of call holds data alone, and what writes it is no template.
#ifndef TURNCLOTH_MEASURE_DETAIL_SENTENCE_HPP
#define TURNCLOTH_MEASURE_DETAIL_SENTENCE_HPP

#include <turncloth/measure/language.hpp>
#include <turncloth/measure/write.hpp>

#include <algorithm>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace turncloth::detail {

/// What has a depth besides is not told by its two sides.
template <class Size>
concept has_sides = requires(const Size& s) {
    s.width().value();
    s.height().value();
}
&&!requires(const Size& s) { s.depth(); };

template <class Number>
concept counts = std::integral<Number> && !std::same_as<Number, bool> && !std::same_as<Number, char>;

/// Words are looked at and not copied, so a part lives no longer than its statement.
class text_part {
public:
    /// Writes words in some manner, in quotation marks for instance.
    using manner = void (*)(std::string& to, std::string_view words);

    constexpr text_part() : is_(form::nothing), words_{{}, nullptr} {}
    /// A literal is of the sentence itself, whatever it says.
    template <std::size_t Size>
    constexpr text_part(const char (&words)[Size]) : is_(form::literal), words_{words, nullptr} {}
    template <std::convertible_to<std::string_view> Words>
    constexpr text_part(const Words& words) : is_(form::words), words_{words, nullptr} {}
    constexpr text_part(std::string_view words, manner in) : is_(form::in_manner), words_{words, in} {}
    template <counts Count>
    constexpr text_part(Count n)
        : is_(std::in_range<std::int64_t>(n) ? form::count : form::large_count), count_(static_cast<std::int64_t>(n)) {}
    constexpr text_part(fraction x) : is_(form::number), measured_{x, 0, nullptr} {}
    template <length_unit Unit>
    constexpr text_part(length<Unit> l) : is_(form::length), measured_{l.value(), 0, &written_as<Unit>} {}
    template <has_sides Size>
    constexpr text_part(const Size& s) : text_part(s.width(), s.height()) {}
    template <length_unit Unit>
    constexpr text_part(length<Unit> width, length<Unit> height)
        : is_(form::size), measured_{width.value(), height.value(), &written_as<Unit>} {}

    constexpr text_part without_unit() const {
        text_part part = *this;
        part.is_ = is_ == form::length ? form::bare : is_;
        return part;
    }

    TURNCLOTH_INLINE void write_to(std::string& text, const ruler* by, bool in_centimetres = false) const;
    constexpr bool is_literal() const { return is_ == form::literal; }
    /// Whether it is a length that reads better in centimetres, and whether whatever it is can be written so.
    TURNCLOTH_INLINE bool reads_as_metric() const;
    TURNCLOTH_INLINE bool fits_in_centimetres() const;
    /// As the data of a refusal; nothing for words.
    TURNCLOTH_INLINE std::optional<amount> as_amount() const;

private:
    enum class form : unsigned char {
        nothing,
        literal,
        words,
        in_manner,
        count,
        large_count,
        number,
        bare,
        length,
        size
    };
    struct some_words {
        std::string_view text;
        manner in;
    };
    struct some_measure {
        fraction number, other;
        const written_unit* unit;
        some_measure in_centimetres() const {
            return {number * unit->centimetres, other * unit->centimetres, &written_as<centimetre>};
        }
    };
    constexpr bool has_unit() const { return is_ == form::bare || is_ == form::length || is_ == form::size; }

    form is_;
    union {
        some_words words_;
        std::int64_t count_;
        some_measure measured_;
    };
};

/// Without its unit, where another follows that bears it.
constexpr text_part bare(const text_part& number) { return number.without_unit(); }

using text_parts = std::initializer_list<text_part>;

TURNCLOTH_INLINE std::string sentence(text_parts parts);
TURNCLOTH_INLINE std::string sentence(text_parts parts, const ruler& by);
/// What a refusal knows, as plain data: see refusal in measure/error.hpp. Words are looked at, as those of a part are.
struct grounds {
    fault kind;
    std::string_view what;
    text_part given{}, least{}, most{};
    std::optional<std::size_t> index{};
    std::string_view where{};
};

[[gnu::cold]] TURNCLOTH_INLINE refusal refusal_on(const grounds& g);

template <class Error>
[[noreturn, gnu::cold, gnu::noinline]] void refuse(text_parts parts, const grounds& g) {
    refuse<Error>(sentence(parts), refusal_on(g));
}

} // namespace turncloth::detail

#ifndef TURNCLOTH_COMPILED

namespace turncloth::detail {

TURNCLOTH_INLINE bool text_part::reads_as_metric() const {
    return has_unit() && (detail::reads_as_metric(measured_.number, *measured_.unit) ||
                          detail::reads_as_metric(measured_.other, *measured_.unit));
}

TURNCLOTH_INLINE bool text_part::fits_in_centimetres() const {
    const auto fits = [](const fraction& x) { // times 127/50
        return magnitude(numerator(x)) < std::uint64_t{1} << 56 && denominator(x) < std::int64_t{1} << 57;
    };
    return !has_unit() || (fits(measured_.number) && fits(measured_.other));
}

TURNCLOTH_INLINE void text_part::write_to(std::string& text, const ruler* by, bool in_centimetres) const {
    const some_measure m = !has_unit() ? some_measure{} : in_centimetres ? measured_.in_centimetres() : measured_;
    switch (is_) {
    case form::nothing:
        return;
    case form::literal:
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
        text += to_text(measured_.number);
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
    case form::literal:
    case form::words:
    case form::in_manner:
    case form::size:
        break;
    }
    return std::nullopt;
}

/// The literals of a sentence, with a number in braces for all else: what it is known by to other languages.
inline std::string key_of(text_parts parts) {
    std::string key;
    int place = 0;
    for (const text_part& part : parts)
        if (part.is_literal())
            part.write_to(key, nullptr);
        else
            key.append("{").append(std::to_string(++place)).append("}");
    return key;
}

/// All exact lengths of a sentence are in one unit: in centimetres where one of them was put together from some.
inline std::string written(text_parts parts, const ruler* by) {
    const auto reads = [](const text_part& part) { return part.reads_as_metric(); };
    const auto fits = [](const text_part& part) { return part.fits_in_centimetres(); };
    const bool metric = by == nullptr && std::any_of(parts.begin(), parts.end(), reads) &&
                        std::all_of(parts.begin(), parts.end(), fits);
    std::string text;
    const std::string* const own = spoken == nullptr ? nullptr : spoken->text_of(key_of(parts));
    if (own == nullptr) {
        for (const text_part& part : parts)
            part.write_to(text, by, metric);
        return text;
    }
    return filled(*own, [&](std::string& to, std::string_view place) {
        char number = '1';
        for (const text_part& part : parts) {
            if (part.is_literal() || place.size() != 1 || number++ != place[0])
                continue;
            part.write_to(to, by, metric);
            return true;
        }
        return false;
    });
}

TURNCLOTH_INLINE std::string sentence(text_parts parts) { return written(parts, nullptr); }
TURNCLOTH_INLINE std::string sentence(text_parts parts, const ruler& by) { return written(parts, &by); }

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

#endif // TURNCLOTH_COMPILED

#endif
