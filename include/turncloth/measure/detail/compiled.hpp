// What is compiled once, in a library, for those who ask for it: each line says so of one template and one unit.
//
//   TURNCLOTH_ONCE(std::string to_text(const figure<inch>&));     at the end of the header, after the template
//   TURNCLOTH_INLINE std::string to_text(fraction x);             the same of what is no template, declared
//
// Where nothing is said this is nothing at all, and the library is header-only. TURNCLOTH_COMPILED, which the target
// turncloth::compiled defines for its users, makes it a promise that the library holds the function, so that the compiler
// need not make it again; TURNCLOTH_COMPILING, in the sources of the library, makes the function. The largest are not even
// read where they are compiled: a header includes what defines them #ifndef TURNCLOTH_COMPILED, and asks for a
// compiled_unit.
#ifndef TURNCLOTH_MEASURE_DETAIL_COMPILED_HPP
#define TURNCLOTH_MEASURE_DETAIL_COMPILED_HPP

#include <turncloth/measure/length.hpp>

#include <concepts>

namespace turncloth::detail {

/// Sheets are compiled in inches and in centimetres: a program that needs them in another unit leaves
/// turncloth::compiled, and has them header-only.
template <class Unit>
#ifdef TURNCLOTH_COMPILED
concept compiled_unit = std::same_as<Unit, inch> || std::same_as<Unit, centimetre>;
#else
concept compiled_unit = length_unit<Unit>;
#endif

template <class>
struct for_any_unit {
    using type = void;
};
/// What is no template is compiled by every file that includes it, with all it uses of the standard library. So what
/// is large and the same for every unit is a class template `lazy_x` of nothing, compiled where it is used alone:
/// lazy_x<for_any<Unit>> in a template of a unit, and x, which is lazy_x<void>, elsewhere.
template <class Unit>
using for_any = typename for_any_unit<Unit>::type;

} // namespace turncloth::detail

#endif

// Said anew at each include: a source of the library first reads what another makes, then makes what it includes after it.
#undef TURNCLOTH_ONCE
#undef TURNCLOTH_INLINE
#if defined(TURNCLOTH_COMPILING)
#define TURNCLOTH_ONCE(...) template __VA_ARGS__
#define TURNCLOTH_INLINE [[gnu::used]] inline
#elif defined(TURNCLOTH_COMPILED)
#define TURNCLOTH_ONCE(...) extern template __VA_ARGS__
#define TURNCLOTH_INLINE
#else
#define TURNCLOTH_ONCE(...) static_assert(true)
#define TURNCLOTH_INLINE inline
#endif
