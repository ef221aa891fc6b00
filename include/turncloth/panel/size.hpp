// The two sizes of a piece of cloth, which are not the same thing.
//
//   finished_size<U>   what it measures when everything is sewn: width(), height()
//   cut_size<U>        what the shears cut
//   area_of(size)      width times height
//   auto [width, height] = size;   out << size;   == and std::hash, of two finished sizes or of two cut ones
//   try_finished_size(width, height)  try_cut_size(width, height)      the size, or the error as a value
//   size_error         a size that is not above zero, or too small for its finishes
//
//   constexpr finished_size pocket(9_in, 4_in);
//   cut_size<inch> wrong = pocket;   // does not compile: only the finishes of a panel turn one into the other
#ifndef TURNCLOTH_PANEL_SIZE_HPP
#define TURNCLOTH_PANEL_SIZE_HPP

#include <turncloth/measure/length.hpp>
#include <turncloth/measure/outcome.hpp>
#include <turncloth/measure/require.hpp>

#include <cstddef>
#include <iosfwd>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace turncloth {

/// A size that no piece can have.
class size_error : public error {
public:
    using error::error;
};

namespace detail {

/// Width and height, each above zero.
template <length_unit Unit>
class sides {
public:
    constexpr length<Unit> width() const { return width_; }
    constexpr length<Unit> height() const { return height_; }

    /// For structured bindings: the width, then the height.
    template <std::size_t Side>
        requires(Side < 2)
    constexpr length<Unit> get() const {
        if constexpr (Side == 0)
            return width_;
        else
            return height_;
    }

protected:
    constexpr sides(length<Unit> width, length<Unit> height, const char* which) : width_(width), height_(height) {
        if (!has_room(width, height))
            refuse<size_error>(why_not(width, height, which));
    }

    static constexpr bool has_room(length<Unit> width, length<Unit> height) {
        return width.value() > 0 && height.value() > 0;
    }
    static size_error why_not(length<Unit> width, length<Unit> height, std::string_view which) {
        return {sentence({"a ", which, " size must be more than zero each way: it was ", width, " wide and ", height,
                          " high"}),
                refusal_on({.kind = fault::too_small,
                            .what = sentence({"a ", which, " size"}),
                            .given = width.value() <= 0 ? width : height,
                            .least = length<Unit>()})};
    }
    template <class Size>
    static outcome<Size, size_error> attempted(length<Unit> width, length<Unit> height, std::string_view which) {
        if (!has_room(width, height))
            return why_not(width, height, which);
        return Size(width, height);
    }

private:
    length<Unit> width_, height_;
};

} // namespace detail

template <length_unit Unit>
class cut_size;

/// What a piece measures when it is sewn. Throws size_error unless both sides are more than zero.
template <length_unit Unit>
class finished_size : public detail::sides<Unit> {
public:
    constexpr finished_size(length<Unit> width, length<Unit> height) : detail::sides<Unit>(width, height, "finished") {}
    static outcome<finished_size, size_error> attempt(length<Unit> width, length<Unit> height) {
        return detail::sides<Unit>::template attempted<finished_size>(width, height, "finished");
    }
    friend constexpr bool operator==(const finished_size& a, const finished_size& b) {
        return a.width() == b.width() && a.height() == b.height();
    }

    template <class Please = please::turn_a_cut_size_into_a_finished_size_with_the_finishes_of_a_panel>
    finished_size(const cut_size<Unit>&) = delete;
    template <detail::bare_number A, detail::bare_number B, class Please = detail::name_the_unit>
    finished_size(A, B) = delete;
};

/// What is cut. Throws size_error unless both sides are more than zero.
template <length_unit Unit>
class cut_size : public detail::sides<Unit> {
public:
    constexpr cut_size(length<Unit> width, length<Unit> height) : detail::sides<Unit>(width, height, "cut") {}
    static outcome<cut_size, size_error> attempt(length<Unit> width, length<Unit> height) {
        return detail::sides<Unit>::template attempted<cut_size>(width, height, "cut");
    }
    friend constexpr bool operator==(const cut_size& a, const cut_size& b) {
        return a.width() == b.width() && a.height() == b.height();
    }

    template <class Please = please::turn_a_finished_size_into_a_cut_size_with_the_finishes_of_a_panel>
    cut_size(const finished_size<Unit>&) = delete;
    template <detail::bare_number A, detail::bare_number B, class Please = detail::name_the_unit>
    cut_size(A, B) = delete;
};

/// Throws nothing.
template <length_unit Unit>
outcome<finished_size<Unit>, size_error> try_finished_size(length<Unit> width, length<Unit> height) {
    return finished_size<Unit>::attempt(width, height);
}
template <length_unit Unit>
outcome<cut_size<Unit>, size_error> try_cut_size(length<Unit> width, length<Unit> height) {
    return cut_size<Unit>::attempt(width, height);
}

template <class Please = please::compare_two_finished_or_two_cut_sizes_but_not_one_with_the_other, class U, class V>
bool operator==(const finished_size<U>&, const cut_size<V>&) = delete;

/// The same size in another unit, exactly.
template <length_unit To, length_unit From>
constexpr finished_size<To> as(const finished_size<From>& s) {
    return {as<To>(s.width()), as<To>(s.height())};
}
template <length_unit To, length_unit From>
constexpr cut_size<To> as(const cut_size<From>& s) {
    return {as<To>(s.width()), as<To>(s.height())};
}

template <length_unit Unit>
constexpr area<Unit> area_of(const detail::sides<Unit>& s) {
    return s.width() * s.height();
}

/// "10 x 16 in", exact.
template <length_unit Unit>
std::string to_text(const detail::sides<Unit>& s) {
    return number_text(s.width()) + " x " + to_text(s.height());
}

template <class Traits, length_unit Unit>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, const detail::sides<Unit>& s) {
    return out << to_text(s);
}

TURNCLOTH_ONCE(std::string to_text(const detail::sides<inch>&));
TURNCLOTH_ONCE(std::string to_text(const detail::sides<centimetre>&));

namespace detail {

/// Turned, since a width and a height that are alike would cancel each other.
template <length_unit Unit>
std::size_t hash_of(const sides<Unit>& s) noexcept {
    const std::size_t width = std::hash<length<Unit>>{}(s.width());
    return (width << 5U | width >> (8 * sizeof width - 5)) ^ std::hash<length<Unit>>{}(s.height());
}

} // namespace detail

} // namespace turncloth

template <turncloth::length_unit Unit>
struct std::hash<turncloth::finished_size<Unit>> {
    std::size_t operator()(const turncloth::finished_size<Unit>& s) const noexcept {
        return turncloth::detail::hash_of(s);
    }
};
template <turncloth::length_unit Unit>
struct std::hash<turncloth::cut_size<Unit>> {
    std::size_t operator()(const turncloth::cut_size<Unit>& s) const noexcept { return turncloth::detail::hash_of(s); }
};

template <class Unit>
struct std::tuple_size<turncloth::finished_size<Unit>> : std::integral_constant<std::size_t, 2> {};
template <class Unit>
struct std::tuple_size<turncloth::cut_size<Unit>> : std::integral_constant<std::size_t, 2> {};
template <std::size_t Side, class Unit>
struct std::tuple_element<Side, turncloth::finished_size<Unit>> {
    using type = turncloth::length<Unit>;
};
template <std::size_t Side, class Unit>
struct std::tuple_element<Side, turncloth::cut_size<Unit>> {
    using type = turncloth::length<Unit>;
};

#endif
