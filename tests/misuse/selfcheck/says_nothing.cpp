// Must be refused: it does not state what must be said to this compiler.
// must-not-say: gibberish
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
