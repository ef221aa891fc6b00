// Cautions: each is a short text that says what to do, in the place where it is of use; every danger that the work is
// known for is named once, and none of them is an instruction for making.
#include <turncloth/notions/caution.hpp>

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <string_view>

using namespace turncloth;

namespace {

bool names(std::string_view sentence, std::string_view words) { return sentence.find(words) != std::string_view::npos; }

int how_many_name(std::string_view words) {
    int found = 0;
    for (const caution::note& n : caution::all)
        found += names(n.sentence, words);
    return found;
}

} // namespace

TEST_CASE("every caution is said once, ends with a full stop, and is short enough to be read") {
    std::set<std::string_view> said;
    for (const caution::note& n : caution::all) {
        CAPTURE(n.sentence);
        CHECK(said.insert(n.sentence).second);
        CHECK(n.sentence.size() > 40);
        CHECK(n.sentence.size() < 330);
        CHECK(n.sentence.back() == '.');
        CHECK_FALSE(names(n.sentence, "  "));
    }
}

TEST_CASE("cautions stand in the order of the work") {
    for (std::size_t i = 1; i < caution::all.size(); ++i) {
        CAPTURE(caution::all[i].sentence);
        CHECK(caution::all[i - 1].at <= caution::all[i].at);
    }
}

TEST_CASE("the dangers of each kind of work are named, with the rule that holds where one is known") {
    // Common practice, and the rules of consumer safety and of work named beside each caution.
    CHECK(caution::cutting.at == caution::work::cutting);
    CHECK(names(caution::cutting, "rotary cutter"));
    CHECK(caution::hot_iron.at == caution::work::pressing);
    CHECK(names(caution::hot_iron, "steam"));
    CHECK(names(caution::waxed_cloth, "waxed cloth"));
    CHECK(names(caution::film_and_iron, "smother"));
    CHECK(names(caution::film_fumes, "fumes"));
    CHECK(names(caution::pins_and_needles, "Count"));
    CHECK(names(caution::pins_and_needles, "film"));
    CHECK(names(caution::many_layers, "light needle"));
    CHECK(names(caution::needles_and_metal, "handwheel"));
    CHECK(names(caution::zipper_ends, "fly"));
    CHECK(names(caution::zipper_ends, "melted"));
    CHECK(names(caution::setting_eyelets, "29 CFR 1910.133"));
    CHECK(names(caution::filling, "fire code"));
    CHECK(names(caution::loose_filling, "dust"));
    CHECK(names(caution::small_parts, "toddlers"));
    CHECK(names(caution::infants_and_animals, "CPSC"));
    CHECK(names(caution::ties_on_childrens_clothing, "ASTM F1816"));
    CHECK(names(caution::ties_on_childrens_clothing, "EN 14682"));
    CHECK(names(caution::hanging_up, "licensed"));
}

TEST_CASE("infants and animals have one caution, which does not drown the others") {
    CHECK(how_many_name("infants") == 1);
    CHECK(how_many_name("left alone") == 1);
    // To clip to a stitching line is an instruction, and too deep: one clips to just short of it.
    CHECK(how_many_name("stitching line") == 0);
}

TEST_CASE("a caution is used as a text") {
    const std::string text(caution::cutting);
    CHECK(text == caution::cutting.sentence);
}
