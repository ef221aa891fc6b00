// Sheets in units that turncloth::compiled does not hold, so header-only: what they say is right in these too.
#include "json_document.hpp"
#include "round_trip.hpp"

using namespace turncloth;

TEST_CASE("a sheet in feet is written as JSON as those in inches and centimetres are") {
    json_document::check_document(sheet_of(json_document::seed_tidy(length_of<foot>({1, 12}))));
}

TEST_CASE("a sheet in feet or metres folds back as those in inches and centimetres do") {
    round_trip::check_organiser(length_of<foot>(2), length_of<foot>({5, 2}));
    round_trip::check_tool_roll(length_of<metre>({3, 4}), length_of<metre>({1, 2}));
    round_trip::check_kneeling_pad(length_of<foot>(2), length_of<foot>(1), length_of<foot>({1, 6}));
}

TEST_CASE("a size in feet or metres is made in the edition of its kind") {
    const auto s = allotment::kneeling_pad::make(finished_size(length_of<foot>({3, 2}), length_of<foot>(1)));
    CHECK(s.pieces[0].cut == cut_size(length_of<foot>({19, 12}), length_of<foot>({13, 12}))); // 18 + 1 by 12 + 1 in
    const auto m = allotment::kneeling_pad::make(finished_size(length_of<metre>({1, 2}), length_of<metre>({3, 10})));
    CHECK(m.pieces[0].cut == cut_size(length_of<metre>({53, 100}), length_of<metre>({33, 100}))); // 1.5 cm a side
}
