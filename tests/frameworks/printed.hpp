// What a framework for tests must print of the library's values by itself, without an adapter: that of their to_text.
#ifndef TURNCLOTH_TESTS_FRAMEWORKS_PRINTED_HPP
#define TURNCLOTH_TESTS_FRAMEWORKS_PRINTED_HPP

#include <turncloth.hpp>

#include <cstdio>
#include <string>

namespace printed {

/// How many of them `show` prints otherwise, each told of on a line.
template <class Show>
int otherwise(Show show) {
    using namespace turncloth;
    int wrong = 0;
    const auto expect = [&](const auto& value, const char* text) {
        if (const std::string shown = show(value); shown != text) {
            std::printf("%s is printed as %s\n", text, shown.c_str());
            ++wrong;
        }
    };
    const panel<inch> pocket(finished_size(9_in, 4_in), all_round(seam("1/2"_in)));
    expect("12 1/2"_in, "12 1/2 in");
    expect(fraction(-25, 2), "-12 1/2");
    expect(pocket.finished(), "9 x 4 in");
    expect(pocket.cut(), "10 x 5 in");
    expect(area_of(as<centimetre>(pocket.cut())), "322.58 sq cm"); // 2.54 cm to the inch, squared
    expect(at<finished_edge>(31.75_cm), "31.75 cm from the finished edge");
    expect(pocket.width_working(), "10 in = 9 in finished + 2 x 1/2 in seam allowance");
    return wrong;
}

} // namespace printed

#endif
