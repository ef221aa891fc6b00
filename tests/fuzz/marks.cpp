// Marks of any spans and counts: typed errors alone; marks rise, parts add up, rounded marks keep to half a graduation,
// things spaced leave what they should, and a place mapped onto the other piece comes back.
#include "feed.hpp"

using namespace fuzzing;

namespace {

/// Small counts mostly, as what is summed is summed by walking.
std::int64_t count(feed& bytes) {
    return bytes.one_in(16) ? bytes.ConsumeIntegral<std::int64_t>() : bytes.between(-1, 200);
}

template <class Rows>
void rise(const Rows& marks) {
    for (std::int64_t k = 1; k < std::min<std::int64_t>(marks.size(), 200); ++k)
        must(marks[k - 1] < marks[k], "marks rise");
}

template <length_unit Unit>
void rows(feed& bytes) {
    const auto span = bytes.length<Unit>(), step = bytes.length<Unit>();
    const std::int64_t n = count(bytes);
    const auto parts = divided<cut_edge>(span, n);
    must(parts.size() == n - 1 && divided_with_ends<cut_edge>(span, n).size() == n + 1, "n parts have n - 1 marks");
    rise(parts);
    if (n > 1)
        must(parts.back() + parts.step() == at<cut_edge>(span), "the last part ends at the end");
    const auto along = every<cut_edge>(step, span);
    must(along.to_spare.value() >= 0 && along.to_spare < step, "less than a step is to spare");
    if (!along.marks.empty())
        must(along.marks.back() + along.to_spare == at<cut_edge>(span), "marks and what is to spare make the span");
}

template <length_unit Unit>
void rounded(feed& bytes) {
    const auto span = bytes.length<Unit>(), graduation = bytes.length<Unit>();
    const std::int64_t n = bytes.between(1, 200);
    const rounded_division<cut_edge, Unit> marks(span, n, graduation);
    rise(marks);
    must(marks.farthest_off() * 2 <= graduation, "a rounded mark is within half a graduation");
    length<Unit> sum;
    for (std::int64_t k = 0; k <= marks.size(); ++k)
        sum += marks.part(k);
    must(sum == span, "rounded parts add up to the span");
    const auto steps = stepped(span / n, graduation);
    must(abs(steps.per_step) * 2 <= graduation, "a rounded step is within half a graduation");
}

template <length_unit Unit>
void check_spacing(const spacing<cut_edge, Unit>& s, length<Unit> along) {
    must(s.margin().value() >= 0 && s.gap().value() >= 0, "clear distances are not negative");
    must(s.starts().front() == at<cut_edge>(s.margin()), "the first thing starts at the margin");
    must(s.ends().back() + s.margin() == at<cut_edge>(along), "the last thing ends at the margin");
}

template <length_unit Unit>
void things(feed& bytes) {
    const auto width = bytes.length<Unit>(), along = bytes.length<Unit>(), clear = bytes.length<Unit>();
    const std::int64_t n = count(bytes);
    refused([&] { check_spacing(spaced<cut_edge>(n, width, along), along); });
    refused([&] { check_spacing(spaced_from_margins<cut_edge>(n, width, along, clear), along); });
    refused([&] { check_spacing(spaced_centred<cut_edge>(n, width, along, clear), along); });
    refused([&] { check_spacing(spaced_in_spans<cut_edge>(n, width, along), along); });
}

template <class Mapping, length_unit Unit>
void check_mapping(const Mapping& m, length<Unit> somewhere) {
    const auto there = at<long_piece>(somewhere);
    const auto image = m.onto_short(there);
    must(m.onto_long(image) == there, "a place mapped onto the short piece comes back");
    must(m.fullness() >= 1 && m.surplus().value() >= 0, "the long piece is not the shorter");
    must(m.onto_short(m.mark_on_long(m.spans())) == m.mark_on_short(m.spans()), "the ends meet");
}

template <length_unit Unit>
void mapping(feed& bytes) {
    const auto where = bytes.length<Unit>(), longer = bytes.length<Unit>(), shorter = bytes.length<Unit>();
    const std::int64_t n = bytes.between(0, 100);
    refused([&] { check_mapping(even_mapping<Unit>(longer, shorter, n), where); });
    std::vector<place<long_piece, Unit>> on_long;
    std::vector<place<short_piece, Unit>> on_short;
    place<long_piece, Unit> long_end;
    place<short_piece, Unit> short_end;
    for (std::int64_t k = bytes.between(0, 8); k > 0; --k) {
        const auto span = bytes.length<Unit>();
        on_short.push_back(short_end = short_end + span);
        on_long.push_back(long_end = long_end + (bytes.one_in(8) ? bytes.length<Unit>() : span + bytes.length<Unit>()));
    }
    refused([&] { check_mapping(listed_mapping<Unit>(on_long, on_short), where); });
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    for (auto* const part : {rows<inch>, rounded<inch>, things<inch>, mapping<inch>, rounded<centimetre>})
        refused([&] { part(bytes); });
    return 0;
}
