// fraction against boost::rational<std::int64_t>, GMP's mpq_class and double: the same inputs, the same loops.
//
// Ruler fractions have denominators 1, 2, 4, ... 64 and go up to 100; awkward ones have denominators up to 1000; mixed
// ones are of either kind. Each pass applies one operation to 4096 pairs; `chain` adds 4096 numbers one after another, so
// that each addition waits for the one before, and `total` and `graduated_total` add the same with one result at the end.
// Every line of another type ends in `times_fraction`: how many times as long as `fraction` it took.
#include <turncloth/measure/fraction.hpp>
#include <turncloth/measure/total.hpp>

#include <benchmark/benchmark.h>
#include <boost/rational.hpp>
#include <gmpxx.h>

#include <cstdint>
#include <ctime>
#include <map>
#include <random>
#include <string>
#include <type_traits>
#include <vector>

namespace {

using turncloth::fraction;
using boost_rational = boost::rational<std::int64_t>;

constexpr std::size_t pairs = 4096;

struct ruler {
    static constexpr const char* name = "ruler";
    static std::int64_t denominator(std::mt19937& random) { return std::int64_t{1} << random() % 7; }
};
struct awkward {
    static constexpr const char* name = "awkward";
    static std::int64_t denominator(std::mt19937& random) { return 1 + static_cast<std::int64_t>(random() % 1000); }
};

struct mixed {
    static constexpr const char* name = "mixed";
    static std::int64_t denominator(std::mt19937& random) {
        return random() % 2 == 0 ? ruler::denominator(random) : awkward::denominator(random);
    }
};

template <class Number>
Number quotient(std::int64_t over, std::int64_t under) {
    if constexpr (std::is_same_v<Number, double>) {
        return static_cast<double>(over) / static_cast<double>(under);
    } else if constexpr (std::is_same_v<Number, mpq_class>) {
        mpq_class q(over, under);
        q.canonicalize();
        return q;
    } else {
        return Number(over, under);
    }
}

/// The same sequence for every type: positive, up to 100.
template <class Number, class Kind>
std::vector<Number> numbers(unsigned seed) {
    std::mt19937 random(seed);
    std::vector<Number> all;
    for (std::size_t i = 0; i < pairs; ++i) {
        const std::int64_t under = Kind::denominator(random);
        all.push_back(quotient<Number>(1 + static_cast<std::int64_t>(random() % 100) * under / 2, under));
    }
    return all;
}

struct add {
    static constexpr const char* name = "add";
    template <class Number>
    static void apply(Number& result, const Number& a, const Number& b) {
        result = a + b;
    }
};
struct subtract {
    static constexpr const char* name = "subtract";
    template <class Number>
    static void apply(Number& result, const Number& a, const Number& b) {
        result = a - b;
    }
};
struct multiply {
    static constexpr const char* name = "multiply";
    template <class Number>
    static void apply(Number& result, const Number& a, const Number& b) {
        result = a * b;
    }
};
struct compare {
    static constexpr const char* name = "compare";
    template <class Number>
    static void apply(bool& result, const Number& a, const Number& b) {
        result = a < b;
    }
};
struct divide {
    static constexpr const char* name = "divide";
    template <class Number>
    static void apply(Number& result, const Number& a, const Number& b) {
        result = a / b;
    }
};

std::map<std::string, double> of_fraction; // processor time of one pass

/// Runs `pass` until the library has seen enough, and sets the time of one against the time that `fraction` took.
template <class Number, class Pass>
void measure(benchmark::State& state, const std::string& what, Pass pass) {
    const std::clock_t start = std::clock(); // of this process: others on the machine do not count
    for (auto _ : state)
        pass();
    const double per_pass = static_cast<double>(std::clock() - start) / static_cast<double>(state.iterations());
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(pairs));
    if constexpr (std::is_same_v<Number, fraction>) {
        of_fraction[what] = per_pass;
    } else if (of_fraction.contains(what)) {
        state.counters["times_fraction"] = per_pass / of_fraction[what];
    }
}

template <class Number, class Operation, class Kind>
void each_pair(benchmark::State& state) {
    const auto left = numbers<Number, Kind>(1), right = numbers<Number, Kind>(2);
    std::conditional_t<std::is_same_v<Operation, compare>, bool, Number> result{};
    measure<Number>(state, std::string(Operation::name) + Kind::name, [&] {
        for (std::size_t i = 0; i < pairs; ++i) {
            Operation::apply(result, left[i], right[i]);
            benchmark::DoNotOptimize(result);
        }
    });
}

template <class Number>
void chain(benchmark::State& state) {
    const auto all = numbers<Number, ruler>(3);
    measure<Number>(state, "chain", [&] {
        Number sum = all[0];
        for (std::size_t i = 1; i < pairs; ++i)
            sum += all[i];
        benchmark::DoNotOptimize(sum);
    });
}

void chain_in_total(benchmark::State& state) {
    const auto all = numbers<fraction, ruler>(3);
    measure<turncloth::running_total<>>(state, "chain", [&] {
        fraction sum = turncloth::total(all);
        benchmark::DoNotOptimize(sum);
    });
}

/// Of counts of 1/64, as one has them who measures on one ruler.
void chain_on_one_ruler(benchmark::State& state) {
    std::vector<std::int64_t> counts;
    for (const fraction x : numbers<fraction, ruler>(3))
        counts.push_back(floor(x * 64));
    measure<turncloth::graduated_total<fraction>>(state, "chain", [&] {
        turncloth::graduated_total sum(fraction(1, 64));
        for (const std::int64_t count : counts)
            sum += count;
        fraction value = sum.value();
        benchmark::DoNotOptimize(value);
    });
}

template <class Operation, class Kind>
void enter() {
    const auto with = [](const char* type, auto run) {
        benchmark::RegisterBenchmark((std::string(Operation::name) + "/" + Kind::name + "/" + type).c_str(), run);
    };
    with("fraction", each_pair<fraction, Operation, Kind>);
    with("boost::rational", each_pair<boost_rational, Operation, Kind>);
    with("mpq_class", each_pair<mpq_class, Operation, Kind>);
    with("double", each_pair<double, Operation, Kind>);
}

template <class Kind>
void enter_kind() {
    enter<add, Kind>();
    enter<subtract, Kind>();
    enter<multiply, Kind>();
    enter<divide, Kind>();
    enter<compare, Kind>();
}

// Entered before main, where Google Benchmark looks for them.
const bool entered = [] { // NOLINT(cert-err58-cpp): nothing could be measured if this failed
    enter_kind<ruler>();
    benchmark::RegisterBenchmark("add/chain/fraction", chain<fraction>);
    benchmark::RegisterBenchmark("add/chain/total", chain_in_total);
    benchmark::RegisterBenchmark("add/chain/graduated_total", chain_on_one_ruler);
    benchmark::RegisterBenchmark("add/chain/boost::rational", chain<boost_rational>);
    benchmark::RegisterBenchmark("add/chain/mpq_class", chain<mpq_class>);
    benchmark::RegisterBenchmark("add/chain/double", chain<double>);
    enter_kind<awkward>();
    enter_kind<mixed>();
    return true;
}();

} // namespace
