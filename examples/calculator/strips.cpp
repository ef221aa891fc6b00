// Calculations of strips: a binding all round a piece, from strips straight across the cloth; and strips on the bias.
#include "calculation.hpp"
#include <turncloth/notions/bias.hpp>
#include <turncloth/notions/binding.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/notions/joining.hpp>

#include <array>
#include <string_view>

using namespace turncloth;
using namespace calculator;

namespace {

constexpr std::array<std::string_view, 2> layers = {"double", "single"};

/// What is cut is rounded up to the next line of a cutting rule; what is marked goes to the nearest of a fine one.
template <length_unit Unit>
constexpr length<Unit> cutting_line = length_of<Unit>(metric_unit<Unit> ? fraction(1, 2) : fraction(1, 8));
template <length_unit Unit>
constexpr length<Unit> marking_line = length_of<Unit>(metric_unit<Unit> ? fraction(1, 10) : fraction(1, 16));

/// The strips are joined across the corner of two laid at right angles, the last join closing the ring.
template <length_unit Unit>
void binding(const given& g, reply& r) {
    const finished_size<Unit> piece(g.size<Unit>("width"), g.size<Unit>("height"));
    const length<Unit> shows = g.size<Unit>("shows");
    const binding_allowance<Unit> taken{.seam = g.size<Unit>("seam")};
    const figure<Unit> width = g.choice("layers", layers) == 0 ? double_fold(shows, taken) : single_fold(shows, taken);
    const length<Unit> lost =
        join_loss(join::diagonal, strip_ends<Unit>{width.value(), taken.seam}, marking_line<Unit>);
    const figure<Unit> needed = binding_length(piece, binding_extra<Unit>{.overlap = lost});
    const strips<Unit> cut =
        strips_across(needed.value(), strip_across<Unit>{width.value(), g.size<Unit>("usable"), lost});
    r.say("strip", "width of each strip, to cut", width);
    r.say("length", "length of strip", needed);
    r.say("count", "strips to cut, straight across the cloth", cut.count);
    r.say("cloth", "cloth that they take", cut.cloth);
    r.say("joins", "joins before the last, which closes the ring", cut.joins);
    r.say("left", "left over of the strip", cut.left_over);
}

template <length_unit Unit>
void bias(const given& g, reply& r) {
    const bias_wanted<Unit> wanted{g.size<Unit>("length"), g.size<Unit>("width"), g.size<Unit>("seam")};
    const length<Unit> across = g.size<Unit>("across"), step = cutting_line<Unit>;
    // A square of the cloth; where the cloth is too narrow for it, a length of its whole width.
    const length<Unit> square = square_for_bias(wanted, step);
    const bias_piece<Unit> piece = square <= across ? bias_piece<Unit>{square, square}
                                                    : bias_piece<Unit>{across, cloth_for_bias(wanted, across, step)};
    const auto cut = bias_from(piece, bias_strip<Unit>{wanted.width, wanted.seam}, marking_line<Unit>);
    r.say("piece/across", "cloth to cut them from, across", piece.across);
    r.say("piece/along", "and along the selvedge", piece.along);
    r.say("count", "strips", cut.count);
    r.say("joins", "joins", cut.joins);
    r.say("joined", "joined, they come to", cut.joined);
    r.say("mark", "along the selvedge, from one cutting line to the next",
          along_selvedge(wanted.width, marking_line<Unit>, rounding::nearest));
}

constexpr auto chosen = field::kind::choice;

constexpr calculation binding_sum{.name = "binding",
                                  .title = "A binding all round a piece",
                                  .about =
                                      "Strips cut straight across the cloth, folded to a mitre at each corner: how "
                                      "wide, how many and how much cloth.",
                                  .asks = {{"width", "finished width of the piece", "17 in", "43 cm"},
                                           {"height", "finished height of the piece", "13 in", "33 cm"},
                                           {"shows", "binding that shows", "3/8 in", "1 cm"},
                                           {"layers", "binding", "double", "double", chosen, layers},
                                           {"seam", "seam that sews it on", "3/8 in", "1 cm"},
                                           {"usable", "usable width of the cloth", "42 in", "108 cm"}},
                                  .cautions = {caution::cutting, caution::hot_iron},
                                  .in_inches = binding<inch>,
                                  .in_centimetres = binding<centimetre>};
const listed_calculation binding_is_listed(binding_sum);
constexpr calculation bias_sum{.name = "bias",
                               .title = "Strips on the bias",
                               .about = "What to cut at 45 degrees to the threads for a length of strip, its joins "
                                        "counted.",
                               .asks = {{"length", "length of strip", "118 in", "300 cm"},
                                        {"width", "width of the strip, to cut", "1 3/4 in", "4.5 cm"},
                                        {"seam", "seam of each join", "1/4 in", "6 mm"},
                                        {"across", "width of the cloth", "42 in", "108 cm"}},
                               .cautions = {caution::cutting},
                               .in_inches = bias<inch>,
                               .in_centimetres = bias<centimetre>};
const listed_calculation bias_is_listed(bias_sum);

} // namespace
