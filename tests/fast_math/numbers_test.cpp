// Compiled with -ffast-math, under which a compiler takes it that every double is a finite number and leaves out a
// comparison that asks: what is no number is refused all the same, since that is read from the bits.
#include <turncloth/measure/irrational.hpp>
#include <turncloth/page/svg.hpp>
#include <turncloth/panel/folding.hpp>
#include <turncloth/panel/outline.hpp>

#include <doctest/doctest.h>

#include <array>
#include <bit>
#include <cstdint>

using namespace turncloth;

namespace {

/// By their bits (IEEE 754: all ones for an exponent): no number, no number with a sign, endless either way.
std::array<double, 4> no_numbers() {
    std::array<double, 4> all{};
    const std::uint64_t bits[] = {0x7FF8000000000000, 0xFFF8000000000001, 0x7FF0000000000000, 0xFFF0000000000000};
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i] = std::bit_cast<double>(bits[i]);
    return all;
}

point<inch, double> spot(double x, double y) { return drafted_point<inch>(x, y); }

} // namespace

TEST_CASE("outlines, folds and pages of what is no number are refused under -ffast-math") {
#ifdef __GNUC__
    static_assert(__FINITE_MATH_ONLY__ == 1);
#endif
    const polygon<inch, double> cloth = {spot(0, 0), spot(6, 0), spot(0, 4)};
    const outline<inch> piece(cloth, {drafted_length_of<inch>(1)});
    folding<inch, double> folded(cloth);
    for (const double none : no_numbers()) {
        const auto off = drafted_length_of<inch>(none);
        CHECK_FALSE(detail::is_within(none, 1e308));
        CHECK_THROWS_AS(outline<inch>({spot(0, 0), spot(6, none), spot(0, 4)}, {drafted_length_of<inch>(1)}),
                        outline_error);
        CHECK_THROWS_AS(outline<inch>(cloth, {off}), outline_error);
        CHECK_THROWS_AS(outline<inch>(cloth, {edge_allowance<inch>(drafted_length_of<inch>(1), off)}), outline_error);
        CHECK_THROWS_AS(outline<inch>(cloth, {drafted_length_of<inch>(0)}, {}, none), outline_error);
        CHECK_THROWS_AS(static_cast<void>(piece.angle_to_grain(0, {spot(0, 0), spot(none, 1)})), outline_error);
        CHECK_THROWS_AS(static_cast<void>(piece.carried({0, off})), outline_error);
        CHECK_THROWS_AS(folded.layers_at(spot(none, 1)), folding_error);
        CHECK_THROWS_AS(folded.fold({spot(1, 0), spot(1, none)}), folding_error);
        CHECK_THROWS_AS(locate(cloth, spot(none, 1)), range_error);
        CHECK_THROWS_AS(detail::number(none), range_error);
        CHECK_THROWS_AS(approximate(none, {1, 64}), range_error);
    }
    CHECK(folded.layers_at(spot(1, 1)) == 1);
}
