#include "drafting_file.hpp"

#include "finish_text.hpp"

#include <charconv>
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
        const std::size_t end = text.find('\n');
        const std::string_view said = trimmed(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (said.empty() || said.front() == '#')
            continue;
        const std::size_t colon = said.find(':');
        if (colon == std::string_view::npos)
            throw drafting_error(line, "expected a word, a colon and a value, as \"cut: 2\": it was \"" +
                                           std::string(said) + "\"");
        const field f{line, trimmed(said.substr(0, colon)), trimmed(said.substr(colon + 1))};
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

/// Gathers the fields of pieces and makes each up where it ends.
template <length_unit Unit>
class piece_reader {
public:
    void read(const field& f) {
        try {
            take(f);
        } catch (const drafting_error&) {
            throw;
        } catch (const error& refused) {
            f.refuse(refused.what());
        }
    }

    std::vector<made_piece<Unit>> all() {
        finish_piece();
        return std::move(made_);
    }

private:
    void take(const field& f) {
        if (f.key == "piece")
            return begin(f);
        if (!piece_)
            f.refuse("this belongs to a piece, and none was begun: write \"piece: \" and its name first");
        if (f.key == "material")
            return once(material_, f), void(piece_->material = f.value);
        if (f.key == "cut")
            return once(cut_, f), void(piece_->quantity = read_quantity(f));
        if (f.key == "turn")
            return once(turn_, f), take_turn(f);
        if (f.key == "grain")
            return once(grain_, f), take_grain(f);
        if (f.key == "all edges")
            return once(all_edges_, f), void(for_all_ = read_finish<Unit>(f.value));
        if (f.key == "corner")
            return take_corner(f);
        if (f.key == "edge")
            return take_edge(f);
        if (f.key == "notch")
            return side_of(f).notches.push_back({read_length<Unit>(f.value), f.line});
        f.refuse("a piece has no such field: it has material, cut, turn, grain, all edges, corner, edge and notch");
    }

    void begin(const field& f) {
        finish_piece();
        for (const made_piece<Unit>& other : made_)
            if (other.says.name == f.value)
                f.refuse("there is a piece of that name already: \"" + std::string(f.value) + "\"");
        piece_.emplace();
        piece_->name = f.value;
        piece_->line = f.line;
        for_all_.reset();
        material_ = cut_ = turn_ = grain_ = all_edges_ = 0;
    }

    static void once(std::size_t& said, const field& f) {
        if (said != 0)
            f.refuse("said already, on line " + std::to_string(said));
        said = f.line;
    }

    void take_turn(const field& f) {
        if (f.value != "allowed" && f.value != "not allowed")
            f.refuse("expected \"allowed\" or \"not allowed\": it was \"" + std::string(f.value) + "\"");
        piece_->turns = f.value == "allowed" ? grain::may_turn : grain::fixed;
    }

    void take_grain(const field& f) {
        const auto l = split(f.value);
        if (l.size() != 4)
            f.refuse("expected 4 lengths, across; up; across; up: there were " + std::to_string(l.size()));
        piece_->grain_line = {{read_length<Unit>(l[0]), read_length<Unit>(l[1])},
                              {read_length<Unit>(l[2]), read_length<Unit>(l[3])}};
    }

    void take_corner(const field& f) {
        const auto l = split(f.value);
        if (l.size() != 2 && l.size() != 3)
            f.refuse("expected across; up, and perhaps a shape: there were " + std::to_string(l.size()) + " fields");
        drafted_side<Unit> side;
        side.corner = {read_length<Unit>(l[0]), read_length<Unit>(l[1])};
        if (l.size() == 3)
            side.shape = read_corner_shape(l[2]);
        side.corner_line = f.line;
        piece_->sides.push_back(side);
    }

    drafted_side<Unit>& side_of(const field& f) {
        if (piece_->sides.empty())
            f.refuse("this belongs to the corner it follows, and none was written yet");
        return piece_->sides.back();
    }

    void take_edge(const field& f) {
        drafted_side<Unit>& side = side_of(f);
        if (side.edge_line != 0)
            f.refuse("the edge from this corner was said already, on line " + std::to_string(side.edge_line));
        side.done = read_finish<Unit>(f.value);
        side.edge_line = f.line;
    }

    void require(std::size_t said, const char* what) const {
        if (said == 0)
            throw drafting_error(piece_->line, "piece \"" + piece_->name + "\" lacks the field \"" + what + "\"");
    }

    void finish_piece() {
        if (!piece_)
            return;
        require(material_, "material");
        require(cut_, "cut");
        require(grain_, "grain");
        for (drafted_side<Unit>& side : piece_->sides)
            if (side.edge_line == 0) {
                if (!for_all_)
                    throw drafting_error(side.corner_line, "corner: the edge from here has no finish: write \"edge: \" "
                                                           "after it, or \"all edges: \" for the piece");
                side.done = *for_all_;
            }
        made_.push_back(made_up(*piece_));
        piece_.reset();
    }

    std::optional<drafted_piece<Unit>> piece_;
    std::optional<finish<Unit>> for_all_;
    std::size_t material_ = 0, cut_ = 0, turn_ = 0, grain_ = 0, all_edges_ = 0; // the lines they were said on
    std::vector<made_piece<Unit>> made_;
};

/// After the title and the unit.
template <length_unit Unit>
made_drafting<Unit> read_pieces(const std::vector<field>& fields) {
    piece_reader<Unit> reader;
    for (std::size_t i = 2; i < fields.size(); ++i)
        reader.read(fields[i]);
    made_drafting<Unit> made{std::string(fields[0].value), reader.all()};
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
        text += "  " + std::string(known.first) + "\n";
    return text;
}

} // namespace drafting
