// One kind of piece to be cut, and all that is marked on it or done to it by itself.
//
//   piece<U>(name, material, panel), or (name, material, {width, height}, edges), the size that it finishes at
//                                       count(n)  lies_inside(outer)  of_film()  does_not_fray()  cut_up()  lies(how)
//     .mark(what, edge, place or row)   lines right across, parallel to an edge
//     .mark(what, edge, place, ticks)   short marks at the edges named, for what must not be drawn right across
//     .pleated(edge, pleats, starts)    side by side from a place on
//     .corners_cut_out(square, across)  of each of the two equal panels of a box
//     .eyelets(row)                     along its heading
//   short_mark<U>{at, size}                   a mark at one edge only, so long
//
//   piece<inch> front("front", "canvas", panel(finished_size(9_in, 6_in), all_round(seam("1/2"_in))));
//   front.mark("middle", edge::left, at<finished_edge>("4 1/2"_in), {{edge::top, "1/2"_in}});
#ifndef TURNCLOTH_SHEET_PIECE_HPP
#define TURNCLOTH_SHEET_PIECE_HPP

#include <turncloth/marks/row.hpp>
#include <turncloth/measure/require.hpp>
#include <turncloth/notions/hanging.hpp>
#include <turncloth/notions/pleats.hpp>
#include <turncloth/panel/names.hpp>
#include <turncloth/panel/panel.hpp>
#include <turncloth/sheet/notion.hpp>
#include <turncloth/sheet/project_cloth.hpp>

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// A mark at one edge only, running so far inward from the cut edge.
template <length_unit Unit>
struct short_mark {
    edge at;
    length<Unit> size;

    friend constexpr bool operator==(const short_mark&, const short_mark&) = default;
};

/// A line to be marked on a piece, parallel to one of its edges; right across, or only in ticks.
template <length_unit Unit>
struct mark_line {
    std::string what;
    edge from;                  ///< the edge that it is parallel to and measured from
    figure<Unit> from_cut_edge; ///< with the way there as its working
    std::vector<short_mark<Unit>> only = {};

    friend bool operator==(const mark_line&, const mark_line&) = default;
};

/// Pleats side by side, from a place on away from an edge.
template <length_unit Unit>
struct pleats_on_piece {
    edge from;
    pleating<Unit> pleats;
    place<finished_edge, Unit> starts;

    friend constexpr bool operator==(const pleats_on_piece&, const pleats_on_piece&) = default;
};

/// Squares to be cut out of all four corners of a panel of a box, and the seam across each opened corner.
template <length_unit Unit>
struct corners_cut {
    length<Unit> square, across;

    friend constexpr bool operator==(const corners_cut&, const corners_cut&) = default;
};

/// What a piece finishes at, looked at only where its name is known.
template <length_unit Unit>
struct piece_size {
    length<Unit> width, height;

    piece_size(length<Unit> across, length<Unit> down) : width(across), height(down) {}
    piece_size(const finished_size<Unit>& s) : width(s.width()), height(s.height()) {}
};

/// So many pieces are cut alike, which is as many as a lay has; and so many copies lie inside one piece, since each is
/// carried through every fold of that.
inline constexpr std::int64_t most_cut_alike = 100'000, most_layers_inside = 1000;

/// One kind of piece to be cut.
template <length_unit Unit>
class piece {
public:
    [[gnu::noinline]] piece(std::string name, std::string material, panel<Unit> shape)
        : name_(std::move(name)), material_(std::move(material)), shape_(std::move(shape)) {}
    /// The same, with its shape put together here, so that what is refused names the piece: size_error for a size that is
    /// not above zero, finish_error where it has no room for its finishes.
    piece(const std::string& name, std::string material, const piece_size<Unit>& finished, const edges<Unit>& finishes)
        : piece(name, std::move(material), shaped(name, finished, finishes)) {}

    const std::string& name() const { return name_; }
    const std::string& material() const { return material_; }
    const panel<Unit>& shape() const { return shape_; }
    std::int64_t count() const { return count_; }
    const std::string& inside() const { return inside_; }
    bool is_film() const { return film_; }
    bool frays() const { return frays_; }
    bool is_cut_up() const { return cut_up_; }
    cloth_lie lies() const { return lies_; }
    const std::vector<mark_line<Unit>>& marks() const { return marks_; }
    const std::vector<pleats_on_piece<Unit>>& pleats() const { return pleats_; }
    const std::vector<eyelet_row<Unit>>& eyelets() const { return eyelets_; }
    /// None, or one for all four corners.
    const std::vector<corners_cut<Unit>>& corners() const { return corners_; }

    /// How many are cut alike. Throws range_error below one and above `most_cut_alike`.
    piece& count(std::int64_t n) {
        require_between<range_error>(std::int64_t{1}, n, most_cut_alike,
                                     "the number of " + detail::named(name_) + " to cut");
        count_ = n;
        return *this;
    }

    /// Says that this piece is an inner layer of another, so that the sheet checks that it fits inside.
    piece& lies_inside(const piece& outer) {
        inside_ = outer.name();
        return *this;
    }

    /// Says that this piece is of plastic film, which melts under an iron and keeps every pin hole and every mark.
    piece& of_film() {
        film_ = true;
        frays_ = false;
        return *this;
    }

    /// Says that cut edges of its cloth stay whole, as those of felt, oilcloth and leather do, so that they may be left raw.
    piece& does_not_fray() {
        frays_ = false;
        return *this;
    }

    /// Says that it is cut up into others before anything is made of these, as a square is into triangles: its own edges are
    /// then nowhere to be seen, and none is looked for in the making.
    piece& cut_up() {
        cut_up_ = true;
        return *this;
    }

    /// How it lies on its cloth: project_cloth.hpp. On the fold, its cloth is to be said to lie folded.
    piece& lies(cloth_lie how) {
        lies_ = how;
        return *this;
    }

    /// A line to be marked, `p` away from an edge; `p` may count from any of the three datums of a piece. It runs right
    /// across, or only where `only` says. Throws finish_error for a place from stitching where the edge has none.
    template <class Datum>
    [[gnu::noinline]] piece& mark(std::string what, edge from, const place<Datum, Unit>& p,
                                  std::vector<short_mark<Unit>> only = {}) {
        marks_.push_back({std::move(what), from, shape_.way_from_cut_edge(from, p), std::move(only)});
        return *this;
    }

    template <class Please = please::make_a_place_of_the_length_with_at_and_its_datum_since_a_mark_is_a_place,
              length_unit Other, class... Only>
    void mark(const std::string&, edge, const detail::exact_quantity<Other>&, const Only&...) = delete;

    /// Every place of a row. Throws range_error for more than `most_in_a_row`.
    template <class Row>
        requires requires(const Row& r) {
            r.begin() != r.end();
            (*r.begin()).from_datum();
        }
    [[gnu::noinline]] piece& mark(const std::string& what, edge from, const Row& places,
                                  const std::vector<short_mark<Unit>>& only = {}) {
        std::int64_t n = 0;
        if constexpr (requires { places.size(); })
            require_row(static_cast<std::int64_t>(places.size()), "marks");
        for (const auto& p : places) {
            require_row(++n, "marks");
            mark(what, from, p, only);
        }
        return *this;
    }

    /// Pleats whose first begins at a place from the finished edge; the piece finishes smaller by what they take up.
    /// Throws range_error for more than `most_in_a_row`.
    piece& pleated(edge from, const pleating<Unit>& pleats, const place<finished_edge, Unit>& starts = {}) {
        require_row(pleats.count(), "pleats");
        pleats_.push_back({from, pleats, starts});
        return *this;
    }

    /// Squares to be cut out of its raw corners, each then opened and sewn `across`: see notions/boxed.hpp. Two such
    /// pieces, seamed all round, make a box.
    piece& corners_cut_out(length<Unit> square, length<Unit> across) {
        corners_.assign(1, {square, across});
        return *this;
    }

    /// Throws range_error for more than `most_in_a_row`.
    piece& eyelets(const eyelet_row<Unit>& row) {
        require_row(row.along.size(), "eyelets");
        eyelets_.push_back(row);
        return *this;
    }

    friend bool operator==(const piece&, const piece&) = default;

private:
    void require_row(std::int64_t n, const char* of) const {
        if (n > most_in_a_row)
            detail::refuse_value<range_error>(
                {.kind = fault::too_large,
                 .what = detail::sentence({"the number of ", of, " in a row on ", detail::named(name_)}),
                 .given = n,
                 .most = most_in_a_row,
                 .where = name_},
                {"at most ", most_in_a_row});
    }

    static panel<Unit> shaped([[maybe_unused]] const std::string& name, const piece_size<Unit>& finished,
                              const edges<Unit>& finishes) {
        const auto put_together = [&] {
            return panel<Unit>(finished_size<Unit>(finished.width, finished.height), finishes);
        };
#ifndef BOOST_NO_EXCEPTIONS
        try {
            return put_together();
        } catch (const size_error& refused) {
            refuse_named(name, refused);
        } catch (const finish_error& refused) {
            refuse_named(name, refused);
        }
#else
        return put_together();
#endif
    }

    template <class Error>
    [[noreturn, gnu::cold]] static void refuse_named(const std::string& name, const Error& refused) {
        refusal facts = refused.facts();
        facts.where = name;
        detail::refuse<Error>(detail::named(name) + ": " + refused.what(), std::move(facts));
    }

    std::string name_, material_;
    panel<Unit> shape_;
    std::int64_t count_ = 1;
    std::string inside_;
    bool film_ = false, frays_ = true, cut_up_ = false;
    cloth_lie lies_ = cloth_lie::as_asked;
    std::vector<mark_line<Unit>> marks_;
    std::vector<pleats_on_piece<Unit>> pleats_;
    std::vector<eyelet_row<Unit>> eyelets_;
    std::vector<corners_cut<Unit>> corners_;
};

TURNCLOTH_ONCE(class piece<inch>);
TURNCLOTH_ONCE(class piece<centimetre>);
TURNCLOTH_ONCE(piece<inch>& piece<inch>::mark(const std::string&, edge, const row<finished_edge, inch>&,
                                              const std::vector<short_mark<inch>>&));
TURNCLOTH_ONCE(piece<centimetre>& piece<centimetre>::mark(const std::string&, edge,
                                                          const row<finished_edge, centimetre>&,
                                                          const std::vector<short_mark<centimetre>>&));

} // namespace turncloth

#endif
