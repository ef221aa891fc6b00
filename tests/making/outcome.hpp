// All that comes of a design, as text, so that a thing built two ways can be compared.
//
//   things::outcome_of(design)     steps, rows with what they met, spots, spaces, faults and thread, a line each
#ifndef TURNCLOTH_TESTS_MAKING_OUTCOME_HPP
#define TURNCLOTH_TESTS_MAKING_OUTCOME_HPP

#include <turncloth/making/executed.hpp>
#include <turncloth/making/order.hpp>
#include <turncloth/making/stitched.hpp>
#include <turncloth/making/work_plan.hpp>

#include <string>
#include <vector>

namespace things {

using namespace turncloth;

inline std::string names(const making<inch>& d, const std::vector<cut_part>& parts) {
    std::string all;
    for (const cut_part& p : parts)
        all += name_of(d, p) + ",";
    return all;
}

/// All that came of a design, line by line, without the numbers that its operations were entered by.
inline std::string outcome_of(const making<inch>& d) {
    const auto made = execute(d);
    std::string lines;
    const auto add = [&](const std::string& line) { lines += line + "\n"; };
    for (const making_step& s : made.steps)
        add(described(d, s.what));
    for (const auto& r : made.rows)
        add(described(d, r.what) + " #" + std::to_string(r.member) + " " + to_text(r.sewn) + " through " +
            std::to_string(r.least) + " to " + std::to_string(r.most) + ": " + names(d, r.walls));
    for (const auto& s : made.spots)
        add(described(d, s.what) + " " + names(d, s.layers));
    for (const auto& s : made.spaces) {
        std::string line =
            d.compartments()[s.what.index].name + " #" + std::to_string(s.member) + " " + to_text(s.tallest);
        for (const auto& o : s.openings)
            line += " opens " + to_text(o.wide) + " at " + to_text(o.from_left) + ", " + to_text(o.from_top);
        add(line);
    }
    for (const auto& f : made.faults)
        add(f.sentence);
    add("thread " + to_text(stitched_in(work_plan_of(d, made.steps)).by_machine()));
    return lines;
}

} // namespace things

#endif
