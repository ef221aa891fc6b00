// Every refusal of this library, under one base.
//
//   class error                                   what() is one sentence: what was given, what is allowed, and where
//   class overflow_error, zero_denominator_error  arithmetic that has no answer in 64 bits
//   class text_error                              text that is not a measurement: position() and reason()
//
//   try { cut = read_length<inch>(typed); }
//   catch (const turncloth::error& refused) { show(refused.what()); }
//
// Further layers add their own types beside what they refuse. All are thrown through boost::throw_exception, so that a
// program built with -fno-exceptions supplies that one function and decides there what becomes of a refusal.
#ifndef TURNCLOTH_MEASURE_ERROR_HPP
#define TURNCLOTH_MEASURE_ERROR_HPP

#include <boost/throw_exception.hpp>

#include <cstddef>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

namespace turncloth {

/// The base of every error that turncloth throws.
class error : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// An exact result that does not fit a fraction of 64-bit integers.
class overflow_error : public error {
public:
    using error::error;
};

/// A fraction over zero, or a division by zero.
class zero_denominator_error : public error {
public:
    using error::error;
};

/// A value outside what a function allows: a negative size, zero parts, a graduation of nothing.
class range_error : public error {
public:
    using error::error;
};

/// Text that cannot be read. `position` counts bytes from 0; it equals the length of the text where the text ends too
/// soon.
class text_error : public error {
public:
    text_error(std::string_view text, std::size_t position, std::string reason)
        : error(sentence(text, position, reason)), position_(position), reason_(std::move(reason)) {}

    std::size_t position() const noexcept { return position_; }
    const std::string& reason() const noexcept { return reason_; }

private:
    static std::string sentence(std::string_view text, std::size_t position, const std::string& reason) {
        std::string said = "cannot read \"" + std::string(text) + "\" as a measurement: " + reason;
        if (position >= text.size())
            return said + ", at its end";
        return said + ", at character " + std::to_string(characters(text.substr(0, position)) + 1) + " (\"" +
               std::string(text.substr(position)) + "\")";
    }

    /// UTF-8 marks every byte of a character but the first with the bits 10.
    static std::size_t characters(std::string_view text) noexcept {
        std::size_t count = 0;
        for (const char byte : text)
            count += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
        return count;
    }

    std::size_t position_;
    std::string reason_;
};

namespace detail {

/// Throws through Boost's hook; kept out of line so that the checks around it stay short and fast. It is not constexpr:
/// reaching it in a constant expression is a compile error that points at the call.
template <class Error, class... Parts>
[[noreturn, gnu::cold, gnu::noinline]] void refuse(Parts&&... parts) {
    ::boost::throw_exception(Error(std::forward<Parts>(parts)...));
}

} // namespace detail

} // namespace turncloth

#endif
