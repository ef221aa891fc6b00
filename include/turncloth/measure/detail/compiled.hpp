// What is compiled once, in a library, for those who ask for it: each line says so of one template and one unit.
//
//   TURNCLOTH_ONCE(std::string to_text(const figure<inch>&));     at the end of the header, after the template
//
// Where nothing is said this is nothing at all, and the library is header-only. TURNCLOTH_COMPILED, which the target
// turncloth::compiled defines for its users, makes it a promise that the library holds the function, so that the compiler
// need not make it again; TURNCLOTH_COMPILING, in the library's one source, makes the function.
#ifndef TURNCLOTH_MEASURE_DETAIL_COMPILED_HPP
#define TURNCLOTH_MEASURE_DETAIL_COMPILED_HPP

#if defined(TURNCLOTH_COMPILING)
#define TURNCLOTH_ONCE(...) template __VA_ARGS__
#elif defined(TURNCLOTH_COMPILED)
#define TURNCLOTH_ONCE(...) extern template __VA_ARGS__
#else
#define TURNCLOTH_ONCE(...) static_assert(true)
#endif

#endif
