// The checks of a design: each member looked at for one of the units that the design can be made in.
//
//   design_checker(design, value_kind::inches).faults      in the order in which the design is read
#ifndef TURNCLOTH_DESIGN_DETAIL_DESIGN_CHECKER_HPP
#define TURNCLOTH_DESIGN_DETAIL_DESIGN_CHECKER_HPP

#include <turncloth/design/detail/evaluating.hpp>
#include <turncloth/design/detail/making_names.hpp>
#include <turncloth/design/detail/members.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/panel/names.hpp>
#include <turncloth/panel/typed_size.hpp>

#include <algorithm>
#include <concepts>
#include <cstddef>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// What a record asks beyond its members, where it is not so.
template <class Record>
std::string own_fault(const Record&) {
    return {};
}
inline std::string own_fault(const design_detail& d) {
    const int given = (d.figure.given() ? 1 : 0) + (d.number.given() ? 1 : 0) + (d.terms.empty() ? 0 : 1) +
                      (d.places.empty() ? 0 : 1);
    return given == 1 ? "" : "give either a figure, its terms, a number or places";
}
inline std::string own_fault(const project_design& d) {
    return d.pieces.empty() && d.outlines.empty() ? "it has neither pieces nor outlines" : "";
}
inline std::string own_fault(const design_zipper& z) {
    return z.roll.given() == !z.lengths_sold.empty() ? "give either a roll or the lengths sold" : "";
}
inline std::string own_fault(const design_measure& m) {
    if (m.is.given() == (m.inches.given() || m.centimetres.given()))
        return "give either what it is worked out from, or what it is in inches and in centimetres";
    return m.is.given() && m.ruler != on_the_ruler::nearest ? "what is worked out stays as it is on a ruler" : "";
}

inline std::string unfit_reason(const std::string& text) {
    if (text.size() > most_in_a_design)
        return "a text has at most " + std::to_string(most_in_a_design) + " bytes";
    return unfit_at(text) ? "it holds what cannot be printed" : "";
}

/// Goes through a design for one of its units.
class design_checker {
public:
    design_checker(const project_design& d, value_kind unit) : unit_(unit), making_names_(d) {
        for (const char* size : {"finished width", "finished height"})
            names_.add(size, {unit, {}});
        for (const design_piece& p : d.pieces) {
            pieces_.insert(p.name);
            materials_.insert(p.material);
        }
        for (const design_outline& o : d.outlines) {
            outlines_.insert(o.name);
            materials_.insert(o.material);
        }
        for (const design_binding& b : d.bindings)
            materials_.insert(b.material);
        for (const design_own_finish& f : d.finishes)
            finishes_.insert(f.called);
        record(d, "");
        look(d.name, "/name"); // it may tell of the measures, which stand behind it
    }
    std::vector<design_fault> faults;

    template <class T>
    void must(std::string_view name, const T& member, std::string_view) {
        if (member == T{} && std::is_class_v<T>)
            fault("it is missing", inside(name));
        else if (inside(name) != "/name")
            look(member, inside(name));
    }
    template <class T>
    void may(std::string_view name, const T& member, std::string_view) {
        if (!(member == T{}))
            look(member, inside(name));
    }

private:
    std::string inside(std::string_view name) const { return path_ + "/" + std::string(name); }
    void fault(std::string why, const std::string& path) { faults.push_back({path, std::move(why), {}}); }

    template <class Record>
    void record(const Record& r, const std::string& path) {
        const std::string before = std::exchange(path_, path);
        if (std::string why = own_fault(r); !why.empty())
            fault(std::move(why), path);
        members(*this, r);
        path_ = before;
    }
    template <class T>
    void look(const T& member, const std::string& path) {
        if constexpr (design_record<const T>)
            record(member, path);
    }
    void look(const design_measure& m, const std::string& path) {
        const std::size_t before = faults.size();
        record(m, path);
        check_name(m.name, path + "/name");
        value_kind kind = unit_;
        const bool metric = unit_ == value_kind::centimetres;
        const measure_expression& given = m.is.given() ? m.is : (metric ? m.centimetres : m.inches);
        const std::string at = path + (m.is.given() ? "/is" : (metric ? "/centimetres" : "/inches"));
        if (!given.given() && faults.size() == before)
            fault("it is missing", at);
        else if (const auto v = value(given, wanted::length_or_number, at))
            kind = v->kind;
        if (faults.size() != before)
            at_fault_.push_back(m.name);
        names_.add(m.name, {kind, {}});
    }
    void check_name(const std::string& name, const std::string& path) {
        attempt(path, name, [&] { require_name(name); });
        if (names_.find(name) != nullptr)
            fault("there is a measure of that name before it", path);
        if (find_figure(name) != nullptr)
            fault("a figure of the library has that name", path);
    }
    template <class T>
    void look(const std::vector<T>& all, const std::string& path) {
        if (all.size() > most_in_a_design)
            return fault("a list has at most " + std::to_string(most_in_a_design) + " items", path);
        for (std::size_t i = 0; i < all.size(); ++i)
            look(all[i], path + "/" + std::to_string(i));
        if constexpr (std::same_as<T, design_piece>)
            check_pieces(all, path);
        if constexpr (std::same_as<T, design_outline>)
            check_outlines(all, path);
        if constexpr (std::same_as<T, design_own_finish>)
            check_finishes(all, path);
        if constexpr (std::same_as<T, design_cloth>)
            for (std::size_t i = 0; i < all.size(); ++i)
                if (!materials_.contains(all[i].material))
                    fault("no piece is cut from " + in_quotes(all[i].material),
                          path + "/" + std::to_string(i) + "/material");
    }
    void check_finishes(const std::vector<design_own_finish>& all, const std::string& path) {
        std::set<std::string> before;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string at = path + "/" + std::to_string(i) + "/called";
            if (find_form(design_finish{all[i].called}) != nullptr)
                fault("a finish of the library has that name", at);
            if (!before.insert(all[i].called).second)
                fault("there is a finish of that name before it", at);
        }
    }
    void check_pieces(const std::vector<design_piece>& all, const std::string& path) {
        std::set<std::string> before;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string at = path + "/" + std::to_string(i);
            if (!all[i].inside.empty() && !before.contains(all[i].inside))
                fault("no piece before this one is named " + in_quotes(all[i].inside), at + "/inside");
            // Of two that are there at different sizes, one is made.
            if (!before.insert(all[i].name).second && !all[i].where.given())
                fault("there is a piece of that name before it", at + "/name");
        }
    }
    void check_outlines(const std::vector<design_outline>& all, const std::string& path) {
        std::set<std::string> before;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string at = path + "/" + std::to_string(i) + "/name";
            if (!before.insert(all[i].name).second && !all[i].where.given())
                fault("there is a piece of that name before it", at);
            if (pieces_.contains(all[i].name))
                fault("a piece has that name", at);
        }
    }
    template <class T>
    void look(const std::optional<T>& member, const std::string& path) {
        look(*member, path);
    }
    void look(const std::string& text, const std::string& path) {
        if (std::string why = unfit_reason(text); !why.empty())
            return fault(std::move(why), path);
        if (path.starts_with("/sizes/"))
            if (const auto size = try_read_size(text); !size)
                return fault(size.refused().what(), path);
        for (const std::string_view name : {"/longer", "/shorter", "/on", "/piece", "/strip", "/zipper_on"})
            if (path.ends_with(name) && !pieces_.contains(text))
                fault(outlines_.contains(text) ? in_quotes(text) + " is an outline, and this takes a rectangle"
                                               : "no piece is named " + in_quotes(text),
                      path);
        look_up(text, path);
    }
    void look_up(const std::string& name, const std::string& path) {
        if (std::string why = making_names_.unknown(path.substr(path.rfind('/') + 1), name); !why.empty())
            fault(std::move(why), path);
    }
    void look(const design_part& p, const std::string& path) {
        const std::size_t before = faults.size();
        look(design_words{p.text}, path);
        if (std::string why = making_names_.unknown(p); faults.size() == before && !why.empty())
            fault(std::move(why), path);
    }
    template <wanted W>
    void look(const expression_for<W>& e, const std::string& path) {
        // Of a measure, by itself: what is given in the other unit is looked at for that unit.
        if constexpr (W != wanted::length_or_number)
            value(e, W, path);
    }
    void look(const design_words& w, const std::string& path) {
        if (std::string why = unfit_reason(w.text); !why.empty())
            return fault(std::move(why), path);
        attempt(path, w.text, [&] {
            for (const words_piece& p : pieces_of(w.text))
                if (p.is_expression)
                    value(expression(p.text), wanted::length_or_number, path, p.at);
        });
        look_up(w.text, path);
    }
    template <form_kind Kind>
    void look(const filled_form<Kind>& f, const std::string& path) {
        if constexpr (Kind == form_kind::finish)
            if (finishes_.contains(f.is)) {
                for (const auto& [name, given] : f.with)
                    fault("a finish of the design's own has no parts here", sentence({path, "/", name}));
                return;
            }
        const form* const is = find_form(f);
        if (is == nullptr)
            return fault("there is no " + in_quotes(f.is) + " here: there are " + forms_there(f), path + "/is");
        const auto end = is->parts.begin() + static_cast<std::ptrdiff_t>(is->size());
        for (auto part = is->parts.begin(); part != end; ++part)
            if (const auto given = f.with.find(part->name); given != f.with.end())
                value(given->second, part->is, path + "/" + std::string(part->name));
            else if (part->must)
                fault("it is missing", path + "/" + std::string(part->name));
        for (const auto& [name, given] : f.with)
            if (std::none_of(is->parts.begin(), end, [&, n = name](const form_part& p) { return p.name == n; }))
                fault(std::string("a ").append(is->is).append(" has no such part"),
                      std::string(path).append("/").append(name));
    }
    template <form_kind Kind>
    static std::string forms_there(const filled_form<Kind>& f) {
        std::vector<std::string> all;
        for (const auto& maker : makers_of<inch>(f))
            all.push_back(in_quotes(maker.is.is));
        return enumerated(all);
    }

    /// None where it has a fault, or hangs on a measure that has one.
    std::optional<expression_value> value(const expression& e, wanted w, const std::string& path,
                                          std::size_t from = 0) {
        for (const std::string& name : at_fault_)
            if (!name.empty() && e.text().find(name) != std::string::npos)
                return {};
        std::optional<expression_value> v;
        attempt(path, e.text(), [&] { v = value_at(path, e, names_, w, unit_); });
        if (!v && from > 0 && faults.back().character)
            *faults.back().character += from;
        return v;
    }
    template <class Work>
    void attempt(const std::string& path, const std::string& text, const Work& work) {
#ifdef BOOST_NO_EXCEPTIONS
        static_cast<void>(path), static_cast<void>(text);
        work();
#else
        try {
            work();
        } catch (const design_error& refused) {
            faults.insert(faults.end(), refused.faults().begin(), refused.faults().end());
        } catch (const expression_error& refused) {
            faults.push_back(
                {path, refused.reason(), characters_in(std::string_view(text).substr(0, refused.position())) + 1});
        }
#endif
    }

    value_kind unit_;
    expression_names names_;
    std::set<std::string, std::less<>> pieces_, outlines_, materials_,
        finishes_; // of the finishes, those that are the design's own
    making_names making_names_;
    std::vector<std::string> at_fault_; ///< measures
    std::string path_;
};

} // namespace turncloth::detail

#endif
