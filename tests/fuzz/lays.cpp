// Lays of any pieces on any cloth: refused with a typed error, or sound by the check that shares nothing with the code
// that lays; and the same again.
#include "feed.hpp"
#include <turncloth/cloth/lay/check.hpp>
#include <turncloth/cloth/lay/solve.hpp>

#include <vector>

using namespace fuzzing;

namespace {

std::int64_t measure(feed& bytes) {
    return bytes.one_in(24) ? bytes.ConsumeIntegral<std::int64_t>() : bytes.between(0, 60);
}

lay_piece any_piece(feed& bytes, const lay_cloth& cloth) {
    lay_piece p{.width = measure(bytes), .length = measure(bytes), .quantity = bytes.between(1, 4)};
    if (bytes.one_in(32))
        p.quantity = bytes.between(-1, 1000);
    p.grain = bytes.ConsumeBool() ? grain::fixed : grain::may_turn;
    if (cloth.repeat_across != 0)
        p.match_across = measure(bytes);
    if (cloth.repeat_along != 0)
        p.match_along = measure(bytes);
    p.at_edge = bytes.one_in(8);
    return p;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    lay_cloth cloth{.width = bytes.one_in(24) ? measure(bytes) : bytes.between(0, 120)};
    cloth.gap = bytes.one_in(4) ? measure(bytes) : 0;
    cloth.ways = bytes.PickValueInArray({cutting::free, cutting::edge_to_edge, cutting::strips});
    if (bytes.one_in(4)) {
        cloth.repeat_across = measure(bytes);
        cloth.repeat_along = measure(bytes);
    }
    std::vector<lay_piece> pieces;
    for (std::int64_t kinds = bytes.between(0, 6); kinds > 0; --kinds)
        pieces.push_back(any_piece(bytes, cloth));
    const lay_effort effort{.steps = 300, .seed = static_cast<std::uint64_t>(bytes.between(0, 3))};
    refused([&] {
        const lay found = lay_out(pieces, cloth, effort);
        for (const lay_fault& fault : lay_faults(found, pieces, cloth))
            must(false, fault.what().c_str());
        must(lay_out(pieces, cloth, effort).places == found.places, "a lay is the same every time");
    });
    return 0;
}
