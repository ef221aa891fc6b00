// A fault is found among thousands of others in so many comparisons as a search by halves takes; a walk through all that
// came before would take thousands.
#include "at_random.hpp"
#include <turncloth/design/detail/fault_places.hpp>
#include <turncloth/design/json.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

using namespace turncloth;

namespace {

struct counted {
    std::size_t* comparisons;
    bool operator()(const design_fault& a, const design_fault& b) const {
        ++*comparisons;
        return detail::by_place_and_reason{}(a, b);
    }
};
struct counted_texts {
    using is_transparent = void;
    std::size_t* comparisons;
    bool operator()(std::string_view a, std::string_view b) const {
        ++*comparisons;
        return a < b;
    }
};

constexpr std::size_t many = 20'000, most_each = 64; // 4 times the halvings of 20,000, which are 15

std::string place_of(std::size_t k) { return "/pieces/" + std::to_string(k) + "/width"; }

/// What it is to lie within, as JSON pointers have it.
bool within(std::string_view inner, std::string_view outer) {
    return inner.substr(0, outer.size()) == outer && (inner.size() == outer.size() || inner[outer.size()] == '/');
}

} // namespace

TEST_CASE("a fault is told once, whatever came before") {
    std::size_t comparisons = 0;
    detail::faults_once<counted> once(counted{&comparisons});
    for (const bool again : {false, true})
        for (std::size_t k = 0; k < many; ++k)
            if (once.told({place_of(k), "it is not there", {}}) != again)
                FAIL(place_of(k), again ? " is told again" : " is not told");
    CHECK((comparisons > many && comparisons < 2 * many * most_each));
    CHECK_FALSE(once.told({place_of(7), "it is not there", 3}));
    CHECK_FALSE(once.told({place_of(7), "it is no length", {}}));
}

TEST_CASE("a place is found among thousands that hold it or lie in it") {
    std::vector<design_fault> faults;
    for (std::size_t k = 0; k < many; ++k)
        faults.push_back({place_of(k), {}, {}});
    std::size_t comparisons = 0;
    const detail::fault_places<counted_texts> places(faults, counted_texts{&comparisons});
    for (std::size_t k = 0; k < many; ++k)
        if (!places.touches(place_of(k)) || places.touches("/notions/" + std::to_string(k)))
            FAIL(k);
    CHECK((comparisons > many &&
           comparisons < 8 * many * most_each)); // put in once; looked up twice, each with all that holds it
    CHECK(places.touches("/pieces"));
    CHECK(places.touches(""));
    CHECK(places.touches("/pieces/3/width/units"));
    CHECK_FALSE(places.touches("/pieces/3/height"));
    CHECK_FALSE(places.touches("/piece"));
    CHECK_FALSE(detail::fault_places<>({}).touches(""));
}

TEST_CASE("places touch where one lies within the other") {
    at_random::sampler random(31);
    const auto place = [&] {
        std::string made;
        for (std::int64_t k = random.between(0, 3); k > 0; --k)
            made += std::string(random.between(0, 3) == 0 ? "/a!" : "/a") + (random.between(0, 2) == 0 ? "b" : "");
        return made;
    };
    std::size_t touching = 0;
    while (random.another_of(5000)) {
        std::vector<design_fault> faults;
        for (std::int64_t k = random.between(0, 3); k > 0; --k)
            faults.push_back({place(), {}, {}});
        const std::string where = place();
        const bool touches = std::any_of(faults.begin(), faults.end(), [&](const design_fault& f) {
            return within(f.where, where) || within(where, f.where);
        });
        REQUIRE(detail::fault_places<>(faults).touches(where) == touches);
        touching += touches ? 1 : 0;
    }
    CHECK((touching > 500 && touching < 4500));
}

TEST_CASE("every one of thousands of faults is named, and none twice") {
    const std::size_t pieces = 1000, unknown = many / pieces;
    std::string written;
    for (std::size_t k = 0; k < pieces; ++k) {
        written += k == 0 ? "" : ",";
        written += R"({"name": "", "material": "felt", "width": "8 in", "height": "9 in")";
        for (std::size_t i = 0; i < unknown; ++i)
            written += ", \"u" + std::to_string(i) + "\": 1";
        written += "}";
    }
    const auto read = try_read_design(R"({"turncloth_design": 1, "name": "Mat", "pieces": [)" + written + "]}");
    REQUIRE_FALSE(read);
    std::vector<std::string> told;
    std::size_t unknown_told = 0, nameless_told = 0;
    for (const design_fault& f : read.refused().faults()) {
        told.push_back(to_text(f));
        unknown_told += f.why.starts_with("there is no such member here") ? 1 : 0;
        nameless_told += f.where.ends_with("/name") ? 1 : 0;
    }
    CHECK(unknown_told == pieces * unknown);
    CHECK(nameless_told == pieces);
    std::sort(told.begin(), told.end());
    CHECK(std::adjacent_find(told.begin(), told.end()) == told.end());
}
