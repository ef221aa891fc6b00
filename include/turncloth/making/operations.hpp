// What is done to parts, in the trade's verbs. Whatever else a designer names expands into these alone.
//
//   laying<U>     a piece put on another (or on the table), which face up, and where; its fit where it is longer
//   crease<U>     cloth between a line and its edge, or a corner, turned back over or under the rest
//   stitching<U>  a row, or several alike: along what, through which walls
//   seam_of<U>    edges of two pieces, span by span, that must agree
//   snip<U>       cloth cut open or away
//   spot<U>       what pierces at places: an eyelet, a bar-tack
//   handwork      a step in the designer's own words, which is printed in its place and changes nothing
//   before        one operation before another, because the designer says so
//   operation     the handle of any of them        order_reason  why one comes before another
//
//   design.add(laying<inch>{.piece = tools, .on = lining, .top = 6_in});
//   design.add(stitching<inch>{.along = {.on = tools, .from = edge::left, .in = at<cut_edge>(3_in)},
//                              .through = {tools, lining}});
//
// Every member has a default. Distances are on the cut pieces, as if each lay flat and unfolded, so that they mean the
// same at every moment and from either face.
#ifndef TURNCLOTH_MAKING_OPERATIONS_HPP
#define TURNCLOTH_MAKING_OPERATIONS_HPP

#include <turncloth/making/parts.hpp>
#include <turncloth/marks/row.hpp>
#include <turncloth/notions/thread.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace turncloth {

/// What becomes of the length by which one side of a seam is longer.
enum class surplus : unsigned char { none, ease, tuck, pleat, gather };

/// `of_piece`, which begins `begins` from the edge of the piece that comes to lie nearest to the start, goes on `on` of
/// what it is laid on, in `spans` equal spans.
template <length_unit Unit>
struct fit {
    surplus taken_up = surplus::none;
    std::int64_t spans = 1;
    length<Unit> begins{}, of_piece{}, on{};
    bool along_level = true;   ///< across the piece; otherwise down it
    length<Unit> graduation{}; ///< of the ruler that the marks between spans are for; zero where they are exact

    constexpr bool is_given() const { return taken_up != surplus::none; }
    friend constexpr bool operator==(const fit&, const fit&) = default;
};

/// The piece's cut edges come to lie `left` and `top` from the cut left and top edges of what it is laid on: those of
/// its edges that then lie nearest to them, since a piece laid face to face has its right edge there. Where it is
/// fitted along that way, the fitted span begins there instead.
template <length_unit Unit>
struct laying {
    cut_part piece{};
    cut_part on{}; ///< none: on the table
    face up = face::right;
    length<Unit> left{}, top{};
    turncloth::fit<Unit> fit{};
    bool upside_down = false;  ///< given half a turn: its bottom edge comes to lie at the top
    bool beneath = false;      ///< under all that lies there, not on top of it
    bool set_into_one = false; ///< what it is laid on and it are one wall, as with a zipper
    friend bool operator==(const laying&, const laying&) = default;
};

/// How far cloth is turned.
enum class turning : unsigned char { quarter, back };

/// A quarter turn goes to the inside of a box, as a seam's does, or away from it where `over` says so.
/// What lies between the line and its edge, with everything that lies on it, is turned. Under: between the piece and
/// what it lies on. Over: on top of all that lies there.
template <length_unit Unit>
struct crease {
    chalk_line<Unit> at{};
    std::optional<corner_line<Unit>> across{}; ///< given: across a corner, and `at` says nothing
    turning turn = turning::back;
    bool over = false;
    bool begins_wall = false; ///< what is turned is a wall of its own: a flap, a pocket folded from one piece

    constexpr cut_part on() const { return across ? across->on : at.on; }
    friend bool operator==(const crease&, const crease&) = default;
};

/// One row, or one for each place of `each`, which then stand for the line's own place. `through` names the walls that
/// the needle is to go through: layers are counted, never given.
template <length_unit Unit>
struct stitching {
    chalk_line<Unit> along{};
    std::vector<cut_part> through{}; ///< the line's own part, where none is given
    row<cut_edge, Unit> each{};
    stitch_type stitch = turncloth::stitch(301);
    length<Unit> overrun{}; ///< sewn back over at each end
    bool by_hand = false;

    friend bool operator==(const stitching&, const stitching&) = default;
};

/// How two pieces go on beyond their seam.
enum class beyond_seam : unsigned char { flat, quarter, back };
/// Which way its allowances are pressed.
enum class pressed : unsigned char { open, to_one, to_other, not_at_all };

/// The k-th line of one side meets the k-th of the other; their lengths agree, or `surplus` says what takes up the
/// difference, between marks that divide each line into equal spans. Right sides lie together, so the two lines run
/// against each other as the right side of each is seen: top meets bottom left to left, top meets top left to right. A
/// quarter is turned to the wrong side; of what a seam turned back, as a lining, to the right side. Where a mouth lies
/// on one of the lines the seam is left open. What is turned back and is not as long lies inside as a lining does: both keep
/// their own sizes, and nothing is drawn in.
template <length_unit Unit>
struct seam_of {
    std::vector<chalk_line<Unit>> one{}, other{};
    beyond_seam beyond = beyond_seam::flat;
    surplus taken_up = surplus::none;
    std::int64_t spans = 4;    ///< of each line, where something is taken up: halves, and halves of these
    length<Unit> graduation{}; ///< of the ruler that the marks between spans are for; zero where they are exact
    turncloth::pressed pressed = turncloth::pressed::open;
    stitch_type stitch = turncloth::stitch(301);
    length<Unit> overrun{};
    bool by_hand = false;

    constexpr bool lets_in() const { return beyond == beyond_seam::back && taken_up != surplus::none; }
    friend bool operator==(const seam_of&, const seam_of&) = default;
};

enum class snip_kind : unsigned char { slit, clip };

/// A slit is cut along the line, `width` of cloth taken away (nothing: cut open only), centred on it; one that takes away
/// all up to its edge, and runs from another, cuts that corner out. A clip lets an allowance go round a corner.
template <length_unit Unit>
struct snip {
    chalk_line<Unit> at{};
    snip_kind kind = snip_kind::slit;
    length<Unit> width{};

    friend constexpr bool operator==(const snip&, const snip&) = default;
};

enum class spot_kind : unsigned char { eyelet, bar_tack, snap, button, tie_end, tie_middle, cross };

/// Places along a line; the layers there are counted.
template <length_unit Unit>
struct spot {
    spot_kind what = spot_kind::bar_tack;
    chalk_line<Unit> along{};
    row<cut_edge, Unit> places{}; ///< from the left, or from the top
    std::vector<cut_part> through{};
    length<Unit> width{},
        height{};       ///< of a cross: of the box between whose corners its two rows run; of a bar-tack: its own
    length<Unit> tie{}; ///< of a tie: how long it is, where it is to go round what is rolled up
    std::int64_t stitches = 0; ///< of a bar-tack: to and fro across it; none: its thread is not counted

    friend bool operator==(const spot&, const spot&) = default;
};

/// A step that is printed as it is given and not carried out: the work lies after it as before. It comes as soon as all
/// that a designer puts before it is done; with nothing before it, just before the first step that waits for it, as the
/// seams of its pieces and whatever is done once all is sewn do; and last where none does.
struct handwork {
    std::string says{}; ///< "Stay-stitch the corners."
    std::vector<cut_part> pieces{};

    friend bool operator==(const handwork&, const handwork&) = default;
};

/// An opening, by its mouth's number, is no operation of a designer's: it comes before the last seam of what is turned out.
enum class operation_kind : unsigned char { laying, crease, stitching, seam, snip, spot, handwork, moment, opening };
inline constexpr std::size_t operation_kinds = static_cast<std::size_t>(operation_kind::opening) + 1;

/// What add() gives for an operation.
struct operation {
    operation_kind kind = operation_kind::laying;
    std::size_t index = 0;
    friend constexpr bool operator==(const operation&, const operation&) = default;
};

/// Why one operation comes before another.
enum class order_reason : unsigned char {
    walls_laid,     ///< a row needs the layings among its walls
    before_covered, ///< it is sewn before what it does not pierce lies there
    turned_first,   ///< it runs over turned cloth
    sewn_flat,      ///< it runs in what is turned later, or along the crease
    enclosed,       ///< what a turning encloses is laid and sewn before
    outer_first,    ///< of the creases from one edge
    corner_first,   ///< a corner is folded across before its edges
    piece_ready,    ///< what is done to a piece by itself comes before its seams
    crossed,        ///< a seam comes before one that crosses its end
    pressed_open,   ///< a seam is sewn before its allowances are turned along it
    set_in,         ///< a seam is sewn before the zipper in its mouth
    opened,         ///< what is turned out through a mouth is sewn up with the mouth open
    work_done,      ///< what is sewn is sewn before it is turned out, filled or closed
    asked           ///< by the designer
};

/// `first` is done before `then`, and `why` says so to whoever reads the steps. It outranks what would else follow for these
/// two from where folds and rows lie, but not that a row needs the layings among its walls.
struct before {
    operation first{}, then{};
    std::string why = "the designer asks for it";

    friend bool operator==(const before&, const before&) = default;
};

} // namespace turncloth

#endif
