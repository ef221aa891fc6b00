// What can hurt in the making of a sheet, in the order of the work.
//
//   add_cautions(draft)     the project's own and those of its pieces and notions, each once
#ifndef TURNCLOTH_SHEET_DETAIL_CAUTIONS_HPP
#define TURNCLOTH_SHEET_DETAIL_CAUTIONS_HPP

#include <turncloth/notions/caution.hpp>
#include <turncloth/sheet/detail/draft.hpp>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// Gathers cautions, each once.
class caution_list {
public:
    void say(const sheet_caution& c) {
        if (std::find(all_.begin(), all_.end(), c) == all_.end())
            all_.push_back(c);
    }
    void say(const caution::note& n) { say(sheet_caution{n.at, std::string(n.sentence)}); }
    void say(const std::vector<sheet_caution>& some) {
        for (const sheet_caution& c : some)
            say(c);
    }

    /// Of one work as they were said.
    std::vector<sheet_caution> in_order_of_work() const {
        std::vector<sheet_caution> ordered;
        for (auto at = caution::work::buying; at <= caution::work::using_it; at = next(at))
            for (const sheet_caution& c : all_)
                if (c.at == at)
                    ordered.push_back(c);
        return ordered;
    }

private:
    static caution::work next(caution::work at) { return static_cast<caution::work>(static_cast<int>(at) + 1); }

    std::vector<sheet_caution> all_;
};

inline void say_for_cloth(caution_list& list, const std::string& material, bool pressed) {
    if (material.find("waxed") != std::string::npos)
        list.say(caution::waxed_cloth);
    else if (pressed)
        list.say(caution::hot_iron);
}

template <length_unit Unit>
void say_for(caution_list& list, const piece<Unit>& p) {
    if (p.is_film()) {
        list.say(caution::soft_film);
        list.say(caution::film_and_iron);
        list.say(caution::film_fumes);
    } else {
        const auto is_turned = [&](edge e) { return p.shape().finish_of(e).allowance().value() > 0; };
        say_for_cloth(list, p.material(),
                      !p.pleats().empty() || std::any_of(all_edges.begin(), all_edges.end(), is_turned));
    }
    if (!p.inside().empty())
        list.say(caution::many_layers);
}

template <length_unit Unit>
void say_for(caution_list& list, const outlined_piece<Unit>& p) {
    const auto& edges = p.made_from.corners;
    say_for_cloth(list, p.material(), std::any_of(edges.begin(), edges.end(), [](const drafted_corner<Unit>& c) {
                      return c.edge.allowance().value() > 0;
                  }));
}

template <length_unit Unit>
void add_cautions(sheet_draft<Unit>& draft) {
    caution_list list;
    list.say(caution::cutting);
    list.say(caution::pins_and_needles);
    for (const piece<Unit>& p : draft.from().pieces())
        say_for(list, p);
    for (const outlined_piece<Unit>& p : draft.from().outlines())
        say_for(list, p);
    for (const project_cloth<Unit>& c : draft.from().cloths())
        if (c.washed != washed_when::unwashed)
            say_for_cloth(list, c.material, true);
    list.say(draft.from().cautions());
    for (const notion<Unit>& n : draft.made().notions)
        list.say(n.cautions());
    draft.made().cautions = list.in_order_of_work();
}

} // namespace detail

} // namespace turncloth

#endif
