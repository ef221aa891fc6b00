#include "answer.hpp"

#include <turncloth.hpp>
#include <turncloth/cloth/lay.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/page/svg.hpp>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <string_view>
#include <vector>

using namespace turncloth;
using nlohmann::json;

namespace {

/// A refusal that belongs to one field of the form; an empty field for one that belongs to their combination.
struct refused {
    std::string field, why;
};

/// What was typed, by field.
class question {
public:
    explicit question(std::string_view text) {
        while (!text.empty()) {
            const std::string_view pair = text.substr(0, text.find('&'));
            text.remove_prefix(pair.size() == text.size() ? pair.size() : pair.size() + 1);
            const std::size_t equals = pair.find('=');
            if (equals != std::string_view::npos)
                typed_[decoded(pair.substr(0, equals))] = decoded(pair.substr(equals + 1));
        }
    }

    std::string text(const std::string& field) const {
        const auto found = typed_.find(field);
        return found == typed_.end() ? std::string() : found->second;
    }

    /// A length, in `Unit` where no unit is typed with it.
    template <length_unit Unit>
    length<Unit> size(const std::string& field) const {
        return size<Unit>(field, text(field));
    }
    /// The same of a part of what was typed there. What is sewn or bought by the yard is far below 200 m; a slip of the
    /// keyboard above it is refused before anything is worked out of it.
    template <length_unit Unit>
    static length<Unit> size(const std::string& field, const std::string& typed) {
        try {
            const length<Unit> l = read_length<Unit>(typed);
            if (abs(as<metre>(l).value()) > longest)
                throw refused{field, "expected at most " + std::to_string(longest) + " m: it was " + to_text(l)};
            return l;
        } catch (const error& e) {
            throw refused{field, e.what()};
        }
    }

    std::int64_t count(const std::string& field, std::int64_t most) const {
        try {
            const fraction n = read_fraction(text(field));
            if (is_whole(n) && n >= 1 && n <= most)
                return floor(n);
        } catch (const error&) {
        }
        throw refused{field,
                      "expected a whole number from 1 to " + std::to_string(most) + ": it was \"" + text(field) + "\""};
    }

private:
    static constexpr int longest = 200;

    static int hex(char c) {
        if (c >= '0' && c <= '9')
            return c - '0';
        if (c >= 'a' && c <= 'f')
            return c - 'a' + 10;
        return c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
    }
    static std::string decoded(std::string_view s) {
        std::string out;
        for (std::size_t i = 0; i < s.size(); ++i) {
            const bool escape = s[i] == '%' && i + 2 < s.size() && hex(s[i + 1]) >= 0 && hex(s[i + 2]) >= 0;
            if (escape) {
                out += static_cast<char>(hex(s[i + 1]) * 16 + hex(s[i + 2]));
                i += 2;
            } else {
                out += s[i] == '+' ? ' ' : s[i];
            }
        }
        return out;
    }

    std::map<std::string, std::string> typed_;
};

/// "12 1/2 in (31.8 cm)", to a sixteenth and a millimetre.
template <length_unit Unit>
std::string in_both(length<Unit> l) {
    return to_text(l, ruler());
}

/// The lines of an answer, in the order in which they are shown.
class reply {
public:
    void say(const std::string& label, const std::string& figure, const std::string& working = {}) {
        lines_.push_back({{"label", label}, {"figure", figure}, {"working", working}});
    }
    template <length_unit Unit>
    void say(const std::string& label, length<Unit> l) {
        say(label, in_both(l));
    }
    template <length_unit Unit>
    void say(const std::string& label, const turncloth::figure<Unit>& f) {
        say(label, in_both(f.value()), f.terms().size() > 1 ? to_text(f) : std::string());
    }
    template <length_unit Unit>
    void draw(const project<Unit>& p) {
        const sheet_piece<Unit> piece = sheet_of(p).pieces.front();
        // Narrow, so that its words can be read on a telephone.
        drawing_ = to_svg(
            page_of(piece, ruler(), {.project = p.name(), .on = paper::custom(15_cm, 24_cm), .for_screen = true}));
        printed_ =
            to_svg(page_of(piece, ruler(), {.project = p.name(), .on = metric_unit<Unit> ? paper::a4 : paper::letter}));
    }
    void draw(const page& p) { drawing_ = to_svg(p); }
    std::string text() const { return json{{"lines", lines_}, {"drawing", drawing_}, {"printed", printed_}}.dump(); }

private:
    json lines_ = json::array();
    std::string drawing_, printed_;
};

/// A panel of any size bound with its own outer layer.
template <length_unit Unit>
void bound(const question& q, reply& r) {
    const finished_size<Unit> size{q.size<Unit>("width"), q.size<Unit>("height")};
    const auto made = self_bound(size, q.size<Unit>("binding"));
    r.say("outer layer, cut width", made.outer.width_working());
    r.say("outer layer, cut height", made.outer.height_working());
    r.say("each inner layer, cut width", made.inner.width());
    r.say("each inner layer, cut height", made.inner.height());
    const finish<Unit>& binding = made.outer.finish_of(edge::top);
    r.say("first fold, from every cut edge", binding.folds()[0].from_datum());
    r.say("second fold, from every cut edge", binding.folds()[1].from_datum());
    r.say("stitching, from every cut edge", binding.stitching()[0].from_datum());
    project<Unit> p("self-bound panel", size);
    p.add({"outer layer", "cloth", made.outer});
    r.draw(p);
}

/// The two edges that are sewn together, the longer above, with a line from each mark to the one that it meets. How deep
/// the pieces are was not asked, so their sides fade out.
template <length_unit Unit>
page strips_of(const even_mapping<Unit>& map) {
    constexpr double left = 6, width = 108, above = 22, below = 58, deep = 9;
    constexpr pen edge = {"edge", 0.6}, side = {"side", 0.3, {1.5, 1}}, joined = {"joined", 0.3};
    const length<Unit> longer = map.mark_on_long(map.spans()).from_datum(),
                       shorter = map.mark_on_short(map.spans()).from_datum();
    const double share = to_double(shorter.value()) / to_double(longer.value());
    const double from = left + width * (1 - share) / 2;
    page p{.width = width + 2 * left,
           .height = below + 22,
           .title = "marks that meet",
           .description = "The edge of the longer piece above, that of the shorter below, mark joined to mark."};
    p.draw(edge, {{left, above}, {left + width, above}});
    p.draw(edge, {{from, below}, {from + width * share, below}});
    for (std::int64_t k = 0; k <= map.spans(); ++k) {
        const double part = static_cast<double>(k) / static_cast<double>(map.spans());
        const page_point on_long{left + width * part, above}, on_short{from + width * share * part, below};
        if (k == 0 || k == map.spans()) {
            p.draw(side, {on_long, {on_long.x, above - deep}});
            p.draw(side, {on_short, {on_short.x, below + deep}});
        } else {
            p.write({on_long.x, above - 2}, std::to_string(k), 3.6, set_from::middle);
            p.write({on_short.x, below + 5}, std::to_string(k), 3.6, set_from::middle);
        }
        p.draw(joined, {on_long, on_short});
    }
    p.write({left, above - deep - 3}, "longer piece, " + in_both(longer), 4.2);
    p.write({left, below + deep + 7}, "shorter piece, " + in_both(shorter), 4.2);
    return p;
}

/// Marks of a longer piece that meet marks of a shorter one.
template <length_unit Unit>
void meeting_marks(const question& q, reply& r) {
    const length<Unit> longer = q.size<Unit>("longer"), shorter = q.size<Unit>("shorter");
    const even_mapping<Unit> map(longer, shorter, q.count("spans", 60));
    r.say("fullness, longer over shorter", to_text(map.fullness()));
    r.say("extra in each span", map.surplus(0));
    for (std::int64_t k = 1; k < map.spans(); ++k)
        r.say("mark " + std::to_string(k), in_both(map.mark_on_long(k).from_datum()) + " of the longer meets " +
                                               in_both(map.mark_on_short(k).from_datum()) + " of the shorter");
    r.draw(strips_of(map));
}

/// Zippers cut from a roll.
template <length_unit Unit>
void zippers(const question& q, reply& r) {
    const zipped_opening<Unit> z{q.size<Unit>("across"), q.size<Unit>("margin"), q.size<Unit>("beyond")};
    const std::int64_t pieces = q.count("pieces", 10'000);
    const auto cut = from_roll(z, pieces, q.size<Unit>("roll"));
    r.say("opening", opening_working(z));
    r.say("tape to cut, each", tape_working(z));
    r.say("tape keeps off the seams by", clearance(z));
    r.say("sliders", std::to_string(cut.sliders));
    r.say("one roll gives", std::to_string(cut.from_one_roll));
    r.say("rolls to buy", std::to_string(cut.rolls));
    r.say("left on the last roll", cut.left);
}

/// "3 of 13 x 9": how many, width and height, of each piece wanted, parted by semicolons.
template <length_unit Unit>
std::vector<cloth_piece<Unit>> pieces_of(const std::string& typed) {
    std::vector<cloth_piece<Unit>> pieces;
    for (std::size_t at = 0; at < typed.size();) {
        const std::size_t end = std::min(typed.find(';', at), typed.size());
        const std::string one = typed.substr(at, end - at);
        at = end + 1;
        if (one.find_first_not_of(' ') == std::string::npos)
            continue;
        const std::size_t of = one.find(" of "), by = one.find(" x ");
        if (of == std::string::npos || by == std::string::npos || by < of)
            throw refused{"pieces",
                          "expected \"how many of width x height\", as in 3 of 13 x 9: it was \"" + one + "\""};
        try {
            const fraction n = read_fraction(one.substr(0, of));
            const length<Unit> width = question::size<Unit>("pieces", one.substr(of + 4, by - of - 4));
            const cut_size<Unit> size{width, question::size<Unit>("pieces", one.substr(by + 3))};
            if (!is_whole(n) || n < 1 || n > 1000)
                throw refused{"pieces", "expected a whole number of pieces from 1 to 1000: it was " + to_text(n)};
            pieces.push_back({to_text(size), size, floor(n)});
        } catch (const error& e) {
            throw refused{"pieces", e.what()};
        }
    }
    if (pieces.empty())
        throw refused{"pieces", "expected at least one piece"};
    return pieces;
}

/// The least length of cloth for some pieces, their grain along it, and what to buy.
template <length_unit Unit>
void cloth(const question& q, reply& r) {
    const std::vector<cloth_piece<Unit>> pieces = pieces_of<Unit>(q.text("pieces"));
    bolt<Unit> cloth;
    cloth.width = q.size<Unit>("width");
    cloth.selvedge = q.size<Unit>("selvedge");
    const turncloth::lay<Unit> lay = lay_out<Unit>(pieces, cloth);
    const purchase_rules<Unit> rules{.straightening = q.size<Unit>("ends"),
                                     .sold = metric_unit<Unit> ? ten_centimetres<Unit> : eighths_of_a_yard<Unit>};
    r.say(lay.proved_best() ? "length laid, the shortest possible" : "length laid", lay.length);
    if (!lay.proved_best())
        r.say("no lay can be shorter than", lay.bound);
    r.say("length to buy", amount_to_buy(lay.length, rules).working);
    r.say("usable width, between the selvedges", cloth.usable_width());
    for (const cloth_place<Unit>& place : lay.places)
        r.say(pieces[place.piece].name, in_both(place.where.from_left) +
                                            " from the left edge of the cloth, selvedge included; " +
                                            in_both(place.where.from_end) + " from its straightened end");
}

/// What was typed with its unit written out, so that it stays what it was when the page goes over to another unit. What
/// has one already, or cannot be read, stays as it is.
std::string with_unit(const std::string& typed, bool metric) {
    try {
        const bool bare = as<inch>(read_length<centimetre>(typed)) != read_length<inch>(typed);
        const std::size_t last = typed.find_last_not_of(' ');
        return bare ? typed.substr(0, last + 1) + (metric ? " cm" : " in") : typed;
    } catch (const error&) {
        return typed;
    }
}

std::string pieces_with_units(const std::string& typed, bool metric) {
    std::string all;
    for (std::size_t at = 0; at <= typed.size();) {
        const std::size_t end = std::min(typed.find(';', at), typed.size());
        const std::string one = typed.substr(at, end - at);
        const std::size_t of = one.find(" of "), by = one.find(" x ");
        if (of == std::string::npos || by == std::string::npos || by < of)
            all += one;
        else
            all += one.substr(0, of + 4) + with_unit(one.substr(of + 4, by - of - 4), metric) + " x " +
                   with_unit(one.substr(by + 3), metric);
        all += end < typed.size() ? ";" : "";
        at = end + 1;
    }
    return all;
}

/// A question, what answers it, worked in inches and in centimetres, and its fields that hold a length.
struct known_question {
    std::string_view name;
    void (*in_inches)(const question&, reply&);
    void (*in_centimetres)(const question&, reply&);
    std::array<std::string_view, 4> lengths; ///< empty where there are fewer
};

constexpr known_question known[] = {
    {"bound", bound<inch>, bound<centimetre>, {"width", "height", "binding"}},
    {"meeting", meeting_marks<inch>, meeting_marks<centimetre>, {"longer", "shorter"}},
    {"zippers", zippers<inch>, zippers<centimetre>, {"across", "margin", "beyond", "roll"}},
    {"cloth", cloth<inch>, cloth<centimetre>, {"width", "selvedge", "ends"}},
};

/// The fields of a question with their units written out, as they stand before the page goes over to another unit.
std::string units_written(const question& q, const known_question& k) {
    const bool metric = q.text("units") == "centimetres";
    json fields = json::object();
    for (const std::string_view field : k.lengths)
        if (!field.empty())
            fields[std::string(field)] = with_unit(q.text(std::string(field)), metric);
    if (k.name == "cloth")
        fields["pieces"] = pieces_with_units(q.text("pieces"), metric);
    return json{{"fields", fields}}.dump(-1, ' ', false, json::error_handler_t::replace);
}

std::string no_answer(const std::string& why, const std::string& field = {}) {
    // What a person typed need not be UTF-8; what is not is replaced, since JSON cannot hold it.
    return json{{"refused", why}, {"field", field}}.dump(-1, ' ', false, json::error_handler_t::replace);
}

} // namespace

std::string answer(std::string_view text) {
    const question q(text);
    for (const known_question& k : known) {
        if (k.name != q.text("ask"))
            continue;
        if (!q.text("write").empty())
            return units_written(q, k);
        try {
            reply r;
            (q.text("units") == "centimetres" ? k.in_centimetres : k.in_inches)(q, r);
            return r.text();
        } catch (const refused& e) {
            return no_answer(e.why, e.field);
        } catch (const error& e) {
            return no_answer(e.what());
        }
    }
    return no_answer("there is no such question: \"" + q.text("ask") + "\"");
}
