// What a sheet lists beside its pieces: things to buy or to make ready, each as labelled figures with their working.
//
//   notion<U>(name)     .figure(what, figure or length)  .number(what, n)  .places(what, lengths)
//                       .sold(how)  .caution(note)  .before_seams()
//   listed(name, count, opening, supply)  listed(name, count, tie)  listed(name, eyelet row or pleating)
//   listed(name, count, straps)  listed(name, count, drawstrings)  listed(name, count, round, elastic, step)
//   listed(name, pleat groups, turned)  listed(name, curtain drops)
//   listed(name, darn, needleful)  listed(name, count, webbing loops)
//   listed(name, width, length, strips)  listed_round(name, working, girth)  listed(name, piping all round)
//                                            what notions/ computes, as a notion that a project can hold
//   zipper_supply<U>                         from_roll(length)  made_up(lengths sold, ends, tail)
//
//   roll.add(listed("tie", 1, ribbon_tie<inch>{.across = 14_in, .loop = 2_in, .free_at_end = 9_in}));
//
// Names are copied; the words of a working (figure) are not, see measure/working.hpp.
#ifndef TURNCLOTH_SHEET_NOTION_HPP
#define TURNCLOTH_SHEET_NOTION_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/measure/rounding.hpp>
#include <turncloth/measure/working.hpp>
#include <turncloth/notions/binding.hpp>
#include <turncloth/notions/boxed.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/notions/curtain.hpp>
#include <turncloth/notions/darn.hpp>
#include <turncloth/notions/drawstring.hpp>
#include <turncloth/notions/hanging.hpp>
#include <turncloth/notions/piping.hpp>
#include <turncloth/notions/pleats.hpp>
#include <turncloth/notions/strap.hpp>
#include <turncloth/notions/tie.hpp>
#include <turncloth/notions/webbing.hpp>
#include <turncloth/notions/zipper.hpp>
#include <turncloth/panel/names.hpp>

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

/// So many marks, pleats, eyelets or spans may one number ask for, as a sheet tells of each by itself.
inline constexpr std::int64_t most_in_a_row = 10'000;

/// What a maker buys of a thing: nothing, so many or such a size as is told, or at least so much, cut off a roll for her.
enum class sold_as : unsigned char { not_sold, as_told, off_a_roll };

/// A labelled figure, or a labelled number of things where `count` is more than zero, or labelled places one by one.
template <length_unit Unit>
struct notion_detail {
    std::string what;
    turncloth::figure<Unit> amount;
    std::int64_t count = 0;
    std::vector<length<Unit>> places = {};
    sold_as sold = sold_as::not_sold;

    friend bool operator==(const notion_detail&, const notion_detail&) = default;
};

/// A caution, and the work that it belongs to.
struct sheet_caution {
    caution::work at;
    std::string sentence;
    friend bool operator==(const sheet_caution&, const sheet_caution&) = default;
};

template <length_unit Unit>
class notion {
public:
    explicit notion(std::string name) : name_(std::move(name)) {}

    const std::string& name() const { return name_; }
    const std::vector<notion_detail<Unit>>& details() const { return details_; }
    const std::vector<sheet_caution>& cautions() const { return cautions_; }
    bool goes_in_before_seams() const { return before_seams_; }

    /// Says that it is sewn in before the seams beside it are closed.
    notion& before_seams() {
        before_seams_ = true;
        return *this;
    }
    notion& figure(std::string what, const turncloth::figure<Unit>& amount) {
        details_.push_back({std::move(what), amount});
        return *this;
    }
    notion& figure(std::string what, length<Unit> amount) {
        return figure(std::move(what), turncloth::figure<Unit>().plus(amount, ""));
    }
    /// Throws range_error for less than one.
    notion& number(std::string what, std::int64_t n) {
        require_at_least<range_error>(n, std::int64_t{1}, ("the number of " + detail::in_quotes(what)).c_str());
        details_.push_back({std::move(what), {}, n});
        return *this;
    }
    /// Places in a row, each from the same edge: a first one and a rounded step would drift. Throws range_error for none.
    notion& places(std::string what, std::vector<length<Unit>> from_edge) {
        require_at_least<range_error>(from_edge.size(), std::size_t{1},
                                      ("the number of " + detail::in_quotes(what)).c_str());
        details_.push_back({std::move(what), {}, 0, std::move(from_edge)});
        return *this;
    }
    /// Says that what was added last is bought, and how. Throws range_error where nothing was.
    notion& sold(sold_as how) {
        require_at_least<range_error>(details_.size(), std::size_t{1},
                                      "the number of things listed before they are sold");
        details_.back().sold = how;
        return *this;
    }
    notion& caution(const caution::note& n) { return caution(std::string(n.sentence), n.at); }
    notion& caution(std::string sentence, caution::work at) {
        cautions_.push_back({at, std::move(sentence)});
        return *this;
    }

    friend bool operator==(const notion&, const notion&) = default;

private:
    std::string name_;
    std::vector<notion_detail<Unit>> details_;
    std::vector<sheet_caution> cautions_;
    bool before_seams_ = false;
};

/// Where a zipper comes from: rolls of one length, or the shortest of the made-up lengths sold that is long enough.
template <length_unit Unit>
struct zipper_supply {
    length<Unit> roll = {}; ///< more than zero: cut from such rolls
    std::vector<length<Unit>> lengths_sold = {};
    length<Unit> ends = {}, tail = {}; ///< of a made-up zipper: tape beyond the stops as sold; left below a new stop

    static zipper_supply from_roll(length<Unit> roll) { return {.roll = roll}; }
    static zipper_supply made_up(std::vector<length<Unit>> lengths_sold, length<Unit> ends, length<Unit> tail) {
        return {.lengths_sold = std::move(lengths_sold), .ends = ends, .tail = tail};
    }

    friend bool operator==(const zipper_supply&, const zipper_supply&) = default;
};

/// Zippers of one opening, and what they are made from. Throws zipper_error where that cannot be had.
template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const zipped_opening<Unit>& z,
                    const zipper_supply<Unit>& from) {
    notion<Unit> n(std::move(name));
    if (from.roll.value() == 0 && from.lengths_sold.empty())
        detail::refuse<zipper_error>("nothing is said of what zippers are bought as: rolls of a length, or the lengths "
                                     "sold made up",
                                     refusal{.kind = fault::missing, .what = "a supply of zippers"});
    if (from.roll.value() > 0)
        n.number("openings", count);
    else
        n.number("zippers", count).sold(sold_as::as_told);
    n.figure("each opening", opening_working(z))
        .caution(caution::needles_and_metal)
        .caution(caution::zipper_ends)
        .caution(caution::small_parts)
        .before_seams();
    if (from.roll.value() > 0) {
        const auto cut = from_roll(z, count, from.roll);
        n.figure("tape to cut from the roll, each, bar-tacked at both ends first", tape_working(z));
        n.number("sliders", cut.sliders).sold(sold_as::as_told).number("rolls", cut.rolls).sold(sold_as::as_told);
        return n.figure("length of a roll", from.roll).sold(sold_as::as_told).figure("left on the last roll", cut.left);
    }
    const auto cut = trimmed<Unit>(z, from.lengths_sold, {.ends = from.ends, .tail = from.tail});
    n.figure("made-up length to buy, each", cut.sold).sold(sold_as::as_told);
    if (cut.needs_a_stop)
        n.figure("new stop, from the top stop", cut.stop_at);
    if (cut.cut_off.value() > 0)
        n.figure("cut through the tape, from the top stop", cut.cut_at);
    return n;
}

/// Ribbons that tie a piece, alike.
template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const ribbon_tie<Unit>& t) {
    notion<Unit> n(std::move(name));
    n.number("ribbons", count).figure("each, cut", ribbon_working(t));
    const auto sewn = where_sewn(t);
    n.figure("sewn on, from the finished edge where it starts", sewn.sewn_from.from_datum());
    if (sewn.sewn_to != sewn.sewn_from)
        n.figure("sewn on, as far as", sewn.sewn_to.from_datum());
    n.figure("ribbon in all", ribbon(t) * count).sold(sold_as::off_a_roll);
    return n.caution(caution::infants_and_animals);
}

/// Straps cut from cloth that the sheet cuts too, so nothing of them is bought.
template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const boxed_straps<Unit>& s) {
    const crossed_box<Unit> box = box_in_strap(s.finished, s.ends.sewn, s.inset);
    return notion<Unit>(std::move(name))
        .number("straps", count)
        .figure("each, cut width, to be folded in four", cut_to_fold_in_four(s.finished))
        .figure("each, cut length", strap_length(s.free, s.ends))
        .figure("free between its sewn ends", s.free)
        .figure("box with a cross at each end, across the strap", box.width)
        .figure("box with a cross at each end, along the strap", box.height)
        .figure("such a box sewn in one go, one short side twice", box_in_one_row(box, s.step, rounding::up))
        .caution(caution::loads)
        .caution(caution::infants_and_animals);
}

/// Both ways of a darn; thread is told as it is cut, in whole needlefuls.
template <length_unit Unit>
notion<Unit> listed(std::string name, const darn<Unit>& d, const needleful<Unit>& each) {
    const darn_rows<Unit> down = darn_down(d), across = darn_across(d);
    const needlefuls<Unit> first = needlefuls_for(down, d.loop, each), second = needlefuls_for(across, d.loop, each);
    return notion<Unit>(std::move(name))
        .number("rows of thread down", down.count)
        .figure("from one to the next, at most", d.apart)
        .figure("each row down, long", down.each)
        .number("rows of thread across", across.count)
        .figure("each row across, long", across.each)
        .figure("thread that the rows down take", row_thread(down, d.loop))
        .figure("thread that the rows across take", row_thread(across, d.loop))
        .number("needlefuls", first.count + second.count)
        .figure("each needleful, cut", each.cut)
        .figure("darning thread in all", first.thread + second.thread)
        .sold(sold_as::off_a_roll);
}

/// With the tape that they are sewn to, its ends turned under by so much, and its hooks.
template <length_unit Unit>
notion<Unit> listed(std::string name, const pleat_groups<Unit>& g, length<Unit> turned) {
    require_at_most<range_error>(g.count(), most_in_a_row, "the number of pleats on a heading");
    require_not_negative<curtain_error>(turned, "what is turned under at the ends of a tape");
    std::vector<length<Unit>> hooks;
    for (const auto& place : g.on_heading())
        hooks.push_back(place.from_datum());
    return notion<Unit>(std::move(name))
        .number("pleats", g.count())
        .figure("flat between two pleats", g.gap())
        .figure("each pleat takes up", g.taken())
        .figure("curtain before it is pleated, hemmed", g.working())
        .places("pleats and their hooks, from the finished left edge", std::move(hooks))
        .number("hooks", hooks_on(g))
        .sold(sold_as::as_told)
        .figure("heading tape, cut",
                turncloth::figure<Unit>().plus(g.heading(), "heading").plus_any(2, turned, "turned in"))
        .sold(sold_as::off_a_roll)
        .caution(caution::hanging_up);
}

/// Cut from cloth that the sheet cuts too, so nothing of them is bought.
template <length_unit Unit>
notion<Unit> listed(std::string name, const curtain_drops<Unit>& d) {
    const joined_widths<Unit> widths = widths_of(d);
    const matched_drops<Unit> drops = drops_on_repeat(d.drop, widths.count, d.repeat);
    notion<Unit> n(std::move(name));
    n.number("widths of cloth", widths.count).figure("widths joined", widths.made_up);
    if (widths.joins > 0)
        n.number("joins", widths.joins);
    n.figure("each drop, as long as it must be", d.drop);
    if (drops.repeats > 0)
        n.figure("each drop, up to a whole repeat", drops.drop).figure("cut off each drop beyond that", drops.off);
    return n.figure(drops.repeats > 0 ? "cloth for them, each to a whole repeat" : "cloth for them", drops.cloth);
}

/// Webbing loops alike.
template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const webbing_loops<Unit>& l) {
    const turncloth::figure<Unit> each = loop_on_edge(l);
    return notion<Unit>(std::move(name))
        .number("loops", count)
        .figure("each, cut", each)
        .figure("each stands out beyond its edge", l.stands)
        .figure("webbing in all", each.value() * count)
        .sold(sold_as::off_a_roll)
        .caution(caution::loads)
        .caution(caution::infants_and_animals);
}

template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, const drawstrings<Unit>& d) {
    const turncloth::figure<Unit> each = cord_length(d.round, d.ends);
    return notion<Unit>(std::move(name))
        .number("cords", count)
        .figure("each, cut", each)
        .figure("cord in all", each.value() * count)
        .sold(sold_as::off_a_roll)
        .figure("loop that hangs out when the mouth is drawn up", loop_drawn(d.round, d.closed, d.ends))
        .caution(caution::cords)
        .caution(caution::infants_and_animals);
}

/// Round a mouth; each is cut on that step, no shorter than it must be.
template <length_unit Unit>
notion<Unit> listed(std::string name, std::int64_t count, length<Unit> round, const elastic<Unit>& e,
                    length<Unit> step) {
    const turncloth::figure<Unit> each = elastic_length(round, e);
    const length<Unit> cut = up_to(each.value(), step);
    return notion<Unit>(std::move(name))
        .number("elastics", count)
        .figure("each, cut", each)
        .figure("each, cut, no shorter", cut)
        .figure("elastic in all", cut * count)
        .sold(sold_as::off_a_roll)
        .figure("opens out to", stretched_to(cut, e))
        .caution(caution::infants_and_animals);
}

/// The strip and the cord of a piece that is piped all round; the strip's cloth is cut with the other pieces.
template <length_unit Unit>
notion<Unit> listed(std::string name, const piped_edge<Unit>& p) {
    const auto corners = corners_on_piping(p.piece, p.first);
    return notion<Unit>(std::move(name))
        .figure("cord, across", p.cord.across)
        .sold(sold_as::as_told)
        .figure("cord, cut", cord_for_edge(p.piece, p.cord, p.step))
        .sold(sold_as::off_a_roll)
        .figure("strip, cut width", piping_width(p.cord, p.step))
        .figure("strip, length joined", piping_length(p.piece, p.ends))
        .places("corners, from the cut end that the strip begins with", {corners.begin(), corners.end()});
}

/// Ribbon that goes round a roll and is tied in a bow: `working` is what tie_round gives.
template <length_unit Unit>
notion<Unit> listed_round(std::string name, const turncloth::figure<Unit>& working, length<Unit> girth) {
    return notion<Unit>(std::move(name))
        .figure("once round the roll", girth)
        .figure("ribbon, cut", working)
        .sold(sold_as::off_a_roll)
        .caution(caution::infants_and_animals);
}

/// Throws range_error for more than `most_in_a_row`.
template <length_unit Unit>
notion<Unit> listed(std::string name, const eyelet_row<Unit>& row) {
    require_at_most<range_error>(row.along.size(), most_in_a_row, "the number of eyelets in a row");
    std::vector<length<Unit>> centres;
    for (const auto& centre : row.along.centres())
        centres.push_back(centre.from_datum());
    return notion<Unit>(std::move(name))
        .number("eyelets", row.along.size())
        .sold(sold_as::as_told)
        .places("centres, from the finished left edge", std::move(centres))
        .figure("centres below the finished top edge", row.down.from_datum())
        .figure("hole, across", row.each.hole)
        .sold(sold_as::as_told)
        .figure("rim, across", row.each.rim)
        .sold(sold_as::as_told)
        .caution(caution::setting_eyelets)
        .caution(caution::small_parts)
        .caution(caution::hanging_up);
}

/// A binding of one continuous strip: its width and length as binding.hpp gives them, cut across the cloth.
template <length_unit Unit>
notion<Unit> listed(std::string name, const turncloth::figure<Unit>& width, const turncloth::figure<Unit>& long_,
                    const strips<Unit>& cut) {
    notion<Unit> n(std::move(name));
    n.figure("strip, cut width", width)
        .figure("strip, length joined", long_)
        .number("strips across the cloth", cut.count);
    if (cut.joins > 0)
        n.number("joins", cut.joins);
    return n.figure("cloth for them", cut.cloth).figure("left over of the strip", cut.left_over);
}

template <length_unit Unit>
notion<Unit> listed(std::string name, const pleating<Unit>& p) {
    return notion<Unit>(std::move(name))
        .number("pleats", p.count())
        .figure("each shows", p.width())
        .figure("each is folded back by", p.depth())
        .figure("cloth to pleat", p.cut());
}

TURNCLOTH_ONCE(class notion<inch>);
TURNCLOTH_ONCE(class notion<centimetre>);

} // namespace turncloth

#endif
