// One of every kind of drawing, tiny, narrow, huge and crowded, on paper and for a screen.
//
//   gallery::all()      each with what it is of, and its kind
//
//   for (const gallery::drawing_shown& d : gallery::all()) to_svg(d.of);
//
// What is looked at here by eye is checked by tests/examples/gallery_slow_test.cpp: words that overlap, what is cut off at the
// edge of a page, leaders that cross.
#ifndef TURNCLOTH_EXAMPLES_GALLERY_DRAWINGS_HPP
#define TURNCLOTH_EXAMPLES_GALLERY_DRAWINGS_HPP

#include "../sheets/projects.hpp"
#include <turncloth.hpp>
#include <turncloth/draw/finished.hpp>
#include <turncloth/draw/folded.hpp>
#include <turncloth/draw/lay.hpp>
#include <turncloth/draw/outline.hpp>
#include <turncloth/draw/piece.hpp>
#include <turncloth/draw/step.hpp>
#include <turncloth/draw/stock.hpp>
#include <turncloth/sheet/purchases.hpp>

#include <string>
#include <utility>
#include <vector>

namespace gallery {

using namespace turncloth;

struct drawing_shown {
    std::string kind, name;
    page of;
};

class collection {
public:
    std::vector<drawing_shown> make() {
        add_pieces();
        add_lays();
        add_stock();
        add_folded();
        add_outlines();
        add_making();
        return std::move(all_);
    }

private:
    static constexpr const char* society = "Allotment society";
    static const std::vector<finished_size<inch>>& sizes() {
        static const std::vector<finished_size<inch>> all = {
            {2_in, 1_in}, {60_in, 1_in}, {1_in, 60_in}, {120_in, 90_in}, {24_in, 15_in}};
        return all;
    }
    static std::string name_of(const finished_size<inch>& s) { return to_text(s); }

    /// On A4 and for a screen.
    template <class Draw>
    void add(const std::string& kind, const std::string& name, Draw draw) {
        all_.push_back({kind, name + ", on A4", draw(drawing_options{.project = society})});
        all_.push_back({kind, name + ", for a screen", draw(drawing_options{.project = society, .for_screen = true})});
    }
    void add_first(const std::string& name, const project<inch>& p) {
        const sheet<inch> s = sheet_of(p);
        const auto draw = [&](const drawing_options& o) { return page_of(s.pieces.front(), inch_ruler(16), o); };
        add("Pieces", name, draw);
        all_.push_back({"Pieces", name + ", on Letter", draw({.project = society, .on = paper::letter})});
    }

    void add_pieces() {
        const auto hem = all_round(double_turned_hem("1/8"_in, "1/4"_in, "1/16"_in));
        for (const auto& size : sizes()) {
            project<inch> p("plot label", size);
            p.add({"label", "canvas", panel(size, hem)});
            add_first("hemmed, " + name_of(size), p);
        }
        project<inch> squared("kneeling pad", {45_in, 46_in});
        squared.add({"cover", "cotton", panel(squared.finished(), all_round(seam("1/2"_in)))})
            .mark("row", edge::top, divided<finished_edge>(46_in, 46))
            .mark("column", edge::left, divided<finished_edge>(45_in, 46));
        add_first("45 marks both ways", squared);
        add_with_eyelets();
        project<inch> flounce("barrow cover", {24_in, 6_in});
        const auto pleats = pleats_near(pleat::box, 24_in, {.width = 4_in, .depth = 1_in});
        edges<inch> ends;
        ends.left = ends.right = seam("1/2"_in);
        flounce.add({"flounce", "canvas", panel(finished_size(pleats.cut().value(), 6_in), ends)})
            .pleated(edge::left, pleats);
        add_first("pleated", flounce);
        project<inch> pad("kneeling pad", {16_in, 10_in});
        const boxed_size box(16_in, 10_in, 2_in);
        pad.add({"panel", "canvas", panel<inch>::from_cut(boxed_panel(box, "1/2"_in), all_round(seam("1/2"_in)))})
            .corners_cut_out(corner_cut(2_in, {.seam = "1/2"_in, .across = "1/2"_in}), "1/2"_in);
        add_first("corners cut out", pad);
    }
    void add_with_eyelets() {
        const auto hem = double_turned_hem("1/4"_in, "3/4"_in, "1/8"_in);
        project<inch> rack("glove rack", {18_in, 22_in});
        auto& backing =
            rack.add({"backing", "canvas", panel(rack.finished(), {heading(3_in, "1/2"_in, "1/8"_in), hem, hem, hem})});
        const eyelet<inch> brass{"3/8"_in, "5/8"_in};
        backing.eyelets(eyelets(backing.shape(), 4, brass, {.margin = "1 3/16"_in, .clear = "1/8"_in}));
        backing.mark("pocket", edge::top, every<stitched_line>(6_in, 18_in).marks);
        add_first("eyelets and pocket lines", rack);
    }

    void add_lays() {
        for (const auto& [size, count] :
             {std::pair(finished_size(18_in, 9_in), 3), std::pair(finished_size(40_in, 70_in), 3),
              std::pair(finished_size(2_in, 1_in), 90), std::pair(finished_size(50_in, 1_in), 7)}) {
            project<inch> p("mats", size);
            p.add({"mat", "felt", panel(p.finished())}).count(count);
            const auto laid = cloth_for<inch>(sheet_of(p), "felt", {.width = 60_in, .selvedge = "1/2"_in},
                                              {.straightening = 1_in, .sold = eighths_of_a_yard<inch>});
            add("Lays", std::to_string(count) + " of " + name_of(size), [&](const drawing_options& o) {
                return page_of(laid, inch_ruler(16), o, worth_keeping<inch>::usual());
            });
        }
    }

    void add_stock() {
        const auto ties = stock_for<inch>("ribbon", {{"tie", "22 1/2"_in, 8}, {"loop", "4 3/4"_in, 12}}, {{108_in}}),
                   laths = stock_for<inch>("lath", {{"lath", 1_in, 90}, {"long lath", 60_in, 2}}, {{96_in}});
        const auto add_cuts = [&](const char* name, const stock_cuts<inch>& cuts) {
            add("Lengths from stock", name,
                [&](const drawing_options& o) { return pages_of(cuts, inch_ruler(16), o).front(); });
        };
        add_cuts("ties and loops", ties);
        add_cuts("90 of 1 in", laths);
    }

    void add_folded() {
        const auto hem = all_round(double_turned_hem("1/4"_in, "1/2"_in));
        for (const auto& size : {finished_size(15_in, 12_in), finished_size("1 1/2"_in, "1 1/2"_in),
                                 finished_size(60_in, 2_in), finished_size(2_in, 60_in), finished_size(120_in, 90_in)})
            for (const bool mitres : {false, true}) {
                const auto folded =
                    fold_panel(panel(size, hem), all_corners(mitres ? mitred("1/4"_in, "1/16"_in) : stacked<inch>()));
                add("Folded panels", name_of(size) + (mitres ? ", mitred" : ", stacked"),
                    [&](const drawing_options& o) { return page_of(folded, {.name = "napkin"}, inch_ruler(16), o); });
            }
    }

    void add_outlines() {
        const auto at = [](double x, double y) { return drafted_point<inch>(x, y); };
        const auto in = [](double x) { return drafted_length_of<inch>(x); };
        using enum corner_shape;
        for (const auto& [times, high] : {std::pair(0.15, "1.2"), std::pair(1.0, "8"), std::pair(8.0, "64")}) {
            const outline<inch> end(
                {at(1.5 * times, 0), at(9.5 * times, 0), at(11 * times, 8 * times), at(0, 8 * times)},
                {in(0.5), in(0.5), {in(1.5), in(0.5)}, in(0.5)},
                {mitred, mitred, reflected_in_edge_after, reflected_in_edge_before});
            const outline_labels<inch> said{.name = "end",
                                            .material = "canvas",
                                            .count = 2,
                                            .notches = {{0, in(4 * times)}},
                                            .grain =
                                                line<inch, double>{at(5.5 * times, 0), at(5.5 * times, 8 * times)}};
            add("Outlines", std::string("trug liner, ") + high + " in high",
                [&](const drawing_options& o) { return page_of(end, said, {}, o); });
        }
    }

    /// Steps on paper; the finished thing for a screen too.
    void add_making() {
        const length<inch> ruler = "1/16"_in;
        const sheet<inch> sheets[] = {allotment::tool_roll::make({29_in, 21_in}, ruler),
                                      allotment::organiser::make({6_in, 9_in}, ruler),
                                      allotment::kneeling_pad::make({"17 1/2"_in, "10 1/2"_in}, 2_in, {}, ruler)};
        for (const sheet<inch>& s : sheets) {
            for (const bool screen : {false, true})
                for (page& p : pages_of_finished(s, inch_ruler(16), {.project = s.name, .for_screen = screen}))
                    all_.push_back({"Finished", s.name + ": " + p.title, std::move(p)});
            for (step_page& p : pages_of_steps(s, {}, inch_ruler(16), {.project = s.name}))
                all_.push_back({"Steps", s.name + ": " + p.page.title, std::move(p.page)});
        }
    }

    std::vector<drawing_shown> all_{};
};

inline std::vector<drawing_shown> all() { return collection().make(); }

} // namespace gallery

#endif
