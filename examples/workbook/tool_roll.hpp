// The formulas of tool_roll.fods as the society's exporter writes them: plain functions of doubles, in inches, one for
// each cell that has a formula. They are not checked here. tests/workbook audits them against the library.
#ifndef TURNCLOTH_EXAMPLES_WORKBOOK_TOOL_ROLL_HPP
#define TURNCLOTH_EXAMPLES_WORKBOOK_TOOL_ROLL_HPP

#include <cmath>

namespace tool_roll_workbook {

/// The cells that a person fills in, with what the workbook was saved with.
struct inputs {
    double finished_width = 22;   // B3
    double finished_height = 13;  // B4
    double self_binding = 0.375;  // B5
    double hem_first_turn = 0.25; // B6
    double hem_depth = 0.625;     // B7
    double hem_inset = 0.125;     // B8
    double tool_pockets = 8;      // B9
    double zipper_margin = 0.875; // B10
    double tape_beyond = 0.625;   // B11
    double zipper_roll = 144;     // B12
};

inline double outer_cut_width(const inputs& b) { return b.finished_width + 4 * b.self_binding; }   // B14
inline double outer_cut_height(const inputs& b) { return b.finished_height + 4 * b.self_binding; } // B15
inline double pockets_finished_height(const inputs& b) { return b.finished_height / 2; }           // B16
inline double pockets_cut_height(const inputs& b) {
    return pockets_finished_height(b) + b.hem_first_turn + b.hem_depth;
} // B17
inline double hem_stitched_at(const inputs& b) { return b.hem_first_turn + b.hem_depth - b.hem_inset; }   // B18
inline double third_pocket_mark(const inputs& b) { return 3 * b.finished_width / b.tool_pockets; }        // B19
inline double zipper_opening(const inputs& b) { return b.finished_width - 2 * b.zipper_margin; }          // B20
inline double zipper_tape(const inputs& b) { return zipper_opening(b) + 2 * b.tape_beyond; }              // B21
inline double zippers_from_a_roll(const inputs& b) { return std::floor(b.zipper_roll / zipper_tape(b)); } // B22
inline double left_on_the_roll(const inputs& b) {
    return b.zipper_roll - zippers_from_a_roll(b) * zipper_tape(b);
} // B23

} // namespace tool_roll_workbook

#endif
