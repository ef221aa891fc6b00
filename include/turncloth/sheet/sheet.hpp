// A sheet: everything to be cut, folded, marked, sewn and bought for one project at one finished size, with the
// working.
//
//   sheet<U>                 name, finished, pieces, meetings, notions, order, cautions, warnings
//   sheet_piece<U>           the piece, its cut size with workings, and every line on it from a cut edge
//   sheet_line<U>            one of these lines; line_kind
//   sheet_error              reasons(): all that is wrong, not only the first
//
//   const sheet<inch> s = sheet_of(roll);   // making.hpp
//   std::puts(to_text(s).c_str());          // text.hpp; drawing.hpp draws each piece, json.hpp writes it all
#ifndef TURNCLOTH_SHEET_SHEET_HPP
#define TURNCLOTH_SHEET_SHEET_HPP

#include <turncloth/sheet/project.hpp>

#include <array>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// A project that cannot be made as designed, with every reason found.
class sheet_error : public error {
public:
    sheet_error(const std::string& project, std::vector<std::string> reasons)
        : error(joined(project, reasons)), reasons_(std::move(reasons)) {}
    const std::vector<std::string>& reasons() const noexcept { return reasons_; }

private:
    static std::string joined(const std::string& project, const std::vector<std::string>& reasons) {
        std::string all = project + " cannot be made so: ";
        for (const std::string& reason : reasons)
            all += (&reason == reasons.data() ? "" : "; ") + reason;
        return all;
    }
    std::vector<std::string> reasons_;
};

enum class line_kind { fold, stitching, mark, slit };

/// One line on the flat cut piece, parallel to an edge; it runs across the whole piece unless `from` and `to` say
/// otherwise.
template <length_unit Unit>
struct sheet_line {
    line_kind kind;
    std::string what;
    edge parallel_to;
    figure<Unit> from_cut_edge;
    length<Unit> begins, ends; ///< along the edge, from its left or top end
    bool of_finish = false;    ///< it belongs to the finish of that edge
};

template <length_unit Unit>
struct sheet_piece {
    piece<Unit> made_from;
    cut_size<Unit> cut;
    figure<Unit> width, height;
    std::vector<sheet_line<Unit>> lines; ///< in the order of work: long edges before short ones, folds before stitching
};

/// The marks at which a longer piece meets a shorter one, from the finished edge of both.
template <length_unit Unit>
struct sheet_meeting {
    meeting<Unit> made_from;
    even_mapping<Unit> marks;
};

template <length_unit Unit>
struct sheet {
    std::string name;
    finished_size<Unit> finished;
    std::vector<sheet_piece<Unit>> pieces;
    std::vector<sheet_meeting<Unit>> meetings;
    std::vector<notion<Unit>> notions;
    std::vector<std::string> order; ///< of making, a sentence a step
    std::vector<std::string> cautions;
    std::vector<std::string> warnings; ///< what can be made, but may not be meant
};

namespace detail {

/// Common practice: the long edges are finished first, so that the short ones lie over them at the corners.
template <length_unit Unit>
std::array<edge, 4> edges_in_order(const panel<Unit>& p) {
    if (p.finished().width() > p.finished().height())
        return {edge::top, edge::bottom, edge::left, edge::right};
    return {edge::left, edge::right, edge::top, edge::bottom};
}

/// Edges finished alike, by name.
struct edges_alike {
    std::string names; ///< "left, right"; "every edge" for all four
    edge first;
};

template <length_unit Unit>
std::vector<edges_alike> finished_alike(const panel<Unit>& p, std::vector<edge> edges) {
    std::vector<edges_alike> all;
    const bool may_be_every = edges.size() == all_edges.size();
    while (!edges.empty()) {
        const finish<Unit>& f = p.finish_of(edges.front());
        edges_alike alike{{}, edges.front()};
        std::vector<edge> others;
        for (const edge e : edges) {
            if (p.finish_of(e) == f)
                alike.names.append(alike.names.empty() ? "" : ", ").append(name_of(e));
            else
                others.push_back(e);
        }
        if (may_be_every && others.empty() && all.empty())
            alike.names = "every edge";
        all.push_back(alike);
        edges = others;
    }
    return all;
}

constexpr bool is_level(edge e) { return e == edge::top || e == edge::bottom; }

template <length_unit Unit>
length<Unit> across(const cut_size<Unit>& cut, edge e) {
    return is_level(e) ? cut.height() : cut.width();
}
template <length_unit Unit>
length<Unit> along(const cut_size<Unit>& cut, edge e) {
    return is_level(e) ? cut.width() : cut.height();
}

} // namespace detail

} // namespace turncloth

#endif
