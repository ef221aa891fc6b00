// A project at a size, with the cloth it is cut from, as turncloth_sheets makes it. Included by one source file a unit.
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_MADE_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_MADE_HPP

#include "../../sheets/cloth_to_buy.hpp"
#include "../../sheets/project_made.hpp"
#include "asked_project.hpp"
#include <turncloth/handout/handout.hpp>
#include <turncloth/page/html.hpp>
#include <turncloth/sheet/json.hpp>
#include <turncloth/sheet/text.hpp>

#include <vector>

namespace calculator {

template <length_unit Unit>
json made_in(const asked_project& asked, const turncloth::finished_size<Unit>& size) {
    using namespace turncloth;
    allotment::cloth_sold<Unit> cloth;
    if (!asked.cloth_width.empty()) {
        cloth.width = given::read<Unit>("cloth_width", asked.cloth_width);
        cloth.typed = true;
    }
    const ruler& by = asked.told.by;
    const length<Unit> graduation = metric_unit<Unit> ? as<Unit>(by.centimetres) : as<Unit>(by.inches);
    sheet<Unit> s = allotment::sheet_for(asked.design, size, graduation);
    const std::vector<sheet_cloth<Unit>> lays = allotment::add_cloth(s, cloth, allotment::hangs(asked.design));
    json j = {{"name", sound_text(s.name)}, {"size", to_text(s.finished)}, {"text", to_text(s, by)}};
    if (asked.handout)
        j["html"] = to_html(handout_of(s, lays, asked.told));
    else
        j["sheet"] = to_json(s);
    return j;
}

} // namespace calculator

#endif
