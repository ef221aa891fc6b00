// The ranges of marks as ranges: the concepts of <iterator> and <ranges>, the algorithms of both generations, iterators
// that outlive their range, and that nothing allocates.
#include "../../allocations.hpp"
#include <turncloth/marks/mapping.hpp>
#include <turncloth/marks/rounded.hpp>
#include <turncloth/marks/row.hpp>
#include <turncloth/marks/spacing.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <ranges>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

struct strip_end {};
using inch_row = row<strip_end, inch>;
using spot = place<strip_end, inch>;

template <class Range, class Iterator = std::ranges::iterator_t<const Range>>
concept range_of_marks = std::random_access_iterator<Iterator> && std::sized_sentinel_for<Iterator, Iterator> &&
    std::ranges::random_access_range<const Range> && std::ranges::sized_range<const Range> &&
    std::ranges::common_range<const Range> && std::ranges::borrowed_range<Range>;
static_assert(range_of_marks<inch_row> && range_of_marks<row<long_piece, centimetre>>);
static_assert(range_of_marks<rounded_division<strip_end, inch>> && range_of_marks<rounded_division<strip_end, metre>>);
// Elements are values, so none can be written to.
static_assert(!std::output_iterator<inch_row::iterator, spot>);

// Seven parts of 14 in: marks at 2, 4, ..., 12.
constexpr inch_row sevenths = divided<strip_end>(14_in, 7);
static_assert(sevenths.size() == 6);
static_assert(!sevenths.empty());
static_assert(sevenths.end() - sevenths.begin() == 6);
static_assert(sevenths.front() == at<strip_end>(2_in));
static_assert(sevenths.back() == at<strip_end>(12_in));
static_assert(inch_row().empty());
static_assert(inch_row().begin() == inch_row().end());
static_assert(inch_row::iterator() == inch_row().begin());
static_assert(divided<strip_end>(14_in, 1).empty());

// Every operation of an iterator, by what it yields.
static_assert([] {
    const auto first = sevenths.begin();
    auto i = first;
    return *i == at<strip_end>(2_in) && *++i == at<strip_end>(4_in) && *i++ == at<strip_end>(4_in) &&
           *i == at<strip_end>(6_in) && *--i == at<strip_end>(4_in) && *i-- == at<strip_end>(4_in) && i == first &&
           *(i += 5) == at<strip_end>(12_in) && *(i -= 2) == at<strip_end>(8_in) && i[2] == at<strip_end>(12_in) &&
           i[-3] == at<strip_end>(2_in) && i - first == 3 && first - i == -3 && first + 3 == i && 3 + first == i &&
           i - 3 == first && i != first && first < i && i > first && i >= first && first <= i && !(i < first) &&
           i + 3 == sevenths.end();
}());

} // namespace

TEST_CASE("a row of marks yields the same places by index, iterator, loop and reversed loop") {
    const std::vector<spot> by_hand = {at<strip_end>(2_in), at<strip_end>(4_in),  at<strip_end>(6_in),
                                       at<strip_end>(8_in), at<strip_end>(10_in), at<strip_end>(12_in)};
    CHECK(std::vector<spot>(sevenths.begin(), sevenths.end()) == by_hand);
    CHECK(std::ranges::equal(sevenths, by_hand));
    std::vector<spot> by_index, by_loop;
    for (std::int64_t k = 0; k < sevenths.size(); ++k)
        by_index.push_back(sevenths[k]);
    for (const spot mark : sevenths)
        by_loop.push_back(mark);
    CHECK(by_index == by_hand);
    CHECK(by_loop == by_hand);
    const std::vector<spot> reversed(std::make_reverse_iterator(sevenths.end()),
                                     std::make_reverse_iterator(sevenths.begin()));
    CHECK(std::equal(reversed.begin(), reversed.end(), by_hand.rbegin(), by_hand.rend()));
}

TEST_CASE("algorithms of the standard library run on a row of marks") {
    CHECK(std::distance(sevenths.begin(), sevenths.end()) == 6);
    CHECK(std::ranges::distance(sevenths) == 6);
    CHECK(std::size(sevenths) == 6);
    CHECK(std::ranges::size(sevenths) == 6);
    CHECK(std::is_sorted(sevenths.begin(), sevenths.end()));
    CHECK(std::lower_bound(sevenths.begin(), sevenths.end(), at<strip_end>("4 1/2"_in)) == sevenths.begin() + 2);
    CHECK(std::ranges::lower_bound(sevenths, at<strip_end>(4_in)) == sevenths.begin() + 1);
    CHECK(std::ranges::upper_bound(sevenths, at<strip_end>(4_in)) == sevenths.begin() + 2);
    CHECK(std::ranges::binary_search(sevenths, at<strip_end>(10_in)));
    CHECK_FALSE(std::ranges::binary_search(sevenths, at<strip_end>(11_in)));
    CHECK(std::ranges::max(sevenths) == at<strip_end>(12_in));
    CHECK(std::ranges::count_if(sevenths, [](const spot& s) { return s > at<strip_end>(7_in); }) == 3);
    CHECK(*std::ranges::prev(sevenths.end(), 2) == at<strip_end>(10_in));
    CHECK(std::ranges::find(sevenths, at<strip_end>(3_in)) == sevenths.end());
}

TEST_CASE("an algorithm reaches a mark among 2^62 without going through them") {
    const inch_row creases = halved<strip_end>(1_in, 62);
    CHECK(creases.size() == 4611686018427387903); // 2^62 - 1
    const auto middle = std::ranges::lower_bound(creases, at<strip_end>("1/2"_in));
    CHECK(middle - creases.begin() == 2305843009213693951); // the mark 2^61, counted from 1
    CHECK(*middle == at<strip_end>("1/2"_in));
}

TEST_CASE("an iterator outlives the row that it was taken from") {
    const auto found = std::ranges::lower_bound(divided<strip_end>(14_in, 7), at<strip_end>(5_in));
    CHECK(*found == at<strip_end>(6_in));
    const auto rounded =
        std::ranges::lower_bound(rounded_division<strip_end, inch>(10_in, 3, "1/8"_in), at<strip_end>(4_in));
    CHECK(*rounded == at<strip_end>("6 5/8"_in));
}

TEST_CASE("making, reading and searching marks allocates nothing") {
    const std::array longer = {at<long_piece>(8_in), at<long_piece>(20_in)};
    const std::array shorter = {at<short_piece>(5_in), at<short_piece>(17_in)};
    const std::size_t before = allocations;
    length<inch> sum;
    for (const spot mark : divided<strip_end>(36_in, 100))
        sum += mark.from_datum();
    sum += std::ranges::lower_bound(sevenths, at<strip_end>(5_in))[0].from_datum();
    sum += halved<strip_end>(16_in, 3)[2].from_datum() + every<strip_end>(7_in, 36_in).to_spare;
    sum += length_of<inch>(foldings(8)) + divided_with_ends<strip_end>(36_in, 9).back().from_datum();
    const rounded_division<strip_end, inch> thirds(10_in, 3, "1/8"_in);
    for (const spot mark : thirds)
        sum += mark.from_datum() + thirds.farthest_off() + thirds.part(1);
    sum += stepped("3 1/3"_in, "1/8"_in).drift(3);
    sum += spaced<strip_end>(3, 1_in, 20_in).centres()[1].from_datum();
    sum += spaced_from_margins<strip_end>(3, 1_in, 20_in, 2_in).starts()[1].from_datum();
    sum += spaced_centred<strip_end>(3, 1_in, 20_in, 2_in).ends()[1].from_datum();
    sum += spaced_in_spans<strip_end>(3, 1_in, 20_in).gap();
    const even_mapping<inch> even(50_in, 35_in, 5);
    const listed_mapping<inch> listed(longer, shorter);
    sum += even.onto_short(at<long_piece>(17_in)).from_datum() + even.surplus();
    sum += listed.onto_long(at<short_piece>(9_in)).from_datum() + length_of<inch>(listed.fullness(0));
    const std::size_t after = allocations;
    CHECK(after == before);
    CHECK(sum > 0_in);
    // The count itself works.
    const std::string text(100, static_cast<char>('0' + static_cast<int>(sum > 0_in)));
    CHECK(allocations > before);
    CHECK(text[0] == '1');
}
