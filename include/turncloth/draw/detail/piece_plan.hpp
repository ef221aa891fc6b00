// What a drawing shows and says of a piece, before anything has a place on the page.
//
//   paper::a4  paper::letter               what it is printed on
//   drawing_options{project, on}           the project's name, and the paper
//   detail::sides_of(paper)                in millimetres
//   detail::plan_of(piece, ruler, options) the piece in millimetres and words, whatever its unit was
//
//   const detail::plan p = detail::plan_of(sheet_of(roll).pieces[0], ruler(), {});   // drawing.hpp does this
#ifndef TURNCLOTH_DRAW_DETAIL_PIECE_PLAN_HPP
#define TURNCLOTH_DRAW_DETAIL_PIECE_PLAN_HPP

#include <turncloth/draw/detail/svg_page.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/page/paper.hpp>
#include <turncloth/sheet/text.hpp>

#include <algorithm>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth {

struct drawing_options {
    std::string project;
    paper on = paper::a4;
};

namespace detail {

/// Of a sheet of paper, in mm.
struct paper_sides {
    double narrow, wide;
};

constexpr paper_sides sides_of(paper on) { return {on.narrow(), on.wide()}; }

/// What the foot of a page says, in measurements that are not to be broken over two lines.
struct foot_words {
    std::string project, piece, count, cut_size, finished_size;
    std::vector<std::string> edges, small_print;
};

/// A line on the cut piece, in mm of cloth from its top left corner.
struct plan_line {
    line_kind kind;
    page_point from, to;
};

/// What is written about one line: its distance from the edge named, and what it is.
struct plan_label {
    double at;    ///< along the side on which it is written, in mm of cloth
    double start; ///< where across the piece the line ends that it points to
    std::string figure, from, what;
    bool of_end = false; ///< it says where a line ends that runs the other way
    std::string distance() const { return figure + " from " + from; }
};

struct plan : foot_words {
    std::string cut_width, cut_height, finished_width, finished_height;
    double width = 0, height = 0; ///< cut, in mm of cloth
    box finished{};
    std::vector<plan_line> lines;
    std::vector<plan_label> beside, above; ///< of level and of upright lines, in order along their side

    bool has(line_kind kind) const {
        return std::any_of(lines.begin(), lines.end(), [&](const plan_line& l) { return l.kind == kind; });
    }
    bool has_allowances() const { return finished.width != width || finished.height != height; }
};

template <length_unit Unit>
double in_mm(length<Unit> l) {
    return to_double(l.value()) * to_double(units_per<millimetre, Unit>);
}

/// What is done to the edges; those that are finished alike share a sentence.
template <length_unit Unit>
std::vector<std::string> edge_sentences(const panel<Unit>& shape, const ruler& by) {
    const auto places = [&](const char* verb, const auto& lines) {
        std::string all;
        for (const auto& l : lines)
            all += (all.empty() ? std::string("; ") + verb + " at " : std::string(", ")) +
                   unbroken(to_text(l.from_datum(), by));
        return all;
    };
    std::vector<std::string> all;
    for (const edges_alike& alike : finished_alike(shape, {all_edges.begin(), all_edges.end()})) {
        const finish<Unit>& f = shape.finish_of(alike.first);
        all.push_back(alike.names + ": " + std::string(f.name()) + places("fold", f.folds()) +
                      places("stitch", f.stitching()));
    }
    return all;
}

/// Brings a piece to millimetres and words.
template <length_unit Unit>
class planner {
public:
    planner(const sheet_piece<Unit>& p, const ruler& by, const drawing_options& options) : from_(p), by_(by) {
        made_.project = options.project;
    }

    plan make() {
        name_sizes();
        for (const sheet_line<Unit>& l : from_.lines)
            add(l);
        order(made_.beside, true);
        order(made_.above, false);
        made_.edges = edge_sentences(from_.made_from.shape(), by_);
        made_.small_print.push_back("Print at 100 %. Distances are from the cut edge named, rounded to " +
                                    graduation_text(by_) + ", each from the exact length.");
        if (from_.made_from.is_film())
            made_.small_print.emplace_back(caution::film_and_iron);
        return std::move(made_);
    }

private:
    static double mm(length<Unit> l) { return in_mm(l); }
    std::string written(length<Unit> l) const { return to_text(l, by_); }

    void name_sizes() {
        const piece<Unit>& p = from_.made_from;
        const finished_size<Unit>& f = p.shape().finished();
        const finished_size<Unit>& made = from_.finished;
        made_.piece = p.name();
        made_.count = "cut " + std::to_string(p.count()) + " of " + p.material();
        made_.cut_size = "cut " + unbroken(size_text(from_.cut.width(), from_.cut.height(), by_));
        made_.finished_size = "finishes " + unbroken(size_text(made.width(), made.height(), by_));
        if (from_.corner.value() > 0)
            made_.finished_size += ", " + unbroken(written(from_.depth)) + " deep, with its pair";
        made_.width = mm(from_.cut.width());
        made_.height = mm(from_.cut.height());
        made_.finished = {mm(p.shape().finish_of(edge::left).allowance()),
                          mm(p.shape().finish_of(edge::top).allowance()), mm(f.width()), mm(f.height())};
        const std::string cut = made_.has_allowances() ? "cut " : "cut and finished ";
        made_.cut_width = cut + written(from_.cut.width());
        made_.cut_height = cut + written(from_.cut.height());
        made_.finished_width = "finished " + written(f.width());
        made_.finished_height = "finished " + written(f.height());
    }

    void add(const sheet_line<Unit>& l) {
        const length<Unit> off = l.from_cut_edge.value();
        const bool level = is_level(l.parallel_to);
        const bool from_far = l.parallel_to == edge::bottom || l.parallel_to == edge::right;
        const double at = mm(from_far ? across(from_.cut, l.parallel_to) - off : off);
        const double begins = mm(l.begins), ends = mm(l.ends);
        const auto stretch = [&](double from, double to) {
            made_.lines.push_back(level ? plan_line{l.kind, {from, at}, {to, at}}
                                        : plan_line{l.kind, {at, from}, {at, to}});
        };
        for (const short_mark<Unit>& t : l.only)
            if (t.at == edge::top || t.at == edge::left)
                stretch(begins, begins + mm(t.size));
            else
                stretch(ends - mm(t.size), ends);
        if (l.only.empty())
            stretch(begins, ends);
        if (l.of_finish)
            return; // the list of edges says it
        const std::string what =
            (l.kind != line_kind::mark && l.kind != line_kind::slit ? std::string(verb_of(l.kind)) + ' '
                                                                    : std::string()) +
            l.what;
        (level ? made_.beside : made_.above)
            .push_back({at, level ? ends : begins, written(off), std::string(name_of(l.parallel_to)), what});
        if (l.begins.value() != 0 || l.ends != along(from_.cut, l.parallel_to))
            add_ends(l, at, what);
    }

    /// A line that stops short of the piece's edges has its ends labelled on the other side.
    void add_ends(const sheet_line<Unit>& l, double at, const std::string& what) {
        const bool level = is_level(l.parallel_to);
        auto& side = level ? made_.above : made_.beside;
        const std::string from = level ? "left" : "top";
        side.push_back({mm(l.begins), at, written(l.begins), from, what + ", begins", true});
        side.push_back({mm(l.ends), at, written(l.ends), from, what + ", ends", true});
    }

    /// Along the side. Of labels that say the same, the one stays whose line is nearest to the side; the end of a line
    /// needs none where it meets a labelled line.
    static void order(std::vector<plan_label>& labels, bool from_right) {
        std::stable_sort(labels.begin(), labels.end(), [&](const plan_label& a, const plan_label& b) {
            const double nearer_a = from_right ? -a.start : a.start, nearer_b = from_right ? -b.start : b.start;
            return std::tie(a.at, a.what, a.from, nearer_a) < std::tie(b.at, b.what, b.from, nearer_b);
        });
        const auto same = [](const plan_label& a, const plan_label& b) {
            return std::tie(a.at, a.what, a.from) == std::tie(b.at, b.what, b.from);
        };
        labels.erase(std::unique(labels.begin(), labels.end(), same), labels.end());
        const std::vector<plan_label> all = labels;
        const auto meets_a_line = [&](const plan_label& end) {
            return end.of_end && std::any_of(all.begin(), all.end(), [&](const plan_label& l) {
                       return !l.of_end && std::tie(l.at, l.figure, l.from) == std::tie(end.at, end.figure, end.from);
                   });
        };
        labels.erase(std::remove_if(labels.begin(), labels.end(), meets_a_line), labels.end());
    }

    const sheet_piece<Unit>& from_;
    const ruler by_;
    plan made_;
};

template <length_unit Unit>
plan plan_of(const sheet_piece<Unit>& p, const ruler& by, const drawing_options& options) {
    return planner<Unit>(p, by, options).make();
}

} // namespace detail

} // namespace turncloth

#endif
