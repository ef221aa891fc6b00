// A rectangle of cloth with a finish on each edge: its two sizes, and every line to be marked on it.
//
//   edges<U>{top, right, bottom, left}     the finishes, raw where none is given; all_round(f) for four alike
//   panel<U>(finished, edges)              cut() = finished + allowances; width_working(), height_working()
//   panel<U>::from_cut(cut, edges)         finished() = cut - allowances
//   p.gathered_along(edge::top, 2)         the same cut twice as wide, to be gathered; the fullness stands in the working
//   p.finish_of(edge::top)                 its folds and stitching, as places from the cut edge
//   p.from_cut_edge(edge, place)           a place from the finished edge or the stitching, measured from the cut edge
//   p.way_from_cut_edge(edge, place)       the same with its working
//   p.from_finished_edge(edge, place)  p.from_stitching(edge, place)
//   self_bound(finished, width)            an outer panel, and the cut size of the inner layers
//
//   constexpr panel pocket(finished_size(9_in, 4_in), all_round(double_turned_hem("1/4"_in, "1/2"_in)));
//   static_assert(pocket.cut() == cut_size("10 1/2"_in, "5 1/2"_in));
#ifndef TURNCLOTH_PANEL_PANEL_HPP
#define TURNCLOTH_PANEL_PANEL_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/panel/finish.hpp>
#include <turncloth/panel/size.hpp>

#include <array>
#include <iosfwd>
#include <string>
#include <string_view>

namespace turncloth {

/// The four edges as the piece hangs before you, right side up.
enum class edge { top, right, bottom, left };

inline constexpr std::array<edge, 4> all_edges = {edge::top, edge::right, edge::bottom, edge::left};

constexpr std::string_view name_of(edge e) {
    switch (e) {
    case edge::top:
        return "top";
    case edge::right:
        return "right";
    case edge::bottom:
        return "bottom";
    case edge::left:
        break;
    }
    return "left";
}

template <class Traits>
std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, edge e) {
    return out << name_of(e);
}

/// Whether it runs from side to side: the top edge and the bottom edge do.
constexpr bool is_level(edge e) { return e == edge::top || e == edge::bottom; }
constexpr edge opposite(edge e) { return static_cast<edge>((static_cast<int>(e) + 2) % 4); }

template <length_unit Unit>
struct edges {
    finish<Unit> top, right, bottom, left;

    constexpr const finish<Unit>& operator[](edge e) const& {
        switch (e) {
        case edge::top:
            return top;
        case edge::right:
            return right;
        case edge::bottom:
            return bottom;
        case edge::left:
            break;
        }
        return left;
    }
    /// Of edges that are gone at the end of the statement, a finish that stays.
    constexpr finish<Unit> operator[](edge e) const&& { return static_cast<const edges&>(*this)[e]; }

    friend constexpr bool operator==(const edges&, const edges&) = default;
};

template <length_unit Unit>
constexpr edges<Unit> all_round(const finish<Unit>& f) {
    return {f, f, f, f};
}

template <length_unit Unit>
class panel {
public:
    /// From what it must measure when sewn. Throws finish_error where turned cloth or stitching of two opposite edges
    /// would lie over each other, that is where the piece is too small for its finishes; and for a finish, whoever made
    /// it, that allows less than nothing or has a line off the piece.
    [[gnu::noinline]] constexpr panel(const finished_size<Unit>& finished, const edges<Unit>& finishes = {})
        : finished_(finished), finishes_(finishes) {
        for (const edge e : all_edges)
            require_sound(e);
        require_room(edge::left, edge::right, finished.width(), "wide");
        require_room(edge::top, edge::bottom, finished.height(), "high");
        for (const edge e : all_edges)
            require_lines_on_piece(e);
    }

    template <class Please = please::say_whether_the_size_is_finished_or_cut_with_finished_size_or_panel_from_cut>
    panel(const length<Unit>&, const length<Unit>&) = delete;
    template <length_unit Other, class Please = please::give_the_finishes_in_the_unit_of_the_size>
        requires detail::different_units<Unit, Other> panel(const finished_size<Unit>&, const edges<Other>&)
    = delete;

    /// From a piece that is cut already. Throws finish_error where the finishes take all of it or more.
    static constexpr panel from_cut(const cut_size<Unit>& cut, const edges<Unit>& finishes) {
        return panel(finished_size<Unit>(left_by(cut.width(), finishes.left, finishes.right, "wide"),
                                         left_by(cut.height(), finishes.top, finishes.bottom, "high")),
                     finishes);
    }

    /// The same piece with `fullness` times as much cloth along the edge, and along the opposite one, to be gathered into
    /// what it measured. finished() is then what lies flat between its finishes before it is gathered. Throws finish_error
    /// for a fullness below 1.
    [[nodiscard]] constexpr panel gathered_along(edge e, fraction fullness) const {
        require_at_least<finish_error>(fullness, fraction(1), "the fullness of a gathered edge");
        const bool across = is_level(e);
        panel fuller(across ? finished_size<Unit>(finished_.width() * fullness, finished_.height())
                            : finished_size<Unit>(finished_.width(), finished_.height() * fullness),
                     finishes_);
        fuller.fullness_across_ = across ? fullness_across_ * fullness : fullness_across_;
        fuller.fullness_down_ = across ? fullness_down_ : fullness_down_ * fullness;
        return fuller;
    }

    constexpr finished_size<Unit> finished() const { return finished_; }
    constexpr cut_size<Unit> cut() const {
        return {finished_.width() + finishes_.left.allowance() + finishes_.right.allowance(),
                finished_.height() + finishes_.top.allowance() + finishes_.bottom.allowance()};
    }

    /// Of a panel that is gone at the end of the statement they are values, which stay.
    constexpr const finish<Unit>& finish_of(edge e) const& { return finishes_[e]; }
    constexpr const edges<Unit>& finishes() const& { return finishes_; }
    constexpr finish<Unit> finish_of(edge e) const&& { return finishes_[e]; }
    constexpr edges<Unit> finishes() const&& { return finishes_; }

    friend constexpr bool operator==(const panel&, const panel&) = default;

    /// The cut size with what it is the sum of.
    constexpr figure<Unit> width_working() const {
        return working(begun(finished_.width(), fullness_across_), finishes_.left, finishes_.right);
    }
    constexpr figure<Unit> height_working() const {
        return working(begun(finished_.height(), fullness_down_), finishes_.top, finishes_.bottom);
    }

    /// How far a place is from the cut edge of `e`, as the sum of what lies between.
    constexpr figure<Unit> way_from_cut_edge(edge, const place<cut_edge, Unit>& p) const {
        return figure<Unit>().plus(p.from_datum(), "from the cut edge");
    }
    constexpr figure<Unit> way_from_cut_edge(edge e, const place<finished_edge, Unit>& p) const {
        return with(figure<Unit>(), 1, finishes_[e]).plus(p.from_datum(), "from the finished edge");
    }
    constexpr figure<Unit> way_from_cut_edge(edge e, const place<stitched_line, Unit>& p) const {
        return figure<Unit>()
            .plus(innermost_stitching(e).from_datum(), "to the stitching")
            .plus(p.from_datum(), "from it");
    }

    /// The same spot, from the cut edge of `e`.
    constexpr place<cut_edge, Unit> from_cut_edge(edge e, const place<finished_edge, Unit>& p) const {
        return remeasured<cut_edge>(p, -finishes_[e].allowance());
    }
    constexpr place<cut_edge, Unit> from_cut_edge(edge e, const place<stitched_line, Unit>& p) const {
        return remeasured<cut_edge>(p, -innermost_stitching(e).from_datum());
    }
    constexpr place<finished_edge, Unit> from_finished_edge(edge e, const place<cut_edge, Unit>& p) const {
        return remeasured<finished_edge>(p, finishes_[e].allowance());
    }
    /// From the innermost row of stitching of `e`. Throws finish_error where that edge has none.
    constexpr place<stitched_line, Unit> from_stitching(edge e, const place<cut_edge, Unit>& p) const {
        return remeasured<stitched_line>(p, innermost_stitching(e).from_datum());
    }

private:
    constexpr place<cut_edge, Unit> innermost_stitching(edge e) const {
        const auto rows = finishes_[e].stitching();
        if (rows.empty())
            detail::refuse<finish_error>({"the ", name_of(e), " edge has no stitching to measure from"},
                                         {.kind = fault::missing, .what = "stitching", .where = name_of(e)});
        auto innermost = rows[0];
        for (const auto& row : rows)
            if (row > innermost)
                innermost = row;
        return innermost;
    }

    /// What a finish made by hand may have got wrong, before its allowances are added up to a cut size.
    constexpr void require_sound(edge e) const {
        for (const length<Unit>& part : finishes_[e].allowance_parts())
            if (part.value() < 0)
                refuse_line(e, "a part of an allowance", part, fault::too_small);
        if (finishes_[e].reach().value() < 0)
            refuse_line(e, "the reach of turned cloth", finishes_[e].reach(), fault::too_small);
    }

    constexpr void require_lines_on_piece(edge e) const {
        const length<Unit> across = is_level(e) ? cut().height() : cut().width();
        for (const auto& fold : finishes_[e].folds())
            require_on_piece(e, "a fold", fold.from_datum(), across);
        for (const auto& row : finishes_[e].stitching())
            require_on_piece(e, "a row of stitching", row.from_datum(), across);
    }
    constexpr void require_on_piece(edge e, const char* what, length<Unit> at, length<Unit> across) const {
        if (at.value() < 0)
            refuse_line(e, what, at, fault::too_small);
        if (at > across)
            refuse_line(e, what, at, fault::too_large, across);
    }
    [[noreturn, gnu::cold]] void refuse_line(edge e, const char* what, length<Unit> given, fault kind,
                                             length<Unit> most = {}) const {
        refusal facts{.kind = kind,
                      .what = what,
                      .given = amount_of(given),
                      .least = amount_of(length<Unit>()),
                      .where = std::string(name_of(e))};
        if (kind == fault::too_large)
            facts.most = amount_of(most);
        detail::refuse<finish_error>(std::string(what) + " of the " + described(e) +
                                         (kind == fault::too_large
                                              ? " must lie on the piece, which is cut " + to_text(most) + " across"
                                              : std::string(" must be zero or more")) +
                                         ": it was " + to_text(given),
                                     std::move(facts));
    }

    constexpr void require_room(edge one, edge other, length<Unit> finished, const char* way) const {
        const length<Unit> needed = depth_of(finishes_[one]) + depth_of(finishes_[other]);
        if (needed > finished)
            detail::refuse<finish_error>({"a piece that finishes ", finished, " ", way, " has no room for the ",
                                          described(one), " and the ", described(other), ", which lie ", needed,
                                          " deep together"},
                                         {.kind = fault::no_room,
                                          .what = "the finishes of opposite edges",
                                          .given = needed,
                                          .most = finished,
                                          .where = name_of(one)});
    }

    /// How far turned cloth and stitching lie inward of the finished edge.
    static constexpr length<Unit> depth_of(const finish<Unit>& f) {
        length<Unit> depth = f.reach();
        for (const auto& row : f.stitching())
            if (const length<Unit> inward = row.from_datum() - f.allowance(); inward > depth)
                depth = inward;
        return depth;
    }

    std::string described(edge e) const {
        return std::string(finishes_[e].name()) + " of its " + std::string(name_of(e)) + " edge";
    }

    static constexpr length<Unit> left_by(length<Unit> cut, const finish<Unit>& one, const finish<Unit>& other,
                                          const char* way) {
        const length<Unit> taken = one.allowance() + other.allowance();
        if (taken >= cut)
            detail::refuse<finish_error>(
                {"a piece cut ", cut, " ", way, " is too small for its finishes, which take ", taken},
                {.kind = fault::no_room, .what = "the finishes of opposite edges", .given = taken, .most = cut});
        return cut - taken;
    }

    static constexpr figure<Unit> begun(length<Unit> flat, fraction fullness) {
        if (fullness == 1)
            return figure<Unit>().plus(flat, "finished");
        return figure<Unit>().plus_times(fullness, {flat / fullness}, "gathered");
    }

    static constexpr figure<Unit> working(const figure<Unit>& f, const finish<Unit>& one, const finish<Unit>& other) {
        if (one.name() == other.name() && one.allowance() == other.allowance())
            return with(f, 2, one);
        return with(with(f, 1, one), 1, other);
    }

    static constexpr figure<Unit> with(figure<Unit> f, std::int64_t times, const finish<Unit>& taken) {
        if (!taken.allowance_parts().empty())
            f.plus(term<Unit>(times, taken.allowance_parts(), taken.name()));
        return f;
    }

    finished_size<Unit> finished_;
    edges<Unit> finishes_;
    fraction fullness_across_ = 1, fullness_down_ = 1;
};

/// A piece whose outer layer is brought round its inner layers on all four edges.
template <length_unit Unit>
struct self_bound_layers {
    panel<Unit> outer;
    /// Of each inner layer: they lie against the second turn, so they are cut to the finished size.
    cut_size<Unit> inner;

    friend constexpr bool operator==(const self_bound_layers&, const self_bound_layers&) = default;
};

/// The double-fold reduction: each way the outer layer is cut 4 x width (and twice the turn of cloth) larger than it
/// finishes. Common practice. Throws as self_binding and panel.
template <length_unit Unit>
constexpr self_bound_layers<Unit> self_bound(const finished_size<Unit>& finished, length<Unit> width,
                                             length<Unit> inset = {}, length<Unit> turn = {}) {
    return {panel<Unit>(finished, all_round(self_binding(width, inset, turn))),
            cut_size<Unit>(finished.width(), finished.height())};
}

TURNCLOTH_ONCE(class panel<inch>);
TURNCLOTH_ONCE(class panel<centimetre>);

} // namespace turncloth

#endif
