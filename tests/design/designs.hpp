// Designs that the tests read: the example file, and one that holds every member of every record.
#ifndef TURNCLOTH_TESTS_DESIGN_DESIGNS_HPP
#define TURNCLOTH_TESTS_DESIGN_DESIGNS_HPP

#include <turncloth/design/json.hpp>

#include <fstream>
#include <iterator>
#include <string>

namespace designs {

inline std::string file(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
inline std::string peg_bag() { return file("examples/designs/peg_bag.json"); }
inline std::string every_member() { return file("tests/design/every_member.json"); }

/// Every fault of a file on a line of its own; nothing where it has none.
inline std::string faults(const std::string& text) {
    try {
        turncloth::read_design(text);
    } catch (const turncloth::design_error& refused) {
        std::string all;
        for (const turncloth::design_fault& f : refused.faults())
            all += to_text(f) + "\n";
        return all;
    }
    return {};
}

} // namespace designs

#endif
