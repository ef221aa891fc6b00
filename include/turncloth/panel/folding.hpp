// Flat folding: a piece of cloth folded along straight lines, and how many layers then lie where.
//
//   folding<U>(corners)                    a convex piece, flat; <U, double> where the fractions would not fit
//   f.fold(crease)  f.fold(crease, turned::over)    turns what lies left of the crease under (or over) the rest
//   f.trim(line)                           cuts away what lies left of the line, through all layers
//   f.layer_count()  f.layer(i)            the stack from the bottom up: corners, which face is up
//   f.layers_at(p)                         how many layers a needle meets at p; an edge counts as cloth
//   f.most_layers()  f.most_layers_along(from, to)     the thickest spot, edges left out, and where it is
//   f.on_the_flat(i, p)                    where that spot of layer i lay before any fold
//   f.area()  f.trimmed_area()             of all layers; of what was cut away: together always the piece's
//
//   folding<inch> napkin({point_of<inch>(0, 0), point_of<inch>(12, 0), point_of<inch>(12, 12), point_of<inch>(0, 12)});
//   napkin.fold({point_of<inch>(6, 0), point_of<inch>(6, 12)});      // the left half goes under the right
//   napkin.layers_at(point_of<inch>(9, 3)) == 2;
//
// Exact for every crease through exact points, at any slope: a mirror image needs no square root. What runs out on
// slanting creases is 64 bits (overflow_error); in doubles, points within drafting_tolerance of a line are on it, and
// one beyond largest_coordinate, or that is not a number, is refused (folding_error).
// Not part of turncloth.hpp: include it where it is wanted.
#ifndef TURNCLOTH_PANEL_FOLDING_HPP
#define TURNCLOTH_PANEL_FOLDING_HPP

#include <turncloth/measure/require.hpp>
#include <turncloth/panel/detail/mirror.hpp>
#include <turncloth/panel/polygon.hpp>

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace turncloth {

/// A piece that cannot be folded, or not along that line.
class folding_error : public error {
public:
    using error::error;
};

/// Which way cloth is turned: on top of the rest, or beneath it.
enum class turned { under, over };

/// One layer of a folded piece.
template <length_unit Unit, coordinate Number = fraction>
struct folded_layer {
    std::span<const point<Unit, Number>> corners; ///< counter-clockwise; valid until the next fold
    bool face_up;                                 ///< the face that was up before any fold
};

/// Where the most layers lie, and how many.
template <length_unit Unit, coordinate Number = fraction>
struct thickest {
    std::size_t layers = 0;
    point<Unit, Number> where{};
};

template <length_unit Unit, coordinate Number = fraction>
class folding {
public:
    using point_type = point<Unit, Number>;
    using line_type = line<Unit, Number>;

    /// The piece, its corners either way round. Throws folding_error unless it is convex.
    explicit folding(polygon<Unit, Number> piece) : corners_(std::move(piece)) {
        for (const point_type& p : corners_)
            drafted_spot(p, "a corner of a piece to fold");
        if (!is_convex(corners_))
            detail::refuse<folding_error>("only a convex piece can be folded here: cut it into convex parts first",
                                          refusal{fault::unsuitable, "a piece to fold"});
        if (signed_area_of(corners_).value() < 0)
            std::reverse(corners_.begin(), corners_.end());
        layers_.push_back({0, corners_.size(), 0, 0});
    }

    /// Turns what lies left of the crease. Throws folding_error where the crease is not a line, after 64
    /// folds, and where more than 2^20 layers could come of it; what is refused leaves the piece as it was. Time and memory
    /// grow with the layers: some 500 MB for the most.
    folding& fold(const line_type& crease, turned way = turned::under) {
        if (creases_.size() == most_folds)
            detail::refuse<folding_error>("a piece can be folded " + std::to_string(most_folds) + " times here",
                                          refusal{.kind = fault::does_not_fit,
                                                  .what = "the number of folds",
                                                  .given = amount_of(creases_.size() + 1),
                                                  .most = amount_of(most_folds)});
        if (layers_.size() > largest_stack / 2) // a crease may part them all
            detail::refuse<folding_error>("a piece is folded here into at most " + std::to_string(largest_stack) +
                                              " layers: it has " + std::to_string(layers_.size()) + " before this fold",
                                          refusal{.kind = fault::does_not_fit,
                                                  .what = "the number of layers",
                                                  .given = amount_of(layers_.size() * 2),
                                                  .most = amount_of(largest_stack)});
        const mirror axis = mirror_in(crease);
        unless_refused undo(*this);
        part_all(axis);
        undo.is_done();
        const std::uint64_t this_fold = std::uint64_t{1} << creases_.size();
        for (layer_record& l : turned_)
            l.folds ^= this_fold;
        creases_.push_back(axis);
        // What is turned arrives in reverse order: its top layer comes to lie next to the rest.
        std::reverse(turned_.begin(), turned_.end());
        layers_.clear();
        const std::vector<layer_record>&below = way == turned::under ? turned_ : kept_,
              &above = way == turned::under ? kept_ : turned_;
        layers_.insert(layers_.end(), below.begin(), below.end());
        layers_.insert(layers_.end(), above.begin(), above.end());
        give_up_what_is_gone();
        return *this;
    }

    /// Cuts away what lies left of the line. Throws folding_error where the line is not one; what is refused leaves the
    /// piece as it was.
    folding& trim(const line_type& cut) {
        const mirror axis = mirror_in(cut);
        unless_refused undo(*this);
        part_all(axis);
        Number off = trimmed_;
        for (const layer_record& l : turned_)
            off += detail::number_area(corners_of(l));
        undo.is_done();
        trimmed_ = off;
        layers_ = kept_;
        give_up_what_is_gone();
        return *this;
    }

    std::size_t layer_count() const { return layers_.size(); }
    /// From the bottom of the stack up, counted from 0.
    folded_layer<Unit, Number> layer(std::size_t i) const {
        return {corners_of(layers_[i]), std::popcount(layers_[i].folds) % 2 == 0};
    }

    /// How many layers hold p, inside or on their edges.
    std::size_t layers_at(const point_type& p) const {
        const auto spot = drafted_spot(p, "a spot on a folded piece");
        return static_cast<std::size_t>(std::count_if(layers_.begin(), layers_.end(), [&](const layer_record& l) {
            return detail::locate_in_convex(corners_of(l), spot) != containment::outside;
        }));
    }

    /// The most layers that lie over one another along a row of stitching, and the middle of where they do. A layer
    /// that the row only touches, at a corner or along an edge, is left out.
    thickest<Unit, Number> most_layers_along(const point_type& from, const point_type& to) const {
        const auto start = drafted_spot(from, "an end of a row of stitching"),
                   way = drafted_spot(to, "an end of a row of stitching") - start;
        std::vector<std::pair<Number, int>> ends; // how far along, and whether a layer begins (1) or ends (0)
        for (const layer_record& l : layers_) {
            auto [begin, end] = detail::span_within(corners_of(l), start, way);
            if constexpr (std::same_as<Number, double>) { // neighbours must not seem to overlap by what was rounded
                begin += drafting_tolerance;
                end -= drafting_tolerance;
            }
            if (begin < end) {
                ends.emplace_back(begin, 1);
                ends.emplace_back(end, 0);
            }
        }
        std::sort(ends.begin(), ends.end());
        thickest<Unit, Number> most{0, from};
        std::size_t now = 0;
        for (std::size_t i = 0; i < ends.size(); ++i) {
            now = ends[i].second == 1 ? now + 1 : now - 1;
            if (now > most.layers)
                most = {now, detail::in_unit<Unit>(start + way * ((ends[i].first + ends[i + 1].first) / Number(2)))};
        }
        return most;
    }

    /// The most layers that lie over one another anywhere, and a spot where they do. Between two neighbouring upright
    /// lines through corners and crossings of edges the layers' order does not change, so one line between them tells.
    /// Throws folding_error where the layers have more than 4096 different sides, or lie so many over so many stops that
    /// there are more than 2^22 layers to meet: some seconds of work.
    thickest<Unit, Number> most_layers() const {
        const auto sides = detail::sides_of(*this);
        require_at_most<folding_error>(sides.size(), most_sides,
                                       "the number of different sides of a folded piece's layers");
        const std::vector<Number> stops = detail::upright_stops(sides);
        require_at_most<folding_error>(stops.size() * layers_.size(), most_meetings,
                                       "the number of layers to meet along a folded piece's upright lines");
        thickest<Unit, Number> most;
        if (stops.empty())
            return most;
        const auto [low, high] = lowest_and_highest();
        for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
            const Number x = (stops[i] + stops[i + 1]) / Number(2);
            const auto here = most_layers_along(detail::in_unit<Unit>(detail::arrow<Number>{x, low}),
                                                detail::in_unit<Unit>(detail::arrow<Number>{x, high}));
            if (here.layers > most.layers)
                most = here;
        }
        return most;
    }

    /// Where the spot p of layer i lay on the flat piece.
    point_type on_the_flat(std::size_t i, const point_type& p) const {
        detail::arrow<Number> spot = drafted_spot(p, "a spot on a folded piece");
        for (std::size_t fold = creases_.size(); fold-- > 0;)
            if (layers_[i].folds >> fold & 1)
                spot = creases_[fold].image(spot);
        return detail::in_unit<Unit>(spot);
    }

    /// The two parts of a layer are added first, since together they have their layer's simpler area: added in any
    /// other order, areas with the denominators of several slanting creases soon pass 64 bits.
    area_in<Unit, Number> area() const {
        std::vector<Number> areas(parts_.size(), Number(0));
        for (const layer_record& l : layers_)
            areas[l.part] = detail::number_area(corners_of(l));
        for (std::size_t i = parts_.size(); i-- > 0;)
            if (parts_[i] != whole)
                areas[i] = areas[parts_[i]] + areas[parts_[i] + 1];
        return area_in<Unit, Number>::from_value(areas[0]);
    }
    area_in<Unit, Number> trimmed_area() const { return area_in<Unit, Number>::from_value(trimmed_); }

private:
    using mirror = detail::mirror<Number>;
    static constexpr std::size_t most_folds = 64;                      // a bit for each in what a layer remembers
    static constexpr std::size_t largest_stack = std::size_t{1} << 20; // some 100 MB of corners
    static constexpr std::size_t most_sides = 4096, most_meetings = std::size_t{1} << 22;
    static constexpr std::size_t whole = 0;

    /// Corners lie together in one pool, so that a fold allocates nothing once the pool is large enough. Each bit of
    /// `folds` says whether that fold turned the layer. `part` is its place in the tree of partings.
    struct layer_record {
        std::size_t begin, count, part;
        std::uint64_t folds;
    };

    /// Corners as they were, put back unless the parting is done: fractions may run out at any layer.
    class unless_refused {
    public:
        explicit unless_refused(folding& piece) : piece_(piece), parts_(piece.parts_.size()) {
            piece.before_ = piece.corners_;
        }
        ~unless_refused() {
            if (!done_)
                put_back();
        }
        unless_refused(const unless_refused&) = delete;
        unless_refused& operator=(const unless_refused&) = delete;
        void is_done() noexcept { done_ = true; }

    private:
        void put_back() noexcept {
            piece_.corners_.swap(piece_.before_);
            piece_.parts_.resize(parts_);
            for (std::size_t& first : piece_.parts_)
                if (first >= parts_)
                    first = whole;
        }
        folding& piece_;
        std::size_t parts_; // that there were
        bool done_ = false;
    };

    static mirror mirror_in(const line_type& l) {
        if (l.from == l.to)
            detail::refuse<folding_error>("a crease needs two different points",
                                          refusal{fault::unsuitable, "a crease"});
        return mirror(drafted_spot(l.from, "a point of a crease"), drafted_spot(l.to, "a point of a crease"));
    }
    static detail::arrow<Number> drafted_spot(const point_type& p, const char* what) {
        detail::require_drafted<folding_error>(detail::bare(p), what);
        return detail::bare(p);
    }

    std::span<const point_type> corners_of(const layer_record& l) const { return {corners_.data() + l.begin, l.count}; }

    std::pair<Number, Number> lowest_and_highest() const {
        Number low = corners_[layers_[0].begin].y.value(), high = low;
        for (const layer_record& l : layers_)
            for (const point_type& p : corners_of(l)) {
                low = std::min(low, p.y.value());
                high = std::max(high, p.y.value());
            }
        return {low, high};
    }

    /// Parts every layer at the line: kept_ lie right of it, turned_ are the mirror images of what lies left of it.
    void part_all(const mirror& axis) {
        kept_.clear();
        turned_.clear();
        for (const layer_record& l : layers_)
            part(l, axis);
    }

    /// A layer that lies wholly on one side keeps its place in the pool.
    void part(const layer_record& l, const mirror& axis) {
        heights_.clear();
        bool some_left = false, some_right = false;
        for (const point_type& p : corners_of(l)) {
            heights_.push_back(axis.height(detail::bare(p)));
            some_left |= detail::sign(heights_.back()) > 0;
            some_right |= detail::sign(heights_.back()) < 0;
        }
        if (some_left && some_right)
            part_in_two(l, axis);
        else if (some_left)
            turned_.push_back(turned_over(l, axis));
        else
            kept_.push_back(l);
    }

    /// Corners of layers that were parted or trimmed stay in the pool until they are most of it.
    void give_up_what_is_gone() {
        std::size_t here = 0;
        for (const layer_record& l : layers_)
            here += l.count;
        if (corners_.size() <= 4 * here + 64)
            return;
        std::vector<point_type> still;
        still.reserve(here);
        for (layer_record& l : layers_) {
            const auto own = corners_of(l);
            l.begin = still.size();
            still.insert(still.end(), own.begin(), own.end());
        }
        corners_.swap(still);
    }

    /// The image would run clockwise, so it is written backwards.
    layer_record turned_over(const layer_record& l, const mirror& axis) {
        const auto begin = corners_.begin() + static_cast<std::ptrdiff_t>(l.begin),
                   end = begin + static_cast<std::ptrdiff_t>(l.count);
        for (auto p = begin; p != end; ++p)
            drafted_spot(*p = detail::in_unit<Unit>(axis.image(detail::bare(*p))), "a corner turned over");
        std::reverse(begin, end);
        return l;
    }

    /// A convex layer is parted into two convex layers, each with the corners in their order; both go to the pool's
    /// end.
    void part_in_two(const layer_record& l, const mirror& axis) {
        left_.clear();
        const std::size_t begin = corners_.size();
        for (std::size_t i = 0; i < l.count; ++i) {
            const std::size_t next = i + 1 == l.count ? 0 : i + 1;
            const int here = detail::sign(heights_[i]), there = detail::sign(heights_[next]);
            const point_type corner = corners_[l.begin + i];
            if (here <= 0)
                corners_.push_back(corner);
            if (here >= 0)
                left_.push_back(corner);
            if (here * there < 0) {
                left_.push_back(detail::in_unit<Unit>(axis.crossing(
                    detail::bare(corner), heights_[i], detail::bare(corners_[l.begin + next]), heights_[next])));
                corners_.push_back(left_.back());
            }
        }
        parts_[l.part] = parts_.size();
        kept_.push_back({begin, corners_.size() - begin, parts_.size(), l.folds});
        const layer_record off{corners_.size(), left_.size(), parts_.size() + 1, l.folds};
        parts_.insert(parts_.end(), 2, whole);
        corners_.insert(corners_.end(), left_.begin(), left_.end());
        turned_.push_back(turned_over(off, axis));
    }

    std::vector<point_type> corners_, left_, before_; // `before_` keeps its room from fold to fold
    std::vector<std::size_t> parts_{whole};           // of each layer there ever was, the first of its two parts
    std::vector<layer_record> layers_, kept_, turned_;
    std::vector<mirror> creases_;
    std::vector<Number> heights_;
    Number trimmed_ = 0;
};

} // namespace turncloth

#endif
