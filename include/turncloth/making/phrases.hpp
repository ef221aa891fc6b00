// Sentences by key, with places for their data: English stands here, and a table by key may replace any of it.
//
//   struct phrase{key, english}       "Turn {edges} over by {turned}, and {press}."
//   phrase_table                      a text for each key that is to be said otherwise
//   all_phrases                       every phrase, so that a translator misses none
//   said(phrase, {{"turned", "3/8 in"}, ...}, table)
//
//   const phrase_table german = {{"press.iron", "bügeln"}};
//   said(phrases::lay, {{"piece", "the lining"}, {"on", "the back"}, ...}, german);
//
// A place that a text does not name is left out of it, and one that is not given is left as it stands, in its braces.
#ifndef TURNCLOTH_MAKING_PHRASES_HPP
#define TURNCLOTH_MAKING_PHRASES_HPP

#include <turncloth/measure/language.hpp>

#include <array>

namespace turncloth {

namespace phrases {

// Lists, and what is named in them.
inline constexpr phrase comma{"list.comma", ", "}, and_{"list.and", " and "};
inline constexpr phrase the_piece{"piece.the", "the {name}"}, each_piece{"piece.each", "each {name}"},
    one_piece{"piece.one", "one {name}"}, numbered{"piece.numbered", "{name} {number}"};
inline constexpr phrase top{"edge.top", "top"}, right{"edge.right", "right"}, bottom{"edge.bottom", "bottom"},
    left{"edge.left", "left"};
inline constexpr phrase the_edge{"edges.the_one", "the {sides} edge"}, the_edges{"edges.the_many", "the {sides} edges"};
inline constexpr phrase edges_one{"edges.one", "{sides} edge"}, edges_many{"edges.many", "{sides} edges"},
    edges_all{"edges.all", "all four edges"};
inline constexpr phrase the_folded_edge{"edges.folded_one", "the folded {sides} edge"},
    the_folded_edges{"edges.folded_many", "the folded {sides} edges"},
    edges_all_folded{"edges.folded_all", "all four folded edges"};
inline constexpr phrase edge_cut{"seen.cut", "the cut {side} of {piece}"},
    edge_folded{"seen.folded", "the folded {side} of {piece}"}, edge_bought{"seen.bought", "the {side} of {piece}"},
    edge_cut_out{"seen.cut_out", "the {side} in the {level} {upright} corner cut out of {piece}"};
inline constexpr phrase own_cut{"own.cut", "its cut {side}"}, own_folded{"own.folded", "its folded {side}"},
    own_bought{"own.bought", "its {side}"},
    own_cut_out{"own.cut_out", "its {side} in the {level} {upright} corner cut out of it"};
inline constexpr phrase right_side{"face.right", "right"}, wrong_side{"face.wrong", "wrong"};
inline constexpr phrase one_layer{"layers.one", "1 layer"}, some_layers{"layers.some", "{most} layers"},
    range_of_layers{"layers.range", "{least} to {most} layers"};
inline constexpr phrase at_copy{"copy.at", "{at} ({piece})"};

// Which way up edges are named, once, before the steps.
inline constexpr phrase orientation{"edges.named",
                                    "Edges are named as seen from the right side. Where the wrong side lies up and the "
                                    "top edge is away from you, a left edge is at your right."};

// Before all else, and what a project says by itself.
inline constexpr phrase cut{"step.cut", "Cut every piece, and mark it while it is flat: folds, stitching and marks."};
inline constexpr phrase prepare{"step.prepare", "{what}"};
inline constexpr phrase handwork{"step.handwork", "{what}"};
inline constexpr phrase pleat{"step.pleat", "Lay the pleats of {piece}, fold to placement line, and tack them."};
inline constexpr phrase hem{"step.hem", "Turn and stitch {edges} of {piece}."};
inline constexpr phrase join{"step.join", "Sew {piece} to {on}, mark to mark."};
inline constexpr phrase apply{"step.apply", "Sew {piece} onto {on}."};
inline constexpr phrase zipper_one{"zipper.one", "Sew the zipper to {piece}, then open the slit behind it."},
    zipper_many{"zipper.many", "Sew the zippers to {piece}, then open the slits behind them."};
inline constexpr phrase apply_rows{"step.apply_rows",
                                   "Sew {piece} onto {on}: a row {inset} inside {edges} of {piece}."};
inline constexpr phrase lay_in{"lay.inside", "Lay {pieces} on {on}."};
inline constexpr phrase close_up{"step.close_up", "Sew the remaining seams of {pieces}."};
inline constexpr phrase add{"step.add", "Add the {what}."};

inline constexpr phrase one_after_another{"each.in_turn", "For {piece}, one after another: {small_step}"};

// Folds. The side that lies up is the one that cloth is turned to.
inline constexpr phrase fold{"step.fold",
                             "With the {up} side of {piece} up, turn {edges} over by {turned}, and {press}."};
inline constexpr phrase fold_next{"fold.next", "Turn {edges} over by {turned}, and {press}."};
inline constexpr phrase fold_more_one{"fold.more.one", "Turn that edge over again by {turned}, and {press}."},
    fold_more_many{"fold.more.many", "Turn those edges over again by {turned}, and {press}."};
inline constexpr phrase fold_round{"fold.round", "Of that, {round} goes round the edge: {flat} of it lies flat."};
inline constexpr phrase fold_on_row{"fold.on_row",
                                    "Fold {piece} over along the row just sewn, and {press}: from that fold to {edge} "
                                    "it measures {turned}."};
inline constexpr phrase fold_corner{
    "fold.corner", "With the {up} side of {piece} up, fold its {level} {upright} corner over, across a line that "
                   "meets both edges {turned} from the corner, and {press}."};
inline constexpr phrase fold_corner_again{
    "fold.corner.again",
    "With the {up} side of {piece} up, fold its {level} {upright} corner over once more, across a "
    "line that meets both edges {turned} from where the corner was while it lay flat, and {press}."};
inline constexpr phrase fold_on_seam{"fold.on_seam",
                                     "Press the seam open: on {piece}, turn {edges} over to the {up} side by {turned}, "
                                     "along the seam and across what is left open, and {press}."};
inline constexpr phrase press_iron{"press.iron", "press"}, press_film{"press.film", "crease by hand, without an iron"};

// Rows.
inline constexpr phrase hem_one{"sew.hem.one", "Stitch {at} from the folded edge: a row of {sewn}, through {layers}."},
    hem_many{"sew.hem.many", "Stitch {at} from each folded edge: rows of {sewn}, through {layers}."};
inline constexpr phrase row_each{"sew.row.each",
                                 "Sew a row through {walls}, {at} from {edge}, {ends}: {sewn} each, through {layers}."};
inline constexpr phrase row_one{"sew.row.one",
                                "Sew a row through {walls}, {at} from {edge}, {ends}: {sewn} long, through {layers}."},
    row_many{"sew.row.many",
             "Sew {count} rows through {walls}, {at} from {edge}, {ends}: each {sewn} long, through {layers}."};
inline constexpr phrase end_to_end{"sew.ends", "from edge to edge of {piece}"},
    from_to{"sew.from_to", "from {first} to {last} off {edge}"}, spans_off{"sew.spans", "{spans} off {edge}"},
    span{"sew.span", "from {first} to {last}"},
    across_edge{"sew.across", "from {first} on one side to {last} on the other side of {edge}"};
// Seams: a pair of edges, or several, each brought to what it meets.
inline constexpr phrase seam{"step.seam",
                             "With right sides together, sew {edges} to {on}, {at} from the cut edges{open}: "
                             "{sewn} in all, through {layers}."},
    seam_round{"seam.round", "With right sides together, sew these edges to each other, {at} from the cut edges{open}: "
                             "{sewn} in all, through {layers}."},
    seam_ends{"seam.ends", ", {ends}"}, seam_left_open{"seam.open", ", and leave {openings}"},
    seam_opening{"seam.opening", "the {what} open {ends}"},
    seam_opening_in{"seam.opening_in", "the {what} open in {edge}, {ends}"};
inline constexpr phrase seam_along{"seam.along", "Measured from {end}, {edge} takes {pairs}."},
    seam_along_listed{"seam.along.listed", "Measured from {end}, {edge} takes:"},
    seam_pairs_listed{"seam.pairs.listed", "Bring together:"}, seam_on{"seam.on", "{one} {span}"},
    seam_pairs{"seam.pairs", "Bring together {pairs}."}, seam_pair{"seam.pair", "{one} and {other}"},
    pairs_apart{"list.pairs", "; "},
    seam_corners{"seam.corners", "Turn each corner where the seam lines cross, with the needle down."},
    seam_pressed{"seam.pressed", "Press its allowances toward {pieces}."};
inline constexpr phrase seam_fitted{
    "seam.fit", "Mark {edge} at {long} from {from}, and {on} at {short} from {end}: {join} mark to mark and end to "
                "end, and {taken} the {extra} more, shared over the {spans} parts."},
    seam_fitted_whole{"seam.fit.whole", "{join} {edge} to {on} end to end, and {taken} the {extra} more."};
inline constexpr phrase open_up{"step.open", "Open the {what} wide enough for a hand, before the last seam."};
inline constexpr phrase turn_over{"step.turn_over", "Turn the work over."};
inline constexpr phrase by_hand{"sew.by_hand", "Sew this by hand."};
inline constexpr phrase overrun{"sew.overrun", "Sew back over {overrun} at both ends."},
    overrun_always{"sew.overrun.always", "Sew back over {overrun} at both ends of every row."};

// Layings.
inline constexpr phrase lay{"step.lay", "Lay {piece}{carried}, {up} side up, on the {under} side of {on}, {where}."},
    lay_beneath{"lay.beneath", "With the {under} side of {on} up, lay {piece}{carried}, {up} side up, on it, {where}."};
inline constexpr phrase opened_out{"lay.opened_out",
                                   "Open {piece} out beside {on}, {up} sides up, so that both lie flat with their "
                                   "folded edges together."};
inline constexpr phrase held_by_pins{"lay.pins", "Pin it in place."}, held_by_clips{"lay.clips", "Clip it in place."};
inline constexpr phrase carried{"lay.carried", ", with what lies on it"},
    carried_beneath{"lay.carried.beneath", ", with what lies under it"},
    carried_both{"lay.carried.both", ", with what lies on it and under it"};
inline constexpr phrase upside_down{"lay.upside_down", "its top toward you, "};
inline constexpr phrase level{"lay.level", "{own} level with {edge}"}, set_in{"lay.in", "{own} {at} from {edge}"},
    set_beyond{"lay.beyond", "{own} {at} beyond {edge}"};
inline constexpr phrase all_level{"lay.all_level", "edge to edge with it"},
    all_round{"lay.all_round", "{at} inside its edges all round"};
inline constexpr phrase fitted{
    "step.fit", "Mark {piece} at {long} from {edge}, and {on} at {short} from {end}: {join} mark to mark and "
                "end to end, and {taken} the {extra} more in each of the {spans} parts."},
    fitted_whole{"fit.whole", "{join} {piece} to {on} end to end, and {taken} the {extra} more."};
inline constexpr phrase join_pins{"fit.pins", "pin"}, join_clips{"fit.clips", "clip"};
inline constexpr phrase take_ease{"fit.ease", "ease in"}, take_tuck{"fit.tuck", "lay in a tuck"},
    take_pleat{"fit.pleat", "lay in a pleat"}, take_gather{"fit.gather", "gather"};

// Cuts and spots.
inline constexpr phrase slit{"step.slit",
                             "With the {up} side of {piece} up, cut through it alone {at} from {edge}, {ends}; cut "
                             "away {width}, half on each side."},
    slit_open{"slit.open", "With the {up} side of {piece} up, cut through it alone {at} from {edge}, {ends}."},
    corner_out{"slit.corner",
               "Cut the {level} {upright} corner out of {piece}: {at} from {edge} and {depth} from {end}."};
inline constexpr phrase eyelets{"set.eyelets",
                                "Set eyelets in {piece}, {down} from {edge}, with their centres {at} from "
                                "{end}, through {layers}."},
    bar_tacks{"set.bar_tacks", "Sew bar-tacks on {piece}, {down} from {edge} and {at} from {end}, through {layers}."},
    snaps{"set.snaps", "Set snaps in {piece}, {down} from {edge} and {at} from {end}, through {layers}."},
    buttons{"set.buttons", "Sew buttons on {piece}, {down} from {edge} and {at} from {end}, through {layers}."},
    tie_ends{"set.tie_ends", "Sew the tie to {piece}, {down} from {edge} and {at} from {end}, through "
                             "{layers}."},
    tie_middle{"set.tie_middle",
               "Sew the tie by its middle to {piece}, {down} from {edge} and {at} from {end}, through "
               "{layers}."};

inline constexpr phrase crosses{"set.crosses",
                                "Sew a cross on {piece} from corner to corner of a box {width} wide and {height} high, "
                                "its middle {down} from {edge} and {at} from {end}, through {layers}."};

inline constexpr phrase clip{"step.clip",
                             "Clip {piece} at {at} from {edge}: cut {depth} into it from {end}, and no deeper."};

// When the flat work is done.
inline constexpr phrase turn_out{"step.turn_out", "Turn it out through the {what}."},
    put_in{"step.put_in", "Put in the {what}."},
    put_in_folded{"put_in.folded", "Put in the {what}, folded in half, and let it open out inside."},
    put_in_folded_more{"put_in.folded_more",
                       "Put in the {what}, folded in half {folds} times, and let it open out inside."};
inline constexpr phrase close_by_hand{"close.hand", "Sew up the {what} by hand."},
    close_zipper{"close.zipper", "Close the {what} again."}, close_tie{"close.tie", "Tie the {what} shut."},
    close_other{"close.other", "Close the {what}."};
inline constexpr phrase fold_up{"step.fold_up", "Fold it over."}, roll{"step.roll", "Roll it up."};

inline constexpr phrase check{"step.check", "Check {piece}: {size}."};

} // namespace phrases

inline constexpr std::array all_phrases = {phrases::comma,
                                           phrases::and_,
                                           phrases::the_piece,
                                           phrases::each_piece,
                                           phrases::one_piece,
                                           phrases::numbered,
                                           phrases::top,
                                           phrases::right,
                                           phrases::bottom,
                                           phrases::left,
                                           phrases::the_edge,
                                           phrases::the_edges,
                                           phrases::edges_one,
                                           phrases::edges_many,
                                           phrases::edges_all,
                                           phrases::the_folded_edge,
                                           phrases::the_folded_edges,
                                           phrases::edges_all_folded,
                                           phrases::edge_cut,
                                           phrases::edge_folded,
                                           phrases::edge_bought,
                                           phrases::edge_cut_out,
                                           phrases::own_cut_out,
                                           phrases::own_cut,
                                           phrases::own_folded,
                                           phrases::own_bought,
                                           phrases::right_side,
                                           phrases::wrong_side,
                                           phrases::one_layer,
                                           phrases::some_layers,
                                           phrases::range_of_layers,
                                           phrases::at_copy,
                                           phrases::orientation,
                                           phrases::cut,
                                           phrases::prepare,
                                           phrases::handwork,
                                           phrases::pleat,
                                           phrases::hem,
                                           phrases::join,
                                           phrases::apply,
                                           phrases::apply_rows,
                                           phrases::zipper_one,
                                           phrases::zipper_many,
                                           phrases::lay_in,
                                           phrases::close_up,
                                           phrases::add,
                                           phrases::one_after_another,
                                           phrases::fold,
                                           phrases::fold_next,
                                           phrases::fold_more_one,
                                           phrases::fold_more_many,
                                           phrases::fold_round,
                                           phrases::fold_on_row,
                                           phrases::fold_corner,
                                           phrases::fold_corner_again,
                                           phrases::fold_on_seam,
                                           phrases::press_iron,
                                           phrases::press_film,
                                           phrases::hem_one,
                                           phrases::hem_many,
                                           phrases::row_each,
                                           phrases::seam,
                                           phrases::seam_ends,
                                           phrases::seam_round,
                                           phrases::seam_left_open,
                                           phrases::seam_opening,
                                           phrases::seam_opening_in,
                                           phrases::seam_along,
                                           phrases::seam_along_listed,
                                           phrases::seam_pairs_listed,
                                           phrases::seam_on,
                                           phrases::seam_pairs,
                                           phrases::seam_pair,
                                           phrases::pairs_apart,
                                           phrases::seam_corners,
                                           phrases::seam_pressed,
                                           phrases::seam_fitted,
                                           phrases::seam_fitted_whole,
                                           phrases::open_up,
                                           phrases::row_one,
                                           phrases::row_many,
                                           phrases::end_to_end,
                                           phrases::from_to,
                                           phrases::spans_off,
                                           phrases::span,
                                           phrases::across_edge,
                                           phrases::turn_over,
                                           phrases::held_by_pins,
                                           phrases::held_by_clips,
                                           phrases::by_hand,
                                           phrases::overrun,
                                           phrases::overrun_always,
                                           phrases::lay,
                                           phrases::lay_beneath,
                                           phrases::opened_out,
                                           phrases::carried,
                                           phrases::carried_beneath,
                                           phrases::carried_both,
                                           phrases::upside_down,
                                           phrases::level,
                                           phrases::set_in,
                                           phrases::set_beyond,
                                           phrases::all_level,
                                           phrases::all_round,
                                           phrases::fitted,
                                           phrases::fitted_whole,
                                           phrases::join_pins,
                                           phrases::join_clips,
                                           phrases::take_ease,
                                           phrases::take_tuck,
                                           phrases::take_pleat,
                                           phrases::take_gather,
                                           phrases::slit,
                                           phrases::slit_open,
                                           phrases::corner_out,
                                           phrases::clip,
                                           phrases::eyelets,
                                           phrases::bar_tacks,
                                           phrases::snaps,
                                           phrases::buttons,
                                           phrases::tie_ends,
                                           phrases::tie_middle,
                                           phrases::crosses,
                                           phrases::turn_out,
                                           phrases::put_in,
                                           phrases::put_in_folded,
                                           phrases::put_in_folded_more,
                                           phrases::close_by_hand,
                                           phrases::close_zipper,
                                           phrases::close_tie,
                                           phrases::close_other,
                                           phrases::fold_up,
                                           phrases::roll,
                                           phrases::check};

} // namespace turncloth

#endif
