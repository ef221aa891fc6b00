// A whole program of a user: from an installed prefix, from the sources, without exceptions, without type information.
// It ends with 0 when a length is worked out right, what cannot be made is refused as a value, and then a text that is none
// is refused.
#include <turncloth.hpp>

#include <cstdio>
#include <cstdlib>
#include <exception>

#ifdef BOOST_NO_EXCEPTIONS
// Such a program says itself what becomes of a refusal.
namespace boost {

void throw_exception(const std::exception& refused) {
    std::puts(refused.what());
    std::exit(EXIT_SUCCESS);
}

void throw_exception(const std::exception& refused, const source_location&) { throw_exception(refused); }

} // namespace boost
#endif

namespace {

// The length worked out, the refusal left to the caller.
int use() {
    using namespace turncloth;
    const auto cut = length_of<inch>(10) + 2 * read_length<inch>("1 1/4");
    if (to_text(cut) != "12 1/2 in" || as<centimetre>(cut) != length_of<centimetre>({127, 4}))
        return EXIT_FAILURE;
    if (try_read_length<inch>("12 1/") || *try_read_length<inch>("12 1/2") != cut || try_cut_size(cut, -cut))
        return EXIT_FAILURE;
    project<inch> roll("roll", finished_size(20_in, 12_in));
    roll.add(must_reach<inch>{.what = "the tie", .has = 20_in, .needs = 30_in});
    if (try_sheet_of(roll) || try_sheet_of(roll).refused().reasons().empty())
        return EXIT_FAILURE;
    read_length<inch>("12 1/");
    return EXIT_FAILURE;
}

} // namespace

#ifdef BOOST_NO_EXCEPTIONS
int main() { return use(); }
#else
int main() {
    try {
        return use();
    } catch (const turncloth::text_error& refused) {
        std::puts(refused.what());
        return EXIT_SUCCESS;
    }
}
#endif
