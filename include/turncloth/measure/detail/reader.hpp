// Reads numbers and lengths from a text, from left to right, for measure/read.hpp and measure/any_length.hpp.
#ifndef TURNCLOTH_MEASURE_DETAIL_READER_HPP
#define TURNCLOTH_MEASURE_DETAIL_READER_HPP

#include <turncloth/measure/detail/spellings.hpp>
#include <turncloth/measure/length.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <type_traits>

namespace turncloth {

namespace detail {

constexpr bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }
constexpr char lower(char c) noexcept { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
constexpr bool is_letter(char c) noexcept { return lower(c) >= 'a' && lower(c) <= 'z'; }

/// A unit as it was read: nothing where there was none.
struct unit_read {
    fraction inches = 0;
    bool is_sign = false; ///< ' or ", not a word
};

/// Reads one text from left to right; `at_` is the place of the next byte. The sign that stands before everything is
/// carried into each number, because -2^63 fits and 2^63 does not. What cannot be read is kept, not thrown: reading then
/// goes to the end at once, and whoever asked for the number decides what becomes of it.
class measure_reader {
public:
    constexpr explicit measure_reader(std::string_view text) noexcept : text_(text) {}

    /// A number that fills the text.
    constexpr fraction number_alone() {
        sign();
        const fraction value = number();
        skip_space();
        if (!done())
            return fail("expected nothing after the number");
        return value;
    }

    /// A sum of numbers with units, from the larger to the smaller, in a unit of so many inches; a number without a
    /// unit is in that unit too.
    constexpr fraction length_in(fraction inches_of_unit) {
        sign();
        fraction total = 0;
        do {
            const std::size_t number_at = at_;
            const fraction value = number();
            const std::size_t number_end = at_;
            skip_space();
            const std::size_t unit_at = at_;
            unit_read named = unit();
            if (named.inches == 0 && !done())
                return fail("expected a unit (in, ft, yd, mm, cm, m) or the end");
            const bool implied = named.inches == 0;
            if (implied)
                named.inches = last_.inches == 0 ? inches_of_unit : after_last(value, number_end - number_at);
            if (named.inches == 0)
                return fail("expected the unit of the last number");
            if (!implied && last_.inches != 0 && named.inches >= last_.inches)
                return fail("in a sum, each unit must be smaller than the one before it", unit_at);
            last_ = named;
            total = sum(total, product(value, named.inches / inches_of_unit));
        } while (goes_on());
        return total;
    }

    /// The inches of the last unit that length_in read; nothing where no number had one.
    constexpr fraction inches_of_last() const { return last_.inches; }

    constexpr bool has_failed() const noexcept { return reason_ != nullptr; }
    /// Throws, where reading failed: text_error or overflow_error.
    constexpr void require_read() const {
        if (too_large_)
            width_64::does_not_fit();
        if (has_failed())
            cannot_read_because(reason_, position_);
    }
    /// The error that require_read() throws, where reading failed.
    error why_not() const {
        if (too_large_)
            return overflow_error(width_64::sentence());
        return text_error(text_, position_, reason_);
    }

private:
    // Not constexpr, so that a mistake in a literal does not compile; and called there at once, so that the compiler shows
    // the call with its reason.
    [[noreturn, gnu::cold]] void cannot_read_because(const char* reason, std::size_t position) const {
        refuse<text_error>(text_, position, std::string(reason));
    }

    /// The first failure is kept, and nothing is left to read. Always nothing, to be returned.
    constexpr fraction fail(const char* reason, std::size_t position) {
        if (std::is_constant_evaluated())
            cannot_read_because(reason, position);
        if (!has_failed()) {
            reason_ = reason;
            position_ = position;
        }
        at_ = text_.size();
        return 0;
    }
    constexpr fraction fail(const char* reason) { return fail(reason, at_); }

    /// over / under in lowest terms, for under above zero.
    constexpr fraction reduced(int128 over, int128 under) {
        int128 a = over < 0 ? -over : over, b = under;
        while (b != 0) {
            const int128 rest = a % b;
            a = b;
            b = rest;
        }
        over /= a;
        under /= a;
        if (!fits(over) || !fits(under)) {
            if (std::is_constant_evaluated())
                width_64::does_not_fit();
            too_large_ = !has_failed();
            return fail("it is too large");
        }
        return {static_cast<std::int64_t>(over), static_cast<std::int64_t>(under)};
    }
    /// Both products are below 2^126, and their sum is below 2^127.
    constexpr fraction sum(fraction x, fraction y) {
        if (x == 0 || y == 0)
            return x == 0 ? y : x;
        return reduced(int128{numerator(x)} * denominator(y) + int128{numerator(y)} * denominator(x),
                       int128{denominator(x)} * denominator(y));
    }
    constexpr fraction product(fraction x, fraction y) {
        if (y == 1)
            return x;
        return reduced(int128{numerator(x)} * numerator(y), int128{denominator(x)} * denominator(y));
    }

    /// What a number that ends the text without a unit counts, by the unit before it: 5'3 in inches, 1m80 in centimetres
    /// where it has two digits, 12" 1/2 as a part of an inch. Nothing elsewhere.
    constexpr fraction after_last(fraction value, std::size_t digits) const {
        if (last_.inches == inches_in<foot> && last_.is_sign)
            return 1;
        if (last_.inches == inches_in<metre> && digits == 2 && is_whole(value))
            return inches_in<centimetre>;
        return last_.inches == 1 && value != 0 && abs(value) < 1 ? fraction(1) : fraction(0);
    }

    /// Whether a further number follows, after what may part it from the last: a comma and a blank, or, between the signs
    /// of feet and inches alone, a dash, which could be a minus elsewhere.
    constexpr bool goes_on() {
        skip_space();
        if (take(",")) {
            const std::size_t after = at_;
            skip_space();
            if (at_ == after || done())
                fail("a comma between two numbers of a sum needs a blank and the next number after it", after - 1);
            return true;
        }
        const bool dash = last_.is_sign && last_.inches == inches_in<foot> && (take("-") || take(en_dash));
        if (dash)
            skip_space();
        return dash || !done();
    }

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
        negative_ = take("-") || take("\u2212") || take(en_dash);
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
                return fail("more digits than 64 bits hold"), 0;
        }
        return value;
    }

    constexpr fraction number() {
        if (const fraction lone = vulgar_fraction(); lone != 0)
            return with_sign(lone);
        if (next() == '.' || next() == ',')
            return decimal(0);
        if (!digit_next())
            return fail("expected a number");
        const std::int64_t whole = digits(negative_);
        if (next() == '.' || next() == ',')
            return decimal(whole);
        if (slash())
            return over(whole);
        return sum(whole, fraction_after_whole());
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
            return fail("expected a denominator after the '/'");
        const std::int64_t below = digits(false);
        if (below == 0)
            return fail("a denominator must not be zero", start);
        return {above, below};
    }

    /// What makes a whole number a mixed one: "½", " ½", " 1/2" or "-1/2", also with an en dash (after a space it
    /// would be a minus).
    /// Leaves the place as it was, and gives 0, where a unit or the end follows instead.
    constexpr fraction fraction_after_whole() {
        const std::size_t start = at_;
        const bool hyphen = take("-") || take(en_dash);
        if (!hyphen)
            skip_space();
        if (const fraction character = vulgar_fraction(); character != 0)
            return with_sign(character);
        const std::size_t fraction_start = at_;
        if (!digit_next()) {
            if (hyphen)
                return fail("expected a fraction after the hyphen");
            at_ = start;
            return 0;
        }
        const std::int64_t above = digits(negative_);
        if (!slash())
            return fail("expected a '/' to make this number a fraction, or a unit before it", fraction_start);
        const fraction part = over(above);
        if (abs(part) >= 1)
            return fail("the fraction of a mixed number must be less than one", fraction_start);
        return part;
    }

    constexpr fraction decimal(std::int64_t whole) {
        const std::size_t mark = at_;
        const bool comma = next() == ',';
        ++at_;
        if (!digit_next())
            return fail("expected a digit after the decimal mark");
        const std::size_t first = at_;
        while (digit_next())
            ++at_;
        if (next() == '.' || next() == ',')
            return fail("a number has only one decimal mark");
        if (comma && at_ - first == 3 && whole != 0)
            return fail("a comma before three digits may mean thousands or thousandths: write the number without it",
                        mark);
        return sum(whole, with_sign(after_mark(first)));
    }

    /// The digits from `first` to here as a part of one, in lowest terms after each digit from the last to the first:
    /// 0.ab = (a + 0.b) / 10. The denominator of what stands after a digit divides that of the whole, so this refuses
    /// only what does not fit, however many noughts or digits are written.
    constexpr fraction after_mark(std::size_t first) {
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
                return fail("more decimal digits than 64 bits hold", first);
        }
        return {static_cast<std::int64_t>(over), static_cast<std::int64_t>(under)};
    }

    /// The unit that follows, or nothing.
    constexpr unit_read unit() {
        for (const unit_spelling& spelling : unit_spellings)
            if (take_word(spelling.text))
                return {spelling.inches, !is_letter(spelling.text.back())};
        return {};
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

    static constexpr std::string_view en_dash = "\u2013";

    std::string_view text_;
    std::size_t at_ = 0;
    bool negative_ = false;
    unit_read last_{};
    const char* reason_ = nullptr;
    bool too_large_ = false;
    std::size_t position_ = 0; ///< of the failure
};

} // namespace detail

} // namespace turncloth

#endif
