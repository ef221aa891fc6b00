// The edges of a project that are sewn to each other: which copies meet, how far their rows run, and what is wrong.
//
//   copies_that_meet(count, same)                pairs of copies, of so many cut of each piece, or of one and the same
//   seam_line(piece, edge)                       where its row runs
//   edge_seam_fault(seam, one, other)            why it cannot be sewn, if it cannot
//
//   for (const auto& [k, m] : copies_that_meet(2, false)) ...      // the first to the first, the second to the second
#ifndef TURNCLOTH_SHEET_DETAIL_EDGE_SEAMS_HPP
#define TURNCLOTH_SHEET_DETAIL_EDGE_SEAMS_HPP

#include <turncloth/making/finishing.hpp>
#include <turncloth/sheet/project.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

inline std::vector<std::pair<std::int64_t, std::int64_t>> copies_that_meet(std::int64_t count, bool same) {
    std::vector<std::pair<std::int64_t, std::int64_t>> all;
    if (!same || count == 1)
        for (std::int64_t k = 0; k < count; ++k)
            all.emplace_back(k, k);
    else
        for (std::int64_t k = 0; k + 1 < count; k += 2)
            all.emplace_back(k, k + 1);
    return all;
}

/// On the finished edge, as far as the seams beside it.
template <length_unit Unit>
chalk_line<Unit> seam_line(const panel_part<Unit>& p, edge e) {
    chalk_line<Unit> l = p.line(e, place<finished_edge, Unit>());
    const finish<Unit>&first = p.shape.finish_of(is_level(e) ? edge::left : edge::top),
          &last = p.shape.finish_of(is_level(e) ? edge::right : edge::bottom);
    if (first.joins())
        l.begins = first.allowance();
    if (last.joins())
        l.ends = (is_level(e) ? p.shape.cut().width() : p.shape.cut().height()) - last.allowance();
    return l;
}

/// Of two pieces of the project, by the panels that they are cut for.
template <length_unit Unit>
std::optional<making_fault> edge_seam_fault(const edge_seam<Unit>& s, const piece<Unit>& one,
                                            const piece<Unit>& other) {
    const auto edge_in_words = [](edge e, const piece<Unit>& p) {
        return "the " + std::string(name_of(e)) + " edge of " + named(p.name());
    };
    const std::string what = edge_in_words(s.of_one, one) + " is sewn to " + edge_in_words(s.of_other, other);
    const auto is = [&](const std::string& why, refusal facts) {
        facts.where = one.name();
        return making_fault{what + ", and " + why, std::move(facts)};
    };
    for (const auto& [e, p] : {std::pair(s.of_one, &one), std::pair(s.of_other, &other)})
        if (const finish<Unit>& f = p->shape().finish_of(e);
            !f.joins() || !f.folds().empty() || f.stitching().size() > 1)
            return is("the finish of " + edge_in_words(e, *p) + " is no plain seam",
                      {.kind = fault::unsuitable, .what = "a seam of two edges"});
    if (&one != &other && one.count() != other.count())
        return is(std::to_string(one.count()) + " and " + std::to_string(other.count()) + " of them are cut",
                  {.kind = fault::disagree,
                   .what = "a seam of two edges",
                   .given = amount_of(one.count()),
                   .most = amount_of(other.count())});
    if (&one == &other && one.count() > 1 && one.count() % 2 != 0)
        return is(std::to_string(one.count()) + " of it cannot be sewn together by twos",
                  {.kind = fault::unsuitable, .what = "a seam of two edges", .given = amount_of(one.count())});
    if (&one == &other && one.count() == 1 && s.of_one == s.of_other)
        return is("that is one and the same edge", {.kind = fault::repeated, .what = "a seam of two edges"});
    const auto long_ = [](edge e, const piece<Unit>& p) {
        return is_level(e) ? p.shape().finished().width() : p.shape().finished().height();
    };
    const length<Unit> a = long_(s.of_one, one), b = long_(s.of_other, other);
    if (s.taken_up == surplus::none && a != b)
        return is(
            "they finish " + to_text(a) + " and " + to_text(b) + ", with nothing that takes up the difference",
            {.kind = fault::disagree, .what = "a seam of two edges", .given = amount_of(a), .most = amount_of(b)});
    return {};
}

} // namespace turncloth::detail

#endif
