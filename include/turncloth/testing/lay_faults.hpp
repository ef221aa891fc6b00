// Whether a lay may be cut as it stands: a check, for tests, that shares nothing with the code that makes lays.
//
//   std::vector<lay_fault> lay_faults(lay, pieces, bolt)    none when all is well
//   struct lay_fault            kind, piece, what(name = {})
//   enum class lay_fault_kind   what may be wrong
//
//   for (const lay_fault& fault : lay_faults(found, pieces, canvas)) FAIL_CHECK(fault.what());
//
// It looks at: every piece there as often as wanted, its size and turn, the edges of the cloth, overlaps and gaps, the
// repeat, flaws, what stays where it lies, the length said to be used, the bound, whether the pieces can be parted in the way asked for, and whether the
// cuts, made in order, each across or along the part in hand, leave exactly the pieces. Not a part of turncloth.hpp.
#ifndef TURNCLOTH_TESTING_LAY_FAULTS_HPP
#define TURNCLOTH_TESTING_LAY_FAULTS_HPP

#include <turncloth/cloth/lay.hpp>
#include <turncloth/cloth/lay/check.hpp>

#include <cstdint>
#include <optional>
#include <type_traits>
#include <vector>

namespace turncloth {

namespace detail {

/// The lay, its pieces and its cloth in whole numbers of a measure that all of them share.
template <length_unit Unit>
class lay_in_whole_numbers {
public:
    lay_in_whole_numbers(const lay<Unit>& found, const std::vector<cloth_piece<Unit>>& pieces, const bolt<Unit>& cloth)
        : from_(found), given_(pieces), cloth_(cloth) {
        for (const auto& l : {cloth.width / 2, cloth.selvedge, cloth.gap, cloth.repeat_across, cloth.repeat_along,
                              found.length, found.bound})
            scale_.include(l.value());
        for (const cloth_piece<Unit>& p : pieces)
            for (const auto& l : {p.size.width() / 2, p.size.height(), p.match_across, p.match_along})
                scale_.include(l.value());
        for (const cloth_place<Unit>& p : found.places)
            include(p.where);
        for (const cloth_part<Unit>& f : cloth.flaws)
            include(f);
        for (const cloth_piece<Unit>& p : pieces)
            if (p.stays)
                include({p.stays->from_left, p.stays->from_end, {}, {}});
        for (const cloth_cut<Unit>& c : found.cuts) {
            include(c.in_hand);
            scale_.include(c.at.value());
        }
    }

    std::vector<lay_fault> faults() const {
        std::vector<lay_piece> pieces;
        for (const cloth_piece<Unit>& p : given_)
            pieces.push_back(whole(p));
        lay_cloth cloth{whole(cloth_.usable_width()), whole(cloth_.gap), cloth_.cutting, whole(cloth_.repeat_across),
                        whole(cloth_.repeat_along)};
        for (const cloth_part<Unit>& f : cloth_.flaws)
            cloth.flaws.push_back(whole(f));
        whole_lay made;
        made.length = whole(from_.length);
        made.bound = whole(from_.bound);
        for (const cloth_place<Unit>& p : from_.places)
            made.places.push_back({p.piece, whole(p.where.from_left - left()), whole(p.where.from_end),
                                   whole(p.where.across), whole(p.where.along), p.turned});
        for (const cloth_cut<Unit>& c : from_.cuts)
            made.cuts.push_back({c.direction,
                                 whole(c.direction == cut_direction::along ? c.on_cloth() - left() : c.on_cloth()),
                                 whole(c.in_hand), c.origin});
        std::vector<lay_fault> all = faults_of(made, pieces, cloth);
        if (all.empty())
            add_miscounts(all);
        return all;
    }

private:
    length<Unit> left() const { return cloth_.folded ? length<Unit>() : cloth_.selvedge; }

    void include(const cloth_part<Unit>& part) {
        for (const auto& l : {part.from_left, part.from_end, part.across, part.along})
            scale_.include(l.value());
    }
    std::int64_t whole(length<Unit> l) const { return scale_.whole(l.value()); }
    lay_part whole(const cloth_part<Unit>& p) const {
        return {whole(p.from_left - left()), whole(p.from_left - left() + p.across), whole(p.from_end),
                whole(p.from_end + p.along)};
    }
    lay_piece whole(const cloth_piece<Unit>& p) const {
        const bool turns = p.grain != grain::fixed && !cloth_.one_way && !p.on_fold &&
                           cloth_.repeat_across.value() == 0 && cloth_.repeat_along.value() == 0;
        return {.width = whole(p.on_fold ? p.size.width() / 2 : p.size.width()),
                .length = whole(p.size.height()),
                .quantity = cloth_.folded && !p.on_fold ? (p.quantity + 1) / 2 : p.quantity,
                .grain = turns ? p.grain : grain::fixed,
                .match_across = whole(p.match_across),
                .match_along = whole(p.match_along),
                .at_edge = p.on_fold,
                .stays = p.stays ? std::optional(lay_spot{whole(p.stays->from_left - left()), whole(p.stays->from_end),
                                                          p.stays->turned})
                                 : std::nullopt};
    }

    /// What comes out, less what is said to be spare, is what is wanted.
    void add_miscounts(std::vector<lay_fault>& all) const {
        std::vector<std::int64_t> out(given_.size(), 0);
        for (const cloth_place<Unit>& p : from_.places)
            out[p.piece] += p.comes_out;
        for (std::size_t i = 0; i < given_.size(); ++i)
            if (i >= from_.spare.size() || out[i] - from_.spare[i] != given_[i].quantity)
                all.push_back({lay_fault_kind::wrong_count, i});
    }

    const lay<Unit>& from_;
    const std::vector<cloth_piece<Unit>>& given_;
    const bolt<Unit>& cloth_;
    common_denominator scale_;
};

} // namespace detail

/// Everything wrong with the lay, for these pieces on this cloth, in a time of about n log n in the pieces and cuts. Throws
/// overflow_error where their sizes have no common measure in 64 bits.
template <length_unit Unit>
std::vector<lay_fault> lay_faults(const lay<Unit>& found, const std::vector<cloth_piece<Unit>>& pieces,
                                  const std::type_identity_t<bolt<Unit>>& cloth) {
    return detail::lay_in_whole_numbers<Unit>(found, pieces, cloth).faults();
}

} // namespace turncloth

#endif
