// The check of lays in units finds what is wrong with one, and passes what is sound on every kind of cloth.
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <functional>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

length<inch> in(fraction x) { return length_of<inch>(x); }

const std::vector<cloth_piece<inch>> pieces{{"back", {in(20), in({61, 2})}, 2},
                                            {.name = "pocket", .size = {in({25, 3}), in(12)}, .quantity = 3}};

bolt<inch> canvas(cutting ways) {
    return {.width = in(45), .selvedge = in({1, 2}), .gap = in({1, 8}), .cutting = ways};
}

/// Of a sound lay that is changed; nothing if nothing is found.
std::string found_in(cutting ways, const std::function<void(lay<inch>&)>& change) {
    lay<inch> changed = lay_out(pieces, canvas(ways));
    change(changed);
    const auto faults = lay_faults(changed, pieces, canvas(ways));
    return faults.empty() ? "" : faults[0].what();
}

} // namespace

TEST_CASE("sound lays are passed: single, folded, on one-way cloth and on a repeat, in centimetres too") {
    for (const cutting ways : {cutting::free, cutting::edge_to_edge, cutting::strips})
        CHECK(found_in(ways, [](lay<inch>&) {}) == "");
    bolt<inch> folded = canvas(cutting::edge_to_edge);
    folded.folded = true;
    std::vector<cloth_piece<inch>> on_fold = pieces;
    on_fold[0].on_fold = true;
    CHECK(lay_faults(lay_out(on_fold, folded), on_fold, folded).empty());
    bolt<inch> print = canvas(cutting::free);
    print.one_way = true;
    print.repeat_along = in({25, 4});
    CHECK(lay_faults(lay_out(pieces, print), pieces, print).empty());
    const std::vector<cloth_piece<centimetre>> mats{
        {"mat", {length_of<centimetre>({127, 3}), length_of<centimetre>(50)}, 5}};
    const bolt<centimetre> felt{.width = length_of<centimetre>(140), .selvedge = length_of<centimetre>({7, 10})};
    CHECK(lay_faults(lay_out(mats, felt), mats, felt).empty());
}

TEST_CASE("what is moved, resized, missing or said wrongly is found") {
    const auto free = [](const std::function<void(lay<inch>&)>& change) { return found_in(cutting::free, change); };
    CHECK(free([](auto& l) {
              l.places[0].where.from_left -= in({1, 64});
          }).find("leaves the cloth") != std::string::npos);
    CHECK(free([](auto& l) { l.places[1].where = l.places[0].where; }) != "");
    CHECK(free([](auto& l) {
              l.places[0].where.across += in({1, 64});
          }).find("is laid in another size") != std::string::npos);
    CHECK(free([](auto& l) { l.places.pop_back(); }).find("is not laid as often as wanted") != std::string::npos);
    CHECK(free([](auto& l) { l.spare[1] = 1; }) == "piece 2 is not laid as often as wanted");
    CHECK(free([](auto& l) { l.length += in(1); }) == "the length is not where the last piece ends");
    CHECK(free([](auto& l) { l.bound = l.length + in({1, 3}); }) == "the bound is above the length");
}

TEST_CASE("cuts that are missing or told from elsewhere are found") {
    const auto cut = [](const std::function<void(lay<inch>&)>& change) {
        return found_in(cutting::edge_to_edge, change);
    };
    const std::string said = "the cuts do not part the pieces";
    CHECK(cut([](auto& l) { l.cuts.clear(); }) == said);
    CHECK(cut([](auto& l) { l.cuts.back().at += in({1, 64}); }) == said);
    CHECK(cut([](auto& l) { l.cuts[0].in_hand.from_left = in(0); }) == said); // the selvedge is not in hand any more
    CHECK(cut([](auto& l) { l.cuts[1].origin = {}; }) == said);               // nor is the whole cloth
}
