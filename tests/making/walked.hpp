// A maker who follows the printed steps alone, and knows which side of her work lies up from what they say.
//
//   things::walk(design)      checks each step against the work as it lies; how often she was told to turn it over
//
// Where a sentence says which side of a piece lies up, she has that up. Where it says "Turn the work over", she turns what
// she has. Otherwise it lies as it lay. Each step must then be done on the side that the plan measures it from: what is laid
// from beneath lies undermost on the table.
#ifndef TURNCLOTH_TESTS_MAKING_WALKED_HPP
#define TURNCLOTH_TESTS_MAKING_WALKED_HPP

#include <turncloth/making/on_table.hpp>
#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace things {

using namespace turncloth;

template <length_unit Unit>
class walker {
public:
    explicit walker(const making<Unit>& d) : d_(d), plan_(work_plan_of(d)), table_(d) {}

    std::size_t walk() {
        for (const work_group<Unit>& g : plan_.groups) {
            const std::vector<std::string> said = sentences_of(plan_, g);
            std::size_t turns = g.one_after_another ? g.pieces.size() : 1;
            for (const work_step<Unit>& s : g.steps)
                turns = std::min(turns, std::max<std::size_t>(1, s.stands_for.size()));
            for (std::size_t turn = 0; turn < turns; ++turn)
                for (std::size_t k = 0; k < g.steps.size(); ++k)
                    follow(g.steps[k], said[k], turn, turns);
        }
        return turned_;
    }

private:
    using number = std::pair<std::size_t, std::int64_t>;
    static number of(const cut_part& p) { return {p.index, p.copy}; }

    void follow(const work_step<Unit>& s, const std::string& said, std::size_t turn, std::size_t turns) {
        const bool turn_over = said.find("urn the work over.") != std::string::npos;
        if (turn_over && turn == 0)
            ++turned_;
        std::vector<number> done; // whose work was turned over at this step
        for (std::size_t i = turn; i < s.stands_for.size(); i += turns) {
            const operation& o = s.stands_for[i];
            if (o.kind == operation_kind::handwork) { // lies as before
                CHECK_FALSE(turn_over);
                continue;
            }
            if (o.kind == operation_kind::seam || o.kind == operation_kind::moment ||
                o.kind == operation_kind::opening) {
                CHECK_FALSE(turn_over);
                above_.clear(); // taken up anew
                continue;
            }
            const bool lays = o.kind == operation_kind::laying;
            const cut_part piece = lays ? d_.layings()[o.index].on : on_of(o);
            const bool needed = lays ? !d_.layings()[o.index].beneath : table_.up(piece) == s.up;
            const auto before = above_.find(of(piece));
            std::optional<bool> above;
            if (before != above_.end())
                above = before->second;
            if (const auto up = side_said(said)) {
                CHECK_MESSAGE(!turn_over, said);
                above = table_.up(piece) == *up;
            } else if (turn_over && std::find(done.begin(), done.end(), of(piece)) == done.end()) {
                CHECK_MESSAGE(above.has_value(), said);
                above = !above.value_or(!needed);
            }
            CHECK_MESSAGE(above.value_or(needed) == needed, said);
            table_.carry_out(o);
            for (const ply_lying<Unit>& p : table_.plies(piece).plies) {
                above_[of(p.of)] = needed;
                done.push_back(of(p.of));
            }
        }
    }
    cut_part on_of(const operation& o) const {
        return o.kind == operation_kind::crease ? d_.creases()[o.index].on() : detail::line_of(d_, o).on;
    }
    static std::optional<face> side_said(const std::string& said) {
        for (const auto& [side, word] : {std::pair(face::right, "right"), std::pair(face::wrong, "wrong")}) {
            const std::string w = word;
            for (const std::string& words : {"ith the " + w + " side of ", " side up, on the " + w + " side of ",
                                             ", " + w + " sides up", " over to the " + w + " side by "})
                if (said.find(words) != std::string::npos)
                    return side;
        }
        return {};
    }

    const making<Unit>& d_;
    work_plan<Unit> plan_;
    table_work<Unit> table_;
    std::map<number, bool> above_{}; ///< of each piece whose side is known, whether its work is seen from above
    std::size_t turned_ = 0;
};

template <length_unit Unit>
std::size_t walk(const making<Unit>& d) {
    return walker<Unit>(d).walk();
}

} // namespace things

#endif
