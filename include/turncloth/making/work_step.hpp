// Steps of making as data: what a maker does next, measured from edges that she sees at that moment.
//
//   work_plan<U>         the parts by name, and the groups of steps in the order of work
//   work_group<U>        what a maker does as one: a hem, a piece laid and sewn down; on one piece or on several alike
//   work_step<U>         one verb, and every place at which it is done: like rows, edges and copies are one step
//   work_place<U>        one edge of one copy: distances, how far cloth is turned, how long a row is then, its layers
//   seen_edge            an edge in sight: of which piece, which one, cut or folded, of a corner that was cut out
//   seen_distances<U>    distances from one such edge
//   seam_opening<U>      what of a seam is left open, in which edge, from where to where
//
//   const work_plan<inch> plan = work_plan_of(roll);          // work_plan.hpp; work_words.hpp says it in sentences
//   plan.groups[2].steps[1].places[0].across.at[0] == "1/2"_in;   // stitched so far from the folded edge
//
// Places of a family are each given from the edge, never as a step to be repeated, which would drift.
#ifndef TURNCLOTH_MAKING_WORK_STEP_HPP
#define TURNCLOTH_MAKING_WORK_STEP_HPP

#include <turncloth/making/compartments.hpp>
#include <turncloth/notions/caution.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace turncloth {

enum class work_verb : unsigned char {
    cut,      ///< and mark, while it is flat
    prepare,  ///< as `what` says
    handwork, ///< in the designer's own words, which are `what`
    zipper,   ///< sewn to a piece, and the slit behind it opened
    pleat,    ///< laid fold to placement line, and tacked
    lay,      ///< a piece on another
    hem,      ///< turned and stitched, where no more is known
    fold,     ///< and press
    sew,      ///< rows
    seam,     ///< edges of pieces, right sides together; `through` are the others
    open,     ///< a mouth, before the last seam
    slit,     ///< and cut away
    clip,     ///< an allowance, up to a corner that it goes round
    set,      ///< eyelets, snaps; bar-tacks and buttons are sewn
    join,     ///< a longer piece to a shorter, mark to mark
    apply,    ///< a piece sewn flat onto another
    close_up, ///< the seams that are left
    add,      ///< the notion that `what` names
    turn_out,
    put_in, ///< `what`, through a mouth
    close,  ///< a mouth
    fold_up,
    roll
};

struct seen_edge {
    cut_part of{};
    edge side = edge::top;
    bool folded = false; ///< otherwise as cut
    /// Of a corner that was cut out: what is cut along `side`, in the corner of that edge and this one.
    std::optional<edge> cut_out_beside{};
    friend constexpr bool operator==(const seen_edge&, const seen_edge&) = default;
};

/// Each of `at` is a distance from one edge.
template <length_unit Unit>
struct seen_distances {
    seen_edge from{};
    std::vector<length<Unit>> at{};
    friend bool operator==(const seen_distances&, const seen_distances&) = default;
};

/// A stretch of a seam that stays open: `what` is the mouth's name, and it is measured along `in`.
template <length_unit Unit>
struct seam_opening {
    std::string what{};
    seen_edge in{};
    seen_distances<Unit> along{};
    friend bool operator==(const seam_opening&, const seam_opening&) = default;
};

/// Where a step is done once: along one edge of one copy, or, of a family of rows or spots, at each of `across.at`.
template <length_unit Unit>
struct work_place {
    cut_part piece{};
    edge side = edge::top; ///< of the piece: what is worked on, or laid nearest to `across.from`
    seen_distances<Unit>
        across{}; ///< rows, slits, spots: from the edge; a laying: its side from the other's left or right
    seen_distances<Unit> along{}; ///< where a row or slit begins and ends; of spots; a laying: from the other's top.
                                  ///< Below zero where a row begins on the far side of that edge
    seen_distances<Unit> meets{}, meets_along{}; ///< of a seam: the same of the other side
    seen_distances<Unit> marks{}, meets_marks{}; ///< of a seam whose sides differ: brought together, one to one
    length<Unit> surplus{};                      ///< of such a seam: by how much the longer side is longer
    seen_edge own_left{}, own_top{};  ///< of a laying: the edges of the piece that `across` and `along` measure to
    cut_part end_to_end{};            ///< a row runs from edge to edge of this piece; `along` is empty then
    seen_edge begins_on{}, ends_on{}; ///< of any other row: folded edges at which it ends; `of` is not given for none
    /// A fold across the corner of `side` and `across.from`; a slit that cuts out that of `side` and `along.from`.
    bool corner = false;
    bool all_round = false;          ///< of a laying: as far in from each edge of what it lies on
    length<Unit> turned{};           ///< of a fold: how much is turned, from the edge that is seen
    length<Unit> goes_round{};       ///< of that, what goes round the thickness of the edge
    length<Unit> sewn{};             ///< each row, as long as it is then; of a seam, all of it at its first place
    std::size_t least = 0, most = 0; ///< layers along it
    friend bool operator==(const work_place&, const work_place&) = default;
};

/// What a group leaves behind, to be measured.
template <length_unit Unit>
struct work_check {
    cut_part of{};
    length<Unit> width{}, height{};
    friend bool operator==(const work_check&, const work_check&) = default;
};

template <length_unit Unit>
struct work_step {
    work_verb verb = work_verb::sew;
    std::vector<work_place<Unit>> places{};
    cut_part on{};                   ///< of a laying: what the first copy is laid on
    std::vector<cut_part> through{}; ///< the walls that the first row or spot goes through
    std::string what{};              ///< a name or, of `prepare`, a sentence
    face up = face::right;           ///< the side of the piece that lies up
    face towards = face::wrong; ///< of a fold: the side that cloth is turned to; of a laying: the other's, under it
    turncloth::fit<Unit> fit{}; ///< of a laying; of a seam whose sides differ, how that is taken up in how many spans
    std::vector<seam_opening<Unit>> left_open{};             ///< of a seam
    seen_distances<Unit> marks_on_piece{}, marks_on_other{}; ///< of a fit: brought together, one to one
    spot_kind spot = spot_kind::eyelet;
    closed_by closing = closed_by::nothing;
    length<Unit> width{};  ///< of a slit: cloth taken away; of a cross: of its box; of what is sewn on: the rows' inset
    length<Unit> height{}; ///< of a cross: of its box
    length<Unit> overrun{}; ///< sewn back over at both ends
    std::int64_t runs = 1;  ///< of a seam: in so many rows, between what is left open; of `apply`: of so many pieces
    std::int64_t folds = 0; ///< of what is put in: folded in half so often
    stitch_type stitch = turncloth::stitch(301);
    turncloth::pressed pressed = turncloth::pressed::open; ///< of a seam: its allowances
    bool straight = false; ///< a seam of several lines that go on in one: no corner is turned
    bool by_hand = false;
    bool film = false;            ///< no iron and no pins
    bool carries = false;         ///< laid with other pieces on it, seen from the side that lies up
    bool carries_beneath = false; ///< laid with other pieces under it
    bool turned_over = false;     ///< the work is turned over before it, since it lies with the other side up
    bool beneath = false;         ///< laid under it: the work is turned over, and `up` and `towards` are of that side
    bool upside_down = false;     ///< laid with its bottom edge where its top would lie
    bool on_a_row = false;        ///< a fold along a row of the same piece
    bool on_a_seam = false; ///< a fold along a seam that was sewn; a laying of what is sewn to the other, opened out
    bool once_more = false; ///< a fold of what the step before turned, or of a corner that was folded before
    std::vector<operation> stands_for{};

    friend bool operator==(const work_step&, const work_step&) = default;
};

template <length_unit Unit>
struct work_group {
    std::vector<work_step<Unit>> steps{};
    std::vector<cut_part> pieces{}; ///< the like pieces that it is done to
    bool every_copy = false;        ///< `pieces` is the first of copies that are all alike
    bool one_after_another = false; ///< all steps with the first piece, then all with the next
    std::optional<work_check<Unit>> check{};
    std::vector<caution::work> care{}; ///< the cautions that belong to it

    friend bool operator==(const work_group&, const work_group&) = default;
};

struct work_part {
    std::string name{};
    std::int64_t count = 1;
    bool bought = false; ///< a tape, whose edges are not cut

    friend bool operator==(const work_part&, const work_part&) = default;
};

template <length_unit Unit>
struct work_plan {
    std::vector<work_part> parts{};
    std::vector<work_group<Unit>> groups{};

    friend bool operator==(const work_plan&, const work_plan&) = default;
};

} // namespace turncloth

#endif
