// turncloth, everything: every public header of the library, drawings, lays and pages included.
//
//   #include <turncloth/all.hpp>
//
// <turncloth.hpp> is the light one, with what most programs need. What is for tests, in testing/, is included by itself.
// A header at the top of a folder is public; what lies in a sub-folder is internal.
#ifndef TURNCLOTH_ALL_HPP
#define TURNCLOTH_ALL_HPP

#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/off_cuts.hpp>
#include <turncloth/cloth/purchase.hpp>
#include <turncloth/cloth/remnants.hpp>
#include <turncloth/cloth/shrinkage.hpp>
#include <turncloth/cloth/stock.hpp>
#include <turncloth/cloth/widths.hpp>
#include <turncloth/draw/folded.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outline.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/draw/stock.hpp>
#include <turncloth/making/compartments.hpp>
#include <turncloth/making/design.hpp>
#include <turncloth/making/executed.hpp>
#include <turncloth/making/finishing.hpp>
#include <turncloth/making/laying_on.hpp>
#include <turncloth/making/lying.hpp>
#include <turncloth/making/operations.hpp>
#include <turncloth/making/order.hpp>
#include <turncloth/making/parts.hpp>
#include <turncloth/making/phrases.hpp>
#include <turncloth/making/stitched.hpp>
#include <turncloth/making/strip_pockets.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_step.hpp>
#include <turncloth/making/work_words.hpp>
#include <turncloth/making/zippers_over.hpp>
#include <turncloth/marks/mapping.hpp>
#include <turncloth/marks/rounded.hpp>
#include <turncloth/marks/row.hpp>
#include <turncloth/marks/spacing.hpp>
#include <turncloth/measure/error.hpp>
#include <turncloth/measure/estimate.hpp>
#include <turncloth/measure/format.hpp>
#include <turncloth/measure/fraction.hpp>
#include <turncloth/measure/irrational.hpp>
#include <turncloth/measure/label.hpp>
#include <turncloth/measure/length.hpp>
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/notions/bias.hpp>
#include <turncloth/notions/binding.hpp>
#include <turncloth/notions/bow.hpp>
#include <turncloth/notions/boxed.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/notions/error.hpp>
#include <turncloth/notions/hanging.hpp>
#include <turncloth/notions/joining.hpp>
#include <turncloth/notions/loop.hpp>
#include <turncloth/notions/pleats.hpp>
#include <turncloth/notions/thread.hpp>
#include <turncloth/notions/tie.hpp>
#include <turncloth/notions/zipper.hpp>
#include <turncloth/page/drawing.hpp>
#include <turncloth/page/page.hpp>
#include <turncloth/page/paper.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/page/tiles.hpp>
#include <turncloth/panel/corner.hpp>
#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/folding.hpp>
#include <turncloth/panel/made_up.hpp>
#include <turncloth/panel/names.hpp>
#include <turncloth/panel/outline.hpp>
#include <turncloth/panel/panel.hpp>
#include <turncloth/panel/polygon.hpp>
#include <turncloth/panel/size.hpp>
#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/sheet/json_lengths.hpp>
#include <turncloth/sheet/made_as.hpp>
#include <turncloth/sheet/making.hpp>
#include <turncloth/sheet/notion.hpp>
#include <turncloth/sheet/piece.hpp>
#include <turncloth/sheet/project.hpp>
#include <turncloth/sheet/purchases.hpp>
#include <turncloth/sheet/sheet.hpp>
#include <turncloth/sheet/text.hpp>
#include <turncloth/version.hpp>

#endif
