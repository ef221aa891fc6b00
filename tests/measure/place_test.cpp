// Places: what they may do, what they may not, and measuring from another datum.
#include "against_gmp.hpp"
#include <turncloth/measure/place.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <type_traits>

using namespace turncloth;

namespace {

struct shelf_end {};
struct wall {};

using on_shelf = place<shelf_end, inch>;
using from_wall = place<wall, inch>;
using on_shelf_metric = place<shelf_end, centimetre>;

constexpr on_shelf hook = at<shelf_end>(4_in);

static_assert(hook + "1 1/2"_in == at<shelf_end>("5 1/2"_in));
static_assert("1 1/2"_in + hook == at<shelf_end>("5 1/2"_in));
static_assert(hook - 1_in == at<shelf_end>(3_in));
static_assert(at<shelf_end>(9_in) - hook == 5_in);
static_assert(std::is_same_v<decltype(hook - hook), length<inch>>);
static_assert(hook < at<shelf_end>(5_in) && hook <= hook && hook == at<shelf_end>("8/2"_in) && hook > on_shelf());
static_assert(on_shelf().from_datum() == 0_in);
static_assert(hook.from_datum() == 4_in);
static_assert(as<centimetre>(hook) == at<shelf_end>(10.16_cm));
// The shelf's end is 30 in from the wall; and so the wall is -30 in from the shelf's end.
static_assert(remeasured<wall>(hook, -(30_in)) == at<wall>(34_in));
static_assert(remeasured<shelf_end>(at<wall>(34_in), 30_in) == hook);

template <class A, class B>
concept add = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept subtract = requires(A a, B b) {
    a - b;
};
template <class A, class B>
concept equal = requires(A a, B b) {
    a == b;
};
template <class A, class B>
concept order = requires(A a, B b) {
    a < b;
};

static_assert(!add<on_shelf, on_shelf> && !add<on_shelf, from_wall> && !add<on_shelf, on_shelf_metric>);
static_assert(subtract<on_shelf, on_shelf> && !subtract<on_shelf, from_wall> && !subtract<on_shelf, on_shelf_metric>);
static_assert(equal<on_shelf, on_shelf> && !equal<on_shelf, from_wall> && !equal<on_shelf, on_shelf_metric>);
static_assert(order<on_shelf, on_shelf> && !order<on_shelf, from_wall> && !order<on_shelf, on_shelf_metric>);
// A place and a length neither compare nor take each other's part; units do not mix here either.
static_assert(!equal<on_shelf, length<inch>> && !order<on_shelf, length<inch>> && !subtract<length<inch>, on_shelf>);
static_assert(!add<on_shelf, length<centimetre>> && !add<length<centimetre>, on_shelf> &&
              !subtract<on_shelf, length<centimetre>>);
static_assert(!add<on_shelf, int> && !subtract<on_shelf, int> && !equal<on_shelf, int>);
static_assert(!std::is_convertible_v<length<inch>, on_shelf> && !std::is_convertible_v<on_shelf, length<inch>>);
static_assert(!std::is_constructible_v<on_shelf, from_wall> && !std::is_constructible_v<on_shelf, int>);

} // namespace

TEST_CASE("places and lengths obey the laws of points and differences") {
    against_gmp::sampler random(1637);
    while (random.another_of(20'000)) {
        const auto p = at<shelf_end>(length_of<inch>(random.on_a_ruler()));
        const auto q = at<shelf_end>(length_of<inch>(random.awkward()));
        const auto l = length_of<inch>(random.on_a_ruler()), offset = length_of<inch>(random.awkward());
        CHECK((p + l) - l == p);
        CHECK((p + l) - p == l);
        CHECK(p + (q - p) == q);
        CHECK((p < q) == (q - p > 0_in));
        // The distance between two places is the same from any datum, and the way back leads back.
        CHECK(remeasured<wall>(q, offset) - remeasured<wall>(p, offset) == q - p);
        CHECK(remeasured<shelf_end>(remeasured<wall>(p, offset), -offset) == p);
    }
}
