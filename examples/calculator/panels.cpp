// Two calculations of one panel: with any finish on each edge, and bound with its own outer layer.
#include "calculation.hpp"
#include <turncloth/draw/piece.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/panel/panel.hpp>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

using namespace turncloth;
using namespace calculator;

namespace {

/// What one kind of finish takes: its parts, those that may be left out last.
template <length_unit Unit>
struct known_finish {
    std::string_view is;
    std::array<std::string_view, 4> parts;
    std::size_t must;
    finish<Unit> (*made)(const std::array<length<Unit>, 4>&);
};

// By the names and parts that they have in a project file.
template <length_unit U, class Parts = const std::array<length<U>, 4>&>
constexpr known_finish<U> finishes[] = {
    {"raw edge", {}, 0, [](Parts) { return finish<U>(); }},
    {"seam", {"allowance"}, 1, [](Parts p) { return seam(p[0]); }},
    {"single-turned hem", {"depth", "inset"}, 1, [](Parts p) { return single_turned_hem(p[0], p[1]); }},
    {"double-turned hem",
     {"first", "depth", "inset", "turn"},
     2,
     [](Parts p) { return double_turned_hem(p[0], p[1], p[2], p[3]); }},
    {"heading", {"depth", "under", "inset"}, 1, [](Parts p) { return heading(p[0], p[1], p[2]); }},
    {"casing", {"depth", "channel", "under", "inset"}, 2, [](Parts p) { return casing(p[0], p[1], p[2], p[3]); }},
    {"self-binding", {"width", "inset", "turn"}, 1, [](Parts p) { return self_binding(p[0], p[1], p[2]); }},
    {"separate binding", {"width"}, 1, [](Parts p) { return separate_binding(p[0]); }},
    {"French seam", {"first", "second"}, 2, [](Parts p) { return french_seam(p[0], p[1]); }},
    {"flat-felled seam, over", {"width", "under", "inset"}, 2, [](Parts p) { return felled_over(p[0], p[1], p[2]); }},
    {"flat-felled seam, under", {"allowance"}, 1, [](Parts p) { return felled_under(p[0]); }},
    {"lapped seam, over", {"under", "inset"}, 0, [](Parts p) { return lapped_over(p[0], p[1]); }},
    {"lapped seam, under", {"lap", "inset"}, 1, [](Parts p) { return lapped_under(p[0], p[1]); }},
};

template <length_unit Unit>
const known_finish<Unit>& finish_named(const given& g) {
    std::string names;
    for (const known_finish<Unit>& f : finishes<Unit>) {
        if (f.is == g.text("is"))
            return f;
        names.append(names.empty() ? "\"" : "\", \"").append(f.is);
    }
    throw field_error(g.within() + "is", "there is no finish of that name: there are " + names + "\"",
                      {.kind = fault::unsuitable, .what = "a finish", .where = g.text("is")});
}

template <length_unit Unit>
finish<Unit> finish_of(const given& g) {
    const known_finish<Unit>& known = finish_named<Unit>(g);
    std::array<length<Unit>, 4> parts{};
    for (auto part = g.members().begin(); part != g.members().end(); ++part)
        if (part.key() != "is" && std::find(known.parts.begin(), known.parts.end(), part.key()) == known.parts.end())
            throw field_error(g.within() + part.key(), "a " + std::string(known.is) + " has no such part",
                              {.kind = fault::unsuitable, .what = "a part of a finish", .where = part.key()});
    for (std::size_t i = 0; i < parts.size() && !known.parts[i].empty(); ++i)
        if (const std::string name(known.parts[i]); i < known.must || g.has(name))
            parts[i] = g.size<Unit>(name);
    try {
        return known.made(parts);
    } catch (const error& e) {
        throw field_error(g.within() + "is", e.what(), e.facts());
    }
}

template <length_unit Unit>
edges<Unit> edges_of(const given& g) {
    const finish<Unit> raw, all = g.has("all") ? finish_of<Unit>(g.part("all")) : raw;
    const auto of = [&](const char* side) { return g.has(side) ? finish_of<Unit>(g.part(side)) : all; };
    return {of("top"), of("right"), of("bottom"), of("left")};
}

/// The panel as a piece of a sheet, to be drawn: its finishes and nothing else lie on it.
template <length_unit Unit>
sheet_piece<Unit> piece_to_draw(const std::string& name, const turncloth::panel<Unit>& shape) {
    sheet_piece<Unit> drawn{piece<Unit>(name, "cloth", shape), shape.cut(), shape.width_working(),
                            shape.height_working(), shape.finished()};
    for (const edge e : all_edges) {
        const finish<Unit>& f = shape.finish_of(e);
        const auto line = [&](line_kind kind, const place<cut_edge, Unit>& at) {
            drawn.lines.push_back({kind,
                                   std::string(f.name()),
                                   e,
                                   figure<Unit>().plus(at.from_datum(), ""),
                                   {},
                                   is_level(e) ? shape.cut().width() : shape.cut().height(),
                                   true});
        };
        for (const auto& at : f.folds())
            line(line_kind::fold, at);
        for (const auto& at : f.stitching())
            line(line_kind::stitching, at);
    }
    return drawn;
}

template <length_unit Unit>
void draw(reply& r, const std::string& name, const turncloth::panel<Unit>& shape) {
    const sheet_piece<Unit> drawn = piece_to_draw(name, shape);
    // Narrow, so that its words can be read on a telephone.
    r.draw(page_of(drawn, shown_by<Unit>, {.project = name, .on = paper::custom(15_cm, 24_cm), .for_screen = true}),
           page_of(drawn, shown_by<Unit>, {.project = name, .on = metric_unit<Unit> ? paper::a4 : paper::letter}));
}

/// Every fold and row of stitching of one edge, from the cut edge.
template <length_unit Unit>
void say_edge(reply& r, edge e, const finish<Unit>& f) {
    const std::string side(name_of(e)), path = "edges/" + side + "/";
    r.set(path + "finish", std::string(f.name()));
    r.set(path + "allowance", shown(f.allowance()));
    json folds = json::array(), rows = json::array();
    for (const auto& at : f.folds()) {
        r.line("fold at the " + side + ", from the cut edge", in_both(at.from_datum()));
        folds.push_back(shown(at.from_datum()));
    }
    for (const auto& at : f.stitching()) {
        r.line("stitching at the " + side + ", from the cut edge", in_both(at.from_datum()));
        rows.push_back(shown(at.from_datum()));
    }
    r.set(path + "folds", std::move(folds));
    r.set(path + "stitching", std::move(rows));
}

template <length_unit Unit>
void one_panel(const given& g, reply& r) {
    const length<Unit> width = g.size<Unit>("width"), height = g.size<Unit>("height");
    const turncloth::panel<Unit> shape(finished_size<Unit>(width, height), edges_of<Unit>(g.part("edges")));
    r.say("cut/width", "cut width", shape.width_working());
    r.say("cut/height", "cut height", shape.height_working());
    for (const edge e : all_edges)
        say_edge(r, e, shape.finish_of(e));
    draw(r, "panel", shape);
}

template <length_unit Unit>
void bound(const given& g, reply& r) {
    const length<Unit> width = g.size<Unit>("width"), height = g.size<Unit>("height");
    const auto made = self_bound(finished_size<Unit>(width, height), g.size<Unit>("binding"));
    r.say("outer/width", "outer layer, cut width", made.outer.width_working());
    r.say("outer/height", "outer layer, cut height", made.outer.height_working());
    r.say("inner/width", "each inner layer, cut width", made.inner.width());
    r.say("inner/height", "each inner layer, cut height", made.inner.height());
    const finish<Unit>& binding = made.outer.finish_of(edge::top);
    r.say("first_fold", "first fold, from every cut edge", binding.folds()[0].from_datum());
    r.say("second_fold", "second fold, from every cut edge", binding.folds()[1].from_datum());
    r.say("stitching", "stitching, from every cut edge", binding.stitching()[0].from_datum());
    draw(r, "self-bound panel", made.outer);
}

constexpr calculation panel_sum{
    .name = "panel",
    .title = "A panel with its edges finished",
    .about = "What to cut, and every fold and row of stitching from the cut edge.",
    .asks = {{"width", "finished width", "14 in", "36 cm"}, {"height", "finished height", "11 in", "28 cm"}},
    .takes = {"edges"},
    .cautions = {caution::cutting, caution::hot_iron},
    .in_inches = one_panel<inch>,
    .in_centimetres = one_panel<centimetre>};
const listed_calculation panel_is_listed(panel_sum);
constexpr calculation bound_sum{.name = "bound",
                                .title = "A panel bound with its own outer layer",
                                .about = "The outer layer is brought round the inner ones and turned twice.",
                                .asks = {{"width", "finished width", "14 in", "36 cm"},
                                         {"height", "finished height", "11 in", "28 cm"},
                                         {"binding", "width of the binding", "1/2 in", "1.2 cm"}},
                                .cautions = {caution::cutting, caution::hot_iron},
                                .in_inches = bound<inch>,
                                .in_centimetres = bound<centimetre>};
const listed_calculation bound_is_listed(bound_sum);

} // namespace
