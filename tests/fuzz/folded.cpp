// A piece folded and trimmed along any lines, beside paper followed spot by spot in GMP: as many layers at a spot as
// spots of the flat piece come to lie there; cloth is neither lost nor made; what is refused leaves the piece as it was.
#define DOCTEST_CONFIG_IMPLEMENT // which the reference includes
#include "../panel/paper.hpp"
#include "feed.hpp"
#include <turncloth/panel/made_up.hpp>

using namespace fuzzing;

namespace {

using against_gmp::exact;
using spot = point<inch>;

spot any_spot(feed& bytes, std::int64_t within) {
    const auto x = bytes.between(-within, 2 * within), y = bytes.between(-within, 2 * within);
    return {length_of<inch>(fraction(x, 4)), length_of<inch>(fraction(y, 4))};
}

void by_any_lines(feed& bytes) {
    const std::int64_t w = bytes.between(1, 40), h = bytes.between(1, 40);
    const auto at = [](std::int64_t x, std::int64_t y) { return point_of<inch>(x, y); };
    const polygon<inch> flat = {at(0, 0), at(w, 0), at(w, h), at(0, h)};
    folding<inch> piece(flat);
    paper_folding::sheet paper(flat);
    for (int folds = bytes.ConsumeIntegralInRange(0, 6); folds > 0; --folds) {
        const line<inch> along{any_spot(bytes, 4 * w), any_spot(bytes, 4 * h)};
        const turned way = bytes.ConsumeBool() ? turned::over : turned::under;
        if (bytes.one_in(4)) {
            if (!refused([&] { piece.trim(along); }))
                paper.trim(along);
        } else if (!refused([&] { piece.fold(along, way); })) {
            paper.fold(along);
        }
    }
    refused([&] {
        must(exact(piece.area().value()) + exact(piece.trimmed_area().value()) == w * h,
             "cloth is neither lost nor made");
    });
    for (int tries = 0; tries < 4; ++tries) {
        const spot near = any_spot(bytes, 4 * std::max(w, h));
        // So far from the quarters of creases that it lies on none of them.
        const spot p = {near.x + length_of<inch>({1, 10007}), near.y + length_of<inch>({1, 10009})};
        refused([&] {
            must(piece.layers_at(p) == paper.layers_at(paper_folding::sheet::exact(p)),
                 "as many layers as spots come to lie there");
        });
    }
    refused([&] {
        const auto most = piece.most_layers();
        must(piece.layer_count() == 0 || most.layers >= 1, "some cloth lies somewhere");
        must(piece.layers_at(most.where) >= most.layers, "the thickest spot is so thick");
    });
}

void by_its_finishes(feed& bytes) {
    refused([&] {
        const auto size = bytes.size<inch>();
        const panel<inch> piece(size, bytes.edges<inch>());
        corner_way<inch> way = bytes.ConsumeBool() ? mitred<inch>() : stacked<inch>();
        if (bytes.one_in(3)) {
            const auto allowance = bytes.length<inch>();
            way = mitred(allowance, bytes.length<inch>());
        }
        const auto folded = fold_panel(piece, all_corners(way));
        refused([&] { must(folded.proof().cloth, "a panel's cloth is neither lost nor made"); });
    });
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    bytes.ConsumeBool() ? by_any_lines(bytes) : by_its_finishes(bytes);
    return 0;
}
