// The members of the records of a making, as members.hpp tells those of the others.
#ifndef TURNCLOTH_DESIGN_DETAIL_MAKING_MEMBERS_HPP
#define TURNCLOTH_DESIGN_DETAIL_MAKING_MEMBERS_HPP

#include <turncloth/design/design_making.hpp>
#include <turncloth/design/detail/choices.hpp>

namespace turncloth::detail {

template <class Visitor, record_of<design_making> Self>
void members(Visitor& v, Self& m) {
    v.may("begins", m.begins, "What is there before the operations below");
    v.may("name", m.name, "What is made, where it is not called as the project is");
    v.may("lips", m.lips, "Gaps that are open and nowhere deeper than this count as outside");
    v.may("strip_pockets", m.strip_pockets, "Rows of pockets from strips that are longer than what they are sewn to");
    v.may("parts", m.parts, "Parts beside the pieces");
    v.may("called", m.called, "Further names of parts");
    v.may("layings", m.layings, "What is laid on what");
    v.may("finishings", m.finishings, "Edges folded and sewn as their pieces say");
    v.may("creases", m.creases, "Where cloth is turned");
    v.may("rows", m.rows, "Rows of stitching");
    v.may("seams", m.seams, "Edges of two pieces sewn together");
    v.may("snips", m.snips, "Slits and clips");
    v.may("spots", m.spots, "What goes through the cloth at places");
    v.may("handwork", m.handwork, "Steps in the designer's own words, which change nothing");
    v.may("mouths", m.mouths, "Where compartments open");
    v.may("compartments", m.compartments, "What it holds things in");
    v.may("contents", m.contents, "What is put in");
    v.may("moments", m.moments, "What is done once the flat work is done");
    v.may("order", m.order, "Operations that come before others because the design says so");
}

template <class Visitor, record_of<design_strip_pockets> Self>
void members(Visitor& v, Self& p) {
    v.must("strip", p.strip, "The name of the strips, the longer piece of a meeting");
    v.must("on", p.on, "The name of the piece that they are sewn to, the shorter one of that meeting");
    v.must("feet", p.feet, "What the marks on that piece are at which the strips have their feet");
    v.must("inset", p.inset, "From the finished edges to the rows beside the outer pockets");
    v.must("name", p.name, "What the pockets of a row are called; its number follows");
    v.must("holds", p.holds, "The width of what each must hold");
    v.may("where", p.where, "They are there only where this holds");
}

template <class Visitor, record_of<design_own_part> Self>
void members(Visitor& v, Self& p) {
    v.must("name", p.name, "What it is called");
    v.may("material", p.material, "What it is of");
    v.must("width", p.width, "As cut");
    v.must("height", p.height, "As cut");
    v.may("count", p.count, "So many are cut alike");
    v.may("film", p.film, "Whether it is of plastic film");
    v.may("does_not_fray", p.does_not_fray, "Whether its cut edges stay whole");
    v.may("two_sided", p.two_sided, "Whether either side may be seen");
    v.may("one_way", p.one_way, "Whether it has a way up");
    v.may("thickness", p.thickness, "How thick it is");
    v.may("sold_width", p.sold_width, "The width that it is sold in");
    v.may("sold_by", p.sold_by, "The length that it is sold by");
    v.may("where", p.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_called> Self>
void members(Visitor& v, Self& c) {
    v.must("name", c.name, "What it is called here");
    v.must("part", c.part, "The part that bears this name");
    v.may("where", c.where, "It bears it only where this holds");
}

template <class Visitor, record_of<design_line> Self>
void members(Visitor& v, Self& l) {
    v.must("on", l.on, "The part");
    v.must("from", l.from, "The edge that it is parallel to and measured from");
    v.may("in", l.in, "How far from that edge");
    v.may("measured_from", l.measured_from, "What of the edge it is measured from");
    v.may("begins", l.begins, "Where it begins, from the left or from the top edge");
    v.may("ends", l.ends, "Where it ends, from the same");
    v.may("where", l.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_fit> Self>
void members(Visitor& v, Self& f) {
    v.must("taken_up", f.taken_up, "What becomes of the length by which the piece is longer");
    v.may("spans", f.spans, "In so many parts alike");
    v.may("begins", f.begins, "From the edge of the piece to what is fitted");
    v.must("of_piece", f.of_piece, "So much of the piece");
    v.must("on", f.on, "Goes on so much of what it is laid on");
    v.may("down", f.down, "Whether it is fitted along its height");
    v.may("graduation", f.graduation, "Of the ruler that its marks are for; the sheet's, where nothing is said");
}

template <class Visitor, record_of<design_laying> Self>
void members(Visitor& v, Self& l) {
    v.must("piece", l.piece, "The part that is laid");
    v.may("on", l.on, "The part beneath; nothing for the table");
    v.may("up", l.up, "Which of its sides lies up");
    v.may("left", l.left, "From the left edge beneath to the edge that comes to lie there");
    v.may("top", l.top, "From the top edge beneath to the edge that comes to lie there");
    v.may("measured_from", l.measured_from, "What of those edges this is between");
    v.may("fit", l.fit, "Where it is longer than what it is laid on");
    v.may("upside_down", l.upside_down, "Whether it is given half a turn");
    v.may("beneath", l.beneath, "Whether it comes under all that lies there");
    v.may("one_wall", l.one_wall, "Whether both are one wall, as cloth and the tape of a zipper are");
    v.may("called", l.called, "What the order calls it");
    v.may("where", l.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_finishing> Self>
void members(Visitor& v, Self& f) {
    v.must("piece", f.piece, "The part whose edges are finished");
    v.must("edges", f.edges, "These edges");
    v.may("through", f.through, "What its rows go through beside");
    v.may("folds_alone", f.folds_alone, "Whether its rows are left out, as another row holds the folds");
    v.may("up", f.up, "Which of its sides lies up meanwhile");
    v.may("where", f.where, "They are finished only where this holds");
}

template <class Visitor, record_of<design_corner> Self>
void members(Visitor& v, Self& c) {
    v.must("on", c.on, "The part");
    v.must("upright", c.upright, "Left or right");
    v.must("level", c.level, "Top or bottom");
    v.must("leg", c.leg, "From the corner along both edges");
}

template <class Visitor, record_of<design_crease> Self>
void members(Visitor& v, Self& c) {
    v.may("at", c.at, "Along this line");
    v.may("across", c.across, "Or across this corner");
    v.may("quarter", c.quarter, "Whether it is turned up only, and not right back");
    v.may("over", c.over, "Whether it is turned over what lies there, and not under");
    v.may("begins_wall", c.begins_wall, "Whether what is turned is a wall of its own");
    v.may("called", c.called, "What the order calls it");
    v.may("where", c.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_rows> Self>
void members(Visitor& v, Self& r) {
    v.must("along", r.along, "The line");
    v.may("through", r.through, "What the needle goes through; the part of the line alone where nothing is said");
    v.may("places", r.places, "A row at each of these, in the place of the line");
    v.may("by_hand", r.by_hand, "Whether it is sewn by hand");
    v.may("stitch", r.stitch, "Its number in ISO 4915; the project's, where nothing is said");
    v.may("overrun", r.overrun, "Sewn back over at each end; as the project says, where nothing is said");
    v.may("called", r.called, "What the order calls it");
    v.may("where", r.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_seam> Self>
void members(Visitor& v, Self& s) {
    v.must("one", s.one, "The edges of one side");
    v.must("other", s.other, "What each of them meets");
    v.may("beyond", s.beyond, "How the pieces go on beyond the seam");
    v.may("taken_up", s.taken_up, "What becomes of the length by which one side is longer");
    v.may("spans", s.spans, "In so many parts alike, where something is taken up: four where nothing is said");
    v.may("pressed", s.pressed, "Which way its allowances are pressed");
    v.may("by_hand", s.by_hand, "Whether it is sewn by hand");
    v.may("graduation", s.graduation, "Of the ruler that its marks are for; the sheet's, where nothing is said");
    v.may("stitch", s.stitch, "Its number in ISO 4915; the project's, where nothing is said");
    v.may("overrun", s.overrun, "Sewn back over at each end; as the project says, where nothing is said");
    v.may("called", s.called, "What the order calls it");
    v.may("where", s.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_snip> Self>
void members(Visitor& v, Self& s) {
    v.must("at", s.at, "The line that is cut along");
    v.may("kind", s.kind, "A slit, or a clip into an allowance");
    v.may("width", s.width, "Cloth cut away along a slit");
    v.may("called", s.called, "What the order calls it");
    v.may("where", s.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_spot> Self>
void members(Visitor& v, Self& s) {
    v.must("what", s.what, "What is there");
    v.must("along", s.along, "The line that they lie on");
    v.must("places", s.places, "Where on it, from the left or from the top edge");
    v.may("through", s.through, "What they go through");
    v.may("width", s.width, "Of the box of a cross, or of a bar-tack");
    v.may("height", s.height, "Of the box of a cross, or of a bar-tack");
    v.may("tie", s.tie, "How long a tie is that is to go round what is rolled up");
    v.may("stitches", s.stitches, "Of a bar-tack, to and fro across it: its thread is counted by them");
    v.may("called", s.called, "What the order calls it");
    v.may("where", s.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_handwork> Self>
void members(Visitor& v, Self& h) {
    v.must("says", h.says, "What is done, as it is printed");
    v.must("pieces", h.pieces, "The parts that it is done to");
    v.may("called", h.called, "What the order calls it");
    v.may("where", h.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_mouth> Self>
void members(Visitor& v, Self& m) {
    v.must("name", m.name, "What it is called");
    v.must("at", m.at, "The lines that it opens along");
    v.may("by", m.by, "What closes it");
    v.may("called", m.called, "What names it here; its name, where nothing is said");
    v.may("where", m.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_mouth_of> Self>
void members(Visitor& v, Self& m) {
    v.may("mouth", m.mouth, "One of the mouths");
    v.may("zipper_on", m.zipper_on, "Or a zipper of the project, on this piece");
    v.may("number", m.number, "Which of these zippers, from 1");
}

template <class Visitor, record_of<design_compartment> Self>
void members(Visitor& v, Self& c) {
    v.must("name", c.name, "What it is called");
    v.must("between", c.between, "Two walls that lie next to one another there");
    v.must("from_left", c.from_left, "A place in it, from the finished left edge of the first wall");
    v.must("from_top", c.from_top, "And from its finished top edge");
    v.may("mouths", c.mouths, "Where it opens");
    v.may("least_width", c.least_width, "It must hold at least this, along its first mouth");
    v.may("least_height", c.least_height, "And away from it");
    v.may("least_depth", c.least_depth, "And this thick");
    v.may("count", c.count, "So many in a row");
    v.may("step", c.step, "From one to the next");
    v.may("called", c.called, "What names it here; its name, where nothing is said");
    v.may("where", c.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_contents> Self>
void members(Visitor& v, Self& c) {
    v.must("what", c.what, "What it is");
    v.must("width", c.width, "How wide");
    v.must("height", c.height, "How high");
    v.may("depth", c.depth, "How thick");
    v.must("into", c.into, "The compartment");
    v.must("by", c.by, "The mouth that it goes in by");
    v.may("squeezed", c.squeezed, "So much each side of it gives");
    v.may("folds", c.folds, "How often it may be folded in half to go in: not at all where nothing is said");
    v.may("called", c.called, "What names it here; what it is, where nothing is said");
    v.may("where", c.where, "It is there only where this holds");
}

template <class Visitor, record_of<design_moment> Self>
void members(Visitor& v, Self& m) {
    v.must("what", m.what, "What is done");
    v.may("mouth", m.mouth, "The mouth that it is turned out through, or that is closed");
    v.may("contents", m.contents, "What is put in");
    v.may("called", m.called, "What the order calls it");
    v.may("where", m.where, "It is done only where this holds");
}

template <class Visitor, record_of<design_before> Self>
void members(Visitor& v, Self& b) {
    v.must("first", b.first, "What this operation is called");
    v.must("then", b.then, "The operation that comes after it");
    v.must("why", b.why, "Why");
    v.may("where", b.where, "It is there only where this holds");
}

} // namespace turncloth::detail

#endif
