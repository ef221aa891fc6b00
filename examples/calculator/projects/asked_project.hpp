// What is asked of a project, once it is read; and what works it out, each unit in a source file of its own, so that two
// compilers work side by side.
#ifndef TURNCLOTH_EXAMPLES_CALCULATOR_ASKED_PROJECT_HPP
#define TURNCLOTH_EXAMPLES_CALCULATOR_ASKED_PROJECT_HPP

#include "../calculation.hpp"
#include <turncloth/design/project_design.hpp>
#include <turncloth/handout/options.hpp>
#include <turncloth/panel/panel.hpp>

#include <string>

namespace calculator {

struct asked_project {
    turncloth::project_design design;
    std::string cloth_width{}; ///< as typed; empty for what is usual
    bool handout = false;      ///< or else the sheet as data
    turncloth::handout_options told{};
};

json made(const asked_project& asked, const turncloth::finished_size<turncloth::inch>& size);
json made(const asked_project& asked, const turncloth::finished_size<turncloth::centimetre>& size);

} // namespace calculator

#endif
