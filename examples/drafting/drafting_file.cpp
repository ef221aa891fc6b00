#include "drafting_file.hpp"

#include "../command/plain_text.hpp"
#include "finish_text.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <iterator>
#include <map>
#include <optional>
#include <utility>

namespace drafting {

namespace {

/// One line that says something: "key: value".
struct field {
    std::size_t line;
    std::string_view key, value;

    [[noreturn]] void refuse(const std::string& why) const {
        throw drafting_error(line, std::string(key) + ": " + why);
    }
};

std::vector<field> fields_of(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) // the mark that some editors put first
        text.remove_prefix(3);
    std::vector<field> all;
    for (std::size_t line = 1; !text.empty(); ++line) {
        const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
        const std::string_view said = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(text.size(), end + (text.substr(end, 2) == "\r\n" ? 2 : 1)));
        if (said.empty() || said.front() == '#')
            continue;
        const std::size_t colon = said.find(':');
        if (colon == std::string_view::npos) {
            const std::string why = allotment::why_unfit(said);
            throw drafting_error(line, !why.empty() ? why
                                                    : "expected a word, a colon and a value, as \"cut: 2\": it was \"" +
                                                          std::string(said) + "\"");
        }
        const field f{line, trimmed(said.substr(0, colon)), trimmed(said.substr(colon + 1))};
        for (const std::string_view part : {f.key, f.value})
            if (const std::string why = allotment::why_unfit(part); !why.empty())
                throw drafting_error(line, why);
        if (f.value.empty())
            f.refuse("nothing follows the colon");
        all.push_back(f);
    }
    return all;
}

std::int64_t read_quantity(const field& f) {
    std::int64_t n = 0;
    const auto [end, trouble] = std::from_chars(f.value.data(), f.value.data() + f.value.size(), n);
    if (trouble != std::errc() || end != f.value.data() + f.value.size() || n < 1 || n > 1000)
        f.refuse("expected a whole number from 1 to 1000: it was \"" + std::string(f.value) + "\"");
    return n;
}

/// A piece as it is read: what its outline is made of, and where in the file that stands.
template <length_unit Unit>
struct drafted_piece {
    std::size_t line;
    outline_labels<Unit> says;
    grain turns = grain::fixed;
    polygon<Unit, double> corners{};
    std::vector<corner_shape> shapes{};
    std::vector<std::optional<finish<Unit>>> edges{}; ///< each from the corner of its number to the next one
    std::optional<finish<Unit>> other_edges{};
    std::vector<std::size_t> corner_lines{}, edge_lines{}, notch_lines{};
    std::map<std::string_view, std::size_t> said{}; ///< the lines of what may be said once

    std::string named() const { return "piece \"" + says.name + "\""; }
    std::size_t last_edge(const field& f) const {
        if (edges.empty())
            f.refuse("this belongs to the corner it follows, and none was written yet");
        return edges.size() - 1;
    }
};

template <length_unit Unit>
void read_turn(drafted_piece<Unit>& p, const field& f) {
    if (f.value != "allowed" && f.value != "not allowed")
        f.refuse("expected \"allowed\" or \"not allowed\": it was \"" + std::string(f.value) + "\"");
    p.turns = f.value == "allowed" ? grain::may_turn : grain::fixed;
}

template <length_unit Unit>
point<Unit, double> point_at(std::string_view across, std::string_view up) {
    return drafted(point<Unit>{read_length<Unit>(across), read_length<Unit>(up)});
}

template <length_unit Unit>
void read_grain(drafted_piece<Unit>& p, const field& f) {
    const auto l = split(f.value);
    if (l.size() != 4)
        f.refuse("expected 4 lengths, across; up; across; up: there were " + std::to_string(l.size()));
    p.says.grain = {point_at<Unit>(l[0], l[1]), point_at<Unit>(l[2], l[3])};
}

template <length_unit Unit>
void read_corner(drafted_piece<Unit>& p, const field& f) {
    const auto l = split(f.value);
    if (l.size() != 2 && l.size() != 3)
        f.refuse("expected across; up, and perhaps a shape: there were " + std::to_string(l.size()) + " fields");
    p.corners.push_back(point_at<Unit>(l[0], l[1]));
    p.shapes.push_back(l.size() == 3 ? read_corner_shape(l[2]) : corner_shape::mitred);
    p.edges.emplace_back();
    p.corner_lines.push_back(f.line);
    p.edge_lines.push_back(f.line); // until it is said
}

template <length_unit Unit>
void read_edge(drafted_piece<Unit>& p, const field& f) {
    const std::size_t i = p.last_edge(f);
    if (p.edges[i])
        f.refuse("the edge from this corner was said already, on line " + std::to_string(p.edge_lines[i]));
    p.edges[i] = read_finish<Unit>(f.value);
    p.edge_lines[i] = f.line;
}

template <length_unit Unit>
void read_notch(drafted_piece<Unit>& p, const field& f) {
    p.says.notches.push_back({p.last_edge(f), drafted_length_of<Unit>(to_double(read_length<Unit>(f.value).value()))});
    p.notch_lines.push_back(f.line);
}

enum class said { once, once_at_least, often };

template <length_unit Unit>
struct known_field {
    std::string_view key;
    said how_often;
    void (*read)(drafted_piece<Unit>&, const field&);
};
template <length_unit Unit>
constexpr known_field<Unit> known_fields[] = {
    {"material", said::once_at_least, [](auto& p, const field& f) { p.says.material = f.value; }},
    {"cut", said::once_at_least, [](auto& p, const field& f) { p.says.count = read_quantity(f); }},
    {"turn", said::once, read_turn<Unit>},
    {"grain", said::once_at_least, read_grain<Unit>},
    {"all edges", said::once, [](auto& p, const field& f) { p.other_edges = read_finish<Unit>(f.value); }},
    {"corner", said::often, read_corner<Unit>},
    {"edge", said::often, read_edge<Unit>},
    {"notch", said::often, read_notch<Unit>}};

template <length_unit Unit>
void read_field(drafted_piece<Unit>& p, const field& f) {
    const auto known = std::ranges::find(known_fields<Unit>, f.key, &known_field<Unit>::key);
    if (known == std::end(known_fields<Unit>))
        f.refuse("a piece has no such field: it has " + listed(known_fields<Unit>, &known_field<Unit>::key));
    const auto [before, first] = p.said.try_emplace(f.key, f.line);
    if (!first && known->how_often != said::often)
        f.refuse("said already, on line " + std::to_string(before->second));
    known->read(p, f);
}

/// An edge that says nothing itself is finished as all edges are. What is said of the piece gains its finishes and lines.
template <length_unit Unit>
outline<Unit> outline_of(drafted_piece<Unit>& p) {
    std::vector<finish<Unit>> finishes;
    for (std::size_t i = 0; i < p.edges.size(); ++i) {
        if (!p.edges[i] && !p.other_edges)
            throw drafting_error(p.corner_lines[i], "corner: the edge from here has no finish: write \"edge: \" after "
                                                    "it, or \"all edges: \" for the piece");
        const finish<Unit>& f = p.edges[i] ? *p.edges[i] : *p.other_edges;
        finishes.push_back(f);
        p.says.finishes.emplace_back(f.name());
    }
    outline<Unit> made(p.corners, edge_allowances_of(finishes), p.shapes);
    p.says.lines = lines_of(made, finishes);
    return made;
}

/// "lines 10, 13": of the edges that are trimmed, each once.
template <length_unit Unit>
std::string lines_trimmed(const trimmed_outline<Unit>& cut, const drafted_piece<Unit>& p) {
    std::string lines;
    for (const auto& t : cut.trimmed)
        lines += (lines.empty() ? "" : ", ") + std::to_string(p.edge_lines[t.edge]);
    return cut.trimmed.empty() ? lines : (cut.trimmed.size() == 1 ? "line " : "lines ") + lines;
}

/// Throws drafting_error for what is missing, and for what no outline is made of: fewer than 3 corners, edges without
/// length or that cross, a corner that cannot have its shape, a notch off its edge, a grain
/// line that is a point. Where allowances overlap the piece is cut along their trimmed line. The library counts edges and corners from 0: which line of the file is meant is told by
/// the index that its refusal carries.
template <length_unit Unit>
made_piece<Unit> made_up(drafted_piece<Unit> p) {
    for (const auto& known : known_fields<Unit>)
        if (known.how_often == said::once_at_least && !p.said.contains(known.key))
            throw drafting_error(p.line, p.named() + " lacks the field \"" + std::string(known.key) + "\"");
    std::size_t line = p.line;
    std::string what = p.named() + ": ";
    try {
        const outline<Unit> shape = outline_of(p);
        trimmed_outline<Unit> cut = trimmed_cut_line(shape);
        static_cast<void>(shape.angle_to_grain(0, *p.says.grain)); // which refuses a line without direction
        for (std::size_t i = 0; i < p.notch_lines.size(); ++i) {
            line = p.notch_lines[i], what = "notch of " + p.named() + ": ";
            const notch<Unit>& mark = p.says.notches[i];
            static_cast<void>(cut.trimmed.empty() ? shape.carried(mark)
                                                  : carried(shape, cut, {mark.edge, 1}, mark.from_start));
        }
        std::string trimmed_on = lines_trimmed(cut, p);
        return {shape, p.says, p.turns, std::move(cut), std::move(trimmed_on)};
    } catch (const outline_error& refused) {
        const auto index = refused.facts().index;
        throw drafting_error(line,
                             what + refused.what() +
                                 (index ? " (it begins on line " + std::to_string(p.corner_lines[*index]) + ")" : "") +
                                 "; figures are in the unit of the drafting, " + std::string(unit_name<Unit>));
    }
}

/// After the title and the unit. Each piece is made up where it ends.
template <length_unit Unit>
made_drafting<Unit> read_pieces(const std::vector<field>& fields) {
    made_drafting<Unit> made{std::string(fields[0].value), {}};
    std::optional<drafted_piece<Unit>> now;
    const auto end = [&] {
        if (now)
            made.pieces.push_back(made_up(*std::exchange(now, std::nullopt)));
    };
    for (std::size_t i = 2; i < fields.size(); ++i) {
        const field& f = fields[i];
        try {
            if (f.key != "piece") {
                if (!now)
                    f.refuse("this belongs to a piece, and none was begun: write \"piece: \" and its name first");
                read_field(*now, f);
                continue;
            }
            end();
            if (std::ranges::any_of(made.pieces, [&](const auto& p) { return p.says.name == f.value; }))
                f.refuse("there is a piece of that name already: \"" + std::string(f.value) + "\"");
            now.emplace(drafted_piece<Unit>{.line = f.line, .says = {.name = std::string(f.value)}});
        } catch (const drafting_error&) {
            throw;
        } catch (const error& refused) {
            f.refuse(refused.what());
        }
    }
    end();
    if (made.pieces.empty())
        throw drafting_error(fields.back().line, "no piece is drafted: write \"piece: \" and its name");
    return made;
}

} // namespace

any_drafting read_drafting(std::string_view text) {
    const std::vector<field> fields = fields_of(text);
    if (fields.empty())
        throw drafting_error(0, "nothing is drafted here: the file is empty, or has remarks alone");
    if (fields[0].key != "title")
        fields[0].refuse("a drafting begins with its title, as \"title: Kneeling pad\"");
    if (fields.size() < 2 || fields[1].key != "unit")
        fields[fields.size() < 2 ? 0 : 1].refuse("after the title the unit is expected, as \"unit: cm\"");
    const std::string_view unit = fields[1].value;
    if (unit == "cm")
        return read_pieces<centimetre>(fields);
    if (unit == "mm")
        return read_pieces<millimetre>(fields);
    if (unit == "in")
        return read_pieces<inch>(fields);
    fields[1].refuse("expected cm, mm or in: it was \"" + std::string(unit) + "\"");
}

std::string finishes_help() {
    std::string text = "Finishes of edges, and the lengths that follow them:\n";
    for (const auto& known : known_finishes<centimetre>)
        text += "  " + std::string(known.words) + ": " + std::string(known.wants) + "\n";
    text += "Shapes of corners:\n";
    for (const auto& known : known_shapes)
        text += "  " + std::string(known.words) + "\n";
    return text;
}

} // namespace drafting
