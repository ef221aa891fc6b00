// turncloth: sewn rectangles worked out exactly. The light include: what most projects need, quick to compile.
//
//   #include <turncloth.hpp>
//   to_text(turncloth::panel(size, all_round(double_hem(1_in))).cut())
//
// It brings
//   measure: any_length, compound, error, estimate, fraction, irrational, label, language, length, outcome, place, printable, read, require,
//            rounding, working, write
//   marks: mapping, rounded, row, spacing
//   panel: finish, names, panel, size
//   notions: bias, binding, border, bow, boxed, caution, curtain, darn, drawstring, error, filling, hanging, joining, lining, loop,
//            patch, patchwork, piping, pleats, strap, thread, tie, triangles, webbing, zipper
//   cloth: purchase, shrinkage
//   making: binding_strips, box_found, compartments, corner_out, design, finishing, making_step, operations, order, parts, phrases,
//           stitched, work_plan, work_step, work_words
//   sheet: bulk, cloth_of, drafted_piece, making, notion, piece, project, project_cloth, sheet, text
//
// It leaves out, each to be included by itself or all with <turncloth/all.hpp>
//   measure: format, total
//   page: document, drawing, html, page, pages, paper, svg, tiles
//   panel: corner, corner_ways, curve, drafted, finish_lines, folding, format, given_once, made_up, outline, polygon, trimmed, typed_size
//   notions: fastening, gathered
//   cloth: bolt, cutting_out, joined_lengths, lay, off_cuts, price, remnants, stock, widths
//   making: boxed, boxed_corners, choices, executed, fastenings, laying_on, lying, on_table, ruled, straps, strip_pockets, zippers_over
//   sheet: fastened, filled_and_pieced, json, json_lengths, made_as, making_of, on_hand, on_ruler, order, outlined, purchases, sold_amounts, widths_joined
//   design: at_size, design_making, design_of, design_terms, expression, expression_value, faults, json, project_design,
//           project_of, schema
//   draw: finished, folded, lay, outline, outlined, piece, step, stock
//   handout: german, handout, options
//
// What a call costs: where its header says nothing else, time and memory grow with the texts and lists that it is given, in
// proportion, and not with its numbers: a row of 10^15 marks costs what one of ten does. What grows faster, and what takes
// no more than so many, says so beside it, and refuses more by name.
//
// Where turncloth::compiled is linked, what sheets alone use of making/ lies in the library and is not brought: include
// it where you call it.
#ifndef TURNCLOTH_HPP
#define TURNCLOTH_HPP

#include <turncloth/cloth/purchase.hpp>
#include <turncloth/cloth/shrinkage.hpp>
#include <turncloth/marks/mapping.hpp>
#include <turncloth/marks/rounded.hpp>
#include <turncloth/marks/row.hpp>
#include <turncloth/marks/spacing.hpp>
#include <turncloth/measure/any_length.hpp>
#include <turncloth/measure/compound.hpp>
#include <turncloth/measure/error.hpp>
#include <turncloth/measure/estimate.hpp>
#include <turncloth/measure/fraction.hpp>
#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/label.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/outcome.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/notions/bias.hpp>
#include <turncloth/notions/binding.hpp>
#include <turncloth/notions/border.hpp>
#include <turncloth/notions/bow.hpp>
#include <turncloth/notions/boxed.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/notions/curtain.hpp>
#include <turncloth/notions/darn.hpp>
#include <turncloth/notions/drawstring.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/notions/filling.hpp>
#include <turncloth/notions/hanging.hpp>
#include <turncloth/notions/joining.hpp>
#include <turncloth/notions/lining.hpp>
#include <turncloth/notions/loop.hpp>
#include <turncloth/notions/patch.hpp>
#include <turncloth/notions/patchwork.hpp>
#include <turncloth/notions/piping.hpp>
#include <turncloth/notions/pleats.hpp>
#include <turncloth/notions/strap.hpp>
#include <turncloth/notions/thread.hpp>
#include <turncloth/notions/tie.hpp>
#include <turncloth/notions/triangles.hpp>
#include <turncloth/notions/webbing.hpp>
#include <turncloth/notions/zipper.hpp>
#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/panel.hpp>
#include <turncloth/panel/size.hpp>
#include <turncloth/sheet/drafted_piece.hpp>
#include <turncloth/sheet/making.hpp>
#include <turncloth/sheet/notion.hpp>
#include <turncloth/sheet/piece.hpp>
#include <turncloth/sheet/project.hpp>
#include <turncloth/sheet/project_cloth.hpp>
#include <turncloth/sheet/sheet.hpp>
#include <turncloth/sheet/text.hpp>
#include <turncloth/version.hpp>

#endif
