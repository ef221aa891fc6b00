// Lays round flaws and round pieces that stay, against trying every place.
#include "at_random.hpp"
#include "cloth/lay/instances.hpp"
#include <turncloth/cloth/lay/check.hpp>
#include <turncloth/cloth/lay/solve.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using lay_test::between, lay_test::piece;

namespace {

struct job {
    std::vector<lay_piece> pieces;
    lay_cloth cloth;
};

/// Every place for every piece, one after another, with nothing known of searches.
class every_place {
public:
    explicit every_place(const job& of) : job_(of) {
        for (const lay_piece& p : of.pieces)
            for (std::int64_t n = 0; n < p.quantity; ++n)
                (p.stays ? first_ : rest_).push_back(&p);
        first_.insert(first_.end(), rest_.begin(), rest_.end());
    }

    std::int64_t shortest() {
        for (std::int64_t length = 0;; ++length)
            if (lay_from(0, length))
                return length;
    }

private:
    struct box {
        std::int64_t left, right, near, far;
    };

    bool may_lie(const box& b) const {
        const auto apart = [&](const box& other) {
            const std::int64_t g = job_.cloth.gap;
            return b.right + g <= other.left || other.right + g <= b.left || b.far + g <= other.near ||
                   other.far + g <= b.near;
        };
        return std::all_of(laid_.begin(), laid_.end(), apart) &&
               std::all_of(job_.cloth.flaws.begin(), job_.cloth.flaws.end(), [&](const lay_part& f) {
                   return apart({f.left, f.right, f.near, f.far});
               });
    }

    bool on_repeat(std::int64_t at, std::int64_t match, std::int64_t repeat) const {
        return repeat == 0 || (at - match) % repeat == 0;
    }

    bool lay_from(std::size_t i, std::int64_t length) {
        if (i == first_.size())
            return true;
        const lay_piece& p = *first_[i];
        for (const bool turned : {false, true}) {
            if (turned && p.grain == grain::fixed)
                continue;
            const std::int64_t w = turned ? p.length : p.width, l = turned ? p.width : p.length;
            for (std::int64_t x = 0; x + w <= job_.cloth.width; ++x)
                for (std::int64_t y = 0; y + l <= length; ++y) {
                    if (p.stays && (p.stays->x != x || p.stays->y != y || p.stays->turned != turned))
                        continue;
                    if ((p.at_edge && x != 0) || !on_repeat(x, p.match_across, job_.cloth.repeat_across) ||
                        !on_repeat(y, p.match_along, job_.cloth.repeat_along) || !may_lie({x, x + w, y, y + l}))
                        continue;
                    laid_.push_back({x, x + w, y, y + l});
                    const bool all = lay_from(i + 1, length);
                    laid_.pop_back();
                    if (all)
                        return true;
                }
        }
        return false;
    }

    const job& job_;
    std::vector<const lay_piece*> first_, rest_;
    std::vector<box> laid_;
};

lay_part part(lay_random& chance, std::int64_t width) {
    const std::int64_t left = between(chance, -1, width - 1), near = between(chance, -1, 7);
    return {left, left + between(chance, 1, 3), near, near + between(chance, 1, 3)};
}

bool meet(const lay_part& a, const lay_part& b, std::int64_t gap) {
    return a.left < b.right + gap && b.left < a.right + gap && a.near < b.far + gap && b.near < a.far + gap;
}

/// A piece that stays, where there is room for one.
void add_staying(lay_random& chance, job& j) {
    lay_piece p = piece(between(chance, 1, 3), between(chance, 1, 3));
    p.stays = {between(chance, 0, j.cloth.width - p.width), between(chance, 0, 5), false};
    const lay_part where{p.stays->x, p.stays->x + p.width, p.stays->y, p.stays->y + p.length};
    if (std::none_of(j.cloth.flaws.begin(), j.cloth.flaws.end(),
                     [&](const lay_part& f) { return meet(f, where, j.cloth.gap); }))
        j.pieces.push_back(p);
}

job small_job(lay_random& chance) {
    job j;
    j.cloth.width = between(chance, 3, 6);
    j.cloth.gap = chance.below(4) == 0 ? 1 : 0;
    for (std::uint32_t n = 1 + chance.below(3); n > 0; --n)
        j.cloth.flaws.push_back(part(chance, j.cloth.width));
    if (chance.below(3) == 0)
        add_staying(chance, j);
    for (std::uint32_t n = 1 + chance.below(3); n > 0; --n) {
        j.pieces.push_back(piece(between(chance, 1, std::min<std::int64_t>(4, j.cloth.width)), between(chance, 1, 3),
                                 1 + chance.below(2), chance.below(2) == 0 ? grain::fixed : grain::may_turn));
        if (chance.below(8) == 0) {
            j.pieces.back().at_edge = true;
            j.pieces.back().grain = grain::fixed;
        }
    }
    return j;
}

} // namespace

TEST_CASE("small lays round flaws and pieces that stay are as short as trying every place makes them, and proved") {
    at_random::seeded<lay_random> chance(31);
    while (chance.another_of(400)) {
        const job j = small_job(chance);
        const whole_lay found = shortest_lay(j.pieces, j.cloth);
        for (const lay_fault& fault : faults_of(found, j.pieces, j.cloth))
            FAIL_CHECK(fault.what());
        CHECK(found.length == every_place(j).shortest());
        CHECK(found.proved_best());
    }
}

TEST_CASE("with a repeat to match, lays round flaws are as short as trying every place makes them") {
    at_random::seeded<lay_random> chance(32);
    while (chance.another_of(200)) {
        job j = small_job(chance);
        j.cloth.repeat_along = between(chance, 2, 3);
        std::erase_if(j.pieces, [](const lay_piece& p) { return p.stays.has_value(); });
        for (lay_piece& p : j.pieces) {
            p.grain = grain::fixed;
            p.match_along = between(chance, 0, 1);
        }
        const whole_lay found = shortest_lay(j.pieces, j.cloth);
        for (const lay_fault& fault : faults_of(found, j.pieces, j.cloth))
            FAIL_CHECK(fault.what());
        CHECK(found.length == every_place(j).shortest());
    }
}

TEST_CASE("without searching further, the first lay round flaws is sound, of few pieces and of thousands") {
    at_random::seeded<lay_random> chance(33);
    while (chance.another_of(300)) {
        job j = small_job(chance);
        j.cloth.width = 60;
        for (lay_piece& p : j.pieces)
            if (!p.stays && !p.at_edge)
                p.quantity = between(chance, 1, chance.below(100) == 0 ? 4'000 : 40);
        const whole_lay found = shortest_lay(j.pieces, j.cloth, {.steps = 2'000});
        for (const lay_fault& fault : faults_of(found, j.pieces, j.cloth))
            FAIL_CHECK(fault.what());
        CHECK(found.bound <= found.length);
    }
}

TEST_CASE("pieces go beside a hole, and a lay is shorter than beyond it") {
    // A hole of 4 x 4 in the middle of 20: two of 8 x 10 at its sides, and one of 20 x 2 beyond.
    const std::vector<lay_piece> pieces{piece(8, 10, 2), piece(20, 2)};
    lay_cloth cloth;
    cloth.width = 20;
    cloth.flaws = {{8, 12, 3, 7}};
    const whole_lay found = shortest_lay(pieces, cloth);
    CHECK(found.length == 12);
    CHECK(found.proved_best());
}

TEST_CASE("where only pieces that stay are laid, the lay ends with the last of them") {
    std::vector<lay_piece> pieces{piece(4, 3), piece(2, 5)};
    pieces[0].stays = {3, 2, false};
    pieces[1].stays = {0, 4, true};
    pieces[1].grain = grain::may_turn;
    lay_cloth cloth;
    cloth.width = 8;
    cloth.gap = 1;
    pieces[1].stays = {0, 6, true};
    const whole_lay found = shortest_lay(pieces, cloth);
    CHECK(found.length == 8);
    CHECK(found.bound == 8);
    CHECK(faults_of(found, pieces, cloth).empty());
}

TEST_CASE("the checker finds a piece on a flaw, one nearer to it than the gap, and one that did not stay") {
    std::vector<lay_piece> pieces{piece(4, 3)};
    lay_cloth cloth;
    cloth.width = 10;
    cloth.gap = 1;
    cloth.flaws = {{5, 7, 0, 2}};
    whole_lay found = shortest_lay(pieces, cloth);
    CHECK(faults_of(found, pieces, cloth).empty());
    const auto kind_at = [&](std::int64_t x) {
        found.places[0].x = x;
        const auto faults = faults_of(found, pieces, cloth);
        REQUIRE(faults.size() == 1);
        CHECK(faults[0].piece == 0);
        return faults[0].kind;
    };
    CHECK(kind_at(2) == lay_fault_kind::on_a_flaw);
    CHECK(kind_at(6) == lay_fault_kind::on_a_flaw);
    CHECK(kind_at(1) == lay_fault_kind::near_a_flaw);
    cloth.flaws.clear();
    pieces[0].stays = {5, 0, false};
    CHECK(kind_at(4) == lay_fault_kind::moved);
    found.places[0].x = 5;
    CHECK(faults_of(found, pieces, cloth).empty());
}

TEST_CASE("as many pieces as there is room for go on a length with a flaw") {
    // Of 6 x 6 with the middle 2 x 2 spoilt, eight of 2 x 2 are left.
    const std::vector<lay_piece> pieces{piece(2, 2, 12)};
    lay_cloth cloth;
    cloth.width = 6;
    cloth.flaws = {{2, 4, 2, 4}};
    const whole_lay found = fullest_lay(pieces, cloth, 6);
    CHECK(found.places.size() == 8);
    CHECK(found.length == 6);
}
