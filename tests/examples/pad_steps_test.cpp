// The kneeling pad's steps: in the published order, every row among them, and in words that can be followed.
#include "../../examples/sheets/projects.hpp"
#include "making/sentences.hpp"
#include "making/walked.hpp"
#include <turncloth/making/executed.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <set>
#include <string>
#include <tuple>
#include <vector>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

/// 16 x 10 x 1 1/2 in, its edging in one; 12 x 30 in, its edging in four and its zipper upright; 12 x 12 in, folded to go in.
template <length_unit Unit>
std::vector<making<Unit>> pads() {
    const auto at = [](length<inch> l) { return as<Unit>(l); };
    std::vector<making<Unit>> all;
    for (const auto& [w, h, thick] : {std::tuple(16_in, 10_in, "1 1/2"_in), std::tuple(12_in, 30_in, 2_in),
                                      std::tuple(12_in, 12_in, 2_in), std::tuple(40_in, 36_in, 3_in)})
        all.push_back(*allotment::kneeling_pad::design(finished_size<Unit>(at(w), at(h)), at(thick)).design());
    return all;
}

template <length_unit Unit>
class pad_order {
public:
    explicit pad_order(const making<Unit>& d) : d_(d), steps_(steps_of(d)) {}

    long of(const operation& o) const {
        const auto found =
            std::find_if(steps_.begin(), steps_.end(), [&](const making_step& s) { return s.what == o; });
        REQUIRE(found != steps_.end());
        return found - steps_.begin();
    }
    /// Of the seams, those that join a piece of one name to what has another in its name.
    std::vector<operation> seams(const std::string& one, const std::string& other) const {
        std::vector<operation> found;
        for (std::size_t i = 0; i < d_.seams().size(); ++i)
            if (name(d_.seams()[i].one[0].on) == one &&
                name(d_.seams()[i].other[0].on).find(other) != std::string::npos)
                found.push_back({operation_kind::seam, i});
        return found;
    }
    std::string name(const cut_part& p) const { return d_.parts()[p.index].name; }
    long of_moment(moment_kind kind) const {
        for (std::size_t i = 0; i < d_.moments().size(); ++i)
            if (d_.moments()[i].what == kind)
                return of({operation_kind::moment, i});
        FAIL("no such moment");
        return 0;
    }
    long last_seam() const {
        long last = 0;
        for (std::size_t i = 0; i < d_.seams().size(); ++i)
            last = std::max(last, of({operation_kind::seam, i}));
        return last;
    }
    std::vector<long> rows_on(const std::string& part) const {
        std::vector<long> found;
        for (std::size_t i = 0; i < d_.rows().size(); ++i)
            for (const cut_part& wall : d_.rows()[i].through)
                if (name(wall) == part) {
                    found.push_back(of({operation_kind::stitching, i}));
                    break;
                }
        return found;
    }

private:
    const making<Unit>& d_;
    std::vector<making_step> steps_;
};

} // namespace

// Published, University of Kentucky CT-MMB.174, a zipper into a seam: the seam is sewn to the marks of the opening, its
// allowances are pressed, then the zipper is sewn in.
// Published, how boxed covers with a zipper are made (common practice): the zipper goes in first, while its piece is flat,
// and is left open; the edging is closed to a ring, and clipped at its corners, before it is sewn to a plate; the cover is
// turned out through the zipper, filled, and closed.
TEST_CASE("a pad's zipper comes before the seam that shuts it in, and is open before the cover is turned out") {
    const auto check = [](const auto& designs) {
        for (const auto& d : designs) {
            const pad_order order(d);
            CAPTURE(d.name());
            const long base = order.of(order.seams("base half", "edging").at(0)),
                       top = order.of(order.seams("top panel", "edging").at(0)),
                       halves = order.of(order.seams("base half", "base half").at(0));
            const long opened = order.of({operation_kind::opening, 0}), turned = order.of_moment(moment_kind::turn_out),
                       filled = order.of_moment(moment_kind::put_in), closed = order.of_moment(moment_kind::close);
            const std::vector<long> zipper = order.rows_on("zipper");
            REQUIRE(zipper.size() == 4);
            for (const long row : zipper) {
                CHECK(halves < row);
                CHECK(row < base);
                CHECK(row < top);
            }
            CHECK(order.last_seam() == std::max(base, top));
            CHECK(opened < order.last_seam());
            CHECK(order.last_seam() < turned);
            CHECK(turned < filled);
            CHECK(filled < closed);
            for (std::size_t i = 0; i < d.seams().size(); ++i)
                if (order.name(d.seams()[i].one[0].on).find("edging") != std::string::npos)
                    CHECK(order.of({operation_kind::seam, i}) < std::min(base, top));
            for (std::size_t i = 0; i < d.snips().size(); ++i)
                CHECK(order.of({operation_kind::snip, i}) < std::min(base, top));
        }
    };
    check(pads<inch>());
    check(pads<centimetre>());
}

TEST_CASE("every row and every seam of a pad stands in one step, with its length and its layers") {
    for (const making<inch>& d : pads<inch>()) {
        const auto made = execute(d);
        CHECK(made.faults.empty());
        const auto plan = work_plan_of(d, made.steps);
        std::multiset<std::size_t> rows, seams;
        length<inch> said, sewn;
        for (const auto& g : plan.groups)
            for (const auto& s : g.steps) {
                for (const operation& o : s.stands_for)
                    if (o.kind == operation_kind::stitching)
                        rows.insert(o.index);
                    else if (o.kind == operation_kind::seam)
                        seams.insert(o.index);
                if (s.verb != work_verb::sew && s.verb != work_verb::seam)
                    continue;
                for (const auto& p : s.places) {
                    CHECK(p.least > 0);
                    said += p.sewn * static_cast<std::int64_t>(std::max<std::size_t>(p.across.at.size(), 1));
                }
            }
        for (const auto& r : made.rows)
            sewn += r.sewn;
        CHECK(said == sewn);
        for (std::size_t i = 0; i < d.rows().size(); ++i)
            CHECK(rows.count(i) == 1);
        for (std::size_t i = 0; i < d.seams().size(); ++i)
            CHECK(seams.count(i) == 1);
    }
}

// Followed with paper, scissors and pins. By hand: the corners of the edging lie 1/2 in further from its cut left edge than
// 16, 16 + 10 and 2 x 16 + 10; round the base the second half's sides begin 5 in beyond a corner.
TEST_CASE("a pad of 16 x 10 x 1 1/2 in is made in words that can be followed") {
    const auto all = sentences(pads<inch>()[0]);
    const auto says = [&](const std::string& sentence) {
        CHECK_MESSAGE(std::find(all.begin(), all.end(), sentence) != all.end(), sentence);
    };
    says("With right sides together, sew the cut top edge of base half 1 to the cut top edge of base half 2, 3/4 in "
         "from "
         "the cut edges, and leave the zipper open from 2 to 15 in off the cut left edge of base half 1: 4 in in all, "
         "through 2 layers.");
    says("Press the seam open: on each base half, turn the top edge over to the wrong side by 3/4 in, along the seam "
         "and "
         "across what is left open, and press.");
    says("Open base half 2 out beside base half 1, right sides up, so that both lie flat with their folded edges "
         "together.");
    const auto begins = [&](const std::string& words) {
        return std::find_if(all.begin(), all.end(), [&](const std::string& s) { return s.rfind(words, 0) == 0; });
    };
    CHECK(begins("Open base half 2") < begins("Lay the zipper"));
    // The tape begins 5/8 in before the opening, 2 in from the cut edge, and is sewn across in the middle of that.
    says("Sew a row through the zipper, base half 1 and base half 2, 1 11/16 in from the cut left and right edges of "
         "base "
         "half 1, from 1/4 on one side to 1/4 in on the other side of the folded top edge of base half 1: 1/2 in each, "
         "through 3 layers.");
    for (const std::string side : {"top", "bottom"})
        says(
            "Clip the edging at 16 1/2 in, 26 1/2 in and 42 1/2 in from its cut left edge: cut 3/8 in into it from its "
            "cut " +
            side + " edge, and no deeper.");
    says("With right sides together, sew the cut right edge of the edging to its cut left edge, 1/2 in from the cut "
         "edges, from 1/2 to 2 in off the cut top edge of the edging: 1 1/2 in in all, through 2 layers.");
    says("With right sides together, sew the cut bottom, left and right edges of base half 1 and the cut right, bottom "
         "and left edges of base half 2 to the edging, 1/2 in from the cut edges: 52 in in all, through 2 to 3 layers. "
         "Measured from the cut left edge of the edging, its cut bottom edge takes the cut bottom edge of base half 1 "
         "from 1/2 to 16 1/2 in, the cut left edge of base half 1 from 16 1/2 to 21 1/2 in, the cut right edge of base "
         "half 2 from 21 1/2 to 26 1/2 in, the cut bottom edge of base half 2 from 26 1/2 to 42 1/2 in, the cut left "
         "edge of base half 2 from 42 1/2 to 47 1/2 in and the cut right edge of base half 1 from 47 1/2 to 52 1/2 in. "
         "Turn each corner where the seam lines cross, with the needle down.");
    says("Open the zipper wide enough for a hand, before the last seam.");
    says("Turn it out through the zipper.");
    says("Put in the filling.");
    says("Close the zipper again.");
}

// By hand: foam of 12 1/4 x 12 1/4 x 2 in, giving 1/4 on each side, is 13 3/4 in half round; the zipper can open 12 - 2 x 1.
// Folded it is 6 1/8 by 4, and 9 5/8 half round.
TEST_CASE("a filling that passes the zipper only when it is folded is put in folded") {
    const auto all = sentences(pads<inch>()[2]);
    CHECK(std::find(all.begin(), all.end(), "Put in the filling, folded in half, and let it open out inside.") !=
          all.end());
    const auto passed = execute(pads<inch>()[2]).boxed.passages.at(0);
    CHECK(passed.folded == 1);
    CHECK(passed.needs == "9 5/8"_in);
    CHECK(passed.has == 10_in);
}

// By hand: foam of 16 1/4 x 14 1/4 x 4 in is 17 3/4 in half round; the zipper opens 16 - 2 x 1. Four times as thick is 16:
// more than it is wide, so that it does not fold.
TEST_CASE("a pad whose filling would not go in is refused, with both figures") {
    try {
        static_cast<void>(allotment::kneeling_pad::make(finished_size(16_in, 14_in), 4_in));
        FAIL("it was made");
    } catch (const sheet_error& refused) {
        REQUIRE(refused.reasons().size() == 1);
        CHECK(refused.reasons()[0].sentence ==
              "filling cannot pass \"zipper\": it needs an opening of 17 3/4 in, and that one is 14 in");
        CHECK(refused.reasons()[0].facts.kind == fault::no_room);
        CHECK(refused.reasons()[0].facts.given->numerator == 71);
        CHECK(refused.reasons()[0].facts.most->numerator == 14);
    }
}

// The tape lies 1/2 in to each side of the folds, and 3/4 in is turned under beside them: laid from beneath, it lies 1/4 in
// inside the cut edge of what is turned under of the other half. The fold itself is under the tape, and from above it is
// under that half.
TEST_CASE("where a pad's tape is laid is measured from an edge in sight on the side that it is laid on") {
    for (const making<inch>& d : pads<inch>()) {
        CAPTURE(d.name());
        const auto all = sentences(d);
        const auto laid = std::find_if(all.begin(), all.end(), [](const std::string& s) {
            return s.find("With the wrong side of base half 1 up, lay the zipper, wrong side up, on it") == 0;
        });
        REQUIRE(laid != all.end());
        CAPTURE(*laid);
        CHECK(laid->find(
                  "from the cut left edge of base half 1 and its top edge 1/4 in from the cut top edge of base half "
                  "2") != std::string::npos);
    }
}

// 1 7/9 in is nearest to 1 3/4 among the sixteenths, as 28 and 29 of them are 1.75 and 1.8125 in.
TEST_CASE("a thickness that a ruler changed is printed with what was asked for, as a size is") {
    const auto made = [](length<inch> thickness, length<inch> graduation) {
        return allotment::kneeling_pad::make<inch>(finished_size(16_in, 10_in), thickness, {}, graduation).name;
    };
    CHECK(made("1 7/9"_in, "1/16"_in) == "Kneeling pad cover, 1 3/4 in thick, for 1 7/9 in asked");
    CHECK(made("1 7/9"_in, {}) == "Kneeling pad cover, 1 7/9 in thick");
    CHECK(made("1 3/4"_in, "1/16"_in) == "Kneeling pad cover, 1 3/4 in thick");
}

// Common practice: a cover of cloth that frays, which is washed, has its raw allowances neatened before the seams.
TEST_CASE("a pad's raw allowances are neatened while its pieces are flat, before any seam") {
    const auto s = allotment::kneeling_pad::make(finished_size(16_in, 10_in));
    std::vector<std::string> all;
    for (const auto& g : s.steps.groups)
        for (const std::string& sentence : sentences_of(s.steps, g))
            all.push_back(sentence);
    const auto begins = [&](const std::string& words) {
        return std::find_if(all.begin(), all.end(), [&](const std::string& one) { return one.rfind(words, 0) == 0; });
    };
    CHECK(begins("Cut every piece") < begins("Overcast every cut edge of the cover"));
    CHECK(begins("Overcast every cut edge of the cover") < begins("With right sides together, sew"));
    CHECK(begins("With right sides together, sew") != all.end());
}

TEST_CASE("whoever follows the printed steps of a project has the side up that each step is done on") {
    for (const making<inch>& d : pads<inch>())
        CHECK(things::walk(d) > 0);
    for (const making<centimetre>& d : pads<centimetre>())
        CHECK(things::walk(d) > 0);
    for (const auto& size : {finished_size(24_in, 18_in), finished_size(40_in, 33_in)}) {
        things::walk(*allotment::tool_roll::design(size).design());
        things::walk(*allotment::organiser::design(size).design());
    }
}
