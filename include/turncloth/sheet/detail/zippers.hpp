// Zippers sewn across pieces: their stitching and slits, and what is bought for them.
//
//   add_zippers(draft)
#ifndef TURNCLOTH_SHEET_DETAIL_ZIPPERS_HPP
#define TURNCLOTH_SHEET_DETAIL_ZIPPERS_HPP

#include <turncloth/sheet/detail/draft.hpp>

#include <cstdint>
#include <string>

namespace turncloth {

namespace detail {

/// Works out the zippers of one opening on one piece.
template <length_unit Unit>
class zipper_work {
public:
    zipper_work(sheet_draft<Unit>& draft, const zipper<Unit>& z, sheet_piece<Unit>& on)
        : draft_(draft), z_(z), on_(on), shape_(on.made_from.shape()) {}

    void add_lines() {
        const edge first = is_level(z_.from) ? edge::left : edge::top; // where a zipper begins
        const length<Unit> room = along(shape_.finished(), z_.from);
        if (z_.opening.across > room)
            return refuse(
                {"a zipper ", z_.opening.across, " across is wider than ", named(z_.on), ", which finishes ", room},
                {.kind = fault::no_room,
                 .what = "the width across which a zipper lies",
                 .given = z_.opening.across,
                 .most = room});
        const length<Unit> opens =
            shape_.finish_of(first).allowance() + (room - z_.opening.across) / 2 + z_.opening.margin;
        for (const auto& centre : z_.centres)
            add_lines(centre, opens);
        check_neighbours();
    }

    /// False where the tape would be caught, so that none can be worked out.
    bool is_clear() {
        const length<Unit> clear = clearance(z_.opening);
        if (clear.value() < 0)
            refuse({"the tape of a zipper on ", named(z_.on), " reaches ", -clear, " into the seams"},
                   {.kind = fault::no_room,
                    .what = "the tape of a zipper beyond its opening",
                    .given = z_.opening.beyond,
                    .most = z_.opening.margin});
        if (clear.value() == 0)
            draft_.warn({"the tape of a zipper on ", named(z_.on),
                         " ends exactly on the seam line: keep a little away from it"});
        return clear.value() >= 0;
    }

    void add_notion() {
        const auto how_many = static_cast<std::int64_t>(z_.centres.size()) * on_.made_from.count();
        draft_.made().notions.push_back(listed("zipper on the " + named(z_.on), how_many, z_.opening, z_.supply));
    }

private:
    void refuse(text_parts parts, grounds why) {
        why.where = z_.on;
        draft_.refuse(parts, why, z_.from);
    }

    void add_lines(const place<finished_edge, Unit>& centre, length<Unit> opens) {
        const auto lines = zipper_lines(centre, z_.rows, z_.slit);
        const auto add_line = [&](line_kind kind, const char* what, const place<finished_edge, Unit>& at,
                                  length<Unit> beyond) {
            on_.lines.push_back({kind, what, z_.from, shape_.way_from_cut_edge(z_.from, at), opens - beyond,
                                 opens + opening(z_.opening) + beyond});
        };
        const length<Unit> high = across(shape_.finished(), z_.from);
        if (lines.above.from_datum().value() < 0 || lines.below.from_datum() > high)
            refuse({"the zipper ", centre.from_datum(), " from the finished ", name_of(z_.from), " edge of ",
                    named(z_.on), " is stitched off the finished piece"},
                   {.kind = fault::no_room,
                    .what = "the place of a zipper",
                    .given = centre.from_datum(),
                    .least = z_.rows / 2,
                    .most = high - z_.rows / 2});
        add_line(line_kind::stitching, "zipper", lines.above, z_.opening.beyond);
        add_line(line_kind::stitching, "zipper", lines.below, z_.opening.beyond);
        add_line(line_kind::slit, "slit behind the zipper", lines.slit_from, length<Unit>());
        if (z_.slit.value() != 0)
            add_line(line_kind::slit, "slit behind the zipper", lines.slit_to, length<Unit>());
    }

    /// Zippers on one piece must not be stitched over one another.
    void check_neighbours() {
        for (std::size_t i = 0; i < z_.centres.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                if (const length<Unit> apart = abs(z_.centres[i] - z_.centres[j]); apart < z_.rows)
                    refuse({"two zippers on ", named(z_.on), " are only ", apart, " apart, less than the ", z_.rows,
                            " that each is stitched"},
                           {.kind = fault::too_small,
                            .what = "the distance between zippers",
                            .given = apart,
                            .least = z_.rows,
                            .index = i});
    }

    sheet_draft<Unit>& draft_;
    const zipper<Unit>& z_;
    sheet_piece<Unit>& on_;
    const panel<Unit>& shape_;
};

/// The lines and the supply are tried apart, so that trouble with the one does not hide trouble with the other.
template <length_unit Unit>
void add_zippers(sheet_draft<Unit>& draft) {
    for (const zipper<Unit>& z : draft.from().zippers()) {
        sheet_piece<Unit>* on = draft.find_for("a zipper is put on", z.on);
        if (on == nullptr)
            continue;
        const std::string which = "the zipper on " + named(z.on);
        if (z.centres.empty()) {
            draft.refuse({"a zipper is put on ", named(z.on), " without a place"},
                         {.kind = fault::missing, .what = "the place of a zipper", .where = z.on}, z.from);
            continue;
        }
        zipper_work<Unit> work(draft, z, *on);
        draft.attempt(which, z.on, [&] { work.add_lines(); });
        draft.attempt(which, z.on, [&] {
            if (work.is_clear())
                work.add_notion();
        });
    }
}

} // namespace detail

} // namespace turncloth

#endif
