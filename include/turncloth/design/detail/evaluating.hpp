// Expressions, texts and forms of a design as they are worked out for one size, each refused with its place.
//
//   design_values<U>(asked, by)      .add(measure, path)  .length(expression, path)  .count(...)  .holds(...)  .text(...)
//                                    .made(form, path)
#ifndef TURNCLOTH_DESIGN_DETAIL_EVALUATING_HPP
#define TURNCLOTH_DESIGN_DETAIL_EVALUATING_HPP

#include <turncloth/design/detail/design_words.hpp>
#include <turncloth/design/detail/forms.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/making/ruled.hpp>
#include <turncloth/panel/size.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

constexpr bool is_wanted(wanted w, const expression_value& v) {
    switch (w) {
    case wanted::length:
        return v.kind == value_kind::inches || v.kind == value_kind::centimetres;
    case wanted::length_or_number:
        return v.kind != value_kind::truth;
    case wanted::condition:
        return v.kind == value_kind::truth;
    case wanted::number:
    case wanted::count:
        break;
    }
    return v.kind == value_kind::number;
}
constexpr std::string_view name_of(wanted w) {
    switch (w) {
    case wanted::length:
        return "a length";
    case wanted::length_or_number:
        return "a length or a number";
    case wanted::condition:
        return "a condition";
    case wanted::number:
    case wanted::count:
        break;
    }
    return "a number";
}

[[noreturn]] inline void refuse_at(const std::string& path, const expression_error& e, std::string_view text) {
    refuse<design_error>(std::vector{design_fault{path, e.reason(), characters_in(text.substr(0, e.position())) + 1}});
}
[[noreturn]] inline void refuse_at(const std::string& path, std::string why) {
    refuse<design_error>(std::vector{design_fault{path, std::move(why), {}}});
}

/// In the family of `unit`, of the kind wanted; what is not is refused with its place.
inline expression_value value_at(const std::string& path, const expression& e, const expression_names& names, wanted w,
                                 value_kind unit) {
    const auto work_out = [&] { return value_of(e, names); };
#ifdef BOOST_NO_EXCEPTIONS
    const expression_value v = work_out();
#else
    const expression_value v = [&] {
        try {
            return work_out();
        } catch (const expression_error& refused) {
            refuse_at(path, refused, e.text());
        }
    }();
#endif
    if (!is_wanted(w, v))
        refuse_at(path, "expected " + std::string(name_of(w)) + ": this is " + std::string(name_of(v.kind)));
    if (v.is_length() && v.kind != unit)
        refuse_at(path, "this is " + std::string(name_of(v.kind)) + ", and the project is made in " +
                            (unit == value_kind::inches ? "inches" : "centimetres") +
                            ": give the measure for both, or write \"as inches\" or \"as centimetres\" behind it");
    if (w == wanted::count && v.number && !is_whole(*v.number))
        refuse_at(path, "expected a whole number: it comes to " + to_text(*v.number));
    return v;
}

template <length_unit Unit>
class design_values {
public:
    static constexpr value_kind unit = expression_value::length_kind<Unit>;

    design_values(const finished_size<Unit>& finished, const ruled<Unit>& by) : by_(by) {
        names_.graduation = as<unit_held<Unit>>(by.graduation()).value();
        add("finished width", expression_value::of(finished.width()));
        add("finished height", expression_value::of(finished.height()));
    }

    const ruled<Unit>& by() const { return by_; }

    /// One that cannot be worked out is known by its kind from there on, so that a design may refuse the size first.
    void add(const design_measure& m, const std::string& path, std::vector<design_fault>& faults) {
#ifdef BOOST_NO_EXCEPTIONS
        static_cast<void>(faults);
        add(m.name, worked_out(m, path, names_));
#else
        try {
            add(m.name, worked_out(m, path, names_));
        } catch (const design_error& refused) {
            faults.insert(faults.end(), refused.faults().begin(), refused.faults().end());
            add(m.name, {worked_out(m, path, kinds_).kind, {}});
        }
#endif
    }

    expression_value value(const expression& e, wanted w, const std::string& path) const {
        return value_at(path, e, names_, w, unit);
    }
    /// Nothing where none is given.
    template <wanted W>
    turncloth::length<Unit> length(const expression_for<W>& e, const std::string& path) const {
        return e.given() ? value(e, W, path).template as_length<Unit>() : turncloth::length<Unit>();
    }
    std::int64_t count(const count_expression& e, const std::string& path, std::int64_t otherwise = 1) const {
        return e.given() ? numerator(*value(e, wanted::count, path).number) : otherwise;
    }
    fraction number(const number_expression& e, const std::string& path, fraction otherwise = 0) const {
        return e.given() ? *value(e, wanted::number, path).number : otherwise;
    }
    /// By its number.
    const stitch_type& stitch(const count_expression& e, const std::string& path) const {
        const std::int64_t number = count(e, path);
        require_between<range_error>(std::int64_t{1}, number, std::int64_t{999}, "the number of a stitch");
        return turncloth::stitch(static_cast<int>(number));
    }
    std::vector<turncloth::length<Unit>> lengths(const std::vector<length_expression>& all,
                                                 const std::string& path) const {
        std::vector<turncloth::length<Unit>> made;
        for (std::size_t i = 0; i < all.size(); ++i)
            made.push_back(length(all[i], path + "/" + std::to_string(i)));
        return made;
    }
    /// Where nothing is said, it holds; where it is not known, it does not.
    bool holds(const condition_expression& e, const std::string& path) const {
        if (!e.given())
            return true;
        const expression_value v = value(e, wanted::condition, path);
        return v.number && v.holds();
    }
    std::string text(const design_words& w, const std::string& path) const {
        std::string all;
        for (const words_piece& p : pieces_at(w, path))
            all += p.is_expression ? written<Unit>(value(expression(p.text), wanted::length_or_number, path)) : p.text;
        return all;
    }
    std::string text(const design_part& p, const std::string& path) const { return text(design_words{p.text}, path); }
    template <form_kind Kind>
    auto made(const filled_form<Kind>& f, const std::string& path) const {
        const form* const is = find_form(f);
        if (is == nullptr)
            refuse_at(path + "/is", "there is no such form");
        form_values<Unit> values{.by = by_};
        for (std::size_t i = 0; i < is->size(); ++i) {
            const form_part& p = is->parts[i];
            if (const auto given = f.with.find(p.name); given != f.with.end())
                values.parts[i] = value(given->second, p.is, path + "/" + std::string(p.name));
            else if (p.must)
                refuse_at(path, "\"" + std::string(p.name) + "\" is missing");
        }
        for (const auto& maker : makers_of<Unit>(f))
            if (maker.is.is == is->is)
                return maker.make(values);
        refuse_at(path + "/is", "there is no such form");
    }

private:
    void add(const std::string& name, const expression_value& v) {
        names_.add(name, v);
        kinds_.add(name, {v.kind, {}});
    }
    static std::vector<words_piece> pieces_at(const design_words& w, const std::string& path) {
#ifdef BOOST_NO_EXCEPTIONS
        return static_cast<void>(path), pieces_of(w.text);
#else
        try {
            return pieces_of(w.text);
        } catch (const expression_error& refused) {
            refuse_at(path, refused, w.text);
        }
#endif
    }
    expression_value worked_out(const design_measure& m, const std::string& path, const expression_names& names) const {
        if (m.is.given())
            return value_at(path + "/is", m.is, names, wanted::length_or_number, unit);
        constexpr bool metric = metric_unit<Unit>;
        expression_value v = value_at(path + (metric ? "/centimetres" : "/inches"), metric ? m.centimetres : m.inches,
                                      names, wanted::length_or_number, unit);
        if (v.is_length() && v.number)
            v = expression_value::of(on_ruler(v.as_length<Unit>(), m.ruler));
        return v;
    }
    turncloth::length<Unit> on_ruler(turncloth::length<Unit> l, on_the_ruler how) const {
        switch (how) {
        case on_the_ruler::nearest:
            return by_.given(l);
        case on_the_ruler::halves:
            return by_.given(l, 2);
        case on_the_ruler::step:
            return by_.step(l);
        case on_the_ruler::half_steps:
            return by_.step(l, 2);
        case on_the_ruler::exact:
            break;
        }
        return l;
    }

    ruled<Unit> by_;
    expression_names names_, kinds_;
};

/// Those that are there at this size.
template <length_unit Unit>
std::vector<piece_on_hand<Unit>> pieces_on_hand(const design_values<Unit>& values, const design_cloth& from,
                                                const std::string& where) {
    std::vector<piece_on_hand<Unit>> all;
    for (std::size_t i = 0; i < from.on_hand.size(); ++i) {
        const design_on_hand& h = from.on_hand[i];
        const std::string path = where + "/on_hand/" + std::to_string(i);
        if (values.holds(h.where, path + "/where"))
            all.push_back({h.name, values.length(h.width, path + "/width"), values.length(h.length, path + "/length")});
    }
    return all;
}

} // namespace turncloth::detail

#endif
