// What the names in a design's making may stand for, known without a size.
//
//   making_names(design)      .unknown(part)  .unknown_mouth(name) ...      why a name stands for nothing; empty where it does
//   own_fault(record)         what a record of a making asks beyond its members, where it is not so
#ifndef TURNCLOTH_DESIGN_DETAIL_MAKING_NAMES_HPP
#define TURNCLOTH_DESIGN_DETAIL_MAKING_NAMES_HPP

#include <turncloth/design/detail/said_parts.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/panel/names.hpp>

#include <algorithm>
#include <set>
#include <string>

namespace turncloth::detail {

inline std::string own_fault(const design_crease& c) {
    return c.at.has_value() == c.across.has_value() ? "give either a line or a corner" : "";
}
inline std::string own_fault(const design_corner& c) {
    return is_level(c.upright) || !is_level(c.level) ? "a corner is of an upright edge and a level one" : "";
}
inline std::string own_fault(const design_rows& r) {
    return r.places && r.along.in.given() ? "give either how far in the line is or the places of rows" : "";
}
inline std::string own_fault(const design_compartment& c) {
    return c.between.empty() || c.between.size() == 2 ? "" : "a compartment lies between two walls";
}
inline std::string own_fault(const design_mouth_of& m) {
    if (m.mouth.empty() == m.zipper_on.empty())
        return "give either a mouth or the piece that a zipper is on";
    return m.number.given() && m.zipper_on.empty() ? "a mouth that has a name needs no number" : "";
}
inline std::string own_fault(const design_moment& m) {
    const bool by_mouth = m.what == moment_kind::turn_out || m.what == moment_kind::close,
               put_in = m.what == moment_kind::put_in;
    if (by_mouth != m.mouth.has_value())
        return by_mouth ? "say which mouth" : "no mouth is named for this";
    if (put_in == m.contents.empty())
        return put_in ? "say which contents" : "no contents are named for this";
    return "";
}

class making_names {
public:
    explicit making_names(const project_design& d) {
        for (const design_piece& p : d.pieces)
            parts_.insert(p.name);
        if (!d.making)
            return;
        for (const design_own_part& p : d.making->parts)
            parts_.insert(p.name);
        for (const design_called& c : d.making->called)
            parts_.insert(c.name);
        for (const design_mouth& m : d.making->mouths)
            mouths_.insert(name_here(m));
        for (const design_compartment& c : d.making->compartments)
            compartments_.insert(name_here(c));
        for (const design_contents& c : d.making->contents)
            contents_.insert(name_here(c));
        const auto add = [&](const auto& all) {
            for (const auto& o : all)
                operations_.insert(o.called);
        };
        add(d.making->layings), add(d.making->creases), add(d.making->rows), add(d.making->seams);
        add(d.making->snips), add(d.making->spots), add(d.making->handwork), add(d.making->moments);
    }

    /// One with expressions in it is looked at only as far as its name goes.
    std::string unknown(const design_part& p) const {
        const std::string name = p.text.substr(0, p.text.find('{'));
        const bool known = std::any_of(parts_.begin(), parts_.end(), [&](const std::string& own) {
            return name.size() < p.text.size() ? own.starts_with(name) || name.starts_with(own)
                                               : own == name || number_behind(own, name);
        });
        return known ? "" : "no part is named " + in_quotes(p.text);
    }
    /// Of the member of that name, where that names something of a making.
    std::string unknown(const std::string& member, const std::string& name) const {
        if (member == "mouth" && !mouths_.contains(name))
            return "no mouth is named " + in_quotes(name);
        if (member == "contents" && !contents_.contains(name))
            return "no contents are named " + in_quotes(name);
        if (member == "into" && name.find('{') == std::string::npos && !compartments_.contains(name))
            return "no compartment is named " + in_quotes(name);
        if ((member == "first" || member == "then") && !operations_.contains(name))
            return "no operation is called " + in_quotes(name);
        return "";
    }

private:
    std::set<std::string> parts_, mouths_, compartments_, contents_, operations_;
};

} // namespace turncloth::detail

#endif
