// Must be refused: the compiler says something else (brackets and semicolons are a CMake list's traps).
// must-say: apples and pears do not add
// must-say: apples and pears do not add; [write] pears
struct apple {};
struct pear {};
template <class T>
constexpr bool is_apple = false;
template <>
inline constexpr bool is_apple<apple> = true;
template <class T>
void add(T) {
    static_assert(is_apple<T>, "apples and pears do not add");
}
void use() {
#ifdef MISUSE
    add(pear{});
#else
    add(apple{});
#endif
}
