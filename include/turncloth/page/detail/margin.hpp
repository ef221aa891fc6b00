// Labels on a margin: above a picture or at its right, each at the end of a leader from the line that it tells of.
//
//   margin_label{at, start, figure, from, what}     "5 in from the left", "pocket line"
//   margin m(labels, by, beside);
//   m.choose(room)  m.depth()  m.extent()            how they are written, and what room that takes
//   m.draw(page, {.to = place, .near = x, .from = y0, .until = y1})
//
// Level, two lines each; above a picture turned, where one row does not hold them all. Labels for which there is no room
// become numbers, of which so many are written as have room; a list says what they are.
#ifndef TURNCLOTH_PAGE_DETAIL_MARGIN_HPP
#define TURNCLOTH_PAGE_DETAIL_MARGIN_HPP

#include <turncloth/page/detail/frame.hpp>
#include <turncloth/page/detail/labels.hpp>

#include <algorithm>
#include <cstddef>
#include <string>
#include <tuple>
#include <vector>

namespace turncloth::detail {

/// What is written about one line: its distance from the edge named, and what it is.
struct margin_label {
    double at;    ///< along the margin, in mm of what is drawn
    double start; ///< where across it the line ends that it points to
    std::string figure, from, what;
    bool of_end = false;       ///< it says where a line ends that runs the other way
    bool from_cut_edge = true; ///< not from one that is folded
    std::string distance() const { return sentence({figure, " from the ", word(from)}); }
};

/// Where a margin lies on the page: `near` is where it begins, and labels stand between `from` and `until` along it.
struct margin_place {
    placement to;
    double near, from, until;
};

class margin {
public:
    margin(const std::vector<margin_label>& labels, const lettering& by, bool beside)
        : labels_(&labels), by_(by), beside_(beside) {}

    bool is_numbered() const { return how_ == manner::numbered; }
    void number_from(std::size_t first) { how_ = manner::numbered, first_ = first; }
    std::size_t count() const { return labels_->size(); }

    /// How they are written where they are not numbered.
    void choose(double room) {
        if (how_ != manner::numbered)
            how_ = beside_ || extent_of(manner::level) <= room ? manner::level : manner::turned;
    }
    /// Across the margin.
    double depth() const {
        if (labels_->empty())
            return 0;
        if (how_ == manner::numbered)
            return lead + (beside_ ? widest_number() + 2 : line_height);
        return lead + (how_ == manner::level && !beside_ ? 2 * label_line : widest() + 1);
    }
    /// Along it, were each label written out.
    double extent() const { return extent_of(how_); }
    /// Labels that would stray far from what is drawn, so long on paper.
    bool strays(double along) const {
        return (beside_ || how_ == manner::turned) && how_ != manner::numbered && extent() > 4 * along + 40;
    }

    /// The entries of a numbered side. Marks of one kind from one edge share a heading, unless the kinds are many.
    void list(std::vector<std::string>& entries) const {
        const std::vector<margin_label>& all = *labels_;
        const auto kind = [&](std::size_t i) { return std::tie(all[i].what, all[i].from); };
        std::vector<std::size_t> kinds; // the first label of each
        for (std::size_t i = 0; i < all.size() && kinds.size() * 3 <= all.size(); ++i)
            if (std::none_of(kinds.begin(), kinds.end(), [&](std::size_t k) { return kind(k) == kind(i); }))
                kinds.push_back(i);
        const bool many = kinds.size() * 3 > all.size();
        const auto number_of = [&](std::size_t i) { return std::to_string(first_ + i) + ": "; };
        for (std::size_t i = 0; many && i < all.size(); ++i)
            entries.push_back(sentence({number_of(i), all[i].distance(), ", ", all[i].what}));
        for (std::size_t k = 0; !many && k < kinds.size(); ++k) {
            entries.push_back(all[kinds[k]].what + ',');
            const std::string_view from = word(all[kinds[k]].from);
            entries.push_back(all[kinds[k]].from_cut_edge ? sentence({"from the cut ", from, " edge:"})
                                                          : sentence({"from the folded ", from, " edge:"}));
            for (std::size_t i = kinds[k]; i < all.size(); ++i)
                if (kind(i) == kind(kinds[k]))
                    entries.push_back(number_of(i) + all[i].figure);
        }
    }

    void draw(page& on, const margin_place& m) const {
        struct written_label : on_margin {
            std::size_t which;
        };
        std::vector<written_label> written;
        const std::size_t every = numbers_left_out(m);
        for (std::size_t i = 0; i < labels_->size(); ++i)
            if ((first_ + i) % every == 0)
                written.push_back({{beside_ ? m.to.y((*labels_)[i].at) : m.to.x((*labels_)[i].at), size_of(i)}, i});
        spread(written, m.from, m.until);
        const double away = beside_ ? 1 : -1, near = m.near;
        for (const written_label& w : written) {
            const margin_label& l = (*labels_)[w.which];
            std::vector<page_point> leader;
            for (const auto& [across, along] : {page_point{beside_ ? m.to.x(l.start) : m.to.y(l.start), w.wanted},
                                                {near + away * 1.5, w.wanted},
                                                {near + away * (lead - 1.5), w.centre},
                                                {near + away * lead, w.centre}})
                leader.push_back(beside_ ? page_point{across, along} : page_point{along, across});
            page_point at = leader.back();
            (beside_ ? at.x : at.y) += away;
            on.draw(leader_pen, std::move(leader));
            write(on, w.which, at);
        }
    }

private:
    enum class manner { level, turned, numbered };
    static constexpr double lead = 9;                             // from what is drawn to a label
    static constexpr double label_line = 3.5, label_height = 8.6; // a label has two lines
    static constexpr double longest_label = 62, number_height = 3.4;

    /// A figure is written out whatever it needs; what it is of may be shortened.
    double width_of(const margin_label& l) const {
        return std::max(by_.width(l.distance(), body_size), std::min(longest_label, by_.width(l.what, body_size)));
    }
    double widest() const {
        double most = 0;
        for (const margin_label& l : *labels_)
            most = std::max(most, width_of(l));
        return most;
    }
    double widest_number() const { return by_.width(std::to_string(first_ + labels_->size() - 1), body_size); }
    double extent_of(manner how) const {
        double sum = 0;
        for (const margin_label& l : *labels_)
            sum += how == manner::level && !beside_ ? width_of(l) + page_gap : label_height;
        return sum;
    }
    double size_of(std::size_t i) const {
        if (how_ == manner::numbered)
            return beside_ ? number_height : by_.width(std::to_string(first_ + i), body_size) + 2;
        return how_ == manner::level && !beside_ ? width_of((*labels_)[i]) + page_gap : label_height;
    }
    /// Every so many are written.
    std::size_t numbers_left_out(const margin_place& m) const {
        if (how_ != manner::numbered)
            return 1;
        const double size = beside_ ? number_height : widest_number() + 2;
        const auto most = static_cast<std::size_t>(std::max(1.0, (m.until - m.from) / size));
        return static_cast<std::size_t>(round_number([&](std::uint64_t n) { return labels_->size() / n <= most; }));
    }

    void write(page& on, std::size_t i, page_point at) const {
        const margin_label& l = (*labels_)[i];
        const std::string what = by_.shortened(l.what, body_size, longest_label);
        if (how_ == manner::numbered) {
            on.write({at.x, beside_ ? at.y + 0.35 * body_size : at.y}, std::to_string(first_ + i), body_size,
                     beside_ ? set_from::start : set_from::middle);
        } else if (how_ == manner::turned) {
            on.write({at.x - 0.5, at.y}, l.distance(), body_size).turned = 90;
            on.write({at.x - 0.5 + label_line, at.y}, what, body_size).turned = 90;
        } else {
            const double y = beside_ ? at.y - 0.5 : at.y - label_line;
            const set_from anchor = beside_ ? set_from::start : set_from::middle;
            on.write({at.x, y}, l.distance(), body_size, anchor);
            on.write({at.x, y + label_line}, what, body_size, anchor);
        }
    }

    const std::vector<margin_label>* labels_;
    lettering by_;
    bool beside_;
    manner how_ = manner::level;
    std::size_t first_ = 1;
};

} // namespace turncloth::detail

#endif
