// A thousand small jobs with remnants, each against filling cells one after another.
#include "at_random.hpp"
#include "cloth/small_jobs.hpp"
#include <turncloth/cloth/lay/random.hpp>
#include <turncloth/cloth/remnants.hpp>

#include <doctest/doctest.h>

using namespace turncloth;

TEST_CASE("no plan of a thousand small jobs buys more than the best there is") {
    at_random::seeded<detail::lay_random> chance(47);
    bolt<inch> cloth;
    cloth.width = length_of<inch>(small_jobs::new_width);
    int proved = 0;
    while (chance.another_of(1000)) {
        const small_jobs::job job(chance);
        const auto plan = lay_with_remnants<inch>(job.pieces, job.remnants, cloth);
        const int least = small_jobs::least_bought(job.kinds, job.grids, small_jobs::new_width);
        CHECK(plan.bought.length == length_of<inch>(least));
        CHECK(plan.bound <= length_of<inch>(least));
        proved += plan.proved_best() ? 1 : 0;
    }
    CHECK(proved > 900);
}
