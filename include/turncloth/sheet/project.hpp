// A project: pieces with their finishes and marks, what lies inside what, and the notions. It is what a teacher
// designs; a sheet (sheet.hpp) is what she publishes, worked out from it for one finished size.
//
//   project<U>(name, finished)             pieces and all that is done with them:
//     .add(piece)                          returns the piece, to be marked
//     .add(meeting, edge_seam, placing, span_list, zipper, edge_binding, must_reach, notion or sewing)  .caution(note)
//     .add(project_cloth)                  how wide it is, how it lies and is washed: project_cloth.hpp
//     .prepare(step)   .most_layers(n)   .made_as(making)
//     .find(name)   .remove(name)          a piece, to be changed or taken away; a copy kept before undoes it
//   piece<U>(name, material, panel)        piece.hpp
//   outlined(drafted_piece<U>)             a piece of another shape: outlined.hpp
//   edge_seam<U>                           edges of two pieces sewn to each other
//   meeting<U>                             a longer piece sewn to a shorter one, mark to mark
//   placing<U>   span_list<U>              a piece sewn onto another; spans that must fill a side
//   zipper<U>                              openings on a piece, and what they are cut from
//   edge_binding<U>                        strips that bind edges of a piece
//   must_reach<U>   sewing<U>              what must be long enough; a stitch, for its thread
//   way_of_making<U>                       what made_as is given: made_as.hpp
//
//   project<inch> roll("Hand-tool roll", finished_size(20_in, 12_in));
//   auto& outer = roll.add(piece<inch>("outer", "canvas", panel(roll.finished(), all_round(self_binding("1/2"_in)))));
//   outer.mark("pocket line", edge::top, divided<finished_edge>(12_in, 3));
//
// A project for any size is a function from a finished size to a project; examples/sheets has three.
#ifndef TURNCLOTH_SHEET_PROJECT_HPP
#define TURNCLOTH_SHEET_PROJECT_HPP

#include <turncloth/making/operations.hpp>
#include <turncloth/marks/mapping.hpp>
#include <turncloth/marks/row.hpp>
#include <turncloth/notions/binding.hpp>
#include <turncloth/notions/thread.hpp>
#include <turncloth/notions/zipper.hpp>
#include <turncloth/sheet/drafted_piece.hpp>
#include <turncloth/sheet/notion.hpp>
#include <turncloth/sheet/piece.hpp>
#include <turncloth/sheet/project_cloth.hpp>

#include <cstdint>
#include <deque>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

template <length_unit Unit>
class making; // making/design.hpp
namespace detail {
template <length_unit Unit>
class sheet_draft;
} // namespace detail

/// A design, and what carries it out for a sheet. Only a program that has one compiles what carries it out.
template <length_unit Unit>
struct way_of_making {
    std::shared_ptr<const making<Unit>> design{};
    void (*carry_out)(detail::sheet_draft<Unit>&, const making<Unit>&) = nullptr;
    bool (*are_alike)(const making<Unit>&, const making<Unit>&) = nullptr;

    /// Of designs by value.
    friend bool operator==(const way_of_making& a, const way_of_making& b) {
        return a.design == b.design || (a.design && b.design && a.are_alike(*a.design, *b.design));
    }
};

/// Zippers sewn across one piece, right to left, each centred on a place down from one of its edges.
template <length_unit Unit>
struct zipper {
    std::string on;                                  ///< the piece's name
    edge from;                                       ///< the edge that the places are measured from
    std::vector<place<finished_edge, Unit>> centres; ///< one for each zipper
    zipped_opening<Unit> opening;
    length<Unit> rows, slit; ///< between the two rows of stitching; cut away behind
    zipper_supply<Unit> supply;
    length<Unit> graduation{}; ///< of the ruler that the middle of its tape's ends is for; zero where that is exact

    friend bool operator==(const zipper&, const zipper&) = default;
};

/// Strips that bind the edges of a piece and of all that lies on it there, each sewn on, brought over the edge and sewn down:
/// making/binding_strips.hpp. The sheet cuts them as pieces of their own, "binding, left". Those edges of the piece are raw,
/// or finished as a separate binding of the same width.
template <length_unit Unit>
struct edge_binding {
    std::string on;                    ///< the piece's name
    std::string material;              ///< of the strips
    length<Unit> finished;             ///< shown on either face
    binding_allowance<Unit> allowance; ///< its seam is no wider than it shows
    length<Unit> inset;                ///< of the last row, from the binding's inner edge
    length<Unit> turned_in = {};       ///< at both ends of a strip that lies over others; none where it is cut level
    std::vector<edge> edges = {};      ///< no two that meet; every edge where none is named
    std::string name = "binding";
    bool doubled = false, by_hand = false; ///< two layers, brought over by their fold; the last row

    friend bool operator==(const edge_binding&, const edge_binding&) = default;
};

/// A longer piece sewn to a shorter one, mark to mark, in equal spans, at most `most_in_a_row` of them.
template <length_unit Unit>
struct meeting {
    std::string longer, shorter; ///< the pieces' names
    edge from;                   ///< on both, the spans run away from this finished edge
    length<Unit> on_longer, on_shorter;
    std::int64_t spans;
    length<Unit> graduation{}; ///< of the ruler that its marks are for; zero where they are exact

    even_mapping<Unit> marks() const { return {on_longer, on_shorter, spans, graduation}; }

    friend bool operator==(const meeting&, const meeting&) = default;
};

/// A piece sewn flat onto another: its finished left and top edges lie at these places of the other's finished edges. A
/// row inside each of its edges that are named holds it; where none is, the project does not tell by what it is held.
template <length_unit Unit>
struct placing {
    std::string piece, on; ///< the pieces' names
    place<finished_edge, Unit> from_left, from_top;
    std::vector<edge> sewn = {};
    length<Unit> inset = {}; ///< of those rows, from the piece's finished edges

    friend bool operator==(const placing&, const placing&) = default;
};

/// Two edges that are seams, sewn to each other right sides together, finished edge on finished edge: as far as the seams
/// beside them where there are such, and otherwise right through. Of copies each meets one of the other piece's; of one
/// piece, each two that follow one another, or the two edges of its only one.
template <length_unit Unit>
struct edge_seam {
    std::string one, other; ///< the pieces' names
    edge of_one, of_other;
    beyond_seam beyond = beyond_seam::flat;
    surplus taken_up = surplus::none; ///< what becomes of the length by which one is longer
    std::int64_t spans = 4;           ///< of each, where something is taken up
    length<Unit> graduation{};        ///< of the ruler that the marks between them are for; zero where they are exact

    friend bool operator==(const edge_seam&, const edge_seam&) = default;
};

/// Spans given one by one, which together must be the finished size that they are marked on.
template <length_unit Unit>
struct span_list {
    std::string what, on; ///< of each mark; the piece's name
    edge from;
    std::vector<length<Unit>> spans;

    friend bool operator==(const span_list&, const span_list&) = default;
};

/// Something that must be long enough: a tie to go round, a flap to cover.
template <length_unit Unit>
struct must_reach {
    std::string what;
    length<Unit> has, needs;

    friend bool operator==(const must_reach&, const must_reach&) = default;
};

/// What the machine's rows are sewn with, and how the thread is sold.
template <length_unit Unit>
struct sewing {
    stitch_type stitch;
    length<Unit> overrun; ///< sewn back over at each end of a row
    fraction waste;       ///< a part more, for tails and breaks
    length<Unit> spool;

    friend bool operator==(const sewing&, const sewing&) = default;
};

/// A sheet is of at most so many different pieces, zippers, placings and whatever else is added to a project, each kind by
/// itself, and of so many marks on all its pieces together.
inline constexpr std::int64_t most_added_alike = 1000, most_marks_of_a_project = 100'000;

/// Common practice: a household machine with a stout needle sews about eight layers of light canvas; many sew fewer.
inline constexpr std::int64_t usual_most_layers = 8;

template <length_unit Unit>
class project {
public:
    [[gnu::noinline]] project(std::string name, const finished_size<Unit>& finished)
        : name_(std::move(name)), finished_(finished) {}

    const std::string& name() const { return name_; }
    const finished_size<Unit>& finished() const { return finished_; }
    /// A name made while the program runs, for figures and finishes of this project: good as long as the project, one of
    /// its copies or a sheet worked out from it lives.
    label keep(std::string text) { return kept_.keep(std::move(text)); }
    const words& kept() const { return kept_; }
    const std::deque<piece<Unit>>& pieces() const { return pieces_; }
    /// Pieces that are no rectangles: cut, drawn and bought for as others are, and no part of a making, as its sheet says.
    const std::vector<outlined_piece<Unit>>& outlines() const { return outlines_; }
    const std::vector<project_cloth<Unit>>& cloths() const { return cloths_; }
    const std::vector<meeting<Unit>>& meetings() const { return meetings_; }
    const std::vector<edge_seam<Unit>>& edge_seams() const { return edge_seams_; }
    const std::vector<placing<Unit>>& placings() const { return placings_; }
    const std::vector<span_list<Unit>>& span_lists() const { return span_lists_; }
    const std::vector<zipper<Unit>>& zippers() const { return zippers_; }
    const std::vector<edge_binding<Unit>>& bindings() const { return bindings_; }
    const std::vector<must_reach<Unit>>& must_reach_list() const { return must_reach_; }
    const std::vector<notion<Unit>>& notions() const { return notions_; }
    const std::vector<sewing<Unit>>& sewings() const { return sewings_; }
    const std::vector<sheet_caution>& cautions() const { return cautions_; }
    const std::vector<std::string>& preparations() const { return preparations_; }

    /// The piece as it stands in the project; the reference stays good while further pieces are added.
    [[gnu::noinline]] piece<Unit>& add(piece<Unit> p) {
        pieces_.push_back(std::move(p));
        return pieces_.back();
    }
    // Not deleted, as other mistakes of this kind are: a compiler would list every other add beside it.
    template <length_unit Other>
        requires detail::different_units<Unit, Other>
    void add(const piece<Other>&) {
        static_assert(std::is_same_v<Other, Unit>, "make every piece in the unit of its project: as<inch>(size)");
    }

    /// The first piece of that name, to be changed; null where there is none.
    piece<Unit>* find(std::string_view name) {
        for (piece<Unit>& p : pieces_)
            if (p.name() == name)
                return &p;
        return nullptr;
    }
    /// Takes the first piece of that name away, and says whether there was one; references to the others are no longer
    /// good. What names it stays, and a sheet refuses it until that is changed too.
    bool remove(std::string_view name) {
        auto found = pieces_.begin();
        while (found != pieces_.end() && found->name() != name)
            ++found;
        if (found == pieces_.end())
            return false;
        pieces_.erase(found);
        return true;
    }
    [[gnu::noinline]] project& add(outlined_piece<Unit> p) { return push(outlines_, std::move(p)); }
    [[gnu::noinline]] project& add(project_cloth<Unit> c) { return push(cloths_, std::move(c)); }
    [[gnu::noinline]] project& add(meeting<Unit> m) { return push(meetings_, std::move(m)); }
    [[gnu::noinline]] project& add(edge_seam<Unit> s) { return push(edge_seams_, std::move(s)); }
    [[gnu::noinline]] project& add(placing<Unit> p) { return push(placings_, std::move(p)); }
    [[gnu::noinline]] project& add(span_list<Unit> p) { return push(span_lists_, std::move(p)); }
    [[gnu::noinline]] project& add(zipper<Unit> z) { return push(zippers_, std::move(z)); }
    [[gnu::noinline]] project& add(edge_binding<Unit> b) { return push(bindings_, std::move(b)); }
    [[gnu::noinline]] project& add(must_reach<Unit> r) { return push(must_reach_, std::move(r)); }
    [[gnu::noinline]] project& add(notion<Unit> n) { return push(notions_, std::move(n)); }
    [[gnu::noinline]] project& add(sewing<Unit> s) { return push(sewings_, std::move(s)); }
    project& caution(const caution::note& n) { return caution(std::string(n.sentence), n.at); }
    project& caution(std::string sentence, caution::work at) {
        return push(cautions_, sheet_caution{at, std::move(sentence)});
    }
    /// A step that no piece tells of, done once all is cut and marked: "Stay-stitch the corners."
    project& prepare(std::string step) { return push(preparations_, std::move(step)); }

    /// How many layers the machine sews through: more are warned of. Throws range_error below one.
    project& most_layers(std::int64_t n) {
        require_at_least<range_error>(n, std::int64_t{1}, "the number of layers that a machine sews through");
        most_layers_ = n;
        return *this;
    }
    std::int64_t most_layers() const { return most_layers_; }
    /// How it is made, operation by operation: parts that bear a piece's name are that piece. The sheet then carries this
    /// out, and its steps, thread and refusals are read from that; without it, from the pieces' finishes. `design` is a
    /// making<Unit>, and made_as.hpp is to be included. What the project itself says of it is there to begin with: see
    /// making_of.hpp.
    template <class Design>
    project& made_as(Design&& design) {
        static_assert(
            requires { carried_out(std::forward<Design>(design)); },
            "include turncloth/sheet/made_as.hpp: it carries the design out");
        way_ = carried_out(std::forward<Design>(design));
        return *this;
    }
    /// Null, as the way's, for a project that does not say how it is made.
    const making<Unit>* design() const { return way_.design.get(); }
    const way_of_making<Unit>& way() const { return way_; }

    friend bool operator==(const project&, const project&) = default;

private:
    template <class T>
    project& push(std::vector<T>& list, T item) {
        list.push_back(std::move(item));
        return *this;
    }

    std::string name_;
    finished_size<Unit> finished_;
    words kept_;
    std::deque<piece<Unit>> pieces_;
    std::vector<outlined_piece<Unit>> outlines_;
    std::vector<project_cloth<Unit>> cloths_;
    std::vector<meeting<Unit>> meetings_;
    std::vector<edge_seam<Unit>> edge_seams_;
    std::vector<placing<Unit>> placings_;
    std::vector<span_list<Unit>> span_lists_;
    std::vector<zipper<Unit>> zippers_;
    std::vector<edge_binding<Unit>> bindings_;
    std::vector<must_reach<Unit>> must_reach_;
    std::vector<notion<Unit>> notions_;
    std::vector<sewing<Unit>> sewings_;
    std::vector<sheet_caution> cautions_;
    std::vector<std::string> preparations_;
    std::int64_t most_layers_ = usual_most_layers;
    way_of_making<Unit> way_{};
};

TURNCLOTH_ONCE(class project<inch>);
TURNCLOTH_ONCE(class project<centimetre>);

} // namespace turncloth

#endif
