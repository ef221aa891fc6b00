// A lay as a picture: the cloth with its pieces and cuts, and the lists that explain them.
//
//   lay_picture<Unit>(cloth, ruler, project, keep)     drawn: a picture (page/drawing.hpp); words: what stands on the cloth
//   write_on_cloth(page, place, words)                 writes those
//
//   const lay_picture<inch> lay(canvas, ruler(), "Roll", {});
//   best_page_of(lay.drawn, {}).draw([&](page& on, const picture_place& at) { write_on_cloth(on, at, lay.words); });
#ifndef TURNCLOTH_DRAW_DETAIL_LAY_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_LAY_PICTURE_HPP

#include <turncloth/cloth/cutting_out.hpp>
#include <turncloth/cloth/remnants.hpp>
#include <turncloth/draw/detail/words.hpp>
#include <turncloth/sheet/purchases.hpp>
#include <turncloth/sheet/sold_amounts.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

// Defined in draw/lay.hpp.
template <length_unit Unit>
struct worth_keeping;

namespace detail {

inline constexpr kind_of_line datum_line = {{"datum", 1.1}, "all counts from here"},
                              cloth_line = {{"cloth", 0.6}, "edge of the cloth"},
                              selvedge_line = {{"selvedge", 0.2, {5, 1.5}}, "selvedge ends"},
                              lay_end_line = {{"lay-end", 0.2, {0.8, 0.8, 5, 0.8}}, "end of the lay"},
                              laid_line = {{"piece", 0.2}, "piece"},
                              flaw_line = {{"flaw", 0.35, {1, 0.6}}, "flaw, laid round"},
                              cutting_line = {{"cutting", 0.5, {2.5, 1.5}}, "cut, in order"},
                              kept_line = {{"left-over", 0.25, {0.4, 1}}, "left over, to keep"};

/// What is written on the cloth, in mm from its left edge and the end first cut off the roll.
struct lay_words {
    struct piece {
        words_inside words;
        bool turned;
    };
    std::vector<page_segment> cuts{}; ///< in order
    std::vector<words_inside> left{}; ///< over
    std::vector<piece> pieces{};
    std::vector<std::string> notes{}; ///< below it all stands the first that has room
};

/// The number stands beside its cut, within one piece or one left-over, as near its beginning as it may be.
inline void number_cut(page& on, free_room& room, const page_segment& c, const page_area& cloth,
                       const std::string& number) {
    page_area there{0, 0, room.by().width(number, small_size) + 0.8, small_size + 0.8};
    const bool level = c.from.y == c.to.y;
    for (const double part : {0.0, 0.5, 0.25, 0.75, 1.0})
        for (const bool after : {false, true}) {
            there.x = level ? c.from.x + part * (c.to.x - c.from.x - there.width)
                            : (after ? c.from.x : c.from.x - there.width);
            there.y = level ? (after ? c.from.y : c.from.y - there.height)
                            : c.from.y + part * (c.to.y - c.from.y - there.height);
            if (!within(there, cloth) || !room.is_free(there))
                continue;
            room.take(there);
            on.write({there.x + 0.4, there.y + 0.3 + 0.85 * small_size}, number, small_size);
            return;
        }
}

/// Beside the words, on the side that is free; a small piece goes without.
inline void add_arrow(page& on, free_room& room, const page_area& a, bool turned) {
    constexpr double deep = 3;
    const double size = turned ? a.width : a.height, from = size * 0.2, to = size * 0.8;
    if (size < 8)
        return;
    for (const double part : {1.0, 0.0}) {
        const page_area strip = turned ? page_area{a.x + from, a.y + part * (a.height - deep), to - from, deep}
                                       : page_area{a.x + part * (a.width - deep), a.y + from, deep, to - from};
        if (!within(strip, a) || !room.is_free(strip))
            continue;
        room.take(strip);
        const page_point middle = strip.middle();
        return draw_arrow(on, grain_pen,
                          turned ? page_segment{{strip.x, middle.y}, {strip.right(), middle.y}}
                                 : page_segment{{middle.x, strip.bottom()}, {middle.x, strip.y}});
    }
}

inline void write_on_cloth(page& on, const picture_place& at, const lay_words& words) {
    for (const std::string& note : words.notes)
        if (at.by.width(note, small_size) <= at.note_width) {
            on.write(at.note, note, small_size);
            break;
        }
    constexpr std::size_t crowd = 1000; // of more it would be long to look for a place for each; the lists have them
    if (words.pieces.size() > crowd)
        return;
    free_room room(on, at.by);
    for (std::size_t i = 0; i < words.cuts.size(); ++i)
        number_cut(on, room, at.to(words.cuts[i]), at.drawn, std::to_string(i + 1));
    for (const lay_words::piece& p : words.pieces) {
        write_in(on, room, at.to(p.words.where), p.words.choice);
        add_arrow(on, room, at.to(p.words.where), p.turned);
    }
    for (const words_inside& l : words.left)
        write_in(on, room, at.to(l.where), l.choice);
}

/// Of the cloth as it lies.
template <length_unit Unit>
class lay_picture {
public:
    picture drawn{};
    lay_words words{};

    lay_picture(const sheet_cloth<Unit>& c, const ruler& by, const std::string& project,
                const worth_keeping<Unit>& keep)
        : from_(c), by_(by) {
        drawn.words.project = project;
        drawn.words.title = sentence({"lay of ", name_of_cloth(from_)});
        drawn.words.most_list = 0.2;
        drawn.words.lists.resize(2); // of cuts or places, and of pieces
        drawn.words.told = 1;
        drawn.fills = true;
        drawn.words.small_print.push_back(
            sentence({"Figures are ", figures_note(by_, from_.graduation),
                      " The arrow on a piece shows its height, which lies along the grain unless the piece is "
                      "turned."}));
        require_few_enough(from_.lay.places.size(), "the number of pieces laid that are drawn");
        measure();
        measure_lengths();
        add_facts();
        add_pieces();
        add_flaws();
        if (c.bolt.cutting == cutting::free)
            add_places();
        else
            add_cuts();
        if (keep.across.value() > 0 && keep.along.value() > 0)
            add_kept(keep);
        add_rest();
    }

    const ruler& by() const { return by_; }
    /// What is cut off at each end so that it is straight.
    length<Unit> straightened() const { return from_.on_hand ? length<Unit>() : from_.bought.straightened; }
    /// Of the cloth as it lies to be cut, ends and all: what is given of it, but never less than its lay takes.
    length<Unit> in_hand() const {
        const length<Unit> least = from_.lay.length + straightened() * 2;
        return std::max(least, from_.on_hand ? from_.on_hand->length : from_.bought.washed);
    }
    const lay<Unit>& of() const { return from_.lay; }

private:
    std::string text(length<Unit> l) const { return to_text(l, by_); }
    std::string written(length<Unit> l) const { return unbroken(text(l)); }
    /// That of the sheet's piece, whatever cloth it is cut from.
    std::string letter(std::size_t i) const { return letter_of(i < from_.on_sheet.size() ? from_.on_sheet[i] : i); }
    std::string left_edge() const { return from_.bolt.folded ? said(fold_of_cloth, {}) : sentence({"left edge"}); }

    length<Unit> lying_width() const { return from_.bolt.folded ? from_.bolt.width / 2 : from_.bolt.width; }
    double laid_from() const { return in_mm(straightened()); }
    double laid_to() const { return in_mm(straightened() + from_.lay.length); }
    page_area area_of_part(const cloth_part<Unit>& p) const {
        return {in_mm(p.from_left), in_mm(straightened() + p.from_end), in_mm(p.across), in_mm(p.along)};
    }

    /// The cloth with its usable width; the edges that all is counted from are named.
    void measure() {
        const bolt<Unit>& b = from_.bolt;
        const length<Unit> shown = lying_width();
        const double width = drawn.width = in_mm(shown), length_ = drawn.height = in_mm(in_hand()),
                     from = in_mm(b.usable_from_left()), to = from + in_mm(b.usable_width()), end = laid_from();
        require_drawable({width, length_});
        drawn.ring = small_line_height + 1;
        drawn.draw(datum_line, {{0, laid_to()}, {0, end}, {width, end}});
        drawn.draw({cloth_line.with, b.folded ? "edge; left: fold" : cloth_line.words},
                   page_area{0, 0, width, length_});
        for (const double edge : {from, to})
            if (edge > 0 && edge < width)
                drawn.draw(selvedge_line, page_segment{{edge, 0}, {edge, length_}});
        if (laid_to() < length_)
            drawn.draw(lay_end_line, page_segment{{0, laid_to()}, {width, laid_to()}});
        drawn.below = {
            {from, to, length_, sentence({"usable width ", text(b.usable_width())})},
            {0, width, length_,
             b.folded ? sentence({"half the width, folded: ", text(shown)}) : sentence({"width ", text(shown)})}};
        if (from_.on_hand) // which has no selvedges
            drawn.below.erase(drawn.below.begin());
        const std::string shorter = from_.on_hand ? std::string() : sentence({"straightened end"});
        drawn.names = {{{{from, 0}, {to, 0}}, 1.2, end_name(), shorter},
                       {{{0, end}, {0, laid_to()}}, -1.2, left_edge()}};
    }
    /// It stands above what is cut off.
    std::string end_name() const {
        if (from_.on_hand)
            return sentence({"marked end"});
        return straightened().value() == 0 ? sentence({"straightened end"})
                                           : sentence({"trim ", text(straightened()), " off to straighten this end"});
    }

    /// How long the lay is, and beside it what is there.
    void measure_lengths() {
        drawn.beside = {{laid_from(), laid_to(), 0, sentence({"laid ", text(from_.lay.length)})}};
        const double all = in_mm(in_hand());
        if (from_.on_hand && from_.on_hand->length > from_.lay.length)
            drawn.beside.push_back({0, all, 0, sentence({"on hand ", text(from_.on_hand->length)})});
        if (from_.spread)
            drawn.beside.push_back({0, all, 0, sentence({"each ply ", text(from_.spread->each)})});
        if (from_.on_hand || from_.spread || from_.bought.bought.value() == 0)
            return;
        const std::string bought = cloth_text(from_.bought, by_);
        drawn.beside.push_back({0, all, 0,
                                from_.bought.washed == from_.bought.bought
                                    ? sentence({"bought ", bought})
                                    : sentence({"bought ", bought, ", washed ", text(from_.bought.washed)})});
    }

    void add_facts() {
        const bolt<Unit>& b = from_.bolt;
        auto& facts = drawn.words.facts;
        if (from_.on_hand) {
            facts.push_back(sentence({"on hand ", unbroken(size_text(b.width, from_.on_hand->length, by_))}));
            facts.push_back(sentence({"length laid ", written(from_.lay.length)}));
            return;
        }
        facts.push_back(sentence({"cloth ", written(b.width), " wide, usable width ", written(b.usable_width())}));
        if (b.folded)
            facts.back().append(", ").append(word("folded"));
        if (b.one_way)
            facts.back().append(", ").append(word("one way up"));
        const std::string laid = written(from_.lay.length);
        facts.push_back(from_.lay.proved_best() ? sentence({"length laid ", laid, ", the shortest possible"})
                                                : sentence({"length laid ", laid}));
        if (from_.spread) { // which holds what goes on the table, and need not be short
            add_plies(*from_.spread);
            return;
        }
        if (!from_.lay.proved_best())
            facts.push_back(sentence({"no lay can be shorter than ", written(from_.lay.bound)}));
        const std::string bought = written(from_.bought.bought), sold = unbroken(cloth_text(from_.bought, by_));
        facts.push_back(bought == sold ? sentence({"length to buy ", bought})
                                       : sentence({"length to buy ", bought, ", sold as ", sold}));
    }

    void add_plies(const spread_plies<Unit>& s) {
        const std::string each = written(s.each);
        drawn.words.facts.push_back(
            s.plies == 1 ? sentence({"spread once, ", each, " long"})
                         : sentence({"spread ", s.plies, " times over itself, each ply ", each, " long"}));
        if (s.plies > 1)
            drawn.words.facts.push_back(sentence({"each place gives ", s.plies, " pieces"}));
    }

    /// "A: back, 20 x 30 in, 2 of them, 1 turned". On a piece stands as much as there is room for.
    void add_pieces() {
        std::vector<std::size_t> laid(from_.pieces.size()), turned(from_.pieces.size());
        for (const cloth_place<Unit>& p : from_.lay.places) {
            const cloth_piece<Unit>& piece = from_.pieces[p.piece];
            const std::string named = sentence({letter(p.piece), ": ", piece.name});
            std::vector<std::string> all{named, size_text(piece.size.width(), piece.size.height(), by_)};
            if (p.turned)
                all.emplace_back(word("turned"));
            const page_area where = area_of_part(p.where);
            drawn.draw(laid_line, where);
            words.pieces.push_back({{where, {std::move(all), {named}, {letter(p.piece)}}}, p.turned});
            laid[p.piece] += static_cast<std::size_t>(p.comes_out);
            turned[p.piece] += p.turned ? 1U : 0U;
        }
        for (std::size_t i = 0; i < from_.pieces.size(); ++i) {
            const cloth_piece<Unit>& p = from_.pieces[i];
            if (laid[i] == 0)
                continue;
            std::string entry =
                sentence({letter(i), ": ", p.name, ", ", size_text(p.size.width(), p.size.height(), by_)});
            if (laid[i] > 1)
                entry.append(", ").append(sentence({laid[i], " of them"}));
            if (turned[i] > 0)
                entry.append(", ").append(laid[i] > 1 ? sentence({turned[i], " turned"}) : sentence({"turned"}));
            if (p.on_fold)
                entry.append(", ").append(word("on the fold"));
            if (p.stays)
                entry.append(", ").append(word("laid already"));
            drawn.words.lists[1].push_back(std::move(entry));
        }
    }

    /// Crossed out, so far as it is on what is drawn.
    void add_flaws() {
        for (const cloth_part<Unit>& f : from_.lay.flaws) {
            const page_area whole = area_of_part(f);
            const double right = std::min(whole.right(), drawn.width), bottom = std::min(whole.bottom(), drawn.height);
            if (right <= whole.x || bottom <= whole.y)
                continue;
            const page_area a{whole.x, whole.y, right - whole.x, bottom - whole.y};
            drawn.draw(flaw_line, a);
            drawn.draw(flaw_line, page_segment{{a.x, a.y}, {a.right(), a.bottom()}});
            drawn.draw(flaw_line, page_segment{{a.x, a.bottom()}, {a.right(), a.y}});
            drawn.words.lists[1].push_back(
                sentence({"flaw, ", size_text(f.across, f.along, by_), ": ", text(f.from_left), " from the ",
                          left_edge(), ", ", text(f.from_end), " from the end"}));
        }
    }

    /// "A, turned: 3 in from the left edge, 20 in from the end": the corner of a piece that is nearest to both.
    void add_places() {
        auto& list = drawn.words.lists[0];
        if (!from_.lay.places.empty())
            list.push_back(from_.on_hand ? squaring()
                                         : sentence({"cut 0: straighten the end, square to the selvedges"}));
        for (const cloth_place<Unit>& p : from_.lay.places)
            list.push_back(sentence({letter(p.piece), p.turned ? sentence({", ", word("turned")}) : std::string(), ": ",
                                     text(p.where.from_left), " from the ", left_edge(), ", ", text(p.where.from_end),
                                     " from the end"}));
    }

    /// Each is told on what is in hand and where it lay on the cloth.
    void add_cuts() {
        if (!from_.lay.cuts.empty())
            say_making_ready();
        for (const cloth_cut<Unit>& c : from_.lay.cuts) {
            const page_area in_hand = area_of_part(c.in_hand);
            const bool across = c.direction == cut_direction::across;
            const double at = in_mm(c.on_cloth() + (across ? straightened() : length<Unit>()));
            words.cuts.push_back(across ? page_segment{{in_hand.x, at}, {in_hand.right(), at}}
                                        : page_segment{{at, in_hand.y}, {at, in_hand.bottom()}});
            drawn.draw(cutting_line, words.cuts.back());
            const std::string in_words = words_for(c.origin), off = text(c.at), on_cloth = text(c.on_cloth());
            drawn.words.lists[0].push_back(across
                                               ? sentence({"cut ", words.cuts.size(), ": across ", in_words, ", ", off,
                                                           " from its near side; ", on_cloth, " from the end"})
                                               : sentence({"cut ", words.cuts.size(), ": along ", in_words, ", ", off,
                                                           " from its left; ", on_cloth, " from the ", left_edge()}));
        }
    }

    /// Cut 0 gives the edges that all others are told from.
    void say_making_ready() {
        auto& list = drawn.words.lists[0];
        list.push_back(from_.on_hand ? squaring()
                                     : sentence({"cut 0: straighten the end; a near side is the one by it"}));
        if (!from_.on_hand || from_.on_hand->length > from_.lay.length)
            list.push_back(sentence({"cut 0: cut off ", text(from_.lay.length), " from that end"}));
        if (from_.bolt.selvedge.value() > 0)
            list.push_back(sentence({"cut 0: trim ", text(from_.bolt.selvedge), " off the selvedges"}));
    }

    static std::string squaring() {
        return sentence({"cut 0: square it and mark one end; a near side is the one by it"});
    }

    /// Drawn apart from the lines of its neighbours. What lies beyond the lay is left over too, but for the far end, which
    /// need not be straight.
    void add_kept(const worth_keeping<Unit>& keep) {
        const double apart = std::max(drawn.width, drawn.height) / 250;
        remnant<Unit> straight{from_.bolt, in_hand() - straightened() * 2};
        straight.cloth.width = lying_width();
        for (const cloth_part<Unit>& o : off_cuts<Unit>(from_.lay, straight, keep.across, keep.along)) {
            const page_area a = area_of_part(o);
            const double in = std::min({apart, a.width / 4, a.height / 4});
            const page_area inside{a.x + in, a.y + in, a.width - 2 * in, a.height - 2 * in};
            const std::string size = size_text(o.across, o.along, by_);
            drawn.draw(kept_line, inside);
            words.left.push_back({inside, {{sentence({"left over"}), size}, {size}}});
            drawn.words.lists[1].push_back(sentence({"left over, to keep: ", size}));
        }
    }
    /// Beyond the lay, with the far end, where it is not said to be kept.
    void add_rest() {
        const length<Unit> rest = in_hand() - straightened() - from_.lay.length;
        if (rest.value() > 0)
            words.left.push_back({{0, laid_to(), drawn.width, in_mm(rest)}, {{sentence({"over: ", text(rest)})}}});
    }

    const sheet_cloth<Unit>& from_;
    const ruler by_;
};

} // namespace detail

} // namespace turncloth

#endif
