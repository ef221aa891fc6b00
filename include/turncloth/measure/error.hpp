// Every refusal of this library, under one base, as a sentence for people and as data for programs.
//
//   class error                 what(): one sentence; facts(): the same as data
//   struct refusal              kind, what, given, least, most, index, where
//   enum class fault            the kinds of fault, one for each thing that a program may want to do about it
//   struct amount               a number with the unit that it was given in
//   overflow_error  zero_denominator_error  range_error  text_error       each layer adds its own types
//
//   try { cut = read_length<inch>(typed); }
//   catch (const turncloth::error& refused) { mark_field(refused.facts().index); show(refused.what()); }
//
// The type of an error says who refuses (a finish, a zipper, a lay), its kind says what is wrong. A program
// built with -fno-exceptions supplies boost::throw_exception and decides there what becomes of a refusal.
#ifndef TURNCLOTH_MEASURE_ERROR_HPP
#define TURNCLOTH_MEASURE_ERROR_HPP

#include <boost/config.hpp>
#ifdef BOOST_NO_EXCEPTIONS
#include <boost/throw_exception.hpp>
#endif

#include <cstddef>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

namespace turncloth {

/// What is wrong, whoever says so.
enum class fault : unsigned char {
    too_small,    ///< `given` is below `least`, or not above it where `least` is zero and nothing will not do
    too_large,    ///< `given` is above `most`
    no_room,      ///< what is asked for (`given`) does not go into what there is (`most`)
    disagree,     ///< two things that must be equal or fit together do not: `given` against `least` or `most`
    missing,      ///< something that must be given was not, or a name that nothing bears
    repeated,     ///< given twice where once is allowed
    unsuitable,   ///< of a kind that cannot be used here: a raw edge where a hem is wanted, a turn where grain is fixed
    unreadable,   ///< text that is not what was expected
    does_not_fit, ///< an exact result, or a count, beyond what 64 bits or a stated limit hold
    undefined     ///< arithmetic without an answer: a division by zero, a root of less than nothing
};

/// A number as it was given. `unit` is "in", "cm", ..., and empty for a count or a plain number.
struct amount {
    std::int64_t numerator = 0, denominator = 1; ///< exact, in lowest terms; 0/0 where only `nearest` is known
    double nearest = 0;
    std::string_view unit{};

    friend constexpr bool operator==(const amount&, const amount&) = default;
};

/// What a refusal knows. Members that do not apply are left empty.
struct refusal {
    fault kind;
    std::string what; ///< what is wrong, in the words of the sentence: "the width of a strip"
    std::optional<amount> given{}, least{}, most{};
    std::optional<std::size_t> index{}; ///< of the edge, span, piece or row meant, from 0
    std::string where{};                ///< its name: an edge, a piece

    friend bool operator==(const refusal&, const refusal&) = default;
};

/// The base of every error that turncloth throws.
class error : public std::runtime_error {
public:
    error(const std::string& sentence, refusal facts) : std::runtime_error(sentence), facts_(std::move(facts)) {}

    const refusal& facts() const noexcept { return facts_; }

private:
    refusal facts_;
};

/// An exact result that does not fit a fraction of 64-bit integers.
class overflow_error : public error {
public:
    using error::error;
    explicit overflow_error(const std::string& sentence) : error(sentence, {fault::does_not_fit, "a number"}) {}
};

/// A fraction over zero, or a division by zero.
class zero_denominator_error : public error {
public:
    using error::error;
    explicit zero_denominator_error(const std::string& sentence) : error(sentence, {fault::undefined, "a divisor"}) {}
};

/// A value outside what a function allows: a negative size, zero parts, a graduation of nothing.
class range_error : public error {
public:
    using error::error;
};

namespace detail {

/// UTF-8 marks every byte of a character but the first with the bits 10.
constexpr bool begins_character(char byte) noexcept { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }

constexpr std::size_t characters_in(std::string_view text) noexcept {
    std::size_t count = 0;
    for (const char byte : text)
        count += begins_character(byte);
    return count;
}

/// At most so many bytes of a text, cut before a character.
constexpr std::string_view beginning_of(std::string_view text, std::size_t most) noexcept {
    if (text.size() <= most)
        return text;
    while (most > 0 && !begins_character(text[most]))
        --most;
    return text.substr(0, most);
}

} // namespace detail

/// Text that cannot be read. `position` counts bytes from 0; it equals the length of the text where the text ends too
/// soon. The sentence quotes at most 60 bytes of the text and 20 of what stands at the position, however long they are,
/// and writes control characters, which could end a sentence or drive a terminal, by their numbers.
class text_error : public error {
public:
    text_error(std::string_view text, std::size_t position, std::string reason)
        : error(sentence(text, position, reason),
                {.kind = fault::unreadable, .what = "a measurement", .index = position}),
          position_(position),
          reason_(std::move(reason)) {}

    std::size_t position() const noexcept { return position_; }
    const std::string& reason() const noexcept { return reason_; }

private:
    static std::string sentence(std::string_view text, std::size_t position, const std::string& reason) {
        std::string said = "cannot read " + quoted(text) + " as a measurement: " + reason;
        if (position >= text.size())
            return said + ", at its end";
        said += ", at character " + std::to_string(detail::characters_in(text.substr(0, position)) + 1);
        return position == 0 ? said : said + " (" + quoted(text.substr(position), 20) + ")";
    }

    /// In quotation marks; a longer text is cut before a character and goes on in dots.
    static std::string quoted(std::string_view text, std::size_t most = 60) {
        const std::string_view shown = detail::beginning_of(text, most);
        std::string said = "\"";
        for (const char byte : shown) {
            const auto code = static_cast<unsigned char>(byte);
            if (code < 0x20 || code == 0x7F)
                ((said += "\\x") += "0123456789abcdef"[code >> 4]) += "0123456789abcdef"[code & 15];
            else
                said += byte;
        }
        return said += shown.size() < text.size() ? "...\"" : "\"";
    }

    std::size_t position_;
    std::string reason_;
};

namespace detail {

/// Kept out of line so that the checks around it stay short and fast. It is not constexpr: reaching it in a constant
/// expression is a compile error that points at the call. Boost's hook is left to programs without exceptions, as with
/// them it wraps every type of error in one of its own, a dozen functions each to compile.
template <class Error, class... Parts>
[[noreturn, gnu::cold, gnu::noinline]] void refuse(Parts&&... parts) {
#ifdef BOOST_NO_EXCEPTIONS
    ::boost::throw_exception(Error(std::forward<Parts>(parts)...));
#else
    throw Error(std::forward<Parts>(parts)...);
#endif
}

} // namespace detail

} // namespace turncloth

#endif
