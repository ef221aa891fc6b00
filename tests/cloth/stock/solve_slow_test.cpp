// Lengths from stock against an integer program: every way to fill a piece of stock is a column, and GLPK (the GNU
// Linear Programming Kit) proves how many of each are the least. And very many small questions against trying
// everything.
#include "at_random.hpp"
#include "cloth/stock/reference.hpp"
#include <turncloth/cloth/stock/check.hpp>
#include <turncloth/cloth/stock/solve.hpp>

#include <doctest/doctest.h>
#include <glpk.h>

#include <algorithm>
#include <cstdint>
#include <memory>
#include <optional>
#include <random>
#include <vector>

using namespace turncloth;
using namespace turncloth::detail;
using stock_reference::roll;

namespace {

struct way {
    std::size_t kind;
    std::vector<int> pieces;
};

// Every filling of stock of this kind, the blade walked along it.
void ways(const stock_problem& p, std::size_t kind, std::size_t from, std::int64_t left, std::vector<int>& pieces,
          std::vector<way>& out) {
    if (from == p.wanted.size()) {
        out.push_back({kind, pieces});
        return;
    }
    const std::int64_t length = p.wanted[from].length;
    for (std::int64_t n = 0;; ++n) {
        pieces[from] = static_cast<int>(n);
        ways(p, kind, from + 1, left, pieces, out);
        if (n == p.wanted[from].count || left < length)
            break;
        left = std::max<std::int64_t>(0, left - length - p.loss_per_cut);
    }
    pieces[from] = 0;
}

// The least value by GLPK, or none if the stock does not supply the pieces.
std::optional<std::int64_t> by_integer_program(const stock_problem& p) {
    std::vector<way> all;
    std::vector<int> pieces(p.wanted.size(), 0);
    for (std::size_t k = 0; k < p.stock.size(); ++k)
        ways(p, k, 0, p.stock[k].length, pieces, all);

    const std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> program(glp_create_prob(), glp_delete_prob);
    glp_prob* const g = program.get();
    const int sizes = static_cast<int>(p.wanted.size()), kinds = static_cast<int>(p.stock.size());
    glp_add_rows(g, sizes + kinds);
    for (int i = 0; i < sizes; ++i)
        glp_set_row_bnds(g, i + 1, GLP_LO, static_cast<double>(p.wanted[static_cast<std::size_t>(i)].count), 0);
    for (int k = 0; k < kinds; ++k) {
        const auto hand = p.stock[static_cast<std::size_t>(k)].on_hand;
        glp_set_row_bnds(g, sizes + k + 1, hand ? GLP_UP : GLP_FR, 0, hand ? static_cast<double>(*hand) : 0.0);
    }
    glp_add_cols(g, static_cast<int>(all.size()));
    for (std::size_t c = 0; c < all.size(); ++c) {
        const int column = static_cast<int>(c) + 1;
        const stock_kind& kind = p.stock[all[c].kind];
        const std::int64_t cost =
            p.aim == stock_aim::fewest_pieces ? 1 : (p.aim == stock_aim::least_length ? kind.length : kind.cost);
        glp_set_obj_coef(g, column, static_cast<double>(cost));
        glp_set_col_kind(g, column, GLP_IV);
        glp_set_col_bnds(g, column, GLP_LO, 0, 0);
        std::vector<int> rows{0, sizes + static_cast<int>(all[c].kind) + 1};
        std::vector<double> entries{0, 1};
        for (int i = 0; i < sizes; ++i)
            if (const int n = all[c].pieces[static_cast<std::size_t>(i)]; n > 0) {
                rows.push_back(i + 1);
                entries.push_back(n);
            }
        glp_set_mat_col(g, column, static_cast<int>(rows.size()) - 1, rows.data(), entries.data());
    }
    glp_iocp how;
    glp_init_iocp(&how);
    how.presolve = GLP_ON;
    how.msg_lev = GLP_MSG_OFF;
    const int failed = glp_intopt(g, &how);
    if (failed == GLP_ENOPFS || (failed == 0 && glp_mip_status(g) == GLP_NOFEAS))
        return std::nullopt;
    REQUIRE(failed == 0);
    REQUIRE(glp_mip_status(g) == GLP_OPT);
    return static_cast<std::int64_t>(glp_mip_obj_val(g) + 0.5);
}

} // namespace

TEST_CASE("plans said to be best are as good as GLPK's, and no bound is above them") {
    at_random::seeded<std::mt19937> dice(41);
    glp_term_out(GLP_OFF);
    int proved = 0, supplied = 0;
    while (dice.another_of(400)) {
        stock_problem p;
        p.aim = static_cast<stock_aim>(roll(dice, 0, 2));
        p.loss_per_cut = roll(dice, 0, 2);
        for (std::int64_t k = roll(dice, 1, 3); k > 0; --k) {
            p.stock.push_back({roll(dice, 30, 60), std::nullopt, roll(dice, 3, 9)});
            if (roll(dice, 0, 2) == 0)
                p.stock.back().on_hand = roll(dice, 0, 6);
        }
        for (std::int64_t i = roll(dice, 2, 5); i > 0; --i)
            p.wanted.push_back({roll(dice, 8, 30), roll(dice, 1, 6)});
        const auto least = by_integer_program(p);
        const stock_plan plan = plan_stock(p);
        if (plan.runs_out) {
            CHECK(plan.runs_out->proved == !least.has_value());
            continue;
        }
        CHECK(faults_of(plan, p).empty());
        REQUIRE(least.has_value());
        ++supplied;
        proved += plan.proved_best ? 1 : 0;
        CHECK(plan.bound <= *least);
        if (plan.proved_best)
            CHECK(plan.value == *least);
    }
    CHECK(supplied > 300);
    CHECK(proved * 100 >= supplied * 99);
}

TEST_CASE("of very many small questions none has a bound above the least") {
    at_random::seeded<std::mt19937> dice(42);
    while (dice.another_of(1'000'000)) {
        const stock_problem p = stock_reference::random_problem(dice, 6, 3, 24);
        const auto least = stock_reference::least_value(p);
        const stock_plan plan = plan_stock(p, roll(dice, 0, 5000));
        const bool sound = plan.runs_out
                               ? !plan.runs_out->proved || !least
                               : least && plan.bound <= *least && plan.value >= *least && faults_of(plan, p).empty();
        REQUIRE(sound);
    }
}

TEST_CASE("500 pieces of some 250 lengths take no more stock than the bound and one") {
    at_random::sampler random(31);
    while (random.another_of(10)) {
        constexpr std::int64_t stock = 10'000, lengths = 260;
        const std::int64_t in_one = random.between(2, 9);
        std::vector<std::int64_t> sizes, counts(lengths, 1);
        for (std::int64_t i = 0; i < lengths; ++i)
            sizes.push_back(random.between(stock / (in_one + 4) + 1, std::min(stock, 2 * stock / in_one)));
        for (std::int64_t more = lengths; more < 500; ++more)
            ++counts[static_cast<std::size_t>(random.between(0, lengths - 1))];
        stock_problem p;
        p.stock = {{stock}};
        for (std::size_t i = 0; i < sizes.size(); ++i)
            p.wanted.push_back({sizes[i], counts[i]});
        const stock_plan plan = plan_stock(p);
        CHECK(faults_of(plan, p).empty());
        CHECK(plan.value <= plan.bound + 1);
    }
}
