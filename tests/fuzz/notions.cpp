// Notions of any lengths and counts, beside GMP: typed errors alone; every figure is the sum that it says it is, every
// count the least or the most that does, and what is worked out backwards comes back. Roots and arcs lie within a
// graduation of what doubles give.
#include "feed.hpp"
#include <turncloth/notions/fastening.hpp>

#include <gmpxx.h>

#include <cmath>

using namespace fuzzing;

namespace {

/// As people ask for mostly; at times beside a power of two, where products pass 64 bits, or anything at all.
std::int64_t count(feed& bytes) {
    switch (bytes.between(0, 7)) {
    case 0:
        return bytes.ConsumeIntegral<std::int64_t>();
    case 1:
    case 2: {
        const std::int64_t power = bytes.between(28, 63), beside = bytes.between(-2, 2);
        return power == 63 ? INT64_MAX - 2 + beside : (std::int64_t{1} << power) + beside;
    }
    default:
        return bytes.between(-1, 300);
    }
}

mpq_class exact(fraction x) {
    mpq_class q;
    mpz_set_si(mpq_numref(q.get_mpq_t()), numerator(x));
    mpz_set_si(mpq_denref(q.get_mpq_t()), denominator(x));
    return q;
}
template <length_unit Unit>
mpq_class exact(length<Unit> l) {
    return exact(l.value());
}
template <length_unit Unit>
mpq_class exact(const figure<Unit>& f) {
    return exact(f.value());
}
mpq_class whole(std::int64_t n) { return exact(fraction(n)); }
mpz_class floor(const mpq_class& q) {
    mpz_class n;
    mpz_fdiv_q(n.get_mpz_t(), q.get_num_mpz_t(), q.get_den_mpz_t());
    return n;
}
mpz_class ceil(const mpq_class& q) { return -floor(-q); }

using inches = length<inch>;

/// Layers over a point x of one pleat's face, of a long row: folds of depth d run on behind from every multiple of the
/// width w, and back from it too where they go both ways.
mpz_class layers_over(const mpq_class& x, const mpq_class& w, const mpq_class& d, bool both_ways) {
    const mpz_class on = d > x ? ceil((d - x) / w) : mpz_class(0), back = ceil((x + d) / w) - 1;
    return 1 + 2 * (both_ways ? mpz_class(on + back) : on);
}

void pleats(feed& bytes) {
    const pleat kind = bytes.PickValueInArray({pleat::knife, pleat::box, pleat::inverted});
    const inches finished = bytes.length<inch>(), depth = bytes.length<inch>();
    const pleating<inch> p(kind, finished, count(bytes), depth);
    const mpq_class w = exact(finished) / whole(p.count()), d = exact(depth), rest = d - w * floor(d / w);
    refused([&] { must(exact(p.width()) == w, "a pleat shows its part of the whole"); });
    refused([&] {
        must(exact(p.cut()) == exact(finished) + 2 * p.folds() * whole(p.count()) * d, "pleats take twice their depth");
    });
    refused([&] { must(exact(p.fullness()) == (w + 2 * p.folds() * d) / w, "the fullness is cloth over face"); });
    refused([&] {
        const std::int64_t said = p.most_layers();
        mpz_class most = 0;
        for (const mpq_class& end : {rest, mpq_class(w - rest), w}) // the number changes at these alone
            for (const mpq_class& start : {mpq_class(0), rest, mpq_class(w - rest)})
                if (start < end)
                    most = std::max<mpz_class>(most, layers_over((start + end) / 2, w, d, kind != pleat::knife));
        must(whole(said) == most, "no more layers lie over one another, and somewhere so many");
    });
    refused([&] {
        const std::int64_t k = bytes.between(0, p.count());
        const auto start = rounded_start(p, k, bytes.length<inch>());
        must(exact(start.on_cloth.from_datum()) == exact(start.on_face.from_datum()) + whole(k) * 2 * p.folds() * d,
             "a pleat begins after what those before it take");
    });
}

void pleats_from_cloth(feed& bytes) {
    const pleat kind = bytes.PickValueInArray({pleat::knife, pleat::box, pleat::inverted});
    const inches cloth = bytes.one_in(3) ? length_of<inch>(count(bytes)) : bytes.length<inch>();
    const pleat_size<inch> size{bytes.length<inch>(), bytes.length<inch>()};
    refused([&] {
        const auto made = pleats_in(kind, cloth, size);
        const mpq_class each = exact(size.width) + 2 * made.pleats.folds() * exact(size.depth);
        must(whole(made.pleats.count()) == floor(exact(cloth) / each), "as many pleats as the cloth makes");
        must(exact(made.left_over) == exact(cloth) - each * whole(made.pleats.count()), "the rest is left");
        must(exact(made.pleats.finished()) == whole(made.pleats.count()) * exact(size.width), "they show their widths");
    });
    refused([&] {
        const std::int64_t n = pleats_near(kind, cloth, size).count();
        const mpz_class nearest = floor(exact(cloth) / exact(size.width) + mpq_class(1, 2));
        must(whole(n) == std::max<mpz_class>(1, nearest), "the nearest number");
    });
}

void tucked(feed& bytes) {
    const inches finished = bytes.one_in(3) ? length_of<inch>(count(bytes)) : bytes.length<inch>();
    const tuck_size<inch> size{bytes.length<inch>(), bytes.length<inch>(), bytes.length<inch>()};
    const auto made = tucks(finished, size);
    const mpq_class between = exact(finished) - 2 * exact(size.ends), gaps = whole(made.count) - 1;
    must(gaps == ceil(between / exact(size.pitch)), "the fewest gaps that keep to the pitch");
    must(exact(made.pitch) * gaps == between, "gaps fill the length between the ends");
    must(exact(made.clear) == exact(made.pitch) - exact(size.depth) && made.clear.value() >= 0, "tucks lie clear");
    must(exact(made.cut) == exact(finished) + 2 * whole(made.count) * exact(size.depth),
         "tucks take twice their depth");
}

void hanging(feed& bytes) {
    const inches along = bytes.one_in(3) ? length_of<inch>(count(bytes)) : bytes.length<inch>();
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>();
    const std::int64_t n = count(bytes);
    refused([&] {
        must(exact(folded_ribbons(n, a, b)) == 2 * whole(n) * (exact(a) + exact(b)), "ribbons go there and back");
    });
    refused([&] {
        const eyelet_limits<inch> keep{a, b, c, bytes.ConsumeBool()};
        const std::int64_t eyelets = fewest_eyelets(along, keep);
        const mpq_class between = exact(along) - 2 * exact(b) - exact(a);
        const mpz_class gaps = ceil(between / exact(c));
        const bool odd = mpz_odd_p(mpz_class(gaps + 1).get_mpz_t());
        must(whole(eyelets) == gaps + (keep.even_count && odd ? 2 : 1), "the fewest eyelets that keep to the distance");
        must(between >= exact(a) * (whole(eyelets) - 1), "eyelets do not overlap");
    });
    refused([&] {
        const auto strips = strip_dividers<cut_edge>(along, n, a);
        must(whole(n) * exact(strips.clear) + (whole(n) - 1) * exact(a) == exact(along),
             "pockets and strips fill the span");
        if (n > 1)
            must(exact(strips.starts.back().from_datum()) + exact(a) + exact(strips.clear) == exact(along),
                 "so they lie");
    });
    refused([&] {
        const pocket_row<inch> row(a, along, n);
        must(exact(row.film_cut(b)) == exact(along) + 2 * exact(b), "the film is its pockets and its ends");
        must(exact(row.fullness()) == exact(along) / exact(a), "the fullness is film over backing");
    });
    refused([&] {
        const inches step = length_of<inch>({1, 8}), film = film_for_fullness(a, n, fraction(3, 2), step);
        must(exact(film) == whole(n) * floor(exact(a) / whole(n) * 12) / 8, "each span on a graduation");
    });
}

void ties_and_thread(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>(), d = bytes.length<inch>();
    const std::int64_t n = count(bytes), m = count(bytes);
    refused([&] {
        must(exact(tie_round(a, n, tied_bow<inch>{b, c, d}, {c, b})) ==
                 whole(n) * exact(a) + 6 * exact(b) + 3 * exact(c) + exact(d),
             "a tie is its rounds, its bow and its ends");
    });
    refused([&] {
        const seam_run<inch> runs[] = {{stitch(301), a, n, b}, {stitch(503), c, m, d}};
        must(exact(thread_for<inch>(runs)) ==
                 mpq_class(5, 2) * whole(n) * (exact(a) + 2 * exact(b)) + 12 * whole(m) * (exact(c) + 2 * exact(d)),
             "thread is each stitch's part of each seam");
    });
    refused([&] {
        const std::int64_t needed = spools(a, b);
        must(whole(needed) == ceil(exact(a) / exact(b)), "as many spools as hold it");
    });
    refused([&] {
        const ribbon_tie<inch> t{a, {1, 4}, {3, 4}, b, {}, c, d};
        must(exact(ribbon(t)) == exact(a) / 2 + 2 * exact(b) + exact(c) + 2 * exact(d), "a ribbon is all its parts");
        must(exact(marks_on_ribbon(t).other_turned_at.from_datum()) + exact(d) == exact(ribbon(t)), "to its end");
    });
    refused([&] {
        const fraction kept = bytes.number();
        const std::int64_t layers = wadding_layers(a, b, kept);
        must(whole(layers) == ceil(exact(a) / (exact(b) * exact(kept))), "layers reach the depth");
    });
}

void straps(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>();
    refused([&] { must(exact(cut_to_fold_in_four(a)) == 4 * exact(a), "a strap is a quarter of its strip"); });
    refused([&] { must(finished_folded_in_four(cut_to_fold_in_four(a).value()) == a, "and comes back"); });
    refused([&] { must(finished_turned_out(cut_to_turn_out(a, b).value(), b) == a, "a strap turned out comes back"); });
    const strap_ends<inch> ends{b, c};
    refused([&] { must(free_of_strap(strap_length(a, ends).value(), ends) == a, "a strap is free between its ends"); });
    refused([&] {
        const auto places = strap_places<inch>(a, {b, c});
        must(exact(places[1].from_datum()) + exact(c) + exact(places[0].from_datum()) == exact(a),
             "as far from both sides");
        must(exact(places[1].from_datum()) - exact(places[0].from_datum()) == exact(b), "and so far apart");
        must(places[0].from_datum().value() >= 0 && b >= c, "on the piece, and clear of each other");
    });
    refused([&] {
        const auto box = box_in_strap(a, b, c);
        must(exact(box.width) + 2 * exact(c) == exact(a) && exact(box.height) + 2 * exact(c) == exact(b),
             "inside its end");
    });
}

void repairs(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>();
    const patch_edges<inch> edges{b, c};
    refused([&] {
        const finished_size<inch> hole(a, b);
        must(hole_under(patch_over(hole, edges).cut(), edges) == hole, "a hole is found again under its patch");
    });
    refused([&] { must(band_of(band_height<inch>({a, b, c}).value(), b, c).depth == a, "a band comes back"); });
    refused([&] { must(spliced_round(splice_length(a, b).value(), b) == a, "a ring comes back"); });
    const doubled_ends<inch> ends{b, c};
    refused([&] { must(loop_inside(loop_cut(a, ends).value(), ends) == a, "a loop comes back"); });
    refused([&] {
        const auto rows = darn_down<inch>({{a, b}, c, b, {}});
        must(exact(rows.apart) * (rows.count - 1) == exact(a) + 2 * exact(c), "rows fill their span");
        must(rows.apart <= b, "no further apart than asked");
        const auto made = needlefuls_for<inch>(rows, {}, {a, {}});
        must(made.rows >= 1 && mpz_class(std::to_string(made.rows)) * mpz_class(std::to_string(made.count)) >=
                                   mpz_class(std::to_string(rows.count)),
             "needlefuls make every row");
    });
}

void curtains(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>(), d = bytes.length<inch>();
    refused([&] {
        const pleat_groups<inch> g(a, b, {c, d}, count(bytes));
        must(g.working().value() == b, "pleats and gaps are all of the cloth");
        must(exact(g.gap()) * (g.count() - 1) + exact(c) + exact(d) == exact(a),
             "gaps and ends are all of the heading");
    });
    refused([&] {
        const hung_curtains<inch> h{a, bytes.between(1, 2), b, c};
        must(track_of(heading_of(h).value(), h) == a, "a track comes back");
    });
    refused([&] {
        const drop_ends<inch> ends{b, c, bytes.between(1, 2)};
        must(fall_of(drop_cut(a, ends).value(), ends) == a, "a fall comes back");
    });
    refused([&] {
        const auto drops = drops_on_repeat(a, 1, b);
        must(drops.drop >= a && (b.value() == 0 || (drops.off < b && is_whole(ratio_of(drops.drop, b)))),
             "a drop is the fewest repeats");
    });
    refused([&] {
        const auto widths = widths_of<inch>({a, d, b, c, {}, d});
        must(widths.made_up.value() >= a, "widths are wide enough");
    });
}

void cords(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>();
    const cord_ends<inch> ends{b, c};
    refused(
        [&] { must(round_of_cord(cord_length(a, ends).value(), ends) == a, "a cord goes round what it was cut for"); });
    refused([&] {
        must(exact(loop_drawn(a, c, ends)) + exact(c) == exact(a) + 2 * exact(b),
             "a cord is in its casing or hangs out");
        must(round_for_loop(loop_drawn(a, c, ends), c, ends) == a, "and its mouth comes back");
    });
    const elastic<inch> e{bytes.number(), b, c};
    refused([&] {
        must(exact(elastic_length(a, e)) == exact(a) / exact(e.stretch) + exact(b) + exact(c),
             "an elastic is all its parts");
        must(stretched_to(elastic_length(a, e).value(), e) >= a, "and opens right out");
        must(fullness_of(a, e) > 1, "and draws up");
    });
}

void fasteners(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>();
    refused([&] {
        const inches step = bytes.length<inch>(),
                     hole = buttonhole_length(sewn_button<inch>{a, b, false, c}, step).value();
        must(is_whole(ratio_of(hole, step)) && hole >= a + b + c,
             "a buttonhole is on its step, and lets its button through");
        must(button_through(hole - c, b) >= a, "as it does backwards");
    });
    refused([&] {
        const buttoned_lap<inch> lap{.button = {.across = a, .thick = b},
                                     .places = {at<finished_edge>(a), b, 3},
                                     .edge = bytes.length<inch>(),
                                     .stand = c,
                                     .deep = bytes.length<inch>(),
                                     .hole = bytes.length<inch>(),
                                     .clear = bytes.length<inch>()};
        const auto holes = holes_of(lap);
        must(holes.front().begins >= lap.clear && holes.back().ends + lap.clear <= lap.edge,
             "holes keep clear of both ends");
        must(holes[1].begins >= holes[0].ends + lap.clear, "and of each other");
    });
    refused([&] {
        const touch_strap<inch> s{.least = a, .most = b, .holds = c};
        must(tightest_of(b, hook_tape(s).value(), loop_tape(s).value()) == a,
             "a strap closes round what it was made for");
    });
}

void pipings(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), c = bytes.length<inch>();
    const piped_cord<inch> cord{a, b, c};
    refused([&] {
        const inches step = bytes.length<inch>(), cut = piping_width(cord, step).value();
        must(is_whole(ratio_of(cut, step)), "a strip is on its step");
        must(exact(cut) > 2 * exact(b) + 3 * (exact(a) + exact(c)), "and goes round its cord, with its seams");
        must(seam_of_piping(cut, cord, step) >= down_to(b, step), "and leaves these seams");
    });
    refused([&] { must(edge_of_piping(a + b + c, {b, c}) == a, "a piping goes round what it was cut for"); });
}

void widths_and_rolls(feed& bytes) {
    const inches needed = bytes.one_in(3) ? length_of<inch>(count(bytes)) : bytes.length<inch>();
    const width_and_join<inch> each{bytes.length<inch>(), bytes.length<inch>()};
    const zipped_opening<inch> z{bytes.length<inch>(), bytes.length<inch>(), bytes.length<inch>()};
    refused([&] {
        const joined how = bytes.ConsumeBool() ? joined::flat : joined::in_the_round;
        const auto made = cloth_widths(needed, each, how);
        const auto length_of_so_many = [&](const mpq_class& n) {
            return mpq_class(n * exact(each.width) - (n - (how == joined::flat ? 1 : 0)) * exact(each.join));
        };
        must(exact(made.made_up) == length_of_so_many(whole(made.count)), "widths less their joins");
        must(exact(made.left_over) == exact(made.made_up) - exact(needed) && made.left_over.value() >= 0, "are enough");
        must(made.count == 1 || length_of_so_many(whole(made.count) - 1) < exact(needed), "and the fewest that are");
    });
    refused([&] {
        must(exact(tape_working(z)) == exact(opening(z)) + 2 * exact(z.beyond), "tape goes on into the margins");
    });
    refused([&] {
        const std::int64_t pieces = count(bytes);
        const auto cut = from_roll(z, pieces, needed);
        const mpq_class before_the_last = (whole(cut.rolls) - 1) * whole(cut.from_one_roll);
        must(whole(cut.from_one_roll) == floor(exact(needed) / exact(cut.each)), "as many as a roll gives");
        must(before_the_last < pieces && before_the_last + whole(cut.from_one_roll) >= pieces, "the fewest rolls");
        must(exact(cut.left) == exact(needed) - (whole(pieces) - before_the_last) * exact(cut.each),
             "the rest is left");
    });
    refused([&] {
        const std::int64_t corners = count(bytes);
        must(exact(binding_length(needed, corners, {each.width, each.join})) ==
                 exact(needed) + whole(corners) * exact(each.width) + exact(each.join),
             "a binding is its edge, its corners and its overlap");
    });
}

/// floor of (along - 2 seam) / (sqrt(2) width), and twice the square of the length that so many strips have along a thread.
bool gives(const mpq_class& across, const mpq_class& along, const bias_wanted<inch>& w) {
    const mpq_class base = along - 2 * exact(w.seam);
    if (base <= 0)
        return false;
    const mpz_class square = floor(base * base / (2 * exact(w.width) * exact(w.width))), n = sqrt(square);
    const mpq_class straight = across * n - 2 * exact(w.seam) * (n - 1);
    return n > 0 && 2 * straight * straight >= exact(w.joined) * exact(w.joined);
}

void bias(feed& bytes) {
    const bias_wanted<inch> w{bytes.length<inch>(), bytes.length<inch>(), bytes.length<inch>()};
    const inches across = bytes.length<inch>(),
                 step = bytes.one_in(4) ? length_of<inch>(count(bytes)) : bytes.length<inch>();
    refused([&] {
        const mpq_class side = exact(square_for_bias(w, step));
        must(gives(side, side, w), "the square gives the length");
        must(!gives(side - exact(step), side - exact(step), w), "and one a graduation smaller does not");
    });
    refused([&] {
        const mpq_class along = exact(cloth_for_bias(w, across, step));
        must(gives(exact(across), along, w), "the cloth gives the length");
        const mpq_class shorter = along - exact(step);
        must(shorter < exact(across) || !gives(exact(across), shorter, w), "and a graduation less of it does not");
    });
    refused([&] {
        const auto strips = bias_from(bias_piece<inch>{across, w.joined}, bias_strip<inch>{w.width, w.seam}, step);
        const mpq_class low = exact(strips.joined), high = low + exact(step);
        const mpq_class straight = exact(across) * whole(strips.count) - 2 * exact(w.seam) * whole(strips.joins);
        must(low * low <= 2 * straight * straight && 2 * straight * straight < high * high,
             "strips joined, rounded down");
    });
}

void boxes(feed& bytes) {
    const boxed_size<inch> box(bytes.length<inch>(), bytes.length<inch>(), bytes.length<inch>());
    const inches seam = bytes.length<inch>(), across = bytes.length<inch>();
    refused([&] {
        const corner_seams<inch> sewn{seam, across};
        must(box_from_cut(boxed_panel(box, seam), corner_cut(box.depth(), sewn), sewn) == box,
             "cut corners make the box");
    });
    refused([&] { must(bag_round(lining_in(box, seam), seam) == box, "a bag is found again round its lining"); });
    refused([&] {
        must(box_from_stitched(boxed_panel(box, seam), corner_stitched(box.depth(), seam).line, seam) == box,
             "stitched corners make the box");
    });
    refused([&] {
        must(filling_for(covering(box, {seam, across}), {seam, across}) == box, "a cover's filling comes back");
    });
    refused([&] {
        const binding_allowance<inch> a{seam, across};
        must(finished_width_of_single(single_fold(box.width(), a).value(), a) == box.width(),
             "a single fold comes back");
        must(finished_width_of_double(double_fold(box.width(), a).value(), a) == box.width(),
             "a double fold comes back");
    });
}

double near(inches l) { return to_double(l.value()); }

/// A value rounded down and up to a step lies about that of doubles, but for the last places of those.
template <class Rounded>
void within(double value, inches step, Rounded rounded) {
    refused([&] {
        const inches low = rounded(step, rounding::down), high = rounded(step, rounding::up);
        const double slack = 1e-12 * value + 1e-15;
        must(high - low <= step, "a value lies on a graduation, or between two");
        must(near(low) <= value + slack && near(high) >= value - slack, "where doubles have it");
    });
}

void curved(feed& bytes) {
    const inches a = bytes.length<inch>(), b = bytes.length<inch>(), step = bytes.length<inch>();
    const double x = near(a), y = near(b), pi = std::acos(-1.0);
    using wanted = rounding;
    within(2 * y + 2 * x * std::atan2(x / 2, y), step, [&](inches s, wanted r) {
        return loop_for_rod<inch>({a, b}, s, r);
    });
    within(pi * x / 2 + y, step, [&](inches s, wanted r) { return casing_for_rod<inch>({a, b}, s, r); });
    within(2 * x / pi, step, [&](inches s, wanted r) { return rod_for_casing(a, s, r); });
    within(x + 2 * std::hypot(x, y), step, [&](inches s, wanted r) { return loop_over_box<inch>({a, a}, b, s, r); });
    within(y + 2 * std::hypot(x, (x - y) / 2), step,
           [&](inches s, wanted r) { return free_of_handle<inch>(a, {.apart = a, .over = b}, s, r); });
    within(2 * (x + y) + 2 * std::hypot(x, y) + std::min(x, y), step, [&](inches s, wanted r) {
        return box_in_one_row<inch>({a, b}, s, r);
    });
    within(2 * (x * x / 4 + y * y) / y * std::atan(2 * y / x), step,
           [&](inches s, wanted r) { return arc_for_bow(a, b, s, r); });
    within(2 * std::sqrt(y * y / 4 + x * near(step) / pi), step, [&](inches s, wanted r) {
        return roll_diameter<inch>({a, s, b}, s, r);
    });
    within(std::sqrt(2.0) * x, step, [&](inches s, wanted r) { return along_selvedge(a, s, r); });
    refused([&] { // an arc grows with its height
        const auto arc = [&](double h) { return 2 * (y * y / 4 + h * h) / h * std::atan2(2 * h, y); };
        const double low = near(bow_height(a, b, step, wanted::down)), high = near(bow_height(a, b, step, wanted::up));
        must(low == 0 || arc(low) <= x * (1 + 1e-9), "a bow is no lower than it is said to be");
        must(high == 0 || arc(high) >= x * (1 - 1e-9), "nor higher");
    });
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    static constexpr void (*parts[])(feed&) = {pleats,    pleats_from_cloth, tucked,   hanging, ties_and_thread,
                                               straps,    repairs,           curtains, cords,   pipings,
                                               fasteners, widths_and_rolls,  bias,     boxes,   curved};
    while (bytes.remaining_bytes() > 0)
        refused([&] { parts[bytes.between(0, std::int64_t{std::size(parts)} - 1)](bytes); });
    return 0;
}
