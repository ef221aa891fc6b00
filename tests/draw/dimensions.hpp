// Dimensions of a picture of a step, read back from its page: each is as long, to the drawing's scale, as the figure that
// it carries, and is measured from an edge that is drawn there, cut or folded as its step says.
#ifndef TURNCLOTH_TESTS_DRAW_DIMENSIONS_HPP
#define TURNCLOTH_TESTS_DRAW_DIMENSIONS_HPP

#include <turncloth/draw/step.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace turncloth::drawn {

/// "3 1/4 in (8.3 cm)" and "8.3 cm" in mm, and how far a figure of that kind may be off what it was rounded from.
struct figure_read {
    double mm = 0, rounding = 0;
    std::string rest{}; ///< what follows it
};
inline std::optional<figure_read> figure_in(const std::string& text) {
    char* end = nullptr;
    double value = std::strtod(text.c_str(), &end);
    if (end == text.c_str())
        return {};
    const auto fraction_from = [&](double whole, const char* from) {
        char* slash = nullptr;
        const double top = std::strtod(from, &slash);
        if (slash == from || *slash != '/')
            return;
        value = whole + top / std::strtod(slash + 1, &end);
    };
    if (*end == '/')
        fraction_from(0, text.c_str());
    else if (*end == ' ')
        fraction_from(value, end + 1);
    const std::string rest = end;
    if (rest.rfind(" in", 0) == 0) {
        const std::size_t closed = rest.find(" cm)");
        return figure_read{value * 25.4, 25.4 / 32,
                           closed == std::string::npos ? rest.substr(3) : rest.substr(closed + 4)};
    }
    if (rest.rfind(" cm", 0) == 0)
        return figure_read{value * 10, 0.5, rest.substr(3)};
    return {};
}

struct dimension_read {
    bool upright;
    double from, to; ///< on paper
    std::string words;
};

class dimensions {
public:
    explicit dimensions(const page& p) : page_(p) {
        for (const page_words& w : p.words)
            if (w.bold && w.text.rfind("scale ", 0) == 0) {
                char* colon = nullptr;
                const double drawn_at = std::strtod(w.text.c_str() + 6, &colon);
                scale_ = std::strtod(colon + 1, nullptr) / drawn_at;
            }
        REQUIRE(scale_ > 0);
        read_lines();
        read_labels();
    }

    const std::vector<dimension_read>& all() const { return all_; }
    double of_cloth(double paper) const { return paper * scale_; }

    /// An edge in sight that runs across the measure just there; cut or folded where that matters.
    bool has_edge(bool upright, double at, std::optional<bool> folded = {}) const {
        return std::any_of(page_.strokes.begin(), page_.strokes.end(), [&](const page_stroke& s) {
            const bool cut = s.with.means == stroke_name("edge"), fold = s.with.means == stroke_name("folded");
            if ((!cut && !fold) || (folded && *folded != fold))
                return false;
            return upright ? is_at(s.points[0].y, at) && is_at(s.points[1].y, at)
                           : is_at(s.points[0].x, at) && is_at(s.points[1].x, at);
        });
    }
    /// Each dimension and label of it.
    void check() const {
        for (const dimension_read& d : all_) {
            CAPTURE(d.words);
            const auto said = figure_in(d.words);
            REQUIRE(said);
            const double drawn_mm = of_cloth(d.to - d.from), over = drawn_mm - said->mm;
            CHECK_MESSAGE(within(over, *said), "drawn ", drawn_mm, " mm long, said to be ", said->mm);
            CHECK_MESSAGE((has_edge(d.upright, d.from) || has_edge(d.upright, d.to)), "measured from no edge in sight");
        }
        for (const dimension_read& l : labels_) {
            CAPTURE(l.words);
            const auto said = figure_in(l.words);
            REQUIRE(said);
            const double far = said->mm / scale_, about = said->rounding / scale_;
            CHECK_MESSAGE(
                (is_edge_near(l.upright, l.from - far, about) || is_edge_near(l.upright, l.from + far, about)),
                "no edge in sight is so far from it");
        }
        CHECK(ticks_off_edges() == 0);
    }
    /// Whether such a figure is measured from an edge of that kind; of many, some stand in a list of their numbers alone.
    bool measures(const std::string& words, bool folded) const {
        return std::any_of(all_.begin(), all_.end(),
                           [&](const dimension_read& d) {
                               return d.words == words &&
                                      (has_edge(d.upright, d.from, folded) || has_edge(d.upright, d.to, folded));
                           }) ||
               std::any_of(labels_.begin(), labels_.end(),
                           [&](const dimension_read& l) { return l.words.rfind(words, 0) == 0; }) ||
               std::any_of(listed_.begin(), listed_.end(),
                           [&](const auto& l) { return l.second.rfind(words, 0) == 0; });
    }
    std::size_t count() const { return all_.size() + labels_.size(); }

private:
    static bool is_at(double a, double b, double within = 1e-4) { return std::abs(a - b) <= within; }
    static bool within(double off, const figure_read& f) { return std::abs(off) <= f.rounding + 1e-6; }
    bool is_edge_near(bool upright, double at, double tolerance) const {
        return std::any_of(page_.strokes.begin(), page_.strokes.end(), [&](const page_stroke& s) {
            if (s.with.means != stroke_name("edge") && s.with.means != stroke_name("folded"))
                return false;
            const page_point &a = s.points[0], &b = s.points[1];
            return upright ? is_at(a.y, b.y) && is_at(a.y, at, tolerance + 1e-4)
                           : is_at(a.x, b.x) && is_at(a.x, at, tolerance + 1e-4);
        });
    }

    /// Of each: its line, then a line and a stroke at either end. Words of nothing but a figure are theirs, in order.
    void read_lines() {
        std::vector<const page_stroke*> strokes;
        for (const page_stroke& s : page_.strokes)
            if (s.with.means == stroke_name("dimension"))
                strokes.push_back(&s);
        REQUIRE(strokes.size() % 5 == 0);
        for (std::size_t i = 0; i < strokes.size(); i += 5) {
            const auto& p = strokes[i]->points;
            const bool upright = p[0].x == p[1].x;
            all_.push_back({upright, upright ? p[0].y : p[0].x, upright ? p[1].y : p[1].x, {}});
        }
        std::size_t k = 0;
        for (const page_words& w : page_.words)
            if (const auto f = figure_in(w.text); f && f->rest.empty() && k < all_.size() && !is_listed(w))
                all_[k++].words = w.text;
        REQUIRE(k == all_.size());
    }
    static bool is_listed(const page_words& w) { return w.text.find(": ") != std::string::npos; }

    /// Leaders of labels have four points; a label is a figure and where from, or a number that a list explains.
    void read_labels() {
        for (const page_words& w : page_.words)
            if (const std::size_t colon = w.text.find(": "); colon != std::string::npos)
                listed_[w.text.substr(0, colon)] = w.text.substr(colon + 2);
        std::vector<const page_stroke*> leaders;
        for (const page_stroke& s : page_.strokes)
            if (s.with.means == stroke_name("leader") && s.points.size() == 4)
                leaders.push_back(&s);
        std::size_t k = 0;
        for (const page_words& w : page_.words) {
            const auto f = figure_in(w.text);
            const auto number = listed_.find(w.text);
            const bool label = f && f->rest.rfind(" from ", 0) == 0 && !is_listed(w);
            if ((!label && number == listed_.end()) || k == leaders.size())
                continue;
            const auto& p = leaders[k++]->points;
            const bool upright = p[0].y == p[1].y; // at the right its leader begins level
            labels_.push_back({upright, upright ? p[0].y : p[0].x, 0, label ? w.text : number->second});
        }
        CHECK(k == leaders.size());
    }

    /// The strokes that mark what is measured from, whose foot is on an edge.
    std::size_t ticks_off_edges() const {
        std::size_t off = 0;
        for (const page_stroke& s : page_.strokes)
            if (s.with.means == stroke_name("datum")) {
                const page_point foot = s.points[0];
                off += std::none_of(page_.strokes.begin(), page_.strokes.end(), [&](const page_stroke& e) {
                    if (e.with.means != stroke_name("edge") && e.with.means != stroke_name("folded"))
                        return false;
                    const page_point &a = e.points[0], &b = e.points[1];
                    const bool along_x = is_at(a.y, b.y) && is_at(a.y, foot.y) && std::min(a.x, b.x) - 2 < foot.x &&
                                         foot.x < std::max(a.x, b.x) + 2;
                    const bool along_y = is_at(a.x, b.x) && is_at(a.x, foot.x) && std::min(a.y, b.y) - 2 < foot.y &&
                                         foot.y < std::max(a.y, b.y) + 2;
                    return along_x || along_y;
                });
            }
        return off;
    }

    const page& page_;
    double scale_ = 0;
    std::vector<dimension_read> all_{}, labels_{};
    std::map<std::string, std::string> listed_{}; ///< what a number in the margin stands for
};

/// All pictures of a plan; returns how many figures they carry.
template <length_unit Unit>
std::size_t check_measured(const std::vector<step_page>& pages, const work_plan<Unit>& plan, const ruler& by = {}) {
    std::size_t count = 0;
    for (const step_page& p : pages) {
        INFO(p.page.title);
        const dimensions read(p.page);
        read.check();
        count += read.count();
        const work_step<Unit>& s = plan.groups[p.group].steps[p.step];
        if (s.verb == work_verb::seam || s.places.empty())
            continue;
        for (const auto* m : {&s.places[0].across, &s.places[0].along})
            if (m->from.of.is_given())
                for (const length<Unit>& l : m->at)
                    if (l != length<Unit>()) {
                        const std::string words = to_text(l < length<Unit>() ? -l : l, by);
                        CHECK_MESSAGE(read.measures(words, m->from.folded), words, " is not measured from its ",
                                      m->from.folded ? "folded" : "cut", " edge");
                    }
    }
    return count;
}

} // namespace turncloth::drawn

#endif
