// measure/label.hpp: a label is a literal, or is kept by a table of words; nothing else converts to one.
#include <turncloth/measure/label.hpp>
#include <turncloth/measure/read.hpp>
#include <turncloth/measure/working.hpp>

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <type_traits>

using namespace turncloth;

namespace {

constexpr label hem = "hem";
static_assert(hem == "hem");
static_assert(hem.text().size() == 3);
static_assert(label() == "");
static_assert(std::string_view(label("a\0b")).size() == 3); // a literal as it stands

static_assert(!std::is_convertible_v<std::string, label>);
static_assert(!std::is_convertible_v<const std::string&, label>);
static_assert(!std::is_convertible_v<std::string_view, label>);
static_assert(!std::is_convertible_v<const char*, label>);
static_assert(std::is_trivially_copyable_v<label>);

} // namespace

TEST_CASE("what a table keeps is good as long as one of its copies lives") {
    label kept;
    words survivor;
    {
        words table;
        const std::string made =
            "pocket number " + std::to_string(1'000'000); // longer than a text that is kept in place
        kept = table.keep(made);
        CHECK(kept.text().data() != made.data());
        for (int i = 0; i < 1000; ++i)
            table.keep(std::to_string(i));
        survivor = table;
    }
    CHECK(kept == std::string("pocket number 1000000"));
    CHECK(to_text(figure<inch>().plus(2_in, kept)) == "2 in = 2 in pocket number 1000000");
}
