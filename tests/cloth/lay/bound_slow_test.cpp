// Bounds against every small lay of a family, and against an integer program solved by GLPK.
#include "at_random.hpp"
#include "cloth/lay/instances.hpp"
#include <turncloth/cloth/lay/bound.hpp>
#include <turncloth/cloth/lay/check.hpp>
#include <turncloth/cloth/lay/solve.hpp>

#include <doctest/doctest.h>
#include <glpk.h>

#include <cstdint>
#include <memory>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using lay_test::between;
using lay_test::piece;
using lay_test::shortest_by_trial;

namespace {

/// Least length as a mixed integer program: of each two pieces one is left of, right of, nearer or farther than the
/// other.
double shortest_by_program(const std::vector<lay_piece>& pieces, std::int64_t width) {
    std::vector<lay_piece> each;
    double stacked = 0;
    for (const lay_piece& p : pieces)
        for (std::int64_t i = 0; i < p.quantity; ++i) {
            each.push_back(p);
            stacked += static_cast<double>(p.length);
        }
    const int n = static_cast<int>(each.size());
    const double W = static_cast<double>(width);
    const std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> lp(glp_create_prob(), &glp_delete_prob);
    const auto x = [](int i) { return 2 + 2 * i; };
    const auto y = [](int i) { return 3 + 2 * i; };
    glp_add_cols(lp.get(), 1 + 2 * n);
    glp_set_obj_dir(lp.get(), GLP_MIN);
    glp_set_obj_coef(lp.get(), 1, 1);
    glp_set_col_bnds(lp.get(), 1, GLP_DB, 0, stacked);
    const auto row = [&](std::vector<std::pair<int, double>> terms, double most) {
        std::vector<int> columns{0};
        std::vector<double> values{0};
        for (const auto& [column, value] : terms) {
            columns.push_back(column);
            values.push_back(value);
        }
        const int added = glp_add_rows(lp.get(), 1);
        glp_set_row_bnds(lp.get(), added, GLP_UP, 0, most);
        glp_set_mat_row(lp.get(), added, static_cast<int>(terms.size()), columns.data(), values.data());
    };
    for (int i = 0; i < n; ++i) {
        const lay_piece& p = each[static_cast<std::size_t>(i)];
        const double slack = W - static_cast<double>(p.width);
        glp_set_col_bnds(lp.get(), x(i), slack > 0 ? GLP_DB : GLP_FX, 0, slack);
        glp_set_col_bnds(lp.get(), y(i), GLP_DB, 0, stacked);
        row({{y(i), 1}, {1, -1}}, -static_cast<double>(p.length));
    }
    for (int i = 0; i < n; ++i)
        for (int j = i + 1; j < n; ++j) {
            const lay_piece& a = each[static_cast<std::size_t>(i)];
            const lay_piece& b = each[static_cast<std::size_t>(j)];
            const int side = glp_add_cols(lp.get(), 4);
            for (int k = 0; k < 4; ++k)
                glp_set_col_kind(lp.get(), side + k, GLP_BV);
            row({{x(i), 1}, {x(j), -1}, {side, W}}, W - static_cast<double>(a.width));
            row({{x(j), 1}, {x(i), -1}, {side + 1, W}}, W - static_cast<double>(b.width));
            row({{y(i), 1}, {y(j), -1}, {side + 2, stacked}}, stacked - static_cast<double>(a.length));
            row({{y(j), 1}, {y(i), -1}, {side + 3, stacked}}, stacked - static_cast<double>(b.length));
            row({{side, -1}, {side + 1, -1}, {side + 2, -1}, {side + 3, -1}}, -1);
        }
    glp_iocp how;
    glp_init_iocp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.presolve = GLP_ON;
    REQUIRE(glp_intopt(lp.get(), &how) == 0);
    return glp_mip_obj_val(lp.get());
}

} // namespace

TEST_CASE("no bound is above the shortest lay, on every list of up to four pieces of up to 4 x 3 on a cloth of 4") {
    lay_cloth cloth;
    cloth.width = 4;
    std::vector<lay_piece> kinds;
    for (std::int64_t w = 1; w <= 4; ++w)
        for (std::int64_t l = 1; l <= 3; ++l)
            for (const auto grain : {grain::fixed, grain::may_turn})
                if (l <= cloth.width)
                    kinds.push_back(piece(w, l, 1, grain));
    std::vector<lay_piece> list;
    std::size_t lays = 0;
    std::size_t proved = 0;
    const auto visit = [&](const auto& self, std::size_t from) -> void {
        if (!list.empty()) {
            const std::int64_t shortest = shortest_by_trial(list, cloth.width);
            const whole_lay found = shortest_lay(list, cloth);
            CHECK(found.bound <= shortest);
            CHECK(found.length == shortest);
            ++lays;
            proved += found.proved_best() ? 1U : 0U;
        }
        if (list.size() == 4)
            return;
        for (std::size_t k = from; k < kinds.size(); ++k) {
            list.push_back(kinds[k]);
            self(self, k);
            list.pop_back();
        }
    };
    visit(visit, 0);
    CHECK(lays > 20'000);
    CHECK(proved * 100 > lays * 95);
}

TEST_CASE("no bound is above the length of a lay that is there, on two million small lists") {
    at_random::seeded<lay_random> chance(21);
    while (chance.another_of(2'000'000)) {
        // Pieces cut from a rectangle with some left away: a lay of its length is there by construction.
        const std::int64_t width = between(chance, 2, 24), length = between(chance, 2, 24);
        auto pieces = lay_test::cut_up(chance, width, length, chance.below(10) + 1, chance.below(2) == 0);
        if (chance.below(2) == 0)
            pieces.resize(1 + chance.below(static_cast<std::uint32_t>(pieces.size())));
        for (lay_piece& p : pieces)
            if (chance.below(3) == 0)
                p.grain = grain::may_turn;
        lay_cloth cloth;
        cloth.width = width;
        if (detail::length_bound(detail::prepared(pieces, cloth)) * detail::prepared(pieces, cloth).scale_y > length)
            FAIL("a bound above " << length << " on a cloth of " << width);
    }
}

TEST_CASE("an integer program finds no shorter lays of five pieces") {
    at_random::seeded<lay_random> chance(22);
    while (chance.another_of(60)) {
        lay_cloth cloth;
        cloth.width = between(chance, 10, 60);
        std::vector<lay_piece> pieces;
        for (int i = 0; i < 5; ++i)
            pieces.push_back(piece(between(chance, cloth.width / 6, cloth.width * 2 / 3), between(chance, 5, 60)));
        const double shortest = shortest_by_program(pieces, cloth.width);
        const whole_lay found = shortest_lay(pieces, cloth);
        CHECK(faults_of(found, pieces, cloth).empty());
        CHECK(static_cast<double>(found.length) == doctest::Approx(shortest));
        CHECK(static_cast<double>(found.bound) <= shortest + 1e-6);
    }
}
