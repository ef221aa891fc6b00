// Reads an expression and works it out in one go. What is not known, or lies in the part of a choice that is not taken, is
// looked through for its kind alone: so one walk both checks an expression for every size and works it out for one.
#ifndef TURNCLOTH_DESIGN_DETAIL_EXPRESSION_READER_HPP
#define TURNCLOTH_DESIGN_DETAIL_EXPRESSION_READER_HPP

#include <turncloth/design/detail/expression_words.hpp>
#include <turncloth/design/detail/figures.hpp>
#include <turncloth/design/expression_value.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/panel/names.hpp>

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace turncloth::detail {

inline constexpr std::array<std::pair<std::string_view, fraction (*)(fraction, fraction)>, 5> limits = {{
    {"at least", [](fraction x, fraction y) { return std::max(x, y); }},
    {"at most", [](fraction x, fraction y) { return std::min(x, y); }},
    {"rounded up to", [](fraction x, fraction y) { return up_to(x, y); }},
    {"rounded down to", [](fraction x, fraction y) { return down_to(x, y); }},
    {"rounded to", [](fraction x, fraction y) { return nearest_to(x, y, ties::up); }},
}};

class expression_reader {
public:
    expression_reader(std::string_view text, const expression_names& names) : words_(text), names_(names) {}

    expression_value all() {
        const expression_value v = choice();
        if (!words_.done())
            words_.fail(words_.at(), "expected an operation, such as + or \"at least\", or the end");
        return v;
    }

    void name_alone() {
        if (words_.name().empty() || !words_.done())
            words_.fail(words_.at(),
                        words_.done() ? "expected a name"
                                      : "a name is of words of letters and digits, begins with a letter and "
                                        "holds no word of the grammar",
                        fault::unsuitable);
    }

private:
    using value = expression_value;

    /// "where CONDITION then THIS otherwise THAT"; only the part that is taken is worked out.
    value choice() {
        const deeper d(*this);
        if (!words_.take_words("where"))
            return either();
        const std::size_t at = words_.at();
        const value condition = of_kind(value_kind::truth, either(), at);
        expect("then");
        const value first = looked_through(condition.number == fraction(0), [&] { return choice(); });
        expect("otherwise");
        const std::size_t second_at = words_.at();
        const value second = looked_through(condition.number == fraction(1), [&] { return choice(); });
        agree(first, second, second_at);
        if (!condition.number)
            return {first.kind, {}};
        return condition.holds() ? first : second;
    }
    void expect(std::string_view word) {
        if (!words_.take_after_comma(word))
            words_.fail(words_.at(), "expected \"" + std::string(word) + "\"");
    }

    value either() {
        return joined("or", true, [&] { return both(); });
    }
    value both() {
        return joined("and", false, [&] { return negated(); });
    }
    /// What comes after the first part that decides is looked through.
    template <class Part>
    value joined(std::string_view word, bool decides, const Part& part) {
        std::size_t at = words_.at();
        value v = part();
        while (words_.take_words(word)) {
            of_kind(value_kind::truth, v, at);
            at = words_.at();
            const bool decided = v.number && v.holds() == decides;
            const value next = of_kind(value_kind::truth, looked_through(decided, part), at);
            if (!decided)
                v.number = v.number ? next.number : std::nullopt;
        }
        return v;
    }
    value negated() {
        const deeper d(*this);
        if (!words_.take_words("not"))
            return comparison();
        const std::size_t at = words_.at();
        value v = of_kind(value_kind::truth, negated(), at);
        if (v.number)
            v.number = fraction(1) - *v.number;
        return v;
    }

    value comparison() {
        const value a = limited();
        if (!words_.take_words("is"))
            return a;
        using holds = bool (*)(fraction, fraction);
        holds compare = [](fraction x, fraction y) { return x == y; };
        if (words_.take_words("at least"))
            compare = [](fraction x, fraction y) { return x >= y; };
        else if (words_.take_words("at most"))
            compare = [](fraction x, fraction y) { return x <= y; };
        else if (words_.take_words("more than"))
            compare = [](fraction x, fraction y) { return x > y; };
        else if (words_.take_words("less than"))
            compare = [](fraction x, fraction y) { return x < y; };
        else if (words_.take_words("not"))
            compare = [](fraction x, fraction y) { return x != y; };
        const std::size_t at = words_.at();
        const value b = limited();
        agree(a, b, at);
        return worked({value_kind::truth}, at, {a, b},
                      [&] { return compare(*a.number, *b.number) ? fraction(1) : fraction(0); });
    }

    value limited() {
        value v = sum();
        while (true) {
            if (const bool up = words_.take_after_comma("rounded up to one of");
                up || words_.take_after_comma("rounded down to one of")) {
                v = one_of(v, up);
                continue;
            }
            const auto to = std::find_if(limits.begin(), limits.end(),
                                         [&](const auto& l) { return words_.take_after_comma(l.first); });
            if (to == limits.end())
                return v;
            const std::size_t at = words_.at();
            const value by = sum();
            agree(v, by, at);
            v = worked({v.kind}, at, {v, by}, [&] { return to->second(*v.number, *by.number); });
        }
    }
    /// "(7 in, 9 in, 12 in)": the nearest of these that is not below, or not above.
    value one_of(const value& v, bool up) {
        const std::size_t at = words_.at();
        if (!words_.take_sign("("))
            words_.fail(at, "expected \"(\" and what it is one of");
        const auto before = [up](fraction x, fraction y) { return up ? x < y : x > y; };
        value chosen{v.kind, {}};
        bool all_known = v.number.has_value();
        in_brackets([&] {
            do {
                const std::size_t each_at = words_.at();
                const value each = sum();
                agree(v, each, each_at);
                all_known = all_known && each.number;
                if (all_known && !before(*each.number, *v.number) &&
                    (!chosen.number || before(*each.number, *chosen.number)))
                    chosen.number = each.number;
            } while (words_.take_sign(","));
            return v;
        });
        if (!all_known || !known())
            return {v.kind, {}};
        if (!chosen.number)
            words_.fail(at, std::string("none of these is ") + (up ? "large" : "small") + " enough", fault::unsuitable);
        return chosen;
    }

    value sum() {
        value v = product();
        while (true) {
            const std::size_t at = words_.at();
            const bool plus = words_.take_sign("+");
            if (!plus && !words_.take_any("-", "\u2212"))
                return v;
            const std::size_t next_at = words_.at();
            const value next = product();
            agree(v, next, next_at);
            v = worked({v.kind}, at, {v, next},
                       [&] { return plus ? *v.number + *next.number : *v.number - *next.number; });
        }
    }

    value product() {
        const std::size_t at = words_.at();
        value v = term();
        while (true) {
            const bool times = words_.take_any("*", "\u00D7");
            if (!times && !words_.take_any("/", "\u00F7"))
                return v;
            const std::size_t next_at = words_.at();
            const value next = term(!times);
            v = times ? multiplied(v, next, at, next_at) : divided_by(v, next, at, next_at);
        }
    }
    value multiplied(const value& a, const value& b, std::size_t at, std::size_t b_at) {
        if (a.is_length() && b.is_length())
            words_.fail(b_at, "a length times a length is no length: one of them must be a number", fault::disagree);
        require_amount(a, at);
        require_amount(b, b_at);
        return worked({a.is_length() ? a.kind : b.kind}, at, {a, b}, [&] { return *a.number * *b.number; });
    }
    value divided_by(const value& a, const value& b, std::size_t at, std::size_t b_at) {
        require_amount(a, at);
        require_amount(b, b_at);
        if (b.is_length())
            agree(a, b, b_at);
        const value_kind kind = b.is_length() ? value_kind::number : a.kind;
        return worked({kind}, b_at, {a, b}, [&] { return *a.number / *b.number; });
    }

    /// With "as inches" and the like behind it.
    value term(bool divides = false) {
        value v = operand(divides);
        while (words_.take_words("as")) {
            const std::size_t at = words_.at();
            const std::string unit = words_.name();
            const bool metric = unit == "centimetres", known = metric || unit == "inches";
            if (!known)
                words_.fail(at, "expected \"inches\" or \"centimetres\"");
            if (!v.is_length())
                words_.fail(at, std::string(name_of(v.kind)) + " has no unit to change", fault::disagree);
            const value_kind to = metric ? value_kind::centimetres : value_kind::inches;
            if (to != v.kind)
                v = worked({to}, at, {v}, [&] {
                    return metric ? *v.number * units_per<centimetre, inch> : *v.number * units_per<inch, centimetre>;
                });
        }
        return v;
    }
    value operand(bool divides) {
        const std::size_t at = words_.at();
        if (words_.take_any("-", "\u2212")) {
            const deeper d(*this);
            const value v = term();
            require_amount(v, at);
            return worked({v.kind}, at, {v}, [&] { return -*v.number; });
        }
        if (words_.take_sign("("))
            return in_brackets([&] { return choice(); });
        if (words_.number_next()) {
            const written_number n = words_.number();
            if (divides && n.is_fraction)
                words_.fail(at, "put the fraction that divides in brackets, so that it is plain what is divided");
            return n.value;
        }
        const std::string name = words_.name();
        if (name.empty())
            words_.fail(at, "expected a number, a measurement or a name");
        if (const named_figure* f = find_figure(name); f != nullptr && words_.take_sign("("))
            return in_brackets([&] { return figure(*f, at); });
        const value* const found = names_.find(name);
        if (found == nullptr)
            words_.fail(at, "nothing here is named " + in_quotes(name), fault::missing);
        return known() ? *found : value{found->kind, {}};
    }
    template <class Inside>
    value in_brackets(const Inside& inside) {
        const deeper d(*this);
        const value v = inside();
        if (!words_.take_sign(")"))
            words_.fail(words_.at(), "expected an operation or \")\"");
        return v;
    }

    /// The name of a part may be left out where there is one part alone.
    value figure(const named_figure& f, std::size_t at) {
        std::array<std::optional<value>, most_parts_of_a_figure> given;
        value_kind unit = value_kind::number;
        for (std::size_t n = 0; n < f.size(); ++n) {
            if (n > 0 && !words_.take_sign(","))
                words_.fail(words_.at(), "expected a comma and " + parts_missing(f, given));
            const std::size_t i = f.size() == 1 ? 0 : part_of(f, given);
            const std::size_t part_at = words_.at();
            given[i] = choice();
            if (f.parts[i].is == figure_part::number)
                of_kind(value_kind::number, *given[i], part_at);
            else if (!given[i]->is_length())
                words_.fail(part_at, "expected a length: this is " + std::string(name_of(given[i]->kind)),
                            fault::disagree);
            else if (unit == value_kind::number)
                unit = given[i]->kind;
            else
                agree({unit}, *given[i], part_at);
        }
        figure_parts numbers{};
        bool all_known = known();
        for (std::size_t i = 0; i < f.size(); ++i) {
            all_known = all_known && given[i]->number.has_value();
            numbers[i] = given[i]->number.value_or(0);
        }
        const value_kind gives = f.gives == figure_part::number ? value_kind::number : unit;
        if (!all_known)
            return {gives, {}};
        const auto& work_out = unit == value_kind::centimetres ? f.in_centimetres : f.in_inches;
        return worked({gives}, at, {}, [&] { return work_out(numbers, names_.graduation); });
    }
    using parts_given = std::array<std::optional<value>, most_parts_of_a_figure>;
    std::size_t part_of(const named_figure& f, const parts_given& given) {
        const std::size_t at = words_.at();
        const std::string name = words_.name();
        for (std::size_t i = 0; i < f.size(); ++i)
            if (f.parts[i].name == name && !given[i]) {
                if (!words_.take_sign(":"))
                    words_.fail(words_.at(), "expected a colon after the name of a part");
                return i;
            }
        words_.fail(at, "expected " + parts_missing(f, given));
    }
    static std::string parts_missing(const named_figure& f, const parts_given& given) {
        std::string all;
        for (std::size_t i = 0; i < f.size(); ++i)
            if (!given[i])
                all.append(all.empty() ? "" : " or ").append(in_quotes(std::string(f.parts[i].name) + ":"));
        return all;
    }

    /// Throws where a value is of another kind.
    value of_kind(value_kind wanted, const value& v, std::size_t at) const {
        if (v.kind != wanted)
            words_.fail(at, "expected " + std::string(name_of(wanted)) + ": this is " + std::string(name_of(v.kind)),
                        fault::disagree);
        return v;
    }
    void require_amount(const value& v, std::size_t at) const {
        if (v.kind == value_kind::truth)
            words_.fail(at, "a condition is not reckoned with", fault::disagree);
    }
    void agree(const value& a, const value& b, std::size_t at) const {
        if (a.kind == b.kind)
            return;
        if (a.is_length() && b.is_length())
            words_.fail(at,
                        "inches and centimetres do not go together: write \"as inches\" or \"as centimetres\" behind "
                        "one of them",
                        fault::disagree);
        words_.fail(at,
                    "this is " + std::string(name_of(b.kind)) + ", and what it goes with is " +
                        std::string(name_of(a.kind)),
                    fault::disagree);
    }

    /// The number of a value whose parts are all known; what the arithmetic refuses is refused with its place.
    template <class Work>
    value worked(value v, std::size_t at, std::initializer_list<value> parts, const Work& work) {
        const bool all_known =
            known() && std::all_of(parts.begin(), parts.end(), [](const value& p) { return p.number.has_value(); });
        if (!all_known)
            return v;
#ifdef BOOST_NO_EXCEPTIONS
        static_cast<void>(at);
        v.number = work();
#else
        try {
            v.number = work();
        } catch (const error& refused) {
            words_.fail(at, refused.what(), refused.facts().kind);
        }
#endif
        return v;
    }

    bool known() const { return looking_ == 0; }
    template <class Part>
    value looked_through(bool only, const Part& part) {
        looking_ += only;
        const value v = part();
        looking_ -= only;
        return v;
    }

    struct deeper {
        explicit deeper(expression_reader& r) : reader(r) {
            if (++reader.depth_ > 3 * deepest_expression)
                reader.words_.fail(reader.words_.at(), "brackets, choices and signs lie too deep within one another",
                                   fault::does_not_fit);
        }
        ~deeper() { --reader.depth_; }
        deeper(const deeper&) = delete;
        deeper& operator=(const deeper&) = delete;
        expression_reader& reader;
    };

    expression_words words_;
    const expression_names& names_;
    std::size_t depth_ = 0;
    int looking_ = 0; ///< within so many parts that are not worked out
};

} // namespace turncloth::detail

#endif
