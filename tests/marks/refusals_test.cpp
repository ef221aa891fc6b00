// Every kind of refusal of marks/ as data: what was wrong, what was given and what is allowed, written down by hand.
#include "refused.hpp"
#include <turncloth/marks/mapping.hpp>
#include <turncloth/marks/rounded.hpp>
#include <turncloth/marks/spacing.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <array>

using namespace turncloth;

namespace {

template <class Call>
std::string facts(Call call) {
    return refused::facts<marks_error>(call);
}

struct strip_end {};

constexpr even_mapping<inch> film(42_in, 30_in, 6);

} // namespace

TEST_CASE("a refused row of marks says what was given and what is allowed") {
    CHECK(facts([] { return row<strip_end, inch>(at<strip_end>(0_in), 1_in, -2); }) ==
          "too small: the number of marks, given -2, least 0");
    CHECK(facts([] { return divided<strip_end>(9_in, 3)[2]; }) ==
          "too large: a mark of a row, given 2, least 0, most 1");
    CHECK(facts([] { return divided<strip_end>(9_in, 3)[-1]; }) ==
          "too small: a mark of a row, given -1, least 0, most 1");
    CHECK(facts([] { return divided<strip_end>(9_in, 0); }) ==
          "too small: the number of parts, given 0, least 1, most 4611686018427387904");
    CHECK(facts([] { return divided<strip_end>(-"1/2"_in, 3); }) ==
          "too small: a span to divide, given -1/2 in, least 0 in");
    CHECK(facts([] { return halved<strip_end>(9_in, 63); }) ==
          "too large: the number of foldings in half, given 63, least 0, most 62");
    CHECK(facts([] { return foldings(6); }) == "unsuitable: the number of parts, given 6");
    CHECK(facts([] { return every<strip_end>(0_cm, 9_cm); }) ==
          "too small: the distance between marks, given 0 cm, least 0 cm");
    CHECK(facts([] { return every<strip_end>(2_cm, -9_cm); }) == "too small: a span to mark, given -9 cm, least 0 cm");
}

TEST_CASE("a refused rounding of marks says which part is too small for which graduation") {
    const auto tenths = [](const length<inch>& graduation) {
        return rounded_division<strip_end, inch>(1_in, 10, graduation);
    };
    CHECK(facts([&] { return tenths("1/8"_in); }) == "too small: a part, given 1/10 in, least 1/8 in");
    CHECK(facts([&] { return tenths("1/16"_in).part(10); }) ==
          "too large: a part of a span, given 10, least 0, most 9");
    CHECK(facts([] { return stepped(0_in, "1/8"_in); }) ==
          "too small: the distance between marks, given 0 in, least 0 in");
    CHECK(facts([] { return stepped("1/20"_in, "1/8"_in); }) ==
          "too small: the distance between marks, given 1/20 in, least 1/8 in");
}

TEST_CASE("things that cannot be spaced say what they need and what there is") {
    CHECK(facts([] { return spaced<strip_end>(0, 1_in, 9_in); }) ==
          "too small: the number of things to space, given 0, least 1");
    CHECK(facts([] { return spaced<strip_end>(2, 1_in, 0_in); }) ==
          "too small: the length to space things along, given 0 in, least 0 in");
    CHECK(facts([] { return spaced<strip_end>(2, -1_in, 9_in); }) ==
          "too small: the width of a thing, given -1 in, least 0 in");
    CHECK(facts([] { return spaced_from_margins<strip_end>(2, 1_in, 9_in, -"1/4"_in); }) ==
          "too small: the margin beside the outer things, given -1/4 in, least 0 in");
    // Four of 2 1/2 in and two margins of 1 in are 12 in.
    CHECK(facts([] { return spaced_from_margins<strip_end>(4, "2 1/2"_in, 9_in, 1_in); }) ==
          "no room: the things to space, given 12 in, most 9 in");
    CHECK(facts([] { return spaced_from_margins<strip_end>(1, 1_in, 9_in, 1_in); }) ==
          "too small: the number of things to space from two margins, given 1, least 2");
    CHECK(facts([] { return spaced_centred<strip_end>(2, 1_in, 9_in, -1_in); }) ==
          "too small: the gap between two things, given -1 in, least 0 in");
    // Three of 1 in leave 6 of 9 in, and two gaps of 4 in are 8 in.
    CHECK(facts([] { return spaced_centred<strip_end>(3, 1_in, 9_in, 4_in); }) ==
          "no room: the gaps between the things, given 8 in, most 6 in");
}

TEST_CASE("a refused mapping says which piece, which span and how long it is") {
    CHECK(facts([] { return even_mapping<inch>(30_in, 42_in, 6); }) ==
          "too small: the long piece, given 30 in, least 42 in");
    CHECK(facts([] { return film.fullness(6); }) == "too large: a span of a mapping, given 6, least 0, most 5");
    CHECK(facts([] { return film.surplus(-1); }) == "too small: a span of a mapping, given -1, least 0, most 5");
    CHECK(facts([] { return film.onto_short(at<long_piece>("42 1/8"_in)); }) ==
          "too large: a place on the piece, given 337/8 in, least 0 in, most 42 in");
    CHECK(facts([] { return film.onto_long(at<short_piece>(-1_in)); }) ==
          "too small: a place on the piece, given -1 in, least 0 in, most 30 in");

    constexpr std::array longer = {at<long_piece>(4_in), at<long_piece>(9_in)};
    constexpr std::array shorter = {at<short_piece>(4_in), at<short_piece>(10_in)};
    constexpr std::array backward = {at<short_piece>(4_in), at<short_piece>(3_in)};
    constexpr std::array alone = {at<short_piece>(4_in)};
    constexpr std::array alike = {at<short_piece>(4_in), at<short_piece>(9_in)};
    CHECK(facts([&] { return listed_mapping<inch>(longer, shorter); }) ==
          "too small: a span of the long piece, given 5 in, least 6 in, index 1");
    CHECK(facts([&] { return listed_mapping<inch>(longer, backward); }) ==
          "too small: a span of the short piece, given -1 in, least 0 in");
    CHECK(facts([&] { return listed_mapping<inch>(longer, alone); }) ==
          "disagree: the number of marks, given 2, most 1");
    CHECK(facts([&] { return listed_mapping<inch>(longer, alike).mark_on_short(3); }) ==
          "too large: a mark of a mapping, given 3, least 0, most 2");
}
