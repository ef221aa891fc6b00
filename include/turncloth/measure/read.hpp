// Reading measurements as people write them.
//
//   read_fraction(text)     a number alone: "12", "12 1/2", "12-1/2", "12½", "12.5", "31,75", "-3/4"
//   read_length<U>(text)    the same with a unit, or in `U` where none is written; and sums: "1 yd 4 in", "5' 3 1/2\""
//
//   read_length<inch>(" 12-1/2\" ") == "12 1/2"_in;
//   read_length<inch>("31,75 cm") == "12 1/2"_in;
//
// Units: in inch inches " ″ ''   ft foot feet ' ′   yd yard yards   mm cm m and their names, capitals allowed. A comma
// is a decimal comma. Nothing is rounded and nothing is guessed: "1,000" could be one or a thousand, so it is refused.
// Both functions are constexpr and throw text_error, which says at which character the text fails and why, or
// overflow_error where a sum does not fit. A literal with a mistake in it does not compile.
#ifndef TURNCLOTH_MEASURE_READ_HPP
#define TURNCLOTH_MEASURE_READ_HPP

#include <turncloth/measure/detail/spellings.hpp>
#include <turncloth/measure/length.hpp>

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace turncloth {

namespace detail {

constexpr bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }
constexpr char lower(char c) noexcept { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
constexpr bool is_letter(char c) noexcept { return lower(c) >= 'a' && lower(c) <= 'z'; }

/// Reads one text from left to right; `at_` is the place of the next byte. The sign that stands before everything is
/// carried into each number, because -2^63 fits and 2^63 does not.
class measure_reader {
public:
    constexpr explicit measure_reader(std::string_view text) noexcept : text_(text) {}

    /// A number that fills the text.
    constexpr fraction number_alone() {
        sign();
        const fraction value = number();
        skip_space();
        if (!done())
            cannot_read_because("expected nothing after the number");
        return value;
    }

    /// A sum of numbers with units, from the larger to the smaller, in a unit of so many inches; a number without a
    /// unit is in that unit too.
    constexpr fraction length_in(fraction inches_of_unit) {
        sign();
        fraction total = 0, smallest = 0;
        do {
            const fraction value = number();
            skip_space();
            const std::size_t unit_at = at_;
            const fraction named = unit();
            if (named == 0 && !done())
                cannot_read_because("expected a unit (in, ft, yd, mm, cm, m) or the end");
            if (named == 0 && smallest != 0)
                cannot_read_because("expected the unit of the last number");
            if (smallest != 0 && named >= smallest)
                cannot_read_because("in a sum, each unit must be smaller than the one before it", unit_at);
            smallest = named == 0 ? inches_of_unit : named;
            total += value * (smallest / inches_of_unit);
            skip_space();
        } while (!done());
        return total;
    }

private:
    // Not constexpr, so that a mistake in a literal does not compile, and the compiler shows the call with its reason.
    [[noreturn]] void cannot_read_because(const char* reason, std::size_t position) const {
        refuse<text_error>(text_, position, std::string(reason));
    }
    [[noreturn]] void cannot_read_because(const char* reason) const { cannot_read_because(reason, at_); }

    constexpr bool done() const noexcept { return at_ == text_.size(); }
    constexpr char next() const noexcept { return done() ? '\0' : text_[at_]; }
    constexpr bool digit_next() const noexcept { return is_digit(next()); }

    constexpr bool take(std::string_view token) noexcept {
        if (text_.substr(at_, token.size()) != token)
            return false;
        at_ += token.size();
        return true;
    }

    /// Blanks of ASCII, and the no-break, thin and narrow no-break spaces that typesetters put before a unit.
    constexpr void skip_space() noexcept {
        while (take(" ") || take("\t") || take("\r") || take("\n") || take("\u00A0") || take("\u2009") ||
               take("\u202F")) {
        }
    }

    constexpr void sign() noexcept {
        skip_space();
        negative_ = take("-") || take("\u2212");
        if (!negative_)
            take("+");
        skip_space();
    }

    constexpr fraction with_sign(fraction size) const { return negative_ ? -size : size; }

    /// A whole number, gathered on the side of its sign.
    constexpr std::int64_t digits(bool negative) {
        std::int64_t value = 0;
        for (; digit_next(); ++at_) {
            const std::int64_t digit = negative ? '0' - text_[at_] : text_[at_] - '0';
            if (overflows_times(value, std::int64_t{10}, value) || overflows_plus(value, digit, value))
                cannot_read_because("more digits than 64 bits hold");
        }
        return value;
    }

    constexpr fraction number() {
        if (const fraction lone = vulgar_fraction(); lone != 0)
            return with_sign(lone);
        if (next() == '.' || next() == ',')
            return decimal(0);
        if (!digit_next())
            cannot_read_because("expected a number");
        const std::int64_t whole = digits(negative_);
        if (next() == '.' || next() == ',')
            return decimal(whole);
        if (slash())
            return over(whole);
        return fraction(whole) + fraction_after_whole();
    }

    constexpr bool slash() noexcept { return take("/") || take("\u2044"); }

    /// The value of a vulgar fraction character, or 0 where none follows.
    constexpr fraction vulgar_fraction() noexcept {
        for (const vulgar& v : vulgar_fractions)
            if (take(v.character))
                return v.value;
        return 0;
    }

    constexpr fraction over(std::int64_t above) {
        const std::size_t start = at_;
        if (!digit_next())
            cannot_read_because("expected a denominator after the '/'");
        const std::int64_t below = digits(false);
        if (below == 0)
            cannot_read_because("a denominator must not be zero", start);
        return {above, below};
    }

    /// What makes a whole number a mixed one: "½", " ½", " 1/2" or "-1/2" (a hyphen after a space would be a minus).
    /// Leaves the place as it was, and gives 0, where a unit or the end follows instead.
    constexpr fraction fraction_after_whole() {
        const std::size_t start = at_;
        const bool hyphen = take("-");
        if (!hyphen)
            skip_space();
        if (const fraction character = vulgar_fraction(); character != 0)
            return with_sign(character);
        const std::size_t fraction_start = at_;
        if (!digit_next()) {
            if (hyphen)
                cannot_read_because("expected a fraction after the hyphen");
            at_ = start;
            return 0;
        }
        const std::int64_t above = digits(negative_);
        if (!slash())
            cannot_read_because("expected a '/' to make this number a fraction, or a unit before it", fraction_start);
        const fraction part = over(above);
        if (abs(part) >= 1)
            cannot_read_because("the fraction of a mixed number must be less than one", fraction_start);
        return part;
    }

    constexpr fraction decimal(std::int64_t whole) {
        const std::size_t mark = at_;
        const bool comma = next() == ',';
        ++at_;
        if (!digit_next())
            cannot_read_because("expected a digit after the decimal mark");
        const std::size_t first = at_;
        while (digit_next())
            ++at_;
        if (next() == '.' || next() == ',')
            cannot_read_because("a number has only one decimal mark");
        if (comma && at_ - first == 3 && whole != 0)
            cannot_read_because(
                "a comma before three digits may mean thousands or thousandths: write the number without it", mark);
        return fraction(whole) + with_sign(after_mark(first));
    }

    /// The digits from `first` to here as a part of one, in lowest terms after each digit from the last to the first:
    /// 0.ab = (a + 0.b) / 10. The denominator of what stands after a digit divides that of the whole, so this refuses
    /// only what does not fit, however many noughts or digits are written.
    constexpr fraction after_mark(std::size_t first) const {
        int128 over = 0, under = 1;
        for (std::size_t i = at_; i-- > first;) {
            over += (text_[i] - '0') * under;
            under *= 10;
            for (const int factor : {2, 5})
                if (over % factor == 0 && under % factor == 0) {
                    over /= factor;
                    under /= factor;
                }
            if (!fits(under))
                cannot_read_because("more decimal digits than 64 bits hold", first);
        }
        return {static_cast<std::int64_t>(over), static_cast<std::int64_t>(under)};
    }

    /// The size in inches of the unit that follows, or 0 where none does.
    constexpr fraction unit() {
        for (const unit_spelling& spelling : unit_spellings)
            if (take_word(spelling.text))
                return spelling.inches;
        return 0;
    }

    constexpr bool take_word(std::string_view word) noexcept {
        if (text_.size() - at_ < word.size())
            return false;
        for (std::size_t i = 0; i < word.size(); ++i)
            if (lower(text_[at_ + i]) != word[i])
                return false;
        const std::size_t end = at_ + word.size();
        const bool word_goes_on = is_letter(word.back()) && end < text_.size() && is_letter(text_[end]);
        if (word_goes_on)
            return false;
        at_ = end;
        if (is_letter(word.back()))
            take("."); // as in "3 in."
        return true;
    }

    std::string_view text_;
    std::size_t at_ = 0;
    bool negative_ = false;
};

} // namespace detail

/// A number without a unit, as people write it. Throws text_error or overflow_error.
constexpr fraction read_fraction(std::string_view text) { return detail::measure_reader(text).number_alone(); }

/// A length as people write it, exactly, in the unit asked for; a number without a unit is taken to be in that unit.
/// Throws text_error or overflow_error.
template <length_unit Unit>
constexpr length<Unit> read_length(std::string_view text) {
    constexpr fraction inches = unit_facts<Unit>::inches;
    return length_of<Unit>(detail::measure_reader(text).length_in(inches));
}

namespace detail {

/// The characters of a literal as a template argument.
template <std::size_t Size>
struct literal_text {
    char characters[Size];
    consteval literal_text(const char (&literal)[Size]) {
        for (std::size_t i = 0; i < Size; ++i)
            characters[i] = literal[i];
    }
};

/// Read while the program is compiled, wherever it stands.
template <class Unit, literal_text Text>
struct quoted_literal {
    static constexpr length<Unit> value = read_length<Unit>({Text.characters, sizeof(Text.characters) - 1});
};

/// In a constant expression: true, or no constant at all.
template <class Unit>
constexpr bool is_read(std::string_view text) {
    static_cast<void>(read_length<Unit>(text));
    return true;
}

/// The same for digits without quotation marks.
template <class Unit, char... Digits>
struct literal {
    static constexpr char text[] = {Digits...};
    static constexpr length<Unit> value = read_length<Unit>({text, sizeof...(Digits)});
};

} // namespace detail

/// Literals, to be had with `using namespace turncloth::literals`: 12_in, 12.5_in, "12 1/2"_in, 30_cm, "31,75"_cm.
/// The digits are read as written, so that 0.1_cm is one tenth exactly; a mistake in one does not compile.
inline namespace literals {

template <char... Digits>
constexpr length<inch> operator""_in() {
    return detail::literal<inch, Digits...>::value;
}
template <char... Digits>
constexpr length<foot> operator""_ft() {
    return detail::literal<foot, Digits...>::value;
}
template <char... Digits>
constexpr length<yard> operator""_yd() {
    return detail::literal<yard, Digits...>::value;
}
template <char... Digits>
constexpr length<millimetre> operator""_mm() {
    return detail::literal<millimetre, Digits...>::value;
}
template <char... Digits>
constexpr length<centimetre> operator""_cm() {
    return detail::literal<centimetre, Digits...>::value;
}
template <char... Digits>
constexpr length<metre> operator""_m() {
    return detail::literal<metre, Digits...>::value;
}

// Text too is read while compiling, wherever it stands. Clang 14 crashes where such a literal stands in a list, so there
// its attribute for conditions on arguments refuses what cannot be read.
#if defined(__clang__) && __clang_major__ < 15
#pragma clang diagnostic push
#pragma clang diagnostic ignored "-Wgcc-compat"
#define TURNCLOTH_QUOTED(unit, suffix)                                                                              \
    constexpr length<unit> operator""##suffix(const char* text, std::size_t n)                                      \
        __attribute__((enable_if(detail::is_read<unit>({text, n}), "cannot_read_because: it is no measurement"))) { \
        return read_length<unit>({text, n});                                                                        \
    }
#else
#define TURNCLOTH_QUOTED(unit, suffix)                    \
    template <detail::literal_text Text>                  \
    constexpr length<unit> operator""##suffix() {         \
        return detail::quoted_literal<unit, Text>::value; \
    }
#endif
TURNCLOTH_QUOTED(inch, _in)
TURNCLOTH_QUOTED(foot, _ft)
TURNCLOTH_QUOTED(yard, _yd)
TURNCLOTH_QUOTED(millimetre, _mm)
TURNCLOTH_QUOTED(centimetre, _cm)
TURNCLOTH_QUOTED(metre, _m)
#undef TURNCLOTH_QUOTED
#if defined(__clang__) && __clang_major__ < 15
#pragma clang diagnostic pop
#endif

} // namespace literals

} // namespace turncloth

#endif
