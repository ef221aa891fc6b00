// Counts what a program allocates. Of each program one file alone includes it: it replaces the whole program's operator new.
//
//   const std::size_t n = allocations_of([&] { sum = total(row); });
//   unforeseen(12_in)                  the value, kept from the optimiser, which might compute beforehand what follows
#ifndef TURNCLOTH_TESTS_ALLOCATIONS_HPP
#define TURNCLOTH_TESTS_ALLOCATIONS_HPP

#include <atomic>
#include <cstddef>
#include <cstdlib>
#include <new>

inline std::atomic<std::size_t> allocations = 0;

// Otherwise the ordinary ones. Not inlined, since GCC 12 would then see malloc paired with delete.
[[gnu::noinline]] void* operator new(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size == 0 ? 1 : size))
        return memory;
    throw std::bad_alloc();
}
[[gnu::noinline]] void operator delete(void* memory) noexcept { std::free(memory); }
[[gnu::noinline]] void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }

template <class Work>
std::size_t allocations_of(Work work) {
    const std::size_t before = allocations;
    work();
    return allocations - before;
}

template <class T>
T unforeseen(T value) {
    static volatile bool yes = true;
    return yes ? value : T();
}

#endif
