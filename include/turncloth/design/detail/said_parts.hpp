// The parts of a making by the names that a design gives them, and lines and places on them.
//
//   said_parts<U>       .add(name, panel_part, count)  .call(name, panel_part)  .find("film strip 3", path)
//   named_things<T>     .add(name, thing)  .find(name, what, path)      refused with its place, where it is not one
//   from_cut_edge(part, edge, datum, length)   on_part(part, edge, datum, row)
#ifndef TURNCLOTH_DESIGN_DETAIL_SAID_PARTS_HPP
#define TURNCLOTH_DESIGN_DETAIL_SAID_PARTS_HPP

#include <turncloth/design/design_making.hpp>
#include <turncloth/design/detail/evaluating.hpp>
#include <turncloth/making/finishing.hpp>
#include <turncloth/panel/names.hpp>

#include <charconv>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth::detail {

/// "film strip 3" is the third of what is called "film strip"; none where no number from 1 to 999 999 follows the name.
inline std::optional<std::int64_t> number_behind(std::string_view name, std::string_view text) {
    if (text.size() < name.size() + 2 || text.size() > name.size() + 7 || !text.starts_with(name) ||
        text[name.size()] != ' ')
        return {};
    const char* const end = text.data() + text.size();
    std::int64_t n = 0;
    const auto read = std::from_chars(text.data() + name.size() + 1, end, n);
    return read.ptr == end && n > 0 ? std::optional(n) : std::nullopt;
}

template <length_unit Unit>
class said_parts {
public:
    void add(std::string name, const panel_part<Unit>& first, std::int64_t count) {
        parts_.push_back({std::move(name), first, count});
    }
    /// What another part, or copy of one, is called besides.
    void call(std::string name, const panel_part<Unit>& p) { called_.push_back({std::move(name), p, 1}); }

    panel_part<Unit> find(const std::string& text, const std::string& path) const {
        for (const auto* all : {&called_, &parts_})
            for (const named_part_of& p : *all)
                if (p.name == text)
                    return p.first;
        for (const named_part_of& p : parts_)
            if (const auto n = number_behind(p.name, text); n && *n <= p.count)
                return p.first[*n - 1];
        refuse_at(path, "no part is named " + in_quotes(text) + " at this size");
    }

private:
    struct named_part_of {
        std::string name;
        panel_part<Unit> first;
        std::int64_t count;
    };
    std::vector<named_part_of> parts_, called_;
};

template <class Thing>
class named_things {
public:
    void add(std::string name, const Thing& t) { all_.push_back({std::move(name), t}); }
    Thing find(const std::string& name, const char* what, const std::string& path) const {
        const Thing* found = nullptr;
        for (const auto& [own, thing] : all_)
            if (own == name) {
                if (found != nullptr)
                    refuse_at(path, std::string("there are two of ") + what + " named " + in_quotes(name));
                found = &thing;
            }
        if (found == nullptr)
            refuse_at(path, std::string("none of ") + what + " is named " + in_quotes(name) + " at this size");
        return *found;
    }

private:
    std::vector<std::pair<std::string, Thing>> all_;
};

/// What the rest of a making names these by.
inline const std::string& name_here(const design_mouth& m) { return m.called.empty() ? m.name : m.called; }
inline const std::string& name_here(const design_compartment& c) { return c.called.empty() ? c.name.text : c.called; }
inline const std::string& name_here(const design_contents& c) { return c.called.empty() ? c.what : c.called; }

/// Throws finish_error for a place from the stitching of an edge that has none.
template <length_unit Unit>
place<cut_edge, Unit> from_cut_edge(const panel_part<Unit>& p, edge e, design_datum datum, length<Unit> l) {
    switch (datum) {
    case design_datum::finished_edge:
        return p.shape.from_cut_edge(e, at<finished_edge>(l));
    case design_datum::stitched_line:
        return p.shape.from_cut_edge(e, at<stitched_line>(l));
    case design_datum::cut_edge:
        break;
    }
    return at<cut_edge>(l);
}
template <length_unit Unit>
row<cut_edge, Unit> on_part(const panel_part<Unit>& p, edge e, design_datum datum, const row<finished_edge, Unit>& r) {
    if (r.size() == 0)
        return {};
    return row<cut_edge, Unit>(from_cut_edge(p, e, datum, r.exact()[0].from_datum()), r.step(), r.size())
        .on_ruler(r.graduation());
}

} // namespace turncloth::detail

#endif
