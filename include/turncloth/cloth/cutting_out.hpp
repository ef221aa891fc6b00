// How the pieces of a lay are cut out, in words: what to do in order, with a rule and a blade, or with shears.
//
//   std::vector<std::string> cutting_out(lay, pieces, bolt, ruler = {})
//   std::vector<std::string> cutting_out(lay, pieces, remnant, ruler = {})     of what is on hand
//
//   for (const std::string& step : cutting_out(found, pieces, canvas, inch_ruler(8))) print(step);
//   // cut 0: straighten the end of the cloth, square to its selvedges; ...
//   // cut 1: across the cloth, 18 in from its near side, on the cloth 18 in from the end: takes off a part 43 x 18 in
//
// A lay with cuts from edge to edge is told cut by cut: the part in hand, how far from its near or left side, the same
// on the cloth, and what comes off. A lay that is cut free is told by its places: how far each piece lies from the left
// edge of the cloth and from the end, after the flaws that it goes round. Every figure is rounded from its exact length, none from another.
#ifndef TURNCLOTH_CLOTH_CUTTING_OUT_HPP
#define TURNCLOTH_CLOTH_CUTTING_OUT_HPP

#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/remnants.hpp>
#include <turncloth/measure/language.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/measure/write.hpp>

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace turncloth {

namespace detail {

/// The edge where cloth lies folded in two.
inline constexpr phrase fold_of_cloth{"cloth.fold", "fold"};

/// What is in hand, by the cut that it comes from.
inline std::string words_for(const part_origin& o) {
    if (o.cut == 0)
        return sentence({"the cloth"});
    return o.taken_off ? sentence({"what cut ", o.cut, " took off"}) : sentence({"what cut ", o.cut, " left"});
}

template <length_unit Unit>
class cutting_out_writer {
public:
    cutting_out_writer(const lay<Unit>& of, const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth,
                       const ruler& by, std::optional<length<Unit>> on_hand = {})
        : lay_(of), pieces_(pieces), cloth_(cloth), on_hand_(on_hand), by_(by), cut_again_(2 * of.cuts.size() + 1) {
        for (const cloth_cut<Unit>& c : of.cuts)
            cut_again_[number(c.origin)] = true;
        for (const cloth_place<Unit>& p : of.places)
            places_.emplace(std::pair(p.where.from_left.value(), p.where.from_end.value()), &p);
    }

    std::vector<std::string> write() const {
        std::vector<std::string> steps;
        if (lay_.places.empty())
            return steps;
        steps.push_back(sentence({"cut 0: ", making_ready()}));
        for (const cloth_part<Unit>& f : lay_.flaws)
            if (f.from_end < lay_.length)
                steps.push_back(flaw(f));
        if (cloth_.cutting == cutting::free)
            for (const cloth_place<Unit>& p : lay_.places)
                steps.push_back(placed(p));
        for (std::size_t i = 0; i < lay_.cuts.size(); ++i)
            steps.push_back(sentence({"cut ", i + 1, ": ", cut(i)}));
        return steps;
    }

private:
    static std::size_t number(const part_origin& o) { return o.cut == 0 ? 0 : 2 * o.cut - (o.taken_off ? 1 : 0); }

    std::string written(length<Unit> l) const { return to_text(l, by_); }
    template <length_unit In>
    static std::string size_in(const cloth_part<Unit>& p, length<In> graduation, ties halfway) {
        return number_text(nearest_to(as<In>(p.across), graduation, halfway))
            .append(word(" x "))
            .append(to_text(nearest_to(as<In>(p.along), graduation, halfway)));
    }
    std::string size_of(const cloth_part<Unit>& p) const {
        return as_shown(
            by_, [&] { return size_in(p, by_.inches, by_.halfway); },
            [&] { return size_in(p, by_.centimetres, by_.halfway); });
    }

    /// What the cuts, or the places, start from.
    std::string making_ready() const {
        std::string said = on_hand_
                               ? sentence({"square the piece on hand to ", size_of({{}, {}, cloth_.width, *on_hand_}),
                                           ", its grain along the ", written(*on_hand_), ", and mark one end"})
                               : sentence({"straighten the end of the cloth, square to its selvedges"});
        const bool trimmed = cloth_.cutting != cutting::free && cloth_.selvedge.value() > 0;
        if (cloth_.cutting != cutting::free && (!on_hand_ || *on_hand_ > lay_.length))
            said += "; " + sentence({"cut right across, ", written(lay_.length), " from it"});
        if (trimmed)
            said += "; " + (cloth_.folded
                                ? sentence({"trim ", written(cloth_.selvedge), " off the selvedges, opposite the fold"})
                                : sentence({"trim ", written(cloth_.selvedge), " off each selvedge"}));
        if (cloth_.cutting == cutting::free)
            return sentence({said, ". Pieces lie so far from the ", left_edge(), " of the cloth and from that end:"});
        if (lay_.cuts.empty())
            return sentence({said, ": that is ", piece(lay_.places.front())});
        return sentence({said, ". The near side of a part is the one that lay nearest that end"});
    }
    std::string left_edge() const { return cloth_.folded ? said(fold_of_cloth, {}) : sentence({"left edge"}); }

    std::string placed(const cloth_place<Unit>& p) const {
        return sentence({piece(p), ": ", written(p.where.from_left), " from the ", left_edge(), ", ",
                         written(p.where.from_end), " from the end"});
    }

    std::string flaw(const cloth_part<Unit>& f) const {
        return sentence({"chalk round a flaw, ", size_of(f), ": ", written(f.from_left), " from the ", left_edge(),
                         ", ", written(f.from_end), " from the end"});
    }

    std::string piece(const cloth_place<Unit>& p) const {
        std::string all = named(pieces_[p.piece], p.piece) + ", " + size_of(p.where);
        if (p.turned)
            all.append(", ").append(word("turned"));
        if (pieces_[p.piece].on_fold)
            all.append(", ").append(word("on the fold"));
        if (pieces_[p.piece].stays)
            all.append(", ").append(word("laid already"));
        return all;
    }

    std::string cut(std::size_t i) const {
        const cloth_cut<Unit>& c = lay_.cuts[i];
        const bool across = c.direction == cut_direction::across;
        const std::string in_hand = words_for(c.origin), at = written(c.at), on_cloth = written(c.on_cloth()),
                          taken = part({i + 1, true}, c.taken_off());
        const std::string said = across ? sentence({"across ", in_hand, ", ", at, " from its near side, on the cloth ",
                                                    on_cloth, " from the end: takes off ", taken})
                                        : sentence({"along ", in_hand, ", ", at, " from its left side, on the cloth ",
                                                    on_cloth, " from the ", left_edge(), ": takes off ", taken});
        return cut_again_[number({i + 1, false})] ? said
                                                  : sentence({said, " and leaves ", part({i + 1, false}, c.rest())});
    }

    /// A piece, what is to be cut again, or what is left over.
    std::string part(const part_origin& from, const cloth_part<Unit>& p) const {
        if (cut_again_[number(from)])
            return sentence({"a part ", size_of(p)});
        const auto at = places_.find(std::pair(p.from_left.value(), p.from_end.value()));
        return at != places_.end() && at->second->where == p ? piece(*at->second)
                                                             : sentence({"a left-over ", size_of(p)});
    }

    const lay<Unit>& lay_;
    const std::vector<cloth_piece<Unit>>& pieces_;
    const bolt<Unit>& cloth_;
    const std::optional<length<Unit>> on_hand_; // its length, where it does not come off a roll
    const ruler by_;
    std::vector<bool> cut_again_; // by number of the part's origin
    std::map<std::pair<fraction, fraction>, const cloth_place<Unit>*> places_;
};

} // namespace detail

/// What to do, in order; the first step, "cut 0", makes the cloth ready, and names the edges that all is told from.
/// Nothing for a lay of no pieces. A step for each cut, found in a time that grows with the logarithm of their number. `pieces` and `cloth` are those that the lay was made of.
template <length_unit Unit>
std::vector<std::string> cutting_out(const lay<Unit>& of, const std::vector<cloth_piece<Unit>>& pieces,
                                     const std::type_identity_t<bolt<Unit>>& cloth, const ruler& by = {}) {
    return detail::cutting_out_writer<Unit>(of, pieces, cloth, by).write();
}
template <length_unit Unit>
std::vector<std::string> cutting_out(const lay<Unit>& of, const std::vector<cloth_piece<Unit>>& pieces,
                                     const std::type_identity_t<remnant<Unit>>& on, const ruler& by = {}) {
    return detail::cutting_out_writer<Unit>(of, pieces, on.cloth, by, on.length).write();
}

} // namespace turncloth

#endif
