// The shortest lay of a few kinds of pieces to be cut edge to edge, or in strips: every way to cut is tried.
//
//   class detail::exact_cuts   suits(problem), solve(shorter_than, steps) -> found, refuted or given_up;
//                              length(), placed(), steps()
//
//   detail::exact_cuts exact(problem);
//   if (exact.solve(length, 100'000) == detail::proof::refuted) bound = length;
//
// Edge to edge: such a lay is one piece, or two such lays beside each other, or one above the other. Call a choice how
// many of each kind are taken. The boxes that hold a choice so laid come from those of any two choices that make it up:
// beside each other widths add up and the greater length counts, one above the other lengths add up. Of the boxes of a
// choice only those that hold no other matter; listed by rising width their lengths fall, so that all the sums worth
// having come from one walk along two lists.
//
// Strips: the same boxes, joined beside each other only, are the strips of a choice, and the shortest lay of a choice
// is its best strip above the shortest lay of the rest.
//
// A box leaving more cloth uncovered than a shorter lay has to spare in all is in none, and is dropped at once.
#ifndef TURNCLOTH_CLOTH_LAY_EXACT_CUTS_HPP
#define TURNCLOTH_CLOTH_LAY_EXACT_CUTS_HPP

#include <turncloth/cloth/lay/order.hpp>
#include <turncloth/cloth/lay/pace.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace turncloth::detail {

class exact_cuts {
public:
    /// Whether choices are few enough to list, and nothing but sizes decides where a piece may lie.
    static bool suits(const lay_problem& problem) {
        std::int64_t choices = 1;
        for (const lay_kind& kind : problem.kinds) {
            if (kind.at_edge || kind.count >= most_choices)
                return false;
            choices *= kind.count + 1;
            if (choices > most_choices)
                return false;
        }
        return !problem.matching();
    }

    /// For a problem that suits. A choice's number counts its kinds like digits, each with its own base.
    explicit exact_cuts(const lay_problem& problem) : problem_(&problem) {
        std::size_t choices = 1;
        for (const lay_kind& kind : problem.kinds) {
            ones_.push_back(choices);
            choices *= static_cast<std::size_t>(kind.count) + 1;
        }
        boxes_.resize(choices);
        area_.resize(choices);
        lays_.resize(problem.cutting == cutting::strips ? choices : 0);
    }

    /// Looks for the shortest of all lays below `shorter_than`; gives up after so many steps of work.
    proof solve(std::int64_t shorter_than, lay_allowance steps) {
        longest_ = shorter_than - 1;
        spare_ = problem_->width * longest_ - problem_->area;
        if (spare_ < 0)
            return proof::refuted;
        allowance_ = steps.after(steps_);
        std::vector<std::int64_t> taken(ones_.size(), 0);
        for (std::size_t choice = 1; choice < boxes_.size(); ++choice) {
            count_up(taken, problem_->kinds);
            list_boxes(choice, taken);
            if (problem_->cutting == cutting::strips)
                lay_strips(choice, taken);
            if (!allowance_.allows(steps_))
                return proof::given_up;
        }
        return length() < shorter_than ? proof::found : proof::refuted;
    }

    /// Of the lay found; beyond every length where there is none.
    std::int64_t length() const noexcept {
        if (problem_->cutting == cutting::strips)
            return lays_.back().length;
        return boxes_.back().empty() ? none : boxes_.back().back().length;
    }

    /// The pieces of the lay found; `entry` is the index of a kind.
    std::vector<laid> placed() const {
        std::vector<laid> all;
        if (problem_->cutting == cutting::edge_to_edge) {
            place(boxes_.back().back(), 0, 0, all);
            return all;
        }
        std::int64_t y = 0;
        for (std::size_t left = lays_.size() - 1; left > 0; left -= lays_[left].strip) {
            const box& strip = boxes_[lays_[left].strip].back();
            place(strip, 0, y, all);
            y += strip.length;
        }
        return all;
    }

    std::uint64_t steps() const noexcept { return steps_; }

private:
    static constexpr std::int64_t most_choices = 4096;
    static constexpr std::int64_t none = std::int64_t{1} << 61;

    enum class made : unsigned char { of_one, turned, beside, above };

    /// What holds a choice: a piece, or a box of one part and a box of the other.
    struct box {
        std::int64_t width, length;
        std::uint32_t part, rest;       // choices; of a piece, `part` is its kind
        std::uint32_t in_part, in_rest; // places in their lists
        made how;
    };

    /// The shortest lay of a choice in strips: its length, and the choice in its first strip.
    struct strip_lay {
        std::int64_t length = 0;
        std::size_t strip = 0;
    };

    /// The next choice in the order of the numbers.
    static void count_up(std::vector<std::int64_t>& taken, const std::vector<lay_kind>& kinds) {
        for (std::size_t k = 0; taken[k]++ == kinds[k].count; ++k)
            taken[k] = 0;
    }

    static std::size_t last_kind(const std::vector<std::int64_t>& taken) {
        std::size_t k = taken.size() - 1;
        while (taken[k] == 0)
            --k;
        return k;
    }

    /// Calls use(part) for every choice within `whole`, from the least up to itself, until it says stop.
    template <class Use>
    void each_part(const std::vector<std::int64_t>& whole, Use use) {
        part_.assign(whole.size(), 0);
        std::uint64_t parts = 0;
        for (std::size_t part = 0;; ++parts) {
            std::size_t k = 0;
            for (; k < whole.size() && part_[k] == whole[k]; ++k) {
                part -= static_cast<std::size_t>(part_[k]) * ones_[k];
                part_[k] = 0;
            }
            if (k == whole.size())
                break;
            ++part_[k];
            part += ones_[k];
            if (!use(part))
                break;
        }
        steps_ += parts / 4;
    }

    void list_boxes(std::size_t choice, const std::vector<std::int64_t>& taken) {
        const std::size_t last = last_kind(taken);
        area_[choice] = area_[choice - ones_[last]] + problem_->kinds[last].area();
        found_.clear();
        if (choice == ones_[last]) {
            list_piece(static_cast<std::uint32_t>(last));
        } else if (problem_->cutting == cutting::strips) {
            join_beside(ones_[last], choice - ones_[last]);
        } else {
            each_part(taken, [&](std::size_t part) {
                const std::size_t rest = choice - part;
                if (part > rest)
                    return false; // all of these have been, the other way round
                join_beside(part, rest);
                join_above(part, rest);
                return allowance_.allows(steps_);
            });
        }
        keep_least(choice);
    }

    void list_piece(std::uint32_t k) {
        const lay_kind& kind = problem_->kinds[k];
        const std::int64_t area = kind.area();
        if (kind.upright)
            offer(area, {kind.width, kind.length, k, 0, 0, 0, made::of_one});
        if (kind.sideways)
            offer(area, {kind.length, kind.width, k, 0, 0, 0, made::turned});
    }

    void offer(std::int64_t area, const box& b) {
        if (b.width <= problem_->width && b.length <= longest_ && b.width * b.length - area <= spare_)
            found_.push_back(b);
    }

    /// From the longest and narrowest on: the longer of the two must give way before the greater length falls.
    void join_beside(std::size_t part, std::size_t rest) {
        const std::vector<box>&a = boxes_[part], &b = boxes_[rest];
        const std::int64_t area = area_[part] + area_[rest];
        std::size_t i = 0, j = 0;
        while (i < a.size() && j < b.size() && a[i].width + b[j].width <= problem_->width) {
            const std::int64_t length = std::max(a[i].length, b[j].length);
            offer(area, joined(a[i].width + b[j].width, length, {part, i}, {rest, j}, made::beside));
            const bool first_gives_way = a[i].length == length, second_gives_way = b[j].length == length;
            i += first_gives_way;
            j += second_gives_way;
        }
        steps_ += (i + j + 2) / 4;
    }

    /// From the widest and shortest on, likewise.
    void join_above(std::size_t part, std::size_t rest) {
        const std::vector<box>&a = boxes_[part], &b = boxes_[rest];
        const std::int64_t area = area_[part] + area_[rest];
        std::size_t i = a.size(), j = b.size();
        while (i > 0 && j > 0 && a[i - 1].length + b[j - 1].length <= longest_) {
            const std::int64_t width = std::max(a[i - 1].width, b[j - 1].width);
            offer(area, joined(width, a[i - 1].length + b[j - 1].length, {part, i - 1}, {rest, j - 1}, made::above));
            const bool first_gives_way = a[i - 1].width == width, second_gives_way = b[j - 1].width == width;
            i -= first_gives_way;
            j -= second_gives_way;
        }
        steps_ += (a.size() - i + b.size() - j + 2) / 4;
    }

    /// Of a box of each of two choices: the choice, and the index of the box in it.
    using chosen = std::pair<std::size_t, std::size_t>;
    static box joined(std::int64_t width, std::int64_t length, const chosen& part, const chosen& rest, made how) {
        return {width,
                length,
                static_cast<std::uint32_t>(part.first),
                static_cast<std::uint32_t>(rest.first),
                static_cast<std::uint32_t>(part.second),
                static_cast<std::uint32_t>(rest.second),
                how};
    }

    /// Of what was found, the boxes that hold no other; of equal ones the first, so that lays are the same everywhere.
    void keep_least(std::size_t choice) {
        std::stable_sort(found_.begin(), found_.end(), [](const box& a, const box& b) {
            return std::pair(a.width, a.length) < std::pair(b.width, b.length);
        });
        std::vector<box>& kept = boxes_[choice];
        kept.clear();
        for (const box& b : found_)
            if (kept.empty() || b.length < kept.back().length)
                kept.push_back(b);
        steps_ += found_.size() / 4;
    }

    /// The last kind taken is in some strip, and the order of strips is of no account: let it be the first.
    void lay_strips(std::size_t choice, const std::vector<std::int64_t>& taken) {
        const std::size_t last = last_kind(taken);
        strip_lay best{none, 0};
        each_part(taken, [&](std::size_t strip) {
            if (part_[last] > 0 && !boxes_[strip].empty()) {
                const std::int64_t length = boxes_[strip].back().length + lays_[choice - strip].length;
                if (length < best.length)
                    best = {length, strip};
            }
            return true;
        });
        lays_[choice] = best;
    }

    void place(const box& b, std::int64_t x, std::int64_t y, std::vector<laid>& all) const {
        if (b.how == made::of_one || b.how == made::turned) {
            all.push_back({b.part, b.how == made::turned, x, y});
            return;
        }
        const box& first = boxes_[b.part][b.in_part];
        place(first, x, y, all);
        place(boxes_[b.rest][b.in_rest], b.how == made::beside ? x + first.width : x,
              b.how == made::above ? y + first.length : y, all);
    }

    const lay_problem* problem_;
    std::vector<std::size_t> ones_;       // by kind: the number of the choice of one piece of it
    std::vector<std::vector<box>> boxes_; // by choice; in strips, those that are strips
    std::vector<std::int64_t> area_;      // by choice
    std::vector<strip_lay> lays_;         // by choice, in strips
    std::vector<box> found_;
    std::vector<std::int64_t> part_;
    std::int64_t longest_ = 0;
    std::int64_t spare_ = 0;
    std::uint64_t steps_ = 0;
    lay_allowance allowance_;
};

} // namespace turncloth::detail

#endif
