// Pictures of steps and of finished things at sizes that are tiny, narrow, huge and full of pockets: every word can be
// read, and nothing leaves the page.
#include "../../examples/sheets/projects.hpp"
#include "draw/picture.hpp"
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/step.hpp>

#include <doctest/doctest.h>

using namespace turncloth;
using namespace turncloth::drawn;

namespace {

void check_all(const sheet<inch>& s) {
    CAPTURE(s.name);
    CAPTURE(s.finished.width().value());
    for (const bool sentences : {true, false})
        for (const paper on : {paper::a4, paper::letter})
            for (const step_page& p : pages_of_steps(s, {.sentences = sentences}, {}, {.on = on})) {
                INFO(p.page.title);
                check_legible(picture(p.page));
            }
    for (const page& p : pages_of_finished(s))
        check_legible(picture(p));
}

} // namespace

TEST_CASE("pictures of the making can be read at any size") {
    const length<inch> ruler = "1/16"_in;
    for (const auto& size : {finished_size(6_in, 9_in), finished_size(60_in, 9_in), finished_size(27_in, 28_in),
                             finished_size(12_in, 200_in), finished_size(120_in, 90_in)})
        check_all(allotment::organiser::make(size, ruler));
    for (const auto& size : {finished_size(7_in, 11_in), finished_size(60_in, 11_in), finished_size(29_in, 21_in),
                             finished_size(120_in, 90_in)})
        check_all(allotment::tool_roll::make(size, ruler));
    for (const auto& size :
         {finished_size("17 1/2"_in, "10 1/2"_in), finished_size(60_in, 14_in), finished_size(70_in, 70_in)})
        check_all(allotment::kneeling_pad::make(size, 2_in, {}, ruler));
    check_all(allotment::kneeling_pad::make(finished_size(8_in, 6_in), 1_in, {}, ruler));
}
