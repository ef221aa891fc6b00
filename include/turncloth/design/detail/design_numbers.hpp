// A design's expressions, each put as the number that it comes to at one size, and what is not there at it left out.
//
//   design_numbers<inch> numbers(values);
//   members(numbers, design);
#ifndef TURNCLOTH_DESIGN_DETAIL_DESIGN_NUMBERS_HPP
#define TURNCLOTH_DESIGN_DETAIL_DESIGN_NUMBERS_HPP

#include <turncloth/design/detail/evaluating.hpp>
#include <turncloth/design/detail/members.hpp>
#include <turncloth/design/detail/one_size.hpp>
#include <turncloth/design/project_design.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class design_numbers {
public:
    explicit design_numbers(const design_values<Unit>& values) : values_(values) {}

    template <class T>
    void must(std::string_view name, T& member, std::string_view) {
        const std::string before = std::exchange(path_, path_ + "/" + std::string(name));
        put_numbers(member);
        path_ = before;
    }
    template <class T>
    void may(std::string_view name, T& member, std::string_view about) {
        must(name, member, about);
    }

private:
    template <class T>
    void put_numbers(T& member) {
        if constexpr (design_record<T>)
            members(*this, member);
    }
    /// What is there is there; a condition that holds says no more.
    void put_numbers(condition_expression& e) { e = {}; }
    template <wanted W>
    void put_numbers(expression_for<W>& e) {
        if (e.given())
            e = expression_for<W>(written<Unit>(values_.value(e, W, path_)));
    }
    void put_numbers(design_words& w) { w.text = values_.text(w, path_); }
    void put_numbers(design_part& p) { p.text = values_.text(p, path_); }
    template <form_kind Kind>
    void put_numbers(filled_form<Kind>& f) {
        const form* const is = find_form(f);
        for (std::size_t i = 0; is != nullptr && i < is->size(); ++i)
            if (const auto given = f.with.find(is->parts[i].name); given != f.with.end())
                given->second = expression(written<Unit>(values_.value(given->second, is->parts[i].is, path_)));
    }
    template <class T>
    void put_numbers(std::optional<T>& member) {
        if (member && !is_there(*member))
            member.reset();
        if (member)
            put_numbers(*member);
    }
    template <class T>
    void put_numbers(std::vector<T>& all) {
        std::vector<T> there;
        for (T& item : all)
            if (is_there(item)) {
                there.push_back(std::move(item));
                put_numbers(there.back());
            }
        all = std::move(there);
    }
    template <class T>
    bool is_there([[maybe_unused]] const T& item) const {
        if constexpr (requires { item.where; })
            return values_.holds(item.where, path_);
        else
            return true;
    }

    const design_values<Unit>& values_;
    std::string path_;
};

} // namespace turncloth::detail

#endif
