// What a debugger is asked to show; see shown.cmake beside it. Not constant, so that no compiler leaves them out.
#include <turncloth.hpp>

#include <cstdio>

using namespace turncloth;

namespace shown {

fraction part(-25, 2);
length<inch> depth = "12 1/2"_in;
length<centimetre> metric = "31.75"_cm;
length<centimetre> third = length_of<centimetre>({100, 3});
area<inch> cloth = 9_in * 7_in;
auto pin = at<finished_edge>("4 1/2"_in);
panel<inch> pocket(finished_size(9_in, 4_in), all_round(double_turned_hem("1/4"_in, "1/2"_in)));
finished_size<inch> finished = pocket.finished();
cut_size<inch> cut = pocket.cut();
figure<inch> working = pocket.width_working();
any_length typed = read_any_length("60 cm", any_unit::inches);

void stop() { std::puts("stopped"); }

} // namespace shown

int main() {
    shown::stop();
    std::printf("%g %g\n", to_double(shown::part), to_double(shown::working.value().value()));
}
