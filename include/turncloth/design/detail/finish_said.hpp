// Finishes as a design says them: by a form where one has them, by all that they are otherwise.
//
//   said(length)                     an expression that comes to it, exactly
//   form_of(finish)                  the form and its parts; none where no form makes it
//   own_finish_of(finish, called)    a design_own_finish
#ifndef TURNCLOTH_DESIGN_DETAIL_FINISH_SAID_HPP
#define TURNCLOTH_DESIGN_DETAIL_FINISH_SAID_HPP

#include <turncloth/design/detail/design_words.hpp>
#include <turncloth/design/detail/forms.hpp>
#include <turncloth/design/project_design.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
std::string text_said(length<Unit> l) {
    const std::string text = written<Unit>(expression_value::of(l.value() < 0 ? -l : l));
    return l.value() < 0 ? "- (" + text + ")" : text;
}
template <length_unit Unit>
length_expression said(length<Unit> l) {
    return length_expression(text_said(l));
}
/// Nothing for nothing.
template <length_unit Unit>
length_expression said_unless_nothing(length<Unit> l) {
    return l.value() == 0 ? length_expression() : said(l);
}

/// What the parts of a form would be for a finish, in the order of its table, if it were of that form.
template <length_unit Unit>
std::vector<length<Unit>> parts_guessed(std::string_view is, const finish<Unit>& f) {
    const length<Unit> nothing, all = f.allowance();
    const auto allows = f.allowance_parts();
    const auto part = [&](std::size_t i) { return i < allows.size() ? allows[i] : nothing; };
    const auto row = [&](std::size_t i) { return i < f.stitching().size() ? f.stitching()[i].from_datum() : nothing; };
    // Of what is turned over: see detail::turned_over.
    const bool twice = f.folds().size() > 1;
    const length<Unit> first = twice ? part(0) : nothing, depth = f.reach(), turn = all - first - depth,
                       inset = first + depth * 2 + turn - row(0);
    if (is == "seam" || is == "flat-felled seam, under")
        return {all};
    if (is == "single-turned hem")
        return {depth, inset};
    if (is == "double-turned hem")
        return {first, depth, inset, turn};
    if (is == "heading")
        return {depth, first, inset};
    if (is == "casing")
        return {depth, row(0) - row(1), first, inset};
    if (is == "self-binding")
        return {depth, inset, turn};
    if (is == "separate binding")
        return {depth};
    if (is == "French seam")
        return {part(0), part(1)};
    if (is == "flat-felled seam, over")
        return {part(0), part(1), row(1) - part(0)};
    if (is == "lapped seam, over")
        return {all, row(0) - all};
    if (is == "lapped seam, under")
        return {all, all - row(0)};
    if (is == "turned under beside a zipper")
        return {all, row(0) - all};
    return {};
}

template <length_unit Unit>
bool makes([[maybe_unused]] const finish_maker<Unit>& maker, [[maybe_unused]] const form_values<Unit>& values,
           [[maybe_unused]] const finish<Unit>& f) {
#ifdef BOOST_NO_EXCEPTIONS
    return false; // what is no finish of that form would go to the program's own handler
#else
    try {
        return maker.make(values) == f;
    } catch (const error&) {
        return false;
    }
#endif
}

template <length_unit Unit>
std::optional<design_finish> form_of(const finish<Unit>& f) {
    for (const finish_maker<Unit>& maker : finish_forms<Unit>) {
        const std::vector<length<Unit>> parts = parts_guessed(maker.is.is, f);
        design_finish made{std::string(maker.is.is)};
        form_values<Unit> values;
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (maker.is.parts[i].must || parts[i].value() != 0) {
                values.parts[i] = expression_value::of(parts[i]);
                made.with[std::string(maker.is.parts[i].name)] = said(parts[i]);
            }
        if (makes(maker, values, f))
            return made;
    }
    return {};
}

template <length_unit Unit>
design_own_finish own_finish_of(const finish<Unit>& f, std::string called) {
    design_own_finish made{std::move(called), std::string(f.name().text())};
    for (const length<Unit>& l : f.allowance_parts())
        made.allows.push_back(said(l));
    for (const auto& l : f.folds())
        made.folds.push_back(said(l.from_datum()));
    for (const auto& l : f.stitching())
        made.stitching.push_back(said(l.from_datum()));
    made.reaches = said_unless_nothing(f.reach());
    made.joins = f.joins();
    return made;
}

} // namespace turncloth::detail

#endif
