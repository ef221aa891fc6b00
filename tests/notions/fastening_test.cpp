// Fasteners: what is published and what the trade does, at compile time; a button passed through a slit of paper, beside pi of 50
// digits, at random; laps and straps there and back; and what is refused.
#include "reference.hpp"
#include <turncloth/measure/read.hpp>
#include <turncloth/notions/fastening.hpp>

#include <boost/math/constants/constants.hpp>
#include <doctest/doctest.h>

using namespace turncloth;
using reference::facts;
using reference::message;

namespace {

// A button 1 in across and 1/4 in thick takes a buttonhole of 1 1/4 in: 1/8 in beyond the line of buttons toward the edge, 1 1/8 in
// the other way (common practice, told so in sewing lessons).
constexpr sewn_button<inch> coat{.across = 1_in, .thick = "1/4"_in};
static_assert(buttonhole_length(coat, "1/8"_in).value() == "1 1/4"_in);
// K. H. Watson, Textiles and Clothing, 1907 (published): for round buttons one and a quarter times their width. That is for a
// slit that gives: paper, which does not, asks for half the way round, more than half as much again.
constexpr sewn_button<inch> round_button{.across = 1_in, .ball = true};
static_assert(buttonhole_length(round_button, "1/64"_in).value() > "1 1/4"_in);
static_assert(buttonhole_length(round_button, "1/64"_in).value() == "1 37/64"_in); // pi / 2 = 1.5708; 37/64 = 0.5781
// Judged dressmaking (common practice): either lap goes on beyond the line by half a button and 1/4 in at least.
static_assert(stand_for(coat, "1/4"_in).value() == "3/4"_in);
static_assert(lap_of("3/4"_in).value() == "1 1/2"_in);
// Many add 1/8 in for thick cloth (common practice): 3/4, 1/8 and 1/8.
static_assert(buttonhole_length(sewn_button<inch>{"3/4"_in, "1/8"_in, false, "1/8"_in}, "1/16"_in).value() == 1_in);
static_assert(buttonhole_length(sewn_button<centimetre>{"1.8"_cm, "0.25"_cm}, "0.1"_cm).value() == "2.1"_cm);
static_assert(button_through("1 1/4"_in, "1/4"_in) == 1_in);

constexpr row<finished_edge, inch> three(at<finished_edge>(3_in), 4_in, 3);
constexpr buttoned_lap<inch> placket{.button = coat,
                                     .places = three,
                                     .edge = 14_in,
                                     .stand = "3/4"_in,
                                     .deep = "1 1/2"_in,
                                     .hole = "1 1/4"_in,
                                     .clear = "1/4"_in};

constexpr buttoned_lap<inch> squared() {
    buttoned_lap<inch> l = placket;
    l.runs = hole_runs::square_to_edge;
    l.shank = "1/4"_in;
    l.deep = "2 1/4"_in;
    return l;
}

constexpr touch_strap<inch> strap{.least = 10_in, .most = 13_in, .holds = 2_in, .end = "1/2"_in};
static_assert(hook_tape(strap).value() == 2_in);
static_assert(loop_tape(strap).value() == 5_in); // 13 less 10, and 2
static_assert(strap_round(strap).value() == "15 1/2"_in);
static_assert(tightest_of(13_in, 2_in, 5_in) == 10_in);

} // namespace

TEST_CASE("buttonholes lie along an edge or square to it, clear of its fold and inside its hem") {
    // By hand: half of 1 1/4 before and behind 3, 7 and 11 in, on the line 3/4 in from the edge.
    const auto along = holes_of(placket);
    REQUIRE(along.size() == 3);
    CHECK(along[0] == buttonhole<inch>{"2 3/8"_in, "3 5/8"_in, "3/4"_in, "3/4"_in});
    CHECK(along[2] == buttonhole<inch>{"10 3/8"_in, "11 5/8"_in, "3/4"_in, "3/4"_in});
    // Square to it, the published way: from 1/8 in beyond the line, which lies 3/4 in from the edge, to 1 1/8 in the other way.
    const auto square = holes_of(squared());
    CHECK(square[1] == buttonhole<inch>{7_in, 7_in, "5/8"_in, "1 7/8"_in});
    const auto under = interfacing_under(placket, "1/2"_in);
    CHECK(under.width.value() == 1_in);
    CHECK(under.length_.value() == "10 1/4"_in); // from 2 3/8 to 11 5/8, and twice 1/2
    CHECK((under.begins == "1 7/8"_in && under.from == "1/4"_in));
    const auto across = interfacing_under(squared(), "3/8"_in);
    CHECK(across.width.value() == 2_in);
    CHECK(across.length_.value() == "8 3/4"_in);
}

TEST_CASE("a button just passes: a hole is half of what a strip of paper takes round it") {
    const reference::real pi = boost::math::constants::pi<reference::real>();
    reference::sampler random(941);
    while (random.another_of(3'000)) {
        const sewn_button<inch> flat{random.inches(2), random.inches(1) / 4, false, random.inches(1) / 8};
        const length<inch> step = length_of<inch>({1, random.between(1, 64)});
        const figure<inch> hole = buttonhole_length(flat, step);
        // A strip over both faces and round both rims.
        const reference::real half = (2 * reference::exact(flat.across) + 2 * reference::exact(flat.thick)) / 2;
        CHECK(reference::exact(hole.value()) >= half + reference::exact(flat.ease));
        CHECK(reference::exact(hole.value() - step) < half + reference::exact(flat.ease));
        CHECK(is_whole(ratio_of(hole.value(), step)));
        CHECK(button_through(flat.across + flat.thick, flat.thick) == flat.across);
        CHECK(button_through(hole.value() - flat.ease, flat.thick) >= flat.across);

        const sewn_button<inch> ball{.across = flat.across, .ball = true, .ease = flat.ease};
        const length<inch> slit = buttonhole_length(ball, step).value();
        const reference::real needed = pi * reference::exact(ball.across) / 2 + reference::exact(ball.ease);
        CHECK(reference::exact(slit) >= needed);
        CHECK(reference::exact(slit - step) < needed);

        // Worn on a lap that is just deep enough it is taken, and one graduation shorter it is not.
        for (const sewn_button<inch>& b : {flat, ball}) {
            const length<inch> long_enough = buttonhole_length(b, step).value();
            const length<inch> stand = stand_for(b, step).value();
            buttoned_lap<inch> l{.button = b,
                                 .places = {at<finished_edge>(long_enough / 2 + step), long_enough + step, 3},
                                 .edge = long_enough * 3 + step * 4,
                                 .stand = stand,
                                 .deep = lap_of(stand).value(),
                                 .hole = long_enough,
                                 .clear = step};
            const auto holes = holes_of(l);
            CHECK(holes.size() == 3);
            CHECK(holes[0].begins == step);
            CHECK(holes[1].begins - holes[0].ends == step);
            CHECK(l.edge - holes[2].ends == step);
            CHECK(holes[0].from == b.across / 2 + step); // the button's rim stays that far inside
            l.hole = long_enough - step;
            if (l.hole > length<inch>())
                CHECK_THROWS_AS(holes_of(l), fastening_error);
        }
    }
}

TEST_CASE("at every setting the hook tape of a strap lies on loop tape, and the strap ends on itself") {
    reference::sampler random(942);
    while (random.another_of(3'000)) {
        const length<inch> holds = random.inches(3), end = random.inches(1) / 2, taken = random.inches(4);
        const length<inch> least = taken + holds + end + random.inches(6);
        const touch_strap<inch> s{.least = least, .most = least + taken, .holds = holds, .end = end};
        const length<inch> hook = hook_tape(s).value(), loop = loop_tape(s).value(),
                           strap_long = strap_round(s).value();
        CHECK(tightest_of(s.most, hook, loop) == s.least);
        // Hook tape ends `end` before the strap's free end; closed round so much, that end lies so much less along the strap from
        // its other end. The loop tape begins where the hook tape's beginning comes to lie at the tightest.
        const length<inch> hook_from = strap_long - end - hook, hook_to = strap_long - end;
        for (const length<inch>& round : {s.least, (s.least + s.most) / 2, s.most}) {
            const length<inch> lies_from = hook_from - round, lies_to = hook_to - round; // where it comes to lie
            CHECK(lies_from >= 0_in);
            CHECK(lies_to <= loop);             // on loop tape that begins with the strap
            CHECK(strap_long - round <= round); // once round, and not on itself again
        }
        CHECK(hook_to - s.least == loop); // none is longer than it must be
    }
}

TEST_CASE("a hole at a fold, too short or too near, snaps that overlap and straps that do not reach are refused") {
    const auto with = [](auto change) {
        buttoned_lap<inch> l = placket;
        change(l);
        return [l] { return holes_of(l); };
    };
    const auto short_hole = with([](auto& l) { l.hole = "1 1/8"_in; });
    CHECK(message<fastening_error>(short_hole) ==
          "a buttonhole of 1 1/8 in is too short for its button, which is 1 in across and 1/4 in thick");
    CHECK(facts<fastening_error>(short_hole) == "too small: the length of a buttonhole, given 9/8 in, least 5/4 in");
    const auto ball = with([](auto& l) { l.button = round_button; });
    CHECK(message<fastening_error>(ball) == "a buttonhole of 1 1/4 in is too short for a ball 1 in across");
    CHECK(facts<fastening_error>(ball) ==
          "too small: the length of a buttonhole, given 5/4 in, least 13/8 in"); // 1.571
    CHECK(message<fastening_error>(with([](auto& l) { l.stand = 0_in; })) ==
          "a buttonhole would begin 0 in from its folded edge, and cut that fold");
    CHECK(message<fastening_error>([] {
              buttoned_lap<inch> l = squared();
              l.stand = "1/16"_in;
              holes_of(l);
          }) == "a buttonhole would begin -1/16 in from its folded edge, and cut that fold");
    CHECK(message<fastening_error>(with([](auto& l) { l.stand = "1/8"_in; })) ==
          "a buttonhole 1/8 in from its folded edge tears out: 1/4 in is to stay clear");
    CHECK(facts<fastening_error>(with([](auto& l) { l.stand = "1/8"_in; })) ==
          "too small: where a buttonhole begins, from its edge, given 1/8 in, least 1/4 in");
    const auto shallow = with([](auto& l) { l.deep = "7/8"_in; });
    CHECK(message<fastening_error>(shallow) ==
          "a buttonhole reaches 3/4 in from its edge and does not stay 1/4 in inside its hem, which is 7/8 in deep");
    CHECK(facts<fastening_error>(shallow) ==
          "no room: where a buttonhole ends, from its edge, given 3/4 in, most 5/8 in");
    CHECK(message<fastening_error>(with([](auto& l) { l.edge = "11 3/4"_in; })) ==
          "the last buttonhole, 1 1/4 in along the edge, leaves 1/8 in at its end: 1/4 in is to stay clear");
    CHECK(message<fastening_error>(with([](auto& l) {
              l.places = {at<finished_edge>("1/2"_in), 4_in, 3};
          })) == "the first buttonhole, 1 1/4 in along the edge, leaves -1/8 in at its end: 1/4 in is to stay clear");
    const auto close = with([](auto& l) { l.places = {at<finished_edge>(3_in), "1 3/8"_in, 3}; });
    CHECK(message<fastening_error>(close) ==
          "a buttonhole every 1 3/8 in leaves less than 1/4 in between two: each takes 1 1/4 in");
    CHECK(facts<fastening_error>(close) ==
          "no room: the step between fasteners, given 11/8 in, least 3/2 in, where buttonhole");
    CHECK(message<fastening_error>([] { interfacing_under(placket, 1_in); }) ==
          "interfacing that goes 1 in beyond its buttonholes leaves the hem that it lies in: there is 3/4 in");
    CHECK(message<fastening_error>([] { button_through("1/4"_in, "1/4"_in); }) ==
          "a buttonhole of 1/4 in lets no button 1/4 in thick through");
    CHECK(facts<fastening_error>([] { stand_for(sewn_button<inch>{}, 0_in); }) ==
          "too small: the width of a button, given 0 in, least 0 in");
    CHECK(facts<fastening_error>([] { lap_of(0_in); }) == "too small: the stand of buttons, given 0 in, least 0 in");

    // Snaps of 1/2 in, 3/8 in from the edge of a hem 3/4 in deep, leave 1/8 in either side.
    const snapped_lap<inch> snaps{
        .across = "1/2"_in, .places = three, .edge = 14_in, .stand = "3/8"_in, .deep = "3/4"_in, .clear = "1/8"_in};
    CHECK_NOTHROW(require_snaps(snaps));
    const auto tight = [&](auto change) {
        snapped_lap<inch> s = snaps;
        change(s);
        return [s] { require_snaps(s); };
    };
    CHECK(message<fastening_error>(tight([](auto& s) { s.deep = "11/16"_in; })) ==
          "a snap 1/2 in across, 3/8 in from its edge in a hem 11/16 in deep, leaves 1/16 in beside it: 1/8 in is to "
          "stay "
          "clear");
    CHECK(
        message<fastening_error>(tight([](auto& s) { s.stand = "5/16"_in; })) ==
        "a snap 1/2 in across, 5/16 in from its edge in a hem 3/4 in deep, leaves 1/16 in beside it: 1/8 in is to stay "
        "clear");
    CHECK(message<fastening_error>(tight([](auto& s) {
              s.places = {at<finished_edge>(1_in), "9/16"_in, 3};
          })) == "a snap every 9/16 in leaves less than 1/8 in between two: each takes 1/2 in");
    CHECK(facts<fastening_error>(tight([](auto& s) { s.across = 0_in; })) ==
          "too small: the width of a snap, given 0 in, least 0 in");

    CHECK(message<fastening_error>([] { loop_tape(touch_strap<inch>{.least = 5_in, .most = 9_in, .holds = 2_in}); }) ==
          "a strap that closes round 5 in as well as round 9 in would lie on itself: it laps 6 in at the tightest");
    CHECK(message<fastening_error>([] {
              strap_round(touch_strap<inch>{.least = 9_in, .most = 5_in, .holds = 2_in});
          }) == "a strap goes round from 9 in to 5 in, which is less");
    CHECK(message<fastening_error>([] { tightest_of(13_in, 2_in, 1_in); }) ==
          "loop tape of 1 in does not cover hook tape of 2 in: what is not covered scratches, and fills with fluff");
    CHECK(facts<fastening_error>([] { hook_tape(touch_strap<inch>{.least = 5_in, .most = 9_in, .holds = 0_in}); }) ==
          "too small: the hook tape of a strap, given 0 in, least 0 in");
}
