// A straight-edged piece of any shape as a picture, to scale or at full size.
//
//   outline_picture<Unit>(outline, labels, ruler, project, turned)     on_page(options), at_full_size(options)
//
//   outline_picture<inch> gusset(o, {.name = "gusset"}, ruler(), "Bag");
//   const page drawn = gusset.on_page({});
#ifndef TURNCLOTH_DRAW_DETAIL_OUTLINE_PICTURE_HPP
#define TURNCLOTH_DRAW_DETAIL_OUTLINE_PICTURE_HPP

#include <turncloth/draw/detail/drafted_words.hpp>
#include <turncloth/draw/detail/outline_labels.hpp>
#include <turncloth/draw/detail/words.hpp>
#include <turncloth/page/tiles.hpp>
#include <turncloth/panel/curve.hpp>
#include <turncloth/panel/finish_lines.hpp>
#include <turncloth/panel/outline.hpp>
#include <turncloth/panel/trimmed.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

// Defined in draw/outline.hpp.
template <length_unit Unit>
struct outline_labels;

namespace detail {

inline constexpr kind_of_line cut_line_kind = {{"cut", 0.6}, "cut line"},
                              seam_line_kind = {stitching_pen.meaning("seam"), "seam line"},
                              finished_line_kind = {finished_pen.meaning("seam"), "finished edge"},
                              fold_line_kind = {fold_pen, "fold"}, row_line_kind = {stitching_pen, "stitching"},
                              joint_line = {joining_pen, "joint of two pages"};

/// In mm of cloth from the top left corner of what is drawn: an outline has y upward, a page has it downward.
template <length_unit Unit>
class outline_picture {
public:
    picture drawn{};
    outline_words words{};

    outline_picture(const outline<Unit>& o, const outline_labels<Unit>& labels, const ruler& by,
                    const std::string& project, bool turned = false)
        : from_(o), cut_(trimmed_cut_line(o)), labels_(labels), by_(by), turned_(turned), runs_(labels.edges) {
        if (runs_.empty())
            for (std::size_t i = 0; i < o.seam_line().size(); ++i)
                runs_.push_back({i, 1});
        require_at_least<range_error>(labels_.count, std::int64_t{1}, "the number of pieces to cut");
        drawn.words.project = project;
        drawn.words.title = labels_.name;
        drawn.words.lists.resize(1);
        drawn.words.small_print.push_back(
            sentence({"Figures are rounded to ", graduation_text(by_),
                      ", areas to a tenth, each from the length drafted; what is drawn is not rounded."}));
        measure();
        drawn.draw(cut_line_kind, on_page(cut_.boundary), true);
        drawn.draw(labels_.lines.empty() ? seam_line_kind : finished_line_kind, on_page(from_.seam_line()), true);
        add_edges();
        add_lines();
        add_notches();
        add_grain();
        add_crossings();
        add_facts();
    }

    /// "cut 2 of canvas"
    static std::string count_text(const outline_labels<Unit>& l) {
        return l.material.empty() ? sentence({"cut ", l.count}) : sentence({"cut ", l.count, " of ", l.material});
    }

    /// With room for half a line's weight; words keep clear of the joints.
    std::pair<page, tiles> at_full_size(const drawing_options& options) const {
        page whole{drawn.width + 2, drawn.height + 2, labels_.name};
        const tiles parts(whole.width, whole.height, options.on);
        const placement to{{1, 1}, 1};
        for (const page_stroke& s : drawn.strokes)
            whole.strokes.push_back(to(s));
        outline_words more = words;
        more.name = {labels_.name, count_text(labels_)};
        more.kept_clear = parts.shared();
        for (const auto& [first, count] : runs_)
            more.edges[first + count / 2].words = {written(from_.allowance_of(first).allowance), allowance_text(first)};
        const page_area area = to(page_area{0, 0, drawn.width, drawn.height});
        const lettering letters(options.letters);
        outline_marker(whole, {to, area, area, {}, 0, letters}, more).write();
        return {std::move(whole), parts};
    }

    /// As the pages lie when they are joined.
    void draw_joints(const tiles& parts) {
        for (std::size_t c = 0; c + 1 < parts.columns(); ++c)
            drawn.draw(joint_line,
                       page_segment{{parts.joint_right(c) - 1, 0}, {parts.joint_right(c) - 1, drawn.height}});
        for (std::size_t r = 0; r + 1 < parts.rows(); ++r)
            drawn.draw(joint_line,
                       page_segment{{0, parts.joint_below(r) - 1}, {drawn.width, parts.joint_below(r) - 1}});
    }

    page on_page(const drawing_options& options) const {
        return best_page_of(drawn, options).draw([&](page& on, const picture_place& at) {
            outline_marker(on, at, words).write();
        });
    }

private:
    static constexpr double mm = to_double(units_per<millimetre, Unit>);

    /// The box round the line to cut along, which has the seam line within.
    void measure() {
        low_ = high_ = bare(cut_.boundary.front());
        for (const auto& p : cut_.boundary) {
            low_ = {std::min(low_.x, p.x.value()), std::min(low_.y, p.y.value())};
            high_ = {std::max(high_.x, p.x.value()), std::max(high_.y, p.y.value())};
        }
        drawn.width = (turned_ ? high_.y - low_.y : high_.x - low_.x) * mm;
        drawn.height = (turned_ ? high_.x - low_.x : high_.y - low_.y) * mm;
        require_drawable({drawn.width, drawn.height});
        drawn.ring = 10;
        drawn.has_note = true;
    }

    page_point on_page(const point<Unit, double>& p) const {
        const double right = (p.x.value() - low_.x) * mm;
        return turned_ ? page_point{(p.y.value() - low_.y) * mm, right}
                       : page_point{right, (high_.y - p.y.value()) * mm};
    }
    std::vector<page_point> on_page(const polygon<Unit, double>& points) const {
        std::vector<page_point> all;
        for (const auto& p : points)
            all.push_back(on_page(p));
        return all;
    }
    std::string written(drafted_length<Unit> l) const { return drafted_text(l, by_); }

    /// "3: 12 1/2 in, seam, allowance 1/2 in, of which 1/4 in turned under first"
    void add_edges() {
        const std::vector<page_point> seam = on_page(from_.seam_line());
        const double way = signed_area_of(from_.seam_line()).value() > 0 ? 1 : -1;
        auto& list = drawn.words.lists[0];
        list.emplace_back(word("Edges of the seam line and their allowances:"));
        for (std::size_t r = 0; r < runs_.size(); ++r) {
            const auto& [first, count] = runs_[r];
            const edge_allowance<Unit>& t = from_.allowance_of(first);
            for (std::size_t i = first; i < first + count; ++i) {
                const page_segment edge{seam.at(i), seam[(i + 1) % seam.size()]};
                const double size = distance(edge.from, edge.to);
                words.edges.push_back({edge,
                                       {(edge.from.y - edge.to.y) * way / size, (edge.to.x - edge.from.x) * way / size},
                                       t.allowance.value() * mm,
                                       r});
            }
            const std::string number = std::to_string(r + 1),
                              named = number + ": " + written(run_length(from_, runs_[r]));
            words.edges[first + count / 2].words = {number, named};
            std::string entry = count > 1 ? sentence({named, " along its curve, ", allowance_text(first)})
                                          : sentence({named, ", ", allowance_text(first)});
            if (t.first_turn.value() > 0)
                entry = sentence({entry, ", of which ", written(t.first_turn), " turned under first"});
            list.push_back(std::move(entry));
        }
    }
    std::size_t run_of(std::size_t edge) const { return words.edges[edge].run; }
    /// "allowance 1/2 in", or with its finish "seam, 1/2 in"
    std::string allowance_text(std::size_t i) const {
        const drafted_length<Unit> allowance = from_.allowance_of(i).allowance;
        const bool named = i < labels_.finishes.size(), none = !(allowance.value() > 0);
        const std::string said = none    ? sentence({"no allowance"})
                                 : named ? written(allowance)
                                         : sentence({"allowance ", written(allowance)});
        return named ? sentence({word(labels_.finishes[i]), ", ", said}) : said;
    }

    void add_lines() {
        const std::size_t n = labels_.lines.size();
        if (n != 0 && n != from_.seam_line().size())
            refuse<outline_error>({"an outline of ", from_.seam_line().size(),
                                   " edges has the lines of each or of none: "
                                   "it had those of ",
                                   n},
                                  {.kind = fault::disagree,
                                   .what = "the lines of an outline",
                                   .given = n,
                                   .most = from_.seam_line().size()});
        for (std::size_t i = 0; i < n; ++i) {
            add_lines(i, fold_line_kind, labels_.lines[i].folds);
            add_lines(i, row_line_kind, labels_.lines[i].stitching);
        }
        list_lines();
    }
    void add_lines(std::size_t i, const kind_of_line& kind, const std::vector<finish_line<Unit>>& lines) {
        outline_words::edge& edge = words.edges[i];
        for (const finish_line<Unit>& l : lines) {
            const double inside = drafted(l.at.from_datum()).value() * mm - edge.allowance;
            edge.depth = std::max(edge.depth, inside);
            if (!l.where)
                continue;
            drawn.draw(kind, page_segment{on_page(l.where->from), on_page(l.where->to)});
            edge.lines_inside += inside > drafting_tolerance ? 1 : 0;
            edge.lines_outside += inside < -drafting_tolerance ? 1 : 0;
        }
    }
    /// "edges 1, 3 to 5: double-turned hem; fold at 1/2 in, 1 1/2 in; stitch at 2 3/8 in"; edges that are finished alike share it.
    void list_lines() {
        std::vector<std::pair<std::string, std::vector<std::size_t>>> alike;
        for (std::size_t i = 0; i < labels_.lines.size(); ++i) {
            const finish_lines<Unit>& l = labels_.lines[i];
            if (l.folds.empty() && l.stitching.empty())
                continue;
            std::string said(word(i < labels_.finishes.size() ? labels_.finishes[i] : std::string()));
            for (const std::string& where : {places(word("fold at"), l.folds), places(word("stitch at"), l.stitching)})
                said += (said.empty() || where.empty() ? "" : "; ") + where;
            const auto same = [&](const auto& group) { return group.first == said; };
            auto found = std::find_if(alike.begin(), alike.end(), same);
            if (found == alike.end())
                found = alike.insert(found, {said, {}});
            if (found->second.empty() || found->second.back() != run_of(i))
                found->second.push_back(run_of(i));
        }
        if (!alike.empty())
            drawn.words.lists[0].emplace_back(word("Folds and stitching, from the cut edge inward:"));
        for (const auto& [said, edges] : alike)
            drawn.words.lists[0].push_back(edges_text(edges) + ": " + said);
    }
    std::string places(std::string_view verb, const std::vector<finish_line<Unit>>& lines) const {
        std::string all;
        for (const finish_line<Unit>& l : lines)
            all += sentence({all.empty() ? sentence({verb, " "}) : ", ", to_text(l.at.from_datum(), by_)});
        return all;
    }

    void add_notches() {
        for (const notch<Unit>& n : labels_.notches) {
            static_cast<void>(from_.allowance_of(n.edge)); // which refuses an edge that is not there
            const std::size_t run = run_of(n.edge);
            const carried_notch<Unit> c = notch_on(from_, cut_, runs_[run], n.from_start);
            const page_segment mark{on_page(c.on_seam), on_page(c.on_cut)};
            const page_point out = outward_of(mark, words.edges[n.edge].outward);
            drawn.draw(notch_line, mark);
            words.notches.push_back({mark, {-out.x, -out.y}});
            const std::size_t before = run == 0 ? runs_.size() : run;
            drawn.words.lists[0].push_back(sentence(
                {"notch on edge ", run + 1, ", ", written(n.from_start), " from its corner with edge ", before}));
        }
    }

    /// The way of a notch; of one whose two lines lie on each other, its edge's.
    static page_point outward_of(const page_segment& mark, page_point otherwise) {
        const double size = distance(mark.from, mark.to);
        return size < drafting_tolerance
                   ? otherwise
                   : page_point{(mark.to.x - mark.from.x) / size, (mark.to.y - mark.from.y) / size};
    }

    void add_grain() {
        if (!labels_.grain)
            return;
        const line<Unit, double>& g = *labels_.grain;
        static_cast<void>(from_.angle_to_grain(0, g)); // which refuses a line without direction, or too far away
        drawn.explain(grain_line);
        std::string slanting;
        for (std::size_t i = 0, last = runs_.size(); i < words.edges.size(); ++i)
            if (const double angle = from_.angle_to_grain(i, g); angle > 15 && angle < 75 && run_of(i) != last) {
                last = run_of(i);
                slanting += (slanting.empty() ? "" : ", ") + std::to_string(last + 1);
            }
        if (!slanting.empty()) // common practice
            drawn.words.sentences = {
                sentence({"Edges at a slant to the grain"}),
                sentence({"along edges ", slanting, " the cloth stretches: handle it little until it is sewn"})};
        words.grain = longest_chord(on_page(from_.seam_line()), {on_page(g.from), on_page(g.to)});
    }

    /// Of edges that meet in one place it is marked once.
    void add_crossings() {
        if (cut_.trimmed.empty())
            return;
        for (const cut_crossing<Unit>& c : from_.crossings()) {
            const page_point where = on_page(c.where);
            if (locate(cut_.boundary, c.where) == containment::on_edge &&
                std::none_of(words.crossings.begin(), words.crossings.end(),
                             [&](const page_point& p) { return distance(p, where) <= drafting_tolerance * mm; }))
                words.crossings.push_back(where);
        }
        if (!words.crossings.empty())
            drawn.explain(crossing_line);
        drawn.warnings.push_back(sentence({"Allowances overlap: the cut line is trimmed on ", trimmed_edges(),
                                           ". There is less cloth there than each of them asks for."}));
    }
    std::string trimmed_edges() const {
        std::vector<std::size_t> edges;
        for (const auto& t : cut_.trimmed)
            if (edges.empty() || edges.back() != run_of(t.edge))
                edges.push_back(run_of(t.edge));
        return edges_text(edges);
    }
    /// "edges 3, 5 to 24", counted from 1
    static std::string edges_text(const std::vector<std::size_t>& edges) {
        std::string all;
        for (std::size_t i = 0; i < edges.size(); ++i) {
            const std::size_t first = i;
            while (i + 1 < edges.size() && edges[i + 1] == edges[i] + 1)
                ++i;
            const std::string one = std::to_string(edges[first] + 1), last = std::to_string(edges[i] + 1);
            all += (first == 0 ? "" : ", ") + (i == first       ? one
                                               : i == first + 1 ? std::string(one).append(", ").append(last)
                                                                : sentence({one, " to ", last}));
        }
        return edges.size() == 1 ? sentence({"edge ", all}) : sentence({"edges ", all});
    }

    void add_facts() {
        auto& facts = drawn.words.facts;
        facts.push_back(count_text(labels_));
        facts.push_back(
            sentence({"area cut ", unbroken(drafted_area_text<Unit>(area_of(cut_.boundary).value(), by_))}));
        facts.push_back(
            sentence({"over all ", unbroken(drafted_size_text(drafted_length_of<Unit>(high_.x - low_.x),
                                                              drafted_length_of<Unit>(high_.y - low_.y), by_))}));
    }

    const outline<Unit>& from_;
    const trimmed_outline<Unit> cut_;
    const outline_labels<Unit>& labels_;
    const ruler by_;
    bool turned_;
    std::vector<curve_run> runs_;
    arrow<double> low_{}, high_{}; ///< corners of what is drawn
};

} // namespace detail

} // namespace turncloth

#endif
