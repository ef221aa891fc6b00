// A value, or why there is none: for programs that do not throw, and for forms that are filled in while somebody types.
//
//   outcome<T>      has_value(), if (o), *o, o->, value_or(x)      the value, to be asked for first
//                   refused().what(), refused().facts()            the sentence and the data of a refusal
//
//   if (const auto cut = try_read_length<inch>(typed)) use(*cut);
//   else show(cut.refused().what());
//
// Each function that gives one is named try_ and does what the one without it does. It throws nothing, and is there for
// programs built with -fno-exceptions too.
#ifndef TURNCLOTH_MEASURE_OUTCOME_HPP
#define TURNCLOTH_MEASURE_OUTCOME_HPP

#include <turncloth/measure/error.hpp>

#include <optional>
#include <utility>

namespace turncloth {

/// `Error` is the type of the error that would be thrown.
template <class Value, class Error = error>
class [[nodiscard]] outcome {
public:
    outcome(Value value) : value_(std::move(value)) {}
    outcome(Error why) : why_(std::move(why)) {}

    bool has_value() const noexcept { return value_.has_value(); }
    explicit operator bool() const noexcept { return has_value(); }

    /// Of an outcome that has a value.
    const Value& operator*() const& noexcept { return *value_; }
    Value&& operator*() && noexcept { return *std::move(value_); }
    const Value* operator->() const noexcept { return &*value_; }
    Value value_or(Value otherwise) const { return value_.value_or(std::move(otherwise)); }

    /// Of an outcome that has none.
    const Error& refused() const noexcept { return *why_; }

private:
    std::optional<Value> value_;
    std::optional<Error> why_;
};

} // namespace turncloth

#endif
