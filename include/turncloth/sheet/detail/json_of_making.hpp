// The finishes of edges, and what a design says of its rows and compartments, as JSON.
//
//   json_of(finish)   json_of_making(design)
#ifndef TURNCLOTH_SHEET_DETAIL_JSON_OF_MAKING_HPP
#define TURNCLOTH_SHEET_DETAIL_JSON_OF_MAKING_HPP

#include <turncloth/making/choices.hpp>
#include <turncloth/making/design.hpp>
#include <turncloth/panel/finish.hpp>
#include <turncloth/sheet/json_lengths.hpp>

#include <string>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
json json_of(const finish<Unit>& f) {
    return {{"finish", sound_text(std::string(f.name().text()))},
            {"allowance", to_json(f.allowance())},
            {"reach", to_json(f.reach())},
            {"joins", f.joins()}};
}

template <length_unit Unit>
class making_as_json {
public:
    explicit making_as_json(const making<Unit>& design) : design_(design) {}

    json all() const {
        return {{"rows", list(design_.rows())},
                {"compartments", list(design_.compartments())},
                {"contents", list(design_.all_contents())}};
    }

private:
    template <class All>
    json list(const All& all) const {
        json j = json::array();
        for (const auto& one : all)
            j.push_back(json_of(one));
        return j;
    }
    /// Of several cut alike, which one, from 1.
    json json_of(const cut_part& p) const {
        json j = {{"piece", sound_text(design_.parts()[p.index].name)}};
        if (design_.parts()[p.index].count > 1)
            j["copy"] = p.copy + 1;
        return j;
    }
    json json_of(const chalk_line<Unit>& l) const {
        json j = json_of(l.on);
        j["parallel_to"] = turncloth::name_of(l.from);
        j["from_cut_edge"] = to_json(l.in.from_datum());
        if (l.begins)
            j["begins"] = to_json(*l.begins);
        if (l.ends)
            j["ends"] = to_json(*l.ends);
        return j;
    }
    json json_of(const stitching<Unit>& r) const {
        json j = {{"along", json_of(r.along)}, {"through", list(r.through)}};
        if (r.each.size() > 0) {
            std::vector<length<Unit>> places;
            for (const auto& p : r.each)
                places.push_back(p.from_datum());
            j["places"] = to_json(places);
        }
        j["stitch"] = r.stitch.number;
        j["by_hand"] = r.by_hand;
        return j;
    }
    json json_of(const mouth_handle& h) const {
        const mouth<Unit>& m = design_.mouths()[h.index];
        return {{"name", sound_text(m.name)}, {"closed_by", word_of(m.by)}, {"at", list(m.at)}};
    }
    json json_of(const compartment<Unit>& c) const {
        return {{"name", sound_text(c.name)},
                {"between", list(c.between)},
                {"from_left", to_json(c.from_left)},
                {"from_top", to_json(c.from_top)},
                {"count", c.count},
                {"step", to_json(c.step)},
                {"holds",
                 {{"width", to_json(c.least_width)},
                  {"height", to_json(c.least_height)},
                  {"depth", to_json(c.least_depth)}}},
                {"mouths", list(c.mouths)}};
    }
    json json_of(const contents<Unit>& c) const {
        return {{"what", sound_text(c.what)},
                {"width", to_json(c.width)},
                {"height", to_json(c.height)},
                {"depth", to_json(c.depth)},
                {"into", sound_text(design_.compartments()[c.into.index].name)},
                {"by", sound_text(design_.mouths()[c.by.index].name)},
                {"folded_in_half", c.folds}};
    }

    const making<Unit>& design_;
};

template <length_unit Unit>
json json_of_making(const making<Unit>& design) {
    return making_as_json<Unit>(design).all();
}

} // namespace turncloth::detail

#endif
