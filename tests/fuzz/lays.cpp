// Lays of any pieces on any cloth: refused with a typed error, or sound by the check that shares nothing with the code
// that lays; and the same again.
#include "feed.hpp"
#include <turncloth/testing/lay_faults.hpp>

#include <vector>

using namespace fuzzing;

namespace {

length<inch> measure(feed& bytes) {
    const std::int64_t parts = bytes.one_in(8) ? bytes.between(1, 16) : 1;
    return length_of<inch>({bytes.one_in(24) ? bytes.ConsumeIntegral<std::int64_t>() : bytes.between(0, 60), parts});
}

cloth_piece<inch> any_piece(feed& bytes, const bolt<inch>& cloth) {
    cloth_piece<inch> p{.name = {}, .size = {measure(bytes), measure(bytes)}, .quantity = bytes.between(1, 4)};
    if (bytes.one_in(32))
        p.quantity = bytes.one_in(2) ? bytes.ConsumeIntegral<std::int64_t>() : bytes.between(-1, 1000);
    p.grain = bytes.ConsumeBool() ? grain::fixed : grain::may_turn;
    if (cloth.repeat_across.value() != 0)
        p.match_across = measure(bytes);
    if (cloth.repeat_along.value() != 0)
        p.match_along = measure(bytes);
    p.on_fold = bytes.one_in(8);
    return p;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    bolt<inch> cloth{.width = bytes.one_in(24) ? measure(bytes) : length_of<inch>(bytes.between(0, 120))};
    cloth.selvedge = bytes.one_in(4) ? measure(bytes) : length<inch>();
    cloth.gap = bytes.one_in(4) ? measure(bytes) : length<inch>();
    cloth.cutting = bytes.PickValueInArray({cutting::free, cutting::edge_to_edge, cutting::strips});
    cloth.folded = bytes.one_in(4);
    cloth.one_way = bytes.one_in(4);
    refused([&] {
        if (bytes.one_in(4)) {
            cloth.repeat_across = measure(bytes);
            cloth.repeat_along = measure(bytes);
        }
        std::vector<cloth_piece<inch>> pieces;
        for (std::int64_t kinds = bytes.between(0, 6); kinds > 0; --kinds)
            pieces.push_back(any_piece(bytes, cloth));
        const lay_effort effort{.steps = 300, .seed = static_cast<std::uint64_t>(bytes.between(0, 3))};
        const auto found = lay_out(pieces, cloth, effort);
        for (const lay_fault& fault : lay_faults(found, pieces, cloth))
            must(false, fault.what().c_str());
        must(lay_out(pieces, cloth, effort).places == found.places, "a lay is the same every time");
    });
    return 0;
}
