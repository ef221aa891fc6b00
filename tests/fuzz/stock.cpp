// Lengths from any stock: refused with a typed error, or a plan that the independent check finds sound; small questions
// are answered by trying everything as well.
#include "../cloth/stock/reference.hpp"
#include "feed.hpp"
#include <turncloth/testing/stock_faults.hpp>

using namespace fuzzing;
using namespace turncloth::detail;

namespace {

std::int64_t measure(feed& bytes) {
    return bytes.one_in(32) ? bytes.ConsumeIntegral<std::int64_t>() : bytes.between(0, 60);
}

stock_problem any_problem(feed& bytes) {
    stock_problem p;
    p.aim = bytes.PickValueInArray({stock_aim::fewest_pieces, stock_aim::least_length, stock_aim::least_cost});
    p.loss_per_cut = bytes.ConsumeBool() ? 0 : measure(bytes) / 8;
    for (std::int64_t n = bytes.between(0, 3); n > 0; --n) {
        p.stock.push_back({bytes.one_in(24) ? measure(bytes) : bytes.between(20, 90), std::nullopt, measure(bytes)});
        if (bytes.one_in(3))
            p.stock.back().on_hand = bytes.between(0, 4);
    }
    for (std::int64_t n = bytes.between(0, 6); n > 0; --n)
        p.wanted.push_back({measure(bytes), bytes.one_in(8) ? bytes.between(0, 100'000) : bytes.between(1, 4)});
    return p;
}

bool is_small(const stock_problem& p) {
    std::int64_t pieces = 0;
    for (const stock_demand& d : p.wanted)
        pieces = d.count > 100 ? 100 : pieces + d.count;
    return pieces <= 6;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    const stock_problem problem = any_problem(bytes);
    std::vector<wanted_length<inch>> wanted;
    std::vector<stock_length<inch>> stock;
    for (const stock_demand& d : problem.wanted)
        wanted.push_back({{}, length_of<inch>(d.length), d.count});
    for (const stock_kind& k : problem.stock)
        stock.push_back({length_of<inch>(k.length), k.on_hand, k.cost});
    const cutting_rules<inch> rules{length_of<inch>(problem.loss_per_cut), problem.aim, 20'000};
    try {
        const auto plan = cut_from_stock(wanted, stock, rules);
        for (const std::string& wrong : stock_faults(plan, wanted, stock, rules))
            must(false, wrong.c_str());
        must(!plan.proved_best || plan.value == plan.bound, "a plan proved best is at its bound");
        if (is_small(problem)) {
            const auto least = stock_reference::least_value(problem);
            must(least && plan.bound <= *least && fraction(*least) <= plan.value,
                 "the least value lies from the bound to the plan's");
        }
    } catch (const stock_runs_out_error& refused) {
        must(!refused.proved() || !is_small(problem) || !stock_reference::least_value(problem),
             "stock is said to run out only where it does");
    } catch (const error&) {
    }
    return 0;
}
