// The words, numbers and signs of an expression, from left to right.
#ifndef TURNCLOTH_DESIGN_DETAIL_EXPRESSION_WORDS_HPP
#define TURNCLOTH_DESIGN_DETAIL_EXPRESSION_WORDS_HPP

#include <turncloth/design/expression_value.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/read.hpp>

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace turncloth::detail {

/// A measurement in an expression. Of a number alone there is no unit.
struct written_number {
    expression_value value;
    bool is_fraction = false; ///< written with a bar and without a unit
};

class expression_words {
public:
    explicit expression_words(std::string_view text) : text_(text) {
        if (text.size() > most_in_an_expression)
            refuse<expression_error>(most_in_an_expression,
                                     "an expression has at most " + std::to_string(most_in_an_expression) + " bytes",
                                     fault::does_not_fit);
        if (const auto unfit = unfit_at(text))
            refuse<expression_error>(*unfit, std::string("a character that cannot be printed"));
        skip();
    }

    std::size_t at() const { return at_; }
    bool done() const { return at_ == text_.size(); }
    [[noreturn]] void fail(std::size_t position, std::string reason, fault kind = fault::unreadable) const {
        refuse<expression_error>(position, std::move(reason), kind);
    }

    bool take_sign(std::string_view sign) {
        if (text_.substr(at_, sign.size()) != sign)
            return false;
        at_ += sign.size();
        skip();
        return true;
    }
    template <class... Signs>
    bool take_any(Signs... signs) {
        return (take_sign(signs) || ...);
    }

    /// "at least": words that stand one after another.
    bool take_words(std::string_view words) {
        const std::size_t before = at_;
        while (!words.empty()) {
            const std::size_t end = words.find(' ');
            const std::string_view next = word();
            if (next != words.substr(0, end)) {
                at_ = before;
                return false;
            }
            at_ += next.size();
            skip();
            words = end == std::string_view::npos ? std::string_view() : words.substr(end + 1);
        }
        return true;
    }
    /// The same, after a comma or without one.
    bool take_after_comma(std::string_view words) {
        const std::size_t before = at_;
        take_sign(",");
        if (take_words(words))
            return true;
        at_ = before;
        return false;
    }

    /// A run of words up to a sign, an end or a word of the grammar, one blank between two; empty where none begins.
    std::string name() {
        std::string all;
        while (true) {
            const std::string_view next = word();
            if (next.empty() || is_reserved() || (all.empty() && is_digit(next[0])))
                return all;
            all.append(all.empty() ? "" : " ").append(next);
            at_ += next.size();
            skip();
        }
    }

    bool number_next() const { return number_end(at_) != at_; }
    written_number number();

private:
    std::string_view rest() const { return text_.substr(at_); }
    void skip() { at_ = skipped(at_); }
    std::size_t skipped(std::size_t i) const {
        for (bool more = true; more;) {
            more = false;
            for (const std::string_view blank : {" ", "\u00A0", "\u2009", "\u202F"})
                if (text_.substr(i, blank.size()) == blank) {
                    i += blank.size();
                    more = true;
                }
        }
        return i;
    }

    /// Letters of every script, told from signs by the row of Unicode that they begin in: U+00C0 and on, without the
    /// signs of multiplication and division and the punctuation, fractions and symbols from U+2000 to U+2FFF.
    static bool is_of_word(const character& c) {
        if (c.bytes.empty() || c.code < 0x80)
            return !c.bytes.empty() && (is_letter(c.bytes[0]) || is_digit(c.bytes[0]));
        return c.code >= 0xC0 && c.code != 0xD7 && c.code != 0xF7 && (c.code < 0x2000 || c.code > 0x2FFF);
    }
    std::string_view word_at(std::size_t from) const {
        std::size_t end = from;
        while (end < text_.size()) {
            const character c = first_of(text_.substr(end));
            if (!is_of_word(c))
                break;
            end += c.bytes.size();
        }
        return text_.substr(from, end - from);
    }
    std::string_view word() const { return word_at(at_); }

    bool is_reserved() const {
        static constexpr std::array<std::string_view, 9> reserved = {"where", "then", "otherwise", "or", "and",
                                                                     "not",   "is",   "rounded",   "as"};
        const std::string_view first = word();
        for (const std::string_view r : reserved)
            if (first == r)
                return true;
        const std::string_view second = word_at(skipped(at_ + first.size()));
        return first == "at" && (second == "least" || second == "most");
    }

    std::size_t digits_end(std::size_t i) const {
        while (i < text_.size() && is_digit(text_[i]))
            ++i;
        return i;
    }
    bool digit_at(std::size_t i) const { return i < text_.size() && is_digit(text_[i]); }
    bool any_at(std::size_t i, std::string_view of) const {
        return i < text_.size() && of.find(text_[i]) != std::string_view::npos;
    }
    std::size_t vulgar_end(std::size_t i) const {
        for (const vulgar& v : vulgar_fractions)
            if (text_.substr(i, v.character.size()) == v.character)
                return i + v.character.size();
        return i;
    }
    /// Where a number that begins here ends; here, where none begins.
    std::size_t number_end(std::size_t from) const {
        const std::size_t whole = digits_end(from);
        if (any_at(whole, ".,") && digit_at(whole + 1))
            return digits_end(whole + 1);
        if (whole == from)
            return vulgar_end(from);
        if (any_at(whole, "/") && digit_at(whole + 1))
            return digits_end(whole + 1);
        const std::size_t next = skipped(whole), over = digits_end(next);
        if (const std::size_t end = vulgar_end(next); end != next)
            return end;
        return next != whole && over != next && any_at(over, "/") && digit_at(over + 1) ? digits_end(over + 1) : whole;
    }
    /// The unit that begins here, or none.
    const unit_spelling* unit_at(std::size_t from) const {
        const std::string_view next = word_at(from);
        for (const unit_spelling& u : unit_spellings) {
            const bool word = is_letter(u.text[0]);
            if (word ? next == u.text : text_.substr(from, u.text.size()) == u.text)
                return &u;
        }
        return nullptr;
    }
    void refuse_hyphen(std::size_t whole) const {
        if (any_at(whole, "-") && digit_at(whole + 1) && any_at(digits_end(whole + 1), "/"))
            fail(whole, "this hyphen may join a mixed number or take one number from another: write a blank instead of "
                        "it, or one on each side of it");
    }
    template <class Read>
    fraction read(std::size_t from, const Read& read) const {
#ifdef BOOST_NO_EXCEPTIONS
        return static_cast<void>(from), read();
#else
        try {
            return read();
        } catch (const text_error& e) {
            fail(from + e.position(), e.reason());
        } catch (const overflow_error& e) {
            fail(from, e.what(), fault::does_not_fit);
        }
#endif
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

/// "12", "1/2", "12 1/2 in", "5 ft 3 in": a sum has a unit after each of its numbers, all of one family.
inline written_number expression_words::number() {
    const std::size_t from = at_;
    std::size_t end = number_end(from);
    refuse_hyphen(digits_end(from));
    const std::string_view bare = text_.substr(from, end - from);
    const unit_spelling* const first = unit_at(skipped(end));
    if (first == nullptr) {
        at_ = skipped(end);
        const fraction value = read(from, [&] { return read_fraction(bare); });
        return {expression_value::of(value), bare.find('/') != std::string_view::npos};
    }
    const auto is_metric = [](const unit_spelling& u) { return denominator(u.inches) % 127 == 0; };
    const unit_spelling* unit = first;
    while (true) {
        end = skipped(end) + unit->text.size();
        if (is_letter(unit->text[0]) && any_at(end, "."))
            ++end;
        const std::size_t next = skipped(end), next_end = number_end(next), unit_from = skipped(next_end);
        unit = next_end == next ? nullptr : unit_at(unit_from);
        if (unit == nullptr)
            break;
        if (is_metric(*unit) != is_metric(*first))
            fail(unit_from, "inches and centimetres do not make one measurement", fault::disagree);
        end = next_end;
    }
    const std::string_view text = text_.substr(from, end - from);
    at_ = skipped(end);
    if (is_metric(*first))
        return {{value_kind::centimetres, read(from, [&] { return read_length<centimetre>(text).value(); })}};
    return {{value_kind::inches, read(from, [&] { return read_length<inch>(text).value(); })}};
}

} // namespace turncloth::detail

#endif
