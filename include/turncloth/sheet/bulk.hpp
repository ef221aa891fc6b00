// Where stitching meets more layers than a machine sews through: read from what the rows of the steps met.
//
//   bulk_warnings(sheet, most_layers)      what sheet_of lists in `bulk`, for another limit than the project's
//   bulk_warning<U>                        piece, edges, layers, limit; what() or what(ruler) is the sentence, with what to do
//   sentences_of(warnings, ruler)          those of a piece that ask for the same in one sentence, which names its edges
//
//   for (const bulk_warning<inch>& w : bulk_warnings(s, 6))
//       std::puts(w.what().c_str());
//
// A row through few layers for most of its length that crosses turned edges at its ends is thickest at the corners, where
// one edge is folded over the other. A mitre there has fewer (panel/corner.hpp, panel/made_up.hpp).
#ifndef TURNCLOTH_SHEET_BULK_HPP
#define TURNCLOTH_SHEET_BULK_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

template <length_unit Unit>
std::vector<std::string> names_of_edges(const bulk_warning<Unit>& w) {
    std::vector<std::string> names;
    for (const edge e : w.edges)
        names.emplace_back(word(name_of(e)));
    return names;
}
template <length_unit Unit>
std::string layers_met(const bulk_warning<Unit>& w) {
    return w.least < w.layers ? sentence({w.least, " to ", w.layers, " layers"}) : sentence({w.layers, " layers"});
}

template <length_unit Unit, class Text>
std::string with_remedy(const std::string& said, const bulk_warning<Unit>& w, const Text& text) {
    if (w.least == w.layers)
        return said;
    if (w.mitre_leg)
        return sentence({said, ": mitre the corners, each creased first across a line that meets both cut edges ",
                         text(*w.mitre_leg), " from the corner, and cut off what lies more than ", text(w.mitre_kept()),
                         " outside it"});
    return sentence({said, ": trim what is turned under at the corners, or mitre them"});
}

} // namespace detail

template <length_unit Unit>
std::string bulk_warning<Unit>::what() const {
    return what(nullptr);
}
template <length_unit Unit>
std::string bulk_warning<Unit>::what(const ruler& by) const {
    return what(&by);
}

template <length_unit Unit>
std::string bulk_warning<Unit>::what(const ruler* by) const {
    const auto text = [&](length<Unit> l) { return by == nullptr ? to_text(l) : to_text(l, *by); };
    using detail::sentence;
    const std::vector<std::string> names = detail::names_of_edges(*this);
    const std::string along = names.size() == 1 ? sentence({"the ", names[0], " edge"})
                                                : sentence({"the ", detail::enumerated(names), " edges"});
    return detail::with_remedy(
        sentence({"stitching along ", along, " of the ", detail::named(piece), " goes through ",
                  detail::layers_met(*this), ", more than the ", limit, " that a machine is taken to sew"}),
        *this, text);
}

namespace detail {

/// The crease of a mitre between edges turned alike goes through their outer folds' crossing at 45 degrees.
template <length_unit Unit>
std::optional<length<Unit>> mitre_leg(const panel<Unit>& shape, edge e) {
    std::optional<length<Unit>> leg;
    for (const edge beside : all_edges) {
        const finish<Unit>&f = shape.finish_of(beside), &own = shape.finish_of(e);
        if (is_level(beside) == is_level(e))
            continue;
        if (own.folds().empty() || f.folds().empty() || f.folds().back() != own.folds().back() || f.joins())
            return {};
        leg = own.folds().back().from_datum() * 2;
    }
    return leg;
}

/// The edges of one warning among others: "the left and right edges (3 to 9 layers)"
template <length_unit Unit>
std::string edges_and_layers(const bulk_warning<Unit>& w) {
    const std::vector<std::string> names = names_of_edges(w);
    return names.size() == 1 ? sentence({"the ", names[0], " edge (", layers_met(w), ")"})
                             : sentence({"the ", enumerated(names), " edges (", layers_met(w), ")"});
}

template <length_unit Unit>
bool asks_the_same(const bulk_warning<Unit>& a, const bulk_warning<Unit>& b) {
    return a.piece == b.piece && a.limit == b.limit && a.mitre_leg == b.mitre_leg &&
           (a.least == a.layers) == (b.least == b.layers);
}

} // namespace detail

/// In the order of the first of each.
template <length_unit Unit>
std::vector<std::string> sentences_of(const std::vector<bulk_warning<Unit>>& warnings, const ruler& by) {
    std::vector<std::string> all;
    std::vector<bool> told(warnings.size());
    for (std::size_t i = 0; i < warnings.size(); ++i) {
        if (told[i])
            continue;
        const bulk_warning<Unit>& first = warnings[i];
        std::vector<std::string> edges;
        for (std::size_t k = i; k < warnings.size(); ++k)
            if (!told[k] && detail::asks_the_same(first, warnings[k])) {
                edges.push_back(detail::edges_and_layers(warnings[k]));
                told[k] = true;
            }
        if (edges.size() == 1) {
            all.push_back(first.what(by));
            continue;
        }
        all.push_back(detail::with_remedy(
            detail::sentence({"rows of stitching on the ", detail::named(first.piece), " go through more than the ",
                              first.limit, " layers that a machine is taken to sew, along ",
                              detail::enumerated(edges)}),
            first, [&](length<Unit> l) { return to_text(l, by); }));
    }
    return all;
}

/// In the order of work, rows alike together. Throws range_error for a limit below one. Time
/// grows with the places of the steps times the pieces and warnings.
template <length_unit Unit>
std::vector<bulk_warning<Unit>> bulk_warnings(const sheet<Unit>& s, std::int64_t most_layers) {
    require_at_least<range_error>(most_layers, std::int64_t{1}, "the number of layers that a machine sews through");
    std::vector<bulk_warning<Unit>> all;
    const auto shape_of = [&](const std::string& name) -> const panel<Unit>* {
        for (const sheet_piece<Unit>& p : s.pieces)
            if (p.made_from.name() == name)
                return &p.made_from.shape();
        return nullptr;
    };
    const auto note = [&](const std::string& name, const work_place<Unit>& p) {
        const auto least = static_cast<std::int64_t>(p.least), most = static_cast<std::int64_t>(p.most);
        const panel<Unit>* shape = shape_of(name);
        const auto leg = shape == nullptr ? std::nullopt : detail::mitre_leg(*shape, p.side);
        for (bulk_warning<Unit>& w : all)
            if (w.piece == name && w.least == least && w.layers == most && w.mitre_leg == leg) {
                if (std::find(w.edges.begin(), w.edges.end(), p.side) == w.edges.end())
                    w.edges.push_back(p.side);
                return;
            }
        all.push_back({name, {p.side}, least, most, most_layers, leg});
    };
    for (const work_group<Unit>& g : s.steps.groups)
        for (const work_step<Unit>& step : g.steps)
            for (const work_place<Unit>& p : step.places)
                if (static_cast<std::int64_t>(p.most) > most_layers)
                    note(s.steps.parts[p.piece.index].name, p);
    return all;
}

} // namespace turncloth

#endif
