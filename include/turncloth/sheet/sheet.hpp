// A sheet: everything to be cut, folded, marked, sewn and bought for one project at one finished size, with the
// working.
//
//   sheet_of(project)        works it out and checks it; throws sheet_error where cloth would be spoilt
//   sheet<U>                 name, finished, pieces, meetings, notions, cautions, warnings
//   sheet_piece<U>           the piece, its cut size with workings, and every line on it from a cut edge
//   notion<U>                what is bought or made ready, as labelled figures
//   sheet_error              reasons(): all that is wrong, not only the first
//
//   const sheet<inch> s = sheet_of(roll);
//   std::puts(to_text(s).c_str());   // text.hpp; drawing.hpp draws each piece
#ifndef TURNCLOTH_SHEET_SHEET_HPP
#define TURNCLOTH_SHEET_SHEET_HPP

#include <turncloth/sheet/project.hpp>

#include <array>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// A project that cannot be made as designed, with every reason found.
class sheet_error : public error {
public:
    sheet_error(const std::string& project, std::vector<std::string> reasons)
        : error(joined(project, reasons)), reasons_(std::move(reasons)) {}
    const std::vector<std::string>& reasons() const noexcept { return reasons_; }

private:
    static std::string joined(const std::string& project, const std::vector<std::string>& reasons) {
        std::string all = project + " cannot be made so: ";
        for (const std::string& reason : reasons)
            all += (&reason == reasons.data() ? "" : "; ") + reason;
        return all;
    }
    std::vector<std::string> reasons_;
};

enum class line_kind { fold, stitching, mark, slit };

/// One line on the flat cut piece, parallel to an edge; it runs across the whole piece unless `from` and `to` say
/// otherwise.
template <length_unit Unit>
struct sheet_line {
    line_kind kind;
    std::string what;
    edge parallel_to;
    figure<Unit> from_cut_edge;
    length<Unit> begins, ends; ///< along the edge, from its left or top end
};

template <length_unit Unit>
struct sheet_piece {
    piece<Unit> made_from;
    cut_size<Unit> cut;
    figure<Unit> width, height;
    std::vector<sheet_line<Unit>> lines; ///< in the order of work: long edges before short ones, folds before stitching
};

/// A labelled figure, or a labelled number of things where `count` is more than zero.
template <length_unit Unit>
struct notion_detail {
    std::string what;
    figure<Unit> amount;
    std::int64_t count = 0;
};

template <length_unit Unit>
struct notion {
    std::string what;
    std::vector<notion_detail<Unit>> details;
};

/// The marks at which a longer piece meets a shorter one, from the finished edge of both.
template <length_unit Unit>
struct sheet_meeting {
    meeting<Unit> made_from;
    even_mapping<Unit> marks;
};

template <length_unit Unit>
struct sheet {
    std::string name;
    finished_size<Unit> finished;
    std::vector<sheet_piece<Unit>> pieces;
    std::vector<sheet_meeting<Unit>> meetings;
    std::vector<notion<Unit>> notions;
    std::vector<std::string> cautions;
    std::vector<std::string> warnings; ///< what can be made, but may not be meant
};

namespace detail {

/// Common practice: the long edges are finished first, so that the short ones lie over them at the corners.
template <length_unit Unit>
std::array<edge, 4> edges_in_order(const panel<Unit>& p) {
    if (p.finished().width() > p.finished().height())
        return {edge::top, edge::bottom, edge::left, edge::right};
    return {edge::left, edge::right, edge::top, edge::bottom};
}

constexpr bool is_level(edge e) { return e == edge::top || e == edge::bottom; }

template <length_unit Unit>
length<Unit> across(const cut_size<Unit>& cut, edge e) {
    return is_level(e) ? cut.height() : cut.width();
}
template <length_unit Unit>
length<Unit> along(const cut_size<Unit>& cut, edge e) {
    return is_level(e) ? cut.width() : cut.height();
}

/// Works one sheet out; what it finds wrong is gathered, so that a designer sees all of it at once.
template <length_unit Unit>
class sheet_maker {
public:
    explicit sheet_maker(const project<Unit>& from)
        : from_(from), made_{from.name(), from.finished(), {}, {}, {}, {}, {}} {}

    sheet<Unit> make() {
        if (from_.pieces().empty())
            wrong_.push_back("it has no pieces");
        for (const piece<Unit>& p : from_.pieces())
            add(p);
        for (const piece<Unit>& p : from_.pieces())
            check_layer(p);
        for (const meeting<Unit>& m : from_.meetings())
            add(m);
        for (const zipper<Unit>& z : from_.zippers())
            add(z);
        add_cautions();
        if (!wrong_.empty())
            refuse<sheet_error>(from_.name(), wrong_);
        return std::move(made_);
    }

private:
    void add(const piece<Unit>& p) {
        if (find(p.name()) != nullptr)
            wrong_.push_back("two pieces are named " + p.name());
        const panel<Unit>& shape = p.shape();
        sheet_piece<Unit> s{p, shape.cut(), shape.width_working(), shape.height_working(), {}};
        for (const edge e : edges_in_order(shape))
            add_finish(s, e);
        for (const mark_line<Unit>& m : p.marks())
            add_mark(s, m);
        made_.pieces.push_back(std::move(s));
    }

    static void add_finish(sheet_piece<Unit>& s, edge e) {
        const finish<Unit>& f = s.made_from.shape().finish_of(e);
        const auto whole_line = [&](line_kind kind, const place<cut_edge, Unit>& at) {
            s.lines.push_back(
                {kind, std::string(f.name()), e, figure<Unit>().plus(at.from_datum(), ""), {}, along(s.cut, e)});
        };
        for (const auto& at : f.folds())
            whole_line(line_kind::fold, at);
        for (const auto& at : f.stitching())
            whole_line(line_kind::stitching, at);
    }

    void add_mark(sheet_piece<Unit>& s, const mark_line<Unit>& m) {
        const length<Unit> at = m.from_cut_edge.value();
        const length<Unit> size = across(s.cut, m.from);
        const std::string where = "the mark \"" + m.what + "\" of " + s.made_from.name() + ", " + to_text(at) +
                                  " from the cut " + std::string(name_of(m.from)) + " edge,";
        if (at.value() < 0 || at > size) {
            wrong_.push_back(where + " is off the piece, which is cut " + to_text(size) + " that way");
        } else if (const panel<Unit>& shape = s.made_from.shape();
                   at < shape.finish_of(m.from).take() || at > size - shape.finish_of(opposite(m.from)).take()) {
            made_.warnings.push_back(where + " lies in what is turned under or taken by a seam");
        }
        s.lines.push_back({line_kind::mark, m.what, m.from, m.from_cut_edge, {}, along(s.cut, m.from)});
    }

    /// The inner layers of a piece are cut to the size at which the outer one finishes.
    void check_layer(const piece<Unit>& inner) {
        if (inner.inside().empty())
            return;
        const sheet_piece<Unit>* outer = find(inner.inside());
        if (outer == nullptr)
            return wrong_.push_back(inner.name() + " is said to lie inside " + inner.inside() +
                                    ", which is not in the project");
        const cut_size<Unit> cut = inner.shape().cut();
        const finished_size<Unit>& finished = outer->made_from.shape().finished();
        if (cut.width() != finished.width() || cut.height() != finished.height())
            wrong_.push_back(inner.name() + " is cut " + to_text(cut) + ", but " + inner.inside() +
                             ", round which it lies, finishes " + to_text(finished));
    }

    /// Marks both pieces where they meet, and checks that the spans lie on them.
    void add(const meeting<Unit>& m) {
        const even_mapping<Unit> marks(m.on_longer, m.on_shorter, m.spans);
        add_spans(m.longer, m, m.on_longer, "meets " + m.shorter);
        add_spans(m.shorter, m, m.on_shorter, "meets " + m.longer);
        made_.meetings.push_back({m, marks});
    }

    void add_spans(const std::string& name, const meeting<Unit>& m, length<Unit> span, const std::string& what) {
        sheet_piece<Unit>* on = find(name);
        if (on == nullptr)
            return wrong_.push_back("a meeting is put on " + name + ", which is not in the project");
        const panel<Unit>& shape = on->made_from.shape();
        const length<Unit> room = is_level(m.from) ? shape.finished().height() : shape.finished().width();
        if (span > room)
            return wrong_.push_back("the spans marked on " + name + " need " + to_text(span) + ", but it finishes " +
                                    to_text(room));
        for (const auto& at : divided<finished_edge>(span, m.spans))
            add_mark(*on, {what, m.from, shape.way_from_cut_edge(m.from, at)});
    }

    void add(const zipper<Unit>& z) {
        sheet_piece<Unit>* on = find(z.on);
        if (on == nullptr)
            return wrong_.push_back("a zipper is put on " + z.on + ", which is not in the project");
        if (z.centres.empty())
            return wrong_.push_back("a zipper is put on " + z.on + " without a place");
        check_clearance(z);
        const panel<Unit>& shape = on->made_from.shape();
        const edge left = is_level(z.from) ? edge::left : edge::top;
        const length<Unit> room = is_level(z.from) ? shape.finished().width() : shape.finished().height();
        if (z.opening.across > room)
            return wrong_.push_back("a zipper " + to_text(z.opening.across) + " across is wider than " + z.on +
                                    ", which finishes " + to_text(room));
        const length<Unit> opens = shape.finish_of(left).take() + (room - z.opening.across) / 2 + z.opening.margin;
        for (const auto& centre : z.centres)
            add_lines(*on, z, centre, opens);
        check_neighbours(z);
        add_notion(z);
    }

    void check_clearance(const zipper<Unit>& z) {
        const length<Unit> clear = clearance(z.opening);
        if (clear.value() < 0)
            wrong_.push_back("the tape of a zipper on " + z.on + " reaches " + to_text(-clear) + " into the seams");
        if (clear.value() == 0)
            made_.warnings.push_back("the tape of a zipper on " + z.on + " ends on the very seam: keep a little away");
    }

    void add_lines(sheet_piece<Unit>& on, const zipper<Unit>& z, const place<finished_edge, Unit>& centre,
                   length<Unit> opens) {
        const panel<Unit>& shape = on.made_from.shape();
        const auto lines = zipper_lines(centre, z.rows, z.slit);
        const auto add_line = [&](line_kind kind, const char* what, const place<finished_edge, Unit>& at,
                                  length<Unit> beyond) {
            on.lines.push_back({kind, what, z.from, shape.way_from_cut_edge(z.from, at), opens - beyond,
                                opens + opening(z.opening) + beyond});
        };
        const length<Unit> high = is_level(z.from) ? shape.finished().height() : shape.finished().width();
        if (lines.above.from_datum().value() < 0 || lines.below.from_datum() > high)
            wrong_.push_back("the zipper " + to_text(centre.from_datum()) + " from the finished " +
                             std::string(name_of(z.from)) + " edge of " + z.on + " is stitched off the finished piece");
        add_line(line_kind::stitching, "zipper", lines.above, z.opening.beyond);
        add_line(line_kind::stitching, "zipper", lines.below, z.opening.beyond);
        add_line(line_kind::slit, "slit behind the zipper", lines.slit_from, length<Unit>());
        if (z.slit.value() != 0)
            add_line(line_kind::slit, "slit behind the zipper", lines.slit_to, length<Unit>());
    }

    /// Zippers on one piece must not be stitched over one another.
    void check_neighbours(const zipper<Unit>& z) {
        for (std::size_t i = 0; i < z.centres.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                if (const length<Unit> apart = abs(z.centres[i] - z.centres[j]); apart < z.rows)
                    wrong_.push_back("two zippers on " + z.on + " are only " + to_text(apart) +
                                     " apart, less than the " + to_text(z.rows) + " that each is stitched");
    }

    void add_notion(const zipper<Unit>& z) {
        const auto n = static_cast<std::int64_t>(z.centres.size()) * find(z.on)->made_from.count();
        const auto plain = [](length<Unit> l) { return figure<Unit>().plus(l, ""); };
        notion<Unit> item{"zipper on " + z.on, {{"openings", {}, n}, {"each opening", opening_working(z.opening)}}};
        auto& list = item.details;
        if (clearance(z.opening).value() < 0)
            return; // refused already; no tape could be worked out for it
        if (z.supply.roll.value() > 0) {
            const auto cut = from_roll(z.opening, n, z.supply.roll);
            list.push_back({"tape to cut from the roll, each, bar-tacked at both ends first", tape_working(z.opening)});
            list.push_back({"sliders", {}, cut.sliders});
            list.push_back({"rolls", {}, cut.rolls});
            list.push_back({"length of a roll", plain(z.supply.roll)});
            list.push_back({"left on the last roll", plain(cut.left)});
        } else {
            const auto cut = trimmed<Unit>(z.opening, z.supply.lengths_sold, z.supply.ends, z.supply.tail);
            list.push_back({"made-up length to buy, each", plain(cut.sold)});
            if (cut.needs_a_stop)
                list.push_back({"new stop, from the top stop", plain(cut.stop_at)});
            if (cut.cut_off.value() > 0)
                list.push_back({"cut through the tape, from the top stop", plain(cut.cut_at)});
        }
        made_.notions.push_back(std::move(item));
    }

    void add_cautions() {
        made_.cautions = from_.cautions();
        const auto say = [this](const char* sentence) { made_.cautions.emplace_back(sentence); };
        for (const sheet_piece<Unit>& s : made_.pieces) {
            if (!s.made_from.is_film())
                continue;
            say("Film melts: cool iron, no steam, and never the iron on the film. Clip it; pins leave holes.");
            break;
        }
        if (!from_.zippers().empty())
            say("A needle breaks on a slider or a metal stop: turn the wheel by hand there, and protect your eyes.");
        say("Blades: cut away from yourself, and close the blade between cuts.");
        say("Local codes, the makers' instructions and licensed practice go before this sheet.");
    }

    sheet_piece<Unit>* find(const std::string& name) {
        for (sheet_piece<Unit>& s : made_.pieces)
            if (s.made_from.name() == name)
                return &s;
        return nullptr;
    }

    const project<Unit>& from_;
    sheet<Unit> made_;
    std::vector<std::string> wrong_;
};

} // namespace detail

/// Throws sheet_error with every reason found, or the typed error of a notion that cannot be had at all.
template <length_unit Unit>
sheet<Unit> sheet_of(const project<Unit>& p) {
    return detail::sheet_maker<Unit>(p).make();
}

} // namespace turncloth

#endif
