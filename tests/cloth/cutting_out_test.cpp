// What is printed about cutting out is carried out on a rectangle of cloth, with nothing known but the words, and gives
// exactly the pieces.
#include "../vectors.hpp"
#include "at_random.hpp"
#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/cloth/off_cuts.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/testing/lay_faults.hpp>

#include <doctest/doctest.h>

#include <map>
#include <random>
#include <regex>
#include <string>
#include <vector>

using namespace turncloth;

namespace {

length<inch> in(fraction x) { return length_of<inch>(x); }

/// A rectangle of cloth in hand, and where it once lay.
struct sheet_in_hand {
    length<inch> left, near, across, along;
};

/// Somebody who has cloth of this width (as it lies), longer than is needed, and who does what she is told.
class seamstress {
public:
    seamstress(length<inch> width, length<inch> selvedge, bool folded)
        : width_(width), selvedge_(selvedge), folded_(folded) {}

    void read(const std::string& step) {
        std::smatch said;
        static const std::regex ready(
            "cut 0: straighten the end of the cloth, square to its selvedges; cut right across, (.+?) from it(?:; trim "
            "(.+?) off (each selvedge|the selvedges, opposite the fold))?(?:\\. .*|: that is (.+))");
        static const std::regex cut(
            "cut (\\d+): (across|along) (the cloth|what cut \\d+ (?:took off|left)), (.+?) from its (near|left) side, "
            "on "
            "the cloth (.+?) from the (end|left edge|fold): takes off (.+?)(?: and leaves (.+))?");
        if (std::regex_match(step, said, ready)) {
            sheet_in_hand cloth{in(0), in(0), width_, read_length<inch>(said.str(1))};
            if (said[2].matched) {
                REQUIRE(read_length<inch>(said.str(2)) == selvedge_);
                REQUIRE((said.str(3) != "each selvedge") == folded_);
                cloth.left = folded_ ? in(0) : selvedge_;
                cloth.across -= selvedge_ * (folded_ ? 1 : 2);
            }
            if (said[4].matched)
                keep(said.str(4), cloth);
            hands_["the cloth"] = cloth;
            return;
        }
        REQUIRE_MESSAGE(std::regex_match(step, said, cut), step);
        const auto found = hands_.find(said.str(3));
        REQUIRE_MESSAGE(found != hands_.end(), step); // what is told of is still in one piece
        sheet_in_hand off = found->second, rest = off;
        hands_.erase(found);
        const length<inch> at = read_length<inch>(said.str(4)), on_cloth = read_length<inch>(said.str(6));
        const bool across = said.str(2) == "across";
        CHECK(said.str(5) == (across ? "near" : "left"));
        CHECK(said.str(7) == (across ? "end" : folded_ ? "fold" : "left edge"));
        CHECK(on_cloth == at + (across ? off.near : off.left));
        REQUIRE(at > in(0));
        REQUIRE(at < (across ? off.along : off.across));
        (across ? off.along : off.across) = at;
        (across ? rest.along : rest.across) -= at;
        (across ? rest.near : rest.left) += at;
        keep(said.str(8), off);
        if (said[9].matched)
            keep(said.str(9), rest);
        hands_["what cut " + said.str(1) + " took off"] = off;
        hands_["what cut " + said.str(1) + " left"] = rest;
    }

    /// By name and by size as it was laid.
    const std::map<std::string, std::vector<sheet_in_hand>>& kept() const { return kept_; }

private:
    /// "pocket, 12 x 9 in, turned", "a part 44 x 12 in" or "a left-over 2 x 9 in": the size must be what is in hand.
    void keep(const std::string& words, const sheet_in_hand& what) {
        static const std::regex told("(a part|a left-over|.+?),? ([^,]+) x ([^,]+?) in(, turned)?(, on the fold)?");
        std::smatch said;
        REQUIRE_MESSAGE(std::regex_match(words, said, told), words);
        CHECK(read_length<inch>(said.str(2) + " in") == what.across);
        CHECK(read_length<inch>(said.str(3) + " in") == what.along);
        if (said.str(1) != "a part")
            kept_[said.str(1)].push_back(what);
    }

    length<inch> width_, selvedge_;
    bool folded_;
    std::map<std::string, sheet_in_hand> hands_;
    std::map<std::string, std::vector<sheet_in_hand>> kept_;
};

struct dice : at_random::sampler {
    using sampler::sampler;
    length<inch> sixteenths(std::int64_t low, std::int64_t high) { return in({between(low, high), 16}); }
};

/// Up to five kinds, none wider than 18 in. On the fold half a width lies, so that they are told in 1/32 in.
std::vector<cloth_piece<inch>> some_pieces(dice& d, const bolt<inch>& cloth) {
    std::vector<cloth_piece<inch>> pieces;
    for (std::int64_t k = d.between(1, 5); k > 0; --k) {
        pieces.push_back({.name = "piece " + std::string(1, static_cast<char>('k' + k)),
                          .size = {d.sixteenths(16, 288), d.sixteenths(16, 400)},
                          .quantity = d.between(1, 5)});
        pieces.back().grain = d.between(0, 1) == 0 ? grain::fixed : grain::may_turn;
        pieces.back().on_fold = cloth.folded && d.between(0, 3) == 0;
    }
    return pieces;
}

} // namespace

TEST_CASE("the printed cuts, carried out one by one, give the pieces and nothing but left-overs besides") {
    dice d(19937);
    while (d.another_of(300)) {
        bolt<inch> cloth{.width = in(45)};
        cloth.selvedge = d.between(0, 2) == 0 ? in(0) : in({1, 2});
        cloth.gap = d.between(0, 3) == 0 ? in({1, 8}) : in(0);
        cloth.folded = d.between(0, 2) == 0;
        cloth.cutting = d.between(0, 1) == 0 ? cutting::edge_to_edge : cutting::strips;
        const auto pieces = some_pieces(d, cloth);
        const auto found = lay_out(pieces, cloth, {.steps = 2000});
        for (const lay_fault& fault : lay_faults(found, pieces, cloth))
            FAIL_CHECK(fault.what());
        seamstress she(cloth.folded ? cloth.width / 2 : cloth.width, cloth.selvedge, cloth.folded);
        for (const std::string& step : cutting_out(found, pieces, cloth, inch_ruler(32)))
            she.read(step);
        std::size_t kinds = 0;
        for (const cloth_piece<inch>& p : pieces) {
            const std::int64_t layers = cloth.folded && !p.on_fold ? 2 : 1;
            REQUIRE(she.kept().contains(p.name));
            const auto& cut = she.kept().at(p.name);
            CHECK(static_cast<std::int64_t>(cut.size()) == (p.quantity + layers - 1) / layers);
            for (const sheet_in_hand& one : cut) {
                const length<inch> width = p.on_fold ? one.across * 2 : one.across;
                const bool straight = width == p.size.width() && one.along == p.size.height();
                const bool turned = width == p.size.height() && one.along == p.size.width();
                CHECK((straight || (turned && p.grain == grain::may_turn)));
                CHECK((!p.on_fold || one.left == in(0)));
            }
            ++kinds;
        }
        CHECK(she.kept().size() == kinds + she.kept().count("a left-over"));
    }
}

TEST_CASE("off-cuts of a lay with cuts are what the printed cuts leave over") {
    dice d(19937);
    while (d.another_of(100)) {
        const bolt<inch> cloth{.width = in(45), .selvedge = in({1, 2}), .cutting = cutting::edge_to_edge};
        const auto pieces = some_pieces(d, cloth);
        const auto found = lay_out(pieces, cloth, {.steps = 1000});
        seamstress she(cloth.width, cloth.selvedge, false);
        for (const std::string& step : cutting_out(found, pieces, cloth, inch_ruler(32)))
            she.read(step);
        const auto kept = off_cuts(found, in({1, 16}), in({1, 16}));
        const auto left = she.kept().find("a left-over");
        CHECK(kept.size() == (left == she.kept().end() ? 0 : left->second.size()));
        for (std::size_t i = 1; i < kept.size(); ++i)
            CHECK(kept[i - 1].across * kept[i - 1].along >= kept[i].across * kept[i].along);
    }
}

TEST_CASE("off-cuts between more places than are looked through are refused") {
    lay<inch> found;
    found.made_ready = {0_in, 0_in, 54_in, 90_in};
    found.places.assign(10'000, {.piece = 0, .where = {0_in, 0_in, 54_in, 9_in}});
    CHECK(off_cuts(found, 1_in, 1_in).size() == 1);
    found.places.push_back(found.places[0]);
    CHECK_THROWS_WITH_AS(
        off_cuts(found, 1_in, 1_in),
        "the number of places that off-cuts are looked for between must be at most 10000: it was 10001", lay_error);
}

TEST_CASE("a strip is measured on what is in hand, not from an edge that has been cut away") {
    // Two strips of 5 1/2 in down cloth of 12 in with selvedges of 1/2 in: 5 1/2 and 11 in from the trimmed edge.
    const bolt<inch> cloth{.width = in(12), .selvedge = in({1, 2}), .cutting = cutting::strips};
    const std::vector<cloth_piece<inch>> pieces{{"strip", {in({11, 2}), in(20)}, 2}};
    const auto steps = cutting_out(lay_out(pieces, cloth), pieces, cloth, inch_ruler(16));
    REQUIRE(steps.size() == 2);
    CHECK(steps[0] ==
          "cut 0: straighten the end of the cloth, square to its selvedges; cut right across, 20 in from it; "
          "trim 1/2 in off each selvedge. The near side of a part is the one that lay nearest that end");
    CHECK(steps[1] ==
          "cut 1: along the cloth, 5 1/2 in from its left side, on the cloth 6 in from the left edge: takes "
          "off strip, 5 1/2 x 20 in and leaves strip, 5 1/2 x 20 in");
}

TEST_CASE("a lay that is cut free gives each piece its place from two edges that are there to be measured from") {
    dice d(19937);
    static const std::regex told(
        "(piece .), (.+?) x (.+?) in(, turned)?(, on the fold)?: (.+?) from the (left edge|fold), "
        "(.+?) from the end");
    for (const int round : d.cases(100)) {
        bolt<inch> cloth{.width = in(45), .selvedge = in({1, 2})};
        cloth.folded = round % 3 == 0;
        const auto pieces = some_pieces(d, cloth);
        const auto found = lay_out(pieces, cloth, {.steps = 1000});
        const auto steps = cutting_out(found, pieces, cloth, inch_ruler(32));
        REQUIRE(steps.size() == found.places.size() + 1);
        CHECK(steps[0] ==
              std::string("cut 0: straighten the end of the cloth, square to its selvedges. Pieces lie so far "
                          "from the ") +
                  (cloth.folded ? "fold" : "left edge") + " of the cloth and from that end:");
        std::vector<sheet_in_hand> laid;
        for (std::size_t i = 1; i < steps.size(); ++i) {
            std::smatch said;
            REQUIRE_MESSAGE(std::regex_match(steps[i], said, told), steps[i]);
            CHECK(said.str(7) == (cloth.folded ? "fold" : "left edge"));
            const sheet_in_hand next{read_length<inch>(said.str(6)), read_length<inch>(said.str(8)),
                                     read_length<inch>(said.str(2) + " in"), read_length<inch>(said.str(3) + " in")};
            CHECK(next.left >= (cloth.folded ? in(0) : in({1, 2}))); // clear of the selvedges
            CHECK(next.left + next.across <= (cloth.folded ? in(22) : in({89, 2})));
            for (const sheet_in_hand& other : laid) {
                const bool apart = next.left >= other.left + other.across || other.left >= next.left + next.across ||
                                   next.near >= other.near + other.along || other.near >= next.near + next.along;
                CHECK(apart);
            }
            laid.push_back(next);
        }
    }
}

TEST_CASE("no pieces need no cutting out, and one that is as wide as the cloth is ready when the cloth is") {
    const bolt<inch> cloth{.width = in(12), .cutting = cutting::edge_to_edge};
    const std::vector<cloth_piece<inch>> none, one{{"mat", {in(12), in(9)}}};
    CHECK(cutting_out(lay_out(none, cloth), none, cloth).empty());
    CHECK(cutting_out(lay_out(one, cloth), one, cloth, inch_ruler(16)) ==
          std::vector<std::string>{
              "cut 0: straighten the end of the cloth, square to its selvedges; cut right across, 9 in "
              "from it: that is mat, 12 x 9 in"});
}

TEST_CASE("both units are told of, each rounded from the exact place") {
    const bolt<inch> cloth{.width = in(12), .selvedge = in({1, 2}), .cutting = cutting::strips};
    const std::vector<cloth_piece<inch>> pieces{{"strip", {in({11, 3}), in(20)}, 3}};
    const auto steps = cutting_out(lay_out(pieces, cloth), pieces, cloth);
    REQUIRE(steps.size() == 3);
    // By hand: 3 2/3 in is 9.31 cm; the second cut lies 1/2 + 7 1/3 = 7 5/6 in, 19.90 cm, from the left edge.
    CHECK(steps[2] ==
          "cut 2: along what cut 1 left, 3 11/16 in (9.3 cm) from its left side, on the cloth 7 13/16 in "
          "(19.9 cm) from the left edge: takes off strip, 3 11/16 x 20 in (9.3 x 50.8 cm) and leaves strip, "
          "3 11/16 x 20 in (9.3 x 50.8 cm)");
}
