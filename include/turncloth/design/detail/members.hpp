// The members of every record of a design: their names in a file, whether they must be there, and what they say.
//
//   members(visitor, record)      calls .must(name, member, about) or .may(name, member, about) for each
#ifndef TURNCLOTH_DESIGN_DETAIL_MEMBERS_HPP
#define TURNCLOTH_DESIGN_DETAIL_MEMBERS_HPP

#include <turncloth/design/detail/choices.hpp>
#include <turncloth/design/detail/making_members.hpp>
#include <turncloth/design/project_design.hpp>

#include <string_view>

namespace turncloth::detail {

template <class Visitor, record_of<project_design> Self>
void members(Visitor& v, Self& d) {
    v.must("name", d.name, "What is made, as its sheet is headed");
    v.may("units", d.units, "The units that it can be made in");
    v.may("sizes", d.sizes, "Finished sizes to begin with, as 12 x 10 in");
    v.may("shorter_side_parts", d.shorter_side_parts,
          "The shorter side is parted into so many alike, each on the ruler, and stays the shorter");
    v.may("measures", d.measures, "Named measures; each may use those before it");
    v.may("refuse", d.refusals, "Sizes that it is not made at, and why");
    v.may("finishes", d.finishes, "Finishes of edges that no form has");
    v.may("pieces", d.pieces, "The pieces to cut");
    v.may("outlines", d.outlines, "Pieces to cut that are no rectangles");
    v.may("cloths", d.cloths, "What is said of cloths that pieces are cut from");
    v.may("meetings", d.meetings, "Longer pieces sewn to shorter ones, mark to mark");
    v.may("seams", d.seams, "Edges of pieces sewn to each other");
    v.may("placings", d.placings, "Pieces sewn onto others");
    v.may("span_lists", d.span_lists, "Spans that together must fill a side of a piece");
    v.may("zippers", d.zippers, "Zippers sewn across a piece");
    v.may("bindings", d.bindings, "Strips that bind edges of a piece");
    v.may("must_reach", d.reaches, "What must be long enough");
    v.may("notions", d.notions, "What is listed beside the pieces, to buy or to make ready");
    v.may("sewings", d.sewings, "What rows are sewn with, for the thread");
    v.may("making", d.making, "How it is made; where nothing is said, its steps come from the finishes of its pieces");
    v.may("cautions", d.cautions, "Cautions, each with the work that it belongs to");
    v.may("preparations", d.preparations, "Steps that no piece tells of, when all is cut and marked");
    v.may("most_layers", d.most_layers, "So many layers the machine sews through");
}

template <class Visitor, record_of<design_measure> Self>
void members(Visitor& v, Self& m) {
    v.must("name", m.name, "Words of letters and digits that begin with a letter");
    v.may("is", m.is, "Worked out from what stands before it");
    v.may("inches", m.inches, "Given, where it is made in inches");
    v.may("centimetres", m.centimetres, "Given, where it is made in centimetres");
    v.may("ruler", m.ruler, "How what is given comes onto a ruler");
}

template <class Visitor, record_of<design_refusal> Self>
void members(Visitor& v, Self& r) {
    v.must("where", r.where, "Where this holds, the size is refused");
    v.must("sentence", r.sentence, "Why");
}

template <class Visitor, record_of<design_piece> Self>
void members(Visitor& v, Self& p) {
    v.must("name", p.name, "What it is called");
    v.must("material", p.material, "What it is cut from");
    v.must("width", p.width, "Its finished width");
    v.must("height", p.height, "Its finished height");
    v.may("count", p.count, "So many are cut alike");
    v.may("film", p.film, "Whether it is of plastic film");
    v.may("does_not_fray", p.does_not_fray, "Whether its cut edges stay whole; those of film do");
    v.may("cut_up", p.cut_up, "Whether it is cut up into other pieces before these are made up");
    v.may("lies", p.lies, "How it lies on its cloth; as who lays it asks where nothing is said");
    v.may("inside", p.inside, "The piece that it is an inner layer of");
    v.may("edges", p.edges, "How its edges are finished; raw where nothing is said");
    v.may("marks", p.marks, "Lines to mark on it");
    v.may("pleats", p.pleats, "Pleats side by side");
    v.may("corners", p.corners, "Its corners cut out, for a box");
    v.may("eyelets", p.eyelets, "Eyelets in the heading of its top edge");
    v.may("eyelet_rows", p.eyelet_rows, "Rows of eyelets, each laid out by the lengths given");
    v.may("where", p.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_own_finish> Self>
void members(Visitor& v, Self& f) {
    v.must("called", f.called, "What the form of an edge calls it");
    v.may("name", f.name, "As it is printed: what it is called, where nothing is said");
    v.may("allows", f.allows, "The parts of its allowance, from the cut edge to the finished edge");
    v.may("folds", f.folds, "Its folds, from the cut edge, in the order of folding");
    v.may("stitching", f.stitching, "Its rows, from the cut edge, in the order of sewing");
    v.may("reaches", f.reaches, "How far turned cloth lies inward of the finished edge");
    v.may("joins", f.joins, "Whether the edge is sewn to another piece");
}

template <class Visitor, record_of<design_edges> Self>
void members(Visitor& v, Self& e) {
    v.may("all", e.all, "Every edge that is not named by itself");
    v.may("top", e.top, "The top edge");
    v.may("right", e.right, "The right edge");
    v.may("bottom", e.bottom, "The bottom edge");
    v.may("left", e.left, "The left edge");
}

template <class Visitor, record_of<design_marks> Self>
void members(Visitor& v, Self& m) {
    v.must("what", m.what, "What each mark is");
    v.must("parallel_to", m.parallel_to, "The edge that they are parallel to and measured from");
    v.must("places", m.places, "Where they are");
    v.may("from", m.from, "What they are measured from, of that edge");
    v.may("only", m.only, "Marked only at these edges, and not right across");
    v.may("where", m.where, "They are there only where this holds");
}

template <class Visitor, record_of<design_tick> Self>
void members(Visitor& v, Self& t) {
    v.must("at", t.at, "The edge");
    v.must("size", t.size, "How far it runs inward from the cut edge");
}

template <class Visitor, record_of<design_pleats> Self>
void members(Visitor& v, Self& p) {
    v.must("from", p.from, "The edge that they run away from");
    v.may("kind", p.kind, "How they are folded");
    v.must("finished", p.finished, "What all of them finish at");
    v.must("count", p.count, "How many");
    v.must("depth", p.depth, "Of each fold");
    v.may("starts", p.starts, "From the finished edge to the first");
    v.may("where", p.where, "They are there only where this holds");
}

template <class Visitor, record_of<design_corners> Self>
void members(Visitor& v, Self& c) {
    v.must("square", c.square, "The side of each square that is cut out");
    v.must("across", c.across, "Of the seam across each opened corner");
    v.may("where", c.where, "They are cut out only where this holds");
}

template <class Visitor, record_of<design_eyelets> Self>
void members(Visitor& v, Self& e) {
    v.may("listed_as", e.listed_as, "The notion that lists them: eyelets, where nothing is said");
    v.must("count", e.count, "How many");
    v.must("hole", e.hole, "Across its hole");
    v.must("rim", e.rim, "Across its rim");
    v.must("margin", e.margin, "From each side edge to the nearest rim");
    v.must("clear", e.clear, "Kept clear of the fold, the stitching and the side hems");
}

template <class Visitor, record_of<design_eyelet_row> Self>
void members(Visitor& v, Self& e) {
    v.must("count", e.count, "How many");
    v.must("hole", e.hole, "Across its hole");
    v.must("rim", e.rim, "Across its rim");
    v.must("margin", e.margin, "From the finished left edge to the first rim");
    v.must("gap", e.gap, "From one rim to the next");
    v.must("down", e.down, "From the finished top edge to the middles");
    v.may("graduation", e.graduation, "Of the ruler that they are marked with");
}

template <class Visitor, record_of<design_outline> Self>
void members(Visitor& v, Self& o) {
    v.must("name", o.name, "What it is called");
    v.must("material", o.material, "What it is cut from");
    v.may("count", o.count, "So many are cut alike");
    v.may("may_turn", o.may_turn, "Whether its grain may lie across the cloth");
    v.may("grain", o.grain, "The way of its grain; straight up where nothing is said");
    v.may("tolerance", o.tolerance,
          "How far edges may lie from a curve that they stand for; 0.1 mm where nothing is said");
    v.may("edges", o.edges, "How those edges are finished that say nothing themselves; raw where nothing is said");
    v.must("corners", o.corners, "Its corners on the finished edge, in order, either way round");
    v.may("where", o.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_outline_corner> Self>
void members(Visitor& v, Self& c) {
    v.may("across", c.across, "How far to the right it lies; 0 where nothing is said");
    v.may("up", c.up, "How far up it lies; 0 where nothing is said");
    v.may("edge", c.edge, "How the edge from here to the next corner is finished");
    v.may("shape", c.shape, "What the cut line does at this corner, where it stands out");
    v.may("curve", c.curve, "How that edge is curved; straight where nothing is said");
    v.may("notches", c.notches, "On that edge, each so far along it from here");
    v.may("where", c.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_grain> Self>
void members(Visitor& v, Self& g) {
    v.may("from_across", g.from_across, "The spot that it leads from, to the right; 0 where nothing is said");
    v.may("from_up", g.from_up, "And up");
    v.may("to_across", g.to_across, "The spot that it leads to, to the right");
    v.may("to_up", g.to_up, "And up");
}

template <class Visitor, record_of<design_cloth> Self>
void members(Visitor& v, Self& c) {
    v.must("material", c.material, "What pieces say they are cut from");
    v.may("width", c.width, "From edge to edge, as it is sold; left to who buys it where nothing is said");
    v.may("selvedge", c.selvedge, "What of each selvedge is not used");
    v.may("one_way", c.one_way, "Whether it has a nap or a print that stands upright, so that no piece is turned");
    v.may("folded", c.folded, "Whether it lies double to be cut, selvedge on selvedge");
    v.may("washed", c.washed, "When it is washed; cut as pieces, these are cut larger");
    v.may("shrinks_along", c.shrinks_along, "By so much in a hundred of its length in that wash; below zero it grows");
    v.may("shrinks_across", c.shrinks_across, "And of its width");
    v.may("join", c.join,
          "The allowance at each edge of widths that are joined; 1/2 in or 1.5 cm where nothing is said");
    v.may("repeat_along", c.repeat_along,
          "From one place of its pattern to the next alike, along it; pieces wider than it are then joined of whole "
          "widths");
    v.may("repeat_across", c.repeat_across, "And across it");
    v.may("on_hand", c.on_hand, "Pieces of it that are there already, used before any is bought");
    v.may("where", c.where, "It is said only where this holds");
}

template <class Visitor, record_of<design_on_hand> Self>
void members(Visitor& v, Self& h) {
    v.must("name", h.name, "What it is called");
    v.must("width", h.width, "Across the grain, once its sides are cut straight and square");
    v.must("length", h.length, "Along the grain");
    v.may("where", h.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_meeting> Self>
void members(Visitor& v, Self& m) {
    v.must("longer", m.longer, "The name of the longer piece");
    v.must("shorter", m.shorter, "The name of the shorter piece");
    v.must("from", m.from, "The finished edge that the spans run away from, on both");
    v.must("on_longer", m.on_longer, "All spans together, on the longer");
    v.must("on_shorter", m.on_shorter, "All spans together, on the shorter");
    v.must("spans", m.spans, "How many");
    v.may("graduation", m.graduation, "Of the ruler that its marks are for; the sheet's, where nothing is said");
    v.may("where", m.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_edge_seam> Self>
void members(Visitor& v, Self& s) {
    v.must("one", s.one, "The name of a piece");
    v.must("of_one", s.of_one, "Its edge, which is a seam");
    v.must("other", s.other, "The name of the other piece, or the same");
    v.must("of_other", s.of_other, "The edge that it meets");
    v.may("beyond", s.beyond, "How the pieces go on beyond the seam");
    v.may("taken_up", s.taken_up, "What becomes of the length by which one is longer");
    v.may("spans", s.spans, "In so many parts alike, where something is taken up: four where nothing is said");
    v.may("graduation", s.graduation, "Of the ruler that its marks are for; the sheet's, where nothing is said");
    v.may("where", s.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_placing> Self>
void members(Visitor& v, Self& p) {
    v.must("piece", p.piece, "The name of the piece that is sewn on");
    v.must("on", p.on, "The name of the piece beneath");
    v.may("from_left", p.from_left, "From the finished left edge beneath to its own; on it where nothing is said");
    v.may("from_top", p.from_top, "From the finished top edge beneath to its own; on it where nothing is said");
    v.may("sewn", p.sewn, "Its edges inside each of which a row holds it");
    v.may("inset", p.inset, "Of those rows, from its finished edges");
    v.may("where", p.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_span> Self>
void members(Visitor& v, Self& s) {
    v.must("size", s.size, "How long it is");
    v.may("where", s.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_span_list> Self>
void members(Visitor& v, Self& s) {
    v.must("what", s.what, "What each mark between them is");
    v.must("on", s.on, "The name of the piece");
    v.must("from", s.from, "The edge that they begin at");
    v.must("spans", s.spans, "Each in its turn");
    v.may("where", s.where, "They are there only where this holds");
}

template <class Visitor, record_of<design_zipper> Self>
void members(Visitor& v, Self& z) {
    v.must("on", z.on, "The name of the piece");
    v.must("from", z.from, "The edge that the middles are measured from");
    v.must("centres", z.centres, "How far each middle is from that edge");
    v.must("across", z.across, "From seam to seam, finished");
    v.must("margin", z.margin, "Closed at each end of the opening");
    v.must("beyond", z.beyond, "Tape beyond the opening at each end");
    v.must("rows", z.rows, "From one row of stitching to the other");
    v.must("slit", z.slit, "Cut away behind it");
    v.may("roll", z.roll, "The length of a roll that zippers are cut from");
    v.may("lengths_sold", z.lengths_sold, "Or the lengths that zippers are sold made up in");
    v.may("ends", z.ends, "Tape beyond the stops as sold");
    v.may("tail", z.tail, "Tape left below a new stop");
    v.may("graduation", z.graduation,
          "Of the ruler that the ends of its tape are for; the sheet's, where nothing is said");
    v.may("where", z.where, "They are there only where this holds");
}

template <class Visitor, record_of<design_binding> Self>
void members(Visitor& v, Self& b) {
    v.must("on", b.on, "The name of the piece");
    v.must("material", b.material, "What the strips are cut from");
    v.must("finished", b.finished, "How wide they show on either face");
    v.must("seam", b.seam, "At each of their edges; no wider than they show");
    v.may("turn", b.turn, "Taken up round the edge that is bound");
    v.must("inset", b.inset, "Of the last row, from the inner edge");
    v.may("turned_in", b.turned_in, "At both ends of a strip that lies over others");
    v.may("edges", b.edges, "The edges that they bind, no two that meet: all four where none is named");
    v.may("name", b.name, "What their names begin with: binding, where nothing is said");
    v.may("doubled", b.doubled, "Whether they are folded double and brought over by the fold");
    v.may("by_hand", b.by_hand, "Whether the last row is sewn by hand");
    v.may("where", b.where, "They are there only where this holds");
}

template <class Visitor, record_of<design_reach> Self>
void members(Visitor& v, Self& r) {
    v.must("what", r.what, "What must reach");
    v.must("has", r.has, "How long it is");
    v.must("needs", r.needs, "How long it must be");
    v.may("where", r.where, "It is looked at only where this holds");
}

template <class Visitor, record_of<design_notion> Self>
void members(Visitor& v, Self& n) {
    v.must("name", n.name, "What it is called");
    v.may("from", n.from, "What its first figures are worked out from");
    v.may("details", n.details, "Further figures and numbers of it");
    v.may("cautions", n.cautions, "Cautions that go with it");
    v.may("before_seams", n.before_seams, "Whether it is sewn in before the seams beside it are closed");
    v.may("where", n.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_detail> Self>
void members(Visitor& v, Self& d) {
    v.must("what", d.what, "What it is");
    v.may("figure", d.figure, "A length");
    v.may("terms", d.terms, "Or the terms of its working, which it is the sum of");
    v.may("number", d.number, "Or a number of things");
    v.may("places", d.places, "Or places, one by one");
    v.may("sold", d.sold, "Whether it is bought, as told or cut off a roll");
    v.may("where", d.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_term> Self>
void members(Visitor& v, Self& t) {
    v.may("what", t.what, "What it is");
    v.may("times", t.times, "How often, below zero where it is taken off; once, where nothing is said");
    v.must("parts", t.parts, "The lengths that are added up");
}

template <class Visitor, record_of<design_caution> Self>
void members(Visitor& v, Self& c) {
    v.must("at", c.at, "The work that it belongs to");
    v.must("sentence", c.sentence, "What to take care of");
    v.may("where", c.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_sewing> Self>
void members(Visitor& v, Self& s) {
    v.must("stitch", s.stitch, "Its number in ISO 4915: 301 is the lockstitch");
    v.must("overrun", s.overrun, "Sewn back over at each end of a row");
    v.must("waste", s.waste, "A part more, for tails and breaks");
    v.must("spool", s.spool, "Thread on a spool as it is sold");
}

template <class Visitor, record_of<design_step> Self>
void members(Visitor& v, Self& s) {
    v.must("sentence", s.sentence, "What is done");
    v.may("where", s.where, "It is done only where this holds");
}

struct anybody {
    template <class T>
    void must(std::string_view, T&, std::string_view) {}
    template <class T>
    void may(std::string_view, T&, std::string_view) {}
};
/// Whatever has members of its own.
template <class T>
concept design_record = requires(anybody& v, T& record) {
    members(v, record);
};

} // namespace turncloth::detail

#endif
