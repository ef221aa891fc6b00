// What writes a sheet as text (sheet/text.hpp), apart, so that a program that has it compiled once does not read it.
#ifndef TURNCLOTH_SHEET_DETAIL_WRITING_HPP
#define TURNCLOTH_SHEET_DETAIL_WRITING_HPP

#include <turncloth/making/work_words.hpp>
#include <turncloth/measure/printable.hpp>
#include <turncloth/sheet/bulk.hpp>
#include <turncloth/sheet/detail/cloth_told.hpp>
#include <turncloth/sheet/detail/its_ruler.hpp>
#include <turncloth/sheet/detail/kinds.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// Writes line by line.
template <length_unit Unit>
class line_writer {
public:
    explicit line_writer(const ruler& by) : by_(by) {}

    void write(const notion<Unit>& n) {
        heading({"For the ", said_again(n.name())});
        for (const notion_detail<Unit>& d : n.details()) {
            const std::string what = said_again(d.what);
            if (d.count > 0)
                line(1, {what, ": ", d.count});
            else if (d.places.empty())
                line(1, {what, ": ", d.amount.value()});
            else
                line(1, {what, ": ", all_of(d.places)});
            working(3, "", d.amount);
        }
    }

    std::string written() { return std::move(text_); }

protected:
    /// Lengths as the ruler shows them. Names come from anywhere: none makes another line.
    void line(std::size_t depth, text_parts parts) {
        const std::size_t begins = text_.append(2 * depth, ' ').size();
        text_ += sentence(parts, by_);
        if (unfit_at(std::string_view(text_).substr(begins)))
            text_.replace(begins, std::string::npos, fit_to_print(text_.substr(begins)));
        text_ += '\n';
    }

    void heading(text_parts parts) {
        text_ += '\n';
        line(0, parts);
    }

    /// A figure of one term has no working to show.
    void working(std::size_t depth, std::string_view label, const figure<Unit>& f) {
        if (f.terms().size() > 1)
            line(depth, {word(label), to_text(f)});
    }

    std::string all_of(const std::vector<length<Unit>>& places) const {
        std::string all;
        for (const length<Unit>& l : places)
            all.append(all.empty() ? "" : ", ").append(to_text(l, by_));
        return all;
    }

    const ruler& by() const { return by_; }

private:
    const ruler by_;
    std::string text_{};
};

/// Writes one sheet, line by line.
template <length_unit Unit>
class sheet_writer : private line_writer<Unit> {
public:
    sheet_writer(const sheet<Unit>& s, const ruler& shown) : line_writer<Unit>(shown), sheet_(s) {}

    std::string write() {
        line(0, {sheet_.name});
        write_size();
        heading({"Cut"});
        for (const auto& p : sheet_.pieces)
            write_cut(p);
        for (const auto& p : sheet_.outlines)
            line(1, {named(p.name()), ", ", p.count(), " of ", p.material(), ": as drawn, within ", p.cut});
        write_cloths();
        heading({"Fold, stitch and mark: distances are from the cut edge named"});
        for (const auto& p : sheet_.pieces)
            write_lines(p);
        for (const auto& p : sheet_.outlines)
            write_edges(p);
        for (const auto& m : sheet_.meetings)
            write(m);
        for (const auto& n : sheet_.notions)
            write(n);
        write_steps();
        std::vector<std::string> warnings = sheet_.warnings;
        for (std::string& sentence : sentences_of(sheet_.bulk, by()))
            warnings.push_back(std::move(sentence));
        list("Check", warnings);
        write_cautions();
        return written();
    }

private:
    using line_writer<Unit>::line, line_writer<Unit>::heading, line_writer<Unit>::working, line_writer<Unit>::by,
        line_writer<Unit>::write, line_writer<Unit>::written, line_writer<Unit>::all_of;

    void write_size() {
        if (sheet_.asked)
            line(0, {"finishes ", sheet_.finished, ", for ", to_text(*sheet_.asked), " asked"});
        else
            line(0, {"finishes ", sheet_.finished});
        if (!shows_its_ruler(sheet_.graduation, by()))
            return line(0, {"Figures are rounded to ", graduation_text(by()),
                            ", each from the exact length; workings are exact."});
        line(0, {"Pieces and steps are worked out on a ruler of ", to_text(sheet_.graduation),
                 ", so that what is printed of them adds up; other amounts are rounded to it."});
        if (by().shows == units_shown::both)
            line(0, {converted_note<Unit>(by())});
    }

    void list(const char* name, const std::vector<std::string>& sentences) {
        if (sentences.empty())
            return;
        heading({word(name)});
        for (const std::string& sentence : sentences)
            line(1, {"- ", said_again(sentence)});
    }

    /// Each with the work that it belongs to, so that none hides among the others.
    void write_cautions() {
        heading({"Safety"});
        for (const sheet_caution& c : sheet_.cautions)
            line(1, {"- ", turncloth::said({std::string("caution.").append(heading_of(c.at)), heading_of(c.at)}, {}),
                     ": ", said_again(c.sentence)});
        line(1, {"Local codes, the makers' instructions and licensed practice go before this sheet."});
    }

    void write_steps() {
        heading({"In this order"});
        const wording words{.by = by()};
        for (const std::string& sentence : preface_of(sheet_.steps, words))
            line(1, {sentence});
        std::size_t number = 0;
        for (const work_group<Unit>& g : sheet_.steps.groups) {
            std::string before = std::to_string(++number) + ". ";
            for (const std::string& sentence : sentences_of(sheet_.steps, g, words)) {
                line(1, {before, sentence});
                before.assign(before.size(), ' ');
            }
        }
    }

    void write_cut(const sheet_piece<Unit>& p) {
        const piece<Unit>& from = p.made_from;
        line(1, {named(from.name()), ", ", from.count(), " of ", from.material(), ": ", p.cut,
                 word(lie_in_words(from.lies()))});
        if (const cut_size<Unit> larger = size_to_cut(p, said_of(sheet_.cloths, from.material())); larger != p.cut)
            line(3, {"cut ", larger, " before it is washed"});
        working(3, "width: ", p.width);
        working(3, "height: ", p.height);
        if (p.corner.value() > 0)
            line(3, {"cut a square of ", p.corner, " out of each corner; two make a box of ", p.finished, ", ", p.depth,
                     " deep"});
        else if (!from.pleats().empty())
            line(3, {"finishes ", p.finished, " when it is pleated"});
    }

    void write_lines(const sheet_piece<Unit>& p) {
        if (p.lines.empty() && p.eyelets.empty())
            return;
        line(1, {named(p.made_from.name())});
        write_finishes(p);
        for (const sheet_line<Unit>& l : p.lines)
            if (!l.of_finish)
                write_mark(p, l);
        for (const sheet_eyelets<Unit>& e : p.eyelets)
            write(e);
    }

    /// What the project says of each.
    void write_cloths() {
        if (!sheet_.cloths.empty())
            heading({"Cloth"});
        for (const project_cloth<Unit>& c : sheet_.cloths) {
            std::string said;
            const auto say = [&](const std::string& what) { said.append(said.empty() ? "" : ", ").append(what); };
            if (c.width.value() > 0)
                say(sentence({c.width, " wide"}, by()));
            if (c.selvedge.value() > 0)
                say(sentence({"with selvedges of ", c.selvedge}, by()));
            if (c.join.value() > 0)
                say(sentence({"joined by allowances of ", c.join}, by()));
            if (c.repeat_along.value() > 0)
                say(sentence({"its pattern again every ", c.repeat_along, " along it"}, by()));
            if (c.repeat_across.value() > 0)
                say(sentence({"its pattern again every ", c.repeat_across, " across it"}, by()));
            if (c.one_way)
                say(std::string(word("one way up")));
            if (c.folded)
                say(sentence({"folded, selvedge on selvedge"}));
            if (c.washed != washed_when::unwashed)
                say(c.washed == washed_when::before_cutting ? sentence({"washed before it is cut"})
                                                            : sentence({"washed in pieces"}));
            for (const bool along : {true, false})
                if (const dimensional_change change = along ? c.change.along : c.change.across;
                    change != dimensional_change())
                    say(change_text(change, along));
            for (const piece_on_hand<Unit>& kept : c.on_hand)
                say(sentence({"on hand ", named(kept.name), ", ", kept.width, " x ", kept.length}, by()));
            line(1, {named(c.material), said.empty() ? "" : ": ", said});
        }
    }
    static std::string change_text(dimensional_change c, bool along) {
        const std::string much = to_text(c.part() < 0 ? -c.in_percent() : c.in_percent());
        if (c.part() < 0)
            return along ? sentence({"shrinks by ", much, " % along"}) : sentence({"shrinks by ", much, " % across"});
        return along ? sentence({"grows by ", much, " % along"}) : sentence({"grows by ", much, " % across"});
    }

    void write_edges(const outlined_piece<Unit>& p) {
        line(1, {named(p.name()), ", edges in the order of its drawing"});
        for (std::size_t i = 0; i < p.edges.size(); ++i) {
            const drafted_corner<Unit>& c = p.made_from.corners[i];
            const std::string where = places(c.edge);
            const bool none = c.edge.allowance().value() == 0;
            const std::string allowance = none ? sentence({"no allowance"}) : to_text(c.edge.allowance(), by());
            line(3, {"edge ", i + 1, ", ", word(shape_of(c.curve)), p.edges[i].size, ": ", word(c.edge.name()), ", ",
                     allowance, std::string_view(where.empty() ? "" : "; "), where});
            if (c.notches.size() == 1)
                line(5, {"notch at ", all_of(c.notches)});
            else if (!c.notches.empty())
                line(5, {"notches at ", all_of(c.notches)});
        }
    }

    /// Edges that are finished alike share a line.
    void write_finishes(const sheet_piece<Unit>& p) {
        const panel<Unit>& shape = p.made_from.shape();
        std::vector<edge> rest;
        for (const edge e : edges_in_order(shape))
            if (!shape.finish_of(e).folds().empty() || !shape.finish_of(e).stitching().empty())
                rest.push_back(e);
        for (const edges_alike& alike : finished_alike(shape, rest)) {
            const finish<Unit>& f = shape.finish_of(alike.first);
            line(3, {alike.in_words(), ", ", word(f.name()), ": ", places(f)});
        }
    }

    std::string places(const finish<Unit>& f) const {
        std::string all;
        const auto add = [&](std::string_view verb, const auto& lines) {
            if (lines.empty())
                return;
            all.append(all.empty() ? "" : "; ").append(word(verb)).append(" ");
            for (const auto& l : lines)
                all.append(&l == lines.data() ? "" : ", ").append(to_text(l.from_datum(), by()));
        };
        add("fold at", f.folds());
        add("stitch at", f.stitching());
        return all;
    }

    void write_mark(const sheet_piece<Unit>& p, const sheet_line<Unit>& l) {
        const bool says_itself = l.kind == line_kind::slit; // "slit behind the zipper"
        const std::string own = said_again(l.what),
                          what = says_itself ? own : sentence({word(verb_of(l.kind)), " ", own});
        line(3, {word(name_of(l.parallel_to)), " edge, ", what, ": ", l.from_cut_edge.value(), extent(p, l)});
        working(5, "", l.from_cut_edge);
    }

    /// Nothing for a line that runs right across and stays where it is.
    std::string extent(const sheet_piece<Unit>& p, const sheet_line<Unit>& l) const {
        if (l.brought_to)
            return sentence({", folded and brought to ", *l.brought_to}, by());
        if (!l.only.empty())
            return sentence({", marked only ", ticks(l)});
        if (l.begins.value() == 0 && l.ends == along(p.cut, l.parallel_to))
            return "";
        const std::string_view start = word(name_of(is_level(l.parallel_to) ? edge::left : edge::top));
        return sentence({", from ", l.begins, " to ", l.ends, " off the cut ", start, " edge"}, by());
    }

    /// "1/2 in in from the top edge and 3/8 in in from the bottom edge"
    std::string ticks(const sheet_line<Unit>& l) const {
        std::vector<std::string> all;
        for (const short_mark<Unit>& t : l.only)
            all.push_back(sentence({"along ", t.size, " at the ", word(name_of(t.at)), " edge"}, by()));
        return enumerated(all);
    }

    void write(const sheet_eyelets<Unit>& e) {
        line(3, {"eyelets, holes of ", e.size.hole, " with rims of ", e.size.rim, ": centres ", e.from_top.value(),
                 " from the top edge, and from the left edge ", all_of(e.from_left)});
        working(5, "", e.from_top);
    }

    /// Each rounded from its exact place.
    void write(const sheet_meeting<Unit>& m) {
        const meeting<Unit>& of = m.made_from;
        const std::string longer = named(of.longer), shorter = named(of.shorter);
        heading({"Where the ", longer, " meets the ", shorter, ": distances are from the finished ",
                 word(name_of(of.from)), " edge"});
        for (std::int64_t k = 1; k <= m.marks.spans(); ++k)
            line(1, {m.marks.mark_on_long(k).from_datum(), " of ", longer, " meets ",
                     m.marks.mark_on_short(k).from_datum(), " of ", shorter});
        line(1, {"fullness ", fullness_text(m.marks.fullness()), ", extra in each span: ", m.marks.surplus(0)});
    }

    const sheet<Unit>& sheet_;
};

} // namespace detail

} // namespace turncloth

#endif
