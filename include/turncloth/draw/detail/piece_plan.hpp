// What the drawing of a piece shows and says, before anything has a place on the page.
//
//   piece_plan_of(piece, ruler, project)     the piece in millimetres and words, whatever its unit was
//   edge_sentences(panel, ruler)             what is done to the edges of a panel
#ifndef TURNCLOTH_DRAW_DETAIL_PIECE_PLAN_HPP
#define TURNCLOTH_DRAW_DETAIL_PIECE_PLAN_HPP

#include <turncloth/draw/detail/piece_features.hpp>
#include <turncloth/notions/caution.hpp>
#include <turncloth/page/drawing.hpp>
#include <turncloth/sheet/text.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
double in_mm(length<Unit> l) {
    return to_double(l.value()) * to_double(units_per<millimetre, Unit>);
}

/// Those that are finished alike share a sentence.
template <length_unit Unit>
std::vector<std::string> edge_sentences(const panel<Unit>& shape, const ruler& by) {
    const auto places = [&](const char* verb, const auto& lines) {
        std::string all;
        for (const auto& l : lines)
            all += joined({all.empty() ? joined({"; ", verb, " at "}) : ", ", unbroken(to_text(l.from_datum(), by))});
        return all;
    };
    std::vector<std::string> all{"Edges, from the cut edge inward"};
    for (const edges_alike& alike : finished_alike(shape, {all_edges.begin(), all_edges.end()})) {
        const finish<Unit>& f = shape.finish_of(alike.first);
        all.push_back(
            joined({alike.names, ": ", f.name(), places("fold", f.folds()), places("stitch", f.stitching())}));
    }
    return all;
}

/// A line on the cut piece, in mm of cloth from its top left corner.
struct piece_line {
    line_kind kind;
    page_segment where;
};

/// What is written about one line: its distance from the edge named, and what it is.
struct piece_label {
    double at;    ///< along the side on which it is written, in mm of cloth
    double start; ///< where across the piece the line ends that it points to
    std::string figure, from, what;
    bool of_end = false; ///< it says where a line ends that runs the other way
    std::string distance() const { return joined({figure, " from ", from}); }
};

struct piece_plan {
    frame_words words;
    std::string cut_width{}, cut_height{}, finished_width{}, finished_height{};
    page_area cut{}, finished{}; ///< in mm of cloth
    std::vector<piece_line> lines{};
    std::vector<piece_label> beside{}, above{}; ///< of level and of upright lines, in order along their side
    piece_features features{};

    bool has(line_kind kind) const {
        return std::any_of(lines.begin(), lines.end(), [&](const piece_line& l) { return l.kind == kind; });
    }
    bool has_allowances() const { return finished.width != cut.width || finished.height != cut.height; }
};

/// The entries of a numbered side. Marks of one kind from one edge share a heading, unless the kinds are many.
inline void list_side(std::vector<std::string>& entries, const std::vector<piece_label>& labels, std::size_t first) {
    const auto kind = [&](std::size_t i) { return std::tie(labels[i].what, labels[i].from); };
    std::vector<std::size_t> kinds; // the first label of each
    for (std::size_t i = 0; i < labels.size() && kinds.size() * 3 <= labels.size(); ++i)
        if (std::none_of(kinds.begin(), kinds.end(), [&](std::size_t k) { return kind(k) == kind(i); }))
            kinds.push_back(i);
    const bool many = kinds.size() * 3 > labels.size();
    const auto number_of = [&](std::size_t i) { return std::to_string(first + i) + ": "; };
    for (std::size_t i = 0; many && i < labels.size(); ++i)
        entries.push_back(joined({number_of(i), labels[i].distance(), ", ", labels[i].what}));
    for (std::size_t k = 0; !many && k < kinds.size(); ++k) {
        entries.push_back(labels[kinds[k]].what + ',');
        entries.push_back(joined({"from the cut ", labels[kinds[k]].from, " edge:"}));
        for (std::size_t i = kinds[k]; i < labels.size(); ++i)
            if (kind(i) == kind(kinds[k]))
                entries.push_back(number_of(i) + labels[i].figure);
    }
}

template <length_unit Unit>
class piece_planner {
public:
    piece_planner(const sheet_piece<Unit>& p, const ruler& by) : from_(p), by_(by) {}

    piece_plan make(const std::string& project) {
        require_few_enough(from_.lines.size(), "the number of lines of a piece that is drawn");
        name_sizes();
        for (const sheet_line<Unit>& l : from_.lines)
            add(l);
        made_.features = features_of(from_);
        label_features();
        order(made_.beside, true);
        order(made_.above, false);
        made_.words.project = project;
        made_.words.sentences = edge_sentences(from_.made_from.shape(), by_);
        add_feature_sentences();
        made_.words.small_print.push_back(joined({"Distances are from the cut edge named, rounded to ",
                                                  graduation_text(by_), ", each from the exact length."}));
        if (from_.made_from.is_film())
            made_.words.small_print.emplace_back(caution::film_and_iron);
        return std::move(made_);
    }

private:
    std::string written(length<Unit> l) const { return to_text(l, by_); }

    void name_sizes() {
        const piece<Unit>& p = from_.made_from;
        const finished_size<Unit>& f = p.shape().finished();
        made_.words.title = p.name();
        made_.words.facts_size = body_size;
        made_.words.facts = {
            joined({"cut ", std::to_string(p.count()), " of ", p.material()}),
            joined({"cut ", unbroken(size_text(from_.cut.width(), from_.cut.height(), by_))}),
            joined({"finishes ", unbroken(size_text(from_.finished.width(), from_.finished.height(), by_))})};
        if (from_.corner.value() > 0)
            made_.words.facts[2] += ", " + unbroken(written(from_.depth)) + " deep, with its pair";
        made_.cut = {0, 0, in_mm(from_.cut.width()), in_mm(from_.cut.height())};
        made_.finished = finished_area(f);
        require_drawable(made_.cut.width);
        require_drawable(made_.cut.height);
        const char* cut = made_.has_allowances() ? "cut " : "cut and finished ";
        made_.cut_width = cut + written(from_.cut.width());
        made_.cut_height = cut + written(from_.cut.height());
        const auto finished_words = [&](length<Unit> flat, length<Unit> made) {
            const bool pleated = from_.corner.value() == 0 && made != flat;
            return pleated ? joined({"before pleating ", written(flat)}) : joined({"finished ", written(made)});
        };
        made_.finished_width = finished_words(f.width(), from_.finished.width());
        made_.finished_height = finished_words(f.height(), from_.finished.height());
    }

    /// Between the finished edges on the flat cloth; where corners are cut out, the face of the box.
    page_area finished_area(const finished_size<Unit>& flat) const {
        const panel<Unit>& shape = from_.made_from.shape();
        const length<Unit> side = from_.depth / 2;
        return {in_mm(shape.finish_of(edge::left).allowance() + side),
                in_mm(shape.finish_of(edge::top).allowance() + side), in_mm(flat.width() - from_.depth),
                in_mm(flat.height() - from_.depth)};
    }

    /// A corner cut out is as wide as it is high; eyelets share their distance from the top.
    void label_features() {
        if (from_.corner.value() > 0) {
            const double c = made_.features.corner;
            made_.above.push_back({c, c, written(from_.corner), "left", "corner cut out"});
            made_.beside.push_back({c, made_.cut.width - c, written(from_.corner), "top", "corner cut out"});
        }
        for (const sheet_eyelets<Unit>& row : from_.eyelets) {
            const double down = in_mm(row.from_top.value());
            for (const length<Unit>& centre : row.from_left)
                made_.above.push_back({in_mm(centre), down, written(centre), "left", "eyelet"});
            made_.beside.push_back(
                {down, in_mm(row.from_left.back()), written(row.from_top.value()), "top", "eyelets"});
        }
    }

    void add_feature_sentences() {
        std::vector<std::string>& all = made_.words.sentences;
        if (from_.corner.value() > 0)
            all.push_back(joined({"corners: cut a square of ", unbroken(written(from_.corner)), " out of each"}));
        for (const sheet_eyelets<Unit>& row : from_.eyelets)
            all.push_back(joined({"eyelets: holes of ", unbroken(written(row.size.hole)), ", rims of ",
                                  unbroken(written(row.size.rim))}));
        if (!made_.features.brought.empty())
            all.emplace_back("pleats: each arrow runs from a fold to the placement line that it is brought to");
    }

    void add(const sheet_line<Unit>& l) {
        const length<Unit> off = l.from_cut_edge.value();
        const bool level = is_level(l.parallel_to);
        const bool from_far = l.parallel_to == edge::bottom || l.parallel_to == edge::right;
        const double at = in_mm(from_far ? across(from_.cut, l.parallel_to) - off : off);
        const double begins = in_mm(l.begins), ends = in_mm(l.ends);
        const auto stretch = [&](double from, double to) {
            made_.lines.push_back(
                {l.kind, level ? page_segment{{from, at}, {to, at}} : page_segment{{at, from}, {at, to}}});
        };
        for (const short_mark<Unit>& t : l.only)
            if (t.at == edge::top || t.at == edge::left)
                stretch(begins, begins + in_mm(t.size));
            else
                stretch(ends - in_mm(t.size), ends);
        if (l.only.empty())
            stretch(begins, ends);
        if (l.of_finish)
            return; // the list of edges says it
        const bool worked = l.kind != line_kind::mark && l.kind != line_kind::slit;
        const std::string what = joined({worked ? verb_of(l.kind) : "", worked ? " " : "", l.what});
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
        side.push_back({in_mm(l.begins), at, written(l.begins), from, what + ", begins", true});
        side.push_back({in_mm(l.ends), at, written(l.ends), from, what + ", ends", true});
    }

    /// Along the side. Of labels that say the same, the one stays whose line is nearest to the side; the end of a line
    /// needs none where it meets a labelled line.
    static void order(std::vector<piece_label>& labels, bool from_right) {
        std::stable_sort(labels.begin(), labels.end(), [&](const piece_label& a, const piece_label& b) {
            const double nearer_a = from_right ? -a.start : a.start, nearer_b = from_right ? -b.start : b.start;
            return std::tie(a.at, a.what, a.from, nearer_a) < std::tie(b.at, b.what, b.from, nearer_b);
        });
        const auto same = [](const piece_label& a, const piece_label& b) {
            return std::tie(a.at, a.what, a.from) == std::tie(b.at, b.what, b.from);
        };
        labels.erase(std::unique(labels.begin(), labels.end(), same), labels.end());
        const std::vector<piece_label> all = labels;
        std::erase_if(labels, [&](const piece_label& end) { // those at one place are neighbours
            const auto first =
                std::partition_point(all.begin(), all.end(), [&](const piece_label& l) { return l.at < end.at; });
            const auto last =
                std::partition_point(first, all.end(), [&](const piece_label& l) { return l.at <= end.at; });
            return end.of_end && std::any_of(first, last, [&](const piece_label& l) {
                       return !l.of_end && std::tie(l.figure, l.from) == std::tie(end.figure, end.from);
                   });
        });
    }

    const sheet_piece<Unit>& from_;
    const ruler by_;
    piece_plan made_;
};

} // namespace turncloth::detail

#endif
