// The formulas of tool_roll.fods as the society's exporter writes them: plain functions of doubles, in inches, one for
// each cell that has a formula. They are not checked here. tests/workbook audits them against the library.
#ifndef TURNCLOTH_EXAMPLES_WORKBOOK_TOOL_ROLL_HPP
#define TURNCLOTH_EXAMPLES_WORKBOOK_TOOL_ROLL_HPP

#include <cmath>

namespace tool_roll_workbook {

/// The cells that a person fills in, with what the workbook was saved with.
struct inputs {
    double finished_width = 22;   // B1
    double finished_height = 13;  // B2
    double self_binding = 0.375;  // B3
    double hem_first_turn = 0.25; // B4
    double hem_depth = 0.625;     // B5
    double hem_inset = 0.125;     // B6
    double tool_pockets = 8;      // B7
    double zipper_margin = 0.875; // B8
    double tape_beyond = 0.625;   // B9
    double zipper_roll = 144;     // B10
};

inline double outer_cut_width(const inputs& b) { return b.finished_width + 4 * b.self_binding; }   // B11
inline double outer_cut_height(const inputs& b) { return b.finished_height + 4 * b.self_binding; } // B12
inline double pockets_finished_height(const inputs& b) { return b.finished_height / 2; }           // B13
inline double pockets_cut_height(const inputs& b) {
    return pockets_finished_height(b) + b.hem_first_turn + b.hem_depth;
} // B14
inline double hem_stitched_at(const inputs& b) { return b.hem_first_turn + b.hem_depth - b.hem_inset; }   // B15
inline double third_pocket_mark(const inputs& b) { return 3 * b.finished_width / b.tool_pockets; }        // B16
inline double zipper_opening(const inputs& b) { return b.finished_width - 2 * b.zipper_margin; }          // B17
inline double zipper_tape(const inputs& b) { return zipper_opening(b) + 2 * b.tape_beyond; }              // B18
inline double zippers_from_a_roll(const inputs& b) { return std::floor(b.zipper_roll / zipper_tape(b)); } // B19
inline double left_on_the_roll(const inputs& b) {
    return b.zipper_roll - zippers_from_a_roll(b) * zipper_tape(b);
} // B20

} // namespace tool_roll_workbook

#endif
