// Designs are checked before they are made: every reference, length and name, all at once, as sentences and as data.
#include <turncloth/making/design.hpp>
#include <turncloth/measure/read.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <type_traits>

using namespace turncloth;
using namespace turncloth::literals;

namespace {

// A place from a finished edge is no place on a chalk line, which is measured from the cut edge.
static_assert(!std::is_convertible_v<place<finished_edge, inch>, decltype(chalk_line<inch>::in)>);
static_assert(!std::is_convertible_v<length<inch>, decltype(chalk_line<inch>::in)>);
static_assert(std::is_default_constructible_v<laying<inch>>);
static_assert(std::is_default_constructible_v<crease<inch>>);
static_assert(std::is_default_constructible_v<stitching<inch>>);
static_assert(std::is_default_constructible_v<seam_of<inch>>);
static_assert(std::is_default_constructible_v<snip<inch>>);
static_assert(std::is_default_constructible_v<spot<inch>>);
static_assert(std::is_default_constructible_v<mouth<inch>>);
static_assert(std::is_default_constructible_v<compartment<inch>>);

constexpr chalk_line<inch> line(cut_part on, edge from, length<inch> in) {
    return {.on = on, .from = from, .in = at<cut_edge>(in)};
}
static_assert(apart(line({0}, edge::top, 1_in), line({0}, edge::top, 3_in)) == 2_in);

/// How many faults of that kind name that thing.
long faults_of(const making<inch>& m, fault kind, const std::string& what) {
    const auto all = m.faults();
    return std::count_if(all.begin(), all.end(), [&](const making_fault& f) {
        return f.facts.kind == kind && f.facts.what.find(what) != std::string::npos && !f.sentence.empty();
    });
}

struct mat {
    making<inch> design{"mat"};
    cut_part top, pocket;
    mat() {
        top = design.cut({.name = "top", .width = 12_in, .height = 9_in});
        pocket = design.cut({.name = "pocket", .width = 5_in, .height = 4_in, .count = 2});
        design.add(laying<inch>{.piece = pocket[0], .on = top, .left = 1_in, .top = 3_in});
        design.add(laying<inch>{.piece = pocket[1], .on = top, .left = 6_in, .top = 3_in});
    }
};

} // namespace

TEST_CASE("a sound design has no faults, and may be copied") {
    mat m;
    for (const std::int64_t k : {0, 1})
        m.design.add(
            stitching<inch>{.along = line(m.pocket[k], edge::bottom, "1/4"_in), .through = {m.pocket[k], m.top}});
    const making<inch> copy = m.design;
    CHECK(copy.faults().empty());
    CHECK_NOTHROW(copy.require_sound());
    CHECK(name_of(copy, m.pocket[1]) == "pocket 2");
    CHECK(name_of(copy, m.top) == "top");
}

TEST_CASE("lines of two parts, or from two edges, have no distance") {
    const cut_part a{0}, b{1};
    CHECK_THROWS_WITH_AS(apart(line(a, edge::top, 1_in), line(b, edge::top, 2_in)),
                         "two lines on different parts have no distance from each other", making_error);
    try {
        apart(line(a, edge::top, 1_in), line(a, edge::left, 2_in));
        FAIL("lines from two edges were measured");
    } catch (const making_error& refused) {
        CHECK(refused.facts().kind == fault::disagree);
        CHECK(refused.facts().where == "left");
    }
}

TEST_CASE("every fault is found at once, each as data") {
    mat m;
    auto& d = m.design;
    const cut_part stray = d.cut({.name = "stray", .width = 3_in, .height = 3_in});
    d.add(stitching<inch>{.along = line(m.top, edge::left, 20_in)});                           // off the part
    d.add(stitching<inch>{.along = line(m.top, edge::left, 1_in), .through = {m.top, stray}}); // never laid there
    d.add(stitching<inch>{.along = {m.top, edge::left, at<cut_edge>(1_in), 4_in, 4_in}});      // of no length
    d.add(stitching<inch>{.along = line(m.pocket[7], edge::left, 1_in)});                      // no such copy
    d.add(laying<inch>{.piece = m.pocket[0], .on = m.top});                                    // laid twice
    d.add(laying<inch>{.piece = m.top, .on = m.pocket[0]});                                    // round in a circle
    d.add(seam_of<inch>{.one = {line(m.top, edge::top, 1_in)}, .other = {line(m.top, edge::bottom, 1_in)}});
    d.add(seam_of<inch>{.one = {line(m.top, edge::top, "1/2"_in)}, .other = {line(stray, edge::top, 1_in)}});
    d.add(compartment<inch>{.name = "left", .between = {m.top, m.pocket[0]}});
    d.add(compartment<inch>{.name = "left", .between = {m.top, m.pocket[1]}});
    d.add(before{{operation_kind::crease, 4}, {operation_kind::laying, 0}});

    CHECK(faults_of(d, fault::too_large, "a row") == 1);
    CHECK(faults_of(d, fault::missing, "a wall of a row") == 1);
    CHECK(faults_of(d, fault::too_small, "the length of a row") == 1);
    CHECK(faults_of(d, fault::missing, "a row") == 2); // and the wall
    CHECK(faults_of(d, fault::repeated, "the laying of a piece") == 1);
    CHECK(faults_of(d, fault::unsuitable, "a laying") == 1);
    CHECK(faults_of(d, fault::disagree, "the two sides of a seam") == 1);
    CHECK(faults_of(d, fault::repeated, "an edge of a seam") == 1);
    CHECK(faults_of(d, fault::repeated, "compartments") == 1);
    CHECK(faults_of(d, fault::missing, "an operation") == 1);
    CHECK(d.faults().size() == 10);
    try {
        d.require_sound();
        FAIL("a design with faults was taken");
    } catch (const making_error& refused) {
        CHECK(refused.faults().size() == 10);
        CHECK(refused.facts().index == refused.faults().front().facts.index);
    }
}

TEST_CASE("what is off a part is said with what was given and what there is") {
    mat m;
    m.design.add(stitching<inch>{.along = line(m.top, edge::left, 20_in)});
    const auto all = m.design.faults();
    REQUIRE(all.size() == 1);
    CHECK(all[0].sentence == "a row on top lies 20 in from its left edge, and it is cut 12 in that way");
    CHECK(all[0].facts.given->numerator == 20);
    CHECK(all[0].facts.most->numerator == 12);
    CHECK(all[0].facts.where == "top");
}

TEST_CASE("sides of a seam agree, or something takes the difference up") {
    making<inch> d("bag");
    const cut_part front = d.cut({.name = "front", .width = 18_in, .height = 10_in});
    const cut_part back = d.cut({.name = "back", .width = 17_in, .height = 10_in});
    seam_of<inch> foot{.one = {line(front, edge::bottom, "1/2"_in)}, .other = {line(back, edge::bottom, "1/2"_in)}};
    d.add(foot);
    REQUIRE(d.faults().size() == 1);
    CHECK(d.faults()[0].sentence ==
          "a seam joins 18 in of front to 17 in of back, and nothing takes up the difference");
    making<inch> eased("bag");
    eased.cut({.name = "front", .width = 18_in, .height = 10_in});
    eased.cut({.name = "back", .width = 17_in, .height = 10_in});
    foot.taken_up = surplus::ease;
    eased.add(foot);
    CHECK(eased.faults().empty());
}

TEST_CASE("too many rows are refused before anything is made") {
    making<inch> d("far too much");
    const cut_part top = d.cut({.name = "top", .width = 12_in, .height = 9_in});
    d.add(stitching<inch>{.along = line(top, edge::left, 1_in), .each = {at<cut_edge>(1_in), "1/100000"_in, 900'000}});
    CHECK(faults_of(d, fault::does_not_fit, "the number of rows") == 1);
}

TEST_CASE("so are too many parts, spots and compartments, however they are counted") {
    constexpr std::int64_t many = std::int64_t{1} << 62;
    making<inch> parts("far too many");
    parts.cut({.name = "patch", .width = 2_in, .height = 2_in, .count = many});
    parts.cut({.name = "other patch", .width = 2_in, .height = 2_in, .count = many});
    CHECK(faults_of(parts, fault::does_not_fit, "the number of parts") == 1);
    making<inch> d("far too much");
    const cut_part top = d.cut({.name = "top", .width = 12_in, .height = 9_in});
    const cut_part back = d.cut({.name = "back", .width = 12_in, .height = 9_in});
    d.add(spot<inch>{.along = line(top, edge::top, 1_in),
                     .places = {at<cut_edge>(1_in), "1/1000000000"_in, 1'000'000'000}});
    d.add(compartment<inch>{.name = "pocket", .between = {top, back}, .count = many});
    CHECK(faults_of(d, fault::does_not_fit, "the number of spots") == 1);
    CHECK(faults_of(d, fault::does_not_fit, "the number of compartments") == 1);
}

TEST_CASE("so is more than is turned in a design, and as much as may be is sound") {
    making<inch> d("pleats");
    const cut_part cloth = d.cut({.name = "cloth", .width = 9000_in, .height = 9_in});
    for (std::int64_t i = 1; i <= making<inch>::most_turned; ++i)
        d.add(crease<inch>{.at = {.on = cloth, .from = edge::left, .in = at<cut_edge>(1_in * i)}});
    CHECK(d.faults().empty());
    d.add(crease<inch>{.at = {.on = cloth, .from = edge::left, .in = at<cut_edge>(1_in / 2)}});
    CHECK(faults_of(d, fault::does_not_fit, "the number of creases") == 1);
    const auto too_many = [&](const auto& one, const char* what) {
        making<inch> all("pleats");
        all.cut({.name = "cloth", .width = 9000_in, .height = 9_in});
        for (std::int64_t i = 0; i <= making<inch>::most_turned; ++i)
            all.add(one);
        return faults_of(all, fault::does_not_fit, what);
    };
    CHECK(too_many(laying<inch>{.piece = cloth}, "the number of layings") == 1);
    CHECK(too_many(seam_of<inch>{}, "the number of spans of seams") == 1);
    CHECK(too_many(snip<inch>{.at = {.on = cloth}}, "the number of clips and slits") == 1);
}
