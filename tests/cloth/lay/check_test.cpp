// The checker of lays refuses each kind of bad lay, and only those.
#include "cloth/lay/instances.hpp"
#include <turncloth/cloth/lay/check.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using lay_test::piece;

namespace {

struct trial {
    std::vector<lay_piece> pieces;
    lay_cloth cloth;
    whole_lay found;

    bool has(lay_fault_kind kind) const {
        const auto faults = faults_of(found, pieces, cloth);
        return std::any_of(faults.begin(), faults.end(), [&](const lay_fault& f) { return f.kind == kind; });
    }
    bool sound() const { return faults_of(found, pieces, cloth).empty(); }
};

lay_place at(std::size_t which, std::int64_t x, std::int64_t y, std::int64_t width, std::int64_t length) {
    lay_place place;
    place.piece = which;
    place.x = x;
    place.y = y;
    place.width = width;
    place.length = length;
    return place;
}

/// Two pieces of 4 x 3 and one of 8 x 2 on a cloth of 8: a lay of 5 without fault.
trial good() {
    trial t;
    t.pieces = {piece(4, 3, 2), piece(8, 2)};
    t.cloth.width = 8;
    t.found.places = {at(0, 0, 0, 4, 3), at(0, 4, 0, 4, 3), at(1, 0, 3, 8, 2)};
    t.found.length = t.found.bound = 5;
    return t;
}

/// Four pieces round a fifth on a cloth of 8.
trial carton() {
    trial t;
    t.pieces = {piece(5, 3, 2), piece(3, 5, 2), piece(2, 2)};
    t.cloth.width = 8;
    t.found.places = {at(0, 0, 0, 5, 3), at(1, 5, 0, 3, 5), at(0, 3, 5, 5, 3), at(1, 0, 3, 3, 5), at(2, 3, 3, 2, 2)};
    t.found.length = t.found.bound = 8;
    return t;
}

} // namespace

TEST_CASE("good lays are passed") {
    CHECK(good().sound());
    CHECK(carton().sound());
    trial cut = good();
    cut.cloth.cutting = cutting::strips;
    cut.found.cuts = {{cut_direction::across, 3, {0, 8, 0, 5}}, {cut_direction::along, 4, {0, 8, 0, 3}, {1, true}}};
    CHECK(cut.sound());
    cut.cloth.cutting = cutting::edge_to_edge;
    CHECK(cut.sound());
}

TEST_CASE("pieces that are missing, doubled, unknown or of another size are found") {
    trial t = good();
    t.found.places.pop_back();
    CHECK(t.has(lay_fault_kind::wrong_count));
    t = good();
    t.found.places.push_back(t.found.places.back());
    CHECK(t.has(lay_fault_kind::wrong_count));
    t = good();
    t.found.places[2].piece = 2;
    CHECK(t.has(lay_fault_kind::no_such_piece));
    t = good();
    t.found.places[0].width = 3;
    CHECK(t.has(lay_fault_kind::wrong_size));
}

TEST_CASE("a turn against the grain is found, an allowed one is passed") {
    trial t;
    t.pieces = {piece(3, 4)};
    t.cloth.width = 8;
    t.found.places = {at(0, 0, 0, 4, 3)};
    t.found.places[0].turned = true;
    t.found.length = 3;
    CHECK(t.has(lay_fault_kind::turned_against_grain));
    t.pieces[0].grain = grain::may_turn;
    CHECK(t.sound());
    t.found.places[0].turned = false;
    CHECK(t.has(lay_fault_kind::wrong_size));
}

TEST_CASE("pieces over each edge of the cloth are found") {
    for (const auto& [x, y] : {std::pair(-1, 0), std::pair(5, 0), std::pair(0, -1), std::pair(0, 3)}) {
        trial t = good();
        t.found.places[0].x = x;
        t.found.places[0].y = y;
        CHECK(t.has(lay_fault_kind::off_the_cloth));
    }
}

TEST_CASE("overlaps are found, also of one piece inside another, and of equals") {
    trial t = good();
    t.found.places[1].x = 3;
    CHECK(t.has(lay_fault_kind::overlap));
    t = good();
    t.found.places[1] = t.found.places[0];
    CHECK(t.has(lay_fault_kind::overlap));
    t = carton();
    t.found.places[4].x = 1;
    t.found.places[4].y = 1;
    CHECK(t.has(lay_fault_kind::overlap));
    t = good();
    t.found.places[2].y = 2;
    CHECK(t.has(lay_fault_kind::overlap));
}

TEST_CASE("neighbours nearer than the gap are found, across, along and cornerwise") {
    trial t = good();
    t.cloth.gap = 1;
    CHECK(t.has(lay_fault_kind::too_close));
    trial two;
    two.pieces = {piece(3, 3, 2)};
    two.cloth.width = 10;
    two.cloth.gap = 2;
    const auto apart = [&](std::int64_t x, std::int64_t y) {
        two.found.places = {at(0, 0, 0, 3, 3), at(0, x, y, 3, 3)};
        two.found.length = y + 3;
        return two.sound();
    };
    CHECK(apart(5, 0));
    CHECK_FALSE(apart(4, 0));
    CHECK(apart(0, 5));
    CHECK_FALSE(apart(0, 4));
    CHECK_FALSE(apart(4, 4));
    CHECK(apart(5, 4));
}

TEST_CASE("a piece off the repeat is found") {
    trial t = good();
    t.cloth.repeat_along = 3;
    CHECK(t.sound());
    t.pieces[1].match_along = 1;
    CHECK(t.has(lay_fault_kind::off_the_repeat));
    t = good();
    t.cloth.repeat_across = 3;
    CHECK(t.has(lay_fault_kind::off_the_repeat));
    t.cloth.repeat_across = 4;
    CHECK(t.sound());
}

TEST_CASE("a match counts round the repeat, from however far below or above nothing it is given") {
    trial t;
    t.pieces = {piece(4, 3)};
    t.cloth = {.width = 8, .repeat_across = 2, .repeat_along = 7};
    t.found.places = {at(0, 2, 5, 4, 3)};
    t.found.length = 8;
    for (const std::int64_t turns : {-2, -1, 0, 1, 2}) {
        t.pieces[0].match_across = 2 * turns;
        t.pieces[0].match_along = 5 + 7 * turns;
        CHECK(t.sound());
        t.pieces[0].match_along += 1;
        CHECK(t.has(lay_fault_kind::off_the_repeat));
    }
    t.pieces[0].match_across = std::numeric_limits<std::int64_t>::min();
    t.pieces[0].match_along = std::numeric_limits<std::int64_t>::min();
    CHECK(t.has(lay_fault_kind::off_the_repeat));
    t.pieces[0].match_along += 6; // 2^63 = (2^3)^21 is 1 mod 7, so -2^63 is 6, and this is 5
    CHECK(t.sound());
}

TEST_CASE("a piece away from the edge it must lie against is found") {
    trial t = good();
    t.pieces[1].at_edge = true;
    CHECK(t.sound());
    t.pieces[0].at_edge = true;
    CHECK(t.has(lay_fault_kind::off_the_edge));
}

TEST_CASE("a length that is not where the last piece ends is found, and a bound above it") {
    trial t = good();
    t.found.length = 6;
    CHECK(t.has(lay_fault_kind::wrong_length));
    t = good();
    t.found.bound = 6;
    CHECK(t.has(lay_fault_kind::bound_above_length));
}

TEST_CASE("a lay that no cut from edge to edge can part is found") {
    trial t = carton();
    t.cloth.cutting = cutting::edge_to_edge;
    CHECK(t.has(lay_fault_kind::not_edge_to_edge));
    t.cloth.cutting = cutting::strips;
    CHECK(t.has(lay_fault_kind::not_in_strips));
}

TEST_CASE("a stack inside a strip is not a lay in strips") {
    trial t;
    t.pieces = {piece(4, 4), piece(4, 2, 2)};
    t.cloth.width = 8;
    t.found.places = {at(0, 0, 0, 4, 4), at(1, 4, 0, 4, 2), at(1, 4, 2, 4, 2)};
    t.found.length = t.found.bound = 4;
    t.found.cuts = {{cut_direction::along, 4, {0, 8, 0, 4}}, {cut_direction::across, 2, {4, 8, 0, 4}, {1, false}}};
    t.cloth.cutting = cutting::edge_to_edge;
    CHECK(t.sound());
    t.cloth.cutting = cutting::strips;
    CHECK(t.has(lay_fault_kind::not_in_strips));
}

TEST_CASE("cuts that miss a piece, stop short, or come too early are found") {
    trial t = good();
    t.cloth.cutting = cutting::edge_to_edge;
    const std::vector<lay_cut> right{{cut_direction::across, 3, {0, 8, 0, 5}},
                                     {cut_direction::along, 4, {0, 8, 0, 3}, {1, true}}};
    t.found.cuts = right;
    CHECK(t.sound());
    t.found.cuts = {right[0]};
    CHECK(t.has(lay_fault_kind::wrong_cuts));
    t.found.cuts = {{cut_direction::across, 3, {0, 7, 0, 5}}, right[1]};
    CHECK(t.has(lay_fault_kind::wrong_cuts));
    t.found.cuts = {right[1], right[0]};
    CHECK(t.has(lay_fault_kind::wrong_cuts));
    t.found.cuts = {right[0], {cut_direction::along, 5, {0, 8, 0, 3}, {1, true}}};
    CHECK(t.has(lay_fault_kind::wrong_cuts));
    t.found.cuts = {right[0], {cut_direction::along, 4, {0, 8, 0, 3}, {1, false}}}; // it says what cut 1 left
    CHECK(t.has(lay_fault_kind::wrong_cuts));
    t.found.cuts = {right[0], {cut_direction::along, 8, {0, 8, 0, 3}, {1, true}}}; // along its own edge
    CHECK(t.has(lay_fault_kind::wrong_cuts));
}

TEST_CASE("a fault names the piece to blame by number or by name, and no piece where none is") {
    trial t = good();
    t.found.length = 6;
    const auto length = faults_of(t.found, t.pieces, t.cloth);
    REQUIRE(length.size() == 1);
    CHECK_FALSE(length[0].piece.has_value());
    CHECK(length[0].what() == "the length is not where the last piece ends");
    CHECK(length[0].what("flap") == "the length is not where the last piece ends");
    t = good();
    t.found.places[2].width = 3;
    const auto size = faults_of(t.found, t.pieces, t.cloth);
    REQUIRE(size.size() == 1);
    CHECK(size[0].what() == "piece 2 is laid in another size");
    CHECK(size[0].what("flap") == "flap is laid in another size");
}
