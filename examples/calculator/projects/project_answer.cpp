#include "project_answer.hpp"

#include "../../sheets/project_made.hpp"
#include "../told.hpp"
#include "asked_project.hpp"
#include <turncloth/design/json.hpp>

#include <array>
#include <cstddef>
#include <string_view>
#include <variant>

using namespace turncloth;
using namespace calculator;

namespace {

/// Every fault of a project file, each with its place.
json no_answer(const design_error& e) {
    json j = calculator::no_answer(e.what(), e.facts(), "design");
    for (const design_fault& f : e.faults()) {
        json one = {{"where", sound_text(f.where)}, {"why", sound_text(f.why)}};
        if (f.character)
            one["character"] = *f.character;
        j["refused"]["faults"].push_back(std::move(one));
    }
    return j;
}

/// A member that nobody knows would be left out of account unseen.
void require_known(const json& question) {
    static constexpr std::array<std::string_view, 9> known = {"ask",     "design", "size",     "units",      "author",
                                                              "licence", "date",   "workings", "cloth_width"};
    for (auto member = question.begin(); member != question.end(); ++member)
        if (const std::string& name = member.key(); std::find(known.begin(), known.end(), name) == known.end())
            throw field_error(name, "a project is not asked for \"" + name + "\"",
                              {.kind = fault::unsuitable, .what = "a member of a question", .where = name});
}

asked_project read(const given& g) {
    static constexpr std::array<std::string_view, 2> asks = {"sheet", "handout"};
    static constexpr std::array<std::string_view, 3> units = {"both", "in", "cm"};
    static constexpr std::array<units_shown, 3> shown = {units_shown::both, units_shown::inches,
                                                         units_shown::centimetres};
    asked_project asked{.design = read_design(g.text("design")), .cloth_width = g.text("cloth_width")};
    asked.handout = g.choice("ask", asks) == 1;
    asked.told = {.author = g.text("author"), .licence = g.text("licence"), .date = g.text("date")};
    asked.told.by.shows = shown.at(g.choice("units", units));
    asked.told.workings = !g.has("workings") || g.holds("workings");
    return asked;
}

typed_size size_asked_for(const asked_project& asked, const std::string& typed) {
    try {
        return allotment::size_to_make(asked.design, typed, asked.told.by.shows == units_shown::centimetres);
    } catch (const error& e) {
        throw field_error("size", e.what(), e.facts());
    }
}

json answered(const json& question) {
    require_known(question);
    const given g(question);
    const asked_project asked = read(g);
    return std::visit([&](const auto& size) { return made(asked, size); }, size_asked_for(asked, g.text("size")));
}

} // namespace

std::string project_answer(std::string_view question) {
    try {
        return said(answered(read_question(question)));
    } catch (const field_error& e) {
        return said(calculator::no_answer(e.what(), e.facts(), e.field()));
    } catch (const design_error& e) {
        return said(no_answer(e));
    } catch (const refused_size& e) { // by the file, in its own words
        return said(calculator::no_answer(e.what(), e.facts(), "size"));
    } catch (const error& e) {
        return said(calculator::no_answer(e.what(), e.facts()));
    }
}
