// Working a project out: every figure, every line, every check.
//
//   sheet_of(project)        the sheet; throws sheet_error where cloth would be spoilt, with every reason found
//
//   const sheet<inch> s = sheet_of(roll);
//
// Refused: marks, zippers, placings and spans off a piece; layers that disagree; tape in the seams; what does not
// reach; two pieces of one name. Said as a warning: what can be made but may not be meant.
#ifndef TURNCLOTH_SHEET_MAKING_HPP
#define TURNCLOTH_SHEET_MAKING_HPP

#include <turncloth/sheet/order.hpp>
#include <turncloth/sheet/sheet.hpp>

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// Works one sheet out; what it finds wrong is gathered, so that a designer sees all of it at once.
template <length_unit Unit>
class sheet_maker {
public:
    explicit sheet_maker(const project<Unit>& from)
        : from_(from), made_{from.name(), from.finished(), {}, {}, {}, {}, {}, {}} {}

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
        for (const placing<Unit>& p : from_.placings())
            add(p);
        check_placings();
        for (const span_list<Unit>& p : from_.span_lists())
            add(p);
        for (const must_reach<Unit>& r : from_.must_reach_list())
            check(r);
        for (const notion<Unit>& n : from_.notions())
            made_.notions.push_back(n);
        for (const sewing<Unit>& used : from_.sewings())
            add(used);
        made_.order = order_of_making(from_);
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
                {kind, std::string(f.name()), e, figure<Unit>().plus(at.from_datum(), ""), {}, along(s.cut, e), true});
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
                   at < shape.finish_of(m.from).allowance() ||
                   at > size - shape.finish_of(opposite(m.from)).allowance()) {
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
        const length<Unit> opens = shape.finish_of(left).allowance() + (room - z.opening.across) / 2 + z.opening.margin;
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
        if (clearance(z.opening).value() < 0)
            return; // refused already; no tape could be worked out for it
        const auto how_many = static_cast<std::int64_t>(z.centres.size()) * find(z.on)->made_from.count();
        made_.notions.push_back(listed("zipper on " + z.on, how_many, z.opening, z.supply));
    }

    /// Marks the finished left and top edge of what is sewn on, and checks that it lies on the finished piece beneath.
    void add(const placing<Unit>& p) {
        const sheet_piece<Unit>* top = find(p.piece);
        sheet_piece<Unit>* under = find(p.on);
        if (top == nullptr || under == nullptr)
            return wrong_.push_back(p.piece + " is placed on " + p.on + ", but both must be in the project");
        const finished_size<Unit>& size = top->made_from.shape().finished();
        const finished_size<Unit>& room = under->made_from.shape().finished();
        const length<Unit> x = p.from_left.from_datum(), y = p.from_top.from_datum();
        if (x.value() < 0 || y.value() < 0 || x + size.width() > room.width() || y + size.height() > room.height())
            wrong_.push_back(p.piece + ", which finishes " + to_text(size) + ", is placed " + to_text(x) +
                             " from the left and " + to_text(y) + " from the top of " + p.on +
                             ", and does not lie on it: that finishes " + to_text(room));
        add_outline(*under, p, size);
    }

    void add_outline(sheet_piece<Unit>& under, const placing<Unit>& p, const finished_size<Unit>& size) {
        const panel<Unit>& shape = under.made_from.shape();
        const length<Unit> left = shape.from_cut_edge(edge::left, p.from_left).from_datum();
        const length<Unit> top = shape.from_cut_edge(edge::top, p.from_top).from_datum();
        under.lines.push_back({line_kind::mark, "left edge of " + p.piece, edge::left,
                               shape.way_from_cut_edge(edge::left, p.from_left), top, top + size.height()});
        under.lines.push_back({line_kind::mark, "top edge of " + p.piece, edge::top,
                               shape.way_from_cut_edge(edge::top, p.from_top), left, left + size.width()});
    }

    /// Two pieces sewn onto one that lie over each other may be meant, as pockets on pockets are; it is said.
    void check_placings() {
        const auto& all = from_.placings();
        for (std::size_t i = 0; i < all.size(); ++i) {
            std::int64_t uses = 0;
            for (std::size_t j = 0; j < all.size(); ++j) {
                uses += all[j].piece == all[i].piece ? 1 : 0;
                if (j < i && overlap(all[i], all[j]))
                    made_.warnings.push_back(all[j].piece + " and " + all[i].piece + " overlap on " + all[i].on);
            }
            const sheet_piece<Unit>* placed = find(all[i].piece);
            const bool last = i + 1 == all.size() || all[i + 1].piece != all[i].piece;
            if (last && placed != nullptr && uses > placed->made_from.count())
                made_.warnings.push_back(all[i].piece + " is placed " + std::to_string(uses) + " times, but " +
                                         std::to_string(placed->made_from.count()) + " are cut");
        }
    }

    bool overlap(const placing<Unit>& a, const placing<Unit>& b) {
        const sheet_piece<Unit>*of_a = find(a.piece), *of_b = find(b.piece);
        if (a.on != b.on || of_a == nullptr || of_b == nullptr)
            return false;
        const finished_size<Unit>&of = of_a->made_from.shape().finished(), &other = of_b->made_from.shape().finished();
        return a.from_left < b.from_left + other.width() && b.from_left < a.from_left + of.width() &&
               a.from_top < b.from_top + other.height() && b.from_top < a.from_top + of.height();
    }

    /// Marks where spans end, all but the last, which must end on the finished edge.
    void add(const span_list<Unit>& p) {
        sheet_piece<Unit>* on = find(p.on);
        if (on == nullptr)
            return wrong_.push_back("spans are marked on " + p.on + ", which is not in the project");
        const panel<Unit>& shape = on->made_from.shape();
        const length<Unit> room = is_level(p.from) ? shape.finished().height() : shape.finished().width();
        length<Unit> sum;
        for (const length<Unit>& span : p.spans) {
            if (span.value() <= 0)
                return wrong_.push_back("a span of \"" + p.what + "\" on " + p.on + " must be more than zero: it was " +
                                        to_text(span));
            sum += span;
            if (sum < room)
                add_mark(*on, {p.what, p.from, shape.way_from_cut_edge(p.from, at<finished_edge>(sum))});
        }
        if (sum != room)
            wrong_.push_back("the spans of \"" + p.what + "\" on " + p.on + " add up to " + to_text(sum) +
                             ", but it finishes " + to_text(room));
    }

    void check(const must_reach<Unit>& r) {
        if (r.has < r.needs)
            wrong_.push_back(r.what + " is " + to_text(r.has) + ", " + to_text(r.needs - r.has) + " short of the " +
                             to_text(r.needs) + " that it must reach");
    }

    /// Thread for the rows of stitching on all pieces. A row that joins two pieces is on both, so it counts half.
    void add(const sewing<Unit>& s) {
        length<Unit> sewn;
        for (const sheet_piece<Unit>& p : made_.pieces)
            for (const sheet_line<Unit>& l : p.lines)
                if (l.kind == line_kind::stitching)
                    sewn += row_length(p, l, s) * p.made_from.count();
        if (sewn.value() == 0)
            return made_.warnings.push_back("no stitching is sewn with stitch " + std::to_string(s.stitch.number));
        const seam_run<Unit> all[] = {{.type = s.stitch, .sewn = sewn, .count = 1, .overrun = {}}};
        const length<Unit> thread = with_waste(thread_for<Unit>(all), s.waste);
        notion<Unit> n("thread, stitch " + std::to_string(s.stitch.number) + " of ISO 4915, " +
                       std::string(s.stitch.name));
        n.figure("rows of stitching, with their ends", sewn).figure("thread, with waste", thread);
        made_.notions.push_back(n.number("spools", spools(thread, s.spool)).figure("thread on a spool", s.spool));
    }

    static length<Unit> row_length(const sheet_piece<Unit>& p, const sheet_line<Unit>& l, const sewing<Unit>& s) {
        const bool joins = l.of_finish && p.made_from.shape().finish_of(l.parallel_to).joins();
        if (s.rows == (joins ? stitched_rows::hemming : stitched_rows::joining))
            return {};
        const length<Unit> row = l.ends - l.begins + s.overrun * 2;
        return joins ? row / 2 : row;
    }

    void add_cautions() {
        for (const std::string& sentence : from_.cautions())
            say(sentence);
        for (const sheet_piece<Unit>& s : made_.pieces)
            if (s.made_from.is_film())
                say(std::string(caution::film_and_iron));
        for (const notion<Unit>& n : made_.notions)
            for (const std::string& sentence : n.cautions())
                say(sentence);
        say(std::string(caution::cutting));
        say("Local codes, the makers' instructions and licensed practice go before this sheet.");
    }

    /// Each caution once.
    void say(const std::string& sentence) {
        for (const std::string& said : made_.cautions)
            if (said == sentence)
                return;
        made_.cautions.push_back(sentence);
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

TURNCLOTH_ONCE(sheet<inch> sheet_of(const project<inch>&));
TURNCLOTH_ONCE(sheet<centimetre> sheet_of(const project<centimetre>&));

} // namespace turncloth

#endif
