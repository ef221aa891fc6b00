// A sheet: everything to be cut, folded, marked, sewn and bought for one project at one finished size, with the
// working.
//
//   sheet<U>                 name, finished, pieces, outlines, cloths, meetings, notions, steps, cautions, warnings; its ruler
//   sheet_piece<U>           the piece, its cut size with workings, and every line on it from a cut edge
//   sheet_line<U>            one of these lines; line_kind
//   sheet_error              reasons(): all that is wrong, not only the first, as sentences and as data
//
//   const sheet<inch> s = sheet_of(roll);   // making.hpp
//   std::puts(to_text(s).c_str());          // text.hpp; draw/piece.hpp draws each piece, json.hpp writes it all
//
//   catch (const sheet_error& refused) { for (const sheet_reason& r : refused.reasons()) mark(r.piece, r.sentence); }
#ifndef TURNCLOTH_SHEET_SHEET_HPP
#define TURNCLOTH_SHEET_SHEET_HPP

#include <turncloth/making/work_step.hpp>
#include <turncloth/sheet/detail/edges.hpp>
#include <turncloth/sheet/project.hpp>

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// One reason why a project cannot be made: a sentence for people, and the same as data.
struct sheet_reason {
    std::string sentence;
    refusal facts;
    std::string piece = {};                 ///< its name; empty where no one piece is meant
    std::optional<edge> measured_from = {}; ///< that the line or place is measured from

    friend bool operator==(const sheet_reason&, const sheet_reason&) = default;
};

/// A project that cannot be made as designed, with every reason found. Its facts are those of the first.
class sheet_error : public error {
public:
    sheet_error(const std::string& project, std::vector<sheet_reason> reasons)
        : error(joined(project, reasons), first(reasons)), reasons_(std::move(reasons)) {}
    const std::vector<sheet_reason>& reasons() const noexcept { return reasons_; }

private:
    static std::string joined(const std::string& project, const std::vector<sheet_reason>& reasons) {
        std::string all = detail::excerpt(project) + " cannot be made as designed";
        for (const sheet_reason& reason : reasons)
            all.append(&reason == reasons.data() ? ": " : "; ").append(reason.sentence);
        return all;
    }
    static refusal first(const std::vector<sheet_reason>& reasons) {
        return reasons.empty() ? refusal{.kind = fault::missing, .what = "a reason"} : reasons.front().facts;
    }
    std::vector<sheet_reason> reasons_;
};

enum class line_kind {
    fold,
    stitching,
    mark,
    slit,
    placement ///< onto which a fold is brought
};

/// One line on the flat cut piece, parallel to an edge; it runs across the whole piece unless `begins` and `ends` say
/// otherwise, or it is drawn only in ticks.
template <length_unit Unit>
struct sheet_line {
    line_kind kind;
    std::string what;
    edge parallel_to;
    figure<Unit> from_cut_edge;
    length<Unit> begins, ends;                             ///< along the edge, from its left or top end
    bool of_finish = false;                                ///< it belongs to the finish of that edge
    std::vector<short_mark<Unit>> only = {};               ///< where it is drawn, if not from one end to the other
    std::optional<length<Unit>> brought_to = std::nullopt; ///< of a fold: its placement, from the same cut edge

    friend bool operator==(const sheet_line&, const sheet_line&) = default;
};

/// Eyelets of one size along a piece, from its cut edges.
template <length_unit Unit>
struct sheet_eyelets {
    eyelet<Unit> size;
    figure<Unit> from_top;
    std::vector<length<Unit>> from_left;

    friend bool operator==(const sheet_eyelets&, const sheet_eyelets&) = default;
};

template <length_unit Unit>
struct sheet_piece {
    piece<Unit> made_from;
    cut_size<Unit> cut;
    figure<Unit> width, height;
    finished_size<Unit> finished;             ///< when its pleats are laid and its corners sewn
    std::vector<sheet_line<Unit>> lines = {}; ///< in the order of work: long edges before short, folds before stitching
    std::vector<sheet_eyelets<Unit>> eyelets = {};
    length<Unit> corner = {};     ///< the square to cut out of each corner; zero for none
    length<Unit> depth = {};      ///< of the box that two such pieces make, where corners are cut out
    length<Unit> graduation = {}; ///< of the ruler that it was worked out on; zero for none

    friend bool operator==(const sheet_piece&, const sheet_piece&) = default;
};

/// The marks at which a longer piece meets a shorter one, from the finished edge of both.
template <length_unit Unit>
struct sheet_meeting {
    meeting<Unit> made_from;
    even_mapping<Unit> marks;

    friend bool operator==(const sheet_meeting&, const sheet_meeting&) = default;
};

/// Rows that go through more layers than a machine is taken to sew.
template <length_unit Unit>
struct bulk_warning {
    std::string piece;
    std::vector<edge> edges;    ///< that they run along
    std::int64_t least, layers; ///< in the thinnest place of such a row, and in the thickest
    std::int64_t limit;
    std::optional<length<Unit>> mitre_leg = {}; ///< a mitre's crease would meet both cut edges so far from the corner

    /// Exact in the unit of the sheet, or as a ruler shows it.
    std::string what() const;
    std::string what(const ruler& by) const;
    /// Common practice: what is left outside the crease of a mitre is a narrow seam allowance, which any ruler that cloth
    /// is marked with has.
    static length<Unit> mitre_kept() {
        return metric_unit<Unit> ? as<Unit>(length_of<centimetre>({1, 2})) : as<Unit>(length_of<inch>({1, 4}));
    }

    friend bool operator==(const bulk_warning&, const bulk_warning&) = default;

private:
    std::string what(const ruler* by) const;
};

/// The design that the steps come from. Sheets are compared by their steps, not by it.
template <length_unit Unit>
struct kept_design {
    std::shared_ptr<const making<Unit>> kept = {};

    explicit operator bool() const { return kept != nullptr; }
    const making<Unit>& operator*() const { return *kept; }
    friend bool operator==(const kept_design&, const kept_design&) { return true; }
};

template <length_unit Unit>
struct sheet {
    std::string name;
    finished_size<Unit> finished;
    std::vector<sheet_piece<Unit>> pieces;
    std::vector<outlined_piece<Unit>> outlines; ///< pieces of other shapes
    std::vector<sheet_meeting<Unit>> meetings;
    std::vector<notion<Unit>> notions;
    work_plan<Unit> steps;                ///< of making, in their order: making/work_step.hpp
    std::vector<sheet_caution> cautions;  ///< each once, in the order of the work that they belong to
    std::vector<std::string> warnings;    ///< what can be made, but may not be meant
    std::vector<bulk_warning<Unit>> bulk; ///< rows through too many layers: bulk.hpp
    words kept;                           ///< the names that figures and finishes bear
    length<Unit> graduation = {};         ///< of the ruler that it was worked out on (on_ruler.hpp); zero: it is exact
    std::optional<finished_size<Unit>> asked = {}; ///< where that ruler changed the finished size
    kept_design<Unit> design = {};                 ///< of a project that says how it is made
    std::vector<project_cloth<Unit>> cloths = {};  ///< what the project says of each

    friend bool operator==(const sheet&, const sheet&) = default;
};

} // namespace turncloth

#endif
