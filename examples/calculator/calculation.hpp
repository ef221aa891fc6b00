// A calculation that people ask of a page: what it asks for, what it comes to, and the list of all of them.
//
//   class given            what was typed, or given by a program: sizes, counts, texts; a refusal names the member
//   class reply            what a calculation comes to: figures by name for programs, lines for people, drawings
//   struct calculation     its name, what it asks, what works it out in inches and in centimetres
//   listed_calculation     puts one on the list, from whichever source file it stands in
//   field_error            a refusal of one member: shown beside its field
//
//   template <length_unit Unit>
//   void doubled(const given& g, reply& r) { r.say("cut", "length to cut", g.size<Unit>("length") * 2); }
//   constexpr calculation twice{.name = "doubled", .title = "Twice as long", .about = "A length, doubled.",
//                               .asks = {{"length", "finished length", "7 in", "18 cm"}},
//                               .in_inches = doubled<inch>, .in_centimetres = doubled<centimetre>};
//   const listed_calculation is_listed(twice);
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_CALCULATION_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_CALCULATION_HPP

#include <turncloth/measure/any_length.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/measure/write.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/sheet/json_lengths.hpp>

#include <nlohmann/json.hpp>

#include <cstddef>
#include <cstdint>
#include <iterator>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace calculator {

using turncloth::length;
using turncloth::length_unit;
using json = nlohmann::ordered_json;

/// A refusal that belongs to one member of what was given: "width", "pieces/2/height".
class field_error : public turncloth::error {
public:
    field_error(std::string field, const std::string& sentence, turncloth::refusal facts)
        : error(sentence, std::move(facts)), field_(std::move(field)) {}
    const std::string& field() const noexcept { return field_; }

private:
    std::string field_;
};

class given {
public:
    /// `within` is the path to the object, for refusals: "" or "pieces/0/".
    explicit given(json members, std::string within = {}) : members_(std::move(members)), within_(std::move(within)) {}

    /// A text that is empty counts as not given.
    bool has(const std::string& name) const {
        const auto found = members_.find(name);
        return found != members_.end() && !found->is_null() && *found != "";
    }
    /// As it was typed; a number as it is written; nothing for what is neither.
    std::string text(const std::string& name) const {
        const auto found = members_.find(name);
        if (found == members_.end())
            return {};
        return found->is_string() ? found->get<std::string>() : found->is_number() ? found->dump() : std::string();
    }
    /// A length, in `Unit` where no unit is typed with it. Throws field_error where it cannot be read or is beyond 200 m.
    template <length_unit Unit>
    length<Unit> size(const std::string& name) const {
        return read<Unit>(within_ + name, text(name));
    }
    template <length_unit Unit>
    length<Unit> size_or(const std::string& name, length<Unit> otherwise) const {
        return has(name) ? size<Unit>(name) : otherwise;
    }
    /// A whole number from 1 to `most`.
    std::int64_t count(const std::string& name, std::int64_t most) const;
    /// Which of a field's choices it is, from 0; the first where none is given.
    std::size_t choice(const std::string& name, std::span<const std::string_view> choices) const;
    bool holds(const std::string& name) const;
    std::vector<given> list(const std::string& name) const;
    given part(const std::string& name) const;
    const json& members() const { return members_; }
    const std::string& within() const { return within_; }

    /// A length typed in a field, or in a part of one. What is sewn or bought by the yard is far below 200 m; a slip of
    /// the keyboard above it is refused before anything is worked out of it.
    template <length_unit Unit>
    static length<Unit> read(const std::string& field, const std::string& typed) {
        try {
            const length<Unit> l = turncloth::read_length<Unit>(typed);
            require_sewable(field, turncloth::any_length(l), turncloth::as<turncloth::metre>(l));
            return l;
        } catch (const turncloth::error& e) {
            throw field_error(field, e.what(), e.facts());
        }
    }

private:
    static void require_sewable(const std::string& field, const turncloth::any_length& typed,
                                const length<turncloth::metre>& l);

    json members_;
    std::string within_;
};

/// To a sixteenth and a millimetre, what is asked in first: "12 1/2 in (31.8 cm)", "31.8 cm (12 1/2 in)".
template <length_unit Unit>
constexpr turncloth::ruler shown_by{.metric_first = turncloth::metric_unit<Unit>};
template <length_unit Unit>
std::string in_both(length<Unit> l) {
    return turncloth::to_text(l, shown_by<Unit>);
}

/// {"exact": "12 1/2", "unit": "in", "near": 12.5, "text": "12 1/2 in (31.8 cm)"}
template <length_unit Unit>
json shown(length<Unit> l) {
    json j = turncloth::to_json(l);
    j["near"] = to_double(l.value());
    j["text"] = in_both(l);
    return j;
}
/// The same with its working, where it has one.
template <length_unit Unit>
json shown(const turncloth::figure<Unit>& f) {
    json j = shown(f.value());
    if (f.terms().size() > 1)
        j["working"] = turncloth::sound_text(to_text(f));
    return j;
}
inline json shown(std::int64_t count) { return count; }

class reply {
public:
    /// Data alone, at a path of names: "outer/width".
    void set(std::string_view path, json value);
    /// A line alone.
    void line(const std::string& label, const std::string& figure, const std::string& working = {});
    /// A figure, a length or a count, as data and as a line.
    template <class Value>
    void say(std::string_view path, const std::string& label, const Value& value) {
        json j = shown(value);
        if (j.is_object())
            line(label, j["text"].template get<std::string>(), j.value("working", std::string()));
        else
            line(label, j.dump());
        set(path, std::move(j));
    }
    /// For a screen; and for a print true to its scale, where the drawing has one.
    void draw(const turncloth::page& screen) { data_["drawing"] = to_svg(screen); }
    void draw(const turncloth::page& screen, const turncloth::page& printed) {
        draw(screen);
        data_["printed"] = to_svg(printed);
    }
    const json& data() const { return data_; }

private:
    json data_ = {{"lines", json::array()}};
};

/// What a calculation asks for, and what its field holds at first.
struct field {
    enum class kind { length, count, pieces, choice };

    std::string_view name, label, inches, centimetres;
    kind holds = kind::length;
    std::span<const std::string_view> choices = {}; ///< of a choice: what it may be, one of which it is at first
};

struct calculation {
    std::string_view name, title, about;
    field asks[6] = {};                ///< in the order of its form; those without a name are not there
    std::string_view takes[2] = {};    ///< what a program or the author of a page may give besides
    std::string_view cautions[2] = {}; ///< of turncloth/notions/caution.hpp: they go with every answer
    void (*in_inches)(const given&, reply&);
    void (*in_centimetres)(const given&, reply&);

    std::size_t fields() const {
        std::size_t n = 0;
        while (n < std::size(asks) && !asks[n].name.empty())
            ++n;
        return n;
    }
};

/// One link of the list of all calculations, in no order; it and what it names last as long as the program.
class listed_calculation {
public:
    explicit listed_calculation(const calculation& c) noexcept : is_(&c), next_(first_) { first_ = this; }
    const calculation& operator*() const noexcept { return *is_; }
    const listed_calculation* next() const noexcept { return next_; }
    static const listed_calculation* first() noexcept { return first_; }

private:
    const calculation* is_;
    const listed_calculation* next_;
    inline static const listed_calculation* first_ = nullptr;
};

} // namespace calculator

#endif
