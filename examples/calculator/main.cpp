// turncloth_calculator: the page's answers without the page, for those who would rather ask in a shell.
// Reads one question a line from standard input, writes one answer a line; see answer.hpp for both.
#include "answer.hpp"

#include <iostream>

int main() {
    for (std::string line; std::getline(std::cin, line);)
        std::cout << answer(line) << '\n';
    return std::cout.flush() ? 0 : 1;
}
